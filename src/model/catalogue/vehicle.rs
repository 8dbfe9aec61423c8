//! Tools, rechargeable vehicles, movers and what else moves.

use super::entry::{Appliance, Caution, ac, charges, dc, hours, minutes, uses};
use crate::model::{Group, Usage, Window};

const TOOLS: Group = Group::Tools;
const VEHICLE: Group = Group::Vehicle;

#[rustfmt::skip]
pub(super) const TABLE: [Appliance; 22] = [
    ac(108, "app-e-bike", TOOLS, [90.0, 180.0, 250.0], charges(2.0, 17_400.0, 36.0, 0.85),
        "e bike ebike bicycle pedelec charger elektrofahrrad fahrrad velo electrique elektrische fiets")
        .at(Window::DAYTIME),
    ac(109, "app-e-scooter", TOOLS, [60.0, 80.0, 140.0], charges(2.0, 8_350.0, 36.0, 0.85),
        "e scooter kick scooter charger elektroroller roller trottinette electrique step elektrische")
        .at(Window::DAYTIME),
    ac(110, "app-power-tool-charger", TOOLS, [40.0, 60.0, 150.0], hours(1.0),
        "power tool drill battery charger akkuschrauber werkzeug ladegerat visseuse outil chargeur boormachine gereedschap lader")
        .at(Window::DAYTIME),
    dc(111, "app-vacuum", TOOLS, [60.0, 120.0, 200.0], minutes(10.0),
        "vacuum cleaner handheld staubsauger sauger aspirateur stofzuiger kruimeldief")
        .at(Window::DAYTIME).surge(3.0),
    dc(112, "app-air-compressor", TOOLS, [100.0, 180.0, 400.0], minutes(10.0),
        "air compressor tyre tire pump kompressor reifen luftpumpe compresseur pneu gonfleur compressor banden")
        .at(Window::DAYTIME).surge(3.0),
    dc(113, "app-inflator", TOOLS, [80.0, 110.0, 150.0], minutes(15.0),
        "inflator awning tent sup board pump elektropumpe luftzelt gonfleur auvent opblaaspomp voortent")
        .at(Window::DAYTIME).surge(2.0),
    dc(114, "app-bed-lift", TOOLS, [60.0, 150.0, 300.0], uses(2.0, 30.0),
        "bed lift tv lift hubbett bettlift lit electrique leve hefbed bedlift")
        .surge(2.0),
    dc(115, "app-electric-fence", TOOLS, [0.1, 0.3, 1.0], Usage::AlwaysOn,
        "electric fence dog bear weidezaun elektrozaun cloture electrique schrikdraad").stays_on(),
    ac(116, "app-power-station", TOOLS, [60.0, 120.0, 300.0], charges(2.0, 20_000.0, 14.4, 0.85),
        "power station portable battery tragbarer stromspeicher station energie portable draagbaar powerstation")
        .at(Window::DAYTIME),
    dc(117, "app-motor-mover", VEHICLE, [240.0, 500.0, 1440.0], uses(1.0, 300.0),
        "mover motor caravan rangierhilfe rangierantrieb deplace caravane robot rangeerhulp")
        .at(Window::DAYTIME).surge(3.0),
    dc(118, "app-entrance-step", VEHICLE, [60.0, 100.0, 180.0], uses(6.0, 7.0),
        "step door electric trittstufe einstiegsstufe marchepied electrique opstapje instaptrede")
        .at(Window::DAYTIME).standby(0.12).surge(2.0),
    dc(119, "app-levelling", VEHICLE, [200.0, 500.0, 1500.0], uses(1.0, 110.0),
        "levelling leveling jacks steadies hydraulic hubstutzen nivellierung verins stabilisateurs mise niveau steunpoten nivelleersysteem")
        .at(Window::DAYTIME).surge(2.0),
    dc(165, "app-air-suspension", VEHICLE, [200.0, 300.0, 400.0], uses(1.0, 120.0),
        "air suspension compressor level luftfederung kompressor suspension pneumatique compresseur luchtvering compressor")
        .at(Window::DAYTIME).surge(3.0),
    dc(166, "app-trailer-stability", VEHICLE, [0.3, 0.5, 1.0], Usage::AlwaysOn,
        "trailer stability anti snaking anhanger stabilisierung schlingern remorque stabilisateur aanhanger stabilisatie slingeren").stays_on(),
    dc(167, "app-side-lights", VEHICLE, [15.0, 25.0, 40.0], hours(1.0),
        "side lights parking lights left on standlicht parklicht feux position veilleuses stadslicht parkeerlicht"),
    dc(168, "app-starter-maintainer", VEHICLE, [5.0, 7.0, 10.0], hours(6.0),
        "starter battery maintainer trickle charge starterbatterie erhaltungsladung batterie demarrage maintien startaccu onderhoudslader"),
    dc(120, "app-dash-cam", VEHICLE, [2.0, 4.0, 8.0], Usage::AlwaysOn,
        "dash cam dashcam parking camera kamera parkuberwachung camera embarquee surveillance dashcam parkeerstand"),
    dc(121, "app-reversing-camera", VEHICLE, [3.0, 5.0, 10.0], minutes(15.0),
        "reversing rear view camera ruckfahrkamera camera recul achteruitrijcamera")
        .at(Window::DAYTIME),
    dc(122, "app-slide-out", VEHICLE, [200.0, 400.0, 900.0], uses(1.0, 60.0),
        "slide out room erker slideout extension coulissante uitschuif")
        .at(Window::DAYTIME).surge(2.0),
    dc(123, "app-awning-motor", VEHICLE, [80.0, 150.0, 300.0], uses(2.0, 40.0),
        "awning motor electric markise elektrisch store electrique luifel elektrische")
        .at(Window::DAYTIME).surge(2.0),
    dc(124, "app-winch", VEHICLE, [600.0, 1500.0, 4000.0], minutes(0.0),
        "winch recovery seilwinde winde treuil lier")
        .at(Window::DAYTIME).surge(2.0).caution(&[Caution::Heavy]),
    dc(125, "app-boat-motor-charging", VEHICLE, [60.0, 100.0, 200.0], charges(3.0, 30_000.0, 12.8, 0.85),
        "outboard boat trolling motor charger bootsmotor aussenborder moteur bateau hors bord buitenboordmotor boot")
        .at(Window::DAYTIME),
];
