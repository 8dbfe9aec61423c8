# The answer.
answer-name = The answer
answer-none = Add what you use, and the nights appear here.
answer-nights = { $n ->
    [one] night
   *[other] nights
}
answer-more = or more
answer-sure = on battery, in nine cases of ten
answer-likely = At even odds: { $n ->
    [one] { $n } night
   *[other] { $n } nights
}
answer-asked = You asked for { $n ->
    [one] { $n } night
   *[other] { $n } nights
}.
answer-chance = Chance of lasting them all: { $chance }
answer-first-low = Reaches its lowest allowed level { $when }
answer-never-low = Stays above its lowest allowed level
answer-lowest = Lowest state of charge: { $soc }
answer-working = Playing through the weather…
answer-glance = on battery. Show the whole answer.
answer-spoken = { $n ->
    [one] { $n } night on battery.
   *[other] { $n } nights on battery.
} { $low }
answer-course = Course of the battery
answer-balance = An average day
answer-drains = What takes most
answer-usable-share = { $share } of the usable battery
answer-by-night = Night by night
answer-certainty = How sure is this?
moment = { $weekday } { $date }, { $time }
drawer-inverter = Inverter
drawer-inverter-idle = Inverter, nothing connected
drawer-electronics = Solar controller and battery electronics
balance-sun = Sun taken in
balance-driving = From driving
balance-hook-up = From hook-up
balance-other = From other sources
balance-loads = Appliances
balance-inverter = Lost in the inverter
balance-electronics = Controllers and battery electronics
balance-battery-losses = Lost in the battery
balance-stored = Change of what the battery holds
balance-unused-sun = Sun not taken, the battery being full or cold
balance-unmet = Asked for and not to be had
night-caption = Each night in average weather; the chance is over all weather
night-head-night = Night from
night-head-chance = Chance of lasting through it
night-head-lowest = Lowest state of charge
night-head-sun = Sun taken in
night-head-use = Used
answer-notes = Worth knowing
note-cut-out = { $name } would switch itself off for low voltage from { $when }: { $volts } at its terminals, with { $soc } still in the battery. The forecast counts it as running on.
note-cold-lock = For { $hours } sun or charger offered energy to a lithium battery below 0 °C, which took none. Never charge it below 0 °C unless its maker says so.
note-cold-capacity = At its coldest the battery gives { $share } of its rated capacity, so the limit rises.
note-unmet = Empty from { $when }: what is asked for then is not to be had.
note-unused-sun = On average { $amount } a day of sun finds the battery full. Run heavy things around midday.
note-no-inverter = Something runs through an inverter, but none is entered under Power.
note-fuel = Other sources burn { $litres } L of fuel over the stay. Never run one in or near a closed space: carbon monoxide kills.
sure-own = Sun from your own monthly figures, taken as right within ±{ $accuracy }.
sure-grid = Sun from satellite measurements, 2006 to 2025 ({ $credit }), within about ±{ $accuracy } for a month’s mean.
sure-region = Sun from typical values for { $name }, { $distance } km away, not measured: within about ±{ $accuracy }. Your own monthly figures under Trip are better.
sure-latitude = Sun guessed from the latitude alone, within about ±{ $accuracy }. Enter your own monthly figures under Trip.
sure-odds = Two thousand kinds of weather are played through for your dates. Against twenty measured years the chances came true within 5 to 10 points; no forecast this far ahead is better than that.
sure-no-chance = The weather makes no difference here: no panel, or the weather of every day is given.
sure-average = The line and the table show average weather; the shaded band and the lanterns show the odds.
sure-limits = Snow on the panel, and shade or anything else you did not enter, are not in it. It is an estimate, not a promise: keep a second source for anything medical.
chart-mark-restart = From the reading
night-head-volts = Lowest voltage, largest appliance running
flow-title = Where the energy of an average day goes
flow-panels = Light on the panels
flow-from-battery = Out of the battery’s store
flow-shade-glass = Shade, reflection at the glass
flow-heat-low-light = Heat, weak light
flow-dirt-wires = Dirt, mismatch, wires
flow-controller = Solar controller’s conversion
flow-charging-cable = Charging cable from the engine
flow-charging = Charging losses
flow-resistance = Resistance of the battery
flow-self-discharge = Self-discharge
flow-conversion = Inverter, converting
flow-battery-heating = Heating of the battery
flow-direct-loads = Appliances on the battery
flow-mains-loads = Appliances on the inverter
flow-into-battery = Into the battery’s store
