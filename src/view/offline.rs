//! Keeps the page usable without a network: registers the service worker and tells what became of it.
//!
//! The worker (`src/shell/sw.js`) stores one complete build of the page. A newer build is fetched beside it and
//! waits; it takes over when every tab is closed, or when [`Offline::apply_update`] is called. Nothing here reloads
//! the page by itself.
//!
//! Everything is optional to the page: where service workers are missing or forbidden (private modes, blocked
//! cookies, some in-app browsers, plain `http`), their very lookup may throw; then the signals just stay `false`.

use std::cell::{Cell, RefCell};

use js_sys::{Function, Object, Promise, Reflect};
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    Event, EventTarget, ServiceWorker, ServiceWorkerContainer, ServiceWorkerRegistration,
    ServiceWorkerState,
};

/// The message on which a waiting worker takes over.
const SKIP_WAITING: &str = "skip-waiting";

/// A page left open asks for a newer build when it is looked at again, at most this often, in milliseconds.
const ASK_AGAIN_AFTER_MS: f64 = 60.0 * 60.0 * 1000.0;

thread_local! {
    /// The registration, once there is one.
    static REGISTRATION: RefCell<Option<ServiceWorkerRegistration>> = const { RefCell::new(None) };
    /// Whether the user asked for the newer build: only then the page reloads when the worker changes.
    static RELOAD_WANTED: Cell<bool> = const { Cell::new(false) };
    /// When a newer build was last asked for, in milliseconds since 1970.
    static LAST_ASKED_MS: Cell<f64> = const { Cell::new(0.0) };
}

/// What the page can say about working offline.
#[derive(Clone, Copy, Debug)]
pub struct Offline {
    /// A complete build is stored on this device: the page opens without a network.
    pub offline_ready: RwSignal<bool>,
    /// The build was stored during this very visit, which is worth a notice (once).
    pub stored_now: RwSignal<bool>,
    /// A newer build is stored and waits for [`Offline::apply_update`].
    pub update_waiting: RwSignal<bool>,
}

impl Default for Offline {
    fn default() -> Self {
        Self {
            offline_ready: RwSignal::new(false),
            stored_now: RwSignal::new(false),
            update_waiting: RwSignal::new(false),
        }
    }
}

impl Offline {
    /// Registers the service worker, which sets the signals from then on. To be called once.
    ///
    /// In a debug build there is no worker to register.
    pub fn register(self) {
        if !cfg!(debug_assertions)
            && let Some(container) = container()
        {
            spawn_local(async move {
                if let Err(reason) = self.follow(container).await {
                    // The page works all the same; who wonders why it is not kept offline finds the reason here.
                    leptos::logging::warn!("not kept offline: {reason:?}");
                }
            });
        }
    }

    /// Lets the waiting build take over and reloads the page once it has. Save what must not be lost before.
    ///
    /// If another tab has already switched, the page just reloads. Without a registration nothing happens.
    pub fn apply_update(&self) {
        let Some(registration) = registration() else {
            return;
        };
        match registration.waiting() {
            Some(worker) => {
                RELOAD_WANTED.set(true);
                if worker.post_message(&JsValue::from_str(SKIP_WAITING)).is_err() {
                    reload();
                }
            }
            None => reload(),
        }
    }

    async fn follow(self, container: ServiceWorkerContainer) -> Result<(), JsValue> {
        let had_controller = container.controller().is_some();
        listen(&container, "controllerchange", move |_| {
            if RELOAD_WANTED.take() {
                reload();
            } else if had_controller {
                // Another tab switched to the newer build: this one still runs the older code.
                self.update_waiting.try_set(true);
            }
        });

        let registration = register_worker(&container).await?;
        LAST_ASKED_MS.set(js_sys::Date::now());
        let first_visit = registration.active().is_none();
        if registration.waiting().is_some() {
            self.update_waiting.try_set(true);
        }
        if let Some(worker) = registration.installing() {
            self.watch(worker);
        }
        let found = registration.clone();
        listen(&registration, "updatefound", move |_| {
            if let Some(worker) = found.installing() {
                self.watch(worker);
            }
        });
        REGISTRATION.replace(Some(registration));
        ask_again_when_looked_at();

        // Settles when a worker is active; it became so only after it had stored the whole build.
        JsFuture::from(container.ready()?).await?;
        self.offline_ready.try_set(true);
        if first_visit {
            self.stored_now.try_set(true);
        }
        Ok(())
    }

    /// A worker that reaches "installed" while an older one is active has the newer build and waits.
    fn watch(self, worker: ServiceWorker) {
        let watched = worker.clone();
        listen(&worker, "statechange", move |_| {
            let older_is_active =
                registration().is_some_and(|registration| registration.active().is_some());
            if watched.state() == ServiceWorkerState::Installed && older_is_active {
                self.update_waiting.try_set(true);
            }
        });
    }
}

fn registration() -> Option<ServiceWorkerRegistration> {
    REGISTRATION.with_borrow(Clone::clone)
}

/// `navigator.serviceWorker`, if it is there at all; the getter itself throws where storage is blocked.
fn container() -> Option<ServiceWorkerContainer> {
    let navigator = web_sys::window()?.navigator();
    Reflect::get(&navigator, &JsValue::from_str("serviceWorker")).ok()?.dyn_into().ok()
}

/// Calls `register` through reflection, as it may throw instead of returning a rejected promise.
async fn register_worker(
    container: &ServiceWorkerContainer,
) -> Result<ServiceWorkerRegistration, JsValue> {
    let options = Object::new();
    // The worker's own file is never taken from the HTTP cache, so an update is seen at the next visit.
    Reflect::set(&options, &JsValue::from_str("updateViaCache"), &JsValue::from_str("none"))?;
    let register: Function = Reflect::get(container, &JsValue::from_str("register"))?.dyn_into()?;
    let promise: Promise =
        register.call2(container, &JsValue::from_str("./sw.js"), &options)?.dyn_into()?;
    JsFuture::from(promise).await?.dyn_into()
}

/// Adds a listener that stays for the life of the page.
fn listen(target: &EventTarget, event: &str, handler: impl FnMut(Event) + 'static) {
    let closure = Closure::<dyn FnMut(Event)>::new(handler);
    if target.add_event_listener_with_callback(event, closure.as_ref().unchecked_ref()).is_ok() {
        closure.forget();
    }
}

/// An installed page may stay open for weeks: ask for a newer build when it comes back into view.
fn ask_again_when_looked_at() {
    let Some(document) = web_sys::window().and_then(|window| window.document()) else {
        return;
    };
    let shown = document.clone();
    listen(&document, "visibilitychange", move |_| {
        let now_ms = js_sys::Date::now();
        if shown.hidden() || now_ms - LAST_ASKED_MS.get() < ASK_AGAIN_AFTER_MS {
            return;
        }
        LAST_ASKED_MS.set(now_ms);
        let Some(Ok(asked)) = registration().map(|registration| registration.update()) else {
            return;
        };
        spawn_local(async move {
            // Fails without a network, which is no news: the next look asks again.
            let _ = JsFuture::from(asked).await;
        });
    });
}

fn reload() {
    if let Some(window) = web_sys::window() {
        // Refused only in documents that are going away already.
        let _ = window.location().reload();
    }
}
