# The answer.
answer-name = The answer
answer-none = Add what you use, and the nights appear here.
answer-nights = { $n ->
    [one] night
   *[other] nights
}
answer-more = or more
answer-sure = on battery, 9 times out of 10
answer-average = on battery, in average weather (the odds follow)
answer-likely = Half the time: { $n ->
    [one] { $n } night
   *[other] { $n } nights
}
answer-asked = You asked for { $n ->
    [one] { $n } night
   *[other] { $n } nights
}.
answer-chance = Chance of lasting them all: { $chance }
answer-first-low = 9 times out of 10 it stays above your limit until { $when }
answer-never-low = 9 times out of 10 it stays above your limit all through
answer-lowest = 9 times out of 10 it never falls below { $soc }
answer-working = Playing through the weather…
answer-bar = on battery. Show the whole answer.
answer-spoken = { $n ->
    [one] { $n } night on battery.
   *[other] { $n } nights on battery.
} { $low }
answer-course = Course of the battery
moment = { $weekday } { $date }, { $time }
from-nights = Your stay is played hour by hour two thousand times. Each time has its own weather, as it comes at this place and time of year, with the cold or warmth that goes with it. The climate figures of the place and your own figures may be a little off each time, too. 9 times out of 10 the battery stays above your limit for at least this many nights.
from-likely = Half the time the battery lasts at least this many nights. How many you ask for stands under Trip.
from-first-low = The hour up to which the battery stays above your limit in 9 of 10 plays of your stay.
from-lowest = In 9 of 10 plays of your stay the battery never gets lower than this. Until the odds are there, average weather stands in for them.
answer-most = Takes most: { $name }, { $share } of a day's use
answer-figures = More figures
verdict-all = { $n ->
    [one] Your night is safe.
   *[other] All { $n } nights are safe.
}
verdict-none = Tight from the first night ({ $chance }).
verdict-safe-one = { $first } is safe.
verdict-safe-two = { $first } and { $last } are safe.
verdict-safe-more = { $first } to { $last } are safe.
verdict-likely-one = { $first } probably ({ $chance }).
verdict-likely-more = { $first } to { $last } probably ({ $chance }).
verdict-tight = From { $first } it gets tight.
