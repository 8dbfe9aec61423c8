//! Work in several turns, between which the browser paints and takes input.

use leptos::prelude::set_timeout;
use std::time::Duration;

/// One turn of work.
pub type Turn = Box<dyn FnOnce()>;

/// Does each of `turns`, in this order, in a task of its own.
pub fn in_turns(turns: Vec<Turn>) {
    next(turns.into_iter());
}

fn next(mut turns: std::vec::IntoIter<Turn>) {
    let Some(turn) = turns.next() else { return };
    let work = move || {
        turn();
        next(turns);
    };
    set_timeout(work, Duration::ZERO);
}
