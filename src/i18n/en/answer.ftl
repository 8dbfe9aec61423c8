# The answer.
answer-name = The answer
answer-none = Add what you use, and the nights appear here.
answer-nights = { $n ->
    [one] night
   *[other] nights
}
answer-more = or more
answer-sure = on battery, { $often }
answer-sure-from-now = on battery from now, { $often }
answer-average = on battery, in average weather (odds to follow)
answer-likely = Half the time: { $n ->
    [one] { $n } night
   *[other] { $n } nights
}
answer-asked = You want { $n ->
    [one] { $n } night
   *[other] { $n } nights
}.
answer-chance = Chance of lasting the whole stay: { $chance }
answer-first-low = { $often } the battery stays above your limit until { $when }
answer-never-low = { $often } the battery never falls below your limit
answer-lowest = { $often } the charge never falls below { $soc }
answer-working = Working through the weather…
answer-bar = on battery. Show the full answer.
answer-spoken = { $n ->
    [one] { $n } night on battery.
   *[other] { $n } nights on battery.
} { $low }
answer-course = Battery charge day by day
moment = { $weekday } { $date }, { $time }
from-nights = Your stay is simulated hour by hour, { $times } times, each with different weather for this place and season. Your figures and the climate’s vary a little too. { $often } the battery stays above your limit at least this long.
from-likely = In half the runs the battery lasts at least this long. Set your nights under Trip.
from-first-low = { $often } the battery stays above your limit until this hour.
from-lowest = { $often } the charge never gets lower. Until the odds are ready: in average weather.
answer-most = Uses most: { $name } ({ $share })
verdict-all = { $n ->
    [one] Your night is safe { $often }.
   *[other] All { $n } nights are safe { $often }.
}
verdict-none = Tight from the first night ({ $chance }).
verdict-none-now = Tight tonight ({ $chance }).
verdict-safe-one = { $first } is safe { $often }.
verdict-safe-two = { $first } and { $last } are safe { $often }.
verdict-safe-more = { $first } to { $last } are safe { $often }.
verdict-likely-one = { $first } is likely to be fine ({ $chance }).
verdict-likely-more = { $first } to { $last } are likely to be fine ({ $chance }).
verdict-tight = From { $first } it gets tight.
often-eight = 8 times out of 10
often-nine = 9 times out of 10
often-nineteen = 19 times out of 20
