# Parts that every view is made of.
sheet-close = Sluiten
tip-name = Wat is: { $word }?
origin-name = Waar dit vandaan komt
unit-a-day = { $amount } per dag
pair = { $label }: { $value }
lantern-lit = brandt: haalt het heel waarschijnlijk
lantern-low = laag: haalt het misschien
lantern-dark = uit: raakt waarschijnlijk leeg

term-soc = Laadtoestand.
term-soc-text = Hoe vol de accu is: 100 % is vol, 0 % is leeg. Dat kun je niet aan de spanning alleen aflezen zolang er iets verbruikt of laadt.
term-chance = Kans.
term-chance-text = Het weer is niet bekend, dus worden veel mogelijke reeksen dagen doorgerekend. 90 % betekent dat de accu het in negen van de tien daarvan haalde.
