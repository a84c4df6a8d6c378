//! Where the sun stands and what it gives.

use model::sun::{
    Plane, SolarDay, Split, SunPosition, erbs_split, extraterrestrial_normal_w_m2, faiman_cell_c,
    haurwitz_ghi_w_m2, sun_position,
};

use super::{Check, angle, relative, temperature};

const SPA: &str = "Reda and Andreas, NREL/TP-560-34302 (2008), the worked example";
const FAO: &str = "FAO Irrigation and Drainage Paper 56 (1998)";
const PVLIB: &str = "pvlib 0.16.1";

/// A place and an instant, s since 1970, with what pvlib has for it: zenith, and light on the plane.
struct Instant {
    name: &'static str,
    utc_s: f64,
    day_of_year: u32,
    at: (f64, f64),
    plane: Plane,
    zenith_deg: f64,
    plane_w_m2: f64,
}

pub(super) fn checks() -> Vec<Check> {
    let mut checks = Vec::new();
    // 17 October 2003, 12:30:30, UTC - 7 h.
    let sun = sun_position(1_066_419_030.0, 39.742_476, -105.178_6);
    checks.push(angle(
        "zenith without refraction, 17 October 2003",
        SPA,
        (90.0 - 39.872_046, sun.zenith_deg),
        0.01,
    ));
    checks.push(angle(
        "azimuth, 17 October 2003",
        SPA,
        (194.340_24, sun.azimuth_deg),
        0.01,
    ));
    let plane = Plane {
        tilt_deg: 30.0,
        azimuth_deg: 170.0,
        albedo: 0.0,
    };
    let beam = Split {
        dni_w_m2: 1.0,
        dhi_w_m2: 0.0,
    };
    let incidence =
        |plane: Plane, sun: SunPosition| plane.irradiance_w_m2(sun, 0.0, beam).acos().to_degrees();
    checks.push(angle(
        "incidence on a slope of 30 deg",
        SPA,
        (25.187_00, incidence(plane, sun)),
        0.02,
    ));

    let september = SolarDay::new(-20.0, 246).unwrap();
    let may = SolarDay::new(-22.9, 135).unwrap();
    let april = SolarDay::new(43.0, 105).unwrap();
    for (what, pair) in [
        (
            "example 8, Ra, 20 S on 3 September",
            (32.2, september.extraterrestrial_mj_m2),
        ),
        (
            "example 10, Ra, 22.9 S in May",
            (25.1, may.extraterrestrial_mj_m2),
        ),
        (
            "example 10, Rs for 7.1 h of sunshine",
            (14.5, may.radiation_mj_m2(7.1).unwrap()),
        ),
    ] {
        checks.push(relative(what, FAO, "MJ/m2d", pair, 0.003));
    }
    for (what, pair) in [
        (
            "example 9, daylight, 20 S on 3 September",
            (11.7, september.daylight_h),
        ),
        (
            "example 10, daylight, 22.9 S in May",
            (10.9, may.daylight_h),
        ),
    ] {
        checks.push(relative(what, FAO, "h", pair, 0.005));
    }
    checks.push(relative(
        "daily radiation outside the air, 15 April at 43 N",
        "Duffie and Beckman, Solar Engineering of Thermal Processes, example 1.10.1",
        "MJ/m2d",
        (33.8, april.extraterrestrial_mj_m2),
        0.005,
    ));
    checks.push(angle(
        "incidence, tilt 45, 15 deg west of south, 43 N, 10:30 on 13 February",
        "Duffie and Beckman, Solar Engineering of Thermal Processes, example 1.6.1",
        (
            35.0,
            incidence(
                Plane {
                    tilt_deg: 45.0,
                    azimuth_deg: 195.0,
                    albedo: 0.0,
                },
                by_hour_angle(43.0, -14.0, -22.5),
            ),
        ),
        0.5,
    ));
    for (zenith, expect) in [(0.0, 1035.1), (30.0, 888.3), (60.0, 487.9)] {
        checks.push(relative(
            format!("clear sky by Haurwitz, zenith {zenith} deg"),
            PVLIB,
            "W/m2",
            (expect, haurwitz_ghi_w_m2(zenith)),
            2e-4,
        ));
    }
    for row in instants() {
        let sun = sun_position(row.utc_s, row.at.0, row.at.1);
        let ghi = haurwitz_ghi_w_m2(sun.zenith_deg);
        let outside = extraterrestrial_normal_w_m2(row.day_of_year);
        let split = erbs_split(ghi, sun.zenith_deg, outside);
        let on_plane = row.plane.irradiance_w_m2(sun, ghi, split);
        checks.push(angle(
            format!("zenith, {}", row.name),
            PVLIB,
            (row.zenith_deg, sun.zenith_deg),
            0.1,
        ));
        checks.push(relative(
            format!(
                "clear sky on a tilted plane by Erbs and Liu-Jordan, {}",
                row.name
            ),
            PVLIB,
            "W/m2",
            (row.plane_w_m2, on_plane),
            0.01,
        ));
    }
    checks.push(temperature(
        "cell at 800 W/m2, air 20 degC, wind 1 m/s",
        "IEC 61215, nominal operating cell temperature of common modules (42 to 48 degC)",
        (45.0, faiman_cell_c(800.0, 20.0, 1.0)),
        3.0,
    ));
    checks
}

fn by_hour_angle(latitude_deg: f64, declination_deg: f64, hour_deg: f64) -> SunPosition {
    let (lat, decl, hour) = (
        latitude_deg.to_radians(),
        declination_deg.to_radians(),
        hour_deg.to_radians(),
    );
    let up = lat.sin() * decl.sin() + lat.cos() * decl.cos() * hour.cos();
    let north = decl.sin() * lat.cos() - decl.cos() * hour.cos() * lat.sin();
    let east = -decl.cos() * hour.sin();
    SunPosition {
        zenith_deg: up.acos().to_degrees(),
        azimuth_deg: east.atan2(north).to_degrees(),
    }
}

/// Four of the rows of the suite `sun`, one of each site.
fn instants() -> Vec<Instant> {
    vec![
        Instant {
            name: "equator highland, 2026-03-21 06:00 UTC",
            utc_s: 1_774_072_800.0,
            day_of_year: 80,
            at: (-1.3, 36.8),
            plane: Plane {
                tilt_deg: 15.0,
                azimuth_deg: 0.0,
                albedo: 0.2,
            },
            zenith_deg: 55.023429,
            plane_w_m2: 556.0315,
        },
        Instant {
            name: "southern winter, 2026-07-10 16:00 UTC",
            utc_s: 1_783_699_200.0,
            day_of_year: 191,
            at: (-33.5, -70.6),
            plane: Plane {
                tilt_deg: 15.0,
                azimuth_deg: 0.0,
                albedo: 0.2,
            },
            zenith_deg: 56.828109,
            plane_w_m2: 693.7001,
        },
        Instant {
            name: "northern summer, 2026-06-21 14:00 UTC",
            utc_s: 1_782_050_400.0,
            day_of_year: 172,
            at: (40.0, -3.7),
            plane: Plane {
                tilt_deg: 15.0,
                azimuth_deg: 180.0,
                albedo: 0.2,
            },
            zenith_deg: 27.349315,
            plane_w_m2: 937.2835,
        },
        Instant {
            name: "tropical december, 2026-12-20 14:00 UTC",
            utc_s: 1_797_775_200.0,
            day_of_year: 354,
            at: (14.6, -17.4),
            plane: Plane {
                tilt_deg: 15.0,
                azimuth_deg: 180.0,
                albedo: 0.2,
            },
            zenith_deg: 40.163288,
            plane_w_m2: 881.6130,
        },
    ]
}
