# The answer.
answer-name = La réponse
answer-none = Ajoutez ce que vous utilisez : vos nuits s’afficheront ici.
answer-nights = { $n ->
    [one] nuit
   *[other] nuits
}
answer-more = ou plus
answer-sure = sur batterie, neuf fois sur dix
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
answer-balance = Une journée moyenne
answer-drains = Ce qui consomme le plus
answer-usable-share = { $share } de la capacité utilisable
answer-by-night = Nuit par nuit
answer-certainty = Peut-on s’y fier ?
moment = { $weekday } { $date } à { $time }
drawer-inverter = Convertisseur
drawer-inverter-idle = Convertisseur, sans rien de branché
drawer-electronics = Régulateur solaire et électronique de la batterie
balance-sun = Apport solaire
balance-driving = En roulant
balance-hook-up = Branchement secteur
balance-other = Autres sources
balance-loads = Appareils
balance-inverter = Perdu dans le convertisseur
balance-electronics = Régulateurs et électronique de la batterie
balance-battery-losses = Perdu dans la batterie
balance-stored = Variation de la réserve de la batterie
balance-unused-sun = Soleil non utilisé, batterie pleine ou froide
balance-unmet = Demandé, mais indisponible
night-caption = Chaque nuit par météo moyenne ; la chance porte sur toutes les météos possibles
night-head-night = Nuit du
night-head-chance = Chance de la passer
night-head-lowest = État de charge le plus bas
night-head-sun = Apport solaire
night-head-use = Consommé
answer-notes = Bon à savoir
note-cut-out = { $name } se couperait pour tension basse à partir du { $when } : { $volts } à ses bornes, alors qu’il reste { $soc } dans la batterie. La prévision fait comme si la marche continuait.
note-cold-lock = Pendant { $hours }, le soleil ou un chargeur a proposé de l’énergie à une batterie lithium sous 0 °C, qui n’a rien pris. Ne la chargez jamais sous 0 °C, sauf si son fabricant l’autorise.
note-cold-capacity = Au plus froid, la batterie donne { $share } de sa capacité nominale : la limite remonte.
note-unmet = Vide à partir du { $when } : ce qui est demandé ensuite n’est plus disponible.
note-unused-sun = En moyenne, { $amount } de soleil par jour arrivent sur une batterie pleine. Faites tourner les gros appareils vers midi.
note-no-inverter = Un appareil passe par un convertisseur, mais aucun n’est saisi sous « Énergie ».
note-fuel = Les autres sources brûlent { $litres } L de carburant pendant le séjour. N’en faites jamais tourner une dans un espace fermé ni à proximité : le monoxyde de carbone tue.
sure-own = Soleil d’après vos propres chiffres mensuels, supposés justes à ±{ $accuracy } près.
sure-grid = Soleil d’après des mesures par satellite, de 2006 à 2025 ({ $credit }), à environ ±{ $accuracy } près pour la moyenne d’un mois.
sure-region = Soleil d’après des valeurs habituelles pour { $name }, à { $distance } km, non mesurées : à environ ±{ $accuracy } près. Vos propres chiffres mensuels sous « Séjour » seraient meilleurs.
sure-latitude = Soleil estimé d’après la seule latitude, à environ ±{ $accuracy } près. Saisissez vos propres chiffres mensuels sous « Séjour ».
sure-odds = Deux mille météos possibles sont simulées pour vos dates. Comparées à vingt années mesurées, les chances se sont vérifiées à 5 à 10 points près ; aucune prévision à si longue échéance ne fait mieux.
sure-no-chance = La météo ne change rien ici : pas de panneau, ou la météo de chaque jour est donnée.
sure-average = La courbe et le tableau montrent la météo moyenne ; la bande ombrée et les lanternes montrent les chances.
sure-limits = La neige sur le panneau, ainsi que l’ombre et tout ce que vous n’avez pas saisi, ne sont pas pris en compte. C’est une estimation, pas une promesse : gardez une seconde source pour tout ce qui est médical.
chart-mark-restart = À partir du relevé
night-head-volts = Tension la plus basse, plus gros appareil en marche
flow-title = Où va l’énergie d’une journée moyenne
flow-panels = Lumière sur les panneaux
flow-from-battery = Pris dans la réserve de la batterie
flow-shade-glass = Ombre, reflets sur le verre
flow-heat-low-light = Chaleur, lumière faible
flow-dirt-wires = Saleté, disparités, câbles
flow-controller = Conversion du régulateur solaire
flow-charging-cable = Câble de charge depuis le moteur
flow-charging = Pertes de charge
flow-resistance = Résistance de la batterie
flow-self-discharge = Autodécharge
flow-conversion = Convertisseur, pertes de conversion
flow-battery-heating = Chauffage de la batterie
flow-direct-loads = Appareils sur la batterie
flow-mains-loads = Appareils sur le convertisseur
flow-into-battery = Stocké dans la batterie
