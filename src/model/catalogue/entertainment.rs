//! Screens, sound, network and medical devices.

use super::entry::{Appliance, Caution, ac, charges, dc, duty, hours, minutes, uses};
use crate::model::{Group, Usage, Window};

const SCREENS: Group = Group::Screens;
const NET: Group = Group::Net;
const HEALTH: Group = Group::Health;
const MEDICAL: &[Caution] = &[Caution::Medical];

#[rustfmt::skip]
pub(super) const TABLE: [Appliance; 35] = [
    dc(52, "app-tv-small", SCREENS, [15.0, 25.0, 45.0], hours(3.0),
        "tv television telly fernseher tele televiseur televisie tv toestel")
        .at(Window::EVENING).standby(0.5),
    dc(53, "app-tv-large", SCREENS, [30.0, 45.0, 70.0], hours(3.0),
        "tv television telly big fernseher tele televiseur televisie groot")
        .at(Window::EVENING).standby(0.5),
    dc(54, "app-satellite-tv", SCREENS, [10.0, 18.0, 40.0], hours(3.0),
        "satellite dish receiver tv sat schussel satellitenschussel antenne parabole demodulateur schotel satelliet ontvanger")
        .at(Window::EVENING),
    dc(158, "app-dish-search", SCREENS, [50.0, 65.0, 80.0], uses(1.0, 180.0),
        "satellite dish search automatic motor schussel suchlauf satellitenschussel parabole recherche automatique schotel zoeken")
        .at(Window::EVENING),
    dc(55, "app-streaming-stick", SCREENS, [2.0, 4.0, 15.0], hours(4.0),
        "receiver set top box streaming stick digital empfanger decodeur cle tnt ontvanger mediabox")
        .at(Window::EVENING),
    dc(56, "app-projector", SCREENS, [20.0, 50.0, 150.0], hours(2.0),
        "projector beamer cinema film projektor projecteur videoprojecteur")
        .at(Window::EVENING),
    dc(57, "app-laptop", SCREENS, [20.0, 45.0, 100.0], hours(5.0),
        "laptop notebook computer pc rechner ordinateur portable computer schootcomputer")
        .at(Window::DAYTIME),
    ac(156, "app-laptop-gaming", SCREENS, [130.0, 170.0, 230.0], hours(3.0),
        "laptop gaming notebook computer spiele rechner ordinateur portable jeux spelcomputer schootcomputer")
        .at(Window::DAYTIME).mains_only(),
    dc(58, "app-monitor", SCREENS, [15.0, 22.0, 40.0], hours(5.0),
        "monitor screen display bildschirm ecran moniteur beeldscherm scherm")
        .at(Window::DAYTIME).standby(0.3),
    dc(59, "app-tablet", SCREENS, [5.0, 8.0, 18.0], charges(1.5, 7000.0, 3.8, 0.8),
        "tablet pad e reader tablette tablet lezer")
        .at(Window::EVENING),
    dc(60, "app-phone", SCREENS, [5.0, 10.0, 20.0], charges(1.0, 5000.0, 3.85, 0.8),
        "phone mobile cell smartphone handy telefon telephone portable mobiel telefoon gsm")
        .at(Window::EVENING),
    dc(157, "app-phone-wireless", SCREENS, [5.0, 10.0, 15.0], charges(1.0, 5000.0, 3.85, 0.6),
        "phone wireless charger pad qi handy kabellos induktiv telephone recharge sans fil telefoon draadloos opladen")
        .at(Window::EVENING),
    dc(61, "app-smart-watch", SCREENS, [1.0, 2.0, 5.0], charges(1.0, 350.0, 3.85, 0.6),
        "watch earbuds headphones uhr kopfhorer montre ecouteurs casque horloge oortjes koptelefoon")
        .at(Window::EVENING),
    dc(62, "app-camera", SCREENS, [5.0, 10.0, 20.0], charges(1.0, 1600.0, 7.4, 0.8),
        "camera photo video kamera fotoapparat appareil photo fototoestel")
        .at(Window::EVENING),
    dc(63, "app-drone", SCREENS, [40.0, 60.0, 100.0], charges(1.0, 4300.0, 14.8, 0.8),
        "drone quadcopter drohne drone vliegen")
        .at(Window::DAYTIME),
    dc(64, "app-power-bank", SCREENS, [5.0, 12.0, 30.0], charges(2.0, 10_000.0, 3.7, 0.75),
        "power bank powerbank zusatzakku batterie externe accu externe")
        .at(Window::DAYTIME),
    ac(65, "app-games-console", SCREENS, [60.0, 120.0, 210.0], minutes(130.0),
        "games console gaming spielkonsole konsole console jeux spelcomputer spelconsole")
        .at(Window::EVENING).standby(1.0).mains_only(),
    dc(66, "app-radio", SCREENS, [3.0, 8.0, 25.0], hours(3.0),
        "radio music stereo head unit autoradio musik musique radio muziek")
        .at(Window::DAYTIME).standby(0.3),
    dc(67, "app-speaker", SCREENS, [3.0, 5.0, 10.0], charges(3.0, 5200.0, 3.7, 0.8),
        "speaker bluetooth music box lautsprecher musikbox enceinte musique luidspreker muziek")
        .at(Window::DAYTIME),
    dc(68, "app-soundbar", SCREENS, [10.0, 15.0, 40.0], hours(2.0),
        "soundbar amplifier subwoofer verstarker barre son amplificateur versterker")
        .at(Window::EVENING).standby(0.5),
    dc(69, "app-two-way-radio", SCREENS, [3.0, 6.0, 50.0], hours(2.0),
        "cb radio transceiver ham two way funkgerat funk cibi emetteur marifoon zender bakkie")
        .at(Window::DAYTIME),
    dc(70, "app-mobile-router", NET, [3.0, 6.0, 15.0], Usage::AlwaysOn,
        "router wifi wlan internet 4g 5g lte hotspot modem routeur"),
    dc(159, "app-router-5g", NET, [10.0, 15.0, 18.0], Usage::AlwaysOn,
        "router wifi wlan internet 5g hotspot modem routeur"),
    dc(71, "app-satellite-internet-small", NET, [15.0, 28.0, 45.0], Usage::AlwaysOn,
        "satellite internet terminal dish portable satelliteninternet satellitenschussel antenne satelliet schotel"),
    dc(72, "app-satellite-internet-large", NET, [40.0, 65.0, 110.0], Usage::AlwaysOn,
        "satellite internet terminal dish flat satelliteninternet satellitenschussel antenne satelliet schotel"),
    dc(160, "app-satellite-snow", NET, [75.0, 110.0, 150.0], hours(3.0),
        "satellite internet snow melt heating terminal schnee schmelzen satelliteninternet neige fonte chauffage sneeuw smelten schotel"),
    dc(73, "app-aerial-amplifier", NET, [0.5, 1.5, 6.0], Usage::AlwaysOn,
        "aerial antenna amplifier booster tv antennenverstarker antenne amplificateur antenneversterker"),
    dc(74, "app-signal-booster", NET, [5.0, 8.0, 15.0], Usage::AlwaysOn,
        "mobile signal booster repeater signalverstarker verstarker amplificateur repeteur signaalversterker"),
    dc(75, "app-cpap-dry", HEALTH, [6.0, 12.0, 30.0], hours(8.0),
        "cpap sleep apnoea apnea breathing schlafapnoe beatmung atemgerat apnee sommeil slaapapneu beademing")
        .at(Window::NIGHT).caution(MEDICAL),
    dc(76, "app-cpap-humidifier", HEALTH, [30.0, 50.0, 80.0], hours(8.0),
        "cpap humidifier heated hose sleep apnoea apnea schlafapnoe befeuchter beatmung apnee humidificateur slaapapneu bevochtiger")
        .at(Window::NIGHT).caution(MEDICAL),
    dc(77, "app-nebuliser", HEALTH, [20.0, 60.0, 100.0], minutes(20.0),
        "nebuliser nebulizer inhaler inhalator vernebler nebuliseur aerosol vernevelaar")
        .at(Window::DAYTIME).caution(MEDICAL),
    dc(78, "app-medicine-cooler", HEALTH, [6.0, 10.0, 60.0], duty(0.8),
        "insulin medicine cooler fridge medikamente kuhlbox glaciere medicament insuline medicijn koeler")
        .caution(MEDICAL),
    dc(79, "app-oxygen-concentrator", HEALTH, [60.0, 120.0, 350.0], hours(8.0),
        "oxygen concentrator sauerstoff konzentrator sauerstoffgerat oxygene concentrateur zuurstof concentrator")
        .at(Window::NIGHT).surge(1.5).caution(MEDICAL),
    ac(80, "app-wheelchair-charging", HEALTH, [100.0, 150.0, 250.0], charges(2.0, 35_000.0, 24.0, 0.85),
        "wheelchair mobility scooter charger rollstuhl elektromobil fauteuil roulant scooter rolstoel scootmobiel")
        .at(Window::DAYTIME).mains_only().caution(MEDICAL),
    dc(81, "app-baby-monitor", HEALTH, [1.0, 3.0, 6.0], hours(10.0),
        "baby monitor babyphone babyfon ecoute bebe babyfoon").stays_on()
        .at(Window::NIGHT),
];
