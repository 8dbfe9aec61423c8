# Names of the appliances in the catalogue, one message per key.

## Cold
app-fridge-compressor-large = Compressorkoelkast, 80–130 L
app-coolbox-compressor = Compressorkoelbox, 30–45 L
app-freezer = Vriezer, 12 V
app-coolbox-thermoelectric = Thermo-elektrische koelbox
app-fridge-absorption-control = Absorptiekoelkast op gas: elektronica
app-fridge-absorption-element = Absorptiekoelkast: 12 V-element, alleen rijdend
app-fridge-vent-fans = Koelkastventilatoren
app-fridge-drawer = Ladekoelkast, 20–30 L
app-fridge-household = Huishoudkoelkast, netspanning
app-ice-maker = IJsblokjesmachine

## Heating
app-heater-gas-blown = Gasverwarming met blaaslucht: ventilator
app-furnace-blower = Heteluchtkachel op propaan: ventilator
app-boiler-wet = Warmwater-cv: ketel en pomp
app-water-heater-ignition = Boiler: ontsteking, vorstventiel
app-electric-blanket = Elektrische deken, 12 V
app-fan-heater-12v = Ventilatorkachel, 12 V
app-heater-mains = Elektrische kachel, netspanning
app-underfloor-heating = Elektrische vloerverwarming
app-water-heater-electric = Elektrische boiler, netspanning
app-heated-seat-pad = Verwarmd zitkussen
app-tank-heater-pads = Verwarmingsmatten voor tank en leiding
app-pellet-stove = Pelletkachel: ventilator en toevoer

## Air
app-desk-fan = Tafel- of klemventilator, 12 V
app-evaporative-cooler = Verdampingskoeler
app-air-con-roof = Airco, netspanning
app-air-con-12v = Airco, 12 V
app-extractor-hood = Afzuigkap
app-dehumidifier = Luchtontvochtiger
app-air-purifier = Luchtreiniger

## Water
app-pump-diaphragm = Waterpomp, membraan
app-macerator = Vermaler- of afvalwaterpomp
app-shower-booster = Drukpomp douche, buitendouche
app-shower-drain-pump = Afvoerpomp van de douche
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
app-streaming-stick = Digitale ontvanger of streamingstick
app-projector = Minibeamer
app-monitor = Computerscherm
app-tablet = Tablet, laden
app-smart-watch = Horloge of oordopjes, laden
app-camera = Camera-accu, laden
app-drone = Drone-accu, laden
app-power-bank = Powerbank, laden
app-games-console = Spelcomputer
app-speaker = Draadloze luidspreker, laden
app-soundbar = Soundbar of versterker
app-two-way-radio = Portofoon of zender

## Network
app-satellite-internet-small = Satellietinternet, kleine terminal
app-satellite-internet-large = Satellietinternet, grote terminal
app-aerial-amplifier = Antenneversterker
app-signal-booster = Versterker voor mobiel signaal

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
app-kettle-household = Waterkoker, huishoudelijk
app-kettle-12v = Waterkoker, 12 V
app-induction-hob = Inductiekookplaat
app-hot-plate = Elektrische kookplaat
app-microwave = Magnetron, 800 W afgegeven vermogen
app-toaster = Broodrooster
app-coffee-pod = Koffiemachine, cups of espresso
app-coffee-filter = Koffiezetter, filter
app-coffee-grinder = Koffiemolen
app-air-fryer = Heteluchtfriteuse
app-slow-cooker = Slowcooker, rijstkoker
app-multi-cooker = Elektrische snelkookpan
app-electric-grill = Elektrische grill
app-sandwich-maker = Tosti- of wafelijzer
app-egg-boiler = Eierkoker
app-blender = Blender
app-bottle-warmer = Flessenwarmer, 12 V
app-hob-ignition = Gaskookplaat en oven: ontsteking

## Body and laundry
app-hairdryer = Föhn
app-hair-straightener = Stijltang
app-shaver-toothbrush = Scheerapparaat, elektrische tandenborstel
app-hair-clipper = Tondeuse
app-washing-machine = Miniwasmachine
app-spin-dryer = Centrifuge
app-iron = Reisstrijkijzer

## Tools
app-e-bike = E-bike, laden (500 Wh)
app-e-scooter = E-step, laden (300 Wh)
app-power-tool-charger = Lader voor gereedschap
app-vacuum = Stofzuiger, 12 V of handmodel
app-air-compressor = Bandencompressor
app-inflator = Pomp voor luchttent of sup
app-bed-lift = Elektrische bed- of tv-lift
app-electric-fence = Schrikdraadapparaat
app-power-station = Draagbaar powerstation, laden

## Vehicle
app-motor-mover = Mover
app-entrance-step = Elektrische opstap
app-levelling = Nivelleersysteem, steunpoten
app-dash-cam = Dashcam, parkeerstand
app-reversing-camera = Achteruitrijcamera en scherm
app-slide-out = Motor van de slide-out
app-awning-motor = Motor van de luifel
app-winch = Lier
app-boat-motor-charging = Elektrische bootmotor, laden

## Standby
app-whole-van-standby = Sluipverbruik hele camper, groot
app-inverter-idle-300w = Omvormer aan laten staan, 300 W
app-inverter-idle-1kw = Omvormer aan laten staan, 1 kW
app-inverter-idle-2kw = Omvormer aan laten staan, 2 kW
app-inverter-idle-3kw = Omvormer aan laten staan, 3 kW
app-inverter-power-save = Omvormer in spaarstand
app-battery-monitor = Accumonitor, BMS
app-solar-controller = Laadregelaar, eigen verbruik
app-unexplained-standby = Sluipverbruik met alles uit
app-heater-panel-standby = Kachelpaneel, sluipverbruik
app-tank-sensors = Niveausensoren van de tanks
app-clock-memory = Klok, radiogeheugen
app-dcdc-standby = DC-DC-lader, sluipverbruik
app-security-camera = Beveiligingscamera
app-smart-hub = Smarthomecentrale
app-tyre-pressure-display = Bandenspanningsscherm
app-relay-held = Relais dat aan blijft
app-switch-lights = Verlichte schakelaars en lampjes
