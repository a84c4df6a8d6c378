//! Readings and pots while they are typed.

use model::bench::PotIn;
use model::bench::readings::Column;
use model::local_time::LocalTime;
use model::pot::{Lid, Pot, PotSize};

use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::bench::live::last_read;
use crate::present::bench::when::{When, of_day};
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

    /// The one of a column of a text.
    pub fn of_column(column: Column) -> Option<Self> {
        match column {
            Column::Store => Some(Self::Store),
            Column::Pot => Some(Self::Pot),
            Column::Air => Some(Self::Air),
            Column::Power => Some(Self::Power),
            Column::Irradiance | Column::Time | Column::Date | Column::Unused => None,
        }
    }

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

    /// What can be meant. \[°C, W\]
    pub fn range(self) -> (f64, f64) {
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
    /// When, as 'HH:MM'; empty means now, while the run goes on.
    pub at: String,
    /// The instant that was proposed for it.
    pub proposed: Option<LocalTime>,
    /// What each channel shows, in the order of [`Channel::ALL`].
    pub shows: [String; 4],
}

impl ReadingDraft {
    /// A reading that is changed.
    pub fn of(reading: &Reading, formats: &Formats) -> Self {
        let decimals = 1;
        Self {
            at: TimeOfDay::of(reading.at).field(),
            proposed: None,
            shows: Channel::ALL.map(|channel| {
                channel.of(reading).map_or_else(String::new, |value| {
                    formats.field(channel.shown(formats, value), decimals)
                })
            }),
        }
    }

    /// Forgets what is typed for all parts but one: what nobody sees is not written down.
    pub fn keep_only(&mut self, channel: Channel) {
        for (place, shows) in self.shows.iter_mut().enumerate() {
            if place != channel.place() {
                shows.clear();
            }
        }
    }

    /// Puts another time in the field, unless a person wrote one there.
    pub fn propose(&mut self, next: Option<LocalTime>) {
        let text =
            |at: Option<LocalTime>| at.map_or_else(String::new, |at| TimeOfDay::of(at).field());
        if self.at.trim().is_empty() || self.at == text(self.proposed) {
            self.at = text(next);
            self.proposed = next;
        }
    }

    /// When it was read, in this run.
    ///
    /// # Errors
    ///
    /// [`Mistake`] of the field.
    pub fn when(&self, run: &TestRun, now: LocalTime) -> Result<LocalTime, Mistake> {
        let when = When::of(run, now).near(self.proposed);
        when.typed(&self.at, Field::At)
    }

    /// The reading of a run.
    ///
    /// # Errors
    ///
    /// [`Mistake`] of the first field that can't be taken.
    pub fn read(
        &self,
        formats: &Formats,
        run: &TestRun,
        now: LocalTime,
    ) -> Result<Reading, Mistake> {
        self.shown(formats, self.when(run, now)?)
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
                let time = of_day(text, Field::At)?;
                let at = nearest(time, former.at, now);
                if at < started && now < time.on(now.day()) {
                    return Err(Field::At.refuse(Wrong::InFuture).into());
                }
                at
            }
        };
        self.shown(formats, at)
    }

    /// The reading at that time.
    ///
    /// # Errors
    ///
    /// As [`read`](Self::read).
    pub fn shown(&self, formats: &Formats, at: LocalTime) -> Result<Reading, Mistake> {
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
pub(super) fn nearest(time: TimeOfDay, former: LocalTime, now: LocalTime) -> LocalTime {
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
    /// The household's own pot with a litre; into a run that is over it went when something was read
    /// last.
    pub fn new(pot: Pot, run: &TestRun, formats: &Formats) -> Self {
        Self {
            pot,
            lid: Lid::On,
            water: formats.field(1.0, 1),
            start: String::new(),
            at: moved_at(run),
        }
    }

    /// The pot, as it was put in.
    ///
    /// # Errors
    ///
    /// [`Mistake`] of the first field that can't be taken.
    pub fn read(&self, formats: &Formats, run: &TestRun, now: LocalTime) -> Result<PotIn, Mistake> {
        let at = When::of(run, now).typed(&self.at, Field::PutIn)?;
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

/// When a pot went in or came out, as it is proposed: of a run that is over, when something was read
/// last.
pub fn moved_at(run: &TestRun) -> String {
    let over = run.ended.map(|_| TimeOfDay::of(last_read(run)).field());
    over.unwrap_or_default()
}

/// When a pot of a run came out, as typed; empty means now, while the run goes on.
///
/// # Errors
///
/// [`Mistake`] where it is no time, or one to come.
pub fn out_at(text: &str, run: &TestRun, now: LocalTime) -> Result<LocalTime, Mistake> {
    When::of(run, now).typed(text, Field::OutAt)
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
mod tests;
