//! What is compared: the screen and the page to print show the same.

use crate::reactive::*;
use leptos::task::spawn_local;

use crate::bench::answer::{Answer, Curve};
use crate::bench::ask::What;
use crate::platform::bench::Luggage;
use crate::present::bench::compare::{Aligned, Chosen, MOST, chosen, not_looked_up, usual};
use crate::shell::Shell;
use crate::shell::bench::ask;
use crate::state::ids::RunId;

/// The runs that were chosen. Copies stand for the same ones.
#[derive(Clone, Copy)]
pub struct Comparing {
    shell: Shell,
    chosen: RwSignal<Option<Vec<RunId>>>,
    aligned: RwSignal<Aligned>,
    curves: RwSignal<Vec<Curve>>,
    beside: RwSignal<bool>,
}

impl Comparing {
    /// Nothing chosen yet.
    pub fn new(shell: Shell) -> Self {
        Self {
            shell,
            chosen: RwSignal::new(None),
            aligned: RwSignal::new(Aligned::default()),
            curves: RwSignal::new(Vec::new()),
            beside: RwSignal::new(true),
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

    /// Whether what the descriptions foresee stands beside what was measured.
    pub fn beside(&self) -> RwSignal<bool> {
        self.beside
    }

    /// The runs that are compared, with what their files say as far as that was looked up.
    pub fn runs(&self) -> Memo<Vec<Chosen>> {
        let comparing = *self;
        let ids = self.ids();
        let document = self
            .shell
            .store
            .read(|document| (document.bench.runs.clone(), document.cookers.clone()));
        Memo::new(move |_| {
            document.track();
            let (ids, curves) = (ids.get(), comparing.curves.get());
            comparing
                .shell
                .store
                .now_is(|document| chosen(document, &ids, &curves))
        })
    }

    /// Looks up the files of runs that were not yet.
    pub fn look_up(&self, runs: &[Chosen]) {
        let comparing = *self;
        let kept = not_looked_up(runs);
        if kept.is_empty() {
            return;
        }
        spawn_local(async move {
            let answer = ask(comparing.shell, What::Curves(kept.clone()), Luggage::None).await;
            let found = match answer {
                Ok(Answer::Curves(found)) => found,
                // What can't be had is said of each run; another visit asks anew.
                _ => kept
                    .into_iter()
                    .map(|text| Curve { text, lines: None })
                    .collect(),
            };
            comparing.curves.update(|curves| {
                curves.retain(|old| found.iter().all(|new| new.text != old.text));
                curves.extend(found);
            });
        });
    }

    /// Forgets which files can't be had: they may be there now.
    pub fn look_again(&self) {
        self.curves
            .update(|curves| curves.retain(|curve| curve.lines.is_some()));
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
