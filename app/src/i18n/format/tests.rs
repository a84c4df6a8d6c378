//! What is printed, case by case.

use model::local_time::{Day, LocalTime};

use super::*;
use crate::i18n::Language;

fn english() -> Formats {
    Formats {
        locale: LocaleFormat::default(),
        degrees: Degrees::Celsius,
        units: &Language::English.strings().common.units,
    }
}

fn spanish() -> Formats {
    let locale = LocaleFormat {
        decimal: ',',
        group: ".".into(),
        ..LocaleFormat::default()
    };
    Formats {
        locale,
        units: &Language::Spanish.strings().common.units,
        ..english()
    }
}

fn check(shown: &str, expected: &str) {
    assert_eq!(shown.replace(['\u{A0}', '\u{202F}'], " "), expected);
}

#[test]
fn numbers_by_locale() {
    check(&english().number(2.44, 1), "2.4");
    check(&spanish().number(2.44, 1), "2,4");
    check(&english().number(2750.0, 0), "2750");
    check(&english().number(12750.0, 0), "12 750");
    check(&spanish().number(-12_750.5, 1), "−12.750,5");
    check(&english().number(-0.01, 1), "0.0");
    check(&english().number(f64::NAN, 1), "–");
}

#[test]
fn fields_hold_no_zeros_and_no_groups() {
    check(&english().field(2.40, 2), "2.4");
    check(&spanish().field(2.40, 2), "2,4");
    check(&english().field(12750.0, 1), "12750");
    check(&english().field(-0.001, 1), "0");
    check(&english().field(100.0, 0), "100");
}

#[test]
fn temperatures_are_as_round_as_they_are_known() {
    check(&english().temperature(181.7, Sure::Known), "182 °C");
    check(&english().temperature(181.7, Sure::Near), "180 °C");
    check(&english().temperature(184.9, Sure::Rough), "180 °C");
    let fahrenheit = Formats {
        degrees: Degrees::Fahrenheit,
        ..english()
    };
    check(&fahrenheit.temperature(100.0, Sure::Known), "212 °F");
    check(&fahrenheit.temperature(181.7, Sure::Near), "360 °F");
    check(&fahrenheit.temperature_difference(10.0), "18 °F");
    check(
        &english().temperature_band(168.0, 192.0, Sure::Rough),
        "170 to 190 °C",
    );
    check(
        &english().temperature_band(178.0, 182.0, Sure::Rough),
        "180 °C",
    );
}

#[test]
fn durations() {
    check(&english().duration(6600.0, Sure::Known), "1 h 50");
    check(&english().duration(6420.0, Sure::Near), "1 h 45");
    check(&english().duration(3000.0, Sure::Known), "50 min");
    check(&english().duration(7200.0, Sure::Known), "2 h");
    check(&english().duration(3590.0, Sure::Known), "1 h");
    check(&english().duration(3900.0, Sure::Known), "1 h 05");
    check(&english().duration(172_800.0, Sure::Known), "2 days");
    check(&english().duration(-5.0, Sure::Known), "0 min");
    check(&spanish().duration(172_800.0, Sure::Known), "2 días");
}

#[test]
fn amounts() {
    check(&english().litres(2.41), "2.4 L");
    check(&english().litres(12.4), "12 L");
    check(&english().mass(0.352), "350 g");
    check(&english().mass(2.04), "2.0 kg");
    check(&english().watts(84.6), "85 W");
    check(&english().energy(1.2 * 3.6e6), "1.2 kWh");
    check(&english().energy(60.0 * 3600.0), "60 Wh");
    check(&english().ohms(5.83), "5.8 Ω");
    check(&english().percent(0.4), "40 %");
    check(&english().sun_hours(6.0), "6 h");
    check(&spanish().sun_hours(6.5), "6,5 h");
}

#[test]
fn times_of_day() {
    let day = Day::from_ymd(2026, 11, 25).unwrap();
    let at = day.at_s(18 * 3600 + 42 * 60);
    check(&english().clock(at, Sure::Known), "18:42");
    check(&english().clock(at, Sure::Near), "18:40");
    check(&english().clock(at, Sure::Rough), "18:45");
    check(&english().clock(day.at_s(86_399), Sure::Near), "00:00");
    let clock = ClockStyle::Hours12 {
        am: "am".into(),
        pm: "pm".into(),
    };
    let twelve = Formats {
        locale: LocaleFormat {
            clock,
            ..LocaleFormat::default()
        },
        ..english()
    };
    check(&twelve.clock(at, Sure::Known), "6:42 pm");
    check(&twelve.clock(day.start(), Sure::Known), "12:00 am");
    check(&twelve.clock(day.at_s(43_200), Sure::Known), "12:00 pm");
}

#[test]
fn days() {
    let day = Day::from_ymd(2026, 11, 25).unwrap();
    check(&english().day(day), "Wednesday 25 November");
    check(&english().short_day(day), "25 Nov");
    check(&english().near_day(day, day), "today");
    check(&english().near_day(day, day.plus(1)), "yesterday");
    check(&spanish().near_day(day, day.plus(-1)), "mañana");
    check(&english().instant(day.at_s(67_200), day), "today, 18:40");
    check(&english().day(Day(0)), "Thursday 1 January");
    check(&english().day(Day(-1)), "Wednesday 31 December");
    assert_eq!(LocalTime(0).day(), Day(0));
}
