//! Numbers as a household reads them: its separators, its clock, and no false digits.
//!
//! Pure: what the browser knows of a locale comes in as [`LocaleFormat`].

mod locale;

pub use locale::{ClockStyle, DatePart, LocaleFormat};

use model::local_time::{Day, LocalTime};

use crate::i18n::strings::common::Units;
use crate::state::settings::Degrees;

/// How well a value is known, which decides how finely it is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Sure {
    /// Measured or typed: shown to the degree, to the minute.
    Known,
    /// Estimated with a narrow band: to 5 degrees, to 5 minutes.
    Near,
    /// Estimated with a wide band: to 10 degrees, to 15 minutes.
    Rough,
}

/// Everything needed to write a value: locale, unit of temperature, the language's units.
#[derive(Debug, Clone, PartialEq)]
pub struct Formats {
    /// Separators, clock and dates.
    pub locale: LocaleFormat,
    /// Unit of temperatures.
    pub degrees: Degrees,
    /// The language's way of writing units.
    pub units: &'static Units,
}

impl Sure {
    /// How well a temperature is known whose 80 % band is this wide.
    pub fn of_band_c(width_c: f64) -> Self {
        if width_c < 25.0 {
            Self::Near
        } else {
            Self::Rough
        }
    }

    /// How well a time is known whose 80 % band is this wide.
    pub fn of_band_s(width_s: f64) -> Self {
        if width_s < 2400.0 {
            Self::Near
        } else {
            Self::Rough
        }
    }

    fn step_degrees(self, degrees: Degrees) -> f64 {
        match (self, degrees) {
            (Self::Known, _) => 1.0,
            (Self::Near, Degrees::Celsius) => 5.0,
            (Self::Near, Degrees::Fahrenheit) | (Self::Rough, Degrees::Celsius) => 10.0,
            (Self::Rough, Degrees::Fahrenheit) => 20.0,
        }
    }

    fn step_min(self) -> u8 {
        match self {
            Self::Known => 1,
            Self::Near => 5,
            Self::Rough => 15,
        }
    }

    /// What times are rounded to. \[s\]
    pub fn step_s(self) -> i64 {
        60 * i64::from(self.step_min())
    }

    /// A time rounded to what is known, so that its day is that of what is shown. What is known to
    /// the minute shows as a clock does: its minute is not over yet.
    pub fn round(self, at: LocalTime) -> LocalTime {
        match self {
            Self::Known => self.floor(at),
            Self::Near | Self::Rough => self.floor(at.plus_s(self.step_s() / 2)),
        }
    }

    /// The same, never later than it is.
    pub fn floor(self, at: LocalTime) -> LocalTime {
        at.plus_s(-at.0.rem_euclid(self.step_s()))
    }
}

impl Formats {
    /// A number with exactly this many decimals.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        self.locale.number(value, decimals)
    }

    /// A number for a field: at most this many decimals, none that are zero, nothing grouped.
    pub fn field(&self, value: f64, most_decimals: usize) -> String {
        let text = format!("{value:.most_decimals$}");
        let text = match text.contains('.') {
            true => text.trim_end_matches('0').trim_end_matches('.'),
            false => &text,
        };
        let text = if text == "-0" { "0" } else { text };
        text.replace('.', &self.locale.decimal.to_string())
    }

    /// A temperature with its unit: `182 °C`.
    pub fn temperature(&self, celsius: f64, sure: Sure) -> String {
        let step = sure.step_degrees(self.degrees);
        let shown = round_to(self.degrees.from_c(celsius), step);
        (self.units.degrees)(&self.number(shown, 0), self.degrees)
    }

    /// A span between two temperatures with its unit, the ends rounded alike: `170 to 190 °C`.
    pub fn temperature_band(&self, low_c: f64, high_c: f64, sure: Sure) -> String {
        let step = sure.step_degrees(self.degrees);
        let end = |celsius| self.number(round_to(self.degrees.from_c(celsius), step), 0);
        let (low, high) = (end(low_c), end(high_c));
        let shown = if low == high {
            low
        } else {
            (self.units.from_to)(&low, &high)
        };
        (self.units.degrees)(&shown, self.degrees)
    }

    /// A difference of temperatures with its unit.
    pub fn temperature_difference(&self, kelvin: f64) -> String {
        let shown = self.degrees.from_c(kelvin) - self.degrees.from_c(0.0);
        (self.units.degrees)(&self.number(shown.round(), 0), self.degrees)
    }

    /// A volume: `2.4 L`, from 10 L on without decimals.
    pub fn litres(&self, litres: f64) -> String {
        // What is none is known without decimals.
        let decimals = usize::from(0.0 < litres.abs() && litres.abs() < 9.95);
        (self.units.litres)(&self.number(litres, decimals))
    }

    /// A mass: to 10 g below a kilogram, then `2.4 kg`, from 10 kg on without decimals.
    pub fn mass(&self, kg: f64) -> String {
        if kg.abs() < 0.995 {
            return (self.units.grams)(&self.number(round_to(kg * 1000.0, 10.0), 0));
        }
        let decimals = usize::from(kg.abs() < 9.95);
        (self.units.kilograms)(&self.number(kg, decimals))
    }

    /// How long something takes: `50 min`, `1 h 50`, from a day and a half on `2 days`.
    pub fn duration(&self, seconds: f64, sure: Sure) -> String {
        let minutes = round_to(seconds.max(0.0) / 60.0, f64::from(sure.step_min()));
        let (hours, rest) = ((minutes / 60.0).floor(), minutes % 60.0);
        if hours < 1.0 {
            (self.units.minutes)(&self.number(rest, 0))
        } else if hours < 36.0 && rest < 0.5 {
            (self.units.hours)(&self.number(hours, 0))
        } else if hours < 36.0 {
            (self.units.hours_minutes)(&self.number(hours, 0), &format!("{rest:02.0}"))
        } else {
            (self.units.days)(&self.number((hours / 24.0).round(), 0))
        }
    }

    /// Hours of sun: to a tenth, without a zero behind the sign.
    pub fn sun_hours(&self, hours: f64) -> String {
        (self.units.hours)(&self.field(hours, 1))
    }

    /// A time of day: `18:40` or `6:40 pm`, rounded to what is known.
    pub fn clock(&self, at: LocalTime, sure: Sure) -> String {
        let seconds = f64::from(second_of_day(sure.round(at)));
        self.locale.clock(seconds)
    }

    /// A time of day with its day, where that is not today: `18:40 tomorrow`.
    pub fn time(&self, at: LocalTime, sure: Sure, today: Day) -> String {
        let time = self.clock(at, sure);
        let day = sure.round(at).day();
        match i64::from(day.0) - i64::from(today.0) {
            0 => time,
            1 => (self.units.time_tomorrow)(&time),
            -1 => (self.units.time_yesterday)(&time),
            _ => (self.units.time_on)(&time, &self.day(day)),
        }
    }

    /// Two times of day as a span: `18:20 to 19:05`.
    pub fn clock_band(&self, from: LocalTime, to: LocalTime, sure: Sure) -> String {
        let (from, to) = (self.clock(from, sure), self.clock(to, sure));
        if from == to {
            from
        } else {
            (self.units.from_to)(&from, &to)
        }
    }

    /// A day by its date, with the weekday.
    pub fn day(&self, day: Day) -> String {
        self.locale.day(day)
    }

    /// The weekday of a day.
    pub fn weekday(&self, day: Day) -> String {
        self.locale.weekday(day)
    }

    /// A day by its date alone, short: for the axis of a plot.
    pub fn short_day(&self, day: Day) -> String {
        self.locale.short_day(day)
    }

    /// A day as people say it near today: today, yesterday, tomorrow; by its date otherwise.
    pub fn near_day(&self, day: Day, today: Day) -> String {
        match i64::from(day.0) - i64::from(today.0) {
            0 => self.units.today.to_owned(),
            -1 => self.units.yesterday.to_owned(),
            1 => self.units.tomorrow.to_owned(),
            _ => self.day(day),
        }
    }

    /// Day and time: `today 18:40`.
    pub fn instant(&self, at: LocalTime, today: Day) -> String {
        (self.units.day_time)(
            &self.near_day(at.day(), today),
            &self.clock(at, Sure::Known),
        )
    }

    /// A share of one: `40 %`.
    pub fn percent(&self, share: f64) -> String {
        (self.units.percent)(&self.number(share * 100.0, 0))
    }

    /// A power: `85 W`.
    pub fn watts(&self, watts: f64) -> String {
        (self.units.watts)(&self.number(watts, usize::from(watts.abs() < 9.95)))
    }

    /// An energy, given in joules: `1.2 kWh`, below 0.1 kWh `60 Wh`.
    pub fn energy(&self, joules: f64) -> String {
        let watt_hours = joules / 3600.0;
        if watt_hours.abs() < 95.0 {
            return (self.units.watt_hours)(&self.number(round_to(watt_hours, 10.0), 0));
        }
        (self.units.kilowatt_hours)(&self.number(watt_hours / 1000.0, 1))
    }

    /// A resistance: `5.8 Ω`.
    pub fn ohms(&self, ohms: f64) -> String {
        (self.units.ohms)(&self.number(ohms, if ohms.abs() < 0.995 { 2 } else { 1 }))
    }

    /// A length of the build, given in metres: `8 cm`.
    pub fn centimetres(&self, metres: f64) -> String {
        let centimetres = metres * 100.0;
        let decimals = usize::from(centimetres.abs() < 9.95);
        (self.units.centimetres)(&self.field(centimetres, decimals))
    }

    /// A height above the sea: `2750 m`.
    pub fn metres(&self, metres: f64) -> String {
        (self.units.metres)(&self.number(round_to(metres, 10.0), 0))
    }
}

/// The nearest multiple of `step`.
pub fn round_to(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}

fn second_of_day(at: LocalTime) -> i32 {
    i32::try_from(at.second_of_day()).unwrap_or(0)
}

#[cfg(test)]
mod tests;
