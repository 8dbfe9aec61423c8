# Where and when.
trip-title = Wo und wann
place-title = Ort
place-search = Anderer Ort
place-search-hint = Stadt oder 52.1, 5.2
place-found = { $n ->
    [one] Ein Ort gefunden.
   *[other] { $n } Orte gefunden.
}
place-none = Kein solcher Ort in der Liste. Versuche es mit einer größeren Stadt in der Nähe oder mit Koordinaten wie 52.1, 5.2.
places-coming = Die Liste der Orte wird noch geladen. Bis dahin werden nur größere Orte gefunden.
places-not-fetched = Die Liste der Orte ließ sich nicht laden: Nur größere Orte werden gefunden. Tippe weiter, dann wird es wieder versucht.
place-near = bei { $town }
place-clock-set = Ortszeit: { $offset }
place-figures = Koordinaten und Höhe
place-latitude = Breitengrad
place-latitude-hint = Südlich des Äquators negativ.
place-longitude = Längengrad
place-longitude-hint = Westlich von Greenwich negativ.
place-altitude = Höhe über dem Meer
place-altitude-hint = Auf { $height } genau genügt.
short-north = N
short-south = S
short-east = E
short-west = W
coordinates-only-one = Breiten- oder Längengrad fehlt. Gib beide an, etwa 52.1, 5.2.
coordinates-unclear = Es ist nicht klar, welche Zahl Breite und welche Länge ist. Versuche 52.1, 5.2 oder 52.1 N 5.2 E.
coordinates-letter-o = Der Buchstabe O kann Osten oder Westen bedeuten. Nimm E oder W.
coordinates-sixtieths = Minuten und Sekunden gehen von 0 bis 59.
coordinates-latitude = Der Breitengrad geht von −90 bis 90.
coordinates-longitude = Der Längengrad geht von −180 bis 180.
locate = Wo ich gerade bin
locate-asking = Standort wird ermittelt …
locate-refused = Der Standort wurde nicht freigegeben. Gib stattdessen einen Ort ein.
locate-failed = Dein Standort ließ sich nicht ermitteln. Gib stattdessen einen Ort ein.
locate-timed-out = Die Ortung hat zu lange gedauert. Versuche es unter freiem Himmel noch einmal oder gib einen Ort ein.
locate-hint = Nur auf Tippen; auf { $km_10 } gerundet; bleibt auf diesem Gerät.
locate-missing = Dieser Browser gibt der Seite keinen Standort. Gib stattdessen einen Ort ein.

dates-title = Reisetage
dates-arrival = Ankunft
dates-nights = Nächte
dates-hour = Ankunft um
dates-offset = Stunden vor UTC
dates-offset-hint = Mitteleuropa: 1 im Winter, 2 in der Sommerzeit.
dates-clock-device = Wie dieses Gerät an dem Tag: { $utc }
dates-clock-longitude = Nach dem Längengrad: { $utc }
dates-from-to = Vom { $from } bis zum { $to }.

days-title = Tag für Tag
days-hint = Lass einen Tag auf „Nicht bekannt“, dann gilt für die Chancen alles Wetter, das an dem Ort üblich ist. Fahren und Landstrom folgen dem Plan unter „Batterie“, wenn du hier nichts anderes einträgst.
days-more = { $n ->
    [one] { $n } weiteren Tag zeigen
   *[other] { $n } weitere Tage zeigen
}
days-all = Wetter an allen Tagen
day-sky = Wetter
sky-unknown = Nicht bekannt
sky-typical = Monatsdurchschnitt
sky-clear = Klar
sky-mixed = Sonne und Wolken
sky-dull = Trüb
sky-sun = Wie vorhergesagt
day-sun = Sonne an dem Tag
day-drive = Fahrt
day-hook-up = Landstrom
day-hook-up-yes = Ja
day-hook-up-no = Nein
as-planned = Wie geplant

climate-title = Sonne und Temperatur
climate-air-region = Lufttemperatur nach typischen Werten einer Region in { $distance } Entfernung, nicht gemessen, auf die Höhe hier umgerechnet. Monatsmittel sind auf etwa { $warmer_2 } genau; einzelne Tage weichen viel stärker ab.
climate-air-world = Lufttemperatur aus derselben Tabelle, auf die Höhe hier umgerechnet. Monatsmittel sind auf etwa { $warmer_2 } genau; einzelne Tage weichen viel stärker ab.
climate-coming = Die Klimatabelle wird noch geladen. Bis dahin gelten typische Werte der Region.
climate-not-fetched = Die Klimatabelle ließ sich nicht laden; es gelten typische Werte der Region. Bei der nächsten Änderung der Reise wird es wieder versucht.
climate-air-latitude = Lufttemperatur nur nach Breitengrad und Höhe geschätzt: kann um { $warmer_5 } und mehr danebenliegen.
climate-impossible = Die Werte für { $months } sind physikalisch nicht möglich. Es zählt der nächste mögliche Wert.
climate-months = Monat für Monat
climate-months-caption = Sonne pro Tag auf ebener Fläche und mittlere Lufttemperatur
climate-month = Monat
climate-own-sun = Eigene Werte für die Sonne
climate-own-sun-hint = Sonne auf ebener Fläche, aus beliebiger Quelle. Volle Sonnenstunden (Peak Sun Hours) pro Tag sind dasselbe wie kWh/m² pro Tag. Leere Monate behalten den voreingestellten Wert.
own-sun-unit = Einheit meiner Werte
own-sun-daily = kWh/m² pro Tag
own-sun-monthly = kWh/m² pro Monat
climate-usual = Voreingestellt: { $amount }
climate-own-air = Lufttemperatur, Mittel von Tag und Nacht
climate-vehicle = Fahrzeug
climate-vehicle-loss = Für jedes Grad, das es drinnen wärmer ist als draußen, verliert das Fahrzeug etwa { $watts } Wärme (Erfahrungswert). Sonne und Menschen wärmen es um etwa { $warmer_3 }.
climate-inside = Innentemperatur, Mittel von Tag und Nacht
climate-inside-hint = Diese Temperatur halten Heizungen, und in dieser Luft steht ein Kühlschrank drinnen. Leer: nicht geheizt.
climate-ground = Bodenreflexion (Albedo)
climate-ground-kind = Art des Bodens
ground-grass = Gras
ground-sand = Sand
ground-snow = Neuschnee
days-each = Jeder Tag für sich
climate-from = Woher diese Werte kommen
