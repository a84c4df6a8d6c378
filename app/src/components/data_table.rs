//! Figures in rows, for those who read a table better than a plot.

use crate::reactive::*;

/// A table of finished text.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TableView {
    /// What the table holds.
    pub caption: String,
    /// Head of each column, with its unit.
    pub heads: Vec<String>,
    /// Rows of as many cells as there are heads; the first cell names the row.
    pub rows: Vec<Vec<String>>,
}

/// A table that scrolls sideways within itself where the screen is too narrow.
#[component]
pub fn DataTable(
    /// What it holds.
    #[prop(into)]
    table: Signal<TableView>,
) -> impl IntoView {
    let row = |cells: Vec<String>| {
        let mut cells = cells.into_iter();
        let name = cells.next();
        view! {
            <tr>
                <th scope="row">{name}</th>
                {cells.map(|cell| view! { <td>{cell}</td> }).collect_view()}
            </tr>
        }
    };
    view! {
        <p class="data-table__name" aria-hidden="true">{move || table.get().caption}</p>
        <div class="data-table" tabindex="0" role="group" aria-label=move || table.get().caption>
            <table aria-label=move || table.get().caption>
                <thead>
                    <tr>
                        {move || {
                            table
                                .get()
                                .heads
                                .into_iter()
                                .map(|head| view! { <th scope="col">{head}</th> })
                                .collect_view()
                        }}
                    </tr>
                </thead>
                <tbody>{move || table.get().rows.into_iter().map(row).collect_view()}</tbody>
            </table>
        </div>
    }
}
