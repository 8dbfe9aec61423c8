# Battery and what charges it.
power-title = Accu en laden
counts-in = Telt mee
per-12-volts = Opgegeven voor 12 V; bij 24 V verdubbeld.

bank-title = Accu
bank-chemistry = Soort
chemistry-flooded = Natte loodaccu
chemistry-agm = AGM
chemistry-gel = Gel
chemistry-lithium = LiFePO4
bank-capacity = Capaciteit per accu
bank-parallel = Aantal parallel
bank-system = Systeem
system-12 = 12 V
system-24 = 24 V
bank-capacity-hint = Bij 20 uur ontladen (C20).
bank-label = Op het etiket: { $ah } bij { $volts }
bank-real-voltage = Werkelijke spanning van vol tot leeg
bank-aged = Verloren door ouderdom
bank-kept-back = Achtergehouden onder { $lowest }
bank-usable = Bruikbaar bij { $at }
bank-usable-trip = In het koudste uur van een gewone dag op deze reis is de accu ongeveer { $at }, en is er { $wh } beschikbaar.
from-label = Zo staat het op een accu: { $ah } maal { $volts }. Het zegt nog niet wat bruikbaar is.
from-real-voltage = Van vol tot leeg staat een accu van deze soort gemiddeld op { $mean }, niet op { $volts }.
from-aged = De leeftijd heeft er { $health } van overgelaten, zoals ingevuld bij de gezondheid.
from-kept-back = Wat onder { $lowest } ligt blijft in de accu, zoals ingevuld bij het laagste dat je toestaat.
from-usable = Wat na de regels hierboven van het etiket overblijft, langzaam onttrokken. Kou en zware stromen nemen er iets van.
bank-ventilation = Tijdens het laden vraagt de gebruikelijke regel (EN 50272-2, IEC 62485-2) { $air } m³ verse lucht per uur: een opening van { $area } cm² onder en een boven. De handleiding van de fabrikant en de regels voor voertuigen gaan voor.
bank-usable-fast = Bij zwaar verbruik blijft een deel van de lading in een loodaccu achter tot hij gerust heeft.
bank-lowest = Laagste niveau dat je toelaat
bank-lowest-hint = Gebruikelijk: 50% voor lood, 10% voor lithium.
bank-start = Lading bij aankomst
bank-health = Conditie
bank-place = Waar hij staat
bank-inside = In de leefruimte
bank-locker = In een bergruimte
bank-outside = Buiten
bank-heated = Verwarmd om te laden
bank-heated-hint = Een verwarmingsmat of ingebouwde verwarming houdt de cellen boven 0 °C als er een lader actief is.
bank-cold-allowed = Fabrikant staat laden onder 0 °C toe
bank-cold-allowed-hint = Alleen als het in het gegevensblad staat.
bank-more = Blokken en kabel
bank-block = Eén blok heeft
block-6 = 6 V
block-12 = 12 V
block-24 = 24 V
bank-cable = Weerstand van de accukabels
bank-cable-length = Kabel, enkele lengte
bank-cable-size = Kabeldoorsnede
bank-cable-take = Weerstand berekenen uit lengte en doorsnede
bank-cable-hint = Heen en terug, van de accu tot waar de apparaten aftakken.

solar-title = Zonnepanelen
solar-none = Geen panelen. Voeg die op het dak toe, en een los paneel apart.
solar-add = Panelen toevoegen
solar-number = Panelen { $n }
solar-deleted = Verwijderd: panelen { $n }
solar-delete = Deze verwijderen
solar-duplicate = Deze dupliceren
solar-name = Naam
solar-peak = Piekvermogen
solar-tilt = Helling
solar-tilt-hint = 0 is plat, 90 rechtop.
solar-facing = Richting
solar-facing-degrees = of in graden
solar-facing-hint = Vanaf het noorden, met de klok mee: 180 is zuid.
compass-n = Noord
compass-ne = Noordoost
compass-e = Oost
compass-se = Zuidoost
compass-s = Zuid
compass-sw = Zuidwest
compass-w = West
compass-nw = Noordwest
solar-controller = Laadregelaar
controller-mppt = MPPT
controller-pwm = PWM
solar-mounting = Bevestiging
mounting-glued = Vlak verlijmd
mounting-gap = Met luchtspleet
mounting-rack = Vrijstaand
solar-shade = Schaduw
shade-hint = Hoeveel er verloren gaat, 0 tot 100%. Een boom of muur aan de kant van de middagzon kost het meest.
shade-morning = Directe zon vóór 10:00
shade-midday = Directe zon 10:00 tot 14:00
shade-afternoon = Directe zon na 14:00
shade-sky = Deel van de hemel uit het zicht
solar-losses = Verliezen en naam
solar-efficiency = Rendement laadregelaar
solar-low-light = Verlies bij zwak licht (200 W/m²)
solar-dirt = Vuil op het glas
solar-wiring = Verlies in kabels
solar-mismatch = Verlies door tolerantie
solar-temperature = Verandering bij warmte
solar-temperature-hint = Uit het gegevensblad, meestal −0,3 tot −0,45 %/K.
solar-self-use = Eigen verbruik van de regelaar

inverter-title = Omvormer
inverter-fitted = Er is een omvormer ingebouwd
inverter-continuous = Continu vermogen
inverter-surge = Vermogen, enkele seconden
inverter-idle = Nullastverbruik
inverter-idle-usual = Gebruikelijk bij deze maat: { $low } tot { $high } W zonder dat er iets is aangesloten.
inverter-switching = Ingeschakeld
inverter-when-used = Alleen bij gebruik
inverter-all-day = Dag en nacht
inverter-power-save = Slaapt in rust
inverter-asleep = Verbruik in slaapstand
inverter-missing = { $n ->
    [one] Eén apparaat heeft netspanning nodig, maar er is geen omvormer ingebouwd. Er wordt gerekend alsof die er wel is.
   *[other] { $n } apparaten hebben netspanning nodig, maar er is geen omvormer ingebouwd. Er wordt gerekend alsof die er wel is.
}
inverter-current = Uit de accu bij vol vermogen
inverter-at-tenth = Rendement bij { $watts }
inverter-idle-day = Aan, met niets aangesloten
inverter-contradiction = Dit kan niet allebei kloppen: met dat nullastverbruik is het rendement bij vol vermogen hooguit { $most }. Er wordt met dat nullastverbruik gerekend.
inverter-more = Rendement en uitschakelen
inverter-efficiency = Rendement bij vol vermogen
inverter-efficiency-hint = Inclusief eigen verbruik; gegevensbladen geven vaak de beste waarde, niet deze.
inverter-cut-out = Schakelt uit onder
inverter-cut-out-hint = Opgegeven voor 12 V; bij 24 V verdubbeld. De voorspelling zegt wanneer dat zou gebeuren en rekent alsof alles doorloopt.

driving-title = Laden tijdens het rijden
driving-fitted = De motor laadt de accu
driving-charger = Via
charger-dc-dc = DC-DC-lader
charger-relay = Scheidingsrelais
driving-amps = Laadstroom
amps-hint = Wat hij kan leveren. Een volle accu neemt minder op.
driving-every = Je rijdt eens per
driving-minutes = Rijtijd op zo’n dag
driving-from = Vertrek om
driving-taper = Een loodaccu die bijna vol is, neemt in een uur rijden weinig op; het laatste vijfde deel kost vele uren.
driving-days-hint = Losse dagen kunnen afwijken: zie de dagen van de reis.
relay-alternator = Spanning van de dynamo
relay-length = Kabel, enkele lengte
relay-size = Kabeldoorsnede
relay-limit = De leiding kan aan
relay-smart = Slimme dynamo
relay-smart-hint = Verlaagt af en toe zijn spanning, zoals in veel voertuigen sinds ongeveer 2015.

hook-up-title = Walstroom
hook-up-fitted = Er is een netlader aan boord
hook-up-amps = Laadstroom
hook-up-every = Walstroom eens per
hook-up-from = Aangesloten om
hook-up-hours = Duur
hook-up-through = Apparaten op netspanning via walstroom
hook-up-through-hint = Zolang je bent aangesloten, gaan ze buiten accu en omvormer om.

other-title = Andere bronnen
other-none = Geen generator, brandstofcel of windturbine.
other-add = Bron toevoegen
other-number = Bron { $n }
other-deleted = Verwijderd: bron { $n }
other-delete = Deze verwijderen
other-kind = Soort
other-generator = Generator
other-fuel-cell = Brandstofcel
other-wind = Windturbine
other-amps = Laadstroom
other-every = Draait eens per
other-from = Vanaf
other-hours = Duur
other-fuel = Brandstof per uur
other-wind-hint = Wind is te plaatselijk om te voorspellen: geef je eigen gemiddelde stroom en uren op.

every-words = { $n ->
    [0] nooit
    [one] elke dag
   *[other] eens per { $n } dagen, voor het eerst op dag { $n }
}

stages-full = Van { $from } tot vol duurt bij { $at } ongeveer { $full }, waarbij apparaten { $drawn } van de { $amps } afnemen: { $bulk } met de volle stroom tot { $to } (bulk), dan { $absorption } waarin de accu steeds minder opneemt (absorptie).
stages-long = Vanaf { $from } is de accu bij { $at } zelfs na vier dagen niet vol, waarbij apparaten { $drawn } van de { $amps } afnemen.
stages-reach-bulk = In { $time } komt hij op { $reached }, nog met de volle stroom (bulk).
stages-reach-absorption = In { $time } komt hij op { $reached }, in de absorptie.
stages-reach-float = In { $time } is hij vol, en gaat de lader over op druppelladen (float).
stages-starved = Voor de accu blijft niets over: apparaten nemen intussen { $drawn } af.
stages-cold = Bij { $at } neemt de accu geen lading op.

parked-title = Gestald en ongebruikt
parked-open = Hoe lang houdt een gestalde accu het vol?
parked-hint = Er wordt niet geladen en er is niemand aan boord. Wat aan blijft, zoals een tracker, een alarm of een klok, en het eigen verlies van de accu maken hem langzaam leeg.
parked-draw = Blijft aan
parked-draw-hint = Eerst ingevuld met je apparaten die altijd aan staan en je sluipverbruik.
parked-soc = Geladen tot
parked-air = Temperatuur van de accu
parked-drain = Ontlading, inclusief eigen verlies
parked-low = Laagste niveau bereikt na
parked-empty = Leeg na
parked-days = { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}
parked-years = meer dan twee jaar
parked-freezes = Geladen zoals hierboven bevriest deze accu bij { $first }; op het laagste toegestane niveau bij { $at }; leeg bij { $flat }.
parked-frost-after = Bij { $air } bevriest hij na { $days }, omdat hij leegloopt: laad hem eerder op of koppel hem los.
parked-frost = Is het nog kouder, dan kan hij barsten: houd hem geladen of haal hem er vóór de vorst uit. Laad nooit een bevroren accu.
parked-lithium = Lithium bewaar je het best deels geladen en losgekoppeld, zoals de fabrikant aangeeft; onder 0 °C mag het niet worden geladen.
