# Parts that every view is made of.
sheet-close = Fermer
tip-name = Explication : { $word }
origin-name = D’où cela vient
unit-a-day = { $amount } par jour
pair = { $label } : { $value }
lantern-lit = allumée : tient très probablement
lantern-low = faible : tient peut-être
lantern-dark = éteinte : se vide probablement

term-soc = État de charge.
term-soc-text = Le remplissage de la batterie : 100 % est pleine, 0 % est vide. Il ne se lit pas sur la seule tension tant que quelque chose consomme ou charge.
term-chance = Probabilité.
term-chance-text = La météo est inconnue : de nombreux scénarios sont simulés. 90 % veut dire que la batterie a tenu dans 9 sur 10.
