//! Our own figures of a build, for a store that is charged by day and emptied at night.
//!
//! All are worked out on the heat network with the measured values, so that two builds are compared
//! under the same conditions whatever the weather of their tests:
//!
//! - *full* is a store at its cut-out temperature, its jacket half-way to the air;
//! - *a litre* is 1.000 kg of water of 20 °C in the household's own pot, its lid on;
//! - *the boil line* is the boiling point of water at the cooker's altitude;
//! - nothing is on meanwhile, and the air stays as given.

use crate::bench::body::Body;
use crate::bench::measured::{ForCooker, Measured};
use crate::cooker::Cooker;
use crate::local_time::Day;
use crate::network::{Event, Ledger, Network, PotState, Span, State, Watch, run};
use crate::panel::Drive;
use crate::tonight::{Better, Leaning, Rig, Site, TonightError, Trial, Weather, water};
use crate::water::CP_J_KGK;
use std::collections::BTreeMap;

/// A litre that has not boiled within this does not count. \[s\]
const PATIENCE_S: f64 = 4.0 * 3600.0;
/// No store boils more. \[L\]
const MOST_LITRES: u32 = 60;
/// Below the boil at which the power is told. \[K\]
const BELOW_BOIL_K: f64 = 50.0;
/// Steps in which a pot is followed. \[s\]
const STEP_S: f64 = 15.0;
const FRESH_C: f64 = 20.0;

/// The figures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChargeFigures {
    /// Litres that a full store brings to the boil one after another, each taken out as it boils
    /// and the next put in at once. Whole ones; the last that only warms up does not count.
    pub litres_per_charge: u32,
    /// From the first litre's going into a full store to its boil; `None` where it does not. \[s\]
    pub first_litre_s: Option<f64>,
    /// Heat that water and pot of the first litre gain by the second as they pass 50 K below the
    /// boil line; `None` where they do not get there. \[W\]
    pub power_50_k_w: Option<f64>,
    /// From a full store to one at the boil line, no pot in it; `None` where it is longer than
    /// was followed. \[s\]
    pub hold_s: Option<f64>,
    /// Share of the heat above the air that a full store loses in twelve hours.
    pub overnight_loss: f64,
    /// Share of the day's sun that reaches the food: heat to bring the most water to the boil that
    /// boils within an hour of sunset, over the panels' rated watts times the day's hours of full
    /// sun, on the last of four ordinary days. Of light on the cells, a fifth of that.
    pub sun_to_food: f64,
}

/// Works out the figures of a measured cooker.
///
/// # Errors
///
/// [`TonightError`] for a cooker or a place that makes no sense.
pub fn charge_figures(
    site: &Site,
    cooker: &Cooker,
    measured: &ForCooker,
    (air_c, day): (f64, Day),
) -> Result<ChargeFigures, TonightError> {
    let body = Body::new(site, cooker)?;
    let fitted = measured.apply(&body, cooker);
    let rig = Rig::new(site, &fitted)?;
    let net = rig.network(&Leaning::AS_TOLD, false)?;
    let series = Series {
        rig: &rig,
        cooker: &fitted,
        net: &net,
        air_c,
    };
    let (litres_per_charge, first) = series.litres()?;
    let cool = rig.cool_down(air_c)?;
    let full_j = net.curve().enthalpy_j(rig.cutout_c());
    let empty_j = net.curve().enthalpy_j(air_c);
    Ok(ChargeFigures {
        litres_per_charge,
        first_litre_s: first.boils_s,
        power_50_k_w: first.power_w,
        hold_s: cool.hold_s,
        overnight_loss: (full_j - cool.after_night_j) / (full_j - empty_j),
        sun_to_food: sun_to_food(site, &fitted, &rig, day)?,
    })
}

/// One standard deviation of each figure, in its own unit; `None` where the figure has no value.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct ChargeSpread {
    /// Of [`ChargeFigures::litres_per_charge`]. \[L\]
    pub litres_per_charge: Option<f64>,
    /// Of [`ChargeFigures::first_litre_s`]. \[s\]
    pub first_litre_s: Option<f64>,
    /// Of [`ChargeFigures::power_50_k_w`]. \[W\]
    pub power_50_k_w: Option<f64>,
    /// Of [`ChargeFigures::hold_s`]. \[s\]
    pub hold_s: Option<f64>,
    /// Of [`ChargeFigures::overnight_loss`].
    pub overnight_loss: Option<f64>,
    /// Of [`ChargeFigures::sun_to_food`].
    pub sun_to_food: Option<f64>,
}

impl ChargeFigures {
    fn all(&self) -> [Option<f64>; 6] {
        [
            Some(f64::from(self.litres_per_charge)),
            self.first_litre_s,
            self.power_50_k_w,
            self.hold_s,
            Some(self.overnight_loss),
            Some(self.sun_to_food),
        ]
    }
}

/// The spread of the figures that comes of the spread of the cooker's values: each one in `doubted` is
/// put off by one standard deviation up and down in turn, by its logarithm, and half the changes are
/// added as squares, as the GUM (JCGM 100:2008, 5.1) has it for values that do not hang together.
///
/// `doubted` is what was measured, and what was not with the doubt of its description:
/// [`crate::bench::Fit::doubted`].
///
/// # Errors
///
/// As [`charge_figures`].
pub fn charge_spread(
    site: &Site,
    cooker: &Cooker,
    doubted: &ForCooker,
    (air_c, day): (f64, Day),
    found: &ChargeFigures,
) -> Result<ChargeSpread, TonightError> {
    let parts: [fn(&mut ForCooker) -> &mut Option<Measured>; 6] = [
        |measured| &mut measured.loss_w_k,
        |measured| &mut measured.jacket_j_k,
        |measured| &mut measured.capacity,
        |measured| &mut measured.heater,
        |measured| &mut measured.contact_w_m2k,
        |measured| &mut measured.pot_loss,
    ];
    let middle = found.all();
    let mut squares = middle.map(|value| value.map(|_| 0.0));
    let drive = cooker.heater.drive;
    let has_tracker = matches!(drive, Drive::Tracker { .. });
    for part in parts {
        let off = |sign: f64| -> Result<_, TonightError> {
            let mut off = *doubted;
            let Some(value) = part(&mut off).as_mut().filter(|value| 0.0 < value.sd) else {
                return Ok(None);
            };
            value.value *= libm::exp(sign * value.sd / value.value);
            // Only a tracker's efficiency has a place for the share of the heat.
            if off.heater != doubted.heater && !has_tracker {
                return Ok(None);
            }
            Ok(Some(
                charge_figures(site, cooker, &off, (air_c, day))?.all(),
            ))
        };
        let (Some(less), Some(more)) = (off(-1.0)?, off(1.0)?) else {
            continue;
        };
        for ((square, middle), (less, more)) in squares
            .iter_mut()
            .zip(middle)
            .zip(less.into_iter().zip(more))
        {
            // Where a figure has no value on one side, the other side tells.
            let change = match (less, middle, more) {
                (Some(less), _, Some(more)) => Some(0.5 * (more - less)),
                (Some(value), Some(middle), None) | (None, Some(middle), Some(value)) => {
                    Some(value - middle)
                }
                _ => None,
            };
            *square = square
                .zip(change)
                .map(|(square, change)| square + change * change);
        }
    }
    let [
        litres_per_charge,
        first_litre_s,
        power_50_k_w,
        hold_s,
        overnight_loss,
        sun_to_food,
    ] = squares.map(|square| square.map(f64::sqrt));
    Ok(ChargeSpread {
        litres_per_charge,
        first_litre_s,
        power_50_k_w,
        hold_s,
        overnight_loss,
        sun_to_food,
    })
}

/// What comes of the first litre.
#[derive(Debug, Clone, Copy, Default)]
struct First {
    boils_s: Option<f64>,
    power_w: Option<f64>,
}

struct Series<'a> {
    rig: &'a Rig,
    cooker: &'a Cooker,
    net: &'a Network<'a>,
    air_c: f64,
}

impl Series<'_> {
    /// Pots of a litre, one after another, until one does not boil.
    fn litres(&self) -> Result<(u32, First), TonightError> {
        let cutout_c = self.rig.cutout_c();
        let mut state = State::new(self.net, 0.0, cutout_c, 0.5 * (cutout_c + self.air_c))?;
        let mut first = First::default();
        for count in 0..MOST_LITRES {
            let outcome = self.litre(&mut state)?;
            if count == 0 {
                first = outcome;
            }
            if outcome.boils_s.is_none() {
                return Ok((count, first));
            }
        }
        Ok((MOST_LITRES, first))
    }

    fn litre(&self, state: &mut State) -> Result<First, TonightError> {
        let meal = water(self.cooker.pot, 1.0);
        let load = self.rig.load(&meal, &Leaning::AS_TOLD, self.air_c);
        state.put_pot_in(load)?;
        let start_s = state.time_s();
        let line_c = self.net.boiling_point_c() - BELOW_BOIL_K;
        let mut found = First::default();
        let mut before = state.pot().copied();
        let mut boil = Boil(None);
        while boil.0.is_none() && state.time_s() - start_s < PATIENCE_S {
            let span = Span {
                duration_s: STEP_S,
                heater_w: 0.0,
                air_c: self.air_c,
            };
            run(self.net, state, &span, &mut Ledger::default(), &mut boil)?;
            let now = state.pot().copied();
            if let (None, Some(before), Some(now)) = (found.power_w, before, now) {
                let passes = PotState::t_c(&before) < line_c && line_c <= now.t_c();
                found.power_w =
                    passes.then(|| now.capacity_j_k() * (now.t_c() - before.t_c()) / STEP_S);
            }
            before = now;
        }
        state.take_pot_out();
        found.boils_s = boil.0.map(|at_s| at_s - start_s);
        Ok(found)
    }
}

/// Keeps when the pot boils.
struct Boil(Option<f64>);

impl Watch for Boil {
    fn event(&mut self, event: Event, _net: &Network<'_>, state: &State) {
        if event == Event::Boils {
            self.0.get_or_insert(state.time_s());
        }
    }
}

fn sun_to_food(site: &Site, fitted: &Cooker, rig: &Rig, day: Day) -> Result<f64, TonightError> {
    let litres = Trial::new(site, fitted, day)?.litres(Better::AsBuilt)?;
    let food_j = litres * CP_J_KGK * (rig.boiling_c()? - FRESH_C);
    // The same ordinary days that the trial goes through, and their last.
    let last = day.plus(3);
    let weather = Weather::new(rig, &BTreeMap::new(), last, last, last.start())?;
    let full_sun_h = weather.day_full_sun_h(last).unwrap_or_default();
    let panels = f64::from(fitted.panels.in_series) * f64::from(fitted.panels.in_parallel);
    let sun_j = panels * fitted.panels.module_w * full_sun_h * 3600.0;
    Ok(if sun_j > 0.0 { food_j / sun_j } else { 0.0 })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::fit::tests::site;
    use crate::presets::Preset;

    fn figures(measured: &ForCooker) -> ChargeFigures {
        let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let day = Day::from_ymd(2026, 3, 20).unwrap();
        charge_figures(&site(), &cooker, measured, (20.0, day)).unwrap()
    }

    const fn is(value: f64) -> Option<Measured> {
        Some(Measured { value, sd: 0.0 })
    }

    #[test]
    fn the_figures_agree_with_the_heat_there_is() {
        let found = figures(&ForCooker::default());
        // 7 kg of aluminium hold 1.2 to 1.3 MJ from 95 to 280 °C; a litre with its pot takes 0.34 MJ.
        assert!((2..=4).contains(&found.litres_per_charge), "{found:?}");
        // 500 W/m2K over 0.025 m2 in series with 900: some 8 W/K and 230 K at first.
        let power_w = found.power_50_k_w.unwrap();
        assert!((1000.0..2000.0).contains(&power_w), "{found:?}");
        let first_s = found.first_litre_s.unwrap();
        assert!(
            0.34e6 / 2200.0 < first_s && first_s < 0.34e6 / 700.0,
            "{found:?}"
        );
        assert!((0.05..0.9).contains(&found.overnight_loss), "{found:?}");
        assert!((0.02..0.8).contains(&found.sun_to_food), "{found:?}");
    }

    #[test]
    fn each_figure_moves_with_what_was_measured() {
        let base = figures(&ForCooker::default());
        let poor = figures(&ForCooker {
            contact_w_m2k: is(100.0),
            ..ForCooker::default()
        });
        assert!(base.first_litre_s < poor.first_litre_s, "{poor:?}");
        assert!(poor.power_50_k_w < base.power_50_k_w);
        let leaky = figures(&ForCooker {
            loss_w_k: is(1.0),
            ..ForCooker::default()
        });
        assert!(leaky.hold_s < base.hold_s && base.overnight_loss < leaky.overnight_loss);
        assert!(leaky.sun_to_food < base.sun_to_food);
        let small = figures(&ForCooker {
            capacity: is(0.5),
            ..ForCooker::default()
        });
        assert!(small.litres_per_charge < base.litres_per_charge);
    }

    /// What was measured tells the same as the cooker that it was taken over into.
    #[test]
    fn a_measured_loss_of_the_pot_goes_along_into_the_cooker() {
        let described = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let measured = ForCooker {
            pot_loss: Some(Measured {
                value: 4.0,
                sd: 0.4,
            }),
            ..ForCooker::default()
        };
        let fitted = measured.apply(&Body::new(&site(), &described).unwrap(), &described);
        let day = Day::from_ymd(2026, 3, 20).unwrap();
        let taken = charge_figures(&site(), &fitted, &ForCooker::default(), (20.0, day)).unwrap();
        assert_eq!(taken, figures(&measured));
        assert!(figures(&ForCooker::default()).first_litre_s < taken.first_litre_s);
    }

    /// Worked by hand: of a hold time that goes with 1 / loss, ten per cent of the loss is ten per
    /// cent; what does not touch the seat leaves the first litre as it is.
    #[test]
    fn the_spread_follows_the_spread_of_what_was_measured() {
        let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let day = Day::from_ymd(2026, 3, 20).unwrap();
        let measured = ForCooker {
            loss_w_k: Some(Measured {
                value: 0.5,
                sd: 0.05,
            }),
            jacket_j_k: is(1.0),
            ..ForCooker::default()
        };
        let found = figures(&measured);
        let spread = charge_spread(&site(), &cooker, &measured, (20.0, day), &found).unwrap();
        let hold = spread.hold_s.unwrap() / found.hold_s.unwrap();
        assert!((0.08..0.11).contains(&hold), "{hold}");
        let first = spread.first_litre_s.unwrap() / found.first_litre_s.unwrap();
        assert!(first < 0.01, "{first}");
        assert!(spread.overnight_loss.unwrap() > 0.0);
    }

    /// Nobody measured the seat: of a resistance of which 0.6 lies in the seat, as of 500 W/m2K with a
    /// film of 900, a factor of e^0.9 either way is 0.6 (e^0.9 - e^-0.9) / 2 = 0.6 of the time.
    #[test]
    fn what_was_not_measured_is_doubted_as_descriptions_are() {
        let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let day = Day::from_ymd(2026, 3, 20).unwrap();
        let doubted = ForCooker {
            contact_w_m2k: Some(Measured {
                value: 500.0,
                sd: 0.9 * 500.0,
            }),
            ..ForCooker::default()
        };
        let found = figures(&ForCooker::default());
        let spread = charge_spread(&site(), &cooker, &doubted, (20.0, day), &found).unwrap();
        let first = spread.first_litre_s.unwrap() / found.first_litre_s.unwrap();
        assert!((0.4..1.0).contains(&first), "{first}");
        assert!(spread.hold_s.unwrap() < 1.0);
    }
}
