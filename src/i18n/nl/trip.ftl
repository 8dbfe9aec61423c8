# Where and when.
trip-title = Waar en wanneer
place-title = Plaats
place-search = Andere plaats
place-search-hint = Plaatsnaam, of 52.1, 5.2
place-found = { $n ->
    [one] Eén plaats gevonden.
   *[other] { $n } plaatsen gevonden.
}
place-none = Die plaats staat niet in de lijst. Probeer een grotere plaats in de buurt, of coördinaten zoals 52.1, 5.2.
places-coming = De plaatsenlijst wordt geladen. Tot die tijd worden alleen grotere plaatsen gevonden.
places-not-fetched = De plaatsenlijst kon niet worden geladen: alleen grotere plaatsen worden gevonden. Typ verder om het opnieuw te proberen.
place-near = bij { $town }
place-clock-set = Plaatselijke tijd: { $offset }
place-figures = Coördinaten en hoogte
place-latitude = Breedtegraad
place-latitude-hint = Ten zuiden van de evenaar negatief.
place-longitude = Lengtegraad
place-longitude-hint = Ten westen van Greenwich negatief.
place-altitude = Hoogte boven zeeniveau
place-altitude-hint = Op { $height } nauwkeurig is goed genoeg.
short-north = N
short-south = S
short-east = E
short-west = W
coordinates-only-one = De breedte- of lengtegraad ontbreekt. Geef ze allebei, zoals 52.1, 5.2.
coordinates-unclear = Het is niet duidelijk welk getal de breedtegraad is en welk de lengtegraad. Probeer 52.1, 5.2 of 52.1 N 5.2 E.
coordinates-letter-o = De letter O kan oost of west betekenen. Gebruik E (oost) of W (west).
coordinates-sixtieths = Minuten en seconden lopen van 0 tot 59.
coordinates-latitude = De breedtegraad loopt van −90 tot 90.
coordinates-longitude = De lengtegraad loopt van −180 tot 180.
locate = Waar ik nu ben
locate-asking = Je locatie wordt gezocht…
locate-refused = Toegang tot je locatie is geweigerd. Typ zelf een plaats in.
locate-failed = Je locatie is niet gevonden. Typ zelf een plaats in.
locate-timed-out = Het zoeken van je locatie duurde te lang. Probeer het opnieuw in de open lucht, of typ een plaats in.
locate-hint = Alleen als je tikt; op { $km_10 } nauwkeurig; blijft op dit toestel.
locate-missing = Deze browser geeft je locatie niet door aan deze pagina. Typ zelf een plaats in.

dates-title = Reisdata
dates-arrival = Aankomst
dates-nights = Nachten
dates-hour = Aankomsttijd
dates-offset = Uren voor op UTC
dates-offset-hint = Midden-Europa: 1 in de wintertijd, 2 in de zomertijd.
dates-clock-device = Zoals dit toestel op die dag: { $utc }
dates-clock-longitude = Naar de lengtegraad: { $utc }
dates-from-to = Van { $from } tot { $to }.

days-title = Dag voor dag
days-hint = Laat een dag op ‘Niet bekend’ staan, dan rekenen de kansen met al het weer dat daar gebruikelijk is. Rijden en walstroom volgen ‘Accu’, tenzij je ze hier instelt.
days-more = { $n ->
    [one] Nog { $n } dag tonen
   *[other] Nog { $n } dagen tonen
}
days-all = Weer op alle dagen
day-sky = Weer
sky-unknown = Niet bekend
sky-typical = Gemiddeld voor de maand
sky-clear = Helder
sky-mixed = Zon en wolken
sky-dull = Somber
sky-sun = Zoals voorspeld
day-sun = Zon die dag
day-drive = Rijden
day-hook-up = Walstroom
day-hook-up-yes = Ja
day-hook-up-no = Nee
as-planned = Volgens plan

climate-title = Zon en temperatuur
climate-air-region = Luchttemperatuur uit typische waarden voor een streek op { $distance } afstand (niet gemeten), aangepast aan de hoogte. Een maandgemiddelde klopt tot op ongeveer { $warmer_2 }; losse dagen wijken veel verder af.
climate-air-world = Luchttemperatuur uit dezelfde tabel, aangepast aan de hoogte. Een maandgemiddelde klopt tot op ongeveer { $warmer_2 }; losse dagen wijken veel verder af.
climate-coming = De klimaattabel wordt geladen. Tot die tijd gelden typische waarden van de streek.
climate-not-fetched = De klimaattabel kon niet worden geladen, dus gelden typische waarden van de streek. Wijzig je de reis, dan wordt het opnieuw geprobeerd.
climate-air-latitude = Luchttemperatuur alleen uit breedtegraad en hoogte geschat. Die kan er { $warmer_5 } of meer naast zitten.
climate-impossible = De cijfers voor { $months } zijn natuurkundig niet mogelijk. Het dichtstbijzijnde mogelijke cijfer telt.
climate-months = Maand voor maand
climate-months-caption = Zon per dag op een horizontaal vlak, en gemiddelde luchttemperatuur
climate-month = Maand
climate-own-sun = Mijn eigen zoncijfers
climate-own-sun-hint = Zon op een horizontaal vlak, uit welke bron ook. Piekzonuren per dag zijn hetzelfde als kWh/m² per dag. Lege maanden houden het standaardcijfer.
own-sun-unit = Eenheid van mijn cijfers
own-sun-daily = kWh/m² per dag
own-sun-monthly = kWh/m² per maand
climate-usual = Standaard: { $amount }
climate-own-air = Gemiddelde luchttemperatuur, dag en nacht
climate-ground = Weerkaatsing van de grond (albedo)
climate-vehicle = Voertuig
climate-vehicle-loss = Per graad die het binnen warmer is, verliest het ongeveer { $watts } warmte (vuistregel). Zon en mensen geven zo’n { $warmer_3 } gratis.
climate-inside = Verwarmd tot, gemiddeld over dag en nacht
climate-inside-hint = Kachels houden het zo warm, en een koelkast binnen staat in die warmte. Leeg laten als er niet wordt verwarmd.
climate-ground-kind = Soort ondergrond
ground-grass = Gras
ground-sand = Zand
ground-snow = Verse sneeuw
days-each = Elke dag apart
climate-from = Waar deze cijfers vandaan komen
