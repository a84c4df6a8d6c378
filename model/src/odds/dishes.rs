//! How long a household's own dishes take, each by itself.
//!
//! One bag of beans says nothing of the potatoes, but much of the next pot from the same bag. Of each
//! dish a member has a figure that stays from pot to pot, and goes on with the member that explains
//! what was seen. Those of dishes that were never cooked hang on nothing: they stay where they are.

use super::ensemble::{Ensemble, column};
use super::moments::Moment;
use super::noise::Noise;
use crate::dish::Dish;

/// How many dishes there are.
pub(super) const DISHES: usize = Dish::ALL.len();
/// What a member keeps of its own figure when a dish is cooked again; the rest is spread anew about
/// the mean, which leaves mean and variance as they are (Liu and West, as in [`super::filter`]).
/// Inferred.
const KEEPS: f64 = 0.97;

fn bit(dish: Dish) -> u64 {
    1 << dish as u64
}

impl Ensemble {
    /// Draws how long each dish takes.
    pub(super) fn draw_dishes(&mut self, noise: Noise) {
        for (place, dish) in (column::DISH..).zip(Dish::ALL) {
            let noise = noise.at(dish as i64);
            for member in 0..self.members() {
                self.set(place, member, noise.normal(member));
            }
        }
        self.cooked = 0;
    }

    /// A dish goes in: its figures, which few may share by now, are spread a little.
    pub(super) fn cook_again(&mut self, dish: Dish, noise: Noise) {
        let was_cooked = self.cooked & bit(dish) != 0;
        self.cooked |= bit(dish);
        if !was_cooked {
            return;
        }
        let place = column::DISH + dish as usize;
        let moment = |of: &dyn Fn(f64) -> f64| -> f64 {
            let both = self.column(place).iter().zip(&self.weight);
            both.map(|(value, weight)| weight * of(*value)).sum()
        };
        let mean = moment(&|value| value);
        let variance = moment(&|value| (value - mean) * (value - mean));
        let sd = ((1.0 - KEEPS * KEEPS) * variance.max(0.0)).sqrt();
        for member in 0..self.members() {
            let kept = mean + KEEPS * (self.get(place, member) - mean);
            self.set(place, member, kept + sd * noise.normal(member));
        }
    }

    /// Clears the figures of the dishes that were cooked.
    pub(super) fn clear_dishes(&mut self, clear: impl Fn(&mut [f64])) {
        for (place, dish) in (column::DISH..).zip(Dish::ALL) {
            if self.cooked & bit(dish) != 0 {
                clear(self.column_mut(place));
            }
        }
    }

    /// Of how long the dishes take that were cooked; of the others nothing is to be set right.
    pub(super) fn dish_moments(&self) -> Vec<(usize, Moment)> {
        let dishes = (column::DISH..).zip(Dish::ALL);
        let cooked = dishes.filter(|(_, dish)| self.cooked & bit(*dish) != 0);
        cooked
            .map(|(place, _)| (place, Moment::of(self.column(place), &self.weight)))
            .collect()
    }

    /// Gives each the moments it had.
    pub(super) fn set_dish_moments(&mut self, had: &[(usize, Moment)]) {
        for (place, had) in had {
            let now = Moment::of(self.column(*place), &self.weight);
            for value in self.column_mut(*place) {
                *value = had.instead_of(now, *value);
            }
        }
    }

    /// Whether a copy of a member takes this of it: all but the figures of dishes never cooked.
    pub(super) fn is_handed_on(&self, column: usize) -> bool {
        column
            .checked_sub(column::DISH)
            .is_none_or(|dish| self.cooked >> dish & 1 == 1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::local_time::LocalTime;
    use crate::odds::noise::Purpose;

    fn moments(ensemble: &Ensemble, dish: Dish) -> (f64, f64) {
        let values = ensemble.column(column::DISH + dish as usize);
        let count = values.len() as f64;
        let mean = values.iter().sum::<f64>() / count;
        let square = values.iter().map(|value| (value - mean).powi(2));
        (mean, square.sum::<f64>() / count)
    }

    fn drawn() -> Ensemble {
        let mut ensemble = Ensemble::new(2000, LocalTime(0));
        ensemble.draw_dishes(Noise::new(1, Purpose::Dish));
        ensemble
    }

    #[test]
    fn dishes_stand_where_their_numbers_say() {
        for (idx, dish) in Dish::ALL.into_iter().enumerate() {
            assert_eq!(dish as usize, idx);
        }
    }

    /// One member explains all: its rice goes on, the potatoes that nobody cooked are as before.
    #[test]
    fn what_was_cooked_goes_on_with_its_member() {
        let mut ensemble = drawn();
        ensemble.cook_again(Dish::WhiteRice, Noise::new(2, Purpose::Pot));
        let before = ensemble.clone();
        ensemble.become_copies(&[7; 2000]);
        let rice = moments(&ensemble, Dish::WhiteRice);
        let seventh = before.get(column::DISH + Dish::WhiteRice as usize, 7);
        assert!(
            (rice.0 - seventh).abs() < 1e-12 && rice.1 < 1e-12,
            "{rice:?}"
        );
        let place = column::DISH + Dish::Potatoes as usize;
        assert_eq!(ensemble.column(place), before.column(place));
    }

    #[test]
    fn a_dish_that_is_cooked_again_is_spread_and_known_as_well() {
        let mut ensemble = drawn();
        let noise = Noise::new(2, Purpose::Pot);
        ensemble.cook_again(Dish::Lentils, noise);
        let of: Vec<usize> = (0..2000).map(|member| member / 50).collect();
        ensemble.become_copies(&of);
        let (mean, variance) = moments(&ensemble, Dish::Lentils);
        for pot in 1..=10 {
            ensemble.cook_again(Dish::Lentils, noise.at(pot));
        }
        let (after, spread) = moments(&ensemble, Dish::Lentils);
        // Four standard errors, as of 2000 draws each time.
        assert!((after - mean).abs() < 0.07 && (spread / variance - 1.0).abs() < 0.15);
        let mut different: Vec<u64> = ensemble
            .column(column::DISH + Dish::Lentils as usize)
            .iter()
            .map(|value| value.to_bits())
            .collect();
        different.sort_unstable();
        different.dedup();
        assert_eq!(different.len(), 2000);
    }
}
