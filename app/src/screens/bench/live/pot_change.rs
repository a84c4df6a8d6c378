//! The pots of a run, each of which opens to be changed or erased.

use crate::reactive::*;
use model::pot::{Lid, PotSize};

use super::Scene;
use super::pots::number;
use crate::components::{Button, EntryRow, EntryView, Icon, Select, Sheet, TimeField, Tone};
use crate::i18n::strings::Strings;
use crate::present::bench::live as present;
use crate::present::bench::pot_change::PotChange;
use crate::present::tonight::plan::{key_of, lids, pot_sizes, row_of};
use crate::present::typed::{Mistake, Steps};
use crate::screens::bench::frame::{say, wrong_with};
use crate::shell::focus_error;
use crate::shell::toasts::ToastAbout;
use crate::state::action::{Action, BenchAction};
use crate::state::limits;
use crate::state::refused::Field;
use model::bench::PotIn;

/// Weights are stepped by the glass. \[kg\]
const STEP_KG: f64 = 0.1;

/// The pots that were put in, the latest first.
#[component]
pub(super) fn PotList(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let changed = RwSignal::new(None::<usize>);
    let close = move || {
        changed.set(None);
        scene.wrong.set(None);
    };
    let row = move |(place, title): (usize, String)| {
        let entry = EntryView {
            when: String::new(),
            title,
            detail: String::new(),
            icon: Icon::PotSteams,
        };
        let open = move |()| {
            scene.wrong.set(None);
            changed.set(Some(place));
        };
        view! {
            <li>
                <EntryRow
                    entry=Signal::from(entry)
                    on_press=Callback::new(open)
                    test="run-pot"
                />
            </li>
        }
    };
    let rows = Memo::new(move |_| {
        let rows = scene.with(|run| say(shell, |voice| present::pots(voice, run)));
        rows.unwrap_or_default()
    });
    let list = move || {
        let rows = rows.get();
        (!rows.is_empty()).then(|| {
            view! { <ul class="cooker-list">{rows.into_iter().map(row).collect_view()}</ul> }
        })
    };
    view! {
        {list}
        <Sheet
            title=words.text(|strings| strings.runs.live.change_pot)
            close=words.text(|strings| strings.common.buttons.close)
            open=Signal::derive(move || changed.get().is_some())
            on_close=Callback::new(move |()| close())
            test="pot-change"
        >
            {move || changed.get().map(|place| view! { <Form scene place changed /> })}
        </Sheet>
    }
}

/// One field of the draft.
type Text = fn(&mut PotChange) -> &mut String;

#[component]
fn Form(scene: Scene, place: usize, changed: RwSignal<Option<usize>>) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let strings = untrack(|| words.strings());
    let (live, units) = (&strings.runs.live, &strings.common.units);
    let formats = words.formats().get_untracked();
    let run = scene.run.get_untracked()?;
    let former = *run.pots.get(place)?;
    let draft = RwSignal::new(PotChange::of(&former, &run, &formats));
    let value = move |text: Text| {
        Signal::derive(move || draft.with(|draft| text(&mut draft.clone()).clone()))
    };
    let edit = move |text: Text| {
        Callback::new(move |typed| {
            draft.update(|draft| *text(draft) = typed);
            scene.wrong.set(None);
        })
    };
    let settle = move |pots: Vec<PotIn>, said: &str| {
        let Some(before) = scene.run.get_untracked().map(|run| run.pots) else {
            return;
        };
        let run = scene.id;
        let action = Action::Bench(BenchAction::ChangePots { run, pots });
        match shell.dispatch.run(action) {
            Ok(_) => {
                changed.set(None);
                let undo = Action::Bench(BenchAction::ChangePots { run, pots: before });
                let about = ToastAbout::Said(said.to_owned());
                shell.toasts.show(about, Some(undo));
            }
            Err(refused) => {
                scene.wrong.set(Some(Mistake::from(refused)));
                focus_error();
            }
        }
    };
    let pots = move || {
        scene
            .run
            .get_untracked()
            .map(|run| run.pots)
            .unwrap_or_default()
    };
    let keep = move |()| {
        let now = shell.clock.now_untracked();
        let formats = words.formats().get_untracked();
        let read = scene.run.with_untracked(|run| {
            let run = run.as_ref()?;
            Some(draft.with_untracked(|draft| draft.read(&formats, (&former, run), now)))
        });
        match read {
            Some(Ok(pot)) => {
                let mut pots = pots();
                if let Some(place) = pots.get_mut(place) {
                    *place = pot;
                }
                settle(pots, untrack(|| words.strings()).runs.live.pot_changed);
            }
            Some(Err(mistake)) => {
                scene.wrong.set(Some(mistake));
                focus_error();
            }
            None => {}
        }
    };
    let erase = move |()| {
        let mut pots = pots();
        if place < pots.len() {
            pots.remove(place);
        }
        settle(pots, untrack(|| words.strings()).runs.live.pot_erased);
    };
    let (least_c, most_c) = limits::START_C;
    let degrees = formats.degrees;
    let warmth = Steps {
        by: 1.0,
        range: (degrees.from_c(least_c), degrees.from_c(most_c)),
        start: degrees.from_c(20.0),
    };
    let litres = |least_kg: f64| Steps {
        by: STEP_KG,
        range: (least_kg, limits::WATER_KG.1),
        start: former.water_kg,
    };
    let amount = |label: &str, hint: &str, text: Text, steps: Steps, field, test| {
        let unit = if field == Field::StartC {
            (units.degrees)("", degrees)
        } else {
            (units.litres)("")
        };
        number(
            scene,
            (label, unit),
            hint,
            (value(text), edit(text)),
            steps,
            field,
            test,
        )
    };
    let time = |label: fn(&Strings) -> &'static str, hint: &str, text: Text, field, test| {
        view! {
            <TimeField
                label=words.text(label)
                value=value(text)
                on_input=edit(text)
                hint=Signal::from(hint.to_owned())
                error=wrong_with(shell, scene.wrong, field)
                test
            />
        }
    };
    // The last one alone may still be in.
    let is_last = place + 1 == run.pots.len();
    let out_hint = if is_last { live.out_hint } else { "" };
    Some(view! {
        <div class="stack">
            {time(|strings| strings.runs.live.went_in, "", |draft| &mut draft.at, Field::PutIn, "change-pot-in")}
            {amount(live.water, "", |draft| &mut draft.water, litres(limits::LEAST_WET_KG), Field::WaterKg, "change-pot-water")}
            {amount(live.start, "", |draft| &mut draft.start, warmth, Field::StartC, "change-pot-start")}
            <Select
                label=words.text(|strings| strings.tonight.plan.pot)
                options=Memo::new(move |_| say(shell, |voice| pot_sizes(voice, former.pot)))
                picked=Signal::derive(move || draft.with(|draft| key_of(&PotSize::ALL, &draft.pot.size)))
                on_pick=Callback::new(move |key: String| {
                    if let Some(size) = row_of(&PotSize::ALL, &key) {
                        draft.update(|draft| draft.pot.size = size);
                    }
                })
                test="change-pot-size"
            />
            <Select
                label=words.text(|strings| strings.tonight.plan.lid)
                options=Memo::new(move |_| say(shell, lids))
                picked=Signal::derive(move || draft.with(|draft| key_of(&Lid::ALL, &draft.lid)))
                on_pick=Callback::new(move |key: String| {
                    if let Some(lid) = row_of(&Lid::ALL, &key) {
                        draft.update(|draft| draft.lid = lid);
                    }
                })
                test="change-pot-lid"
            />
            {time(|strings| strings.runs.live.came_out, out_hint, |draft| &mut draft.out, Field::OutAt, "change-pot-out")}
            {amount(live.left_label, live.left_hint, |draft| &mut draft.left, litres(0.0), Field::LeftKg, "change-pot-left")}
            <div class="row">
                <Button
                    label=words.text(|strings| strings.common.buttons.save)
                    on_press=Callback::new(keep)
                    tone=Tone::Primary
                    icon=Icon::Tick
                    test="change-pot-save"
                />
                <Button
                    label=words.text(|strings| strings.common.buttons.erase)
                    on_press=Callback::new(erase)
                    tone=Tone::Danger
                    icon=Icon::Bin
                    test="change-pot-erase"
                />
            </div>
        </div>
    })
}
