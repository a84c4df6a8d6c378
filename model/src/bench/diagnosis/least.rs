//! The least of each change that makes a pot boil.

use super::case::Case;
use super::{Advice, Change};
use crate::error::ModelError;

/// Amounts are found to this share of what was tried.
const CLOSE: f64 = 0.01;

impl Case<'_> {
    /// Each kind of change with the most that is tried of it.
    pub(super) fn scales(&self) -> Vec<Scale> {
        let prices = self.circumstances.prices;
        let mass_kg = self
            .long
            .curve(self.body, &self.values)
            .map_or(1.0, |curve| curve.mass_kg());
        let once = |price: Option<f64>| Cost {
            each: None,
            once: price,
        };
        let mut scales = vec![
            Scale::new(|part| Change::Contact(1.0 + 9.0 * part), once(prices.seat)),
            Scale::new(|part| Change::PotLoss(1.0 - 0.8 * part), once(prices.wrap)),
            Scale::new(|part| Change::Water(1.0 - 0.7 * part), once(Some(0.0))),
            Scale::new(|part| Change::Hotter(60.0 * part), once(Some(0.0))),
            Scale {
                change: Box::new(move |part| Change::Mass(2.0 * mass_kg * part)),
                cost: Cost {
                    each: prices.store_kg,
                    once: None,
                },
            },
            // Twice the thickness halves the loss of a flat wall.
            Scale::new(
                |part| Change::Loss(1.0 - 0.75 * part),
                Cost {
                    each: prices.jacket,
                    once: None,
                },
            ),
        ];
        if self.body.freezes() {
            scales.push(Scale::new(|_| Change::NoLayer, once(prices.fins)));
        }
        if self.heated {
            let each = Cost {
                each: prices.panels,
                once: None,
            };
            scales.push(Scale::new(|part| Change::Panels(1.0 + 2.0 * part), each));
            if let Some(gain) = self.circumstances.match_gain {
                let better = move |part: f64| Change::Match(1.0 + (gain - 1.0) * part);
                scales.push(Scale {
                    change: Box::new(better),
                    cost: once(prices.heater),
                });
            }
        }
        scales
    }

    /// The least of a change that makes the pot boil for sure, and a tenth of it to spare.
    pub(super) fn least(&self, scale: Scale) -> Result<Option<Advice>, ModelError> {
        let boils = |part: f64| self.surely_boils((scale.change)(part));
        if !boils(1.0)? {
            return Ok(None);
        }
        let (mut short, mut enough) = (0.0, 1.0);
        while enough - short > CLOSE {
            let middle = 0.5 * (short + enough);
            if boils(middle)? {
                enough = middle;
            } else {
                short = middle;
            }
        }
        let change = (scale.change)((1.1 * enough + CLOSE).min(1.0));
        Ok(Some(Advice {
            change,
            fate: self.fate(change)?,
            cost: scale.cost.of(change),
        }))
    }
}

/// A kind of change from nothing, 0, to the most that is tried, 1.
pub(super) struct Scale {
    change: Box<dyn Fn(f64) -> Change>,
    cost: Cost,
}

impl Scale {
    fn new(change: fn(f64) -> Change, cost: Cost) -> Self {
        Self {
            change: Box::new(change),
            cost,
        }
    }
}

/// What a change costs: by its amount, or once.
#[derive(Debug, Clone, Copy)]
struct Cost {
    each: Option<f64>,
    once: Option<f64>,
}

impl Cost {
    fn of(self, change: Change) -> Option<f64> {
        let amount = match change {
            Change::Mass(mass_kg) => mass_kg,
            Change::Loss(share) => 1.0 / share - 1.0,
            Change::Panels(times) => times - 1.0,
            _ => 0.0,
        };
        self.once.or(self.each.map(|each| each * amount))
    }
}
