# Below the answer: where it comes from and what to know of it.
answer-balance = Une journée moyenne
answer-drains = Ce qui consomme le plus
answer-usable-share = { $share } de l’énergie utilisable
answer-by-night = Nuit par nuit
answer-certainty = Peut-on s’y fier ?
drawer-inverter = Convertisseur
drawer-inverter-idle = Convertisseur, consommation à vide
drawer-electronics = Régulateur solaire et BMS
balance-sun = Apport solaire
balance-driving = En roulant
balance-hook-up = Branchement 230 V
balance-other = Autres sources
balance-loads = Appareils
balance-inverter = Pertes dans le convertisseur
balance-electronics = Régulateurs et BMS
balance-battery-losses = Pertes dans la batterie et ses câbles
balance-stored = Variation de la charge de la batterie
balance-unused-sun = Soleil perdu : batterie pleine ou froide
balance-unmet = Demandé, mais non fourni
night-caption = Chaque nuit par temps moyen ; la probabilité porte sur tous les scénarios météo
night-head-night = Nuit du
night-head-chance = Probabilité de tenir cette nuit
night-head-lowest = État de charge le plus bas
night-head-sun = Apport solaire
night-head-use = Consommé
answer-notes = Bon à savoir
note-cut-out = { $name } se couperait à partir du { $when }, faute de tension : { $volts } à ses bornes, alors qu’il reste { $soc } dans la batterie. La prévision suppose que l’appareil continue de fonctionner.
note-cut-out-cable = La chute de tension dans son propre câble est comprise. Elle vient du « Contrôle du câblage », si vous l’y avez saisi ; sinon, 0,6 V par tranche de 12 V.
note-cold-lock = Pendant { $hours }, le soleil ou un chargeur aurait pu charger. La batterie lithium, sous { $temp_0 }, n’a rien pris. Ne la chargez jamais sous { $temp_0 }, sauf si son fabricant l’autorise.
note-cold-capacity = Au plus froid, la batterie ne donne que { $share } de sa capacité nominale : votre limite est atteinte plus tôt.
note-lead-hardly-full = Ici, la batterie n’est jamais ou presque jamais pleine. Le plomb qui reste à moitié chargé vieillit vite (sulfatation). Chargez-la à fond une fois par semaine environ, par exemple sur un branchement.
note-lead-full = La batterie est pleine environ { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
} par semaine. Le plomb en a besoin au moins une fois par semaine environ, sinon il vieillit vite (sulfatation).
note-lead-full-daily = La batterie est pleine presque chaque jour : le plomb ne vieillit pas trop tôt.
note-unmet = Batterie vide à partir du { $when } : plus rien ne fonctionne tant que rien ne la recharge.
note-unused-sun = En moyenne, { $amount } de soleil par jour sont perdus, la batterie étant pleine. Utilisez les appareils gourmands vers midi.
note-no-inverter = Un appareil passe par un convertisseur, mais vous n’en avez saisi aucun sous « Énergie ».
note-fuel = Les autres sources brûlent { $fuel } de carburant pendant le séjour. N’en faites jamais tourner une dans un espace fermé ni à proximité : le monoxyde de carbone tue.
sure-own = Soleil d’après vos propres chiffres mensuels, supposés exacts à { $accuracy } près.
sure-world = Soleil d’après la table climatique (satellites, stations météo et estimations : { $credit }). Les moyennes mensuelles sont exactes à environ { $accuracy } près.
sure-region = Soleil d’après des valeurs usuelles, non mesurées, d’une région à { $distance } d’ici. Précision : environ { $accuracy }. Mieux vaut saisir vos propres chiffres mensuels sous « Séjour ».
sure-latitude = Soleil estimé d’après la seule latitude, à environ { $accuracy } près. Saisissez vos propres chiffres mensuels sous « Séjour ».
sure-odds = Des centaines de scénarios météo sont simulés pour vos dates, avec les erreurs probables du climat et de la consommation. Comparées à des années mesurées en trois lieux, les probabilités s’écartaient de 5 points en deux lieux et de 9, par excès de prudence, au troisième. Ailleurs, prévoyez un écart de 10 points.
sure-average = La courbe et le tableau valent par temps moyen. La bande ombrée et les lanternes montrent les probabilités.
sure-limits = La neige sur les panneaux est seulement estimée, d’après la température et l’inclinaison. Non compris : l’ombre et tout ce que vous n’avez pas saisi. C’est une estimation, pas une promesse : gardez une seconde source d’énergie pour tout appareil médical.
chart-mark-restart = À partir du relevé
night-head-volts = Tension la plus basse, plus gros appareil en marche
flow-title = Où va l’énergie d’une journée moyenne
flow-panels = Lumière sur les panneaux
flow-from-battery = Pris à la batterie
flow-snow = Neige sur les panneaux
flow-shade-glass = Ombre, reflets sur le verre
flow-heat-low-light = Chaleur, lumière faible
flow-dirt-wires = Saleté, désappariement, câbles
flow-controller = Pertes de conversion (régulateur)
flow-charging-cable = Câble de charge depuis le moteur
flow-charging = Pertes de charge
flow-resistance = Résistance de la batterie
flow-self-discharge = Autodécharge
flow-conversion = Pertes de conversion (convertisseur)
flow-battery-heating = Chauffage de la batterie
flow-direct-loads = Appareils sur la batterie
flow-mains-loads = Appareils sur le convertisseur
flow-into-battery = Stocké dans la batterie
term-watt = W et Wh.
term-watt-text = Le watt (W) dit à quelle vitesse l’énergie est consommée à un instant donné, comme la vitesse d’une voiture. Le wattheure (Wh) est une quantité d’énergie, comme la distance parcourue : 20 W pendant 3 h font 60 Wh.
flow-cables = Câbles de batterie
answer-details = Détails
wish-nights = { $n ->
    [one] Vous voulez { $n } nuit
   *[other] Vous voulez { $n } nuits
}
wish-chance = { $n ->
    [one] Pour { $n } nuit : probabilité { $chance }
   *[other] Pour { $n } nuits : probabilité { $chance }
}
night-title = Nuit du { $night } : { $chance }
night-figures = Par temps moyen, l’état de charge descend à { $lowest }. Le soleil apporte { $sun } ce jour-là ; vous consommez { $used }.
