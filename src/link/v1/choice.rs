//! Number of each enum variant in a link. Frozen: a number once given away is never given to another choice.

use crate::link::wire::{Fault, Wire};

/// A choice among a few, carried as a number of fixed width.
pub(super) trait Choice: Copy {
    /// Bits of the number.
    const WIDTH: u32;
    /// Its number.
    fn code(self) -> u32;
    /// The choice behind a number, if there is one.
    fn from_code(code: u32) -> Option<Self>;
}

/// Gives the variants of an enum their numbers, in so many bits; one number stays free, so that a
/// later variant fits and an old page answers that the link is newer.
macro_rules! choices {
    ($name:ident: $width:literal; $($variant:ident = $code:literal),+ $(,)?) => {
        const _: () = assert!([$($code),+].len() < 1 << $width, "no number is left free");

        impl super::choice::Choice for $name {
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

pub(super) use choices;

/// Hands a choice over.
pub(super) fn choice<T: Choice>(w: &mut dyn Wire, value: &mut T) -> Result<(), Fault> {
    let mut code = value.code();
    w.bits(&mut code, T::WIDTH)?;
    *value = T::from_code(code).ok_or(Fault::UnknownChoice)?;
    Ok(())
}
