# Appliances.
loads-title = Was du nutzt
loads-none = Hier ist noch nichts. Trag ein, was du an Bord hast: je zweimal tippen.
loads-add = Gerät hinzufügen
loads-full = Die Liste fasst höchstens { $most } Geräte.
load-count-it = { $name } mitrechnen
load-deleted = Gelöscht: { $name }
load-name = Name
load-learned = Woher kennst du die Leistung?
load-quantity = Wie viele
load-feed = Läuft über
load-more = Standby, Anlauf, Abschaltung, Gruppe
load-group = Gruppe
load-done = Fertig
load-duplicate = Kopieren
load-delete = Löschen
load-standby = Leistung bei Nichtgebrauch
load-standby-hint = Je Gerät, solange es angeschlossen bleibt.
load-spread = Kann danebenliegen um
load-spread-hint = Leer: was je nach Herkunft des Werts üblich ist.
load-surge = Anlauf- zu Betriebsleistung
load-cut-out = Schaltet bei Unterspannung selbst ab
load-cut-out-hint = Wie viele Kompressorkühlschränke und Heizungen. Angabe für 12 V; bei 24 V verdoppelt. Die Vorhersage sagt, wann das einträte, und rechnet so, als liefe es weiter.
load-cut-out-off = Aus unter
load-cut-out-on = Wieder an über
load-driving-only = Nur für den Betrieb bei laufendem Motor gedacht: Im Stand leert es eine Batterie binnen Stunden.
load-counted-elsewhere = Der Teil „Strom“ fragt nach demselben Wert. Trag ihn nur an einer Stelle ein.
load-no-inverter = 230-V-Geräte brauchen einen Wechselrichter, und es ist keiner eingetragen.
load-enter-inverter = Wechselrichter eintragen

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
draw-volts = bei
draw-hint = Gib eines von beiden ein, das andere folgt. Eine Leistung (W) ist keine Energiemenge (Wh).
draw-hint-mains = Gib eines von beiden ein, das andere folgt. Beides auf der 230-V-Seite; die Verluste des Wechselrichters kommen dazu.
draw-hint-energy = Hier sagt sie nur, wie lange es dauert; die Energie zählt wie unten angegeben.

use-title = Wie du es nutzt
use-rule = Art der Nutzung
use-daily = So lange am Tag
use-always = Immer an
use-duty-air = Mit Thermostat, je nach Wetter
use-duty = Mit Thermostat, fester Zeitanteil
use-charges = Lädt ein Gerät
use-litres = Pumpt Wasser
use-uses = Kurze Einsätze
use-energy = Energie am Tag ist bekannt
use-hours = Stunden am Tag
use-minutes = oder Minuten am Tag
use-duty-at-25 = Zeitanteil bei 25 °C
use-duty-at-25-hint = Er folgt der Temperatur von Ort und Monat.
use-duty-share = Zeitanteil, den es läuft
use-every-days = Voll geladen alle
use-cell = Sein Akku
use-cell-hint = In mAh, wie aufgedruckt.
use-cell-volts = Spannung dieses Akkus
use-cell-volts-hint = Handys etwa 3,85 V, nicht die 5 V des Steckers.
use-charger = Wirkungsgrad des Ladegeräts
use-water = Wasser am Tag
use-flow = Förderleistung der Pumpe
use-twice = Zweimal gepumpt
use-twice-hint = Einmal vom Kanister an Bord, einmal aus dem Hahn.
use-times = Wie oft am Tag
use-seconds = Jeweils
use-energy-a-day = Energie am Tag
use-energy-hint = In Wh: eine Menge, wie sie ein Messgerät nach 24 Stunden zeigt.

window-title = Wann
window-any = Jederzeit
window-day = Tagsüber
window-evening = Abends
window-night = Nachts
window-morning = Morgens
window-own = Eigene Zeiten
window-from = Von
window-to = Bis
window-too-short = Es läuft { $time } am Tag, länger als diese Zeiten. Es füllt sie aus, der Rest verteilt sich auf die übrigen Stunden.

add-title = Gerät hinzufügen
add-search = Suche: Kühlbox, Handy…
add-found = { $n ->
    [one] { $n } gefunden
   *[other] { $n } gefunden
}
add-nothing = Nichts gefunden. Nimm ein leeres Gerät und benenne es selbst.
add-blank = Leeres Gerät
add-done = Fertig
add-added = Hinzugefügt: { $name }
add-in-list = { $n } in deiner Liste
