# Parts that every view is made of.
sheet-close = Close
tip-name = What is: { $word }?
origin-name = Where this comes from
unit-a-day = { $amount } a day
pair = { $label }: { $value }
lantern-lit = lit: very likely lasts
lantern-low = low: may last
lantern-dark = dark: likely runs down

term-soc = State of charge.
term-soc-text = How full the battery is: 100 % is full, 0 % is empty. It cannot be read from the voltage alone while something draws or charges.
term-chance = Chance.
term-chance-text = The weather is not known, so many possible runs of days are played through. 90 % means that the battery lasted in nine of ten of them.
