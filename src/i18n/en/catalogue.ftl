# Names of the appliances in the catalogue, one message per key.

## Cold
app-fridge-compressor-large = Compressor fridge, 80–130 L
app-coolbox-compressor = Compressor cool box, 30–45 L
app-freezer = Freezer, 12 V
app-fridge-freezer-dual = Fridge-freezer with two zones
app-coolbox-thermoelectric = Thermoelectric cool box
app-fridge-absorption-control = Absorption fridge on gas: electronics
app-fridge-absorption-element = Absorption fridge: 12 V element, driving only
app-fridge-vent-fans = Fridge vent fans
app-fridge-drawer = Drawer fridge, 20–30 L
app-fridge-household = Household fridge, mains
app-ice-maker = Ice maker

## Heating
app-heater-gas-blown = Blown-air gas heating: fan
app-heater-diesel-start = Diesel or petrol heater: glow plug at start
app-furnace-blower = Propane furnace: blower
app-boiler-wet = Wet central heating: boiler and pump
app-combi-diesel = Diesel heater with hot water: fan and pump
app-combi-mains = Heater with hot water, electric element
app-heater-shutdown = Diesel or petrol heater: glow plug at shutdown
app-water-element-12v = Water heater element, 12 V
app-underblanket-mains = Electric underblanket, mains
app-heated-clothing = Heated clothing, charging
app-water-heater-ignition = Water heater: ignition, frost valve
app-electric-blanket = Electric blanket, 12 V
app-fan-heater-12v = Fan heater, 12 V
app-heater-mains = Electric heater, mains
app-underfloor-heating = Electric underfloor heating
app-water-heater-electric = Electric water heater, mains
app-heated-seat-pad = Heated seat pad
app-tank-heater-pads = Tank and pipe heating pads
app-pellet-stove = Pellet stove: fan and feed

## Air
app-desk-fan = Desk or clip-on fan, 12 V
app-evaporative-cooler = Evaporative cooler
app-air-con-roof = Air conditioner, mains
app-air-con-12v = Air conditioner, 12 V
app-extractor-hood = Cooker hood
app-dehumidifier = Dehumidifier
app-air-purifier = Air purifier
app-toilet-fan = Toilet vent fan

## Water
app-pump-diaphragm = Water pump, diaphragm
app-macerator = Macerator or waste pump
app-shower-booster = Shower booster, outdoor shower
app-shower-drain-pump = Shower drain pump
app-water-purifier = Water purifier, UV

## Light
app-led-strip = LED strip, per metre
app-halogen-lamp = Halogen lamp, 10 W
app-fluorescent-tube = Fluorescent tube, 8–13 W
app-night-light = Night light, step light
app-reading-light = Reading light
app-string-lights = String lights
app-wardrobe-lights = Wardrobe and locker lights
app-lantern-charging = Lantern or torch, charging
app-mosquito-lamp = Mosquito lamp

## Screens and sound
app-tv-small = Television, 19–24 inch, 12 V
app-tv-large = Television, 28–32 inch, 12 V
app-satellite-tv = Satellite TV dish and receiver
app-dish-search = Self-seeking satellite dish: searching
app-streaming-stick = Digital receiver or streaming stick
app-projector = Mini projector
app-monitor = Computer monitor
app-laptop-gaming = Gaming laptop
app-tablet = Tablet, charging
app-smart-watch = Watch or earbuds, charging
app-phone-wireless = Phone, wireless charging
app-camera = Camera battery, charging
app-drone = Drone battery, charging
app-power-bank = Power bank, charging
app-games-console = Games console
app-speaker = Wireless speaker, charging
app-soundbar = Soundbar or amplifier
app-two-way-radio = Two-way radio

## Network
app-satellite-internet-small = Satellite internet terminal, small
app-satellite-internet-large = Satellite internet terminal, large
app-satellite-snow = Satellite internet: melting snow
app-router-5g = 5G router
app-aerial-amplifier = Aerial amplifier
app-signal-booster = Mobile signal booster

## Health
app-cpap-dry = CPAP, humidifier off
app-cpap-humidifier = CPAP with heated humidifier
app-nebuliser = Nebuliser
app-medicine-cooler = Medicine cooler
app-oxygen-concentrator = Oxygen concentrator
app-wheelchair-charging = Wheelchair or mobility scooter, charging
app-baby-monitor = Baby monitor

## Kitchen
app-kettle-low-watt = Kettle, low wattage
app-kettle-household = Kettle, household
app-kettle-12v = Kettle, 12 V
app-induction-hob = Induction hob
app-hot-plate = Electric hot plate
app-microwave = Microwave oven, 800 W output
app-toaster = Toaster
app-coffee-pod = Coffee machine, pods or espresso
app-coffee-filter = Coffee machine, filter
app-coffee-bean = Coffee machine, bean to cup
app-coffee-grinder = Coffee grinder
app-air-fryer = Air fryer
app-slow-cooker = Slow cooker, rice cooker
app-multi-cooker = Electric pressure cooker
app-bread-maker = Bread maker
app-electric-grill = Electric grill
app-sandwich-maker = Sandwich or waffle maker
app-egg-boiler = Egg boiler
app-blender = Blender
app-bottle-warmer = Bottle warmer, 12 V
app-oven-12v = Travel oven, 12 V
app-hob-ignition = Gas hob and oven: ignition

## Body and laundry
app-hairdryer = Hairdryer
app-hairdryer-12v = Hairdryer, 12 V
app-hair-straightener = Hair straightener
app-shaver-toothbrush = Shaver, electric toothbrush
app-hair-clipper = Hair clipper
app-washing-machine = Mini washing machine
app-spin-dryer = Spin dryer
app-iron = Travel iron

## Tools
app-e-bike = E-bike, charging (625 Wh)
app-e-scooter = E-scooter, charging (300 Wh)
app-power-tool-charger = Power tool charger
app-vacuum = Vacuum cleaner, 12 V or handheld
app-air-compressor = Air compressor for tyres
app-inflator = Inflator for awning or board
app-bed-lift = Electric bed or TV lift
app-electric-fence = Electric fence
app-power-station = Portable power station, charging

## Vehicle
app-motor-mover = Motor mover
app-entrance-step = Electric step
app-levelling = Levelling jacks, corner steadies
app-dash-cam = Dash cam, parking mode
app-air-suspension = Air suspension compressor
app-trailer-stability = Trailer stability unit
app-side-lights = Side lights left on
app-starter-maintainer = Starter-battery maintainer
app-reversing-camera = Reversing camera and display
app-slide-out = Slide-out motor
app-awning-motor = Awning motor
app-winch = Winch
app-boat-motor-charging = Electric boat motor, charging

## Standby
app-whole-van-standby = Whole-van standby, large motorhome
app-inverter-idle-300w = Inverter left on, 300 W
app-inverter-idle-1kw = Inverter left on, 1 kW
app-inverter-idle-2kw = Inverter left on, 2 kW
app-inverter-idle-3kw = Inverter left on, 3 kW
app-inverter-power-save = Inverter in power-save mode
app-battery-monitor = Battery monitor, BMS
app-solar-controller = Solar controller, own use
app-unexplained-standby = Unexplained drain with everything off
app-heater-panel-standby = Heater control panel, standby
app-tank-sensors = Tank level sensors
app-clock-memory = Clock, radio memory
app-dcdc-standby = DC-DC charger, standby
app-security-camera = Security camera
app-smart-hub = Smart home hub
app-tyre-pressure-display = Tyre pressure display
app-relay-held = Relay held in
app-switch-lights = Illuminated switches and indicators
