//! What is found from a run, alone or together with others of the same cooker.

use crate::reactive::*;
use leptos::task::spawn_local;
use model::cooker::Cooker;

use super::frame::{Frame, say};
use super::prices::Prices;
use super::sheet::Sheet as FoundSheet;
use crate::bench::answer::{Answer, Fitted};
use crate::bench::ask::{FitAsk, What};
use crate::components::{
    ActionDock, Button, EmptyNote, FactList, Icon, LinkButton, Panel, Sheet, StatusLine,
    StatusTone, Toggle, Tone,
};
use crate::i18n::refusal::refusal;
use crate::platform::bench::Luggage;
use crate::present::bench::differ::{Difference, differences};
use crate::present::bench::taking;
use crate::screens::later::bit_by_bit;
use crate::shell::bench::{ask, sweep};
use crate::shell::reminder::site;
use crate::shell::toasts::ToastAbout;
use crate::shell::{Shell, use_shell};
use crate::state::action::{Action, BenchAction};
use crate::state::bench::{RunReadings, TestRun};
use crate::state::document::Document;
use crate::state::ids::{CookerId, RunId};
use crate::state::refused::Refused;
use crate::state::route::{BenchPage, Route};

/// The page.
#[component]
pub(super) fn FitPage(id: RunId) -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let name = shell
        .store
        .read(move |document| document.bench.run(id).map(|run| run.about.name.clone()));
    let line = Signal::derive(move || name.get().unwrap_or_default());
    let is_there = Memo::new(move |_| name.with(Option::is_some));
    view! {
        <Frame title=words.text(|strings| strings.bench.fit.title) line>
            <Show
                when=move || is_there.get()
                fallback=move || {
                    view! {
                        <EmptyNote
                            icon=Icon::Bench
                            text=words.text(|strings| strings.bench.list.gone)
                        >
                            <LinkButton
                                href=Route::Bench(BenchPage::List).hash()
                                label=words.text(|strings| strings.bench.list.all)
                                icon=Icon::Back
                            />
                        </EmptyNote>
                    }
                }
            >
                <Found id />
            </Show>
        </Frame>
    }
}

/// The runs of one cooker that can be fitted together, each with whether it is.
type Chosen = Vec<(RunId, String, bool)>;

#[component]
fn Found(id: RunId) -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let chosen = RwSignal::new(shell.store.now_is(|document| begin(document, id)));
    let fitted = RwSignal::new(None::<Fitted>);
    let refused = RwSignal::new(None::<String>);
    let is_working = RwSignal::new(false);
    // As it is described when the page opens: figures that are taken over from here ask nothing anew.
    let cooker = shell.store.now_is(|document| described(document, id));
    let described = StoredValue::new(cooker.clone());
    // Worked out again when another run is taken in, a reading changes, or a price.
    let question = shell.store.read(move |document| {
        let ids = chosen.with(|chosen| {
            let taken = chosen.iter().filter(|(_, _, is_taken)| *is_taken);
            taken.map(|(id, _, _)| *id).collect::<Vec<_>>()
        });
        question(document, cooker.as_ref()?, (id, &ids))
    });
    let latest = StoredValue::new(0_u32);
    let work_out = move || {
        let Some(question) = question.get_untracked() else {
            return;
        };
        let number = latest.get_value().wrapping_add(1);
        latest.set_value(number);
        is_working.set(true);
        refused.set(None);
        spawn_local(async move {
            let answer = ask(shell, What::Fit(Box::new(question)), Luggage::None).await;
            // Another question may have been asked meanwhile, or the page left.
            if latest.try_get_value() != Some(number) {
                return;
            }
            is_working.try_set(false);
            match answer {
                Ok(Answer::Fitted(found)) => {
                    let keep = BenchAction::KeepFit {
                        of: id,
                        fit: Box::new(found.fit.clone()),
                    };
                    fitted.try_set(Some(*found));
                    // A run that was erased meanwhile keeps nothing.
                    let _ = shell.dispatch.run(Action::Bench(keep));
                    sweep(shell).await;
                }
                Ok(_) => {}
                Err(why) => {
                    fitted.try_set(None);
                    refused.try_set(Some(why));
                }
            }
        });
    };
    bit_by_bit(
        move || question.get().is_some(),
        move |_| {
            work_out();
            false
        },
    );
    let has_pot = shell.store.read(move |document| {
        let run = document.bench.run(id);
        run.is_some_and(|run| !run.pots.is_empty())
    });
    let trouble = move || {
        let text = Signal::from(refused.get()?);
        Some(view! {
            <StatusLine tone=StatusTone::Trouble text test="fit-trouble" />
            <More id />
        })
    };
    view! {
        <Together chosen />
        <p class="aside" role="status" data-test="fit-working">
            {move || is_working.get().then(|| words.strings().bench.fit.working)}
        </p>
        {trouble}
        <Differs id chosen />
        {move || fitted.get().map(|found| view! { <FoundSheet blocks=found.sheet /> })}
        <Show when=move || has_pot.get()>
            <Prices />
        </Show>
        {move || {
            let cooker = fitted.get()?.cooker?;
            Some(view! { <Use id cooker=StoredValue::new(cooker) described /> })
        }}
    }
}

/// Back to the run that nothing could be found from, and into it where its readings are typed.
#[component]
fn More(id: RunId) -> impl IntoView {
    let shell = use_shell();
    let is_typed = shell.store.now_is(|document| {
        let run = document.bench.run(id);
        run.is_some_and(|run| matches!(run.readings, RunReadings::Typed(_)))
    });
    if !is_typed {
        return View::nothing();
    }
    let on_press = move |()| {
        let go_on = Action::Bench(BenchAction::GoOn(id));
        if shell.dispatch.run(go_on).is_ok() {
            shell.router.go(Route::Bench(BenchPage::Run(id)));
        }
    };
    view! {
        <Button
            label=shell.words.text(|strings| strings.runs.live.more_readings)
            on_press=Callback::new(on_press)
            icon=Icon::Pencil
            tone=Tone::Primary
            test="fit-more-readings"
        />
    }
}

/// Which runs of the cooker are fitted together; nothing where there is one alone.
#[component]
fn Together(chosen: RwSignal<Chosen>) -> impl IntoView {
    let Shell { words, .. } = use_shell();
    let rows = chosen.get_untracked();
    if rows.len() < 2 {
        return View::nothing();
    }
    let toggle = |(id, name, _): (RunId, String, bool)| {
        let is_on =
            move || chosen.with(|chosen| chosen.iter().any(|(of, _, is_on)| *of == id && *is_on));
        let on_change = move |is_on: bool| {
            chosen.update(|chosen| {
                // One run at least.
                let n_others = chosen
                    .iter()
                    .filter(|(of, _, is_on)| *of != id && *is_on)
                    .count();
                for row in chosen.iter_mut().filter(|(of, _, _)| *of == id) {
                    row.2 = is_on || n_others == 0;
                }
            });
        };
        view! {
            <Toggle
                label=Signal::from(name)
                on=Signal::derive(is_on)
                on_change=Callback::new(on_change)
                test="fit-run"
            />
        }
    };
    view! {
        <Panel heading=words.text(|strings| strings.bench.fit.together) test="fit-together">
            {rows.into_iter().map(toggle).collect_view()}
        </Panel>
    }
}

/// What another run of the cooker tells otherwise, with the way to fit both together.
#[component]
fn Differs(id: RunId, chosen: RwSignal<Chosen>) -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let all = shell.store.read(move |document| {
        let (strings, formats) = (words.strings(), words.formats());
        formats.with(|formats| differences(strings, formats, &document.bench, id))
    });
    let line = move |one: Difference| {
        let fit_both = move |()| {
            chosen.update(|chosen| {
                for row in chosen.iter_mut().filter(|row| row.0 == one.other) {
                    row.2 = true;
                }
            });
        };
        view! {
            <StatusLine
                tone=StatusTone::Notice
                text=Signal::from(one.text)
                action=words.text(|strings| strings.bench.fit.differ.fit_both)
                on_action=Callback::new(fit_both)
                test="fit-differs"
            />
        }
    };
    move || all.get().into_iter().map(line).collect_view()
}

/// Takes what was measured over into the cooker.
#[component]
fn Use(
    id: RunId,
    cooker: StoredValue<Box<Cooker>>,
    /// What it was found from.
    described: StoredValue<Option<Cooker>>,
) -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let of = shell
        .store
        .now_is(|document| document.bench.run(id).map(|run| run.cooker));
    let Some(of) = of else {
        return View::nothing();
    };
    let is_used = shell.store.read(move |document| {
        let owned = document.cooker(of);
        owned.is_some_and(|owned| cooker.with_value(|cooker| owned.cooker == **cooker))
    });
    let label = Signal::derive(move || {
        let fit = &words.strings().bench.fit;
        if is_used.get() { fit.used } else { fit.use_it }.to_owned()
    });
    let refused = RwSignal::new(None::<Refused>);
    let asked = RwSignal::new(false);
    let on_use = move |()| {
        asked.set(false);
        refused.set(use_it(shell, id, cooker.get_value(), described.get_value()).err());
    };
    let formats = words.formats();
    let trouble = move || {
        let refused = refused.get()?;
        let today = shell.clock.now().get().day();
        let text = refusal(words.strings(), &formats.get(), refused, today);
        Some(view! { <p class="field__error" role="alert">{text}</p> })
    };
    view! {
        {trouble}
        <ActionDock>
            <Button
                label
                on_press=Callback::new(move |()| asked.set(true))
                icon=Icon::Tick
                tone=Tone::Primary
                disabled=is_used
                test="fit-use"
            />
        </ActionDock>
        <Before run=id of cooker asked on_use=Callback::new(on_use) />
    }
}

/// What changes, before it does.
#[component]
fn Before(
    run: RunId,
    of: CookerId,
    cooker: StoredValue<Box<Cooker>>,
    asked: RwSignal<bool>,
    on_use: Callback<()>,
) -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let name = shell.store.read(move |document| {
        let owned = document.cooker(of);
        owned.map(|owned| owned.name.clone()).unwrap_or_default()
    });
    let title = Signal::derive(move || (words.strings().bench.fit.taking.title)(&name.get()));
    let changes = move || {
        shell.store.now_is(|document| {
            let now = &document.cooker(of)?.cooker;
            let site = site(document)?;
            cooker.with_value(|then| say(shell, |voice| taking::changes(voice, &site, now, then)))
        })
    };
    let stays = move || {
        shell.store.now_is(|document| {
            let fit = document.bench.run(run)?.fit.as_ref()?;
            let now = &document.cooker(of)?.cooker;
            Some(say(shell, |voice| taking::stays(voice, fit, now)))
        })
    };
    view! {
        <Sheet
            title
            close=words.text(|strings| strings.common.buttons.close)
            open=asked
            on_close=Callback::new(move |()| asked.set(false))
            test="fit-changes"
        >
            {move || {
                asked.get().then(|| {
                    let facts = changes().unwrap_or_default();
                    let taking = &words.strings().bench.fit.taking;
                    let lead = if facts.is_empty() { taking.none } else { taking.lead };
                    let has_store = facts.iter().any(|fact| fact.label == taking.store);
                    let stays = stays().unwrap_or_default().into_iter();
                    let stays = stays
                        .map(|text| view! { <p data-test="fit-stays">{text}</p> })
                        .collect_view();
                    let weighed = has_store.then(|| {
                        let text = words.strings().bench.fit.weighed;
                        view! { <p class="field__hint">{text}</p> }
                    });
                    view! {
                        <div class="stack">
                            <p>{lead}</p>
                            <FactList facts=Signal::from(facts) />
                            {stays}
                            <p class="field__hint">{taking.rest}</p>
                            {weighed}
                            <Button
                                label=words.text(|strings| strings.bench.fit.taking.do_it)
                                on_press=on_use
                                icon=Icon::Tick
                                tone=Tone::Primary
                                test="fit-use-now"
                            />
                        </div>
                    }
                })
            }}
        </Sheet>
    }
}

fn use_it(
    shell: Shell,
    run: RunId,
    cooker: Box<Cooker>,
    described: Option<Cooker>,
) -> Result<(), Refused> {
    let before = shell.store.now_is(|document| {
        let of = document.bench.run(run)?;
        let owned = document.cooker(of.cooker)?;
        let used = of.used.as_ref();
        let used = used.filter(|used| used.measured == owned.cooker);
        let used = used.map(|used| Box::new(used.described.clone()));
        Some((owned.name.clone(), owned.cooker.clone(), used))
    });
    shell.dispatch.run(Action::Bench(BenchAction::UseFit {
        run,
        cooker,
        described: described.map(Box::new),
    }))?;
    if let Some((name, cooker, described)) = before {
        let undo = Action::Bench(BenchAction::UseFit {
            run,
            cooker: Box::new(cooker),
            described,
        });
        let about = ToastAbout::FitUsed { cooker: name };
        shell.toasts.show(about, Some(undo));
    }
    Ok(())
}

/// What the cooker of a run is described as, apart from what was measured by that run itself.
fn described(document: &Document, id: RunId) -> Option<Cooker> {
    let run = document.bench.run(id)?;
    let cooker = &document.cooker(run.cooker)?.cooker;
    Some(document.bench.described(run, cooker).clone())
}

/// The runs of the same cooker, the one of the page first; those fitted with it the last time are
/// taken in again.
fn begin(document: &Document, id: RunId) -> Chosen {
    let Some(main) = document.bench.run(id) else {
        return Vec::new();
    };
    let fitted = main
        .fit
        .as_ref()
        .map(|fit| fit.runs.as_slice())
        .unwrap_or_default();
    let others = document.bench.runs.iter();
    let others = others.filter(|run| run.cooker == main.cooker && run.id != id && 0 < run.n_rows());
    let row = |run: &TestRun| {
        let is_taken = run.id == id || fitted.contains(&run.id);
        (run.id, run.about.name.clone(), is_taken)
    };
    std::iter::once(row(main)).chain(others.map(row)).collect()
}

fn question(document: &Document, cooker: &Cooker, (of, ids): (RunId, &[RunId])) -> Option<FitAsk> {
    let runs = ids.iter().filter_map(|id| document.bench.run(*id));
    // What was found before is no part of the question, so that keeping it asks nothing anew.
    let without = |run: &TestRun| TestRun {
        fit: None,
        used: None,
        ..run.clone()
    };
    Some(FitAsk {
        household: document.household.clone()?,
        cooker: cooker.clone(),
        runs: runs.map(without).collect(),
        of,
        prices: document.bench.prices,
    })
}
