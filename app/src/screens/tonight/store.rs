//! The store now, what it can do, and how to tell it better.

use crate::reactive::*;
use model::journal::What;
use model::sun::Daylight;
use model::tonight::Doubt;

use super::reading::LogReading;
use super::scene::say;
use crate::components::{Icon, LinkButton, Panel, StoreColumn};
use crate::present::diary::entries::entry as entry_view;
use crate::present::tonight::now::lacks_sun;
use crate::present::tonight::store::{Boils, column};
use crate::screens::doubted::{Doubted, question};
use crate::shell::{Shell, use_shell};
use crate::state::document::{Document, Entry};
use crate::state::route::Route;

/// What was told of the store so long ago is past. \[s\]
const NEW_S: i64 = 12 * 3600;

/// The column, with a nudge where the diary lacks today's sun, and a field for a thermometer.
#[component]
pub(super) fn StoreNow() -> impl IntoView {
    let shell = use_shell();
    let cooker = shell
        .store
        .read(|document| document.cooker_in_use().map(|owned| owned.cooker.clone()));
    let now = shell.clock.now();
    let pot_in = shell.store.read(|document| {
        let meal = document.running_meal()?;
        (Some(meal.cooker) == document.in_use).then_some(meal.at)
    });
    let view = Memo::new(move |_| {
        let store = shell.estimates.store_now().get()?.ok()?;
        let evening = shell.estimates.evening().get()?.ok()?;
        let boiling_c = evening.rig().boiling_c().ok()?;
        let boils = if pot_in.get().is_some_and(|put_in| put_in <= now.get()) {
            Boils::PotIsIn
        } else {
            shell.estimates.belief().with(|belief| {
                belief.as_ref().map_or(Boils::AsTold, |belief| {
                    let litres = belief.store().litres;
                    Boils::Between(litres.p10, litres.p90)
                })
            })
        };
        cooker.with(|cooker| {
            let cooker = cooker.as_ref()?;
            Some(say(shell, |voice| {
                column(voice, cooker, &store, boils, boiling_c)
            }))
        })
    });
    let is_shown = Memo::new(move |_| view.with(Option::is_some));
    move || {
        let first = is_shown.get().then(|| view.get_untracked())??;
        let view = Signal::derive(move || view.get().unwrap_or_else(|| first.clone()));
        Some(view! {
            <Panel heading=shell.words.text(|strings| strings.tonight.store.heading) test="store">
                <StoreColumn view test="store-column" />
                <ReadingDoubt shell />
                <SunNudge shell />
                <LogReading />
            </Panel>
        })
    }
}

/// The question beside what was told of the store last, as long as it does not fit the rest.
#[component]
fn ReadingDoubt(shell: Shell) -> impl IntoView {
    let last = shell.store.read(last_told);
    let now = shell.clock.now();
    let asked = Memo::new(move |_| {
        let entry = last.get()?;
        let is_new = now.get().since_s(entry.at) < NEW_S;
        (is_new && question(shell, &entry).is_some()).then_some(entry)
    });
    move || {
        asked.get().map(|entry| {
            let day = Route::Diary(Some(entry.at.day())).hash();
            let told = entry.clone();
            let about = Signal::derive(move || say(shell, |voice| entry_view(voice, &told).title));
            view! {
                <Doubted shell entry about>
                    <LinkButton
                        href=day.clone()
                        label=shell.words.text(|strings| strings.diary.change_it)
                        icon=Icon::Pencil
                        test="doubt-change"
                    />
                </Doubted>
            }
        })
    }
}

/// What was told last of the store of the cooker in use.
fn last_told(document: &Document) -> Option<Entry> {
    let mine = (document.entries.iter()).filter(|entry| Some(entry.cooker) == document.in_use);
    let of_store = |entry: &&Entry| matches!(entry.what, What::Reading { .. } | What::Felt(_));
    mine.filter(of_store).max_by_key(|entry| entry.at).cloned()
}

/// Leads to the diary while today's sun is not logged.
#[component]
fn SunNudge(shell: Shell) -> impl IntoView {
    let now = shell.clock.now();
    let place = shell
        .store
        .read(|document| document.household.as_ref().map(|household| household.place));
    let doubt = Memo::new(move |_| {
        let evening = shell.estimates.evening().get()?.ok()?;
        let now = now.get();
        let daylight =
            Daylight::of(&shell.clock.place_on(place.get()?, now.day()), now.day()).ok()?;
        lacks_sun(evening.doubts(), daylight, now)
    });
    let words = shell.words;
    let text = move |doubt: Doubt| {
        let words = &words.strings().tonight.store;
        match doubt {
            Doubt::NothingLogged => words.nothing_logged,
            Doubt::SkyNotLogged(_) | Doubt::PotsOverlap(_) => words.sky_not_logged,
        }
    };
    move || {
        doubt.get().map(|doubt| {
            view! {
                <div class="tonight-nudge" data-test="sun-nudge">
                    <p>{text(doubt)}</p>
                    <LinkButton
                        href=Route::Diary(None).hash()
                        label=words.text(|strings| strings.tonight.store.log_sky)
                        icon=Icon::SunBroken
                        test="log-sky"
                    />
                </div>
            }
        })
    }
}
