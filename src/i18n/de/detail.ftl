# Below the answer: where it comes from and what to know of it.
answer-balance = Ein durchschnittlicher Tag
answer-drains = Die größten Verbraucher
answer-usable-share = { $share } der nutzbaren Energie
answer-by-night = Nacht für Nacht
answer-certainty = Wie sicher ist das?
drawer-inverter = Wechselrichter
drawer-inverter-idle = Wechselrichter, Leerlaufverbrauch
drawer-electronics = Solarladeregler und Batterie-Elektronik
balance-sun = Solarstrom, genutzt
balance-driving = Beim Fahren geladen
balance-hook-up = Aus Landstrom
balance-other = Aus anderen Quellen
balance-loads = Geräte
balance-inverter = Verlust im Wechselrichter
balance-electronics = Solarladeregler und Batterie-Elektronik
balance-battery-losses = Verlust in der Batterie und ihren Kabeln
balance-stored = Änderung des Batterieinhalts
balance-unused-sun = Solarstrom, ungenutzt: Batterie voll oder kalt
balance-unmet = Gebraucht, aber nicht verfügbar
night-caption = Jede Nacht bei durchschnittlichem Wetter; die Chance gilt für alle Wetterverläufe
night-head-night = Nacht vom
night-head-chance = Chance, dass die Batterie hält
night-head-lowest = Niedrigster Ladezustand
night-head-sun = Solarstrom, genutzt
night-head-use = Verbraucht
answer-notes = Gut zu wissen
note-cut-out = { $name } würde sich ab { $when } wegen Unterspannung selbst abschalten: { $volts } an den Klemmen, obwohl die Batterie noch zu { $soc } geladen ist. Die Vorhersage rechnet so, als liefe das Gerät weiter.
note-cut-out-cable = Der Spannungsabfall im Kabel des Geräts ist eingerechnet: der aus „Kabel prüfen“, sonst 0,6 V je 12 V.
note-cold-lock = { $hours } lang hätten Sonne oder Ladegerät laden können, aber die Lithiumbatterie war unter { $temp_0 } und nahm nichts auf. Lade sie nie unter { $temp_0 }, außer ihr Hersteller erlaubt es.
note-cold-capacity = In der kältesten Stunde gibt die Batterie nur { $share } ihrer Nennkapazität her; deine Untergrenze ist deshalb früher erreicht.
note-lead-hardly-full = Die Batterie wird hier nie oder fast nie voll. Blei, das lange nur teilgeladen ist, altert schnell (Sulfatierung). Lade sie etwa einmal pro Woche ganz voll, zum Beispiel am Landstrom.
note-lead-full = Die Batterie wird pro Woche an etwa { $days_n ->
    [one] { $days } Tag
   *[other] { $days } Tagen
} voll. Blei braucht das mindestens etwa einmal pro Woche, sonst altert es schnell (Sulfatierung).
note-lead-full-daily = Die Batterie wird fast jeden Tag voll. So altert Blei nicht vor der Zeit.
note-unmet = Batterie leer ab { $when }: Danach läuft nichts, bis wieder geladen wird.
note-unused-sun = Im Schnitt bleiben pro Tag { $amount } Solarstrom ungenutzt, weil die Batterie schon voll ist. Lass stromhungrige Geräte um die Mittagszeit laufen.
note-no-inverter = Etwas läuft über einen Wechselrichter, aber unter „Batterie“ ist keiner eingetragen.
note-fuel = Andere Quellen verbrennen während des Aufenthalts { $fuel } Kraftstoff. Lass sie nie in oder nahe an einem geschlossenen Raum laufen: Kohlenmonoxid tötet.
sure-own = Sonne nach deinen eigenen Monatswerten, angenommen auf ±{ $accuracy } genau.
sure-world = Sonne aus der Klimatabelle (Satelliten, Wetterstationen und Schätzungen; { $credit }). Monatsmittel sind auf etwa ±{ $accuracy } genau.
sure-region = Sonne nach typischen Werten einer Region in { $distance } Entfernung, nicht gemessen: auf etwa ±{ $accuracy } genau. Eigene Monatswerte unter „Reise“ sind besser.
sure-latitude = Sonne nur nach dem Breitengrad geschätzt, auf etwa ±{ $accuracy } genau. Trag unter „Reise“ eigene Monatswerte ein.
sure-odds = Deine Reisetage werden hunderte Male durchgerechnet, jedes Mal mit anderem Wetter und den wahrscheinlichen Fehlern von Klima und Verbrauch. Im Vergleich mit Messjahren an drei Orten lagen die Chancen an zweien um 5 Prozentpunkte daneben, am dritten um 9, dort zu vorsichtig. Rechne anderswo mit bis zu 10.
sure-average = Linie und Tabelle zeigen durchschnittliches Wetter. Das schattierte Band und die Laternen zeigen die Chancen.
sure-limits = Schnee auf den Modulen ist nur nach Temperatur und Neigung geschätzt. Nicht eingerechnet: Schatten und alles andere, was du nicht eingetragen hast. Das ist eine Schätzung, kein Versprechen: Halte für alles Medizinische eine zweite Stromquelle bereit.
chart-mark-restart = Ab dem Messwert
night-head-volts = Niedrigste Spannung, wenn das größte Gerät läuft
flow-title = Wohin die Energie eines durchschnittlichen Tages geht
flow-panels = Licht auf den Modulen
flow-from-battery = Aus der Batterie
flow-snow = Schnee auf den Modulen
flow-shade-glass = Schatten, Spiegelung am Glas
flow-heat-low-light = Hitze, schwaches Licht
flow-dirt-wires = Schmutz, Fehlanpassung, Kabel
flow-controller = Umwandlung im Solarladeregler
flow-charging-cable = Ladeleitung von der Lichtmaschine
flow-charging = Ladeverluste
flow-resistance = Widerstand der Batterie
flow-self-discharge = Selbstentladung
flow-conversion = Umwandlung im Wechselrichter
flow-battery-heating = Heizung der Batterie
flow-direct-loads = Geräte an der Batterie
flow-mains-loads = Geräte am Wechselrichter
flow-into-battery = In die Batterie
term-watt = W und Wh.
term-watt-text = Ein Watt (W) sagt, wie schnell gerade Energie verbraucht wird, wie das Tempo eines Autos. Eine Wattstunde (Wh) ist eine Energiemenge, wie die gefahrene Strecke: 20 W für 3 h sind 60 Wh.
flow-cables = Kabel von der Batterie
answer-details = Einzelheiten
wish-nights = { $n ->
    [one] Du willst { $n } Nacht
   *[other] Du willst { $n } Nächte
}
wish-chance = { $n ->
    [one] Du willst { $n } Nacht. Chance: { $chance }
   *[other] Du willst { $n } Nächte. Chance: { $chance }
}
night-title = Nacht ab { $night }: { $chance }
night-figures = Bei durchschnittlichem Wetter sinkt der Ladezustand auf { $lowest }. Die Sonne bringt an diesem Tag { $sun }, du verbrauchst { $used }.
