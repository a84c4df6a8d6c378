//! Plots of readings through the time of a run.

use super::Speech;
use crate::chart::{LineChartView, LineStyle, Mark, Series};
use crate::components::TableView;
use crate::i18n::format::Sure;

/// A curve is drawn from so many stretches at most, of each its lowest and its highest.
const STRETCHES: usize = 150;
/// Rows of the table under a plot, at most.
const TABLE_ROWS: f64 = 24.0;
/// Steps of the axis of time. \[min\]
const STEPS_MIN: [f64; 13] = [
    1.0, 2.0, 5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 180.0, 360.0, 720.0, 1440.0, 2880.0,
];
/// Ticks of the axis, at most: their words stay apart on a narrow phone.
const TICKS: f64 = 3.0;

/// One line of a plot.
pub(super) struct Line<'a> {
    /// Its name.
    pub(super) label: &'a str,
    /// How it is drawn.
    pub(super) style: LineStyle,
    /// Times and values, in order of time. \[s, K or °C\]
    pub(super) points: Vec<(f64, f64)>,
}

/// The values of a plot.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Of {
    /// Temperatures.
    Temperatures,
    /// Differences of temperatures.
    Differences,
}

/// A plot; none without a point.
pub(super) fn plot(
    speech: &Speech,
    name: &str,
    (of, lines): (Of, Vec<Line<'_>>),
    sentence: String,
) -> Option<LineChartView> {
    let lines: Vec<Line<'_>> = lines
        .into_iter()
        .filter(|line| !line.points.is_empty())
        .collect();
    let ends = lines
        .iter()
        .flat_map(|line| [line.points.first(), line.points.last()]);
    let end_s = ends
        .flatten()
        .map(|(time_s, _)| *time_s)
        .fold(f64::NEG_INFINITY, f64::max);
    if lines.is_empty() || !end_s.is_finite() {
        return None;
    }
    let shown = |value: f64| shown(speech, of, value);
    let table = table(speech, name, (of, &lines), end_s);
    let step_s = step_s(end_s, TICKS);
    let n_ticks = (end_s / step_s).floor().max(0.0) as u32;
    Some(LineChartView {
        name: name.to_owned(),
        series: lines
            .iter()
            .map(|line| Series {
                label: line.label.to_owned(),
                points: thinned(&line.points)
                    .into_iter()
                    .map(|(time_s, value)| (time_s.round(), (shown(value) * 100.0).round() / 100.0))
                    .collect(),
                band: Vec::new(),
                style: line.style,
            })
            .collect(),
        levels: Vec::new(),
        moments: Vec::new(),
        x_ticks: (0..=n_ticks)
            .map(|tick| {
                let at = f64::from(tick) * step_s;
                Mark {
                    at,
                    label: speech.formats.duration(at, Sure::Known),
                }
            })
            .collect(),
        y_unit: speech.unit(),
        sentence,
        table: (speech.strings.common.show_table.to_owned(), table),
    })
}

fn shown(speech: &Speech, of: Of, value: f64) -> f64 {
    let degrees = speech.formats.degrees;
    match of {
        Of::Temperatures => degrees.from_c(value),
        Of::Differences => degrees.from_c(value) - degrees.from_c(0.0),
    }
}

/// The least step that cuts a time into so many parts at most. \[s\]
fn step_s(end_s: f64, parts: f64) -> f64 {
    let mut steps = STEPS_MIN.iter().map(|minutes| 60.0 * minutes);
    steps
        .find(|step_s| end_s / step_s <= parts)
        .unwrap_or_else(|| 86_400.0 * (end_s / 86_400.0 / parts).ceil())
}

/// The lowest and the highest of each stretch, in the order they come in.
pub fn thinned(points: &[(f64, f64)]) -> Vec<(f64, f64)> {
    if points.len() <= 2 * STRETCHES {
        return points.to_vec();
    }
    let of_stretch = |stretch: &[(f64, f64)]| {
        let by_value = |a: &&(f64, f64), b: &&(f64, f64)| a.1.total_cmp(&b.1);
        let low = stretch.iter().min_by(by_value).copied();
        let high = stretch.iter().max_by(by_value).copied();
        let mut both: Vec<(f64, f64)> = low.into_iter().chain(high).collect();
        both.sort_by(|a, b| a.0.total_cmp(&b.0));
        both.dedup();
        both
    };
    points
        .chunks(points.len().div_ceil(STRETCHES))
        .flat_map(of_stretch)
        .collect()
}

fn table(speech: &Speech, name: &str, (of, lines): (Of, &[Line<'_>]), end_s: f64) -> TableView {
    let step_s = step_s(end_s, TABLE_ROWS);
    let n_rows = (end_s / step_s).floor().max(0.0) as u32;
    let decimals = usize::from(of == Of::Differences);
    let cell = |line: &Line<'_>, at_s: f64| {
        let idx = line.points.partition_point(|(time_s, _)| *time_s < at_s);
        let near = line
            .points
            .get(idx)
            .filter(|(time_s, _)| *time_s < at_s + step_s);
        near.map_or_else(String::new, |(_, value)| {
            speech.formats.number(shown(speech, of, *value), decimals)
        })
    };
    let unit = speech.unit();
    let mut heads = vec![speech.report.text.time.to_owned()];
    heads.extend(lines.iter().map(|line| format!("{}, {unit}", line.label)));
    TableView {
        caption: name.to_owned(),
        heads,
        rows: (0..=n_rows)
            .map(|row| {
                let at_s = f64::from(row) * step_s;
                let mut cells = vec![speech.formats.duration(at_s, Sure::Known)];
                cells.extend(lines.iter().map(|line| cell(line, at_s)));
                cells
            })
            .collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::present::bench::speech;

    #[test]
    fn a_long_run_is_thinned_and_keeps_its_peaks() {
        let mut points: Vec<(f64, f64)> = (0..200_000).map(|s| (f64::from(s), 200.0)).collect();
        points[77_777].1 = 640.0;
        points[99_999].1 = 20.0;
        let thin = thinned(&points);
        assert!(thin.len() <= 2 * STRETCHES);
        assert!(thin.is_sorted_by(|a, b| a.0 < b.0));
        for peak in [(77_777.0, 640.0), (99_999.0, 20.0)] {
            assert!(thin.contains(&peak));
        }
    }

    #[test]
    fn the_table_has_the_reading_of_each_step() {
        let line = Line {
            label: "Store",
            style: LineStyle::Store,
            points: (0..=60)
                .map(|minute| (60.0 * f64::from(minute), f64::from(minute)))
                .collect(),
        };
        let sentence = String::new();
        let view = plot(
            &speech(Language::English),
            "Run",
            (Of::Temperatures, vec![line]),
            sentence,
        );
        let view = view.unwrap();
        assert_eq!(view.table.1.heads, ["Time", "Store, °C"]);
        assert_eq!(view.table.1.rows.len(), 13);
        assert_eq!(view.table.1.rows[2], ["10\u{A0}min", "10"]);
        let labels: Vec<&str> = view
            .x_ticks
            .iter()
            .map(|tick| tick.label.as_str())
            .collect();
        assert_eq!(labels.join(" ").replace('\u{A0}', ""), "0min 30min 1h");
    }
}
