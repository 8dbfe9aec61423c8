# Appliances.
loads-title = What you use
loads-none = Nothing here yet. Add what you have on board: two taps each.
loads-add = Add an appliance
loads-full = The list holds { $most } appliances at most.
loads-scaled = Scaled by your readings: { $factor }
load-count-it = Include { $name }
load-deleted = Deleted: { $name }
load-name = Name
load-learned = Where does this figure come from?
load-quantity = How many
load-feed = Runs from
load-more = More exact
load-group = Group
load-done = Done
load-duplicate = Duplicate
load-delete = Delete
load-standby = Draw when not in use
load-standby-hint = Per appliance, while it stays connected.
load-spread = Margin of error
load-spread-hint = Leave empty for the usual margin of this kind of source.
load-surge = Starting surge (× running power)
load-cut-out = Switches off on low voltage
load-cut-out-hint = Many compressor fridges and heaters do this. Value for 12 V; doubled for 24 V. The forecast shows when it would happen, but assumes the appliance keeps running.
load-cut-out-off = Off below
load-cut-out-on = On again above
load-driving-only = Only meant to run with the engine on: parked, it flattens a battery within hours.
load-counted-elsewhere = Power asks for the same figure. Enter it in one place only.
load-no-inverter = It needs an inverter.
load-enter-inverter = Enter one
load-take-away = Take it away again
load-next = Next appliance

quick-cost = { $amount }, { $share } of your use
quick-off = Switched off. It would take { $amount }.
quick-inverter = The inverter takes { $amount } of that.
summary-inverter-takes = incl. { $amount } inverter

badge-no-inverter = No inverter
badge-too-much = Too much for the inverter
badge-start = Too much when starting
badge-battery = Too much for the battery
badge-off = Switches off early
badge-inverter-off = Inverter switches off early
badge-not-with = Not with: { $name }
badge-not-with-told = Together with { $name } it takes { $running }, up to { $starting } for a moment when starting. That is too much for the inverter. Run one after the other.

light-title = Light for an evening
light-scene = When or where
light-tap = Tap the lamps that are on.
light-kept = own times
light-piece = { $name } { $n }
scene-morning = Morning
scene-evening = Evening
scene-night = Night
scene-bathroom = Bathroom
scene-awning = Awning

group-cold = Fridge and freezer
group-heat = Heating
group-air = Fans and air
group-water = Water
group-light = Light
group-screens = Screens and sound
group-net = Internet
group-health = Health
group-kitchen = Kitchen
group-body = Hair, teeth, laundry
group-tools = Tools and e-bikes
group-vehicle = Vehicle
group-standby = Standby
group-other = Other

feed-dc = Battery
feed-inverter = Inverter

draw-title = Power while running, each
draw-power = Power
draw-current = or current
draw-volts = Voltage
draw-hint = Enter either one; the other is worked out. Power (W) is not the same as energy (Wh).
draw-hint-mains = Enter either one; the other is worked out. Both on the mains side; inverter losses are added.
draw-hint-energy = Here power only decides how long it runs. The energy used is the figure above.

use-title = How you use it
use-rule = Pattern of use
use-daily = A set time each day
use-always = Always on
use-always-told = Always on.
use-duty-air = Thermostat, depends on the weather
use-duty = Thermostat, fixed share of the time
use-charges = Charges a battery
use-litres = Pumps water
use-uses = Short uses
use-energy = Known energy per day
use-how-long = How long a day
use-duty-at-25 = Share of the time at { $temp_25 }
use-duty-at-25-hint = Adjusted to the temperature of the place and month.
use-duty-share = Share of the time it runs
use-every-days = A full charge every
use-cell = Capacity of its battery
use-cell-hint = In mAh, as printed on it.
use-cell-volts = Voltage of that battery
use-cell-volts-hint = Phones about 3.85 V, not the 5 V of the plug.
use-charger = Charger efficiency
use-water = Water a day
use-flow = Pump flow
use-twice = Pumped twice
use-twice-hint = Once from a jerrycan into the tank, once out of the tap.
use-times = Times a day
use-seconds = Length of each use
use-energy-a-day = Energy a day
use-energy-hint = In Wh, as a meter shows after 24 hours.
use-heating = Heater, depends on the temperature
use-heating-told = Runs as much as the cold asks for.
use-cooling = Fan or cooler, depends on the temperature
use-driving = While driving
use-driving-hint = It runs for as long as you drive, as entered under Power.
use-once = Once, on arrival or leaving
use-once-when = When
use-once-arrival = On arrival
use-once-leaving = On leaving
use-once-long = How long
use-once-hint = It counts on that one day, not in the energy of a usual day.
use-heat = Heat output
use-heat-hint = At full power, from its rating plate: often 2,000 or 4,000 W. The vehicle and how warm you keep it are under Trip.
use-start = Energy for one start
use-cooling-at-25 = Share of the time it runs at { $temp_25 } outside
use-cooling-hint = Starts at { $temp_15 } and runs more the warmer it gets.
load-place = Where it is
load-inside = Inside
load-outside = Outside

window-title = When
window-any = Any time
window-day = By day
window-evening = Evening
window-night = Night
window-morning = Morning
window-own = Set times
window-from = From
window-to = Until
window-too-short = It runs { $time } a day, longer than these times. The rest is spread over the other hours.
window-another = Another time
window-away = Take this time away
window-nth = Time { $n }
window-span = { $from } to { $to }

add-title = Add an appliance
add-search = Search: fridge, phone…
add-found = { $n ->
    [one] { $n } found
   *[other] { $n } found
}
add-nothing = Nothing found. Add a blank appliance and name it yourself.
add-blank = Blank appliance
add-done = Done
add-added = Added: { $name }
add-usual = Add with usual figures: { $name }
add-in-list = { $n } in your list

table-door = Paste a list
table-title = Add a list
table-back = Back
table-paste = Rows from your spreadsheet
table-paste-hint = Copy them there with their headings. Names alone will do too.
table-file = Or choose a file (CSV or text)
table-source = Where do these figures come from?
table-empty = There are no rows in it.
table-too-large = This is too large for a list of appliances.
table-not-text = This is not text. Save the sheet as CSV first.
table-too-wide = Line { $line } has more than { $most } cells.
table-column = Column { $n }
table-asked = What does “{ $heading }” mean?
table-mark = How much is “{ $cell }”?
table-ready = { $n ->
    [one] One appliance
   *[other] { $n } appliances
}
table-match = Kind of { $name }
table-match-none = Something else
table-line = Line { $line }
table-faulty = Not clear
table-leave = { $n ->
    [one] Leave this row out
   *[other] Leave these { $n } rows out
}
table-columns = Columns
table-unused = Not used
table-replace = Replace the appliances you have now
table-wait-question = Answer the questions above first.
table-wait-rows = Some rows are not clear: correct them above, or leave them out.
table-nothing = No appliance to add yet.
table-no-room = The list holds { $most } appliances at most. Untick { $n } of them.
table-add = { $n ->
    [one] Add one
   *[other] Add { $n }
}
table-added = { $n ->
    [one] One appliance added
   *[other] { $n } appliances added
}
table-kind-name = Name
table-kind-quantity = How many
table-kind-watts = Watts while on
table-kind-amps = Amps while on
table-kind-volts = Volts
table-kind-energy-one = Wh a day, one of them
table-kind-energy-all = Wh a day, all of them
table-kind-charge-one = Ah a day, one of them
table-kind-charge-all = Ah a day, all of them
table-kind-hours = Hours a day
table-kind-minutes = Minutes a day
table-kind-seconds = Seconds per use
table-kind-times = Times a day
table-kind-duty = Share of the time, %
table-kind-feed = Battery or inverter
table-kind-standby = Watts on standby
table-kind-code = Written by Nightbank
table-fault-no-name = It has no name.
table-fault-sum = It adds up other rows.
table-fault-none = Not an appliance: the forecast adds it by itself.
table-fault-unknown = It has no figures, and the name is not in the catalogue.
table-fault-number = { $kind }: “{ $text }” is not a number.
table-fault-unit = { $kind }: “{ $text }” has another unit.
table-fault-range = { $kind }: { $text } is outside { $min } to { $max }.
table-fault-feed = “{ $text }”: from the battery or through the inverter?
table-fault-day = More than 24 hours a day.
table-fault-above = It would have to run more than 24 hours a day for that much energy.
table-fault-amps = Amps through the inverter: at how many volts? Add a column for it.
table-fault-length = How long is one use? Add a column for it.
table-fault-code = Its last cell is damaged. Empty it, and the figures are read instead.
table-note-hour = No time given: 1 hour a day.
table-note-usual = No watts given: the usual figure.
table-note-disagrees = Watts and time make { $worked } a day; the table says { $told }. Watts and time count.
table-note-amps = Amps at { $volts }.
table-note-short = Name shortened.
table-note-off = You have none of it: added, but switched off.

take-title = Take parts of it
take-about = Tick what you want in your own setup.
take-twice = You have one of that name. Both stay.
take-panels = Panels, { $peak }: in place of yours
take-battery = Battery, { $capacity } { $kind }: in place of yours
take-add = Put in my setup
take-no-room = No room for { $n } of them in your list.
take-done = Now in your setup.
