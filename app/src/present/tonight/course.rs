//! The plot of the evening: the store, the pot, and what happens when.

use model::local_time::{Day, LocalTime};
use model::tonight::{Answer, Point};

use super::verdict::Question;
use super::{Voice, ended, seconds};
use crate::chart::{LineChartView, LineStyle, Mark, Series};
use crate::components::TableView;
use crate::i18n::format::Sure;
use crate::order::in_order;

const HOUR_S: i64 = 3600;

/// Hours from one tick to the next.
const HOUR_STEPS: [i64; 5] = [1, 2, 3, 6, 12];

/// The plot of an answer; none where there are no points. Its x is seconds since the first.
pub fn course(voice: &Voice<'_>, question: &Question, answer: &Answer) -> Option<LineChartView> {
    let words = &voice.strings.tonight.course;
    let points = &answer.as_told.points;
    let (first, last) = (points.first()?, points.last()?);
    let start = first.at;
    let degrees = voice.formats.degrees;
    let line = |value: fn(&Point) -> f64| -> Vec<(f64, f64)> {
        points
            .iter()
            .map(|point| (seconds(point.at, start), degrees.from_c(value(point))))
            .collect()
    };
    let series = |label: &str, points, style| Series {
        label: label.to_owned(),
        points,
        band: Vec::new(),
        style,
    };
    let known = |celsius| voice.formats.temperature(celsius, Sure::Known);
    let store = |celsius| voice.formats.temperature(celsius, question.store_sure);
    Some(LineChartView {
        name: words.heading.to_owned(),
        series: vec![
            series(words.store, line(|point| point.store_c), LineStyle::Store),
            series(
                words.pot,
                line(|point| point.pot_c.unwrap_or(f64::NAN)),
                LineStyle::Pot,
            ),
        ],
        levels: vec![Mark {
            at: degrees.from_c(question.boiling_c),
            label: (words.boils_at)(&known(question.boiling_c)),
        }],
        moments: moments(voice, question, answer, (start, last.at)),
        x_ticks: hours(voice, start, last.at),
        y_unit: (voice.formats.units.degrees)("", degrees).trim().to_owned(),
        sentence: ended((words.sentence)(
            &store(first.store_c),
            &store(last.store_c),
            &voice.time(last.at, Sure::Near),
            &voice.hottest(answer.as_told.hottest_c, question.boiling_c),
        )),
        table: (
            voice.strings.common.show_table.to_owned(),
            table(voice, points),
        ),
    })
}

fn moments(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    (start, end): (LocalTime, LocalTime),
) -> Vec<Mark> {
    let words = &voice.strings.tonight.course;
    let told = &answer.as_told;
    let done_at = told.ready_at.filter(|at| Some(*at) != told.boils_at);
    let moments = [
        (Some(question.put_in), words.in_at, Sure::Known),
        (told.boils_at, words.boils, Sure::Near),
        (done_at, words.done, Sure::Near),
        (Some(question.meal.eat_at), words.eaten, Sure::Known),
    ]
    .into_iter()
    .filter_map(|(at, say, sure)| {
        let at = at.filter(|at| start <= *at && *at <= end)?;
        Some((at, say, sure))
    });
    let mut days = Days::of(voice);
    in_order(moments, |a, b| a.0.cmp(&b.0))
        .into_iter()
        .map(|(at, say, sure)| Mark {
            at: seconds(at, start),
            label: say(&days.time(at, sure)),
        })
        .collect()
}

/// Says the day with the first time of each day but today.
struct Days<'a> {
    voice: &'a Voice<'a>,
    last: Day,
}

impl<'a> Days<'a> {
    fn of(voice: &'a Voice<'a>) -> Self {
        Self {
            voice,
            last: voice.now.day(),
        }
    }

    fn time(&mut self, at: LocalTime, sure: Sure) -> String {
        let day = sure.round(at).day();
        if day == self.last {
            return self.voice.formats.clock(at, sure);
        }
        self.last = day;
        self.voice.time(at, sure)
    }
}

/// Whole hours, so few that their words keep clear of each other.
fn hours(voice: &Voice<'_>, start: LocalTime, end: LocalTime) -> Vec<Mark> {
    let label = |at| voice.formats.clock(at, Sure::Known);
    let is_short = label(start).chars().count() < 6;
    let most = if is_short { 5 } else { 3 };
    let step_s = HOUR_STEPS
        .into_iter()
        .map(|hours| hours * HOUR_S)
        .find(|step_s| end.since_s(start) / step_s < most)
        .unwrap_or(24 * HOUR_S);
    let mut ticks = Vec::new();
    let mut at = start.ceil_to_s(step_s);
    while at <= end {
        ticks.push(Mark {
            at: seconds(at, start),
            label: label(at),
        });
        at = at.plus_s(step_s);
    }
    ticks
}

/// A row for each quarter of an hour, or each hour where the plot is long.
fn table(voice: &Voice<'_>, points: &[Point]) -> TableView {
    let words = &voice.strings.tonight.course;
    let degrees = voice.formats.degrees;
    let unit = |name: &str| {
        let unit = (voice.formats.units.degrees)("", degrees);
        format!("{name}, {}", unit.trim())
    };
    let cell = |celsius: f64| voice.formats.number(degrees.from_c(celsius).round(), 0);
    let span_s = points
        .first()
        .zip(points.last())
        .map_or(0, |(first, last)| last.at.since_s(first.at));
    let step_s = if 4 * HOUR_S < span_s {
        HOUR_S
    } else {
        HOUR_S / 4
    };
    let mut rows = Vec::new();
    let mut days = Days::of(voice);
    let mut next = None;
    for point in points {
        if next.is_none_or(|next| next <= point.at) {
            next = Some(point.at.plus_s(1).ceil_to_s(step_s));
            rows.push(vec![
                days.time(point.at, Sure::Known),
                cell(point.store_c),
                point.pot_c.map(cell).unwrap_or_default(),
            ]);
        }
    }
    TableView {
        caption: words.heading.to_owned(),
        heads: vec![words.time.to_owned(), unit(words.store), unit(words.pot)],
        rows,
    }
}
