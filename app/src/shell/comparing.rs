//! What is compared: the screen and the page to print show the same.

use crate::reactive::*;

use crate::present::bench::compare::{Aligned, MOST, usual};
use crate::shell::Shell;
use crate::state::ids::RunId;

/// The runs that were chosen. Copies stand for the same ones.
#[derive(Clone, Copy)]
pub struct Comparing {
    shell: Shell,
    chosen: RwSignal<Option<Vec<RunId>>>,
    aligned: RwSignal<Aligned>,
}

impl Comparing {
    /// Nothing chosen yet.
    pub fn new(shell: Shell) -> Self {
        Self {
            shell,
            chosen: RwSignal::new(None),
            aligned: RwSignal::new(Aligned::default()),
        }
    }

    /// The runs that are compared: what a person chose, or what is usual.
    pub fn ids(&self) -> Memo<Vec<RunId>> {
        let chosen = self.chosen;
        let usual = self.shell.store.read(usual);
        Memo::new(move |_| chosen.get().unwrap_or_else(|| usual.get()))
    }

    /// Where curves are laid over each other.
    pub fn aligned(&self) -> Signal<Aligned> {
        self.aligned.into()
    }

    /// Lays them over each other elsewhere.
    pub fn align(&self, aligned: Aligned) {
        self.aligned.set(aligned);
    }

    /// Takes a run in or leaves it out; one too many is not taken in.
    pub fn choose(&self, id: RunId, is_in: bool) {
        let mut ids = self
            .chosen
            .get_untracked()
            .unwrap_or_else(|| self.shell.store.now_is(usual));
        ids.retain(|other| *other != id);
        if is_in && ids.len() < MOST {
            ids.push(id);
        }
        self.chosen.set(Some(ids));
    }
}
