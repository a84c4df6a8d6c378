//! Specific heat of food from what it is made of.

/// Shares of the mass of a food, adding up to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Composition {
    /// Water.
    pub water: f64,
    /// Protein.
    pub protein: f64,
    /// Fat.
    pub fat: f64,
    /// Digestible carbohydrate.
    pub carbohydrate: f64,
    /// Fibre.
    pub fibre: f64,
    /// Ash.
    pub ash: f64,
}

/// Specific heat between 0 and 150 degC by Choi and Okos (1986), J/kgK; coefficients as in ASHRAE
/// Handbook, Refrigeration, chapter 9.
///
/// Its line for water is 1.3 % under the steam tables at 20 degC: for free cooking water use those.
#[must_use]
pub fn choi_okos_j_kgk(composition: Composition, temperature_c: f64) -> f64 {
    let t = temperature_c;
    let part = |a: f64, b: f64, c: f64| a + (b + c * t) * t;
    composition.water * part(4128.9, -9.0864e-2, 5.4731e-3)
        + composition.protein * part(2008.2, 1.2089, -1.3129e-3)
        + composition.fat * part(1984.2, 1.4733, -4.8008e-3)
        + composition.carbohydrate * part(1548.8, 1.9625, -5.9399e-3)
        + composition.fibre * part(1845.9, 1.8306, -4.6509e-3)
        + composition.ash * part(1092.6, 1.8896, -3.6817e-3)
}

/// Specific heat above freezing by Siebel (1892), J/kgK, from the shares of water and fat: fit for
/// fresh food, far too low for dry grain.
#[must_use]
pub fn siebel_j_kgk(water: f64, fat: f64) -> f64 {
    4187.0 * water + 1675.0 * fat + 837.0 * (1.0 - water - fat)
}

#[cfg(test)]
mod tests {
    use super::*;

    const POTATO: Composition = Composition {
        water: 0.793,
        protein: 0.021,
        fat: 0.001,
        carbohydrate: 0.153,
        fibre: 0.021,
        ash: 0.011,
    };

    /// Raw potato: 3616 and 3637 J/kgK at 25 and 60 degC by the coefficients as CoolProp 8.0.0 has
    /// them; 3493 by Siebel.
    #[test]
    fn potato() {
        assert!((choi_okos_j_kgk(POTATO, 25.0) - 3616.0).abs() < 1.0);
        assert!((choi_okos_j_kgk(POTATO, 60.0) - 3637.0).abs() < 1.0);
        assert!((siebel_j_kgk(0.793, 0.001) - 3493.0).abs() < 2.0);
    }

    /// Dry milled rice (12 % water, 7 % protein, 80 % carbohydrate; from memory): the table's
    /// figure at 60 degC.
    #[test]
    fn dry_rice() {
        let rice = Composition {
            water: 0.12,
            protein: 0.07,
            fat: 0.006,
            carbohydrate: 0.793,
            fibre: 0.005,
            ash: 0.006,
        };
        let cp = choi_okos_j_kgk(rice, 60.0);
        assert!((cp / 1970.0 - 1.0).abs() < 0.02, "{cp}");
    }
}
