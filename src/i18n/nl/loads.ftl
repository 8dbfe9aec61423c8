# Appliances.
loads-title = Wat je gebruikt
loads-none = Nog niets. Voeg toe wat je aan boord hebt: twee tikken per stuk.
loads-add = Apparaat toevoegen
loads-full = In de lijst passen hoogstens { $most } apparaten.
load-count-it = { $name } meetellen
load-deleted = Verwijderd: { $name }
load-name = Naam
load-learned = Hoe weet je wat het trekt?
load-quantity = Hoeveel
load-feed = Werkt op
load-more = Sluipverbruik, piek, uitschakelen, groep
load-group = Groep
load-done = Klaar
load-duplicate = Dupliceren
load-delete = Verwijderen
load-standby = Sluipverbruik buiten gebruik
load-standby-hint = Per stuk, zolang het aangesloten blijft.
load-spread = Kan ernaast zitten met
load-spread-hint = Leeg: wat gebruikelijk is voor hoe je het weet.
load-surge = Aanlooppiek t.o.v. normaal
load-cut-out = Schakelt uit bij lage spanning
load-cut-out-hint = Zoals veel compressorkoelkasten en kachels. Opgegeven voor 12 V; bij 24 V verdubbeld. De voorspelling zegt wanneer dat zou gebeuren en rekent alsof het doorloopt.
load-cut-out-off = Uit onder
load-cut-out-on = Weer aan boven
load-driving-only = Bedoeld om alleen met draaiende motor te werken: stilstaand trekt het een accu binnen enkele uren leeg.
load-counted-elsewhere = Het onderdeel ‘Stroom’ vraagt om hetzelfde cijfer. Vul het maar op één plek in.
load-no-inverter = Apparaten op netspanning hebben een omvormer nodig, en er is er geen ingevuld.
load-enter-inverter = Omvormer invullen

group-cold = Koelen en vriezen
group-heat = Verwarming
group-air = Ventilatie en airco
group-water = Water
group-light = Licht
group-screens = Beeld en geluid
group-net = Internet
group-health = Gezondheid
group-kitchen = Keuken
group-body = Haar, tanden, was
group-tools = Gereedschap en e-bikes
group-vehicle = Voertuig
group-standby = Sluipverbruik
group-other = Overig

feed-dc = Accu
feed-inverter = Omvormer

draw-title = Wat het trekt als het draait, per stuk
draw-power = Vermogen
draw-current = of stroom
draw-volts = bij
draw-hint = Vul een van beide in, de andere volgt. Een vermogen (W) is geen hoeveelheid energie (Wh).
draw-hint-mains = Vul een van beide in, de andere volgt. Allebei aan de kant van de netspanning; de verliezen van de omvormer komen erbij.
draw-hint-energy = Hier zegt het alleen hoelang het duurt; de energie telt zoals hieronder opgegeven.

use-title = Hoe je het gebruikt
use-rule = Soort gebruik
use-daily = Zo lang per dag
use-always = Altijd aan
use-duty-air = Op thermostaat, met het weer mee
use-duty = Op thermostaat, deel van de tijd
use-charges = Laadt een apparaat op
use-litres = Pompt water
use-uses = Kort gebruik
use-energy = Energie per dag is bekend
use-hours = Uren per dag
use-minutes = of minuten per dag
use-duty-at-25 = Deel van de tijd bij 25 °C
use-duty-at-25-hint = Het volgt de temperatuur van plaats en maand.
use-duty-share = Deel van de tijd dat het draait
use-every-days = Volledig laden eens per
use-cell = De accu ervan
use-cell-hint = In mAh, zoals erop staat.
use-cell-volts = Spanning van die accu
use-cell-volts-hint = Telefoons ongeveer 3,85 V, niet de 5 V van de stekker.
use-charger = Rendement van de lader
use-water = Water per dag
use-flow = Opbrengst van de pomp
use-twice = Tweemaal gepompt
use-twice-hint = Eén keer aan boord uit een jerrycan, één keer uit de kraan.
use-times = Keer per dag
use-seconds = Duur per keer
use-energy-a-day = Energie per dag
use-energy-hint = In Wh: een hoeveelheid, zoals een meter na 24 uur aangeeft.

window-title = Wanneer
window-any = Maakt niet uit
window-day = Overdag
window-evening = ’s Avonds
window-night = ’s Nachts
window-morning = ’s Ochtends
window-own = Eigen tijden
window-from = Van
window-to = Tot
window-too-short = Het draait { $time } per dag, langer dan deze tijden. Die raken vol en de rest wordt verdeeld over de andere uren.

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
add-in-list = { $n } in je lijst
