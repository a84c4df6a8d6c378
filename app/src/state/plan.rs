//! What stands on the screen Tonight: the meal that is being thought about.

use model::dish::Dish;
use model::local_time::{Day, LocalTime};
use model::pot::{Lid, Pot};

/// A meal that is being thought about.
///
/// Its times are times of day, so that yesterday's plan is a good start for today's.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// What is to be cooked.
    pub dish: Dish,
    /// How much.
    pub amount: Amount,
    /// Another pot than the cooker's usual one.
    pub pot: Option<Pot>,
    /// The lid.
    pub lid: Lid,
    /// When it goes in; none means now.
    pub put_in: Option<TimeOfDay>,
    /// When it is to be eaten.
    pub eat: TimeOfDay,
    /// Temperature of what goes in; none means that of the air. [°C]
    pub start_c: Option<f64>,
}

/// How much is cooked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Amount {
    /// For so many people, by the dish's usual portion.
    People(u32),
    /// Weighed and measured.
    Measured {
        /// Dry or raw food. [kg]
        food_kg: f64,
        /// Water. [kg]
        water_kg: f64,
    },
}

/// A time of day, in whole minutes after midnight: 0 to 1439.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TimeOfDay(u16);

/// Minutes in a day.
const DAY_MIN: u16 = 1440;

/// A time of day that went by less than this long ago is late, not tomorrow's. [s]
const LATE_S: i64 = 6 * 3600;

impl TimeOfDay {
    /// The time of day of a clock that shows this hour, 0 to 23, and minute, 0 to 59; beyond
    /// these the last of each.
    pub const fn at(hour: u16, minute: u16) -> Self {
        let hour = if hour < 24 { hour } else { 23 };
        let minute = if minute < 60 { minute } else { 59 };
        Self(hour * 60 + minute)
    }

    /// The time so many minutes after midnight; whole days are taken off.
    pub fn from_min(minutes: i64) -> Self {
        let minutes = minutes.rem_euclid(i64::from(DAY_MIN));
        Self(u16::try_from(minutes).unwrap_or(0))
    }

    /// The time of day of an instant.
    pub fn of(at: LocalTime) -> Self {
        Self::from_min(at.second_of_day() / 60)
    }

    /// Minutes after midnight, 0 to 1439.
    pub fn minutes(self) -> u16 {
        self.0
    }

    /// As `18:40`, the text that a time field holds (HTML, 2.3.5.4 'time').
    pub fn field(self) -> String {
        format!("{:02}:{:02}", self.0 / 60, self.0 % 60)
    }

    /// From the text of a time field, with or without seconds.
    pub fn from_field(text: &str) -> Option<Self> {
        let (hour, rest) = text.trim().split_once(':')?;
        let minute = rest.split(':').next()?;
        let (hour, minute): (u16, u16) = (hour.parse().ok()?, minute.parse().ok()?);
        (hour < 24 && minute < 60).then_some(Self(hour * 60 + minute))
    }

    /// This time on a day.
    pub fn on(self, day: Day) -> LocalTime {
        day.at_s(i64::from(self.0) * 60)
    }

    /// The first instant of this time of day that is after `earlier`.
    pub fn after(self, earlier: LocalTime) -> LocalTime {
        let today = self.on(earlier.day());
        if earlier < today {
            today
        } else {
            self.on(earlier.day().plus(1))
        }
    }
}

impl Plan {
    /// When the pot goes in, seen from `now`. A time that has just gone by means now: the pot
    /// goes in late, not tomorrow.
    pub fn put_in_at(&self, now: LocalTime) -> LocalTime {
        let Some(put_in) = self.put_in else {
            return now;
        };
        let today = put_in.on(now.day());
        if now <= today {
            today
        } else if now.since_s(today) < LATE_S {
            now
        } else {
            put_in.after(now)
        }
    }

    /// When it is to be eaten: the first such time after the pot went in.
    pub fn eat_at(&self, now: LocalTime) -> LocalTime {
        self.eat.after(self.put_in_at(now))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn at(hour: i64, minute: i64) -> LocalTime {
        Day(20_000).at_s(hour * 3600 + minute * 60)
    }

    fn time(hour: i64, minute: i64) -> TimeOfDay {
        TimeOfDay::from_min(hour * 60 + minute)
    }

    fn plan(put_in: Option<TimeOfDay>, eat: TimeOfDay) -> Plan {
        Plan {
            dish: Dish::WhiteRice,
            amount: Amount::People(4),
            pot: None,
            lid: Lid::On,
            put_in,
            eat,
            start_c: None,
        }
    }

    #[test]
    fn tonight_is_tonight() {
        let plan = plan(Some(time(18, 0)), time(19, 30));
        assert_eq!(plan.put_in_at(at(16, 0)), at(18, 0));
        assert_eq!(plan.eat_at(at(16, 0)), at(19, 30));
    }

    #[test]
    fn late_means_now_and_long_past_means_tomorrow() {
        let dinner = plan(Some(time(18, 0)), time(19, 30));
        assert_eq!(dinner.put_in_at(at(18, 40)), at(18, 40));
        assert_eq!(dinner.eat_at(at(18, 40)), at(19, 30));
        let breakfast = plan(Some(time(5, 0)), time(6, 30));
        assert_eq!(breakfast.put_in_at(at(20, 0)), at(29, 0));
        assert_eq!(breakfast.eat_at(at(20, 0)), at(30, 30));
    }

    #[test]
    fn a_pot_left_overnight_is_eaten_the_next_morning() {
        let plan = plan(None, time(6, 0));
        assert_eq!(plan.put_in_at(at(21, 0)), at(21, 0));
        assert_eq!(plan.eat_at(at(21, 0)), at(30, 0));
    }

    #[test]
    fn time_fields() {
        assert_eq!(TimeOfDay::from_field("18:40"), Some(time(18, 40)));
        assert_eq!(TimeOfDay::from_field("18:40:30"), Some(time(18, 40)));
        for text in ["", "24:00", "12:60", "noon", "12"] {
            assert_eq!(TimeOfDay::from_field(text), None, "{text:?}");
        }
    }

    proptest! {
        #[test]
        fn food_is_eaten_after_it_went_in(put_in in 0..1440_i64, eat in 0..1440_i64, now_s in 0..86_400_i64) {
            let plan = plan(Some(TimeOfDay::from_min(put_in)), TimeOfDay::from_min(eat));
            let now = Day(20_000).at_s(now_s);
            prop_assert!(now <= plan.put_in_at(now));
            prop_assert!(plan.put_in_at(now) < plan.eat_at(now));
            prop_assert!(plan.eat_at(now).since_s(plan.put_in_at(now)) <= 86_400);
        }

        #[test]
        fn a_time_of_day_survives_its_field(minutes in 0..1440_i64) {
            let time = TimeOfDay::from_min(minutes);
            prop_assert_eq!(TimeOfDay::from_field(&time.field()), Some(time));
        }
    }
}
