# Battery and what charges it.
power-title = Battery and charging
counts-in = Include
per-12-volts = Value for 12 V; doubled for 24 V.

bank-title = Battery
bank-chemistry = Type
chemistry-flooded = Flooded lead-acid (wet)
chemistry-agm = AGM
chemistry-gel = Gel
chemistry-lithium = LiFePO4
bank-capacity = Capacity of each battery
bank-parallel = How many in parallel
bank-system = System
system-12 = 12 V
system-24 = 24 V
bank-label = On the label: { $ah } at { $volts }
bank-real-voltage = Actual voltage, full to empty
bank-aged = Lost to ageing
bank-kept-back = Reserve below { $lowest }
bank-usable = Usable at { $at }
bank-usable-trip = In the coldest hour of a typical day on this trip the battery is at about { $at }. Then { $wh } can be used.
from-label = This is what the label promises: { $ah } × { $volts }. It is not yet what you can use.
from-real-voltage = From full to empty this type of battery averages { $mean }, not { $volts }.
from-aged = { $health } of it is left after ageing, as entered under State of health.
from-kept-back = What lies below { $lowest }, your limit, stays in the battery.
from-usable = What is left of the label figure after the rows above, if drawn slowly. Cold and high draw reduce it.
bank-ventilation = While charging, the usual rule for stationary batteries (EN IEC 62485-2, formerly EN 50272-2) asks for { $air } of fresh air an hour. That is an opening of { $area } low down and another high up. In vehicles, the manufacturer’s instructions and the rules for vehicles come first.
bank-usable-fast = A high draw leaves part of a lead-acid battery’s charge behind until it has rested.
bank-lowest = Your limit
bank-lowest-usual = Usual: { $lowest }.
bank-start = Charge on arrival
bank-health = State of health
bank-place = Where the battery is
bank-inside = In the living space
bank-locker = In a locker
bank-outside = Outside
bank-heated = Heated for charging
bank-heated-hint = A heating mat or built-in heater keeps the cells above { $temp_0 } whenever they can be charged.
bank-cold-allowed = Manufacturer allows charging below { $temp_0 }
bank-cold-allowed-hint = Only if its data sheet says so.
bank-block = Each battery is
block-6 = 6 V
block-12 = 12 V
block-24 = 24 V
bank-cable = Resistance of the battery cables
bank-cable-length = Cable, one way
bank-cable-size = Cable size
bank-cable-take = Work out the resistance from length and size
bank-cable-hint = There and back, from the battery to where the appliances branch off.

solar-title = Solar
solar-none = No panels. Add the ones on the roof, and a portable one separately.
solar-add = Add panels
solar-number = Panel group { $n }
solar-deleted = Deleted: panel group { $n }
solar-delete = Delete this group
solar-duplicate = Duplicate this group
solar-name = Name
solar-peak = Rated power
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
mounting-gap = With an air gap
mounting-rack = Free-standing
solar-shade = Shade
shade-hint = How much is lost, 0 to 100%. A tree or a wall towards the midday sun costs most.
shade-morning = Direct sun before 10:00
shade-midday = Direct sun 10:00 to 14:00
shade-afternoon = Direct sun after 14:00
shade-sky = Sky blocked from view
solar-efficiency = Controller efficiency
solar-low-light = Lost in weak light, at 200 W/m²
solar-dirt = Dirt on the glass
solar-wiring = Cable loss
solar-mismatch = Mismatch loss
solar-temperature = Temperature coefficient
solar-temperature-hint = From the data sheet, usually −0.3 to −0.45 %/K.
solar-cold-volts = Panels in series: at the coldest here ({ $cold }), expect { $share } more voltage than the Voc on their plates. The sum must stay below the controller’s highest input voltage, or it is destroyed.
solar-vmp = Voltage at maximum power (Vmp)
solar-vmp-hint = From the rating plate; for panels in series, their sum. Leave empty for 18.2 V for each 12 V.
solar-self-use = Controller’s own draw

inverter-title = Inverter
inverter-fitted = An inverter is fitted
inverter-continuous = Continuous power
inverter-surge = Surge power (a few seconds)
inverter-idle = No-load draw
inverter-idle-usual = Usual for this size: { $low } to { $high } W with nothing plugged in.
inverter-switching = Switched on
inverter-when-used = Only when used
inverter-all-day = Day and night
inverter-power-save = Power-save when idle
inverter-asleep = Draw in power-save
inverter-missing = { $n ->
    [one] One appliance needs mains voltage, but no inverter is fitted. It is counted as if there were one.
   *[other] { $n } appliances need mains voltage, but no inverter is fitted. They are counted as if there were one.
}
inverter-current = Battery current at full power
inverter-at-tenth = Efficiency at { $watts }
inverter-idle-day = Left on with nothing plugged in
inverter-contradiction = These cannot both be true: with that no-load draw, efficiency at full power is { $most } at best. The no-load draw is used.
inverter-efficiency = Efficiency at full power
inverter-efficiency-hint = No-load draw included. Data sheets often give the best value, not this one.
inverter-cut-out = Shuts down below
inverter-cut-out-hint = Value for 12 V; doubled for 24 V. The forecast shows when it would happen, but assumes everything keeps running.

driving-title = Charging while driving
driving-fitted = The engine charges the battery
driving-charger = Charged through
charger-dc-dc = DC-DC charger
charger-relay = Split-charge relay
driving-amps = Charging current
amps-hint = The most it can give. A nearly full battery takes less.
driving-every = Drive every
driving-minutes = Driving on such a day
driving-from = Time you set off
driving-taper = A lead-acid battery that is nearly full takes little in an hour of driving. Its last fifth needs many hours.
driving-days-hint = You can change single days under Trip.
relay-alternator = Alternator voltage
relay-length = Cable, one way
relay-size = Cable size
relay-limit = Maximum current of the circuit
relay-smart = Smart alternator
relay-smart-hint = Lowers its voltage at times, as in many vehicles since about 2015.

hook-up-title = Hook-up
hook-up-fitted = A mains charger is fitted
hook-up-amps = Charging current
hook-up-every = Hook-up every
hook-up-from = Time you plug in
hook-up-hours = Plugged in for
hook-up-through = Mains appliances run from the hook-up
hook-up-through-hint = While plugged in, they bypass battery and inverter.

other-title = Other sources
other-none = No generator, fuel cell or wind turbine.
other-add = Add a source
other-number = Source { $n }
other-deleted = Deleted: source { $n }
other-delete = Delete this source
other-kind = Type
other-generator = Generator
other-fuel-cell = Fuel cell
other-wind = Wind turbine
other-amps = Charging current
other-every = Runs every
other-from = Runs from
other-hours = Runs for
other-fuel = Fuel per hour
other-wind-hint = Wind is too local to forecast: give your own average current and hours.

every-words = { $n ->
    [0] never
    [one] every day
   *[other] every { $n } days, first on day { $n }
}

stages-full = From { $from } to full takes about { $full } at { $at }, with appliances drawing { $drawn } of the { $amps }. First { $bulk } at full current up to { $to } (bulk), then { $absorption } while the current tapers (absorption).
stages-long = Starting at { $from }, the battery is still not full after four days at { $at }, with appliances drawing { $drawn } of the { $amps }.
stages-reach-bulk = In { $time } it gets to { $reached }, still in bulk.
stages-reach-absorption = In { $time } it gets to { $reached }, in absorption.
stages-reach-float = In { $time } it is full, and the charger holds it there (float).
stages-starved = Nothing is left for the battery: appliances draw { $drawn } at the same time.
stages-cold = At { $at } the battery takes no charge.

parked-open = How long will the battery last while parked?
parked-hint = Nothing charges and nobody is aboard. Self-discharge and whatever stays on (tracker, alarm, clock) drain the battery.
parked-draw = Standing draw
parked-draw-hint = Filled in from your always-on appliances and standby.
parked-soc = Charged to
parked-air = Battery temperature, if you know it
parked-drain = Total drain, self-discharge included
parked-low = Down to your limit after
parked-air-hint = Leave empty for the usual temperature where the battery is, month by month. For frost, the coldest day in forty counts.
parked-from = Parked from
parked-draw-amps = The same in amps
parked-empty = Empty after
parked-until = { $days }, on { $date }
parked-days = { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}
parked-years = more than two years
parked-freezes = Charged as above, this battery freezes at { $first }; at your limit, at { $at }; flat, at { $flat }.
parked-frost = A frozen battery can burst. Keep it charged, or take it out before the frost. Never charge a frozen battery.
parked-lithium = Lithium is best stored partly charged and disconnected, as its manufacturer says. It must not be charged below { $temp_0 }.
parked-charge-by = Charge it or disconnect it by { $date }.
parked-frost-from = From { $date }, as it empties, a cold night can freeze it.
