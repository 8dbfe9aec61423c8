# What to change: what helps, ways to more nights, setups side by side.
change-parts = Ansichten
part-helps = Was hilft?
part-ways = Mehr Nächte
change-working = Wird durchgerechnet …
change-failed = Das lässt sich nicht berechnen: Ein Wert zu Wetter oder Klima ergibt keinen Sinn. Bitte sieh unter „Reise“ nach.
change-beware = Vorsicht:
change-towards-south = Süden
change-towards-north = Norden

helps-title = Was am meisten hilft
helps-told = Jede Änderung wird über deinen ganzen Aufenthalt durchgerechnet, mit denselben Wetterverläufen. Es ändert sich nichts, bis du auf „Übernehmen“ tippst.
helps-progress = Änderungen werden durchgerechnet: { $done }
helps-more = { $n ->
    [one] { $n } weitere Änderung
   *[other] { $n } weitere Änderungen
}
helps-now = Chance auf { $n ->
    [one] { $n } Nacht
   *[other] { $n } Nächte
}, so wie es ist: { $chance }.
helps-too-far = { $n ->
    [one] Für { $n } Nacht reicht keine einzelne Änderung.
   *[other] Für { $n } Nächte reicht keine einzelne Änderung.
}
helps-sure = Für diesen Aufenthalt brauchst du nichts weiter. Länger bleiben? Verschiebe die Nächte auf der ersten Seite.
helps-none = Nichts gefunden, was die Chance erhöht. „Mehr Nächte“ verbindet mehrere Änderungen.
help-gain = { $from } → { $to }
help-mean = { $to_n ->
    [one] { $to } Nacht
   *[other] { $to } Nächte
} im Schnitt, { $more } mehr
next-looking = Suche, was hilft …
next-sure = { $n ->
    [one] Für deine Nacht ist nichts zu tun.
   *[other] Für deine { $n } Nächte ist nichts zu tun.
}
next-none = { $n ->
    [one] Keine einzelne Änderung hilft für deine Nacht.
   *[other] Keine einzelne Änderung hilft für deine { $n } Nächte.
}
next-ways = { $n ->
    [one] Wege zu { $n } Nacht ansehen
   *[other] Wege zu { $n } Nächten ansehen
}
next-gain = { $n ->
    [one] Chance auf { $n } Nacht: { $from } → { $to }
   *[other] Chance auf { $n } Nächte: { $from } → { $to }
}
next-tried = Geändert: { $change }
next-back = Zurücknehmen
help-apply = Übernehmen
help-apply-name = Übernehmen: { $change }
toast-applied = Geändert: { $change }

ways-title = Wege zu mehr Nächten
ways-told = Sag, wie viele Nächte du willst. Nightbank sucht den günstigsten Weg, einen ohne Anschaffung und einen nur mit Anschaffungen.
ways-nights = Gewünschte Nächte
ways-now = { $n ->
    [one] So wie es ist, liegt die Chance auf { $n } Nacht bei { $chance }.
   *[other] So wie es ist, liegt die Chance auf { $n } Nächte bei { $chance }.
}
ways-reached = { $n ->
    [one] Dein Setup hält schon jetzt { $n } Nacht mit einer Chance von { $chance }. Wähle mehr Nächte oder eine höhere Chance.
   *[other] Dein Setup hält schon jetzt { $n } Nächte mit einer Chance von { $chance }. Wähle mehr Nächte oder eine höhere Chance.
}
ways-none = Kein Weg gefunden: Keine der möglichen Änderungen bringt dich näher ans Ziel.
way-cheapest = Am günstigsten
way-nearest = Am nächsten dran
way-nothing-bought = Ohne etwas zu kaufen
way-only-bought = Nur mit Anschaffungen
way-reaches = { $n ->
    [one] Hält { $n } Nacht mit einer Chance von { $chance }
   *[other] Hält { $n } Nächte mit einer Chance von { $chance }
}
way-falls-short = { $n ->
    [0] Schafft mit einer Chance von { $chance } keine einzige Nacht; dein Wunsch hat eine Chance von { $reached }
    [one] Schafft mit einer Chance von { $chance } nur { $n } Nacht; dein Wunsch hat eine Chance von { $reached }
   *[other] Schafft mit einer Chance von { $chance } nur { $n } Nächte; dein Wunsch hat eine Chance von { $reached }
}
way-price = Was es kostet
way-facts = In { $often }: { $sure_n ->
    [one] { $sure } Nacht
   *[other] { $sure } Nächte
}. In der Hälfte der Fälle: { $even_n ->
    [one] { $even } Nacht
   *[other] { $even } Nächte
}. Niedrigster Ladezustand bei durchschnittlichem Wetter: { $lowest }.
way-longer = { $n ->
    [one] Dieser Weg setzt auch deinen Aufenthalt auf { $n } Nacht.
   *[other] Dieser Weg setzt auch deinen Aufenthalt auf { $n } Nächte.
}
way-apply = Diesen Weg nehmen
toast-way = Geändert: { $way }

cost-free = Kostet nichts
cost-effort = Kostet etwas Komfort oder Mühe
cost-driving = { $time } mehr fahren
cost-hook-up = { $n ->
    [one] { $n } Nacht auf einem Platz mit Landstrom, zum Preis des Platzes
   *[other] { $n } Nächte auf einem Platz mit Landstrom, zum Preis des Platzes
}
cost-money = Etwa { $amount }, { $weight } mehr Gewicht
cost-money-lighter = Etwa { $amount }, { $weight } weniger Gewicht
cost-money-only = Etwa { $amount }
cost-unpriced = Muss gekauft werden; deine Preisliste hat keinen Preis dafür
bill-unpriced = { $n ->
    [one] { $n } Anschaffung, für die deine Preisliste keinen Preis hat
   *[other] { $n } Anschaffungen, für die deine Preisliste keinen Preis hat
}
bill-efforts = { $n ->
    [one] { $n } Änderung, die etwas Komfort oder Mühe kostet
   *[other] { $n } Änderungen, die etwas Komfort oder Mühe kosten
}
bill-free = { $n ->
    [one] { $n } Änderung, die nichts kostet
   *[other] { $n } Änderungen, die nichts kosten
}

change-switch-off = Ganz abschalten: { $name }
change-do-without = Weglassen: { $name }
change-gas = Stattdessen mit Gas kochen oder heizen: { $name }
change-off-at-night = Von 23 bis 7 Uhr abschalten: { $name }
change-unplug = Zwischendurch ausstecken: { $name }
change-shorter = { $name }: { $amount } weniger pro Tag
change-fewer = { $name }: Einsätze pro Tag um { $amount } senken
change-share = { $name }: nur { $amount } der geplanten Nutzung
change-warmer-fridge = { $name }: etwa { $warmer_2 } wärmer einstellen
change-dc = { $name }: mit Adapter an { $amount } betreiben, nicht über den Wechselrichter
change-midday = { $name }: um die Mittagszeit nutzen
change-inverter-when-used = Wechselrichter nur einschalten, solange er gebraucht wird
change-inverter-sleep = Wechselrichter auf Sparmodus stellen, solange nichts läuft (dann { $amount })
change-tilt = { $name }: auf { $tilt } aufstellen, Richtung { $facing }
change-tilt-roof = { $name }: mit Halterung auf { $tilt } aufstellen, Richtung { $facing }
change-clean = { $name }: Glas putzen
change-out-of-shade = { $name }: so parken, dass kein Schatten darauf fällt
change-mppt = { $name }: MPPT-Regler statt PWM
change-portable = Ein mobiles Solarmodul mit { $amount } aufstellen, Neigung { $tilt }, Richtung { $facing }
change-drive = An Tag { $day } ({ $date }) { $amount } fahren
change-hook-up = { $n ->
    [one] Jede Nacht Landstrom
   *[other] Jede { $n }. Nacht Landstrom
}
change-arrive-full = Mit voller Batterie ankommen
change-battery-inside = Batterie nach innen verlegen, wo es wärmer ist
change-battery-locker = Batterie in ein Staufach verlegen, wo es wärmer ist
change-heated = Batterie mit eigener Heizung, damit sie bei Frost lädt
change-battery = Mehr Batteriekapazität derselben Art: { $amount }
change-lithium = Stattdessen eine LiFePO4-Batterie: { $amount }
change-solar = Mehr Solarleistung: { $amount }
change-dc-dc = Ein Ladebooster mit { $amount }
change-dc-dc-drive = { $n ->
    [one] Ein Ladebooster mit { $amount }, dazu jeden Tag eine Stunde fahren
   *[other] Ein Ladebooster mit { $amount }, dazu alle { $n } Tage eine Stunde fahren
}

part-year = Das Jahr
buy-title = Was kaufen? Alle Größen
buy-told = Die kleinste Solarleistung zu jeder Batterie und die kleinste Batterie zu jeder Solarleistung, mit denen du durch deine Nächte kommst.
buy-from = Erster Monat
buy-to = Letzter Monat
buy-this-month = Monat der Reise
buy-progress = Größen werden durchgerechnet: { $done }
buy-hard = Der schwierigste der gewählten Monate ist { $months }. Die Größen unten gelten dafür.
buy-least = Am wenigsten zu kaufen
buy-cheapest = Am günstigsten bei Neukauf
buy-lightest = Am leichtesten
buy-choice = { $kind } { $battery } mit { $solar } Solar
buy-price = { $more } zusätzlich zu dem, was du hast; { $all }, wenn alles neu ist; { $weight } insgesamt
buy-take = Diese Größen nehmen
buy-none = Nicht einmal { $solar } Solar mit { $battery } Batterie reichen. Versuche es mit weniger Nächten, einem anderen Monat oder einer niedrigeren Chance, oder verbrauche weniger.
buy-sizes = Alle Größen mit { $kind }
buy-by-battery = { $kind }: kleinste Solarleistung zu jeder Batterie
buy-by-solar = { $kind }: kleinste Batterie zu jeder Solarleistung
buy-battery = Batterie
buy-solar = Solar
buy-smallest-solar = Kleinste Solarleistung
buy-smallest-battery = Kleinste Batterie
buy-too-little = keine Größe reicht
buy-have = was du hast
buy-curve = { $kind }: Batterie und Solar, die gerade reichen
buy-curve-told = Je mehr Batterie, desto weniger Solar brauchst du: von { $least } Batterie mit { $solar } Solar bis { $most } Batterie mit { $few }.
buy-how = Geräte, Fahren, Landstrom, Neigung, Schatten und Alter der Batterie bleiben, wie sie sind. Plane eine Reserve für die kommenden Jahre ein.
prices-title = Preise und Gewichte
prices-told = Beginne mit diesen runden Werten und setz deine eigenen ein. Sie entscheiden, welcher Weg am günstigsten ist.
prices-counted = Eine Stunde Fahren zählt { $hour }, eine Nacht mit Landstrom { $night }.
prices-currency = Währung
prices-solar = Solar mit Befestigung, je 100 Wp
prices-solar-weight = Gewicht davon, je 100 Wp
prices-lead = Bleibatterie, je 100 Ah bei 12 V
prices-lead-weight = Gewicht davon, je 100 Ah bei 12 V
prices-lithium = LiFePO4, je 100 Ah bei 12 V
prices-lithium-weight = Gewicht davon, je 100 Ah bei 12 V
prices-dc-dc = Ladebooster, eingebaut

year-title = Nächte übers Jahr
year-told = Derselbe Aufenthalt an diesem Ort mit diesem Setup, in jedem Monat begonnen.
year-progress = Das Jahr wird durchgerechnet: { $done } von 12 Monaten

part-compare = Vergleich
compare-title = Setups im Vergleich
compare-told = Dieses Setup neben anderen von dir, jedes mit dem Wetter an seinem Ort. Stell eine Kopie daneben, bevor du etwas änderst, und sieh, was die Änderung bewirkt.
compare-with = Vergleichen mit
compare-copy = Kopie danebenstellen
compare-copy-name = Kopie { $n }
compare-drop = Entfernen: { $name }
compare-copies-passing = Dieser Browser kann die Kopien nicht speichern: Sie sind weg, sobald du die Seite schließt.
compare-full = Höchstens { $most } lassen sich vergleichen.
compare-this = Dieses Setup
compare-alone = Wähle ein anderes Setup, oder stell eine Kopie daneben und ändere etwas.
compare-same = Keine Unterschiede.
compare-working = …
compare-what = Was
compare-outcomes = Ergebnisse
compare-differences = Unterschiede
compare-sure = Nächte in { $often }
compare-even = Nächte in der Hälfte der Fälle
compare-chance = Chance auf die gewünschten Nächte
compare-lowest = Niedrigster Ladezustand
compare-use = Verbrauch pro Tag
compare-usable = Nutzbare Energie
compare-money = Module, Batterie und Ladegerät, neu
compare-weight = Gewicht von Modulen und Batterie
compare-weight-per-kwh = Batteriegewicht je nutzbarer kWh
compare-life-cost = Kosten je nutzbarer kWh über die Lebensdauer
compare-band = { $low } bis { $high }
compare-life = Blei gegen Lithium zu deinen Preisen
compare-life-how = Preis geteilt durch die Energie, die die Batterie bei üblicher Entladetiefe in allen ihren Zyklen abgibt. Die Zyklenzahlen sind eine weite Spanne typischer Werte. Wird sie nur zwei Wochen im Jahr genutzt, altert eine Batterie vor allem durch die Zeit.
compare-batteries = Warum die Batterien verschieden abschneiden
compare-batteries-how = Jede auf ihrer Reise, bei durchschnittlichem Wetter und der Temperatur, die die Batterie dort hat. Kälte macht bei Blei einen Teil der Ladung unerreichbar und verhindert bei Lithium das Laden. Fast voll lädt Blei nur langsam und verliert einen Teil der Ladung.
reason-usable = Nutzbarer Teil der aufgedruckten Energie
reason-cold = Erreichbar in der kältesten Stunde
reason-fast = Abgegeben bei Entladung in 5 h statt 20 h
reason-stored = Gespeicherter Anteil beim Laden über 80 %
reason-taken = Höchster Ladestrom bei 90 %
reason-full = Von deiner Untergrenze bis voll, stärkstes Ladegerät
reason-lost = Verlust durch Laden und Widerstand
reason-sag = Niedrigste Spannung vor deiner Untergrenze, größtes Gerät läuft
reason-cut-out = Würde vor deiner Untergrenze wegen Unterspannung abschalten
reason-no-charge = Nimmt keine Ladung auf unter
reason-locked = Wegen Kälte nicht geladen
reason-management = Eigenverbrauch der Batterie-Elektronik
reason-standing = Verlust in 30 Tagen Standzeit
differ-times = { $name }, wann
differ-all-loads = Alle Geräte
differ-chemistry = Batterieart
differ-capacity = Batterie
differ-health = Batteriezustand
differ-soc-min = Untergrenze
differ-soc-start = Ladezustand bei Ankunft
differ-system = Bordnetz
differ-battery-place = Einbauort der Batterie
differ-heated = Batterieheizung
differ-inverter = Wechselrichter
differ-inverter-idle = Wechselrichter, Leerlaufverbrauch
differ-switching = Wechselrichter an
differ-solar = Solar
differ-tilt = Neigung
differ-facing = Ausrichtung
differ-mounting = Befestigung der Module
differ-controller = Solarladeregler
differ-shade = Schatten am Mittag
differ-driving-charger = Laden beim Fahren
differ-driving-every = Fahren
differ-driving-time = Fahrzeit
differ-hook-up-charger = 230-V-Ladegerät
differ-hook-up-every = Landstrom
differ-other = Andere Quellen
differ-place = Ort
differ-arrival = Ankunft
differ-nights = Gewünschte Nächte
differ-air = Mittlere Temperatur
differ-heated-to = Innentemperatur
differ-use-factor = Verbrauch, vor Ort gelernt
differ-sun-factor = Sonne, vor Ort gelernt
value-absent = –
value-yes = ja
value-every = { $n ->
    [one] jeden Tag
   *[other] alle { $n } Tage
}
value-relay = Trennrelais, { $limit }
alternatives-title = Was würde etwas ändern?
alternative-as-it-is = So wie es ist
alternative-battery = Eine zweite Batterie wie deine
alternative-lithium = Lithium (LiFePO4), gleich groß
alternative-panel = Ein zweites Modul wie deines
alternative-drive = Jeden zweiten Tag eine Stunde fahren
alternative-drive-charger = Ein Ladebooster und jeden zweiten Tag eine Stunde fahren
alternative-lasts = { $sure_n ->
    [one] { $sure } Nacht sicher
   *[other] { $sure } Nächte sicher
}. { $n ->
    [one] Chance auf { $n } Nacht: { $chance }
   *[other] Chance auf { $n } Nächte: { $chance }
}
