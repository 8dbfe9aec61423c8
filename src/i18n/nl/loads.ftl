# Appliances.
loads-title = Wat je gebruikt
loads-none = Nog niets. Voeg toe wat je aan boord hebt: twee tikken per stuk.
loads-add = Apparaat toevoegen
loads-full = In de lijst passen hoogstens { $most } apparaten.
loads-scaled = Aangepast aan je metingen: { $factor }
load-count-it = { $name } meetellen
load-deleted = Verwijderd: { $name }
load-name = Naam
load-learned = Waar komt dit cijfer vandaan?
load-quantity = Aantal
load-feed = Werkt op
load-more = Preciezer
load-group = Groep
load-done = Klaar
load-duplicate = Dupliceren
load-delete = Verwijderen
load-standby = Sluipverbruik buiten gebruik
load-standby-hint = Per apparaat, zolang het aangesloten blijft.
load-spread = Foutmarge
load-spread-hint = Leeg laten voor de gebruikelijke marge bij deze herkomst.
load-surge = Aanlooppiek (× normaal vermogen)
load-cut-out = Schakelt uit bij lage spanning
load-cut-out-hint = Dat doen veel compressorkoelkasten en kachels. Waarde voor 12 V; bij 24 V verdubbeld. De voorspelling laat zien wanneer het zou gebeuren, maar rekent alsof het apparaat aanblijft.
load-cut-out-off = Uitschakelspanning
load-cut-out-on = Inschakelspanning
load-driving-only = Alleen bedoeld voor gebruik met draaiende motor: bij stilstand is de accu binnen enkele uren leeg.
load-counted-elsewhere = Bij ‘Accu’ wordt hetzelfde cijfer gevraagd. Vul het maar op één plek in.
load-no-inverter = Heeft een omvormer nodig.
load-enter-inverter = Invullen
load-take-away = Weer weghalen
load-next = Volgend apparaat

quick-cost = { $amount }, { $share } van je verbruik
quick-off = Uitgeschakeld. Ingeschakeld zou het { $amount } gebruiken.
quick-inverter = Daarvan gebruikt de omvormer { $amount }.
summary-inverter-takes = incl. { $amount } omvormer

badge-no-inverter = Geen omvormer
badge-too-much = Te veel voor de omvormer
badge-start = Te veel bij het starten
badge-battery = Te veel voor de accu
badge-off = Schakelt te vroeg uit
badge-inverter-off = Omvormer schakelt te vroeg uit
badge-not-with = Niet samen met: { $name }
badge-not-with-told = Samen met { $name } is het { $running }, bij het starten even { $starting }. Dat is te veel voor de omvormer. Gebruik ze na elkaar.

light-title = Licht voor een avond
light-scene = Wanneer of waar
light-tap = Tik op de lampen die branden.
light-kept = eigen tijden
light-piece = { $name } { $n }
scene-morning = ’s Ochtends
scene-evening = ’s Avonds
scene-night = ’s Nachts
scene-bathroom = Badkamer
scene-awning = Voortent

group-cold = Koelkast en vriezer
group-heat = Verwarming
group-air = Ventilatie en airco
group-water = Water
group-light = Licht
group-screens = Beeld en geluid
group-net = Internet
group-health = Gezondheid
group-kitchen = Keuken
group-body = Verzorging en was
group-tools = Gereedschap en e-bikes
group-vehicle = Voertuig
group-standby = Sluipverbruik
group-other = Overig

feed-dc = Accu
feed-inverter = Omvormer

draw-title = Vermogen als het draait, per stuk
draw-power = Vermogen
draw-current = of stroom
draw-volts = bij
draw-hint = Vul een van beide in; het andere wordt berekend. Vermogen (W) is iets anders dan energie (Wh).
draw-hint-mains = Vul een van beide in; het andere wordt berekend. Allebei aan de 230 V-kant; de verliezen van de omvormer komen erbij.
draw-hint-energy = Het vermogen bepaalt hier alleen hoelang het draait. Voor de energie telt het cijfer hierboven.

use-title = Hoe je het gebruikt
use-rule = Soort gebruik
use-daily = Vaste tijd per dag
use-always = Altijd aan
use-always-told = Altijd aan.
use-duty-air = Thermostaat, hangt af van het weer
use-duty = Thermostaat, vast deel van de tijd
use-charges = Laadt een accu op
use-litres = Pompt water
use-uses = Kort gebruik
use-energy = Bekende energie per dag
use-how-long = Hoelang per dag
use-duty-at-25 = Deel van de tijd bij { $temp_25 }
use-duty-at-25-hint = Wordt aangepast aan de temperatuur van plaats en maand.
use-duty-share = Deel van de tijd dat het draait
use-every-days = Volledige lading eens per
use-cell = Eigen accu
use-cell-hint = In mAh, zoals erop staat.
use-cell-volts = Spanning van die accu
use-cell-volts-hint = Telefoons ongeveer 3,85 V, niet de 5 V van de stekker.
use-charger = Rendement van de lader
use-water = Water per dag
use-flow = Opbrengst van de pomp
use-twice = Tweemaal gepompt
use-twice-hint = Eén keer uit een jerrycan in de tank, één keer uit de kraan.
use-times = Keer per dag
use-seconds = Duur per keer
use-energy-a-day = Energie per dag
use-energy-hint = In Wh, zoals een meter na 24 uur aangeeft.
use-heating = Kachel, naar temperatuur
use-heating-told = Draait zoveel als de kou vraagt.
use-cooling = Ventilator of koeler, volgt de temperatuur
use-driving = Tijdens het rijden
use-driving-hint = Draait zolang je rijdt, zoals ingevuld bij ‘Accu’.
use-once = Eén keer, bij aankomst of vertrek
use-once-when = Wanneer
use-once-arrival = Bij aankomst
use-once-leaving = Bij vertrek
use-once-long = Hoe lang
use-once-hint = Het telt op die ene dag, niet in de energie van een gewone dag.
use-heat = Warmtevermogen
use-heat-hint = Bij vol vermogen, volgens het typeplaatje: vaak 2.000 of 4.000 W. Het voertuig en hoe warm je het houdt, stel je in bij ‘Reis’.
use-start = Energie voor één start
use-cooling-at-25 = Deel van de tijd bij { $temp_25 } buiten
use-cooling-hint = Vanaf { $temp_15 }, en meer naarmate het warmer wordt.
load-place = Plek van het apparaat
load-inside = Binnen
load-outside = Buiten

window-title = Tijdstip
window-any = Maakt niet uit
window-day = Overdag
window-evening = ’s Avonds
window-night = ’s Nachts
window-morning = ’s Ochtends
window-own = Vaste tijden
window-from = Van
window-to = Tot
window-too-short = Het draait { $time } per dag, langer dan deze tijden. De rest wordt verdeeld over de andere uren.
window-another = Nog een tijd
window-away = Deze tijd weghalen
window-nth = Tijd { $n }
window-span = van { $from } tot { $to }

add-title = Apparaat toevoegen
add-search = Zoek: koelkast, telefoon…
add-found = { $n ->
    [one] { $n } gevonden
   *[other] { $n } gevonden
}
add-nothing = Niets gevonden. Voeg een leeg apparaat toe en geef het zelf een naam.
add-blank = Leeg apparaat
add-done = Klaar
add-added = Toegevoegd: { $name }
add-usual = Toevoegen met gebruikelijke cijfers: { $name }
add-in-list = { $n } in je lijst

table-door = Lijst plakken
table-title = Een lijst toevoegen
table-back = Terug
table-paste = Rijen uit je spreadsheet
table-paste-hint = Kopieer ze daar met de kopjes. Alleen namen mag ook.
table-file = Of kies een bestand (CSV of tekst)
table-source = Waar komen deze cijfers vandaan?
table-empty = Er staan geen rijen in.
table-too-large = Dit is te groot voor een lijst apparaten.
table-not-text = Dit is geen tekst. Bewaar het blad eerst als CSV.
table-too-wide = Regel { $line } heeft meer dan { $most } cellen.
table-column = Kolom { $n }
table-asked = Wat betekent ‘{ $heading }’?
table-mark = Hoeveel is ‘{ $cell }’?
table-ready = { $n ->
    [one] Eén apparaat
   *[other] { $n } apparaten
}
table-match = Soort van { $name }
table-match-none = Iets anders
table-line = Regel { $line }
table-faulty = Niet duidelijk
table-leave = { $n ->
    [one] Deze rij weglaten
   *[other] Deze { $n } rijen weglaten
}
table-columns = Kolommen
table-unused = Niet gebruikt
table-replace = Je huidige apparaten vervangen
table-wait-question = Beantwoord eerst de vragen hierboven.
table-wait-rows = Sommige rijen zijn niet duidelijk: verbeter ze hierboven of laat ze weg.
table-nothing = Nog geen apparaat om toe te voegen.
table-no-room = In de lijst passen { $most } apparaten. Vink er { $n } uit.
table-add = { $n ->
    [one] Eén toevoegen
   *[other] { $n } toevoegen
}
table-added = { $n ->
    [one] Eén apparaat toegevoegd
   *[other] { $n } apparaten toegevoegd
}
table-kind-name = Naam
table-kind-quantity = Aantal
table-kind-watts = Watt als het aanstaat
table-kind-amps = Ampère als het aanstaat
table-kind-volts = Volt
table-kind-energy-one = Wh per dag, per stuk
table-kind-energy-all = Wh per dag, samen
table-kind-charge-one = Ah per dag, per stuk
table-kind-charge-all = Ah per dag, samen
table-kind-hours = Uur per dag
table-kind-minutes = Minuten per dag
table-kind-seconds = Seconden per keer
table-kind-times = Keer per dag
table-kind-duty = Deel van de tijd, %
table-kind-feed = Accu of omvormer
table-kind-standby = Watt op stand-by
table-kind-code = Geschreven door Nightbank
table-fault-no-name = De naam ontbreekt.
table-fault-sum = Deze rij telt andere rijen op.
table-fault-none = Geen apparaat: de voorspelling telt het zelf mee.
table-fault-unknown = Geen cijfers, en de naam staat niet in de catalogus.
table-fault-number = { $kind }: ‘{ $text }’ is geen getal.
table-fault-unit = { $kind }: ‘{ $text }’ heeft een andere eenheid.
table-fault-range = { $kind }: { $text } ligt niet tussen { $min } en { $max }.
table-fault-feed = ‘{ $text }’: uit de accu of via de omvormer?
table-fault-day = Meer dan 24 uur per dag.
table-fault-above = Voor zoveel energie zou het meer dan 24 uur per dag moeten draaien.
table-fault-amps = Ampère via de omvormer: bij hoeveel volt? Voeg een kolom toe.
table-fault-length = Hoe lang duurt één keer? Voeg een kolom toe.
table-fault-code = De laatste cel is beschadigd. Maak die leeg, dan tellen de cijfers.
table-note-hour = Geen tijd gegeven: 1 uur per dag.
table-note-usual = Geen watt gegeven: het gebruikelijke cijfer.
table-note-disagrees = Watt maal tijd is { $worked } per dag; de tabel zegt { $told }. Watt en tijd tellen.
table-note-amps = Ampère bij { $volts }.
table-note-short = Naam ingekort.
table-note-off = Je hebt er geen: toegevoegd, maar uitgeschakeld.

take-title = Delen overnemen
take-about = Vink aan wat je in je eigen configuratie wilt.
take-twice = Je hebt er al een met die naam. Beide blijven.
take-panels = Panelen, { $peak }: in plaats van de jouwe
take-battery = Accu, { $capacity } { $kind }: in plaats van de jouwe
take-add = In mijn configuratie zetten
take-no-room = Voor { $n } ervan is geen plek in je lijst.
take-done = Nu in je configuratie.
