# The answer.
answer-name = La réponse
answer-none = Ajoutez ce que vous utilisez : vos nuits s’afficheront ici.
answer-nights = { $n ->
    [one] nuit
   *[other] nuits
}
answer-more = ou plus
answer-sure = sur batterie, 9 fois sur 10
answer-sure-from-now = sur batterie à partir de maintenant, 9 fois sur 10
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
answer-first-low = 9 fois sur 10, la batterie reste au-dessus de votre limite jusqu’au { $when }
answer-never-low = 9 fois sur 10, la batterie reste au-dessus de votre limite tout le séjour
answer-lowest = 9 fois sur 10, l’état de charge ne descend jamais sous { $soc }
answer-working = Simulation de la météo en cours…
answer-bar = sur batterie. Afficher toute la réponse.
answer-spoken = { $n ->
    [one] { $n } nuit sur batterie.
   *[other] { $n } nuits sur batterie.
} { $low }
answer-course = État de charge au fil du séjour
moment = { $weekday } { $date } à { $time }
from-nights = Votre séjour est simulé heure par heure, { $times } fois, chaque fois avec un autre temps possible pour ce lieu et cette saison. Vos chiffres et ceux du climat varient aussi un peu. Dans 9 simulations sur 10, la batterie reste au-dessus de votre limite pendant au moins ce nombre de nuits.
from-likely = Dans la moitié des simulations, la batterie tient au moins ce nombre de nuits. Le nombre de nuits voulu se règle sous « Séjour ».
from-first-low = Dans 9 simulations sur 10, la batterie reste au-dessus de votre limite jusqu’à cette heure.
from-lowest = Dans 9 simulations sur 10, l’état de charge ne descend jamais plus bas. En attendant les probabilités, ce chiffre vaut par temps moyen.
answer-most = Le plus gourmand : { $name } ({ $share })
verdict-all = { $n ->
    [one] La batterie tient la nuit, 9 fois sur 10.
   *[other] La batterie tient les { $n } nuits, 9 fois sur 10.
}
verdict-none = Dès la première nuit, la batterie risque de ne pas tenir (probabilité de tenir : { $chance }).
verdict-none-now = Juste dès cette nuit ({ $chance }).
verdict-safe-one = La batterie tient la nuit du { $first }, 9 fois sur 10.
verdict-safe-two = La batterie tient les nuits du { $first } et du { $last }, 9 fois sur 10.
verdict-safe-more = La batterie tient les nuits du { $first } au { $last }, 9 fois sur 10.
verdict-likely-one = C’est probable la nuit du { $first } ({ $chance }).
verdict-likely-more = C’est probable du { $first } au { $last } ({ $chance }).
verdict-tight = À partir du { $first }, la batterie risque de ne pas tenir.
