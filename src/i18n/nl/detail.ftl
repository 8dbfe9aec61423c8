# Below the answer: where it comes from and what to know of it.
answer-balance = Een gemiddelde dag
answer-drains = Grootste verbruikers
answer-usable-share = { $share } van de bruikbare energie
answer-by-night = Nacht voor nacht
answer-certainty = Hoe zeker is dit?
drawer-inverter = Omvormer
drawer-inverter-idle = Omvormer, nullastverbruik
drawer-electronics = Laadregelaar en accu-elektronica
balance-sun = Opgenomen zonnestroom
balance-driving = Geladen tijdens het rijden
balance-hook-up = Geladen via walstroom
balance-other = Geladen uit andere bronnen
balance-loads = Apparaten
balance-inverter = Verloren in de omvormer
balance-electronics = Laadregelaars en accu-elektronica
balance-battery-losses = Verloren in de accu en zijn kabels
balance-stored = Verandering van de acculading
balance-unused-sun = Niet opgenomen zonnestroom: accu vol of koud
balance-unmet = Nodig maar niet beschikbaar
night-caption = Elke nacht bij gemiddeld weer; de kans geldt voor al het doorgerekende weer
night-head-night = Nacht van
night-head-chance = Kans om de nacht te halen
night-head-lowest = Laagste laadtoestand
night-head-sun = Opgenomen zonnestroom
night-head-use = Verbruikt
answer-notes = Goed om te weten
note-cut-out = { $name } zou vanaf { $when } uitschakelen door lage spanning: { $volts } aan de klemmen, met nog { $soc } in de accu. De voorspelling rekent alsof het apparaat aanblijft.
note-cut-out-cable = Hierin zit de spanningsval in de eigen kabel van het apparaat: die uit de ‘Kabelcheck’, of anders 0,6 V per 12 V.
note-cold-lock = Gedurende { $hours } was er zon of een lader, maar de lithiumaccu was kouder dan { $temp_0 } en nam niets op. Laad hem nooit onder { $temp_0 }, tenzij de fabrikant het toestaat.
note-cold-capacity = Op zijn koudst levert de accu maar { $share } van zijn nominale capaciteit, dus je bereikt je ondergrens eerder.
note-lead-hardly-full = De accu wordt hier nooit of bijna nooit vol. Lood dat lang maar deels geladen is, veroudert snel (sulfatering). Laad hem ongeveer één keer per week helemaal vol, bijvoorbeeld aan walstroom.
note-lead-full = De accu wordt ongeveer { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
} per week vol. Lood heeft dat minstens ongeveer één keer per week nodig, anders veroudert het snel (sulfatering).
note-lead-full-daily = De accu wordt bijna elke dag vol. Zo veroudert lood niet te vroeg.
note-unmet = Accu leeg vanaf { $when }: daarna draait er niets tot er weer wordt geladen.
note-unused-sun = Gemiddeld gaat per dag { $amount } zonnestroom verloren doordat de accu al vol is. Gebruik grote verbruikers rond het middaguur.
note-no-inverter = Er werkt iets via een omvormer, maar bij ‘Accu’ heb je er geen ingevuld.
note-fuel = Andere bronnen verbruiken tijdens het verblijf { $fuel } brandstof. Laat er nooit een draaien in of bij een afgesloten ruimte: koolmonoxide is dodelijk.
sure-own = Zon uit je eigen maandcijfers; aangenomen nauwkeurigheid: ±{ $accuracy }.
sure-world = Zon uit de klimaattabel van satellieten, weerstations en schattingen ({ $credit }). Nauwkeurigheid van een maandgemiddelde: ongeveer ±{ $accuracy }.
sure-region = Zon uit typische waarden voor een streek op { $distance } afstand (niet gemeten). Nauwkeurigheid: ongeveer ±{ $accuracy }. Je eigen maandcijfers bij ‘Reis’ zijn beter.
sure-latitude = Zon alleen uit de breedtegraad geschat. Nauwkeurigheid: ongeveer ±{ $accuracy }. Vul bij ‘Reis’ je eigen maandcijfers in.
sure-odds = Voor je reisdata worden honderden mogelijke weersverlopen doorgerekend, met de waarschijnlijke fouten van klimaat en verbruik. Vergeleken met gemeten jaren op drie plaatsen zaten de kansen er op twee plaatsen 5 procentpunten naast en op de derde 9, daar te voorzichtig. Reken elders op een afwijking van 10.
sure-average = De lijn en de tabel tonen gemiddeld weer. De gekleurde band en de lantaarns tonen de kansen.
sure-limits = Sneeuw op de panelen is alleen geschat, naar temperatuur en hellingshoek. Niet meegerekend: schaduw en andere dingen die je niet hebt ingevuld. Dit is een schatting, geen belofte: houd een tweede stroombron klaar voor elk medisch apparaat.
chart-mark-restart = Vanaf de meting
night-head-volts = Laagste spanning, grootste apparaat aan
flow-title = Waar de energie van een gemiddelde dag blijft
flow-panels = Licht op de panelen
flow-from-battery = Uit de accu
flow-snow = Sneeuw op de panelen
flow-shade-glass = Schaduw, reflectie op het glas
flow-heat-low-light = Warmte, zwak licht
flow-dirt-wires = Vuil, mismatch, kabels
flow-controller = Omzetting in de laadregelaar
flow-charging-cable = Laadkabel vanaf de motor
flow-charging = Laadverliezen
flow-resistance = Weerstand van de accu
flow-self-discharge = Zelfontlading
flow-conversion = Omzetting in de omvormer
flow-battery-heating = Verwarming van de accu
flow-direct-loads = Apparaten op de accu
flow-mains-loads = Apparaten op de omvormer
flow-into-battery = In de accu
term-watt = W en Wh.
term-watt-text = Een watt (W) zegt hoe snel er nu energie wordt gebruikt, zoals de snelheid van een auto. Een wattuur (Wh) is een hoeveelheid energie, zoals de gereden afstand: 20 W gedurende 3 uur is 60 Wh.
flow-cables = Kabels vanaf de accu
answer-details = Details
wish-nights = { $n ->
    [one] Je wilt { $n } nacht
   *[other] Je wilt { $n } nachten
}
wish-chance = { $n ->
    [one] Je wilt { $n } nacht. Kans: { $chance }
   *[other] Je wilt { $n } nachten. Kans: { $chance }
}
night-title = Nacht van { $night }: { $chance }
night-figures = Bij gemiddeld weer zakt de laadtoestand naar { $lowest }. De zon levert die dag { $sun }, je verbruikt { $used }.
