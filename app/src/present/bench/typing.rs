//! Readings and pots while they are typed.

use model::bench::PotIn;
use model::local_time::LocalTime;
use model::pot::{Lid, Pot, PotSize};

use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::typed::{self, Mistake, Steps};
use crate::state::bench::{Reading, TestRun};
use crate::state::limits;
use crate::state::parse::ParseError;
use crate::state::plan::TimeOfDay;
use crate::state::refused::{Field, Wrong};

/// A number in a range, from what the field shows.
///
/// # Errors
///
/// [`Mistake`] of the field.
pub(super) fn filled(
    text: &str,
    field: Field,
    range: (f64, f64),
    from_shown: impl Fn(f64) -> f64,
) -> Result<f64, Mistake> {
    let shown = typed::number(text, field, (f64::MIN, f64::MAX))?;
    Ok(field.within(from_shown(shown), range)?)
}

/// The same of a field that may stay empty.
///
/// # Errors
///
/// As [`filled`].
pub(super) fn optional(
    text: &str,
    field: Field,
    range: (f64, f64),
    from_shown: impl Fn(f64) -> f64,
) -> Result<Option<f64>, Mistake> {
    match filled(text, field, range, from_shown) {
        Ok(value) => Ok(Some(value)),
        Err(mistake) if mistake.is_empty_field() => Ok(None),
        Err(mistake) => Err(mistake),
    }
}

/// A time of day that is typed: the latest such time that has been, and now where the field is empty.
/// Nothing is before `earliest`, where that is given: what would be has not come yet.
///
/// # Errors
///
/// [`Mistake`] of the field.
pub(super) fn time_typed(
    text: &str,
    field: Field,
    now: LocalTime,
    earliest: Option<LocalTime>,
) -> Result<LocalTime, Mistake> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(now);
    }
    let time = TimeOfDay::from_field(text).ok_or(Mistake::Text(field, ParseError::NotANumber))?;
    let at = time.last(now);
    // Of a time of today that is to come, the one of yesterday was not meant.
    let is_to_come = at.day() < now.day() && earliest.is_some_and(|earliest| at < earliest);
    if is_to_come {
        return Err(field.refuse(Wrong::InFuture).into());
    }
    Ok(at)
}

/// What is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Channel {
    /// The store's thermometer.
    Store,
    /// The pot's.
    Pot,
    /// The air's.
    Air,
    /// The heater's power.
    Power,
}

impl Channel {
    /// Every channel.
    pub const ALL: [Self; 4] = [Self::Store, Self::Pot, Self::Air, Self::Power];

    /// Its place in a draft.
    pub fn place(self) -> usize {
        self as usize
    }

    /// The field that holds it.
    pub fn field(self) -> Field {
        match self {
            Self::Store => Field::ReadingC,
            Self::Pot => Field::PotC,
            Self::Air => Field::AirC,
            Self::Power => Field::HeaterW,
        }
    }

    fn range(self) -> (f64, f64) {
        match self {
            Self::Store => limits::READING_C,
            Self::Pot => limits::POT_C,
            Self::Air => limits::AIR_C,
            Self::Power => limits::HEATER_W,
        }
    }

    /// Its name.
    pub fn name(self, strings: &Strings) -> &'static str {
        let words = &strings.runs.live;
        match self {
            Self::Store => words.store,
            Self::Pot => words.pot,
            Self::Air => words.air,
            Self::Power => words.power,
        }
    }

    /// Its unit, alone.
    pub fn unit(self, formats: &Formats) -> String {
        let unit = match self {
            Self::Power => (formats.units.watts)(""),
            Self::Store | Self::Pot | Self::Air => (formats.units.degrees)("", formats.degrees),
        };
        unit.trim().to_owned()
    }

    /// A value in the unit that is shown.
    pub fn shown(self, formats: &Formats, value: f64) -> f64 {
        match self {
            Self::Power => value,
            Self::Store | Self::Pot | Self::Air => formats.degrees.from_c(value),
        }
    }

    fn meant(self, formats: &Formats, shown: f64) -> f64 {
        match self {
            Self::Power => shown,
            Self::Store | Self::Pot | Self::Air => formats.degrees.to_c(shown),
        }
    }

    /// What a reading has of it.
    pub fn of(self, reading: &Reading) -> Option<f64> {
        match self {
            Self::Store => reading.store_c,
            Self::Pot => reading.pot_c,
            Self::Air => reading.air_c,
            Self::Power => reading.heater_w,
        }
    }

    fn put(self, reading: &mut Reading, value: Option<f64>) {
        match self {
            Self::Store => reading.store_c = value,
            Self::Pot => reading.pot_c = value,
            Self::Air => reading.air_c = value,
            Self::Power => reading.heater_w = value,
        }
    }

    /// How its field is stepped: from what was read last.
    pub fn steps(self, formats: &Formats, run: &TestRun) -> Steps {
        let last = run
            .typed()
            .iter()
            .rev()
            .find_map(|reading| self.of(reading));
        let usual = match self {
            Self::Store => 200.0,
            Self::Pot | Self::Air => 20.0,
            Self::Power => 100.0,
        };
        let (least, most) = self.range();
        Steps {
            by: if self == Self::Power { 5.0 } else { 1.0 },
            range: (self.shown(formats, least), self.shown(formats, most)),
            start: self.shown(formats, last.unwrap_or(usual)).round(),
        }
    }
}

/// A reading while it is typed.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ReadingDraft {
    /// When, as 'HH:MM'; empty means now.
    pub at: String,
    /// What each channel shows, in the order of [`Channel::ALL`].
    pub shows: [String; 4],
}

impl ReadingDraft {
    /// A reading that is changed.
    pub fn of(reading: &Reading, formats: &Formats) -> Self {
        let decimals = 1;
        Self {
            at: TimeOfDay::of(reading.at).field(),
            shows: Channel::ALL.map(|channel| {
                channel.of(reading).map_or_else(String::new, |value| {
                    formats.field(channel.shown(formats, value), decimals)
                })
            }),
        }
    }

    /// The reading of a run that began then. What is typed as a time of day is the latest such time
    /// that has been.
    ///
    /// # Errors
    ///
    /// [`Mistake`] of the first field that can't be taken.
    pub fn read(
        &self,
        formats: &Formats,
        now: LocalTime,
        started: LocalTime,
    ) -> Result<Reading, Mistake> {
        let at = time_typed(&self.at, Field::At, now, Some(started))?;
        self.shown(formats, at)
    }

    /// The reading in the place of a former one of a run that began then; the former one's seconds stay
    /// where its minute does.
    ///
    /// # Errors
    ///
    /// As [`read`](Self::read).
    pub fn changed(
        &self,
        formats: &Formats,
        now: LocalTime,
        (started, former): (LocalTime, &Reading),
    ) -> Result<Reading, Mistake> {
        let at = match self.at.trim() {
            "" => former.at,
            text => {
                let time = TimeOfDay::from_field(text)
                    .ok_or(Mistake::Text(Field::At, ParseError::NotANumber))?;
                let at = nearest(time, former.at, now);
                if at < started && now < time.on(now.day()) {
                    return Err(Field::At.refuse(Wrong::InFuture).into());
                }
                at
            }
        };
        self.shown(formats, at)
    }

    fn shown(&self, formats: &Formats, at: LocalTime) -> Result<Reading, Mistake> {
        let mut reading = Reading::none(at);
        for channel in Channel::ALL {
            let text = &self.shows[channel.place()];
            let value = optional(text, channel.field(), channel.range(), |shown| {
                channel.meant(formats, shown)
            })?;
            channel.put(&mut reading, value);
        }
        if reading.is_empty() {
            return Err(Mistake::Text(Field::ReadingC, ParseError::Empty));
        }
        Ok(reading)
    }
}

/// The time of this hour and minute that is nearest to a former one and has been; the former one
/// itself where its minute stays.
fn nearest(time: TimeOfDay, former: LocalTime, now: LocalTime) -> LocalTime {
    if TimeOfDay::of(former) == time {
        return former;
    }
    [-1, 0, 1]
        .map(|days| time.on(former.day().plus(days)))
        .into_iter()
        .filter(|at| *at <= now)
        .min_by_key(|at| at.since_s(former).abs())
        .unwrap_or(former)
}

/// A pot while it is typed.
#[derive(Debug, Clone, PartialEq)]
pub struct PotDraft {
    /// The vessel.
    pub pot: Pot,
    /// Its lid.
    pub lid: Lid,
    /// Litres of water.
    pub water: String,
    /// How warm it goes in; empty where nobody read it.
    pub start: String,
    /// When it went in, as 'HH:MM'; empty means now.
    pub at: String,
}

impl PotDraft {
    /// The household's own pot with a litre.
    pub fn new(pot: Pot, formats: &Formats) -> Self {
        Self {
            pot,
            lid: Lid::On,
            water: formats.field(1.0, 1),
            start: String::new(),
            at: String::new(),
        }
    }

    /// The pot, as it was put in.
    ///
    /// # Errors
    ///
    /// [`Mistake`] of the first field that can't be taken.
    pub fn read(&self, formats: &Formats, run: &TestRun, now: LocalTime) -> Result<PotIn, Mistake> {
        let at = time_typed(&self.at, Field::PutIn, now, Some(run.started))?;
        let water_kg = filled(&self.water, Field::WaterKg, limits::WATER_KG, |litres| {
            litres
        })?;
        let start_c = optional(&self.start, Field::StartC, limits::START_C, |shown| {
            formats.degrees.to_c(shown)
        })?;
        Ok(PotIn {
            in_s: run.since_start_s(at),
            out_s: None,
            pot: self.pot,
            lid: self.lid,
            water_kg,
            start_c,
            left_kg: None,
        })
    }

    /// Another size.
    pub fn resize(&mut self, size: PotSize) {
        self.pot.size = size;
    }
}

/// When a pot of a run came out, as typed; empty means now.
///
/// # Errors
///
/// [`Mistake`] where it is no time, or one to come.
pub fn out_at(text: &str, run: &TestRun, now: LocalTime) -> Result<LocalTime, Mistake> {
    time_typed(text, Field::OutAt, now, Some(run.started))
}

/// What is left in a pot by weighing, in litres; `None` where it was not weighed.
///
/// # Errors
///
/// [`Mistake`] where it is more than went in, or no number.
pub fn left(text: &str, pot: &PotIn) -> Result<Option<f64>, Mistake> {
    optional(text, Field::LeftKg, (0.0, pot.water_kg), |litres| litres)
}

#[cfg(test)]
mod tests {
    use model::local_time::Day;

    use super::*;
    use crate::present::tests::english;
    use crate::state::settings::Degrees;

    fn at(hour: i64, minute: i64) -> LocalTime {
        Day(20_000).at_s(hour * 3600 + minute * 60)
    }

    fn typed(store: &str, time: &str) -> ReadingDraft {
        ReadingDraft {
            at: time.to_owned(),
            shows: [
                store.to_owned(),
                String::new(),
                String::new(),
                String::new(),
            ],
        }
    }

    #[test]
    fn now_is_stamped_to_the_second() {
        let (_, formats) = english();
        let now = at(18, 5).plus_s(17);
        let reading = typed("182,5", "").read(&formats, now, now).unwrap();
        assert_eq!((reading.at, reading.store_c), (now, Some(182.5)));
        assert_eq!((reading.pot_c, reading.air_c), (None, None));
    }

    #[test]
    fn a_time_of_day_is_the_latest_that_has_been() {
        let (_, formats) = english();
        let read = |time: &str| {
            typed("180", time)
                .read(&formats, at(0, 20), at(-2, 0))
                .unwrap()
                .at
        };
        assert_eq!(read("00:10"), at(0, 10));
        assert_eq!(read("23:50"), at(23, 50).plus_s(-86_400));
    }

    #[test]
    fn a_time_to_come_is_said_to_be_one() {
        let (_, formats) = english();
        let (started, now) = (at(17, 0), at(18, 0));
        let read = |time: &str| typed("180", time).read(&formats, now, started);
        let to_come = Field::At.refuse(Wrong::InFuture);
        assert_eq!(read("18:30").unwrap_err(), to_come.into());
        // Before the run began: that is refused for what it is.
        assert_eq!(read("16:30").unwrap().at, at(16, 30));
        let mut pot = PotDraft::new(crate::state::sample::pot(), &formats);
        let run = TestRun {
            started,
            ..crate::state::sample::test_run()
        };
        pot.at = "17:40".to_owned();
        let put_in = pot.read(&formats, &run, now).unwrap();
        assert!((put_in.in_s - 2400.0).abs() < 1e-9);
        pot.at = "19:00".to_owned();
        let to_come = Field::PutIn.refuse(Wrong::InFuture);
        assert_eq!(pot.read(&formats, &run, now).unwrap_err(), to_come.into());
        assert_eq!(out_at("17:55", &run, now), Ok(at(17, 55)));
        assert_eq!(out_at("", &run, now), Ok(now));
    }

    #[test]
    fn a_changed_reading_keeps_its_second() {
        let (_, formats) = english();
        let former = Reading {
            store_c: Some(181.0),
            ..Reading::none(at(18, 5).plus_s(17))
        };
        let mut draft = ReadingDraft::of(&former, &formats);
        assert_eq!(
            (draft.at.as_str(), draft.shows[0].as_str()),
            ("18:05", "181")
        );
        draft.shows[0] = "183".to_owned();
        let reading = draft
            .changed(&formats, at(20, 0), (at(18, 0), &former))
            .unwrap();
        assert_eq!((reading.at, reading.store_c), (former.at, Some(183.0)));
        draft.at = "18:30".to_owned();
        let later = at(20, 0).plus_s(5 * 86_400);
        let moved = draft.changed(&formats, later, (at(18, 0), &former));
        assert_eq!(moved.unwrap().at, at(18, 30));
        draft.at = "20:30".to_owned();
        let to_come = draft.changed(&formats, at(20, 0), (at(18, 0), &former));
        assert_eq!(
            to_come.unwrap_err(),
            Field::At.refuse(Wrong::InFuture).into()
        );
    }

    #[test]
    fn what_no_thermometer_shows_is_refused_in_its_field() {
        let (_, formats) = english();
        let wrong = |channel: Channel, text: &str| {
            let mut draft = typed("", "");
            draft.shows[channel.place()] = text.to_owned();
            draft
                .read(&formats, at(18, 0), at(17, 0))
                .unwrap_err()
                .field()
        };
        assert_eq!(wrong(Channel::Store, "9999"), Field::ReadingC);
        assert_eq!(wrong(Channel::Pot, "250"), Field::PotC);
        assert_eq!(wrong(Channel::Air, "-127"), Field::AirC);
        assert_eq!(wrong(Channel::Power, "-5"), Field::HeaterW);
        assert_eq!(wrong(Channel::Pot, "hot"), Field::PotC);
        assert!(
            typed("", "")
                .read(&formats, at(18, 0), at(17, 0))
                .unwrap_err()
                .is_empty_field()
        );
    }

    #[test]
    fn fahrenheit_is_understood_as_it_is_shown() {
        let (_, mut formats) = english();
        formats.degrees = Degrees::Fahrenheit;
        let reading = typed("392", "")
            .read(&formats, at(18, 0), at(17, 0))
            .unwrap();
        assert!((reading.store_c.unwrap() - 200.0).abs() < 1e-9);
        assert_eq!(Channel::Store.unit(&formats), "°F");
    }
}
