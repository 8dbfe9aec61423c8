//! Line icons, drawn for this page on a 24 by 24 grid.

use leptos::prelude::*;

/// An icon; each stands beside words and is hidden from screen readers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Icon {
    /// A crescent.
    Nights,
    /// A plug.
    Loads,
    /// A battery.
    Power,
    /// A tent.
    Trip,
    /// A dial being turned.
    Change,
    /// Three dots.
    More,
    /// A plus.
    Add,
    /// A minus.
    Less,
    /// A bin.
    Delete,
    /// Two sheets.
    Duplicate,
    /// An arrow turning back.
    Undo,
    /// A cross.
    Close,
    /// A looking glass.
    Search,
    /// A chevron pointing down.
    Open,
    /// A triangle with a stroke.
    Caution,
    /// A sun.
    Sun,
    /// A steering wheel.
    Drive,
    /// A bollard with a cable.
    HookUp,
    /// A pin.
    Place,
    /// A sheet of paper with lines.
    Table,
    /// A flame.
    Flame,
    /// A motor with a pull cord.
    Generator,
    /// A tick.
    Done,
    /// A chevron pointing back.
    Back,
    /// A question mark in a ring.
    Unknown,
    /// A leaf of a calendar.
    Calendar,
    /// A panel van.
    CamperVan,
    /// A trailer with a wheel.
    Caravan,
    /// A coachbuilt motorhome.
    Motorhome,
    /// A bed.
    Inside,
    /// A locker with two drawers.
    Locker,
    /// A tree.
    Outside,
    /// A sun half behind a cloud.
    SunAndCloud,
    /// A cloud.
    Cloud,
    /// Steps with an arrow pointing up.
    Try,
    /// A battery with caps to fill water in at.
    BatteryWet,
    /// A battery of plates between mats.
    BatteryMat,
    /// A battery filled with gel.
    BatteryGel,
    /// A battery of many cells.
    BatteryCells,
    /// A panel seen from its side, so many degrees tilted; of the tilts that are drawn the nearest.
    Tilted(u8),
    /// An arrow as seen on a map; points of the compass, clockwise from north.
    Towards(u8),
}

impl Icon {
    fn path(self) -> &'static str {
        match self {
            Self::Nights => "M19 14.5A7.5 7.5 0 1 1 10.5 4a6 6 0 0 0 8.5 10.5z",
            Self::Loads => "M9 3v5M15 3v5M6 8h12v3a6 6 0 0 1-12 0zM12 17v4",
            Self::Power => "M3 8h16v9H3zM19 11h2v3h-2M7 12.5h4M9 10.5v4M14 12.5h2",
            Self::Trip => "M12 5 3 19h18zM12 5l-1.5-2M12 5l1.5-2M12 12l-3 7M12 12l3 7",
            Self::Change => "M4 7h9M17 7h3M15 4.5v5M4 17h3M11 17h9M9 14.5v5",
            Self::More => {
                "M6 12a1 1 0 1 1-2 0a1 1 0 1 1 2 0M13 12a1 1 0 1 1-2 0a1 1 0 1 1 2 0M20 12a1 1 0 1 1-2 0a1 1 0 1 1 2 0"
            }
            Self::Add => "M12 5v14M5 12h14",
            Self::Less => "M5 12h14",
            Self::Delete => "M4 7h16M9 7V4h6v3M6 7l1 13h10l1-13M10 11v5M14 11v5",
            Self::Duplicate => "M8 8h12v12H8zM16 8V4H4v12h4",
            Self::Undo => "M4 9h10a5 5 0 0 1 0 10H9M4 9l4-4M4 9l4 4",
            Self::Close => "M6 6l12 12M18 6 6 18",
            Self::Search => "M10.5 4a6.5 6.5 0 1 0 0 13 6.5 6.5 0 0 0 0-13zM15.5 15.5 20 20",
            Self::Open => "M6 9l6 6 6-6",
            Self::Caution => "M12 4 2.5 20h19zM12 10v5M12 17.5h.01",
            Self::Sun => {
                "M12 8a4 4 0 1 0 0 8 4 4 0 0 0 0-8zM12 2v3M12 19v3M2 12h3M19 12h3M5 5l2 2M17 17l2 2M5 19l2-2M17 7l2-2"
            }
            Self::Drive => {
                "M12 3a9 9 0 1 0 0 18 9 9 0 0 0 0-18zM12 10a2 2 0 1 0 0 4 2 2 0 0 0 0-4zM3.5 10.5l6.5.5M20.5 10.5 14 11M12 14v7"
            }
            Self::HookUp => {
                "M5 21V6a3 3 0 0 1 6 0v15M3 21h10M8 8v3M11 13h3a3 3 0 0 1 3 3v1a2 2 0 0 0 4 0v-4"
            }
            Self::Place => {
                "M12 21c-4-5-6.5-8-6.5-11.5a6.5 6.5 0 0 1 13 0C18.5 13 16 16 12 21zM12 7.5a2 2 0 1 0 0 4 2 2 0 0 0 0-4z"
            }
            Self::Table => "M4 5h16v14H4zM4 10h16M4 14.5h16M10 10v9",
            Self::Flame => {
                "M12 3c1 4 5 5.5 5 10a5 5 0 0 1-10 0c0-2 1-3 2-4 .5 1 1 1.5 1.5 1.5C11.5 8 11 6 12 3z"
            }
            Self::Generator => {
                "M4 9h12v9H4zM16 12h3v3h-3M8 9V6h4v3M7 18v2M13 18v2M10 11.5l-1.5 2h3l-1.5 2"
            }
            Self::Done => "M5 12.5l5 5 9-11",
            Self::Back => "M15 5l-7 7 7 7",
            Self::Unknown => {
                "M12 3a9 9 0 1 0 0 18 9 9 0 0 0 0-18zM9.5 9.5a2.5 2.5 0 1 1 3.5 2.3c-.7.3-1 .8-1 1.7M12 16.5v.01"
            }
            Self::Calendar => "M4 6h16v14H4zM4 10h16M8 3v4M16 3v4",
            Self::CamperVan => {
                "M3 17H2V8a2 2 0 0 1 2-2h9l5 5h2a2 2 0 0 1 2 2v4h-2M7 17h9M7 17a2 2 0 1 1-4 0 2 2 0 1 1 4 0M20 17a2 2 0 1 1-4 0 2 2 0 1 1 4 0M6 9h5v3H6z"
            }
            Self::Caravan => {
                "M2 17h3M9 17h13M2 17V9a3 3 0 0 1 3-3h9a3 3 0 0 1 3 3v8M9 17a2 2 0 1 1-4 0 2 2 0 1 1 4 0M5 9h4v3H5zM12 9h2.5v5H12z"
            }
            Self::Motorhome => {
                "M3 17H2V5h13v3h3l4 5v4h-2M7 17h9M7 17a2 2 0 1 1-4 0 2 2 0 1 1 4 0M20 17a2 2 0 1 1-4 0 2 2 0 1 1 4 0M5 8h4v3H5zM15 8v5h7"
            }
            Self::Inside => {
                "M3 19V8M3 15h18v4M21 15v-2a3 3 0 0 0-3-3h-7v5M8 11.5a1.5 1.5 0 1 1-3 0 1.5 1.5 0 1 1 3 0"
            }
            Self::Locker => "M4 5h16v14H4zM4 12h16M11 8.5h2M11 15.5h2",
            Self::Outside => "M12 21v-7M12 15c-4 0-6-2-6-5a6 6 0 0 1 12 0c0 3-2 5-6 5zM5 21h14",
            Self::SunAndCloud => {
                "M9 6.5a3.5 3.5 0 0 0-2.5 6M9 2v1.5M3.5 5l1 1M14.5 5l-1 1M2 10.5h1.5M9 20h9a3.5 3.5 0 0 0 .5-7 5 5 0 0 0-9.5 0A3.5 3.5 0 0 0 9 20z"
            }
            Self::Cloud => {
                "M7 19h10.5a4 4 0 0 0 .5-8 6 6 0 0 0-11.5 1A3.6 3.6 0 0 0 7 19zM8 22v.01M12 22v.01M16 22v.01"
            }
            Self::Try => "M4 19h6v-5h5V9h5M8 8l4-4 4 4M12 4v6",
            Self::BatteryWet => {
                "M3 9h18v11H3zM5 9V7h2v2M11 9V7h2v2M17 9V7h2v2M3 13.5c1.5-1.5 3-1.5 4.5 0s3 1.5 4.5 0 3-1.5 4.5 0 3 1.5 4.5 0"
            }
            Self::BatteryMat => "M3 8h18v12H3zM6 8V6h3v2M15 8V6h3v2M8 11v6M12 11v6M16 11v6",
            Self::BatteryGel => {
                "M3 8h18v12H3zM6 8V6h3v2M15 8V6h3v2M12 10.5c-2 2.3-3 3.2-3 4.500a3 3 0 0 0 6 0c0-1.3-1-2.2-3-4.500z"
            }
            Self::BatteryCells => "M3 8h18v12H3zM6 8V6h3v2M15 8V6h3v2M3 14h18M9 8v12M15 8v12",
            Self::Tilted(..=9) => "M2 20h20M4 16h16M7 16v4M17 16v4",
            Self::Tilted(..=29) => "M2 20h20M4 18l16-5.800M17 13.300V20",
            Self::Tilted(..=49) => "M2 20h20M5 19 18 8M16 9.700V20",
            Self::Tilted(_) => "M2 20h20M7 19l7-14M12.5 8l4.5 12",
            Self::Towards(0) => "M12 21V3M6 9l6-6 6 6",
            Self::Towards(1) => "M6 18 18 6M10 6h8v8",
            Self::Towards(2) => "M3 12h18M15 6l6 6-6 6",
            Self::Towards(3) => "M6 6l12 12M18 10v8h-8",
            Self::Towards(4) => "M12 3v18M6 15l6 6 6-6",
            Self::Towards(5) => "M18 6 6 18M14 18H6v-8",
            Self::Towards(6) => "M21 12H3M9 6l-6 6 6 6",
            Self::Towards(_) => "M18 18 6 6M6 14V6h8",
        }
    }
}

/// The icon as a picture without words.
#[must_use]
pub fn icon(icon: Icon) -> AnyView {
    view! {
        <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
            <path d=icon.path()></path>
        </svg>
    }
    .into_any()
}
