//! Work in several turns, between which the browser paints and takes input.

use leptos::prelude::*;
use std::time::Duration;

/// One turn of work.
pub type Turn = Box<dyn FnOnce()>;

/// Does each of `turns`, in this order, in a task of its own.
pub fn in_turns(turns: Vec<Turn>) {
    next(turns.into_iter());
}

/// Makes a view.
pub type Maker = Box<dyn Fn() -> AnyView + Send>;

/// The views that `makers` make, each made in a turn of its own; nothing stands in its place before.
#[must_use]
pub fn one_by_one(makers: Vec<Maker>) -> Vec<AnyView> {
    let (turns, views) = makers
        .into_iter()
        .map(|make| {
            let due = RwSignal::new(false);
            let turn: Turn = Box::new(move || _ = due.try_set(true));
            (turn, view! { {move || due.get().then(&make)} }.into_any())
        })
        .unzip();
    in_turns(turns);
    views
}

fn next(mut turns: std::vec::IntoIter<Turn>) {
    let Some(turn) = turns.next() else { return };
    let work = move || {
        turn();
        next(turns);
    };
    set_timeout(work, Duration::ZERO);
}
