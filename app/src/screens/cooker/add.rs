//! Another cooker: one of the usual ways of building, and its panels.

use crate::reactive::*;
use model::presets::Preset;

use super::form::{Refusal, site};
use crate::components::{
    Button, Caution, CautionLevel, Choice, Fold, Icon, NumberField, NumberFieldText, Tone,
};
use crate::present::cooker::fault::{Fault, check, words as fault_words};
use crate::present::cooker::list::{PANELS_W, USUAL_PANELS_W, capital, fitting_name, preset};
use crate::present::first_start::preset_options;
use crate::shell::{Shell, use_shell};
use crate::state::action::{Action, Done};
use crate::state::route::Route;

/// The questions for another cooker.
#[component]
pub(super) fn AddCooker() -> impl IntoView {
    let Shell {
        words,
        store,
        dispatch,
        clock,
        router,
        ..
    } = use_shell();
    let strings = untrack(move || words.strings());
    let formats = words.formats();
    let site = site(store);
    let picked = RwSignal::new(Preset::AluminiumInPerlite);
    let watts = RwSignal::new(untrack(|| PANELS_W.text(USUAL_PANELS_W, &formats.get())));
    let refused = RwSignal::new(None::<Fault>);
    let say = move |fault: &Fault| {
        let today = clock.now().get().day();
        let number = Some(PANELS_W);
        fault_words(words.strings(), &formats.get(), fault, number, today)
    };
    let watts_error = Signal::derive(move || {
        let read = watts.with(|text| PANELS_W.read(text, &formats.get()));
        read.err().map(|fault| say(&fault))
    });
    let refusal = Signal::derive(move || refused.get().map(|fault| say(&fault)));
    let add = move || -> Result<(), Fault> {
        let formats = formats.get_untracked();
        let watts_w = PANELS_W.read(&watts.get_untracked(), &formats)?;
        let Some(site) = site.get_untracked() else {
            return Ok(());
        };
        let preset = picked.get_untracked();
        let cooker = preset.cooker(watts_w, site.place.latitude_deg);
        check(&site, &cooker)?;
        let strings = untrack(move || words.strings());
        let done = dispatch.run(Action::AddCooker {
            name: fitting_name(capital((strings.first_start.preset)(preset))),
            cooker: Box::new(cooker),
        })?;
        if let Done::AddedCooker(id) = done {
            router.go(Route::Cooker(Some(id)));
        }
        Ok(())
    };
    let label = strings.cooker.list.add_watts;
    let number = NumberFieldText {
        label: label.to_owned(),
        unit: PANELS_W.measure.unit(strings, &formats.get_untracked()),
        less: (strings.cooker.parts.less)(label),
        more: (strings.cooker.parts.more)(label),
        hint: String::new(),
    };
    let on_step = move |direction| {
        let formats = formats.get_untracked();
        watts.update(|text| *text = PANELS_W.stepped(text, USUAL_PANELS_W, direction, &formats));
    };
    view! {
        <Fold summary=words.text(|strings| strings.cooker.list.add) test="add-cooker">
            <Choice
                label=words.text(|strings| strings.cooker.list.add_how)
                options=Signal::derive(move || preset_options(words.strings()))
                picked=Signal::derive(move || picked.get().key().to_owned())
                on_pick=move |key: String| {
                    refused.set(None);
                    if let Some(preset) = preset(&key) {
                        picked.set(preset);
                    }
                }
                test="add-preset"
            />
            <Show when=move || picked.get().holds_nitrate()>
                <Caution
                    level=CautionLevel::Danger
                    icon=Icon::Salt
                    word=words.text(|strings| strings.safety.danger)
                    text=words.text(|strings| strings.safety.nitrate)
                />
            </Show>
            <NumberField
                text=number
                value=watts
                on_input=move |text: String| {
                    refused.set(None);
                    watts.set(text);
                }
                on_step=Callback::new(on_step)
                error=watts_error
                test="add-watts"
            />
            <p class="aside">{move || words.strings().cooker.list.add_note}</p>
            <Button
                label=words.text(|strings| strings.cooker.list.add)
                icon=Icon::Plus
                tone=Tone::Primary
                disabled=Signal::derive(move || watts_error.with(Option::is_some))
                on_press=move |()| refused.set(add().err())
                test="add-now"
            />
            <Refusal error=refusal />
        </Fold>
    }
}
