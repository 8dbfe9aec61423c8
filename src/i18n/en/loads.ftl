# Appliances.
loads-title = What you use
loads-none = Nothing here yet. Add what you have on board: two taps each.
loads-add = Add an appliance
loads-full = The list holds { $most } appliances at most.
load-count-it = Count { $name } in
load-deleted = Deleted: { $name }
load-name = Name
load-learned = How do you know the draw?
load-quantity = How many
load-feed = Runs from
load-more = Standby, surge, cut-out, group
load-group = Group
load-done = Done
load-duplicate = Duplicate
load-delete = Delete
load-standby = Draw when not in use
load-standby-hint = For each of them, while it stays connected.
load-spread = May be off by
load-spread-hint = Empty: what is usual for how you know it.
load-surge = Starting draw over running draw
load-cut-out = Switches itself off at low voltage
load-cut-out-hint = As many compressor fridges and heaters do. Stated for 12 V; doubled on 24 V. The forecast says when it would happen, and counts it as running on.
load-cut-out-off = Off below
load-cut-out-on = On again above
load-driving-only = Meant to run on the engine only: parked, it flattens a battery within hours.
load-counted-elsewhere = The part "Power" asks for the same figure. Enter it in one place only.
load-no-inverter = Mains appliances need an inverter, and none is entered.
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

draw-title = Draw while it runs, each
draw-power = Power
draw-current = or current
draw-volts = at
draw-hint = Type either one, the other follows. A power (W) is not an amount of energy (Wh).
draw-hint-mains = Type either one, the other follows. Both on the mains side; the inverter’s losses are added.
draw-hint-energy = Here it only says how long it takes; the energy counts as given below.

use-title = How you use it
use-rule = Rule
use-daily = So long a day
use-always = Always on
use-duty-air = By thermostat, with the weather
use-duty = By thermostat, share of the time
use-charges = Charges a device
use-litres = Pumps water
use-uses = Short uses
use-energy = Energy a day is known
use-hours = Hours a day
use-minutes = or minutes a day
use-duty-at-25 = Share of the time at 25 °C
use-duty-at-25-hint = It follows the temperature of the place and month.
use-duty-share = Share of the time it runs
use-every-days = A full charge every
use-cell = Its battery
use-cell-hint = In mAh, as printed on it.
use-cell-volts = Voltage of that battery
use-cell-volts-hint = Phones about 3.85 V, not the 5 V of the plug.
use-charger = Charger efficiency
use-water = Water a day
use-flow = Pump’s flow
use-twice = Pumped twice
use-twice-hint = Once aboard from a canister, once out of the tap.
use-times = Times a day
use-seconds = Each takes
use-energy-a-day = Energy a day
use-energy-hint = In Wh: an amount, such as a meter shows after 24 hours.

window-title = When
window-any = Any time
window-day = By day
window-evening = Evening
window-night = Night
window-morning = Morning
window-own = Own times
window-from = From
window-to = Until
window-too-short = It runs { $time } a day, longer than these times. It fills them, and the rest is spread over the other hours.

add-title = Add an appliance
add-search = Search: fridge, phone…
add-found = { $n ->
    [one] { $n } found
   *[other] { $n } found
}
add-nothing = Nothing found. Add a blank one and name it yourself.
add-blank = Blank one
add-done = Done
add-added = Added: { $name }
add-in-list = { $n } in your list
