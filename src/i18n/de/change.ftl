# What to change: what helps, ways to more nights, what to buy, setups side by side.
change-parts = Ansichten
part-helps = Was hilft
part-ways = Mehr Nächte
change-working = Wird durchgerechnet …
change-failed = Das lässt sich nicht berechnen: Ein Wert zu Wetter oder Klima ergibt keinen Sinn. Bitte sieh unter „Reise“ nach.
change-beware = Vorsicht:
change-towards-south = Süden
change-towards-north = Norden

helps-title = Was am meisten hilft
helps-told = Jede Änderung wird noch einmal über deinen ganzen Aufenthalt durchgespielt, mit denselben vielen Wetterverläufen. Geändert wird erst, wenn du es sagst.
helps-now = So wie es ist: { $sure_n ->
    [one] { $sure } Nacht
   *[other] { $sure } Nächte
} in 9 von 10 Fällen, { $even } in der Hälfte der Fälle.
helps-progress = Spielt jede Änderung durch: { $done }
helps-none = Es fand sich nichts, was der Rede wert wäre. Vielleicht hält die Batterie ohnehin.
helps-more = { $n ->
    [one] { $n } weitere Änderung
   *[other] { $n } weitere Änderungen
}
gain-mean = +{ $amount_n ->
    [one] { $amount } Nacht
   *[other] { $amount } Nächte
} im Schnitt
gain-hours = +{ $amount } bis zur Grenze
gain-lowest = +{ $amount } beim niedrigsten Ladezustand
help-sure = in 9 von 10 Fällen: { $from } → { $to_n ->
    [one] { $to } Nacht
   *[other] { $to } Nächte
}
help-even = in der Hälfte der Fälle: { $from } → { $to_n ->
    [one] { $to } Nacht
   *[other] { $to } Nächte
}
help-lowest = niedrigster Ladezustand: { $from } → { $to }
help-apply = Übernehmen
help-apply-name = Übernehmen: { $change }
toast-applied = Geändert: { $change }

ways-title = Wege zu mehr Nächten
ways-told = Sag, wie viele Nächte und wie sicher es halten soll. Nightbank sucht bis zu drei Wege: Gewohnheiten, Fahren oder Landstrom und Anschaffungen.
ways-nights = Gewünschte Nächte
ways-chance = Mit einer Chance von
ways-now = { $n ->
    [one] So wie es ist, liegt die Chance auf { $n } Nacht bei { $chance }.
   *[other] So wie es ist, liegt die Chance auf { $n } Nächte bei { $chance }.
}
ways-reached = { $n ->
    [one] Dein Setup hält schon jetzt { $n } Nacht mit einer Chance von { $chance }. Verlange mehr Nächte oder eine höhere Chance.
   *[other] Dein Setup hält schon jetzt { $n } Nächte mit einer Chance von { $chance }. Verlange mehr Nächte oder eine höhere Chance.
}
ways-none = Kein Weg gefunden: Nichts, was sich ändern ließe, bringt dich dem näher.
way-habits = Gewohnheiten und Einstellungen
way-on-the-move = Fahren oder Landstrom
way-purchase = Anschaffungen
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
way-facts = In 9 von 10 Fällen: { $sure_n ->
    [one] { $sure } Nacht
   *[other] { $sure } Nächte
}. In der Hälfte der Fälle: { $even_n ->
    [one] { $even } Nacht
   *[other] { $even } Nächte
}. Niedrigster Ladezustand bei durchschnittlichem Wetter: { $lowest }.
way-longer = { $n ->
    [one] Dieser Weg ändert auch die Aufenthaltsdauer auf { $n } Nacht.
   *[other] Dieser Weg ändert auch die Aufenthaltsdauer auf { $n } Nächte.
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
change-off-at-night = Von 23 bis 7 Uhr abschalten: { $name }
change-unplug = Zwischendurch ausstecken: { $name }
change-shorter = { $name }: { $amount } weniger pro Tag
change-fewer = { $name }: { $amount }-mal weniger pro Tag
change-share = { $name }: nur { $amount } der geplanten Nutzung
change-warmer-fridge = { $name }: etwa 2 °C wärmer einstellen
change-dc = { $name }: mit Adapter an { $amount } betreiben, nicht über den Wechselrichter
change-midday = { $name }: um die Mittagszeit nutzen
change-inverter-when-used = Wechselrichter nur einschalten, solange er gebraucht wird
change-inverter-sleep = Wechselrichter schlafen lassen, solange nichts läuft (dann { $amount })
change-tilt = { $name }: auf { $tilt } aufstellen, Richtung { $facing }
change-tilt-roof = { $name }: mit Halterung auf { $tilt } aufstellen, Richtung { $facing }
change-clean = { $name }: Glas putzen
change-out-of-shade = { $name }: so stehen, dass kein Schatten darauf fällt
change-mppt = { $name }: MPPT-Regler statt PWM
change-portable = Ein loses Solarmodul mit { $amount } aufstellen, um { $tilt } geneigt, Richtung { $facing }
change-drive = An Tag { $day } ({ $date }) { $amount } fahren
change-hook-up = { $n ->
    [one] Jede Nacht Landstrom
   *[other] Alle { $n } Nächte Landstrom
}
change-arrive-full = Mit voller Batterie ankommen
change-battery-inside = Batterie nach innen setzen, wo es wärmer ist
change-battery-locker = Batterie in ein Staufach setzen, wo es wärmer ist
change-heated = Batterie mit eigener Heizung, damit sie bei Frost lädt
change-battery = Mehr Batteriekapazität derselben Art: { $amount }
change-lithium = LiFePO4 mit derselben Kapazität: { $amount }
change-solar = Mehr Solar: { $amount }
change-dc-dc = Ein Ladebooster mit { $amount }
change-dc-dc-drive = { $n ->
    [one] Ein Ladebooster mit { $amount }, und jeden Tag eine Stunde fahren
   *[other] Ein Ladebooster mit { $amount }, und alle { $n } Tage eine Stunde fahren
}

part-buy = Was kaufen
part-year = Das Jahr
buy-title = Was kaufen
buy-told = Die kleinsten Solarmodule zu jeder Batterie und die kleinste Batterie zu jeder Solarleistung, mit denen deine Geräte durchhalten.
buy-from = Ab Monat
buy-to = Bis Monat
buy-this-month = Monat der Reise
buy-progress = Probiert Größen: { $done }
buy-hard = Der schwierigste der gewählten Monate ist { $months }. Die Größen unten gelten dafür.
buy-least = Am wenigsten zu kaufen
buy-cheapest = Am günstigsten, alles neu
buy-lightest = Am leichtesten
buy-choice = { $kind } { $battery } mit { $solar } Solar
buy-price = { $more } zusätzlich zu dem, was du hast; { $all } alles neu; { $weight } insgesamt
buy-take = Diese Größen nehmen
buy-none = Nicht einmal { $solar } Solar mit { $battery } Batterie reichen. Verlange weniger Nächte, einen anderen Monat oder eine niedrigere Chance, oder verbrauche weniger.
buy-sizes = Alle Größen mit { $kind }
buy-by-battery = { $kind }: kleinste Solarleistung zu jeder Batterie
buy-by-solar = { $kind }: kleinste Batterie zu jeder Solarleistung
buy-battery = Batterie
buy-solar = Solar
buy-smallest-solar = Kleinste Solarleistung
buy-smallest-battery = Kleinste Batterie
buy-too-little = nichts reicht
buy-have = was du hast
buy-curve = { $kind }: Batterie und Solar, die gerade reichen
buy-curve-told = Je mehr Batterie, desto weniger Solar ist nötig. Von { $least } Batterie mit { $solar } Solar bis { $most } Batterie mit { $few }.
buy-how = Geräte, Fahren, Landstrom, Neigung, Schatten und Alter der Batterie bleiben, wie sie sind. Gib etwas für kommende Jahre dazu.
prices-title = Preise und Gewichte
prices-told = Beginne mit diesen runden Werten und setze deine eigenen ein; an den Nächten ändern sie nichts.
prices-currency = Währung
prices-solar = Solar mit Befestigung, je 100 W
prices-solar-weight = Gewicht davon, je 100 W
prices-lead = Bleibatterie, je 100 Ah bei 12 V
prices-lead-weight = Gewicht davon, je 100 Ah bei 12 V
prices-lithium = LiFePO4, je 100 Ah bei 12 V
prices-lithium-weight = Gewicht davon, je 100 Ah bei 12 V
prices-dc-dc = Ladebooster, eingebaut

year-title = Nächte übers Jahr
year-told = Derselbe Aufenthalt, in jedem Monat begonnen, an diesem Ort mit diesem Setup.
year-progress = Spielt das Jahr durch: { $done } von 12 Monaten

part-compare = Vergleich
compare-title = Setups im Vergleich
compare-told = Das angezeigte Setup neben anderen von dir, jedes im Wetter seines eigenen Ortes. Stell eine Kopie daneben, bevor du etwas änderst, und sieh, was die Änderung bewirkt.
compare-with = Vergleichen mit
compare-copy = Kopie hiervon danebenstellen
compare-copy-name = Kopie { $n }
compare-drop = Wegnehmen: { $name }
compare-copies-passing = Diese Kopien lassen sich in diesem Browser nicht behalten: Sie sind weg, sobald die Seite geschlossen wird.
compare-full = Mehr als { $most } passen nicht nebeneinander.
compare-this = Angezeigt
compare-alone = Wähle ein anderes Setup, oder stell eine Kopie daneben und ändere etwas.
compare-same = Sie unterscheiden sich nicht.
compare-working = …
compare-what = Was
compare-outcomes = Was jeweils herauskommt
compare-differences = Worin sie sich unterscheiden
compare-sure = Nächte in 9 von 10 Fällen
compare-even = Nächte in der Hälfte der Fälle
compare-chance = Chance auf die gewünschten Nächte
compare-lowest = Niedrigster Ladezustand
compare-use = Verbrauch pro Tag
compare-usable = Nutzbare Energie
compare-money = Module, Batterie und Lader, neu
compare-weight = Gewicht von Modulen und Batterie
compare-weight-per-kwh = Batteriegewicht je nutzbarer kWh
compare-life-cost = Kosten je nutzbarer kWh über die Lebensdauer
compare-band = { $low } bis { $high }
compare-life = Blei gegen Lithium zu deinen Preisen
compare-life-how = Preis geteilt durch das, was die Batterie bei üblicher Entladetiefe hergibt, bis ihre Zyklen aufgebraucht sind. Die Zyklen sind eine weite Spanne üblicher Werte, nicht die eines Herstellers; eine Batterie, die zwei Wochen im Jahr genutzt wird, altert vor allem durch die Zeit.
compare-batteries = Warum die Batterien verschieden abschneiden
compare-batteries-how = Jede auf ihrer Reise, bei durchschnittlichem Wetter und der Temperatur, die die Batterie dort hat. Kälte macht bei Blei einen Teil der Ladung unerreichbar und lässt in Lithium keine hinein; fast voll nimmt Blei nur langsam Ladung auf und verliert einen Teil davon.
reason-usable = Nutzbarer Teil der aufgedruckten Energie
reason-cold = Erreichbar in der kältesten Stunde
reason-fast = Abgegeben bei Entladung in 5 h statt 20 h
reason-stored = Gespeicherter Anteil beim Laden über 80 %
reason-taken = Höchster Ladestrom bei 90 %
reason-full = Von deiner Grenze bis voll, stärkstes Ladegerät
reason-lost = Verlust durch Laden und Widerstand
reason-sag = Niedrigste Spannung vor deiner Grenze, größtes Gerät läuft
reason-cut-out = Würde vor deiner Grenze wegen Unterspannung abschalten
reason-no-charge = Nimmt keine Ladung auf unter
reason-locked = Wegen Kälte nicht geladen
reason-management = Eigenbedarf der Batterieelektronik
reason-standing = Verlust in 30 Tagen Standzeit
differ-all-loads = Alle Geräte
differ-chemistry = Batterieart
differ-capacity = Batterie
differ-health = Batteriezustand
differ-soc-min = Deine Grenze
differ-soc-start = Stand bei Ankunft
differ-system = Bordnetz
differ-battery-place = Batterie steht
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
differ-heated-to = Geheizt auf
differ-use-factor = Verbrauch, vor Ort gelernt
differ-sun-factor = Sonne, vor Ort gelernt
value-absent = –
value-yes = ja
value-every = { $n ->
    [one] jeden Tag
   *[other] alle { $n } Tage
}
value-relay = Trennrelais, { $limit }
