//! What holds for every panel and heater.

use proptest::prelude::*;

use crate::panel::{Array, Datasheet, DeSoto, Drive, Heater, PanelError};

/// Any sheet a crystalline-silicon panel might have.
fn sheets() -> impl Strategy<Value = Datasheet> {
    (
        1..=120_u32,
        0.57..0.74_f64,
        0.77..0.86_f64,
        0.2..20.0_f64,
        0.89..0.97_f64,
    )
        .prop_flat_map(|shape| (Just(shape), 0.0..8e-4_f64, 2.3e-3..3.9e-3_f64))
        .prop_map(|((cells, v_cell, v_share, i_sc_a, i_share), alpha, beta)| {
            let v_oc_v = v_cell * f64::from(cells);
            Datasheet {
                v_mp_v: v_share * v_oc_v,
                i_mp_a: i_share * i_sc_a,
                v_oc_v,
                i_sc_a,
                alpha_sc_a_k: alpha * i_sc_a,
                beta_voc_v_k: -beta * v_oc_v,
                cells,
            }
        })
}

fn direct(resistance_ohm: f64, wire_ohm: f64) -> Heater {
    Heater {
        drive: Drive::Direct,
        resistance_ohm,
        wire_ohm,
        alpha_per_k: 0.0,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// The curve meets all that the sheet says.
    #[test]
    fn a_fit_gives_its_sheet_back(sheet in sheets()) {
        let fitted = DeSoto::fit(&sheet).unwrap();
        let diode = fitted.at(1000.0, 25.0);
        let best = diode.max_power();
        prop_assert!((best.voltage_v / sheet.v_mp_v - 1.0).abs() < 1e-4);
        prop_assert!((best.power_w() / sheet.rated_w() - 1.0).abs() < 1e-7);
        prop_assert!((diode.open_circuit_v() / sheet.v_oc_v - 1.0).abs() < 1e-7);
        prop_assert!((diode.short_circuit_a() / sheet.i_sc_a - 1.0).abs() < 1e-7);
        let warm = fitted.at(1000.0, 27.0).open_circuit_v();
        let beta = (warm - sheet.v_oc_v) / 2.0;
        prop_assert!((beta / sheet.beta_voc_v_k - 1.0).abs() < 1e-4, "{beta} in {fitted:?}");
    }

    #[test]
    fn heat_is_never_negative_nor_above_the_maximum(
        sheet in sheets(), light in 0.0..1400.0_f64, cell_c in -30.0..100.0_f64,
        ohms in -2.0..2.0_f64, wire in 0.0..0.3_f64,
    ) {
        let array = Array::new(&sheet, 1, 1).unwrap();
        let scale = sheet.v_mp_v / sheet.i_mp_a;
        let heater = direct(scale * libm::pow(10_f64, ohms), scale * wire);
        let heat = heater.heat_w(&array, light, cell_c);
        let most = array.max_power(light, cell_c).power_w();
        prop_assert!(0.0 <= heat && heat <= most * (1.0 + 1e-9), "{heat} of {most}");
        let tracked = Heater { drive: Drive::Tracker { efficiency: 0.93 }, ..heater };
        prop_assert!((tracked.heat_w(&array, light, cell_c) - 0.93 * most).abs() <= 1e-9 * most);
    }

    #[test]
    fn more_light_is_never_less(
        sheet in sheets(), light in 0.0..1400.0_f64, more in 0.0..200.0_f64,
        cell_c in -30.0..100.0_f64, ohms in -2.0..2.0_f64,
    ) {
        let array = Array::new(&sheet, 1, 1).unwrap();
        let most = |light: f64| array.max_power(light, cell_c).power_w();
        prop_assert!(most(light) <= most(light + more) * (1.0 + 1e-9));
        let heater = direct(sheet.v_mp_v / sheet.i_mp_a * libm::pow(10_f64, ohms), 0.0);
        let heat = |light: f64| heater.heat_w(&array, light, cell_c);
        prop_assert!(heat(light) <= heat(light + more) * (1.0 + 1e-9));
    }

    /// Below the knee the panel is a source of current.
    #[test]
    fn heat_goes_as_the_square_of_the_light_below_the_knee(
        sheet in sheets(), light in 1.0..200.0_f64,
    ) {
        let array = Array::new(&sheet, 1, 1).unwrap();
        // At this light the load's voltage is at most a sixth of Voc, where only a shunt leaks.
        let heater = direct(0.8 * sheet.v_mp_v / sheet.i_mp_a, 0.0);
        let ratio = heater.heat_w(&array, 2.0 * light, 25.0) / heater.heat_w(&array, light, 25.0);
        prop_assert!((ratio - 4.0).abs() < 0.2, "{ratio}");
    }

    /// Panels in series and parallel on a load scaled with them each work as one alone.
    #[test]
    fn wired_panels_share_the_load(
        sheet in sheets(), series in 1..5_u32, parallel in 1..5_u32, light in 1.0..1300.0_f64,
    ) {
        let one = Array::new(&sheet, 1, 1).unwrap();
        let many = Array::new(&sheet, series, parallel).unwrap();
        let ohms = sheet.v_mp_v / sheet.i_mp_a;
        let scaled = ohms * f64::from(series) / f64::from(parallel);
        let alone = direct(ohms, 0.0).heat_w(&one, light, 40.0);
        let together = direct(scaled, 0.0).heat_w(&many, light, 40.0);
        prop_assert!((together / (alone * f64::from(series * parallel)) - 1.0).abs() < 1e-9);
    }
}

#[test]
fn typical_panels_lose_two_fifths_of_a_percent_a_kelvin() {
    for rated_w in [5.0, 50.0, 100.0, 180.0, 250.0, 330.0, 370.0, 450.0, 600.0] {
        let array = Array::new(&Datasheet::typical(rated_w).unwrap(), 1, 1).unwrap();
        assert!((array.rated_w() / rated_w - 1.0).abs() < 1e-6, "{rated_w}");
        let hot = array.max_power(1000.0, 50.0).power_w();
        let gamma = (hot / rated_w - 1.0) / 25.0 * 100.0;
        assert!((gamma + 0.40).abs() < 0.01, "{rated_w}: {gamma}");
    }
    assert_eq!(Datasheet::typical(0.0), Err(PanelError::RatedPower(0.0)));
    assert!(Datasheet::typical(f64::NAN).is_err());
}

#[test]
fn the_wire_takes_its_share() {
    let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
    let bare = direct(3.6, 0.0).heat_w(&array, 300.0, 30.0);
    let wired = direct(3.46, 0.14).heat_w(&array, 300.0, 30.0);
    assert!((wired / bare - 3.46 / 3.6).abs() < 1e-9);
}

#[test]
fn a_hot_element_has_its_hot_resistance() {
    let heater = Heater {
        alpha_per_k: 0.0001,
        ..direct(4.0, 0.0)
    };
    let hot = heater.at_element_c(520.0).unwrap();
    assert!((hot.resistance_ohm - 4.2).abs() < 1e-12);
    assert_eq!(hot.at_element_c(20.0), Ok(hot));
    assert_eq!(
        heater.at_element_c(-80.0),
        Err(PanelError::ElementTemperature(-80.0))
    );
    let odd = Heater {
        alpha_per_k: -0.005,
        ..heater
    };
    assert!(matches!(
        odd.at_element_c(400.0),
        Err(PanelError::Resistance(_))
    ));
}

#[test]
fn senseless_sheets_are_refused_by_name() {
    let good = Datasheet::typical(100.0).unwrap();
    let why = |sheet: Datasheet| DeSoto::fit(&sheet).unwrap_err();
    assert_eq!(
        why(Datasheet {
            v_mp_v: -1.0,
            ..good
        }),
        PanelError::VoltageAtMaximumPower(-1.0)
    );
    assert!(matches!(
        why(Datasheet {
            i_mp_a: f64::NAN,
            ..good
        }),
        PanelError::CurrentAtMaximumPower(_)
    ));
    assert!(matches!(
        why(Datasheet {
            v_oc_v: good.v_mp_v,
            ..good
        }),
        PanelError::OpenCircuitVoltage { .. }
    ));
    assert!(matches!(
        why(Datasheet {
            i_sc_a: f64::INFINITY,
            ..good
        }),
        PanelError::ShortCircuitCurrent { .. }
    ));
    // Per cent per kelvin where amperes and volts per kelvin belong.
    assert_eq!(
        why(Datasheet {
            alpha_sc_a_k: 0.05,
            ..good
        }),
        PanelError::CurrentCoefficient(0.05)
    );
    assert_eq!(
        why(Datasheet {
            beta_voc_v_k: -0.31,
            ..good
        }),
        PanelError::VoltageCoefficient(-0.31)
    );
    assert!(matches!(
        why(Datasheet { cells: 0, ..good }),
        PanelError::Cells { .. }
    ));
    assert!(matches!(
        why(Datasheet {
            v_mp_v: 0.1 * good.v_oc_v,
            ..good
        }),
        PanelError::NoDiode(_)
    ));
    assert_eq!(Array::new(&good, 0, 1), Err(PanelError::Count(0)));
}

#[test]
fn senseless_heaters_are_refused() {
    let good = direct(3.5, 0.1);
    assert_eq!(direct(0.0, 0.1).checked(), Err(PanelError::Resistance(0.0)));
    assert_eq!(
        direct(3.5, -0.1).checked(),
        Err(PanelError::WireResistance(-0.1))
    );
    let lossless = Heater {
        drive: Drive::Tracker { efficiency: 1.1 },
        ..good
    };
    assert_eq!(lossless.checked(), Err(PanelError::Efficiency(1.1)));
    assert!(
        Heater {
            alpha_per_k: f64::NAN,
            ..good
        }
        .checked()
        .is_err()
    );
    assert_eq!(good.checked(), Ok(good));
}
