# The answer.
answer-name = Die Antwort
answer-none = Trag ein, was du nutzt, dann erscheinen hier die Nächte.
answer-nights = { $n ->
    [one] Nacht
   *[other] Nächte
}
answer-more = oder mehr
answer-sure = mit Batterie, in 9 von 10 Fällen
answer-average = hält die Batterie, bei durchschnittlichem Wetter (die Chancen folgen)
answer-likely = In der Hälfte der Fälle: { $n ->
    [one] { $n } Nacht
   *[other] { $n } Nächte
}
answer-asked = Gewünscht: { $n ->
    [one] { $n } Nacht
   *[other] { $n } Nächte
}.
answer-chance = Chance, dass die Batterie alle Nächte durchhält: { $chance }
answer-first-low = In 9 von 10 Fällen bleibt die Batterie über deiner Grenze bis { $when }
answer-never-low = In 9 von 10 Fällen bleibt die Batterie die ganze Zeit über deiner Grenze
answer-lowest = In 9 von 10 Fällen sinkt der Ladezustand nie unter { $soc }
answer-working = Wetter wird durchgerechnet …
answer-bar = hält die Batterie. Ganze Antwort zeigen.
answer-spoken = { $n ->
    [one] { $n } Nacht hält die Batterie.
   *[other] { $n } Nächte hält die Batterie.
} { $low }
answer-course = Ladezustand im Verlauf
moment = { $weekday }, { $date }, { $time } Uhr
from-nights = Dein Aufenthalt wird zweitausendmal Stunde für Stunde durchgespielt. Jedes Mal mit eigenem Wetter, wie es an diesem Ort zu dieser Jahreszeit vorkommt, und mit der Kälte oder Wärme, die dazugehört. Auch die Klimawerte des Orts und deine eigenen Angaben liegen jedes Mal ein wenig daneben. In 9 von 10 Fällen bleibt die Batterie mindestens so viele Nächte über deiner Grenze.
from-likely = In der Hälfte der Fälle hält die Batterie mindestens so viele Nächte. Wie viele du willst, steht unter „Reise“.
from-first-low = Bis zu dieser Stunde bleibt die Batterie in 9 von 10 Durchläufen deines Aufenthalts über deiner Grenze.
from-lowest = In 9 von 10 Durchläufen deines Aufenthalts sinkt die Batterie nie tiefer. Solange die Chancen noch fehlen, steht hier das durchschnittliche Wetter.
answer-most = Braucht am meisten: { $name }, { $share } vom Tagesbedarf
answer-figures = Mehr Zahlen
verdict-all = { $n ->
    [one] Deine Nacht ist sicher.
   *[other] Alle { $n } Nächte sind sicher.
}
verdict-none = Schon die erste Nacht wird knapp ({ $chance }).
verdict-safe-one = { $first } ist sicher.
verdict-safe-two = { $first } und { $last } sind sicher.
verdict-safe-more = { $first } bis { $last } sind sicher.
verdict-likely-one = { $first } wahrscheinlich ({ $chance }).
verdict-likely-more = { $first } bis { $last } wahrscheinlich ({ $chance }).
verdict-tight = Ab { $first } wird es knapp.
