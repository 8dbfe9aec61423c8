//! Cooking, hair, teeth and laundry.

use super::entry::{Appliance, Caution, ac, dc, energy, minutes, uses};
use crate::model::{Group, Window};

const KITCHEN: Group = Group::Kitchen;
const BODY: Group = Group::Body;
const HEAVY: &[Caution] = &[Caution::Heavy];
const BREAKFAST: Window = Window { from_min: 7 * 60, to_min: 10 * 60 };
const SUPPER: Window = Window { from_min: 17 * 60, to_min: 20 * 60 };

// Kettles: 1 L from 15 to 100 degrees Celsius takes 98.9 Wh of heat; at 85 % that is 116 Wh from
// the socket. Two uses a day of half a litre each.
#[rustfmt::skip]
pub(super) const TABLE: [Appliance; 30] = [
    ac(82, "app-kettle-low-watt", KITCHEN, [600.0, 900.0, 1200.0], uses(2.0, 233.0),
        "kettle tea water travel wasserkocher reisewasserkocher bouilloire theiere waterkoker reiswaterkoker")
        .at(Window::DAYTIME).caution(HEAVY),
    ac(83, "app-kettle-household", KITCHEN, [1800.0, 2200.0, 3000.0], uses(2.0, 95.0),
        "kettle tea water wasserkocher bouilloire waterkoker")
        .at(Window::DAYTIME).caution(HEAVY),
    dc(84, "app-kettle-12v", KITCHEN, [120.0, 150.0, 200.0], uses(1.0, 1400.0),
        "kettle tea water wasserkocher bouilloire waterkoker 12v")
        .at(BREAKFAST).caution(HEAVY),
    ac(85, "app-induction-hob", KITCHEN, [800.0, 1500.0, 2000.0], minutes(20.0),
        "induction hob cooker stove kochplatte induktion herd plaque cuisson kookplaat inductie fornuis")
        .at(SUPPER).caution(HEAVY),
    ac(107, "app-hot-plate", KITCHEN, [1000.0, 1500.0, 2000.0], minutes(20.0),
        "hot plate electric cooker stove kochplatte elektroherd herd plaque electrique kookplaat elektrisch fornuis")
        .at(SUPPER).caution(HEAVY),
    ac(86, "app-microwave", KITCHEN, [1000.0, 1250.0, 1500.0], minutes(6.0),
        "microwave oven mikrowelle four micro ondes magnetron")
        .at(SUPPER).standby(1.5).surge(1.4).caution(HEAVY),
    ac(87, "app-toaster", KITCHEN, [700.0, 850.0, 1100.0], minutes(3.0),
        "toaster toast brot grille pain broodrooster")
        .at(BREAKFAST).caution(HEAVY),
    ac(88, "app-coffee-pod", KITCHEN, [800.0, 1300.0, 1600.0], uses(2.0, 111.0),
        "coffee espresso pod capsule machine kaffee kaffeemaschine kapsel cafe cafetiere expresso koffie koffiezetapparaat")
        .at(BREAKFAST).caution(HEAVY),
    ac(89, "app-coffee-filter", KITCHEN, [600.0, 800.0, 1000.0], minutes(10.0),
        "coffee filter drip machine kaffee kaffeemaschine filterkaffee cafe cafetiere filtre koffie koffiezetapparaat filterkoffie")
        .at(BREAKFAST).caution(HEAVY),
    ac(90, "app-coffee-grinder", KITCHEN, [100.0, 150.0, 200.0], minutes(1.0),
        "coffee grinder mill kaffeemuhle moulin cafe koffiemolen")
        .at(BREAKFAST).surge(3.0),
    ac(91, "app-air-fryer", KITCHEN, [800.0, 1300.0, 1700.0], minutes(15.0),
        "air fryer heissluftfritteuse fritteuse friteuse air airfryer heteluchtfriteuse")
        .at(SUPPER).caution(HEAVY),
    ac(92, "app-slow-cooker", KITCHEN, [80.0, 200.0, 500.0], minutes(150.0),
        "slow rice cooker crock schongarer reiskocher mijoteuse cuiseur riz slowcooker rijstkoker")
        .at(Window::DAYTIME),
    ac(93, "app-multi-cooker", KITCHEN, [700.0, 1000.0, 1200.0], minutes(20.0),
        "pressure multi cooker schnellkochtopf multikocher autocuiseur multicuiseur snelkookpan multicooker")
        .at(SUPPER).caution(HEAVY),
    ac(94, "app-electric-grill", KITCHEN, [1000.0, 1600.0, 2200.0], minutes(20.0),
        "grill barbecue bbq raclette plancha elektrogrill barbecue electrique gourmet elektrische grill")
        .at(SUPPER).caution(HEAVY),
    ac(95, "app-sandwich-maker", KITCHEN, [600.0, 800.0, 1000.0], minutes(6.0),
        "sandwich waffle maker toastie sandwichtoaster waffeleisen croque gaufrier tosti ijzer wafelijzer")
        .at(BREAKFAST).caution(HEAVY),
    ac(96, "app-egg-boiler", KITCHEN, [200.0, 350.0, 500.0], minutes(8.0),
        "egg boiler eierkocher cuit oeufs eierkoker")
        .at(BREAKFAST),
    ac(97, "app-blender", KITCHEN, [200.0, 400.0, 1000.0], minutes(2.0),
        "blender mixer smoothie standmixer puriergerat mixeur staafmixer")
        .at(BREAKFAST).surge(3.0),
    dc(161, "app-oven-12v", KITCHEN, [80.0, 100.0, 150.0], minutes(50.0),
        "oven travel food warmer 12v reiseofen ofen speisenwarmer four voyage rechaud reisoven voedselverwarmer")
        .at(SUPPER),
    ac(162, "app-coffee-bean", KITCHEN, [1200.0, 1450.0, 1600.0], uses(2.0, 120.0),
        "coffee bean to cup machine kaffeevollautomat kaffee cafe grains machine koffie bonen koffiemachine")
        .at(BREAKFAST).standby(5.0).caution(HEAVY),
    ac(163, "app-bread-maker", KITCHEN, [400.0, 550.0, 690.0], energy(350.0),
        "bread maker baking brotbackautomat brot machine pain broodbakmachine brood")
        .at(Window::DAYTIME),
    dc(98, "app-bottle-warmer", KITCHEN, [50.0, 80.0, 120.0], minutes(20.0),
        "bottle warmer baby flaschenwarmer chauffe biberon flessenwarmer"),
    dc(99, "app-hob-ignition", KITCHEN, [3.0, 6.0, 12.0], minutes(1.0),
        "gas hob oven ignition spark kochfeld zundung backofen allumage gaziniere four gasfornuis ontsteking oven")
        .at(SUPPER).caution(&[Caution::Combustion]),
    ac(100, "app-hairdryer", BODY, [600.0, 1200.0, 2200.0], minutes(6.0),
        "hair dryer hairdryer fohn fon haartrockner seche cheveux fohn haardroger")
        .at(Window::MORNING).caution(HEAVY).mains_only(),
    dc(164, "app-hairdryer-12v", BODY, [120.0, 160.0, 200.0], minutes(8.0),
        "hairdryer hair dryer 12v fohn haartrockner seche cheveux haardroger fohn")
        .at(Window::MORNING),
    ac(101, "app-hair-straightener", BODY, [30.0, 50.0, 180.0], minutes(10.0),
        "hair straightener curler glatteisen lockenstab lisseur fer boucler stijltang krultang")
        .at(Window::MORNING).mains_only(),
    ac(102, "app-shaver-toothbrush", BODY, [1.0, 3.0, 8.0], energy(2.0),
        "shaver razor toothbrush rasierer rasierapparat zahnburste rasoir brosse dents scheerapparaat tandenborstel")
        .at(Window::MORNING),
    ac(103, "app-washing-machine", BODY, [120.0, 200.0, 400.0], minutes(30.0),
        "washing machine laundry waschmaschine wasche lave linge wasmachine was")
        .at(Window::DAYTIME).surge(3.0).mains_only(),
    ac(104, "app-spin-dryer", BODY, [100.0, 150.0, 300.0], minutes(5.0),
        "spin dryer laundry schleuder wascheschleuder essoreuse linge centrifuge was")
        .at(Window::DAYTIME).surge(3.0).mains_only(),
    ac(105, "app-iron", BODY, [700.0, 1000.0, 2000.0], minutes(8.0),
        "iron travel bugeleisen fer repasser strijkijzer")
        .at(Window::DAYTIME).caution(HEAVY).mains_only(),
    ac(106, "app-hair-clipper", BODY, [5.0, 10.0, 20.0], minutes(3.0),
        "hair clipper trimmer haarschneider tondeuse cheveux tondeuse trimmer")
        .at(Window::MORNING),
];
