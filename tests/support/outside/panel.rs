//! Panels and what a resistor takes from them.

use model::panel::{Array, Datasheet, DeSoto, SingleDiode, best_resistance};
use model::place::{AirYear, Place};
use model::sun::{Plane, Setting, typical_year};

use super::{Check, relative};

const PVLIB: &str = "pvlib 0.16.1, ivtools.sdm.fit_desoto and pvsystem.singlediode";

pub(super) fn checks() -> Vec<Check> {
    let mut checks = Vec::new();
    let diode = SingleDiode {
        light_a: 7.0,
        saturation_a: 6e-7,
        series_ohm: 0.1,
        shunt_s: 1.0 / 20.0,
        thermal_v: 0.5,
    };
    let best = diode.max_power();
    for (what, unit, pair) in [
        (
            "short circuit of a single diode",
            "A",
            (6.965_172, diode.short_circuit_a()),
        ),
        (
            "open circuit of a single diode",
            "V",
            (8.106_300, diode.open_circuit_v()),
        ),
        (
            "maximum power of a single diode",
            "W",
            (38.194_211, best.power_w()),
        ),
    ] {
        checks.push(relative(what, PVLIB, unit, pair, 1e-4));
    }
    let hundred = Datasheet {
        v_mp_v: 18.6,
        i_mp_a: 5.38,
        v_oc_v: 22.3,
        i_sc_a: 5.72,
        alpha_sc_a_k: 0.0029,
        beta_voc_v_k: -0.067,
        cells: 36,
    };
    let curve = DeSoto::fit(&hundred).unwrap();
    for (light, cell, ohm, expect) in [
        (
            100.0,
            25.0,
            3.457_249_070_631_970_5,
            1.129_479_780_528_973_8,
        ),
        (300.0, 50.0, 2.420_074_349_442_379, 7.269_422_195_695_873),
        (600.0, 50.0, 4.840_148_698_884_758, 53.996_957_503_282_324),
        (1000.0, 50.0, 4.840_148_698_884_758, 72.945_903_738_791_2),
    ] {
        checks.push(relative(
            format!("100 W module on {ohm:.2} ohm at {light} W/m2 and {cell} degC"),
            PVLIB,
            "W",
            (expect, curve.at(light, cell).on_load(ohm).power_w()),
            5e-3,
        ));
    }
    let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
    let setting = Setting {
        place: Place {
            latitude_deg: 35.0,
            longitude_deg: 0.0,
            altitude_m: 0.0,
            utc_offset_min: 0,
        },
        air: AirYear {
            day_c: [25.0; 12],
            night_c: [25.0; 12],
        },
        plane: Plane {
            tilt_deg: 35.0,
            azimuth_deg: 180.0,
            albedo: 0.2,
        },
        wind_m_s: 1.0,
    };
    let year = typical_year(&setting, 0.6, 60).unwrap();
    let share = best_resistance(&array, 0.0, &year).unwrap().share;
    checks.push(relative(
        "share of a tracker's year that the best fixed resistor takes",
        "Matuska and Sourek, Int. J. Photoenergy (2017) 7540250: a tracker gives 20 to 35 % more",
        "",
        (0.785, share),
        0.06,
    ));
    checks
}
