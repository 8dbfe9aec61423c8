//! The mark that the page is at work: `data-working` at the host of the app.
//!
//! It stands while a job plays, a chunk is fetched, a task waits for its turn or a change is not saved
//! yet. Measurements and browser tests wait for its end.

use leptos::prelude::document;
use std::cell::Cell;

thread_local! {
    static RUNNING: Cell<u32> = const { Cell::new(0) };
}

/// A piece of work under way; dropped when it is done.
#[derive(Debug)]
pub struct Working(());

impl Working {
    /// Work begins.
    #[must_use]
    pub fn begin() -> Self {
        let running = RUNNING.get();
        RUNNING.set(running + 1);
        if running == 0 {
            mark(true);
        }
        Self(())
    }
}

impl Drop for Working {
    fn drop(&mut self) {
        let running = RUNNING.get().saturating_sub(1);
        RUNNING.set(running);
        if running == 0 {
            mark(false);
        }
    }
}

fn mark(on: bool) {
    if let Some(host) = document().get_element_by_id("app") {
        // Fails only for an invalid attribute name.
        let _ = if on {
            host.set_attribute("data-working", "")
        } else {
            host.remove_attribute("data-working")
        };
    }
}
