//! What was found of a cooker: what it is worth, the figures, and the curve through the readings.

use model::bench::{
    CookingPower, Diagnosis, Doubt, Estimate, Fit, ForCooker, Met, Parameter, Residual, RunFit,
    Worth,
};

use model::local_time::LocalTime;

use super::plot::{Line, Of, plot};
use super::{Speech, pot, standard};
use crate::bench::sheet::Block;
use crate::chart::LineStyle;
use crate::components::{Fact, TableView};
use crate::i18n::format::Sure;
use crate::i18n::strings::report::found::HangTogether;
use crate::state::bench::KeptFit;

/// Standard deviations to the tenth and the ninetieth percentile of a normal distribution.
pub(super) const TENTH_SD: f64 = 1.2816;

/// All that a fit came to.
pub struct Told<'a> {
    /// Names of the runs, in order.
    pub names: &'a [&'a str],
    /// When the first reading of each was taken.
    pub began: &'a [LocalTime],
    /// The fit.
    pub fit: &'a Fit,
    /// What it told.
    pub measured: &'a ForCooker,
    /// What is kept of it.
    pub kept: &'a KeptFit,
    /// Standardised cooking power of the run's pot.
    pub power: Option<&'a CookingPower>,
    /// What limited that pot.
    pub diagnosis: Option<&'a Diagnosis>,
}

/// The sheet.
pub fn sheet(speech: &Speech, told: &Told<'_>) -> Vec<Block> {
    let mut blocks = worth(speech, told);
    // What rests on figures that are worth nothing is not told.
    let diagnosis = told.diagnosis.filter(|_| told.fit.worth != Worth::None);
    if let Some(diagnosis) = diagnosis {
        let is_read = told.kept.boiling.is_some_and(|test| test.boil_s.is_some());
        blocks.extend(pot::limits(speech, diagnosis, is_read));
    }
    blocks.push(Block::Heading(speech.report.found.figures.to_owned()));
    let estimates = told.fit.estimates.iter();
    blocks.push(Block::Facts(
        estimates
            .map(|estimate| figure(speech, told, estimate))
            .collect(),
    ));
    blocks.extend(hang_together(speech, told.fit));
    blocks.extend(curves(speech, told));
    if let Some(diagnosis) = diagnosis {
        blocks.extend(pot::heat(speech, diagnosis));
    }
    blocks.extend(standard::figures(speech, told));
    blocks
}

fn worth(speech: &Speech, told: &Told<'_>) -> Vec<Block> {
    let words = &speech.report.found;
    let scatter = speech.difference(told.fit.scatter_k);
    let doubts = told.fit.doubts.iter().map(|doubt| {
        if let Doubt::FarOff { .. } = doubt {
            return far_off(speech, told, doubt);
        }
        let run = match doubt {
            Doubt::ManyOff { run, .. } => told.names.get(*run).copied(),
            _ => None,
        };
        let number = |value: f64| speech.rough(value);
        (words.doubt)(doubt, run.unwrap_or_default(), &number)
    });
    let doubts: Vec<String> = doubts.collect();
    let mut blocks = vec![
        Block::Lead((words.worth)(told.fit.worth).to_owned()),
        Block::Text((words.rests_on)(told.names.len(), &scatter)),
    ];
    if !doubts.is_empty() {
        blocks.push(Block::List(doubts));
    }
    blocks
}

fn far_off(speech: &Speech, told: &Told<'_>, doubt: &Doubt) -> String {
    let Doubt::FarOff {
        run,
        time_s,
        is_pot,
        read_c,
        off_k,
    } = *doubt
    else {
        return String::new();
    };
    let name = told.names.get(run).copied().unwrap_or_default();
    let when = told.began.get(run).map_or_else(String::new, |began| {
        #[expect(clippy::cast_possible_truncation, reason = "some days at most")]
        let at = began.plus_s(time_s.round() as i64);
        speech.formats.instant(at, speech.now.day())
    });
    let value = speech.formats.temperature(read_c, Sure::Known);
    let off = speech.whole_difference(off_k.abs());
    (speech.report.found.far_off)(is_pot, name, &when, &value, &off)
}

fn figure(speech: &Speech, told: &Told<'_>, estimate: &Estimate) -> Fact {
    let words = &speech.report.found;
    let parameter = estimate.parameter;
    let say = |value: f64| value_of(speech, parameter, value);
    let mut detail = match told.measured.of(parameter) {
        _ if estimate.held => words.held.to_owned(),
        Some(measured) => {
            let (low, high) = bounds(parameter, measured.value, measured.sd);
            (words.told)(&say(low), &say(high), &say(estimate.described.value))
        }
        None => words.not_told.to_owned(),
    };
    if let (Parameter::Loss, Some(described)) = (parameter, &told.kept.described) {
        let at = speech.formats.temperature(described.working_c, Sure::Known);
        detail = (words.told_at)(&detail, &at);
    }
    Fact {
        label: (words.parameter)(parameter).to_owned(),
        // What is not told stands as it is described.
        value: say(match told.measured.of(parameter) {
            Some(measured) => measured.value,
            None => estimate.described.value,
        }),
        detail,
        icon: None,
    }
}

/// Each two figures with their correlation, the strongest first.
fn hang_together(speech: &Speech, fit: &Fit) -> Option<Block> {
    let words = &speech.report.found;
    let free: Vec<Parameter> = fit
        .estimates
        .iter()
        .filter(|estimate| !estimate.held)
        .map(|estimate| estimate.parameter)
        .collect();
    let mut pairs = Vec::new();
    for (idx, (first, row)) in free.iter().zip(&fit.correlations).enumerate() {
        let others = free.iter().zip(row).skip(idx + 1);
        pairs.extend(others.map(|(second, correlation)| (*first, *second, *correlation)));
    }
    pairs.sort_by(|one, other| other.2.abs().total_cmp(&one.2.abs()));
    let HangTogether {
        summary,
        caption,
        heads,
    } = &words.hang_together;
    let table = TableView {
        caption: (*caption).to_owned(),
        heads: heads.map(str::to_owned).to_vec(),
        rows: pairs
            .iter()
            .map(|(first, second, correlation)| {
                vec![
                    (words.parameter)(*first).to_owned(),
                    (words.parameter)(*second).to_owned(),
                    speech.formats.number(*correlation, 2),
                ]
            })
            .collect(),
    };
    (!pairs.is_empty()).then(|| Block::Table((*summary).to_owned(), table))
}

/// The middle 8 of 10 of what may be: of a figure that cannot be negative, by its logarithm.
fn bounds(parameter: Parameter, value: f64, sd: f64) -> (f64, f64) {
    if parameter == Parameter::MeltingPoint {
        return (value - TENTH_SD * sd, value + TENTH_SD * sd);
    }
    let times = (TENTH_SD * sd / value).exp();
    (value / times, value * times)
}

/// A figure with its unit.
pub(super) fn value_of(speech: &Speech, parameter: Parameter, value: f64) -> String {
    let words = &speech.report.found;
    match parameter {
        Parameter::MeltingPoint => speech.formats.temperature(value, Sure::Known),
        Parameter::MeltingRange => speech.difference(value),
        Parameter::JacketCapacity => (words.unit)(parameter, &speech.number(value / 1000.0)),
        _ => (words.unit)(parameter, &speech.number(value)),
    }
}

fn curves(speech: &Speech, told: &Told<'_>) -> Vec<Block> {
    let words = &speech.report.found;
    let mut blocks = Vec::new();
    let is_one = told.fit.runs.len() == 1;
    for (run, name) in told.fit.runs.iter().zip(told.names) {
        let heading = if is_one {
            words.curve.to_owned()
        } else {
            (words.curve_of)(name)
        };
        blocks.push(Block::Heading(heading));
        blocks.extend(curve(speech, run, name));
        blocks.extend(left_over(speech, run, name));
    }
    blocks
}

type Read = fn(&Residual) -> Option<Met>;
const STORE: Read = |residual| residual.store;
const POT: Read = |residual| residual.pot;

fn points(run: &RunFit, read: Read, value: fn(&Met) -> f64) -> Vec<(f64, f64)> {
    let residuals = run.residuals.iter();
    residuals
        .filter_map(|residual| Some((residual.time_s, value(&read(residual)?))))
        .collect()
}

fn curve(speech: &Speech, run: &RunFit, name: &str) -> Option<Block> {
    let words = &speech.report.found;
    let line = |label, style, read, value| Line {
        label,
        style,
        points: points(run, read, value),
    };
    let lines = vec![
        line(words.store_fitted, LineStyle::Store, STORE, |met| {
            met.fitted_c
        }),
        line(words.pot_fitted, LineStyle::Pot, POT, |met| met.fitted_c),
        line(words.store_read, LineStyle::Measured, STORE, |met| {
            met.read_c
        }),
        line(words.pot_read, LineStyle::MeasuredPot, POT, |met| {
            met.read_c
        }),
    ];
    let sentence = (words.near)(&speech.difference(run.scatter_k));
    let view = plot(speech, name, (Of::Temperatures, lines), sentence)?;
    Some(Block::Lines(Box::new(view)))
}

fn left_over(speech: &Speech, run: &RunFit, name: &str) -> Option<Block> {
    let words = &speech.report.found;
    let line = |label, style, read| Line {
        label,
        style,
        points: points(run, read, |met| met.read_c - met.fitted_c),
    };
    let lines = vec![
        line(words.left_store, LineStyle::Measured, STORE),
        line(words.left_pot, LineStyle::Other, POT),
    ];
    let sizes = lines.iter().flat_map(|line| &line.points);
    let most_k = sizes.map(|point| point.1.abs()).fold(0.0, f64::max);
    let sentence = (words.left_sentence)(&speech.difference(most_k));
    let name = (words.left_over)(name);
    let view = plot(speech, &name, (Of::Differences, lines), sentence)?;
    Some(Block::Lines(Box::new(view)))
}
