# Appliances.
loads-title = What you use
loads-none = Nothing here yet. Add what you have on board: two taps each.
loads-add = Add an appliance
loads-full = The list holds { $most } appliances at most.
load-count-it = Include { $name }
load-deleted = Deleted: { $name }
load-name = Name
load-learned = Where does this figure come from?
load-quantity = How many
load-feed = Runs from
load-more = Standby, surge, cut-out, group
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
load-no-inverter = Mains appliances need an inverter. You have not entered one.
load-enter-inverter = Enter the inverter

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
draw-volts = at
draw-hint = Enter either one; the other is worked out. Power (W) is not the same as energy (Wh).
draw-hint-mains = Enter either one; the other is worked out. Both on the mains side; inverter losses are added.
draw-hint-energy = Here power only decides how long it runs. The energy used is the figure below.

use-title = How you use it
use-rule = Pattern of use
use-daily = A set time each day
use-always = Always on
use-duty-air = Thermostat, depends on the weather
use-duty = Thermostat, fixed share of the time
use-charges = Charges a battery
use-litres = Pumps water
use-uses = Short uses
use-energy = Known energy per day
use-hours = Hours a day
use-minutes = or minutes a day
use-duty-at-25 = Share of the time at 25 °C
use-duty-at-25-hint = Adjusted to the temperature of the place and month.
use-duty-share = Share of the time it runs
use-every-days = A full charge every
use-cell = Its battery
use-cell-hint = In mAh, as printed on it.
use-cell-volts = Voltage of that battery
use-cell-volts-hint = Phones about 3.85 V, not the 5 V of the plug.
use-charger = Charger efficiency
use-water = Water a day
use-flow = Pump flow
use-twice = Pumped twice
use-twice-hint = Once from a jerrycan into the tank, once out of the tap.
use-times = Times a day
use-seconds = Each takes
use-energy-a-day = Energy a day
use-energy-hint = In Wh, such as a meter shows after 24 hours.

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
add-in-list = { $n } in your list
