# Told on any part of the page: setups, links, files and storage.
notice-close = Fermer
notice-understood = Compris
adjusted = { $n ->
    [one] { $n } valeur hors limites a été corrigée.
   *[other] { $n } valeurs hors limites ont été corrigées.
}
misfits = { $n ->
    [one] Une valeur n’a pas pu être lue. Elle a été laissée de côté ou remplacée par la valeur habituelle : { $where }. Vérifiez-la.
   *[other] { $n } valeurs n’ont pas pu être lues. Elles ont été laissées de côté ou remplacées par des valeurs habituelles : { $where }. Vérifiez-les.
}
misfit-part = { $part ->
    [name] Nom
    [vehicle] Véhicule
    [loads] Appareils
    [bank] Batterie
    [inverter] Convertisseur
    [solar] Panneaux solaires
    [driving] Recharge en roulant
    [hook_up] Branchement 230 V
    [other] Autres sources
    [trip] Séjour
    [prices] Prix et poids
    [readings] Relevés sur place
    [correction] Ce que disent les relevés
    [cables] Liaisons
   *[setup] Installation
}
preview-told = Vous voyez une installation venue d’un lien : { $name }.
preview-safe = Vos propres installations sont intactes. Essayez ce que vous voulez : rien n’est enregistré tant que vous ne l’ajoutez pas à vos installations.
preview-keep = L’ajouter à mes installations
preview-take = En prendre une partie
preview-back = Revenir à mon installation
preview-back-example = Revenir à l’exemple
preview-kept = Ajoutée à vos installations.
preview-left = Modifications perdues.
link-empty = Aucun lien trouvé dans ce texte.
link-truncated = Il manque la fin de ce lien. Copiez de nouveau le lien lui-même, pas son texte abrégé par des points de suspension. Vos propres installations sont intactes.
link-newer = Ce lien vient d’une version plus récente de la page. Rechargez la page avec une connexion internet pour la mettre à jour. Vos propres installations sont intactes.
link-corrupt = Ce lien a été altéré en chemin ou n’est pas un lien de Nightbank. Demandez-le de nouveau, ou demandez un fichier. Vos propres installations sont intactes.
kept-blocked = Ce navigateur ne peut rien enregistrer pour cette page. Ce que vous saisissez sera perdu à la fermeture de la page.
kept-not-written = Les dernières modifications n’ont pas pu être enregistrées : le stockage de ce navigateur est plein ou bloqué. Elles seront perdues à la fermeture de la page.
kept-newer = Une version plus récente de la page a enregistré vos installations ici ; elles restent telles quelles. Rechargez la page pour la mettre à jour. D’ici là, toute modification sera perdue à la fermeture de la page.
kept-take-along = L’enregistrer sous forme de lien ou de fichier
kept-beside = La même installation a aussi été modifiée dans un autre onglet. Les deux versions sont gardées ; la plus ancienne s’appelle maintenant { $names }.
kept-none = Votre liste d’installations dans ce navigateur est vide.
aside-told = Des données enregistrées n’ont pas pu être lues. Elles ont été mises de côté telles quelles, pas effacées.
aside-download = Les enregistrer dans un fichier
ios-storage = Sur ce type d’appareil, les navigateurs effacent ce qu’une page a enregistré après sept jours d’utilisation sans la consulter. Une page placée sur l’écran d’accueil a son propre stockage, séparé. Enregistrez un lien ou un fichier sous « Plus » : c’est aussi ainsi que l’on transfère ses installations.
setups-deleted = Supprimée : { $name }
setups-full = Il y a de la place pour 16 installations. Supprimez-en une dont vous n’avez plus besoin, ou enregistrez-la d’abord dans un fichier.
setups-gone = Cette installation n’existe plus. Un autre onglet l’a peut-être supprimée.
setup-nameless = Installation sans nom
setup-example = Exemple
setup-outline = { $n ->
    [one] { $n } appareil
   *[other] { $n } appareils
}, { $capacity }
setup-outline-sun = { $peak } de panneaux
file-added = { $n ->
    [one] Ajouté depuis le fichier : { $names }.
   *[other] { $n } installations ajoutées depuis le fichier : { $names }.
}
file-no-room = { $n ->
    [one] { $n } installation n’a pas pu être ajoutée : la limite est de { $limit } installations.
   *[other] { $n } installations n’ont pas pu être ajoutées : la limite est de { $limit } installations.
}
file-ignored = { $n ->
    [one] { $n } champ inconnu a été ignoré : { $fields }.
   *[other] { $n } champs inconnus ont été ignorés : { $fields }.
}
file-unread = Le fichier n’a pas pu être lu.
file-not-saved = Le navigateur n’a pas pu créer le fichier.
file-empty = Le fichier est vide.
file-too-large = Le fichier fait { $size } Mio ; aucune installation ne dépasse { $limit } Mio. Il n’a pas été ouvert.
file-not-json = Le fichier est endommagé ou n’est pas un fichier de Nightbank : lecture arrêtée à la ligne { $line }, caractère { $column }. Rien n’a été importé.
file-other-format = Ce n’est pas un fichier de Nightbank. Rien n’a été importé.
file-newer = Le fichier vient d’une version plus récente de la page. Rechargez la page avec une connexion internet pour la mettre à jour.
file-no-setups = Il n’y a aucune installation dans le fichier.
file-too-many = Le fichier contient { $n } installations, c’est trop. Rien n’a été importé.
undo = Annuler
toast-close = Fermer le message
offline-ready = Fonctionne aussi hors connexion.
update-ready = Une nouvelle version est prête.
update-load = Mettre à jour maintenant
