# The answer.
answer-name = Het antwoord
answer-none = Voeg toe wat je gebruikt, dan verschijnen de nachten hier.
answer-nights = { $n ->
    [one] nacht
   *[other] nachten
}
answer-more = of meer
answer-sure = op de accu, in negen van de tien gevallen
answer-likely = In de helft van de gevallen: { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
}
answer-asked = Je vroeg om { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
}.
answer-chance = Kans dat de accu ze allemaal haalt: { $chance }
answer-first-low = Bereikt het laagste toegestane niveau op { $when }
answer-never-low = Blijft boven het laagste toegestane niveau
answer-lowest = Laagste laadtoestand: { $soc }
answer-working = Het weer wordt doorgerekend…
answer-glance = op de accu. Toon het hele antwoord.
answer-spoken = { $n ->
    [one] { $n } nacht op de accu.
   *[other] { $n } nachten op de accu.
} { $low }
answer-course = Verloop van de accu
answer-balance = Een gemiddelde dag
answer-drains = Grootste verbruikers
answer-usable-share = { $share } van de bruikbare capaciteit
answer-by-night = Nacht voor nacht
answer-certainty = Hoe zeker is dit?
moment = { $weekday } { $date }, { $time }
drawer-inverter = Omvormer
drawer-inverter-idle = Omvormer, niets aangesloten
drawer-electronics = Laadregelaar en accu-elektronica
balance-sun = Zonnestroom opgenomen
balance-driving = Van het rijden
balance-hook-up = Van walstroom
balance-other = Van andere bronnen
balance-loads = Apparaten
balance-inverter = Verloren in de omvormer
balance-electronics = Regelaars en accu-elektronica
balance-battery-losses = Verloren in de accu
balance-stored = Verandering van de accu-inhoud
balance-unused-sun = Zonnestroom niet opgenomen: accu vol of koud
balance-unmet = Gevraagd maar niet beschikbaar
night-caption = Elke nacht bij gemiddeld weer; de kans geldt voor al het mogelijke weer
night-head-night = Nacht van
night-head-chance = Kans om hem te halen
night-head-lowest = Laagste laadtoestand
night-head-sun = Zonnestroom opgenomen
night-head-use = Verbruikt
answer-notes = Goed om te weten
note-cut-out = { $name } zou zichzelf vanaf { $when } uitschakelen door lage spanning: { $volts } aan de klemmen, terwijl er nog { $soc } in de accu zit. De voorspelling rekent alsof het doorloopt.
note-cold-lock = Gedurende { $hours } boden zon of lader energie aan terwijl de lithiumaccu onder 0 °C was en niets opnam. Laad hem nooit onder 0 °C, tenzij de fabrikant zegt dat het mag.
note-cold-capacity = Als hij het koudst is, geeft de accu { $share } van zijn nominale capaciteit; daarom stijgt de grens.
note-unmet = Leeg vanaf { $when }: wat dan gevraagd wordt, is er niet.
note-unused-sun = Gemiddeld treft { $amount } zon per dag een volle accu. Gebruik zware apparaten rond het middaguur.
note-no-inverter = Er werkt iets via een omvormer, maar bij Stroom is er geen ingevuld.
note-fuel = Andere bronnen verbruiken tijdens het verblijf { $litres } L brandstof. Laat er nooit een draaien in of bij een afgesloten ruimte: koolmonoxide is dodelijk.
sure-own = Zon uit je eigen maandcijfers, aangenomen als juist binnen ±{ $accuracy }.
sure-grid = Zon uit satellietmetingen, 2006 tot 2025 ({ $credit }), binnen ongeveer ±{ $accuracy } voor een maandgemiddelde.
sure-region = Zon uit gebruikelijke waarden voor { $name }, { $distance } km verderop, niet gemeten: binnen ongeveer ±{ $accuracy }. Je eigen maandcijfers bij Reis zijn beter.
sure-latitude = Zon alleen uit de breedtegraad geschat, binnen ongeveer ±{ $accuracy }. Vul bij Reis je eigen maandcijfers in.
sure-odds = Voor jouw datums worden tweeduizend weersverlopen doorgerekend. Vergeleken met twintig gemeten jaren klopten de kansen op 5 tot 10 procentpunten na; geen voorspelling zo ver vooruit is beter dan dat.
sure-no-chance = Het weer maakt hier geen verschil: geen paneel, of het weer van elke dag is opgegeven.
sure-average = De lijn en de tabel tonen gemiddeld weer; de gekleurde band en de lantaarns tonen de kansen.
sure-limits = Sneeuw op het paneel, en schaduw of wat je verder niet hebt ingevuld, zitten er niet in. Het is een schatting, geen belofte: houd een tweede bron achter de hand voor alles wat medisch is.
chart-mark-restart = Vanaf de meting
night-head-volts = Laagste spanning met grootste apparaat aan
flow-title = Waar de energie van een gemiddelde dag heen gaat
flow-panels = Licht op de panelen
flow-from-battery = Uit de voorraad van de accu
flow-shade-glass = Schaduw, spiegeling op het glas
flow-heat-low-light = Warmte, zwak licht
flow-dirt-wires = Vuil, tolerantie, kabels
flow-controller = Omzetting in de laadregelaar
flow-charging-cable = Laadkabel vanaf de motor
flow-charging = Laadverliezen
flow-resistance = Weerstand van de accu
flow-self-discharge = Zelfontlading
flow-conversion = Omvormer, bij het omzetten
flow-battery-heating = Verwarming van de accu
flow-direct-loads = Apparaten op de accu
flow-mains-loads = Apparaten op de omvormer
flow-into-battery = In de voorraad van de accu
