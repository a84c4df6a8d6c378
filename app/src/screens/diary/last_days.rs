//! The last two weeks at a glance.

use std::time::Duration;

use leptos::prelude::*;
use model::tonight::Weather;

use super::scene::{Scene, say};
use crate::chart::DayBars;
use crate::components::Panel;
use crate::present::diary::last_days::{DayFigures, N_DAYS, bars, evening_of, store_at};
use crate::state::route::Route;

/// The way of the store through two weeks takes a while, so a tap is answered before it is
/// worked out.
const AFTER_ANSWER: Duration = Duration::from_millis(60);

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
            DayFigures {
                day,
                full_sun_h: weather.day_full_sun_h(day).filter(|_| is_told),
                store_c: store_at(points, evening_of(&weather, day).min(now)),
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
    let is_planned = StoredValue::new(false);
    Effect::new(move || {
        known.track();
        scene.rig.track();
        shell.clock.now().track();
        if is_planned.get_value() {
            return;
        }
        is_planned.set_value(true);
        set_timeout(
            move || {
                // The screen may be gone by now, and its signals with it.
                let is_gone = is_planned.try_update_value(|it| *it = false).is_none();
                if is_gone {
                    return;
                }
                if let Some(days) = scene.last_days() {
                    figures.try_set(days);
                }
            },
            AFTER_ANSWER,
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
                        }
                    })
            }}
        </Panel>
    }
}
