# What to change: what helps, ways to more nights, what to buy, setups side by side.
change-parts = Manieren om ernaar te kijken
part-helps = Wat helpt
part-ways = Meer nachten
change-working = Alles wordt doorgerekend…
change-failed = Dit valt niet uit te rekenen: een cijfer van het weer of het klimaat kan niet kloppen. Kijk bij Reis.
change-beware = Let op:
change-towards-south = zuiden
change-towards-north = noorden

helps-title = Wat het meest helpt
helps-told = Elke verandering wordt opnieuw over je hele verblijf doorgerekend, met dezelfde vele weersverlopen. Er verandert niets tot jij het zegt.
helps-now = Zoals het nu is: { $sure_n ->
    [one] { $sure } nacht
   *[other] { $sure } nachten
} in negen van de tien gevallen, { $even } in de helft van de gevallen.
helps-progress = Elke verandering wordt doorgerekend: { $done }
helps-none = Niets gevonden dat de moeite waard is. Misschien haalt de accu het zo ook.
helps-more = { $n ->
    [one] Nog { $n } verandering
   *[other] Nog { $n } veranderingen
}
gain-mean = +{ $amount_n ->
    [one] { $amount } nacht
   *[other] { $amount } nachten
} gemiddeld
gain-hours = +{ $amount } tot de grens
gain-lowest = +{ $amount } op het laagste punt
help-sure = in negen van de tien gevallen: { $from } → { $to_n ->
    [one] { $to } nacht
   *[other] { $to } nachten
}
help-even = in de helft van de gevallen: { $from } → { $to_n ->
    [one] { $to } nacht
   *[other] { $to } nachten
}
help-lowest = laagste punt: { $from } → { $to }
help-apply = Toepassen
help-apply-name = Toepassen: { $change }
toast-applied = Gewijzigd: { $change }

ways-title = Manieren om meer nachten te halen
ways-told = Geef aan hoe lang en hoe zeker de accu het moet halen. Er worden hoogstens drie manieren gezocht: met gewoontes, met verder rijden of walstroom, en met aankopen.
ways-nights = Aantal nachten
ways-chance = Met een kans van
ways-now = { $n ->
    [one] Zoals het nu is, is de kans op { $n } nacht { $chance }.
   *[other] Zoals het nu is, is de kans op { $n } nachten { $chance }.
}
ways-reached = { $n ->
    [one] Je configuratie haalt nu al { $n } nacht met een kans van { $chance }. Vraag meer nachten of een grotere kans.
   *[other] Je configuratie haalt nu al { $n } nachten met een kans van { $chance }. Vraag meer nachten of een grotere kans.
}
ways-none = Geen manier gevonden: niets wat er te veranderen is, brengt het dichterbij.
way-habits = Met gewoontes en instellingen
way-on-the-move = Met rijden of walstroom
way-purchase = Met aankopen
way-reaches = { $n ->
    [one] Haalt { $n } nacht met een kans van { $chance }
   *[other] Haalt { $n } nachten met een kans van { $chance }
}
way-falls-short = { $n ->
    [0] Zo niet één nacht met een kans van { $chance }; voor wat je vraagt is de kans { $reached }
    [one] Komt niet verder dan { $n } nacht met een kans van { $chance }; voor wat je vraagt is de kans { $reached }
   *[other] Komt niet verder dan { $n } nachten met een kans van { $chance }; voor wat je vraagt is de kans { $reached }
}
way-price = Wat het kost
way-facts = In negen van de tien gevallen: { $sure_n ->
    [one] { $sure } nacht
   *[other] { $sure } nachten
}. In de helft van de gevallen: { $even_n ->
    [one] { $even } nacht
   *[other] { $even } nachten
}. Laagste punt bij gemiddeld weer: { $lowest }.
way-longer = { $n ->
    [one] Kies je deze manier, dan wordt het verblijf ook { $n } nacht lang.
   *[other] Kies je deze manier, dan wordt het verblijf ook { $n } nachten lang.
}
way-apply = Deze manier kiezen
toast-way = Gewijzigd: { $way }

cost-free = Kost niets
cost-effort = Kost wat comfort of moeite
cost-driving = { $time } meer rijden
cost-hook-up = { $n ->
    [one] { $n } nacht op een plek met walstroom, tegen het tarief daar
   *[other] { $n } nachten op plekken met walstroom, tegen het tarief daar
}
cost-money = Ongeveer { $amount }, { $weight } meer mee te nemen
cost-money-lighter = Ongeveer { $amount }, { $weight } minder mee te nemen
cost-money-only = Ongeveer { $amount }
cost-unpriced = Moet je kopen; in je prijslijst staat er geen prijs voor
bill-unpriced = { $n ->
    [one] { $n } ding te kopen waarvoor geen prijs in je prijslijst staat
   *[other] { $n } dingen te kopen waarvoor geen prijs in je prijslijst staat
}
bill-efforts = { $n ->
    [one] { $n } verandering die wat comfort of moeite kost
   *[other] { $n } veranderingen die wat comfort of moeite kosten
}
bill-free = { $n ->
    [one] { $n } verandering die niets kost
   *[other] { $n } veranderingen die niets kosten
}

change-switch-off = Helemaal uitzetten: { $name }
change-do-without = Weglaten: { $name }
change-gas = In plaats daarvan op gas koken of verwarmen: { $name }
change-off-at-night = Uitzetten van 23:00 tot 7:00: { $name }
change-unplug = Loskoppelen na gebruik: { $name }
change-shorter = { $name }: { $amount } minder per dag
change-fewer = { $name }: { $amount } keer minder per dag
change-share = { $name }: maar { $amount } van het geplande gebruik
change-warmer-fridge = { $name }: ongeveer 2 °C warmer zetten
change-dc = { $name }: met een adapter op { $amount }, niet via de omvormer
change-midday = { $name }: rond het middaguur gebruiken
change-inverter-when-used = Omvormer alleen aanzetten als hij wordt gebruikt
change-inverter-sleep = Omvormer laten slapen als er niets draait (dan { $amount })
change-tilt = { $name }: op { $tilt } kantelen, naar het { $facing }
change-tilt-roof = { $name }: met een beugel op { $tilt } kantelen, naar het { $facing }
change-clean = { $name }: het glas schoonmaken
change-out-of-shade = { $name }: zo staan dat er geen schaduw op valt
change-mppt = { $name }: een MPPT-laadregelaar in plaats van PWM
change-portable = Los paneel van { $amount } neerzetten, op { $tilt } gekanteld, naar het { $facing }
change-drive = { $amount } rijden op dag { $day } ({ $date })
change-hook-up = { $n ->
    [one] Elke nacht walstroom
   *[other] Eens per { $n } nachten walstroom
}
change-arrive-full = Met een volle accu aankomen
change-battery-inside = De accu binnen zetten, waar het warmer is
change-battery-locker = De accu in een bergruimte zetten, waar het warmer is
change-heated = Een accu met eigen verwarming, zodat hij laadt bij vorst
change-battery = Meer accucapaciteit van dezelfde soort: { $amount }
change-lithium = LiFePO4 met dezelfde capaciteit: { $amount }
change-solar = Meer zonnepanelen: { $amount }
change-dc-dc = Een DC-DC-lader van { $amount }
change-dc-dc-drive = { $n ->
    [one] Een DC-DC-lader van { $amount }, en elke dag een uur rijden
   *[other] Een DC-DC-lader van { $amount }, en eens per { $n } dagen een uur rijden
}

part-buy = Wat kopen
part-year = Het jaar
buy-title = Wat kopen
buy-told = De kleinste panelen bij elke accu en de kleinste accu bij elk paneel waarmee je apparaten blijven draaien.
buy-from = Van maand
buy-to = Tot en met maand
buy-this-month = Maand van de reis
buy-progress = Maten worden geprobeerd: { $done }
buy-hard = Bepalend: { $months }. Zwaarder is geen van de gevraagde maanden.
buy-least = Minst te kopen
buy-cheapest = Goedkoopst, alles nieuw
buy-lightest = Lichtst
buy-choice = { $kind } { $battery } met { $solar } aan panelen
buy-price = { $more } boven op wat je hebt; { $all } alles nieuw; { $weight } in totaal
buy-take = Deze maten nemen
buy-none = Zelfs { $solar } aan panelen met { $battery } accu is niet genoeg. Vraag minder nachten, een andere maand of een kleinere kans, of verbruik minder.
buy-sizes = Alle maten: { $kind }
buy-by-battery = { $kind }: kleinste panelen bij elke accu
buy-by-solar = { $kind }: kleinste accu bij elk paneelvermogen
buy-battery = Accu
buy-solar = Panelen
buy-smallest-solar = Kleinste panelen
buy-smallest-battery = Kleinste accu
buy-too-little = niets is genoeg
buy-have = wat je hebt
buy-curve = { $kind }: accu en panelen die het net halen
buy-curve-told = Hoe meer accu, hoe minder panelen je nodig hebt. Van { $least } accu met { $solar } aan panelen tot { $most } accu met { $few }.
buy-how = Apparaten, rijden, walstroom, helling, schaduw en de leeftijd van de accu blijven zoals ze zijn. Neem wat extra voor de komende jaren.
prices-title = Prijzen en gewichten
prices-told = Begin met deze ronde cijfers en vul je eigen in; ze veranderen niets aan de nachten.
prices-currency = Munteenheid
prices-solar = Zonnepaneel met bevestiging, per 100 W
prices-solar-weight = Gewicht ervan, per 100 W
prices-lead = Loodaccu, per 100 Ah bij 12 V
prices-lead-weight = Gewicht ervan, per 100 Ah bij 12 V
prices-lithium = LiFePO4, per 100 Ah bij 12 V
prices-lithium-weight = Gewicht ervan, per 100 Ah bij 12 V
prices-dc-dc = DC-DC-lader, ingebouwd

year-title = Nachten door het jaar heen
year-told = Hetzelfde verblijf, in elke maand begonnen, op deze plaats met deze configuratie.
year-progress = Het jaar wordt doorgerekend: { $done } van 12 maanden

part-compare = Naast elkaar
compare-title = Configuraties naast elkaar
compare-told = De configuratie op het scherm naast andere van jou, elk in het weer van de eigen plaats. Zet er een kopie naast voordat je iets wijzigt, en zie wat de wijziging doet.
compare-with = Vergelijken met
compare-copy = Er een kopie van deze naast zetten
compare-copy-name = Kopie { $n }
compare-drop = Weghalen: { $name }
compare-copies-passing = Deze kopieën kunnen in deze browser niet worden bewaard: ze zijn weg zodra de pagina wordt gesloten.
compare-full = Er passen er hoogstens { $most } naast elkaar.
compare-this = Op het scherm
compare-alone = Kies een andere configuratie, of zet er een kopie naast en wijzig iets.
compare-same = Ze verschillen niet.
compare-working = …
compare-what = Wat
compare-outcomes = Wat elk oplevert
compare-differences = Waarin ze verschillen
compare-sure = Nachten in negen van de tien gevallen
compare-even = Nachten in de helft van de gevallen
compare-chance = Kans op de gevraagde nachten
compare-lowest = Laagste punt
compare-use = Verbruik per dag
compare-usable = Bruikbare capaciteit
compare-money = Panelen, accu en lader, nieuw
compare-weight = Gewicht van panelen en accu
compare-weight-per-kwh = Accugewicht per bruikbare kWh
compare-life-cost = Prijs per bruikbare kWh over de levensduur
compare-band = { $low } tot { $high }
compare-life = Lood tegenover lithium bij jouw prijzen
compare-life-how = Prijs gedeeld door wat de accu levert tot zijn cycli op zijn, bij de gebruikelijke ontlaaddiepte. De cycli zijn een ruime marge van gebruikelijke waarden, niet die van één fabrikant; een accu die twee weken per jaar wordt gebruikt, veroudert in de eerste plaats door de jaren.
compare-batteries = Waardoor de accu’s het verschillend doen
compare-batteries-how = Elk op de eigen reis, bij gemiddeld weer en de temperatuur die de accu daar heeft. Kou maakt bij lood een deel van de lading onbereikbaar en houdt lading buiten lithium; bijna vol neemt lood maar langzaam lading op en gaat een deel verloren.
reason-usable = Bruikbaar van de energie op het etiket
reason-cold = Beschikbaar in het koudste uur
reason-fast = Afgegeven bij ontladen in 5 h in plaats van 20 h
reason-stored = Opgeslagen van wat er boven 80% in gaat
reason-taken = Hoogste stroom die hij opneemt bij 90%
reason-full = Laagste toegestane niveau tot vol, sterkste lader
reason-lost = Verloren bij laden en door weerstand
reason-sag = Laagste spanning vóór het laagste niveau, grootste apparaat aan
reason-cut-out = Zou door lage spanning uitschakelen vóór het laagste niveau
reason-no-charge = Neemt geen lading op onder
reason-locked = Lading geweigerd door kou
reason-management = Verbruik van de accu-elektronica
reason-standing = Verloren in 30 dagen stilstand
differ-all-loads = Alle apparaten
differ-chemistry = Soort accu
differ-capacity = Accu
differ-health = Conditie accu
differ-soc-min = Laagste toegestane niveau
differ-soc-start = Niveau bij aankomst
differ-system = Systeem
differ-battery-place = Plek van de accu
differ-heated = Accuverwarming
differ-inverter = Omvormer
differ-inverter-idle = Omvormer, nullastverbruik
differ-switching = Omvormer aan
differ-solar = Zonnepanelen
differ-tilt = Helling
differ-facing = Richting
differ-mounting = Bevestiging panelen
differ-controller = Laadregelaar
differ-shade = Schaduw rond het middaguur
differ-driving-charger = Lader via de motor
differ-driving-every = Rijden
differ-driving-time = Rijtijd
differ-hook-up-charger = Netlader
differ-hook-up-every = Walstroom
differ-other = Andere bronnen
differ-place = Plaats
differ-arrival = Aankomst
differ-nights = Gevraagde nachten
differ-air = Gemiddelde temperatuur
differ-heated-to = Verwarmd tot
differ-use-factor = Verbruik, onderweg geleerd
differ-sun-factor = Zon, onderweg geleerd
value-absent = –
value-yes = ja
value-every = { $n ->
    [one] elke dag
   *[other] eens per { $n } dagen
}
value-relay = scheidingsrelais, { $limit }
