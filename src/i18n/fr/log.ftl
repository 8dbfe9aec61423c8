# A log of readings: brought, read, and what it shows.
part-log = Un journal de relevés
tool-log-told = Un tableau issu du moniteur de batterie montre ce que vous consommez la nuit, ce qui s’allume et s’éteint, et la capacité qui reste.

log-told = Apportez un tableau d’heures et de relevés, comme les moniteurs de batterie et les régulateurs solaires en enregistrent. Il ne quitte pas cet appareil : il est oublié quand vous fermez la page, et ne figure dans aucun lien ni fichier.
log-bring = Apporter le journal
log-file = Choisir un fichier
log-drop = Ou déposez un fichier ici : CSV ou texte brut.
log-paste = Ou collez ses lignes
log-read = Lire ces lignes
log-clear = Retirer le journal
log-working = Analyse du journal …
log-fault-empty = Il n’y a rien dedans.
log-fault-large = Cela dépasse 32 Mo. Enregistrez une période plus courte.
log-fault-not-text = Ce n’est pas un tableau en texte brut. Enregistrez le journal en CSV.
log-fault-wide = Ce tableau a plus de 64 colonnes. Enregistrez-en moins.

log-columns = Ce que contiennent les colonnes
log-columns-told = Vérifiez chaque colonne et corrigez au besoin.
log-rows = { $n ->
    [one] { $n } ligne.
   *[other] { $n } lignes.
}
log-above = { $n ->
    [one] { $n } ligne au-dessus des titres ne fait pas partie du tableau.
   *[other] { $n } lignes au-dessus des titres ne font pas partie du tableau.
}
log-preview = Les premières lignes
log-line = Ligne
log-column = Colonne { $n }
log-column-named = Colonne { $n } : { $name }
log-by-figures = Reconnue à ses seuls chiffres. À vérifier.
log-role-unused = Non utilisée
log-role-time = Heure
log-role-date = Date
log-role-soc = État de charge
log-role-volts = Tension de la batterie
log-role-amps = Courant de la batterie
log-role-watts = Puissance de la batterie
log-role-charging = Puissance qui entre
log-role-used = Puissance consommée
log-ask-time = Quelle colonne donne l’heure ?
log-ask-figure = Quelle colonne est un relevé ? Choisissez-en au moins une.
log-ask-order = Jour ou mois d’abord ? Ces dates se lisent des deux façons.
log-ask-mark = Virgule ou point ? Certains de ces nombres se lisent des deux façons.
log-ask-plus = Plus veut-il dire charge ou consommation ? Ce journal ne le montre pas.
log-order = En premier dans la date
log-order-day = Jour
log-order-month = Mois
log-mark = Séparateur décimal
log-mark-point = Point
log-mark-comma = Virgule
log-plus = Un relevé au-dessus de zéro veut dire
log-plus-charging = Charge
log-plus-using = Consommation
log-clock = Les heures sans fuseau sont
log-clock-camp = L’heure locale
log-clock-utc = UTC
log-left-out = { $n ->
    [one] { $n } entrée écartée
   *[other] { $n } entrées écartées
}
log-left-first = Les premières
log-left-why = Raison
log-left-cell = Contenu
log-left-no-time = Pas d’heure
log-left-time-unread = Heure non comprise
log-left-same-time = Même heure qu’une ligne précédente
log-left-no-figure = Pas de relevé
log-left-unread = { $name } : pas un nombre
log-left-range = { $name } : impossible

log-found = Ce que montre le journal
log-span = { $n ->
    [one] { $n } ligne sur { $span }, dont { $covered } sans trou.
   *[other] { $n } lignes sur { $span }, dont { $covered } sans trou.
}
log-take = Reprendre : { $what }
toast-log-taken = Repris : { $what }
log-known = Comme chez vous.
log-lacks-time = Seulement { $time } de relevés. Un jour et une nuit ou plus en disent bien davantage.
log-lacks-gaps = Il manque { $share } du temps. La suite est moins sûre.
log-lacks-power = Ni courant ni puissance : consommation, appareils et capacité n’y apparaissent pas.
log-lacks-soc = Pas d’état de charge : la prévision ne peut pas être comparée.
log-lacks-rows = Une ligne toutes les { $time } est trop rare pour voir les appareils s’allumer. Une par minute les montre.
log-lacks-night = Quelque chose chargeait tout le temps, la consommation n’apparaît donc pas. Enregistrez aussi une nuit.
log-standby = Veille mesurée
log-floor = La nuit, { $power } ne s’arrêtent jamais (±{ $error }).
log-floor-most = La nuit, au plus { $power } ne s’arrêtent jamais. Les lignes sont trop espacées pour en dire plus.
log-floor-listed = Votre liste en explique { $power }.
log-hours = { $n ->
    [one] En moyenne, { $power } sont consommés, vus pendant { $n } heure de la journée.
   *[other] En moyenne, { $power } sont consommés, vus pendant { $n } heures de la journée.
}
log-hours-title = Consommation selon l’heure
log-hours-from = Dès
log-hours-mean = En moyenne
log-hours-watched = Vu pendant
log-in = { $n ->
    [one] { $energy } sont entrés sur { $n } jour entier, { $peak } au plus.
   *[other] { $energy } sont entrés sur { $n } jours entiers, { $peak } au plus.
}
log-in-least = { $n ->
    [one] Au moins { $energy } sont entrés sur { $n } jour entier, { $peak } au plus. Ce que les appareils consommaient alors n’apparaît pas.
   *[other] Au moins { $energy } sont entrés sur { $n } jours entiers, { $peak } au plus. Ce que les appareils consommaient alors n’apparaît pas.
}
log-capacity = Capacité utilisée : { $capacity } (±{ $error }), { $share } des { $label } de l’étiquette.
log-capacity-counted = D’après la charge comptée pendant que l’état de charge baissait. Si une capacité a été saisie dans le moniteur, il ne montre peut-être que celle-là.
log-capacity-rested = De pleine à une tension au repos. Ne videz pas une batterie pour le savoir : le plomb en souffre, et tout ce qui y est branché s’éteint.
log-capacity-no-current = Capacité : il faut le courant ou la puissance de la batterie.
log-capacity-no-state = Capacité : il faut l’état de charge, ou une tension après des heures de repos sur une batterie pleine auparavant.
log-capacity-swing = Capacité : la charge n’a varié que de { $swing }. Il faut 30 % ou plus.
log-capacity-contradicts = Capacité : le courant et l’état de charge ne concordent pas. Vérifiez les colonnes.
log-cycles = { $n ->
    [one] Quelque chose de { $power } (±{ $error }) va et vient de lui-même : { $duty } du temps, { $run } à chaque fois, { $n } marche.
   *[other] Quelque chose de { $power } (±{ $error }) va et vient de lui-même : { $duty } du temps, { $run } à chaque fois, { $n } marches.
}
log-uses = { $n ->
    [one] Quelque chose de { $power } (±{ $error }) tourne { $time } par jour, surtout { $times }, { $n } marche.
   *[other] Quelque chose de { $power } (±{ $error }) tourne { $time } par jour, surtout { $times }, { $n } marches.
}
log-by-night = Vu dans l’obscurité seulement. Pour un appareil de votre liste, la puissance est reprise, ses heures restent.
log-is = Ce qui tire { $power }
log-appliance = Trouvé dans le journal, { $power }
log-held-high = Comparée sur { $time }, la prévision est en moyenne trop haute de { $mean } de charge, avec un écart horaire de { $rms }.
log-held-low = Comparée sur { $time }, la prévision est en moyenne trop basse de { $mean } de charge, avec un écart horaire de { $rms }.
log-correction = consommation et soleil
log-how = Chaque ± vaut 9 fois sur 10. Chaque résultat est repris séparément et peut être annulé.
