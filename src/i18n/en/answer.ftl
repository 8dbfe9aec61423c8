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
