//! A stretch of the enthalpy curve with one formula.

/// Temperature against enthalpy between two break points.
///
/// The formula holds beyond the ends too, as a smooth continuation: a solver may try a state a little
/// outside before it finds where the stretch ends.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Segment {
    /// Enthalpy at the lower end, J; minus infinity for the first.
    pub(crate) low_j: f64,
    /// Enthalpy at the upper end, J; infinity for the last.
    pub(crate) high_j: f64,
    /// Temperature at the lower end, degC.
    pub(crate) low_c: f64,
    /// Temperature at the upper end, degC.
    pub(crate) high_c: f64,
    anchor_j: f64,
    anchor_c: f64,
    /// Heat capacity at the anchor, J/K; 0 for a plateau.
    capacity_j_k: f64,
    /// Growth of the heat capacity with temperature, J/K2.
    slope_j_k2: f64,
}

/// Least share of the anchor's heat capacity that the continuation may fall to, squared.
const LEAST_CAPACITY_SQUARED: f64 = 1e-4;

impl Segment {
    /// A stretch of rising temperature through the anchor; the ends are set by the caller.
    pub(crate) fn ramp(
        anchor_c: f64,
        anchor_j: f64,
        capacity_j_k: f64,
        slope_j_k2: f64,
        (low_c, high_c): (f64, f64),
    ) -> Self {
        let mut ramp = Self {
            low_j: f64::NEG_INFINITY,
            high_j: f64::INFINITY,
            low_c,
            high_c,
            anchor_j,
            anchor_c,
            capacity_j_k,
            slope_j_k2,
        };
        if low_c.is_finite() {
            ramp.low_j = ramp.enthalpy_j(low_c);
        }
        if high_c.is_finite() {
            ramp.high_j = ramp.enthalpy_j(high_c);
        }
        ramp
    }

    /// Melting at one temperature.
    pub(crate) fn plateau(t_c: f64, low_j: f64, latent_j: f64) -> Self {
        Self {
            low_j,
            high_j: low_j + latent_j,
            low_c: t_c,
            high_c: t_c,
            anchor_j: low_j,
            anchor_c: t_c,
            capacity_j_k: 0.0,
            slope_j_k2: 0.0,
        }
    }

    /// The same stretch with the zero of enthalpy moved.
    pub(crate) fn lowered_by(mut self, offset_j: f64) -> Self {
        self.low_j -= offset_j;
        self.high_j -= offset_j;
        self.anchor_j -= offset_j;
        self
    }

    /// The formula of this stretch from its lower end down to a temperature.
    pub(crate) fn downwards(&self, low_c: f64) -> Self {
        Self {
            low_j: self.enthalpy_j(low_c),
            high_j: self.low_j,
            low_c,
            high_c: self.low_c,
            ..*self
        }
    }

    pub(crate) fn is_plateau(&self) -> bool {
        self.capacity_j_k <= 0.0
    }

    /// Enthalpy at a temperature, J; the lower end of a plateau.
    pub(crate) fn enthalpy_j(&self, t_c: f64) -> f64 {
        let rise = t_c - self.anchor_c;
        self.anchor_j + rise * (self.capacity_j_k + 0.5 * self.slope_j_k2 * rise)
    }

    /// Temperature, degC, and its derivative by enthalpy, K/J.
    pub(crate) fn temperature(&self, h_j: f64) -> (f64, f64) {
        if self.is_plateau() {
            return (self.anchor_c, 0.0);
        }
        let gained = h_j - self.anchor_j;
        let start = self.capacity_j_k;
        let squared = start * start + 2.0 * self.slope_j_k2 * gained;
        let least = LEAST_CAPACITY_SQUARED * start * start;
        let capacity = squared.max(least).sqrt();
        // This form of the root loses no digits for a small slope.
        (
            self.anchor_c + 2.0 * gained / (start + capacity),
            1.0 / capacity,
        )
    }
}
