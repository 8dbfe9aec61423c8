# The answer.
answer-name = Het antwoord
answer-none = Voeg toe wat je gebruikt, dan verschijnen de nachten hier.
answer-nights = { $n ->
    [one] nacht
   *[other] nachten
}
answer-more = of meer
answer-sure = op de accu, 9 van de 10 keer
answer-average = op de accu, bij gemiddeld weer (de kansen volgen)
answer-likely = In de helft van de gevallen: { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
}
answer-asked = Je vroeg om { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
}.
answer-chance = Kans dat de accu ze allemaal haalt: { $chance }
answer-first-low = 9 van de 10 keer blijft hij boven je grens tot { $when }
answer-never-low = 9 van de 10 keer blijft hij de hele tijd boven je grens
answer-lowest = 9 van de 10 keer zakt hij nooit onder { $soc }
answer-working = Het weer wordt doorgerekend…
answer-bar = op de accu. Toon het hele antwoord.
answer-spoken = { $n ->
    [one] { $n } nacht op de accu.
   *[other] { $n } nachten op de accu.
} { $low }
answer-course = Verloop van de accu
moment = { $weekday } { $date }, { $time }
from-nights = Je verblijf wordt tweeduizend keer uur na uur doorgespeeld. Elke keer met eigen weer, zoals het op deze plek en in deze tijd van het jaar voorkomt, en met de kou of warmte die erbij hoort. Ook de klimaatcijfers van de plek en je eigen cijfers zitten er elke keer een beetje naast. 9 van de 10 keer blijft de accu minstens zoveel nachten boven je grens.
from-likely = De helft van de keren houdt de accu het minstens zoveel nachten vol. Hoeveel je er vraagt, staat bij ‘Reis’.
from-first-low = In 9 van de 10 keer dat je verblijf wordt doorgespeeld, blijft de accu tot dit uur boven je grens.
from-lowest = In 9 van de 10 keer dat je verblijf wordt doorgespeeld, zakt de accu nooit lager. Zolang de kansen er nog niet zijn, staat hier het gemiddelde weer.
answer-most = Verbruikt het meest: { $name }, { $share } van de dag
answer-figures = Meer cijfers
verdict-all = { $n ->
    [one] Je nacht zit goed.
   *[other] Alle { $n } nachten zitten goed.
}
verdict-none = Al vanaf de eerste nacht krap ({ $chance }).
verdict-safe-one = Op { $first } zit je goed.
verdict-safe-two = Op { $first } en { $last } zit je goed.
verdict-safe-more = Van { $first } tot en met { $last } zit je goed.
verdict-likely-one = Waarschijnlijk lukt het op { $first } ({ $chance }).
verdict-likely-more = Waarschijnlijk lukt het van { $first } tot en met { $last } ({ $chance }).
verdict-tight = Vanaf { $first } wordt het krap.
