//! What a person must be told of a build and of a dish.

use super::{
    BINDER_SMOKES_C, Build, Caution, EXTRA_LOW_V, IGNITION_CAUTION_C, TOUCH_LIMIT_C, TOUCH_SAFE_V,
};
use crate::dish::{Dish, HOLD_HOT_C, Hold, Soak};
use crate::insulation::InsulationHazard;
use crate::media::{Chemistry, Hazard, Medium};

pub(super) fn of(build: &Build, store_c: f64) -> Vec<Caution> {
    let mut found = Vec::new();
    if IGNITION_CAUTION_C.value <= store_c {
        found.push(Caution::Ignites { store_c });
    }
    if TOUCH_LIMIT_C.value < store_c {
        found.push(Caution::HotMetal { store_c });
    }
    nitrates(build, &mut found);
    if build.sealed_vessel {
        found.push(Caution::SealedVessel);
    }
    electrical(build.open_circuit_v, &mut found);
    for &medium in &build.media {
        // The oxidiser has its own caution above.
        let hazards = medium
            .props()
            .hazards
            .iter()
            .filter(|&&hazard| hazard != Hazard::Oxidiser);
        found.extend(hazards.map(|&hazard| Caution::OfMedium { medium, hazard }));
        if medium.props().hazards.contains(&Hazard::Corrosive) {
            let metals = build.of_chemistry(Chemistry::Metal);
            found.extend(metals.map(|metal| Caution::Corrodes { medium, metal }));
        }
    }
    for layer in &build.layers {
        let insulation = layer.material;
        let hazards = insulation.props().hazards.iter();
        found.extend(hazards.map(|&hazard| Caution::OfInsulation { insulation, hazard }));
    }
    found
}

fn nitrates(build: &Build, found: &mut Vec<Caution>) {
    for nitrate in build.nitrates() {
        found.push(Caution::MoltenNitrate { nitrate });
        if build.media.contains(&Medium::Aluminium) {
            found.push(Caution::NitrateOnAluminium { nitrate });
        }
        if build.layers.is_empty() {
            found.push(Caution::NitrateJacketUnknown { nitrate });
        }
        for layer in &build.layers {
            let insulation = layer.material;
            let has_binder = insulation
                .props()
                .hazards
                .contains(&InsulationHazard::BinderFumes);
            if has_binder && BINDER_SMOKES_C <= layer.hot_face_c {
                found.push(Caution::NitrateNearBinder {
                    nitrate,
                    insulation,
                });
            }
        }
    }
}

/// An open-circuit voltage that is not a number is taken for the worst.
fn electrical(open_circuit_v: f64, found: &mut Vec<Caution>) {
    let above = |limit_v: f64| open_circuit_v.is_nan() || limit_v < open_circuit_v;
    if above(EXTRA_LOW_V.value) {
        found.push(Caution::BeyondExtraLow {
            open_circuit_v,
            limit_v: EXTRA_LOW_V.value,
        });
    }
    if above(TOUCH_SAFE_V.value) {
        found.push(Caution::AboveTouchSafe {
            open_circuit_v,
            limit_v: TOUCH_SAFE_V.value,
        });
    }
    found.extend([
        Caution::PanelsLive,
        Caution::SwitchRatedForDirectCurrent,
        Caution::FuseAndWireByLocalCode,
    ]);
}

pub(super) fn of_dish(dish: Dish) -> Vec<Caution> {
    let props = dish.props();
    let mut found = Vec::new();
    if dish.needs_full_boil() {
        found.push(Caution::MustBoil { dish });
    }
    if props.soak == Soak::Detoxify {
        found.push(Caution::Detoxify { dish });
    }
    if let Some(core_c) = props.core_c {
        found.push(Caution::CoreTemperature {
            dish,
            core_c: core_c.value,
        });
    }
    match props.hold {
        Hold::Hot => found.push(Caution::HoldHot {
            dish,
            least_c: HOLD_HOT_C.value,
        }),
        Hold::HotNeverOvernight => {
            found.push(Caution::NeverOvernight { dish });
            found.push(Caution::HoldHot {
                dish,
                least_c: HOLD_HOT_C.value,
            });
        }
        Hold::Free => {}
    }
    found
}
