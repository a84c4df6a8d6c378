//! The figures of runs beside each other, and beside what their cookers' descriptions foresee.

use std::collections::HashSet;

use super::{Chosen, NOTHING};
use crate::components::TableView;
use crate::i18n::format::Sure;
use crate::present::bench::figure::{Figure, Value, unit_of};
use crate::present::bench::results::Row;
use crate::present::cooker::facts::two_digits;
use crate::present::tonight::Voice;
use crate::state::bench::KeptFit;

/// A column: what was measured in a run, or what the description foresaw of it.
#[derive(Clone, Copy)]
struct Column<'a> {
    of: &'a Chosen,
    is_described: bool,
}

impl Column<'_> {
    fn name(&self, voice: &Voice<'_>) -> String {
        if self.is_described {
            let letter = self.of.style.letter().unwrap_or_default().to_string();
            (voice.strings.runs.report.as_described)(&letter)
        } else {
            self.of.name(voice)
        }
    }

    /// What it has of a figure; of those of a pot, nothing where none boiled.
    fn value(&self, figure: Figure) -> Option<Value> {
        let fit = self.of.run.fit.as_ref()?;
        if self.is_described {
            return figure.of_description(fit);
        }
        if figure.is_of_pot() {
            let has_boiled = fit.boiling.is_some_and(|boiling| boiling.boil_s.is_some());
            if self.of.run.pots.is_empty() || !has_boiled {
                return None;
            }
        }
        figure.of(fit)
    }

    /// What stands where it has nothing.
    fn without(&self, voice: &Voice<'_>, figure: Figure) -> String {
        let is_fitted = self.of.run.fit.is_some();
        if self.is_described || figure.is_of_pot() && is_fitted {
            NOTHING.to_owned()
        } else {
            voice.strings.runs.report.not_fitted.to_owned()
        }
    }
}

/// A column a run; the descriptions, where they are wanted, each before the first of its runs.
fn columns(runs: &[Chosen], with_description: bool) -> Vec<Column<'_>> {
    let told = |run: &Chosen| {
        let fit = run.run.fit.as_ref()?;
        let described = fit.described.clone()?;
        Some((run.cooker.id, described, fit.described_boil_s))
    };
    let mut columns = Vec::new();
    let mut before = Vec::new();
    for of in runs {
        let described = told(of).filter(|_| with_description);
        if let Some(described) = described
            && !before.contains(&described)
        {
            before.push(described);
            columns.push(Column {
                of,
                is_described: true,
            });
        }
        columns.push(Column {
            of,
            is_described: false,
        });
    }
    columns
}

/// Whether any of these runs was worked out together with what its description foresees.
pub fn has_description(runs: &[Chosen]) -> bool {
    columns(runs, true).iter().any(|column| column.is_described)
}

/// One table of figures, a column a run: rows that no run has are left out. With `with_description`
/// what the description foresees stands beside each.
pub fn figures(
    voice: &Voice<'_>,
    (runs, with_description): (&[Chosen], bool),
    of: &[Figure],
    caption: &str,
) -> TableView {
    let columns = columns(runs, with_description);
    let row = |figure: &Figure| {
        let values: Vec<_> = columns.iter().map(|column| column.value(*figure)).collect();
        let measured = columns.iter().zip(&values);
        let is_measured = measured
            .filter(|(column, _)| !column.is_described)
            .any(|(_, value)| value.is_some());
        is_measured.then(|| {
            let cell = |(column, value): (&Column<'_>, &Option<_>)| match value {
                Some(value) => figure.said(voice.strings, voice.formats, value),
                None => column.without(voice, *figure),
            };
            std::iter::once(figure.name(voice.strings).to_owned())
                .chain(columns.iter().zip(&values).map(cell))
                .collect::<Vec<String>>()
        })
    };
    let heads = columns.iter().map(|column| column.name(voice));
    TableView {
        caption: caption.to_owned(),
        heads: std::iter::once(voice.strings.runs.report.figure.to_owned())
            .chain(heads)
            .collect(),
        rows: of.iter().filter_map(row).collect(),
    }
}

/// What was measured of each build, with what the fit is worth.
pub fn measured(voice: &Voice<'_>, runs: &[Chosen], with_description: bool) -> TableView {
    let words = &voice.strings.runs.report;
    let runs = (runs, with_description);
    let mut table = figures(voice, runs, &Figure::MEASURED, words.measured);
    if table.rows.is_empty() {
        return table;
    }
    let of_fit = |name: &str, say: &dyn Fn(&KeptFit) -> String| {
        let columns = columns(runs.0, runs.1).into_iter();
        let cells = columns.map(|column| match &column.of.run.fit {
            Some(_) if column.is_described => NOTHING.to_owned(),
            Some(fit) => say(fit),
            None => words.not_fitted.to_owned(),
        });
        std::iter::once(name.to_owned())
            .chain(cells)
            .collect::<Vec<String>>()
    };
    let told_at = columns(runs.0, runs.1).into_iter().map(|column| {
        let fit = column.of.run.fit.as_ref();
        let described = fit.and_then(|fit| fit.described.as_ref());
        described.map_or_else(
            || NOTHING.to_owned(),
            |described| voice.formats.temperature(described.working_c, Sure::Known),
        )
    });
    let told_at: Vec<String> = std::iter::once(words.told_at.to_owned())
        .chain(told_at)
        .collect();
    if told_at.iter().skip(1).any(|cell| cell != NOTHING) {
        table.rows.push(told_at);
    }
    let worth = of_fit(words.worth, &|fit| (words.worth_of)(fit.worth).to_owned());
    let scatter = of_fit(words.scatter, &|fit| {
        let degrees = voice.formats.degrees;
        let off = degrees.from_c(fit.scatter_k) - degrees.from_c(0.0);
        (words.plain)(&two_digits(voice.formats, off), unit_of(degrees))
    });
    table.rows.extend([worth, scatter]);
    table
}

/// The figures of these runs as rows, those of a fit of several together once, each with what the
/// description foresees of it.
pub fn results(runs: &[Chosen]) -> Vec<Row> {
    let mut told = HashSet::new();
    let mut rows = Vec::new();
    for column in columns(runs, true) {
        let chosen = column.of;
        let Some(fit) = &chosen.run.fit else { continue };
        let is_shared = column.is_described || 1 < fit.runs.len();
        for figure in Figure::MEASURED.into_iter().chain(Figure::STANDARD) {
            let run = if is_shared && !figure.is_of_pot() {
                String::new()
            } else {
                chosen.run.about.name.clone()
            };
            let key = (chosen.cooker.id, figure.key(), fit.at, column.is_described);
            if run.is_empty() && !told.insert(key) {
                continue;
            }
            let value = column.value(figure).filter(|value| value.told);
            let Some((middle, value)) = value.and_then(|value| Some((value.value?, value))) else {
                continue;
            };
            let method = if column.is_described {
                figure.foreseen_by()
            } else {
                figure.method()
            };
            rows.push(Row {
                build: chosen.cooker.name.clone(),
                run,
                figure,
                value: middle,
                sd: value.sd.filter(|sd| *sd > 0.0),
                method,
            });
        }
    }
    rows
}
