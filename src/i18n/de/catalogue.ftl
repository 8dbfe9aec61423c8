# Names of the appliances in the catalogue, one message per key.

## Cold
app-fridge-compressor-large = Kompressorkühlschrank, 80–130 L
app-coolbox-compressor = Kompressorkühlbox, 30–45 L
app-freezer = Gefrierbox, 12 V
app-fridge-freezer-dual = Kühl-Gefrier-Box mit zwei Zonen
app-coolbox-thermoelectric = Thermoelektrische Kühlbox
app-fridge-absorption-control = Absorberkühlschrank auf Gas: Elektronik
app-fridge-absorption-element = Absorberkühlschrank: 12-V-Heizpatrone, nur beim Fahren
app-fridge-vent-fans = Kühlschranklüfter
app-fridge-drawer = Kühlschublade, 20–30 L
app-fridge-household = Haushaltskühlschrank, 230 V
app-ice-maker = Eiswürfelbereiter

## Heating
app-heater-gas-blown = Gas-Umluftheizung: Gebläse
app-heater-diesel-start = Diesel- oder Benzinheizung: Glühstift beim Start
app-furnace-blower = Propan-Warmluftheizung (US-Bauart): Gebläse
app-boiler-wet = Warmwasserheizung: Kessel und Pumpe
app-combi-diesel = Dieselheizung mit Warmwasser: Gebläse und Pumpe
app-combi-mains = Heizung mit Warmwasser, Elektroheizstab
app-heater-shutdown = Diesel- oder Benzinheizung: Glühstift beim Abschalten
app-water-element-12v = Heizstab im Boiler, 12 V
app-underblanket-mains = Wärmeunterbett, 230 V
app-heated-clothing = Beheizte Kleidung, laden
app-water-heater-ignition = Boiler: Zündung, Frostwächter
app-electric-blanket = Heizdecke, 12 V
app-fan-heater-12v = Heizlüfter, 12 V
app-heater-mains = Elektroheizung, 230 V
app-underfloor-heating = Elektrische Fußbodenheizung
app-water-heater-electric = Elektroboiler, 230 V
app-heated-seat-pad = Beheizte Sitzauflage
app-tank-heater-pads = Heizmatten für Tank und Leitungen
app-pellet-stove = Pelletofen: Gebläse und Förderung

## Air
app-desk-fan = Tisch- oder Klemmventilator, 12 V
app-evaporative-cooler = Verdunstungskühler
app-air-con-roof = Klimaanlage, 230 V
app-air-con-12v = Klimaanlage, 12 V
app-extractor-hood = Dunstabzug
app-dehumidifier = Luftentfeuchter
app-air-purifier = Luftreiniger
app-toilet-fan = Toilettenlüfter

## Water
app-pump-diaphragm = Wasserpumpe, Membranpumpe
app-macerator = Zerhacker- oder Abwasserpumpe
app-shower-booster = Druckpumpe für die Dusche, Außendusche
app-shower-drain-pump = Duschablaufpumpe
app-water-purifier = Wasserentkeimung, UV

## Light
app-led-strip = LED-Streifen, je Meter
app-halogen-lamp = Halogenlampe, 10 W
app-fluorescent-tube = Leuchtstoffröhre, 8–13 W
app-night-light = Nachtlicht, Stufenlicht
app-reading-light = Leselampe
app-string-lights = Lichterkette
app-wardrobe-lights = Schrank- und Staufachlicht
app-lantern-charging = Laterne oder Taschenlampe, laden
app-mosquito-lamp = Mückenlampe

## Screens and sound
app-tv-small = Fernseher, 19–24 Zoll, 12 V
app-tv-large = Fernseher, 28–32 Zoll, 12 V
app-satellite-tv = Sat-Antenne und Receiver
app-dish-search = Automatische Sat-Antenne: Suchlauf
app-streaming-stick = Digitalreceiver oder Streaming-Stick
app-projector = Mini-Beamer
app-monitor = Computermonitor
app-laptop-gaming = Leistungsstarker Spiele-Laptop
app-tablet = Tablet, laden
app-smart-watch = Uhr oder Ohrhörer, laden
app-phone-wireless = Handy, kabellos geladen
app-camera = Kamera-Akku, laden
app-drone = Drohnen-Akku, laden
app-power-bank = Powerbank, laden
app-games-console = Spielkonsole
app-speaker = Kabelloser Lautsprecher, laden
app-soundbar = Soundbar oder Verstärker
app-two-way-radio = Funkgerät

## Network
app-satellite-internet-small = Satelliteninternet, kleine Antenne
app-satellite-internet-large = Satelliteninternet, große Antenne
app-satellite-snow = Satelliteninternet: Schnee schmelzen
app-router-5g = 5G-Router
app-aerial-amplifier = Antennenverstärker
app-signal-booster = Mobilfunkverstärker

## Health
app-cpap-dry = CPAP, Befeuchter aus
app-cpap-humidifier = CPAP mit beheiztem Befeuchter
app-nebuliser = Inhalationsgerät (Vernebler)
app-medicine-cooler = Medikamentenkühler
app-oxygen-concentrator = Sauerstoffkonzentrator
app-wheelchair-charging = Rollstuhl oder Seniorenmobil, laden
app-baby-monitor = Babyfon

## Kitchen
app-kettle-low-watt = Wasserkocher, geringe Leistung
app-kettle-household = Wasserkocher, Haushalt
app-kettle-12v = Wasserkocher, 12 V
app-induction-hob = Induktionskochfeld
app-hot-plate = Elektrische Kochplatte
app-microwave = Mikrowelle, 800 W Mikrowellenleistung
app-toaster = Toaster
app-coffee-pod = Kaffeemaschine, Kapseln oder Espresso
app-coffee-filter = Kaffeemaschine, Filter
app-coffee-bean = Kaffeevollautomat
app-coffee-grinder = Kaffeemühle
app-air-fryer = Heißluftfritteuse
app-slow-cooker = Schongarer, Reiskocher
app-multi-cooker = Elektrischer Schnellkochtopf
app-bread-maker = Brotbackautomat
app-electric-grill = Elektrogrill
app-sandwich-maker = Sandwich- oder Waffeleisen
app-egg-boiler = Eierkocher
app-blender = Standmixer
app-bottle-warmer = Flaschenwärmer, 12 V
app-oven-12v = Reiseofen, 12 V
app-hob-ignition = Gaskocher und Backofen: Zündung

## Body and laundry
app-hairdryer = Föhn
app-hairdryer-12v = Haartrockner, 12 V
app-hair-straightener = Glätteisen
app-shaver-toothbrush = Rasierer, elektrische Zahnbürste
app-hair-clipper = Haarschneider
app-washing-machine = Mini-Waschmaschine
app-spin-dryer = Wäscheschleuder
app-iron = Reisebügeleisen

## Tools
app-e-bike = E-Bike, laden (625 Wh)
app-e-scooter = E-Scooter, laden (300 Wh)
app-power-tool-charger = Werkzeug-Ladegerät
app-vacuum = Staubsauger, 12 V oder Handgerät
app-air-compressor = Reifenkompressor
app-inflator = Elektropumpe für Luftvorzelt oder SUP
app-bed-lift = Elektrisches Hubbett oder TV-Lift
app-electric-fence = Elektrozaun
app-power-station = Tragbare Powerstation, laden

## Vehicle
app-motor-mover = Rangierhilfe (Mover)
app-entrance-step = Elektrische Trittstufe
app-levelling = Hubstützen, elektrische Stützen
app-air-suspension = Kompressor der Luftfederung
app-trailer-stability = Schleuderschutz am Anhänger
app-side-lights = Standlicht, angelassen
app-starter-maintainer = Erhaltungsladung der Starterbatterie
app-dash-cam = Dashcam, Parkmodus
app-reversing-camera = Rückfahrkamera und Monitor
app-slide-out = Slide-out-Motor
app-awning-motor = Markisenmotor
app-winch = Seilwinde
app-boat-motor-charging = Elektro-Bootsmotor, laden

## Standby
app-whole-van-standby = Standby gesamt, großes Wohnmobil
app-inverter-idle-300w = Wechselrichter dauernd an, 300 W
app-inverter-idle-1kw = Wechselrichter dauernd an, 1 kW
app-inverter-idle-2kw = Wechselrichter dauernd an, 2 kW
app-inverter-idle-3kw = Wechselrichter dauernd an, 3 kW
app-inverter-power-save = Wechselrichter im Sparmodus
app-battery-monitor = Batteriemonitor, BMS
app-solar-controller = Solarladeregler, Eigenverbrauch
app-unexplained-standby = Stille Verbraucher, obwohl alles aus ist
app-heater-panel-standby = Bedienteil der Heizung, Standby
app-tank-sensors = Tanksensoren
app-clock-memory = Uhr, Radiospeicher
app-dcdc-standby = Ladebooster, Standby
app-security-camera = Überwachungskamera
app-smart-hub = Smarthome-Zentrale
app-tyre-pressure-display = Reifendruckanzeige
app-relay-held = Dauernd angezogenes Relais
app-switch-lights = Beleuchtete Schalter und Anzeigen
