# Setups, links, files, storage.

setups-title = Je configuraties
setups-none = Nog geen. Het voorbeeld wordt van jou zodra je iets wijzigt, en wordt dan in deze browser bewaard.
setups-new = Nieuwe lege configuratie
setups-new-example = Nieuwe vanuit het voorbeeld
setups-duplicate = Deze kopiëren
setups-delete = { $name } verwijderen
setup-name = Naam van deze configuratie
setup-new-name = Nieuwe configuratie

link-title = Link
link-out = Deze configuratie als link
link-length = { $n } tekens.
link-long = Dat is lang voor een chat: sommige apps kappen de link af. Een bestand is betrouwbaarder.
link-too-long = Deze configuratie zou een link van { $n } tekens geven. Chats en oudere programma’s kappen links boven { $limit } af. Deel de configuratie liever als bestand.
link-copy = Link kopiëren
link-hand-on = Delen…
link-privacy = De link bevat de hele configuratie, achter het #-teken; browsers sturen dat deel nooit naar de server. De plaats is afgerond op 0,1 graad (tot { $km_6 } ernaast). De plaatsnaam, de reisdata en alle andere namen gaan mee zoals ze er staan. Iedereen met de link kan ze lezen.
link-in = Plak een link, of een tekst met een link erin
link-in-open = Link openen
copied = Gekopieerd.
copy-by-hand = De pagina mag van de browser niet kopiëren. De tekst is geselecteerd: kopieer hem zelf.
hand-on-failed = Delen is niet gelukt. Kopieer de link.
qr-title = QR-code voor de telefoon naast je
qr-name = QR-code van de link
qr-none = Deze link is te lang voor een QR-code.
qr-dense = Een lange link geeft een dichte code. Houd de telefoon dichtbij, of zet het scherm helderder.

file-title = Bestand
file-about = Een bestand bewaart alles precies, hoeveel het ook is.
file-save = Deze configuratie opslaan als bestand
file-save-all = Alle configuraties opslaan als één bestand
file-open = Een bestand openen
file-drop = Of sleep het naar de pagina. De configuraties erin komen bij die van jou; er wordt niets vervangen.
aside-there = In deze browser staan gegevens apart die niet konden worden gelezen.
aside-drop-title = Uit deze browser verwijderen
aside-drop-about = Sla ze eerst op als bestand. Wat je hier verwijdert, is echt weg.
aside-drop = Definitief verwijderen

post-card = Het antwoord delen
post-text = Als tekst voor een forum of bericht
post-pictures = Als afbeelding
post-tables = Als tabellen voor een spreadsheet
post-markup = Opmaak
post-plain = Platte tekst
post-markdown = Markdown
post-bbcode = BBCode
post-loads-title = Lijst van apparaten
post-loads-field = Lijst om te plaatsen
post-loads-picture = Als plaatje
post-which = Welke apparaten?
post-measured = Gemeten
post-all = Allemaal
post-field = De tekst
post-copy = Tekst kopiëren
post-title = { $name }: hoelang houdt de accu het vol?
post-nights = Nachten op de accu
post-nights-value = { $n }, { $often } (gewenst: { $asked })
post-nights-open = { $n } of meer, { $often } (gewenst: { $asked })
post-chance = Kans dat de accu het hele verblijf haalt
post-first-low = Boven je ondergrens, { $often }, tot
post-lowest = Laadtoestand, { $often }, nooit onder
post-where = Waar
post-when = Wanneer
post-when-value = { $n ->
    [one] vanaf { $date }, { $n } nacht
   *[other] vanaf { $date }, { $n } nachten
}
post-loads = Apparaten
post-loads-count = { $n }
post-loads-need = { $n ->
    [one] { $n } apparaat; { $need } uit de accu
   *[other] { $n } apparaten; { $need } uit de accu
}
post-battery = Accu
post-battery-value = { $capacity }, { $volts } V, { $kind }; van { $from } tot { $to }
post-solar = Zonnepanelen
post-helps = Wat het meest zou helpen
post-note = Een schatting van Nightbank, geen belofte.
post-link = Openen in Nightbank
picture-outlook = De voorspelling
picture-ranking = Grootste verbruikers
picture-about = Beide tonen de namen die je hebt gegeven, en de plaats en data van de reis.
picture-outlook-file = voorspelling
picture-ranking-file = grootste verbruikers
csv-loads = Apparaten (CSV)
csv-days = Dagen (CSV)
csv-about = Met de scheidingstekens van je taal; gangbare spreadsheets openen ze met dubbelklikken. De dagen gelden voor gemiddeld weer.
csv-loads-file = apparaten
csv-days-file = dagen
csv-name = Apparaat
csv-group = Groep
csv-quantity = Aantal
csv-draw = Vermogen per stuk (W)
csv-current = Stroom per stuk (A)
csv-feed = Werkt op
csv-usage = Gebruik
csv-per-day = Energie per dag uit de accu (Wh)
csv-standby = Waarvan tussen het gebruik door (Wh)
csv-of-need = Deel van de energie van de dag (%)
csv-enabled = Telt mee (1) of niet (0)
csv-feed-battery = accu
csv-feed-inverter = omvormer
csv-mean = gemiddeld over de dag
csv-code = Om weer in Nightbank te openen
csv-date = Datum
csv-weather = Weer
csv-air = Gemiddelde luchttemperatuur ({ $unit })
csv-used = Verbruikt (Wh)
csv-sun = Uit zonnepanelen (Wh)
csv-driving = Geladen tijdens het rijden (Wh)
csv-hook-up = Geladen via walstroom (Wh)
csv-other = Uit andere bronnen (Wh)
csv-soc-low = Laagste laadtoestand (%)
csv-soc-end = Laadtoestand aan het eind (%)
print-button = Afdrukken op één pagina
print-failed = De browser kon niet afdrukken.
print-setup = Gebaseerd op
print-note = Een schatting van Nightbank, geen belofte. Niet meegerekend: schaduw en andere dingen die niet zijn ingevuld. De handleidingen van de fabrikanten en de plaatselijke regels gaan voor. De code opent deze configuratie op een telefoon, met de namen en reisdata erin.

units-legend = Eenheden
units-device = Zoals mijn toestel
units-metric = Metrisch
units-us = VS (°F, gal, ft, lb)
