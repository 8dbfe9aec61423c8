# Where the figures below the answer come from, on tap.
origins-hint = Tap a figure to see how it is worked out.
from-balance = These are averages over the whole stay, from arrival to departure, in average weather.
from-total = What everything switched on below uses on a full day of this trip, inverter losses included.
from-sun = At their rated output your { $peak } of panels would give { $light } a day in this light. { $lost } of that is lost to shade, glass, heat, dirt, cables and the controller. { $unused } comes when the battery cannot take it.
from-sun-snow = Snow on the panels takes { $amount } of what is lost. This is estimated from temperature and tilt, if nobody clears them. Clear them only from the ground: never climb on an icy roof.
from-driving = { $sum } from the engine while you drive, spread over { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}. Driving times are set under Trip and Power.
from-hook-up = { $sum } from the mains charger, spread over { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}. Hook-up times are set under Trip and Power.
from-other = { $sum } from the other sources under Power, spread over { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}.
from-loads = What is switched on under Appliances uses this, hour by hour, at the temperatures of these days.
from-loads-direct = Straight from the battery: { $amount } a day.
from-loads-mains = At the inverter’s sockets: { $amount } a day.
from-inverter-idle = For being switched on: { $amount } a day.
from-inverter-conversion = Conversion losses: { $amount } a day.
from-electronics = Solar controllers and battery management draw { $power }, day and night.
from-heating = Battery heating: { $amount } a day.
from-charging = Charging losses: { $amount } a day.
from-charging-flooded = Sources disagree on flooded batteries. From half to nearly full they take 1.1 to 1.5 Ah for each 1 Ah stored. Used here: 1.3 Ah.
from-resistance = Losses in the battery’s resistance: { $amount } a day.
from-cables = Losses in the battery cables: { $amount } a day.
from-self-discharge = Self-discharge: { $amount } a day.
from-stored = Average weather takes the battery from { $from } on arrival to { $to } at departure: { $sum } over { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}. A minus sign means the battery gives out more than it takes in.
from-unused-sun = What the panels could have supplied if the battery had had room. Not part of the total.
from-unmet = The appliances needed this while the battery was empty. It was never delivered, so it is not in the total.
from-idle = What the inverter uses while it is switched on and nothing runs, for the hours set under Power.
from-load = { $how }. Source of the figure: { $known }.
from-load-air = The warmer the air, the longer it runs: { $share } of the time on these days.
from-load-inverter = What the inverter uses to run it is included.
from-load-standby = Of this, between uses: { $amount }.
from-load-corrected = Going by your readings on site, you use { $share } of what is listed.
from-load-where = Change it under Appliances.

# How a load is used and known, in a few words.
summary-inverter = via inverter
summary-always = always on
summary-heating = more when cold
summary-cooling = more when hot
summary-driving = while driving
summary-arrival = { $time } on arrival
summary-leaving = { $time } on leaving
summary-duty = { $share } of the time
summary-charges = { $charge } { $days_n ->
    [one] every { $days } day
   *[other] every { $days } days
}
summary-uses = { $times } × { $each }
learned-meter = Measured
learned-spec = Data sheet
learned-label = Rating plate
learned-estimate = Estimate
