//! A belief put away, so that the app need not walk the whole diary each time it is opened.
//!
//! What is kept is the newest midnight without a pot in, as bytes, little end first: what each member
//! carries, and the reports that are doubted. It is taken up again only where the fingerprint of all
//! that came before is the same; whatever else is in the bytes, the answer is that of a walk from the
//! start.

use super::belief::{Mark, Replay};
use super::digest::Digest;
use super::doubt::{Believed, Doubt, Report};
use super::ensemble::{Ensemble, column};
use super::noise::{Noise, Purpose};
use super::prior::MULTIPLIERS;
use super::road::Past;
use super::{Band, Settings};
use crate::journal::Felt;
use crate::local_time::{Day, LocalTime};

/// First of the bytes: the form they are in.
const FORM: u64 = 0x0004_5344_444F_5544;
/// More members, and more doubts, are not read.
const MOST: u64 = 100_000;
/// A time that never comes.
const NEVER: i64 = i64::MAX;

/// The columns that a member carries over midnight: all but what only a pot has, what midnight draws
/// anew, what follows from the others, and dishes that are as they were drawn.
fn columns(ensemble: &Ensemble) -> Vec<usize> {
    let pot = column::POT_C..=column::SEEN_DONE;
    let day = column::SKY..=column::LOSS_DAY;
    let of_pot = column::CONTACT_POT..=column::DRY;
    let factor = column::FACTOR..column::FACTOR + MULTIPLIERS;
    let is_left_out = |column: &usize| {
        pot.contains(column)
            || day.contains(column)
            || of_pot.contains(column)
            || factor.contains(column)
            || !ensemble.is_handed_on(*column)
    };
    (0..column::COUNT)
        .filter(|column| !is_left_out(column))
        .collect()
}

impl Replay {
    /// The newest belief kept, as bytes to be put away; `None` where there is none yet.
    pub fn kept(&self) -> Option<Vec<u8>> {
        self.kept_by(Day(i32::MAX))
    }

    /// The newest belief kept of the midnight that begins `day`, or of one before; likewise.
    pub fn kept_by(&self, day: Day) -> Option<Vec<u8>> {
        let mut marks = self.marks.range(..=day).rev();
        let (day, mark) = marks.find(|(_, mark)| mark.past.pot.is_none())?;
        let past = &mark.past;
        let ensemble = &past.ensemble;
        let mut out = Vec::new();
        let mut put = |word: u64| out.extend_from_slice(&word.to_le_bytes());
        put(FORM);
        put(mark.fingerprint.value());
        put(i64::from(day.0).cast_unsigned());
        put(past.epoch as u64);
        put(u64::from(ensemble.indoors));
        put(ensemble.cooked);
        put(ensemble.members() as u64);
        for column in columns(ensemble) {
            ensemble
                .column(column)
                .iter()
                .for_each(|value| put(value.to_bits()));
        }
        ensemble
            .weight
            .iter()
            .for_each(|weight| put(weight.to_bits()));
        put(past.doubts.len() as u64);
        for doubt in &past.doubts {
            put(doubt.at.0.cast_unsigned());
            put(doubt.report.number().cast_unsigned());
            put(match doubt.report {
                Report::Reading { store_c } => store_c.to_bits(),
                Report::Felt(felt) => u64::from(felt == Felt::Hot),
                Report::BoiledAt(at)
                | Report::NotBoiledBy(at)
                | Report::DoneAt(at)
                | Report::NotDoneBy(at) => at.0.cast_unsigned(),
            });
            let (kind, words) = match doubt.believed {
                Believed::StoreC(band) => (0, band.map(f64::to_bits)),
                Believed::Time(band) => {
                    let word = |at: Option<LocalTime>| at.map_or(NEVER, |at| at.0).cast_unsigned();
                    (1, band.map(word))
                }
            };
            put(kind);
            words.quantiles().into_iter().for_each(&mut put);
        }
        Some(out)
    }

    /// One that begins where another left off. Bytes that make no sense are none.
    pub fn restored(settings: Settings, bytes: &[u8]) -> Self {
        let mut replay = Self::new(settings);
        replay.take_up(bytes);
        replay
    }

    /// Has it begin where another left off, too, if that fits. Bytes that make no sense are none.
    pub fn take_up(&mut self, bytes: &[u8]) {
        if let Some((day, mark)) = read(self.settings, bytes) {
            self.marks.entry(day).or_insert(mark);
        }
    }
}

fn read(settings: Settings, bytes: &[u8]) -> Option<(Day, Mark)> {
    let (chunks, rest) = bytes.as_chunks::<8>();
    let mut words = chunks.iter().map(|chunk| u64::from_le_bytes(*chunk));
    if words.next()? != FORM || !rest.is_empty() {
        return None;
    }
    let fingerprint = Digest::of_value(words.next()?);
    let day = Day(i32::try_from(words.next()?.cast_signed()).ok()?);
    let epoch = usize::try_from(words.next()?).ok()?;
    let indoors = words.next()? == 1;
    let cooked = words.next()?;
    let members = usize::try_from(words.next().filter(|members| *members <= MOST)?).ok()?;
    if members != settings.members {
        return None;
    }
    let mut ensemble = Ensemble::new(members, day.start());
    ensemble.indoors = indoors;
    ensemble.draw_dishes(Noise::new(settings.seed, Purpose::Dish));
    ensemble.cooked = cooked;
    for column in columns(&ensemble) {
        for value in ensemble.column_mut(column) {
            *value = f64::from_bits(words.next()?);
        }
    }
    for weight in &mut ensemble.weight {
        *weight = f64::from_bits(words.next()?);
    }
    ensemble.renew_factors();
    ensemble.begin_day(day, settings.seed);
    let count = words.next().filter(|count| *count <= MOST)?;
    let mut doubts = Vec::new();
    for _ in 0..count {
        doubts.push(read_doubt(&mut words)?);
    }
    let past = Past {
        ensemble,
        pot: None,
        doubts,
        epoch,
    };
    let mark = Mark { fingerprint, past };
    words.next().is_none().then_some((day, mark))
}

fn read_doubt(words: &mut impl Iterator<Item = u64>) -> Option<Doubt> {
    let at = LocalTime(words.next()?.cast_signed());
    let (kind, value) = (words.next()?, words.next()?);
    let seen_at = LocalTime(value.cast_signed());
    let report = match kind {
        0 => Report::Reading {
            store_c: f64::from_bits(value),
        },
        1 => Report::Felt(if value == 1 { Felt::Hot } else { Felt::Cold }),
        2 => Report::BoiledAt(seen_at),
        3 => Report::NotBoiledBy(seen_at),
        4 => Report::DoneAt(seen_at),
        5 => Report::NotDoneBy(seen_at),
        _ => return None,
    };
    let is_time = words.next()? == 1;
    let band = Band {
        p05: words.next()?,
        p10: words.next()?,
        p25: words.next()?,
        p50: words.next()?,
        p75: words.next()?,
        p90: words.next()?,
        p95: words.next()?,
    };
    let believed = if is_time {
        let time = |word: u64| Some(LocalTime(word.cast_signed())).filter(|at| at.0 != NEVER);
        Believed::Time(band.map(time))
    } else {
        Believed::StoreC(band.map(f64::from_bits))
    };
    Some(Doubt {
        at,
        report,
        believed,
    })
}
