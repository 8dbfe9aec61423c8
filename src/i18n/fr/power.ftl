# Battery and what charges it.
power-title = Batterie et recharge
counts-in = Pris en compte
per-12-volts = Valeur pour 12 V ; doublée en 24 V.

bank-title = Batterie
bank-chemistry = Type
chemistry-flooded = Plomb ouvert (liquide)
chemistry-agm = AGM
chemistry-gel = Gel
chemistry-lithium = LiFePO4
bank-capacity = Capacité d’une batterie
bank-parallel = Nombre en parallèle
bank-system = Système
system-12 = 12 V
system-24 = 24 V
bank-label = Sur l’étiquette : { $ah } sous { $volts }
bank-real-voltage = Tension réelle, de pleine à vide
bank-aged = Perdu avec l’âge
bank-kept-back = Réserve sous { $lowest }
bank-usable = Utilisable à { $at }
bank-usable-trip = À l’heure la plus froide d’une journée type de ce séjour, la batterie est à environ { $at }. { $wh } sont alors utilisables.
from-label = Ce que promet l’étiquette : { $ah } × { $volts }. Ce n’est pas encore ce qui est utilisable.
from-real-voltage = De pleine à vide, ce type de batterie fournit en moyenne { $mean }, et non { $volts }.
from-aged = Après vieillissement, il en reste { $health }, comme saisi sous « État de santé ».
from-kept-back = Ce qui est sous { $lowest }, votre limite, reste dans la batterie.
from-usable = Ce qui reste du chiffre de l’étiquette après les lignes ci-dessus, en décharge lente. Le froid et les forts courants le réduisent.
bank-ventilation = Pendant la charge, la règle habituelle pour les batteries stationnaires (EN IEC 62485-2, ex-EN 50272-2) demande { $air } d’air frais par heure. Cela fait une ouverture de { $area } en bas et une autre en haut. Dans un véhicule, la notice du fabricant et les règles pour les véhicules priment.
bank-usable-fast = Sous un fort courant, une partie de la charge d’une batterie au plomb reste inaccessible tant que la batterie ne s’est pas reposée.
bank-lowest = Votre limite
bank-lowest-usual = En général : { $lowest }.
bank-start = Charge à l’arrivée
bank-health = État de santé
bank-place = Où se trouve la batterie
bank-inside = Dans la cellule
bank-locker = Dans un coffre
bank-outside = À l’extérieur
bank-heated = Chauffée pour la charge
bank-heated-hint = Un tapis chauffant ou un chauffage intégré maintient les cellules au-dessus de { $temp_0 } dès qu’une charge est possible.
bank-cold-allowed = Charge sous { $temp_0 } admise par le fabricant
bank-cold-allowed-hint = Seulement si sa fiche technique le dit.
bank-block = Chaque batterie fait
block-6 = 6 V
block-12 = 12 V
block-24 = 24 V
bank-cable = Résistance des câbles de batterie
bank-cable-length = Câble, longueur aller
bank-cable-size = Section du câble
bank-cable-take = Calculer la résistance d’après longueur et section
bank-cable-hint = Aller et retour, de la batterie au point d’où partent les appareils.

solar-title = Panneaux solaires
solar-none = Aucun panneau. Ajoutez ceux du toit, puis, à part, un panneau mobile.
solar-add = Ajouter des panneaux
solar-number = Groupe de panneaux { $n }
solar-deleted = Supprimé : groupe de panneaux { $n }
solar-delete = Supprimer ce groupe
solar-duplicate = Dupliquer ce groupe
solar-name = Nom
solar-peak = Puissance crête
solar-tilt = Inclinaison
solar-tilt-hint = 0 à plat, 90 à la verticale.
solar-facing = Orientation
solar-facing-degrees = ou en degrés
solar-facing-hint = Depuis le nord, sens horaire : 180 = sud.
compass-n = Nord
compass-ne = Nord-est
compass-e = Est
compass-se = Sud-est
compass-s = Sud
compass-sw = Sud-ouest
compass-w = Ouest
compass-nw = Nord-ouest
solar-controller = Régulateur
controller-mppt = MPPT
controller-pwm = PWM
solar-mounting = Pose
mounting-glued = Collé à plat
mounting-gap = Avec lame d’air
mounting-rack = Sur châssis, ventilé
solar-shade = Ombre
shade-hint = Part perdue, de 0 à 100 %. Un arbre ou un mur côté soleil de midi coûte le plus.
shade-morning = Soleil direct avant 10 h
shade-midday = Soleil direct de 10 h à 14 h
shade-afternoon = Soleil direct après 14 h
shade-sky = Ciel masqué
solar-efficiency = Rendement du régulateur
solar-low-light = Perte par faible lumière, à 200 W/m²
solar-dirt = Saleté sur le verre
solar-wiring = Pertes dans les câbles
solar-mismatch = Pertes de désappariement
solar-temperature = Coefficient de température
solar-temperature-hint = Sur la fiche technique, en général −0,3 à −0,45 %/K.
solar-cold-volts = Panneaux en série : au plus froid ici ({ $cold }), comptez { $share } de tension en plus que la Voc de la plaque. La somme doit rester sous la tension d’entrée maximale du régulateur, sinon il est détruit.
solar-vmp = Tension à puissance maximale
solar-vmp-hint = Vmp, sur la plaque : celle du panneau, ou de tous s’ils sont en série. Vide : 18,2 V par tranche de 12 V.
solar-self-use = Puissance absorbée par le régulateur

inverter-title = Convertisseur
inverter-fitted = Un convertisseur est installé
inverter-continuous = Puissance continue
inverter-surge = Puissance de pointe (quelques secondes)
inverter-idle = Consommation à vide
inverter-idle-usual = Valeurs usuelles pour cette puissance : { $low } à { $high } W sans rien de branché.
inverter-switching = Allumé
inverter-when-used = Seulement quand il sert
inverter-all-day = Jour et nuit
inverter-power-save = En veille s’il ne sert pas
inverter-asleep = Puissance absorbée en veille
inverter-missing = { $n ->
    [one] Un appareil a besoin de 230 V, mais aucun convertisseur n’est installé. Il est compté comme s’il y en avait un.
   *[other] { $n } appareils ont besoin de 230 V, mais aucun convertisseur n’est installé. Ils sont comptés comme s’il y en avait un.
}
inverter-current = Courant de batterie à pleine puissance
inverter-at-tenth = Rendement à { $watts }
inverter-idle-day = Laissé allumé sans rien de branché
inverter-contradiction = Ces deux chiffres se contredisent : avec cette consommation à vide, le rendement à pleine puissance est au mieux de { $most }. C’est la consommation à vide qui est retenue.
inverter-efficiency = Rendement à pleine puissance
inverter-efficiency-hint = Consommation à vide comprise. Les fiches techniques donnent souvent la meilleure valeur, pas celle-ci.
inverter-cut-out = Se coupe sous
inverter-cut-out-hint = Valeur pour 12 V ; doublée en 24 V. La prévision montre quand cela arriverait, mais suppose que tout continue de fonctionner.

driving-title = Recharge en roulant
driving-fitted = Le moteur charge la batterie
driving-charger = Recharge par
charger-dc-dc = Chargeur DC-DC (booster)
charger-relay = Coupleur-séparateur
driving-amps = Courant de charge
amps-hint = Son courant maximal. Une batterie pleine en accepte moins.
driving-every = Trajet tous les
driving-minutes = Durée de chaque trajet
driving-from = Départ à
driving-taper = Une batterie au plomb presque pleine prend peu en une heure de route. Son dernier cinquième demande de longues heures.
driving-days-hint = Chaque jour peut se modifier sous « Séjour ».
relay-alternator = Tension de l’alternateur
relay-length = Câble, longueur aller
relay-size = Section du câble
relay-limit = Courant maximal du circuit
relay-smart = Alternateur intelligent (piloté)
relay-smart-hint = Baisse parfois sa tension, comme sur beaucoup de véhicules depuis 2015 environ.

hook-up-title = Branchement 230 V
hook-up-fitted = Un chargeur 230 V est installé
hook-up-amps = Courant de charge
hook-up-every = Branchement tous les
hook-up-from = Branché à partir de
hook-up-hours = Durée du branchement
hook-up-through = Les appareils 230 V sont alimentés par la borne
hook-up-through-hint = Tant que vous êtes branché, ils n’utilisent ni batterie ni convertisseur.

other-title = Autres sources
other-none = Ni groupe électrogène, ni pile à combustible, ni éolienne.
other-add = Ajouter une source
other-number = Source { $n }
other-deleted = Supprimé : source { $n }
other-delete = Supprimer cette source
other-kind = Type
other-generator = Groupe électrogène
other-fuel-cell = Pile à combustible
other-wind = Éolienne
other-amps = Courant de charge
other-every = Fonctionnement tous les
other-from = À partir de
other-hours = Durée de fonctionnement
other-fuel = Carburant par heure
other-wind-hint = Le vent est trop local pour être prévu : saisissez votre courant moyen et vos heures.

every-words = { $n ->
    [0] jamais
    [one] chaque jour
   *[other] tous les { $n } jours, la première fois le jour { $n }
}

stages-full = De { $from } à la pleine charge, il faut environ { $full } à { $at }, les appareils prenant { $drawn } sur les { $amps }. D’abord { $bulk } à plein courant jusqu’à { $to } (charge principale, bulk), puis { $absorption } à courant décroissant (absorption).
stages-long = Partant de { $from }, la batterie n’est toujours pas pleine après quatre jours à { $at }, les appareils prenant { $drawn } sur les { $amps }.
stages-reach-bulk = En { $time }, elle arrive à { $reached }, encore en charge principale (bulk).
stages-reach-absorption = En { $time }, elle arrive à { $reached }, en absorption.
stages-reach-float = En { $time }, elle est pleine, et le chargeur la maintient ainsi (floating).
stages-starved = Il ne reste rien pour la batterie : les appareils prennent { $drawn } en même temps.
stages-cold = À { $at }, la batterie n’accepte aucune charge.

parked-open = Combien de temps la batterie tient-elle, véhicule garé ?
parked-hint = Rien ne charge et personne n’est à bord. L’autodécharge et ce qui reste allumé (traceur, alarme, horloge) vident la batterie.
parked-draw = Puissance absorbée en permanence
parked-draw-hint = Valeur calculée d’après vos appareils toujours allumés et en veille.
parked-soc = Chargée à
parked-air = Température de la batterie, si vous la connaissez
parked-air-hint = Vide : d’après l’endroit où elle se trouve et l’air habituel du lieu, mois par mois, avec le froid d’un jour sur quarante.
parked-from = Garé à partir du
parked-draw-amps = Courant correspondant
parked-drain = Consommation totale, autodécharge comprise
parked-low = Descend à votre limite après
parked-empty = Vide après
parked-until = { $days }, le { $date }
parked-days = { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}
parked-years = plus de deux ans
parked-freezes = Chargée comme ci-dessus, cette batterie gèle à { $first } ; à votre limite, à { $at } ; vide, à { $flat }.
parked-charge-by = Rechargez-la ou débranchez-la avant le { $date }.
parked-frost-from = À partir du { $date }, une nuit froide peut la geler, car elle se vide peu à peu.
parked-frost = Gelée, elle peut éclater. Gardez-la chargée, ou retirez-la avant le gel. Ne chargez jamais une batterie gelée.
parked-lithium = Une batterie lithium se stocke de préférence partiellement chargée et débranchée, selon son fabricant. Ne la chargez jamais sous { $temp_0 }.
