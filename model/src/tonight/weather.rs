//! What the sky gave and will give the heater, day by day.

use std::collections::BTreeMap;

use crate::local_time::{DAY_S, Day, LocalTime};
use crate::sun::{DayLog, IrradianceSeries, Sky, SunError, Unlogged};
use crate::tonight::Rig;

/// Step of the heater's power and of the air. \[min\]
const STEP_MIN: u32 = 30;
/// The same. \[s\]
pub(super) const STEP_S: i64 = 60 * STEP_MIN as i64;

/// The sky of a day nobody wrote down.
pub const ORDINARY_SKY: Sky = Sky::ORDINARY;

/// How the sky is guessed where nobody wrote it down: what is unknown of a day is mostly its sky.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Guess {
    /// The middle of what may be.
    Ordinary,
    /// A grey day; a step darker than the sky was last, where that is known. Common practice, no
    /// source.
    Dim,
    /// A clear day; a step brighter than the sky was last. Common practice, no source.
    Bright,
}

impl Guess {
    /// Of a day of which nothing is known.
    fn of_day(self) -> Sky {
        match self {
            Self::Ordinary => ORDINARY_SKY,
            Self::Dim => Sky::Grey,
            Self::Bright => Sky::Clear,
        }
    }

    /// Of the hours that follow a sky.
    fn after(self, sky: Sky) -> Sky {
        let place = Sky::ALL.iter().position(|other| *other == sky).unwrap_or(0);
        let place = match self {
            Self::Ordinary => place,
            Self::Dim => place + 1,
            Self::Bright => place.saturating_sub(1),
        };
        Sky::ALL.get(place).copied().unwrap_or(sky)
    }
}

/// One day of heater power and air.
#[derive(Debug, Clone, PartialEq)]
struct DayHeat {
    /// Power of the heater in each step. \[W\]
    heater_w: Vec<f64>,
    /// Air temperature in each step. [°C]
    air_c: Vec<f64>,
    /// Radiation on the panel in the whole day. \[J/m²\]
    plane_j_m2: f64,
}

impl DayHeat {
    fn under(rig: &Rig, day: Day, (log, unlogged): &(DayLog, Unlogged)) -> Result<Self, SunError> {
        let series = IrradianceSeries::new(&rig.setting, day.0, log, *unlogged, STEP_MIN)?;
        Ok(Self {
            heater_w: rig.sun_w(&series),
            air_c: series.steps.iter().map(|step| step.air_c).collect(),
            plane_j_m2: series.plane_j_m2(),
        })
    }
}

/// Heater power and air over a run of days.
#[derive(Debug, Clone, PartialEq)]
pub struct Weather {
    first: Day,
    days: Vec<DayHeat>,
}

impl Weather {
    /// Works out the days from `first` to `last`.
    ///
    /// Days that were not logged get [`ORDINARY_SKY`]. Today the hours to come follow the last sky
    /// that was logged, and the hours that were missed the mean of the others.
    ///
    /// # Errors
    ///
    /// [`SunError`] for a place, a plane or a log that makes no sense.
    pub fn new(
        rig: &Rig,
        skies: &BTreeMap<Day, DayLog>,
        first: Day,
        last: Day,
        now: LocalTime,
    ) -> Result<Self, SunError> {
        let mut days = Vec::new();
        let mut day = first;
        while day <= last {
            let sky = completed(skies.get(&day), day, now, Guess::Ordinary);
            days.push(DayHeat::under(rig, day, &sky)?);
            day = day.plus(1);
        }
        Ok(Self { first, days })
    }

    /// The same days, from `from` on, with what nobody wrote down guessed otherwise.
    pub(super) fn guessed(
        &self,
        rig: &Rig,
        skies: &BTreeMap<Day, DayLog>,
        from: Day,
        now: LocalTime,
        guess: Guess,
    ) -> Result<Self, SunError> {
        let mut guessed = self.clone();
        let mut day = self.first;
        for heat in &mut guessed.days {
            let sky = completed(skies.get(&day), day, now, guess);
            if from <= day && sky != completed(skies.get(&day), day, now, Guess::Ordinary) {
                *heat = DayHeat::under(rig, day, &sky)?;
            }
            day = day.plus(1);
        }
        Ok(guessed)
    }

    /// Heater power and air at an instant; darkness and 20 °C outside the days worked out. \[W, °C\]
    pub(super) fn at(&self, at: LocalTime) -> (f64, f64) {
        let found = || {
            let step = usize::try_from(at.second_of_day() / STEP_S).ok()?;
            let heat = self.day(at.day())?;
            Some((*heat.heater_w.get(step)?, *heat.air_c.get(step)?))
        };
        found().unwrap_or((0.0, 20.0))
    }

    fn day(&self, day: Day) -> Option<&DayHeat> {
        let idx = usize::try_from(day.0.checked_sub(self.first.0)?).ok()?;
        self.days.get(idx)
    }

    /// Heat that reaches the heater in a day. \[J\]
    pub fn day_heat_j(&self, day: Day) -> Option<f64> {
        let sum_w: f64 = self.day(day)?.heater_w.iter().sum();
        Some(sum_w * f64::from(STEP_MIN * 60))
    }

    /// Hours of full sun that shine as much on the panel as the day does: the trade's peak sun
    /// hours, at the 1000 W/m² of a module's rating (IEC 61215 and IEC TS 61836). \[h\]
    pub fn day_full_sun_h(&self, day: Day) -> Option<f64> {
        const FULL_SUN_J_M2_H: f64 = 1000.0 * 3600.0;
        Some(self.day(day)?.plane_j_m2 / FULL_SUN_J_M2_H)
    }

    /// The first instant at or after `from` at which the heater has no more sun that day.
    pub fn sunset(&self, from: LocalTime) -> LocalTime {
        let day = from.day();
        let mut last = from;
        let mut at = day.start();
        while at.since_s(day.start()) < DAY_S {
            if 0.5 < self.at(at).0 && from < at.plus_s(STEP_S) {
                last = at.plus_s(STEP_S);
            }
            at = at.plus_s(STEP_S);
        }
        last
    }
}

/// The log of a day with what nobody wrote down filled in as well as can be.
pub(super) fn completed(
    log: Option<&DayLog>,
    day: Day,
    now: LocalTime,
    guess: Guess,
) -> (DayLog, Unlogged) {
    let ordinary = (DayLog::Hourly([None; 24]), Unlogged::As(guess.of_day()));
    match log {
        None => ordinary,
        Some(DayLog::SunHours(hours)) => (DayLog::SunHours(*hours), Unlogged::As(ORDINARY_SKY)),
        Some(DayLog::Hourly(skies)) => {
            let Some(latest) = skies.iter().rev().find_map(|sky| *sky) else {
                return ordinary;
            };
            let mut filled = *skies;
            if day == now.day() {
                for sky in filled.iter_mut().skip(now.hour() + 1) {
                    sky.get_or_insert(guess.after(latest));
                }
            }
            (DayLog::Hourly(filled), Unlogged::MeanOfLogged)
        }
    }
}
