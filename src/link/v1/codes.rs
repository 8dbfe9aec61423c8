//! Numbers of the choices. Frozen: a number once given away is never given to another choice.

use crate::link::wire::{Fault, Wire};
use crate::model::{
    BatteryPlace, Chemistry, Controller, Feed, Group, Learned, Mounting, OtherSourceKind,
    SystemVoltage,
};

/// A choice among a few, carried as a number of fixed width.
pub(super) trait Choice: Copy {
    /// Bits of the number.
    const WIDTH: u32;
    /// Its number.
    fn code(self) -> u32;
    /// The choice behind a number, if there is one.
    fn from_code(code: u32) -> Option<Self>;
}

macro_rules! choice {
    ($name:ident: $width:literal; $($variant:ident = $code:literal),+ $(,)?) => {
        impl Choice for $name {
            const WIDTH: u32 = $width;
            fn code(self) -> u32 {
                match self {
                    $(Self::$variant => $code,)+
                }
            }
            fn from_code(code: u32) -> Option<Self> {
                match code {
                    $($code => Some(Self::$variant),)+
                    _ => None,
                }
            }
        }
    };
}

choice!(Group: 4;
    Cold = 0, Heat = 1, Air = 2, Water = 3, Light = 4, Screens = 5, Net = 6, Health = 7,
    Kitchen = 8, Body = 9, Tools = 10, Vehicle = 11, Standby = 12, Other = 13);
choice!(Learned: 2; Meter = 0, SpecSheet = 1, Label = 2, Estimate = 3);
choice!(Feed: 1; Dc = 0, Inverter = 1);
choice!(Chemistry: 3; Flooded = 0, Agm = 1, Gel = 2, LiFePo4 = 3);
choice!(SystemVoltage: 1; V12 = 0, V24 = 1);
choice!(BatteryPlace: 2; Inside = 0, Locker = 1, Outside = 2);
choice!(Mounting: 2; Glued = 0, SmallGap = 1, OpenRack = 2);
choice!(Controller: 1; Mppt = 0, Pwm = 1);
choice!(OtherSourceKind: 3; Generator = 0, FuelCell = 1, Wind = 2);

/// Hands a choice over.
pub(super) fn choice<T: Choice>(w: &mut dyn Wire, value: &mut T) -> Result<(), Fault> {
    let mut code = value.code();
    w.bits(&mut code, T::WIDTH)?;
    *value = T::from_code(code).ok_or(Fault::Invalid)?;
    Ok(())
}
