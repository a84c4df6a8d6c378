//! Panels and resistors against pvlib 0.16.1: ivtools.sdm.fit_desoto, pvsystem.calcparams_desoto,
//! pvsystem.singlediode and i_from_v.

use model::panel::{Array, Datasheet, DeSoto, Drive, HeatTable, Heater};

use crate::rows::{PanelRow, Sheet, close, rows};

fn sheet(row: &Sheet) -> Datasheet {
    Datasheet {
        v_mp_v: row.v_mp,
        i_mp_a: row.i_mp,
        v_oc_v: row.v_oc,
        i_sc_a: row.i_sc,
        alpha_sc_a_k: row.alpha_sc,
        beta_voc_v_k: row.beta_voc,
        cells: row.n,
    }
}

/// The asked agreement is 0.5 %; what is met is rounding. A hundredth of a percent leaves room for
/// another build of the exponential, and none for another model.
const SHARE: f64 = 1e-4;

#[test]
fn curve_and_load_agree() {
    for row in rows::<PanelRow>("panel") {
        let diode = DeSoto::fit(&sheet(&row.datasheet))
            .unwrap()
            .at(row.irradiance_w_m2, row.cell_c);
        let best = diode.max_power();
        let load = diode.on_load(row.load_ohm);
        for (name, actual, expected) in [
            ("power at maximum", best.power_w(), row.p_mp_w),
            ("voltage at maximum", best.voltage_v, row.v_mp_v),
            ("open circuit", diode.open_circuit_v(), row.v_oc_v),
            ("short circuit", diode.short_circuit_a(), row.i_sc_a),
            ("power into the load", load.power_w(), row.p_load_w),
        ] {
            close(name, actual, expected, SHARE * expected, &row);
        }
    }
}

#[test]
fn heat_of_the_table_is_within_half_a_percent_of_the_rated_power() {
    for row in rows::<PanelRow>("panel") {
        let sheet = sheet(&row.datasheet);
        let heater = Heater {
            drive: Drive::Direct,
            resistance_ohm: row.load_ohm,
            wire_ohm: 0.0,
            alpha_per_k: 0.0,
        };
        let table = HeatTable::new(&Array::new(&sheet, 1, 1).unwrap(), &heater).unwrap();
        let heat = table.heat_w(row.irradiance_w_m2, row.cell_c);
        close("heat", heat, row.p_load_w, 0.005 * sheet.rated_w(), &row);
    }
}
