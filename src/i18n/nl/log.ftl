# A log of readings: brought, read, and what it shows.
part-log = Een logboek van metingen
tool-log-told = Een tabel uit de accumonitor laat zien wat je ’s nachts verbruikt, wat aan- en uitgaat en hoeveel capaciteit er nog is.

log-told = Neem een tabel met tijden en metingen mee, zoals accumonitors en laadregelaars die bewaren. Ze verlaat dit apparaat niet: ze is vergeten als je de pagina sluit en staat in geen enkele link of bestand.
log-bring = Logboek meenemen
log-file = Kies een bestand
log-drop = Of sleep een bestand hierheen: CSV of platte tekst.
log-paste = Of plak de rijen
log-read = Lees deze rijen
log-clear = Logboek wegleggen
log-working = Het logboek wordt doorgenomen …
log-fault-empty = Er staat niets in.
log-fault-large = Dit is meer dan 32 MB. Bewaar een kortere tijd.
log-fault-not-text = Dit is geen tabel in platte tekst. Bewaar het logboek als CSV.
log-fault-wide = Deze tabel heeft meer dan 64 kolommen. Bewaar er minder.

log-columns = Wat er in de kolommen staat
log-columns-told = Kijk elke kolom na en verander wat niet klopt.
log-rows = { $n ->
    [one] { $n } rij.
   *[other] { $n } rijen.
}
log-above = { $n ->
    [one] { $n } regel boven de koppen hoort niet bij de tabel.
   *[other] { $n } regels boven de koppen horen niet bij de tabel.
}
log-preview = De eerste rijen
log-line = Regel
log-column = Kolom { $n }
log-column-named = Kolom { $n }: { $name }
log-by-figures = Alleen aan de getallen herkend. Kijk het na.
log-role-unused = Niet gebruikt
log-role-time = Tijd
log-role-date = Datum
log-role-soc = Laadtoestand
log-role-volts = Accuspanning
log-role-amps = Accustroom
log-role-watts = Accuvermogen
log-role-charging = Vermogen dat binnenkomt
log-role-used = Vermogen dat verbruikt wordt
log-ask-time = In welke kolom staat de tijd?
log-ask-figure = In welke kolom staat een meting? Kies er minstens één.
log-ask-order = Dag of maand eerst? Deze data kun je op twee manieren lezen.
log-ask-mark = Komma of punt? Sommige van deze getallen kun je op twee manieren lezen.
log-ask-plus = Betekent plus laden of verbruik? Dit logboek laat het niet zien.
log-order = Eerst in de datum
log-order-day = Dag
log-order-month = Maand
log-mark = Decimaalteken
log-mark-point = Punt
log-mark-comma = Komma
log-plus = Een meting boven nul betekent
log-plus-charging = Laden
log-plus-using = Verbruik
log-clock = Tijden zonder tijdzone zijn
log-clock-camp = Plaatselijke tijd
log-clock-utc = UTC
log-left-out = { $n ->
    [one] { $n } regel weggelaten
   *[other] { $n } regels weggelaten
}
log-left-first = De eerste daarvan
log-left-why = Waarom
log-left-cell = Er staat
log-left-no-time = Geen tijd
log-left-time-unread = Tijd niet begrepen
log-left-same-time = Zelfde tijd als een eerdere rij
log-left-no-figure = Geen meting
log-left-unread = { $name }: geen getal
log-left-range = { $name }: niet mogelijk

log-found = Wat het logboek laat zien
log-span = { $n ->
    [one] { $n } rij uit { $span }, waarvan { $covered } zonder gaten.
   *[other] { $n } rijen uit { $span }, waarvan { $covered } zonder gaten.
}
log-take = Overnemen: { $what }
toast-log-taken = Overgenomen: { $what }
log-known = Zoals je het hebt ingevuld.
log-lacks-time = Maar { $time } aan metingen. Een dag en een nacht of meer zeggen veel meer.
log-lacks-gaps = { $share } van de tijd ontbreekt. Wat volgt is minder zeker.
log-lacks-power = Er staat geen stroom en geen vermogen in: verbruik, apparaten en capaciteit zijn niet te zien.
log-lacks-soc = Er staat geen laadtoestand in: de voorspelling is er niet mee te vergelijken.
log-lacks-rows = Eén rij per { $time } is te weinig om apparaten te zien schakelen. Eén per minuut laat ze zien.
log-lacks-night = Er werd de hele tijd geladen, dus het verbruik is niet te zien. Log ook een nacht.
log-standby = Gemeten sluipverbruik
log-floor = ’s Nachts loopt { $power } altijd door (±{ $error }).
log-floor-most = ’s Nachts loopt hooguit { $power } altijd door. De rijen liggen te ver uit elkaar om meer te zeggen.
log-floor-listed = Je lijst verklaart daarvan { $power }.
log-hours = { $n ->
    [one] Gemiddeld wordt { $power } verbruikt, gezien in { $n } uur van de dag.
   *[other] Gemiddeld wordt { $power } verbruikt, gezien in { $n } uren van de dag.
}
log-hours-title = Verbruik per uur van de dag
log-hours-from = Vanaf
log-hours-mean = Gemiddeld
log-hours-watched = Gezien
log-in = { $n ->
    [one] Er kwam { $energy } binnen op { $n } hele dag, hooguit { $peak }.
   *[other] Er kwam { $energy } binnen op { $n } hele dagen, hooguit { $peak }.
}
log-in-least = { $n ->
    [one] Er kwam minstens { $energy } binnen op { $n } hele dag, hooguit { $peak }. Wat de apparaten intussen verbruikten is niet te zien.
   *[other] Er kwam minstens { $energy } binnen op { $n } hele dagen, hooguit { $peak }. Wat de apparaten intussen verbruikten is niet te zien.
}
log-capacity = Capaciteit in gebruik: { $capacity } (±{ $error }), { $share } van de { $label } op het etiket.
log-capacity-counted = Uit de lading die geteld werd terwijl de laadtoestand daalde. Is in de monitor een capaciteit ingevuld, dan laat hij misschien alleen die zien.
log-capacity-rested = Van vol tot een rustspanning. Trek geen accu leeg om dit te weten: het schaadt lood, en alles erop valt uit.
log-capacity-no-current = Capaciteit: daarvoor is stroom of vermogen van de accu nodig.
log-capacity-no-state = Capaciteit: daarvoor is de laadtoestand nodig, of een spanning na uren rust bij een accu die eerst vol was.
log-capacity-swing = Capaciteit: de lading veranderde maar { $swing }. Er is 30 % of meer nodig.
log-capacity-contradicts = Capaciteit: stroom en laadtoestand passen niet bij elkaar. Kijk de kolommen na.
log-cycles = { $n ->
    [one] Iets van { $power } (±{ $error }) komt en gaat vanzelf: { $duty } van de tijd, telkens { $run }, { $n } keer.
   *[other] Iets van { $power } (±{ $error }) komt en gaat vanzelf: { $duty } van de tijd, telkens { $run }, { $n } keer.
}
log-uses = { $n ->
    [one] Iets van { $power } (±{ $error }) loopt { $time } per dag, meestal { $times }, { $n } keer.
   *[other] Iets van { $power } (±{ $error }) loopt { $time } per dag, meestal { $times }, { $n } keer.
}
log-by-night = Alleen in het donker gezien. Bij een apparaat uit je lijst wordt het vermogen overgenomen, de tijden blijven.
log-is = Wat { $power } trekt
log-appliance = Gevonden in het logboek, { $power }
log-held-high = Over { $time } vergeleken is de voorspelling gemiddeld { $mean } lading te hoog, met een afwijking per uur van { $rms }.
log-held-low = Over { $time } vergeleken is de voorspelling gemiddeld { $mean } lading te laag, met een afwijking per uur van { $rms }.
log-correction = verbruik en zon
log-how = De ± geldt 9 van de 10 keer. Elk resultaat neem je apart over en kun je ongedaan maken.
