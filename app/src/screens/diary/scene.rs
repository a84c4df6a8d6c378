//! What the parts of the diary share.

use std::collections::BTreeMap;
use std::ops::Range;
use std::sync::Arc;

use crate::reactive::*;
use model::local_time::Day;
use model::place::Place;
use model::sun::{DayLog, Daylight};
use model::tonight::{Rig, Site, Weather};

use crate::i18n::refusal::refusal;
use crate::present::diary::draft::Draft;
use crate::present::diary::{shown_day, sun};
use crate::present::tonight::Voice;
use crate::shell::Shell;
use crate::state::document::Document;
use crate::state::ids::EntryId;
use crate::state::refused::Refused;
use crate::state::route::Route;

/// Says something in the language that is spoken, followed.
pub(super) fn say<T>(shell: Shell, what: impl FnOnce(&Voice<'_>) -> T) -> T {
    let strings = shell.words.strings();
    let now = shell.clock.now().get();
    shell.words.formats().with(|formats| {
        what(&Voice {
            strings,
            formats,
            now,
        })
    })
}

/// What was refused, in words, not followed.
pub(super) fn say_refused(shell: Shell, refused: Refused) -> String {
    untrack(|| {
        say(shell, |voice| {
            refusal(voice.strings, voice.formats, refused, voice.now.day())
        })
    })
}

/// The sheet that is up.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Form {
    /// The entry that is changed; none where one is added.
    pub(super) id: Option<EntryId>,
    pub(super) draft: Draft,
    /// What the household refused at the last try.
    pub(super) refused: Option<Refused>,
    /// Whether it was tried to keep it, so that what is empty is a mistake.
    pub(super) is_tried: bool,
}

/// The day that is open and what is known of it. Copies stand for the same one.
#[derive(Clone, Copy)]
pub(super) struct Scene {
    pub(super) shell: Shell,
    pub(super) day: Memo<Day>,
    pub(super) place: Memo<Option<Place>>,
    /// The sky of the day.
    pub(super) log: Memo<Option<DayLog>>,
    /// The hours of the day that can be told.
    pub(super) daylight: Memo<Range<usize>>,
    /// The cooker in use, put together.
    pub(super) rig: Memo<Option<Arc<Rig>>>,
    pub(super) form: RwSignal<Option<Form>>,
}

impl Scene {
    pub(super) fn new(shell: Shell) -> Self {
        let now = shell.clock.now();
        let route = shell.router.route();
        let day = Memo::new(move |_| {
            let asked = match route.get() {
                Route::Diary(day) => day,
                Route::Tonight
                | Route::Cooker(_)
                | Route::Bench(_)
                | Route::More(_)
                | Route::Start(_) => None,
            };
            shown_day(asked, now.get())
        });
        let told = shell
            .store
            .read(|document| document.household.as_ref().map(|household| household.place));
        let clock = shell.clock;
        let place = Memo::new(move |_| Some(clock.place_on(told.get()?, day.get())));
        let skies = shell.store.read(|document| document.skies.clone());
        let subject = shell.store.read(subject);
        Self {
            shell,
            day,
            place,
            log: Memo::new(move |_| skies.with(|skies| skies.get(&day.get()).copied())),
            daylight: Memo::new(move |_| {
                let day = day.get();
                place
                    .get()
                    .and_then(|place| Daylight::of(&place, day).ok())
                    .map_or(0..24, |daylight| sun::hours_of(daylight, day))
            }),
            // Only a change of place or cooker makes it anew.
            rig: Memo::new_each_time(move || {
                subject.with(|subject| {
                    let (site, cooker) = subject.as_ref()?;
                    let place = place.get()?;
                    Rig::new(&Site { place, ..*site }, cooker)
                        .ok()
                        .map(Arc::new)
                })
            }),
            form: RwSignal::new(None),
        }
    }

    /// Heat that reaches the heater on the day. [J]
    pub(super) fn heat_j(&self) -> Option<f64> {
        let day = self.day.get();
        let now = self.shell.clock.now().get();
        let mut skies = BTreeMap::new();
        if let Some(log) = self.log.get() {
            skies.insert(day, log);
        }
        let rig = self.rig.get()?;
        Weather::new(&rig, &skies, day, day, now)
            .ok()?
            .day_heat_j(day)
    }
}

fn subject(document: &Document) -> Option<(Site, model::cooker::Cooker)> {
    let household = document.household.as_ref()?;
    let site = Site {
        place: household.place,
        air: household.air,
    };
    Some((site, document.cooker_in_use()?.cooker.clone()))
}
