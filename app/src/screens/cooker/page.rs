//! The page of one cooker.

use crate::reactive::*;
use model::tonight::{Figures, TonightError};

use super::facts::Follows;
use super::form::site;
use super::later::Subject;
use super::learned::Learned;
use super::limits::{Limiting, Taking};
use super::manage::{Manage, UseThis};
use super::parts::Parts;
use super::plots::Plots;
use super::rebuilt::Rebuilt;
use crate::components::{ActionDock, Caution, CautionLevel, Fold, Panel};
use crate::present::cooker::cautions::{CautionView, cautions};
use crate::present::cooker::facts::{heater_in_short, in_short};
use crate::present::cooker::fault::build_of;
use crate::present::wear;
use crate::screens::later::{painted, settled};
use crate::shell::{Shell, use_shell};
use crate::state::ids::CookerId;

/// What follows from a cooker as far as it is worked out at once; none where it is gone.
pub(super) type Outcome = Option<Result<Figures, TonightError>>;

/// The page: what follows, what limits, what to mind, the parts; in sight, the whole in one line.
#[component]
pub(super) fn CookerPage(
    id: CookerId,
    /// What stands under it.
    #[prop(optional)]
    children: Option<View>,
) -> impl IntoView {
    let Shell { store, clock, .. } = use_shell();
    let site = site(store);
    let cooker = store.read(move |document| document.cooker(id).map(|owned| owned.cooker.clone()));
    let now = clock.now();
    let today = Memo::new(move |_| now.get().day());
    let subject = Memo::new(move |_| {
        Some(Subject {
            site: site.get()?,
            cooker: cooker.get()?,
            day: today.get(),
        })
    });
    let outcome: Memo<Outcome> = Memo::new(move |_| {
        let (site, cooker) = (site.get()?, cooker.get()?);
        Some(Figures::new(&site, &cooker))
    });
    let (drawn, minded) = (painted(outcome), painted(subject));
    let has_panels = Memo::new(move |_| {
        cooker.with(|cooker| {
            let cooker = cooker.as_ref();
            cooker.is_some_and(|cooker| cooker.charging.concentrator.is_none())
        })
    });
    view! {
        <Follows outcome>
            <Limiting subject />
            <Show when=move || has_panels.get()>
                <Taking subject />
            </Show>
        </Follows>
        <Learned id />
        <Plots outcome=drawn has_panels />
        <Minded subject=minded />
        <Worn id />
        <Parts id cooker />
        <Manage id />
        {children}
        <ActionDock>
            <Rebuilt id />
            <InShort id outcome has_panels />
            <UseThis id />
        </ActionDock>
    }
}

/// What follows in one line, in sight while the parts are changed.
#[component]
fn InShort(id: CookerId, outcome: Memo<Outcome>, has_panels: Memo<bool>) -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    // Beside the button to use it there is room for the first alone.
    let is_used = store.read(move |document| document.in_use == Some(id));
    let line = Memo::new(move |_| {
        let (strings, formats) = (words.strings(), words.formats().get());
        outcome.with(|outcome| match outcome {
            Some(Ok(figures)) => Some(in_short(strings, &formats, figures)),
            _ => None,
        })
    });
    let heater = Memo::new(move |_| {
        let (strings, formats) = (words.strings(), words.formats().get());
        outcome.with(|outcome| {
            let Some(Ok(Figures { light, .. })) = outcome else {
                return None;
            };
            let [full_sun, _] = light;
            let said = heater_in_short(strings, &formats, full_sun);
            Some(format!(" · {said}"))
        })
    });
    let is_there = Memo::new(move |_| line.with(Option::is_some));
    view! {
        <Show when=move || is_there.get()>
            <div class="in-short">
                <p class="in-short__line" aria-live="polite" data-test="cooker-in-short">
                    {line}
                    {move || heater.get().filter(|_| has_panels.get() && is_used.get())}
                </p>
            </div>
        </Show>
    }
}

/// The wear of the store of the cooker in use, and until when the pot used most boils on it.
#[component]
fn Worn(id: CookerId) -> impl IntoView {
    let Shell {
        words,
        store,
        clock,
        estimates,
        ..
    } = use_shell();
    let pot = store.read(move |document| {
        let in_use = document.in_use == Some(id);
        let owned = document.cooker_in_use().filter(|_| in_use)?;
        Some(owned.cooker.pot)
    });
    let evening = settled(
        move || estimates.beliefs().follow_diary(),
        estimates.evening(),
    );
    let lines = Memo::new(move |_| {
        let pot = pot.get()?;
        let evening = evening.get()?.ok()?;
        let worn = evening.wear()?;
        let (strings, formats, now) = (words.strings(), words.formats().get(), clock.now().get());
        let last = evening.last_boil(&wear::usual_pot(pot, now), now).ok()?;
        Some([
            wear::worn(strings, &formats, worn),
            wear::last_boil(strings, &formats, last, now.day()),
        ])
    });
    move || {
        lines.get().map(|lines| {
            view! {
                <Panel
                    heading=words.text(|strings| strings.cooker.ways.wear_heading)
                    test="cooker-wear"
                >
                    {lines.map(|line| view! { <p>{line}</p> }).into_iter().collect_view()}
                </Panel>
            }
        })
    }
}

/// What to mind with this build.
#[component]
fn Minded(subject: Signal<Option<Subject>>) -> impl IntoView {
    let words = use_shell().words;
    let views = Memo::new(move |_| {
        let (strings, formats) = (words.strings(), words.formats().get());
        subject.with(|subject| {
            let Subject { site, cooker, .. } = subject.as_ref()?;
            let build = build_of(site, cooker).ok()?;
            Some(cautions(strings, &formats, &build))
        })
    });
    let count = move |is_worst: bool| {
        Memo::new(move |_| {
            views.with(|views| {
                let views = views.iter().flatten();
                views.filter(|view| is_danger(view) == is_worst).count()
            })
        })
    };
    let (n_worst, n_more) = (count(true), count(false));
    let heading = Signal::derive(move || {
        let words = &words.strings().cooker.parts;
        let say = if 0 < n_worst.get() {
            words.more_cautions
        } else {
            words.cautions
        };
        say(n_more.get())
    });
    let line = |view: CautionView| {
        view! { <Caution level=view.level icon=view.icon word=view.word text=view.text /> }
    };
    let list = move |is_worst: bool| {
        let views = views.get().unwrap_or_default();
        views
            .into_iter()
            .filter(|view| is_danger(view) == is_worst)
            .map(line)
            .collect_view()
    };
    view! {
        <Show when=move || 0 < n_worst.get() + n_more.get()>
            <Panel heading=words.text(|strings| strings.safety.title) test="cooker-cautions">
                <div class="stack">{move || list(true)}</div>
                <Show when=move || 0 < n_more.get()>
                    <Fold summary=heading test="cooker-cautions-more">
                        {move || list(false)}
                    </Fold>
                </Show>
            </Panel>
        </Show>
    }
}

/// What is told without opening anything.
fn is_danger(view: &CautionView) -> bool {
    view.level == CautionLevel::Danger
}
