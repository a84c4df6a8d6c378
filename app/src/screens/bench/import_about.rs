//! What a text of readings does not tell of its run.

use crate::reactive::*;
use leptos::task::spawn_local;

use super::import::{Pick, Scene};
use crate::bench::answer::{Answer, Opened};
use crate::bench::ask::What;
use crate::components::{
    Button, DateField, Icon, NumberField, NumberFieldText, Panel, Select, SelectOption, TextField,
    Tone,
};
use crate::i18n::strings::Strings;
use crate::platform::bench::Luggage;
use crate::present::bench::import::{Draft, KINDS, Typed, day_hint};
use crate::present::typed::{Mistake, stepped};
use crate::shell::bench::ask;
use crate::shell::focus_error;
use crate::state::action::{Action, Done};
use crate::state::ids::CookerId;
use crate::state::refused::Field;
use crate::state::route::{BenchPage, Route};

/// The form.
#[component]
pub(super) fn About(scene: Scene, opened: Opened) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let strings = untrack(|| words.strings());
    let formats = words.formats();
    let import = &strings.bench.import;
    let now = shell.clock.now_untracked();
    let cookers = shell.store.now_is(|document| {
        let named = document.cookers.iter();
        named
            .map(|owned| (owned.id, owned.name.clone()))
            .collect::<Vec<_>>()
    });
    let in_use = shell.store.now_is(|document| document.in_use);
    let Some(in_use) = in_use.or(cookers.first().map(|(id, _)| *id)) else {
        return View::nothing();
    };
    let draft = RwSignal::new(Draft::of(
        &opened,
        (in_use, now),
        strings,
        &formats.get_untracked(),
    ));
    let wrong = RwSignal::new(None::<Mistake>);
    let edit = move |change: &dyn Fn(&mut Draft)| {
        wrong.set(None);
        draft.update(|draft| change(draft));
    };
    let error = move |field: Field| {
        Signal::derive(move || {
            let wrong = wrong.get().filter(|wrong| wrong.field() == field)?;
            let today = shell.clock.now().get().day();
            Some(wrong.words(words.strings(), &formats.get(), today))
        })
    };
    let day_hint = day_hint(&opened, strings);
    let known = StoredValue::new(opened.clone());
    let on_keep = Callback::new(move |()| keep(scene, (draft, wrong), known.get_value()));
    let units = &strings.common.units;
    let degrees = (units.degrees)("", formats.with_untracked(|formats| formats.degrees));
    let minutes = (units.minutes)("");
    let number = move |typed: Typed, label: &'static str, unit: String, hint: &'static str| {
        let text = NumberFieldText {
            label: label.to_owned(),
            unit: unit.trim().to_owned(),
            less: (import.less)(label),
            more: (import.more)(label),
            hint: hint.to_owned(),
        };
        let set = move |text: String| {
            edit(&|draft| draft.numbers[typed as usize].clone_from(&text));
        };
        let on_step = move |n_steps| {
            let formats = formats.get_untracked();
            let before = draft.with_untracked(|draft| draft.number(typed).to_owned());
            set(stepped(&formats, &before, n_steps, typed.steps(&formats)));
        };
        view! {
            <NumberField
                text
                value=Signal::derive(move || draft.with(|draft| draft.number(typed).to_owned()))
                on_input=Callback::new(set)
                on_step=Callback::new(on_step)
                error=error(typed.field())
                test=test_of(typed)
            />
        }
    };
    let water = (units.litres)("");
    let is_boil =
        Memo::new(move |_| known.with_value(|opened| draft.with(|draft| draft.has_pot(opened))));
    let pot = move || {
        is_boil.get().then(|| {
            view! {
                {number(Typed::Water, import.water, water.clone(), "")}
                {number(Typed::PotIn, import.pot_in, minutes.clone(), "")}
                {number(Typed::PotOut, import.pot_out, minutes.clone(), "")}
            }
        })
    };
    let key = |id: CookerId| id.0.to_string();
    let option = |(id, name): &(CookerId, String)| SelectOption {
        key: key(*id),
        label: name.clone(),
    };
    let options: Vec<SelectOption> = cookers.iter().map(option).collect();
    let kind = KINDS
        .iter()
        .position(|kind| *kind == draft.with_untracked(|draft| draft.kind));
    let on_kind = move |place: usize| {
        if let Some(kind) = KINDS.get(place).copied() {
            edit(&|draft| draft.kind = kind);
        }
    };
    let heading: fn(&Strings) -> &'static str = |strings| strings.bench.import.about;
    view! {
        <Panel heading=words.text(heading) test="import-about">
            <Select
                label=words.text(|strings| strings.bench.import.cooker)
                options=Signal::from(options)
                picked=Signal::derive(move || draft.with(|draft| key(draft.cooker)))
                on_pick=Callback::new(move |key: String| {
                    if let Ok(id) = key.parse() {
                        edit(&|draft| draft.cooker = CookerId(id));
                    }
                })
                test="import-cooker"
            />
            <Pick
                label=import.kind.to_owned()
                names=KINDS.map(strings.bench.kind).to_vec()
                picked=kind.unwrap_or_default()
                on_pick=Callback::new(on_kind)
                test="import-kind"
            />
            <TextField
                label=words.text(|strings| strings.bench.import.name)
                value=Signal::derive(move || draft.with(|draft| draft.name.clone()))
                on_input=Callback::new(move |name: String| {
                    edit(&|draft| draft.name.clone_from(&name));
                })
                error=error(Field::Name)
                test="import-name"
            />
            <DateField
                label=words.text(|strings| strings.bench.import.started)
                value=Signal::derive(move || draft.with(|draft| draft.day.clone()))
                on_input=Callback::new(move |day: String| {
                    edit(&|draft| draft.day.clone_from(&day));
                })
                hint=Signal::from(day_hint.to_owned())
                error=error(Field::Day)
                test="import-day"
            />
            {number(Typed::Air, import.air, degrees, import.air_hint)}
            {number(Typed::Heater, import.heater, (units.watts)(""), import.heater_hint)}
            {pot}
            <Button
                label=words.text(|strings| strings.bench.import.keep)
                on_press=on_keep
                icon=Icon::Tick
                tone=Tone::Primary
                test="import-keep"
            />
        </Panel>
    }
}

fn test_of(typed: Typed) -> &'static str {
    match typed {
        Typed::Air => "import-air",
        Typed::Heater => "import-heater",
        Typed::Water => "import-water",
        Typed::PotIn => "import-pot-in",
        Typed::PotOut => "import-pot-out",
    }
}

/// Keeps the text on the device, and then the run; or says what is wrong.
fn keep(
    scene: Scene,
    (draft, wrong): (RwSignal<Draft>, RwSignal<Option<Mistake>>),
    opened: Opened,
) {
    let shell = scene.shell;
    spawn_local(async move {
        let kept = match ask(shell, What::Keep, Luggage::None).await {
            Ok(Answer::Kept(kept)) => kept,
            Ok(_) => return,
            Err(why) => {
                scene.refused.try_set(Some(why));
                return;
            }
        };
        let formats = shell.words.formats().get_untracked();
        let now = shell.clock.now_untracked();
        let draft = draft.get_untracked();
        let pot = shell.store.now_is(|document| {
            let owned = document.cooker(draft.cooker)?;
            Some(owned.cooker.pot)
        });
        let Some(pot) = pot else { return };
        let done = draft
            .read((&opened, kept), pot, &formats, now)
            .and_then(|action| Ok(shell.dispatch.run(Action::Bench(action))?));
        match done {
            Ok(Done::AddedRun(id)) => shell.router.go(Route::Bench(BenchPage::Fit(id))),
            Ok(_) => {}
            Err(mistake) => {
                wrong.try_set(Some(mistake));
                focus_error();
            }
        }
    });
}
