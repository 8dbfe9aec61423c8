//! Keys for editable lists, so that a row keeps its view while its content changes.

use crate::model::Setup;
use crate::view::state::AppState;
use leptos::prelude::*;

/// Keys of the rows of a list. A key stays as long as its row stays at its place, so a half-typed
/// number is not lost when a row is added below; it changes when rows move.
pub(super) fn row_keys<T>(app: AppState, list: fn(&Setup) -> &Vec<T>) -> Memo<Vec<(u32, usize)>>
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    let seen = Memo::new(move |before: Option<&(u32, Vec<T>)>| {
        let now = app.setup.with(|s| list(s).clone());
        let round = match before {
            Some((round, rows)) if rows.len() == now.len() => *round,
            Some((round, rows)) if now.starts_with(rows) || rows.starts_with(&now) => *round,
            Some((round, _)) => round.wrapping_add(1),
            None => 0,
        };
        (round, now)
    });
    Memo::new(move |_| {
        seen.with(|(round, rows)| (0..rows.len()).map(|row| (*round, row)).collect())
    })
}
