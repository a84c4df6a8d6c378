//! A test run that goes on: its clock, its readings, its pots, its plot.

use model::bench::{Foreseen, Given, PotIn, RunKind};
use model::local_time::LocalTime;
use model::tonight::Rig;

use crate::chart::{LineChartView, LineStyle, Mark, Series};
use crate::components::{EntryView, Icon, TableView};
use crate::i18n::format::Sure;
use crate::present::bench::timer::Timer;
use crate::present::bench::typing::Channel;
use crate::present::tonight::Voice;
use crate::state::bench::{Reading, RunReadings, TestRun};

/// Between readings where nothing can be foreseen, without a pot and with one. \[s\]
const EVERY_S: f64 = 600.0;
const EVERY_POT_S: f64 = 120.0;
/// Readings that are listed at first.
pub const LISTED: usize = 12;
/// A reading this near the foreseen one is as the cooker is described. \[K\]
const AS_DESCRIBED_K: f64 = 3.0;

/// What this run should be like, from its first reading on; `None` where nothing was read of the
/// store, or the cooker can't be put together.
pub fn foreseen(rig: &Rig, run: &TestRun) -> Option<Foreseen> {
    let first = run
        .typed()
        .iter()
        .find(|reading| reading.store_c.is_some())?;
    let since_s = run.since_start_s(first.at);
    let last = |channel: Channel| {
        let mut readings = run.typed().iter().rev();
        readings.find_map(|reading| channel.of(reading))
    };
    let air_c = last(Channel::Air).or(run.about.air_c).unwrap_or(20.0);
    let read =
        |reading: &Reading| Some((run.since_start_s(reading.at) - since_s, reading.heater_w?));
    let mut heater: Vec<(f64, f64)> = run.typed().iter().filter_map(read).collect();
    if heater.is_empty() {
        let usual_w = match run.about.kind {
            RunKind::HeatUp => rig.full_sun_w(),
            RunKind::CoolDown | RunKind::Boil | RunKind::Free => 0.0,
        };
        heater.push((0.0, run.about.heater_w.unwrap_or(usual_w)));
    }
    let pots: Vec<PotIn> = run
        .pots
        .iter()
        .map(|pot| PotIn {
            in_s: (pot.in_s - since_s).max(0.0),
            out_s: pot.out_s.map(|out_s| (out_s - since_s).max(0.0)),
            start_c: pot.start_c.or_else(|| first_of_pot(run, pot)),
            ..*pot
        })
        .collect();
    let mut foreseen = rig
        .foreseen(&Given {
            kind: run.about.kind,
            store_c: first.store_c?,
            air_c,
            heater: &heater,
            pots: &pots,
        })
        .ok()?;
    for sample in &mut foreseen.samples {
        sample.time_s += since_s;
    }
    foreseen.length_s += since_s;
    foreseen.boils_s = foreseen.boils_s.map(|boils_s| boils_s + since_s);
    Some(foreseen)
}

/// The pot's first reading within minutes of its going in. \[°C\]
fn first_of_pot(run: &TestRun, pot: &PotIn) -> Option<f64> {
    let near = pot.in_s..=pot.in_s + 300.0;
    run.typed()
        .iter()
        .find(|reading| reading.pot_c.is_some() && near.contains(&run.since_start_s(reading.at)))
        .and_then(|reading| reading.pot_c)
}

/// The reading of a pot that is seen to boil: nobody has to read a thermometer for that.
pub fn boils(boiling_c: f64, now: LocalTime) -> Reading {
    Reading {
        // As a thermometer shows it.
        pot_c: Some((10.0 * boiling_c).round() / 10.0),
        ..Reading::none(now)
    }
}

/// How long to wait after the last reading. \[s\]
pub fn every_s(run: &TestRun, foreseen: Option<&Foreseen>) -> f64 {
    let last = last_read(run);
    match foreseen {
        Some(foreseen) => foreseen.every_s(run.about.kind, run.since_start_s(last)),
        None if run.pot_open().is_some() => EVERY_POT_S,
        None => EVERY_S,
    }
}

/// When something was read last; where nothing was, or a pot went in or came out since, then.
pub(super) fn last_read(run: &TestRun) -> LocalTime {
    let last = run.typed().last().map_or(run.started, |reading| reading.at);
    let pot_s = run.pots.last().map(|pot| pot.out_s.unwrap_or(pot.in_s));
    pot_s.map_or(last, |pot_s| last.max(run.at(pot_s)))
}

/// The clock of a run that goes on.
pub fn timer(run: &TestRun, foreseen: Option<&Foreseen>, now: LocalTime) -> Timer {
    Timer::new(last_read(run), every_s(run, foreseen), now)
}

/// How the clock stands, in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ClockText {
    /// Before the large text, or nothing.
    pub before: String,
    /// What is read from afar: `7:05`, or that it is time.
    pub large: String,
    /// Sentences under it.
    pub lines: Vec<String>,
    /// Until when the run goes on; nothing where it can't be foreseen.
    pub ends: String,
    /// Whether it is time to read.
    pub is_due: bool,
}

/// The clock in words; `away` is since when the screen was off, where it has just come back. Of what
/// `is_told_later` nothing is late.
pub fn clock(
    voice: &Voice<'_>,
    run: &TestRun,
    foreseen: Option<&Foreseen>,
    timer: &Timer,
    (away, is_told_later): (Option<LocalTime>, bool),
) -> ClockText {
    let words = &voice.strings.runs.live;
    let formats = voice.formats;
    #[expect(clippy::cast_precision_loss, reason = "some days at most")]
    let span = |seconds: i64| formats.duration(seconds as f64, Sure::Known);
    let is_left = timer.is_left() || is_told_later && timer.is_due();
    let is_due = timer.is_due() && !is_left;
    let mut lines = Vec::new();
    if is_left {
        let last = voice.time(last_read(run), Sure::Known);
        lines.push((words.left_alone)(&last));
    } else if timer.is_late() {
        lines.push((words.late)(&span(-timer.left_s)));
    } else if !timer.is_due() {
        let due = voice.time(timer.due, Sure::Known);
        lines.push((words.every)(&span(timer.every_s), &due));
    }
    let missed = away.filter(|_| !is_left);
    let missed = missed.map_or(0, |away| timer.missed_since(away));
    if missed == 1 {
        lines.push(words.missed_one.to_owned());
    } else if 1 < missed {
        lines.push((words.missed)(&missed.to_string()));
    }
    let waits_for_pot = run.about.kind == RunKind::Boil && run.pots.is_empty();
    let ends = foreseen.map(|foreseen| {
        if waits_for_pot {
            return words.ends_with_pot.to_owned();
        }
        let end = run.at(foreseen.length_s);
        let sure = Sure::of_band_s(0.4 * foreseen.length_s);
        if voice.now < end {
            let length = formats.duration(foreseen.length_s, sure);
            (words.ends)(&voice.about(end, sure), &length)
        } else if too_few(voice, run).is_some() {
            String::new()
        } else {
            words.has_told.to_owned()
        }
    });
    ClockText {
        before: if timer.is_due() { "" } else { words.next_in }.to_owned(),
        large: if is_left {
            words.when_you_can.to_owned()
        } else if is_due {
            words.now.to_owned()
        } else {
            timer.countdown()
        },
        lines,
        ends: ends.unwrap_or_default(),
        is_due,
    }
}

/// A fit needs so many readings of store or pot.
const LEAST_READINGS: usize = 5;

/// What is said as long as there are too few readings to find anything from.
pub fn too_few(voice: &Voice<'_>, run: &TestRun) -> Option<String> {
    let read = run.typed().iter();
    let n_read = read
        .filter(|reading| reading.store_c.is_some() || reading.pot_c.is_some())
        .count();
    let is_few = matches!(run.readings, RunReadings::Typed(_)) && n_read < LEAST_READINGS;
    is_few.then(|| {
        let words = &voice.strings.runs.live;
        let (least, read) = (LEAST_READINGS.to_string(), n_read.to_string());
        (words.too_few)(&least, &read)
    })
}

/// Under the name of the run.
pub fn line(voice: &Voice<'_>, run: &TestRun) -> String {
    let words = &voice.strings.runs.live;
    let count = run.n_rows();
    let time = |at| voice.time(at, Sure::Known);
    match run.ended {
        None => (words.since)(&time(run.started), count),
        Some(ended) => (words.was)(&time(run.started), &time(ended), count),
    }
}

/// What was read, in words: `Store 182 °C · Pot 64 °C`.
pub fn read(voice: &Voice<'_>, reading: &Reading) -> String {
    let parts: Vec<String> = Channel::ALL
        .into_iter()
        .filter_map(|channel| {
            let value = value(voice, channel, channel.of(reading)?);
            Some((voice.strings.runs.live.value)(
                channel.name(voice.strings),
                &value,
            ))
        })
        .collect();
    parts.join(" · ")
}

fn value(voice: &Voice<'_>, channel: Channel, value: f64) -> String {
    match channel {
        Channel::Power => voice.formats.watts(value),
        Channel::Store | Channel::Pot | Channel::Air => {
            voice.formats.temperature(value, Sure::Known)
        }
    }
}

/// The readings, the latest first, with when each was taken.
pub fn rows(voice: &Voice<'_>, run: &TestRun) -> Vec<(LocalTime, EntryView)> {
    let row = |reading: &Reading| EntryView {
        when: voice.time(reading.at, Sure::Known),
        title: read(voice, reading),
        detail: String::new(),
        icon: Icon::Thermometer,
    };
    run.typed()
        .iter()
        .rev()
        .map(|reading| (reading.at, row(reading)))
        .collect()
}

/// What is said in place of the readings where they come from a text.
pub fn of_text(voice: &Voice<'_>, run: &TestRun) -> Option<String> {
    let RunReadings::File(text) = &run.readings else {
        return None;
    };
    let count = voice.formats.number(f64::from(text.rows), 0);
    let span = voice.formats.duration(text.span_s, Sure::Known);
    Some((voice.strings.runs.live.of_text)(&count, &span))
}

/// The pots in words, the latest first, each with its place in the run.
pub fn pots(voice: &Voice<'_>, run: &TestRun) -> Vec<(usize, String)> {
    let words = &voice.strings.runs.live;
    let time = |since_s: f64| voice.time(run.at(since_s), Sure::Known);
    let say = |pot: &PotIn| {
        let what = (words.water_lid)(
            &voice.formats.litres(pot.water_kg),
            (voice.strings.tables.pot_lid)(pot.lid),
        );
        match pot.out_s {
            None => (words.pot_in_since)(&what, &time(pot.in_s)),
            Some(out_s) => {
                let was = (words.pot_was_in)(&what, &time(pot.in_s), &time(out_s));
                match pot.left_kg {
                    Some(left_kg) => {
                        format!("{was}, {}", (words.left)(&voice.formats.mass(left_kg)))
                    }
                    None => was,
                }
            }
        }
    };
    let pots = run.pots.iter().enumerate().rev();
    pots.map(|(place, pot)| (place, say(pot))).collect()
}

const HOUR_S: f64 = 3600.0;
/// From one tick of the plot to the next. \[s\]
const TICKS_S: [f64; 10] = [
    60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, HOUR_S, 7200.0, 14_400.0, 43_200.0,
];

/// Ticks over so many seconds: a handful, each with how long since the start.
pub fn ticks(voice: &Voice<'_>, length_s: f64) -> Vec<Mark> {
    let step_s = TICKS_S
        .into_iter()
        .find(|step_s| length_s / step_s <= 3.6)
        .unwrap_or(86_400.0);
    let mut ticks = Vec::new();
    let mut at = 0.0;
    while at <= length_s + 1.0 {
        ticks.push(Mark {
            at,
            label: voice.formats.duration(at, Sure::Known),
        });
        at += step_s;
    }
    ticks
}

/// The plot of what was read beside what the described cooker would show; `None` before anything
/// was read of store or pot.
pub fn plot(
    voice: &Voice<'_>,
    run: &TestRun,
    foreseen: Option<&Foreseen>,
    boiling_c: Option<f64>,
) -> Option<LineChartView> {
    let words = &voice.strings.runs.live;
    let formats = voice.formats;
    let read = |channel: Channel| -> Vec<(f64, f64)> {
        let point = |reading: &Reading| {
            let value = channel.of(reading)?;
            Some((run.since_start_s(reading.at), channel.shown(formats, value)))
        };
        run.typed().iter().filter_map(point).collect()
    };
    // Dots of both under one name: which is which is seen by the line they lie near.
    let mut dots = read(Channel::Store);
    dots.extend(read(Channel::Pot));
    let last_read = run
        .typed()
        .iter()
        .rev()
        .find(|reading| reading.store_c.is_some() || reading.pot_c.is_some())?;
    let end_s = run.since_start_s(last_read.at);
    // As far ahead as there is something to compare, and some more, so that the way can be seen.
    let until_s = if run.ended.is_some() {
        end_s
    } else {
        (1.25 * end_s).max(900.0)
    };
    let mut series = Vec::new();
    let mut add = |label: &str, points: Vec<(f64, f64)>, style| {
        if points.iter().any(|point| !point.1.is_nan()) {
            series.push(Series {
                label: label.to_owned(),
                points,
                band: Vec::new(),
                style,
            });
        }
    };
    add(words.read, dots, LineStyle::Measured);
    if let Some(foreseen) = foreseen {
        let line = |of: fn(&model::bench::Sample) -> Option<f64>| {
            let samples = foreseen.samples.iter();
            samples
                .filter(|sample| sample.time_s <= until_s)
                .map(|sample| {
                    let value = of(sample).map_or(f64::NAN, |c| formats.degrees.from_c(c));
                    (sample.time_s, value)
                })
                .collect::<Vec<_>>()
        };
        add(
            words.foreseen_store,
            line(|sample| sample.store_c),
            LineStyle::Store,
        );
        add(
            words.foreseen_pot,
            line(|sample| sample.pot_c),
            LineStyle::Pot,
        );
    }
    let moments = run.pots.iter().map(|pot| Mark {
        at: pot.in_s,
        label: words.pots.to_owned(),
    });
    let has_pot = !run.pots.is_empty();
    let known = |celsius| formats.temperature(celsius, Sure::Known);
    let levels = boiling_c.filter(|_| has_pot).map(|boiling_c| Mark {
        at: formats.degrees.from_c(boiling_c),
        label: (voice.strings.tonight.course.boils_at)(&known(boiling_c)),
    });
    Some(LineChartView {
        name: words.plot.to_owned(),
        series,
        levels: levels.into_iter().collect(),
        moments: moments.collect(),
        x_ticks: ticks(voice, until_s),
        y_unit: (formats.units.degrees)("", formats.degrees)
            .trim()
            .to_owned(),
        sentence: sentence(voice, run, foreseen),
        table: (
            voice.strings.common.show_table.to_owned(),
            table(voice, run),
        ),
    })
}

/// What was read last of the store, and how it lies to what was foreseen.
fn sentence(voice: &Voice<'_>, run: &TestRun, foreseen: Option<&Foreseen>) -> String {
    let words = &voice.strings.runs.live;
    let stores = run.typed().iter().rev();
    let last = stores
        .filter_map(|reading| Some((reading.at, reading.store_c?)))
        .next();
    let Some((at, store_c)) = last else {
        return String::new();
    };
    let shown = voice.formats.temperature(store_c, Sure::Known);
    let told = (words.sentence)(&shown, &voice.time(at, Sure::Known));
    let there = foreseen
        .and_then(|foreseen| foreseen.at(run.since_start_s(at)))
        .and_then(|sample| sample.store_c);
    // The line begins at the first reading, which tells nothing yet.
    let is_first = run.typed().iter().filter(|it| it.store_c.is_some()).count() < 2;
    let Some(there_c) = there.filter(|_| !is_first) else {
        return told;
    };
    let off_k = store_c - there_c;
    let difference = voice.formats.temperature_difference(off_k.abs());
    let lies = if off_k.abs() < AS_DESCRIBED_K {
        words.as_described.to_owned()
    } else if off_k > 0.0 {
        (words.above)(&difference)
    } else {
        (words.below)(&difference)
    };
    format!("{told} {lies}")
}

fn table(voice: &Voice<'_>, run: &TestRun) -> TableView {
    let words = &voice.strings.runs.live;
    let used: Vec<Channel> = Channel::ALL
        .into_iter()
        .filter(|channel| run.typed().iter().any(|it| channel.of(it).is_some()))
        .collect();
    let head = |channel: &Channel| {
        format!(
            "{}, {}",
            channel.name(voice.strings),
            channel.unit(voice.formats)
        )
    };
    let cell = |channel: &Channel, reading: &Reading| {
        channel.of(reading).map_or_else(String::new, |value| {
            voice.formats.field(channel.shown(voice.formats, value), 1)
        })
    };
    TableView {
        caption: words.readings.to_owned(),
        heads: std::iter::once(words.time.to_owned())
            .chain(used.iter().map(head))
            .collect(),
        rows: run
            .typed()
            .iter()
            .map(|reading| {
                std::iter::once(voice.time(reading.at, Sure::Known))
                    .chain(used.iter().map(|channel| cell(channel, reading)))
                    .collect()
            })
            .collect(),
    }
}

#[cfg(test)]
mod tests;
