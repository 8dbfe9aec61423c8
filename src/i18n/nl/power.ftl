# Battery and what charges it.
power-title = Accu en laden
counts-in = Telt mee
per-12-volts = Waarde voor 12 V; bij 24 V verdubbeld.

bank-title = Accu
bank-chemistry = Soort
chemistry-flooded = Natte loodaccu (open)
chemistry-agm = AGM
chemistry-gel = Gel
chemistry-lithium = LiFePO4
bank-capacity = Capaciteit per accu
bank-parallel = Aantal parallel
bank-system = Systeem
system-12 = 12 V
system-24 = 24 V
bank-label = Op het etiket: { $ah } bij { $volts }
bank-real-voltage = Werkelijke spanning, van vol tot leeg
bank-aged = Verloren door ouderdom
bank-kept-back = Reserve onder { $lowest }
bank-usable = Bruikbaar bij { $at }
bank-usable-trip = In het koudste uur van een gewone dag op deze reis is de accu ongeveer { $at }. Dan is { $wh } bruikbaar.
from-label = Dit belooft het etiket: { $ah } × { $volts }. Het is nog niet wat je kunt gebruiken.
from-real-voltage = Van vol tot leeg heeft dit soort accu gemiddeld een spanning van { $mean }, niet { $volts }.
from-aged = Door ouderdom is daar { $health } van over, zoals ingevuld bij ‘Conditie’.
from-kept-back = Wat onder { $lowest } ligt, je ondergrens, blijft in de accu.
from-usable = Wat na de regels hierboven van het etiket overblijft, als je er langzaam energie uit haalt. Kou en grote stromen maken het minder.
bank-ventilation = Tijdens het laden vraagt de gebruikelijke regel voor vast opgestelde accu’s (EN IEC 62485-2, voorheen EN 50272-2) { $air } verse lucht per uur. Dat is een opening van { $area } onderin en nog een bovenin. In voertuigen gaan de handleiding van de fabrikant en de regels voor voertuigen voor.
bank-usable-fast = Bij grote stromen blijft een deel van de lading in een loodaccu achter tot hij heeft gerust.
bank-lowest = Je ondergrens
bank-lowest-usual = Gebruikelijk: { $lowest }.
bank-start = Laadtoestand bij aankomst
bank-health = Conditie
bank-place = Plek van de accu
bank-inside = In de woonruimte
bank-locker = In een bergruimte
bank-outside = Buiten
bank-heated = Verwarmd tijdens het laden
bank-heated-hint = Een verwarmingsmat of ingebouwde verwarming houdt de cellen boven { $temp_0 } zodra ze geladen kunnen worden.
bank-cold-allowed = Fabrikant staat laden onder { $temp_0 } toe
bank-cold-allowed-hint = Alleen als dat in het gegevensblad staat.
bank-block = Spanning per accu
block-6 = 6 V
block-12 = 12 V
block-24 = 24 V
bank-cable = Weerstand van de accukabels
bank-cable-length = Kabel, enkele lengte
bank-cable-size = Kabeldoorsnede
bank-cable-take = Weerstand berekenen uit lengte en doorsnede
bank-cable-hint = Heen en terug, van de accu tot waar de apparaten aftakken.

solar-title = Zonnepanelen
solar-none = Geen panelen. Voeg de panelen op het dak toe, en een los paneel apart.
solar-add = Panelen toevoegen
solar-number = Panelengroep { $n }
solar-deleted = Verwijderd: panelengroep { $n }
solar-delete = Deze groep verwijderen
solar-duplicate = Deze groep dupliceren
solar-name = Naam
solar-peak = Nominaal vermogen
solar-tilt = Hellingshoek
solar-tilt-hint = 0 is plat, 90 rechtop.
solar-facing = Oriëntatie
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
mounting-glued = Plat verlijmd
mounting-gap = Met luchtspleet eronder
mounting-rack = Vrijstaand
solar-shade = Schaduw
shade-hint = Hoeveel er verloren gaat, van 0 tot 100%. Een boom of muur aan de kant van de middagzon kost het meest.
shade-morning = Directe zon vóór 10:00
shade-midday = Directe zon van 10:00 tot 14:00
shade-afternoon = Directe zon na 14:00
shade-sky = Deel van de hemel afgedekt
solar-efficiency = Rendement van de laadregelaar
solar-low-light = Verlies bij zwak licht, bij 200 W/m²
solar-dirt = Vuil op het glas
solar-wiring = Verlies in kabels
solar-mismatch = Verlies door mismatch
solar-temperature = Temperatuurcoëfficiënt
solar-temperature-hint = Uit het gegevensblad, meestal −0,3 tot −0,45 %/K.
solar-self-use = Eigen verbruik van de laadregelaar
solar-cold-volts = Panelen in serie: reken bij de grootste kou hier ({ $cold }) op { $share } meer spanning dan de Voc op het typeplaatje. De som moet onder de hoogste ingangsspanning van de laadregelaar blijven, anders gaat die kapot.
solar-vmp = Spanning bij maximaal vermogen
solar-vmp-hint = Vmp, van het typeplaatje: van het paneel, of van alle panelen in serie samen. Leeg laten voor 18,2 V per 12 V.

inverter-title = Omvormer
inverter-fitted = Er is een omvormer aan boord
inverter-continuous = Continu vermogen
inverter-surge = Piekvermogen (enkele seconden)
inverter-idle = Nullastverbruik
inverter-idle-usual = Gebruikelijk bij deze grootte: { $low } tot { $high } W met niets aangesloten.
inverter-switching = Ingeschakeld
inverter-when-used = Alleen bij gebruik
inverter-all-day = Dag en nacht
inverter-power-save = Spaarstand in rust
inverter-asleep = Opgenomen vermogen in spaarstand
inverter-missing = { $n ->
    [one] Eén apparaat heeft 230 V nodig, maar er is geen omvormer aan boord. Er wordt gerekend alsof die er wel is.
   *[other] { $n } apparaten hebben 230 V nodig, maar er is geen omvormer aan boord. Er wordt gerekend alsof die er wel is.
}
inverter-current = Stroom uit de accu bij vol vermogen
inverter-at-tenth = Rendement bij { $watts }
inverter-idle-day = De hele dag aan, met niets aangesloten
inverter-contradiction = Dit kan niet allebei kloppen: met dat nullastverbruik is het rendement bij vol vermogen hooguit { $most }. Er wordt met het nullastverbruik gerekend.
inverter-efficiency = Rendement bij vol vermogen
inverter-efficiency-hint = Inclusief nullastverbruik. Gegevensbladen geven vaak de beste waarde, niet deze.
inverter-cut-out = Uitschakelspanning
inverter-cut-out-hint = Waarde voor 12 V; bij 24 V verdubbeld. De voorspelling laat zien wanneer het zou gebeuren, maar rekent alsof alles aanblijft.

driving-title = Laden tijdens het rijden
driving-fitted = De motor laadt de accu
driving-charger = Laden via
charger-dc-dc = DC-DC-lader
charger-relay = Scheidingsrelais
driving-amps = Laadstroom
amps-hint = De hoogste stroom die de lader kan leveren. Een volle accu neemt minder op.
driving-every = Je rijdt eens per
driving-minutes = Rijtijd op zo’n dag
driving-from = Vertrektijd
driving-taper = Een loodaccu die bijna vol is, neemt in een uur rijden weinig op. Het laatste vijfde deel kost vele uren.
driving-days-hint = Losse dagen kun je aanpassen bij ‘Reis’.
relay-alternator = Spanning van de dynamo
relay-length = Kabel, enkele lengte
relay-size = Kabeldoorsnede
relay-limit = Maximale stroom van de leiding
relay-smart = Slimme dynamo
relay-smart-hint = Verlaagt soms zijn spanning, zoals in veel voertuigen sinds ongeveer 2015.

hook-up-title = Walstroom
hook-up-fitted = Er is een 230 V-acculader aan boord
hook-up-amps = Laadstroom
hook-up-every = Walstroom eens per
hook-up-from = Begintijd
hook-up-hours = Duur
hook-up-through = Apparaten op 230 V via walstroom
hook-up-through-hint = Zolang je bent aangesloten, gaan ze buiten de accu en de omvormer om.

other-title = Andere bronnen
other-none = Geen aggregaat, brandstofcel of windturbine.
other-add = Bron toevoegen
other-number = Bron { $n }
other-deleted = Verwijderd: bron { $n }
other-delete = Deze verwijderen
other-kind = Soort
other-generator = Aggregaat
other-fuel-cell = Brandstofcel
other-wind = Windturbine
other-amps = Laadstroom
other-every = Draait eens per
other-from = Begintijd
other-hours = Duur
other-fuel = Brandstof per uur
other-wind-hint = Wind is te plaatselijk om te voorspellen: vul je eigen gemiddelde stroom en uren in.

every-words = { $n ->
    [0] nooit
    [one] elke dag
   *[other] eens per { $n } dagen, voor het eerst op dag { $n }
}

stages-full = Laden van { $from } tot vol duurt ongeveer { $full } bij { $at }, terwijl apparaten { $drawn } van de { $amps } gebruiken. Eerst { $bulk } met volle stroom tot { $to } (bulk), daarna { $absorption } met afnemende stroom (absorptie).
stages-long = Vanaf { $from } is de accu bij { $at } na vier dagen nog niet vol, terwijl apparaten { $drawn } van de { $amps } gebruiken.
stages-reach-bulk = In { $time } komt hij op { $reached }, nog in bulk.
stages-reach-absorption = In { $time } komt hij op { $reached }, in absorptie.
stages-reach-float = In { $time } is hij vol en houdt de lader hem op peil (onderhoudslading, float).
stages-starved = Voor de accu blijft niets over: apparaten gebruiken tegelijk { $drawn }.
stages-cold = Bij { $at } neemt de accu geen lading op.

parked-open = Hoelang houdt de accu het vol in de stalling?
parked-hint = Er wordt niet geladen en er is niemand aan boord. Zelfontlading en alles wat aanblijft (tracker, alarm, klok) maken de accu leeg.
parked-draw = Blijvend opgenomen vermogen
parked-draw-hint = Ingevuld op basis van je apparaten die altijd aanstaan en je sluipverbruik.
parked-soc = Geladen tot
parked-air = Temperatuur van de accu, als je die beter weet
parked-drain = Totale stroom, zelfontlading inbegrepen
parked-low = Tijd tot je ondergrens
parked-air-hint = Leeg laten voor de gebruikelijke temperatuur op de plek van de accu, maand voor maand. De vorst is dan zo streng als op één van de veertig dagen.
parked-from = Gestald vanaf
parked-draw-amps = Hetzelfde in ampère
parked-empty = Tijd tot leeg
parked-until = { $days }, op { $date }
parked-days = { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}
parked-years = meer dan twee jaar
parked-freezes = Geladen zoals hierboven bevriest deze accu bij { $first }; op je ondergrens bij { $at }; leeg bij { $flat }.
parked-frost = Een bevroren accu kan barsten. Houd hem geladen of haal hem er vóór de vorst uit. Laad nooit een bevroren accu.
parked-lithium = Lithium bewaar je het best deels geladen en losgekoppeld, zoals de fabrikant aangeeft. Onder { $temp_0 } mag het niet worden geladen.
parked-charge-by = Laad hem uiterlijk { $date } op of koppel hem los.
parked-frost-from = Vanaf { $date } kan een koude nacht hem bevriezen, doordat hij leegloopt.
