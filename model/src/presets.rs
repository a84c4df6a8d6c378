//! Cookers as people build them, to start a description from.
//!
//! Common practice, no source: masses, sizes and panels are what such builds commonly have; each
//! household changes them to what stands in its kitchen.

use crate::cooker::{Charge, Contact, Cooker, Panels, Store};
use crate::insulation::Insulation;
use crate::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket, LidFit};
use crate::media::Medium;
use crate::panel::{Drive, Heater};
use crate::pot::{Pot, PotKind, PotSize, Wrap};
use crate::seat::Seat;

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
}

/// What a preset is made of.
struct Recipe {
    charges: &'static [(Medium, f64)],
    finned: bool,
    depth_m: f64,
    cutout_c: f64,
    insulation: Insulation,
    radius_m: f64,
    height_m: f64,
    thickness_m: f64,
    seat: Seat,
    size: PotSize,
}

impl Preset {
    /// Every preset, the commonest first.
    pub const ALL: [Self; 6] = [
        Self::AluminiumInPerlite,
        Self::SteelInRockWool,
        Self::SoapstoneInVermiculite,
        Self::SandInPerlite,
        Self::ErythritolInGlassWool,
        Self::NitrateInCeramicFibre,
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
        }
    }

    const fn recipe(self) -> Recipe {
        match self {
            Self::AluminiumInPerlite => Recipe {
                charges: &[(Medium::Aluminium, 7.0)],
                finned: false,
                depth_m: 0.08,
                cutout_c: 280.0,
                insulation: Insulation::Perlite,
                radius_m: 0.11,
                height_m: 0.2,
                thickness_m: 0.12,
                seat: Seat::DryFlat,
                size: PotSize::Litres2_5,
            },
            Self::SteelInRockWool => Recipe {
                charges: &[(Medium::MildSteel, 14.0)],
                finned: false,
                depth_m: 0.05,
                cutout_c: 300.0,
                insulation: Insulation::RockWool,
                radius_m: 0.11,
                height_m: 0.18,
                thickness_m: 0.12,
                seat: Seat::DryOrdinary,
                size: PotSize::Litres2_5,
            },
            Self::SoapstoneInVermiculite => Recipe {
                charges: &[(Medium::Soapstone, 14.0)],
                finned: false,
                depth_m: 0.1,
                cutout_c: 280.0,
                insulation: Insulation::Vermiculite,
                radius_m: 0.13,
                height_m: 0.22,
                thickness_m: 0.14,
                seat: Seat::DryFlat,
                size: PotSize::Litres2_5,
            },
            Self::SandInPerlite => Recipe {
                charges: &[(Medium::DrySand, 16.0)],
                finned: false,
                depth_m: 0.08,
                cutout_c: 300.0,
                insulation: Insulation::Perlite,
                radius_m: 0.15,
                height_m: 0.25,
                thickness_m: 0.12,
                seat: Seat::Sleeve,
                size: PotSize::Litres2_5,
            },
            Self::ErythritolInGlassWool => Recipe {
                charges: &[(Medium::Erythritol, 5.0), (Medium::Aluminium, 1.0)],
                finned: true,
                depth_m: 0.06,
                cutout_c: 135.0,
                insulation: Insulation::GlassWool,
                radius_m: 0.12,
                height_m: 0.2,
                thickness_m: 0.1,
                seat: Seat::SunkInMelt,
                size: PotSize::Litres2_5,
            },
            Self::NitrateInCeramicFibre => Recipe {
                charges: &[
                    (Medium::SodiumPotassiumNitrate, 8.0),
                    (Medium::MildSteel, 3.0),
                ],
                finned: true,
                depth_m: 0.08,
                cutout_c: 320.0,
                insulation: Insulation::CeramicFibre,
                radius_m: 0.12,
                height_m: 0.2,
                thickness_m: 0.12,
                seat: Seat::DryFlat,
                size: PotSize::Litres4,
            },
        }
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
                finned: recipe.finned,
                depth_m: recipe.depth_m,
                cutout_c: recipe.cutout_c,
            },
            jacket: Jacket::Layers(LayeredJacket {
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
            }),
            contact: Contact {
                seat: recipe.seat,
                measured_w_m2k: None,
            },
            pot: Pot {
                kind: PotKind::ThickAluminium,
                size: recipe.size,
                wrap: Wrap::SunkInCooker,
            },
        }
    }
}

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
    use crate::safety::{Build, layers_in_place};
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
            let Jacket::Layers(jacket) = &cooker.jacket else {
                unreachable!()
            };
            let build = Build {
                media: cooker
                    .store
                    .charges
                    .iter()
                    .map(|charge| charge.medium)
                    .collect(),
                cut_out_c: cooker.store.cutout_c,
                seat: cooker.contact.seat,
                layers: layers_in_place(jacket, cooker.store.cutout_c, 20.0).unwrap(),
                open_circuit_v: 25.0,
                sealed_vessel: false,
            };
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
