# Setups, links, files, storage.

setups-title = Vos installations
setups-none = Aucune pour l’instant. L’exemple devient le vôtre à la première modification, et reste alors dans ce navigateur.
setups-new = Nouvelle installation vide
setups-new-example = Nouvelle installation d’après l’exemple
setups-duplicate = Dupliquer cette installation
setups-delete = Supprimer { $name }
setup-name = Nom de cette installation
setup-new-name = Nouvelle installation

link-title = Lien
link-out = Cette installation sous forme de lien
link-length = { $n } caractères.
link-long = C’est long pour une messagerie : certaines coupent les longs liens. Un fichier est plus sûr.
link-too-long = Cette installation donnerait un lien de { $n } caractères. Les messageries et les vieux logiciels coupent les liens de plus de { $limit } caractères. Transmettez-la plutôt dans un fichier.
link-copy = Copier le lien
link-hand-on = Partager…
link-privacy = Le lien contient toute l’installation après son signe # ; les navigateurs n’envoient jamais cette partie au serveur. Le lieu est arrondi à 0,1 degré (jusqu’à { $km_6 } d’écart). Son nom, les dates et tous les autres noms y figurent tels quels. Toute personne qui a le lien peut les lire.
link-in = Collez un lien, ou un texte qui en contient un
link-in-open = Ouvrir le lien
copied = Copié.
copy-by-hand = Le navigateur ne laisse pas la page copier. Le texte est sélectionné : copiez-le à la main.
hand-on-failed = Le partage n’a pas abouti. Copiez plutôt le lien.
qr-title = Code QR pour un autre téléphone
qr-name = Code QR du lien
qr-none = Ce lien est trop long pour un code QR.
qr-dense = Un lien long donne un code dense. Approchez le téléphone, ou augmentez la luminosité de l’écran.

file-title = Fichier
file-about = Un fichier contient tout, exactement, quelle qu’en soit la taille.
file-save = Enregistrer cette installation dans un fichier
file-save-all = Enregistrer toutes les installations dans un seul fichier
file-open = Ouvrir un fichier
file-drop = Ou déposez-le n’importe où sur la page. Ses installations s’ajoutent aux vôtres ; rien n’est remplacé.
aside-there = Des données illisibles sont mises de côté dans ce navigateur.
aside-drop-title = Les retirer de ce navigateur
aside-drop-about = Enregistrez-les d’abord dans un fichier. Une fois retirées, elles sont perdues.
aside-drop = Les retirer définitivement

post-card = Partager la réponse
post-text = Texte pour un forum ou un message
post-pictures = Images
post-tables = Tableaux pour un tableur
post-markup = Format
post-plain = Texte simple
post-markdown = Markdown
post-bbcode = BBCode
post-loads-title = Liste des appareils
post-loads-field = Liste à publier
post-loads-picture = En image
post-which = Quels appareils ?
post-measured = Ceux qui sont mesurés
post-all = Tous
post-field = Texte
post-copy = Copier le texte
post-title = { $name } : combien de temps la batterie tiendra-t-elle ?
post-nights = Nuits sur batterie
post-nights-value = { $n } ({ $often } ; nuits voulues : { $asked })
post-nights-open = { $n } ou plus ({ $often } ; nuits voulues : { $asked })
post-chance = Probabilité de tenir tout le séjour
post-first-low = Au-dessus de la limite, { $often }, jusqu’au
post-lowest = État de charge, { $often }, jamais sous
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
post-battery-value = { $capacity }, { $volts } V, { $kind } ; utilisée de { $from } à { $to }
post-solar = Panneaux
post-helps = Ce qui aiderait le plus
post-note = Une estimation de Nightbank, pas une promesse.
post-link = Ouvrir dans Nightbank
picture-outlook = La prévision
picture-ranking = Ce qui consomme le plus
picture-about = Les deux images montrent les noms que vous avez donnés, ainsi que le lieu et les dates du séjour.
picture-outlook-file = prévision
picture-ranking-file = ce qui consomme le plus
csv-loads = Appareils (CSV)
csv-days = Jours (CSV)
csv-about = Avec les séparateurs décimaux et de liste de votre langue : les tableurs courants les ouvrent d’un double clic. Les jours valent par temps moyen.
csv-loads-file = appareils
csv-days-file = jours
csv-name = Appareil
csv-group = Groupe
csv-quantity = Nombre
csv-draw = Puissance absorbée par chacun (W)
csv-current = Courant absorbé par chacun (A)
csv-feed = Alimenté par
csv-usage = Utilisation
csv-per-day = Énergie par jour prise à la batterie (Wh)
csv-standby = Dont entre les utilisations (Wh)
csv-of-need = Part de l’énergie du jour (%)
csv-enabled = Pris en compte (1) ou non (0)
csv-feed-battery = batterie
csv-feed-inverter = convertisseur
csv-mean = moyenne sur la journée
csv-code = Pour rouvrir dans Nightbank
csv-date = Date
csv-weather = Météo
csv-air = Température moyenne de l’air ({ $unit })
csv-used = Consommé (Wh)
csv-sun = Apport solaire (Wh)
csv-driving = En roulant (Wh)
csv-hook-up = Branchement 230 V (Wh)
csv-other = Autres sources (Wh)
csv-soc-low = État de charge le plus bas (%)
csv-soc-end = État de charge à la fin (%)
print-button = Imprimer sur une page
print-failed = Le navigateur n’a pas pu imprimer.
print-setup = Données du calcul
print-note = Une estimation de Nightbank, pas une promesse. Non compris : l’ombre et tout ce qui n’a pas été saisi. Les notices des fabricants et les règles locales priment. Le code ouvre cette installation sur un téléphone, avec ses noms et ses dates.

units-legend = Unités
units-device = Celles de mon appareil
units-metric = Métriques
units-us = États-Unis (°F, gal, ft, lb)
