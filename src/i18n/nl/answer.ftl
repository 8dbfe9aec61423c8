# The answer.
answer-name = Het antwoord
answer-none = Voeg toe wat je gebruikt, dan zie je hier het aantal nachten.
answer-nights = { $n ->
    [one] nacht
   *[other] nachten
}
answer-more = of meer
answer-sure = op de accu, 9 van de 10 keer
answer-sure-from-now = vanaf nu op de accu, 9 van de 10 keer
answer-average = op de accu, bij gemiddeld weer (de kansen volgen)
answer-likely = In de helft van de gevallen: { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
}
answer-asked = Je wilt { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
}.
answer-chance = Kans dat de accu het hele verblijf haalt: { $chance }
answer-first-low = 9 van de 10 keer blijft de accu boven je ondergrens tot { $when }
answer-never-low = 9 van de 10 keer blijft de accu de hele tijd boven je ondergrens
answer-lowest = 9 van de 10 keer zakt de laadtoestand nooit onder { $soc }
answer-working = Het weer wordt doorgerekend…
answer-bar = op de accu. Toon het hele antwoord.
answer-spoken = { $n ->
    [one] { $n } nacht op de accu.
   *[other] { $n } nachten op de accu.
} { $low }
answer-course = Laadtoestand tijdens het verblijf
moment = { $weekday } { $date } om { $time }
from-nights = Je verblijf wordt { $times } keer uur voor uur doorgerekend, telkens met ander weer zoals dat hier in dit seizoen voorkomt. Ook je eigen cijfers en de klimaatcijfers kunnen er telkens iets naast zitten. In 9 van de 10 berekeningen blijft de accu minstens dit aantal nachten boven je ondergrens.
from-likely = In de helft van de berekeningen houdt de accu het minstens dit aantal nachten vol. Hoeveel nachten je wilt, stel je in bij ‘Reis’.
from-first-low = In 9 van de 10 berekeningen blijft de accu tot dit uur boven je ondergrens.
from-lowest = In 9 van de 10 berekeningen zakt de accu nooit lager. Tot de kansen klaar zijn, geldt dit voor gemiddeld weer.
answer-most = Verbruikt het meest: { $name } ({ $share })
verdict-all = { $n ->
    [one] 9 van de 10 keer haalt de accu de nacht.
   *[other] 9 van de 10 keer haalt de accu alle { $n } nachten.
}
verdict-none = Al vanaf de eerste nacht is het krap ({ $chance }).
verdict-none-now = Vannacht wordt het al krap ({ $chance }).
verdict-safe-one = Op { $first } lukt het 9 van de 10 keer.
verdict-safe-two = Op { $first } en { $last } lukt het 9 van de 10 keer.
verdict-safe-more = Van { $first } tot en met { $last } lukt het 9 van de 10 keer.
verdict-likely-one = Waarschijnlijk lukt het op { $first } ({ $chance }).
verdict-likely-more = Waarschijnlijk lukt het van { $first } tot en met { $last } ({ $chance }).
verdict-tight = Vanaf { $first } wordt het krap.
