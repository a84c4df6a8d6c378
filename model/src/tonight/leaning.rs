//! The same evening with the figures as they stand, and leaning either way.

use crate::cooker::Cooker;
use crate::dish::Dish;
use crate::jacket::Jacket;

/// How far an answer leans: each factor multiplies what the tables and the cooker's description
/// give.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leaning {
    /// On the jacket's loss.
    pub loss: f64,
    /// On the contact conductance.
    pub contact: f64,
    /// On what the heater gets from the sun.
    pub charging: f64,
    /// On the time the dish takes.
    pub cooking_time: f64,
    /// Added to each thermometer reading. \[K\]
    pub reading_k: f64,
    /// Standard deviations by which a sugar alcohol's melt stays liquid longer than in the mean.
    pub supercooling_sd: f64,
}

/// Four doubts that pull alike, each moved by this many standard deviations, move the answer as
/// far as its tenth or ninetieth percentile, when they are independent and weigh about the same:
/// 1.28 / sqrt(4).
const EACH_SD: f64 = 0.64;
/// Doubt of a day's heat at the heater: a logged day against a measured one, dust, the panel's
/// rating. From memory.
const CHARGING_SD: f64 = 0.15;
/// Doubt of a loss worked out from layers: conductivity when hot and the fit of the lid, each some
/// 15 %. From memory.
const LAYERS_SD: f64 = 0.2;
/// Doubt of a flask's loss: emissivity of the walls, gas between them, fit of the stopper. From
/// memory.
const FLASK_SD: f64 = 0.3;
/// Doubt of a loss or a contact that was measured on the cooker. Common practice, no source.
const MEASURED_SD: f64 = 0.07;
/// Doubt of a reading: a kitchen thermometer, and where it sits. Common practice, no source. \[K\]
const READING_SD_K: f64 = 4.0;

impl Leaning {
    /// The figures as they stand.
    pub const AS_TOLD: Self = Self {
        loss: 1.0,
        contact: 1.0,
        charging: 1.0,
        cooking_time: 1.0,
        reading_k: 0.0,
        supercooling_sd: 0.0,
    };

    /// Against the cook, near the tenth percentile of what may be.
    pub fn against(cooker: &Cooker, dish: Option<Dish>) -> Self {
        Self::moved(cooker, dish, -EACH_SD)
    }

    /// For the cook, near the ninetieth percentile.
    pub fn in_favour(cooker: &Cooker, dish: Option<Dish>) -> Self {
        Self::moved(cooker, dish, EACH_SD)
    }

    /// `by_sd` above 0 is in favour.
    fn moved(cooker: &Cooker, dish: Option<Dish>, by_sd: f64) -> Self {
        let spreads = cooker.spreads;
        let loss_sd = spreads.loss.unwrap_or(match cooker.jacket {
            Jacket::Measured { .. } => MEASURED_SD,
            Jacket::Layers(_) => LAYERS_SD,
            Jacket::Flask { .. } => FLASK_SD,
        });
        let contact_sd = match cooker.contact.measured_w_m2k {
            Some(_) => spreads.contact.unwrap_or(MEASURED_SD),
            None => cooker.contact.seat.spread_share(),
        };
        let cooking_sd = dish.map_or(0.0, |dish| dish.props().minutes_at_100_c.spread_share());
        let factor = |sd: f64| libm::exp(libm::log(1.0 + sd) * by_sd);
        Self {
            loss: 1.0 / factor(loss_sd),
            contact: factor(contact_sd),
            charging: factor(CHARGING_SD),
            cooking_time: 1.0 / factor(cooking_sd),
            reading_k: READING_SD_K * by_sd,
            supercooling_sd: -by_sd,
        }
    }
}
