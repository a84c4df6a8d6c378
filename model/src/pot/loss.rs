//! What a pot loses to the air, dry and by evaporation.

use super::{Lid, Pot, PotSize, Wrap};
use crate::provenance::{Datum, Source};

/// Free convection off the side and lid of a pot at 80 degC, W/m2K: Churchill and Chu for the side
/// gives 6.4, the usual 0.54 Ra^(1/4) for the lid 7.9 (computed for 20 cm).
pub const CONVECTION_W_M2K: Datum = Datum::new(6.85, 0.8, Source::Inferred);
/// Radiation off a black pot at 80 degC in air at 25 degC, W/m2K.
pub const RADIATION_W_M2K: Datum = Datum::new(7.9, 0.3, Source::Inferred);
/// A lid is 10 to 20 K colder than the water, and shields it.
pub const LID_FACTOR: Datum = Datum::new(0.9, 0.07, Source::Inferred);
/// A pot in a cloth or quilt of about 30 mm, W/m2K of its whole surface: 0.25 W/K for 20 cm by
/// 12 cm.
pub const WRAPPED_W_M2K: Datum = Datum::new(1.8, 0.6, Source::Inferred);
/// A pot inside the cooker's jacket with the usual leaks, W/m2K of its whole surface: 0.20 W/K for
/// the same pot.
pub const SUNK_W_M2K: Datum = Datum::new(1.45, 0.5, Source::Inferred);

/// Heat taken by evaporation per area and vapour pressure, W/m2Pa, in still air: 0.089 kW/m2kPa
/// (ASHRAE Handbook, Applications, pools; from memory).
pub const POOL_W_M2PA: Datum = Datum::relative(0.089, 0.1, Source::AshraePool);
/// The pool formula stands 20 to 25 % under a handbook table for open tanks.
pub const EVAPORATION_FACTOR: Datum = Datum::new(1.25, 0.15, Source::Inferred);

/// Heat that leaves an open water surface as vapour below the boil, W.
///
/// The two vapour pressures are that of saturated air at the water's temperature and that of the
/// air in the room, Pa. Still air; the lid multiplies by [`Lid::evaporation_share`].
#[must_use]
pub fn evaporation_w(
    surface_m2: f64,
    water_vapour_pressure_pa: f64,
    air_vapour_pressure_pa: f64,
) -> f64 {
    let drive_pa = (water_vapour_pressure_pa - air_vapour_pressure_pa).max(0.0);
    EVAPORATION_FACTOR.value * POOL_W_M2PA.value * surface_m2 * drive_pa
}

/// One standard deviation of the dry loss as a share of it.
const DRY_SPREAD_SHARE: f64 = 0.2;

impl Pot {
    /// Heat lost to still air per kelvin, W/K, evaporation apart: G_P.
    ///
    /// Bare: side and lid, with the emissivity of the kind; the base stands on the store. Wrapped
    /// or sunk: the whole surface. Without its lid the water's own surface, which is black to heat
    /// radiation, takes the lid's place, wrap or no wrap.
    #[must_use]
    pub fn loss_w_k(self, lid: Lid) -> f64 {
        let top_m2 = self.size.base_m2();
        let side_m2 = self.size.side_m2();
        let bare_w_m2k =
            |emissivity: f64| CONVECTION_W_M2K.value + RADIATION_W_M2K.value * emissivity;
        let emissivity = self.kind.props().emissivity.value;
        let open_top_w_k = top_m2 * bare_w_m2k(0.95);
        match (self.wrap, lid) {
            (Wrap::Bare, Lid::On | Lid::Ajar) => {
                (side_m2 + top_m2) * bare_w_m2k(emissivity) * LID_FACTOR.value
            }
            (Wrap::Bare, Lid::Off) => side_m2 * bare_w_m2k(emissivity) + open_top_w_k,
            (Wrap::Wrapped | Wrap::SunkInCooker, _) => {
                let covered_w_m2k = if self.wrap == Wrap::Wrapped {
                    WRAPPED_W_M2K.value
                } else {
                    SUNK_W_M2K.value
                };
                match lid {
                    Lid::On | Lid::Ajar => (side_m2 + 2.0 * top_m2) * covered_w_m2k,
                    Lid::Off => (side_m2 + top_m2) * covered_w_m2k + open_top_w_k,
                }
            }
        }
    }

    /// One standard deviation of [`Pot::loss_w_k`], W/K.
    #[must_use]
    pub fn loss_spread_w_k(self, lid: Lid) -> f64 {
        let share = match self.wrap {
            Wrap::Bare => DRY_SPREAD_SHARE,
            Wrap::Wrapped => WRAPPED_W_M2K.spread_share(),
            Wrap::SunkInCooker => SUNK_W_M2K.spread_share(),
        };
        share * self.loss_w_k(lid)
    }
}

impl PotSize {
    /// Surface of the water, m2.
    #[must_use]
    pub fn water_surface_m2(self) -> f64 {
        self.base_m2()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pot::PotKind;

    fn pot(kind: PotKind, wrap: Wrap) -> Pot {
        Pot {
            kind,
            size: PotSize::Litres4,
            wrap,
        }
    }

    /// Side and lid of a pot of 20 by 12 cm at 80 degC in still air at 25 degC, with emissivity
    /// 0.1, 0.3, 0.9: 0.81, 0.98, 1.49 W/K (computed from Churchill and Chu and 0.54 Ra^(1/4)).
    #[test]
    fn bare_surface_against_the_correlations() {
        for (emissivity, expect) in [(0.1, 0.81), (0.3, 0.98), (0.9, 1.49)] {
            let area_m2 = 0.0754 + 0.0314;
            let actual = area_m2 * (CONVECTION_W_M2K.value + RADIATION_W_M2K.value * emissivity);
            assert!(
                (actual / expect - 1.0).abs() < 0.03,
                "{emissivity}: {actual}"
            );
        }
    }

    /// Insulated all round, 20 by 12 cm: 0.25 W/K wrapped, 0.1 to 0.17 W/K times 1.5 sunk.
    #[test]
    fn covered_pots() {
        let wrapped = pot(PotKind::StainlessSteel, Wrap::Wrapped).loss_w_k(Lid::On);
        let sunk = pot(PotKind::StainlessSteel, Wrap::SunkInCooker).loss_w_k(Lid::On);
        assert!((wrapped - 0.25).abs() < 0.03, "{wrapped}");
        assert!((0.15..0.26).contains(&sunk), "{sunk}");
    }

    /// 1 m2 at 80 degC in air of 25 degC and 50 %, still: 4080 W by the pool formula (vapour
    /// pressures 47.41 and 1.585 kPa, IAPWS).
    #[test]
    fn evaporation_of_the_pool_formula() {
        let actual = evaporation_w(1.0, 47_414.0, 1_585.0) / EVAPORATION_FACTOR.value;
        assert!((actual / 4080.0 - 1.0).abs() < 0.01, "{actual}");
        assert!(evaporation_w(1.0, 1_000.0, 1_585.0) < f64::MIN_POSITIVE);
    }

    /// A pot of 20 cm without its lid loses about 100 W at 60 degC and 315 W at 90 degC (computed;
    /// saturation 19.95 and 70.18 kPa).
    #[test]
    fn an_open_pot_stalls_a_hundred_watts() {
        let open = pot(PotKind::ThinAluminium, Wrap::Bare);
        for (water_c, saturation_pa, expect) in [(60.0, 19_946.0, 100.0), (90.0, 70_182.0, 315.0)] {
            let loss_w = open.loss_w_k(Lid::Off) * (water_c - 25.0)
                + evaporation_w(open.size.water_surface_m2(), saturation_pa, 1_585.0);
            assert!((loss_w / expect - 1.0).abs() < 0.1, "{water_c}: {loss_w}");
        }
    }

    #[test]
    fn a_lid_and_a_wrap_always_help() {
        for kind in PotKind::ALL {
            for size in PotSize::ALL {
                for wrap in Wrap::ALL {
                    let pot = Pot { kind, size, wrap };
                    assert!(pot.loss_w_k(Lid::On) < pot.loss_w_k(Lid::Off), "{pot:?}");
                    assert!(0.0 < pot.loss_spread_w_k(Lid::On));
                }
                let loss = |wrap| Pot { kind, size, wrap }.loss_w_k(Lid::On);
                assert!(loss(Wrap::SunkInCooker) < loss(Wrap::Wrapped));
                assert!(loss(Wrap::Wrapped) < loss(Wrap::Bare));
            }
        }
    }
}
