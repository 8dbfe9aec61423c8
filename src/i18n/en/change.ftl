# What to change: what helps, ways to more nights, what to buy, setups side by side.
change-parts = Ways to look at it
part-helps = What helps
part-ways = More nights
change-working = Playing it all through…
change-failed = This cannot be worked out: a figure of the weather or the climate makes no sense. Please look at Trip.
change-beware = Caution:
change-towards-south = south
change-towards-north = north

helps-title = What helps most
helps-told = Each change is played through your whole stay again, in the same many kinds of weather. Nothing is changed until you say so.
helps-now = As it is: { $sure_n ->
    [one] { $sure } night
   *[other] { $sure } nights
} 9 times out of 10, { $even } half the time.
helps-progress = Playing every change through: { $done }
helps-none = Nothing found that brings anything worth a line. It may be that the battery lasts anyway.
helps-more = { $n ->
    [one] { $n } more change
   *[other] { $n } more changes
}
gain-mean = +{ $amount_n ->
    [one] { $amount } night
   *[other] { $amount } nights
} on average
gain-hours = +{ $amount } until the limit
gain-lowest = +{ $amount } at the lowest point
help-sure = 9 times out of 10: { $from } → { $to_n ->
    [one] { $to } night
   *[other] { $to } nights
}
help-even = half the time: { $from } → { $to_n ->
    [one] { $to } night
   *[other] { $to } nights
}
help-lowest = lowest point: { $from } → { $to }
help-apply = Apply
help-apply-name = Apply: { $change }
toast-applied = Changed: { $change }

ways-title = Ways to more nights
ways-told = Say how long and how surely it should last. Up to three ways are looked for: by habits, by moving on or hooking up, and by buying.
ways-nights = Nights to last
ways-chance = At a chance of
ways-now = { $n ->
    [one] As it is, the chance of { $n } night is { $chance }.
   *[other] As it is, the chance of { $n } nights is { $chance }.
}
ways-reached = { $n ->
    [one] Your setup lasts { $n } night at { $chance } already. Ask for more nights or a better chance.
   *[other] Your setup lasts { $n } nights at { $chance } already. Ask for more nights or a better chance.
}
ways-none = No way was found: nothing there is to change brings it nearer.
way-habits = By habits and settings
way-on-the-move = By driving or hook-up
way-purchase = By buying
way-reaches = { $n ->
    [one] Lasts { $n } night with a chance of { $chance }
   *[other] Lasts { $n } nights with a chance of { $chance }
}
way-falls-short = { $n ->
    [0] Not one night at { $chance } this way; what you ask for gets a chance of { $reached }
    [one] Gets only as far as { $n } night at { $chance }; what you ask for gets a chance of { $reached }
   *[other] Gets only as far as { $n } nights at { $chance }; what you ask for gets a chance of { $reached }
}
way-price = What it costs
way-facts = Nine cases of ten: { $sure_n ->
    [one] { $sure } night
   *[other] { $sure } nights
}. Even odds: { $even_n ->
    [one] { $even } night
   *[other] { $even } nights
}. Lowest point in average weather: { $lowest }.
way-longer = { $n ->
    [one] Taking this way also makes the stay { $n } night long.
   *[other] Taking this way also makes the stay { $n } nights long.
}
way-apply = Take this way
toast-way = Changed: { $way }

cost-free = Costs nothing
cost-effort = Takes some comfort or effort
cost-driving = { $time } more driving
cost-hook-up = { $n ->
    [one] { $n } night on a place with hook-up, at that place’s fee
   *[other] { $n } nights on places with hook-up, at their fee
}
cost-money = About { $amount }, { $weight } more to carry
cost-money-lighter = About { $amount }, { $weight } less to carry
cost-money-only = About { $amount }
cost-unpriced = To be bought; your price list has no price for it
bill-unpriced = { $n ->
    [one] { $n } thing to buy that your price list has no price for
   *[other] { $n } things to buy that your price list has no price for
}
bill-efforts = { $n ->
    [one] { $n } change that takes some comfort or effort
   *[other] { $n } changes that take some comfort or effort
}
bill-free = { $n ->
    [one] { $n } change that costs nothing
   *[other] { $n } changes that cost nothing
}

change-switch-off = Switch off altogether: { $name }
change-do-without = Do without: { $name }
change-gas = Cook or heat with gas instead: { $name }
change-off-at-night = Switch off from 23:00 to 7:00: { $name }
change-unplug = Unplug between uses: { $name }
change-shorter = { $name }: { $amount } less a day
change-fewer = { $name }: { $amount } fewer a day
change-share = { $name }: only { $amount } of the use planned
change-warmer-fridge = { $name }: set about 2 °C warmer
change-dc = { $name }: run from { $amount } with an adapter, not through the inverter
change-midday = { $name }: use around midday
change-inverter-when-used = Switch the inverter on only while it is used
change-inverter-sleep = Let the inverter sleep while nothing runs ({ $amount } then)
change-tilt = { $name }: tilt to { $tilt }, facing { $facing }
change-tilt-roof = { $name }: tilt on a bracket to { $tilt }, facing { $facing }
change-clean = { $name }: clean the glass
change-out-of-shade = { $name }: stand where it is out of the shade
change-mppt = { $name }: an MPPT controller instead of PWM
change-portable = Put up a loose panel of { $amount }, tilted to { $tilt }, facing { $facing }
change-drive = Drive { $amount } on day { $day } ({ $date })
change-hook-up = { $n ->
    [one] Hook-up every night
   *[other] Hook-up every { $n } nights
}
change-arrive-full = Arrive with a full battery
change-battery-inside = Move the battery inside, where it is warmer
change-battery-locker = Move the battery into a locker, where it is warmer
change-heated = A battery with its own heating, so that it charges in frost
change-battery = More battery of the same kind: { $amount }
change-lithium = LiFePO4 of the same capacity: { $amount }
change-solar = More solar: { $amount }
change-dc-dc = A dc-dc charger of { $amount }
change-dc-dc-drive = { $n ->
    [one] A dc-dc charger of { $amount }, and an hour of driving every day
   *[other] A dc-dc charger of { $amount }, and an hour of driving every { $n } days
}

part-buy = What to buy
part-year = The year
buy-title = What to buy
buy-told = The smallest panels for each battery, and the smallest battery for each size of panels, that get through your nights.
buy-from = From month
buy-to = To month
buy-this-month = Month of the trip
buy-progress = Trying sizes: { $done }
buy-hard = It has to last in { $months }, the hardest of all months asked for.
buy-least = Least to buy
buy-cheapest = Cheapest, all new
buy-lightest = Lightest
buy-choice = { $kind } { $battery } with { $solar } of solar
buy-price = { $more } beyond what you have; { $all } all new; { $weight } in all
buy-take = Take these sizes
buy-none = Not even { $solar } of solar with { $battery } of battery is enough. Ask for fewer nights, another month or a lower chance, or use less.
buy-sizes = All sizes with { $kind }
buy-by-battery = { $kind }: smallest solar for each battery
buy-by-solar = { $kind }: smallest battery for each solar
buy-battery = Battery
buy-solar = Solar
buy-smallest-solar = Smallest solar
buy-smallest-battery = Smallest battery
buy-too-little = none is enough
buy-have = what you have
buy-curve = { $kind }: battery and solar that just do
buy-curve-told = The more battery, the less solar is needed. From { $least } of battery with { $solar } of solar up to { $most } of battery with { $few }.
buy-how = Appliances, driving, hook-up, tilt, shade and the battery’s age stay as they are. Add some for years to come.
prices-title = Prices and weights
prices-told = Start with these round figures and put your own in; they change no night.
prices-currency = Currency
prices-solar = Solar with fixing, per 100 W
prices-solar-weight = Its weight, per 100 W
prices-lead = Lead battery, per 100 Ah at 12 V
prices-lead-weight = Its weight, per 100 Ah at 12 V
prices-lithium = LiFePO4, per 100 Ah at 12 V
prices-lithium-weight = Its weight, per 100 Ah at 12 V
prices-dc-dc = Dc-dc charger, fitted

year-title = Nights through the year
year-told = The same stay, started in each month, at this place with this setup.
year-progress = Playing the year: { $done } of 12 months

part-compare = Side by side
compare-title = Setups side by side
compare-told = The setup on screen beside others of yours, each in the weather of its own place. Set a copy beside before you change something, and see what the change does.
compare-with = Compare with
compare-copy = Set a copy of this one beside
compare-copy-name = Copy { $n }
compare-drop = Put away: { $name }
compare-copies-passing = These copies cannot be kept in this browser: they are gone once the page is closed.
compare-full = { $most } is the most that stand side by side.
compare-this = On screen
compare-alone = Choose another setup, or set a copy beside and change something.
compare-same = They do not differ.
compare-working = …
compare-what = What
compare-outcomes = What becomes of each
compare-differences = Where they differ
compare-sure = Nights, 9 times out of 10
compare-even = Nights, half the time
compare-chance = Chance of the nights asked for
compare-lowest = Lowest point
compare-use = Use a day
compare-usable = Usable battery
compare-money = Panels, battery and charger, new
compare-weight = Weight of panels and battery
compare-weight-per-kwh = Battery weight for each usable kWh
compare-life-cost = Cost of a usable kWh over its life
compare-band = { $low } to { $high }
compare-life = Lead against lithium at your prices
compare-life-how = Price over what the battery gives until its cycles are used up, at the usual depth. Cycles are a wide band of typical values, not one maker’s; a battery used two weeks a year ages by the calendar first.
compare-batteries = What makes the batteries fare differently
compare-batteries-how = On their own trips, in average weather, at the temperature the battery has there. Cold puts charge out of a lead battery’s reach and keeps charge out of lithium; nearly full, lead takes charge slowly and loses part of it.
reason-usable = Usable of the energy on the label
reason-cold = Within reach in the coldest hour
reason-fast = Given when emptied in 5 h instead of 20 h
reason-stored = Stored of what goes in above 80 %
reason-taken = Most it takes when 90 % full
reason-full = Lowest level allowed to full, strongest charger
reason-lost = Lost in charging and resistance
reason-sag = Lowest voltage before the lowest level, largest appliance running
reason-cut-out = Would cut out for low voltage before the lowest level
reason-no-charge = Takes no charge below
reason-locked = Refused charge for cold
reason-management = Its management system draws
reason-standing = Lost in 30 days of standing
differ-all-loads = All appliances
differ-chemistry = Battery kind
differ-capacity = Battery
differ-health = Battery health
differ-soc-min = Lowest level allowed
differ-soc-start = Level on arrival
differ-system = System
differ-battery-place = Battery stands
differ-heated = Battery heating
differ-inverter = Inverter
differ-inverter-idle = Inverter, no-load draw
differ-switching = Inverter on
differ-solar = Solar
differ-tilt = Tilt
differ-facing = Facing
differ-mounting = Mounting of panels
differ-controller = Controller
differ-shade = Midday shade
differ-driving-charger = Charger on the engine
differ-driving-every = Driving
differ-driving-time = Driving time
differ-hook-up-charger = Mains charger
differ-hook-up-every = Hook-up
differ-other = Other sources
differ-place = Place
differ-arrival = Arrival
differ-nights = Nights asked for
differ-air = Mean temperature
differ-use-factor = Use, learned on site
differ-sun-factor = Sun, learned on site
value-absent = –
value-yes = yes
value-every = { $n ->
    [one] every day
   *[other] every { $n } days
}
value-relay = relay, { $limit }
