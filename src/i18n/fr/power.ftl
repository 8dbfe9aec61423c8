# Battery and what charges it.
power-title = Batterie et recharge
counts-in = Pris en compte
per-12-volts = Valeur pour 12 V ; doublée en 24 V.

bank-title = Batterie
bank-chemistry = Type
chemistry-flooded = Plomb ouvert
chemistry-agm = AGM
chemistry-gel = Gel
chemistry-lithium = LiFePO4
bank-capacity = Capacité d’une batterie
bank-parallel = Nombre en parallèle
bank-system = Système
system-12 = 12 V
system-24 = 24 V
bank-capacity-hint = Au régime de 20 h (C20).
bank-label = Sur l’étiquette : { $ah } sous { $volts }
bank-real-voltage = Tension réelle, de pleine à vide
bank-aged = Perdu avec l’âge
bank-kept-back = Réserve gardée sous { $lowest }
bank-usable = Utilisable à { $at }
bank-usable-trip = À l’heure la plus froide d’une journée habituelle de ce séjour, la batterie est à environ { $at }, et { $wh } sont disponibles.
from-label = C’est l’étiquette d’une batterie : { $ah } fois { $volts }. Elle ne dit pas encore ce qui est utilisable.
from-real-voltage = De pleine à vide, une batterie de ce type est en moyenne à { $mean }, et non à { $volts }.
from-aged = L’âge en a laissé { $health }, comme saisi sous l’état de santé.
from-kept-back = Ce qui est sous { $lowest } reste dans la batterie, comme saisi pour le niveau minimal autorisé.
from-usable = Ce qui reste de l’étiquette après les lignes ci-dessus, tiré lentement. Le froid et les forts courants en prennent une part.
bank-ventilation = Pendant la charge, la règle habituelle (EN 50272-2, IEC 62485-2) demande { $air } m³ d’air frais par heure : une ouverture de { $area } cm² en bas et une en haut. La notice du fabricant et les règles pour les véhicules priment.
bank-usable-fast = Un fort courant laisse une partie de la charge d’une batterie au plomb inaccessible tant qu’elle ne s’est pas reposée.
bank-lowest = Minimum accepté
bank-lowest-hint = D’habitude : 50 % au plomb, 10 % au lithium.
bank-start = Charge à l’arrivée
bank-health = État de santé
bank-place = Emplacement
bank-inside = Dans l’espace de vie
bank-locker = Dans un coffre
bank-outside = Dehors
bank-heated = Chauffée pour la charge
bank-heated-hint = Un tapis chauffant ou un chauffage intégré garde les cellules au-dessus de 0 °C quand un chargeur est présent.
bank-cold-allowed = Charge sous 0 °C permise par le fabricant
bank-cold-allowed-hint = Seulement si sa fiche technique le dit.
bank-more = Blocs et câble
bank-block = Un bloc fait
block-6 = 6 V
block-12 = 12 V
block-24 = 24 V
bank-cable = Résistance des câbles de batterie
bank-cable-length = Câble, longueur aller
bank-cable-size = Section du câble
bank-cable-take = Calculer la résistance d’après longueur et section
bank-cable-hint = Aller et retour, de la batterie au point où les départs se séparent.

solar-title = Solaire
solar-none = Aucun panneau. Ajoutez ceux du toit, et à part celui que vous posez au sol.
solar-add = Ajouter des panneaux
solar-number = Panneaux { $n }
solar-deleted = Supprimé : panneaux { $n }
solar-delete = Supprimer ceux-ci
solar-duplicate = Dupliquer ceux-ci
solar-name = Nom
solar-peak = Puissance-crête
solar-tilt = Inclinaison
solar-tilt-hint = 0 à plat, 90 à la verticale.
solar-facing = Orientation
solar-facing-degrees = ou en degrés
solar-facing-hint = Depuis le nord, sens horaire : 180 est le sud.
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
mounting-rack = Sur châssis
solar-shade = Ombre
shade-hint = Ce qui est perdu, de 0 à 100 %. C’est un arbre ou un mur du côté du soleil de midi qui en prend le plus.
shade-morning = Soleil direct avant 10:00
shade-midday = Soleil direct de 10:00 à 14:00
shade-afternoon = Soleil direct après 14:00
shade-sky = Ciel masqué
solar-losses = Pertes et nom
solar-efficiency = Rendement du régulateur
solar-low-light = Perdu en lumière faible (200 W/m²)
solar-dirt = Saleté sur le verre
solar-wiring = Perdu dans les câbles
solar-mismatch = Perdu en tolérances
solar-temperature = Variation avec la chaleur
solar-temperature-hint = Sur la fiche technique, d’habitude −0,3 à −0,45 %/K.
solar-vmp = Tension à la meilleure puissance
solar-vmp-hint = Vmp, sur la plaque : d’un panneau, ou de tous en série. Vide : 18,2 V par 12 V.
solar-self-use = Consommation propre du régulateur

inverter-title = Convertisseur
inverter-fitted = Un convertisseur est installé
inverter-continuous = Puissance continue
inverter-surge = Pointe, quelques secondes
inverter-idle = Consommation à vide
inverter-idle-usual = Habituel pour cette taille : { $low } à { $high } W sans rien de branché.
inverter-switching = Allumé
inverter-when-used = Seulement à l’usage
inverter-all-day = Jour et nuit
inverter-power-save = En veille s’il ne sert pas
inverter-asleep = Consommation en veille
inverter-missing = { $n ->
    [one] { $n } appareil a besoin de la tension secteur, mais aucun convertisseur n’est installé. Il est compté comme s’il y en avait un.
   *[other] { $n } appareils ont besoin de la tension secteur, mais aucun convertisseur n’est installé. Ils sont comptés comme s’il y en avait un.
}
inverter-current = Pris à la batterie à pleine puissance
inverter-at-tenth = Rendement à { $watts }
inverter-idle-day = Laissé allumé sans rien de branché
inverter-contradiction = Ces deux chiffres ne peuvent pas être vrais ensemble : avec cette consommation à vide, le rendement à pleine puissance est au mieux de { $most }. C’est la consommation qui est retenue.
inverter-more = Rendement et coupure
inverter-efficiency = Rendement à pleine puissance
inverter-efficiency-hint = Consommation propre comprise ; les fiches donnent souvent la meilleure valeur, pas celle-ci.
inverter-cut-out = Se coupe sous
inverter-cut-out-hint = Valeur pour 12 V ; doublée en 24 V. La prévision dit quand cela arriverait, et fait comme si tout continuait de marcher.

driving-title = Recharge en roulant
driving-fitted = Le moteur charge la batterie
driving-charger = Par
charger-dc-dc = Chargeur DC-DC
charger-relay = Coupleur-séparateur
driving-amps = Courant de charge
amps-hint = Ce qu’il peut donner. Une batterie pleine en prend moins.
driving-every = Roule tous les
driving-minutes = Temps de route ces jours-là
driving-from = Départ à
driving-taper = Une batterie au plomb presque pleine prend peu en une heure de route ; son dernier cinquième demande de longues heures.
driving-days-hint = Certains jours peuvent différer : voyez les jours sous « Séjour ».
relay-alternator = Tension de l’alternateur
relay-length = Câble, longueur aller
relay-size = Section du câble
relay-limit = Le circuit supporte
relay-smart = Alternateur intelligent
relay-smart-hint = Baisse parfois sa tension, comme sur beaucoup de véhicules depuis 2015 environ.

hook-up-title = Branchement secteur
hook-up-fitted = Un chargeur secteur est à bord
hook-up-amps = Courant de charge
hook-up-every = Branché tous les
hook-up-from = Branché à
hook-up-hours = Pendant
hook-up-through = Les appareils secteur passent par le branchement
hook-up-through-hint = Tant que vous êtes branché, ils contournent batterie et convertisseur.

other-title = Autres sources
other-none = Ni groupe électrogène, ni pile à combustible, ni éolienne.
other-add = Ajouter une source
other-number = Source { $n }
other-deleted = Supprimé : source { $n }
other-delete = Supprimer celle-ci
other-kind = Type
other-generator = Groupe électrogène
other-fuel-cell = Pile à combustible
other-wind = Éolienne
other-amps = Courant de charge
other-every = Tourne tous les
other-from = À partir de
other-hours = Pendant
other-fuel = Carburant par heure
other-wind-hint = Le vent est trop local pour être prévu : donnez votre courant moyen et vos heures.

every-words = { $n ->
    [0] jamais
    [one] chaque jour
   *[other] tous les { $n } jours, la première fois le jour { $n }
}

stages-full = De { $from } à pleine, il faut environ { $full } à { $at }, les appareils prenant { $drawn } sur les { $amps } : { $bulk } à plein courant jusqu’à { $to } (bulk), puis { $absorption } où la batterie prend de moins en moins (absorption).
stages-long = Partant de { $from }, la batterie n’est pas pleine à { $at } même après quatre jours, les appareils prenant { $drawn } sur les { $amps }.
stages-reach-bulk = En { $time }, elle arrive à { $reached }, encore à plein courant (bulk).
stages-reach-absorption = En { $time }, elle arrive à { $reached }, en absorption.
stages-reach-float = En { $time }, elle est pleine, et le chargeur passe en maintien (float).
stages-starved = Il ne reste rien pour la batterie : pendant ce temps, les appareils prennent { $drawn }.
stages-cold = À { $at }, la batterie n’accepte aucune charge.

parked-title = Véhicule garé, inutilisé
parked-open = Combien de temps la batterie tiendra-t-elle ?
parked-hint = Rien ne charge et personne n’est à bord. Ce qui reste allumé (traceur, alarme, horloge) et la perte propre de la batterie la vident.
parked-draw = Reste allumé
parked-draw-hint = Au départ, d’après vos appareils toujours allumés et vos veilles.
parked-soc = Chargée à
parked-air = Température de la batterie, si vous la connaissez
parked-air-hint = Vide : selon son emplacement et l’air habituel du lieu, mois par mois, avec un gel comme un jour sur quarante.
parked-from = Garé à partir du
parked-draw-amps = La même chose en ampères
parked-drain = Décharge, perte propre comprise
parked-low = Au minimum autorisé après
parked-empty = Vide après
parked-until = { $days }, le { $date }
parked-days = { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}
parked-years = plus de deux ans
parked-freezes = Chargée comme indiqué, cette batterie gèle à { $first } ; au minimum autorisé, à { $at } ; vide, à { $flat }.
parked-charge-by = Rechargez-la ou débranchez-la avant le { $date }.
parked-frost-from = À partir du { $date }, une nuit froide peut la geler, à mesure qu’elle se vide.
parked-frost = Gelée, elle peut éclater : gardez-la chargée, ou retirez-la avant le gel. Ne chargez jamais une batterie gelée.
parked-lithium = Une batterie lithium se stocke de préférence partiellement chargée et débranchée, comme le dit son fabricant, et ne doit pas être chargée sous 0 °C.
