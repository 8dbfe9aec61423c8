# Appliances.
loads-title = Ce que vous utilisez
loads-none = Rien pour l’instant. Ajoutez ce que vous avez à bord : deux appuis par appareil.
loads-add = Ajouter un appareil
loads-full = La liste contient { $most } appareils au maximum.
loads-scaled = Ajusté d’après vos relevés : { $factor }
load-count-it = Prendre en compte { $name }
load-deleted = Supprimé : { $name }
load-name = Nom
load-learned = D’où vient ce chiffre ?
load-quantity = Nombre
load-feed = Alimenté par
load-more = Plus précis
load-group = Groupe
load-done = Terminé
load-duplicate = Dupliquer
load-delete = Supprimer
load-standby = Puissance absorbée hors utilisation
load-standby-hint = Par appareil, tant qu’il reste branché.
load-spread = Marge d’erreur
load-spread-hint = Laissez vide pour la marge habituelle de ce type de source.
load-surge = Pointe de démarrage (× puissance)
load-cut-out = Se coupe si la tension est trop basse
load-cut-out-hint = Beaucoup de frigos à compression et de chauffages le font. Valeur pour 12 V ; doublée en 24 V. La prévision montre quand cela arriverait, mais suppose que l’appareil continue de fonctionner.
load-cut-out-off = Arrêt sous
load-cut-out-on = Reprise au-dessus de
load-driving-only = À n’utiliser que moteur tournant : à l’arrêt, il vide une batterie en quelques heures.
load-counted-elsewhere = La partie « Énergie » demande le même chiffre. Saisissez-le à un seul endroit.
load-no-inverter = Il faut un convertisseur.
load-enter-inverter = Le saisir
load-take-away = Le retirer
load-next = Appareil suivant

quick-cost = { $amount }, { $share } de votre consommation
quick-off = Éteint. Allumé, il prendrait { $amount }.
quick-inverter = Le convertisseur en prend { $amount }.
summary-inverter-takes = dont { $amount } pour le convertisseur

badge-no-inverter = Pas de convertisseur
badge-too-much = Trop pour le convertisseur
badge-start = Trop au démarrage
badge-battery = Trop pour la batterie
badge-off = Se coupe trop tôt
badge-inverter-off = Le convertisseur se coupe trop tôt
badge-not-with = Pas avec : { $name }
badge-not-with-told = Avec { $name }, cela fait { $running }, et jusqu’à { $starting } un instant au démarrage. C’est trop pour le convertisseur. Utilisez-les l’un après l’autre.

light-title = L’éclairage d’une soirée
light-scene = Quand ou où
light-tap = Touchez les lampes allumées.
light-kept = ses propres horaires
light-piece = { $name } { $n }
scene-morning = Matin
scene-evening = Soir
scene-night = Nuit
scene-bathroom = Salle d’eau
scene-awning = Auvent

group-cold = Frigo et congélateur
group-heat = Chauffage
group-air = Ventilation et clim
group-water = Eau
group-light = Éclairage
group-screens = Écrans et son
group-net = Internet
group-health = Santé
group-kitchen = Cuisine
group-body = Cheveux, dents, linge
group-tools = Outils et vélos électriques
group-vehicle = Véhicule
group-standby = Veille
group-other = Divers

feed-dc = Batterie
feed-inverter = Convertisseur

draw-title = Puissance absorbée en marche, par appareil
draw-power = Puissance
draw-current = ou courant
draw-volts = sous
draw-hint = Saisissez l’une ou l’autre valeur ; la seconde est calculée. La puissance (W) n’est pas l’énergie (Wh).
draw-hint-mains = Saisissez l’une ou l’autre valeur ; la seconde est calculée. Les deux côté 230 V ; les pertes du convertisseur s’y ajoutent.
draw-hint-energy = Ici, la puissance ne fixe que la durée de marche. L’énergie consommée est le chiffre ci-dessus.

use-title = Comment vous l’utilisez
use-rule = Mode d’utilisation
use-daily = Une durée fixe par jour
use-always = Toujours allumé
use-always-told = Toujours allumé.
use-duty-air = Thermostat, selon la météo
use-duty = Thermostat, part du temps fixe
use-charges = Recharge une batterie
use-litres = Pompe à eau
use-uses = Utilisations brèves
use-energy = Énergie connue par jour
use-how-long = Combien de temps par jour
use-duty-at-25 = Part du temps à { $temp_25 }
use-duty-at-25-hint = Adaptée à la température du lieu et du mois.
use-duty-share = Part du temps en marche
use-every-days = Une charge complète tous les
use-cell = Sa batterie
use-cell-hint = En mAh, comme imprimé dessus.
use-cell-volts = Tension de cette batterie
use-cell-volts-hint = Téléphones : environ 3,85 V, pas les 5 V de la prise.
use-charger = Rendement du chargeur
use-water = Eau utilisée par jour
use-flow = Débit de la pompe
use-twice = Pompée deux fois
use-twice-hint = Une fois du jerrican au réservoir, une fois au robinet.
use-times = Nombre de fois par jour
use-seconds = Durée de chaque fois
use-energy-a-day = Énergie par jour
use-energy-hint = En Wh, tels qu’un wattmètre les affiche au bout de 24 heures.
use-heating = Chauffage, selon la température
use-heating-told = Tourne autant que le froid l’exige.
use-cooling = Ventilateur ou climatiseur, selon la température
use-driving = En roulant
use-driving-hint = Il fonctionne tant que vous roulez, selon les trajets saisis sous « Énergie ».
use-once = Une fois, à l’arrivée ou au départ
use-once-when = Quand
use-once-arrival = À l’arrivée
use-once-leaving = Au départ
use-once-long = Combien de temps
use-once-hint = Cela compte ce seul jour, pas dans l’énergie d’un jour courant.
use-heat = Chaleur fournie
use-heat-hint = À pleine puissance, selon la plaque : souvent 2 000 ou 4 000 W. Le véhicule et la température voulue se règlent sous « Séjour ».
use-start = Énergie d’un démarrage
use-cooling-at-25 = Part du temps en marche par { $temp_25 } dehors
use-cooling-hint = À partir de { $temp_15 }, et de plus en plus quand il fait plus chaud.
load-place = Où il se trouve
load-inside = À l’intérieur
load-outside = Dehors, à l’air libre

window-title = Quand
window-any = N’importe quand
window-day = En journée
window-evening = Soir
window-night = Nuit
window-morning = Matin
window-own = Mes horaires
window-from = De
window-to = À
window-too-short = Il tourne { $time } par jour, plus longtemps que cette plage horaire. Le reste est réparti sur les autres heures.
window-another = Autre plage horaire
window-away = Retirer cette plage
window-nth = Plage { $n }
window-span = de { $from } à { $to }

add-title = Ajouter un appareil
add-search = Chercher : frigo, téléphone…
add-found = { $n ->
    [one] { $n } trouvé
   *[other] { $n } trouvés
}
add-nothing = Rien trouvé. Ajoutez un appareil vierge et donnez-lui un nom.
add-blank = Appareil vierge
add-done = Terminé
add-added = Ajouté : { $name }
add-usual = Ajouter avec les valeurs habituelles : { $name }
add-in-list = { $n } dans votre liste

table-door = Coller une liste
table-title = Ajouter une liste
table-back = Retour
table-paste = Lignes de votre tableur
table-paste-hint = Copiez-les avec leurs titres. Les noms seuls suffisent aussi.
table-file = Ou choisir un fichier (CSV ou texte)
table-source = D’où viennent ces chiffres ?
table-empty = Il n’y a aucune ligne.
table-too-large = C’est trop gros pour une liste d’appareils.
table-not-text = Ce n’est pas du texte. Enregistrez d’abord la feuille en CSV.
table-too-wide = La ligne { $line } a plus de { $most } cases.
table-column = Colonne { $n }
table-asked = Que veut dire « { $heading } » ?
table-mark = Combien vaut « { $cell } » ?
table-ready = { $n ->
    [one] Un appareil
   *[other] { $n } appareils
}
table-match = Type de { $name }
table-match-none = Autre chose
table-line = Ligne { $line }
table-faulty = Pas clair
table-leave = { $n ->
    [one] Laisser cette ligne de côté
   *[other] Laisser ces { $n } lignes de côté
}
table-columns = Colonnes
table-unused = Non utilisée
table-replace = Remplacer vos appareils actuels
table-wait-question = Répondez d’abord aux questions ci-dessus.
table-wait-rows = Certaines lignes ne sont pas claires : corrigez-les plus haut ou laissez-les de côté.
table-nothing = Aucun appareil à ajouter pour l’instant.
table-no-room = La liste contient { $most } appareils au plus. Décochez-en { $n }.
table-add = { $n ->
    [one] En ajouter un
   *[other] En ajouter { $n }
}
table-added = { $n ->
    [one] Un appareil ajouté
   *[other] { $n } appareils ajoutés
}
table-kind-name = Nom
table-kind-quantity = Nombre
table-kind-watts = Watts en marche
table-kind-amps = Ampères en marche
table-kind-volts = Volts
table-kind-energy-one = Wh par jour, par appareil
table-kind-energy-all = Wh par jour, au total
table-kind-charge-one = Ah par jour, par appareil
table-kind-charge-all = Ah par jour, au total
table-kind-hours = Heures par jour
table-kind-minutes = Minutes par jour
table-kind-seconds = Secondes par utilisation
table-kind-times = Fois par jour
table-kind-duty = Part du temps, %
table-kind-feed = Batterie ou convertisseur
table-kind-standby = Watts en veille
table-kind-code = Écrite par Nightbank
table-fault-no-name = Il manque le nom.
table-fault-sum = Elle additionne d’autres lignes.
table-fault-none = Pas un appareil : la prévision l’ajoute elle-même.
table-fault-unknown = Aucun chiffre, et le nom n’est pas au catalogue.
table-fault-number = { $kind } : « { $text } » n’est pas un nombre.
table-fault-unit = { $kind } : « { $text } » a une autre unité.
table-fault-range = { $kind } : { $text } n’est pas entre { $min } et { $max }.
table-fault-feed = « { $text } » : sur la batterie ou par le convertisseur ?
table-fault-day = Plus de 24 heures par jour.
table-fault-above = Il devrait marcher plus de 24 heures par jour pour autant d’énergie.
table-fault-amps = Des ampères par le convertisseur : sous combien de volts ? Ajoutez une colonne.
table-fault-length = Combien dure une utilisation ? Ajoutez une colonne.
table-fault-code = Sa dernière case est abîmée. Videz-la : les chiffres seront lus à la place.
table-note-hour = Durée absente : 1 heure par jour.
table-note-usual = Watts absents : la valeur habituelle.
table-note-disagrees = Watts et durée font { $worked } par jour, le tableau dit { $told }. Watts et durée comptent.
table-note-amps = Ampères sous { $volts }.
table-note-short = Nom raccourci.
table-note-off = Vous n’en avez pas : ajouté, mais éteint.

take-title = En prendre une partie
take-about = Cochez ce que vous voulez dans votre installation.
take-twice = Vous en avez déjà un de ce nom. Les deux restent.
take-panels = Panneaux, { $peak } : à la place des vôtres
take-battery = Batterie, { $capacity } { $kind } : à la place de la vôtre
take-add = Mettre dans mon installation
take-no-room = Plus de place pour { $n } d’entre eux dans votre liste.
take-done = Ajouté à votre installation.
