//! Draws a sheet of the worker.

use crate::reactive::*;

use crate::bench::sheet::Block;
use crate::chart::{HeatBar, LineChart};
use crate::components::{DataTable, FactList, Fold};
use crate::shell::{Shell, use_shell};

/// A sheet: what stands before its first heading, then a slab for each heading.
#[component]
pub(super) fn Sheet(
    /// What it says.
    blocks: Vec<Block>,
) -> impl IntoView {
    let Shell { words, .. } = use_shell();
    let formats = words.formats();
    // A tick of an axis has a tenth only where it needs one.
    let y_text = Callback::new(move |value: f64| {
        // As many as the tick has: 20, 0.5, 0.05.
        let is_off = |times: f64| 0.01 < (times * value - (times * value).round()).abs();
        let decimals = usize::from(is_off(1.0)) + usize::from(is_off(10.0));
        formats.with(|formats| formats.number(value, decimals))
    });
    let mut slabs = Vec::new();
    let mut slab = View::several();
    for (place, block) in blocks.into_iter().enumerate() {
        slab = match block {
            Block::Heading(text) => {
                if 0 < place {
                    slabs.push(slab);
                }
                View::several().child(view! { <h2 class="panel__heading">{text}</h2> })
            }
            Block::Lead(text) => slab.child(view! { <p class="lead">{text}</p> }),
            Block::Text(text) => slab.child(view! { <p>{text}</p> }),
            Block::List(lines) => {
                let line = |line: String| view! { <li>{line}</li> };
                slab.child(view! {
                    <ul class="plain-list">{lines.into_iter().map(line).collect_view()}</ul>
                })
            }
            Block::Facts(facts) => slab.child(view! { <FactList facts=Signal::from(facts) /> }),
            Block::Lines(view) => {
                slab.child(view! { <LineChart view=Signal::from(*view) y_text /> })
            }
            Block::Heat(view) => slab.child(view! { <HeatBar view=Signal::from(view) /> }),
            Block::Table(summary, table) => slab.child(view! {
                <Fold summary=Signal::from(summary)>
                    <DataTable table=Signal::from(table) />
                </Fold>
            }),
        };
    }
    slabs.push(slab);
    let slab = |slab: View| view! { <section class="panel stack">{slab}</section> };
    view! { <div class="stack" data-test="sheet">{slabs.into_iter().map(slab).collect_view()}</div> }
}
