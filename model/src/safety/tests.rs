use proptest::prelude::*;

use super::*;
use crate::jacket::{JacketLayer, JacketShape, LidFit};

fn aluminium_in_perlite() -> Build {
    Build {
        media: vec![Medium::Aluminium],
        cut_out_c: 250.0,
        seat: Seat::DryOrdinary,
        layers: vec![LayerInPlace {
            material: Insulation::Perlite,
            hot_face_c: 250.0,
        }],
        open_circuit_v: 22.0,
        sealed_vessel: false,
    }
}

fn salt_in_steel() -> Build {
    Build {
        media: vec![Medium::SodiumPotassiumNitrate, Medium::MildSteel],
        cut_out_c: 330.0,
        layers: vec![LayerInPlace {
            material: Insulation::RockWool,
            hot_face_c: 330.0,
        }],
        ..aluminium_in_perlite()
    }
}

#[test]
fn usual_builds_are_accepted() {
    assert_eq!(aluminium_in_perlite().refusals(), []);
    assert_eq!(salt_in_steel().refusals(), []);
}

#[test]
fn a_cooker_is_judged_by_its_parts() {
    let mut cooker = crate::presets::Preset::AluminiumInPerlite.cooker(100.0, 11.0);
    let build = Build::of(&cooker, 20.0, 25.0).unwrap();
    assert_eq!(build.refusals(), []);
    assert!(!build.sealed_vessel);
    // A typical "12 V" panel opens at 36 cells of 0.612 V at 25 degC, and higher when cold.
    assert!(
        (build.open_circuit_v - 36.0 * 0.612).abs() < 0.1,
        "{}",
        build.open_circuit_v
    );
    let cold = Build::of(&cooker, 20.0, -10.0).unwrap();
    assert!(build.open_circuit_v < cold.open_circuit_v);

    cooker.store.cutout_c = 900.0;
    assert!(Build::of(&cooker, 20.0, 25.0).is_err());
    cooker.store.cutout_c = 640.0;
    let hot = Build::of(&cooker, 20.0, 25.0).unwrap();
    assert!(!hot.refusals().is_empty());

    let charge = &mut cooker.store.charges[0];
    charge.medium = Medium::MagnesiumChlorideHexahydrate;
    cooker.store.cutout_c = 115.0;
    assert!(Build::of(&cooker, 20.0, 25.0).unwrap().sealed_vessel);
}

/// California Code of Regulations, title 8, section 5188: nothing organic in a nitrate bath.
#[test]
fn nothing_organic_near_nitrate() {
    for nitrate in Medium::ALL
        .into_iter()
        .filter(|m| m.props().chemistry.is_oxidiser())
    {
        for organic in Medium::ALL
            .into_iter()
            .filter(|m| m.props().chemistry.is_organic())
        {
            let build = Build {
                media: vec![organic, nitrate],
                cut_out_c: 100.0,
                ..salt_in_steel()
            };
            let expect = Refusal::NitrateWithOrganicMedium { nitrate, organic };
            assert!(
                build.refusals().contains(&expect),
                "{nitrate:?} {organic:?}"
            );
        }
        for material in [Insulation::RiceHusk, Insulation::Straw, Insulation::Wool] {
            // Even a layer that stays cold: salt that leaks finds it.
            let layers = vec![LayerInPlace {
                material,
                hot_face_c: 40.0,
            }];
            let build = Build {
                media: vec![nitrate],
                layers,
                ..salt_in_steel()
            };
            let expect = Refusal::NitrateWithCombustibleJacket {
                nitrate,
                insulation: material,
            };
            assert_eq!(build.refusals(), [expect]);
        }
        let oily = Build {
            media: vec![nitrate],
            seat: Seat::OilFilm,
            cut_out_c: 190.0,
            ..salt_in_steel()
        };
        assert_eq!(oily.refusals(), [Refusal::NitrateWithOilFilm { nitrate }]);
    }
}

#[test]
fn every_limit_is_kept() {
    for medium in Medium::ALL {
        let limit_c = medium.props().limit_c.value;
        let at = Build {
            media: vec![medium],
            cut_out_c: limit_c,
            ..aluminium_in_perlite()
        };
        assert!(at.refusals().is_empty(), "{medium:?}");
        let cut_out_c = limit_c + 1.0;
        let above = Build { cut_out_c, ..at };
        assert_eq!(
            above.refusals(),
            [Refusal::AboveMediumLimit {
                medium,
                limit_c,
                cut_out_c
            }]
        );
    }
    for material in Insulation::ALL {
        let limit_c = material.props().limit_c.value;
        let layers = vec![LayerInPlace {
            material,
            hot_face_c: limit_c + 1.0,
        }];
        let build = Build {
            layers,
            ..aluminium_in_perlite()
        };
        assert!(matches!(
            build.refusals()[..],
            [Refusal::AboveInsulationLimit { .. }]
        ));
    }
    let oily = Build {
        seat: Seat::OilFilm,
        ..aluminium_in_perlite()
    };
    assert!(matches!(
        oily.refusals()[..],
        [Refusal::OilFilmTooHot { .. }]
    ));
}

/// Straw outside enough rock wool is accepted, against the store it is not.
#[test]
fn a_layer_is_judged_where_it_stands() {
    let layer = |material, thickness_m| JacketLayer {
        kind: LayerKind::Insulation { material },
        thickness_m,
    };
    let jacket = |layers| LayeredJacket {
        shape: JacketShape::Cylinder {
            inner_radius_m: 0.1,
            inner_height_m: 0.15,
        },
        layers,
        lid: LidFit::Plug,
        through_rods: 0,
    };
    let judge = |jacket: &LayeredJacket| {
        let layers = layers_in_place(jacket, 250.0, 30.0).expect("it is in range");
        Build {
            layers,
            ..aluminium_in_perlite()
        }
        .refusals()
    };
    let (wool, straw) = (Insulation::RockWool, Insulation::Straw);
    assert_eq!(
        judge(&jacket(vec![layer(wool, 0.12), layer(straw, 0.05)])),
        []
    );
    let hot = judge(&jacket(vec![layer(straw, 0.05), layer(wool, 0.12)]));
    assert!(
        matches!(hot[..], [Refusal::AboveInsulationLimit { .. }]),
        "{hot:?}"
    );
}

#[test]
fn what_is_not_a_number_is_not_accepted() {
    let build = Build {
        cut_out_c: f64::NAN,
        ..aluminium_in_perlite()
    };
    assert_eq!(build.refusals(), [Refusal::CutOutUnknown]);
    let layers = vec![LayerInPlace {
        material: Insulation::Perlite,
        hot_face_c: f64::NAN,
    }];
    let build = Build {
        layers,
        ..aluminium_in_perlite()
    };
    assert!(matches!(
        build.refusals()[..],
        [Refusal::AboveInsulationLimit { .. }]
    ));
    let build = Build {
        open_circuit_v: f64::NAN,
        ..aluminium_in_perlite()
    };
    let is_worst = |caution: &Caution| matches!(caution, Caution::BeyondExtraLow { .. });
    assert!(build.cautions(20.0).iter().any(is_worst));
}

/// IEC 61558-1:2005, 3.7.16, and IEC 60335-1:2010, 3.4.2: 120 V and 60 V of direct current.
#[test]
fn voltage_bands() {
    let bands = |open_circuit_v: f64| {
        let build = Build {
            open_circuit_v,
            ..aluminium_in_perlite()
        };
        let cautions = build.cautions(20.0);
        assert!(cautions.contains(&Caution::PanelsLive));
        assert!(cautions.contains(&Caution::FuseAndWireByLocalCode));
        let is_touch = |caution: &Caution| matches!(caution, Caution::AboveTouchSafe { .. });
        let is_beyond = |caution: &Caution| matches!(caution, Caution::BeyondExtraLow { .. });
        (
            cautions.iter().any(is_touch),
            cautions.iter().any(is_beyond),
        )
    };
    assert_eq!(bands(22.0), (false, false));
    assert_eq!(bands(60.0), (false, false));
    assert_eq!(bands(88.0), (true, false));
    assert_eq!(bands(121.0), (true, true));
}

#[test]
fn heat_is_told_by_the_store() {
    let build = aluminium_in_perlite();
    let is_hot = |caution: &Caution| matches!(caution, Caution::HotMetal { .. });
    let ignites = |caution: &Caution| matches!(caution, Caution::Ignites { .. });
    assert!(!build.cautions(40.0).iter().any(is_hot));
    assert!(build.cautions(90.0).iter().any(is_hot));
    assert!(!build.cautions(90.0).iter().any(ignites));
    assert!(build.cautions(250.0).iter().any(ignites));
}

#[test]
fn salt_comes_with_its_cautions() {
    let nitrate = Medium::SodiumPotassiumNitrate;
    let cautions = salt_in_steel().cautions(20.0);
    assert!(cautions.contains(&Caution::MoltenNitrate { nitrate }));
    let insulation = Insulation::RockWool;
    assert!(cautions.contains(&Caution::NitrateNearBinder {
        nitrate,
        insulation
    }));
    let measured = Build {
        layers: Vec::new(),
        ..salt_in_steel()
    };
    assert!(
        measured
            .cautions(20.0)
            .contains(&Caution::NitrateJacketUnknown { nitrate })
    );
    assert!(!cautions.contains(&Caution::NitrateJacketUnknown { nitrate }));
    let can = Build {
        media: vec![nitrate, Medium::Aluminium],
        ..salt_in_steel()
    };
    assert!(
        can.cautions(20.0)
            .contains(&Caution::NitrateOnAluminium { nitrate })
    );
}

#[test]
fn dishes_come_with_their_cautions() {
    let dish = Dish::RedKidneyBeansSoaked;
    assert!(dish_cautions(dish).contains(&Caution::MustBoil { dish }));
    let dish = Dish::WhiteRice;
    assert!(dish_cautions(dish).contains(&Caution::NeverOvernight { dish }));
    let dish = Dish::Cassava;
    assert!(dish_cautions(dish).contains(&Caution::Detoxify { dish }));
    assert_eq!(dish_cautions(Dish::TeaWater), []);
}

proptest! {
    #[test]
    fn a_hotter_cut_out_is_never_accepted_where_a_colder_was_not(
        medium_idx in 0..Medium::ALL.len(),
        seat_idx in 0..Seat::ALL.len(),
        cut_out_c in 60.0..900.0_f64,
        more_k in 0.0..200.0_f64,
    ) {
        let cold = Build {
            media: vec![Medium::ALL[medium_idx]],
            seat: Seat::ALL[seat_idx],
            cut_out_c,
            ..aluminium_in_perlite()
        };
        let hot = Build { cut_out_c: cut_out_c + more_k, ..cold.clone() };
        prop_assert!(cold.refusals().len() <= hot.refusals().len());
    }
}
