# Setups, links, files, storage.

setups-title = Je configuraties
setups-none = Nog geen. Het voorbeeld wordt van jou bij de eerste wijziging, en wordt dan in deze browser bewaard.
setups-new = Nieuwe, lege
setups-new-example = Nieuwe uit het voorbeeld
setups-duplicate = Kopie van deze
setups-delete = { $name } verwijderen
setup-name = Naam van de configuratie op het scherm
setup-new-name = Nieuwe configuratie

link-title = Link
link-out = Alles op het scherm, als link
link-length = { $n } tekens.
link-long = Dat is lang voor een chat: sommige kappen hem af. Een bestand is zekerder.
link-too-long = Deze configuratie zou een link van { $n } tekens geven; boven { $limit } kappen chats en oude programma’s hem af. Geef hem door als bestand.
link-copy = Link kopiëren
link-hand-on = Delen…
link-privacy = De link bevat de hele configuratie achter het #-teken; dat deel blijft in browsers en gaat nooit naar de server. De plaats is afgerond op 0,1 graad (tot 6 km ernaast), maar de naam ervan, de datums en alle andere namen gaan mee zoals ze er staan. Wie de link heeft, kan ze lezen.
link-in = Plak een link, of een tekst met een link erin
link-in-open = Link openen
copied = Gekopieerd.
copy-by-hand = De browser laat de pagina niet kopiëren. De tekst is geselecteerd: kopieer hem zelf.
hand-on-failed = Het toestel wilde het niet delen. Kopieer in plaats daarvan de link.
qr-title = Voor de telefoon naast je: QR-code
qr-name = QR-code van de link
qr-none = Deze link is te lang voor een QR-code.
qr-dense = Een lange link geeft een dichte code: houd de telefoon dichtbij, of zet het scherm helder.

file-title = Bestand
file-about = Een bestand bevat alles, precies en hoe lang het ook is.
file-save = Deze configuratie opslaan als bestand
file-save-all = Alle configuraties opslaan als één bestand
file-open = Een bestand openen
file-drop = Of laat het ergens op de pagina vallen. De configuraties erin komen bij die van jou; er wordt niets vervangen.
aside-there = In deze browser staat iets apart wat niet kon worden gelezen.
aside-drop-title = Uit deze browser halen
aside-drop-about = Sla het eerst op als bestand. Wat je hier weghaalt, is echt weg.
aside-drop = Voorgoed weghalen

post-card = Het antwoord doorgeven
post-text = Als tekst voor een forum of bericht
post-pictures = Als afbeelding
post-tables = Als tabellen voor een rekenblad
post-markup = Wat het forum begrijpt
post-plain = Platte tekst
post-markdown = Markdown
post-bbcode = BBCode
post-field = De tekst
post-copy = Tekst kopiëren
post-title = { $name }: hoe lang houdt de accu het vol?
post-nights = Nachten op de accu
post-nights-value = { $n } in negen van de tien gevallen; gevraagd { $asked }
post-nights-open = { $n } of meer in negen van de tien gevallen; gevraagd { $asked }
post-chance = Kans dat de accu ze allemaal haalt
post-first-low = Boven de grens, 9 van de 10 keer, tot
post-lowest = Laadtoestand, 9 van de 10 keer, nooit onder
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
post-solar = Panelen
post-note = Een schatting van Nightbank, geen belofte.
post-link = Openen in Nightbank
picture-outlook = De vooruitblik (PNG)
picture-ranking = Grootste verbruikers (SVG)
picture-about = Beide tonen de namen die je gaf, en plaats en datum van de reis.
picture-outlook-file = vooruitblik
picture-ranking-file = grootste verbruikers
csv-loads = Apparaten (CSV)
csv-days = Dagen (CSV)
csv-about = Met de scheidingstekens van je taal; gangbare rekenprogramma’s openen ze met dubbelklikken. De dagen zijn die van gemiddeld weer.
csv-loads-file = apparaten
csv-days-file = dagen
csv-name = Apparaat
csv-group = Groep
csv-quantity = Aantal
csv-draw = Vermogen per stuk (W)
csv-current = Stroom per stuk (A)
csv-feed = Gevoed door
csv-usage = Gebruik
csv-per-day = Energie per dag bij de accu (Wh)
csv-standby = Waarvan tussen gebruik door (Wh)
csv-of-need = Deel van de dagbehoefte (%)
csv-enabled = Telt mee (1) of niet (0)
csv-feed-battery = accu
csv-feed-inverter = omvormer
csv-mean = gemiddeld over de dag
csv-date = Datum
csv-weather = Weer
csv-air = Gemiddelde luchttemperatuur (°C)
csv-used = Verbruikt (Wh)
csv-sun = Van de zon (Wh)
csv-driving = Van het rijden (Wh)
csv-hook-up = Van walstroom (Wh)
csv-other = Van andere bronnen (Wh)
csv-soc-low = Laagste laadtoestand (%)
csv-soc-end = Laadtoestand aan het eind (%)
print-button = Afdrukken op één pagina
print-failed = De browser wilde niet afdrukken.
print-setup = Waarmee is gerekend
print-note = Een schatting van Nightbank, geen belofte: sneeuw, en schaduw of wat verder niet is ingevuld, zitten er niet in. De handleidingen van de fabrikanten en de plaatselijke regels gaan voor. De code opent deze configuratie op een telefoon; namen en datums gaan daarin mee.
