//! The pot, its lid, and how warm what goes in is.

use crate::reactive::*;
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};

use super::quantity::{Quantity, QuantityField};
use super::scene::{Scene, say};
use crate::components::{Fold, NumberFieldText, Select, SelectOption};
use crate::i18n::strings::tonight::PlanTexts;
use crate::present::tonight::Voice;
use crate::present::tonight::plan::{key_of, lids, pot_kinds, pot_sizes, row_of, wraps};
use crate::state::limits;
use crate::state::refused::{Field, Refused};

/// The pot, its lid, and how warm what goes in is.
#[component]
pub(super) fn Details(scene: Scene) -> impl IntoView {
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
    let list =
        move |rows: fn(&Voice<'_>) -> Vec<SelectOption>| Memo::new(move |_| say(scene.shell, rows));
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
