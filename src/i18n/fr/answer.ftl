# The answer.
answer-name = La réponse
answer-none = Ajoutez ce que vous utilisez : vos nuits s’afficheront ici.
answer-nights = { $n ->
    [one] nuit
   *[other] nuits
}
answer-more = ou plus
answer-sure = sur batterie, neuf fois sur dix
answer-average = sur batterie, par temps moyen
answer-likely = Une fois sur deux : { $n ->
    [one] { $n } nuit
   *[other] { $n } nuits
}
answer-asked = Vous avez demandé { $n ->
    [one] { $n } nuit
   *[other] { $n } nuits
}.
answer-chance = Chance de tenir jusqu’au bout : { $chance }
answer-first-low = La batterie atteint son niveau minimal autorisé le { $when }
answer-never-low = La batterie reste au-dessus de son niveau minimal autorisé
answer-lowest = État de charge le plus bas : { $soc }
answer-working = Simulation de la météo en cours…
answer-glance = sur batterie. Afficher toute la réponse.
answer-spoken = { $n ->
    [one] { $n } nuit sur batterie.
   *[other] { $n } nuits sur batterie.
} { $low }
answer-course = Évolution de la charge
moment = { $weekday } { $date } à { $time }
from-nights = Le séjour est joué heure par heure dans deux mille météos, telles qu’elles existent à ce lieu et à cette saison. Dans neuf sur dix, la batterie reste au-dessus du niveau minimal autorisé pendant au moins autant de nuits.
from-likely = Dans la moitié des météos jouées, la batterie tient au moins autant de nuits. Le nombre demandé est sous « Séjour ».
from-first-low = Météo moyenne à ce lieu et à cette saison, heure par heure : quand la batterie passe pour la première fois sous le niveau minimal autorisé, si cela arrive.
from-lowest = C’est ici l’heure la plus basse du séjour, par météo moyenne.
