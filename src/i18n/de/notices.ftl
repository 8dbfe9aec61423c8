# Told on any part of the page: setups, links, files and storage.
notice-close = Schließen
notice-understood = Verstanden
adjusted = { $n ->
    [one] Ein Wert lag außerhalb der Grenzen und wurde angepasst.
   *[other] { $n } Werte lagen außerhalb der Grenzen und wurden angepasst.
}
misfits = { $n ->
    [one] Ein Wert ließ sich nicht lesen. Er wurde weggelassen oder durch den üblichen ersetzt: { $where }. Bitte prüfe ihn.
   *[other] { $n } Werte ließen sich nicht lesen. Sie wurden weggelassen oder durch übliche ersetzt: { $where }. Bitte prüfe sie.
}
misfit-part = { $part ->
    [name] Name
    [vehicle] Fahrzeug
    [loads] Geräte
    [bank] Batterie
    [inverter] Wechselrichter
    [solar] Solar
    [driving] Laden beim Fahren
    [hook_up] Landstrom
    [other] Andere Quellen
    [trip] Reise
    [prices] Preise und Gewichte
    [readings] Messwerte vor Ort
    [correction] Was die Messwerte sagen
    [cables] Leitungen
   *[setup] Setup
}
preview-told = Du siehst ein Setup aus einem Link: { $name }.
preview-safe = Deine eigenen Setups bleiben unberührt. Probiere, was du magst: Es bleibt nur, wenn du es in deinen Setups speicherst.
preview-keep = In meinen Setups speichern
preview-take = Teile übernehmen
preview-back = Zurück zu meinem Setup
preview-back-example = Zurück zum Beispiel
preview-kept = In deinen Setups gespeichert.
preview-left = Änderungen verworfen.
link-empty = Darin steckt kein Link.
link-truncated = Das Ende dieses Links fehlt. Kopiere den Link selbst noch einmal, nicht seinen gekürzten Text mit Punkten. An deinen Setups hat sich nichts geändert.
link-newer = Dieser Link stammt von einer neueren Version der Seite. Lade die Seite neu, sobald du online bist. An deinen Setups hat sich nichts geändert.
link-corrupt = Dieser Link wurde unterwegs verändert oder gehört nicht zu Nightbank. Lass ihn dir noch einmal schicken, oder die Datei. An deinen Setups hat sich nichts geändert.
kept-blocked = Dieser Browser kann für diese Seite nichts speichern. Was du eingibst, ist weg, sobald du sie schließt.
kept-not-written = Die letzten Änderungen ließen sich nicht speichern: Der Speicher dieses Browsers ist voll oder gesperrt. Sie sind weg, sobald du die Seite schließt.
kept-newer = Deine Setups hier hat eine neuere Version der Seite gespeichert; sie bleiben, wie sie sind. Lade die Seite neu, um sie zu aktualisieren. Bis dahin sind Änderungen weg, sobald du die Seite schließt.
kept-take-along = Als Link oder Datei sichern
kept-beside = Dasselbe Setup wurde auch in einem anderen Tab geändert. Beide Fassungen bleiben erhalten; die frühere heißt jetzt { $names }.
kept-none = Deine Liste von Setups in diesem Browser ist leer.
aside-told = Einige gespeicherte Daten ließen sich nicht lesen. Sie wurden unverändert beiseitegelegt, nicht gelöscht.
aside-download = Als Datei speichern
ios-storage = Browser auf diesem Gerät löschen, was eine Seite gespeichert hat, wenn du sie sieben Nutzungstage lang nicht besuchst. Eine Seite auf dem Startbildschirm hat einen eigenen Speicher. Speichere unter „Mehr“ einen Link oder eine Datei: So ziehst du auch mit deinen Setups um.
setups-deleted = Gelöscht: { $name }
setups-full = Es ist Platz für 16 Setups. Lösche eins, das du nicht mehr brauchst. Speichere es vorher als Datei, wenn du es behalten willst.
setups-gone = Dieses Setup ist weg; vielleicht hat ein anderer Tab es gelöscht.
setup-nameless = Setup ohne Namen
setup-example = Beispiel
setup-outline = { $n ->
    [one] { $n } Gerät
   *[other] { $n } Geräte
}, { $capacity }
setup-outline-sun = { $peak } Solar
file-added = { $n ->
    [one] Aus der Datei hinzugefügt: { $names }.
   *[other] { $n } Setups aus der Datei hinzugefügt: { $names }.
}
file-no-room = { $n ->
    [one] Ein weiteres passte nicht mehr: Höchstens { $limit } Setups sind möglich.
   *[other] { $n } weitere passten nicht mehr: Höchstens { $limit } Setups sind möglich.
}
file-ignored = { $n ->
    [one] Ein Feld ist hier unbekannt und wurde weggelassen: { $fields }.
   *[other] { $n } Felder sind hier unbekannt und wurden weggelassen: { $fields }.
}
file-unread = Die Datei ließ sich nicht lesen.
file-not-saved = Der Browser konnte die Datei nicht anlegen.
file-empty = Die Datei ist leer.
file-too-large = Die Datei hat { $size } MiB; kein Setup braucht mehr als { $limit } MiB. Sie wurde nicht geöffnet.
file-not-json = Die Datei ist beschädigt oder nicht von Nightbank: Das Lesen endete in Zeile { $line }, Zeichen { $column }. Nichts daraus wurde übernommen.
file-other-format = Das ist keine Datei von Nightbank. Nichts daraus wurde übernommen.
file-newer = Die Datei stammt von einer neueren Version der Seite. Lade die Seite neu, sobald du online bist.
file-no-setups = In der Datei ist kein Setup.
file-too-many = Die Datei enthält { $n } Setups, das sind zu viele. Nichts daraus wurde übernommen.
undo = Rückgängig
toast-close = Meldung schließen
offline-ready = Läuft jetzt auch ohne Netz.
update-ready = Eine neue Version ist bereit.
update-load = Jetzt aktualisieren
