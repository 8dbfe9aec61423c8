# The answer.
answer-name = La réponse
answer-none = Ajoutez ce que vous utilisez : vos nuits s’afficheront ici.
answer-nights = { $n ->
    [one] nuit
   *[other] nuits
}
answer-more = ou plus
answer-sure = sur batterie, { $often }
answer-sure-from-now = sur batterie à partir de maintenant, { $often }
answer-average = sur batterie, par temps moyen (probabilités en cours)
answer-likely = Une fois sur deux : { $n ->
    [one] { $n } nuit
   *[other] { $n } nuits
}
answer-asked = Vous voulez { $n ->
    [one] { $n } nuit
   *[other] { $n } nuits
}.
answer-chance = Probabilité de tenir tout le séjour : { $chance }
answer-first-low = { $often }, la batterie reste au-dessus de votre limite jusqu’au { $when }
answer-never-low = { $often }, la batterie reste au-dessus de votre limite tout le séjour
answer-lowest = { $often }, l’état de charge ne descend jamais sous { $soc }
answer-working = Simulation de la météo en cours…
answer-bar = sur batterie. Afficher toute la réponse.
answer-spoken = { $n ->
    [one] { $n } nuit sur batterie.
   *[other] { $n } nuits sur batterie.
} { $low }
answer-course = État de charge au fil du séjour
moment = { $weekday } { $date } à { $time }
from-nights = Votre séjour est simulé heure par heure, { $times } fois, chaque fois avec un autre temps possible pour ce lieu et cette saison. Vos chiffres et ceux du climat varient aussi un peu. { $often }, la batterie reste au-dessus de votre limite pendant au moins ce nombre de nuits.
from-likely = Dans la moitié des simulations, la batterie tient au moins ce nombre de nuits. Le nombre de nuits voulu se règle sous « Séjour ».
from-first-low = { $often }, la batterie reste au-dessus de votre limite jusqu’à cette heure.
from-lowest = { $often }, l’état de charge ne descend jamais plus bas. En attendant les probabilités, ce chiffre vaut par temps moyen.
answer-most = Le plus gourmand : { $name } ({ $share })
verdict-all = { $n ->
    [one] La batterie tient la nuit, { $often }.
   *[other] La batterie tient les { $n } nuits, { $often }.
}
verdict-none = Dès la première nuit, la batterie risque de ne pas tenir (probabilité de tenir : { $chance }).
verdict-none-now = Juste dès cette nuit ({ $chance }).
verdict-safe-one = La batterie tient { $first }, { $often }.
verdict-safe-two = La batterie tient { $first } et { $last }, { $often }.
verdict-safe-more = La batterie tient de { $first } à { $last }, { $often }.
verdict-likely-one = C’est probable { $first } ({ $chance }).
verdict-likely-more = C’est probable de { $first } à { $last } ({ $chance }).
verdict-tight = À partir de { $first }, c’est juste.
often-eight = 8 fois sur 10
often-nine = 9 fois sur 10
often-nineteen = 19 fois sur 20
