//! Small solvers, each with its guarantee stated.

pub(crate) mod cubic;
pub(crate) mod linear;
pub(crate) mod median;
pub(crate) mod rosenbrock;
