//! What a person says of a run whose readings come from a text.

use model::bench::{Plane, PotIn, RunKind};
use model::local_time::{Day, LocalTime};
use model::pot::{Lid, Pot};

use crate::bench::answer::Opened;
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::typed::{Mistake, Steps, number};
use crate::state::action::BenchAction;
use crate::state::bench::{KeptText, RunAbout, RunReadings};
use crate::state::ids::CookerId;
use crate::state::limits;
use crate::state::refused::{Field, Wrong};

/// A number that is typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Typed {
    /// The air.
    Air,
    /// Power of the heater.
    Heater,
    /// Water in the pot.
    Water,
    /// When the pot went in.
    PotIn,
    /// When it came out.
    PotOut,
}

/// What was typed.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// The cooker that was tested.
    pub cooker: CookerId,
    /// Name of the run.
    pub name: String,
    /// What it was for.
    pub kind: RunKind,
    /// Day of the first row, as a date field has it.
    pub day: String,
    /// The numbers, in the order of [`Typed`].
    pub numbers: [String; 5],
}

/// Kinds of runs, in the order of the list.
pub const KINDS: [RunKind; 4] = [
    RunKind::HeatUp,
    RunKind::CoolDown,
    RunKind::Boil,
    RunKind::Free,
];

impl Typed {
    /// Its field.
    pub fn field(self) -> Field {
        match self {
            Self::Air => Field::AirC,
            Self::Heater => Field::HeaterW,
            Self::Water => Field::WaterKg,
            Self::PotIn => Field::PutIn,
            Self::PotOut => Field::OutAt,
        }
    }

    /// How it is stepped, in the unit of the field.
    pub fn steps(self, formats: &Formats) -> Steps {
        let degrees = |celsius: f64| formats.degrees.from_c(celsius);
        let minutes = |start| Steps {
            by: 1.0,
            range: (0.0, limits::RUN_S / 60.0),
            start,
        };
        match self {
            Self::Air => Steps {
                by: 1.0,
                range: (degrees(limits::AIR_C.0), degrees(limits::AIR_C.1)),
                start: degrees(20.0),
            },
            Self::Heater => Steps {
                by: 10.0,
                range: limits::HEATER_W,
                start: 100.0,
            },
            Self::Water => Steps {
                by: 0.1,
                range: (limits::LEAST_WET_KG, limits::WATER_KG.1),
                start: 1.0,
            },
            Self::PotIn => minutes(0.0),
            Self::PotOut => minutes(60.0),
        }
    }
}

impl Draft {
    /// What the text itself tells, the rest as it may be.
    pub fn of(
        opened: &Opened,
        (cooker, now): (CookerId, LocalTime),
        strings: &Strings,
        formats: &Formats,
    ) -> Self {
        let kind = match (opened.pot_s, opened.has_power) {
            (Some(_), true) => RunKind::Free,
            (Some(_), false) => RunKind::Boil,
            (None, true) => RunKind::HeatUp,
            (None, false) => RunKind::CoolDown,
        };
        let day = dated(opened).map_or_else(|| latest(opened, now), LocalTime::day);
        let (year, month, day) = day.ymd();
        let minutes = |at_s: f64| formats.field(at_s / 60.0, 1);
        let [pot_in, pot_out] = opened
            .pot_s
            .map_or([0.0, opened.span_s], |pot_s| pot_s)
            .map(minutes);
        Self {
            cooker,
            name: (strings.bench.kind)(kind).to_owned(),
            kind,
            day: format!("{year:04}-{month:02}-{day:02}"),
            numbers: [String::new(), String::new(), String::new(), pot_in, pot_out],
        }
    }

    /// What was typed for a number.
    pub fn number(&self, typed: Typed) -> &str {
        &self.numbers[typed as usize]
    }

    /// Has a pot been in?
    pub fn has_pot(&self, opened: &Opened) -> bool {
        opened.pot_s.is_some() && matches!(self.kind, RunKind::Boil | RunKind::Free)
    }

    /// The action that keeps the run.
    ///
    /// # Errors
    ///
    /// [`Mistake`] in the first field that holds one.
    pub fn read(
        &self,
        (opened, kept): (&Opened, KeptText),
        pot: Pot,
        formats: &Formats,
        now: LocalTime,
    ) -> Result<BenchAction, Mistake> {
        let air_c = match self.optional(Typed::Air, formats)? {
            None if !opened.has_air => return Err(Field::AirC.refuse(Wrong::Empty).into()),
            air => air.map(|air| formats.degrees.to_c(air)),
        };
        let heater_w = self.optional(Typed::Heater, formats)?;
        let pots = if self.has_pot(opened) {
            vec![self.pot(opened, pot, formats)?]
        } else {
            Vec::new()
        };
        let span_s = opened.span_s.ceil() as i64;
        // A run is over before it is brought in.
        let latest = now.plus_s(-span_s);
        let started = match (opened.start, self.started(opened)?) {
            (Some(_), started) if latest < started => {
                return Err(Field::Day.refuse(Wrong::InFuture).into());
            }
            // Nobody knows its time of day.
            (None, midnight) => midnight.min(latest),
            (_, started) => started,
        };
        Ok(BenchAction::Add {
            cooker: self.cooker,
            started,
            ended: Some(started.plus_s(span_s)),
            about: Box::new(RunAbout {
                name: self.name.clone(),
                kind: self.kind,
                air_c,
                heater_w,
                plane: Plane::default(),
                notes: String::new(),
            }),
            pots,
            readings: RunReadings::File(kept),
        })
    }

    fn started(&self, opened: &Opened) -> Result<LocalTime, Mistake> {
        let mut parts = self.day.splitn(3, '-').map(|part| part.parse().ok());
        let mut next = || parts.next().flatten();
        let day = next().zip(next()).zip(next());
        let day = day.and_then(|((year, month), day): ((u32, u32), u32)| {
            Day::from_ymd(i32::try_from(year).ok()?, month, day)
        });
        let day = day.ok_or(Field::Day.refuse(Wrong::Empty))?;
        // Midnight where the text has no clock times.
        Ok(day.at_s(opened.start.map_or(0, LocalTime::second_of_day)))
    }

    fn pot(&self, opened: &Opened, pot: Pot, formats: &Formats) -> Result<PotIn, Mistake> {
        let read = |typed: Typed| {
            let steps = typed.steps(formats);
            number(self.number(typed), typed.field(), steps.range)
        };
        let (in_s, out_s) = (60.0 * read(Typed::PotIn)?, 60.0 * read(Typed::PotOut)?);
        let out_s = out_s.min(opened.span_s);
        Ok(PotIn {
            in_s: in_s.min(out_s),
            // A pot that is in at the last row stays.
            out_s: (out_s + 30.0 < opened.span_s).then_some(out_s),
            pot,
            lid: Lid::On,
            water_kg: read(Typed::Water)?,
            start_c: None,
            left_kg: None,
        })
    }

    fn optional(&self, typed: Typed, formats: &Formats) -> Result<Option<f64>, Mistake> {
        let text = self.number(typed);
        if text.trim().is_empty() {
            return Ok(None);
        }
        let range = typed.steps(formats).range;
        number(text, typed.field(), range).map(Some)
    }
}

/// The latest day of the first row with which the last row has been.
fn latest(opened: &Opened, now: LocalTime) -> Day {
    let second = opened.start.map_or(0, LocalTime::second_of_day);
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a run of some days at most"
    )]
    let first = now.plus_s(-(opened.span_s.ceil() as i64));
    let day = first.day();
    if first < day.at_s(second) {
        day.plus(-1)
    } else {
        day
    }
}

/// What is said of the day that is proposed, where the text has times of day alone.
pub fn day_hint(opened: &Opened, strings: &Strings) -> &'static str {
    let is_told = opened.start.is_none() || dated(opened).is_some();
    if is_told {
        ""
    } else {
        strings.bench.import.day_guessed
    }
}

/// When the first row was taken, where the text names the day.
fn dated(opened: &Opened) -> Option<LocalTime> {
    opened.start.filter(|start| start.day() != Day(0))
}

#[cfg(test)]
mod tests {
    use model::bench::readings::{Column, Degrees};

    use super::*;
    use crate::present::tests::english;
    use crate::state::sample::{TODAY, at, kept_text, pot};

    fn opened() -> Opened {
        Opened {
            columns: vec![Column::Time, Column::Store, Column::Pot],
            samples: Vec::new(),
            degrees: Degrees::Celsius,
            elapsed: None,
            swapped: None,
            start: Some(Day(0).at_s(17 * 3600)),
            rows: 61,
            span_s: 3600.0,
            pot_s: Some([300.0, 3600.0]),
            has_power: false,
            has_air: false,
            sheet: Vec::new(),
        }
    }

    fn draft() -> Draft {
        let (strings, formats) = english();
        Draft::of(&opened(), (CookerId(0), at(20, 0)), strings, &formats)
    }

    fn read(draft: &Draft) -> Result<BenchAction, Mistake> {
        let (_, formats) = english();
        draft.read((&opened(), kept_text()), pot(), &formats, at(20, 0))
    }

    #[test]
    fn a_text_with_a_pot_is_a_boil_of_today() {
        let mut draft = draft();
        assert_eq!(draft.kind, RunKind::Boil);
        assert_eq!(draft.day, "2026-11-25");
        draft.numbers[Typed::Air as usize] = "19,5".into();
        draft.numbers[Typed::Water as usize] = "1".into();
        let BenchAction::Add {
            started,
            ended,
            about,
            pots,
            ..
        } = read(&draft).unwrap()
        else {
            panic!("a run")
        };
        assert_eq!((started, ended), (at(17, 0), Some(at(18, 0))));
        assert_eq!(about.air_c, Some(19.5));
        assert_eq!((pots[0].in_s, pots[0].out_s), (300.0, None));
    }

    #[test]
    fn what_no_column_tells_is_asked_for() {
        let mut draft = draft();
        let wrong = read(&draft).unwrap_err();
        assert_eq!(wrong.field(), Field::AirC);
        draft.numbers[Typed::Air as usize] = "20".into();
        assert_eq!(read(&draft).unwrap_err().field(), Field::WaterKg);
        draft.day = String::new();
        draft.numbers[Typed::Water as usize] = "1".into();
        assert_eq!(read(&draft).unwrap_err().field(), Field::Day);
    }

    #[test]
    fn a_run_is_over_before_it_is_brought_in() {
        let mut draft = draft();
        draft.numbers[Typed::Air as usize] = "20".into();
        draft.numbers[Typed::Water as usize] = "1".into();
        let (year, month, day) = TODAY.plus(3).ymd();
        draft.day = format!("{year}-{month}-{day}");
        assert_eq!(read(&draft).unwrap_err().field(), Field::Day);
        let (year, month, day) = TODAY.ymd();
        draft.day = format!("{year}-{month}-{day}");
        let BenchAction::Add { ended, .. } = read(&draft).unwrap() else {
            panic!("a run")
        };
        assert_eq!(ended, Some(at(18, 0)));
    }

    #[test]
    fn rows_of_an_evening_are_of_the_latest_night_that_is_over() {
        let (strings, formats) = english();
        let night = Opened {
            start: Some(Day(0).at_s(18 * 3600)),
            span_s: 10.0 * 3600.0,
            pot_s: None,
            ..opened()
        };
        let day = |now| Draft::of(&night, (CookerId(0), now), strings, &formats).day;
        // The sample's today is 25 November 2026.
        assert_eq!(day(at(9, 0)), "2026-11-24");
        assert_eq!(day(at(20, 0)), "2026-11-24");
        assert_eq!(day(at(3, 0)), "2026-11-23");
        assert!(!day_hint(&night, strings).is_empty());
    }
}
