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
answer-asked = You want { $n ->
    [one] { $n } night
   *[other] { $n } nights
}.
answer-chance = Chance of lasting the whole stay: { $chance }
answer-first-low = 9 times out of 10 the battery stays above your limit until { $when }
answer-never-low = 9 times out of 10 the battery stays above your limit all the time
answer-lowest = 9 times out of 10 the charge never falls below { $soc }
answer-working = Working through the weather…
answer-bar = on battery. Show the full answer.
answer-spoken = { $n ->
    [one] { $n } night on battery.
   *[other] { $n } nights on battery.
} { $low }
answer-course = Battery level over the stay
moment = { $weekday } { $date }, { $time }
from-nights = Your stay is simulated hour by hour, two thousand times. Each time it meets other weather of this place and season. Your own figures and the climate figures may be a little off each time, too. In 9 of 10 runs the battery stays above your limit for at least this many nights.
from-likely = In half the runs the battery lasts at least this many nights. Set the nights you want under Trip.
from-first-low = In 9 of 10 runs the battery stays above your limit up to this hour.
from-lowest = In 9 of 10 runs the battery never gets lower than this. Until the odds are ready, this is for average weather.
answer-most = Uses most: { $name }, { $share } of a day’s energy
answer-figures = More figures
verdict-all = { $n ->
    [one] Your night is safe.
   *[other] All { $n } nights are safe.
}
verdict-none = Tight from the first night ({ $chance }).
verdict-safe-one = { $first } is safe.
verdict-safe-two = { $first } and { $last } are safe.
verdict-safe-more = { $first } to { $last } are safe.
verdict-likely-one = { $first } is likely to be fine ({ $chance }).
verdict-likely-more = { $first } to { $last } are likely to be fine ({ $chance }).
verdict-tight = From { $first } it gets tight.
