//! The bench: a cooker measured with a thermometer and a clock, and found out.
//!
//! [`readings`] understands what was written down; a [`Run`] says what was done meanwhile; [`fit()`]
//! finds the figures of the cooker from runs. [`Rig::foreseen`](crate::tonight::Rig::foreseen) says
//! beforehand how long a run takes and how often to read.

mod body;
mod diagnosis;
mod differ;
mod figures;
pub(crate) mod fit;
mod foreseen;
mod measured;
mod plan;
pub mod readings;
mod run;
mod standing;

pub use body::Body;
pub use diagnosis::{
    Advice, Change, Circumstances, Diagnosis, Fate, Limit, Prices, Ranked, diagnose,
};
pub use differ::differ;
pub use figures::{
    BoilingTest, ChargeFigures, ChargeSpread, Condition, CookingPower, Interval, Line, Plane,
    boiling_test, charge_figures, charge_spread, cooking_power,
};
pub use fit::{
    Doubt, Estimate, Fit, FitError, Met, Parameter, Prior, Residual, RunFit, Settings, StoreKind,
    Values, Worth, fit,
};
pub use foreseen::{Foreseen, Given};
pub use measured::{ForCooker, Measured};
pub use plan::Sample;
pub use run::{PotIn, Run, RunFault, RunKind};
pub use standing::{Standing, Stands};
