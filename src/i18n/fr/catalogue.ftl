# Names of the appliances in the catalogue, one message per key.

## Cold
app-fridge-compressor-large = Frigo à compression, 80–130 L
app-coolbox-compressor = Glacière à compression, 30–45 L
app-freezer = Congélateur, 12 V
app-fridge-freezer-dual = Réfrigérateur-congélateur à deux zones
app-coolbox-thermoelectric = Glacière thermoélectrique
app-fridge-absorption-control = Frigo à absorption au gaz : électronique
app-fridge-absorption-element = Frigo à absorption : résistance 12 V, en roulant seulement
app-fridge-vent-fans = Ventilateurs d’aération du frigo
app-fridge-drawer = Frigo tiroir, 20–30 L
app-fridge-household = Réfrigérateur ménager, 230 V
app-ice-maker = Machine à glaçons

## Heating
app-heater-gas-blown = Chauffage au gaz à air pulsé : ventilateur
app-heater-diesel-start = Chauffage gazole ou essence : bougie de préchauffage
app-furnace-blower = Générateur d’air chaud au propane : soufflerie
app-boiler-wet = Chauffage central à eau : chaudière et pompe
app-combi-diesel = Chauffage gazole avec eau chaude : ventilateur et pompe
app-combi-mains = Chauffage avec eau chaude, résistance électrique
app-heater-shutdown = Chauffage gazole ou essence : bougie à l’arrêt
app-water-element-12v = Résistance de chauffe-eau, 12 V
app-underblanket-mains = Surmatelas chauffant, 230 V
app-heated-clothing = Vêtement chauffant, recharge
app-water-heater-ignition = Chauffe-eau : allumage, vanne antigel
app-electric-blanket = Couverture chauffante, 12 V
app-fan-heater-12v = Chauffage soufflant, 12 V
app-heater-mains = Chauffage électrique, 230 V
app-underfloor-heating = Plancher chauffant électrique
app-water-heater-electric = Chauffe-eau électrique, 230 V
app-heated-seat-pad = Coussin de siège chauffant
app-tank-heater-pads = Tapis chauffants pour réservoirs et tuyaux
app-pellet-stove = Poêle à granulés : ventilateur et vis d’alimentation

## Air
app-desk-fan = Ventilateur de table ou à pince, 12 V
app-evaporative-cooler = Rafraîchisseur d’air à évaporation
app-air-con-roof = Climatiseur, 230 V
app-air-con-12v = Climatiseur, 12 V
app-extractor-hood = Hotte de cuisine
app-dehumidifier = Déshumidificateur
app-air-purifier = Purificateur d’air
app-toilet-fan = Ventilateur de toilettes

## Water
app-pump-diaphragm = Pompe à eau à membrane
app-macerator = Broyeur ou pompe de vidange
app-shower-booster = Surpresseur de douche, douche extérieure
app-shower-drain-pump = Pompe d’évacuation de douche
app-water-purifier = Purificateur d’eau, UV

## Light
app-led-strip = Ruban LED, par mètre
app-halogen-lamp = Lampe halogène, 10 W
app-fluorescent-tube = Tube fluorescent, 8–13 W
app-night-light = Veilleuse, éclairage de marchepied
app-reading-light = Spot liseuse
app-string-lights = Guirlande lumineuse
app-wardrobe-lights = Éclairage de penderie et de coffres
app-lantern-charging = Lanterne ou lampe torche, recharge
app-mosquito-lamp = Lampe anti-moustiques

## Screens and sound
app-tv-small = Téléviseur, 19–24 pouces, 12 V
app-tv-large = Téléviseur, 28–32 pouces, 12 V
app-satellite-tv = Antenne et récepteur de télévision par satellite
app-dish-search = Parabole automatique : recherche
app-streaming-stick = Décodeur numérique ou clé de streaming
app-projector = Mini-projecteur
app-monitor = Écran d’ordinateur
app-laptop-gaming = Ordinateur portable puissant pour jeux
app-tablet = Tablette, recharge
app-smart-watch = Montre ou écouteurs, recharge
app-phone-wireless = Téléphone, recharge sans fil
app-camera = Batterie d’appareil photo, recharge
app-drone = Batterie de drone, recharge
app-power-bank = Batterie externe, recharge
app-games-console = Console de jeux
app-speaker = Enceinte sans fil, recharge
app-soundbar = Barre de son ou amplificateur
app-two-way-radio = Talkie-walkie, CB

## Network
app-satellite-internet-small = Terminal internet par satellite, petit
app-satellite-internet-large = Terminal internet par satellite, grand
app-satellite-snow = Internet par satellite : fonte de la neige
app-router-5g = Routeur 5G
app-aerial-amplifier = Amplificateur d’antenne
app-signal-booster = Amplificateur de réseau mobile

## Health
app-cpap-dry = PPC (CPAP), humidificateur éteint
app-cpap-humidifier = PPC (CPAP) avec humidificateur chauffant
app-nebuliser = Nébuliseur
app-medicine-cooler = Mini-frigo à médicaments
app-oxygen-concentrator = Concentrateur d’oxygène
app-wheelchair-charging = Fauteuil roulant ou scooter PMR, recharge
app-baby-monitor = Écoute-bébé

## Kitchen
app-kettle-low-watt = Bouilloire, faible puissance
app-kettle-household = Bouilloire ordinaire
app-kettle-12v = Bouilloire, 12 V
app-induction-hob = Plaque à induction
app-hot-plate = Plaque électrique
app-microwave = Four à micro-ondes, 800 W restitués
app-toaster = Grille-pain
app-coffee-pod = Machine à café, dosettes ou expresso
app-coffee-filter = Cafetière filtre
app-coffee-bean = Machine à café à grains
app-coffee-grinder = Moulin à café
app-air-fryer = Friteuse sans huile
app-slow-cooker = Mijoteuse, cuiseur à riz
app-multi-cooker = Autocuiseur électrique
app-bread-maker = Machine à pain
app-electric-grill = Gril électrique
app-sandwich-maker = Appareil à croque-monsieur ou gaufrier
app-egg-boiler = Cuiseur à œufs
app-blender = Blender, mixeur
app-bottle-warmer = Chauffe-biberon, 12 V
app-oven-12v = Four de voyage, 12 V
app-hob-ignition = Plaque de cuisson et four à gaz : allumage

## Body and laundry
app-hairdryer = Sèche-cheveux
app-hairdryer-12v = Sèche-cheveux, 12 V
app-hair-straightener = Lisseur à cheveux
app-shaver-toothbrush = Rasoir, brosse à dents électrique
app-hair-clipper = Tondeuse à cheveux
app-washing-machine = Mini lave-linge
app-spin-dryer = Essoreuse
app-iron = Fer à repasser de voyage

## Tools
app-e-bike = Vélo électrique, recharge (625 Wh)
app-e-scooter = Trottinette électrique, recharge (300 Wh)
app-power-tool-charger = Chargeur d’outils électroportatifs
app-vacuum = Aspirateur, 12 V ou à main
app-air-compressor = Compresseur pour pneus
app-inflator = Gonfleur pour auvent ou paddle
app-bed-lift = Lit électrique ou élévateur de téléviseur
app-electric-fence = Clôture électrique
app-power-station = Station électrique portable, recharge

## Vehicle
app-motor-mover = Déplace-caravane
app-entrance-step = Marchepied électrique
app-levelling = Vérins de mise à niveau, béquilles
app-air-suspension = Compresseur de suspension pneumatique
app-trailer-stability = Stabilisateur de remorque
app-side-lights = Feux de position, laissés allumés
app-starter-maintainer = Chargeur de maintien, batterie de démarrage
app-dash-cam = Caméra embarquée, mode stationnement
app-reversing-camera = Caméra de recul et écran
app-slide-out = Moteur d’extension (slide-out)
app-awning-motor = Moteur de store
app-winch = Treuil
app-boat-motor-charging = Moteur de bateau électrique, recharge

## Standby
app-whole-van-standby = Veille de tout le véhicule, grand camping-car
app-inverter-idle-300w = Convertisseur laissé allumé, 300 W
app-inverter-idle-1kw = Convertisseur laissé allumé, 1 kW
app-inverter-idle-2kw = Convertisseur laissé allumé, 2 kW
app-inverter-idle-3kw = Convertisseur laissé allumé, 3 kW
app-inverter-power-save = Convertisseur en mode veille
app-battery-monitor = Moniteur de batterie, BMS
app-solar-controller = Régulateur solaire, consommation propre
app-unexplained-standby = Consommation inexpliquée, tout éteint
app-heater-panel-standby = Commande de chauffage, veille
app-tank-sensors = Sondes de niveau des réservoirs
app-clock-memory = Horloge, mémoire de l’autoradio
app-dcdc-standby = Chargeur DC-DC, veille
app-security-camera = Caméra de surveillance
app-smart-hub = Centrale domotique
app-tyre-pressure-display = Afficheur de pression des pneus
app-relay-held = Relais maintenu excité
app-switch-lights = Interrupteurs lumineux et voyants
