//! Refrigeration.

use super::entry::{Appliance, Caution, ac, air_duty, dc, duty, hours};
use crate::model::{Group, Usage, Window};

const G: Group = Group::Cold;
const WARM_HOURS: Window = Window { from_min: 11 * 60, to_min: 20 * 60 };

#[rustfmt::skip]
pub(super) const TABLE: [Appliance; 12] = [
    dc(1, "app-fridge-compressor-small", G, [35.0, 45.0, 60.0], air_duty(0.30),
        "fridge refrigerator cooler kuhlschrank kompressorkuhlschrank frigo refrigerateur compresseur koelkast compressorkoelkast")
        .surge(3.0).cuts_out(),
    dc(2, "app-fridge-compressor-large", G, [45.0, 60.0, 85.0], air_duty(0.38),
        "fridge refrigerator kuhlschrank kompressorkuhlschrank frigo refrigerateur compresseur koelkast compressorkoelkast")
        .surge(3.0).cuts_out(),
    dc(3, "app-coolbox-compressor", G, [35.0, 45.0, 60.0], air_duty(0.28),
        "fridge cool box coolbox cooler kuhlbox kompressorkuhlbox kuhlschrank glaciere frigo koelbox koelkast")
        .surge(3.0).cuts_out(),
    dc(4, "app-freezer", G, [45.0, 60.0, 80.0], air_duty(0.55),
        "freezer deep freeze gefrierschrank gefrierbox tiefkuhler congelateur vriezer diepvries vrieskist")
        .surge(3.0).cuts_out(),
    dc(148, "app-fridge-freezer-dual", G, [45.0, 60.0, 85.0], air_duty(0.55),
        "fridge freezer dual zone cool box kuhlbox gefrierbox zwei zonen kuhlschrank glaciere congelateur double zone koelbox vriesbox koelkast")
        .surge(3.0).cuts_out(),
    dc(5, "app-coolbox-thermoelectric", G, [36.0, 48.0, 60.0], duty(0.9),
        "cool box coolbox cooler peltier electric kuhlbox elektrokuhlbox glaciere electrique thermoelectrique koelbox elektrisch"),
    dc(6, "app-fridge-absorption-control", G, [1.0, 3.0, 8.0], Usage::AlwaysOn,
        "fridge gas three way 3 lpg absorber absorberkuhlschrank gaskuhlschrank frigo gaz trimixte absorption gaskoelkast absorptiekoelkast koelkast")
        .caution(&[Caution::Combustion]),
    dc(7, "app-fridge-absorption-element", G, [100.0, 150.0, 200.0], Usage::WhileDriving,
        "fridge three way 3 driving absorber absorberkuhlschrank fahrt frigo trimixte absorption route absorptiekoelkast koelkast rijden")
        .caution(&[Caution::DrivingOnly, Caution::Heavy]),
    dc(8, "app-fridge-vent-fans", G, [1.0, 3.0, 7.0], hours(5.0),
        "fridge fan cooling vent kuhlschranklufter lufter kuhlschrank ventilateur frigo koelkastventilator ventilator koelkast")
        .at(WARM_HOURS),
    dc(9, "app-fridge-drawer", G, [30.0, 40.0, 50.0], air_duty(0.25),
        "fridge drawer mini kuhlschublade kuhlschrank schubladenkuhlschrank tiroir frigo koellade koelkast")
        .surge(3.0).cuts_out(),
    ac(10, "app-fridge-household", G, [60.0, 90.0, 150.0], air_duty(0.35),
        "fridge refrigerator residential domestic mains haushaltskuhlschrank kuhlschrank frigo menager refrigerateur huishoudkoelkast koelkast")
        .surge(6.0),
    ac(11, "app-ice-maker", G, [90.0, 120.0, 160.0], hours(1.0),
        "ice cubes eiswurfel eiswurfelmaschine eismaschine machine glacons ijsblokjes ijsmachine")
        .at(Window::DAYTIME).surge(3.0),
];
