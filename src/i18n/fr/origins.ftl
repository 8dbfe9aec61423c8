# D’où viennent les chiffres sous la réponse, au toucher.
origins-hint = Touchez un chiffre pour voir comment il est calculé.
from-balance = Moyennes sur tout le séjour, de l’arrivée au départ, par temps moyen.
from-total = Ce que tous les appareils activés plus bas prélèvent sur la batterie en une journée entière de ce séjour, pertes du convertisseur comprises.
from-sun = À leur puissance nominale, vos { $peak } de panneaux donneraient { $light } par jour sous cette lumière. { $lost } sont perdus : ombre, verre, chaleur, saleté, câbles et régulateur. La batterie ne peut pas prendre { $unused }.
from-sun-snow = La neige sur les panneaux prend { $amount } de ces pertes. C’est estimé d’après la température et l’inclinaison, si personne ne les dégage. Dégagez-les seulement depuis le sol : ne montez jamais sur un toit verglacé.
from-driving = { $sum } fournis par le moteur pendant que vous roulez, répartis sur { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}. Les trajets se règlent sous « Séjour » et « Énergie ».
from-hook-up = { $sum } fournis par le chargeur 230 V, répartis sur { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}. Les branchements se règlent sous « Séjour » et « Énergie ».
from-other = { $sum } fournis par les autres sources sous « Énergie », répartis sur { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}.
from-loads = Ce que consomment les appareils activés sous « Appareils », heure par heure, aux températures de ces jours.
from-loads-direct = Directement sur la batterie : { $amount } par jour.
from-loads-mains = Sur les prises du convertisseur : { $amount } par jour.
from-inverter-idle = Du seul fait d’être allumé : { $amount } par jour.
from-inverter-conversion = Pertes de conversion : { $amount } par jour.
from-electronics = Les régulateurs solaires et le BMS consomment { $power }, jour et nuit.
from-heating = Chauffage de la batterie : { $amount } par jour.
from-charging = Pertes à la charge : { $amount } par jour.
from-charging-flooded = Les sources divergent sur les batteries à électrolyte liquide. De la moitié à presque pleine, il faut 1,1 à 1,5 Ah pour 1 Ah stocké. Retenu ici : 1,3 Ah.
from-resistance = Pertes dans la résistance de la batterie : { $amount } par jour.
from-cables = Pertes dans les câbles de la batterie : { $amount } par jour.
from-self-discharge = Autodécharge : { $amount } par jour.
from-stored = Par temps moyen, la batterie passe de { $from } à l’arrivée à { $to } au départ : { $sum } en { $days_n ->
    [one] { $days } jour
   *[other] { $days } jours
}. Un signe moins veut dire que la batterie donne plus qu’elle ne reçoit.
from-unused-sun = Ce que les panneaux auraient pu fournir si la batterie avait eu de la place. Ce n’est pas compté dans le total.
from-unmet = La batterie était déjà vide. Cette énergie n’a jamais été fournie et n’est pas comptée dans le total.
from-idle = Ce que consomme le convertisseur allumé sans rien alimenter, pendant les heures saisies sous « Énergie ».
from-load = { $how }. Source du chiffre : { $known }.
from-load-air = Plus il fait chaud, plus il tourne : { $share } du temps ces jours-là.
from-load-inverter = Ce que le convertisseur consomme pour l’alimenter est compris.
from-load-standby = Dont, entre les utilisations : { $amount }.
from-load-corrected = D’après vos relevés, vous consommez { $share } de ce que prévoit la liste.
from-load-where = À modifier sous « Appareils ».

# Usage d’un appareil et origine de sa valeur, en peu de mots.
summary-inverter = via le convertisseur
summary-always = toujours allumé
summary-heating = selon le froid
summary-cooling = selon la chaleur
summary-driving = en roulant
summary-arrival = { $time } à l’arrivée
summary-leaving = { $time } au départ
summary-duty = { $share } du temps
summary-charges = { $charge } { $days_n ->
    [one] tous les { $days } jour
   *[other] tous les { $days } jours
}
summary-uses = { $times } × { $each }
learned-meter = Mesuré
learned-spec = Fiche technique
learned-label = Plaque signalétique
learned-estimate = Estimation
