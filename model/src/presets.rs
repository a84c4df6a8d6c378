//! Cookers as people build them, to start a description from.
//!
//! Common practice, no source: masses, sizes and panels are what such builds commonly have; each
//! household changes them to what stands in its kitchen.

mod recipe;

use crate::carry::CarriedCan;
use crate::concentrator::{Concentrator, Receiver};
use crate::cooker::{
    Carried, Charge, Charging, Contact, Cooker, Panels, SecondCharge, Spreads, Store,
};
use crate::flask::{Flask, Neck, SILVERED_EMISSIVITY, SOUND_PA};
use crate::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket, LidFit};
use crate::panel::{Drive, Heater};
use crate::pot::{Pot, PotKind, Wrap};

/// A way of building.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Preset {
    /// A block of aluminium in perlite.
    AluminiumInPerlite,
    /// A plate of cast iron or steel in rock wool.
    SteelInRockWool,
    /// Soapstone in vermiculite.
    SoapstoneInVermiculite,
    /// A bucket of dry sand in perlite, the pot let in.
    SandInPerlite,
    /// Erythritol with metal fins in a can, in glass wool.
    ErythritolInGlassWool,
    /// Nitrate salt with metal fins in a steel can, in ceramic fibre.
    NitrateInCeramicFibre,
    /// The element under the pot, no store.
    StraightToPot,
    /// Erythritol with metal fins in a can under the pot.
    ErythritolUnderPot,
    /// Concrete in rock wool.
    ConcreteInRockWool,
    /// A heater cast in mortar in a bucket of perlite, the pot above it over a gap of air.
    MortarUnderAirGap,
    /// Nitrate salt in a can without fins.
    BareNitrate,
    /// The same can, charged outside, carried to the kitchen and turned over.
    NitrateCarried,
    /// Nitrate salt with fins, charged by a dish that follows the sun.
    NitrateUnderDish,
    /// A block of aluminium in a wide vacuum flask.
    AluminiumInFlask,
    /// A block of aluminium in perlite, with an element on the grid for dark days.
    AluminiumAndGrid,
}

impl Preset {
    /// Every preset, the commonest first.
    pub const ALL: [Self; 15] = [
        Self::AluminiumInPerlite,
        Self::SteelInRockWool,
        Self::SoapstoneInVermiculite,
        Self::SandInPerlite,
        Self::ErythritolInGlassWool,
        Self::NitrateInCeramicFibre,
        Self::StraightToPot,
        Self::ErythritolUnderPot,
        Self::ConcreteInRockWool,
        Self::MortarUnderAirGap,
        Self::BareNitrate,
        Self::NitrateCarried,
        Self::NitrateUnderDish,
        Self::AluminiumInFlask,
        Self::AluminiumAndGrid,
    ];

    /// A stable name, for forms and tests.
    pub const fn key(self) -> &'static str {
        match self {
            Self::AluminiumInPerlite => "aluminium_in_perlite",
            Self::SteelInRockWool => "steel_in_rock_wool",
            Self::SoapstoneInVermiculite => "soapstone_in_vermiculite",
            Self::SandInPerlite => "sand_in_perlite",
            Self::ErythritolInGlassWool => "erythritol_in_glass_wool",
            Self::NitrateInCeramicFibre => "nitrate_in_ceramic_fibre",
            Self::StraightToPot => "straight_to_pot",
            Self::ErythritolUnderPot => "erythritol_under_pot",
            Self::ConcreteInRockWool => "concrete_in_rock_wool",
            Self::MortarUnderAirGap => "mortar_under_air_gap",
            Self::BareNitrate => "bare_nitrate",
            Self::NitrateCarried => "nitrate_carried",
            Self::NitrateUnderDish => "nitrate_under_dish",
            Self::AluminiumInFlask => "aluminium_in_flask",
            Self::AluminiumAndGrid => "aluminium_and_grid",
        }
    }

    /// Whether its store holds a nitrate, which must meet nothing that burns.
    pub fn holds_nitrate(self) -> bool {
        let mut charges = self.recipe().charges.iter();
        charges.any(|(medium, _)| medium.props().chemistry.is_oxidiser())
    }

    /// The cooker, on so many watts of panels that look at the sun from this latitude.
    ///
    /// Panels above 180 W are taken as two or more of equal size side by side. The resistor fits
    /// them at three quarters of full sun, straight on the panel.
    ///
    /// # Arguments
    ///
    /// * `panels_w`: rated power of all panels. \[W\]
    /// * `latitude_deg`: north positive. \[deg\]
    pub fn cooker(self, panels_w: f64, latitude_deg: f64) -> Cooker {
        let recipe = self.recipe();
        let mut in_parallel = 1;
        while 180.0 * f64::from(in_parallel) < panels_w && in_parallel < 20 {
            in_parallel += 1;
        }
        Cooker {
            panels: Panels {
                module_w: panels_w / f64::from(in_parallel),
                sheet: None,
                in_series: 1,
                in_parallel,
                tilt_deg: latitude_deg.abs().clamp(10.0, 40.0).round(),
                azimuth_deg: if latitude_deg < 0.0 { 0.0 } else { 180.0 },
            },
            heater: Heater {
                drive: Drive::Direct,
                resistance_ohm: resistance_ohm(panels_w),
                wire_ohm: 0.1,
                alpha_per_k: 0.0,
            },
            store: Store {
                charges: recipe
                    .charges
                    .iter()
                    .map(|&(medium, mass_kg)| Charge { medium, mass_kg })
                    .collect(),
                metal: recipe.metal,
                depth_m: recipe.depth_m,
                cutout_c: recipe.cutout_c,
                filled_on: None,
                converted: 0.0,
                capacity_share: 1.0,
            },
            jacket: self.jacket(),
            contact: Contact {
                seat: recipe.seat,
                measured_w_m2k: None,
            },
            pot: Pot {
                kind: PotKind::ThickAluminium,
                size: recipe.size,
                wrap: Wrap::SunkInCooker,
            },
            charging: self.charging(),
            carried: self.carried(),
            pot_loss_share: 1.0,
            spreads: Spreads::default(),
        }
    }

    fn jacket(self) -> Jacket {
        if self == Self::AluminiumInFlask {
            return Jacket::Flask {
                flask: WIDE_FLASK,
                wall_j_k: 400.0,
            };
        }
        let recipe = self.recipe();
        Jacket::Layers(LayeredJacket {
            shape: JacketShape::Cylinder {
                inner_radius_m: recipe.radius_m,
                inner_height_m: recipe.height_m,
            },
            layers: vec![JacketLayer {
                kind: LayerKind::Insulation {
                    material: recipe.insulation,
                },
                thickness_m: recipe.thickness_m,
            }],
            lid: LidFit::Ordinary,
            through_rods: 0,
        })
    }

    fn charging(self) -> Charging {
        Charging {
            more_elements_ohm: Vec::new(),
            concentrator: (self == Self::NitrateUnderDish).then_some(DISH),
            second: (self == Self::AluminiumAndGrid).then_some(GRID),
        }
    }

    fn carried(self) -> Option<Carried> {
        (self == Self::NitrateCarried).then_some(Carried {
            can: WRAPPED_CAN,
            way_s: 600.0,
            turned_over: true,
        })
    }
}

/// A wide silvered flask of steel.
pub const WIDE_FLASK: Flask = Flask {
    inner_radius_m: 0.11,
    inner_height_m: 0.2,
    gap_m: 0.008,
    emissivity: SILVERED_EMISSIVITY.value,
    pressure_pa: SOUND_PA.value,
    neck: Neck {
        wall_w_mk: 16.0,
        wall_m: 0.5e-3,
        radius_m: 0.1,
        length_m: 0.06,
        stopper_w_mk: 0.06,
    },
};

/// A dish that one person turns: a metre and a half, a black plate as receiver.
pub const DISH: Concentrator = Concentrator {
    aperture_m2: 1.5,
    optical_efficiency: 0.6,
    receiver: Receiver {
        area_m2: 0.03,
        emissivity: 0.9,
        convection_w_m2k: 12.0,
    },
};

/// An element on the grid.
pub const GRID: SecondCharge = SecondCharge {
    power_w: 500.0,
    share: 0.95,
};

/// A can of some nine kilograms of salt, in a cloth of mineral fibre while it is carried.
pub const WRAPPED_CAN: CarriedCan = CarriedCan {
    area_m2: 0.16,
    emissivity: 0.8,
    wrap_m: 0.03,
    wrap_w_mk: 0.07,
};

/// The resistance that fits 12 V panels of so many watts at three quarters of full sun: about
/// 17 V hot, over the current that such light gives, to a tenth of an ohm. \[Ω\]
fn resistance_ohm(panels_w: f64) -> f64 {
    const HOT_VOLTS: f64 = 17.0;
    const RATED_VOLTS: f64 = 18.0;
    const SUN_SHARE: f64 = 0.75;
    let ohm = HOT_VOLTS * RATED_VOLTS / (panels_w.max(1.0) * SUN_SHARE);
    (10.0 * ohm).round().max(1.0) / 10.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place::{AirYear, Place};
    use crate::safety::Build;
    use crate::tonight::{Rig, Site};

    #[test]
    fn every_preset_can_be_put_together_and_is_not_refused() {
        let place = Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m: 1500.0,
            utc_offset_min: 180,
        };
        let site = Site {
            place,
            air: AirYear::guess(11.0, 1500.0).unwrap(),
        };
        for preset in Preset::ALL {
            let cooker = preset.cooker(200.0, 11.0);
            Rig::new(&site, &cooker).unwrap();
            let build = Build::of(&cooker, 20.0, 0.0).unwrap();
            assert_eq!(build.refusals(), Vec::new(), "{preset:?}");
        }
    }

    #[test]
    fn panels_are_split_into_usual_sizes() {
        let panels = Preset::AluminiumInPerlite.cooker(400.0, -20.0).panels;
        assert_eq!(panels.in_parallel, 3);
        assert!((f64::from(panels.in_parallel) * panels.module_w - 400.0).abs() < 1e-9);
        assert!(panels.azimuth_deg.abs() < 1e-9);
    }
}
