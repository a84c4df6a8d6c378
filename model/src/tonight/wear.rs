//! How a sugar alcohol wears: the hours the diary finds it molten, and the date from which tonight's
//! kind of pot no longer boils on it.

use crate::ageing::{Ageing, RATE_LOG_SPREAD, Spell};
use crate::cooker::{Cooker, Store};
use crate::enthalpy::Melt;
use crate::journal::{Journal, Meal};
use crate::local_time::{DAY_S, Day, LocalTime};
use crate::media::Medium;
use crate::tonight::build::{self, Melting};
use crate::tonight::{Evening, Point, Rig, Site, TonightError};

/// A pot has at least this long to come to the boil. \[s\]
const LEAST_PATIENCE_S: f64 = 1800.0;
/// How closely the conversion is found at which the pot no longer boils.
const CLOSE: f64 = 0.005;
/// In such steps of the share converted a store becomes another.
const WEAR_STEP: f64 = 0.02;
/// Beyond this nothing is left to freeze.
const MOST_CONVERTED: f64 = 0.95;
/// Beyond this no date is told, days.
const LONGEST_DAYS: f64 = 10.0 * 365.0;

/// The wear of the melt in a store.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wear {
    /// What wears.
    pub medium: Medium,
    /// Share converted by now, 0 to 1.
    pub converted: f64,
    /// Where it ends melting by now. [°C]
    pub liquidus_c: f64,
    /// Hours molten since it was filled in, as far as the diary tells. \[h\]
    pub molten_h: f64,
    /// A day's use, in the mean of the days that were followed.
    pub daily: Spell,
    /// How hot the store gets on such a day, in the mean. [°C]
    pub hottest_c: f64,
}

/// When a kind of pot no longer boils on a store that goes on wearing as it does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LastBoil {
    /// With the rate as it stands.
    pub day: Day,
    /// With a rate one standard deviation faster.
    pub earliest: Day,
    /// With one as much slower; `None` beyond ten years.
    pub latest: Option<Day>,
}

impl Wear {
    /// What the followed days tell; `None` for a store that does not wear, or where no day was
    /// followed.
    ///
    /// # Arguments
    ///
    /// * `store`: as the household describes it, with what was converted before the diary begins.
    /// * `points`: of the store over the days followed, at even steps.
    pub(super) fn of(
        store: &Store,
        journal: &Journal,
        points: &[Point],
        today: Day,
    ) -> Result<Option<Self>, TonightError> {
        let (Some(melting), Some(first), Some(last)) =
            (build::melting(store), points.first(), points.last())
        else {
            return Ok(None);
        };
        let Some(ageing) = Ageing::of(melting.medium) else {
            return Ok(None);
        };
        let followed_days = span_days(first.at, last.at);
        if followed_days < 0.5 {
            return Ok(None);
        }
        let step_h = 24.0 * followed_days / count(points.len().saturating_sub(1).max(1));
        let (mut molten_h, mut rate_h) = (0.0, 0.0);
        for point in points {
            let share = molten_share(&melting.melt, point.store_c);
            molten_h += share * step_h;
            rate_h += share * step_h * ageing.rate_per_h(point.store_c);
        }
        let daily = Spell {
            molten_h: molten_h / followed_days,
            melt_c: ageing.temperature_c(rate_h / molten_h.max(f64::MIN_POSITIVE)),
        };
        let used_days = used_days(store, journal, today);
        let left_a_day = 1.0 - ageing.converted(0.0, &[daily])?;
        let converted = 1.0 - (1.0 - store.converted) * libm::pow(left_a_day, used_days);
        Ok(Some(Self {
            medium: melting.medium,
            converted,
            liquidus_c: aged(&melting, converted).t_liquidus_c,
            molten_h: daily.molten_h * used_days,
            daily,
            hottest_c: mean_of_hottest_c(points),
        }))
    }

    /// The date from which a meal's pot no longer boils in its time on the hottest store of a usual
    /// day; `None` where it always will, or where the store no longer wears.
    ///
    /// # Errors
    ///
    /// [`TonightError`] for a pot that makes no sense.
    pub(super) fn last_boil(
        &self,
        (site, cooker): (&Site, &Cooker),
        meal: &Meal,
        put_in: LocalTime,
        air_c: f64,
    ) -> Result<Option<LastBoil>, TonightError> {
        let Some(ageing) = Ageing::of(self.medium) else {
            return Ok(None);
        };
        let patience_s = seconds_between(put_in, meal.eat_at).max(LEAST_PATIENCE_S);
        let boils = |converted: f64| -> Result<bool, TonightError> {
            let mut worn = cooker.clone();
            worn.store.converted = converted;
            let rig = Rig::new(site, &worn)?;
            let boil_s = rig.boil_from_s(self.hottest_c, meal, air_c)?;
            Ok(boil_s.is_some_and(|boil_s| boil_s <= patience_s))
        };
        let today = put_in.day();
        if !boils(self.converted)? {
            return Ok(Some(LastBoil {
                day: today,
                earliest: today,
                latest: Some(today),
            }));
        }
        if boils(MOST_CONVERTED)? {
            return Ok(None);
        }
        let (mut boils_at, mut fails_at) = (self.converted, MOST_CONVERTED);
        while CLOSE < fails_at - boils_at {
            let middle = 0.5 * (boils_at + fails_at);
            if boils(middle)? {
                boils_at = middle;
            } else {
                fails_at = middle;
            }
        }
        let after = |rate: f64| -> Result<Option<Day>, TonightError> {
            let days = ageing
                .scaled(rate)
                .days_until(boils_at, self.converted, &[self.daily])?
                .filter(|days| *days < LONGEST_DAYS);
            #[expect(clippy::cast_possible_truncation, reason = "below ten years")]
            Ok(days.map(|days| today.plus(days.floor() as i32)))
        };
        let spread = libm::exp(RATE_LOG_SPREAD.value);
        let (Some(day), Some(earliest)) = (after(1.0)?, after(spread)?) else {
            return Ok(None);
        };
        Ok(Some(LastBoil {
            day,
            earliest,
            latest: after(1.0 / spread)?,
        }))
    }
}

/// A cooker with its store as worn by a day as its diary tells, in whole steps of wear so that it is
/// not another cooker every day.
///
/// # Errors
///
/// As [`Evening::new`].
pub fn worn(
    site: &Site,
    cooker: &Cooker,
    journal: &Journal,
    today: Day,
) -> Result<Cooker, TonightError> {
    let mut worn = cooker.clone();
    let wears = build::melting(&cooker.store).is_some_and(|it| Ageing::of(it.medium).is_some());
    if wears {
        let noon = today.at_s(DAY_S / 2);
        let evening = Evening::new(site, cooker, journal, noon, noon)?;
        if let Some(wear) = evening.wear() {
            let steps = (wear.converted / WEAR_STEP).floor();
            worn.store.converted = cooker.store.converted.max(steps * WEAR_STEP);
        }
    }
    Ok(worn)
}

fn aged(melting: &Melting, converted: f64) -> Melt {
    build::melt_of(melting.medium, converted).unwrap_or(melting.melt)
}

/// How much of a melt is molten at a temperature.
fn molten_share(melt: &Melt, store_c: f64) -> f64 {
    let range_k = (melt.t_liquidus_c - melt.t_solidus_c).max(1e-6);
    ((store_c - melt.t_solidus_c) / range_k).clamp(0.0, 1.0)
}

/// Days on which the store was in use since it was filled: those in the diary, and all before the
/// diary begins.
fn used_days(store: &Store, journal: &Journal, today: Day) -> f64 {
    let Some(first) = journal.first_day() else {
        return 0.0;
    };
    let filled_on = store.filled_on.unwrap_or(first);
    let before = first.0.saturating_sub(filled_on.0).max(0);
    let in_use = |day: &Day| filled_on <= *day && *day < today;
    let mut days: Vec<Day> = journal.skies.keys().copied().collect();
    days.extend(journal.events.iter().map(|event| event.at.day()));
    days.retain(in_use);
    days.sort_unstable();
    days.dedup();
    f64::from(before) + count(days.len())
}

/// The mean of the hottest point of each day.
fn mean_of_hottest_c(points: &[Point]) -> f64 {
    let days = points.chunk_by(|a, b| a.at.day() == b.at.day());
    let (mut sum_c, mut n_days) = (0.0, 0.0);
    for day in days {
        sum_c += day.iter().fold(f64::NEG_INFINITY, |hottest, point| {
            hottest.max(point.store_c)
        });
        n_days += 1.0;
    }
    sum_c / n_days
}

fn seconds_between(from: LocalTime, to: LocalTime) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "exact for 285 million years")]
    let seconds = to.since_s(from) as f64;
    seconds
}

fn span_days(from: LocalTime, to: LocalTime) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "a day's seconds")]
    let day_s = DAY_S as f64;
    seconds_between(from, to) / day_s
}

fn count(n: usize) -> f64 {
    u32::try_from(n).map_or(f64::MAX, f64::from)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dish::Dish;
    use crate::journal::{Event, Outcome, What};
    use crate::place::{AirYear, Place};
    use crate::pot::Lid;
    use crate::presets::Preset;
    use crate::sun::{DayLog, Sky};

    const TODAY: Day = Day(20_600);

    fn site() -> Site {
        Site {
            place: Place {
                latitude_deg: 11.0,
                longitude_deg: 38.0,
                altitude_m: 0.0,
                utc_offset_min: 180,
            },
            air: AirYear {
                day_c: [26.0; 12],
                night_c: [18.0; 12],
            },
        }
    }

    /// So many clear days, the last of them today.
    fn clear_days(count: i32) -> Journal {
        let skies = (0..count)
            .map(|ago| (TODAY.plus(-ago), DayLog::Hourly([Some(Sky::Clear); 24])))
            .collect();
        Journal {
            skies,
            ..Journal::default()
        }
    }

    /// Run as hot as the trade did, or with a cap.
    fn cooker(cutout_c: f64) -> Cooker {
        let mut cooker = Preset::ErythritolInGlassWool.cooker(300.0, 11.0);
        cooker.store.cutout_c = cutout_c;
        cooker
    }

    fn at(hour: i64) -> LocalTime {
        TODAY.at_s(3600 * hour)
    }

    fn evening(cooker: &Cooker, journal: &Journal) -> Evening {
        Evening::new(&site(), cooker, journal, at(18), at(18)).unwrap()
    }

    fn supper(cooker: &Cooker) -> Meal {
        Meal {
            dish: Dish::TeaWater,
            food_kg: 0.0,
            water_kg: 2.3,
            start_c: 20.0,
            pot: cooker.pot,
            lid: Lid::On,
            out: None,
            eat_at: at(20),
            outcome: Outcome::default(),
        }
    }

    fn days_left(cutout_c: f64, journal: &Journal) -> Option<LastBoil> {
        let cooker = cooker(cutout_c);
        evening(&cooker, journal)
            .last_boil(&supper(&cooker), at(18))
            .unwrap()
    }

    /// Common practice, no source: three or four months of daily use, and it melts below the boil.
    #[test]
    fn months_of_hot_use_bring_the_melting_point_below_the_boil() {
        let cooker = cooker(155.0);
        // Each evening a supper draws the store down.
        let suppers = |count: i32| {
            let mut journal = clear_days(count);
            for ago in (1..count).rev() {
                let day = TODAY.plus(-ago);
                let meal = Meal {
                    out: Some(day.at_s(20 * 3600)),
                    eat_at: day.at_s(20 * 3600),
                    water_kg: 3.0,
                    ..supper(&cooker)
                };
                journal.events.push(Event {
                    at: day.at_s(17 * 3600),
                    what: What::Meal(meal),
                });
            }
            journal
        };
        let wear_after = |days: i32| *evening(&cooker, &suppers(days)).wear().unwrap();
        let wear = wear_after(15);
        assert!((4.0..12.0).contains(&wear.daily.molten_h), "{wear:?}");
        assert!(wear.converted < 0.15 && 113.0 < wear.liquidus_c, "{wear:?}");
        let liquidus_c = [45, 90, 150].map(|days| wear_after(days).liquidus_c);
        assert!(
            100.0 < liquidus_c[0] && liquidus_c[2] < 100.0,
            "{liquidus_c:?} {wear:?}"
        );
    }

    #[test]
    fn the_date_comes_nearer_with_heat_and_with_days() {
        let new = days_left(150.0, &clear_days(15)).unwrap();
        let left = new.day.0 - TODAY.0;
        assert!((20..300).contains(&left), "{new:?}");
        assert!(new.earliest < new.day && new.latest.is_none_or(|late| new.day < late));
        let used = days_left(150.0, &clear_days(45)).unwrap();
        // Thirty more days of the same use: thirty fewer are left.
        assert!((used.day.0 - new.day.0 + 30).abs() < 5, "{new:?} {used:?}");
        let capped = days_left(130.0, &clear_days(15));
        assert!(
            capped.is_none_or(|capped| 2 * left < capped.day.0 - TODAY.0),
            "{capped:?}"
        );
    }

    #[test]
    fn a_worn_store_boils_less_and_an_old_one_is_worn_before_the_diary() {
        let fresh = evening(&cooker(150.0), &clear_days(15));
        let mut old = cooker(150.0);
        old.store.filled_on = Some(TODAY.plus(-400));
        let worn = evening(&old, &clear_days(15));
        assert!(worn.wear().unwrap().liquidus_c < 100.0);
        assert!(worn.rig().melting_c().unwrap().1 < 100.0);
        let litres = |evening: &Evening| evening.store().unwrap().litres;
        assert!(litres(&worn) < 0.6 * litres(&fresh));
        let done = worn.last_boil(&supper(&old), at(18)).unwrap().unwrap();
        assert_eq!(done.day, TODAY);
    }

    #[test]
    fn a_worn_cooker_is_another_every_few_days() {
        let (cooker, journal) = (cooker(150.0), clear_days(45));
        let now = worn(&site(), &cooker, &journal, TODAY).unwrap();
        let wear = *evening(&cooker, &journal).wear().unwrap();
        assert!((now.store.converted - wear.converted).abs() < 2.0 * WEAR_STEP);
        assert!(0.0 < now.store.converted);
        let block = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        assert_eq!(worn(&site(), &block, &journal, TODAY).unwrap(), block);
    }

    #[test]
    fn metal_and_salt_do_not_wear() {
        for preset in [Preset::AluminiumInPerlite, Preset::NitrateInCeramicFibre] {
            let cooker = preset.cooker(200.0, 11.0);
            let evening = evening(&cooker, &clear_days(15));
            assert_eq!(evening.wear(), None);
            assert_eq!(evening.last_boil(&supper(&cooker), at(18)).unwrap(), None);
        }
    }
}
