//! What is cooked, for how many, in which pot, and when.

use leptos::prelude::*;
use model::dish::{Basis, Dish};
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};

use super::fields::TimeOfDayField;
use super::quantity::{Quantity, QuantityField};
use super::scene::{Scene, say};
use crate::components::{Choice, ChoiceOption, Fold, NumberFieldText, Panel, Select, SelectOption};
use crate::i18n::strings::tonight::PlanTexts;
use crate::present::tonight::plan::{
    amounts, day_hint, dishes, key_of, lids, pot_kinds, pot_sizes, row_of, wraps,
};
use crate::state::limits;
use crate::state::plan::{Amount, Plan, TimeOfDay};
use crate::state::refused::{Field, Refused};

/// The fields of the plan.
#[component]
pub(super) fn What(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let text = move |pick: fn(&PlanTexts) -> &'static str| {
        Signal::derive(move || pick(&words.strings().tonight.plan).to_owned())
    };
    let dish_key = Memo::new(move |_| scene.plan.with(|plan| key_of(&Dish::ALL, &plan.dish)));
    let dish_options = Memo::new(move |_| say(scene.shell, dishes));
    let on_dish = move |key: String| {
        if let Some(dish) = row_of(&Dish::ALL, &key) {
            scene.change(|plan| plan.cook(dish));
        }
    };
    view! {
        <Panel heading=text(|words| words.heading) test="plan">
            <div class="fields">
                <Select
                    label=text(|words| words.dish)
                    options=dish_options
                    picked=dish_key
                    on_pick=Callback::new(on_dish)
                    test="dish"
                />
                <People scene />
                <When scene />
            </div>
            <Amounts scene />
            <Details scene />
        </Panel>
    }
}

#[component]
fn People(scene: Scene) -> impl IntoView {
    let words = &untrack(|| scene.shell.words.strings()).tonight.plan;
    let (least, most) = limits::PEOPLE;
    let quantity = Quantity {
        field: Field::People,
        decimals: 0,
        step: 1.0,
        range: (f64::from(least), f64::from(most)),
        whole: true,
    };
    let people = Memo::new(move |_| scene.plan.with(Plan::people));
    let apply = move |value: f64| {
        let count = whole(value);
        Field::People.count(count, limits::PEOPLE)?;
        scene.change(|plan| plan.amount = Amount::People(count));
        Ok::<(), Refused>(())
    };
    view! {
        <QuantityField
            text=NumberFieldText {
                label: words.people.to_owned(),
                unit: String::new(),
                less: words.fewer.to_owned(),
                more: words.more.to_owned(),
                hint: String::new(),
            }
            quantity
            current=Signal::derive(move || Some(f64::from(people.get())))
            apply=Callback::new(apply)
            test="people"
        />
    }
}

/// A whole number that was read as one.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "whole, and saturating out of range"
)]
fn whole(value: f64) -> u32 {
    value.round() as u32
}

/// When it goes in, and when it is eaten.
#[component]
fn When(scene: Scene) -> impl IntoView {
    const NOW: &str = "now";
    const LATER: &str = "later";
    let shell = scene.shell;
    let words = shell.words;
    let text = move |pick: fn(&PlanTexts) -> &'static str| {
        Signal::derive(move || pick(&words.strings().tonight.plan).to_owned())
    };
    let option = |key: &str, label: &str| ChoiceOption {
        key: key.to_owned(),
        label: label.to_owned(),
        detail: String::new(),
        icon: None,
    };
    let options = Memo::new(move |_| {
        let words = &words.strings().tonight.plan;
        vec![option(NOW, words.now), option(LATER, words.at_a_time)]
    });
    let put_in = Memo::new(move |_| scene.plan.with(|plan| plan.put_in));
    let picked = Memo::new(move |_| if put_in.get().is_some() { LATER } else { NOW }.to_owned());
    let on_pick = move |key: String| {
        let now = shell.clock.now_untracked();
        let later = || TimeOfDay::of(now.plus_s(1800).ceil_to_s(900));
        scene.change(|plan| plan.put_in = (key == LATER).then(later));
    };
    let put_in_hint = Memo::new(move |_| {
        say(shell, |voice| {
            day_hint(voice, scene.plan.with(|plan| plan.put_in_at(voice.now)))
        })
    });
    let eat_hint = Memo::new(move |_| {
        say(shell, |voice| {
            day_hint(voice, scene.plan.with(|plan| plan.eat_at(voice.now)))
        })
    });
    let is_later = Memo::new(move |_| put_in.get().is_some());
    view! {
        <div class="tonight-when">
            <Choice
                label=text(|words| words.goes_in)
                options
                picked
                on_pick=Callback::new(on_pick)
                test="goes-in"
            />
            {move || {
                is_later
                    .get()
                    .then(|| {
                        view! {
                            <TimeOfDayField
                                label=text(|words| words.goes_in_at)
                                current=put_in
                                apply=Callback::new(move |time| {
                                    scene.change(|plan| plan.put_in = Some(time));
                                })
                                hint=put_in_hint
                                test="goes-in-at"
                            />
                        }
                    })
            }}
        </div>
        <TimeOfDayField
            label=text(|words| words.eaten_at)
            current=Signal::derive(move || Some(scene.plan.with(|plan| plan.eat)))
            apply=Callback::new(move |time| scene.change(|plan| plan.eat = time))
            hint=eat_hint
            test="eaten-at"
        />
    }
}

/// Kilograms and litres; folded, they are seen all the same.
#[component]
fn Amounts(scene: Scene) -> impl IntoView {
    let summary = Memo::new(move |_| {
        say(scene.shell, |voice| {
            scene
                .plan
                .with(|plan| amounts(voice, plan.dish, plan.amounts_kg()))
        })
    });
    let is_liquid = Memo::new(move |_| {
        scene
            .plan
            .with(|plan| plan.dish.props().basis == Basis::Liquid)
    });
    view! {
        <Fold summary test="amounts">
            {move || {
                if is_liquid.get() {
                    view! { <Kilograms scene part=Part::Liquid /> }.into_any()
                } else {
                    view! {
                        <Kilograms scene part=Part::Food />
                        <Kilograms scene part=Part::Water />
                    }
                        .into_any()
                }
            }}
        </Fold>
    }
}

/// What is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Part {
    /// Dry or raw food, by weight.
    Food,
    /// Water poured on.
    Water,
    /// A liquid that is the food.
    Liquid,
}

#[component]
fn Kilograms(scene: Scene, part: Part) -> impl IntoView {
    let strings = untrack(|| scene.shell.words.strings());
    let (words, units) = (&strings.tonight.plan, &strings.common.units);
    let (label, unit, less, more, test) = match part {
        Part::Food => (
            words.food,
            (units.kilograms)(""),
            words.less_food,
            words.more_food,
            "food-kg",
        ),
        Part::Water => (
            words.water,
            (units.litres)(""),
            words.less_water,
            words.more_water,
            "water-l",
        ),
        Part::Liquid => (
            words.how_much,
            (units.litres)(""),
            words.less_food,
            words.more_food,
            "food-l",
        ),
    };
    let (field, range) = match part {
        Part::Food | Part::Liquid => (Field::FoodKg, limits::FOOD_KG),
        Part::Water => (Field::WaterKg, limits::WATER_KG),
    };
    let quantity = Quantity {
        field,
        decimals: 2,
        step: 0.1,
        range,
        whole: false,
    };
    let current = Memo::new(move |_| {
        let (food_kg, water_kg) = scene.plan.with(Plan::amounts_kg);
        match part {
            Part::Food | Part::Liquid => food_kg,
            Part::Water => water_kg,
        }
    });
    let apply = move |kg: f64| {
        field.within(kg, range)?;
        scene.change(|plan| {
            let (food_kg, water_kg) = plan.amounts_kg();
            plan.amount = match part {
                Part::Food | Part::Liquid => Amount::Measured {
                    food_kg: kg,
                    water_kg,
                },
                Part::Water => Amount::Measured {
                    food_kg,
                    water_kg: kg,
                },
            };
        });
        Ok::<(), Refused>(())
    };
    view! {
        <QuantityField
            text=NumberFieldText {
                label: label.to_owned(),
                unit: unit.trim().to_owned(),
                less: less.to_owned(),
                more: more.to_owned(),
                hint: String::new(),
            }
            quantity
            current=Signal::derive(move || Some(current.get()))
            apply=Callback::new(apply)
            test
        />
    }
}

/// The pot, its lid, and how warm what goes in is.
#[component]
fn Details(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let text = move |pick: fn(&PlanTexts) -> &'static str| {
        Signal::derive(move || pick(&words.strings().tonight.plan).to_owned())
    };
    let usual = move || {
        scene
            .cooker
            .with(|cooker| cooker.as_ref().map(|cooker| cooker.pot))
    };
    let pot = Memo::new(move |_| scene.plan.with(|plan| plan.pot).or_else(usual));
    let edit_pot = move |edit: &dyn Fn(&mut Pot)| {
        let Some(mut pot) = pot.get_untracked() else {
            return;
        };
        edit(&mut pot);
        let is_usual = untrack(usual) == Some(pot);
        scene.change(|plan| plan.pot = (!is_usual).then_some(pot));
    };
    let sizes = Memo::new(move |_| {
        usual()
            .map(|usual| say(scene.shell, |voice| pot_sizes(voice, usual)))
            .unwrap_or_default()
    });
    let key = move |key: fn(&Pot) -> String| {
        Memo::new(move |_| pot.with(|pot| pot.as_ref().map(key).unwrap_or_default()))
    };
    let list = move |rows: fn(&crate::present::tonight::Voice<'_>) -> Vec<SelectOption>| {
        Memo::new(move |_| say(scene.shell, rows))
    };
    let lid = Memo::new(move |_| scene.plan.with(|plan| key_of(&Lid::ALL, &plan.lid)));
    view! {
        <Fold summary=text(|words| words.details) test="details">
            <div class="fields">
                <Select
                    label=text(|words| words.pot)
                    options=sizes
                    picked=key(|pot| key_of(&PotSize::ALL, &pot.size))
                    on_pick=Callback::new(move |key: String| {
                        if let Some(size) = row_of(&PotSize::ALL, &key) {
                            edit_pot(&|pot| pot.size = size);
                        }
                    })
                    test="pot-size"
                />
                <Select
                    label=text(|words| words.pot_kind)
                    options=list(pot_kinds)
                    picked=key(|pot| key_of(&PotKind::ALL, &pot.kind))
                    on_pick=Callback::new(move |key: String| {
                        if let Some(kind) = row_of(&PotKind::ALL, &key) {
                            edit_pot(&|pot| pot.kind = kind);
                        }
                    })
                    test="pot-kind"
                />
                <Select
                    label=text(|words| words.wrap)
                    options=list(wraps)
                    picked=key(|pot| key_of(&Wrap::ALL, &pot.wrap))
                    on_pick=Callback::new(move |key: String| {
                        if let Some(wrap) = row_of(&Wrap::ALL, &key) {
                            edit_pot(&|pot| pot.wrap = wrap);
                        }
                    })
                    test="pot-wrap"
                />
                <Select
                    label=text(|words| words.lid)
                    options=list(lids)
                    picked=lid
                    on_pick=Callback::new(move |key: String| {
                        if let Some(lid) = row_of(&Lid::ALL, &key) {
                            scene.change(|plan| plan.lid = lid);
                        }
                    })
                    test="pot-lid"
                />
                <StartTemperature scene />
            </div>
        </Fold>
    }
}

#[component]
fn StartTemperature(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let strings = untrack(|| shell.words.strings());
    let words = &strings.tonight.plan;
    let degrees = shell
        .words
        .formats()
        .with_untracked(|formats| formats.degrees);
    let (least_c, most_c) = limits::START_C;
    let quantity = Quantity {
        field: Field::StartC,
        decimals: 0,
        step: 5.0,
        range: (degrees.from_c(least_c), degrees.from_c(most_c)),
        whole: false,
    };
    let start_c = Memo::new(move |_| {
        scene
            .plan
            .with(|plan| plan.start_c)
            .unwrap_or_else(|| scene.air_c.get())
    });
    let apply = move |shown: f64| {
        let start_c = Field::StartC.within(degrees.to_c(shown), limits::START_C)?;
        scene.change(|plan| plan.start_c = Some(start_c));
        Ok::<(), Refused>(())
    };
    let air = Memo::new(move |_| {
        let is_air = scene.plan.with(|plan| plan.start_c.is_none());
        is_air.then(|| words.as_the_air.to_owned())
    });
    view! {
        <div>
            <QuantityField
                text=NumberFieldText {
                    label: words.start.to_owned(),
                    unit: (strings.common.units.degrees)("", degrees).trim().to_owned(),
                    less: words.colder.to_owned(),
                    more: words.warmer.to_owned(),
                    hint: String::new(),
                }
                quantity
                current=Signal::derive(move || Some(degrees.from_c(start_c.get())))
                apply=Callback::new(apply)
                test="start-c"
            />
            {move || air.get().map(|air| view! { <p class="field__hint">{air}</p> })}
        </div>
    }
}
