//! Standby draws: alarms, displays, control panels and other things that are never off.

use super::entry::{Appliance, Caution, dc};
use crate::model::{Group, Usage};

const G: Group = Group::Standby;
const ON: Usage = Usage::AlwaysOn;
const ELSEWHERE: &[Caution] = &[Caution::CountedElsewhere];

#[rustfmt::skip]
pub(super) const TABLE: [Appliance; 22] = [
    dc(126, "app-control-panel", G, [0.3, 1.4, 3.0], ON,
        "control panel power unit display distribution bordkontrolle panel kontrolltafel stromverteiler tableau commande bedieningspaneel voeding")
        .stays_on(),
    dc(127, "app-whole-van-standby", G, [2.0, 14.0, 20.0], ON,
        "phantom parasitic whole van standby ruhestrom stiller verbraucher consommation fantome veille sluipverbruik"),
    dc(128, "app-gas-alarm", G, [0.6, 1.0, 2.5], ON,
        "gas co carbon monoxide smoke alarm detector gaswarner rauchmelder kohlenmonoxid detecteur gaz fumee monoxyde gasalarm rookmelder koolmonoxide").stays_on(),
    dc(129, "app-alarm-tracker", G, [0.2, 0.5, 1.5], ON,
        "burglar alarm tracker gps alarmanlage ortung alarme traceur vol inbraakalarm volgsysteem").stays_on(),
    dc(130, "app-usb-socket", G, [0.02, 0.1, 0.6], ON,
        "usb socket idle steckdose dose prise veille stopcontact contactdoos"),
    dc(131, "app-inverter-idle-300w", G, [3.0, 4.5, 6.0], ON,
        "inverter idle 300 standby wechselrichter leerlauf onduleur convertisseur veille omvormer nullast")
        .caution(ELSEWHERE),
    dc(132, "app-inverter-idle-1kw", G, [8.0, 10.0, 12.0], ON,
        "inverter idle 1000 standby wechselrichter leerlauf onduleur convertisseur veille omvormer nullast")
        .caution(ELSEWHERE),
    dc(133, "app-inverter-idle-2kw", G, [10.0, 22.0, 30.0], ON,
        "inverter idle 2000 standby wechselrichter leerlauf onduleur convertisseur veille omvormer nullast")
        .caution(ELSEWHERE),
    dc(134, "app-inverter-idle-3kw", G, [18.0, 27.0, 35.0], ON,
        "inverter idle 3000 standby wechselrichter leerlauf onduleur convertisseur veille omvormer nullast")
        .caution(ELSEWHERE),
    dc(135, "app-inverter-power-save", G, [1.0, 2.0, 6.0], ON,
        "inverter search eco power save wechselrichter sparmodus onduleur eco convertisseur omvormer spaarstand")
        .caution(ELSEWHERE),
    dc(136, "app-battery-monitor", G, [0.01, 0.2, 1.0], ON,
        "battery monitor bms shunt bluetooth batteriecomputer batteriemonitor moniteur batterie accumonitor").stays_on(),
    dc(137, "app-solar-controller", G, [0.05, 0.3, 1.0], ON,
        "solar charge controller regulator self laderegler solarregler regulateur solaire laadregelaar zonnepaneel").stays_on()
        .caution(ELSEWHERE),
    dc(138, "app-unexplained-standby", G, [0.8, 3.1, 6.0], ON,
        "unexplained standby everything off drain leak ruhestrom kriechstrom veille inexpliquee fuite lekstroom onverklaard stand by"),
    dc(139, "app-heater-panel-standby", G, [0.1, 0.5, 1.0], ON,
        "heater panel thermostat display standby heizung bedienteil thermostat chauffage veille kachel thermostaat").stays_on(),
    dc(140, "app-tank-sensors", G, [0.02, 0.2, 1.0], ON,
        "tank level sensor gauge tankanzeige fullstand sonde jauge niveau tankmeter niveausensor"),
    dc(141, "app-clock-memory", G, [0.02, 0.1, 0.3], ON,
        "clock radio memory uhr speicher horloge memoire klok geheugen"),
    dc(142, "app-dcdc-standby", G, [0.02, 0.15, 0.5], ON,
        "dc charger booster battery standby ladebooster booster ruhestrom chargeur veille lader ruststroom").stays_on(),
    dc(143, "app-security-camera", G, [2.0, 4.0, 8.0], ON,
        "security camera wifi uberwachungskamera kamera camera surveillance bewakingscamera"),
    dc(144, "app-smart-hub", G, [0.5, 2.0, 5.0], ON,
        "smart home hub gateway voice assistant steuerung zentrale maison connectee domotica"),
    dc(145, "app-tyre-pressure-display", G, [0.05, 0.2, 1.0], ON,
        "tyre tire pressure display reifendruck anzeige pression pneus bandenspanning"),
    dc(146, "app-relay-held", G, [1.0, 2.0, 5.0], ON,
        "relay contactor main switch relais trennrelais relais contacteur hoofdschakelaar").stays_on(),
    dc(147, "app-switch-lights", G, [0.02, 0.2, 0.6], ON,
        "switch socket indicator led schalter kontrolllampe temoin interrupteur schakelaar controlelampje"),
];
