use super::*;
use proptest::prelude::*;

const SUGAR_ALCOHOL: MediumCurve = MediumCurve {
    cp_a_j_kgk: 1300.0,
    cp_b_j_kgk2: 2.0,
    melt: Some(Melt {
        t_solidus_c: 116.5,
        t_liquidus_c: 118.5,
        latent_j_kg: 330_000.0,
        cp_liquid_j_kgk: 2760.0,
    }),
};
const NITRATE: MediumCurve = MediumCurve {
    cp_a_j_kgk: 1100.0,
    cp_b_j_kgk2: 2.3,
    melt: Some(Melt {
        t_solidus_c: 306.5,
        t_liquidus_c: 306.5,
        latent_j_kg: 182_000.0,
        cp_liquid_j_kgk: 1660.0,
    }),
};
const ALUMINIUM: MediumCurve = MediumCurve::solid(903.0, 0.41);

fn curve(media: &[(f64, MediumCurve)]) -> EnthalpyCurve {
    EnthalpyCurve::new(media).unwrap()
}

fn near(actual: f64, expected: f64, tolerance: f64) {
    assert!(
        (actual - expected).abs() <= tolerance,
        "{actual} is not {expected} within {tolerance:e}"
    );
}

#[test]
fn seven_kilograms_of_aluminium_hold_half_a_kilowatt_hour() {
    // cp = 903 + 0.41 T: EN 1999-1-2:2007, 3.3.1 (from memory); integrated by hand from 25 to 300 degC.
    let block = curve(&[(7.0, ALUMINIUM)]);
    let kwh = (block.enthalpy_j(300.0) - block.enthalpy_j(25.0)) / 3.6e6;
    near(kwh, 0.518_48, 1e-5);
}

#[test]
fn latent_heat_is_all_that_the_melting_range_takes() {
    let store = curve(&[(2.0, SUGAR_ALCOHOL)]);
    near(
        store.enthalpy_j(118.5) - store.enthalpy_j(116.5),
        660_000.0,
        1e-6,
    );
    near(
        store.enthalpy_j(120.5) - store.enthalpy_j(118.5),
        2.0 * 2.0 * 2760.0,
        1e-6,
    );
    near(store.enthalpy_j(0.0), 0.0, 1e-9);
    near(
        store.heat_capacity_j_k(store.enthalpy_j(117.0)),
        330_000.0,
        1e-4,
    );
}

#[test]
fn plateau_keeps_its_temperature_and_counts_its_melt() {
    let store = curve(&[(3.0, NITRATE), (1.0, ALUMINIUM)]);
    let start = store.enthalpy_j(306.5);
    for melted in [0.0, 1e-9, 0.25, 0.5, 0.999_999_999] {
        let h = start + melted * 3.0 * 182_000.0;
        near(store.temperature_c(h), 306.5, 1e-9);
        near(store.solid_fraction(0, h), 1.0 - melted, 1e-9);
        near(store.solid_fraction(1, h), 1.0, 0.0);
    }
    near(
        store.highest_enthalpy_j(306.5) - start,
        3.0 * 182_000.0,
        1e-6,
    );
    assert!(store.heat_capacity_j_k(start + 1000.0).is_infinite());
}

#[test]
fn melting_below_freezing_water_still_has_its_zero_at_zero() {
    let mut wax = SUGAR_ALCOHOL;
    wax.melt = wax.melt.map(|melt| Melt {
        t_solidus_c: -10.0,
        t_liquidus_c: -5.0,
        ..melt
    });
    let store = curve(&[(1.0, wax)]);
    near(store.enthalpy_j(0.0), 0.0, 1e-9);
    near(store.enthalpy_j(10.0), 27_600.0, 1e-9);
}

#[test]
fn what_does_not_rise_is_refused() {
    let melt = |edit: fn(&mut Melt)| {
        let mut medium = SUGAR_ALCOHOL;
        medium.melt.iter_mut().for_each(edit);
        EnthalpyCurve::new(&[(1.0, medium)])
    };
    assert!(melt(|m| m.t_solidus_c = 119.0).is_err());
    assert!(melt(|m| m.latent_j_kg = 0.0).is_err());
    assert!(melt(|m| m.cp_liquid_j_kgk = f64::NAN).is_err());
    assert!(EnthalpyCurve::new(&[]).is_err());
    assert!(EnthalpyCurve::new(&[(0.0, ALUMINIUM)]).is_err());
    assert!(EnthalpyCurve::new(&[(1.0, MediumCurve::solid(900.0, -2.0))]).is_err());
}

prop_compose! {
    fn any_medium()(
        a in 300.0..2500.0f64, b in 0.0..3.0f64, melts in 0..3u8,
        solidus in 60.0..400.0f64, range in 0.01..30.0f64, latent in 2e4..4e5f64, liquid in 800.0..3000.0f64,
    ) -> MediumCurve {
        MediumCurve {
            cp_a_j_kgk: a,
            cp_b_j_kgk2: b,
            melt: (melts > 0).then_some(Melt {
                t_solidus_c: solidus,
                t_liquidus_c: if melts == 1 { solidus } else { solidus + range },
                latent_j_kg: latent,
                cp_liquid_j_kgk: liquid,
            }),
        }
    }
}

fn any_store() -> impl Strategy<Value = Vec<(f64, MediumCurve)>> {
    proptest::collection::vec((0.1..50.0f64, any_medium()), 1..5)
}

proptest! {
    #[test]
    fn temperature_comes_back(media in any_store(), t in -40.0..600.0f64) {
        let store = curve(&media);
        let back = store.temperature_c(store.enthalpy_j(t));
        prop_assert!((back - t).abs() < 1e-6, "{back} is not {t}");
    }

    #[test]
    fn enthalpy_comes_back(media in any_store(), share in -0.05..1.2f64) {
        let store = curve(&media);
        let h = share * store.enthalpy_j(450.0);
        let t = store.temperature_c(h);
        prop_assert!(store.enthalpy_j(t) <= h + 1e-6 * h.abs().max(1.0));
        prop_assert!(store.highest_enthalpy_j(t) >= h - 1e-6 * h.abs().max(1.0));
    }

    #[test]
    fn more_heat_is_never_colder_nor_more_solid(
        media in any_store(), share in -0.05..1.2f64, more in 0.0..0.1f64,
    ) {
        let store = curve(&media);
        let scale = store.enthalpy_j(450.0);
        let (low, high) = (share * scale, (share + more) * scale);
        prop_assert!(store.temperature_c(high) >= store.temperature_c(low) - 1e-9);
        for medium in 0..store.media() {
            prop_assert!(store.solid_fraction(medium, high) <= store.solid_fraction(medium, low) + 1e-12);
        }
    }

    #[test]
    fn the_whole_is_the_sum_of_its_media(media in any_store(), t in -40.0..600.0f64) {
        let sum: f64 = media.iter().map(|one| curve(&[*one]).enthalpy_j(t)).sum();
        let whole = curve(&media).enthalpy_j(t);
        prop_assert!((whole - sum).abs() < 1e-9 * sum.abs().max(1e6));
    }
}
