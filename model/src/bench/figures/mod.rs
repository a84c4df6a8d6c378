//! Figures by which builds are compared: two after published tests, and a small set of our own for
//! what no standard covers, a store that is charged by day and emptied at night.

mod boiling_test;
mod charge;
mod cooking_power;

pub use boiling_test::{BoilingTest, boiling_test};
pub use charge::{ChargeFigures, ChargeSpread, charge_figures, charge_spread};
pub use cooking_power::{Condition, CookingPower, Interval, Line, Plane, cooking_power};

use crate::bench::readings::Row;

/// The mean of a reading over the rows of a stretch of time, its end not in it.
fn mean(rows: &[Row], (from_s, to_s): (f64, f64), read: fn(&Row) -> Option<f64>) -> Option<f64> {
    let values: Vec<f64> = rows
        .iter()
        .filter(|row| (from_s..to_s).contains(&row.time_s))
        .filter_map(read)
        .collect();
    #[expect(clippy::cast_precision_loss, reason = "at most some 100 000")]
    let count = values.len() as f64;
    (!values.is_empty()).then(|| values.iter().sum::<f64>() / count)
}
