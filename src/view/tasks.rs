//! Runs work as separate macrotasks so that the browser can paint in between.

use super::working::Working;
use leptos::prelude::*;
use std::time::Duration;

/// One piece of work.
pub type Task = Box<dyn FnOnce()>;

/// Runs each of `tasks`, in this order, in a macrotask of its own.
pub fn run_as_tasks(tasks: Vec<Task>) {
    next(tasks.into_iter(), Working::begin());
}

/// Builds a view.
pub type ViewFn = Box<dyn Fn() -> AnyView + Send>;

/// The views that `views` build, each built in a task of its own; nothing stands in its place before.
#[must_use]
pub fn mount_as_tasks(views: Vec<ViewFn>) -> Vec<AnyView> {
    let (tasks, views) = views
        .into_iter()
        .map(|view| {
            let due = RwSignal::new(false);
            let task: Task = Box::new(move || _ = due.try_set(true));
            (task, view! { {move || due.get().then(&view)} }.into_any())
        })
        .unzip();
    run_as_tasks(tasks);
    views
}

fn next(mut tasks: std::vec::IntoIter<Task>, mark: Working) {
    let Some(task) = tasks.next() else {
        drop(mark);
        return;
    };
    let work = move || {
        task();
        next(tasks, mark);
    };
    set_timeout(work, Duration::ZERO);
}
