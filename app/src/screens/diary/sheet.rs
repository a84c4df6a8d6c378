//! The sheet in which an entry is added, changed or erased.

use crate::reactive::*;
use model::dish::Dish;
use model::journal::Felt;
use model::pot::{Lid, PotSize};

use super::scene::{Form, Scene, say};
use super::typing::Text;
use crate::components::{
    Button, Choice, ChoiceOption, DateField, Fold, Icon, NumberField, NumberFieldText, Select,
    SelectOption, Sheet, TimeField, Tone,
};
use crate::i18n::strings::Strings;
use crate::present::diary::draft::{Draft, KILOGRAM_STEPS, Kind, POWER_STEPS};
use crate::present::tonight::Voice;
use crate::present::tonight::plan::{dishes, key_of, lids, pot_sizes, row_of};
use crate::present::typed::{Steps, stepped};
use crate::state::limits;
use crate::state::refused::Field;

/// The sheet.
#[component]
pub(super) fn EntrySheet(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let open = Memo::new(move |_| scene.form.with(Option::is_some));
    let title = Signal::derive(move || {
        let strings = words.strings();
        let words = &strings.diary;
        scene
            .form
            .with(|form| match form {
                Some(Form { id: Some(_), .. }) => words.change_title,
                Some(Form { draft, .. }) => match draft.kind {
                    Kind::Reading => words.add_reading,
                    Kind::Felt => words.add_felt,
                    Kind::Meal => words.add_meal,
                    Kind::LidOpen => words.add_lid,
                    Kind::HeaterOff => words.add_heater,
                    Kind::TopUp => words.add_top_up,
                },
                None => "",
            })
            .to_owned()
    });
    view! {
        <Sheet
            title
            close=words.text(|strings| strings.common.buttons.close)
            open
            on_close=Callback::new(move |()| scene.form.set(None))
            test="entry-sheet"
        >
            <Fields scene />
        </Sheet>
    }
}

#[component]
fn Fields(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let (kind, id) = scene.form.with_untracked(|form| {
        form.as_ref()
            .map_or((Kind::Reading, None), |form| (form.draft.kind, form.id))
    });
    let time_label: fn(&Strings) -> &'static str = match kind {
        Kind::Reading | Kind::Felt => |strings| strings.diary.at,
        Kind::Meal => |strings| strings.diary.put_in,
        Kind::LidOpen | Kind::HeaterOff | Kind::TopUp => |strings| strings.diary.from,
    };
    let number = match kind {
        Kind::Meal => view! { <MealFields scene /> },
        Kind::Felt => view! { <FeltChoice scene /> },
        Kind::Reading | Kind::LidOpen | Kind::HeaterOff => {
            view! { <Amount scene kind /> }
        }
        Kind::TopUp => view! {
            <Amount scene kind />
            <Power scene />
        },
    };
    let whole = move || {
        scene
            .wrong(Field::Entry)
            .or_else(|| scene.wrong(Field::Cooker))
    };
    view! {
        <div class="stack">
            <div class="fields">
                <DateField
                    label=words.text(|strings| strings.diary.day)
                    value=Signal::derive(move || scene.text(|draft| &mut draft.day))
                    on_input=Callback::new(move |typed| scene.edit(|draft| draft.day = typed))
                    error=Signal::derive(move || scene.wrong(Field::Day))
                    test="entry-day"
                />
                <Time scene label=time_label text=|draft| &mut draft.time field=Field::At test="entry-time" />
            </div>
            {number}
            {move || whole().map(|wrong| view! { <p class="field__error" role="alert">{wrong}</p> })}
            <div class="row">
                <Button
                    label=words.text(|strings| strings.common.buttons.save)
                    on_press=Callback::new(move |()| scene.keep())
                    tone=Tone::Primary
                    icon=Icon::Tick
                    test="entry-save"
                />
                {id.map(|id| {
                    view! {
                        <Button
                            label=words.text(|strings| strings.common.buttons.erase)
                            on_press=Callback::new(move |()| scene.erase(id))
                            tone=Tone::Danger
                            icon=Icon::Bin
                            test="entry-erase"
                        />
                    }
                })}
            </div>
        </div>
    }
}

/// A time of day of the draft, with the day under it where that is another one.
#[component]
fn Time(
    scene: Scene,
    label: fn(&Strings) -> &'static str,
    text: Text,
    field: Field,
    /// It may stay empty.
    #[prop(optional)]
    is_seen: bool,
    test: &'static str,
) -> impl IntoView {
    let shell = scene.shell;
    let hint = Signal::derive(move || {
        let typed = scene.text(text);
        let day = (field != Field::At)
            .then(|| scene.part(|draft| draft.other_day(&typed)))
            .flatten();
        say(shell, |voice| match day {
            Some(day) => {
                let day = voice.formats.near_day(day, voice.now.day());
                (voice.strings.tonight.plan.on_day)(&day)
            }
            None if is_seen && typed.is_empty() => voice.strings.diary.if_seen.to_owned(),
            None => String::new(),
        })
    });
    view! {
        <TimeField
            label=shell.words.text(label)
            value=Signal::derive(move || scene.text(text))
            on_input=Callback::new(move |typed| scene.edit(|draft| *text(draft) = typed))
            hint
            error=Signal::derive(move || scene.wrong(field))
            test
        />
    }
}

/// A number of the draft.
#[component]
fn Number(
    scene: Scene,
    words: NumberFieldText,
    text: Text,
    steps: Steps,
    field: Field,
    test: &'static str,
) -> impl IntoView {
    let on_step = move |n_steps: i32| {
        let formats = scene.shell.words.formats().get_untracked();
        scene.edit(|draft| {
            let number = text(draft);
            *number = stepped(&formats, number, n_steps, steps);
        });
    };
    view! {
        <NumberField
            text=words
            value=Signal::derive(move || scene.text(text))
            on_input=Callback::new(move |typed| scene.edit(|draft| *text(draft) = typed))
            on_step=Callback::new(on_step)
            error=Signal::derive(move || scene.wrong(field))
            test
        />
    }
}

/// The reading, or how long.
#[component]
fn Amount(scene: Scene, kind: Kind) -> impl IntoView {
    let strings = untrack(|| scene.shell.words.strings());
    let formats = scene.shell.words.formats().get_untracked();
    let (words, units) = (&strings.diary, &strings.common.units);
    let (label, unit, less, more) = match kind {
        Kind::Reading | Kind::Felt | Kind::Meal => (
            words.reading_label,
            (units.degrees)("", formats.degrees),
            words.lower,
            words.higher,
        ),
        Kind::LidOpen => (
            words.lid_label,
            (units.minutes)(""),
            words.shorter,
            words.longer,
        ),
        Kind::TopUp => (
            words.top_up_label,
            (units.minutes)(""),
            words.shorter,
            words.longer,
        ),
        Kind::HeaterOff => (
            words.heater_label,
            (units.hours)(""),
            words.shorter,
            words.longer,
        ),
    };
    let field = if kind == Kind::Reading {
        Field::ReadingC
    } else {
        Field::ForS
    };
    view! {
        <Number
            scene
            words=words_of(label, &unit, less, more)
            text=|draft| &mut draft.number
            steps=kind.steps(&formats)
            field
            test="entry-number"
        />
    }
}

/// Heat of a top-up into the store.
#[component]
fn Power(scene: Scene) -> impl IntoView {
    let strings = untrack(|| scene.shell.words.strings());
    let (words, units) = (&strings.diary, &strings.common.units);
    view! {
        <Number
            scene
            words=words_of(words.top_up_power, &(units.watts)(""), words.lower, words.higher)
            text=|draft| &mut draft.power
            steps=POWER_STEPS
            field=Field::TopUpW
            test="entry-power"
        />
    }
}

fn words_of(label: &str, unit: &str, less: &str, more: &str) -> NumberFieldText {
    NumberFieldText {
        label: label.to_owned(),
        unit: unit.trim().to_owned(),
        less: format!("{label}: {less}"),
        more: format!("{label}: {more}"),
        hint: String::new(),
    }
}

/// How hot the store felt.
#[component]
fn FeltChoice(scene: Scene) -> impl IntoView {
    const COLD: &str = "cold";
    const HOT: &str = "hot";
    let words = scene.shell.words;
    let options = Memo::new(move |_| {
        let words = &words.strings().diary;
        [(HOT, words.felt_hot_choice), (COLD, words.felt_cold_choice)]
            .map(|(key, label)| ChoiceOption {
                key: key.to_owned(),
                label: label.to_owned(),
                detail: String::new(),
                icon: None,
            })
            .to_vec()
    });
    let is_hot = Memo::new(move |_| scene.part(|draft| draft.felt == Felt::Hot));
    let picked = Signal::derive(move || if is_hot.get() { HOT } else { COLD }.to_owned());
    let on_pick = move |key: String| {
        let felt = if key == HOT { Felt::Hot } else { Felt::Cold };
        scene.edit(|draft| draft.felt = felt);
    };
    let how = words.text(|strings| strings.diary.felt_how);
    view! {
        <Choice
            label=words.text(|strings| strings.diary.felt_label)
            options
            picked
            on_pick=Callback::new(on_pick)
            test="entry-felt"
        />
        <p class="field__hint">{move || how.get()}</p>
    }
}

/// What is in the pot, when it is eaten, and what was seen of it.
#[component]
fn MealFields(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let dish = Memo::new(move |_| scene.part(|draft| key_of(&Dish::ALL, &draft.meal.dish)));
    let on_dish = move |key: String| {
        if let Some(dish) = row_of(&Dish::ALL, &key) {
            let people = shell
                .store
                .now_is(|document| document.household.as_ref().map_or(1, |it| it.people));
            let formats = words.formats().get_untracked();
            scene.edit(|draft| draft.change_dish(dish, people, &formats));
        }
    };
    let list =
        move |rows: fn(&Voice<'_>) -> Vec<SelectOption>| Memo::new(move |_| say(shell, rows));
    let usual = shell
        .store
        .read(|document| document.cooker_in_use().map(|owned| owned.cooker.pot));
    let sizes = Memo::new(move |_| {
        usual
            .get()
            .map(|usual| say(shell, |voice| pot_sizes(voice, usual)))
            .unwrap_or_default()
    });
    let seen_at_all = scene
        .form
        .with_untracked(|form| form.as_ref().is_some_and(|form| form.id.is_some()));
    view! {
        <div class="fields">
            <Select
                label=words.text(|strings| strings.tonight.plan.dish)
                options=list(dishes)
                picked=dish
                on_pick=Callback::new(on_dish)
                test="entry-dish"
            />
            <Kilograms scene />
            <Time scene label=|strings| strings.diary.eaten text=|draft| &mut draft.eat field=Field::EatAt test="entry-eat" />
            <Select
                label=words.text(|strings| strings.tonight.plan.pot)
                options=sizes
                picked=Signal::derive(move || scene.part(|draft| key_of(&PotSize::ALL, &draft.meal.pot.size)))
                on_pick=Callback::new(move |key: String| {
                    if let Some(size) = row_of(&PotSize::ALL, &key) {
                        scene.edit(|draft| draft.meal.pot.size = size);
                    }
                })
                test="entry-pot"
            />
            <Select
                label=words.text(|strings| strings.tonight.plan.lid)
                options=list(lids)
                picked=Signal::derive(move || scene.part(|draft| key_of(&Lid::ALL, &draft.meal.lid)))
                on_pick=Callback::new(move |key: String| {
                    if let Some(lid) = row_of(&Lid::ALL, &key) {
                        scene.edit(|draft| draft.meal.lid = lid);
                    }
                })
                test="entry-lid"
            />
        </div>
        <Fold summary=words.text(|strings| strings.diary.seen) open=seen_at_all test="entry-seen">
            <div class="fields">
                <Time scene label=|strings| strings.diary.boiled text=|draft| &mut draft.seen.boiled field=Field::BoiledAt is_seen=true test="entry-boiled" />
                <Time scene label=|strings| strings.diary.not_boiled text=|draft| &mut draft.seen.not_boiled field=Field::NotBoiledBy is_seen=true test="entry-not-boiled" />
                <Time scene label=|strings| strings.diary.not_done text=|draft| &mut draft.seen.not_done field=Field::NotDoneBy is_seen=true test="entry-not-done" />
                <Time scene label=|strings| strings.diary.done text=|draft| &mut draft.seen.done field=Field::DoneAt is_seen=true test="entry-done" />
                <Time scene label=|strings| strings.diary.out text=|draft| &mut draft.seen.out field=Field::OutAt is_seen=true test="entry-out" />
            </div>
        </Fold>
    }
}

/// Food and water, or the one amount of a liquid; and how warm it goes in.
#[component]
fn Kilograms(scene: Scene) -> impl IntoView {
    let strings = untrack(|| scene.shell.words.strings());
    let formats = scene.shell.words.formats().get_untracked();
    let (words, units) = (&strings.tonight.plan, &strings.common.units);
    let degrees = formats.degrees;
    let (least_c, most_c) = limits::START_C;
    let warmth = Steps {
        by: 5.0,
        range: (degrees.from_c(least_c), degrees.from_c(most_c)),
        start: degrees.from_c(20.0),
    };
    let is_liquid = Memo::new(move |_| scene.part(Draft::is_liquid));
    let (kilograms, litres) = ((units.kilograms)(""), (units.litres)(""));
    let amounts = move || {
        let food = if is_liquid.get() {
            words_of(words.how_much, &litres, words.less_food, words.more_food)
        } else {
            words_of(words.food, &kilograms, words.less_food, words.more_food)
        };
        let water = words_of(words.water, &litres, words.less_water, words.more_water);
        let water = (!is_liquid.get()).then(|| {
            view! {
                <Number scene words=water text=|draft| &mut draft.water steps=KILOGRAM_STEPS field=Field::WaterKg test="entry-water" />
            }
        });
        view! {
            <Number scene words=food text=|draft| &mut draft.food steps=KILOGRAM_STEPS field=Field::FoodKg test="entry-food" />
            {water}
        }
    };
    view! {
        {amounts}
        <Number
            scene
            words=words_of(words.start, &(units.degrees)("", degrees), words.colder, words.warmer)
            text=|draft| &mut draft.start
            steps=warmth
            field=Field::StartC
            test="entry-start"
        />
    }
}
