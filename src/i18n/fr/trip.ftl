# Where and when.
trip-title = Où et quand
place-title = Lieu
place-search = Un autre lieu
place-search-hint = Ville, ou 52.1, 5.2
place-found = { $n ->
    [one] { $n } lieu trouvé.
   *[other] { $n } lieux trouvés.
}
place-none = Aucun lieu de ce nom dans la liste. Essayez une ville plus grande à proximité, ou des coordonnées comme 52.1, 5.2.
places-coming = La liste des lieux se charge. D’ici là, seules les grandes villes sont trouvées.
places-not-fetched = La liste des lieux n’a pas pu être chargée : seules les grandes villes sont trouvées. Continuez à taper pour relancer le chargement.
place-near = près de { $town }
place-clock-set = Heure locale : { $offset }
place-figures = Coordonnées et altitude
place-latitude = Latitude
place-latitude-hint = Négative au sud de l’équateur.
place-longitude = Longitude
place-longitude-hint = Négative à l’ouest de Greenwich.
place-altitude = Altitude
place-altitude-hint = À { $height } près, c’est suffisant.
short-north = N
short-south = S
short-east = E
short-west = W
coordinates-only-one = Il manque la latitude ou la longitude. Donnez les deux, comme 52.1, 5.2.
coordinates-unclear = Impossible de savoir quel nombre est la latitude et lequel la longitude. Essayez 52.1, 5.2 ou 52.1 N 5.2 E.
coordinates-letter-o = La lettre O peut vouloir dire est ou ouest. Utilisez E ou W.
coordinates-sixtieths = Les minutes et les secondes vont de 0 à 59.
coordinates-latitude = La latitude va de −90 à 90.
coordinates-longitude = La longitude va de −180 à 180.
locate = Ma position
locate-asking = Localisation en cours…
locate-refused = L’accès à la position a été refusé. Saisissez plutôt un lieu.
locate-failed = La position n’a pas pu être déterminée. Saisissez plutôt un lieu.
locate-timed-out = La localisation a pris trop de temps. Réessayez à ciel dégagé, ou saisissez un lieu.
locate-hint = Seulement sur demande ; à { $km_10 } près ; reste sur cet appareil.
locate-missing = Ce navigateur ne donne pas la position à cette page. Saisissez plutôt un lieu.

dates-title = Dates
dates-arrival = Arrivée
dates-nights = Nuits
dates-hour = Arrivée à
dates-offset = Heures d’avance sur UTC
dates-offset-hint = Europe centrale : 1 en hiver, 2 à l’heure d’été.
dates-clock-device = Comme l’horloge du système ce jour-là : { $utc }
dates-clock-longitude = D’après la longitude : { $utc }
dates-from-to = Du { $from } au { $to }.

days-title = Jour par jour
days-hint = Pour un jour laissé sur « Inconnu », tous les temps habituels du lieu sont simulés. Sans autre indication ici, route et branchement suivent la partie « Énergie ».
days-more = { $n ->
    [one] Afficher { $n } jour de plus
   *[other] Afficher { $n } jours de plus
}
days-all = Ciel de tous les jours
day-sky = Ciel
sky-unknown = Inconnu
sky-typical = Moyenne du mois
sky-clear = Ciel dégagé
sky-mixed = Variable
sky-dull = Couvert
sky-sun = Selon la prévision météo
day-sun = Soleil ce jour-là
day-drive = Temps de route
day-hook-up = Branchement
day-hook-up-yes = Oui
day-hook-up-no = Non
as-planned = comme prévu

climate-title = Soleil et température
climate-air-region = Température de l’air d’après des valeurs usuelles, non mesurées, d’une région à { $distance } d’ici, corrigée de l’altitude. Moyennes mensuelles exactes à environ { $warmer_2 } près ; certains jours s’en écartent bien plus.
climate-air-world = Température de l’air d’après la même table, corrigée de l’altitude. Moyennes mensuelles exactes à environ { $warmer_2 } près ; certains jours s’en écartent bien plus.
climate-coming = La table climatique se charge. D’ici là, les valeurs usuelles de la région sont utilisées.
climate-not-fetched = La table climatique n’a pas pu être chargée : les valeurs usuelles de la région sont utilisées. Modifier le séjour relance le chargement.
climate-air-latitude = Température de l’air estimée d’après la latitude et l’altitude seules. L’erreur peut atteindre { $warmer_5 } ou plus.
climate-impossible = Les chiffres saisis pour { $months } sont physiquement impossibles. Les plus proches possibles sont utilisés à la place.
climate-months = Mois par mois
climate-months-caption = Soleil par jour sur sol plat, et température moyenne
climate-month = Mois
climate-own-sun = Mes propres chiffres pour le soleil
climate-own-sun-hint = Soleil sur sol plat, de n’importe quelle source. Les heures équivalent plein soleil par jour valent autant que les kWh/m² par jour. Un mois vide garde le chiffre par défaut.
own-sun-unit = Mes chiffres sont en
own-sun-daily = kWh/m² par jour
own-sun-monthly = kWh/m² par mois
climate-usual = Par défaut : { $amount }
climate-own-air = Température moyenne, jour et nuit
climate-vehicle = Véhicule
climate-vehicle-loss = Par degré de plus à l’intérieur, il perd environ { $watts } de chaleur (valeur d’usage). Le soleil et les occupants apportent environ { $warmer_3 } sans chauffage.
climate-inside = Température de chauffage, moyenne jour et nuit
climate-inside-hint = Les chauffages tiennent cette température, et un frigo placé à l’intérieur s’y trouve aussi. Vide : pas de chauffage.
climate-ground = Réflexion du sol (albédo)
climate-ground-kind = Type de sol
ground-grass = Herbe
ground-sand = Sable
ground-snow = Neige fraîche
days-each = Chaque jour séparément
climate-from = D’où viennent ces valeurs
