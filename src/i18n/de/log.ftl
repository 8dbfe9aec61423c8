# A log of readings: brought, read, and what it shows.
part-log = Aufgezeichnete Messwerte
tool-log-told = Eine Tabelle aus dem Batteriemonitor zeigt, was du nachts verbrauchst, was an- und ausgeht und wie viel Kapazität noch da ist.

log-told = Bring eine Tabelle mit Zeiten und Messwerten mit, wie Batteriemonitore und Solarregler sie speichern. Sie verlässt dieses Gerät nicht: Sie ist vergessen, wenn du die Seite schließt, und steht in keinem Link und keiner Datei.
log-bring = Aufzeichnung mitbringen
log-file = Datei wählen
log-drop = Oder eine Datei hierher ziehen: CSV oder reiner Text.
log-paste = Oder die Zeilen einfügen
log-read = Diese Zeilen lesen
log-clear = Aufzeichnung weglegen
log-working = Die Aufzeichnung wird ausgewertet …
log-fault-empty = Da steht nichts drin.
log-fault-large = Das sind mehr als 32 MB. Speichere einen kürzeren Zeitraum.
log-fault-not-text = Das ist keine Tabelle in reinem Text. Speichere die Aufzeichnung als CSV.
log-fault-wide = Diese Tabelle hat mehr als 64 Spalten. Speichere weniger.

log-columns = Was in den Spalten steht
log-columns-told = Sieh jede Spalte durch und ändere, was nicht stimmt.
log-rows = { $n ->
    [one] { $n } Zeile.
   *[other] { $n } Zeilen.
}
log-above = { $n ->
    [one] { $n } Zeile über der Kopfzeile gehört nicht zur Tabelle.
   *[other] { $n } Zeilen über der Kopfzeile gehören nicht zur Tabelle.
}
log-preview = Die ersten Zeilen
log-line = Zeile
log-column = Spalte { $n }
log-column-named = Spalte { $n }: { $name }
log-by-figures = Nur an den Zahlen erkannt. Bitte prüfen.
log-role-unused = Nicht verwendet
log-role-time = Zeit
log-role-date = Datum
log-role-soc = Ladezustand
log-role-volts = Batteriespannung
log-role-amps = Batteriestrom
log-role-watts = Batterieleistung
log-role-charging = Leistung, die hereinkommt
log-role-used = Leistung, die verbraucht wird
log-ask-time = In welcher Spalte steht die Zeit?
log-ask-figure = In welcher Spalte steht ein Messwert? Wähle mindestens eine.
log-ask-order = Tag oder Monat zuerst? Diese Daten lassen sich auf beide Arten lesen.
log-ask-mark = Komma oder Punkt? Manche dieser Zahlen lassen sich auf beide Arten lesen.
log-ask-plus = Heißt Plus laden oder verbrauchen? Diese Aufzeichnung zeigt es nicht.
log-order = Zuerst im Datum
log-order-day = Tag
log-order-month = Monat
log-mark = Dezimalzeichen
log-mark-point = Punkt
log-mark-comma = Komma
log-plus = Ein Messwert über null heißt
log-plus-charging = Laden
log-plus-using = Verbrauch
log-clock = Zeiten ohne Zeitzone sind
log-clock-camp = Ortszeit
log-clock-utc = UTC
log-left-out = { $n ->
    [one] { $n } Eintrag ausgelassen
   *[other] { $n } Einträge ausgelassen
}
log-left-first = Die ersten davon
log-left-why = Warum
log-left-cell = Da steht
log-left-no-time = Keine Zeit
log-left-time-unread = Zeit nicht verstanden
log-left-same-time = Gleiche Zeit wie eine frühere Zeile
log-left-no-figure = Kein Messwert
log-left-unread = { $name }: keine Zahl
log-left-range = { $name }: nicht möglich

log-found = Was die Aufzeichnung zeigt
log-span = { $n ->
    [one] { $n } Zeile aus { $span }, davon { $covered } ohne Lücken.
   *[other] { $n } Zeilen aus { $span }, davon { $covered } ohne Lücken.
}
log-take = Übernehmen: { $what }
toast-log-taken = Übernommen: { $what }
log-known = Wie bei dir eingetragen.
log-lacks-time = Nur { $time } an Messwerten. Ein Tag und eine Nacht oder mehr sagen viel mehr.
log-lacks-gaps = { $share } der Zeit fehlen. Was folgt, ist weniger sicher.
log-lacks-power = Weder Strom noch Leistung darin: Verbrauch, Geräte und Kapazität lassen sich nicht erkennen.
log-lacks-soc = Kein Ladezustand darin: Die Vorhersage lässt sich nicht damit vergleichen.
log-lacks-rows = Eine Zeile alle { $time } ist zu selten, um Geräte schalten zu sehen. Eine je Minute zeigt sie.
log-lacks-night = Es wurde die ganze Zeit geladen, daher ist der Verbrauch nicht zu sehen. Zeichne auch eine Nacht auf.
log-standby = Gemessener Standby
log-floor = Nachts laufen { $power } immer (±{ $error }).
log-floor-most = Nachts laufen höchstens { $power } immer. Die Zeilen liegen zu weit auseinander, um mehr zu sagen.
log-floor-listed = Deine Liste erklärt davon { $power }.
log-hours = { $n ->
    [one] Im Mittel werden { $power } verbraucht, gesehen in { $n } Stunde des Tages.
   *[other] Im Mittel werden { $power } verbraucht, gesehen in { $n } Stunden des Tages.
}
log-hours-title = Verbrauch nach Tageszeit
log-hours-from = Ab
log-hours-mean = Im Mittel
log-hours-watched = Gesehen
log-in = { $n ->
    [one] An { $n } ganzen Tag kamen { $energy } herein, höchstens { $peak }.
   *[other] An { $n } ganzen Tagen kamen { $energy } herein, höchstens { $peak }.
}
log-in-least = { $n ->
    [one] An { $n } ganzen Tag kamen mindestens { $energy } herein, höchstens { $peak }. Was die Geräte dabei verbrauchten, ist nicht zu sehen.
   *[other] An { $n } ganzen Tagen kamen mindestens { $energy } herein, höchstens { $peak }. Was die Geräte dabei verbrauchten, ist nicht zu sehen.
}
log-capacity = Nutzbare Kapazität: { $capacity } (±{ $error }), { $share } der { $label } auf dem Etikett.
log-capacity-counted = Aus der Ladung, die gezählt wurde, während der Ladezustand sank. Ist im Monitor eine Kapazität eingestellt, zeigt er vielleicht nur diese.
log-capacity-rested = Von voll bis zu einer Ruhespannung. Fahr keine Batterie leer, um das herauszufinden: Es schadet Blei, und alles daran geht aus.
log-capacity-no-current = Kapazität: braucht Strom oder Leistung der Batterie.
log-capacity-no-state = Kapazität: braucht den Ladezustand, oder eine Spannung nach Stunden der Ruhe bei einer Batterie, die vorher voll war.
log-capacity-swing = Kapazität: Der Ladezustand bewegte sich nur um { $swing }. Es braucht 30 % oder mehr.
log-capacity-contradicts = Kapazität: Strom und Ladezustand passen nicht zusammen. Prüfe die Spalten.
log-cycles = { $n ->
    [one] Etwas mit { $power } (±{ $error }) kommt und geht von selbst: { $duty } der Zeit, je { $run }, { $n } Lauf.
   *[other] Etwas mit { $power } (±{ $error }) kommt und geht von selbst: { $duty } der Zeit, je { $run }, { $n } Läufe.
}
log-uses = { $n ->
    [one] Etwas mit { $power } (±{ $error }) läuft { $time } pro Tag, meist { $times }, { $n } Lauf.
   *[other] Etwas mit { $power } (±{ $error }) läuft { $time } pro Tag, meist { $times }, { $n } Läufe.
}
log-by-night = Nur im Dunkeln gesehen. Bei einem Gerät aus deiner Liste wird die Leistung übernommen, seine Zeiten bleiben.
log-is = Was { $power } zieht
log-appliance = In der Aufzeichnung gefunden, { $power }
log-held-high = Über { $time } verglichen liegt die Vorhersage im Mittel um { $mean } Ladung zu hoch und stündlich um { $rms } daneben.
log-held-low = Über { $time } verglichen liegt die Vorhersage im Mittel um { $mean } Ladung zu niedrig und stündlich um { $rms } daneben.
log-correction = Verbrauch und Sonne
log-how = Jedes ± gilt in 9 von 10 Fällen. Jeder Fund wird einzeln übernommen und lässt sich rückgängig machen.
