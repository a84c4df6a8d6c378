//! The plots of a cooker.

use crate::reactive::*;
use model::tonight::Figures;

use super::page::Outcome;
use crate::chart::{LineChart, LineChartView};
use crate::components::Panel;
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::cooker::plots::{cool_down, panel};
use crate::shell::use_shell;

/// How a full store cools, and the panels with their load.
#[component]
pub(super) fn Plots(
    outcome: Signal<Outcome>,
    /// Whether panels charge it.
    has_panels: Memo<bool>,
) -> impl IntoView {
    let words = use_shell().words;
    let is_there = Memo::new(move |_| outcome.with(|outcome| matches!(outcome, Some(Ok(_)))));
    view! {
        <Show when=move || is_there.get()>
            <Panel heading=words.text(|strings| strings.cooker.follows.cool.name)>
                <Plot outcome plot=cool_down digits=0 test="cooker-cools" />
            </Panel>
            <Show when=move || has_panels.get()>
                <Panel heading=words.text(|strings| strings.cooker.follows.panel.name)>
                    <Plot outcome plot=panel digits=1 test="cooker-panel" />
                </Panel>
            </Show>
        </Show>
    }
}

#[component]
fn Plot(
    outcome: Signal<Outcome>,
    plot: fn(&Strings, &Formats, &Figures) -> LineChartView,
    /// Most decimals of the y axis.
    digits: usize,
    test: &'static str,
) -> impl IntoView {
    let words = use_shell().words;
    let view = Memo::new(move |former: Option<&Option<LineChartView>>| {
        let (strings, formats) = (words.strings(), words.formats().get());
        outcome.with(|outcome| match outcome {
            Some(Ok(figures)) => Some(plot(strings, &formats, figures)),
            _ => former.cloned().flatten(),
        })
    });
    let y_text = move |at: f64| words.formats().with(|formats| formats.field(at, digits));
    move || {
        view.with(Option::is_some).then(|| {
            let view = Signal::derive(move || view.get().unwrap_or_else(empty));
            view! { <LineChart view y_text=Callback::new(y_text) test /> }
        })
    }
}

fn empty() -> LineChartView {
    LineChartView {
        name: String::new(),
        series: Vec::new(),
        levels: Vec::new(),
        moments: Vec::new(),
        x_ticks: Vec::new(),
        y_unit: String::new(),
        sentence: String::new(),
        table: Default::default(),
    }
}
