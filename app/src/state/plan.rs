//! What stands on the screen Tonight: the meal that is being thought about.

use model::dish::Dish;
use model::journal::{Meal, Outcome};
use model::local_time::{Day, LocalTime};
use model::pot::{Lid, Pot};

use crate::state::limits;

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
    /// Temperature of what goes in; none means that of the air. \[°C\]
    pub start_c: Option<f64>,
}

/// How much is cooked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Amount {
    /// For so many people, by the dish's usual portion.
    People(u32),
    /// Weighed and measured.
    Measured {
        /// Dry or raw food. \[kg\]
        food_kg: f64,
        /// Water. \[kg\]
        water_kg: f64,
    },
}

/// A time of day, in whole minutes after midnight: 0 to 1439.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TimeOfDay(u16);

/// Minutes in a day.
const DAY_MIN: u16 = 1440;

/// A time of day that went by less than this long ago is late, not tomorrow's. \[s\]
const LATE_S: i64 = 6 * 3600;

/// Dinner, as long as nobody says otherwise.
const DINNER: TimeOfDay = TimeOfDay(19 * 60 + 30);

/// The latest dinner that is offered; after that it is tomorrow's.
const LAST_DINNER: TimeOfDay = TimeOfDay(23 * 60 + 30);

/// A dinner that nobody planned is this long ahead at least. \[s\]
const LEAST_AHEAD_S: i64 = 90 * 60;

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

    /// The latest instant of this time of day that is not after `now`.
    pub fn last(self, now: LocalTime) -> LocalTime {
        let today = self.on(now.day());
        if today <= now {
            today
        } else {
            self.on(now.day().plus(-1))
        }
    }

    /// This time of day of something that was seen of a pot, or is to come of it, which `began` then:
    /// the first from there on. One that lies less than six hours before is not meant for a day
    /// later: it is that time before, which can't be right.
    pub fn since(self, began: LocalTime) -> LocalTime {
        if self == Self::of(began) {
            return began;
        }
        let (next, before) = (self.after(began), self.last(began));
        if began.since_s(before) < LATE_S {
            before
        } else {
            next
        }
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

/// A pot goes in this long before the meal at least, as long as nobody says otherwise. \[min\]
const LEAST_LEAD_MIN: i64 = 60;

/// Time to get hot and to spare, beyond what the dish takes at the boil. \[min\]
const HEAT_UP_MIN: f64 = 30.0;

impl Plan {
    /// What stands there before anything was touched: rice for the household, tonight.
    pub fn start(people: u32, now: LocalTime) -> Self {
        let earliest = now.plus_s(LEAST_AHEAD_S).ceil_to_s(1800);
        let (dinner, last) = (DINNER.on(now.day()), LAST_DINNER.on(now.day()));
        let eat = if last < earliest {
            DINNER
        } else {
            TimeOfDay::of(dinner.max(earliest))
        };
        Self {
            dish: Dish::WhiteRice,
            amount: Amount::People(people),
            pot: None,
            lid: Lid::On,
            put_in: Some(usual_put_in(Dish::WhiteRice, eat)),
            eat,
            start_c: None,
        }
    }

    /// Cooks another dish. Food that was weighed was another food, so the household gets its usual
    /// portions; a pot that was to go in at the usual time goes in when it is usual for the dish.
    pub fn cook(&mut self, dish: Dish) {
        if let Amount::Measured { .. } = self.amount {
            self.amount = Amount::People(self.people());
        }
        if self.put_in == Some(usual_put_in(self.dish, self.eat)) {
            self.put_in = Some(usual_put_in(dish, self.eat));
        }
        self.dish = dish;
    }

    /// How many the meal feeds, one at least.
    pub fn people(&self) -> u32 {
        let (least, most) = limits::PEOPLE;
        let portion_kg = self.dish.props().portion_kg.value;
        match self.amount {
            Amount::People(people) => people,
            Amount::Measured { food_kg, .. } => (least..most)
                .find(|&people| food_kg < (f64::from(people) + 0.5) * portion_kg)
                .unwrap_or(most),
        }
    }

    /// Food and water. \[kg\]
    pub fn amounts_kg(&self) -> (f64, f64) {
        match self.amount {
            Amount::Measured { food_kg, water_kg } => (food_kg, water_kg),
            Amount::People(people) => {
                let dish = self.dish.props();
                let food_kg = f64::from(people) * dish.portion_kg.value;
                (food_kg, food_kg * dish.water_per_food.value)
            }
        }
    }

    /// The meal that is meant, seen from `now`.
    ///
    /// # Arguments
    ///
    /// * `usual`: the cooker's pot.
    /// * `air_c`: temperature of what goes in, where the plan gives none. [°C]
    pub fn meal(&self, usual: Pot, air_c: f64, now: LocalTime) -> Meal {
        let (food_kg, water_kg) = self.amounts_kg();
        Meal {
            dish: self.dish,
            food_kg,
            water_kg,
            start_c: self.start_c.unwrap_or(air_c),
            pot: self.pot.unwrap_or(usual),
            lid: self.lid,
            out: None,
            eat_at: self.eat_at(now),
            outcome: Outcome::default(),
        }
    }

    /// When the pot goes in, seen from `now`. A time that has gone by, with the meal still to
    /// come, means now: the pot goes in late, not tomorrow.
    pub fn put_in_at(&self, now: LocalTime) -> LocalTime {
        let Some(put_in) = self.put_in else {
            return now;
        };
        let last = put_in.last(now);
        if now.since_s(last) < LATE_S && now < self.eat.after(last) {
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

/// When a dish goes in, as long as nobody says otherwise.
fn usual_put_in(dish: Dish, eat: TimeOfDay) -> TimeOfDay {
    let takes_min = dish.props().minutes_at_100_c.value + HEAT_UP_MIN;
    let mut lead_min = LEAST_LEAD_MIN;
    while f64::from(i32::try_from(lead_min).unwrap_or(i32::MAX)) < takes_min {
        lead_min += 15;
    }
    TimeOfDay::from_min(i64::from(eat.minutes()) - lead_min)
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
    fn once_the_meal_is_over_the_plan_is_tomorrows() {
        let dinner = plan(Some(time(18, 0)), time(19, 30));
        assert_eq!(dinner.put_in_at(at(19, 29)), at(19, 29));
        assert_eq!(dinner.put_in_at(at(19, 31)), at(42, 0));
        assert_eq!(dinner.eat_at(at(19, 31)), at(43, 30));
    }

    #[test]
    fn midnight_makes_no_pot_late_by_a_day() {
        let late = plan(Some(time(23, 50)), time(0, 50));
        assert_eq!(late.put_in_at(at(24, 10)), at(24, 10));
        assert_eq!(late.eat_at(at(24, 10)), at(24, 50));
    }

    #[test]
    fn there_is_a_dinner_to_begin_with() {
        let dinner = |hour, minute| {
            let now = at(hour, minute);
            let plan = Plan::start(4, now);
            (plan.put_in_at(now), plan.eat_at(now))
        };
        assert_eq!(dinner(9, 0), (at(18, 30), at(19, 30)));
        assert_eq!(dinner(18, 0), (at(18, 30), at(19, 30)));
        assert_eq!(dinner(18, 1), (at(19, 0), at(20, 0)));
        assert_eq!(dinner(22, 0), (at(22, 30), at(23, 30)));
        assert_eq!(dinner(22, 1), (at(42, 30), at(43, 30)));
        assert_eq!(dinner(0, 20), (at(18, 30), at(19, 30)));
    }

    #[test]
    fn another_dish_goes_in_when_it_is_usual_unless_somebody_chose_a_time() {
        let now = at(12, 0);
        let mut beans = Plan::start(4, now);
        beans.cook(Dish::CommonBeansUnsoaked);
        assert_eq!(beans.put_in, Some(time(16, 30)));
        beans.cook(Dish::WhiteRice);
        assert_eq!(beans, Plan::start(4, now));
        let mut chosen = plan(Some(time(18, 0)), time(19, 30));
        chosen.cook(Dish::CommonBeansUnsoaked);
        assert_eq!(chosen.put_in, Some(time(18, 0)));
    }

    #[test]
    fn weighed_food_of_another_dish_is_for_as_many() {
        let mut weighed = Plan {
            amount: Amount::Measured {
                food_kg: 0.47,
                water_kg: 2.0,
            },
            ..Plan::start(4, at(12, 0))
        };
        assert_eq!(weighed.people(), 6);
        weighed.cook(Dish::Potatoes);
        assert_eq!(weighed.amount, Amount::People(6));
    }

    #[test]
    fn a_time_shortly_before_the_pot_went_in_is_not_tomorrows() {
        let began = at(18, 0).plus_s(20);
        for (seen, expected) in [
            (time(18, 0), began),
            (time(18, 40), at(18, 40)),
            (time(17, 50), at(17, 50)),
            (time(12, 1), at(12, 1)),
            (time(7, 0), at(31, 0)),
            (time(0, 30), at(24, 30)),
        ] {
            assert_eq!(seen.since(began), expected, "{seen:?}");
        }
        assert_eq!(time(23, 50).since(at(24, 10)), at(23, 50));
    }

    #[test]
    fn the_household_gets_its_portions() {
        let (food_kg, water_kg) = plan(None, time(19, 30)).amounts_kg();
        let rice = Dish::WhiteRice.props();
        assert!((food_kg - 4.0 * rice.portion_kg.value).abs() < 1e-12);
        assert!((water_kg - food_kg * rice.water_per_food.value).abs() < 1e-12);
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
