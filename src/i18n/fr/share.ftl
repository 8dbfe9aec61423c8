# Setups, links, files, storage.

setups-title = Vos installations
setups-none = Aucune pour l’instant. L’exemple devient le vôtre à la première modification, et reste alors dans ce navigateur.
setups-new = Nouvelle, vide
setups-new-example = Nouvelle d’après l’exemple
setups-duplicate = Copie de celle-ci
setups-delete = Supprimer { $name }
setup-name = Nom de l’installation à l’écran
setup-new-name = Nouvelle installation

link-title = Lien
link-out = Tout ce qui est à l’écran, en un lien
link-length = { $n } caractères.
link-long = C’est long pour une messagerie : certaines le coupent. Un fichier est plus sûr.
link-too-long = Cette installation donnerait un lien de { $n } caractères ; au-delà de { $limit }, les messageries et les vieux logiciels le coupent. Transmettez-la en fichier.
link-copy = Copier le lien
link-hand-on = Partager…
link-privacy = Le lien porte toute l’installation derrière son signe # ; cette partie reste dans les navigateurs et n’est jamais envoyée au serveur. Le lieu est arrondi à 0,1 degré (jusqu’à 6 km d’écart), mais son nom, les dates et tous les autres noms sont transmis tels quels. Qui a le lien peut les lire.
link-in = Collez un lien, ou un texte qui en contient un
link-in-open = Ouvrir le lien
copied = Copié.
copy-by-hand = Le navigateur ne laisse pas la page copier. Le texte est sélectionné : copiez-le à la main.
hand-on-failed = L’appareil n’a pas pu partager. Copiez plutôt le lien.
qr-title = Pour le téléphone d’à côté : code QR
qr-name = Code QR du lien
qr-none = Ce lien est trop long pour un code QR.
qr-dense = Un lien long donne un code dense. Approchez le téléphone, ou augmentez la luminosité de l’écran.

file-title = Fichier
file-about = Un fichier emporte tout, exactement et quelle que soit la taille.
file-save = Enregistrer cette installation en fichier
file-save-all = Enregistrer toutes les installations en un fichier
file-open = Ouvrir un fichier
file-drop = Ou déposez-le n’importe où sur la page. Ses installations s’ajoutent aux vôtres ; rien n’est remplacé.
aside-there = Un élément illisible est mis de côté dans ce navigateur.
aside-drop-title = Le retirer de ce navigateur
aside-drop-about = Enregistrez-le d’abord en fichier. Retiré ici, il est perdu.
aside-drop = Le retirer pour de bon

post-card = Transmettre la réponse
post-text = En texte, pour un forum ou un message
post-pictures = En image
post-tables = En tableaux pour un tableur
post-markup = Ce que le forum comprend
post-plain = Texte simple
post-markdown = Markdown
post-bbcode = BBCode
post-field = Le texte
post-copy = Copier le texte
post-title = { $name } : combien de temps la batterie tiendra-t-elle ?
post-nights = Nuits sur batterie
post-nights-value = { $n }, 9 fois sur 10 (voulues : { $asked })
post-nights-open = { $n } ou plus, 9 fois sur 10 (voulues : { $asked })
post-chance = Probabilité de tenir tout le séjour
post-first-low = Au-dessus de votre limite, 9 fois sur 10, jusqu’au
post-lowest = État de charge, 9 fois sur 10, jamais sous
post-where = Où
post-when = Quand
post-when-value = { $n ->
    [one] à partir du { $date }, { $n } nuit
   *[other] à partir du { $date }, { $n } nuits
}
post-loads = Appareils
post-loads-count = { $n }
post-loads-need = { $n ->
    [one] { $n } appareil ; { $need } pris à la batterie
   *[other] { $n } appareils ; { $need } pris à la batterie
}
post-battery = Batterie
post-battery-value = { $capacity }, { $volts } V, { $kind } ; de { $from } à { $to }
post-solar = Panneaux
post-note = Une estimation de Nightbank, pas une promesse.
post-link = Ouvrir dans Nightbank
picture-outlook = La prévision (PNG)
picture-ranking = Ce qui consomme le plus (SVG)
picture-about = Les deux montrent les noms que vous avez donnés, ainsi que le lieu et la date du séjour.
picture-outlook-file = prévision
picture-ranking-file = ce qui consomme le plus
csv-loads = Appareils (CSV)
csv-days = Jours (CSV)
csv-about = Avec les séparateurs de votre langue ; les tableurs courants les ouvrent d’un double clic. Les jours sont par temps moyen.
csv-loads-file = appareils
csv-days-file = jours
csv-name = Appareil
csv-group = Groupe
csv-quantity = Nombre
csv-draw = Puissance d’un seul (W)
csv-current = Courant d’un seul (A)
csv-feed = Alimenté par
csv-usage = Utilisation
csv-per-day = Énergie par jour à la batterie (Wh)
csv-standby = Dont hors utilisation (Wh)
csv-of-need = Part du besoin du jour (%)
csv-enabled = Compte (1) ou non (0)
csv-feed-battery = batterie
csv-feed-inverter = convertisseur
csv-mean = moyenne sur la journée
csv-date = Date
csv-weather = Météo
csv-air = Température moyenne de l’air (°C)
csv-used = Consommé (Wh)
csv-sun = Du soleil (Wh)
csv-driving = En roulant (Wh)
csv-hook-up = Du branchement 230 V (Wh)
csv-other = D’autres sources (Wh)
csv-soc-low = État de charge le plus bas (%)
csv-soc-end = État de charge à la fin (%)
print-button = Imprimer sur une page
print-failed = Le navigateur n’a pas pu imprimer.
print-setup = Ce sur quoi repose le calcul
print-note = Une estimation de Nightbank, pas une promesse : l’ombre et tout ce qui n’est pas saisi ne sont pas pris en compte. Les notices des fabricants et les règles locales priment. Le code ouvre cette installation sur un téléphone ; les noms et les dates sont transmis avec.
