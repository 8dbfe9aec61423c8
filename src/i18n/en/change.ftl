# What to change: what helps, ways to more nights, setups side by side.
change-parts = Views
part-helps = What helps
part-ways = More nights
change-working = Working it out…
change-failed = This cannot be worked out: a weather or climate figure is not possible. Please check Trip.
change-beware = Caution:
change-towards-south = south
change-towards-north = north

helps-title = What helps most
helps-told = Each change is tried on your whole stay, with the same runs of weather. Nothing changes until you tap Apply.
helps-progress = Trying every change: { $done }
helps-more = { $n ->
    [one] { $n } more change
   *[other] { $n } more changes
}
helps-now = Chance of { $n ->
    [one] { $n } night
   *[other] { $n } nights
} as it is: { $chance }.
helps-too-far = { $n ->
    [one] No single change makes { $n } night likelier.
   *[other] No single change makes { $n } nights likelier.
}
helps-sure = You need nothing more for this stay. Want to stay longer? Move the nights on the first screen.
helps-none = Nothing found that makes it likelier. “More nights” combines several changes.
help-gain = { $from } → { $to }
help-mean = { $to_n ->
    [one] { $to } night
   *[other] { $to } nights
} on average, { $more } more
next-looking = Looking for what helps…
next-sure = { $n ->
    [one] Nothing to do for your night.
   *[other] Nothing to do for your { $n } nights.
}
next-none = { $n ->
    [one] No single change makes your night likelier.
   *[other] No single change makes your { $n } nights likelier.
}
next-ways = { $n ->
    [one] See ways to { $n } night
   *[other] See ways to { $n } nights
}
next-gain = { $n ->
    [one] Chance of { $n } night: { $from } → { $to }
   *[other] Chance of { $n } nights: { $from } → { $to }
}
next-tried = Done: { $change }
next-back = Take it back
help-apply = Apply
help-apply-name = Apply: { $change }
toast-applied = Changed: { $change }

ways-title = Ways to more nights
ways-told = Say how many nights you want. Nightbank looks for the cheapest plan, one without buying anything, and one by buying only.
ways-nights = Nights you want
ways-now = { $n ->
    [one] As it is, the chance of lasting { $n } night is { $chance }.
   *[other] As it is, the chance of lasting { $n } nights is { $chance }.
}
ways-reached = { $n ->
    [one] Your setup already lasts { $n } night with a chance of { $chance }. Ask for more nights or a better chance.
   *[other] Your setup already lasts { $n } nights with a chance of { $chance }. Ask for more nights or a better chance.
}
ways-none = Nothing found: none of the possible changes gets you closer.
way-cheapest = Cheapest
way-nearest = Closest
way-nothing-bought = Without buying anything
way-only-bought = By buying only
way-reaches = { $n ->
    [one] Lasts { $n } night with a chance of { $chance }
   *[other] Lasts { $n } nights with a chance of { $chance }
}
way-falls-short = { $n ->
    [0] Does not reach one night with a chance of { $chance }. The chance of the nights you want is { $reached }.
    [one] Only reaches { $n } night with a chance of { $chance }. The chance of the nights you want is { $reached }.
   *[other] Only reaches { $n } nights with a chance of { $chance }. The chance of the nights you want is { $reached }.
}
way-price = What it costs
way-facts = { $often }: { $sure_n ->
    [one] { $sure } night
   *[other] { $sure } nights
}. Half the time: { $even_n ->
    [one] { $even } night
   *[other] { $even } nights
}. Lowest charge in average weather: { $lowest }.
way-longer = { $n ->
    [one] This plan also sets your stay to { $n } night.
   *[other] This plan also sets your stay to { $n } nights.
}
way-apply = Use this plan
toast-way = Changed: { $way }

cost-free = Costs nothing
cost-effort = Costs a little comfort or effort
cost-driving = { $time } more driving
cost-hook-up = { $n ->
    [one] { $n } night on a pitch with hook-up, at the site’s price
   *[other] { $n } nights on a pitch with hook-up, at the site’s price
}
cost-money = About { $amount }, { $weight } more to carry
cost-money-lighter = About { $amount }, { $weight } less to carry
cost-money-only = About { $amount }
cost-unpriced = To buy; no price in your price list
bill-unpriced = { $n ->
    [one] { $n } thing to buy without a price in your list
   *[other] { $n } things to buy without a price in your list
}
bill-efforts = { $n ->
    [one] { $n } change that costs a little comfort or effort
   *[other] { $n } changes that cost a little comfort or effort
}
bill-free = { $n ->
    [one] { $n } change that costs nothing
   *[other] { $n } changes that cost nothing
}

change-switch-off = Switch off altogether: { $name }
change-do-without = Do without: { $name }
change-gas = Cook or heat with gas instead: { $name }
change-off-at-night = Switch off from 23:00 to 07:00: { $name }
change-unplug = Unplug between uses: { $name }
change-shorter = { $name }: { $amount } less a day
change-fewer = { $name }: { $amount } fewer uses a day
change-share = { $name }: only { $amount } of the planned use
change-warmer-fridge = { $name }: set about { $warmer_2 } warmer
change-dc = { $name }: run from { $amount } with an adapter, not through the inverter
change-midday = { $name }: use around midday
change-inverter-when-used = Switch the inverter on only when you use it
change-inverter-sleep = Set the inverter to power-save when nothing runs (then { $amount })
change-tilt = { $name }: tilt to { $tilt }, facing { $facing }
change-tilt-roof = { $name }: tilt on a bracket to { $tilt }, facing { $facing }
change-clean = { $name }: clean the glass
change-out-of-shade = { $name }: park where it is out of the shade
change-mppt = { $name }: an MPPT controller instead of PWM
change-portable = Set up a portable { $amount } panel, tilted to { $tilt }, facing { $facing }
change-drive = Drive { $amount } on day { $day } ({ $date })
change-hook-up = { $n ->
    [one] Stay on a pitch with hook-up every night
   *[other] Stay on a pitch with hook-up every { $n } nights
}
change-arrive-full = Arrive with a full battery
change-battery-inside = Move the battery inside, where it is warmer
change-battery-locker = Move the battery into a locker, where it is warmer
change-heated = A heated battery, which can also be charged in frost
change-battery = More battery capacity of the same type: { $amount }
change-lithium = A LiFePO4 battery instead: { $amount }
change-solar = More solar: { $amount }
change-dc-dc = A { $amount } DC-DC charger
change-dc-dc-drive = { $n ->
    [one] A { $amount } DC-DC charger, and an hour of driving every day
   *[other] A { $amount } DC-DC charger, and an hour of driving every { $n } days
}

part-year = The year
buy-title = What to buy: all sizes
buy-told = The smallest panels for each battery, and the smallest battery for each set of panels, that cover your nights.
buy-from = From month
buy-to = To month
buy-this-month = Month of the trip
buy-progress = Trying sizes: { $done }
buy-hard = The hardest of the months you chose is { $months }. The sizes below are for that.
buy-least = Smallest purchase
buy-cheapest = Cheapest if all new
buy-lightest = Lightest
buy-choice = { $kind } { $battery } with { $solar } of solar
buy-price = { $more } on top of what you have; { $all } if all new; { $weight } in total
buy-take = Use these sizes
buy-none = Even { $solar } of solar with { $battery } of battery is not enough. Try fewer nights, another month or a lower chance, or use less.
buy-sizes = All sizes with { $kind }
buy-by-battery = { $kind }: smallest solar for each battery
buy-by-solar = { $kind }: smallest battery for each solar
buy-battery = Battery
buy-solar = Solar
buy-smallest-solar = Smallest solar
buy-smallest-battery = Smallest battery
buy-too-little = no size is enough
buy-have = what you have
buy-curve = { $kind }: battery and solar that are just enough
buy-curve-told = The more battery, the less solar you need. From { $least } of battery with { $solar } of solar to { $most } of battery with { $few }.
buy-how = Appliances, driving, hook-up, tilt, shade and the battery’s age stay as they are. Allow some margin for the years to come.
prices-title = Prices and weights
prices-told = Start from these round figures and put in your own. They decide which plan is cheapest.
prices-counted = An hour of driving counts as { $hour }, a night on hook-up as { $night }.
prices-currency = Currency
prices-solar = Solar with mounting, per 100 W
prices-solar-weight = Its weight, per 100 W
prices-lead = Lead-acid battery, per 100 Ah at 12 V
prices-lead-weight = Its weight, per 100 Ah at 12 V
prices-lithium = LiFePO4, per 100 Ah at 12 V
prices-lithium-weight = Its weight, per 100 Ah at 12 V
prices-dc-dc = DC-DC charger, fitted

year-title = Nights through the year
year-told = The same stay at this place with this setup, started in each month.
year-progress = Working out the year: { $done } of 12 months

part-compare = Side by side
compare-title = Setups side by side
compare-told = This setup next to others of yours, each with the weather of its own place. Add a copy before you change something, and see what the change does.
compare-with = Compare with
compare-copy = Add a copy of this one
compare-copy-name = Copy { $n }
compare-drop = Remove: { $name }
compare-copies-passing = This browser cannot store these copies. They are gone once you close the page.
compare-full = You can compare up to { $most }.
compare-this = This setup
compare-alone = Choose another setup, or add a copy and change something.
compare-same = No differences.
compare-working = …
compare-what = What
compare-outcomes = Results
compare-differences = Differences
compare-sure = Nights, { $often }
compare-even = Nights, half the time
compare-chance = Chance of the nights you want
compare-lowest = Lowest charge
compare-use = Energy used a day
compare-usable = Usable energy
compare-money = Panels, battery and charger, new
compare-weight = Weight of panels and battery
compare-weight-per-kwh = Battery weight for each usable kWh
compare-life-cost = Cost of a usable kWh over its life
compare-band = { $low } to { $high }
compare-life = Lead-acid versus lithium at your prices
compare-life-how = Price divided by the energy the battery delivers over its cycle life, at the usual depth of discharge. Cycle counts are a wide range of typical values. Used two weeks a year, a battery wears out from age first.
compare-batteries = Why the batteries perform differently
compare-batteries-how = Each on its own trip, in average weather, at its battery’s temperature there. Cold makes part of a lead-acid battery’s charge unavailable and stops lithium from charging. Nearly full, lead-acid charges slowly and loses part of the charge.
reason-usable = Usable share of the label energy
reason-cold = Available in the coldest hour
reason-fast = Delivered over 5 h compared with 20 h
reason-stored = Share of charge kept above 80%
reason-taken = Maximum charging current at 90%
reason-full = From your limit to full, strongest charger
reason-lost = Lost in charging and resistance
reason-sag = Lowest voltage before your limit, largest appliance running
reason-cut-out = Cuts out on low voltage before your limit
reason-no-charge = Takes no charge below
reason-locked = Charge refused because of cold
reason-management = Own draw of its BMS
reason-standing = Lost in 30 days unused
differ-times = { $name }, when
differ-all-loads = All appliances
differ-chemistry = Battery type
differ-capacity = Battery
differ-health = State of health
differ-soc-min = Limit
differ-soc-start = Charge on arrival
differ-system = System
differ-battery-place = Battery location
differ-heated = Battery heating
differ-inverter = Inverter
differ-inverter-idle = Inverter, no-load draw
differ-switching = Inverter switched on
differ-solar = Solar
differ-tilt = Tilt
differ-facing = Facing
differ-mounting = Panel mounting
differ-controller = Controller
differ-shade = Midday shade
differ-driving-charger = Charging while driving
differ-driving-every = Driving
differ-driving-time = Driving time
differ-hook-up-charger = Mains charger
differ-hook-up-every = Hook-up
differ-other = Other sources
differ-place = Place
differ-arrival = Arrival
differ-nights = Nights you want
differ-air = Mean air temperature
differ-use-factor = Use, from readings on site
differ-sun-factor = Solar, from readings on site
differ-heated-to = Temperature inside
value-absent = –
value-yes = yes
value-every = { $n ->
    [one] every day
   *[other] every { $n } days
}
value-relay = split-charge relay, { $limit }
alternatives-title = What would make the difference?
alternative-as-it-is = As it is
alternative-battery = A second battery like yours
alternative-lithium = Lithium (LiFePO4) of the same size
alternative-panel = A second panel like yours
alternative-drive = An hour’s drive every other day
alternative-drive-charger = A DC-DC charger and an hour’s drive every other day
alternative-lasts = { $sure_n ->
    [one] { $sure } night safe
   *[other] { $sure } nights safe
}. { $n ->
    [one] Chance of { $n } night: { $chance }
   *[other] Chance of { $n } nights: { $chance }
}
