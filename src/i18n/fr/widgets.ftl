# Parts that every view is made of.
sheet-close = Fermer
tip-name = Explication : { $word }
origin-name = Comment ce chiffre est calculé
unit-a-day = { $amount } par jour
unit-peak = Wc
pair = { $label } : { $value }
lantern-lit = allumée : tient très probablement
lantern-low = faible : tient peut-être
lantern-dark = éteinte : se vide probablement
lantern-past = passée

term-soc = État de charge.
term-soc-text = Le remplissage de la batterie : 100 % quand elle est pleine, 0 % quand elle est vide. La tension seule ne l’indique pas tant que quelque chose consomme ou charge.
term-chance = Probabilité.
term-chance-text = Personne ne connaît la météo à venir : des centaines de scénarios sont donc simulés. 90 % veut dire que la batterie a tenu dans 9 scénarios sur 10.
