//! The place in the app, as a signal that follows the address.

use crate::reactive::*;

use crate::platform::page;
use crate::shell::store::Store;
use crate::state::route::Route;

/// Where a person is. Copies stand for the same one.
#[derive(Clone, Copy)]
pub struct Router {
    asked: RwSignal<Route>,
    shown: Memo<Route>,
}

impl Router {
    /// Starts at `asked`.
    pub fn new(store: Store, asked: Route) -> Self {
        let has_household = store.has_household();
        let asked = RwSignal::new(asked);
        let shown = Memo::new(move |_| asked.get().allowed(has_household.get()));
        Self { asked, shown }
    }

    /// The place that is shown.
    pub fn route(&self) -> Memo<Route> {
        self.shown
    }

    /// The address says this place.
    pub fn follow(&self, route: Route) {
        self.asked.set(route);
    }

    /// Goes to a place, as a step that 'back' takes back.
    pub fn go(&self, route: Route) {
        page::go_to_hash(&route.hash());
        self.asked.set(route);
    }
}
