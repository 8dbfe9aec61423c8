//! The leisure battery bank.

use super::sanitise::{FRAC, Sanitiser};
use crate::units::{AmpHours, Ohms, Volts};
use bounds::{CABLE_OHM, CAPACITY_AH, HEALTH_FRAC, PARALLEL, SOC_MIN_FRAC};
use serde::{Deserialize, Serialize};

/// What the fields may hold.
pub mod bounds {
    use crate::model::sanitise::Range;

    /// Capacity of one string [Ah].
    pub const CAPACITY_AH: Range = Range::new(1.0, 5_000.0);
    /// Strings in parallel.
    pub const PARALLEL: Range = Range::new(1.0, 16.0);
    /// Remaining capacity with age.
    pub const HEALTH_FRAC: Range = Range::new(0.3, 1.0);
    /// Lowest state of charge allowed.
    pub const SOC_MIN_FRAC: Range = Range::new(0.0, 0.95);
    /// Cable resistance of the bank [Ohm].
    pub const CABLE_OHM: Range = Range::new(0.0, 0.1);
}

/// What the battery is made of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Chemistry {
    /// Flooded ("wet") lead-acid.
    Flooded,
    /// Absorbent glass mat lead-acid.
    #[default]
    Agm,
    /// Gel lead-acid.
    Gel,
    /// Lithium iron phosphate.
    LiFePo4,
}

impl Chemistry {
    /// All chemistries, in the order they are listed.
    pub const ALL: [Self; 4] = [Self::Flooded, Self::Agm, Self::Gel, Self::LiFePo4];

    /// Lead-acid of any kind.
    #[must_use]
    pub fn is_lead(self) -> bool {
        match self {
            Self::Flooded | Self::Agm | Self::Gel => true,
            Self::LiFePo4 => false,
        }
    }

    /// Lowest state of charge usually allowed, 0..1: lead-acid is used to half of its capacity,
    /// lithium down to a tenth (common practice, no source).
    #[must_use]
    pub fn usual_soc_min_frac(self) -> f64 {
        if self.is_lead() { 0.5 } else { 0.1 }
    }
}

/// Nominal voltage of the whole 12 V or 24 V system.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SystemVoltage {
    /// 12 V.
    #[default]
    V12,
    /// 24 V.
    V24,
}

impl SystemVoltage {
    /// Nominal voltage [V].
    #[must_use]
    pub fn nominal(self) -> Volts {
        Volts(12.0 * self.series_12v())
    }

    /// How many 12 V blocks in series: 1 or 2.
    #[must_use]
    pub fn series_12v(self) -> f64 {
        match self {
            Self::V12 => 1.0,
            Self::V24 => 2.0,
        }
    }
}

/// Where the battery stands; sets its temperature.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BatteryPlace {
    /// In the living space, heated with it.
    Inside,
    /// In a locker of the body, milder than outside.
    #[default]
    Locker,
    /// Outside, on the drawbar or chassis.
    Outside,
}

/// The bank: like blocks in series and parallel.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Bank {
    /// Chemistry of every block; mixing chemistries is not modelled and not advised.
    pub chemistry: Chemistry,
    /// Rated capacity of one string at the 20 h rate [Ah].
    pub capacity_20h: AmpHours,
    /// Strings in parallel, 1..16.
    pub parallel: u8,
    /// Nominal voltage of the system; blocks in series make it up.
    pub system: SystemVoltage,
    /// Nominal voltage of one block [V]: 6, 12 or 24.
    pub block_volts: Volts,
    /// What is left of the rated capacity with age, 0.3..1.
    pub health_frac: f64,
    /// Lowest state of charge the user allows, 0..0.95.
    pub soc_min_frac: f64,
    /// State of charge on arrival, 0..1.
    pub soc_start_frac: f64,
    /// Where it stands.
    pub place: BatteryPlace,
    /// LiFePO4: warmed so that it can charge below 0 degrees Celsius.
    pub heated: bool,
    /// LiFePO4: the maker allows charging below 0 degrees Celsius.
    pub cold_charge_allowed: bool,
    /// Resistance of the cables between the bank and the distribution, both ways [Ohm].
    pub cable: Ohms,
}

impl Default for Bank {
    fn default() -> Self {
        Self {
            chemistry: Chemistry::Agm,
            capacity_20h: AmpHours(100.0),
            parallel: 1,
            system: SystemVoltage::V12,
            block_volts: Volts(12.0),
            health_frac: 1.0,
            soc_min_frac: Chemistry::Agm.usual_soc_min_frac(),
            soc_start_frac: 1.0,
            place: BatteryPlace::Locker,
            heated: false,
            cold_charge_allowed: false,
            cable: Ohms(0.004),
        }
    }
}

impl Bank {
    /// A new bank of this chemistry takes the place of the old one: at the usual lowest level,
    /// neither heated nor allowed to charge in the cold. The same chemistry changes nothing.
    pub fn exchange(&mut self, chemistry: Chemistry) {
        if chemistry != self.chemistry {
            self.chemistry = chemistry;
            self.soc_min_frac = chemistry.usual_soc_min_frac();
            self.heated = false;
            self.cold_charge_allowed = false;
        }
    }

    /// The bank aboard turns out to be of this chemistry: it brings its usual lowest level along
    /// where the user has not set an own one.
    pub fn set_chemistry(&mut self, chemistry: Chemistry) {
        if self.soc_min_frac == self.chemistry.usual_soc_min_frac() {
            self.soc_min_frac = chemistry.usual_soc_min_frac();
        }
        self.chemistry = chemistry;
    }

    /// Rated capacity of the whole bank at the 20 h rate [Ah], new, 25 degrees Celsius.
    #[must_use]
    pub fn rated_capacity(&self) -> AmpHours {
        self.capacity_20h * f64::from(self.parallel)
    }

    /// Capacity of the whole bank at the 20 h rate with its age [Ah], 25 degrees Celsius.
    #[must_use]
    pub fn aged_capacity(&self) -> AmpHours {
        self.rated_capacity() * self.health_frac
    }

    /// Blocks in series to reach the system voltage.
    #[must_use]
    pub fn series(&self) -> u8 {
        let blocks = (self.system.nominal() / self.block_volts).round();
        if blocks.is_finite() { blocks.clamp(1.0, 4.0) as u8 } else { 1 }
    }

    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self {
            chemistry: _,
            capacity_20h,
            parallel,
            system,
            block_volts,
            health_frac,
            soc_min_frac,
            soc_start_frac,
            place: _,
            heated: _,
            cold_charge_allowed: _,
            cable,
        } = self;
        sanitiser.number(&mut capacity_20h.0, CAPACITY_AH, 100.0);
        sanitiser.whole(parallel, PARALLEL);
        let nearest = if block_volts.0 >= 18.0 && system.series_12v() > 1.5 {
            24.0
        } else if block_volts.0 < 9.0 {
            6.0
        } else {
            12.0
        };
        if block_volts.0 != nearest {
            block_volts.0 = nearest;
            sanitiser.changed += 1;
        }
        sanitiser.number(health_frac, HEALTH_FRAC, 1.0);
        sanitiser.number(soc_min_frac, SOC_MIN_FRAC, 0.5);
        sanitiser.number(soc_start_frac, FRAC, 1.0);
        sanitiser.number(&mut cable.0, CABLE_OHM, 0.004);
    }
}
