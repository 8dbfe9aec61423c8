//! Readings on the measuring bench, sound and unsound.

use super::kept::Report;
use nightbank::advice::on_site::measure::{
    Accuracy, ChargeStage, ControllerReading, FridgeRuns, Instrument, MeasureError, Measured,
    MonitorReading, Running, battery_monitor, behind_inverter, could_deliver, energy_over_time,
    fridge_runs, series_current, series_power, solar_controller,
};
use nightbank::model::{Inverter, Load};
use nightbank::units::{AmpHours, Amps, Celsius, Hours, Volts, WattHours, Watts};

const INSTRUMENTS: [Instrument; 5] = [
    Instrument::Multimeter,
    Instrument::Clamp,
    Instrument::PowerMeter,
    Instrument::ShuntMonitor,
    Instrument::SolarController,
];

fn say(report: &mut Report, name: &str, read: Result<Measured, MeasureError>) {
    report.say(name, &read);
    if let Ok(measured) = read {
        let load = measured.applied_to(&Load::default());
        report.say("    as a load", &(load.draw, load.usage, load.draw_source, load.spread_frac));
    }
}

/// Currents, powers, counted energy and charge, a fridge, the solar controller.
pub fn readings() -> Report {
    let mut report = Report::default();
    for instrument in INSTRUMENTS {
        let usual = instrument.usual();
        report.part(&format!("{instrument:?}, {usual:?}"));
        for (amps, volts) in [(0.12, 12.6), (3.4, 13.1), (14.0, 12.2), (0.0, 12.0), (2.0, -1.0)] {
            let read = series_current(Amps(amps), Volts(volts), instrument, usual);
            say(&mut report, &format!("{amps} A at {volts} V"), read);
        }
    }
    let meter = Instrument::PowerMeter.usual();
    report.part("Power and energy");
    for watts in [0.4, 7.0, 640.0, 2e6] {
        say(&mut report, &format!("{watts} W"), series_power(Watts(watts), meter));
        for sine in [true, false] {
            let inverter = Inverter { idle: Watts(9.0), ..Inverter::default() };
            let read = behind_inverter(Watts(watts), &inverter, sine, meter);
            say(&mut report, &format!("{watts} W behind the inverter, sine {sine}"), read);
        }
    }
    for (energy, hours) in [(310.0, 24.0), (52.0, 6.5), (0.2, 30.0), (5.0, 0.0)] {
        for running in [Running::Throughout, Running::AsUsual] {
            let accuracy = Accuracy { gain_frac: 0.02, resolution: 0.1 };
            let read = energy_over_time(WattHours(energy), Hours(hours), running, accuracy);
            say(&mut report, &format!("{energy} Wh in {hours} h, {running:?}"), read);
        }
    }
    counted(&mut report);
    report
}

fn counted(report: &mut Report) {
    report.part("A monitor");
    let shunt = Instrument::ShuntMonitor.usual();
    let sound = MonitorReading {
        before: AmpHours(12.3),
        after: AmpHours(17.9),
        voltage: Volts(12.9),
        elapsed: Hours(3.5),
        background: Amps(0.4),
        charged: false,
        running: Running::Throughout,
    };
    for reading in [
        sound,
        MonitorReading { running: Running::AsUsual, ..sound },
        MonitorReading { charged: true, elapsed: Hours(26.0), ..sound },
        MonitorReading { background: Amps(2.0), ..sound },
        MonitorReading { after: AmpHours(12.0), ..sound },
        MonitorReading { after: AmpHours(13.8), elapsed: Hours(3.6), ..sound },
    ] {
        say(report, "read", battery_monitor(reading, shunt));
    }
    report.part("A fridge");
    let sound = FridgeRuns {
        ran: Hours(8.2),
        watched: Hours(24.0),
        cycles: 30,
        air: Celsius(19.5),
        air_error_k: 2.0,
    };
    for seen in [
        sound,
        FridgeRuns { ran: Hours(1.9), watched: Hours(6.0), cycles: 2, air: Celsius(31.0), ..sound },
        FridgeRuns { ran: Hours(23.9), cycles: 1, ..sound },
        FridgeRuns { ran: Hours(25.0), ..sound },
        FridgeRuns { air: Celsius(8.0), ..sound },
        FridgeRuns { cycles: 0, ..sound },
    ] {
        say(report, "watched", fridge_runs(seen));
    }
    report.part("A solar controller");
    report.say("could", &could_deliver(Watts(200.0), 0.6, Volts(13.6)));
    let sound = ControllerReading {
        off_before: Amps(1.2),
        on: Amps(4.6),
        off_after: Amps(1.35),
        voltage: Volts(13.7),
        stage: ChargeStage::Float,
        could: Some(Amps(9.0)),
    };
    let controller = Instrument::SolarController.usual();
    for reading in [
        sound,
        ControllerReading { stage: ChargeStage::Absorption, could: None, ..sound },
        ControllerReading { stage: ChargeStage::Bulk, ..sound },
        ControllerReading { could: Some(Amps(5.0)), ..sound },
        ControllerReading { could: Some(Amps(4.7)), off_after: Amps(2.4), ..sound },
        ControllerReading { on: Amps(1.2), ..sound },
    ] {
        say(report, "read", solar_controller(reading, controller));
    }
}
