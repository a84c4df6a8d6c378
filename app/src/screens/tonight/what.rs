//! What is cooked, for how many, in which pot, and when.

use crate::reactive::*;
use model::dish::Dish;

use super::amounts::Amounts;
use super::details::Details;
use super::fields::TimeOfDayField;
use super::quantity::{Quantity, QuantityField};
use super::scene::{Scene, say};
use crate::components::{Choice, ChoiceOption, NumberFieldText, Panel, Select};
use crate::i18n::strings::tonight::PlanTexts;
use crate::present::tonight::plan::{day_hint, dishes, key_of, row_of};
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
