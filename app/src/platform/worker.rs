//! The service worker `sw.js`: it keeps the whole app on the device, and tells of a new version.
//!
//! The browser downloads a new version by itself and leaves it waiting; it replaces the running one
//! only through [`apply_update`], or when no page of the app is open any more.

use std::cell::Cell;
use std::rc::Rc;

use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    AddEventListenerOptions, EventTarget, Navigator, ServiceWorker, ServiceWorkerContainer,
    ServiceWorkerRegistration, ServiceWorkerState, VisibilityState,
};

/// Its address is taken from that of the page, so that the app works in any folder of a host.
const SCRIPT: &str = "./sw.js";

/// The one message that `sw.js` understands.
const TAKE_OVER: &str = "take over";

/// Why the app is not kept on the device.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum WorkerError {
    /// The browser has no service workers here: an old one, a private window, or a page that came
    /// neither by https nor from this machine.
    #[error("this browser keeps no app for use offline")]
    Unsupported,
    /// The browser did not start the worker, or the worker did not answer.
    #[error("the browser refused: {reason}")]
    Refused {
        /// What the browser says, in its own words.
        reason: String,
    },
    /// A file of the app could not be downloaded or stored: no connection, or no space left.
    #[error("a file of the app could not be stored")]
    NotStored,
}

/// Starts the worker and returns when all of the app is on the device.
///
/// # Errors
///
/// Every [`WorkerError`]; the app then works as long as its server is there.
pub async fn start() -> Result<(), WorkerError> {
    let container = container().ok_or(WorkerError::Unsupported)?;
    let registration: ServiceWorkerRegistration = settled(container.register(SCRIPT)).await?;
    if registration.active().is_some() {
        return Ok(());
    }
    let Some(worker) = registration.installing().or_else(|| registration.waiting()) else {
        return Err(WorkerError::NotStored);
    };
    let outcome = js_sys::Promise::new(&mut |resolve, _reject| {
        when_state(&worker, move |state| {
            if matches!(
                state,
                ServiceWorkerState::Activated | ServiceWorkerState::Redundant
            ) {
                // The promise takes any call, so there is no error to pass on.
                let _ = resolve.call0(&JsValue::UNDEFINED);
            }
        });
    });
    settled::<JsValue>(outcome).await?;
    match worker.state() {
        ServiceWorkerState::Redundant => Err(WorkerError::NotStored),
        _ => Ok(()),
    }
}

/// Calls `on_ready` when a new version is downloaded and waits, or has been started from another
/// page of the app. It may be called more than once.
pub fn watch_updates(on_ready: impl Fn() + 'static) {
    let Some(container) = container() else {
        return;
    };
    let on_ready: Rc<dyn Fn()> = Rc::new(on_ready);
    watch_takeover(&container, Rc::clone(&on_ready));
    spawn_local(async move {
        let Ok(ready) = container.ready() else {
            return;
        };
        // Where no worker gets ready there is no update to tell of, and `start` says why.
        if let Ok(registration) = settled::<ServiceWorkerRegistration>(ready).await {
            watch_registration(&registration, on_ready);
        }
    });
}

/// Lets the waiting version take over and reloads the page, once.
///
/// # Errors
///
/// [`WorkerError::Unsupported`], or [`WorkerError::Refused`] when the waiting version can't be
/// reached; the running version goes on.
pub async fn apply_update() -> Result<(), WorkerError> {
    let container = container().ok_or(WorkerError::Unsupported)?;
    let ready = container.ready().map_err(refused)?;
    let registration: ServiceWorkerRegistration = settled(ready).await?;
    match registration.waiting() {
        Some(waiting) => {
            listen_once(&container, "controllerchange", reload);
            waiting.post_message(&TAKE_OVER.into()).map_err(refused)
        }
        // Another page has let it take over already.
        None => {
            reload();
            Ok(())
        }
    }
}

/// Tells of the versions that this page gets to know of.
fn watch_registration(registration: &ServiceWorkerRegistration, on_ready: Rc<dyn Fn()>) {
    if registration.waiting().is_some() {
        on_ready();
    }
    let follow = {
        let registration = registration.clone();
        move || {
            if let Some(worker) = registration.installing() {
                let on_ready = Rc::clone(&on_ready);
                when_state(&worker, move |state| {
                    if state == ServiceWorkerState::Installed {
                        on_ready();
                    }
                });
            }
        }
    };
    follow();
    listen(registration, "updatefound", follow);
    look_again_when_shown(registration);
}

/// A browser looks for a new version when a page is opened; an app on the home screen can stay open
/// for weeks.
fn look_again_when_shown(registration: &ServiceWorkerRegistration) {
    let Some(document) = web_sys::window().and_then(|window| window.document()) else {
        return;
    };
    let registration = registration.clone();
    let shown = document.clone();
    listen(&document, "visibilitychange", move || {
        if shown.visibility_state() == VisibilityState::Visible
            && let Ok(update) = registration.update()
        {
            spawn_local(async move {
                // Without a connection there is no new version, and nothing to tell of.
                let _ = JsFuture::from(update).await;
            });
        }
    });
}

/// Another page can let the new version take over while this one still runs the old one.
fn watch_takeover(container: &ServiceWorkerContainer, on_ready: Rc<dyn Fn()>) {
    // The first worker of all takes over too, and is no update.
    let had_worker = Cell::new(container.controller().is_some());
    listen(container, "controllerchange", move || {
        if had_worker.replace(true) {
            on_ready();
        }
    });
}

/// The browser's door to workers, where it has one.
fn container() -> Option<ServiceWorkerContainer> {
    let navigator: Navigator = web_sys::window()?.navigator();
    let has_workers = js_sys::Reflect::has(&navigator, &"serviceWorker".into()).unwrap_or(false);
    has_workers.then(|| navigator.service_worker())
}

fn reload() {
    if let Some(window) = web_sys::window() {
        // Only a page that is going away refuses, and it needs no reload.
        let _ = window.location().reload();
    }
}

/// Calls `on_change` with every new state of `worker`.
fn when_state(worker: &ServiceWorker, on_change: impl Fn(ServiceWorkerState) + 'static) {
    let changed = worker.clone();
    listen(worker, "statechange", move || on_change(changed.state()));
}

/// Listens as long as the page lives.
fn listen(target: &EventTarget, event: &str, on_event: impl Fn() + 'static) {
    let listener = Closure::<dyn Fn()>::new(on_event).into_js_value();
    // The names above are all plain ones; the browser refuses none.
    let _ = target.add_event_listener_with_callback(event, listener.unchecked_ref());
}

/// Listens for the next event only.
fn listen_once(target: &EventTarget, event: &str, on_event: impl Fn() + 'static) {
    let options = AddEventListenerOptions::new();
    options.set_once(true);
    let listener = Closure::<dyn Fn()>::new(on_event).into_js_value();
    // As above.
    let _ = target.add_event_listener_with_callback_and_add_event_listener_options(
        event,
        listener.unchecked_ref(),
        &options,
    );
}

/// What `promise` gives, or why it gives nothing.
async fn settled<T: JsCast>(promise: js_sys::Promise) -> Result<T, WorkerError> {
    JsFuture::from(promise)
        .await
        .map(JsCast::unchecked_into)
        .map_err(refused)
}

fn refused(error: JsValue) -> WorkerError {
    let reason = super::words_of(&error);
    WorkerError::Refused { reason }
}
