//! What would have the meal ready in time: each change is solved for, not looked up.

use crate::dish::Dish;
use crate::journal::Meal;
use crate::local_time::LocalTime;
use crate::pot::{Lid, PotSize, Wrap};
use crate::tonight::answer::Verdict;
use crate::tonight::evening::Side;
use crate::tonight::{Evening, TonightError};
use crate::water::CP_J_KGK;

/// Changes offered at most.
pub(crate) const MOST_OFFERED: usize = 3;
/// Water left in the sun in a dark bottle gets about this warm. Common practice, no source. [°C]
pub(crate) const SUN_WARM_C: f64 = 45.0;
/// Power that a small wood or charcoal fire puts into a pot: a litre in a quarter of an hour.
/// Common practice, no source. \[W\]
pub(crate) const FIRE_W: f64 = 400.0;
/// Less food than this share is no longer the meal.
pub(crate) const LEAST_SHARE: f64 = 0.3;
/// Steps in which more water is tried, from what was planned to a full pot.
pub(crate) const WATER_STEPS: i32 = 8;
/// The latest that a meal is put off. \[s\]
pub(crate) const PUT_OFF_S: i64 = 3 * 3600;

/// What would help, and how far it helps.
#[derive(Debug, Clone, PartialEq)]
pub struct Offers {
    /// With each of them alone the answer would be at least this.
    pub reach: Verdict,
    /// From what costs least to what costs most; none where the meal is ready anyway, or where
    /// nothing helps.
    pub helps: Vec<Help>,
}

/// A change that would have the meal ready, or likelier to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Help {
    /// Put the lid on.
    LidOn,
    /// Put the pot in at this time at the latest.
    EarlierIn {
        /// When.
        put_in: LocalTime,
    },
    /// Soak the beans first.
    Soak {
        /// The soaked dish.
        dish: Dish,
    },
    /// Leave the store in the sun and put the pot in later.
    WaitForSun {
        /// When.
        put_in: LocalTime,
    },
    /// Warm the water first, in a bottle in the sun for instance.
    WarmWater {
        /// To this temperature. [°C]
        start_c: f64,
    },
    /// Wrap the pot.
    WrapPot,
    /// Take the next smaller pot.
    SmallerPot {
        /// Which.
        size: PotSize,
    },
    /// Cook less.
    Less {
        /// Share of what was planned, 0 to 1.
        share: f64,
    },
    /// Take more water: it would boil dry.
    MoreWater {
        /// In all. \[kg\]
        water_kg: f64,
    },
    /// Eat later.
    EatLater {
        /// When.
        eat_at: LocalTime,
    },
    /// Heat the store by the cooker's second charge, from now on.
    TopUp {
        /// What reaches the store. \[W\]
        heat_w: f64,
        /// For how long. \[s\]
        for_s: i64,
    },
    /// Start the pot on another fire.
    OtherFire {
        /// For this long. \[min\]
        minutes: f64,
        /// Until the pot has this temperature. [°C]
        start_c: f64,
    },
}

impl Help {
    /// Whether the food is in the cooker for longer with it.
    pub const fn is_earlier(&self) -> bool {
        matches!(self, Self::EarlierIn { .. } | Self::EatLater { .. })
    }
}

/// One change to try: the meal and the time it goes in.
type Plan = (Meal, LocalTime);

pub(super) fn help(
    evening: &Evening,
    meal: &Meal,
    put_in: LocalTime,
) -> Result<Offers, TonightError> {
    let planned = (meal.clone(), put_in);
    for reach in [Verdict::Yes, Verdict::Likely, Verdict::Doubtful] {
        let solver = Solver {
            evening,
            meal,
            put_in,
            reach,
        };
        let helps = if solver.works(&planned)? {
            Vec::new()
        } else {
            let helps = solver.solve()?;
            if helps.is_empty() {
                continue;
            }
            helps
        };
        return Ok(Offers { reach, helps });
    }
    Ok(Offers {
        reach: Verdict::No,
        helps: Vec::new(),
    })
}

/// Solves for one kind of help.
type Attempt<'a> = fn(&Solver<'a>) -> Result<Option<Help>, TonightError>;

/// From what costs nothing to what costs most.
const fn attempts<'a>() -> [Attempt<'a>; 11] {
    [
        Solver::lid_on,
        Solver::more_water,
        Solver::earlier_in,
        Solver::soak,
        Solver::wait_for_sun,
        Solver::warm_water,
        Solver::wrap_pot,
        Solver::smaller_pot,
        Solver::less,
        Solver::eat_later,
        Solver::other_fire,
    ]
}

struct Solver<'a> {
    evening: &'a Evening,
    meal: &'a Meal,
    put_in: LocalTime,
    /// How sure the meal has to be.
    reach: Verdict,
}

impl Solver<'_> {
    /// As many kinds of help as are offered.
    fn solve(&self) -> Result<Vec<Help>, TonightError> {
        let mut found = Vec::new();
        for attempt in attempts() {
            if found.len() == MOST_OFFERED {
                break;
            }
            found.extend(attempt(self)?);
        }
        Ok(found)
    }

    /// The ways an evening may go in which the meal must be ready, the hardest first. To be sure,
    /// also with the figures as they stand: with more heat it may boil dry.
    fn sides(&self, meal: &Meal) -> (Side<'_>, Option<Side<'_>>) {
        let [told, against, in_favour] = self.evening.sides(meal);
        match self.reach {
            Verdict::Yes => (against, Some(told)),
            Verdict::Likely => (told, None),
            Verdict::Doubtful | Verdict::No => (in_favour, None),
        }
    }

    /// Whether the meal is ready, as surely as it has to be.
    fn works(&self, (meal, put_in): &Plan) -> Result<bool, TonightError> {
        let (hardest, other) = self.sides(meal);
        for side in [Some(hardest), other].into_iter().flatten() {
            let forecast = self.evening.forecast(side, meal, *put_in, false)?;
            if !forecast.is_ready_by(meal.eat_at) || forecast.is_spoilt_by(meal.eat_at) {
                return Ok(false);
            }
        }
        Ok(true)
    }

    fn with(&self, change: impl FnOnce(&mut Meal)) -> Plan {
        let mut meal = self.meal.clone();
        change(&mut meal);
        (meal, self.put_in)
    }

    fn if_works(&self, plan: &Plan, help: Help) -> Result<Option<Help>, TonightError> {
        Ok(self.works(plan)?.then_some(help))
    }

    /// The least change of an amount, from `idle` (does not work) to `most`, that works; `None`
    /// where not even `most` does. Found to a hundredth of the way.
    fn least(
        &self,
        idle: f64,
        most: f64,
        plan: impl Fn(f64) -> Plan,
    ) -> Result<Option<f64>, TonightError> {
        if !self.works(&plan(most))? {
            return Ok(None);
        }
        let (mut short, mut enough) = (idle, most);
        for _ in 0..7 {
            let middle = 0.5 * (short + enough);
            if self.works(&plan(middle))? {
                enough = middle;
            } else {
                short = middle;
            }
        }
        Ok(Some(enough))
    }

    fn lid_on(&self) -> Result<Option<Help>, TonightError> {
        if self.meal.lid == Lid::On {
            return Ok(None);
        }
        self.if_works(&self.with(|meal| meal.lid = Lid::On), Help::LidOn)
    }

    fn more_water(&self) -> Result<Option<Help>, TonightError> {
        let [told, against, _] = self.evening.sides(self.meal);
        let mut boils_dry = false;
        for side in [told, against] {
            let forecast = self.evening.forecast(side, self.meal, self.put_in, false)?;
            boils_dry |= forecast.dry_at.is_some();
        }
        let room_kg = self.meal.pot.size.props().volume_l - self.meal.food_kg;
        if !boils_dry || room_kg <= self.meal.water_kg {
            return Ok(None);
        }
        // Upwards in steps: a full pot may boil too late, so more is not always better.
        // Where one step more does as well, it is taken, so that the pot is not done as it dries.
        let mut found = None;
        for step in 1..=WATER_STEPS {
            let share = f64::from(step) / f64::from(WATER_STEPS);
            let water_kg = self.meal.water_kg + share * (room_kg - self.meal.water_kg);
            let works = self.works(&self.with(|meal| meal.water_kg = water_kg))?;
            let is_second = found.is_some();
            if works {
                found = Some(Help::MoreWater { water_kg });
            }
            if is_second {
                break;
            }
        }
        Ok(found)
    }

    fn earlier_in(&self) -> Result<Option<Help>, TonightError> {
        let from = self.evening.from();
        let room_s = self.put_in.since_s(from);
        if room_s < 600 {
            return Ok(None);
        }
        // Backwards in steps: the sun may still be filling the store, so earlier is not always
        // better.
        let mut put_in = self.put_in;
        while from < put_in {
            put_in = put_in.plus_s(-600).max(from);
            if self.works(&(self.meal.clone(), put_in))? {
                return Ok(Some(Help::EarlierIn { put_in }));
            }
        }
        Ok(None)
    }

    fn soak(&self) -> Result<Option<Help>, TonightError> {
        match self.meal.dish.soaked() {
            Some(dish) => self.if_works(&self.with(|meal| meal.dish = dish), Help::Soak { dish }),
            None => Ok(None),
        }
    }

    fn wait_for_sun(&self) -> Result<Option<Help>, TonightError> {
        let sunset = self.evening.weather().sunset(self.put_in);
        let mut put_in = self.put_in;
        while put_in < sunset.min(self.meal.eat_at) {
            put_in = put_in.plus_s(900);
            if self.works(&(self.meal.clone(), put_in))? {
                return Ok(Some(Help::WaitForSun { put_in }));
            }
        }
        Ok(None)
    }

    fn warm_water(&self) -> Result<Option<Help>, TonightError> {
        if SUN_WARM_C <= self.meal.start_c {
            return Ok(None);
        }
        let warmed = |start_c| self.with(|meal| meal.start_c = start_c);
        let start_c = self.least(self.meal.start_c, SUN_WARM_C, warmed)?;
        Ok(start_c.map(|start_c| Help::WarmWater { start_c }))
    }

    fn wrap_pot(&self) -> Result<Option<Help>, TonightError> {
        if self.meal.pot.wrap != Wrap::Bare {
            return Ok(None);
        }
        self.if_works(
            &self.with(|meal| meal.pot.wrap = Wrap::Wrapped),
            Help::WrapPot,
        )
    }

    fn smaller_pot(&self) -> Result<Option<Help>, TonightError> {
        let litres = self.meal.food_kg + self.meal.water_kg;
        let smaller = PotSize::ALL
            .into_iter()
            .filter(|size| size.props().volume_l < self.meal.pot.size.props().volume_l)
            .rfind(|size| litres <= 0.9 * size.props().volume_l);
        match smaller {
            Some(size) => self.if_works(
                &self.with(|meal| meal.pot.size = size),
                Help::SmallerPot { size },
            ),
            None => Ok(None),
        }
    }

    fn less(&self) -> Result<Option<Help>, TonightError> {
        let scaled = |share: f64| {
            self.with(|meal| {
                meal.food_kg *= share;
                meal.water_kg *= share;
            })
        };
        let share = self.least(1.0, LEAST_SHARE, scaled)?;
        Ok(share.map(|share| Help::Less { share }))
    }

    fn eat_later(&self) -> Result<Option<Help>, TonightError> {
        let latest = self.meal.eat_at.plus_s(PUT_OFF_S);
        let (meal, put_in) = self.with(|meal| meal.eat_at = latest);
        let (hardest, _) = self.sides(&meal);
        let forecast = self.evening.forecast(hardest, &meal, put_in, false)?;
        let Some(ready_at) = forecast.ready_at else {
            return Ok(None);
        };
        let eat_at = ready_at.ceil_to_s(300);
        self.if_works(
            &self.with(|meal| meal.eat_at = eat_at),
            Help::EatLater { eat_at },
        )
    }

    fn other_fire(&self) -> Result<Option<Help>, TonightError> {
        let boiling_c = self.evening.rig().boiling_c()?;
        let warmed = |start_c| self.with(|meal| meal.start_c = start_c);
        let Some(start_c) = self.least(self.meal.start_c, boiling_c, warmed)? else {
            return Ok(None);
        };
        let capacity_j_k = self.meal.pot.capacity_j_k()
            + self.meal.food_kg * self.meal.dish.props().cp_j_kgk.value
            + self.meal.water_kg * CP_J_KGK;
        let minutes = capacity_j_k * (start_c - self.meal.start_c) / FIRE_W / 60.0;
        Ok(Some(Help::OtherFire { minutes, start_c }))
    }
}
