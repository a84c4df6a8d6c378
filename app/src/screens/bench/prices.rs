//! What changes of a build cost, as far as anybody says.

use crate::reactive::*;
use model::bench::Prices as Costs;

use crate::components::{Fold, TextField};
use crate::i18n::refusal::{parse_refusal, refusal};
use crate::shell::use_shell;
use crate::state::action::{Action, BenchAction};
use crate::state::parse;

/// Each price, in the order of its names.
const PRICES: [fn(&mut Costs) -> &mut Option<f64>; 7] = [
    |costs| &mut costs.store_kg,
    |costs| &mut costs.seat,
    |costs| &mut costs.fins,
    |costs| &mut costs.jacket,
    |costs| &mut costs.wrap,
    |costs| &mut costs.heater,
    |costs| &mut costs.panels,
];

/// The fields; an empty one is a price that nobody knows.
#[component]
pub(super) fn Prices() -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let formats = words.formats();
    let mut costs = shell.store.now_is(|document| document.bench.prices);
    let names = untrack(|| words.strings()).bench.fit.prices;
    let field = |(name, price): (&'static str, fn(&mut Costs) -> &mut Option<f64>)| {
        let known = *price(&mut costs);
        let text = RwSignal::new(known.map_or_else(String::new, |known| {
            formats.with_untracked(|formats| formats.field(known, 2))
        }));
        let wrong = RwSignal::new(None::<String>);
        let on_input = move |typed: String| {
            let read = match typed.trim() {
                "" => Ok(None),
                typed => parse::number(typed).map(Some),
            };
            text.set(typed);
            let strings = untrack(|| words.strings());
            wrong.set(match read {
                Err(error) => Some(parse_refusal(strings, error).to_owned()),
                Ok(value) => {
                    let mut costs = shell.store.now_is(|document| document.bench.prices);
                    *price(&mut costs) = value;
                    let action = Action::Bench(BenchAction::SetPrices(costs));
                    let today = shell.clock.now_untracked().day();
                    shell.dispatch.run(action).err().map(|refused| {
                        formats.with_untracked(|formats| refusal(strings, formats, refused, today))
                    })
                }
            });
        };
        view! {
            <TextField
                label=Signal::from(name.to_owned())
                value=text
                on_input=Callback::new(on_input)
                error=wrong
                test="fit-price"
            />
        }
    };
    let fields = names.into_iter().zip(PRICES).map(field).collect_view();
    view! {
        <Fold summary=words.text(|strings| strings.bench.fit.costs) test="fit-prices">
            <p class="aside">{move || words.strings().bench.fit.costs_why}</p>
            {fields}
        </Fold>
    }
}
