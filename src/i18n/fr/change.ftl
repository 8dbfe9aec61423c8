# What to change: what helps, ways to more nights, what to buy, setups side by side.
change-parts = Différentes vues
part-helps = Ce qui aide
part-ways = Plus de nuits
change-working = Simulation complète en cours…
change-failed = Calcul impossible : un chiffre de la météo ou du climat n’a pas de sens. Vérifiez sous « Séjour ».
change-beware = Attention :
change-towards-south = sud
change-towards-north = nord

helps-title = Ce qui aide le plus
helps-told = Chaque changement est simulé sur tout votre séjour, avec les mêmes nombreuses météos. Rien n’est modifié sans votre accord.
helps-now = En l’état : { $sure_n ->
    [one] { $sure } nuit
   *[other] { $sure } nuits
} neuf fois sur dix, { $even } une fois sur deux.
helps-progress = Simulation de chaque changement : { $done }
helps-none = Rien trouvé qui vaille la peine. Peut-être que la batterie tient de toute façon.
helps-more = { $n ->
    [one] { $n } autre changement
   *[other] { $n } autres changements
}
gain-mean = +{ $amount_n ->
    [one] { $amount } nuit
   *[other] { $amount } nuits
} en moyenne
gain-hours = +{ $amount } avant la limite
gain-lowest = +{ $amount } au point le plus bas
help-sure = neuf fois sur dix : { $from } → { $to_n ->
    [one] { $to } nuit
   *[other] { $to } nuits
}
help-even = une fois sur deux : { $from } → { $to_n ->
    [one] { $to } nuit
   *[other] { $to } nuits
}
help-lowest = point le plus bas : { $from } → { $to }
help-apply = Appliquer
help-apply-name = Appliquer : { $change }
toast-applied = Modifié : { $change }

ways-title = Gagner des nuits
ways-told = Dites combien de temps et avec quelle certitude la batterie doit tenir. Jusqu’à trois solutions sont cherchées : par les habitudes, en roulant ou en se branchant, et par l’achat.
ways-nights = Nuits à tenir
ways-chance = Avec une chance de
ways-now = { $n ->
    [one] En l’état, la chance de tenir { $n } nuit est de { $chance }.
   *[other] En l’état, la chance de tenir { $n } nuits est de { $chance }.
}
ways-reached = { $n ->
    [one] Votre installation tient déjà { $n } nuit à { $chance }. Demandez plus de nuits ou une meilleure chance.
   *[other] Votre installation tient déjà { $n } nuits à { $chance }. Demandez plus de nuits ou une meilleure chance.
}
ways-none = Aucune solution trouvée : rien de ce qu’on peut changer n’en rapproche.
way-habits = Habitudes et réglages
way-on-the-move = Rouler ou se brancher
way-purchase = Acheter
way-reaches = { $n ->
    [one] Tient { $n } nuit avec une chance de { $chance }
   *[other] Tient { $n } nuits avec une chance de { $chance }
}
way-falls-short = { $n ->
    [0] Pas une seule nuit à { $chance } de cette façon ; ce que vous demandez a une chance de { $reached }
    [one] Ne va que jusqu’à { $n } nuit à { $chance } ; ce que vous demandez a une chance de { $reached }
   *[other] Ne va que jusqu’à { $n } nuits à { $chance } ; ce que vous demandez a une chance de { $reached }
}
way-price = Ce que cela coûte
way-facts = Neuf fois sur dix : { $sure_n ->
    [one] { $sure } nuit
   *[other] { $sure } nuits
}. Une fois sur deux : { $even_n ->
    [one] { $even } nuit
   *[other] { $even } nuits
}. Point le plus bas par météo moyenne : { $lowest }.
way-longer = { $n ->
    [one] Choisir cette solution porte aussi le séjour à { $n } nuit.
   *[other] Choisir cette solution porte aussi le séjour à { $n } nuits.
}
way-apply = Choisir cette solution
toast-way = Modifié : { $way }

cost-free = Ne coûte rien
cost-effort = Demande un effort ou un peu moins de confort
cost-driving = { $time } de route en plus
cost-hook-up = { $n ->
    [one] { $n } nuit sur un emplacement avec branchement, au tarif du lieu
   *[other] { $n } nuits sur des emplacements avec branchement, à leur tarif
}
cost-money = Environ { $amount }, { $weight } de plus à porter
cost-money-lighter = Environ { $amount }, { $weight } de moins à porter
cost-money-only = Environ { $amount }
cost-unpriced = À acheter ; votre liste de prix n’en donne pas le prix
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
change-off-at-night = Éteindre de 23:00 à 7:00 : { $name }
change-unplug = Débrancher entre les utilisations : { $name }
change-shorter = { $name } : { $amount } de moins par jour
change-fewer = { $name } : { $amount } fois de moins par jour
change-share = { $name } : seulement { $amount } de l’usage prévu
change-warmer-fridge = { $name } : régler environ 2 °C moins froid
change-dc = { $name } : alimenter en { $amount } par un adaptateur, sans le convertisseur
change-midday = { $name } : utiliser vers midi
change-inverter-when-used = N’allumer le convertisseur que quand il sert
change-inverter-sleep = Laisser le convertisseur en veille quand rien ne tourne ({ $amount } alors)
change-tilt = { $name } : incliner à { $tilt }, face au { $facing }
change-tilt-roof = { $name } : incliner sur un support à { $tilt }, face au { $facing }
change-clean = { $name } : nettoyer le verre
change-out-of-shade = { $name } : stationner hors de l’ombre
change-mppt = { $name } : un régulateur MPPT au lieu de PWM
change-portable = Poser un panneau mobile de { $amount }, incliné à { $tilt }, face au { $facing }
change-drive = Rouler { $amount } le jour { $day } ({ $date })
change-hook-up = { $n ->
    [one] Se brancher chaque nuit
   *[other] Se brancher toutes les { $n } nuits
}
change-arrive-full = Arriver avec une batterie pleine
change-battery-inside = Mettre la batterie à l’intérieur, où il fait moins froid
change-battery-locker = Mettre la batterie dans un coffre, où il fait moins froid
change-heated = Une batterie chauffée, pour qu’elle se charge par temps de gel
change-battery = Plus de batterie du même type : { $amount }
change-lithium = LiFePO4 de même capacité : { $amount }
change-solar = Plus de solaire : { $amount }
change-dc-dc = Un chargeur DC-DC de { $amount }
change-dc-dc-drive = { $n ->
    [one] Un chargeur DC-DC de { $amount }, et une heure de route chaque jour
   *[other] Un chargeur DC-DC de { $amount }, et une heure de route tous les { $n } jours
}

part-buy = Quoi acheter
part-year = L’année
buy-title = Quoi acheter
buy-told = Les plus petits panneaux pour chaque batterie et la plus petite batterie pour chaque panneau, de sorte que vos appareils tiennent.
buy-from = Premier mois
buy-to = Dernier mois
buy-this-month = Mois du séjour
buy-progress = Essai des tailles : { $done }
buy-hard = La batterie doit tenir en { $months }, au plus dur des mois demandés.
buy-least = Le moins à acheter
buy-cheapest = Le moins cher, tout neuf
buy-lightest = Le plus léger
buy-choice = { $kind } { $battery } avec { $solar } de solaire
buy-price = { $more } en plus de ce que vous avez ; { $all } tout neuf ; { $weight } au total
buy-take = Prendre ces tailles
buy-none = Même { $solar } de solaire avec { $battery } de batterie ne suffisent pas. Demandez moins de nuits, un autre mois ou une chance plus faible, ou consommez moins.
buy-sizes = Toutes les tailles : { $kind }
buy-by-battery = { $kind } : le plus petit solaire pour chaque batterie
buy-by-solar = { $kind } : la plus petite batterie pour chaque solaire
buy-battery = Batterie
buy-solar = Solaire
buy-smallest-solar = Solaire minimum
buy-smallest-battery = Batterie minimum
buy-too-little = rien ne suffit
buy-have = ce que vous avez
buy-curve = { $kind } : batterie et solaire tout juste suffisants
buy-curve-told = Plus il y a de batterie, moins il faut de solaire. De { $least } de batterie avec { $solar } de solaire à { $most } de batterie avec { $few }.
buy-how = Appareils, route, branchement, inclinaison, ombre et âge de la batterie restent tels quels. Ajoutez une marge pour les années à venir.
prices-title = Prix et poids
prices-told = Partez de ces chiffres ronds et mettez les vôtres ; ils ne changent aucune nuit.
prices-currency = Monnaie
prices-solar = Solaire avec fixation, par 100 W
prices-solar-weight = Son poids, par 100 W
prices-lead = Batterie au plomb, par 100 Ah en 12 V
prices-lead-weight = Son poids, par 100 Ah en 12 V
prices-lithium = LiFePO4, par 100 Ah en 12 V
prices-lithium-weight = Son poids, par 100 Ah en 12 V
prices-dc-dc = Chargeur DC-DC, posé

year-title = Les nuits au fil de l’année
year-told = Le même séjour, commencé chaque mois, à cet endroit avec cette installation.
year-progress = Simulation de l’année : { $done } mois sur 12

part-compare = Côte à côte
compare-title = Installations côte à côte
compare-told = L’installation à l’écran à côté d’autres à vous, chacune avec la météo de son lieu. Mettez une copie à côté avant de changer quelque chose, et voyez l’effet du changement.
compare-with = Comparer avec
compare-copy = Mettre une copie de celle-ci à côté
compare-copy-name = Copie { $n }
compare-drop = Retirer : { $name }
compare-copies-passing = Ces copies ne peuvent pas être gardées dans ce navigateur : elles disparaissent à la fermeture de la page.
compare-full = { $most } au maximum tiennent côte à côte.
compare-this = À l’écran
compare-alone = Choisissez une autre installation, ou mettez une copie à côté et changez quelque chose.
compare-same = Elles sont identiques.
compare-working = …
compare-what = Quoi
compare-outcomes = Ce que donne chacune
compare-differences = Ce qui les distingue
compare-sure = Nuits, neuf fois sur dix
compare-even = Nuits, une fois sur deux
compare-chance = Chance de tenir les nuits voulues
compare-lowest = Point le plus bas
compare-use = Consommation par jour
compare-usable = Capacité utilisable
compare-money = Panneaux, batterie et chargeur, neufs
compare-weight = Poids des panneaux et de la batterie
compare-weight-per-kwh = Poids de batterie par kWh utilisable
compare-life-cost = Coût d’un kWh utilisable sur sa durée de vie
compare-band = { $low } à { $high }
compare-life = Plomb contre lithium à vos prix
compare-life-how = Prix rapporté à ce que la batterie donne jusqu’à épuisement de ses cycles, à la profondeur habituelle. Les cycles forment une large plage de valeurs habituelles, non celles d’un fabricant ; une batterie qui sert deux semaines par an vieillit d’abord avec le temps.
compare-batteries = Pourquoi les batteries s’en sortent différemment
compare-batteries-how = Chacune sur son séjour, par météo moyenne, à la température qu’y a la batterie. Le froid met une partie de la charge hors de portée d’une batterie au plomb et empêche une lithium de se charger ; presque pleine, une batterie au plomb se charge lentement et perd une partie de ce qu’elle reçoit.
reason-usable = Utilisable sur l’énergie de l’étiquette
reason-cold = Disponible à l’heure la plus froide
reason-fast = Rendu si vidée en 5 h au lieu de 20 h
reason-stored = Stocké de ce qui entre au-dessus de 80 %
reason-taken = Courant accepté au plus à 90 %
reason-full = Du minimum autorisé à pleine, plus gros chargeur
reason-lost = Perdu à la charge et par résistance
reason-sag = Tension la plus basse avant le niveau minimal, plus gros appareil en marche
reason-cut-out = Se couperait pour tension basse avant le niveau minimal
reason-no-charge = N’accepte aucune charge sous
reason-locked = Charge refusée à cause du froid
reason-management = Consommation de son électronique
reason-standing = Perdu en 30 jours sans servir
differ-all-loads = Tous les appareils
differ-chemistry = Type de batterie
differ-capacity = Batterie
differ-health = Santé de la batterie
differ-soc-min = Niveau minimal autorisé
differ-soc-start = Niveau à l’arrivée
differ-system = Système
differ-battery-place = Emplacement de la batterie
differ-heated = Chauffage de la batterie
differ-inverter = Convertisseur
differ-inverter-idle = Convertisseur, consommation à vide
differ-switching = Convertisseur allumé
differ-solar = Solaire
differ-tilt = Inclinaison
differ-facing = Orientation
differ-mounting = Pose des panneaux
differ-controller = Régulateur
differ-shade = Ombre à midi
differ-driving-charger = Chargeur sur le moteur
differ-driving-every = Jours de route
differ-driving-time = Temps de route
differ-hook-up-charger = Chargeur secteur
differ-hook-up-every = Branchement
differ-other = Autres sources
differ-place = Lieu
differ-arrival = Arrivée
differ-nights = Nuits voulues
differ-air = Température moyenne
differ-heated-to = Chauffé à
differ-use-factor = Consommation, apprise sur place
differ-sun-factor = Soleil, appris sur place
value-absent = –
value-yes = oui
value-every = { $n ->
    [one] chaque jour
   *[other] tous les { $n } jours
}
value-relay = coupleur-séparateur, { $limit }
