//! The readings of runs over each other, in a plot and in its table.

use super::{Aligned, Chosen};
use crate::chart::{LineChartView, Series};
use crate::components::TableView;
use crate::i18n::format::Sure;
use crate::present::bench::live::ticks;
use crate::present::bench::typing::Channel;
use crate::present::tonight::Voice;
use crate::state::bench::Reading;

/// The readings of one thermometer over each other; `None` where no run has any.
pub fn plot(
    voice: &Voice<'_>,
    runs: &[Chosen],
    channel: Channel,
    aligned: Aligned,
) -> Option<LineChartView> {
    let words = &voice.strings.runs.report;
    let formats = voice.formats;
    let mut series = Vec::new();
    let mut told = Vec::new();
    let mut length_s: f64 = 0.0;
    for chosen in runs {
        if chosen.not_drawn(voice).is_some() {
            continue;
        }
        let points = points(chosen, channel, aligned);
        let (Some(first), Some(last)) = (points.first(), points.last()) else {
            told.push((words.not_read)(&chosen.name(voice)));
            continue;
        };
        length_s = length_s.max(last.0);
        let degrees = |celsius| formats.temperature(celsius, Sure::Known);
        told.push((words.curve)(
            &chosen.name(voice),
            &degrees(first.1),
            &degrees(last.1),
            &formats.duration(last.0 - first.0, Sure::Known),
        ));
        series.push(Series {
            label: chosen.name(voice),
            points: points
                .iter()
                .map(|(at_s, value)| (*at_s, channel.shown(formats, *value)))
                .collect(),
            band: Vec::new(),
            style: chosen.style,
        });
    }
    if series.is_empty() {
        return None;
    }
    let name = match channel {
        Channel::Pot => words.plot_pot,
        _ => words.plot_store,
    };
    Some(LineChartView {
        name: name.to_owned(),
        table: (
            voice.strings.common.show_table.to_owned(),
            table(voice, runs, channel, aligned, name),
        ),
        series,
        levels: Vec::new(),
        moments: Vec::new(),
        x_ticks: ticks(voice, length_s),
        y_unit: channel.unit(formats),
        sentence: told.join(" "),
    })
}

/// Which runs are not drawn, and why.
pub fn not_drawn(voice: &Voice<'_>, runs: &[Chosen]) -> String {
    let why = runs.iter().filter_map(|chosen| chosen.not_drawn(voice));
    why.collect::<Vec<_>>().join(" ")
}

/// Time and reading, from where the curve is to begin.
fn points(chosen: &Chosen, channel: Channel, aligned: Aligned) -> Vec<(f64, f64)> {
    let Some(zero_s) = chosen.zero_s(aligned) else {
        return Vec::new();
    };
    let point = |reading: &Reading| {
        let at_s = chosen.run.since_start_s(reading.at);
        Some((at_s, channel.of(reading)?))
    };
    let lines = chosen.curve.as_ref().and_then(|curve| curve.lines.as_ref());
    let points: Vec<(f64, f64)> = match (lines, channel) {
        (Some(lines), Channel::Store) => lines.store.0.clone(),
        (Some(lines), Channel::Pot) => lines.pot.0.clone(),
        _ => chosen.run.typed().iter().filter_map(point).collect(),
    };
    points
        .into_iter()
        .map(|(at_s, value)| (at_s - zero_s, value))
        .filter(|(at_s, _)| -60.0 <= *at_s)
        .collect()
}

/// The curves in numbers, at the plot's ticks.
fn table(
    voice: &Voice<'_>,
    runs: &[Chosen],
    channel: Channel,
    aligned: Aligned,
    name: &str,
) -> TableView {
    let drawn: Vec<(&Chosen, Vec<(f64, f64)>)> = runs
        .iter()
        .map(|chosen| (chosen, points(chosen, channel, aligned)))
        .filter(|(_, points)| !points.is_empty())
        .collect();
    let length_s = drawn
        .iter()
        .filter_map(|(_, points)| points.last())
        .fold(0.0, |most: f64, last| most.max(last.0));
    let cell = |points: &[(f64, f64)], at_s: f64| {
        let value = between(points, at_s).map(|value| channel.shown(voice.formats, value));
        value.map_or_else(String::new, |value| voice.formats.number(value, 0))
    };
    let heads = drawn.iter().map(|(chosen, _)| chosen.name(voice));
    TableView {
        caption: name.to_owned(),
        heads: std::iter::once(voice.strings.runs.live.time.to_owned())
            .chain(heads)
            .collect(),
        rows: ticks(voice, length_s)
            .iter()
            .map(|tick| {
                let cells = drawn.iter().map(|(_, points)| cell(points, tick.at));
                std::iter::once(tick.label.clone()).chain(cells).collect()
            })
            .collect(),
    }
}

/// A reading between two, straight.
fn between(points: &[(f64, f64)], at_s: f64) -> Option<f64> {
    let after = points.iter().position(|point| at_s <= point.0)?;
    let right = points.get(after)?;
    match after.checked_sub(1).and_then(|before| points.get(before)) {
        Some(left) => {
            let part = (at_s - left.0) / (right.0 - left.0);
            Some(left.1 + part * (right.1 - left.1))
        }
        None => (right.0 - at_s < 60.0).then_some(right.1),
    }
}
