//! Runs and builds beside each other: curves over each other, one table, the results as a file.

mod curves;
mod tables;

use std::collections::HashSet;

use model::bench::readings::Column;
use model::cooker::Cooker;
use model::jacket::{Jacket, LayerKind};
use model::local_time::LocalTime;

use crate::bench::answer::Curve;
use crate::chart::LineStyle;
use crate::components::TableView;
use crate::i18n::format::Sure;
use crate::present::cooker::facts::two_digits;
use crate::present::cooker::list::made_of;
use crate::present::diary::day_field;
use crate::present::tonight::Voice;
use crate::state::bench::{KeptText, RunReadings, TestRun};
use crate::state::document::{Document, OwnedCooker};
use crate::state::ids::RunId;

pub use curves::{not_drawn, plot};
pub use tables::{figures, has_description, measured, results};

/// So many lines can be told apart.
pub const MOST: usize = LineStyle::ALIKE.len();

/// Where curves are laid over each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Aligned {
    /// Where each run starts.
    #[default]
    Start,
    /// Where the first pot goes in.
    Pot,
}

/// A run that is compared.
#[derive(Debug, Clone, PartialEq)]
pub struct Chosen {
    /// How its line is drawn, which tells its letter.
    pub style: LineStyle,
    /// The run.
    pub run: TestRun,
    /// What was tested.
    pub cooker: OwnedCooker,
    /// What its file says, once that was looked up.
    pub curve: Option<Curve>,
}

impl Chosen {
    /// Letter and name: `A · Cool-down`.
    pub fn name(&self, voice: &Voice<'_>) -> String {
        let letter = self.style.letter().unwrap_or_default().to_string();
        (voice.strings.runs.report.lettered)(&letter, &self.run.about.name)
    }

    /// Why its file is not drawn: it is being fetched, or can't be had.
    fn not_drawn(&self, voice: &Voice<'_>) -> Option<String> {
        let words = &voice.strings.runs.report;
        let is_file = matches!(self.run.readings, RunReadings::File(_));
        let why = match self.curve.as_ref().map(|curve| &curve.lines) {
            None => Some(words.in_file),
            Some(None) => Some(words.file_gone),
            Some(Some(_)) => None,
        };
        why.filter(|_| is_file).map(|why| why(&self.name(voice)))
    }

    /// Where its curve begins. \[s\]
    fn zero_s(&self, aligned: Aligned) -> Option<f64> {
        match aligned {
            Aligned::Start => Some(0.0),
            Aligned::Pot => self.run.pots.first().map(|pot| pot.in_s),
        }
    }
}

/// The runs with these numbers that are there, as many as can be told apart; `curves` are those of
/// files that were looked up.
pub fn chosen(document: &Document, ids: &[RunId], curves: &[Curve]) -> Vec<Chosen> {
    let of = |run: &TestRun| match &run.readings {
        RunReadings::File(text) => curves.iter().find(|curve| curve.text == *text).cloned(),
        RunReadings::Typed(_) => None,
    };
    ids.iter()
        .filter_map(|id| document.bench.run(*id))
        .filter_map(|run| Some((run, document.cooker(run.cooker)?)))
        .zip(LineStyle::ALIKE)
        .map(|((run, cooker), style)| Chosen {
            style,
            curve: of(run),
            run: run.clone(),
            cooker: cooker.clone(),
        })
        .collect()
}

/// The files among these that have not been looked up.
pub fn not_looked_up(runs: &[Chosen]) -> Vec<KeptText> {
    let missing = runs.iter().filter(|chosen| chosen.curve.is_none());
    missing
        .filter_map(|chosen| match &chosen.run.readings {
            RunReadings::File(text) => Some(text.clone()),
            RunReadings::Typed(_) => None,
        })
        .collect()
}

/// What is compared before anyone has chosen: the latest runs that were worked out, or else the
/// latest.
pub fn usual(document: &Document) -> Vec<RunId> {
    let latest = |wanted: fn(&TestRun) -> bool| -> Vec<RunId> {
        let runs = document.bench.runs.iter().rev();
        runs.filter(|run| wanted(run))
            .map(|run| run.id)
            .take(3)
            .collect()
    };
    let fitted = latest(|run| run.fit.is_some());
    if fitted.is_empty() {
        latest(|_| true)
    } else {
        fitted
    }
}

/// A run in the list to choose from: its name, and its cooker, kind and day.
pub fn line(voice: &Voice<'_>, run: &TestRun, cooker: &str) -> (String, String) {
    let detail = (voice.strings.runs.report.run_line)(
        cooker,
        (voice.strings.bench.kind)(run.about.kind),
        &voice.formats.near_day(run.started.day(), voice.now.day()),
    );
    (run.about.name.clone(), detail)
}

/// Says which runs have the same figures, because they were fitted together.
pub fn together(voice: &Voice<'_>, runs: &[Chosen]) -> Option<String> {
    let names: Vec<String> = runs
        .iter()
        .filter(|one| {
            let others = runs.iter().filter(|other| other.run.id != one.run.id);
            let fit = one.run.fit.as_ref();
            others
                .filter_map(|other| other.run.fit.as_ref().zip(fit))
                .any(|(other, own)| other.runs == own.runs && other.at == own.at)
        })
        .map(|chosen| chosen.name(voice))
        .collect();
    (!names.is_empty()).then(|| (voice.strings.runs.report.together)(&names.join(", ")))
}

/// Whether a column of the file that a run's readings are in tells the air.
fn is_air_in_file(run: &TestRun) -> bool {
    let RunReadings::File(text) = &run.readings else {
        return false;
    };
    let columns = text.hints.columns.as_ref();
    columns.is_some_and(|columns| columns.contains(&Column::Air))
}

/// The conditions of each run.
pub fn conditions(voice: &Voice<'_>, runs: &[Chosen]) -> TableView {
    let words = &voice.strings.runs.report;
    let heads = &words.heads;
    let formats = voice.formats;
    let row = |chosen: &Chosen| {
        let run = &chosen.run;
        let air: Vec<f64> = run.typed().iter().filter_map(|it| it.air_c).collect();
        let air = match (
            air.iter().copied().reduce(f64::min),
            air.iter().copied().reduce(f64::max),
        ) {
            (Some(low), Some(high)) => formats.temperature_band(low, high, Sure::Known),
            _ => run.about.air_c.map_or_else(
                || {
                    if is_air_in_file(run) {
                        words.air_in_file.to_owned()
                    } else {
                        voice.strings.common.not_known.to_owned()
                    }
                },
                |air_c| formats.temperature(air_c, Sure::Known),
            ),
        };
        let power = run.about.heater_w.or_else(|| {
            let read = run.typed().iter().filter_map(|it| it.heater_w);
            read.reduce(f64::max)
        });
        let water: Vec<String> = run
            .pots
            .iter()
            .map(|pot| formats.litres(pot.water_kg))
            .collect();
        let took_s = run
            .ended
            .map_or(run.span_s(), |ended| run.since_start_s(ended));
        vec![
            chosen.name(voice),
            (formats.units.day_time)(
                &day_field(run.started.day()),
                &formats.clock(run.started, Sure::Known),
            ),
            formats.duration(took_s, Sure::Known),
            air,
            power.map_or_else(|| NOTHING.to_owned(), |watts| formats.watts(watts)),
            if water.is_empty() {
                NOTHING.to_owned()
            } else {
                water.join(", ")
            },
            run.n_rows().to_string(),
        ]
    };
    TableView {
        caption: words.conditions.to_owned(),
        heads: [
            heads.run,
            heads.began,
            heads.took,
            heads.air,
            heads.heater,
            heads.water,
            heads.readings,
        ]
        .map(str::to_owned)
        .to_vec(),
        rows: runs.iter().map(row).collect(),
    }
}

/// Each build once: its name and what it is made of.
pub fn builds(voice: &Voice<'_>, runs: &[Chosen]) -> Vec<String> {
    let mut told = HashSet::new();
    runs.iter()
        .filter(|chosen| told.insert(chosen.cooker.id))
        .map(|chosen| {
            let made_of = made_of(voice.strings, voice.formats, &chosen.cooker.cooker);
            let build = (voice.strings.runs.report.build)(&chosen.cooker.name, &made_of);
            format!("{build} {}", parts(voice, &chosen.cooker.cooker))
        })
        .collect()
}

/// Jacket, seat, pot and cut-out of a build.
fn parts(voice: &Voice<'_>, cooker: &Cooker) -> String {
    let (formats, tables) = (voice.formats, &voice.strings.tables);
    let jacket = match &cooker.jacket {
        Jacket::Layers(jacket) => {
            let layers = jacket.layers.iter().filter_map(|layer| match layer.kind {
                LayerKind::Insulation { material } => {
                    let thick = formats.centimetres(layer.thickness_m);
                    Some(format!("{thick} {}", (tables.insulation)(material)))
                }
                _ => None,
            });
            layers.collect::<Vec<_>>().join(", ")
        }
        Jacket::Measured { loss_w_k, .. } => {
            let words = &voice.strings.runs.report;
            (words.told_halfway)(&(words.plain)(&two_digits(formats, *loss_w_k), "W/K"))
        }
        Jacket::Flask { .. } => voice.strings.cooker.ways.flask.to_owned(),
    };
    let pot = format!(
        "{}, {}",
        formats.litres(cooker.pot.size.props().volume_l),
        (tables.pot_kind)(cooker.pot.kind)
    );
    (voice.strings.runs.report.parts)(
        if jacket.is_empty() { NOTHING } else { &jacket },
        (tables.seat)(cooker.contact.seat),
        &pot,
        &formats.temperature(cooker.store.cutout_c, Sure::Known),
    )
}

/// Stands where there is nothing to tell.
const NOTHING: &str = "–";

/// Name of the file of results.
pub fn file_name(now: LocalTime) -> String {
    let (year, month, day) = now.day().ymd();
    format!("duskpot-results-{year:04}-{month:02}-{day:02}.csv")
}

#[cfg(test)]
mod tests;
