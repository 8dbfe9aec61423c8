# Appliances.
loads-title = Ce que vous utilisez
loads-none = Rien pour l’instant. Ajoutez ce que vous avez à bord, en deux appuis chacun.
loads-add = Ajouter un appareil
loads-full = La liste contient { $most } appareils au maximum.
load-count-it = Compter { $name }
load-deleted = Supprimé : { $name }
load-name = Nom
load-learned = D’où vient ce chiffre ?
load-quantity = Nombre
load-feed = Alimenté par
load-more = Veille, pointe, coupure, groupe
load-group = Groupe
load-done = Terminé
load-duplicate = Dupliquer
load-delete = Supprimer
load-standby = Consommation hors utilisation
load-standby-hint = Pour chacun, tant qu’il reste branché.
load-spread = Erreur possible
load-spread-hint = Vide : l’erreur habituelle selon la provenance du chiffre.
load-surge = Pointe de démarrage (× marche)
load-cut-out = Se coupe à basse tension
load-cut-out-hint = Comme beaucoup de frigos à compression et de chauffages. Valeurs pour 12 V ; doublées en 24 V. La prévision dit quand cela arriverait, et fait comme si la marche continuait.
load-cut-out-off = Arrêt sous
load-cut-out-on = Reprise au-dessus de
load-driving-only = Prévu pour fonctionner moteur tournant seulement : à l’arrêt, il vide une batterie en quelques heures.
load-counted-elsewhere = La partie « Énergie » demande le même chiffre. Saisissez-le à un seul endroit.
load-no-inverter = Les appareils secteur ont besoin d’un convertisseur, et aucun n’est saisi.
load-enter-inverter = Saisir le convertisseur

group-cold = Frigo et congélateur
group-heat = Chauffage
group-air = Ventilation et air
group-water = Eau
group-light = Éclairage
group-screens = Écrans et son
group-net = Internet
group-health = Santé
group-kitchen = Cuisine
group-body = Cheveux, dents, linge
group-tools = Outils et vélos
group-vehicle = Véhicule
group-standby = Veille
group-other = Divers

feed-dc = Batterie
feed-inverter = Convertisseur

draw-title = Consommation en marche, par appareil
draw-power = Puissance
draw-current = ou courant
draw-volts = sous
draw-hint = Saisissez l’un ou l’autre, le second suit. Une puissance (W) n’est pas une quantité d’énergie (Wh).
draw-hint-mains = Saisissez l’un ou l’autre, le second suit. Tous deux côté secteur ; les pertes du convertisseur sont ajoutées.
draw-hint-energy = Ici, cela donne seulement la durée ; c’est l’énergie indiquée plus bas qui compte.

use-title = Comment vous l’utilisez
use-rule = Règle
use-daily = Une durée par jour
use-always = Toujours allumé
use-duty-air = Thermostat, selon la météo
use-duty = Thermostat, part du temps
use-charges = Recharge un appareil
use-litres = Pompe de l’eau
use-uses = Brèves utilisations
use-energy = Énergie par jour connue
use-hours = Heures par jour
use-minutes = ou minutes par jour
use-duty-at-25 = Part du temps à 25 °C
use-duty-at-25-hint = Elle suit la température du lieu et du mois.
use-duty-share = Part du temps en marche
use-every-days = Une charge complète tous les
use-cell = Sa batterie
use-cell-hint = En mAh, comme imprimé dessus.
use-cell-volts = Tension de cette batterie
use-cell-volts-hint = Téléphones : environ 3,85 V, pas les 5 V de la prise.
use-charger = Rendement du chargeur
use-water = Eau par jour
use-flow = Débit de la pompe
use-twice = Pompée deux fois
use-twice-hint = Une fois du bidon vers le réservoir, une fois au robinet.
use-times = Fois par jour
use-seconds = Durée de chacune
use-energy-a-day = Énergie par jour
use-energy-hint = En Wh : une quantité, comme l’affiche un compteur au bout de 24 heures.

window-title = Quand
window-any = N’importe quand
window-day = En journée
window-evening = Soir
window-night = Nuit
window-morning = Matin
window-own = Mes horaires
window-from = De
window-to = À
window-too-short = Il tourne { $time } par jour, plus longtemps que ces horaires. Il les remplit, et le reste est réparti sur les autres heures.

add-title = Ajouter un appareil
add-search = Chercher : frigo, téléphone…
add-found = { $n ->
    [one] { $n } trouvé
   *[other] { $n } trouvés
}
add-nothing = Rien trouvé. Ajoutez un appareil vierge et donnez-lui un nom.
add-blank = Vierge
add-done = Terminé
add-added = Ajouté : { $name }
add-in-list = { $n } dans votre liste
