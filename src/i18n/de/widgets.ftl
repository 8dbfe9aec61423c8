# Parts that every view is made of.
sheet-close = Schließen
tip-name = Was bedeutet „{ $word }“?
origin-name = Woher die Zahl kommt
unit-a-day = { $amount } pro Tag
unit-peak = Wp
pair = { $label }: { $value }
lantern-lit = hell: hält sehr wahrscheinlich
lantern-low = schwach: hält vielleicht
lantern-dark = dunkel: wird wohl leer
lantern-past = vorbei

term-soc = Ladezustand.
term-soc-text = Wie voll die Batterie ist: 100 % ist voll, 0 % ist leer. Allein an der Spannung lässt er sich nicht ablesen, solange Strom entnommen oder geladen wird.
term-chance = Chance.
term-chance-text = Niemand kennt das Wetter im Voraus, deshalb werden Hunderte möglicher Wetterverläufe durchgerechnet. 90 % heißt: In 9 von 10 Fällen hielt die Batterie durch.
