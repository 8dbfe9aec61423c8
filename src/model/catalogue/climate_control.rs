//! Heating, fans and air conditioning.

use super::entry::{
    Appliance, Caution, ac, cooling, dc, duty, energy, heating, hours, minutes, uses,
};
use crate::model::{Group, Usage, Window};

const HEAT: Group = Group::Heat;
const AIR: Group = Group::Air;
/// Evening to breakfast, when a heater runs.
const COLD_HOURS: Window = Window { from_min: 17 * 60, to_min: 9 * 60 };
const WARM_HOURS: Window = Window { from_min: 12 * 60, to_min: 22 * 60 };
const BURNS: &[Caution] = &[Caution::Combustion];
const HEAVY: &[Caution] = &[Caution::Heavy];

#[rustfmt::skip]
pub(super) const TABLE: [Appliance; 29] = [
    dc(12, "app-heater-diesel", HEAT, [8.0, 20.0, 40.0], heating(2000.0, 5.0),
        "heater heating parking diesel petrol air standheizung heizung dieselheizung luftheizung chauffage stationnaire kachel standkachel verwarming dieselkachel")
        .at(COLD_HOURS).caution(BURNS),
    dc(13, "app-heater-diesel-start", HEAT, [80.0, 100.0, 130.0], uses(2.0, 180.0),
        "heater glow plug start diesel gluhstift gluhkerze standheizung bougie prechauffage chauffage gloeistift gloeibougie kachel")
        .at(COLD_HOURS).caution(BURNS),
    dc(14, "app-heater-gas-blown", HEAT, [6.0, 15.0, 50.0], heating(3000.0, 0.0),
        "heater heating gas combi blown warm air fan gasheizung heizung geblase warmluft chauffage gaz soufflerie gaskachel blaasverwarming verwarming ventilator")
        .at(COLD_HOURS).caution(BURNS),
    dc(15, "app-furnace-blower", HEAT, [80.0, 110.0, 140.0], heating(6000.0, 0.0),
        "furnace heater propane blower heizung geblase ofen chaudiere chauffage propane verwarming kachel blazer")
        .at(COLD_HOURS).surge(2.0).caution(BURNS),
    dc(16, "app-boiler-wet", HEAT, [12.0, 20.0, 35.0], heating(2100.0, 0.0),
        "boiler radiator central heating warmwasserheizung heizung umwalzpumpe chauffage central eau chaude cv verwarming radiator circulatiepomp")
        .at(COLD_HOURS).caution(BURNS),
    dc(17, "app-water-heater-ignition", HEAT, [0.2, 0.5, 2.0], Usage::AlwaysOn,
        "boiler water heater frost valve ignition warmwasser therme frostwachter ablassventil chauffe eau vanne antigel geiser vorstventiel boiler")
        .stays_on().caution(BURNS),
    dc(18, "app-electric-blanket", HEAT, [30.0, 50.0, 75.0], hours(3.0),
        "blanket heated underblanket bed heizdecke warmeunterbett couverture chauffante elektrische deken bedverwarming")
        .at(Window::NIGHT),
    dc(19, "app-fan-heater-12v", HEAT, [120.0, 150.0, 300.0], minutes(30.0),
        "fan heater ceramic demister heizlufter chauffage soufflant ventilatorkachel elektrische kachel")
        .at(Window::MORNING).caution(HEAVY),
    ac(20, "app-heater-mains", HEAT, [500.0, 1000.0, 2000.0], minutes(30.0),
        "electric heater radiator convector heizlufter elektroheizung radiateur electrique convecteur elektrische kachel straalkachel")
        .at(COLD_HOURS).caution(HEAVY),
    ac(21, "app-underfloor-heating", HEAT, [100.0, 200.0, 400.0], hours(3.0),
        "floor heating mat carpet fussbodenheizung heizteppich chauffage sol tapis chauffant vloerverwarming verwarmingsmat")
        .at(COLD_HOURS).caution(HEAVY),
    ac(22, "app-water-heater-electric", HEAT, [300.0, 660.0, 1500.0], minutes(45.0),
        "boiler electric hot water elektroboiler warmwasserboiler chauffe eau electrique ballon elektrische boiler warmwater")
        .at(Window::MORNING).caution(HEAVY),
    dc(23, "app-heated-seat-pad", HEAT, [30.0, 45.0, 60.0], hours(1.0),
        "seat pad cushion sitzheizung heizkissen coussin siege chauffant stoelverwarming kussen")
        .at(Window::EVENING),
    dc(32, "app-tank-heater-pads", HEAT, [15.0, 40.0, 100.0], duty(0.42),
        "tank pipe heater pad frost winter tankheizung heizmatte abwassertank rechauffeur cuve tankverwarming leidingverwarming")
        .stays_on().caution(HEAVY),
    dc(33, "app-pellet-stove", HEAT, [10.0, 25.0, 60.0], heating(4000.0, 2.0),
        "pellet stove wood pelletofen holzofen poele granules bois pelletkachel houtkachel")
        .at(COLD_HOURS).caution(BURNS),
    dc(149, "app-combi-diesel", HEAT, [20.0, 40.0, 60.0], heating(4000.0, 5.0),
        "combi heater diesel hot water heizung dieselheizung warmwasser kombiheizung chauffage combine gazole eau chaude combikachel diesel warm water")
        .at(COLD_HOURS).caution(BURNS),
    ac(150, "app-combi-mains", HEAT, [900.0, 1800.0, 2000.0], minutes(60.0),
        "combi heater electric element mains heizung heizstab kombiheizung chauffage resistance electrique combine kachel elektrisch element")
        .at(COLD_HOURS).caution(HEAVY),
    dc(151, "app-heater-shutdown", HEAT, [80.0, 100.0, 130.0], uses(2.0, 180.0),
        "heater glow plug stop shutdown diesel gluhstift abschalten standheizung bougie arret chauffage gloeistift stop kachel")
        .at(COLD_HOURS).caution(BURNS),
    dc(152, "app-water-element-12v", HEAT, [200.0, 250.0, 300.0], minutes(45.0),
        "water heater element boiler hot heizstab warmwasser chauffe eau resistance boiler element warm water 12v")
        .at(Window::DAYTIME).caution(HEAVY),
    ac(153, "app-underblanket-mains", HEAT, [60.0, 80.0, 120.0], hours(1.0),
        "underblanket heated bed blanket warmeunterbett heizdecke surmatelas couverture chauffante onderdeken elektrische deken")
        .at(Window::NIGHT),
    dc(154, "app-heated-clothing", HEAT, [10.0, 15.0, 25.0], energy(45.0),
        "heated jacket vest gloves clothing heizweste heizjacke beheizte kleidung veste gilet chauffant verwarmde jas vest")
        .at(Window::DAYTIME),
    dc(155, "app-toilet-fan", AIR, [1.0, 1.5, 3.0], Usage::AlwaysOn,
        "toilet vent fan composting toilettenlufter trockentoilette lufter ventilateur toilettes seches toiletventilator composttoilet"),
    dc(24, "app-roof-fan", AIR, [4.0, 15.0, 40.0], cooling(0.6),
        "fan roof vent dachlufter dachventilator lufter ventilateur lanterneau aerateur toit dakventilator dakluik")
        .at(WARM_HOURS),
    dc(25, "app-desk-fan", AIR, [3.0, 6.0, 18.0], cooling(0.8),
        "fan desk clip table ventilator tischventilator lufter ventilateur bureau tafelventilator")
        .at(WARM_HOURS),
    dc(26, "app-evaporative-cooler", AIR, [20.0, 40.0, 100.0], cooling(0.6),
        "swamp cooler evaporative verdunstungskuhler luftkuhler rafraichisseur evaporation verdampingskoeler luchtkoeler")
        .at(WARM_HOURS),
    ac(27, "app-air-con-roof", AIR, [400.0, 700.0, 1300.0], cooling(0.36),
        "aircon air conditioner conditioning ac roof klimaanlage klima dachklima climatisation climatiseur clim airco airconditioning")
        .at(WARM_HOURS).surge(4.0).caution(HEAVY),
    dc(28, "app-air-con-12v", AIR, [200.0, 350.0, 600.0], cooling(0.4),
        "aircon air conditioner conditioning ac split klimaanlage standklima klima climatisation climatiseur clim airco")
        .at(WARM_HOURS).surge(2.0).caution(HEAVY),
    dc(29, "app-extractor-hood", AIR, [10.0, 20.0, 30.0], minutes(30.0),
        "cooker hood extractor dunstabzug dunstabzugshaube hotte aspirante afzuigkap dampkap")
        .at(Window::EVENING),
    ac(30, "app-dehumidifier", AIR, [100.0, 200.0, 300.0], hours(2.0),
        "dehumidifier damp luftentfeuchter entfeuchter deshumidificateur ontvochtiger luchtontvochtiger")
        .at(Window::DAYTIME).surge(3.0),
    dc(31, "app-air-purifier", AIR, [2.0, 5.0, 15.0], hours(8.0),
        "air purifier filter luftreiniger purificateur air luchtreiniger")
        .at(Window::NIGHT),
];
