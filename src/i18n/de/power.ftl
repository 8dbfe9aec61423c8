# Battery and what charges it.
power-title = Batterie und Laden
counts-in = Mitrechnen
per-12-volts = Angabe für 12 V; bei 24 V verdoppelt.

bank-title = Batterie
bank-chemistry = Art
chemistry-flooded = Nass (Blei-Säure)
chemistry-agm = AGM
chemistry-gel = Gel
chemistry-lithium = LiFePO4
bank-capacity = Kapazität je Batterie
bank-parallel = Anzahl parallel
bank-system = Bordnetz
system-12 = 12 V
system-24 = 24 V
bank-label = Laut Aufdruck: { $ah } bei { $volts }
bank-real-voltage = Tatsächliche Spannung, voll bis leer
bank-aged = Durch Alter verloren
bank-kept-back = Reserve unter { $lowest }
bank-usable = Nutzbar bei { $at }
bank-usable-trip = In der kältesten Stunde eines normalen Tages auf dieser Reise hat die Batterie etwa { $at }, und { $wh } sind nutzbar.
from-label = So steht es auf der Batterie: { $ah } × { $volts }. Was davon nutzbar ist, sagt das noch nicht.
from-real-voltage = Von voll bis leer steht eine Batterie dieser Art im Mittel bei { $mean }, nicht bei { $volts }.
from-aged = Das Alter hat davon { $health } übrig gelassen, wie unter „Zustand“ eingetragen.
from-kept-back = Was unter deiner Untergrenze von { $lowest } liegt, bleibt in der Batterie.
from-usable = Was nach den Zeilen darüber vom aufgedruckten Wert bleibt, wenn langsam entladen wird. Kälte und hoher Strom verringern es.
bank-ventilation = Beim Laden verlangt die übliche Regel für ortsfeste Batterien (EN IEC 62485-2, früher EN 50272-2) { $air } Frischluft je Stunde. Das ist eine Öffnung von { $area } unten und eine zweite oben. In Fahrzeugen gehen die Anleitung des Herstellers und die Vorschriften für Fahrzeuge vor.
bank-usable-fast = Bei hohem Strom bleibt ein Teil der Ladung einer Bleibatterie zurück, bis sie geruht hat.
bank-lowest = Deine Untergrenze
bank-lowest-usual = Üblich: { $lowest }.
bank-start = Ladezustand bei Ankunft
bank-health = Zustand
bank-place = Einbauort
bank-inside = Im Wohnraum
bank-locker = Im Staufach
bank-outside = Außen
bank-heated = Wird zum Laden beheizt
bank-heated-hint = Eine Heizmatte oder eingebaute Heizung hält die Zellen über { $temp_0 }, sobald geladen werden kann.
bank-cold-allowed = Hersteller erlaubt Laden unter { $temp_0 }
bank-cold-allowed-hint = Nur, wenn es im Datenblatt steht.
bank-block = Spannung je Batterie
block-6 = 6 V
block-12 = 12 V
block-24 = 24 V
bank-cable = Widerstand der Batteriekabel
bank-cable-length = Kabel, einfache Länge
bank-cable-size = Leitungsquerschnitt
bank-cable-take = Widerstand aus Länge und Querschnitt berechnen
bank-cable-hint = Hin und zurück, von der Batterie bis dorthin, wo die Leitungen zu den Geräten abzweigen.

solar-title = Solar
solar-none = Keine Module. Trag die auf dem Dach ein und ein mobiles getrennt davon.
solar-add = Module hinzufügen
solar-number = Modulgruppe { $n }
solar-deleted = Gelöscht: Modulgruppe { $n }
solar-delete = Diese Gruppe löschen
solar-duplicate = Diese Gruppe duplizieren
solar-name = Name
solar-peak = Nennleistung
solar-tilt = Neigung
solar-tilt-hint = 0 ist flach, 90 senkrecht.
solar-facing = Ausrichtung
solar-facing-degrees = oder in Grad
solar-facing-hint = Von Norden im Uhrzeigersinn: 180 ist Süden.
compass-n = Norden
compass-ne = Nordosten
compass-e = Osten
compass-se = Südosten
compass-s = Süden
compass-sw = Südwesten
compass-w = Westen
compass-nw = Nordwesten
solar-controller = Solarladeregler
controller-mppt = MPPT
controller-pwm = PWM
solar-mounting = Befestigung
mounting-glued = Flach verklebt
mounting-gap = Mit Luftspalt
mounting-rack = Frei stehend
solar-shade = Schatten
shade-hint = Wie viel verloren geht, 0 bis 100 %. Am meisten kostet ein Baum oder eine Wand in Richtung der Mittagssonne.
shade-morning = Direkte Sonne vor 10 Uhr
shade-midday = Direkte Sonne von 10 bis 14 Uhr
shade-afternoon = Direkte Sonne nach 14 Uhr
shade-sky = Verdeckter Himmel
solar-efficiency = Wirkungsgrad des Reglers
solar-low-light = Verlust bei schwachem Licht (200 W/m²)
solar-dirt = Schmutz auf dem Glas
solar-wiring = Verlust in Kabeln
solar-mismatch = Verlust durch Fehlanpassung
solar-temperature = Temperaturkoeffizient
solar-temperature-hint = Aus dem Datenblatt, meist −0,3 bis −0,45 %/K.
solar-cold-volts = Module in Reihe: Rechne bei der größten Kälte hier ({ $cold }) mit einer Spannung, die { $share } über der Leerlaufspannung (Voc) auf dem Typenschild liegt. Die Summe muss unter der höchsten Eingangsspannung des Reglers bleiben, sonst wird er zerstört.
solar-vmp = MPP-Spannung (Vmp)
solar-vmp-hint = Vom Typenschild: des Moduls oder aller in Reihe. Leer: 18,2 V je 12 V.
solar-self-use = Eigenverbrauch des Reglers

inverter-title = Wechselrichter
inverter-fitted = Ein Wechselrichter ist eingebaut
inverter-continuous = Dauerleistung
inverter-surge = Spitzenleistung (kurzzeitig)
inverter-idle = Leerlaufverbrauch
inverter-idle-usual = Üblich bei dieser Größe: { $low } bis { $high } W, ohne dass etwas angeschlossen ist.
inverter-switching = Eingeschaltet
inverter-when-used = Nur bei Bedarf
inverter-all-day = Tag und Nacht
inverter-power-save = Sparmodus bei Leerlauf
inverter-asleep = Leistungsaufnahme im Sparmodus
inverter-missing = { $n ->
    [one] Ein Gerät braucht 230 V, aber es ist kein Wechselrichter eingebaut. Gerechnet wird, als wäre einer da.
   *[other] { $n } Geräte brauchen 230 V, aber es ist kein Wechselrichter eingebaut. Gerechnet wird, als wäre einer da.
}
inverter-current = Batteriestrom bei voller Leistung
inverter-at-tenth = Wirkungsgrad bei { $watts }
inverter-idle-day = Den ganzen Tag im Leerlauf
inverter-contradiction = Beides zugleich kann nicht stimmen: Mit diesem Leerlaufverbrauch beträgt der Wirkungsgrad bei voller Leistung höchstens { $most }. Gerechnet wird mit dem Leerlaufverbrauch.
inverter-efficiency = Wirkungsgrad bei voller Leistung
inverter-efficiency-hint = Mit Leerlaufverbrauch. Datenblätter nennen oft den besten Wert, nicht diesen.
inverter-cut-out = Schaltet ab unter
inverter-cut-out-hint = Angabe für 12 V; bei 24 V verdoppelt. Die Vorhersage sagt, wann das einträte, rechnet aber so, als liefe alles weiter.

driving-title = Laden beim Fahren
driving-fitted = Der Motor lädt die Batterie
driving-charger = Ladung über
charger-dc-dc = Ladebooster
charger-relay = Trennrelais
driving-amps = Ladestrom
amps-hint = Höchstwert. Eine volle Batterie nimmt weniger auf.
driving-every = Alle wie viele Tage fährst du?
driving-minutes = Fahrzeit an so einem Tag
driving-from = Abfahrt um
driving-taper = Eine fast volle Bleibatterie nimmt in einer Stunde Fahrt wenig auf; ihr letztes Fünftel braucht viele Stunden.
driving-days-hint = Einzelne Tage änderst du unter „Reise“.
relay-alternator = Spannung der Lichtmaschine
relay-length = Kabel, einfache Länge
relay-size = Leitungsquerschnitt
relay-limit = Belastbarkeit der Leitung
relay-smart = Intelligente Lichtmaschine
relay-smart-hint = Senkt zeitweise ihre Spannung, wie in vielen Fahrzeugen seit etwa 2015.

hook-up-title = Landstrom
hook-up-fitted = Ein 230-V-Ladegerät ist an Bord
hook-up-amps = Ladestrom
hook-up-every = Alle wie viele Tage Landstrom?
hook-up-from = Angesteckt um
hook-up-hours = Dauer
hook-up-through = 230-V-Geräte laufen über Landstrom
hook-up-through-hint = Solange Landstrom anliegt, laufen sie an Batterie und Wechselrichter vorbei.

other-title = Andere Quellen
other-none = Kein Generator, keine Brennstoffzelle, kein Windgenerator.
other-add = Quelle hinzufügen
other-number = Quelle { $n }
other-deleted = Gelöscht: Quelle { $n }
other-delete = Diese löschen
other-kind = Art
other-generator = Generator
other-fuel-cell = Brennstoffzelle
other-wind = Windgenerator
other-amps = Ladestrom
other-every = Alle wie viele Tage läuft sie?
other-from = Ab
other-hours = Dauer
other-fuel = Kraftstoff je Stunde
other-wind-hint = Wind ist für eine Vorhersage zu ortsabhängig: Gib deinen eigenen mittleren Strom und die Stunden an.

every-words = { $n ->
    [0] nie
    [one] jeden Tag
   *[other] alle { $n } Tage, zuerst an Tag { $n }
}

stages-full = Von { $from } bis voll dauert es bei { $at } etwa { $full }; von den { $amps } nehmen Geräte dabei { $drawn } auf. Zuerst { $bulk } mit vollem Strom bis { $to } (Hauptladung, Bulk), dann { $absorption } mit sinkendem Strom (Absorption).
stages-long = Ab { $from } ist die Batterie bei { $at } auch nach vier Tagen nicht voll; von den { $amps } nehmen Geräte dabei { $drawn } auf.
stages-reach-bulk = In { $time } kommt sie auf { $reached }, noch in der Hauptladung (Bulk).
stages-reach-absorption = In { $time } kommt sie auf { $reached }, in der Absorption.
stages-reach-float = In { $time } ist sie voll, und das Ladegerät geht in die Erhaltungsladung (Float).
stages-starved = Für die Batterie bleibt nichts übrig: Geräte nehmen währenddessen { $drawn } auf.
stages-cold = Bei { $at } nimmt die Batterie keine Ladung auf.

parked-open = Wie lange hält die Batterie im Stand?
parked-hint = Nichts lädt und niemand ist an Bord. Die Selbstentladung und alles, was an bleibt (Ortungsgerät, Alarmanlage, Uhr), leeren die Batterie.
parked-draw = Dauernde Leistungsaufnahme
parked-draw-hint = Übernommen von deinen immer eingeschalteten Geräten und dem Standby.
parked-soc = Geladen auf
parked-air = Temperatur der Batterie, wenn du sie kennst
parked-air-hint = Leer: nach dem Einbauort und der dort üblichen Luft, Monat für Monat, mit Frost wie an einem von vierzig Tagen.
parked-from = Abgestellt ab
parked-draw-amps = Dasselbe in Ampere
parked-drain = Entladestrom mit Selbstentladung
parked-low = Untergrenze erreicht nach
parked-empty = Leer nach
parked-until = { $days }, am { $date }
parked-days = { $days_n ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}
parked-years = mehr als zwei Jahren
parked-freezes = So geladen wie oben gefriert diese Batterie bei { $first }; an deiner Untergrenze bei { $at }; leer bei { $flat }.
parked-charge-by = Lade sie bis { $date } oder klemme sie ab.
parked-frost-from = Ab { $date } kann sie in einer kalten Nacht gefrieren, weil sie sich leert.
parked-frost = Gefriert sie, kann sie platzen: Halte sie geladen oder nimm sie vor dem Frost heraus. Lade nie eine gefrorene Batterie.
parked-lithium = Lithium lagert am besten teilgeladen und abgeklemmt, so wie es der Hersteller angibt. Unter { $temp_0 } darf es nicht geladen werden.
