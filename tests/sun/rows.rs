//! The rows of the data files, and closeness.

use serde::Deserialize;
use serde::de::DeserializeOwned;
use serde_json::Value;

/// One place and time with what pvlib makes of it.
#[derive(Debug, Deserialize)]
pub(crate) struct SunRow {
    pub(crate) latitude: f64,
    pub(crate) longitude: f64,
    pub(crate) time_utc: String,
    pub(crate) tilt_deg: f64,
    pub(crate) surface_azimuth_deg: f64,
    pub(crate) albedo: f64,
    pub(crate) zenith_deg: f64,
    pub(crate) azimuth_deg: f64,
    pub(crate) extraterrestrial_normal_w_m2: f64,
    pub(crate) haurwitz_ghi_w_m2: f64,
    pub(crate) erbs_dhi_w_m2: f64,
    pub(crate) erbs_dni_w_m2: f64,
    pub(crate) isotropic_poa_w_m2: f64,
    pub(crate) faiman_cell_c_at_25_c_1_m_s: f64,
}

/// One sheet in one light on one load with what pvlib makes of it.
#[derive(Debug, Deserialize)]
pub(crate) struct PanelRow {
    pub(crate) datasheet: Sheet,
    pub(crate) irradiance_w_m2: f64,
    pub(crate) cell_c: f64,
    pub(crate) load_ohm: f64,
    pub(crate) p_mp_w: f64,
    pub(crate) v_mp_v: f64,
    pub(crate) v_oc_v: f64,
    pub(crate) i_sc_a: f64,
    pub(crate) p_load_w: f64,
}

#[derive(Debug, Deserialize)]
pub(crate) struct Sheet {
    pub(crate) v_mp: f64,
    pub(crate) i_mp: f64,
    pub(crate) v_oc: f64,
    pub(crate) i_sc: f64,
    pub(crate) alpha_sc: f64,
    pub(crate) beta_voc: f64,
    pub(crate) n: u32,
}

/// The rows of one list in both files.
pub(crate) fn rows<T: DeserializeOwned>(list: &str) -> Vec<T> {
    [
        include_str!("data/solar.json"),
        include_str!("data/more.json"),
    ]
    .iter()
    .flat_map(|text| {
        let mut file: Value = serde_json::from_str(text).unwrap();
        serde_json::from_value::<Vec<T>>(file[list].take()).unwrap()
    })
    .collect()
}

/// Fails unless `actual` is within `tolerance` of `expected`, naming the quantity and the row.
#[track_caller]
pub(crate) fn close(
    name: &str,
    actual: f64,
    expected: f64,
    tolerance: f64,
    row: &dyn std::fmt::Debug,
) {
    let off = (actual - expected).abs();
    assert!(
        off <= tolerance,
        "{name}: {actual} for {expected}, {off:e} off in {row:?}"
    );
}
