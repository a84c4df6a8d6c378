//! Metal in a poorly conducting medium: fins, wires or foam, as one effective conductivity.
//!
//! Whatever the shape, the truth lies between the two layered bounds ([`in_parallel_w_mk`] and
//! [`in_series_w_mk`]). Fins that stand on the seat conduct in parallel with what is between them;
//! beads and turnings that do not touch are Maxwell's spheres; an open foam is Lemlich's network.
//! For heat that comes from the side of a fin into the medium, see [`fin_efficiency`].

use crate::error::{ModelError, positive, within};

/// Metal and the medium round it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Filling {
    metal_w_mk: f64,
    medium_w_mk: f64,
    metal_share: f64,
}

impl Filling {
    /// A filling of so much metal.
    ///
    /// # Arguments
    ///
    /// * `metal_w_mk`, `medium_w_mk`: conductivities, above 0.
    /// * `metal_share`: of the volume, 0 to 1.
    ///
    /// # Errors
    ///
    /// [`ModelError`] with the first value that is out of range.
    pub fn new(metal_w_mk: f64, medium_w_mk: f64, metal_share: f64) -> Result<Self, ModelError> {
        Ok(Self {
            metal_w_mk: positive("metal_w_mk", metal_w_mk)?,
            medium_w_mk: positive("medium_w_mk", medium_w_mk)?,
            metal_share: within("metal_share", metal_share, 0.0, 1.0)?,
        })
    }

    /// Fins or rods from the seat right through the medium: side by side, W/mK. No filling of this
    /// share conducts better.
    #[must_use]
    pub fn in_parallel_w_mk(self) -> f64 {
        self.metal_share * self.metal_w_mk + (1.0 - self.metal_share) * self.medium_w_mk
    }

    /// Plates that lie across the way of the heat: one behind the other, W/mK. No filling of this
    /// share conducts worse.
    #[must_use]
    pub fn in_series_w_mk(self) -> f64 {
        1.0 / (self.metal_share / self.metal_w_mk + (1.0 - self.metal_share) / self.medium_w_mk)
    }

    /// Beads or turnings that do not touch, W/mK: Maxwell, A Treatise on Electricity and Magnetism
    /// (1873), art. 314; the lower bound of Hashin and Shtrikman, J. Appl. Phys. 33 (1962) 3125, for
    /// whatever looks the same in all directions.
    #[must_use]
    pub fn beads_w_mk(self) -> f64 {
        maxwell_w_mk(self.medium_w_mk, self.metal_w_mk, self.metal_share)
    }

    /// Medium in closed cells of metal, W/mK: Maxwell's formula with the two changed over; the upper
    /// bound of Hashin and Shtrikman.
    #[must_use]
    pub fn cells_w_mk(self) -> f64 {
        maxwell_w_mk(self.metal_w_mk, self.medium_w_mk, 1.0 - self.metal_share)
    }

    /// Open foam of struts, W/mK: Lemlich, J. Colloid Interface Sci. 64 (1978) 107, a third of the
    /// metal conducts along the heat's way; the medium fills the rest. For up to 15 % of metal.
    ///
    /// Real foams have thinner struts and lumps at the nodes and reach 0.6 to 1.1 of it (from
    /// memory).
    #[must_use]
    pub fn foam_w_mk(self) -> f64 {
        self.metal_share / 3.0 * self.metal_w_mk + (1.0 - self.metal_share) * self.medium_w_mk
    }
}

/// Maxwell's formula for spheres of `inner` that take a share of the volume of `outer`.
fn maxwell_w_mk(outer: f64, inner: f64, inner_share: f64) -> f64 {
    let sum = inner + 2.0 * outer;
    let gap = inner_share * (inner - outer);
    outer * (sum + 2.0 * gap) / (sum - gap)
}

/// Share of its heat that a straight fin of even thickness gives against one that is hot all along:
/// `tanh(m L)/(m L)`, `m = sqrt(2 h/(k t))`. Incropera et al., Fundamentals of Heat and Mass
/// Transfer, eq. 3.94 (tip insulated).
///
/// # Arguments
///
/// * `h_w_m2k`: from a side of the fin into the medium; for a layer frozen on it, `k/thickness`.
/// * `fin_w_mk`: conductivity of the metal.
/// * `thickness_m`, `length_m`: of the fin.
#[must_use]
pub fn fin_efficiency(h_w_m2k: f64, fin_w_mk: f64, thickness_m: f64, length_m: f64) -> f64 {
    let ml = (2.0 * h_w_m2k / (fin_w_mk * thickness_m)).sqrt() * length_m;
    if ml < 1e-4 { 1.0 } else { libm::tanh(ml) / ml }
}

/// From a finned seat into a melt of which a share has frozen, W/K.
///
/// Each gap between two fins freezes from its bottom and from both sides. Bottom and fins act side by
/// side; the frozen share lies on both in the same thickness, up to half a gap, so the resistance of
/// a salt between fins stops growing where half a gap is solid.
///
/// # Arguments
///
/// * `solid_share`: of the medium, 0 to 1.
/// * `medium_w_mk`: of its solid.
/// * `fins`: what stands on the seat.
#[must_use]
pub fn finned_layer_w_k(solid_share: f64, medium_w_mk: f64, fins: &Fins) -> f64 {
    let gap_m = fins.gap_m();
    // A thickness d on the bottom and on both sides of a gap g by a length L fills
    // 1 - (1 - d/L) (1 - 2 d/g) of it.
    let (mut low_m, mut high_m) = (0.0, 0.5 * gap_m.min(2.0 * fins.length_m));
    let solid_share = solid_share.clamp(1e-6, 1.0);
    for _ in 0..50 {
        let middle_m = 0.5 * (low_m + high_m);
        let filled = 1.0 - (1.0 - middle_m / fins.length_m) * (1.0 - 2.0 * middle_m / gap_m);
        if filled < solid_share {
            low_m = middle_m;
        } else {
            high_m = middle_m;
        }
    }
    let h_w_m2k = medium_w_mk / (0.5 * (low_m + high_m));
    let efficiency = fin_efficiency(h_w_m2k, fins.metal_w_mk, fins.thickness_m, fins.length_m);
    let share = fins.thickness_m / fins.pitch_m;
    let sides_m2 = 2.0 * fins.length_m / fins.pitch_m * fins.seat_m2;
    h_w_m2k * ((1.0 - share) * fins.seat_m2 + efficiency * sides_m2)
}

/// Straight fins that stand on the seat and reach into the medium.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fins {
    /// Conductivity of the metal, W/mK.
    pub metal_w_mk: f64,
    /// Thickness of one, m.
    pub thickness_m: f64,
    /// How far it reaches, m.
    pub length_m: f64,
    /// From one to the next, m; more than the thickness.
    pub pitch_m: f64,
    /// Area of the seat they stand on, m2.
    pub seat_m2: f64,
}

impl Fins {
    /// The same fins, if they make sense.
    ///
    /// # Errors
    ///
    /// [`ModelError`] with the first value that is out of range.
    pub fn checked(self) -> Result<Self, ModelError> {
        positive("metal_w_mk", self.metal_w_mk)?;
        positive("thickness_m", self.thickness_m)?;
        positive("length_m", self.length_m)?;
        positive("pitch_m", self.pitch_m - self.thickness_m)?;
        positive("seat_m2", self.seat_m2)?;
        Ok(self)
    }

    /// Between two fins, m.
    #[must_use]
    pub fn gap_m(&self) -> f64 {
        self.pitch_m - self.thickness_m
    }

    /// Conductivity of the solid that the network's layer needs, W/mK, so that a store which is half
    /// frozen over `depth_m` lets through what these fins let through.
    #[must_use]
    pub fn layer_conductivity_w_mk(&self, medium_w_mk: f64, depth_m: f64) -> f64 {
        finned_layer_w_k(0.5, medium_w_mk, self) * 0.5 * depth_m / self.seat_m2
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const SALT_W_MK: f64 = 0.65;
    const ALUMINIUM_W_MK: f64 = 200.0;

    /// Open-cell aluminium foam with 8 % of metal (6101, 218 W/mK): measured in vacuum and air 5.3 to
    /// 6.2 W/mK (Calmidi and Mahajan, J. Heat Transfer 121 (1999) 466, from memory; fit
    /// k = 0.181 (1 - porosity)^0.763 of the metal's, which gives 5.7).
    #[test]
    fn foam_against_a_measured_one() {
        let foam = Filling::new(218.0, 0.0265, 0.08).unwrap().foam_w_mk();
        let measured = 0.0265 + 0.181 * 0.08_f64.powf(0.763) * 218.0;
        assert!((measured - 5.8).abs() < 0.3, "{measured}");
        assert!((foam / measured - 1.0).abs() < 0.1, "{foam} {measured}");
    }

    /// Maxwell's spheres that conduct without limit, 10 % of the volume: (1 + 2 v)/(1 - v) = 1.333
    /// times the medium, from his formula.
    #[test]
    fn beads_help_little() {
        let beads = Filling::new(1e9, SALT_W_MK, 0.1).unwrap().beads_w_mk();
        assert!((beads / SALT_W_MK - 1.2 / 0.9).abs() < 1e-4, "{beads}");
    }

    /// Ten per cent of aluminium in fins carry thirty times what solid salt does.
    #[test]
    fn fins_conduct_in_parallel() {
        let fins = Filling::new(ALUMINIUM_W_MK, SALT_W_MK, 0.1).unwrap();
        assert!((fins.in_parallel_w_mk() - 20.585).abs() < 1e-9);
        assert!((fins.in_series_w_mk() - 0.721_965).abs() < 1e-4);
    }

    /// Incropera et al., figure 3.18 and eq. 3.94: m L = 1 gives 0.762, m L = 2 gives 0.482.
    #[test]
    fn fin_efficiency_of_the_textbook() {
        for (ml, expect) in [(1.0_f64, 0.7616), (2.0, 0.4820), (0.5, 0.9242)] {
            // m = sqrt(2 h/(k t)) = ml with L = 1 m.
            let eta = fin_efficiency(0.5 * ml * ml * 200.0 * 1e-3, 200.0, 1e-3, 1.0);
            assert!((eta - expect).abs() < 1e-4, "{ml}: {eta}");
        }
        assert!((fin_efficiency(0.0, 200.0, 1e-3, 0.1) - 1.0).abs() < 1e-12);
    }

    const FINS: Fins = Fins {
        metal_w_mk: ALUMINIUM_W_MK,
        thickness_m: 1.5e-3,
        length_m: 0.06,
        pitch_m: 0.012,
        seat_m2: 0.0314,
    };

    /// Without fins 10 mm of solid salt let 176 W through 112 K on a disc of 20 cm (222 to 110 degC,
    /// computed 176.4 W with 0.5 W/mK); with fins of 1.5 mm every 12 mm half a store that is
    /// frozen lets many times that through.
    #[test]
    fn fins_against_a_bare_layer() {
        let bare_w = 0.5_f64 * 0.031_416 / 0.010 * 112.0;
        assert!((bare_w - 176.0).abs() < 1.0, "{bare_w}");
        let finned_w_k = finned_layer_w_k(0.5, SALT_W_MK, &FINS);
        assert!((8.0..80.0).contains(&finned_w_k), "{finned_w_k}");
        let layer = FINS.layer_conductivity_w_mk(SALT_W_MK, 0.08);
        // The metal's own share in parallel bounds it from above, the bare salt from below.
        let most = Filling::new(ALUMINIUM_W_MK, SALT_W_MK, 0.125).unwrap();
        assert!(
            SALT_W_MK < layer && layer < 3.0 * most.in_parallel_w_mk(),
            "{layer}"
        );
    }

    #[test]
    fn senseless_fillings_are_refused() {
        assert!(Filling::new(200.0, 0.5, 1.1).is_err());
        assert!(Filling::new(0.0, 0.5, 0.1).is_err());
        let fins = Fins {
            pitch_m: 1e-3,
            ..FINS
        };
        assert!(fins.checked().is_err());
        assert!(FINS.checked().is_ok());
    }

    proptest! {
        #[test]
        fn everything_lies_between_the_layered_bounds(
            metal in 10.0..400.0_f64, medium in 0.1..5.0_f64, share in 0.0..1.0_f64,
        ) {
            let filling = Filling::new(metal, medium, share).unwrap();
            let (low, high) = (filling.in_series_w_mk(), filling.in_parallel_w_mk());
            for k in [filling.beads_w_mk(), filling.cells_w_mk()] {
                prop_assert!(low * (1.0 - 1e-9) <= k && k <= high * (1.0 + 1e-9));
            }
            prop_assert!(filling.beads_w_mk() <= filling.cells_w_mk() * (1.0 + 1e-9));
            prop_assert!(filling.foam_w_mk() <= high);
        }

        #[test]
        fn a_finned_seat_lets_less_through_as_it_freezes(share in 0.01..0.9_f64) {
            let now = finned_layer_w_k(share, SALT_W_MK, &FINS);
            let later = finned_layer_w_k(share + 0.1, SALT_W_MK, &FINS);
            prop_assert!(0.0 < later && later < now);
        }
    }
}
