# D’où viennent les chiffres sous la réponse, au toucher.
origins-hint = Touchez un chiffre pour voir d’où il vient.
from-balance = Ici, ce sont des moyennes sur le séjour par météo moyenne, de l’arrivée au départ.
from-total = Ici, c’est ce que tout ce qui est activé plus bas prend à la batterie en une journée entière de ce séjour, pertes du convertisseur comprises.
from-sun = { $peak } de panneaux ; la lumière qu’ils reçoivent donnerait { $light } par jour d’après leur plaque. { $lost } se perdent : ombre, verre, chaleur, saleté, câbles et régulateur ; { $unused } ne trouvent pas de place dans la batterie.
from-driving = { $sum } du moteur pendant que vous roulez, répartis sur { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}. Vos trajets sont sous « Séjour » et « Énergie ».
from-hook-up = { $sum } du chargeur secteur, répartis sur { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}. Vos branchements sont sous « Séjour » et « Énergie ».
from-other = { $sum } des autres sources sous « Énergie », répartis sur { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}.
from-loads = Ce que prennent les appareils activés sous « Appareils », heure par heure, à la température de ces jours.
from-loads-direct = Directement sur la batterie : { $amount } par jour.
from-loads-mains = Aux prises du convertisseur : { $amount } par jour.
from-inverter-idle = Parce qu’il est allumé, quoi qui marche : { $amount } par jour.
from-inverter-conversion = En convertissant pour ce qui marche : { $amount } par jour.
from-electronics = Les régulateurs solaires et l’électronique de la batterie prennent { $power }, jour et nuit.
from-heating = Chauffage de la batterie : { $amount } par jour.
from-charging = À la charge : { $amount } par jour.
from-charging-flooded = Les sources divergent sur les batteries à électrolyte liquide : de la moitié à presque plein, il faut 1,1 à 1,5 Ah pour chaque 1 Ah stocké. Compté ici : 1,3 Ah.
from-resistance = Dans la résistance de la batterie : { $amount } par jour.
from-cables = Dans les câbles depuis la batterie : { $amount } par jour.
from-self-discharge = Par autodécharge : { $amount } par jour.
from-stored = De { $from } à l’arrivée à { $to } au départ, par météo moyenne : { $sum } en { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}. Sous zéro, la batterie donne plus qu’elle ne reçoit.
from-unused-sun = Ce que les panneaux auraient pu donner si la batterie l’avait pris. Ce n’est pas dans la somme.
from-unmet = La batterie était vide à ce moment. Ce n’a jamais été fourni et n’est pas dans la somme.
from-idle = Ce que prend le convertisseur allumé sans rien alimenter, pendant les heures indiquées sous « Énergie ».
from-load = { $how }. D’où vient la valeur : { $known }.
from-load-air = Plus l’air est chaud, plus il tourne : ces jours-là { $share } du temps.
from-load-inverter = Les pertes du convertisseur sont comprises.
from-load-standby = Dont entre les utilisations : { $amount }.
from-load-corrected = Vos relevés sur place portent votre consommation à { $share } de la liste.
from-load-where = Cela se change sous « Appareils ».

# Usage d’un appareil et origine de sa valeur, en peu de mots.
summary-inverter = via le convertisseur
summary-always = toujours allumé
summary-heating = selon le froid
summary-cooling = selon la chaleur
summary-driving = en roulant
summary-duty = { $share } du temps
summary-charges = { $charge } { $days_n ->
    [one] tous les { $days } jour
   *[other] tous les { $days } jours
}
summary-uses = { $times } fois { $each }
learned-meter = Mesuré
learned-spec = Fiche technique
learned-label = Plaque signalétique
learned-estimate = Estimé
