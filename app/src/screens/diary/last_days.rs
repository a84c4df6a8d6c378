//! The last two weeks at a glance.

use std::time::Duration;

use crate::reactive::*;
use model::tonight::Weather;

use super::scene::{Scene, say};
use crate::chart::DayBars;
use crate::components::Panel;
use crate::present::diary::last_days::{DayFigures, N_DAYS, bars, evening_of, store_at};
use crate::state::route::Route;

/// The way of the store through two weeks takes a while, so a tap is answered before it is
/// worked out.
const AFTER_ANSWER: Duration = Duration::from_millis(60);

/// And while taps follow one another, it waits for the last of them.
const AFTER_TAPS: Duration = Duration::from_millis(500);

impl Scene {
    /// What is known of the last days, not followed.
    fn last_days(&self) -> Option<Vec<DayFigures>> {
        let shell = self.shell;
        let now = shell.clock.now().get_untracked();
        let today = now.day();
        let skies = shell.store.now_is(|document| document.skies.clone());
        let rig = self.rig.try_get_untracked()??;
        let first = today.plus(1 - N_DAYS);
        let weather = Weather::new(&rig, &skies, first, today, now).ok()?;
        let evening = shell.estimates.evening().get_untracked();
        let evening = evening.and_then(Result::ok);
        let points = evening.as_ref().map_or(&[][..], |it| it.points());
        let figures = |n_back: i32| {
            let day = today.plus(-n_back);
            let is_told = skies.contains_key(&day);
            let evening = Some(evening_of(&weather, day)).filter(|evening| *evening <= now);
            DayFigures {
                day,
                full_sun_h: weather.day_full_sun_h(day).filter(|_| is_told),
                store_c: evening.and_then(|evening| store_at(points, evening)),
            }
        };
        Some((0..N_DAYS).rev().map(figures).collect())
    }
}

/// The plot of the last days; a tap opens a day.
#[component]
pub(super) fn LastDays(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let figures = RwSignal::new(Vec::<DayFigures>::new());
    let known = shell.store.read(|document| {
        let in_use = document.in_use;
        (in_use, in_use.map(|id| document.journal(id)))
    });
    let n_changes = StoredValue::new(0_u32);
    effect(move || {
        known.track();
        scene.rig.track();
        shell.clock.now().track();
        let change = n_changes.get_value().wrapping_add(1);
        n_changes.set_value(change);
        let is_first = figures.with_untracked(Vec::is_empty);
        set_timeout(
            move || {
                // The screen may be gone by now, and its signals with it.
                let is_last = n_changes.try_get_value() == Some(change);
                if let Some(days) = is_last.then(|| scene.last_days()).flatten() {
                    figures.try_set(days);
                }
            },
            if is_first { AFTER_ANSWER } else { AFTER_TAPS },
        );
    });
    let view = Memo::new(move |_| {
        let picked = scene.day.get();
        figures.with(|days| say(shell, |voice| bars(voice, days, picked)))
    });
    let is_shown = Memo::new(move |_| figures.with(|days| !days.is_empty()));
    let on_pick = move |place: usize| {
        let day = figures.with_untracked(|days| days.get(place).map(|it| it.day));
        if let Some(day) = day {
            shell.router.go(Route::Diary(Some(day)));
        }
    };
    view! {
        <Panel heading=shell.words.text(|strings| strings.diary.last_heading) test="last-days">
            {move || {
                is_shown
                    .get()
                    .then(|| {
                        view! {
                            <DayBars view on_pick=Callback::new(on_pick) test="day-bars" />
                            <p class="aside">
                                {shell.words.text(|strings| strings.diary.two_hours)}
                            </p>
                        }
                    })
            }}
        </Panel>
    }
}
