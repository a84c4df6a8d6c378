//! A pot of a run that is changed: when it went in and came out, and what was in it.

use model::bench::PotIn;
use model::local_time::LocalTime;
use model::pot::{Lid, Pot};

use crate::i18n::format::Formats;
use crate::present::bench::typing::{filled, nearest, optional};
use crate::present::bench::when::of_day;
use crate::present::typed::Mistake;
use crate::state::bench::TestRun;
use crate::state::limits;
use crate::state::plan::TimeOfDay;
use crate::state::refused::Field;

/// A pot while it is changed.
#[derive(Debug, Clone, PartialEq)]
pub struct PotChange {
    /// The vessel.
    pub pot: Pot,
    /// Its lid.
    pub lid: Lid,
    /// Litres of water.
    pub water: String,
    /// How warm it went in; empty where nobody read it.
    pub start: String,
    /// When it went in, as 'HH:MM'.
    pub at: String,
    /// When it came out; empty while it is in.
    pub out: String,
    /// Litres left in it; empty where it was not weighed.
    pub left: String,
}

impl PotChange {
    /// The pot as it stands.
    pub fn of(pot: &PotIn, run: &TestRun, formats: &Formats) -> Self {
        let time = |since_s: f64| TimeOfDay::of(run.at(since_s)).field();
        let number = |value: Option<f64>, decimals| {
            value.map_or_else(String::new, |value| formats.field(value, decimals))
        };
        Self {
            pot: pot.pot,
            lid: pot.lid,
            water: number(Some(pot.water_kg), 3),
            start: number(
                pot.start_c.map(|start_c| formats.degrees.from_c(start_c)),
                1,
            ),
            at: time(pot.in_s),
            out: pot.out_s.map(time).unwrap_or_default(),
            left: number(pot.left_kg, 3),
        }
    }

    /// The pot as it is typed now. A time is the one nearest to what stood there, and that to the second
    /// where its minute stays; what was not touched stays as it was.
    ///
    /// # Errors
    ///
    /// [`Mistake`] of the first field that can't be taken.
    pub fn read(
        &self,
        formats: &Formats,
        (former, run): (&PotIn, &TestRun),
        now: LocalTime,
    ) -> Result<PotIn, Mistake> {
        let before = Self::of(former, run, formats);
        let time = |text: &str, field: Field, former_s: f64| {
            let time = of_day(text.trim(), field)?;
            let former = run.at(former_s);
            if TimeOfDay::of(former) == time {
                return Ok(former_s);
            }
            Ok::<f64, Mistake>(run.since_start_s(nearest(time, former, now)))
        };
        let litres = |litres: f64| litres;
        let water_kg = if self.water == before.water {
            former.water_kg
        } else {
            filled(&self.water, Field::WaterKg, limits::WATER_KG, litres)?
        };
        let start_c = if self.start == before.start {
            former.start_c
        } else {
            let to_c = |shown| formats.degrees.to_c(shown);
            optional(&self.start, Field::StartC, limits::START_C, to_c)?
        };
        let left_kg = if self.left == before.left {
            former.left_kg
        } else {
            optional(&self.left, Field::LeftKg, (0.0, water_kg), litres)?
        };
        let in_s = time(&self.at, Field::PutIn, former.in_s)?;
        let out_s = if self.out.trim().is_empty() {
            None
        } else {
            let former_s = former.out_s.unwrap_or(in_s);
            Some(time(&self.out, Field::OutAt, former_s)?)
        };
        Ok(PotIn {
            in_s,
            out_s,
            pot: self.pot,
            lid: self.lid,
            water_kg,
            start_c,
            left_kg,
        })
    }
}

#[cfg(test)]
mod tests {
    use model::pot::{PotKind, PotSize, Wrap};

    use super::*;
    use crate::i18n::Language;
    use crate::present::tests::speaking;
    use crate::state::sample::{at, test_run};

    #[test]
    fn only_what_was_touched_changes_and_a_time_is_the_nearest() {
        let (_, formats) = speaking(Language::Spanish);
        let run = test_run();
        let now = at(23, 30);
        let pot = PotIn {
            in_s: run.since_start_s(at(19, 40)) + 17.0,
            out_s: None,
            pot: Pot {
                kind: PotKind::ThinAluminium,
                size: PotSize::ALL[1],
                wrap: Wrap::Bare,
            },
            lid: Lid::On,
            water_kg: 1.0 / 3.0,
            start_c: Some(18.04),
            left_kg: None,
        };
        let draft = PotChange::of(&pot, &run, &formats);
        let read = |draft: &PotChange| draft.read(&formats, (&pot, &run), now);
        // As it stands, to the second and to the digit.
        assert_eq!(read(&draft).unwrap(), pot);
        let changed = PotChange {
            at: "19:35".into(),
            water: "1,5".into(),
            out: "21:10".into(),
            left: "1,3".into(),
            ..draft.clone()
        };
        let expected = PotIn {
            in_s: run.since_start_s(at(19, 35)),
            out_s: Some(run.since_start_s(at(21, 10))),
            water_kg: 1.5,
            left_kg: Some(1.3),
            ..pot
        };
        assert_eq!(read(&changed).unwrap(), expected);
        for wrong in [
            PotChange {
                at: String::new(),
                ..draft.clone()
            },
            PotChange {
                water: String::new(),
                ..draft.clone()
            },
            PotChange {
                left: "2".into(),
                ..draft.clone()
            },
        ] {
            assert!(read(&wrong).is_err());
        }
    }
}
