# The answer.
answer-name = The answer
answer-none = Add what you use, and the nights appear here.
answer-nights = { $n ->
    [one] night
   *[other] nights
}
answer-more = or more
answer-sure = on battery, in nine cases of ten
answer-average = on battery, in average weather
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
moment = { $weekday } { $date }, { $time }
from-nights = The stay is played hour by hour in two thousand kinds of weather, as they occur at this place and time of year. In nine of ten the battery keeps above the lowest level you allow for at least so many nights.
from-likely = In half of the weather played, the battery lasts at least so many nights. How many you ask for stands under Trip.
from-first-low = Average weather for this place and time of year, hour by hour: when the battery first falls below the lowest level you allow, if it does.
from-lowest = This is the lowest hour of the stay, in average weather.
