//! Pumps and lamps.

use super::entry::{Appliance, charges, dc, hours, litres, minutes, uses};
use crate::model::{Group, Window};

const WATER: Group = Group::Water;
const LIGHT: Group = Group::Light;
/// When water is used.
const AWAKE: Window = Window { from_min: 7 * 60, to_min: 23 * 60 };
const DARK: Window = Window { from_min: 22 * 60, to_min: 8 * 60 };

#[rustfmt::skip]
pub(super) const TABLE: [Appliance; 18] = [
    dc(34, "app-pump-diaphragm", WATER, [36.0, 60.0, 90.0], litres(40.0, 7.0, false),
        "water pump pressure tap wasserpumpe druckpumpe membranpumpe pompe eau membrane waterpomp drukpomp membraanpomp")
        .at(AWAKE).surge(3.0),
    dc(35, "app-pump-submersible", WATER, [24.0, 40.0, 60.0], litres(40.0, 10.0, false),
        "water pump tap immersion wasserpumpe tauchpumpe pompe eau immergee waterpomp dompelpomp")
        .at(AWAKE).surge(3.0),
    dc(36, "app-toilet-flush", WATER, [40.0, 60.0, 80.0], uses(12.0, 10.0),
        "toilet flush cassette pump loo wc toilettenspulung spulung klo chasse eau toilettes spoelpomp toiletspoeling")
        .at(AWAKE).surge(3.0),
    dc(37, "app-macerator", WATER, [100.0, 150.0, 200.0], uses(1.0, 100.0),
        "macerator waste grey black water pump zerhackerpumpe abwasserpumpe fakalienpumpe pompe broyeur eaux usees vuilwaterpomp vermaler")
        .at(Window::DAYTIME).surge(3.0),
    dc(38, "app-shower-booster", WATER, [30.0, 48.0, 60.0], minutes(5.0),
        "shower outdoor outside pump dusche aussendusche duschpumpe douche exterieure pompe buitendouche douchepomp")
        .at(Window::DAYTIME).surge(3.0),
    dc(39, "app-shower-drain-pump", WATER, [24.0, 36.0, 60.0], uses(2.0, 300.0),
        "shower drain waste gulper duschablauf absaugpumpe vidange douche pompe doucheafvoer afvoerpomp")
        .at(Window::MORNING).surge(3.0),
    dc(40, "app-water-purifier", WATER, [10.0, 20.0, 40.0], minutes(20.0),
        "water filter uv purifier wasserfilter entkeimung trinkwasser purificateur filtre eau waterfilter zuivering")
        .at(AWAKE),
    dc(41, "app-led-spot", LIGHT, [1.0, 2.0, 4.0], hours(4.0),
        "light lamp led spot licht lampe leuchte strahler lumiere ampoule plafonnier verlichting lampje")
        .at(Window::EVENING),
    dc(42, "app-led-strip", LIGHT, [3.0, 6.0, 14.0], hours(4.0),
        "light led strip licht lichtband lichtleiste streifen ruban lumiere ledstrip verlichting")
        .at(Window::EVENING),
    dc(43, "app-awning-light", LIGHT, [4.0, 8.0, 20.0], hours(3.0),
        "awning light outside porch markisenlicht vorzeltleuchte aussenlicht licht auvent eclairage exterieur store luifellamp buitenlamp voortent verlichting")
        .at(Window::EVENING),
    dc(44, "app-halogen-lamp", LIGHT, [8.0, 10.0, 21.0], hours(4.0),
        "light lamp bulb halogen halogenlampe gluhlampe licht ampoule halogene halogeenlamp gloeilamp")
        .at(Window::EVENING),
    dc(45, "app-fluorescent-tube", LIGHT, [8.0, 10.0, 24.0], hours(4.0),
        "light lamp tube fluorescent neon leuchtstoffrohre rohre licht tube neon tl buis lamp")
        .at(Window::EVENING),
    dc(46, "app-night-light", LIGHT, [0.3, 1.0, 3.0], hours(10.0),
        "night light step courtesy nachtlicht stufenlicht veilleuse nachtlampje")
        .at(DARK),
    dc(47, "app-reading-light", LIGHT, [1.0, 2.0, 4.0], hours(1.5),
        "reading light bed leselampe bettlampe lampe lecture liseuse leeslamp bedlampje")
        .at(Window::EVENING),
    dc(48, "app-string-lights", LIGHT, [2.0, 5.0, 12.0], hours(3.0),
        "string fairy lights lichterkette guirlande lumineuse lichtsnoer lampjes")
        .at(Window::EVENING),
    dc(49, "app-wardrobe-lights", LIGHT, [1.0, 2.0, 5.0], minutes(20.0),
        "wardrobe garage locker light schranklicht garagenlicht placard soute eclairage kastlamp garage verlichting"),
    dc(50, "app-lantern-charging", LIGHT, [3.0, 5.0, 10.0], charges(3.0, 4000.0, 3.7, 0.8),
        "lantern torch flashlight rechargeable laterne taschenlampe stirnlampe lanterne lampe torche rechargeable zaklamp lantaarn")
        .at(Window::DAYTIME),
    dc(51, "app-mosquito-lamp", LIGHT, [1.0, 3.0, 8.0], hours(4.0),
        "mosquito insect lamp repeller muckenlampe insektenlampe moustique insecte lampe muggenlamp insectenlamp")
        .at(Window::EVENING),
];
