# Below the answer: where it comes from and what to know of it.
answer-balance = An average day
answer-drains = What uses most
answer-usable-share = { $share } of usable energy
answer-by-night = Night by night
answer-certainty = How sure is this?
drawer-inverter = Inverter
drawer-inverter-idle = Inverter, no-load draw
drawer-electronics = Solar controller and battery electronics
balance-sun = Solar used
balance-driving = From driving
balance-hook-up = From hook-up
balance-other = From other sources
balance-loads = Appliances
balance-inverter = Lost in the inverter
balance-electronics = Controllers and battery electronics
balance-battery-losses = Lost in the battery and its cables
balance-stored = Change in battery charge
balance-unused-sun = Solar not used: battery full or cold
balance-unmet = Needed but not available
night-caption = Each night in average weather; the chance covers all the simulated weather
night-head-night = Night of
night-head-chance = Chance of lasting the night
night-head-lowest = Lowest state of charge
night-head-sun = Solar used
night-head-use = Used
answer-notes = Worth knowing
note-cut-out = { $name } would switch off on low voltage from { $when }: { $volts } at its terminals with { $soc } still in the battery. The forecast assumes it keeps running.
note-cut-out-cable = This includes the voltage drop in the appliance’s own cable: as entered under Wiring check, or else 0.6 V for each 12 V.
note-cold-lock = For { $hours } there was sun or a charger, but the lithium battery was below { $temp_0 } and took no charge. Never charge it below { $temp_0 } unless its manufacturer allows it.
note-cold-capacity = At its coldest the battery only delivers { $share } of its rated capacity, so your limit is reached sooner.
note-lead-hardly-full = The battery never or hardly ever gets full here. Lead that stays partly charged ages fast (sulphation). Charge it full about once a week, at a hook-up for example.
note-lead-full = The battery gets full on about { $days_n ->
    [one] { $days } day
   *[other] { $days } days
} a week. Lead needs that at least about once a week, or it ages fast (sulphation).
note-lead-full-daily = The battery gets full nearly every day. That keeps lead from ageing early.
note-unmet = The battery is empty from { $when }. Nothing runs again until something charges it.
note-unused-sun = On average { $amount } of solar a day is lost because the battery is already full. Run power-hungry appliances around midday.
note-no-inverter = Something runs through an inverter, but you have not entered one under Power.
note-fuel = Other sources burn { $fuel } of fuel over the stay. Never run one in or near a closed space: carbon monoxide kills.
sure-own = Sun from your own monthly figures, assumed right to ±{ $accuracy }.
sure-world = Sun from a climate table built from satellites, weather stations and estimates ({ $credit }). Monthly averages are right to about ±{ $accuracy }.
sure-region = Sun from typical values for a region { $distance } away (not measured): right to about ±{ $accuracy }. Your own monthly figures under Trip are better.
sure-latitude = Sun estimated from latitude alone: right to about ±{ $accuracy }. Enter your own monthly figures under Trip.
sure-odds = Hundreds of possible runs of weather are simulated for your dates, with the likely errors of climate and use. Checked against measured years at three places, the chances were off by 5 percentage points at two and by 9, too careful, at the third. Elsewhere allow for 10.
sure-average = The line and the table show average weather. The shaded band and the lanterns show the odds.
sure-limits = Snow on the panels is only estimated, from temperature and tilt. Not included: shade and anything else you have not entered. This is an estimate, not a promise: keep a second source for anything medical.
chart-mark-restart = From the reading
night-head-volts = Lowest voltage, largest appliance running
flow-title = Where the energy of an average day goes
flow-panels = Light on the panels
flow-from-battery = From the battery
flow-snow = Snow on the panels
flow-shade-glass = Shade, reflection off the glass
flow-heat-low-light = Heat, weak light
flow-dirt-wires = Dirt, mismatch, cables
flow-controller = Solar controller conversion
flow-charging-cable = Charging cable from the engine
flow-charging = Charging losses
flow-resistance = Battery resistance
flow-self-discharge = Self-discharge
flow-conversion = Inverter conversion
flow-battery-heating = Battery heating
flow-direct-loads = Appliances on the battery
flow-mains-loads = Appliances on the inverter
flow-into-battery = Into the battery
term-watt = W and Wh.
term-watt-text = A watt (W) says how fast energy is used right now, like the speed of a car. A watt-hour (Wh) is an amount of energy, like the distance driven: 20 W for 3 h is 60 Wh.
flow-cables = Cables from the battery
answer-details = Details
wish-nights = { $n ->
    [one] You want { $n } night
   *[other] You want { $n } nights
}
wish-chance = { $n ->
    [one] You want { $n } night. Chance: { $chance }
   *[other] You want { $n } nights. Chance: { $chance }
}
night-title = Night of { $night }: { $chance }
night-figures = In average weather the charge falls to { $lowest }. Solar brings { $sun } that day, and you use { $used }.
