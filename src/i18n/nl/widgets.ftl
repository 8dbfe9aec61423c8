# Parts that every view is made of.
sheet-close = Sluiten
tip-name = Wat betekent ‘{ $word }’?
origin-name = Hoe dit is berekend
unit-a-day = { $amount } per dag
unit-peak = Wp
pair = { $label }: { $value }
lantern-lit = brandt: haalt het heel waarschijnlijk
lantern-low = zwak: haalt het misschien
lantern-dark = uit: raakt waarschijnlijk leeg
lantern-past = voorbij

term-soc = Laadtoestand.
term-soc-text = Hoe vol de accu is: 100% is vol, 0% is leeg. Aan de spanning alleen kun je dat niet zien zolang er stroom wordt verbruikt of geladen.
term-chance = Kans.
term-chance-text = Niemand kent het weer van tevoren, dus worden honderden mogelijke weersverlopen doorgerekend. 90% betekent dat de accu het in 9 van de 10 daarvan haalt.
