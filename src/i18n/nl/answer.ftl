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
from-nights = Het verblijf wordt uur na uur doorgespeeld in tweeduizend soorten weer, zoals ze op deze plek en in deze tijd van het jaar voorkomen. In negen van de tien blijft de accu minstens zoveel nachten boven het laagste niveau dat je toestaat.
from-likely = Bij de helft van het doorgespeelde weer houdt de accu het minstens zoveel nachten vol. Hoeveel je er vraagt, staat bij ‘Reis’.
from-first-low = Gemiddeld weer op deze plek en in deze tijd van het jaar, uur na uur: wanneer de accu voor het eerst onder het laagste niveau zakt dat je toestaat, als dat gebeurt.
from-lowest = Dit is hier het laagste uur van het verblijf, bij gemiddeld weer.
