# The answer.
answer-name = La réponse
answer-none = Ajoutez ce que vous utilisez : vos nuits s’afficheront ici.
answer-nights = { $n ->
    [one] nuit
   *[other] nuits
}
answer-more = ou plus
answer-sure = sur batterie, 9 fois sur 10
answer-average = sur batterie, par temps moyen (les probabilités suivent)
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
from-nights = Votre séjour est simulé heure par heure, deux mille fois. Chaque fois, il fait un autre temps possible en ce lieu et en cette saison. Vos chiffres et ceux du climat varient aussi un peu. Dans 9 simulations sur 10, la batterie reste au-dessus de votre limite pendant au moins ce nombre de nuits.
from-likely = Dans la moitié des simulations, la batterie tient au moins ce nombre de nuits. Le nombre de nuits voulu se règle sous « Séjour ».
from-first-low = Dans 9 simulations sur 10, la batterie reste au-dessus de votre limite jusqu’à cette heure.
from-lowest = Dans 9 simulations sur 10, la batterie ne descend jamais plus bas. En attendant les probabilités, ce chiffre vaut par temps moyen.
answer-most = Consomme le plus : { $name }, { $share } de l’énergie d’une journée
answer-figures = Plus de chiffres
verdict-all = { $n ->
    [one] Votre nuit est assurée.
   *[other] Les { $n } nuits sont assurées.
}
verdict-none = C’est juste dès la première nuit ({ $chance }).
verdict-safe-one = Pas de souci { $first }.
verdict-safe-two = Pas de souci { $first } et { $last }.
verdict-safe-more = Pas de souci de { $first } à { $last }.
verdict-likely-one = Probable { $first } ({ $chance }).
verdict-likely-more = Probable de { $first } à { $last } ({ $chance }).
verdict-tight = À partir de { $first }, c’est juste.
