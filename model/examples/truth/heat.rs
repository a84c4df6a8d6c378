//! Enthalpy of a mixture by a fine table over even steps of heat.

/// What one medium of the mixture is like.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Stuff {
    pub(crate) mass_kg: f64,
    /// Specific heat of the solid, a + b T. \[J/kgK, J/kgK2\]
    pub(crate) cp_a_j_kgk: f64,
    pub(crate) cp_b_j_kgk2: f64,
    pub(crate) melt: Option<Melting>,
}

/// How it melts.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Melting {
    pub(crate) solidus_c: f64,
    pub(crate) liquidus_c: f64,
    pub(crate) latent_j_kg: f64,
    pub(crate) cp_liquid_j_kgk: f64,
}

/// Steps of temperature in which the mixture is added up. \[K\]
const FINE_K: f64 = 0.01;
/// Coldest and hottest store that is looked up. \[°C\]
const COLDEST_C: f64 = -60.0;
const HOTTEST_C: f64 = 700.0;
/// Points of the table.
const POINTS: usize = 16_384;

/// Temperature, heat capacity and molten share against heat per kilogram of the whole store, above
/// 0 °C.
#[derive(Debug, Clone)]
pub(crate) struct HeatTable {
    low_j_kg: f64,
    step_j_kg: f64,
    temperature_c: Vec<f64>,
}

impl Stuff {
    /// Heat taken from one temperature to the next, both close together. \[J\]
    fn taken_j(&self, from_c: f64, to_c: f64) -> f64 {
        let middle_c = 0.5 * (from_c + to_c);
        let width_k = to_c - from_c;
        let solid = self.cp_a_j_kgk + self.cp_b_j_kgk2 * middle_c;
        let per_kg = match self.melt {
            Some(melt) if melt.liquidus_c <= middle_c => melt.cp_liquid_j_kgk * width_k,
            Some(melt) if melt.solidus_c < middle_c => {
                // The latent heat holds all that the melting range takes.
                melt.latent_j_kg * width_k / (melt.liquidus_c - melt.solidus_c)
            }
            _ => solid * width_k,
        };
        self.mass_kg * per_kg
    }
}

impl HeatTable {
    pub(crate) fn new(stuffs: &[Stuff]) -> Self {
        let mass_kg: f64 = stuffs.iter().map(|stuff| stuff.mass_kg).sum();
        let mut rows = Vec::new();
        let (mut heat_j, mut zero_j) = (0.0, 0.0);
        let steps = ((HOTTEST_C - COLDEST_C) / FINE_K).round() as i32;
        let mut at_c = COLDEST_C;
        for idx in 0..=steps {
            rows.push((heat_j, at_c));
            if at_c.abs() < 0.5 * FINE_K {
                zero_j = heat_j;
            }
            let next_c = COLDEST_C + FINE_K * f64::from(idx + 1);
            heat_j += stuffs
                .iter()
                .map(|stuff| stuff.taken_j(at_c, next_c))
                .sum::<f64>();
            at_c = next_c;
        }
        let low_j_kg = -zero_j / mass_kg;
        let high_j_kg = (rows.last().map_or(0.0, |row| row.0) - zero_j) / mass_kg;
        let step_j_kg = (high_j_kg - low_j_kg) / (POINTS - 1) as f64;
        let mut temperature_c = Vec::with_capacity(POINTS);
        let mut place = 0;
        for idx in 0..POINTS {
            let wanted_j = step_j_kg * idx as f64 * mass_kg;
            while place + 2 < rows.len() && rows[place + 1].0 < wanted_j {
                place += 1;
            }
            let ((low_j, low_c), (high_j, high_c)) = (rows[place], rows[place + 1]);
            let share = ((wanted_j - low_j) / (high_j - low_j)).clamp(0.0, 1.0);
            temperature_c.push(low_c + share * (high_c - low_c));
        }
        Self {
            low_j_kg,
            step_j_kg,
            temperature_c,
        }
    }

    /// Temperature, and heat that warms a kilogram by one kelvin there. \[°C, J/kgK\]
    #[inline]
    pub(crate) fn at(&self, heat_j_kg: f64) -> (f64, f64) {
        let place = (heat_j_kg - self.low_j_kg) / self.step_j_kg;
        let row = (place.max(0.0) as usize).min(POINTS - 2);
        let (low_c, high_c) = (self.temperature_c[row], self.temperature_c[row + 1]);
        let rise_k = (high_c - low_c).max(1e-9);
        (
            low_c + (place - row as f64) * rise_k,
            self.step_j_kg / rise_k,
        )
    }

    /// Heat at a temperature. \[J/kg\]
    pub(crate) fn heat_j_kg(&self, at_c: f64) -> f64 {
        let row = self
            .temperature_c
            .partition_point(|held_c| *held_c <= at_c)
            .clamp(1, POINTS - 1);
        let (low_c, high_c) = (self.temperature_c[row - 1], self.temperature_c[row]);
        let share = ((at_c - low_c) / (high_c - low_c).max(1e-9)).clamp(0.0, 1.0);
        self.low_j_kg + self.step_j_kg * ((row - 1) as f64 + share)
    }
}
