//! Still air as a conductor of heat: transport properties, radiation across a gap, and the flow
//! that sets in when the gap is wide.

/// 0 degC in kelvin.
const ZERO_C_K: f64 = 273.15;
/// Stefan-Boltzmann constant, W/m2K4 (CODATA 2018).
const STEFAN_BOLTZMANN_W_M2K4: f64 = 5.670_374_419e-8;
/// Standard gravity, m/s2.
const GRAVITY_M_S2: f64 = 9.806_65;
/// Specific heat capacity of dry air between 0 and 300 degC, J/kgK (from memory, within 2 %).
const AIR_CP_J_KGK: f64 = 1012.0;
/// Specific gas constant of dry air, J/kgK (U.S. Standard Atmosphere 1976).
const AIR_GAS_CONSTANT_J_KGK: f64 = 287.053;
/// Pressure to which the convection in a gap is worked out, Pa.
const STANDARD_PRESSURE_PA: f64 = 101_325.0;

/// Conductivity of air at a temperature in degC, in W/mK; the pressure does not matter.
///
/// U.S. Standard Atmosphere 1976, eq. 53.
#[must_use]
pub fn conductivity_w_mk(temperature_c: f64) -> f64 {
    let t_k = temperature_c + ZERO_C_K;
    2.646_38e-3 * libm::pow(t_k, 1.5) / (t_k + 245.4 * libm::pow(10.0_f64, -12.0 / t_k))
}

/// A temperature in degC, in K.
#[inline]
pub(crate) fn kelvin(temperature_c: f64) -> f64 {
    temperature_c + ZERO_C_K
}

/// A cubic and its slope.
#[inline]
fn cubic(k: [f64; 4], x: f64) -> (f64, f64) {
    (
        k[0] + x * (k[1] + x * (k[2] + x * k[3])),
        k[1] + x * (2.0 * k[2] + x * 3.0 * k[3]),
    )
}

/// [`conductivity_w_mk`] and its slope, W/mK2, as a cubic: within 0.01 % of it from -60 to 420 degC,
/// and within 0.3 % up to 600.
#[inline]
pub(crate) fn conductivity_and_slope(temperature_c: f64) -> (f64, f64) {
    let k = [
        2.413_839_17e-2,
        7.974_818_21e-5,
        -3.933_328_08e-8,
        1.751_228_55e-11,
    ];
    cubic(k, temperature_c)
}

/// Viscosity of air, Pa s, and its slope as a cubic: within 0.1 % of Sutherland's law from -20 to
/// 420 degC.
#[inline]
fn viscosity_and_slope(temperature_c: f64) -> (f64, f64) {
    let k = [
        1.716_205_41e-5,
        4.911_708_74e-8,
        -3.638_499_26e-11,
        2.369_904_80e-14,
    ];
    cubic(k, temperature_c)
}

/// How readily the air of a level gap that is heated from below turns over.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Steadiness {
    /// Rayleigh number per kelvin, times temperature cubed, viscosity and conductivity.
    scale: f64,
}

/// By what convection multiplies the heat through such a gap.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Turned {
    /// Nusselt number.
    pub(crate) nusselt: f64,
    /// Its growth with the mean temperature and with the difference, 1/K.
    pub(crate) by_mean: f64,
    pub(crate) by_rise: f64,
}

impl Steadiness {
    /// A gap of this width, m.
    pub(crate) fn of(gap_m: f64) -> Self {
        let per_gas = STANDARD_PRESSURE_PA / AIR_GAS_CONSTANT_J_KGK;
        Self {
            scale: GRAVITY_M_S2 * gap_m * gap_m * gap_m * per_gas * per_gas * AIR_CP_J_KGK,
        }
    }

    /// With the lower face hotter by this, K; still where it is colder.
    #[inline]
    pub(crate) fn nusselt(&self, mean_c: f64, rise_k: f64) -> Turned {
        let mean_k = kelvin(mean_c);
        let (k_w_mk, k_slope) = conductivity_and_slope(mean_c);
        let (viscosity, viscosity_slope) = viscosity_and_slope(mean_c);
        let per_k = self.scale / (mean_k * mean_k * mean_k * viscosity * k_w_mk);
        let (nusselt, slope) = level_nusselt_and_slope(rise_k * per_k);
        let by_rise = slope * per_k;
        let fall = 3.0 / mean_k + viscosity_slope / viscosity + k_slope / k_w_mk;
        Turned {
            nusselt,
            by_mean: -by_rise * rise_k * fall,
            by_rise,
        }
    }

    /// A figure that stands for it.
    pub(crate) fn figure(&self) -> f64 {
        self.scale
    }
}

/// Kinematic viscosity of air at one atmosphere, m2/s: Sutherland's law, U.S. Standard Atmosphere
/// 1976, eq. 51.
fn kinematic_viscosity_m2_s(temperature_c: f64) -> f64 {
    let t_k = temperature_c + ZERO_C_K;
    let viscosity_pa_s = 1.458e-6 * libm::pow(t_k, 1.5) / (t_k + 110.4);
    viscosity_pa_s * AIR_GAS_CONSTANT_J_KGK * t_k / STANDARD_PRESSURE_PA
}

/// Thermal diffusivity of air at one atmosphere, m2/s.
fn diffusivity_m2_s(temperature_c: f64) -> f64 {
    let t_k = temperature_c + ZERO_C_K;
    let density_kg_m3 = STANDARD_PRESSURE_PA / (AIR_GAS_CONSTANT_J_KGK * t_k);
    conductivity_w_mk(temperature_c) / (density_kg_m3 * AIR_CP_J_KGK)
}

/// Radiation between two parallel grey faces as a conductance per area, W/m2K: exact for the two
/// temperatures, not the linear form.
#[must_use]
pub fn radiation_w_m2k(hot_c: f64, cold_c: f64, hot_emissivity: f64, cold_emissivity: f64) -> f64 {
    let (hot_k, cold_k) = (kelvin(hot_c), kelvin(cold_c));
    radiant_w_m2k4(hot_emissivity, cold_emissivity)
        * (hot_k * hot_k + cold_k * cold_k)
        * (hot_k + cold_k)
}

/// Stefan's constant, lessened by the greyness of two parallel faces, W/m2K4.
pub(crate) fn radiant_w_m2k4(hot_emissivity: f64, cold_emissivity: f64) -> f64 {
    STEFAN_BOLTZMANN_W_M2K4 / (1.0 / hot_emissivity + 1.0 / cold_emissivity - 1.0)
}

/// Nusselt number of an upright air layer: 1 while the air stands still, then MacGregor and Emery
/// (1969), Nu = 0.42 Ra^(1/4) Pr^0.012 (H/L)^-0.3, with the factor of the height taken at 10 gaps.
fn gap_nusselt(gap_m: f64, hot_c: f64, cold_c: f64) -> f64 {
    (0.42 * libm::pow(rayleigh(gap_m, hot_c, cold_c), 0.25) * libm::pow(10.0_f64, -0.3)).max(1.0)
}

/// Rayleigh number of an air layer at one atmosphere.
fn rayleigh(gap_m: f64, hot_c: f64, cold_c: f64) -> f64 {
    let mean_c = 0.5 * (hot_c + cold_c);
    let mean_k = mean_c + ZERO_C_K;
    GRAVITY_M_S2 * (hot_c - cold_c).abs() * gap_m.powi(3)
        / (mean_k * kinematic_viscosity_m2_s(mean_c) * diffusivity_m2_s(mean_c))
}

/// Air layer in a jacket: conduction or convection, and radiation between its faces, W/m2K.
#[must_use]
pub fn layer_w_m2k(
    gap_m: f64,
    hot_c: f64,
    cold_c: f64,
    hot_emissivity: f64,
    cold_emissivity: f64,
) -> f64 {
    let mean_c = 0.5 * (hot_c + cold_c);
    gap_nusselt(gap_m, hot_c, cold_c) * conductivity_w_mk(mean_c) / gap_m
        + radiation_w_m2k(hot_c, cold_c, hot_emissivity, cold_emissivity)
}

/// Level air layer that is heated from below, as under a pot over a hot plate: conduction or
/// convection, and radiation between its faces, W/m2K.
///
/// Hollands, Unny, Raithby and Konicek, J. Heat Transfer 98 (1976) 189, without tilt:
/// Nu = 1 + 1.44 (1 - 1708/Ra) + ((Ra/5830)^(1/3) - 1), each bracket only where it is positive.
#[must_use]
pub fn layer_from_below_w_m2k(
    gap_m: f64,
    hot_c: f64,
    cold_c: f64,
    hot_emissivity: f64,
    cold_emissivity: f64,
) -> f64 {
    let mean_c = 0.5 * (hot_c + cold_c);
    level_nusselt(rayleigh(gap_m, hot_c, cold_c)) * conductivity_w_mk(mean_c) / gap_m
        + radiation_w_m2k(hot_c, cold_c, hot_emissivity, cold_emissivity)
}

fn level_nusselt(rayleigh: f64) -> f64 {
    level_nusselt_and_slope(rayleigh).0
}

#[inline]
fn level_nusselt_and_slope(rayleigh: f64) -> (f64, f64) {
    if rayleigh <= 1708.0 {
        return (1.0, 0.0);
    }
    let first = 1708.0 / rayleigh;
    let (mut nusselt, mut slope) = (1.0 + 1.44 * (1.0 - first), 1.44 * first / rayleigh);
    if 5830.0 < rayleigh {
        let second = libm::cbrt(rayleigh / 5830.0);
        nusselt += second - 1.0;
        slope += second / (3.0 * rayleigh);
    }
    (nusselt, slope)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Hollands et al. (1976), by hand: nothing moves up to 1708; at 5830 the first bracket gives
    /// 2.018; at 1e5 the two give 3.99.
    #[test]
    fn level_layers_by_hand() {
        assert!((level_nusselt(1700.0) - 1.0).abs() < 1e-12);
        assert!((level_nusselt(5830.0) - 2.0181).abs() < 1e-3);
        assert!(
            (level_nusselt(1e5) - 3.9944).abs() < 0.01,
            "{}",
            level_nusselt(1e5)
        );
        let narrow = layer_from_below_w_m2k(0.005, 250.0, 60.0, 0.9, 0.9);
        assert!(narrow < layer_from_below_w_m2k(0.003, 250.0, 60.0, 0.9, 0.9));
    }

    /// Reference: CoolProp 8.0.0, dry air at one atmosphere.
    #[test]
    fn conductivity_against_coolprop() {
        for (t_c, expect) in [
            (25.0, 0.0263),
            (100.0, 0.0316),
            (200.0, 0.0383),
            (300.0, 0.0444),
        ] {
            let actual = conductivity_w_mk(t_c);
            assert!((actual / expect - 1.0).abs() < 0.015, "{t_c}: {actual}");
        }
    }

    /// Cengel, Heat and Mass Transfer: plates at 800 K (0.2) and 500 K (0.7) exchange 3625 W/m2.
    #[test]
    fn parallel_plates() {
        let flux = 300.0 * radiation_w_m2k(800.0 - 273.15, 500.0 - 273.15, 0.2, 0.7);
        assert!((flux / 3625.6 - 1.0).abs() < 0.001, "{flux}");
    }

    /// Air near 350 K: kinematic viscosity 20.92e-6, diffusivity 29.9e-6 m2/s (Incropera, table
    /// A.4, from memory).
    #[test]
    fn transport_against_the_textbook() {
        assert!((kinematic_viscosity_m2_s(76.85) / 20.92e-6 - 1.0).abs() < 0.02);
        assert!((diffusivity_m2_s(76.85) / 29.9e-6 - 1.0).abs() < 0.02);
    }

    #[test]
    fn a_narrow_gap_stands_still_and_a_wide_one_does_not() {
        assert!(gap_nusselt(0.005, 200.0, 50.0) < 1.0 + 1e-12);
        assert!(1.2 < gap_nusselt(0.03, 200.0, 50.0));
    }

    /// Foil on the faces is worth more than the width of the gap.
    #[test]
    fn foil_beats_width() {
        let bare = layer_w_m2k(0.02, 200.0, 50.0, 0.9, 0.9);
        let wider = layer_w_m2k(0.04, 200.0, 50.0, 0.9, 0.9);
        let foil = layer_w_m2k(0.02, 200.0, 50.0, 0.05, 0.9);
        assert!(foil < 0.6 * bare);
        assert!(foil < wider);
    }
}
