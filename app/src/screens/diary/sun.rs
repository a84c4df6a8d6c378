//! The sun of the day: one tap for a whole day, or one an hour.

use std::ops::Range;

use crate::reactive::*;
use model::local_time::Day;
use model::sun::{DayLog, Sky};

use super::scene::{Scene, say, say_refused};
use crate::components::{
    Button, Fold, Icon, NumberField, NumberFieldText, Panel, SkyPick, SkyRow, SunHours,
};
use crate::i18n::refusal::parse_refusal;
use crate::present::diary::heat::{comes_to, room, untold};
use crate::present::diary::sun::{
    SUN_HOUR_STEPS, all_day, cells, drawn, is_all_day, is_worth_undoing, onward, onward_words,
    possible_h, tapped, told_at_once,
};
use crate::present::typed::stepped;
use crate::screens::later::painted;
use crate::shell::toasts::ToastAbout;
use crate::state::action::{Action, Done};
use crate::state::parse;
use crate::state::refused::Refused;

impl Scene {
    /// Logs a sky for the day that is open, or takes it away. Where one hour was tapped, another
    /// tap is the way back.
    fn set_sky(&self, log: Option<DayLog>, is_one_hour: bool) -> Result<(), Refused> {
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
        let before = self.log.get_untracked();
        let done = self.shell.dispatch.run(action)?;
        if let Some(before) =
            before.filter(|before| is_worth_undoing(Some(before), log.as_ref(), is_one_hour))
        {
            let about = match before {
                DayLog::Hourly(_) => ToastAbout::HoursReplaced,
                DayLog::SunHours(_) => ToastAbout::NumberReplaced,
            };
            let undo = match done {
                Done::Replaced(id) => Action::BringBack(id),
                _ => Action::SetSky {
                    day,
                    log: before,
                    possible_h,
                },
            };
            self.shell.toasts.show(about, Some(undo));
        }
        Ok(())
    }

    /// The same where nothing was typed that could be refused.
    fn tap_sky(&self, log: Option<DayLog>, is_one_hour: bool) {
        // Only a day to come is refused here, and none is shown.
        let _ = self.set_sky(log, is_one_hour);
    }

    /// The hours that a word for the whole day is about.
    fn told_at_once(&self) -> Range<usize> {
        let (day, now) = (self.day.get(), self.shell.clock.now().get());
        self.daylight
            .with(|daylight| told_at_once(daylight, day, now))
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
            let day = scene.day.get();
            scene.log.with(|log| {
                let log = log.as_ref();
                let untold = scene
                    .daylight
                    .with(|daylight| untold(log, day, daylight, voice.now));
                comes_to(voice, log, heat_j.get(), untold)
            })
        })
    });
    // The way of the store through the last days takes longer than what the day can give.
    let taken = painted(Memo::new(move |_| {
        let evening = shell.estimates.evening().get()?.ok()?;
        let day = scene.day.get();
        Some((day, evening.sun_taken_j(day).ok().flatten()?))
    }));
    let cutout_c = shell.store.read(|document| {
        let store = &document.cooker_in_use()?.cooker.store;
        (!store.charges.is_empty()).then_some(store.cutout_c)
    });
    let room = Memo::new(move |_| {
        let (came_j, cutout_c) = (heat_j.get()?, cutout_c.get()?);
        let day = scene.day.get();
        let taken_j = (taken.get()).and_then(|(of, taken_j)| (of == day).then_some(taken_j));
        Some(say(shell, |voice| {
            room(voice, day, came_j, taken_j, cutout_c)
        }))
    });
    let is_told = Memo::new(move |_| scene.log.with(Option::is_some));
    view! {
        <Panel heading test="day-sun">
            <p class="lead" aria-live="polite" data-test="comes-to">{line}</p>
            {move || room.get().map(|said| view! { <p data-test="room">{said}</p> })}
            {move || {
                if has_sun.get() {
                    view! { <Told scene /> }
                } else {
                    view! { <p>{words.text(|strings| strings.diary.sun_stays_down)}</p> }
                }
            }}
            {move || {
                is_told
                    .get()
                    .then(|| {
                        view! {
                            <Button
                                label=words.text(|strings| strings.diary.erase_sky)
                                on_press=Callback::new(move |()| scene.tap_sky(None, false))
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
    // What a tapped hour is now, for a screen reader.
    let said = RwSignal::new(String::new());
    // The hour that was tapped last, for those after it.
    let last = RwSignal::new(None::<(Day, usize)>);
    let rest = Memo::new(move |_| {
        let (_, hour) = last.get().filter(|(day, _)| *day == scene.day.get())?;
        let log = scene.log.get();
        let (sky, all) = scene
            .daylight
            .with(|daylight| onward(log.as_ref(), hour, daylight))?;
        Some((say(shell, |voice| onward_words(voice, hour, sky)), all))
    });
    let onward_button = move || {
        rest.get().map(|(label, log)| {
            view! {
                <Button
                    label
                    on_press=Callback::new(move |()| scene.tap_sky(Some(log), false))
                    icon=Icon::Onward
                    test="sun-onward"
                />
            }
        })
    };
    let on_tap = move |place: usize| {
        let daylight = scene.daylight.get_untracked();
        let log = scene.log.get_untracked();
        scene.tap_sky(
            tapped(log.as_ref(), daylight.start + place, &daylight),
            true,
        );
        last.set(Some((scene.day.get_untracked(), daylight.start + place)));
        let hour = hours.with_untracked(|hours| hours.get(place).map(|hour| hour.spoken.clone()));
        said.set(hour.unwrap_or_default());
    };
    view! {
        <WholeDay scene />
        <p class="aside">{words.text(|strings| strings.diary.hours_label)}</p>
        <SunHours
            label=words.text(|strings| strings.diary.hours_label)
            hours
            skies=vec![]
            on_tap=Callback::new(on_tap)
            test="sun-hours"
        />
        {onward_button}
        <p class="unseen" aria-live="polite">{move || said.get()}</p>
        {move || view! { <AsNumber scene day=scene.day.get() /> }}
    }
}

fn whole_day_test(sky: Sky) -> &'static str {
    match sky {
        Sky::Clear => "day-clear",
        Sky::Thin => "day-thin",
        Sky::Patchy => "day-patchy",
        Sky::Grey => "day-grey",
        Sky::Dark => "day-dark",
    }
}

/// A button for each sky, which tells what the drawings of the hours mean as well.
#[component]
fn WholeDay(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let hours = Memo::new(move |_| scene.told_at_once());
    let skies = Signal::derive(move || {
        let name = words.strings().tables.sky;
        let hours = hours.get();
        scene.log.with(|log| {
            let pick = |sky: Sky| SkyPick {
                sky: drawn(Some(sky)),
                label: name(sky).to_owned(),
                picked: is_all_day(log.as_ref(), sky, &hours),
                test: whole_day_test(sky),
            };
            Sky::ALL.map(pick).to_vec()
        })
    });
    let label = Signal::derive(move || {
        let words = &words.strings().diary;
        let is_whole = hours.get() == scene.daylight.get();
        let label = if is_whole {
            words.whole_day
        } else {
            words.so_far
        };
        label.to_owned()
    });
    let on_pick = move |place: usize| {
        let log = scene.log.get_untracked();
        if let Some(sky) = Sky::ALL.get(place) {
            let hours = hours.get_untracked();
            scene.tap_sky(Some(all_day(log.as_ref(), *sky, &hours)), false);
        }
    };
    view! { <SkyRow label skies on_pick=Callback::new(on_pick) test="whole-day" /> }
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
fn AsNumber(scene: Scene, day: Day) -> impl IntoView {
    let shell = scene.shell;
    let strings = untrack(|| shell.words.strings());
    let words = &strings.diary;
    let typed = RwSignal::new(None::<Typed>);
    let kept = move || typed.get().filter(|typed| typed.stood == scene.log.get());
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
                .set_sky(Some(DayLog::SunHours(hours)), false)
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
        let hours = possible_h(&place, day)?;
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
