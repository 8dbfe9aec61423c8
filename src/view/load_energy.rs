//! What each load takes in a day, for the list that is being edited.

use super::outlook::Calculation;
use super::state::AppState;
use crate::forecast::demand::LoadEnergy;
use crate::forecast::demand::inverter_share::InverterEnergy;
use crate::forecast::outlook::Drawer;
use crate::units::{Celsius, WattHours};
use leptos::prelude::*;

/// What a day takes, by load: what the inverter takes is put down to the load that makes it run.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DayUse {
    loads: LoadEnergy,
    inverter: InverterEnergy,
    /// What is no load of the list and draws all the same; only what draws something.
    pub others: Vec<(Drawer, WattHours)>,
    /// All that is switched on, and [`Self::others`]: the same as the answer's use a day.
    pub total: WattHours,
}

impl DayUse {
    /// Of the load with this id at the battery, the inverter's losses and its share of the inverter's
    /// own draw included.
    #[must_use]
    pub fn of_load(&self, id: u32) -> WattHours {
        self.loads.of_load(id) + self.inverter.of_load(id).idle
    }

    /// The same without the inverter's own draw.
    #[must_use]
    pub fn without_inverter_idle(&self, id: u32) -> WattHours {
        self.loads.of_load(id)
    }

    /// How much of [`Self::of_load`] the inverter takes.
    #[must_use]
    pub fn of_inverter(&self, id: u32) -> WattHours {
        let part = self.inverter.of_load(id);
        part.idle + part.conversion
    }

    /// Share of the whole day's use, 0..1.
    #[must_use]
    pub fn share(&self, energy: WattHours) -> f64 {
        if self.total.0 > 0.0 { (energy / self.total).clamp(0.0, 1.0) } else { 0.0 }
    }
}

/// What the loads take, following every edit.
#[must_use]
pub fn follow(app: AppState, calculation: Calculation) -> Memo<DayUse> {
    let air = Memo::new(move |_| {
        // The same day the answer speaks of.
        let sun = calculation.sun.get();
        sun.map_or([Celsius(15.0); 24], |sun| sun.0.first_whole_day_air())
    });
    // With everything switched off there is no answer, and nothing beside it.
    let electronics = Memo::new(move |_| {
        calculation.outlook.get().map_or(WattHours::ZERO, |outlook| {
            let own = outlook.0.shares.iter().filter(|share| share.drawer == Drawer::Electronics);
            own.map(|share| share.per_day).sum()
        })
    });
    Memo::new(move |_| {
        let (air, electronics) = (air.get(), electronics.get());
        app.setup.with(|setup| {
            let (loads, inverter) = (LoadEnergy::of(setup, &air), InverterEnergy::of(setup, &air));
            let others =
                [(Drawer::InverterIdle, inverter.alone), (Drawer::Electronics, electronics)];
            let others = others.into_iter().filter(|(_, energy)| energy.0 > 0.0).collect();
            let total = loads.total + inverter.shared + inverter.alone + electronics;
            DayUse { loads, inverter, others, total }
        })
    })
}
