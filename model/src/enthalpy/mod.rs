//! Enthalpy of a store made of one or more media at one temperature.
//!
//! The heat in the store is the state; its temperature follows from it, so melting needs no special
//! case. Each medium has specific enthalpy 0 at 0 degC; the solid has `cp = a + b T`; across the melting
//! range the latent heat is spread evenly and is the whole of the enthalpy taken up there, as handbooks
//! measure it between the ends of the peak; a single melting point is a plateau; the liquid's specific heat is
//! constant. The sum over the media is piecewise linear in heat capacity, hence piecewise quadratic in
//! enthalpy, and has an exact inverse.

mod curve;
mod medium;
mod segment;
mod supercooled;

pub use curve::EnthalpyCurve;
pub(crate) use curve::SolidPart;
pub use medium::{MediumCurve, Melt};
pub(crate) use segment::Segment;
