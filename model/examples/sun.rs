//! Light and panel for rows of a JSON file, to hold against other programs.
//!
//! `cargo run --release -p model --example sun -- FILE.json` reads `{"sun": [...], "panel":
//! [...]}`, either of which may be absent, and prints the same lists with the results filled in:
//!
//! - a `sun` row has `latitude`, `longitude`, `altitude_m`, `time_utc` (ISO 8601 with its offset),
//!   `tilt_deg`, `surface_azimuth_deg` and `albedo`;
//! - a `panel` row has a `datasheet` (`v_mp`, `i_mp`, `v_oc`, `i_sc`, `alpha_sc`, `beta_voc`, `n`),
//!   `irradiance_w_m2`, `cell_c` and `load_ohm`.
//!
//! Other keys of a row are kept as they are. A bad row ends the run with one line on the error
//! stream that names list, row and field, and exit code 2.

#[path = "simulate/program.rs"]
mod program;

use std::fmt::Display;
use std::process::ExitCode;

use chrono::NaiveDate;
use model::panel::{
    BAND_GAP_EV, BAND_GAP_SLOPE_K, Datasheet, DeSoto, PanelError, REFERENCE_CELL_C, REFERENCE_W_M2,
};
use model::place::Place;
use model::sun::{
    Plane, SunError, day_of_year, erbs_split, extraterrestrial_normal_w_m2, faiman_cell_c,
    haurwitz_ghi_w_m2, sun_position,
};
use serde_json::{Map, Value, json};

const AIR_C: f64 = 25.0;
const WIND_M_S: f64 = 1.0;

fn main() -> ExitCode {
    program::print("sun", answer())
}

fn answer() -> Result<String, String> {
    let (name, text) = program::only_file("one file of rows")?;
    let mut answer = filled(&text).map_err(|error| format!("{name}: {error}"))?;
    answer.push('\n');
    Ok(answer)
}

/// The text of the answer to the text of a file.
fn filled(text: &str) -> Result<String, String> {
    let Value::Object(file) =
        serde_json::from_str(&quote_odd_numbers(text)).map_err(|error| error.to_string())?
    else {
        return Err("expected an object with the lists sun and panel".to_owned());
    };
    // Other keys may say where a file comes from, but other keys alone are a slip of the pen.
    if !file.is_empty() && !["sun", "panel"].iter().any(|list| file.contains_key(*list)) {
        return Err("expected an object with the lists sun and panel, found neither".to_owned());
    }
    let mut answer = Map::new();
    for (list, fill) in [
        ("sun", fill_sun as fn(&mut Row) -> _),
        ("panel", fill_panel),
    ] {
        let Some(value) = file.get(list) else {
            continue;
        };
        let Value::Array(rows) = value else {
            return Err(format!("{list}: expected a list, found {}", short(value)));
        };
        let mut filled = Vec::with_capacity(rows.len());
        for (idx, value) in rows.iter().enumerate() {
            let path = format!("{list}[{idx}]");
            let Value::Object(fields) = value else {
                return Err(format!(
                    "{path}: expected an object, found {}",
                    short(value)
                ));
            };
            let mut row = Row {
                path,
                fields: fields.clone(),
            };
            fill(&mut row)?;
            filled.push(Value::Object(row.fields));
        }
        answer.insert(list.to_owned(), Value::Array(filled));
    }
    serde_json::to_string_pretty(&Value::Object(answer)).map_err(|error| error.to_string())
}

/// One row of a list and where it stands in the file.
struct Row {
    path: String,
    fields: Map<String, Value>,
}

impl Row {
    fn get(&self, field: &str) -> Result<&Value, String> {
        self.fields
            .get(field)
            .ok_or_else(|| self.refusal(field, "is missing"))
    }

    fn number(&self, field: &str) -> Result<f64, String> {
        let value = self.get(field)?;
        value
            .as_f64()
            .filter(|number| number.is_finite())
            .ok_or_else(|| {
                self.refusal(field, format!("expected a number, found {}", short(value)))
            })
    }

    fn number_within(&self, field: &str, low: f64, high: f64) -> Result<f64, String> {
        let number = self.number(field)?;
        if (low..=high).contains(&number) {
            return Ok(number);
        }
        Err(self.refusal(field, format!("{number} is outside {low} to {high}")))
    }

    fn refusal(&self, field: &str, why: impl Display) -> String {
        format!("{}.{field}: {why}", self.path)
    }

    fn set(&mut self, field: &str, value: impl Into<Value>) {
        self.fields.insert(field.to_owned(), value.into());
    }
}

fn fill_sun(row: &mut Row) -> Result<(), String> {
    let altitude_m = if row.fields.contains_key("altitude_m") {
        row.number("altitude_m")?
    } else {
        0.0
    };
    let place = Place {
        latitude_deg: row.number("latitude")?,
        longitude_deg: row.number("longitude")?,
        altitude_m,
        utc_offset_min: 0,
    };
    place
        .checked()
        .map_err(|error| row.refusal(sun_field(&error), error))?;
    let plane = Plane {
        tilt_deg: row.number("tilt_deg")?,
        azimuth_deg: row.number("surface_azimuth_deg")?,
        albedo: row.number("albedo")?,
    };
    plane
        .checked()
        .map_err(|error| row.refusal(sun_field(&error), error))?;
    let time = row.get("time_utc")?;
    let utc_s = time.as_str().and_then(unix_seconds).ok_or_else(|| {
        let why = format!(
            "expected a time such as 2026-03-21T05:00:00+00:00, found {}",
            short(time)
        );
        row.refusal("time_utc", why)
    })?;
    #[expect(clippy::cast_possible_truncation, reason = "years 0 to 9999 fit")]
    let day = (utc_s / 86_400.0).floor() as i32;
    let day_of_year = day_of_year(day).map_err(|error| row.refusal("time_utc", error))?;

    let sun = sun_position(utc_s, place.latitude_deg, place.longitude_deg);
    let outside = extraterrestrial_normal_w_m2(day_of_year);
    let ghi = haurwitz_ghi_w_m2(sun.zenith_deg);
    let split = erbs_split(ghi, sun.zenith_deg, outside);
    let on_plane = plane.irradiance_w_m2(sun, ghi, split);
    row.set("zenith_deg", sun.zenith_deg);
    row.set("azimuth_deg", sun.azimuth_deg);
    row.set("extraterrestrial_normal_w_m2", outside);
    row.set("haurwitz_ghi_w_m2", ghi);
    row.set("erbs_dhi_w_m2", split.dhi_w_m2);
    row.set("erbs_dni_w_m2", split.dni_w_m2);
    row.set("isotropic_poa_w_m2", on_plane);
    row.set(
        "faiman_cell_c_at_25_c_1_m_s",
        faiman_cell_c(on_plane, AIR_C, WIND_M_S),
    );
    Ok(())
}

fn fill_panel(row: &mut Row) -> Result<(), String> {
    let sheet = row.get("datasheet")?;
    let Value::Object(fields) = sheet else {
        let why = format!("expected an object, found {}", short(sheet));
        return Err(row.refusal("datasheet", why));
    };
    let sheet_row = Row {
        path: format!("{}.datasheet", row.path),
        fields: fields.clone(),
    };
    let cells = sheet_row.number_within("n", 1.0, 1_000.0)?;
    if 0.0 < cells.fract() {
        return Err(sheet_row.refusal("n", format!("{cells} is not a whole number")));
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "1 to 1000"
    )]
    let cells = cells as u32;
    let sheet = Datasheet {
        v_mp_v: sheet_row.number("v_mp")?,
        i_mp_a: sheet_row.number("i_mp")?,
        v_oc_v: sheet_row.number("v_oc")?,
        i_sc_a: sheet_row.number("i_sc")?,
        alpha_sc_a_k: sheet_row.number("alpha_sc")?,
        beta_voc_v_k: sheet_row.number("beta_voc")?,
        cells,
    };
    let fitted = DeSoto::fit(&sheet).map_err(|error| match panel_field(&error) {
        Some(field) => sheet_row.refusal(field, error),
        None => row.refusal("datasheet", error),
    })?;
    let irradiance_w_m2 = row.number_within("irradiance_w_m2", 0.0, 2_000.0)?;
    let cell_c = row.number_within("cell_c", -60.0, 150.0)?;
    let load_ohm = row.number_within("load_ohm", 0.0, 1e9)?;

    let diode = fitted.at(irradiance_w_m2, cell_c);
    let best = diode.max_power();
    row.set(
        "desoto",
        json!({
            "I_L_ref": fitted.light_a,
            "I_o_ref": fitted.saturation_a,
            "R_s": fitted.series_ohm,
            "R_sh_ref": 1.0 / fitted.shunt_s,
            "a_ref": fitted.thermal_v,
            "alpha_sc": fitted.alpha_sc_a_k,
            "EgRef": BAND_GAP_EV,
            "dEgdT": BAND_GAP_SLOPE_K,
            "irrad_ref": REFERENCE_W_M2,
            "temp_ref": REFERENCE_CELL_C,
        }),
    );
    row.set("p_mp_w", best.power_w());
    row.set("v_mp_v", best.voltage_v);
    row.set("v_oc_v", diode.open_circuit_v());
    row.set("i_sc_a", diode.short_circuit_a());
    row.set("p_load_w", diode.on_load(load_ohm).power_w());
    Ok(())
}

/// Field of a sun row that an error speaks of.
fn sun_field(error: &SunError) -> &'static str {
    match error {
        SunError::Latitude(_) => "latitude",
        SunError::Longitude(_) => "longitude",
        SunError::Altitude(_) => "altitude_m",
        SunError::Tilt(_) => "tilt_deg",
        SunError::Azimuth(_) => "surface_azimuth_deg",
        SunError::Albedo(_) => "albedo",
        _ => "time_utc",
    }
}

/// Field of a data sheet that an error speaks of; none where it is the whole sheet.
fn panel_field(error: &PanelError) -> Option<&'static str> {
    match error {
        PanelError::VoltageAtMaximumPower(_) => Some("v_mp"),
        PanelError::CurrentAtMaximumPower(_) => Some("i_mp"),
        PanelError::OpenCircuitVoltage { .. } => Some("v_oc"),
        PanelError::ShortCircuitCurrent { .. } => Some("i_sc"),
        PanelError::CurrentCoefficient(_) => Some("alpha_sc"),
        PanelError::VoltageCoefficient(_) => Some("beta_voc"),
        PanelError::Cells { .. } => Some("n"),
        _ => None,
    }
}

/// A value as it stands in a message: cut short where it is long.
fn short(value: &Value) -> String {
    let text = value.to_string();
    match text.char_indices().nth(60) {
        Some((end, _)) => format!("{}...", &text[..end]),
        None => text,
    }
}

/// Puts quotes about what some programs write for a number and JSON does not know: NaN,
/// infinities, and numbers too large to hold. The row and field can then be named.
fn quote_odd_numbers(text: &str) -> String {
    let mut quoted = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        let end = if first == '"' {
            end_of_string(rest)
        } else if first.is_ascii_alphanumeric() || "+-.".contains(first) {
            let in_word = |c: char| c.is_ascii_alphanumeric() || "+-.".contains(c);
            rest.find(|c| !in_word(c)).unwrap_or(rest.len())
        } else {
            first.len_utf8()
        };
        let (token, after) = rest.split_at(end);
        // Rust reads NaN and infinity in any case, and numbers too large as infinity.
        if token.parse().is_ok_and(|number: f64| !number.is_finite()) {
            quoted.push('"');
            quoted.push_str(token);
            quoted.push('"');
        } else {
            quoted.push_str(token);
        }
        rest = after;
    }
    quoted
}

/// Where the string that `text` begins with ends, its closing quote included.
fn end_of_string(text: &str) -> usize {
    let mut escaped = false;
    for (idx, byte) in text.bytes().enumerate().skip(1) {
        match byte {
            _ if escaped => escaped = false,
            b'\\' => escaped = true,
            b'"' => return idx + 1,
            _ => {}
        }
    }
    text.len()
}

/// Seconds since 1970 of `YYYY-MM-DDThh:mm[:ss[.fff]]` followed by `Z` or `+hh:mm`.
///
/// Read by hand: chrono's reader of texts would come into the app's download with its feature.
fn unix_seconds(text: &str) -> Option<f64> {
    let (date, clock) = text.split_once(['T', 't', ' '])?;
    let [year, month, day] = three_numbers(date, '-')?;
    let sign_at = clock.rfind(['Z', 'z', '+', '-'])?;
    let (time, offset) = clock.split_at(sign_at);
    let offset_s = offset_seconds(offset)?;

    let (whole, fraction) = time.split_once('.').unwrap_or((time, "0"));
    let with_seconds = if whole.len() == 5 {
        format!("{whole}:00")
    } else {
        whole.to_owned()
    };
    let [hour, minute, second] = three_numbers(&with_seconds, ':')?;
    if 23 < hour || 59 < minute || 60 < second || !is_digits(fraction) {
        return None;
    }
    let fraction: f64 = format!("0.{fraction}").parse().ok()?;
    if date.len() != 10 || with_seconds.len() != 8 {
        return None;
    }
    let date = NaiveDate::from_ymd_opt(i32::try_from(year).ok()?, month, day)?;
    let days = date.signed_duration_since(NaiveDate::default()).num_days();
    #[expect(
        clippy::cast_precision_loss,
        reason = "four-digit years are small numbers"
    )]
    let days = days as f64;
    let of_day = f64::from(3_600 * hour + 60 * minute + second) + fraction;
    Some(days * 86_400.0 + of_day - offset_s)
}

/// Three numbers between separators, digits only.
fn three_numbers(text: &str, separator: char) -> Option<[u32; 3]> {
    let mut parts = text
        .split(separator)
        .map(|part| is_digits(part).then(|| part.parse::<u32>().ok()).flatten());
    let numbers = [parts.next()??, parts.next()??, parts.next()??];
    parts.next().is_none().then_some(numbers)
}

fn is_digits(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit())
}

/// Offset of a clock from UTC, `Z`, `+hh:mm`, `+hhmm` or `+hh`. [s]
fn offset_seconds(text: &str) -> Option<f64> {
    if text.eq_ignore_ascii_case("z") {
        return Some(0.0);
    }
    let sign = if text.starts_with('-') { -1.0 } else { 1.0 };
    let digits = text.get(1..)?.replacen(':', "", 1);
    if !is_digits(&digits) || !matches!(digits.len(), 2 | 4) {
        return None;
    }
    let hours: u32 = digits.get(..2)?.parse().ok()?;
    let minutes: u32 = digits
        .get(2..)
        .filter(|rest| !rest.is_empty())
        .unwrap_or("0")
        .parse()
        .ok()?;
    (hours <= 23 && minutes <= 59).then(|| sign * f64::from(3_600 * hours + 60 * minutes))
}

#[cfg(test)]
mod tests {
    use super::*;

    const SUN: &str = r#"{"latitude": 1, "longitude": 2, "altitude_m": 3, "tilt_deg": 4,
        "time_utc": "2026-03-21T05:00:00+00:00", "surface_azimuth_deg": 5, "albedo": 0.2}"#;
    const PANEL: &str = r#"{"datasheet": {"v_mp": 18.6, "i_mp": 5.38, "v_oc": 22.3, "i_sc": 5.72,
        "alpha_sc": 0.0029, "beta_voc": -0.067, "n": 36}, "irradiance_w_m2": 600, "cell_c": 50,
        "load_ohm": 3.5, "p_load_w": 1e9}"#;

    fn file(sun: &str, panel: &str) -> String {
        format!(r#"{{"sun": [{sun}], "panel": [{panel}]}}"#)
    }

    #[test]
    fn a_file_of_other_things_is_refused() {
        let error = filled(r#"{"suns": []}"#).unwrap_err();
        assert!(error.contains("found neither"), "{error}");
        assert!(filled(r#"{"made_with": "1.0", "sun": []}"#).is_ok());
    }

    #[test]
    fn both_lists_are_filled_in_and_old_results_replaced() {
        let answer: Value = serde_json::from_str(&filled(&file(SUN, PANEL)).unwrap()).unwrap();
        assert_eq!(answer["sun"][0]["tilt_deg"], 4);
        assert!(answer["sun"][0]["zenith_deg"].as_f64().unwrap() > 90.0);
        assert!(answer["panel"][0]["p_load_w"].as_f64().unwrap() < 60.0);
        assert_eq!(filled("{}").unwrap(), "{}");
    }

    #[test]
    fn bad_rows_are_named() {
        let cases = [
            (
                file(&SUN.replace(": 1,", ": 91,"), PANEL),
                "sun[0].latitude",
            ),
            (
                file(&SUN.replace(": 1,", ": NaN,"), PANEL),
                "sun[0].latitude",
            ),
            (
                file(&SUN.replace(": 1,", ": \"1\","), PANEL),
                "sun[0].latitude",
            ),
            (
                file(&SUN.replace("03-21", "02-30"), PANEL),
                "sun[0].time_utc",
            ),
            (file(&SUN.replace("+00:00", ""), PANEL), "sun[0].time_utc"),
            (
                file(SUN, &PANEL.replace("600", "-600")),
                "panel[0].irradiance_w_m2",
            ),
            (
                file(SUN, &PANEL.replace("600", "1e999")),
                "panel[0].irradiance_w_m2",
            ),
            (
                file(SUN, &PANEL.replace("22.3", "2.3")),
                "panel[0].datasheet.v_oc",
            ),
            (
                file(SUN, &PANEL.replace("\"load_ohm\"", "\"load\"")),
                "panel[0].load_ohm",
            ),
            (file(SUN, "3"), "panel[0]"),
        ];
        for (text, field) in cases {
            let message = filled(&text).unwrap_err();
            assert!(message.starts_with(&format!("{field}: ")), "{message}");
            assert!(!message.contains('\n'), "{message}");
        }
    }

    #[test]
    fn words_in_strings_stay_as_they_are() {
        let text = r#"{"site": "NaN \" Infinity", "x": [-Infinity, 1.5]}"#;
        assert_eq!(
            quote_odd_numbers(text),
            r#"{"site": "NaN \" Infinity", "x": ["-Infinity", 1.5]}"#
        );
    }

    #[test]
    fn times_with_any_offset() {
        let seconds = |text| unix_seconds(text).map(|s| s.round());
        assert_eq!(seconds("1970-01-01T00:00:00Z"), Some(0.0));
        assert_eq!(seconds("2003-10-17T12:30:30-07:00"), Some(1_066_419_030.0));
        assert_eq!(
            seconds("2003-10-17 19:30:30.25+0000"),
            Some(1_066_419_030.0)
        );
        assert_eq!(seconds("2003-10-17T19:30+00"), Some(1_066_419_000.0));
        for odd in [
            "",
            "2003-10-17",
            "2003-10-17T24:30:00Z",
            "17-10-2003T10:00:00Z",
            "T+",
            "é",
        ] {
            assert_eq!(seconds(odd), None, "{odd}");
        }
    }
}
