//! What the device says about keeping the app and what is saved in it.

use crate::reactive::*;
use leptos::task::spawn_local;

use crate::platform::storage::is_persisted;
use crate::platform::worker::{self, WorkerError};

/// Whether the app opens without a connection.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Offline {
    /// The browser has not answered yet.
    Looking,
    /// All of it is on the device.
    Ready,
    /// The browser keeps no apps.
    Unsupported,
    /// Not all of it could be stored.
    NotStored,
}

/// Whether the app opens without a connection; where it does not yet, this is another try.
pub fn offline() -> Signal<Offline> {
    let offline = RwSignal::new(Offline::Looking);
    spawn_local(async move {
        let answer = match worker::start().await {
            Ok(()) => Offline::Ready,
            Err(WorkerError::Unsupported) => Offline::Unsupported,
            Err(_) => Offline::NotStored,
        };
        // The page that asked may be gone.
        offline.try_set(answer);
    });
    offline.into()
}

/// Whether the browser has promised to keep what is saved; none while it has not answered.
pub fn is_kept_for_good() -> Signal<Option<bool>> {
    let kept = RwSignal::new(None);
    spawn_local(async move {
        let answer = is_persisted().await;
        // As above.
        kept.try_set(Some(answer));
    });
    kept.into()
}
