# The answer.
answer-name = Het antwoord
answer-none = Voeg toe wat je gebruikt, dan verschijnen de nachten hier.
answer-nights = { $n ->
    [one] nacht
   *[other] nachten
}
answer-more = of meer
answer-sure = op de accu, in negen van de tien gevallen
answer-average = op de accu, bij gemiddeld weer
answer-likely = In de helft van de gevallen: { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
}
answer-asked = Je vroeg om { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
}.
answer-chance = Kans dat de accu ze allemaal haalt: { $chance }
answer-first-low = Bereikt het laagste toegestane niveau op { $when }
answer-never-low = Blijft boven het laagste toegestane niveau
answer-lowest = Laagste laadtoestand: { $soc }
answer-working = Het weer wordt doorgerekend…
answer-glance = op de accu. Toon het hele antwoord.
answer-spoken = { $n ->
    [one] { $n } nacht op de accu.
   *[other] { $n } nachten op de accu.
} { $low }
answer-course = Verloop van de accu
moment = { $weekday } { $date }, { $time }
