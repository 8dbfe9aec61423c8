# What to change: what helps, ways to more nights, setups side by side.
change-parts = Différentes vues
part-helps = Ce qui aide
part-ways = Gagner des nuits
change-working = Calcul en cours…
change-failed = Calcul impossible : un chiffre de la météo ou du climat est incohérent. Vérifiez-le sous « Séjour ».
change-beware = Attention :
change-towards-south = sud
change-towards-north = nord

helps-title = Ce qui aide le plus
helps-told = Chaque changement est essayé sur tout votre séjour, avec les mêmes scénarios météo. Rien ne change avant que vous appuyiez sur « Appliquer ».
helps-progress = Simulation de chaque changement : { $done }
helps-more = { $n ->
    [one] { $n } autre changement
   *[other] { $n } autres changements
}
helps-now = Probabilité de tenir { $n ->
    [one] { $n } nuit
   *[other] { $n } nuits
} en l’état : { $chance }.
helps-too-far = { $n ->
    [one] Aucun changement seul n’aide à tenir { $n } nuit.
   *[other] Aucun changement seul n’aide à tenir { $n } nuits.
}
helps-sure = Rien de plus à faire pour ce séjour. Rester plus longtemps ? Déplacez les nuits sur le premier écran.
helps-none = Rien trouvé qui augmente cette chance. « Gagner des nuits » combine plusieurs changements.
help-gain = { $from } → { $to }
help-mean = { $to_n ->
    [one] { $to } nuit
   *[other] { $to } nuits
} en moyenne, { $more } de plus
next-looking = Recherche de ce qui aide…
next-sure = { $n ->
    [one] Rien à faire pour votre nuit.
   *[other] Rien à faire pour vos { $n } nuits.
}
next-none = { $n ->
    [one] Aucun changement seul n’aide pour votre nuit.
   *[other] Aucun changement seul n’aide pour vos { $n } nuits.
}
next-ways = { $n ->
    [one] Voir comment tenir { $n } nuit
   *[other] Voir comment tenir { $n } nuits
}
next-gain = { $n ->
    [one] Tenir { $n } nuit : { $from } → { $to }
   *[other] Tenir { $n } nuits : { $from } → { $to }
}
next-tried = Fait : { $change }
next-back = Annuler ce changement
help-apply = Appliquer
help-apply-name = Appliquer : { $change }
toast-applied = Modifié : { $change }

ways-title = Comment gagner des nuits
ways-told = Dites combien de nuits vous voulez. Nightbank cherche la solution la moins chère, une sans rien acheter et une uniquement par des achats.
ways-nights = Nuits voulues
ways-now = { $n ->
    [one] En l’état, la probabilité de tenir { $n } nuit est de { $chance }.
   *[other] En l’état, la probabilité de tenir { $n } nuits est de { $chance }.
}
ways-reached = { $n ->
    [one] Votre installation tient déjà { $n } nuit avec une probabilité de { $chance }. Demandez plus de nuits ou une probabilité plus élevée.
   *[other] Votre installation tient déjà { $n } nuits avec une probabilité de { $chance }. Demandez plus de nuits ou une probabilité plus élevée.
}
ways-none = Rien trouvé : aucun des changements possibles ne vous rapproche du but.
way-cheapest = La moins chère
way-nearest = La plus proche
way-nothing-bought = Sans rien acheter
way-only-bought = Uniquement par des achats
way-reaches = { $n ->
    [one] Tient { $n } nuit avec une probabilité de { $chance }
   *[other] Tient { $n } nuits avec une probabilité de { $chance }
}
way-falls-short = { $n ->
    [0] N’atteint pas une seule nuit avec une probabilité de { $chance }. Les nuits voulues ont une probabilité de { $reached }.
    [one] N’atteint que { $n } nuit avec une probabilité de { $chance }. Les nuits voulues ont une probabilité de { $reached }.
   *[other] N’atteint que { $n } nuits avec une probabilité de { $chance }. Les nuits voulues ont une probabilité de { $reached }.
}
way-price = Ce que cela coûte
way-facts = { $often } : { $sure_n ->
    [one] { $sure } nuit
   *[other] { $sure } nuits
}. Une fois sur deux : { $even_n ->
    [one] { $even } nuit
   *[other] { $even } nuits
}. État de charge le plus bas par temps moyen : { $lowest }.
way-longer = { $n ->
    [one] Cette solution règle aussi le séjour sur { $n } nuit.
   *[other] Cette solution règle aussi le séjour sur { $n } nuits.
}
way-apply = Choisir cette solution
toast-way = Modifié : { $way }

cost-free = Ne coûte rien
cost-effort = Demande un effort ou un peu moins de confort
cost-driving = { $time } de route en plus
cost-hook-up = { $n ->
    [one] { $n } nuit sur un emplacement avec branchement, au tarif du camping
   *[other] { $n } nuits sur un emplacement avec branchement, au tarif du camping
}
cost-money = Environ { $amount }, { $weight } de plus à bord
cost-money-lighter = Environ { $amount }, { $weight } de moins à bord
cost-money-only = Environ { $amount }
cost-unpriced = À acheter ; prix absent de votre liste
bill-unpriced = { $n ->
    [one] { $n } achat sans prix dans votre liste
   *[other] { $n } achats sans prix dans votre liste
}
bill-efforts = { $n ->
    [one] { $n } changement qui demande un effort ou un peu moins de confort
   *[other] { $n } changements qui demandent un effort ou un peu moins de confort
}
bill-free = { $n ->
    [one] { $n } changement qui ne coûte rien
   *[other] { $n } changements qui ne coûtent rien
}

change-switch-off = Éteindre complètement : { $name }
change-do-without = S’en passer : { $name }
change-gas = Cuisiner ou chauffer au gaz à la place : { $name }
change-off-at-night = Éteindre de 23 h à 7 h : { $name }
change-unplug = Débrancher entre les utilisations : { $name }
change-shorter = { $name } : { $amount } de moins par jour
change-fewer = { $name } : utiliser { $amount } fois de moins par jour
change-share = { $name } : seulement { $amount } de l’usage prévu
change-warmer-fridge = { $name } : régler environ { $warmer_2 } moins froid
change-dc = { $name } : alimenter en { $amount } par un adaptateur, sans le convertisseur
change-midday = { $name } : utiliser vers midi
change-inverter-when-used = N’allumer le convertisseur que quand il sert
change-inverter-sleep = Mettre le convertisseur en veille quand rien ne tourne (alors { $amount })
change-tilt = { $name } : incliner à { $tilt }, face au { $facing }
change-tilt-roof = { $name } : incliner sur un support à { $tilt }, face au { $facing }
change-clean = { $name } : nettoyer le verre
change-out-of-shade = { $name } : stationner hors de l’ombre
change-mppt = { $name } : un régulateur MPPT au lieu de PWM
change-portable = Installer un panneau mobile de { $amount }, incliné à { $tilt }, face au { $facing }
change-drive = Rouler { $amount } le jour { $day } ({ $date })
change-hook-up = { $n ->
    [one] Prendre un emplacement avec branchement chaque nuit
   *[other] Prendre un emplacement avec branchement toutes les { $n } nuits
}
change-arrive-full = Arriver avec une batterie pleine
change-battery-inside = Mettre la batterie à l’intérieur, où il fait moins froid
change-battery-locker = Mettre la batterie dans un coffre, où il fait moins froid
change-heated = Une batterie chauffée, qui se charge aussi par temps de gel
change-battery = Ajouter une batterie du même type : { $amount }
change-lithium = Une batterie LiFePO4 à la place : { $amount }
change-solar = Ajouter des panneaux : { $amount }
change-dc-dc = Un chargeur DC-DC de { $amount }
change-dc-dc-drive = { $n ->
    [one] Un chargeur DC-DC de { $amount }, et une heure de route chaque jour
   *[other] Un chargeur DC-DC de { $amount }, et une heure de route tous les { $n } jours
}

part-year = L’année
buy-title = Quoi acheter : toutes les combinaisons
buy-told = Pour chaque batterie, la plus petite puissance de panneaux qui suffit à vos nuits. Pour chaque puissance de panneaux, la plus petite batterie.
buy-from = Premier mois
buy-to = Dernier mois
buy-this-month = Mois du séjour
buy-progress = Essai des combinaisons : { $done }
buy-hard = Mois le plus difficile parmi ceux choisis : { $months }. Les valeurs ci-dessous sont calculées pour ce mois.
buy-least = Plus petit achat
buy-cheapest = Le moins cher, si tout est neuf
buy-lightest = Le plus léger
buy-choice = { $kind } { $battery } avec { $solar } de panneaux
buy-price = { $more } en plus de ce que vous avez ; { $all } si tout est neuf ; { $weight } au total
buy-take = Choisir ces valeurs
buy-none = Même { $solar } de panneaux avec { $battery } de batterie ne suffisent pas. Demandez moins de nuits, un autre mois ou une probabilité plus faible, ou consommez moins.
buy-sizes = Toutes les combinaisons : { $kind }
buy-by-battery = { $kind } : la plus petite puissance solaire pour chaque batterie
buy-by-solar = { $kind } : la plus petite batterie pour chaque puissance solaire
buy-battery = Batterie
buy-solar = Panneaux
buy-smallest-solar = Panneaux, minimum
buy-smallest-battery = Batterie, minimum
buy-too-little = rien ne suffit
buy-have = ce que vous avez
buy-curve = { $kind } : batterie et panneaux tout juste suffisants
buy-curve-told = Plus la batterie est grande, moins il faut de panneaux. De { $least } de batterie avec { $solar } de panneaux à { $most } de batterie avec { $few }.
buy-how = Appareils, route, branchement, inclinaison, ombre et âge de la batterie restent tels quels. Ajoutez une marge pour les années à venir.
prices-title = Prix et poids
prices-told = Partez de ces chiffres ronds et mettez les vôtres ; ils décident quelle solution est la moins chère.
prices-counted = Une heure de route compte pour { $hour }, une nuit avec branchement pour { $night }.
prices-currency = Monnaie
prices-solar = Panneaux avec fixation, par 100 Wc
prices-solar-weight = Leur poids, par 100 Wc
prices-lead = Batterie au plomb, par 100 Ah en 12 V
prices-lead-weight = Son poids, par 100 Ah en 12 V
prices-lithium = LiFePO4, par 100 Ah en 12 V
prices-lithium-weight = Son poids, par 100 Ah en 12 V
prices-dc-dc = Chargeur DC-DC, posé

year-title = Les nuits au fil de l’année
year-told = Le même séjour à cet endroit avec cette installation, commencé chaque mois de l’année.
year-progress = Simulation de l’année : { $done } mois sur 12

part-compare = Côte à côte
compare-title = Installations côte à côte
compare-told = Cette installation à côté de vos autres, chacune avec la météo de son lieu. Pour voir l’effet d’un changement, ajoutez d’abord une copie.
compare-with = Comparer avec
compare-copy = Ajouter une copie de celle-ci
compare-copy-name = Copie { $n }
compare-drop = Retirer : { $name }
compare-copies-passing = Ce navigateur ne peut pas enregistrer ces copies : elles disparaissent à la fermeture de la page.
compare-full = Vous pouvez en comparer { $most } au maximum.
compare-this = Cette installation
compare-alone = Choisissez une autre installation, ou ajoutez une copie et changez quelque chose.
compare-same = Aucune différence.
compare-working = …
compare-what = Valeur
compare-outcomes = Résultats
compare-differences = Différences
compare-sure = Nuits, { $often }
compare-even = Nuits, une fois sur deux
compare-chance = Probabilité de tenir les nuits voulues
compare-lowest = État de charge le plus bas
compare-use = Énergie consommée par jour
compare-usable = Énergie utilisable
compare-money = Panneaux, batterie et chargeur, neufs
compare-weight = Poids des panneaux et de la batterie
compare-weight-per-kwh = Poids de batterie par kWh utilisable
compare-life-cost = Coût d’un kWh fourni, sur la durée de vie de la batterie
compare-band = { $low } à { $high }
compare-life = Plomb contre lithium à vos prix
compare-life-how = Prix divisé par l’énergie que la batterie fournit sur sa durée de vie en cycles, à la profondeur de décharge habituelle. Le nombre de cycles est une large plage de valeurs usuelles. Utilisée deux semaines par an, une batterie s’use d’abord par l’âge.
compare-batteries = Pourquoi les batteries se comportent différemment
compare-batteries-how = Chacune sur son séjour, par temps moyen, à la température de la batterie. Le froid rend inaccessible une partie de la charge du plomb et empêche le lithium de se charger. Presque pleine, une batterie au plomb se charge lentement et perd une partie de la charge.
reason-usable = Part utilisable de l’énergie de l’étiquette
reason-cold = Disponible à l’heure la plus froide
reason-fast = Énergie fournie en 5 h, par rapport à 20 h
reason-stored = Part de la charge stockée au-dessus de 80 %
reason-taken = Courant de charge maximal à 90 %
reason-full = De la limite à la pleine charge, avec le plus gros chargeur
reason-lost = Pertes à la charge et par résistance
reason-sag = Tension la plus basse avant la limite, plus gros appareil en marche
reason-cut-out = Coupure (tension trop basse) avant la limite
reason-no-charge = N’accepte aucune charge sous
reason-locked = Charge refusée à cause du froid
reason-management = Consommation du BMS
reason-standing = Perte en 30 jours sans servir
differ-times = { $name }, quand
differ-all-loads = Tous les appareils
differ-chemistry = Type de batterie
differ-capacity = Batterie
differ-health = État de santé de la batterie
differ-soc-min = Limite
differ-soc-start = Charge à l’arrivée
differ-system = Système
differ-battery-place = Où se trouve la batterie
differ-heated = Chauffage de la batterie
differ-inverter = Convertisseur
differ-inverter-idle = Convertisseur, consommation à vide
differ-switching = Convertisseur allumé
differ-solar = Panneaux solaires
differ-tilt = Inclinaison
differ-facing = Orientation
differ-mounting = Pose des panneaux
differ-controller = Régulateur
differ-shade = Ombre à midi
differ-driving-charger = Recharge en roulant
differ-driving-every = Jours de route
differ-driving-time = Temps de route
differ-hook-up-charger = Chargeur 230 V
differ-hook-up-every = Branchement 230 V
differ-other = Autres sources
differ-place = Lieu
differ-arrival = Arrivée
differ-nights = Nuits voulues
differ-air = Température moyenne
differ-heated-to = Température de chauffage
differ-use-factor = Consommation, d’après les relevés sur place
differ-sun-factor = Soleil, d’après les relevés sur place
value-absent = –
value-yes = oui
value-every = { $n ->
    [one] chaque jour
   *[other] tous les { $n } jours
}
value-relay = coupleur-séparateur, { $limit }
alternatives-title = Qu’est-ce qui ferait la différence ?
alternative-as-it-is = En l’état
alternative-battery = Une deuxième batterie comme la vôtre
alternative-lithium = Lithium (LiFePO4), même capacité
alternative-panel = Un deuxième panneau comme le vôtre
alternative-drive = Une heure de route un jour sur deux
alternative-drive-charger = Un chargeur DC-DC et une heure de route un jour sur deux
alternative-lasts = { $sure_n ->
    [one] { $sure } nuit sûre
   *[other] { $sure } nuits sûres
}. { $n ->
    [one] Probabilité de tenir { $n } nuit : { $chance }
   *[other] Probabilité de tenir { $n } nuits : { $chance }
}
