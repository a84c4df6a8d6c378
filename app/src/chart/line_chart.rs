//! Curves through time or temperature, with what may as well be, and what matters marked.

use crate::reactive::*;

use super::path;
use super::scale::{Scale, range, round_ticks, spread, thinned};
use crate::components::{DataTable, Fold, TableView};

/// What a line stands for; each has its own colour and its own stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LineStyle {
    /// The store: a thick whole line.
    Store,
    /// The pot: long dashes.
    Pot,
    /// The air outside: short dashes.
    Air,
    /// What was measured: dots.
    Measured,
    /// The same of the pot: square dots.
    MeasuredPot,
    /// What was fitted to it: a thin whole line.
    Fitted,
    /// What is left over or anything else: dash and dot.
    Other,
    /// One of several alike: each has its own dashes, and its letter at its end. This is A.
    First,
    /// B.
    Second,
    /// C.
    Third,
    /// D.
    Fourth,
    /// E.
    Fifth,
}

impl LineStyle {
    fn name(self) -> &'static str {
        match self {
            Self::Store => "store",
            Self::Pot => "pot",
            Self::Air => "air",
            Self::Measured => "measured",
            Self::MeasuredPot => "measured-pot",
            Self::Fitted => "fitted",
            Self::Other => "other",
            Self::First => "first",
            Self::Second => "second",
            Self::Third => "third",
            Self::Fourth => "fourth",
            Self::Fifth => "fifth",
        }
    }

    /// Those of several alike, in order.
    pub const ALIKE: [Self; 5] = [
        Self::First,
        Self::Second,
        Self::Third,
        Self::Fourth,
        Self::Fifth,
    ];

    /// The letter that stands at its end.
    pub fn letter(self) -> Option<char> {
        let letters = Self::ALIKE.into_iter().zip('A'..);
        letters
            .filter(|(style, _)| *style == self)
            .map(|(_, letter)| letter)
            .next()
    }
}

/// A line with what may as well be around it.
#[derive(Clone, Debug, PartialEq)]
pub struct Series {
    /// Its name in the key.
    pub label: String,
    /// Points in order of x; a y that is not a number breaks the line.
    pub points: Vec<(f64, f64)>,
    /// x, lower and upper bound; empty where there is no band.
    pub band: Vec<(f64, f64, f64)>,
    /// How it is drawn.
    pub style: LineStyle,
}

/// A line across the plot with its words.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// Where it lies on its axis.
    pub at: f64,
    /// What it is.
    pub label: String,
}

/// What a plot shows.
#[derive(Clone, Debug, PartialEq)]
pub struct LineChartView {
    /// What the plot is of.
    pub name: String,
    /// Its lines, the most important first.
    pub series: Vec<Series>,
    /// Lines straight across, such as where water boils.
    pub levels: Vec<Mark>,
    /// Lines up and down, such as when the pot goes in, in order of time.
    pub moments: Vec<Mark>,
    /// Ticks of the x axis with their words, in order.
    pub x_ticks: Vec<Mark>,
    /// Unit of the y axis.
    pub y_unit: String,
    /// The same as the plot, in a sentence or two.
    pub sentence: String,
    /// What opens the table, and the table.
    pub table: (String, TableView),
}

/// Width and height that the curves are drawn on before they are stretched.
const SIDE: f64 = 1000.0;
/// Least part of the height between two labels of levels: a line of text in a plot of 13 lines.
const LEVEL_GAP: f64 = SIDE / 9.0;
/// Part of the width that the words of a level take.
const LEVEL_WORDS: f64 = SIDE * 0.35;
/// A curve is looked at in so many steps along the words of a level; a line up and down through them is
/// as bad as one all along.
const LINE_IN_POINTS: usize = 10;
/// Part of the width that a letter of a label of the x axis takes on the narrowest phone, and what
/// stays free between two labels.
const X_LETTER: f64 = SIDE * 0.036;
const X_FREE: f64 = SIDE * 0.05;

/// A letter stands so many parts of its line before the one of the line before.
const LETTER_PARTS: usize = 8;

/// The plot's axes.
struct Axes {
    x: Scale,
    y: Scale,
    y_ticks: Vec<f64>,
}

impl LineChartView {
    /// Axes that hold all points, bands and levels; none where there is nothing to draw.
    fn axes(&self) -> Option<Axes> {
        let xs = self
            .series
            .iter()
            .flat_map(|series| series.points.iter().map(|point| point.0));
        let ys = self.series.iter().flat_map(|series| {
            let bounds = series
                .band
                .iter()
                .flat_map(|&(_, lower, upper)| [lower, upper]);
            series.points.iter().map(|point| point.1).chain(bounds)
        });
        let x = range(xs)?;
        let (lo, hi) = range(ys.chain(self.levels.iter().map(|level| level.at)))?;
        let y_ticks = round_ticks(lo, hi, 6);
        let y = (y_ticks.first().copied()?, y_ticks.last().copied()?);
        Some(Axes {
            x: Scale::new(x, (0.0, SIDE)),
            y: Scale::new(y, (SIDE, 0.0)),
            y_ticks,
        })
    }
}

/// A plot with its key, its sentence and, when asked for, its table.
#[component]
pub fn LineChart(
    /// What it shows.
    #[prop(into)]
    view: Signal<LineChartView>,
    /// Words a tick of the y axis.
    #[prop(into)]
    y_text: Callback<f64, String>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let table = Signal::derive(move || view.get().table.1);
    let summary = Signal::derive(move || view.get().table.0);
    let key = |series: Series| {
        view! {
            <li class="line-chart__key-line">
                <svg class="line-chart__swatch" viewBox="0 0 40 12" aria-hidden="true">
                    <path class="line-chart__line" data-style=series.style.name() d=swatch(series.style)></path>
                </svg>
                <span>{series.label}</span>
            </li>
        }
    };
    view! {
        <figure class="line-chart" data-test=test>
            {move || view.get().axes().map(|axes| plot(&view.get(), &axes, y_text))}
            <ul class="line-chart__key">
                {move || view.get().series.into_iter().map(key).collect_view()}
            </ul>
            <figcaption class="line-chart__sentence">{move || view.get().sentence}</figcaption>
            <Fold summary>
                <DataTable table />
            </Fold>
        </figure>
    }
}

fn swatch(style: LineStyle) -> &'static str {
    match style {
        LineStyle::Measured | LineStyle::MeasuredPot => "M6 6h0M20 6h0M34 6h0",
        _ => "M0 6H40",
    }
}

/// The drawing between its axes.
fn plot(view: &LineChartView, axes: &Axes, y_text: Callback<f64, String>) -> View {
    let lanes = format!("--lanes: {}", view.moments.len());
    view! {
        <div class="line-chart__plot" style=lanes role="img" aria-label=view.name.clone()>
            {y_axis(view, axes, y_text)}
            <svg
                class="line-chart__drawing"
                viewBox="0 0 1000 1000"
                preserveAspectRatio="none"
                aria-hidden="true"
            >
                {grid(view, axes)}
                {view.series.iter().rev().map(|series| curve(series, axes)).collect_view()}
            </svg>
            {levels(view, axes)}
            {letters(view, axes)}
            {moments(view, axes)}
            {x_axis(view, axes)}
        </div>
    }
}

fn place(at: f64) -> String {
    format!("--at: {:.4}", at / SIDE)
}

fn y_axis(view: &LineChartView, axes: &Axes, y_text: Callback<f64, String>) -> View {
    let ticks = axes
        .y_ticks
        .iter()
        .map(|&tick| {
            view! { <span class="line-chart__y" style=place(axes.y.at(tick))>{y_text.run(tick)}</span> }
        })
        .collect_view();
    view! {
        <div class="line-chart__y-axis">
            {ticks} <span class="line-chart__unit">{view.y_unit.clone()}</span>
        </div>
    }
}

fn x_axis(view: &LineChartView, axes: &Axes) -> View {
    let places: Vec<f64> = view.x_ticks.iter().map(|tick| axes.x.at(tick.at)).collect();
    let letters = view.x_ticks.iter().map(|tick| tick.label.chars().count());
    let gap = X_FREE + X_LETTER * letters.max().unwrap_or_default() as f64;
    let shown = thinned(&places, gap);
    let ticks = view
        .x_ticks
        .iter()
        .zip(places)
        .zip(shown)
        .filter(|((_, at), shown)| *shown && (-0.5..=SIDE + 0.5).contains(at))
        .map(|((tick, at), _)| {
            view! { <span class="line-chart__x" style=place(at)>{tick.label.clone()}</span> }
        })
        .collect_view();
    view! { <div class="line-chart__x-axis">{ticks}</div> }
}

fn grid(view: &LineChartView, axes: &Axes) -> View {
    let across = |at: f64| format!("M0 {at:.1}H1000");
    let up = |at: f64| format!("M{at:.1} 0V1000");
    let y_lines: String = axes
        .y_ticks
        .iter()
        .map(|&tick| across(axes.y.at(tick)))
        .collect();
    let x_lines: String = view
        .x_ticks
        .iter()
        .map(|tick| up(axes.x.at(tick.at)))
        .collect();
    let levels: String = view
        .levels
        .iter()
        .map(|level| across(axes.y.at(level.at)))
        .collect();
    let moments: String = view
        .moments
        .iter()
        .map(|moment| up(axes.x.at(moment.at)))
        .collect();
    view! {
        <path class="line-chart__grid" d=y_lines + &x_lines></path>
        <path class="line-chart__level-line" d=levels></path>
        <path class="line-chart__moment-line" d=moments></path>
    }
}

fn curve(series: &Series, axes: &Axes) -> View {
    let style = series.style.name();
    let points = series
        .points
        .iter()
        .map(|&(x, y)| (axes.x.at(x), axes.y.at(y)));
    let line = if matches!(series.style, LineStyle::Measured | LineStyle::MeasuredPot) {
        path::dots(points)
    } else {
        path::line(points)
    };
    let bounds = series
        .band
        .iter()
        .map(|&(x, lower, upper)| (axes.x.at(x), axes.y.at(lower), axes.y.at(upper)));
    view! {
        <path class="line-chart__band" data-style=style d=path::band(bounds)></path>
        <path class="line-chart__line" data-style=style d=line></path>
    }
}

fn levels(view: &LineChartView, axes: &Axes) -> View {
    let wanted: Vec<f64> = view
        .levels
        .iter()
        .map(|level| axes.y.at(level.at))
        .collect();
    let labels = view
        .levels
        .iter()
        .zip(spread(&wanted, LEVEL_GAP, SIDE))
        .map(|(level, at)| {
            let Seat { side, lies } = level_seat(view, axes, at);
            view! {
                <span class="line-chart__level" data-side=side data-lies=lies style=place(at)>
                    {level.label.clone()}
                </span>
            }
        })
        .collect_view();
    view! { <div class="line-chart__levels">{labels}</div> }
}

/// The letters of lettered lines, each at the end of its own.
fn letters(view: &LineChartView, axes: &Axes) -> View {
    let letters = view
        .series
        .iter()
        .filter_map(|series| {
            let place = LineStyle::ALIKE
                .iter()
                .position(|style| *style == series.style)?;
            let letter = series.style.letter()?;
            let drawn: Vec<&(f64, f64)> =
                series.points.iter().filter(|it| !it.1.is_nan()).collect();
            // Each a bit before the one of the line before, since lines often end alike.
            let back = place * drawn.len() / LETTER_PARTS;
            let (x, y) = drawn.get(drawn.len().checked_sub(1 + back)?)?;
            let x = axes.x.at(*x) / SIDE;
            let style = format!("--at: {:.4}; --x: {x:.4}", axes.y.at(*y) / SIDE);
            Some(view! {
                <span class="line-chart__letter" data-style=series.style.name() style=style>
                    {letter.to_string()}
                </span>
            })
        })
        .collect_view();
    view! { <div class="line-chart__levels" aria-hidden="true">{letters}</div> }
}

/// Where the words of a level stand: at which end of its line, and above or below it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Seat {
    side: &'static str,
    lies: &'static str,
}

/// Where fewest lines run through the words of a level. Only a level that is alone has them below its
/// line, where the words of the next would be.
fn level_seat(view: &LineChartView, axes: &Axes, at: f64) -> Seat {
    let is_alone = view.levels.len() == 1 && at + LEVEL_GAP <= SIDE;
    let above = (at - LEVEL_GAP, at);
    let below = (at, at + LEVEL_GAP);
    let (late, early) = ((SIDE - LEVEL_WORDS, SIDE), (0.0, LEVEL_WORDS));
    let mut best = (usize::MAX, "end", "above");
    for (lies, room) in [("above", above), ("below", below)] {
        for (side, words) in [("end", late), ("start", early)] {
            let lines = runs_through(view, axes, words, room);
            if (lies == "above" || is_alone) && lines < best.0 {
                best = (lines, side, lies);
            }
        }
    }
    let (_, side, lies) = best;
    Seat { side, lies }
}

/// How much of lines and moments runs through a part of the plot.
fn runs_through(
    view: &LineChartView,
    axes: &Axes,
    (from, to): (f64, f64),
    (top, foot): (f64, f64),
) -> usize {
    let step = (to - from) / LINE_IN_POINTS as f64;
    let is_in = |y: f64| top <= y && y <= foot;
    let curves = view.series.iter().map(|series| {
        let places = (0..=LINE_IN_POINTS).map(|n| from + step * n as f64);
        places
            .filter(|x| height(series, axes, *x).is_some_and(is_in))
            .count()
    });
    let moments = view.moments.iter().filter(|moment| {
        let x = axes.x.at_clamped(moment.at);
        from <= x && x <= to
    });
    curves.sum::<usize>() + LINE_IN_POINTS * moments.count()
}

/// Where a line is drawn at a place of the x axis; none where it is not.
fn height(series: &Series, axes: &Axes, x: f64) -> Option<f64> {
    let drawn = |point: &(f64, f64)| (axes.x.at(point.0), axes.y.at(point.1));
    let mut pairs = series.points.windows(2).filter_map(|pair| match pair {
        [a, b] => Some((drawn(a), drawn(b))),
        _ => None,
    });
    let ((x_a, y_a), (x_b, y_b)) = pairs.find(|(a, b)| a.0 <= x && x <= b.0)?;
    let share = (x - x_a) / (x_b - x_a).max(f64::MIN_POSITIVE);
    Some(y_a + share * (y_b - y_a)).filter(|y| y.is_finite())
}

/// Where the words of a moment stand: to which side of its line, and in which lane.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Lane {
    side: &'static str,
    lane: usize,
}

/// Gives each moment a lane of its own over the plot, so that words never meet.
///
/// Words go to the side with more room. The lanes then fall away from that side, so that a line
/// on its way down to the plot does not run through the words of another.
fn lanes(places: &[f64]) -> Vec<Lane> {
    let n_before = places.iter().filter(|&&place| place < SIDE / 2.0).count();
    let most_late = 2 * n_before < places.len();
    let side = |place: f64| {
        let late = if most_late {
            SIDE * 0.25 < place
        } else {
            SIDE * 0.6 < place
        };
        if late { "end" } else { "start" }
    };
    let lane = |idx: usize| {
        if most_late {
            places.len() - 1 - idx
        } else {
            idx
        }
    };
    places
        .iter()
        .enumerate()
        .map(|(idx, &place)| Lane {
            side: side(place),
            lane: lane(idx),
        })
        .collect()
}

fn moments(view: &LineChartView, axes: &Axes) -> View {
    let places: Vec<f64> = view
        .moments
        .iter()
        .map(|moment| axes.x.at_clamped(moment.at))
        .collect();
    let labels = view
        .moments
        .iter()
        .zip(lanes(&places))
        .zip(places)
        .map(|((moment, Lane { side, lane }), at)| {
            let style = format!("{}; --lane: {lane}", place(at));
            view! {
                <span class="line-chart__moment" data-side=side style=style>
                    <span class="line-chart__moment-label">{moment.label.clone()}</span>
                </span>
            }
        })
        .collect_view();
    view! { <div class="line-chart__moments">{labels}</div> }
}

#[cfg(test)]
mod tests;
