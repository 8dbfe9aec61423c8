//! Line pictures of kinds of appliances, drawn for this page on a 24 by 24 grid.

use crate::model::{Group, Load, Usage};
use leptos::prelude::*;

/// A kind of appliance, as a picture tells it; each stands beside a name and is hidden from screen
/// readers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Picture {
    /// A fridge.
    Cold,
    /// Warm air rising.
    Heat,
    /// A fan.
    Fan,
    /// A drop.
    Water,
    /// A bulb.
    Light,
    /// A screen.
    Screen,
    /// A telephone being charged.
    Charging,
    /// Radio waves.
    Internet,
    /// A steaming pot.
    Cooking,
    /// The sign on a switch.
    Standby,
    /// A heart with a cross.
    Medical,
    /// A bicycle.
    Tools,
    /// A washing machine.
    Washing,
    /// A wheel.
    Vehicle,
    /// A plug.
    Other,
}

impl Picture {
    /// The picture of a load.
    pub(super) fn of(load: &Load) -> Self {
        match load.group {
            Group::Cold => Self::Cold,
            Group::Heat => Self::Heat,
            Group::Air => Self::Fan,
            Group::Water => Self::Water,
            Group::Light => Self::Light,
            Group::Screens if matches!(load.usage, Usage::Charges { .. }) => Self::Charging,
            Group::Screens => Self::Screen,
            Group::Net => Self::Internet,
            Group::Health => Self::Medical,
            Group::Kitchen => Self::Cooking,
            Group::Body => Self::Washing,
            Group::Tools => Self::Tools,
            Group::Vehicle => Self::Vehicle,
            Group::Standby => Self::Standby,
            Group::Other => Self::Other,
        }
    }

    fn path(self) -> &'static str {
        match self {
            Self::Cold => "M7 3h10v18H7zM7 10h10M9.5 6v1.5M9.5 12.5V16",
            Self::Heat => {
                "M7 20c-3-4 3-5 0-9.5-1.5-2.5-.5-4.5.5-6M12 20c-3-4 3-5 0-9.5-1.5-2.5-.5-4.5.5-6M17 20c-3-4 3-5 0-9.5-1.5-2.5-.5-4.5.5-6"
            }
            Self::Fan => {
                "M12 10.4a1.6 1.6 0 1 0 0 3.2 1.6 1.6 0 0 0 0-3.2zM11.4 10.5C8.6 7.6 9.5 3.5 12.4 3.5c2.8 0 3 4 .9 7M13.5 11.6c3.9-1 7 1.8 5.6 4.3-1.4 2.4-5 .6-6.5-2.6M11 13.3c-1.1 3.9-5 5.2-6.5 2.7-1.3-2.4 2-4.7 5.9-4.4"
            }
            Self::Water => {
                "M12 3c3.5 4.5 6 7.5 6 11a6 6 0 0 1-12 0c0-3.5 2.5-6.5 6-11zM9 14.5a3 3 0 0 0 3 3"
            }
            Self::Light => {
                "M9.5 17.5h5M10 20.5h4M9.5 17.5c0-3-3.5-4-3.5-8a6 6 0 0 1 12 0c0 4-3.5 5-3.5 8"
            }
            Self::Screen => "M3.5 5h17v11h-17zM8.5 20h7M12 16v4",
            Self::Charging => "M7.5 2.5h9v19h-9zM10.5 18.5h3M12.8 6.5l-2.3 4h3l-2.3 4",
            Self::Internet => {
                "M3.5 10a12 12 0 0 1 17 0M6.5 13.2a8 8 0 0 1 11 0M9.5 16.4a3.8 3.8 0 0 1 5 0M12 19.5h.01"
            }
            Self::Cooking => {
                "M5 11h14v6a3 3 0 0 1-3 3H8a3 3 0 0 1-3-3zM2.5 13H5M19 13h2.5M9.5 8c-1.2-1.7 1.2-2.3 0-4M14.5 8c-1.2-1.7 1.2-2.3 0-4"
            }
            Self::Standby => "M12 3v8.5M8 5.8a7.8 7.8 0 1 0 8 0",
            Self::Medical => {
                "M12 20.5C6 16 3.5 13 3.5 9a4.3 4.3 0 0 1 8.5-1.2A4.3 4.3 0 0 1 20.5 9c0 4-2.5 7-8.5 11.5zM12 10v5.5M9.25 12.75h5.5"
            }
            Self::Tools => {
                "M6 12.5a3.8 3.8 0 1 0 0 7.6 3.8 3.8 0 0 0 0-7.6zM18 12.5a3.8 3.8 0 1 0 0 7.6 3.8 3.8 0 0 0 0-7.6zM6 16.3 9.5 9h5.7L18 16.3M9.5 9l2.8 7.3H6M8 6.5h3M15.2 9l-1-3.5h2.6"
            }
            Self::Washing => {
                "M5 3h14v18H5zM12 8.5a5 5 0 1 0 0 10 5 5 0 0 0 0-10zM8 5.7h3.5M16 5.7h.01M8 14c1.5-1.5 2.5 1 4 0s2.5 1 4 0"
            }
            Self::Vehicle => {
                "M12 3.5a8.5 8.5 0 1 0 0 17 8.5 8.5 0 0 0 0-17zM12 9a3 3 0 1 0 0 6 3 3 0 0 0 0-6zM12 3.5V9M12 15v5.5M3.5 12H9M15 12h5.5"
            }
            Self::Other => "M9 3v5M15 3v5M6 8h12v3a6 6 0 0 1-12 0zM12 17v4",
        }
    }

    /// The picture on the page.
    pub(super) fn view(self) -> AnyView {
        view! {
            <svg class="icon load-picture" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
                <path d=self.path()></path>
            </svg>
        }
        .into_any()
    }
}
