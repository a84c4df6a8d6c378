//! The diary: the sun of a day, and what else happened on it.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

use leptos::prelude::*;
use model::journal::{Meal, Outcome};
use model::local_time::Day;
use model::sun::{Daylight, Sky};

use crate::components::{
    Button, DateField, EmptyNote, EntryRow, Fold, Icon, NumberField, NumberFieldText, Panel,
    RoomHeader, SunHours, TimeField, Tone,
};
use crate::present::diary::draft::{Draft, Kind};
use crate::present::diary::{day_field, day_from_field, entries, shown_day, sun};
use crate::present::tonight::Voice;
use crate::present::typed::{Mistake, number, stepped};
use crate::shell::{Shell, use_shell};
use crate::state::action::Action;
use crate::state::document::Entry;
use crate::state::erased::Erased;
use crate::state::refused::Field;
use crate::state::route::Route;

fn say<T>(shell: Shell, what: impl FnOnce(&Voice<'_>) -> T) -> T {
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

/// The room Diary, at a day or at today.
#[component]
pub(super) fn Diary(day: Option<Day>) -> impl IntoView {
    let shell = use_shell();
    let shown = untrack(|| shown_day(day, shell.clock.now().get()));
    let is_today = shown == shell.clock.now_untracked().day();
    let line = Signal::derive(move || shell.words.formats().get().day(shown));
    let go = move |day: Day| shell.router.go(Route::Diary(Some(day)));
    view! {
        <div class="screen">
            <RoomHeader title=shell.words.text(|strings| strings.diary.title) line />
            <div class="screen__body">
                <Sun day=shown />
                <Entries day=shown />
                <Panel heading=shell.words.text(|strings| strings.diary.day)>
                    <DateField
                        label=shell.words.text(|strings| strings.diary.day)
                        value=day_field(shown)
                        on_input=move |text: String| {
                            if let Some(day) = day_from_field(&text) {
                                go(day);
                            }
                        }
                        test="day"
                    />
                    <Button
                        label=shell.words.text(|strings| strings.diary.previous)
                        on_press=move |()| go(shown.plus(-1))
                        tone=Tone::Quiet
                        test="previous-day"
                    />
                    <Button
                        label=shell.words.text(|strings| strings.diary.following)
                        on_press=move |()| go(shown.plus(1))
                        tone=Tone::Quiet
                        disabled=is_today
                        test="next-day"
                    />
                </Panel>
                <LatelyErased />
            </div>
        </div>
    }
}

/// The sky of the day: all of it with one tap, or hour by hour, or as a number of hours.
#[component]
fn Sun(day: Day) -> impl IntoView {
    let shell = use_shell();
    let place = shell
        .store
        .read(|document| document.household.as_ref().map(|home| home.place));
    let log = shell
        .store
        .read(move |document| document.skies.get(&day).copied());
    let possible_h = Memo::new(move |_| place.get().and_then(|place| sun::possible_h(&place, day)));
    let daylight = Memo::new(move |_| {
        let light = place.get().and_then(|place| Daylight::of(&place, day).ok());
        light.map_or(6..18, |light| sun::hours_of(light, day))
    });
    let keep = move |log| {
        let action = match log {
            Some(log) => {
                let possible_h = possible_h.get_untracked().unwrap_or(24.0);
                Action::SetSky {
                    day,
                    log,
                    possible_h,
                }
            }
            None => Action::EraseSky(day),
        };
        shell.dispatch.run(action)
    };
    let heat_j = move || {
        let evening = shell.estimates.evening().get()?.ok()?;
        evening.weather().day_heat_j(day)
    };
    let heading = Signal::derive(move || {
        say(shell, |voice| {
            (voice.strings.diary.sun_heading)(&voice.formats.near_day(day, voice.now.day()))
        })
    });
    let whole_days = Sky::ALL.map(|sky| {
        let label = Signal::derive(move || (shell.words.strings().tables.sky)(sky).to_owned());
        let is_so = move || sun::is_all_day(log.get().as_ref(), sky, &daylight.get());
        let tone = if untrack(is_so) {
            Tone::Primary
        } else {
            Tone::Quiet
        };
        let test = match sky {
            Sky::Clear => "day-clear",
            Sky::Thin => "day-thin",
            Sky::Patchy => "day-patchy",
            Sky::Grey => "day-grey",
            Sky::Dark => "day-dark",
        };
        view! {
            <Button
                label
                on_press=move |()| {
                    // The hours of a day that has light are never refused.
                    let _ = keep(Some(sun::all_day(sky, &daylight.get_untracked())));
                }
                tone
                test
            />
        }
    });
    view! {
        <Panel heading test="sun">
            <p>{move || shell.words.strings().diary.whole_day}</p>
            <div class="row">{whole_days}</div>
            <SunHours
                label=shell.words.text(|strings| strings.diary.hours_label)
                hours=Signal::derive(move || {
                    say(shell, |voice| sun::cells(voice, log.get().as_ref(), day, &daylight.get()))
                })
                skies=Signal::derive(move || sun::key(shell.words.strings()))
                on_tap=move |idx: usize| {
                    let light = daylight.get_untracked();
                    let hour = light.start + idx;
                    let _ = keep(sun::tapped(log.get_untracked().as_ref(), hour, &light));
                }
                test="sun-hours"
            />
            <p data-test="comes-to">
                {move || say(shell, |voice| sun::comes_to(voice, log.get().as_ref(), heat_j()))}
            </p>
            <HoursOfSun day possible_h=possible_h.into() />
        </Panel>
    }
}

/// The sun of the day as a number of hours.
#[component]
fn HoursOfSun(day: Day, possible_h: Signal<Option<f64>>) -> impl IntoView {
    let shell = use_shell();
    let strings = untrack(|| shell.words.strings());
    let words = &strings.diary;
    let text = RwSignal::new(String::new());
    let mistake = RwSignal::new(None::<Mistake>);
    let take = move |typed: String| {
        text.set(typed.clone());
        let hours = number(&typed, Field::SunHours, (0.0, 24.0));
        let kept = hours.and_then(|hours| {
            let log = model::sun::DayLog::SunHours(hours);
            let possible_h = possible_h.get_untracked().unwrap_or(24.0);
            shell
                .dispatch
                .run(Action::SetSky {
                    day,
                    log,
                    possible_h,
                })
                .map_err(Mistake::from)
        });
        mistake.set(kept.err());
    };
    let error = Signal::derive(move || {
        let wrong = mistake.get()?;
        Some(say(shell, |voice| {
            wrong.words(voice.strings, voice.formats, voice.now.day())
        }))
    });
    view! {
        <Fold summary=shell.words.text(|strings| strings.diary.as_number) test="as-number">
            <NumberField
                text=NumberFieldText {
                    label: words.sun_hours.to_owned(),
                    unit: "h".to_owned(),
                    less: words.fewer_hours.to_owned(),
                    more: words.more_hours.to_owned(),
                    hint: String::new(),
                }
                value=text
                on_input=take
                on_step=move |n_steps| {
                    let formats = shell.words.formats().get_untracked();
                    take(stepped(&formats, &text.get_untracked(), n_steps, sun::SUN_HOUR_STEPS));
                }
                error
                test="hours-of-sun"
            />
        </Fold>
    }
}

/// What happened on the day, and the fields for one thing more.
#[component]
fn Entries(day: Day) -> impl IntoView {
    let shell = use_shell();
    let list = shell
        .store
        .read(move |document| document.entries_of(day).cloned().collect::<Vec<Entry>>());
    let open = RwSignal::new(None::<Entry>);
    let rows = move || {
        let rows: Vec<AnyView> = list
            .get()
            .into_iter()
            .map(|entry| {
                let seen = entry.clone();
                let view = Signal::derive(move || say(shell, |voice| entries::entry(voice, &seen)));
                let id = entry.id;
                let picked = Signal::derive(move || open.get().is_some_and(|open| open.id == id));
                view! {
                    <EntryRow entry=view on_press=move |()| open.set(Some(entry.clone())) test="entry" />
                    {move || picked.get().then(|| view! {
                        <Button
                            label=shell.words.text(|strings| strings.common.buttons.erase)
                            on_press=move |()| {
                                // What is gone already needs no erasing.
                                let _ = shell.dispatch.run(Action::EraseEntry(id));
                                open.set(None);
                            }
                            tone=Tone::Danger
                            test="erase"
                        />
                    })}
                }
                .into_any()
            })
            .collect();
        if rows.is_empty() {
            view! { <EmptyNote icon=Icon::Diary text=shell.words.text(|strings| strings.diary.no_entries) /> }
                .into_any()
        } else {
            rows.into_any()
        }
    };
    view! {
        <Panel heading=shell.words.text(|strings| strings.diary.entries_heading) test="entries">
            {rows}
            <AddNumber day kind=Kind::Reading />
            <AddNumber day kind=Kind::LidOpen />
            <AddNumber day kind=Kind::HeaterOff />
        </Panel>
    }
}

/// Fields for a reading, or for how long the lid stood open or the heater got nothing.
#[component]
fn AddNumber(day: Day, kind: Kind) -> impl IntoView {
    let shell = use_shell();
    let strings = untrack(|| shell.words.strings());
    let words = &strings.diary;
    let (summary, label, less, more, save, field): (
        fn(&crate::i18n::strings::Strings) -> &'static str,
        _,
        _,
        _,
        _,
        _,
    ) = match kind {
        Kind::Reading => (
            |strings| strings.diary.add_reading,
            words.reading_label,
            words.lower,
            words.higher,
            "keep-reading",
            "add-reading",
        ),
        Kind::LidOpen => (
            |strings| strings.diary.add_lid,
            words.lid_label,
            words.shorter,
            words.longer,
            "keep-lid",
            "add-lid",
        ),
        Kind::HeaterOff | Kind::Meal => (
            |strings| strings.diary.add_heater,
            words.heater_label,
            words.shorter,
            words.longer,
            "keep-heater",
            "add-heater",
        ),
    };
    let fresh = move || {
        let now = shell.clock.now_untracked();
        let at = if now.day() == day {
            now
        } else {
            day.at_s(17 * 3600)
        };
        let pot = shell
            .store
            .now_is(|document| document.cooker_in_use().map(|owned| owned.cooker.pot));
        let meal = Meal {
            dish: model::dish::Dish::WhiteRice,
            food_kg: 0.4,
            water_kg: 0.7,
            start_c: 20.0,
            pot: pot.unwrap_or(model::pot::Pot {
                kind: model::pot::PotKind::ThickAluminium,
                size: model::pot::PotSize::Litres2_5,
                wrap: model::pot::Wrap::SunkInCooker,
            }),
            lid: model::pot::Lid::On,
            out: None,
            eat_at: at,
            outcome: Outcome::default(),
        };
        shell
            .words
            .formats()
            .with_untracked(|formats| Draft::new(kind, at, meal, formats))
    };
    let draft = RwSignal::new(fresh());
    let mistake = RwSignal::new(None::<Mistake>);
    let error = Signal::derive(move || {
        let wrong = mistake.get()?;
        Some(say(shell, |voice| {
            wrong.words(voice.strings, voice.formats, voice.now.day())
        }))
    });
    let unit = say_unit(shell, kind);
    let keep = move |()| {
        let formats = shell.words.formats().get_untracked();
        let read = draft.with_untracked(|draft| draft.read(&formats));
        let kept = read.and_then(|(at, what)| {
            shell
                .dispatch
                .run(Action::AddEntry { at, what })
                .map_err(Mistake::from)
        });
        match kept {
            Ok(_) => {
                mistake.set(None);
                draft.set(fresh());
            }
            Err(wrong) => mistake.set(Some(wrong)),
        }
    };
    view! {
        <Fold summary=shell.words.text(summary) test=field>
            <NumberField
                text=NumberFieldText {
                    label: label.to_owned(),
                    unit,
                    less: less.to_owned(),
                    more: more.to_owned(),
                    hint: String::new(),
                }
                value=Signal::derive(move || draft.get().number)
                on_input=move |typed: String| {
                    mistake.set(None);
                    draft.update(|draft| draft.number = typed);
                }
                on_step=move |n_steps| {
                    let formats = shell.words.formats().get_untracked();
                    draft.update(|draft| {
                        draft.number = stepped(&formats, &draft.number, n_steps, kind.steps(&formats));
                    });
                }
                error
            />
            <TimeField
                label=shell.words.text(|strings| strings.diary.at)
                value=Signal::derive(move || draft.get().time)
                on_input=move |typed: String| draft.update(|draft| draft.time = typed)
            />
            <Button
                label=shell.words.text(|strings| strings.common.buttons.save)
                on_press=keep
                test=save
            />
        </Fold>
    }
}

fn say_unit(shell: Shell, kind: Kind) -> String {
    let strings = untrack(|| shell.words.strings());
    let degrees = shell
        .words
        .formats()
        .with_untracked(|formats| formats.degrees);
    match kind {
        Kind::Reading => (strings.common.units.degrees)("", degrees)
            .trim()
            .to_owned(),
        Kind::Meal | Kind::LidOpen | Kind::HeaterOff => "min".to_owned(),
    }
}

/// What was erased lately, each with its way back.
#[component]
fn LatelyErased() -> impl IntoView {
    let shell = use_shell();
    let erased = shell.store.read(|document| document.erased.clone());
    let row = move |thing: Erased| {
        let id = thing.id;
        view! {
            <p>{move || say(shell, |voice| entries::erased(voice, &thing))}</p>
            <Button
                label=shell.words.text(|strings| strings.common.buttons.bring_back)
                on_press=move |()| {
                    // What came back already stays where it is.
                    let _ = shell.dispatch.run(Action::BringBack(id));
                }
                tone=Tone::Quiet
                test="bring-back"
            />
        }
        .into_any()
    };
    view! {
        <Fold summary=shell.words.text(|strings| strings.diary.erased_heading) test="erased">
            {move || erased.get().into_iter().rev().map(row).collect::<Vec<AnyView>>()}
        </Fold>
    }
}
