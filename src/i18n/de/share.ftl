# Setups, links, files, storage.

setups-title = Deine Setups
setups-none = Noch keins. Das Beispiel wird mit der ersten Änderung deins und bleibt dann in diesem Browser gespeichert.
setups-new = Neu, leer
setups-new-example = Neu aus dem Beispiel
setups-duplicate = Dieses duplizieren
setups-delete = { $name } löschen
setup-name = Name des angezeigten Setups
setup-new-name = Neues Setup

link-title = Link
link-out = Dieses Setup als Link
link-length = { $n } Zeichen.
link-long = Das ist lang für einen Chat: Manche kürzen es. Eine Datei ist sicherer.
link-too-long = Dieses Setup ergäbe einen Link von { $n } Zeichen. Chats und ältere Programme kürzen Links über { $limit }. Gib es als Datei weiter.
link-copy = Link kopieren
link-hand-on = Teilen …
link-privacy = Der Link enthält das ganze Setup hinter seinem #-Zeichen; diesen Teil senden Browser nie an den Server. Der Ort ist auf 0,1 Grad gerundet (bis zu { $km_6 } daneben). Sein Name, die Reisedaten und alle anderen Namen gehen mit, wie sie dastehen. Wer den Link hat, kann sie lesen.
link-in = Link einfügen, oder einen Text mit Link
link-in-open = Link öffnen
copied = Kopiert.
copy-by-hand = Der Browser lässt die Seite nicht kopieren. Der Text ist markiert: Kopiere ihn von Hand.
hand-on-failed = Teilen war nicht möglich. Kopiere stattdessen den Link.
qr-title = QR-Code fürs Handy neben dir
qr-name = QR-Code des Links
qr-none = Dieser Link ist zu lang für einen QR-Code.
qr-dense = Ein langer Link ergibt einen dichten Code: Halte das Handy nah heran oder stell den Bildschirm hell.

file-title = Datei
file-about = Eine Datei enthält alles genau, egal wie viel es ist.
file-save = Dieses Setup als Datei speichern
file-save-all = Alle Setups als eine Datei speichern
file-open = Datei öffnen
file-drop = Oder zieh sie irgendwo auf die Seite. Ihre Setups kommen zu deinen dazu; ersetzt wird nichts.
aside-there = In diesem Browser liegen beiseitegelegte Daten, die sich nicht lesen ließen.
aside-drop-title = Aus diesem Browser entfernen
aside-drop-about = Speichere die Daten vorher als Datei. Hier entfernt, sind sie weg.
aside-drop = Endgültig entfernen

post-card = Antwort weitergeben
post-text = Als Text für ein Forum oder eine Nachricht
post-pictures = Als Bild
post-tables = Als Tabellen für die Tabellenkalkulation
post-markup = Format
post-plain = Einfacher Text
post-markdown = Markdown
post-bbcode = BBCode
post-loads-title = Geräteliste
post-loads-field = Liste zum Posten
post-loads-picture = Als Bild
post-which = Welche Geräte?
post-measured = Gemessene
post-all = Alle
post-field = Der Text
post-copy = Text kopieren
post-title = { $name }: Wie lange hält die Batterie?
post-nights = Nächte mit Batterie
post-nights-value = { $n } in { $often }; gewünscht: { $asked }
post-nights-open = { $n } oder mehr in { $often }; gewünscht: { $asked }
post-chance = Chance, dass die Batterie alle Nächte durchhält
post-first-low = In { $often } über der Untergrenze bis
post-lowest = Ladezustand in { $often } nie unter
post-where = Wo
post-when = Wann
post-when-value = { $n ->
    [one] ab { $date }, { $n } Nacht
   *[other] ab { $date }, { $n } Nächte
}
post-loads = Geräte
post-loads-count = { $n }
post-loads-need = { $n ->
    [one] { $n } Gerät; { $need } aus der Batterie
   *[other] { $n } Geräte; { $need } aus der Batterie
}
post-battery = Batterie
post-battery-value = { $capacity }, { $volts } V, { $kind }; von { $from } bis { $to }
post-solar = Solarmodule
post-helps = Was am meisten helfen würde
post-note = Eine Schätzung von Nightbank, kein Versprechen.
post-link = In Nightbank öffnen
picture-outlook = Die Vorhersage
picture-ranking = Die größten Verbraucher
picture-about = Beide zeigen die Namen, die du vergeben hast, sowie Ort und Datum der Reise.
picture-outlook-file = Vorhersage
picture-ranking-file = Verbraucher
csv-loads = Geräte (CSV)
csv-days = Tage (CSV)
csv-about = Mit den Dezimal- und Trennzeichen deiner Sprache; gängige Tabellenprogramme öffnen sie per Doppelklick. Die Tage gelten für durchschnittliches Wetter.
csv-loads-file = Geräte
csv-days-file = Tage
csv-name = Gerät
csv-group = Gruppe
csv-quantity = Anzahl
csv-draw = Leistung je Gerät (W)
csv-current = Strom je Gerät (A)
csv-feed = Versorgt aus
csv-usage = Nutzung
csv-per-day = Energie pro Tag aus der Batterie (Wh)
csv-standby = Davon Standby (Wh)
csv-of-need = Anteil am Tagesbedarf (%)
csv-enabled = Zählt (1) oder nicht (0)
csv-feed-battery = Batterie
csv-feed-inverter = Wechselrichter
csv-mean = Mittel über den Tag
csv-code = Zum Wiedereinlesen in Nightbank
csv-date = Datum
csv-weather = Wetter
csv-air = Mittlere Lufttemperatur ({ $unit })
csv-used = Verbraucht (Wh)
csv-sun = Aus Solarstrom (Wh)
csv-driving = Beim Fahren geladen (Wh)
csv-hook-up = Aus Landstrom (Wh)
csv-other = Aus anderen Quellen (Wh)
csv-soc-low = Niedrigster Ladezustand (%)
csv-soc-end = Ladezustand am Ende (%)
print-button = Auf eine Seite drucken
print-failed = Der Browser konnte nicht drucken.
print-setup = Berechnet aus
print-note = Eine Schätzung von Nightbank, kein Versprechen. Nicht eingerechnet: Schatten und alles andere, was nicht eingetragen ist. Die Anleitungen der Hersteller und die örtlichen Vorschriften gehen vor. Der Code öffnet dieses Setup auf einem Handy; Namen und Reisedaten gehen darin mit.

units-legend = Einheiten
units-device = Wie mein Gerät
units-metric = Metrisch
units-us = USA (°F, gal, ft, lb)
