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

/// Temperature and heat capacity against heat per kilogram of the whole store, above 0 °C.
#[derive(Debug, Clone)]
pub(crate) struct HeatTable {
    low_j_kg: f64,
    step_j_kg: f64,
    temperature_c: Vec<f64>,
    supercools: Option<Supercooling>,
}

/// A melt that stays liquid below its melting point until it nucleates.
#[derive(Debug, Clone)]
struct Supercooling {
    /// Where it does. \[°C\]
    nucleation_c: f64,
    /// Where all of it has melted, and the heat of the store there. \[°C, J/kg\]
    melting_c: f64,
    liquid_j_kg: f64,
    /// Temperature of the liquid, over the same heats as that of the rest.
    temperature_c: Vec<f64>,
}

impl Stuff {
    /// Heat taken from one temperature to the next, both close together. \[J\]
    fn taken_j(&self, from_c: f64, to_c: f64, stays_liquid: bool) -> f64 {
        let middle_c = 0.5 * (from_c + to_c);
        let width_k = to_c - from_c;
        let solid = self.cp_a_j_kgk + self.cp_b_j_kgk2 * middle_c;
        let per_kg = match self.melt {
            Some(melt) if stays_liquid || melt.liquidus_c <= middle_c => {
                melt.cp_liquid_j_kgk * width_k
            }
            Some(melt) if melt.solidus_c < middle_c => {
                // The latent heat holds all that the melting range takes.
                melt.latent_j_kg * width_k / (melt.liquidus_c - melt.solidus_c)
            }
            _ => solid * width_k,
        };
        self.mass_kg * per_kg
    }
}

/// Heat above 0 °C of all at even steps of temperature, and that temperature. \[J, °C\]
fn added_up(stuffs: &[Stuff], stays_liquid: bool) -> Vec<(f64, f64)> {
    let steps = ((HOTTEST_C - COLDEST_C) / FINE_K).round() as i32;
    let (mut heat_j, mut zero_j) = (0.0, 0.0);
    let mut rows = Vec::new();
    for idx in 0..=steps {
        let at_c = COLDEST_C + FINE_K * f64::from(idx);
        rows.push((heat_j, at_c));
        if at_c.abs() < 0.5 * FINE_K {
            zero_j = heat_j;
        }
        let each = stuffs.iter();
        heat_j += each
            .map(|stuff| stuff.taken_j(at_c, at_c + FINE_K, stays_liquid))
            .sum::<f64>();
    }
    for row in &mut rows {
        row.0 -= zero_j;
    }
    rows
}

/// Temperatures at rising heats, straight between the rows and beyond their ends at the first and
/// last. \[°C\]
fn looked_up(rows: &[(f64, f64)], heats_j: impl Iterator<Item = f64>) -> Vec<f64> {
    let mut place = 0;
    heats_j
        .map(|wanted_j| {
            while place + 2 < rows.len() && rows[place + 1].0 < wanted_j {
                place += 1;
            }
            let ((low_j, low_c), (high_j, high_c)) = (rows[place], rows[place + 1]);
            let share = ((wanted_j - low_j) / (high_j - low_j)).clamp(0.0, 1.0);
            low_c + share * (high_c - low_c)
        })
        .collect()
}

impl HeatTable {
    pub(crate) fn new(stuffs: &[Stuff]) -> Self {
        let mass_kg: f64 = stuffs.iter().map(|stuff| stuff.mass_kg).sum();
        let rows = added_up(stuffs, false);
        let low_j_kg = rows.first().map_or(0.0, |row| row.0) / mass_kg;
        let high_j_kg = rows.last().map_or(0.0, |row| row.0) / mass_kg;
        let step_j_kg = (high_j_kg - low_j_kg) / (POINTS - 1) as f64;
        let heats_j = (0..POINTS).map(|idx| (low_j_kg + step_j_kg * idx as f64) * mass_kg);
        Self {
            low_j_kg,
            step_j_kg,
            temperature_c: looked_up(&rows, heats_j),
            supercools: None,
        }
    }

    /// The same store, whose melt stays liquid down to a temperature once all of it has melted.
    pub(crate) fn with_supercooling(mut self, stuffs: &[Stuff], nucleation_c: f64) -> Self {
        let mass_kg: f64 = stuffs.iter().map(|stuff| stuff.mass_kg).sum();
        let melts = stuffs.iter().filter_map(|stuff| stuff.melt);
        let liquidus_c = melts.map(|melt| melt.liquidus_c).fold(COLDEST_C, f64::max);
        let liquid_j_kg = self.heat_j_kg(liquidus_c);
        let rows = added_up(stuffs, true);
        let place = rows.partition_point(|row| row.1 < liquidus_c);
        // The two ways meet at the liquidus.
        let shift_j = rows.get(place).map_or(0.0, |row| row.0) - liquid_j_kg * mass_kg;
        let heats_j = (0..POINTS)
            .map(|idx| (self.low_j_kg + self.step_j_kg * idx as f64) * mass_kg + shift_j);
        self.supercools = Some(Supercooling {
            nucleation_c,
            melting_c: liquidus_c,
            liquid_j_kg,
            temperature_c: looked_up(&rows, heats_j),
        });
        self
    }

    /// Whether a store of these heats is liquid throughout by now, its coldest place this cold: once
    /// all has melted, and until it nucleates.
    pub(crate) fn is_liquid(
        &self,
        was_liquid: bool,
        coldest_c: f64,
        mut heats_j_kg: impl Iterator<Item = f64>,
    ) -> bool {
        self.supercools.as_ref().is_some_and(|supercools| {
            if was_liquid {
                supercools.nucleation_c < coldest_c
            } else {
                // On a wall that is colder than the melting point crystals last.
                supercools.melting_c < coldest_c
                    && heats_j_kg.all(|heat_j_kg| supercools.liquid_j_kg <= heat_j_kg)
            }
        })
    }

    /// Temperature, and heat that warms a kilogram by one kelvin there. \[°C, J/kgK\]
    #[inline]
    pub(crate) fn at(&self, heat_j_kg: f64, is_liquid: bool) -> (f64, f64) {
        let temperature_c = match &self.supercools {
            Some(supercools) if is_liquid => &supercools.temperature_c,
            _ => &self.temperature_c,
        };
        let place = (heat_j_kg - self.low_j_kg) / self.step_j_kg;
        let row = (place.max(0.0) as usize).min(POINTS - 2);
        let (low_c, high_c) = (temperature_c[row], temperature_c[row + 1]);
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
