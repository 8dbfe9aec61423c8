# Where the figures below the answer come from, on tap.
origins-hint = Tap a figure to see where it comes from.
from-balance = Here it is a mean over the stay in average weather, from arrival to departure.
from-total = Here it is what everything switched on below takes from the battery on a whole day of this trip, the inverter’s losses with it.
from-sun = { $peak } of panels, and the light on them would give { $light } a day by their label. { $lost } of that is lost to shade, glass, heat, dirt, wires and the controller; { $unused } finds no room in the battery.
from-driving = { $sum } from the engine while you drive, shared out over { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}. When you drive stands under Trip and Power.
from-hook-up = { $sum } from the mains charger, shared out over { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}. When you are hooked up stands under Trip and Power.
from-other = { $sum } from the other sources under Power, shared out over { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}.
from-loads = What the appliances switched on under Appliances use, hour by hour, at the temperatures of these days.
from-loads-direct = Straight from the battery: { $amount } a day.
from-loads-mains = At the inverter’s sockets: { $amount } a day.
from-inverter-idle = Being switched on, whatever runs: { $amount } a day.
from-inverter-conversion = In converting for what runs: { $amount } a day.
from-electronics = Solar controllers and battery management take { $power }, day and night.
from-heating = Heating of the battery: { $amount } a day.
from-charging = In charging: { $amount } a day.
from-charging-flooded = Sources disagree on flooded batteries: from half to nearly full they take 1.1 to 1.5 Ah for each 1 Ah stored. Counted here: 1.3 Ah.
from-resistance = In the battery’s resistance: { $amount } a day.
from-cables = In the cables from the battery: { $amount } a day.
from-self-discharge = By self-discharge: { $amount } a day.
from-stored = From { $from } on arrival to { $to } at departure in average weather: { $sum } over { $days_n ->
    [one] { $days } day
   *[other] { $days } days
}. Below zero the battery gives more than it gets.
from-unused-sun = What the panels could have given had the battery taken it. It is not part of the sum.
from-unmet = The battery was empty then. It was never given, so it is not part of the sum.
from-idle = What the inverter takes while it is switched on and nothing runs, for the hours given under Power.
from-load = { $how }. How it is known: { $known }.
from-load-air = The warmer the air, the longer it runs: in these days { $share } of the time.
from-load-inverter = What the inverter loses on the way is in it.
from-load-standby = Of this, between uses: { $amount }.
from-load-corrected = Your readings on site bring your use to { $share } of the list.
from-load-where = Change it under Appliances.

# How a load is used and known, in a few words.
summary-inverter = via inverter
summary-always = always on
summary-duty = { $share } of the time
summary-charges = { $charge } { $days_n ->
    [one] every { $days } day
   *[other] every { $days } days
}
summary-uses = { $times } × { $each }
learned-meter = Measured
learned-spec = Data sheet
learned-label = Rating plate
learned-estimate = Guessed
