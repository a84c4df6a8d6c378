//! From a data sheet to a single-diode model, and that model in other light and warmth.

use std::sync::{Mutex, PoisonError};

use crate::panel::{Datasheet, PanelError, SingleDiode};

/// Irradiance of the standard test conditions. \[W/m2\]
pub const REFERENCE_W_M2: f64 = 1000.0;
/// Cell temperature of the standard test conditions. \[degC\]
pub const REFERENCE_CELL_C: f64 = 25.0;
/// Band gap of silicon at 25 degC, De Soto 2006. \[eV\]
pub const BAND_GAP_EV: f64 = 1.121;
/// Change of the band gap as a share of it, De Soto 2006. \[1/K\]
pub const BAND_GAP_SLOPE_K: f64 = -0.000_267_7;

/// Boltzmann's constant, CODATA 2018. \[eV/K\]
const BOLTZMANN_EV_K: f64 = 8.617_333_262e-5;
const ZERO_C_K: f64 = 273.15;
/// Distance from 25 degC at which the fit meets the voltage coefficient. \[K\]
const PROBE_K: f64 = 2.0;
/// Range of a over Voc that is searched: a silicon cell of 0.6 V has 0.026 V times an ideality
/// of 1 to 1.5, that is 0.04 to 0.065; the rest is room for odd sheets and other materials.
const A_OF_VOC: (f64, f64) = (0.008, 0.14);
/// Points of the coarse search for a, and for Rs at each a.
const SCAN: u32 = 66;
/// Most by which the current may rise from short circuit to Voc for the sake of a sheet that no
/// true shunt fits, as a share of Isc.
const MOST_RISE: f64 = 0.15;
/// Miss of the temperature coefficient that counts as none, as a share of Isc.
const EXACT: f64 = 1e-11;

/// The last fits. A cooker is put together many times while its other parts are changed, and the fit
/// takes longest of it.
static FITS: Mutex<Vec<(Datasheet, DeSoto)>> = Mutex::new(Vec::new());
/// So many are kept.
const MOST_FITS: usize = 4;

fn known(sheet: &Datasheet) -> Option<DeSoto> {
    let fits = FITS.lock().unwrap_or_else(PoisonError::into_inner);
    let found = fits.iter().find(|(other, _)| other == sheet);
    found.map(|(_, fit)| *fit)
}

/// The five parameters of De Soto's model at standard test conditions.
///
/// # Sources
///
/// W. De Soto, S. A. Klein and W. A. Beckman, Solar Energy 80 (2006) 78; J. A. Duffie and W. A.
/// Beckman, *Solar Engineering of Thermal Processes*, 4th ed. (2013), 23.2, whose sign of the
/// slope at maximum power is the right one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeSoto {
    /// Light current, IL. \[A\]
    pub light_a: f64,
    /// Diode saturation current, I0. \[A\]
    pub saturation_a: f64,
    /// Series resistance, Rs. \[ohm\]
    pub series_ohm: f64,
    /// Shunt conductance, 1/Rsh. About one sheet in five fits no shunt of 0 or more: then it is
    /// negative, and the current rises by some percent from short circuit to the knee. \[S\]
    pub shunt_s: f64,
    /// Modified ideality factor, a. \[V\]
    pub thermal_v: f64,
    /// Temperature coefficient of the short-circuit current. \[A/K\]
    pub alpha_sc_a_k: f64,
}

/// A curve through open circuit, short circuit and maximum power, for one a.
#[derive(Debug, Clone, Copy)]
struct Candidate {
    a: f64,
    rs: f64,
    /// Diode current at open circuit, I0 exp(Voc/a): of the size of Isc where I0 is 1e-10. \[A\]
    knee: f64,
    g: f64,
}

impl DeSoto {
    /// Parameters whose curve passes through the sheet's three points, is level in power at the
    /// maximum, and whose open-circuit voltage changes with temperature as the sheet says.
    ///
    /// Sheets are rounded, and their points come from different panels: about one in five fits
    /// no diode with a shunt. There a slightly negative shunt meets all five conditions. Where
    /// even that fails, the curve still passes through the three points and is level at the
    /// maximum, and its change with temperature comes as near to the sheet's as it can.
    ///
    /// # Arguments
    ///
    /// * `sheet`: one panel's.
    ///
    /// # Errors
    ///
    /// The first rating that makes no sense; [`PanelError::NoDiode`] where no curve of a diode
    /// passes through the points.
    pub fn fit(sheet: &Datasheet) -> Result<Self, PanelError> {
        let sheet = sheet.checked()?;
        if let Some(fit) = known(&sheet) {
            return Ok(fit);
        }
        let fit = Self::fitted(sheet)?;
        let fits = &mut *FITS.lock().unwrap_or_else(PoisonError::into_inner);
        fits.truncate(MOST_FITS - 1);
        fits.insert(0, (sheet, fit));
        Ok(fit)
    }

    fn fitted(sheet: Datasheet) -> Result<Self, PanelError> {
        let refuse = || PanelError::NoDiode(sheet.fill_factor());
        let a_at = |idx: u32| {
            let share = f64::from(idx) / f64::from(SCAN);
            sheet.v_oc_v * A_OF_VOC.0 * libm::pow(A_OF_VOC.1 / A_OF_VOC.0, share)
        };
        let mut nearest: Option<(f64, Candidate)> = None;
        let mut keep = |candidate: Candidate| {
            let miss = temperature_miss(&sheet, &candidate);
            let distance = miss.abs().max(EXACT);
            let nearer = nearest.is_none_or(|(least, best)| {
                distance < least || (distance <= least && best.g < candidate.g)
            });
            if nearer {
                nearest = Some((distance, candidate));
            }
            miss
        };
        let mut before: Option<(f64, f64)> = None;
        for idx in 0..=SCAN {
            let a = a_at(idx);
            let miss = through_points(&sheet, a).map(&mut keep);
            // Between an a with a curve and one without lies the edge of what is possible,
            // where the nearest curve of an odd sheet is.
            let pair = match (before, miss) {
                (Some((low, low_miss)), Some(miss)) => {
                    (low_miss * miss <= 0.0).then_some((low, a, Some(low_miss)))
                }
                (Some((low, _)), None) => Some((low, a, None)),
                (None, Some(_)) if 0 < idx => Some((a, a_at(idx - 1), None)),
                (None, _) => None,
            };
            if let Some((mut low, mut high, low_miss)) = pair {
                for _ in 0..60 {
                    let middle = 0.5 * (low + high);
                    let miss = through_points(&sheet, middle).map(&mut keep);
                    let same_side = match (low_miss, miss) {
                        (Some(low_miss), Some(miss)) => 0.0 < low_miss * miss,
                        (None, Some(_)) => true,
                        (_, None) => false,
                    };
                    if same_side {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
            }
            before = miss.map(|miss| (a, miss));
        }
        let (_, best) = nearest.ok_or_else(refuse)?;
        Ok(Self::of(&sheet, &best))
    }

    fn of(sheet: &Datasheet, best: &Candidate) -> Self {
        let saturation_a = best.knee * libm::exp(-sheet.v_oc_v / best.a);
        Self {
            light_a: best.knee - saturation_a + best.g * sheet.v_oc_v,
            saturation_a,
            series_ohm: best.rs,
            shunt_s: best.g,
            thermal_v: best.a,
            alpha_sc_a_k: sheet.alpha_sc_a_k,
        }
    }

    /// The panel's curve in given light and at given warmth.
    ///
    /// # Arguments
    ///
    /// * `irradiance_w_m2`: on the panel; 0 or less is darkness. \[W/m2\]
    /// * `cell_c`: of its cells, -60 to 150. \[degC\]
    pub fn at(&self, irradiance_w_m2: f64, cell_c: f64) -> SingleDiode {
        let light = irradiance_w_m2.max(0.0) / REFERENCE_W_M2;
        let warmer_k = cell_c - REFERENCE_CELL_C;
        SingleDiode {
            light_a: (light * (self.light_a + self.alpha_sc_a_k * warmer_k)).max(0.0),
            saturation_a: self.saturation_a * saturation_growth(warmer_k),
            series_ohm: self.series_ohm,
            shunt_s: light * self.shunt_s,
            thermal_v: self.thermal_v * thermal_growth(warmer_k),
        }
    }
}

/// a over its value at 25 degC.
fn thermal_growth(warmer_k: f64) -> f64 {
    1.0 + warmer_k / (REFERENCE_CELL_C + ZERO_C_K)
}

/// I0 over its value at 25 degC.
fn saturation_growth(warmer_k: f64) -> f64 {
    let reference_k = REFERENCE_CELL_C + ZERO_C_K;
    let gap_ev = BAND_GAP_EV * (1.0 + BAND_GAP_SLOPE_K * warmer_k);
    let barrier = BAND_GAP_EV / reference_k - gap_ev / (reference_k + warmer_k);
    thermal_growth(warmer_k).powi(3) * libm::exp(barrier / BOLTZMANN_EV_K)
}

/// Current that a candidate gives too much at its open-circuit voltage of a cell 2 K warmer, by
/// the sheet's coefficient, as a share of Isc.
fn temperature_miss(sheet: &Datasheet, candidate: &Candidate) -> f64 {
    let v = sheet.v_oc_v + sheet.beta_voc_v_k * PROBE_K;
    let a = candidate.a * thermal_growth(PROBE_K);
    let saturation_of_knee = saturation_growth(PROBE_K);
    let offset = sheet.v_oc_v / candidate.a;
    // I0 exp(V/a) as one exponential: I0 alone can be smaller than any number.
    let diode =
        candidate.knee * saturation_of_knee * (libm::exp(v / a - offset) - libm::exp(-offset));
    let light = candidate.knee * (1.0 - libm::exp(-offset))
        + candidate.g * sheet.v_oc_v
        + sheet.alpha_sc_a_k * PROBE_K;
    (light - diode - candidate.g * v) / sheet.i_sc_a
}

/// The curve with this a through the three points, level in power at the maximum, if there is
/// one with a series resistance of 0 or more and a shunt that is not too far from one. Of several
/// the one with the most shunt.
fn through_points(sheet: &Datasheet, a: f64) -> Option<Candidate> {
    // Beyond this the diode at maximum power would see more than Voc.
    let most_rs = (sheet.v_oc_v - sheet.v_mp_v) / sheet.i_mp_a;
    let mut before: Option<(f64, f64)> = None;
    let mut found: Option<Candidate> = None;
    for idx in 0..SCAN {
        let rs = most_rs * f64::from(idx) / f64::from(SCAN);
        let here = slope_miss(sheet, a, rs).map(|(miss, _)| (rs, miss));
        if let (Some((mut low, low_miss)), Some((mut high, high_miss))) = (before, here)
            && low_miss * high_miss <= 0.0
        {
            for _ in 0..60 {
                let middle = 0.5 * (low + high);
                let (miss, _) = slope_miss(sheet, a, middle)?;
                if 0.0 < low_miss * miss {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            let (_, candidate) = slope_miss(sheet, a, 0.5 * (low + high))?;
            if -MOST_RISE * sheet.i_sc_a / sheet.v_oc_v <= candidate.g
                && found.is_none_or(|other| other.g < candidate.g)
            {
                found = Some(candidate);
            }
        }
        before = here;
    }
    found
}

/// For one a and Rs the three points fix IL, I0 and the shunt. How far the curve's slope at
/// maximum power is from Imp/Vmp, as a share of it.
fn slope_miss(sheet: &Datasheet, a: f64, rs: f64) -> Option<(f64, Candidate)> {
    let grown = |diode_v: f64| libm::exp((diode_v - sheet.v_oc_v) / a);
    let (sc_v, mp_v) = (sheet.i_sc_a * rs, sheet.v_mp_v + sheet.i_mp_a * rs);
    // I(Vd) less I(Voc) = 0 at two points: knee (1 - grown) + g (Voc - Vd) = I.
    let (sc_diode, sc_shunt) = (1.0 - grown(sc_v), sheet.v_oc_v - sc_v);
    let (mp_diode, mp_shunt) = (1.0 - grown(mp_v), sheet.v_oc_v - mp_v);
    let determinant = sc_diode * mp_shunt - mp_diode * sc_shunt;
    let knee = (sheet.i_sc_a * mp_shunt - sheet.i_mp_a * sc_shunt) / determinant;
    let g = (sc_diode * sheet.i_mp_a - mp_diode * sheet.i_sc_a) / determinant;
    if !(0.0 < knee && knee.is_finite() && g.is_finite()) {
        return None;
    }
    let conductance = knee * grown(mp_v) / a + g;
    let load_s = sheet.i_mp_a / sheet.v_mp_v;
    let miss = conductance * (1.0 - rs * load_s) / load_s - 1.0;
    Some((miss, Candidate { a, rs, knee, g }))
}
