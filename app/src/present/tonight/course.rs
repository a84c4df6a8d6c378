//! The plot of the evening: the store, the pot, and what happens when.

use model::local_time::{Day, LocalTime};
use model::odds::{Band, CourseBand, Odds};
use model::tonight::{Answer, Forecast, Point};

use super::verdict::Question;
use super::{Voice, ended, seconds};
use crate::chart::{LineChartView, LineStyle, Mark, Series};
use crate::components::TableView;
use crate::i18n::format::Sure;
use crate::order::in_order;

/// When something happens, and how closely that is told.
type Happens = Option<(LocalTime, Sure)>;

/// What the plot marks beside the pot's way in and the meal.
#[derive(Debug, Clone, Copy)]
struct Marked {
    boils: Happens,
    ready: Happens,
    /// Where it begins, if something went before.
    now: Happens,
}

/// Of a pot that is in, the time that is past takes this share at most of what is to come.
const PAST_SHARE: i64 = 3;

const HOUR_S: i64 = 3600;

/// So long before the pot goes in the plot begins.
const BEFORE_S: i64 = HOUR_S / 4;

/// Hours from one tick to the next.
const HOUR_STEPS: [i64; 5] = [1, 2, 3, 6, 12];

/// The plot of an answer; none where there are no points. Its x is seconds since the first.
pub fn course(voice: &Voice<'_>, question: &Question, answer: &Answer) -> Option<LineChartView> {
    let told = &answer.as_told;
    let points = lately(&told.points, question.put_in);
    let points: Vec<Place> = points.iter().map(Place::of_point).collect();
    let (first, last) = (points.first()?, points.last()?);
    let store = |celsius| voice.formats.temperature(celsius, question.store_sure);
    let sentence = (voice.strings.tonight.course.sentence)(
        &store(first.store.1),
        &store(last.store.1),
        &voice.time(last.at, Sure::Near),
        &voice.hottest(told.hottest_c, question.boiling_c),
    );
    let ends = |when: fn(&Forecast) -> Option<LocalTime>| {
        when(&answer.against).zip(when(&answer.in_favour))
    };
    let seen = question.meal.outcome;
    let boils = told_at(
        question,
        seen.boiled_at,
        told.boils_at,
        ends(|forecast| forecast.boils_at),
    );
    let ready = told_at(
        question,
        seen.done_at,
        told.ready_at,
        ends(|forecast| forecast.ready_at),
    );
    let marked = Marked {
        boils,
        ready,
        now: None,
    };
    Some(drawn(voice, question, &points, marked, sentence))
}

/// The times that the plot by the odds is worked out for, over the span of an answer's points that
/// is yet to come.
pub fn times(question: &Question, answer: &Answer, now: LocalTime) -> Option<Vec<LocalTime>> {
    let points = lately(&answer.as_told.points, question.put_in);
    let (first, last) = (points.first()?.at.max(now), points.last()?.at);
    if last <= first {
        return None;
    }
    let step_s = if 6 * HOUR_S < last.since_s(first) {
        HOUR_S / 2
    } else {
        HOUR_S / 6
    };
    let mut times = vec![first];
    let mut at = first.plus_s(1).ceil_to_s(step_s);
    while at < last {
        if first < question.put_in
            && times.last().is_some_and(|before| *before < question.put_in)
            && question.put_in < at
        {
            times.push(question.put_in);
        }
        times.push(at);
        at = at.plus_s(step_s);
    }
    times.push(last);
    Some(times)
}

/// The plot by the odds: the middle of what may be, and between what 8 of 10 evenings lie. What is
/// past is left empty: the figures as they stand don't know what was learned since, and would not
/// meet the rest.
pub fn banded(
    voice: &Voice<'_>,
    question: &Question,
    odds: &Odds,
    bands: &[CourseBand],
) -> Option<LineChartView> {
    let seen = question.meal.outcome;
    let (first, last) = bands.first().zip(bands.last())?;
    let shown = first.at.plus_s(-last.at.since_s(first.at) / PAST_SHARE);
    let start = question.put_in.max(shown);
    let past = (question.is_in && start < first.at).then(|| Place::unknown(start));
    let is_past = past.is_some();
    let now = (first.at, Sure::Known);
    let (first, last) = (Place::of_band(first), Place::of_band(last));
    let points: Vec<Place> = past
        .into_iter()
        .chain(bands.iter().map(Place::of_band))
        .collect();
    let sure = |(low, _, high): Span| Sure::of_band_c(high - low);
    let store = |span: Span| voice.formats.temperature(span.1, sure(span));
    let sentence = (voice.strings.tonight.chances.store_goes)(
        &store(first.store),
        &store(last.store),
        &voice.time(last.at, Sure::Near),
    );
    let end = |celsius| voice.formats.temperature(celsius, Sure::Near);
    let between =
        (voice.strings.tonight.chances.store_between)(&end(last.store.0), &end(last.store.2));
    let by_odds = |seen, band: Band<Option<LocalTime>>| {
        told_at(question, seen, band.p50, band.p10.zip(band.p90))
    };
    let marked = Marked {
        boils: by_odds(seen.boiled_at, odds.boils_at),
        ready: by_odds(seen.done_at, odds.ready_at),
        now: is_past.then_some(now),
    };
    let mut said = vec![ended(sentence), ended(between)];
    said.extend(is_past.then(|| voice.strings.tonight.course.no_past.to_owned()));
    Some(drawn(voice, question, &points, marked, said.join(" ")))
}

/// When something was seen to happen, or is told to, as closely as the words above the plot tell it.
fn told_at(
    question: &Question,
    seen: Option<LocalTime>,
    told: Option<LocalTime>,
    ends: Option<(LocalTime, LocalTime)>,
) -> Happens {
    let seen = seen.map(|at| (at, Sure::Known));
    let told = told.map(|at| {
        if question.is_in {
            Voice::told(at, Sure::Near, question.stay())
        } else {
            Voice::told_by(at, ends, question.stay())
        }
    });
    seen.or(told)
}

/// Lower end, middle, upper end. [°C]
type Span = (f64, f64, f64);

/// Store and pot at a time.
struct Place {
    at: LocalTime,
    store: Span,
    /// Not a number where no pot is in.
    pot: Span,
}

impl Place {
    fn of_point(point: &Point) -> Self {
        let one = |celsius| (celsius, celsius, celsius);
        Self {
            at: point.at,
            store: one(point.store_c),
            pot: one(point.pot_c.unwrap_or(f64::NAN)),
        }
    }

    fn unknown(at: LocalTime) -> Self {
        let store = (f64::NAN, f64::NAN, f64::NAN);
        Self {
            at,
            store,
            pot: store,
        }
    }

    fn of_band(course: &CourseBand) -> Self {
        let span = |band: Band<f64>| (band.p10, band.p50, band.p90);
        Self {
            at: course.at,
            store: span(course.store_c),
            pot: course.pot_c.map_or((f64::NAN, f64::NAN, f64::NAN), span),
        }
    }

    fn is_wide(&self) -> bool {
        self.store.0 < self.store.2
    }
}

fn drawn(
    voice: &Voice<'_>,
    question: &Question,
    points: &[Place],
    marked: Marked,
    sentence: String,
) -> LineChartView {
    let words = &voice.strings.tonight.course;
    let (start, end) = points
        .first()
        .zip(points.last())
        .map_or((voice.now, voice.now), |(first, last)| (first.at, last.at));
    let degrees = voice.formats.degrees;
    let series = |label: &str, span: fn(&Place) -> Span, style| {
        let x = |place: &Place| seconds(place.at, start);
        let bands = points
            .iter()
            .filter(|place| place.is_wide() && !span(place).1.is_nan());
        Series {
            label: label.to_owned(),
            points: points
                .iter()
                .map(|place| (x(place), degrees.from_c(span(place).1)))
                .collect(),
            band: bands
                .map(|place| {
                    let (low, _, high) = span(place);
                    (x(place), degrees.from_c(low), degrees.from_c(high))
                })
                .collect(),
            style,
        }
    };
    let known = |celsius| voice.formats.temperature(celsius, Sure::Known);
    LineChartView {
        name: words.heading.to_owned(),
        series: vec![
            series(words.store, |place| place.store, LineStyle::Store),
            series(words.pot, |place| place.pot, LineStyle::Pot),
        ],
        levels: vec![Mark {
            at: degrees.from_c(question.boiling_c),
            label: (words.boils_at)(&known(question.boiling_c)),
        }],
        moments: moments(voice, question, marked, (start, end)),
        x_ticks: hours(voice, start, end),
        y_unit: (voice.formats.units.degrees)("", degrees).trim().to_owned(),
        sentence: ended(sentence),
        table: (
            voice.strings.common.show_table.to_owned(),
            table(voice, points),
        ),
    }
}

/// The points from shortly before the pot goes in on: what comes before would squeeze the rest.
fn lately(points: &[Point], put_in: LocalTime) -> Vec<Point> {
    let from = put_in.plus_s(-BEFORE_S);
    points
        .iter()
        .filter(|point| from <= point.at)
        .copied()
        .collect()
}

fn moments(
    voice: &Voice<'_>,
    question: &Question,
    Marked { boils, ready, now }: Marked,
    (start, end): (LocalTime, LocalTime),
) -> Vec<Mark> {
    let words = &voice.strings.tonight.course;
    let done = ready.filter(|(at, _)| boils.is_none_or(|(boils_at, _)| *at != boils_at));
    let known = |at| Some((at, Sure::Known));
    let moments = [
        (known(question.put_in), words.in_at),
        (boils, words.boils),
        (done, words.done),
        (now, words.now),
        (known(question.meal.eat_at), words.eaten),
    ]
    .into_iter()
    .filter_map(|(happens, say)| {
        let (at, sure) = happens.filter(|(at, _)| start <= *at && *at <= end)?;
        Some((at, say, sure))
    });
    let mut before: Option<(String, LocalTime)> = None;
    in_order(moments, |a, b| a.0.cmp(&b.0))
        .into_iter()
        .map(|(at, say, sure)| {
            // Short, as there is little room; the sentence under the plot says the day.
            let time = voice.formats.clock(at, sure);
            // What is told with one time stands at one place.
            let place = match &before {
                Some((told, place)) if *told == time => *place,
                _ => at,
            };
            let label = say(&time);
            before = Some((time, place));
            Mark {
                at: seconds(place, start),
                label,
            }
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
fn table(voice: &Voice<'_>, points: &[Place]) -> TableView {
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
    let is_wide = points.iter().any(Place::is_wide);
    let mut rows = Vec::new();
    let mut days = Days::of(voice);
    let mut next = None;
    for point in points.iter().filter(|point| !point.store.1.is_nan()) {
        if next.is_none_or(|next| next <= point.at) {
            next = Some(point.at.plus_s(1).ceil_to_s(step_s));
            let mut row = vec![days.time(point.at, Sure::Known), cell(point.store.1)];
            if is_wide {
                row.extend([point.store.0, point.store.2].map(cell));
            }
            let pot_c = Some(point.pot.1).filter(|pot_c| !pot_c.is_nan());
            row.push(pot_c.map(cell).unwrap_or_default());
            rows.push(row);
        }
    }
    let mut heads = vec![words.time.to_owned(), unit(words.store)];
    if is_wide {
        let chances = &voice.strings.tonight.chances;
        let ends = [chances.store_from, chances.store_to];
        heads.extend(ends.map(unit));
    }
    heads.push(unit(words.pot));
    TableView {
        caption: words.heading.to_owned(),
        heads,
        rows,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::tests::english;
    use crate::state::plan::Plan;
    use crate::state::sample::{at, pot};

    #[test]
    fn what_is_told_with_one_time_stands_at_one_place() {
        let (strings, formats) = english();
        let now = at(17, 0);
        let voice = Voice {
            strings,
            formats: &formats,
            now,
        };
        let question = Question {
            meal: Plan::start(2, now).meal(pot(), 18.0, now),
            put_in: now,
            is_in: false,
            boiling_c: 95.0,
            store_sure: Sure::Near,
            sky_is_logged: true,
            lacks_sun: false,
        };
        let marks = |ready: LocalTime| {
            let marked = Marked {
                boils: Some((at(17, 28), Sure::Near)),
                ready: Some((ready, Sure::Near)),
                now: None,
            };
            let marks = moments(&voice, &question, marked, (now, at(23, 0)));
            marks
                .into_iter()
                .map(|mark| (mark.label, mark.at))
                .collect::<Vec<_>>()
        };
        let [_, (boils, boils_s), (done, done_s), ..] = &*marks(at(17, 31)) else {
            panic!("too few");
        };
        assert_eq!((&**boils, &**done), ("boils 17:30", "done 17:30"));
        assert!((boils_s - done_s).abs() < 0.5, "{boils_s} {done_s}");
        let [_, (_, boils_s), (done, done_s), ..] = &*marks(at(17, 36)) else {
            panic!("too few");
        };
        assert_eq!(done, "done 17:35");
        assert!(boils_s + 60.0 < *done_s);
    }
}
