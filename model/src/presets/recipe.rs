//! What the presets are made of.

use super::Preset;
use crate::cooker::Metal;
use crate::insulation::Insulation;
use crate::media::Medium;
use crate::pot::PotSize;
use crate::seat::Seat;

/// What a preset is made of.
pub(super) struct Recipe {
    pub(super) charges: &'static [(Medium, f64)],
    pub(super) metal: Option<Metal>,
    pub(super) depth_m: f64,
    pub(super) cutout_c: f64,
    pub(super) insulation: Insulation,
    pub(super) radius_m: f64,
    pub(super) height_m: f64,
    pub(super) thickness_m: f64,
    pub(super) seat: Seat,
    pub(super) size: PotSize,
}

impl Preset {
    pub(super) const fn recipe(self) -> Recipe {
        match self {
            Self::AluminiumInPerlite => Recipe {
                charges: &[(Medium::Aluminium, 7.0)],
                metal: None,
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
                metal: None,
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
                metal: None,
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
                metal: None,
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
                metal: Some(Metal::USUAL_FOAM),
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
                metal: Some(Metal::USUAL_FINS),
                depth_m: 0.08,
                cutout_c: 320.0,
                insulation: Insulation::CeramicFibre,
                radius_m: 0.12,
                height_m: 0.2,
                thickness_m: 0.12,
                seat: Seat::DryFlat,
                size: PotSize::Litres4,
            },
            Self::StraightToPot => Recipe {
                charges: &[],
                metal: None,
                depth_m: 0.02,
                cutout_c: 180.0,
                insulation: Insulation::RockWool,
                radius_m: 0.12,
                height_m: 0.2,
                thickness_m: 0.06,
                seat: Seat::DryOrdinary,
                size: PotSize::Litres4,
            },
            Self::ErythritolUnderPot => Recipe {
                charges: &[(Medium::Erythritol, 5.0), (Medium::Aluminium, 1.0)],
                metal: Some(Metal::USUAL_FINS),
                depth_m: 0.07,
                cutout_c: 135.0,
                insulation: Insulation::GlassWool,
                radius_m: 0.13,
                height_m: 0.22,
                thickness_m: 0.1,
                seat: Seat::DryFlat,
                size: PotSize::Litres2_5,
            },
            Self::ConcreteInRockWool => Recipe {
                charges: &[(Medium::Concrete, 20.0)],
                metal: None,
                depth_m: 0.12,
                cutout_c: 280.0,
                insulation: Insulation::RockWool,
                radius_m: 0.15,
                height_m: 0.25,
                thickness_m: 0.14,
                seat: Seat::DryOrdinary,
                size: PotSize::Litres2_5,
            },
            Self::MortarUnderAirGap => Recipe {
                charges: &[(Medium::Concrete, 4.0)],
                metal: None,
                depth_m: 0.035,
                cutout_c: 300.0,
                insulation: Insulation::Perlite,
                radius_m: 0.14,
                height_m: 0.24,
                thickness_m: 0.14,
                seat: Seat::RadiantGap,
                size: PotSize::Litres4,
            },
            Self::BareNitrate | Self::NitrateCarried => Recipe {
                metal: None,
                ..Self::NitrateInCeramicFibre.recipe()
            },
            Self::NitrateUnderDish => Self::NitrateInCeramicFibre.recipe(),
            Self::AluminiumInFlask => Recipe {
                charges: &[(Medium::Aluminium, 10.0)],
                depth_m: 0.1,
                ..Self::AluminiumInPerlite.recipe()
            },
            Self::AluminiumAndGrid => Self::AluminiumInPerlite.recipe(),
        }
    }
}
