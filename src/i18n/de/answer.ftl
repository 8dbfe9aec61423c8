# The answer.
answer-name = Die Antwort
answer-none = Trag ein, was du nutzt, dann erscheinen hier die Nächte.
answer-nights = { $n ->
    [one] Nacht
   *[other] Nächte
}
answer-more = oder mehr
answer-sure = hält die Batterie, in { $often }
answer-sure-from-now = hält die Batterie ab jetzt, in { $often }
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
answer-first-low = In { $often } bleibt die Batterie bis { $when } über deiner Untergrenze
answer-never-low = In { $often } bleibt die Batterie die ganze Zeit über deiner Untergrenze
answer-lowest = In { $often } sinkt der Ladezustand nie unter { $soc }
answer-working = Wetter wird durchgerechnet …
answer-bar = hält die Batterie. Ganze Antwort zeigen.
answer-spoken = { $n ->
    [one] { $n } Nacht hält die Batterie.
   *[other] { $n } Nächte hält die Batterie.
} { $low }
answer-course = Ladezustand im Verlauf
moment = { $weekday }, { $date }, { $time } Uhr
from-nights = Dein Aufenthalt wird { $times }-mal Stunde für Stunde durchgerechnet, jedes Mal mit anderem Wetter, wie es an diesem Ort zu dieser Jahreszeit vorkommt. Auch deine Angaben und die Klimawerte liegen jedes Mal ein wenig daneben. In { $often } bleibt die Batterie mindestens so viele Nächte über deiner Untergrenze.
from-likely = In der Hälfte der Durchläufe hält die Batterie mindestens so viele Nächte. Wie viele du willst, stellst du unter „Reise“ ein.
from-first-low = In { $often } bleibt die Batterie bis zu dieser Stunde über deiner Untergrenze.
from-lowest = In { $often } sinkt der Ladezustand nie tiefer. Solange die Chancen noch fehlen, gilt das durchschnittliche Wetter.
answer-most = Größter Verbraucher: { $name } ({ $share })
verdict-all = { $n ->
    [one] Die Batterie hält deine Nacht in { $often } durch.
   *[other] Alle { $n } Nächte hält die Batterie in { $often } durch.
}
verdict-none = Schon die erste Nacht wird knapp ({ $chance }).
verdict-none-now = Schon heute Nacht wird es knapp ({ $chance }).
verdict-safe-one = { $first } hält die Batterie in { $often } durch.
verdict-safe-two = { $first } und { $last } hält die Batterie in { $often } durch.
verdict-safe-more = { $first } bis { $last } hält die Batterie in { $often } durch.
verdict-likely-one = { $first } wahrscheinlich ({ $chance }).
verdict-likely-more = { $first } bis { $last } wahrscheinlich ({ $chance }).
verdict-tight = Ab { $first } wird es knapp.
often-eight = 8 von 10 Fällen
often-nine = 9 von 10 Fällen
often-nineteen = 19 von 20 Fällen
