# Names of the appliances in the catalogue, one message per key.

## Cold
app-fridge-compressor-large = Compressorkoelkast, 80–130 L
app-coolbox-compressor = Compressorkoelbox, 30–45 L
app-freezer = Vriezer, 12 V
app-fridge-freezer-dual = Koel-vriescombinatie met twee zones
app-coolbox-thermoelectric = Thermo-elektrische koelbox
app-fridge-absorption-control = Absorptiekoelkast op gas: elektronica
app-fridge-absorption-element = Absorptiekoelkast: 12 V-element, alleen rijdend
app-fridge-vent-fans = Koelkastventilatoren
app-fridge-drawer = Koellade, 20–30 L
app-fridge-household = Huishoudkoelkast, 230 V
app-ice-maker = IJsblokjesmachine

## Heating
app-heater-gas-blown = Gaskachel met blower: ventilator
app-furnace-blower = Propaankachel: blower
app-boiler-wet = Centrale verwarming: ketel en pomp
app-water-heater-ignition = Gasboiler: ontsteking, vorstventiel
app-heater-diesel-start = Diesel- of benzinekachel: gloeistift bij start
app-combi-diesel = Dieselkachel met warm water: ventilator en pomp
app-combi-mains = Kachel met warm water, elektrisch element
app-heater-shutdown = Diesel- of benzinekachel: gloeistift bij stop
app-water-element-12v = Boilerelement, 12 V
app-underblanket-mains = Elektrische onderdeken, 230 V
app-heated-clothing = Verwarmde kleding, laden
app-electric-blanket = Elektrische deken, 12 V
app-fan-heater-12v = Ventilatorkachel, 12 V
app-heater-mains = Elektrische kachel, 230 V
app-underfloor-heating = Elektrische vloerverwarming
app-water-heater-electric = Elektrische boiler, 230 V
app-heated-seat-pad = Verwarmd zitkussen
app-tank-heater-pads = Verwarmingsmatten voor tank en leiding
app-pellet-stove = Pelletkachel: ventilator en toevoer

## Air
app-desk-fan = Tafel- of klemventilator, 12 V
app-evaporative-cooler = Verdampingskoeler
app-air-con-roof = Airco, 230 V
app-air-con-12v = Airco, 12 V
app-extractor-hood = Afzuigkap
app-dehumidifier = Luchtontvochtiger
app-air-purifier = Luchtreiniger
app-toilet-fan = Toiletventilator

## Water
app-pump-diaphragm = Membraanpomp (water)
app-macerator = Vermalerpomp of vuilwaterpomp
app-shower-booster = Drukpomp voor douche of buitendouche
app-shower-drain-pump = Afvoerpomp douche
app-water-purifier = Waterzuivering, uv

## Light
app-led-strip = Ledstrip, per meter
app-halogen-lamp = Halogeenlamp, 10 W
app-fluorescent-tube = Tl-buis, 8–13 W
app-night-light = Nachtlampje, opstaplicht
app-reading-light = Leeslamp
app-string-lights = Lichtsnoer
app-wardrobe-lights = Kast- en bergruimteverlichting
app-lantern-charging = Lantaarn of zaklamp, laden
app-mosquito-lamp = Muggenlamp

## Screens and sound
app-tv-small = Televisie, 19–24 inch, 12 V
app-tv-large = Televisie, 28–32 inch, 12 V
app-satellite-tv = Satelliet-tv: schotel en ontvanger
app-dish-search = Zelfzoekende schotel: zoeken
app-streaming-stick = Digitale ontvanger of streamingstick
app-projector = Minibeamer
app-monitor = Computerscherm
app-laptop-gaming = Krachtige gaminglaptop
app-tablet = Tablet, laden
app-smart-watch = Horloge of oordopjes, laden
app-phone-wireless = Telefoon, draadloos laden
app-camera = Camera-accu, laden
app-drone = Drone-accu, laden
app-power-bank = Powerbank, laden
app-games-console = Spelcomputer
app-speaker = Draadloze luidspreker, laden
app-soundbar = Soundbar of versterker
app-two-way-radio = Portofoon of 27MC

## Network
app-satellite-internet-small = Satellietinternet, kleine terminal
app-satellite-internet-large = Satellietinternet, grote terminal
app-satellite-snow = Satellietinternet: sneeuw smelten
app-router-5g = 5G-router
app-aerial-amplifier = Antenneversterker
app-signal-booster = Versterker mobiel netwerk

## Health
app-cpap-dry = CPAP, bevochtiger uit
app-cpap-humidifier = CPAP met verwarmde bevochtiger
app-nebuliser = Vernevelaar
app-medicine-cooler = Medicijnkoeler
app-oxygen-concentrator = Zuurstofconcentrator
app-wheelchair-charging = Rolstoel of scootmobiel, laden
app-baby-monitor = Babyfoon

## Kitchen
app-kettle-low-watt = Waterkoker, laag vermogen
app-kettle-household = Waterkoker, huishoudmodel
app-kettle-12v = Waterkoker, 12 V
app-induction-hob = Inductiekookplaat
app-hot-plate = Elektrische kookplaat
app-microwave = Magnetron, 800 W uitgangsvermogen
app-toaster = Broodrooster
app-coffee-pod = Koffieapparaat, cups of espresso
app-coffee-filter = Koffiezetapparaat, filter
app-coffee-bean = Koffieapparaat met bonen
app-coffee-grinder = Koffiemolen
app-air-fryer = Heteluchtfriteuse
app-slow-cooker = Slowcooker, rijstkoker
app-multi-cooker = Elektrische snelkookpan
app-bread-maker = Broodbakmachine
app-electric-grill = Elektrische grill
app-sandwich-maker = Tosti- of wafelijzer
app-egg-boiler = Eierkoker
app-blender = Blender
app-bottle-warmer = Flessenwarmer, 12 V
app-oven-12v = Reisoven, 12 V
app-hob-ignition = Gaskookplaat en oven: ontsteking

## Body and laundry
app-hairdryer = Föhn
app-hairdryer-12v = Föhn, 12 V
app-hair-straightener = Stijltang
app-shaver-toothbrush = Scheerapparaat, tandenborstel
app-hair-clipper = Tondeuse
app-washing-machine = Miniwasmachine
app-spin-dryer = Centrifuge
app-iron = Reisstrijkijzer

## Tools
app-e-bike = E-bike, laden (625 Wh)
app-e-scooter = E-step, laden (300 Wh)
app-power-tool-charger = Lader voor gereedschap
app-vacuum = Stofzuiger, 12 V of handmodel
app-air-compressor = Bandencompressor
app-inflator = Pomp voor luchttent of supboard
app-bed-lift = Elektrische bed- of tv-lift
app-electric-fence = Schrikdraadapparaat
app-power-station = Draagbaar powerstation, laden

## Vehicle
app-motor-mover = Mover
app-entrance-step = Elektrische opstaptrede
app-levelling = Hydraulische of elektrische steunpoten
app-air-suspension = Compressor van de luchtvering
app-trailer-stability = Aanhangerstabilisatie
app-side-lights = Stadslicht blijft aan
app-starter-maintainer = Druppellader voor de startaccu
app-dash-cam = Dashcam, parkeerstand
app-reversing-camera = Achteruitrijcamera en scherm
app-slide-out = Slide-outmotor
app-awning-motor = Luifelmotor
app-winch = Lier
app-boat-motor-charging = Elektrische bootmotor, laden

## Standby
app-whole-van-standby = Sluipverbruik, hele grote camper
app-inverter-idle-300w = Omvormer staat aan, 300 W
app-inverter-idle-1kw = Omvormer staat aan, 1 kW
app-inverter-idle-2kw = Omvormer staat aan, 2 kW
app-inverter-idle-3kw = Omvormer staat aan, 3 kW
app-inverter-power-save = Omvormer in spaarstand
app-battery-monitor = Accumonitor, BMS
app-solar-controller = Laadregelaar, eigen verbruik
app-unexplained-standby = Onverklaard sluipverbruik met alles uit
app-heater-panel-standby = Kachelpaneel, sluipverbruik
app-tank-sensors = Niveausensoren tanks
app-clock-memory = Klok, radiogeheugen
app-dcdc-standby = DC-DC-lader, sluipverbruik
app-security-camera = Beveiligingscamera
app-smart-hub = Smarthomecentrale
app-tyre-pressure-display = Bandenspanningsmeter (TPMS)
app-relay-held = Bekrachtigd relais
app-switch-lights = Verlichte schakelaars en controlelampjes
