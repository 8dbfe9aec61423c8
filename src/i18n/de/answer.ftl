# The answer.
answer-name = Die Antwort
answer-none = Trag ein, was du nutzt, dann erscheinen hier die Nächte.
answer-nights = { $n ->
    [one] Nacht
   *[other] Nächte
}
answer-more = oder mehr
answer-sure = hält die Batterie, in neun von zehn Fällen
answer-average = mit Batterie, bei durchschnittlichem Wetter
answer-likely = In der Hälfte der Fälle: { $n ->
    [one] { $n } Nacht
   *[other] { $n } Nächte
}
answer-asked = Gewünscht: { $n ->
    [one] { $n } Nacht
   *[other] { $n } Nächte
}.
answer-chance = Chance, dass sie alle Nächte hält: { $chance }
answer-first-low = Erreicht den niedrigsten erlaubten Stand am { $when }
answer-never-low = Bleibt über dem niedrigsten erlaubten Stand
answer-lowest = Tiefster Ladezustand: { $soc }
answer-working = Spielt das Wetter durch …
answer-glance = hält die Batterie. Ganze Antwort zeigen.
answer-spoken = { $n ->
    [one] { $n } Nacht hält die Batterie.
   *[other] { $n } Nächte hält die Batterie.
} { $low }
answer-course = Verlauf der Batterie
moment = { $weekday } { $date }, { $time }
from-nights = Der Aufenthalt wird Stunde für Stunde in zweitausend Wetterverläufen durchgespielt, wie sie an diesem Ort zu dieser Jahreszeit vorkommen. In neun von zehn bleibt die Batterie mindestens so viele Nächte über dem niedrigsten erlaubten Stand.
from-likely = Bei der Hälfte der durchgespielten Wetterverläufe hält die Batterie mindestens so viele Nächte. Wie viele du willst, steht unter „Reise“.
from-first-low = Durchschnittliches Wetter an diesem Ort zu dieser Jahreszeit, Stunde für Stunde: wann die Batterie zum ersten Mal unter den niedrigsten erlaubten Stand fällt, falls überhaupt.
from-lowest = Hier ist es die tiefste Stunde des Aufenthalts bei durchschnittlichem Wetter.
