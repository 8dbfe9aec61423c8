# What to change: what helps, ways to more nights, setups side by side.
change-parts = Onderdelen
part-helps = Wat helpt
part-ways = Meer nachten
change-working = Wordt doorgerekend…
change-failed = Dit is niet te berekenen: een cijfer van het weer of het klimaat kan niet kloppen. Kijk bij ‘Reis’.
change-beware = Let op:
change-towards-south = zuiden
change-towards-north = noorden

helps-title = Wat het meest helpt
helps-told = Elke verandering wordt over je hele verblijf doorgerekend, met dezelfde weersverlopen. Er verandert niets tot je op ‘Toepassen’ tikt.
helps-progress = Elke verandering wordt geprobeerd: { $done }
helps-more = { $n ->
    [one] Nog { $n } verandering
   *[other] Nog { $n } veranderingen
}
helps-now = Kans op { $n ->
    [one] { $n } nacht
   *[other] { $n } nachten
} zoals het nu is: { $chance }.
helps-too-far = { $n ->
    [one] Geen enkele verandering alleen helpt voor { $n } nacht.
   *[other] Geen enkele verandering alleen helpt voor { $n } nachten.
}
helps-sure = Voor dit verblijf hoef je niets te doen. Langer blijven? Verschuif de nachten op het eerste scherm.
helps-none = Niets gevonden dat de kans vergroot. ‘Meer nachten’ combineert meerdere veranderingen.
help-gain = { $from } → { $to }
help-mean = gemiddeld { $to_n ->
    [one] { $to } nacht
   *[other] { $to } nachten
}, { $more } meer
next-looking = Zoeken naar wat helpt…
next-sure = { $n ->
    [one] Voor je nacht hoef je niets te doen.
   *[other] Voor je { $n } nachten hoef je niets te doen.
}
next-none = { $n ->
    [one] Geen enkele verandering alleen helpt voor je nacht.
   *[other] Geen enkele verandering alleen helpt voor je { $n } nachten.
}
next-ways = { $n ->
    [one] Bekijk wegen naar { $n } nacht
   *[other] Bekijk wegen naar { $n } nachten
}
next-gain = { $n ->
    [one] Kans op { $n } nacht: { $from } → { $to }
   *[other] Kans op { $n } nachten: { $from } → { $to }
}
next-tried = Gedaan: { $change }
next-back = Ongedaan maken
help-apply = Toepassen
help-apply-name = Toepassen: { $change }
toast-applied = Gewijzigd: { $change }

ways-title = Manieren om meer nachten te halen
ways-told = Geef aan hoeveel nachten je wilt. Nightbank zoekt het goedkoopste plan, een zonder iets te kopen en een met alleen kopen.
ways-nights = Gewenste nachten
ways-now = { $n ->
    [one] Zoals het nu is, is de kans om { $n } nacht te halen { $chance }.
   *[other] Zoals het nu is, is de kans om { $n } nachten te halen { $chance }.
}
ways-reached = { $n ->
    [one] Je configuratie haalt nu al { $n } nacht met een kans van { $chance }. Kies meer nachten of een grotere kans.
   *[other] Je configuratie haalt nu al { $n } nachten met een kans van { $chance }. Kies meer nachten of een grotere kans.
}
ways-none = Niets gevonden: geen enkele mogelijke verandering brengt je dichterbij.
way-cheapest = Goedkoopst
way-nearest = Het dichtst in de buurt
way-nothing-bought = Zonder iets te kopen
way-only-bought = Alleen door te kopen
way-reaches = { $n ->
    [one] Haalt { $n } nacht met een kans van { $chance }
   *[other] Haalt { $n } nachten met een kans van { $chance }
}
way-falls-short = { $n ->
    [0] Haalt nog niet één nacht met een kans van { $chance }. De kans op wat je wilt, is { $reached }
    [one] Haalt maar { $n } nacht met een kans van { $chance }. De kans op wat je wilt, is { $reached }
   *[other] Haalt maar { $n } nachten met een kans van { $chance }. De kans op wat je wilt, is { $reached }
}
way-price = Kosten
way-facts = { $often }: { $sure_n ->
    [one] { $sure } nacht
   *[other] { $sure } nachten
}. In de helft van de gevallen: { $even_n ->
    [one] { $even } nacht
   *[other] { $even } nachten
}. Laagste laadtoestand bij gemiddeld weer: { $lowest }.
way-longer = { $n ->
    [one] Met dit plan wordt je verblijf ook op { $n } nacht gezet.
   *[other] Met dit plan wordt je verblijf ook op { $n } nachten gezet.
}
way-apply = Dit plan gebruiken
toast-way = Gewijzigd: { $way }

cost-free = Kost niets
cost-effort = Kost wat comfort of moeite
cost-driving = { $time } meer rijden
cost-hook-up = { $n ->
    [one] { $n } nacht op een plaats met walstroom, tegen het tarief daar
   *[other] { $n } nachten op een plaats met walstroom, tegen het tarief daar
}
cost-money = Ongeveer { $amount }, { $weight } meer gewicht
cost-money-lighter = Ongeveer { $amount }, { $weight } minder gewicht
cost-money-only = Ongeveer { $amount }
cost-unpriced = Nog te kopen; geen prijs in je prijslijst
bill-unpriced = { $n ->
    [one] { $n } aankoop zonder prijs in je prijslijst
   *[other] { $n } aankopen zonder prijs in je prijslijst
}
bill-efforts = { $n ->
    [one] { $n } verandering die wat comfort of moeite kost
   *[other] { $n } veranderingen die wat comfort of moeite kosten
}
bill-free = { $n ->
    [one] { $n } verandering die niets kost
   *[other] { $n } veranderingen die niets kosten
}

change-switch-off = Helemaal uitzetten: { $name }
change-do-without = Weglaten: { $name }
change-gas = Liever op gas koken of verwarmen: { $name }
change-off-at-night = Uitzetten van 23:00 tot 07:00 uur: { $name }
change-unplug = Na gebruik de stekker eruit: { $name }
change-shorter = { $name }: { $amount } minder per dag
change-fewer = { $name }: { $amount } keer minder per dag
change-share = { $name }: maar { $amount } van het geplande gebruik
change-warmer-fridge = { $name }: ongeveer { $warmer_2 } warmer zetten
change-dc = { $name }: met een adapter op { $amount }, niet via de omvormer
change-midday = { $name }: rond het middaguur gebruiken
change-inverter-when-used = De omvormer alleen aanzetten als je hem gebruikt
change-inverter-sleep = De omvormer in spaarstand zetten als er niets draait (dan { $amount })
change-tilt = { $name }: kantelen tot { $tilt }, naar het { $facing }
change-tilt-roof = { $name }: met een beugel kantelen tot { $tilt }, naar het { $facing }
change-clean = { $name }: het glas schoonmaken
change-out-of-shade = { $name }: zo parkeren dat het uit de schaduw staat
change-mppt = { $name }: een MPPT-laadregelaar in plaats van PWM
change-portable = Een los paneel van { $amount } neerzetten, gekanteld tot { $tilt }, naar het { $facing }
change-drive = { $amount } rijden op dag { $day } ({ $date })
change-hook-up = { $n ->
    [one] Elke nacht op een plaats met walstroom staan
   *[other] Eens per { $n } nachten op een plaats met walstroom staan
}
change-arrive-full = Met een volle accu aankomen
change-battery-inside = De accu naar binnen verplaatsen, waar het warmer is
change-battery-locker = De accu naar een bergruimte verplaatsen, waar het warmer is
change-heated = Een verwarmde accu, die ook bij vorst laadt
change-battery = Meer accucapaciteit van dezelfde soort: { $amount }
change-lithium = In plaats daarvan een LiFePO4-accu: { $amount }
change-solar = Meer zonnepanelen: { $amount }
change-dc-dc = Een DC-DC-lader van { $amount }
change-dc-dc-drive = { $n ->
    [one] Een DC-DC-lader van { $amount }, en elke dag een uur rijden
   *[other] Een DC-DC-lader van { $amount }, en eens per { $n } dagen een uur rijden
}

part-year = Het jaar
buy-title = Wat kopen? Alle combinaties
buy-told = De kleinste panelen bij elke accu, en de kleinste accu bij elke set panelen, waarmee je de gewenste nachten haalt.
buy-from = Van maand
buy-to = Tot en met maand
buy-this-month = Maand van de reis
buy-progress = Combinaties worden geprobeerd: { $done }
buy-hard = De zwaarste van de gekozen maanden is { $months }. Daarvoor gelden de combinaties hieronder.
buy-least = Kleinste aankoop
buy-cheapest = Goedkoopst als alles nieuw is
buy-lightest = Lichtst
buy-choice = { $kind } { $battery } met { $solar } aan panelen
buy-price = { $more } boven op wat je hebt; { $all } als alles nieuw is; { $weight } in totaal
buy-take = Deze combinatie gebruiken
buy-none = Zelfs { $solar } aan panelen met een accu van { $battery } is niet genoeg. Kies minder nachten, een andere maand of een kleinere kans, of verbruik minder.
buy-sizes = Alle combinaties met { $kind }
buy-by-battery = { $kind }: kleinste panelen bij elke accu
buy-by-solar = { $kind }: kleinste accu bij elk paneelvermogen
buy-battery = Accu
buy-solar = Panelen
buy-smallest-solar = Kleinste panelen
buy-smallest-battery = Kleinste accu
buy-too-little = niets is groot genoeg
buy-have = wat je hebt
buy-curve = { $kind }: accu en panelen die net genoeg zijn
buy-curve-told = Hoe meer accu, hoe minder panelen je nodig hebt. Van een accu van { $least } met { $solar } aan panelen tot een accu van { $most } met { $few }.
buy-how = Apparaten, rijden, walstroom, hellingshoek, schaduw en de ouderdom van de accu blijven gelijk. Houd wat marge voor de komende jaren.
prices-title = Prijzen en gewichten
prices-told = Begin met deze ronde bedragen en vul je eigen prijzen in. Ze bepalen welk plan het goedkoopst is.
prices-counted = Een uur rijden telt als { $hour }, een nacht met walstroom als { $night }.
prices-currency = Valuta
prices-solar = Zonnepaneel met bevestiging, per 100 Wp
prices-solar-weight = Gewicht zonnepaneel, per 100 Wp
prices-lead = Loodaccu, per 100 Ah bij 12 V
prices-lead-weight = Gewicht loodaccu, per 100 Ah bij 12 V
prices-lithium = LiFePO4, per 100 Ah bij 12 V
prices-lithium-weight = Gewicht LiFePO4, per 100 Ah bij 12 V
prices-dc-dc = DC-DC-lader, inclusief inbouw

year-title = Nachten door het jaar heen
year-told = Hetzelfde verblijf op deze plaats met deze configuratie, voor elke beginmaand.
year-progress = Het jaar wordt doorgerekend: { $done } van 12 maanden

part-compare = Naast elkaar
compare-title = Configuraties naast elkaar
compare-told = Deze configuratie naast andere van jou, elk met het weer van de eigen plaats. Voeg een kopie toe voordat je iets wijzigt, en zie wat de wijziging doet.
compare-with = Vergelijken met
compare-copy = Een kopie van deze toevoegen
compare-copy-name = Kopie { $n }
compare-drop = Weghalen: { $name }
compare-copies-passing = Deze browser kan deze kopieën niet bewaren. Ze zijn weg zodra je de pagina sluit.
compare-full = Je kunt er hoogstens { $most } vergelijken.
compare-this = Deze configuratie
compare-alone = Kies een andere configuratie, of voeg een kopie toe en wijzig iets.
compare-same = Geen verschillen.
compare-working = …
compare-what = Wat
compare-outcomes = Resultaten
compare-differences = Verschillen
compare-sure = Nachten, { $often }
compare-even = Nachten, in de helft van de gevallen
compare-chance = Kans op de gewenste nachten
compare-lowest = Laagste laadtoestand
compare-use = Energie per dag
compare-usable = Bruikbare energie
compare-money = Panelen, accu en lader, nieuw
compare-weight = Gewicht van panelen en accu
compare-weight-per-kwh = Accugewicht per bruikbare kWh
compare-life-cost = Prijs per bruikbare kWh over de levensduur
compare-band = { $low } tot { $high }
compare-life = Lood tegenover lithium bij jouw prijzen
compare-life-how = Prijs gedeeld door de energie die de accu in zijn levensduur (cycli) levert, bij de gebruikelijke ontladingsdiepte. Het aantal cycli loopt sterk uiteen, dus staat hier een ruime marge. Gebruik je hem twee weken per jaar, dan bepaalt de ouderdom hoelang hij meegaat.
compare-batteries = Waarom de accu’s verschillend presteren
compare-batteries-how = Elk op de eigen reis, bij gemiddeld weer en de temperatuur van de accu daar. Kou maakt een deel van de lading van een loodaccu onbereikbaar en maakt laden van lithium onmogelijk. Bijna vol laadt lood langzaam en verliest het een deel van de lading.
reason-usable = Bruikbaar deel van de energie op het etiket
reason-cold = Beschikbaar in het koudste uur
reason-fast = Capaciteit bij ontladen in 5 uur, vergeleken met 20 uur
reason-stored = Opgeslagen deel bij laden boven 80%
reason-taken = Hoogste laadstroom bij 90%
reason-full = Van je ondergrens tot vol, sterkste lader
reason-lost = Verloren bij laden en door weerstand
reason-sag = Laagste spanning vóór je ondergrens, grootste apparaat aan
reason-cut-out = Schakelt uit door lage spanning vóór je ondergrens
reason-no-charge = Laagste laadtemperatuur
reason-locked = Laden geweigerd door kou
reason-management = Eigen verbruik van het BMS
reason-standing = Verlies in 30 dagen stilstand
differ-times = { $name }, wanneer
differ-all-loads = Alle apparaten
differ-chemistry = Soort accu
differ-capacity = Accu
differ-health = Conditie
differ-soc-min = Ondergrens
differ-soc-start = Laadtoestand bij aankomst
differ-system = Systeem
differ-battery-place = Plek van de accu
differ-heated = Accuverwarming
differ-inverter = Omvormer
differ-inverter-idle = Omvormer, nullastverbruik
differ-switching = Omvormer ingeschakeld
differ-solar = Zonnepanelen
differ-tilt = Hellingshoek
differ-facing = Oriëntatie
differ-mounting = Bevestiging panelen
differ-controller = Laadregelaar
differ-shade = Schaduw, middaguur
differ-driving-charger = Laden tijdens het rijden
differ-driving-every = Rijden
differ-driving-time = Rijtijd
differ-hook-up-charger = 230 V-acculader
differ-hook-up-every = Walstroom
differ-other = Andere bronnen
differ-place = Plaats
differ-arrival = Aankomst
differ-nights = Gewenste nachten
differ-air = Gemiddelde luchttemperatuur
differ-heated-to = Verwarmd tot
differ-use-factor = Verbruik, volgens metingen
differ-sun-factor = Zon, volgens metingen
value-absent = –
value-yes = ja
value-every = { $n ->
    [one] elke dag
   *[other] eens per { $n } dagen
}
value-relay = scheidingsrelais, { $limit }
alternatives-title = Wat zou verschil maken?
alternative-as-it-is = Zoals het nu is
alternative-battery = Een tweede accu zoals die van jou
alternative-lithium = Lithium (LiFePO4), even groot
alternative-panel = Een tweede paneel zoals dat van jou
alternative-drive = Om de dag een uur rijden
alternative-drive-charger = Een DC-DC-lader en om de dag een uur rijden
alternative-lasts = { $sure_n ->
    [one] { $sure } nacht zeker
   *[other] { $sure } nachten zeker
}. { $n ->
    [one] Kans op { $n } nacht: { $chance }
   *[other] Kans op { $n } nachten: { $chance }
}
