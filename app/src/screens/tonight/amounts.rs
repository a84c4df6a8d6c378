//! How much is cooked, by weight and volume.

use crate::reactive::*;
use model::dish::Basis;

use super::quantity::{Quantity, QuantityField};
use super::scene::{Scene, say};
use crate::components::{Fold, NumberFieldText};
use crate::present::tonight::plan::{Part, amounts, measured};
use crate::state::limits;
use crate::state::plan::Plan;
use crate::state::refused::{Field, Refused};

/// Kilograms and litres; folded, they are seen all the same.
#[component]
pub(super) fn Amounts(scene: Scene) -> impl IntoView {
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
                    view! { <Kilograms scene part=Part::Liquid /> }
                } else {
                    view! {
                        <Kilograms scene part=Part::Food />
                        <Kilograms scene part=Part::Water />
                    }
                }
            }}
        </Fold>
    }
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
        let usual = scene
            .cooker
            .with_untracked(|cooker| cooker.as_ref().map(|it| it.pot));
        let plan = scene.plan.get_untracked();
        if let Some(pot) = plan.pot.or(usual) {
            let amount = measured(&plan, part, kg, pot)?;
            scene.change(|plan| plan.amount = amount);
        }
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
