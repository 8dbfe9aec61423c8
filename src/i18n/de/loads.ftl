# Appliances.
loads-title = Was du nutzt
loads-none = Hier ist noch nichts. Trag ein, was du an Bord hast: je zweimal tippen.
loads-add = Gerät hinzufügen
loads-full = Die Liste fasst höchstens { $most } Geräte.
loads-scaled = An deine Messwerte angepasst: { $factor }
load-count-it = { $name } mitrechnen
load-deleted = Gelöscht: { $name }
load-name = Name
load-learned = Woher stammt dieser Wert?
load-quantity = Anzahl
load-feed = Läuft über
load-more = Genauer
load-group = Gruppe
load-done = Fertig
load-duplicate = Duplizieren
load-delete = Löschen
load-standby = Standby-Leistung
load-standby-hint = Je Gerät, solange es angeschlossen bleibt.
load-spread = Unsicherheit
load-spread-hint = Leer: was bei dieser Herkunft des Werts üblich ist.
load-surge = Anlaufleistung (× Betriebsleistung)
load-cut-out = Schaltet bei Unterspannung selbst ab
load-cut-out-hint = Das tun viele Kompressorkühlschränke und Heizungen. Angabe für 12 V; bei 24 V verdoppelt. Die Vorhersage sagt, wann das einträte, rechnet aber so, als liefe das Gerät weiter.
load-cut-out-off = Aus unter
load-cut-out-on = Wieder an über
load-driving-only = Nur bei laufendem Motor verwenden: Im Stand ist eine Batterie damit binnen Stunden leer.
load-counted-elsewhere = Unter „Batterie“ wird nach demselben Wert gefragt. Trag ihn nur an einer Stelle ein.
load-no-inverter = Braucht einen Wechselrichter.
load-enter-inverter = Eintragen
load-take-away = Wieder wegnehmen
load-next = Nächstes Gerät

quick-cost = { $amount }, { $share } deines Verbrauchs
quick-off = Ausgeschaltet. Eingeschaltet wären es { $amount }.
quick-inverter = Davon braucht der Wechselrichter { $amount }.
summary-inverter-takes = mit { $amount } für den Wechselrichter

badge-no-inverter = Kein Wechselrichter
badge-too-much = Zu viel für den Wechselrichter
badge-start = Zu viel beim Anlaufen
badge-battery = Zu viel für die Batterie
badge-off = Schaltet zu früh ab
badge-inverter-off = Wechselrichter schaltet zu früh ab
badge-not-with = Nicht mit: { $name }
badge-not-with-told = Zusammen mit { $name } sind es { $running }, beim Anlaufen kurz bis { $starting }. Das ist zu viel für den Wechselrichter. Nutze eins nach dem anderen.

light-title = Licht für einen Abend
light-scene = Wann oder wo
light-tap = Tippe die Lampen an, die brennen.
light-kept = eigene Zeiten
light-piece = { $name } { $n }
scene-morning = Morgens
scene-evening = Abends
scene-night = Nachts
scene-bathroom = Bad
scene-awning = Vorzelt

group-cold = Kühlen und Gefrieren
group-heat = Heizung
group-air = Lüfter und Klima
group-water = Wasser
group-light = Licht
group-screens = Bild und Ton
group-net = Internet
group-health = Gesundheit
group-kitchen = Küche
group-body = Haare, Zähne, Wäsche
group-tools = Werkzeug und E-Bikes
group-vehicle = Fahrzeug
group-standby = Standby
group-other = Sonstiges

feed-dc = Batterie
feed-inverter = Wechselrichter

draw-title = Leistungsaufnahme im Betrieb, je Stück
draw-power = Leistung
draw-current = oder Strom
draw-volts = bei Spannung
draw-hint = Gib eines von beiden ein, das andere wird berechnet. Eine Leistung (W) ist keine Energiemenge (Wh).
draw-hint-mains = Gib eines von beiden ein, das andere wird berechnet. Beides auf der 230-V-Seite; die Verluste des Wechselrichters kommen dazu.
draw-hint-energy = Hier bestimmt die Leistung nur, wie lange es läuft. Als Energie zählt der Wert weiter oben.

use-title = Wie du es nutzt
use-rule = Art der Nutzung
use-daily = Feste Dauer pro Tag
use-always = Immer an
use-always-told = Immer an.
use-duty-air = Mit Thermostat, je nach Wetter
use-duty = Mit Thermostat, fester Zeitanteil
use-charges = Lädt einen Akku
use-litres = Pumpt Wasser
use-uses = Kurze Einsätze
use-energy = Energie pro Tag ist bekannt
use-how-long = Wie lange pro Tag
use-duty-at-25 = Zeitanteil bei { $temp_25 }
use-duty-at-25-hint = Er folgt der Temperatur von Ort und Monat.
use-duty-share = Anteil der Zeit, in der es läuft
use-every-days = Voll geladen alle
use-cell = Akku des Geräts
use-cell-hint = In mAh, wie aufgedruckt.
use-cell-volts = Spannung dieses Akkus
use-cell-volts-hint = Handys etwa 3,85 V, nicht die 5 V des Steckers.
use-charger = Wirkungsgrad des Ladegeräts
use-water = Wasser pro Tag
use-flow = Förderleistung der Pumpe
use-twice = Zweimal gepumpt
use-twice-hint = Einmal vom Kanister in den Tank, einmal aus dem Hahn.
use-times = Wie oft pro Tag
use-seconds = Dauer je Nutzung
use-energy-a-day = Energie pro Tag
use-energy-hint = In Wh, wie sie ein Messgerät nach 24 Stunden zeigt.
use-heating = Heizung, nach der Temperatur
use-heating-told = Läuft so viel, wie die Kälte verlangt.
use-cooling = Lüfter oder Kühler, nach der Temperatur
use-driving = Während der Fahrt
use-driving-hint = Läuft, solange du fährst, wie unter „Batterie“ angegeben.
use-once = Einmal, bei Ankunft oder Abfahrt
use-once-when = Wann
use-once-arrival = Bei Ankunft
use-once-leaving = Bei Abfahrt
use-once-long = Wie lange
use-once-hint = Es zählt an diesem einen Tag, nicht in der Energie eines üblichen Tages.
use-heat = Wärmeleistung
use-heat-hint = Bei voller Leistung, vom Typenschild: oft 2.000 oder 4.000 W. Fahrzeug und gewünschte Innentemperatur stehen unter „Reise“.
use-start = Energie für einen Start
use-cooling-at-25 = Anteil der Zeit, in der es bei { $temp_25 } draußen läuft
use-cooling-hint = Ab { $temp_15 }, und je wärmer, desto mehr.
load-place = Aufstellort
load-inside = Drinnen
load-outside = Draußen

window-title = Wann
window-any = Jederzeit
window-day = Tagsüber
window-evening = Abends
window-night = Nachts
window-morning = Morgens
window-own = Eigene Zeiten
window-from = Von
window-to = Bis
window-too-short = Es läuft { $time } pro Tag, länger als diese Zeiten. Es füllt sie aus, der Rest verteilt sich auf die übrigen Stunden.
window-another = Noch eine Zeit
window-away = Diese Zeit wegnehmen
window-nth = Zeit { $n }
window-span = { $from } bis { $to }

add-title = Gerät hinzufügen
add-search = Suche: Kühlbox, Handy …
add-found = { $n ->
    [one] { $n } gefunden
   *[other] { $n } gefunden
}
add-nothing = Nichts gefunden. Nimm ein leeres Gerät und benenne es selbst.
add-blank = Leeres Gerät
add-done = Fertig
add-added = Hinzugefügt: { $name }
add-usual = Mit typischen Werten hinzufügen: { $name }
add-in-list = { $n } in deiner Liste

table-door = Liste einfügen
table-title = Eine Liste hinzufügen
table-back = Zurück
table-paste = Zeilen aus deiner Tabelle
table-paste-hint = Kopiere sie dort samt Überschriften. Auch Namen allein genügen.
table-file = Oder eine Datei wählen (CSV oder Text)
table-source = Woher stammen diese Werte?
table-empty = Darin stehen keine Zeilen.
table-too-large = Das ist zu groß für eine Geräteliste.
table-not-text = Das ist kein Text. Speichere die Tabelle zuerst als CSV.
table-too-wide = Zeile { $line } hat mehr als { $most } Felder.
table-column = Spalte { $n }
table-asked = Was bedeutet „{ $heading }“?
table-mark = Wie viel ist „{ $cell }“?
table-ready = { $n ->
    [one] Ein Gerät
   *[other] { $n } Geräte
}
table-match = Art von { $name }
table-match-none = Etwas anderes
table-line = Zeile { $line }
table-faulty = Unklar
table-leave = { $n ->
    [one] Diese Zeile weglassen
   *[other] Diese { $n } Zeilen weglassen
}
table-columns = Spalten
table-unused = Nicht verwendet
table-replace = Deine jetzigen Geräte ersetzen
table-wait-question = Beantworte zuerst die Fragen oben.
table-wait-rows = Einige Zeilen sind unklar: Berichtige sie oben oder lass sie weg.
table-nothing = Noch kein Gerät zum Hinzufügen.
table-no-room = Die Liste fasst höchstens { $most } Geräte. Nimm bei { $n } das Häkchen weg.
table-add = { $n ->
    [one] Eines hinzufügen
   *[other] { $n } hinzufügen
}
table-added = { $n ->
    [one] Ein Gerät hinzugefügt
   *[other] { $n } Geräte hinzugefügt
}
table-kind-name = Name
table-kind-quantity = Anzahl
table-kind-watts = Watt im Betrieb
table-kind-amps = Ampere im Betrieb
table-kind-volts = Volt
table-kind-energy-one = Wh pro Tag, je Stück
table-kind-energy-all = Wh pro Tag, zusammen
table-kind-charge-one = Ah pro Tag, je Stück
table-kind-charge-all = Ah pro Tag, zusammen
table-kind-hours = Stunden pro Tag
table-kind-minutes = Minuten pro Tag
table-kind-seconds = Sekunden je Benutzung
table-kind-times = Mal pro Tag
table-kind-duty = Anteil der Zeit, %
table-kind-feed = Batterie oder Wechselrichter
table-kind-standby = Watt im Standby
table-kind-code = Von Nightbank geschrieben
table-fault-no-name = Der Name fehlt.
table-fault-sum = Sie zählt andere Zeilen zusammen.
table-fault-none = Kein Gerät: Die Prognose rechnet es selbst dazu.
table-fault-unknown = Ohne Werte, und der Name steht nicht im Katalog.
table-fault-number = { $kind }: „{ $text }“ ist keine Zahl.
table-fault-unit = { $kind }: „{ $text }“ hat eine andere Einheit.
table-fault-range = { $kind }: { $text } liegt nicht zwischen { $min } und { $max }.
table-fault-feed = „{ $text }“: aus der Batterie oder über den Wechselrichter?
table-fault-day = Mehr als 24 Stunden pro Tag.
table-fault-above = Für so viel Energie müsste es mehr als 24 Stunden pro Tag laufen.
table-fault-amps = Ampere über den Wechselrichter: bei wie viel Volt? Ergänze eine Spalte dafür.
table-fault-length = Wie lange dauert eine Benutzung? Ergänze eine Spalte dafür.
table-fault-code = Ihr letztes Feld ist beschädigt. Leere es, dann zählen die Werte.
table-note-hour = Keine Zeit angegeben: 1 Stunde pro Tag.
table-note-usual = Keine Watt angegeben: der übliche Wert.
table-note-disagrees = Watt mal Zeit ergibt { $worked } pro Tag, die Tabelle sagt { $told }. Watt und Zeit zählen.
table-note-amps = Ampere bei { $volts }.
table-note-short = Name gekürzt.
table-note-off = Davon hast du keines: hinzugefügt, aber ausgeschaltet.

take-title = Teile übernehmen
take-about = Hake an, was du in dein Setup übernehmen willst.
take-twice = Eines mit diesem Namen hast du schon. Beide bleiben.
take-panels = Solarmodule, { $peak }: statt deiner
take-battery = Batterie, { $capacity } { $kind }: statt deiner
take-add = In mein Setup übernehmen
take-no-room = Für { $n } davon ist in deiner Liste kein Platz.
take-done = Jetzt in deinem Setup.
