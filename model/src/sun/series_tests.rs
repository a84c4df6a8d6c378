//! A day's light keeps the day's sum, the hours' skies and the clock.

use super::*;
use crate::sun::Sky;
use proptest::prelude::*;

/// 21 March 2026. \[days since 1970-01-01\]
const EQUINOX: i32 = 20_533;

fn setting(latitude_deg: f64, longitude_deg: f64, utc_offset_min: i32) -> Setting {
    let place = Place {
        latitude_deg,
        longitude_deg,
        altitude_m: 500.0,
        utc_offset_min,
    };
    let facing = if latitude_deg < 0.0 { 0.0 } else { 180.0 };
    Setting {
        place,
        air: AirYear::guess(latitude_deg, 500.0).unwrap(),
        plane: Plane {
            tilt_deg: 15.0,
            azimuth_deg: facing,
            albedo: 0.2,
        },
        wind_m_s: 1.0,
    }
}

fn day(setting: &Setting, log: DayLog) -> IrradianceSeries {
    IrradianceSeries::new(setting, EQUINOX, &log, Unlogged::As(Sky::Clear), 15).unwrap()
}

#[test]
fn a_log_of_every_hour_of_the_day_is_a_clear_day() {
    let here = setting(10.0, 10.0, 60);
    let all = SolarDay::new(10.0, 80).unwrap().daylight_h;
    let logged = day(&here, DayLog::SunHours(all));
    let clear = day(&here, DayLog::Hourly([None; 24]));
    assert!((logged.horizontal_j_m2() / clear.horizontal_j_m2() - 1.0).abs() < 1e-9);
}

/// FAO-56, eq. 37: a clear day at 3000 m has 0.81 of Ra where one at the sea has 0.75, and a day of
/// sun and cloud the same share of a clear day at both.
#[test]
fn a_day_is_brighter_up_a_mountain() {
    let low = setting(10.0, 10.0, 60);
    let at = |altitude_m: f64, log| {
        let place = Place {
            altitude_m,
            ..low.place
        };
        day(&Setting { place, ..low }, log).horizontal_j_m2()
    };
    for log in [DayLog::Hourly([None; 24]), DayLog::SunHours(5.5)] {
        let gain = at(3000.0, log) / at(0.0, log);
        assert!((gain - 0.81 / 0.75).abs() < 1e-9, "{log:?}: {gain}");
    }
}

#[test]
fn an_hour_changes_its_own_steps_only() {
    let here = setting(10.0, 10.0, 60);
    let mut skies = [None; 24];
    skies[10] = Some(Sky::Grey);
    let clear = day(&here, DayLog::Hourly([None; 24]));
    let grey = day(&here, DayLog::Hourly(skies));
    for (before, after) in clear.steps.iter().zip(&grey.steps) {
        let hour = before.start_s / 3_600;
        if hour == 10 {
            assert!(after.ghi_w_m2 < 0.4 * before.ghi_w_m2);
        } else {
            assert!((after.ghi_w_m2 - before.ghi_w_m2).abs() < 1e-9);
        }
    }
}

#[test]
fn the_clock_follows_the_offset() {
    // At 90 deg east the sun is highest about 12:07 by a clock of UTC+6 on 21 March (the equation
    // of time is -7 min), and two hours later by a clock of UTC+8.
    for (offset, noon_h) in [(360, 12.12), (480, 14.12)] {
        let here = setting(25.0, 90.0, offset);
        let series = day(&here, DayLog::Hourly([None; 24]));
        let highest = series
            .steps
            .iter()
            .min_by(|a, b| a.sun.zenith_deg.total_cmp(&b.sun.zenith_deg))
            .unwrap();
        let middle_h = (f64::from(highest.start_s) + 450.0) / 3_600.0;
        assert!((middle_h - noon_h).abs() < 0.14, "{offset}: {middle_h}");
    }
}

#[test]
fn half_of_patchy_sun_is_worth_more_squared_than_its_mean() {
    let here = setting(10.0, 10.0, 60);
    let series = day(&here, DayLog::Hourly([Some(Sky::Patchy); 24]));
    let noon = series.step_at(12 * 3_600).unwrap();
    let mean_of_square: f64 = noon
        .states
        .iter()
        .map(|s| s.weight * s.irradiance_w_m2.powi(2))
        .sum();
    assert!(1.2 * noon.plane_w_m2().powi(2) < mean_of_square);
}

#[test]
fn bad_input_is_named() {
    let here = setting(10.0, 10.0, 60);
    let log = DayLog::SunHours(14.0);
    let as_clear = Unlogged::As(Sky::Clear);
    let refused = IrradianceSeries::new(&here, EQUINOX, &log, as_clear, 15);
    assert!(matches!(refused, Err(SunError::SunHoursExceedDay { .. })));
    let log = DayLog::SunHours(4.0);
    for step in [0, 7, 90] {
        assert_eq!(
            IrradianceSeries::new(&here, EQUINOX, &log, as_clear, step),
            Err(SunError::Step(step))
        );
    }
    let north = setting(10.0, 200.0, 60);
    assert_eq!(
        IrradianceSeries::new(&north, EQUINOX, &log, as_clear, 15),
        Err(SunError::Longitude(200.0))
    );
    let gale = Setting {
        wind_m_s: f64::NAN,
        ..here
    };
    assert!(IrradianceSeries::new(&gale, EQUINOX, &log, as_clear, 15).is_err());
    assert_eq!(
        IrradianceSeries::new(&here, 50_000, &log, as_clear, 15),
        Err(SunError::Day(50_000))
    );
    assert_eq!(
        typical_year(&here, 1.2, 30),
        Err(SunError::SunshineShare(1.2))
    );
}

#[test]
fn mid_month_days_are_the_fifteenth() {
    // Days of the year of FAO-56, annex 2, table 2.5, for the 15th of a common year.
    let expected = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];
    let here = setting(10.0, 10.0, 60);
    let year = typical_year(&here, 0.6, 60).unwrap();
    for (series, doy) in year.iter().zip(expected) {
        assert_eq!(day_of_year(series.local_day), Ok(doy));
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(128))]
    #[test]
    fn the_steps_add_up_to_the_fao_radiation_or_to_a_clear_day(
        latitude in -66.0..66.0_f64, longitude in -180.0..180.0_f64, offset_h in -12..=14_i32,
        local_day in 18_000..25_000_i32, share in 0.0..=1.0_f64, half in proptest::bool::ANY,
    ) {
        let here = setting(latitude, longitude, offset_h * 60);
        let step_min = if half { 30 } else { 15 };
        let solar = SolarDay::new(latitude, day_of_year(local_day).unwrap()).unwrap();
        let hours = share * solar.daylight_h;
        let unlogged = Unlogged::As(Sky::Clear);
        let log = DayLog::SunHours(hours);
        let series = IrradianceSeries::new(&here, local_day, &log, unlogged, step_min).unwrap();
        // The clear day by steps of one minute.
        let none = DayLog::Hourly([None; 24]);
        let clear = IrradianceSeries::new(&here, local_day, &none, unlogged, 1).unwrap();
        let rs = altitude_gain(500.0) * solar.radiation_mj_m2(hours).unwrap() * 1e6;
        let wanted = rs.min(clear.horizontal_j_m2());
        prop_assert!((series.horizontal_j_m2() - wanted).abs() < 0.005 * wanted + 1e3,
            "{} for {wanted}", series.horizontal_j_m2());
    }

    #[test]
    fn a_flat_panel_gets_the_horizontal_sum(
        latitude in -66.0..66.0_f64, local_day in 18_000..25_000_i32, share in 0.0..=1.0_f64,
    ) {
        let here = setting(latitude, 0.0, 0);
        let flat = Setting { plane: Plane { tilt_deg: 0.0, ..here.plane }, ..here };
        let hours = share * SolarDay::new(latitude, day_of_year(local_day).unwrap())
            .unwrap().daylight_h;
        let log = DayLog::SunHours(hours);
        let series =
            IrradianceSeries::new(&flat, local_day, &log, Unlogged::MeanOfLogged, 30).unwrap();
        let sum = series.horizontal_j_m2();
        prop_assert!((series.plane_j_m2() - sum).abs() <= 1e-9 * sum);
    }
}
