# The answer.
answer-name = Het antwoord
answer-none = Voeg toe wat je gebruikt, dan zie je hier het aantal nachten.
answer-nights = { $n ->
    [one] nacht
   *[other] nachten
}
answer-more = of meer
answer-sure = op de accu, { $often }
answer-sure-from-now = vanaf nu op de accu, { $often }
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
answer-first-low = { $often } blijft de accu boven je ondergrens tot { $when }
answer-never-low = { $often } blijft de accu de hele tijd boven je ondergrens
answer-lowest = { $often } zakt de laadtoestand nooit onder { $soc }
answer-working = Het weer wordt doorgerekend…
answer-bar = op de accu. Toon het hele antwoord.
answer-spoken = { $n ->
    [one] { $n } nacht op de accu.
   *[other] { $n } nachten op de accu.
} { $low }
answer-course = Laadtoestand tijdens het verblijf
moment = { $weekday } { $date } om { $time }
from-nights = Je verblijf wordt { $times } keer uur voor uur doorgerekend, telkens met ander weer zoals dat hier in dit seizoen voorkomt. Ook je eigen cijfers en de klimaatcijfers kunnen er telkens iets naast zitten. { $often } blijft de accu minstens dit aantal nachten boven je ondergrens.
from-likely = In de helft van de berekeningen houdt de accu het minstens dit aantal nachten vol. Hoeveel nachten je wilt, stel je in bij ‘Reis’.
from-first-low = { $often } blijft de accu tot dit uur boven je ondergrens.
from-lowest = { $often } zakt de accu nooit lager. Tot de kansen klaar zijn, geldt dit voor gemiddeld weer.
answer-most = Verbruikt het meest: { $name } ({ $share })
verdict-all = { $n ->
    [one] { $often } haalt de accu de nacht.
   *[other] { $often } haalt de accu alle { $n } nachten.
}
verdict-none = Al vanaf de eerste nacht is het krap ({ $chance }).
verdict-none-now = Vannacht wordt het al krap ({ $chance }).
verdict-safe-one = Op { $first } lukt het { $often }.
verdict-safe-two = Op { $first } en { $last } lukt het { $often }.
verdict-safe-more = Van { $first } tot en met { $last } lukt het { $often }.
verdict-likely-one = Waarschijnlijk lukt het op { $first } ({ $chance }).
verdict-likely-more = Waarschijnlijk lukt het van { $first } tot en met { $last } ({ $chance }).
verdict-tight = Vanaf { $first } wordt het krap.
often-eight = 8 van de 10 keer
often-nine = 9 van de 10 keer
often-nineteen = 19 van de 20 keer
