//! Common appliances: how much they draw and how they are usually used.
//!
//! All figures are ranges of common practice, without a source; what a thing on board really
//! draws is for its rating plate, its maker's specification or, best, a meter to say. Power is at
//! the battery for direct current and at the mains socket behind an inverter.

mod climate_control;
mod cold;
mod entertainment;
mod entry;
mod kitchen;
mod standby;
mod vehicle;
mod water_light;

pub use entry::{Appliance, Caution};

use super::typed_words::{fold, rank};

/// How many appliances there are.
const COUNT: usize = cold::TABLE.len()
    + climate_control::TABLE.len()
    + water_light::TABLE.len()
    + entertainment::TABLE.len()
    + kitchen::TABLE.len()
    + vehicle::TABLE.len()
    + standby::TABLE.len();

/// All appliances, group by group, in the order they are offered.
pub static ALL: [Appliance; COUNT] = joined();

const fn joined() -> [Appliance; COUNT] {
    let parts: [&[Appliance]; 7] = [
        &cold::TABLE,
        &climate_control::TABLE,
        &water_light::TABLE,
        &entertainment::TABLE,
        &kitchen::TABLE,
        &vehicle::TABLE,
        &standby::TABLE,
    ];
    let mut all = [cold::TABLE[0]; COUNT];
    let (mut part, mut at) = (0, 0);
    while part < parts.len() {
        let mut row = 0;
        while row < parts[part].len() {
            all[at] = parts[part][row];
            at += 1;
            row += 1;
        }
        part += 1;
    }
    all
}

/// Numbers and messages with the names, for those who only name appliances.
static NAMES: [(u16, &str); COUNT] = names();

const fn names() -> [(u16, &'static str); COUNT] {
    let all = joined();
    let mut names = [(0, ""); COUNT];
    let mut at = 0;
    while at < COUNT {
        names[at] = (all[at].id, all[at].key);
        at += 1;
    }
    names
}

/// The message that holds the name of the appliance with this number; `None` as [`appliance`].
#[must_use]
pub fn name_key(id: u16) -> Option<&'static str> {
    NAMES.iter().find(|(known, _)| *known == id).map(|(_, key)| *key)
}

/// The appliances with these numbers. Where they are known at build time, the program carries them
/// and not the whole catalogue.
///
/// # Panics
///
/// While building, for a number that the catalogue has not.
#[must_use]
pub const fn picked<const N: usize>(numbers: [u16; N]) -> [Appliance; N] {
    let all = joined();
    let mut found = [all[0]; N];
    let mut at = 0;
    while at < N {
        let mut row = 0;
        while all[row].id != numbers[at] {
            row += 1;
        }
        found[at] = all[row];
        at += 1;
    }
    found
}

/// The appliance with this number; `None` for a number of a later version or a wrong one.
#[must_use]
pub fn appliance(id: u16) -> Option<&'static Appliance> {
    ALL.iter().find(|appliance| appliance.id == id)
}

/// Appliances whose name or search words hold every word typed, best first.
///
/// `names` gives the name shown for a key, in the language of the page; search words in English,
/// German, French and Dutch are searched whatever that language is. The start of a word is
/// enough; accents and case do not matter. Nothing typed gives all appliances.
pub fn search(query: &str, names: impl Fn(&'static str) -> String) -> Vec<&'static Appliance> {
    let query = fold(query);
    let mut found: Vec<_> = ALL
        .iter()
        .filter_map(|appliance| {
            let name = fold(&names(appliance.key));
            Some((rank(&query, &name, &fold(appliance.words))?, appliance))
        })
        .collect();
    found.sort_by_key(|(rank, _)| *rank);
    found.into_iter().map(|(_, appliance)| appliance).collect()
}
