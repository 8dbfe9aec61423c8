# Parts that every view is made of.
sheet-close = Close
tip-name = What is { $word }?
origin-name = How this is worked out
unit-a-day = { $amount } a day
unit-peak = W
pair = { $label }: { $value }
lantern-lit = lit: very likely lasts
lantern-low = dim: might last
lantern-dark = dark: likely runs out
lantern-past = over

term-soc = State of charge.
term-soc-text = How full the battery is: 100% is full, 0% is empty. Voltage alone does not show it while anything is drawing or charging.
term-chance = Chance.
term-chance-text = Nobody knows the weather ahead, so hundreds of possible runs of weather are simulated. 90% means the battery lasted in 9 out of 10 of them.
