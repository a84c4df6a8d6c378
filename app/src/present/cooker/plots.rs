//! The two plots of a cooker: a full store that cools, and the panels with their load.

use model::tonight::{Figures, LightLine};

use crate::chart::{LineChartView, LineStyle, Mark, Series};
use crate::components::TableView;
use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;

/// Seconds of an hour.
const HOUR_S: f64 = 3600.0;
/// Hours between two ticks, the first that gives few enough of them.
const TICKS_H: [f64; 9] = [1.0, 2.0, 3.0, 6.0, 12.0, 24.0, 48.0, 96.0, 240.0];
/// Most ticks of the time axis.
const MOST_TICKS: f64 = 7.0;
/// Volts between two ticks, likewise.
const TICKS_V: [f64; 9] = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0];

fn spacing(most: f64, steps: &[f64]) -> f64 {
    steps
        .iter()
        .copied()
        .find(|step| most <= MOST_TICKS * step)
        .unwrap_or(most.max(1.0))
}

/// Even values from 0 to the last within `most`.
fn evenly(most: f64, step: f64) -> impl Iterator<Item = f64> {
    (0_u32..)
        .map(move |idx| step * f64::from(idx))
        .take_while(move |at| *at <= most + 1e-9)
}

/// A full store that cools without sun and pot.
pub fn cool_down(strings: &Strings, formats: &Formats, figures: &Figures) -> LineChartView {
    let words = &strings.cooker.follows.cool;
    let shown = |celsius| formats.degrees.from_c(celsius);
    let degrees = |celsius| formats.temperature(celsius, Sure::Known);
    let points = &figures.cool.points;
    let last_h = points.last().map_or(0.0, |(at_s, _)| at_s / HOUR_S);
    let step_h = spacing(last_h, &TICKS_H);
    let hours = |at_h: f64| (strings.common.units.hours)(&formats.field(at_h, 0));

    let mut levels = vec![Mark {
        at: shown(figures.boiling_c),
        label: (words.boil)(&degrees(figures.boiling_c)),
    }];
    let melting = figures.melting_c.map(|(solidus_c, _)| solidus_c);
    // One that freezes near the boil would hide the line that matters.
    let apart = |celsius: &f64| 8.0 < (celsius - figures.boiling_c).abs();
    let within = |celsius: &f64| *celsius < figures.cutout_c;
    levels.extend(melting.filter(apart).filter(within).map(|celsius| Mark {
        at: shown(celsius),
        label: (words.melts)(&degrees(celsius)),
    }));

    let (cutout, boil) = (degrees(figures.cutout_c), degrees(figures.boiling_c));
    let sentence = match figures.cool.hold_s {
        Some(hold_s) => {
            let hold = (strings.common.about)(&formats.duration(hold_s, Sure::Rough));
            (words.sentence)(&cutout, &boil, &hold, &degrees(figures.air_c))
        }
        None if figures.capacity_j <= 0.0 => (words.sentence_below)(&cutout, &boil),
        None => (words.sentence_long)(&cutout, &boil),
    };
    let rows = evenly(last_h, step_h)
        .filter_map(|at_h| {
            let celsius = value_at(points, at_h * HOUR_S)?;
            Some(vec![hours(at_h), degrees(celsius)])
        })
        .collect();
    LineChartView {
        name: words.name.to_owned(),
        series: vec![Series {
            label: words.store.to_owned(),
            points: points
                .iter()
                .map(|&(at_s, celsius)| (at_s / HOUR_S, shown(celsius)))
                .collect(),
            band: Vec::new(),
            style: LineStyle::Store,
        }],
        levels,
        moments: Vec::new(),
        x_ticks: evenly(last_h, step_h)
            .map(|at_h| Mark {
                at: at_h,
                label: hours(at_h),
            })
            .collect(),
        y_unit: (strings.common.units.degrees)("", formats.degrees)
            .trim()
            .to_owned(),
        sentence,
        table: (
            strings.common.show_table.to_owned(),
            TableView {
                caption: words.name.to_owned(),
                heads: vec![words.head_time.to_owned(), words.head_store.to_owned()],
                rows,
            },
        ),
    }
}

/// Value between the points, on a straight line.
fn value_at(points: &[(f64, f64)], at: f64) -> Option<f64> {
    let after = points.iter().position(|point| at <= point.0 + 1e-6)?;
    let right = points.get(after)?;
    let left = after.checked_sub(1).and_then(|before| points.get(before));
    Some(left.map_or(right.1, |left| {
        left.1 + (right.1 - left.1) * (at - left.0) / (right.0 - left.0)
    }))
}

/// The panels' current against voltage at full and half sun, with the line of the heater.
pub fn panel(strings: &Strings, formats: &Formats, figures: &Figures) -> LineChartView {
    let words = &strings.cooker.follows.panel;
    let [full, half] = &figures.light;
    let volts = strings.cooker.follows.volts;
    let curve = |line: &LightLine, label: &str, style| Series {
        label: label.to_owned(),
        points: line
            .curve
            .iter()
            .map(|point| (point.voltage_v, point.current_a))
            .collect(),
        band: Vec::new(),
        style,
    };
    let most_v = full.curve.last().map_or(0.0, |point| point.voltage_v);
    let most_a = full.curve.first().map_or(0.0, |point| point.current_a);
    // The first is drawn over the others: the points must not hide under their lines.
    let mut series = vec![
        Series {
            label: words.works.to_owned(),
            points: [half, full]
                .map(|line| (line.works_at.voltage_v, line.works_at.current_a))
                .to_vec(),
            band: Vec::new(),
            style: LineStyle::Measured,
        },
        curve(full, words.full, LineStyle::Store),
        curve(half, words.half, LineStyle::Pot),
    ];
    series.extend(figures.load_ohm.map(|load_ohm| {
        // The line goes on to the edge of the plot that it meets first.
        let end_a = most_a.min(most_v / load_ohm);
        Series {
            label: (words.load)(&formats.ohms(load_ohm)),
            points: vec![(0.0, 0.0), (end_a * load_ohm, end_a)],
            band: Vec::new(),
            style: LineStyle::Fitted,
        }
    }));

    let watts = |watts| formats.watts(watts);
    let sentence = if figures.load_ohm.is_some() {
        (words.sentence)(
            &watts(full.heat_w),
            &watts(full.best_at.power_w()),
            &watts(half.heat_w),
            &watts(half.best_at.power_w()),
        )
    } else {
        (words.sentence_tracker)(&watts(full.heat_w), &watts(half.heat_w))
    };
    let row = |line: &LightLine, label: &str| {
        vec![
            label.to_owned(),
            volts(&formats.number(line.works_at.voltage_v, 1)),
            (strings.cooker.follows.amperes)(&formats.number(line.works_at.current_a, 1)),
            watts(line.heat_w),
            watts(line.best_at.power_w()),
        ]
    };
    let step_v = spacing(most_v, &TICKS_V);
    LineChartView {
        name: words.name.to_owned(),
        series,
        levels: Vec::new(),
        moments: Vec::new(),
        x_ticks: evenly(most_v, step_v)
            .map(|at| Mark {
                at,
                label: volts(&formats.field(at, 0)),
            })
            .collect(),
        y_unit: (strings.cooker.follows.amperes)("").trim().to_owned(),
        sentence,
        table: (
            strings.common.show_table.to_owned(),
            TableView {
                caption: words.name.to_owned(),
                heads: [
                    words.head_light,
                    words.head_volts,
                    words.head_amperes,
                    words.head_heat,
                    words.head_most,
                ]
                .map(str::to_owned)
                .to_vec(),
                rows: vec![row(full, words.full), row(half, words.half)],
            },
        ),
    }
}

#[cfg(test)]
mod tests {
    use model::panel::Drive;
    use model::presets::Preset;

    use super::*;
    use crate::present::cooker::tests::{household_site, spanish};
    use crate::present::tests::english;

    #[test]
    fn a_plot_says_in_words_what_it_draws() {
        for (strings, formats) in [english(), spanish()] {
            for preset in Preset::ALL {
                let cooker = preset.cooker(200.0, 11.0);
                if cooker.store.charges.is_empty() {
                    continue;
                }
                let figures = Figures::new(&household_site(), &cooker).unwrap();
                let cool = cool_down(strings, &formats, &figures);
                assert!(4 <= cool.x_ticks.len() && cool.x_ticks.len() <= 8);
                assert_eq!(cool.table.1.rows.len(), cool.x_ticks.len());
                assert!(cool.sentence.contains("95"), "{}", cool.sentence);
                let panel = panel(strings, &formats, &figures);
                assert_eq!(panel.series.len(), 4);
                assert_eq!(panel.table.1.rows.len(), 2);
                for row in &panel.table.1.rows {
                    assert_eq!(row.len(), panel.table.1.heads.len());
                }
            }
        }
    }

    #[test]
    fn the_load_line_ends_within_the_plot() {
        let (strings, formats) = english();
        for ohm in [0.3, 2.0, 40.0] {
            let mut cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
            cooker.heater.resistance_ohm = ohm;
            let figures = Figures::new(&household_site(), &cooker).unwrap();
            let view = panel(strings, &formats, &figures);
            let end = view.series[3].points[1];
            let full = &figures.light[0].curve;
            assert!(end.0 <= full.last().unwrap().voltage_v + 1e-9);
            assert!(end.1 <= full.first().unwrap().current_a + 1e-9);
        }
    }

    #[test]
    fn a_tracker_has_no_load_line() {
        let (strings, formats) = english();
        let mut cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        cooker.heater.drive = Drive::Tracker { efficiency: 0.95 };
        let figures = Figures::new(&household_site(), &cooker).unwrap();
        let view = panel(strings, &formats, &figures);
        assert_eq!(view.series.len(), 3);
        assert!(
            view.sentence.starts_with("The tracker"),
            "{}",
            view.sentence
        );
    }

    #[test]
    fn between_two_points_lies_a_straight_line() {
        let points = [(0.0, 10.0), (2.0, 6.0)];
        assert!((value_at(&points, 0.5).unwrap() - 9.0).abs() < 1e-12);
        assert!((value_at(&points, 0.0).unwrap() - 10.0).abs() < 1e-12);
        assert!(value_at(&points, 3.0).is_none());
    }
}
