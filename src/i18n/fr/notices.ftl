# Told on any part of the page: setups, links, files and storage.
notice-close = Fermer
notice-understood = Compris
adjusted = { $n ->
    [one] { $n } valeur hors limites a été ramenée dans les limites.
   *[other] { $n } valeurs hors limites ont été ramenées dans les limites.
}
preview-told = Vous voyez une installation venue d’un lien : { $name }.
preview-safe = Vos propres installations sont intactes. Essayez ce que vous voulez ; rien n’en est enregistré tant que vous ne la gardez pas.
preview-keep = L’ajouter à mes installations
preview-back = Revenir à mon installation
preview-back-example = Revenir à l’exemple
preview-kept = Ajoutée à vos installations.
preview-left = L’installation du lien a été abandonnée, avec les modifications que vous y avez faites.
link-empty = Aucun lien trouvé dans ce texte.
link-truncated = Il manque la fin de ce lien. Copiez de nouveau le lien lui-même, pas son texte abrégé avec des points. Rien de ce qui est à vous n’a été touché.
link-newer = Ce lien vient d’une version plus récente de la page. Rechargez la page en étant connecté pour la mettre à jour. Rien de ce qui est à vous n’a été touché.
link-corrupt = Ce lien a été altéré en chemin, ou n’est pas de cette page. Redemandez-le, ou demandez le fichier. Rien de ce qui est à vous n’a été touché.
kept-blocked = Ce navigateur ne peut rien enregistrer pour cette page. Ce que vous saisissez sera perdu à sa fermeture.
kept-not-written = Les dernières modifications n’ont pas pu être enregistrées : la mémoire de ce navigateur est pleine ou bloquée. Elles seront perdues à la fermeture de la page.
kept-newer = Une version plus récente de la page a enregistré vos installations ici ; elles restent telles quelles. Rechargez la page pour la mettre à jour. D’ici là, les modifications sont perdues à la fermeture de la page.
kept-take-along = Enregistrer en lien ou en fichier
kept-beside = La même installation a aussi été modifiée dans un autre onglet. Les deux versions sont gardées ; la plus ancienne s’appelle maintenant { $names }.
aside-told = Un élément enregistré ici n’a pas pu être lu. Il a été mis de côté tel quel, pas effacé.
aside-download = L’enregistrer en fichier
ios-storage = Les navigateurs de cet appareil effacent ce qu’une page a enregistré après sept jours d’utilisation sans visite de la page, et une page sur l’écran d’accueil a sa propre mémoire. Enregistrez un lien ou un fichier sous « Plus » : c’est aussi la façon de déplacer vos installations.
setups-deleted = { $name } : installation supprimée.
setups-full = Il y a de la place pour 16 installations. Supprimez-en une dont vous n’avez plus besoin, ou enregistrez-la d’abord en fichier.
setups-gone = Cette installation n’existe plus ; un autre onglet l’a peut-être supprimée.
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
    [one] { $n } autre n’a pas trouvé de place : la limite est de { $limit } installations.
   *[other] { $n } autres n’ont pas trouvé de place : la limite est de { $limit } installations.
}
file-ignored = { $n ->
    [one] { $n } champ inconnu ici a été laissé de côté : { $fields }.
   *[other] { $n } champs inconnus ici ont été laissés de côté : { $fields }.
}
file-unread = Le fichier n’a pas pu être lu sur l’appareil.
file-not-saved = Le navigateur n’a pas pu créer le fichier.
file-empty = Le fichier est vide.
file-too-large = Le fichier fait { $size } Mio ; aucune installation n’a besoin de plus de { $limit }. Il n’a pas été ouvert.
file-not-json = Le fichier est abîmé ou d’un autre type : lecture arrêtée ligne { $line }, caractère { $column }. Rien n’en a été repris.
file-other-format = Ce n’est pas un fichier de Nightbank. Rien n’en a été repris.
file-newer = Le fichier vient d’une version plus récente de la page. Rechargez la page en étant connecté pour la mettre à jour.
file-no-setups = Il n’y a aucune installation dans le fichier.
file-too-many = Le fichier contient { $n } installations, plus qu’un fichier ne peut en contenir. Rien n’en a été repris.
file-wrong-value = L’installation { $n } du fichier a une valeur du mauvais type. Rien n’en a été repris.
undo = Annuler
toast-close = Fermer le message
offline-ready = Enregistrée sur cet appareil : la page fonctionne maintenant sans réseau.
update-ready = Une nouvelle version est prête.
update-load = Mettre à jour maintenant
