# The answer.
answer-name = Die Antwort
answer-none = Trag ein, was du nutzt, dann erscheinen hier die Nächte.
answer-nights = { $n ->
    [one] Nacht
   *[other] Nächte
}
answer-more = oder mehr
answer-sure = hält die Batterie, in neun von zehn Fällen
answer-likely = In der Hälfte der Fälle: { $n ->
    [one] { $n } Nacht
   *[other] { $n } Nächte
}
answer-asked = Gewünscht: { $n ->
    [one] { $n } Nacht
   *[other] { $n } Nächte
}.
answer-chance = Chance, dass sie alle Nächte hält: { $chance }
answer-first-low = Erreicht den niedrigsten erlaubten Stand am { $when }
answer-never-low = Bleibt über dem niedrigsten erlaubten Stand
answer-lowest = Tiefster Ladezustand: { $soc }
answer-working = Spielt das Wetter durch …
answer-glance = hält die Batterie. Ganze Antwort zeigen.
answer-spoken = { $n ->
    [one] { $n } Nacht hält die Batterie.
   *[other] { $n } Nächte hält die Batterie.
} { $low }
answer-course = Verlauf der Batterie
answer-balance = Ein durchschnittlicher Tag
answer-drains = Die größten Verbraucher
answer-usable-share = { $share } der nutzbaren Kapazität
answer-by-night = Nacht für Nacht
answer-certainty = Wie sicher ist das?
moment = { $weekday } { $date }, { $time }
drawer-inverter = Wechselrichter
drawer-inverter-idle = Wechselrichter im Leerlauf
drawer-electronics = Solarladeregler und Batterie-Elektronik
balance-sun = Sonne genutzt
balance-driving = Vom Fahren
balance-hook-up = Vom Landstrom
balance-other = Von anderen Quellen
balance-loads = Geräte
balance-inverter = Verlust im Wechselrichter
balance-electronics = Regler und Batterie-Elektronik
balance-battery-losses = Verlust in der Batterie
balance-stored = Änderung des Batterieinhalts
balance-unused-sun = Sonne ungenutzt: Batterie voll oder kalt
balance-unmet = Gebraucht, aber nicht mehr da
night-caption = Jede Nacht bei durchschnittlichem Wetter; die Chance gilt über alles Wetter
night-head-night = Nacht ab
night-head-chance = Chance, sie zu überstehen
night-head-lowest = Tiefster Ladezustand
night-head-sun = Sonne genutzt
night-head-use = Verbraucht
answer-notes = Gut zu wissen
note-cut-out = { $name } würde sich ab { $when } wegen Unterspannung selbst abschalten: { $volts } an den Klemmen, obwohl noch { $soc } in der Batterie sind. Die Vorhersage rechnet so, als liefe es weiter.
note-cold-lock = { $hours } lang boten Sonne oder Ladegerät einer Lithiumbatterie unter 0 °C Energie an, und sie nahm keine auf. Lade sie nie unter 0 °C, außer ihr Hersteller erlaubt es.
note-cold-capacity = In der kältesten Stunde gibt die Batterie { $share } ihrer Nennkapazität her; deshalb steigt die Grenze.
note-unmet = Leer ab { $when }: Was danach gebraucht wird, ist nicht mehr da.
note-unused-sun = Im Schnitt trifft Sonne für { $amount } am Tag auf eine volle Batterie. Lass stromhungrige Geräte um die Mittagszeit laufen.
note-no-inverter = Etwas läuft über einen Wechselrichter, aber unter „Strom“ ist keiner eingetragen.
note-fuel = Andere Quellen verbrennen während des Aufenthalts { $litres } L Kraftstoff. Lass sie nie in oder nahe bei einem geschlossenen Raum laufen: Kohlenmonoxid tötet.
sure-own = Sonne nach deinen eigenen Monatswerten; sie gelten als auf ±{ $accuracy } genau.
sure-grid = Sonne nach Satellitenmessungen von 2006 bis 2025 ({ $credit }), im Monatsmittel auf etwa ±{ $accuracy } genau.
sure-region = Sonne nach üblichen Werten für { $name }, { $distance } km entfernt, nicht gemessen: auf etwa ±{ $accuracy } genau. Eigene Monatswerte unter „Reise“ sind besser.
sure-latitude = Sonne nur nach dem Breitengrad geschätzt, auf etwa ±{ $accuracy } genau. Trag unter „Reise“ eigene Monatswerte ein.
sure-odds = Für deine Reisetage werden zweitausend Wetterverläufe durchgespielt. Im Vergleich mit zwanzig gemessenen Jahren trafen die Chancen auf 5 bis 10 Prozentpunkte genau zu; besser ist keine Vorhersage so weit im Voraus.
sure-no-chance = Das Wetter ändert hier nichts: kein Solarmodul, oder das Wetter jedes Tages ist vorgegeben.
sure-average = Linie und Tabelle zeigen durchschnittliches Wetter; das schattierte Band und die Laternen zeigen die Chancen.
sure-limits = Schnee auf dem Modul sowie Schatten und alles andere, was du nicht eingetragen hast, sind nicht eingerechnet. Das ist eine Schätzung, kein Versprechen: Halte für alles Medizinische eine zweite Quelle bereit.
chart-mark-restart = Ab Messwert
night-head-volts = Niedrigste Spannung, wenn das größte Gerät läuft
flow-title = Wohin die Energie eines durchschnittlichen Tages geht
flow-panels = Licht auf den Modulen
flow-from-battery = Aus dem Batterievorrat
flow-shade-glass = Schatten, Spiegelung am Glas
flow-heat-low-light = Hitze, schwaches Licht
flow-dirt-wires = Schmutz, Toleranzen, Kabel
flow-controller = Umwandlung im Solarladeregler
flow-charging-cable = Ladeleitung vom Motor
flow-charging = Ladeverluste
flow-resistance = Widerstand der Batterie
flow-self-discharge = Selbstentladung
flow-conversion = Wechselrichter, beim Umwandeln
flow-battery-heating = Heizung der Batterie
flow-direct-loads = Geräte an der Batterie
flow-mains-loads = Geräte am Wechselrichter
flow-into-battery = In den Batterievorrat
