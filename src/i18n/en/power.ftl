# Battery and what charges it.
power-title = Battery and charging
counts-in = Counts in
per-12-volts = Stated for 12 V; doubled on 24 V.

bank-title = Battery
bank-chemistry = Kind
chemistry-flooded = Flooded lead
chemistry-agm = AGM
chemistry-gel = Gel
chemistry-lithium = LiFePO4
bank-capacity = Capacity of one
bank-parallel = How many in parallel
bank-system = System
system-12 = 12 V
system-24 = 24 V
bank-capacity-hint = At the 20 h rate (C20).
bank-label = On the label: { $ah } at { $volts }
bank-real-voltage = Real voltage from full to empty
bank-aged = Lost to age
bank-kept-back = Kept back below { $lowest }
bank-usable = Usable at { $at }
bank-usable-trip = In the coldest hour of a usual day on this trip the battery is at about { $at }, and { $wh } are within reach.
from-label = Batteries are labelled so: { $ah } × { $volts }. It does not say yet what can be used.
from-real-voltage = From full to empty this kind of battery stands at { $mean } on average, not at { $volts }.
from-aged = Age has left { $health } of it, as entered under Health.
from-kept-back = What lies below { $lowest } stays in the battery, as entered under the lowest you allow.
from-usable = What is left of the label after the rows above, slowly drawn. Cold and heavy draws take some of it.
bank-ventilation = While charging, the usual rule (EN 50272-2, IEC 62485-2) asks for { $air } m³ of fresh air an hour: an opening of { $area } cm² low and one high. The maker’s manual and the rules for vehicles come first.
bank-usable-fast = A heavy draw leaves part of a lead-acid battery’s charge behind until it has rested.
bank-lowest = Lowest you allow
bank-lowest-hint = Usual: 50 % for lead-acid, 10 % for lithium.
bank-start = Charge on arrival
bank-health = Health
bank-place = Where it stands
bank-inside = In the living space
bank-locker = In a locker
bank-outside = Outside
bank-heated = Warmed for charging
bank-heated-hint = A heating mat or built-in heater keeps the cells above 0 °C when a charger is there.
bank-cold-allowed = Maker allows charging below 0 °C
bank-cold-allowed-hint = Only if its data sheet says so.
bank-more = Blocks and cable
bank-block = One block has
block-6 = 6 V
block-12 = 12 V
block-24 = 24 V
bank-cable = Resistance of the battery cables
bank-cable-length = Cable, one way
bank-cable-size = Cable size
bank-cable-take = Work out the resistance from length and size
bank-cable-hint = There and back, from the battery to where the loads branch off.

solar-title = Solar
solar-none = No panels. Add the ones on the roof, and a loose one by itself.
solar-add = Add panels
solar-number = Panels { $n }
solar-deleted = Deleted: panels { $n }
solar-delete = Delete these
solar-duplicate = Duplicate these
solar-name = Name
solar-peak = Peak power
solar-tilt = Tilt
solar-tilt-hint = 0 is flat, 90 upright.
solar-facing = Facing
solar-facing-degrees = or in degrees
solar-facing-hint = From north, clockwise: 180 is south.
compass-n = North
compass-ne = North-east
compass-e = East
compass-se = South-east
compass-s = South
compass-sw = South-west
compass-w = West
compass-nw = North-west
solar-controller = Controller
controller-mppt = MPPT
controller-pwm = PWM
solar-mounting = Mounting
mounting-glued = Glued flat
mounting-gap = With a gap
mounting-rack = Standing free
solar-shade = Shade
shade-hint = How much is lost, 0 to 100 %. A tree or a wall towards the midday sun takes most.
shade-morning = Direct sun before 10:00
shade-midday = Direct sun 10:00 to 14:00
shade-afternoon = Direct sun after 14:00
shade-sky = Sky hidden from view
solar-losses = Losses and name
solar-efficiency = Controller efficiency
solar-low-light = Lost in weak light, at 200 W/m²
solar-dirt = Dirt on the glass
solar-wiring = Lost in wires
solar-mismatch = Lost to tolerance
solar-temperature = Change with heat
solar-temperature-hint = From the data sheet, usually −0.3 to −0.45 %/K.
solar-self-use = Controller’s own draw

inverter-title = Inverter
inverter-fitted = An inverter is fitted
inverter-continuous = Continuous power
inverter-surge = Surge power, for seconds
inverter-idle = Draw with nothing plugged in
inverter-idle-usual = Usual for this size: { $low } to { $high } W with nothing connected.
inverter-switching = Switched on
inverter-when-used = Only when used
inverter-all-day = Day and night
inverter-power-save = Sleeps when idle
inverter-asleep = Draw while asleep
inverter-missing = { $n ->
    [one] One appliance needs mains voltage, but no inverter is fitted. It is counted as if there were one.
   *[other] { $n } appliances need mains voltage, but no inverter is fitted. They are counted as if there were one.
}
inverter-current = From the battery at full power
inverter-at-tenth = Efficiency at { $watts }
inverter-idle-day = Left on with nothing plugged in
inverter-contradiction = These cannot both be true: with that draw and nothing plugged in, the efficiency at full power is { $most } at best. The draw is believed.
inverter-more = Efficiency and cut-out
inverter-efficiency = Efficiency at full power
inverter-efficiency-hint = Own draw included; data sheets often give the best value, not this one.
inverter-cut-out = Shuts down below
inverter-cut-out-hint = Stated for 12 V; doubled on 24 V. The forecast says when it would happen, and counts everything as running on.

driving-title = Charging while driving
driving-fitted = The engine charges the battery
driving-charger = By
charger-dc-dc = Dc-dc charger
charger-relay = Relay
driving-amps = Charging current
amps-hint = What it can give. A full battery takes less.
driving-every = Drives every
driving-minutes = Driving on such a day
driving-from = Setting off at
driving-taper = A lead-acid battery that is nearly full takes little in an hour of driving; its last fifth needs many hours.
driving-days-hint = Single days can differ: see the days of the trip.
relay-alternator = Alternator voltage
relay-length = Cable, one way
relay-size = Cable size
relay-limit = The circuit carries
relay-smart = Smart alternator
relay-smart-hint = Lowers its voltage at times, as in many vehicles since about 2015.

hook-up-title = Hook-up
hook-up-fitted = A mains charger is aboard
hook-up-amps = Charging current
hook-up-every = Hook-up every
hook-up-from = Plugged in at
hook-up-hours = For
hook-up-through = Mains appliances run from the hook-up
hook-up-through-hint = While plugged in, they bypass battery and inverter.

other-title = Other sources
other-none = No generator, fuel cell or wind turbine.
other-add = Add a source
other-number = Source { $n }
other-deleted = Deleted: source { $n }
other-delete = Delete this
other-kind = Kind
other-generator = Generator
other-fuel-cell = Fuel cell
other-wind = Wind turbine
other-amps = Charging current
other-every = Runs every
other-from = From
other-hours = For
other-fuel = Fuel an hour
other-wind-hint = Wind is too local to forecast: give your own average current and hours.

every-words = { $n ->
    [0] never
    [one] every day
   *[other] every { $n } days, first on day { $n }
}

stages-full = From { $from } to full takes about { $full } at { $at }, with appliances taking { $drawn } of the { $amps }: { $bulk } at full current up to { $to } (bulk), then { $absorption } in which the battery takes less and less (absorption).
stages-long = From { $from } the battery is not full even after four days at { $at }, with appliances taking { $drawn } of the { $amps }.
stages-reach-bulk = In { $time } it gets to { $reached }, still in bulk.
stages-reach-absorption = In { $time } it gets to { $reached }, in absorption.
stages-reach-float = In { $time } it is full, and the charger holds it there (float).
stages-starved = Nothing is left for the battery: meanwhile appliances take { $drawn }.
stages-cold = At { $at } the battery takes no charge.

parked-title = Parked and unused
parked-open = How long will the battery stand?
parked-hint = Nothing charges and nobody is aboard. What stays on, such as a tracker, an alarm or a clock, and the battery’s own loss drain it.
parked-draw = Stays on
parked-draw-hint = At first from your always-on appliances and standby.
parked-soc = Charged to
parked-air = Battery temperature
parked-drain = Drain, own loss included
parked-low = Down to the lowest allowed after
parked-empty = Empty after
parked-days = { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}
parked-years = more than two years
parked-freezes = Charged as above, this battery freezes at { $first }; down to the lowest allowed, at { $at }; flat, at { $flat }.
parked-frost-after = At { $air } it freezes after { $days }, as it empties: charge it or disconnect it before.
parked-frost = Colder than that it can burst: keep it charged, or take it out before the frost. Never charge a frozen battery.
parked-lithium = Lithium is best stored partly charged and disconnected, as its maker says, and must not be charged below 0 °C.
