//! From the sun's position to the cells' temperature, against pvlib 0.16.1.

use model::sun::{
    Plane, SunPosition, erbs_split, extraterrestrial_normal_w_m2, faiman_cell_c, haurwitz_ghi_w_m2,
    sun_position,
};

use crate::rows::{SunRow, close, rows};

/// Day since 1970-01-01 of a date of the civil calendar. Days are counted from 1 March, so that
/// the leap day comes last.
fn day_number(year: i64, month: i64, day: i64) -> i64 {
    let year = if month <= 2 { year - 1 } else { year };
    let month_from_march = (month + 9) % 12;
    365 * year + year / 4 - year / 100 + year / 400 + (153 * month_from_march + 2) / 5 + day
        - 719_469
}

/// UTC seconds and day of the year of `YYYY-MM-DDThh:mm:ss+00:00`.
fn instant(text: &str) -> (f64, u32) {
    assert!(text.ends_with("+00:00"), "{text}");
    let part = |from: usize, to: usize| text[from..to].parse::<i64>().unwrap();
    let day = day_number(part(0, 4), part(5, 7), part(8, 10));
    let of_year = day - day_number(part(0, 4), 1, 1) + 1;
    let seconds = 86_400 * day + 3_600 * part(11, 13) + 60 * part(14, 16) + part(17, 19);
    (seconds as f64, u32::try_from(of_year).unwrap())
}

#[test]
fn position_is_that_of_the_full_theory() {
    for row in rows::<SunRow>("sun") {
        let (utc_s, _) = instant(&row.time_utc);
        let sun = sun_position(utc_s, row.latitude, row.longitude);
        close("zenith", sun.zenith_deg, row.zenith_deg, 0.003, &row);
        // Seen from the ground the error of an azimuth shrinks with the sine of the zenith angle.
        let turn = (sun.azimuth_deg - row.azimuth_deg + 180.0).rem_euclid(360.0) - 180.0;
        close(
            "azimuth",
            turn * row.zenith_deg.to_radians().sin(),
            0.0,
            0.003,
            &row,
        );
    }
}

#[test]
fn light_is_within_a_percent() {
    for row in rows::<SunRow>("sun") {
        let (utc_s, day_of_year) = instant(&row.time_utc);
        let sun = sun_position(utc_s, row.latitude, row.longitude);
        let outside = extraterrestrial_normal_w_m2(day_of_year);
        close(
            "outside",
            outside,
            row.extraterrestrial_normal_w_m2,
            1e-5,
            &row,
        );
        // At a sun of half a degree 0.001 deg are a percent of next to nothing: 0.01 W/m2.
        let percent = |value: f64| 0.01 * value + 0.01;
        let ghi = haurwitz_ghi_w_m2(sun.zenith_deg);
        close(
            "Haurwitz",
            ghi,
            row.haurwitz_ghi_w_m2,
            percent(row.haurwitz_ghi_w_m2),
            &row,
        );
        let split = erbs_split(ghi, sun.zenith_deg, outside);
        close(
            "DHI",
            split.dhi_w_m2,
            row.erbs_dhi_w_m2,
            percent(row.erbs_dhi_w_m2),
            &row,
        );
        close(
            "DNI",
            split.dni_w_m2,
            row.erbs_dni_w_m2,
            percent(row.erbs_dni_w_m2),
            &row,
        );
        let plane = Plane {
            tilt_deg: row.tilt_deg,
            azimuth_deg: row.surface_azimuth_deg,
            albedo: row.albedo,
        };
        let on_plane = plane.irradiance_w_m2(sun, ghi, split);
        close(
            "plane",
            on_plane,
            row.isotropic_poa_w_m2,
            percent(row.isotropic_poa_w_m2),
            &row,
        );
        let cell = faiman_cell_c(on_plane, 25.0, 1.0);
        close("cell", cell, row.faiman_cell_c_at_25_c_1_m_s, 0.05, &row);
    }
}

#[test]
fn each_step_alone_agrees_to_rounding() {
    // From pvlib's own position, so that nothing but the step itself can differ.
    for row in rows::<SunRow>("sun") {
        let sun = SunPosition {
            zenith_deg: row.zenith_deg,
            azimuth_deg: row.azimuth_deg,
        };
        let ghi = haurwitz_ghi_w_m2(sun.zenith_deg);
        close("Haurwitz", ghi, row.haurwitz_ghi_w_m2, 1e-4, &row);
        let outside = row.extraterrestrial_normal_w_m2;
        let split = erbs_split(row.haurwitz_ghi_w_m2, sun.zenith_deg, outside);
        close("DHI", split.dhi_w_m2, row.erbs_dhi_w_m2, 1e-4, &row);
        close("DNI", split.dni_w_m2, row.erbs_dni_w_m2, 1e-4, &row);
    }
}
