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
place-near = bij { $town }
place-clock-set = De plaatselijke tijd is op { $offset } gezet, passend bij de plaats.
place-figures = Coördinaten en hoogte
place-latitude = Breedtegraad
place-latitude-hint = Ten zuiden van de evenaar negatief.
place-longitude = Lengtegraad
place-longitude-hint = Ten westen van Greenwich negatief.
place-altitude = Hoogte boven zee
place-altitude-hint = Op { $height } nauwkeurig is goed genoeg.
short-north = N
short-south = S
short-east = E
short-west = W
coordinates-only-one = De breedte- of lengtegraad ontbreekt. Geef ze allebei, zoals 52.1, 5.2.
coordinates-unclear = Het is niet duidelijk welk getal de breedtegraad is en welk de lengtegraad. Probeer 52.1, 5.2 of 52.1 N 5.2 E.
coordinates-letter-o = De letter O kan oost of west betekenen. Gebruik E (oost) of W (west).
coordinates-sixtieths = Minuten en seconden lopen van 0 tot 59.
coordinates-latitude = De breedtegraad loopt van -90 tot 90.
coordinates-longitude = De lengtegraad loopt van -180 tot 180.
locate = Waar ik nu ben
locate-asking = Het toestel zoekt de locatie…
locate-refused = De locatie van het toestel is geweigerd. Typ zelf een plaats in.
locate-failed = Het toestel weet niet waar het is. Typ zelf een plaats in.
locate-timed-out = Het bepalen van de locatie duurde te lang. Probeer het opnieuw onder de open hemel, of typ een plaats in.
locate-hint = Wordt alleen gevraagd als je tikt, afgerond op ongeveer 10 km, en blijft op dit toestel.
locate-missing = Deze browser geeft deze pagina geen locatie. Typ zelf een plaats in.

dates-title = Datums
dates-arrival = Aankomst
dates-nights = Nachten
dates-hour = Aankomst om
dates-offset = Klok loopt voor op UTC
dates-offset-hint = Midden-Europa: 1 in de wintertijd, 2 in de zomertijd.
dates-clock-device = Zoals dit toestel op die dag: { $utc }
dates-clock-longitude = Naar de lengtegraad: { $utc }
dates-from-to = Van { $from } tot { $to }.

days-title = Dag voor dag
days-hint = Laat een dag op ‘Niet bekend’ staan, dan wordt voor de kansen het weer van de plaats doorgerekend. Rijden en walstroom volgen het plan van het onderdeel ‘Stroom’, tenzij hier iets anders staat.
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
sky-dull = Grijs
sky-sun = Zoals voorspeld
day-sun = Zon die dag
day-drive = Rijden
day-hook-up = Walstroom
day-hook-up-yes = Ja
day-hook-up-no = Nee
as-planned = volgens plan

climate-title = Zon en temperatuur
climate-air-region = Luchttemperatuur uit gebruikelijke waarden voor { $name }, { $distance } km verderop, niet gemeten, omgerekend naar de hoogte hier: op ongeveer 2 °C nauwkeurig voor een maandgemiddelde; losse dagen wijken veel verder af.
climate-air-world = Luchttemperatuur uit dezelfde tabel, omgerekend naar de hoogte hier: op ongeveer 2 °C nauwkeurig voor een maandgemiddelde; losse dagen wijken veel verder af.
climate-coming = De klimaattabel wordt nog opgehaald. Tot die er is, gelden gebruikelijke waarden van de streek.
climate-not-fetched = De klimaattabel kon niet worden opgehaald. Intussen gelden gebruikelijke waarden van de streek; bij de volgende wijziging van de reis wordt het opnieuw geprobeerd.
climate-air-latitude = Luchttemperatuur alleen uit breedtegraad en hoogte geschat: die kan er 5 °C of meer naast zitten.
climate-impossible = Geen enkele hemel kan geven wat voor { $months } is ingevuld. In plaats daarvan telt het dichtstbijzijnde mogelijke cijfer.
climate-months = Maand voor maand
climate-months-caption = Zon per dag op vlakke grond, en gemiddelde luchttemperatuur
climate-month = Maand
climate-own-sun = Mijn eigen cijfers voor de zon
climate-own-sun-hint = Zon op vlakke grond, uit welke bron ook. Piekzonuren per dag zijn hetzelfde als kWh/m² per dag. Lege maanden houden het ingebouwde cijfer.
own-sun-unit = Mijn cijfers zijn
own-sun-daily = kWh/m² per dag
own-sun-monthly = kWh/m² per maand
climate-usual = Ingebouwd: { $amount }
climate-own-air = Luchttemperatuur, gemiddelde van dag en nacht
climate-ground = Licht van de grond
climate-ground-kind = De ondergrond is
ground-grass = Gras
ground-sand = Zand
ground-snow = Verse sneeuw
