//! The sun of the day: one tap for a whole day, or one an hour.

use leptos::prelude::*;
use model::sun::{DayLog, Sky};

use super::scene::{Scene, say, say_refused};
use crate::components::{Button, Fold, Glyph, Icon, NumberField, NumberFieldText, Panel, SunHours};
use crate::i18n::refusal::parse_refusal;
use crate::present::diary::sun::{
    SUN_HOUR_STEPS, all_day, cells, comes_to, is_all_day, key, possible_h, tapped,
};
use crate::present::typed::stepped;
use crate::state::action::Action;
use crate::state::parse;
use crate::state::refused::Refused;

impl Scene {
    /// Logs a sky for the day that is open, or takes it away.
    fn set_sky(&self, log: Option<DayLog>) -> Result<(), Refused> {
        let day = self.day.get_untracked();
        let possible_h = self
            .place
            .get_untracked()
            .and_then(|place| possible_h(&place, day))
            .unwrap_or(24.0);
        let action = match log {
            Some(log) => Action::SetSky {
                day,
                log,
                possible_h,
            },
            None if self.log.get_untracked().is_none() => return Ok(()),
            None => Action::EraseSky(day),
        };
        self.shell.dispatch.run(action).map(|_| ())
    }

    /// The same where nothing was typed that could be refused.
    fn tap_sky(&self, log: Option<DayLog>) {
        // Only a day to come is refused here, and none is shown.
        let _ = self.set_sky(log);
    }
}

/// The sun of the day that is open.
#[component]
pub(super) fn DaySun(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let heading = Signal::derive(move || {
        say(shell, |voice| {
            let day = voice.formats.near_day(scene.day.get(), voice.now.day());
            (voice.strings.diary.sun_heading)(&day)
        })
    });
    let has_sun = Memo::new(move |_| scene.daylight.with(|hours| !hours.is_empty()));
    let heat_j = Memo::new(move |_| scene.heat_j());
    let line = Signal::derive(move || {
        say(shell, |voice| {
            scene
                .log
                .with(|log| comes_to(voice, log.as_ref(), heat_j.get()))
        })
    });
    let is_told = Memo::new(move |_| scene.log.with(Option::is_some));
    view! {
        <Panel heading test="day-sun">
            {move || {
                if has_sun.get() {
                    view! { <Told scene /> }.into_any()
                } else {
                    view! { <p>{words.text(|strings| strings.diary.sun_stays_down)}</p> }.into_any()
                }
            }}
            <p class="lead" aria-live="polite" data-test="comes-to">{move || line.get()}</p>
            {move || {
                is_told
                    .get()
                    .then(|| {
                        view! {
                            <Button
                                label=words.text(|strings| strings.diary.erase_sky)
                                on_press=Callback::new(move |()| scene.tap_sky(None))
                                icon=Icon::Bin
                                test="erase-sky"
                            />
                        }
                    })
            }}
        </Panel>
    }
}

/// The ways to tell it.
#[component]
fn Told(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let hours = Memo::new(move |_| {
        say(shell, |voice| {
            let day = scene.day.get();
            scene.log.with(|log| {
                scene
                    .daylight
                    .with(|daylight| cells(voice, log.as_ref(), day, daylight))
            })
        })
    });
    let on_tap = move |place: usize| {
        let daylight = scene.daylight.get_untracked();
        let log = scene.log.get_untracked();
        scene.tap_sky(tapped(log.as_ref(), daylight.start + place, &daylight));
    };
    view! {
        <WholeDay scene />
        <SunHours
            label=words.text(|strings| strings.diary.hours_label)
            hours
            skies=Signal::derive(move || key(words.strings()))
            on_tap=Callback::new(on_tap)
            test="sun-hours"
        />
        <AsNumber scene />
    }
}

fn whole_day_test(sky: Sky) -> (&'static str, Icon) {
    match sky {
        Sky::Clear => ("day-clear", Icon::SunClear),
        Sky::Thin => ("day-thin", Icon::SunHaze),
        Sky::Patchy => ("day-patchy", Icon::SunBroken),
        Sky::Grey => ("day-grey", Icon::Overcast),
        Sky::Dark => ("day-dark", Icon::Rain),
    }
}

/// A button for each sky.
#[component]
fn WholeDay(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let button = move |sky: Sky| {
        let (test, icon) = whole_day_test(sky);
        let pressed = move || {
            let is_so = scene.log.with(|log| {
                scene
                    .daylight
                    .with(|daylight| is_all_day(log.as_ref(), sky, daylight))
            });
            if is_so { "true" } else { "false" }
        };
        let on_press = move |_| {
            let daylight = scene.daylight.get_untracked();
            scene.tap_sky(Some(all_day(sky, &daylight)));
        };
        view! {
            <button
                type="button"
                class="diary-sky"
                data-test=test
                aria-pressed=pressed
                on:click=on_press
            >
                <Glyph icon />
                <span>{move || (words.strings().tables.sky)(sky)}</span>
            </button>
        }
    };
    let label = words.text(|strings| strings.diary.whole_day);
    view! {
        <div class="diary-whole" role="group" aria-label=move || label.get()>
            <p class="field__label" aria-hidden="true">{move || label.get()}</p>
            <div class="diary-skies">{Sky::ALL.map(button).collect_view()}</div>
        </div>
    }
}

/// What was typed as a number of hours, and what is wrong with it.
#[derive(Debug, Clone, PartialEq)]
struct Typed {
    text: String,
    wrong: Option<String>,
    /// The log after it was typed.
    stood: Option<DayLog>,
}

/// A number of hours for the whole day, for those who count them.
#[component]
fn AsNumber(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let strings = untrack(|| shell.words.strings());
    let words = &strings.diary;
    let typed = RwSignal::new(None::<Typed>);
    let day = Memo::new(move |before: Option<&_>| {
        let day = scene.day.get();
        if before.is_some_and(|before| *before != day) {
            typed.set(None);
        }
        day
    });
    let kept = move || {
        day.track();
        typed.get().filter(|typed| typed.stood == scene.log.get())
    };
    let value = Signal::derive(move || match (kept(), scene.log.get()) {
        (Some(typed), _) => typed.text,
        (None, Some(DayLog::SunHours(hours))) => shell
            .words
            .formats()
            .with(|formats| formats.field(hours, 1)),
        (None, Some(DayLog::Hourly(_)) | None) => String::new(),
    });
    let take = move |text: String| {
        let wrong = match parse::number(&text) {
            Ok(hours) => scene
                .set_sky(Some(DayLog::SunHours(hours)))
                .map_err(|refused| say_refused(shell, refused))
                .err(),
            Err(error) => Some(parse_refusal(strings, error).to_owned()),
        };
        let stood = scene.log.get_untracked();
        typed.set(Some(Typed { text, wrong, stood }));
    };
    let on_step = move |n_steps: i32| {
        let formats = shell.words.formats().get_untracked();
        take(stepped(
            &formats,
            &value.get_untracked(),
            n_steps,
            SUN_HOUR_STEPS,
        ));
    };
    let possible = untrack(|| {
        let place = scene.place.get()?;
        let hours = possible_h(&place, scene.day.get())?;
        let formats = shell.words.formats();
        Some(formats.with(|formats| (words.possible)(&formats.sun_hours(hours))))
    });
    view! {
        <Fold summary=shell.words.text(|strings| strings.diary.as_number) test="as-number">
            <NumberField
                text=NumberFieldText {
                    label: words.sun_hours.to_owned(),
                    unit: (strings.common.units.hours)("").trim().to_owned(),
                    less: words.fewer_hours.to_owned(),
                    more: words.more_hours.to_owned(),
                    hint: possible.unwrap_or_default(),
                }
                value
                on_input=Callback::new(take)
                on_step=Callback::new(on_step)
                error=Signal::derive(move || kept().and_then(|typed| typed.wrong))
                test="sun-hours-number"
            />
        </Fold>
    }
}
