//! What a full store does without sun: how it cools, and what a pot gets from it.

use crate::dish::Dish;
use crate::journal::{Meal, Outcome};
use crate::local_time::LocalTime;
use crate::network::{Ledger, Network, Span, State, run};
use crate::pot::{Lid, Pot};
use crate::tonight::rig::FRESH_WATER_C;
use crate::tonight::track::{PotWatch, Track};
use crate::tonight::{Leaning, Rig, TonightError};

/// A night without sun, as cooks count it. \[s\]
const NIGHT_S: f64 = 12.0 * 3600.0;
/// A pot that does not boil within this is taken never to boil. \[s\]
const PATIENCE_S: f64 = 12.0 * 3600.0;
/// Steps of the points, so that each divides whole hours or days. \[s\]
const STEPS_S: [f64; 9] = [
    600.0, 900.0, 1800.0, 3600.0, 7200.0, 14_400.0, 21_600.0, 43_200.0, 86_400.0,
];
/// About as many points as a curve needs down to the boil.
const POINTS: f64 = 36.0;
/// And at most, where it falls more slowly than it was guessed to.
const MOST_POINTS: usize = 160;

/// A full store that cools without sun and without a pot.
#[derive(Debug, Clone, PartialEq)]
pub struct CoolDown {
    /// How long it takes from the cut-out to the local boil; `None` where the cut-out is not
    /// above the boil, or where it takes longer than was followed. A melt that stays liquid is cold
    /// when it falls below the boil, whatever it will give back as it freezes. \[s\]
    pub hold_s: Option<f64>,
    /// Store after a night of twelve hours. [°C]
    pub after_night_c: f64,
    /// Heat in it then, above 0 °C. \[J\]
    pub after_night_j: f64,
    /// Time since the cut-out and temperature, at even steps until some time after the boil is
    /// passed. \[s, °C\]
    pub points: Vec<(f64, f64)>,
}

impl Rig {
    /// Heat from the local boil to the cut-out; 0 where the cut-out is below the boil. \[J\]
    ///
    /// # Errors
    ///
    /// As [`Rig::new`].
    pub fn capacity_j(&self) -> Result<f64, TonightError> {
        let span_j = self.heat_between_j(self.boiling_c()?, self.cutout_c());
        Ok(span_j.max(0.0))
    }

    /// Heat that passes through the seat at first, into water at the local boil, from a store at
    /// the cut-out. \[W\]
    ///
    /// # Errors
    ///
    /// As [`Rig::new`].
    pub fn seat_w(&self) -> Result<f64, TonightError> {
        let net = self.network(&Leaning::AS_TOLD, false)?;
        let fall_k = (self.cutout_c() - self.boiling_c()?).max(0.0);
        Ok(self.boiling_seat_w_k(&net, self.cutout_c()) * fall_k)
    }

    /// The store, full at first, as it cools in air of one temperature.
    ///
    /// # Errors
    ///
    /// [`TonightError`] for an air temperature that is not a number.
    pub fn cool_down(&self, air_c: f64) -> Result<CoolDown, TonightError> {
        let net = self.network(&Leaning::AS_TOLD, false)?;
        let boiling_c = self.boiling_c()?;
        let empty_j = self.heat_at_j(boiling_c);
        let step_s = step_s(self.capacity_j()?, self.loss_w_k() * (boiling_c - air_c));

        let mut state = self.full(&net, air_c)?;
        let mut points = vec![(0.0, state.mixed_store_c(&net))];
        let mut hold_s = None;
        let mut stop_s = NIGHT_S;
        let mut spare_j = state.store_j() - empty_j;
        while points.len() < MOST_POINTS && state.time_s() < stop_s {
            cool(&net, &mut state, step_s, air_c)?;
            points.push((state.time_s(), state.mixed_store_c(&net)));
            let left_j = if state.is_supercooled(&net) {
                // As much as would be left had it frozen in time.
                self.heat_at_j(state.mixed_store_c(&net)) - empty_j
            } else {
                state.store_j() - empty_j
            };
            if 0.0 < spare_j && left_j <= 0.0 {
                let since_s = step_s * left_j / (spare_j - left_j);
                hold_s.get_or_insert(state.time_s() + since_s);
                // The curve goes on for a while, so that the crossing is seen.
                stop_s = 1.25 * state.time_s();
            } else if 0.0 < left_j {
                stop_s = f64::INFINITY;
            }
            spare_j = left_j;
        }

        let mut morning = self.full(&net, air_c)?;
        cool(&net, &mut morning, NIGHT_S, air_c)?;
        Ok(CoolDown {
            hold_s,
            after_night_c: morning.mixed_store_c(&net),
            after_night_j: morning.store_j(),
            points,
        })
    }

    /// How long so much water of 20 °C takes to boil, the pot put into a full store and its lid
    /// on; `None` where it does not within half a day. \[s\]
    ///
    /// # Errors
    ///
    /// [`TonightError`] for a pot or an air temperature that makes no sense.
    pub fn boil_from_full_s(
        &self,
        pot: Pot,
        water_kg: f64,
        air_c: f64,
    ) -> Result<Option<f64>, TonightError> {
        self.boil_from_s(self.cutout_c(), &water(pot, water_kg), air_c)
    }

    /// How long a meal takes to boil that is put into a store at this temperature without sun;
    /// `None` where it does not within half a day. \[s\]
    pub(super) fn boil_from_s(
        &self,
        store_c: f64,
        meal: &Meal,
        air_c: f64,
    ) -> Result<Option<f64>, TonightError> {
        let net = self.network(&Leaning::AS_TOLD, false)?;
        let mut state = State::new(&net, 0.0, store_c, 0.5 * (store_c + air_c))?;
        self.put_in(&net, &mut state, self.load(meal, &Leaning::AS_TOLD, air_c))?;
        let mut watch = PotWatch::new(Track::default(), 0.0);
        while watch.boils_s.is_none() && state.time_s() < PATIENCE_S {
            let span = Span {
                duration_s: 1800.0,
                heater_w: 0.0,
                air_c,
            };
            run(&net, &mut state, &span, &mut Ledger::default(), &mut watch)?;
        }
        Ok(watch.boils_s)
    }

    /// A store at the cut-out that has long been there.
    fn full(&self, net: &Network<'_>, air_c: f64) -> Result<State, TonightError> {
        let jacket_c = 0.5 * (self.cutout_c() + air_c);
        Ok(State::new(net, 0.0, self.cutout_c(), jacket_c)?)
    }
}

/// Plain water under a lid.
pub(crate) fn water(pot: Pot, water_kg: f64) -> Meal {
    Meal {
        dish: Dish::TeaWater,
        food_kg: 0.0,
        water_kg,
        start_c: FRESH_WATER_C,
        pot,
        lid: Lid::On,
        out: None,
        eat_at: LocalTime(0),
        outcome: Outcome::default(),
    }
}

fn cool(
    net: &Network<'_>,
    state: &mut State,
    duration_s: f64,
    air_c: f64,
) -> Result<(), TonightError> {
    let span = Span {
        duration_s,
        heater_w: 0.0,
        air_c,
    };
    Ok(run(net, state, &span, &mut Ledger::default(), &mut ())?)
}

/// A round step for the points, by the least loss on the way down.
fn step_s(capacity_j: f64, least_loss_w: f64) -> f64 {
    // The loss on the way is about twice the least.
    let guess_s = capacity_j / (2.0 * least_loss_w.max(0.01));
    let wanted_s = guess_s / POINTS;
    STEPS_S
        .into_iter()
        .find(|step_s| wanted_s <= *step_s)
        .unwrap_or(86_400.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::jacket::Jacket;
    use crate::place::{AirYear, Place};
    use crate::presets::Preset;
    use crate::tonight::Site;

    const AIR_C: f64 = 15.0;

    fn site(altitude_m: f64) -> Site {
        let place = Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m,
            utc_offset_min: 180,
        };
        Site {
            place,
            air: AirYear::guess(11.0, altitude_m).unwrap(),
        }
    }

    /// A block of nearly constant heat capacity in a measured jacket that holds nothing: Newton's
    /// law of cooling has a closed solution, t = (C / G) ln((T0 - Ta) / (T - Ta)).
    #[test]
    fn a_light_jacket_cools_as_newton_says() {
        let mut cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        cooker.jacket = Jacket::Measured {
            loss_w_k: 0.25,
            capacity_j_k: 1.0,
        };
        cooker.store.cutout_c = 200.0;
        let rig = Rig::new(&site(0.0), &cooker).unwrap();
        let boiling_c = rig.boiling_c().unwrap();
        let capacity_j_k = rig.capacity_j().unwrap() / (200.0 - boiling_c);
        let expected_s = capacity_j_k / 0.25 * ((200.0 - AIR_C) / (boiling_c - AIR_C)).ln();
        let hold_s = rig.cool_down(AIR_C).unwrap().hold_s.unwrap();
        // The specific heat of aluminium changes by some per cent between 100 and 200 °C.
        assert!(
            (hold_s / expected_s - 1.0).abs() < 0.02,
            "{hold_s} {expected_s}"
        );
    }

    #[test]
    fn what_was_stored_is_what_the_water_takes() {
        // Capacity told as water and through the pot's own time to boil: no pot boils sooner than
        // the seat's first power would let it.
        for preset in Preset::ALL {
            let cooker = preset.cooker(200.0, 11.0);
            // Neither boils off its store: the sun must shine.
            if [Preset::StraightToPot, Preset::MortarUnderAirGap].contains(&preset) {
                continue;
            }
            let rig = Rig::new(&site(1500.0), &cooker).unwrap();
            let boil_s = rig.boil_from_full_s(cooker.pot, 1.0, AIR_C).unwrap();
            let boil_s = boil_s.unwrap_or_else(|| panic!("{preset:?}"));
            let needs_j = 4186.0 * (rig.boiling_c().unwrap() - 20.0);
            let most_w = rig.seat_w_k() * (rig.cutout_c() - 20.0);
            assert!(needs_j / most_w < boil_s, "{preset:?}: {boil_s}");
            assert!(boil_s < 7200.0, "{preset:?}: {boil_s}");
            assert!(
                rig.boil_from_full_s(cooker.pot, 200.0, AIR_C)
                    .unwrap()
                    .is_none()
            );
        }
    }

    #[test]
    fn it_falls_steadily_and_passes_the_boil_when_it_says() {
        for preset in Preset::ALL {
            let cooker = preset.cooker(200.0, 11.0);
            if cooker.store.charges.is_empty() {
                continue;
            }
            let rig = Rig::new(&site(1500.0), &cooker).unwrap();
            let down = rig.cool_down(AIR_C).unwrap();
            let hold_s = down.hold_s.unwrap();
            let boiling_c = rig.boiling_c().unwrap();
            assert!(down.points.len() < 120, "{preset:?}: {}", down.points.len());
            for pair in down.points.windows(2) {
                // A sugar alcohol that freezes at last warms itself up again.
                let freezes = pair[0].1 < 95.0 && rig.is_melting(pair[1].1);
                assert!(
                    freezes || pair[1].1 <= pair[0].1 + 1e-9,
                    "{preset:?}: {pair:?}"
                );
                if pair[0].0 <= hold_s && hold_s < pair[1].0 {
                    assert!(pair[1].1 <= boiling_c && boiling_c <= pair[0].1 + 1e-6);
                }
            }
            assert!(
                3.0 * 3600.0 < hold_s && hold_s < 48.0 * 3600.0,
                "{preset:?}: {hold_s}"
            );
            let frozen_late = rig.is_melting(down.after_night_c);
            assert!(frozen_late || (down.after_night_c < boiling_c) == (hold_s < NIGHT_S));
        }
    }

    #[test]
    fn a_cut_out_below_the_boil_holds_nothing() {
        let mut cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        cooker.store.cutout_c = 80.0;
        let rig = Rig::new(&site(0.0), &cooker).unwrap();
        let down = rig.cool_down(AIR_C).unwrap();
        assert_eq!(down.hold_s, None);
        assert!(rig.capacity_j().unwrap().abs() < 1e-9 && rig.seat_w().unwrap().abs() < 1e-9);
        assert_eq!(rig.boil_from_full_s(cooker.pot, 1.0, AIR_C).unwrap(), None);
        assert!(1 < down.points.len());
    }
}
