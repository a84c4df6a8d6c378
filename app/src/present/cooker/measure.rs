//! Numbers of a form: their unit, their bounds, how they are written, read and stepped.
//!
//! A bound and a value are in the model's unit; what is written is in the field's.

use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::cooker::fault::Fault;
use crate::present::typed::{Steps, stepped};
use crate::state::parse;

/// What a number is a measure of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measure {
    /// Things that are counted.
    Count,
    /// A power. \[W\]
    Watts,
    /// An angle. \[deg\]
    Angle,
    /// A voltage. \[V\]
    Volts,
    /// A current. \[A\]
    Amperes,
    /// A share by the kelvin, written in per cent. \[1/K\]
    PercentPerKelvin,
    /// A resistance. \[Ω\]
    Ohms,
    /// A share, written in per cent.
    Percent,
    /// A temperature, written in the household's unit. [°C]
    Temperature,
    /// A mass. \[kg\]
    Kilograms,
    /// A length of the build, written in centimetres. \[m\]
    Centimetres,
    /// A small length of the build, written in millimetres. \[m\]
    Millimetres,
    /// An area. \[m²\]
    SquareMetres,
    /// A span, written in minutes. \[s\]
    Minutes,
    /// A height above the sea. \[m\]
    Metres,
    /// A heat loss. \[W/K\]
    WattsPerKelvin,
    /// A heat capacity. \[J/K\]
    JoulesPerKelvin,
    /// A contact conductance. \[W/(m² K)\]
    Contact,
    /// A share, written as it is.
    Share,
    /// A span of the clock, written in hours. \[min\]
    Hours,
}

/// A number of a form.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Number {
    /// What it is a measure of.
    pub measure: Measure,
    /// Least and most, in the model's unit.
    pub bounds: (f64, f64),
    /// One press of a step button, in the field's unit.
    pub step: f64,
}

/// Values nearer than this share of a bound count as on it: what is left of a conversion.
const NEAR: f64 = 1e-9;

impl Measure {
    /// Field units to one of the model's; temperatures go by the household's unit instead.
    fn scale(self) -> f64 {
        match self {
            Self::PercentPerKelvin | Self::Percent | Self::Centimetres => 100.0,
            Self::Millimetres => 1000.0,
            Self::Hours | Self::Minutes => 1.0 / 60.0,
            _ => 1.0,
        }
    }

    fn most_decimals(self) -> usize {
        match self {
            Self::Count | Self::Metres | Self::JoulesPerKelvin => 0,
            Self::Minutes
            | Self::Millimetres
            | Self::Temperature
            | Self::Watts
            | Self::Percent
            | Self::Contact => 1,
            Self::Volts
            | Self::Amperes
            | Self::Ohms
            | Self::Share
            | Self::SquareMetres
            | Self::Hours
            | Self::Centimetres => 2,
            Self::PercentPerKelvin | Self::Kilograms | Self::WattsPerKelvin => 3,
            Self::Angle => 4,
        }
    }

    /// Its unit, as it stands behind the field.
    pub fn unit(self, strings: &Strings, formats: &Formats) -> String {
        let (units, cooker) = (&strings.common.units, &strings.cooker);
        let unit = match self {
            Self::Count | Self::Share => String::new(),
            Self::Watts => (units.watts)(""),
            Self::Angle => "°".to_owned(),
            Self::Volts => (cooker.follows.volts)(""),
            Self::Amperes => (cooker.follows.amperes)(""),
            Self::PercentPerKelvin => cooker.parts.panels.percent_k.to_owned(),
            Self::Ohms => (units.ohms)(""),
            Self::Percent => (units.percent)(""),
            Self::Temperature => (units.degrees)("", formats.degrees),
            Self::Kilograms => (units.kilograms)(""),
            Self::Centimetres => (units.centimetres)(""),
            Self::Millimetres => cooker.ways.mm.to_owned(),
            Self::SquareMetres => cooker.ways.m2.to_owned(),
            Self::Minutes => (units.minutes)(""),
            Self::Metres => (units.metres)(""),
            Self::WattsPerKelvin => cooker.parts.jacket.w_k.to_owned(),
            Self::JoulesPerKelvin => cooker.parts.jacket.j_k.to_owned(),
            Self::Contact => cooker.parts.seat.w_m2k.to_owned(),
            Self::Hours => (units.hours)(""),
        };
        unit.trim().to_owned()
    }
}

impl Number {
    fn in_field(self, value: f64, formats: &Formats) -> f64 {
        match self.measure {
            Measure::Temperature => formats.degrees.from_c(value),
            measure => value * measure.scale(),
        }
    }

    fn in_model(self, shown: f64, formats: &Formats) -> f64 {
        match self.measure {
            Measure::Temperature => formats.degrees.to_c(shown),
            measure => shown / measure.scale(),
        }
    }

    /// The value as the field shows it.
    pub fn text(self, value: f64, formats: &Formats) -> String {
        formats.field(self.in_field(value, formats), self.measure.most_decimals())
    }

    /// The value with its unit, for sentences.
    pub fn with_unit(self, value: f64, strings: &Strings, formats: &Formats) -> String {
        let text = self.text(value, formats);
        match (self.measure, self.measure.unit(strings, formats)) {
            (Measure::Angle, unit) => text + &unit,
            (_, unit) if unit.is_empty() => text,
            (_, unit) => format!("{text}\u{A0}{unit}"),
        }
    }

    /// What was typed, in the model's unit.
    ///
    /// # Errors
    ///
    /// [`Fault`] for a text that is no number, or one out of bounds.
    pub fn read(self, text: &str, formats: &Formats) -> Result<f64, Fault> {
        let typed = match self.measure {
            Measure::Count => f64::from(parse::whole(text)?),
            _ => parse::number(text)?,
        };
        let value = self.in_model(typed, formats);
        let (least, most) = self.bounds;
        let near = |bound: f64| NEAR * bound.abs().max(1.0);
        if value < least - near(least) {
            Err(Fault::TooLow(least))
        } else if most + near(most) < value {
            Err(Fault::TooHigh(most))
        } else {
            Ok(value.clamp(least, most))
        }
    }

    /// Whether the text says this value, as nearly as the field shows it.
    pub fn says(self, text: &str, value: f64, formats: &Formats) -> bool {
        self.read(text, formats)
            .is_ok_and(|read| self.text(read, formats) == self.text(value, formats))
    }

    /// The text after a press of a step button: up for 1, down for -1, from what was typed or else
    /// from the value. It goes to round numbers and stops at the bounds.
    pub fn stepped(self, typed: &str, value: f64, direction: i32, formats: &Formats) -> String {
        let (least, most) = self.bounds;
        let steps = Steps {
            by: self.step,
            range: (self.in_field(least, formats), self.in_field(most, formats)),
            start: self.in_field(value, formats),
        };
        stepped(formats, typed, direction, steps)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::i18n::format::LocaleFormat;
    use crate::state::parse::ParseError;
    use crate::state::settings::Degrees;

    fn formats(degrees: Degrees) -> Formats {
        Formats {
            locale: LocaleFormat::default(),
            degrees,
            units: &Language::English.strings().common.units,
        }
    }

    const LAYER: Number = Number {
        measure: Measure::Centimetres,
        bounds: (0.001, 1.0),
        step: 1.0,
    };
    const CUTOUT: Number = Number {
        measure: Measure::Temperature,
        bounds: (60.0, 600.0),
        step: 10.0,
    };

    #[test]
    fn lengths_are_typed_in_centimetres() {
        let formats = formats(Degrees::Celsius);
        assert_eq!(LAYER.text(0.125, &formats), "12.5");
        assert!((LAYER.read("12,5", &formats).unwrap() - 0.125).abs() < 1e-12);
        assert_eq!(LAYER.read("0", &formats), Err(Fault::TooLow(0.001)));
        assert_eq!(LAYER.read("-3", &formats), Err(Fault::TooLow(0.001)));
        assert_eq!(LAYER.read("101", &formats), Err(Fault::TooHigh(1.0)));
        assert!((LAYER.read("0.1", &formats).unwrap() - 0.001).abs() < 1e-15);
        assert_eq!(
            LAYER.read("thick", &formats),
            Err(Fault::Parse(ParseError::NotANumber))
        );
    }

    #[test]
    fn temperatures_follow_the_households_unit() {
        let formats = formats(Degrees::Fahrenheit);
        assert_eq!(CUTOUT.text(280.0, &formats), "536");
        assert!((CUTOUT.read("536", &formats).unwrap() - 280.0).abs() < 1e-9);
        assert_eq!(CUTOUT.read("1652", &formats), Err(Fault::TooHigh(600.0)));
        let strings = Language::English.strings();
        assert_eq!(CUTOUT.with_unit(600.0, strings, &formats), "1112\u{A0}°F");
    }

    #[test]
    fn steps_start_from_what_is_typed_and_stop_at_the_bounds() {
        let formats = formats(Degrees::Celsius);
        assert_eq!(CUTOUT.stepped("280", 280.0, 1, &formats), "290");
        assert_eq!(CUTOUT.stepped("285", 280.0, -1, &formats), "280");
        assert_eq!(CUTOUT.stepped("hot", 280.0, 1, &formats), "280");
        assert_eq!(CUTOUT.stepped("900", 280.0, 1, &formats), "600");
        assert_eq!(LAYER.stepped("0.5", 0.1, -1, &formats), "0.1");
    }

    #[test]
    fn a_text_goes_on_saying_what_it_said() {
        let formats = formats(Degrees::Celsius);
        assert!(LAYER.says("12.50", 0.125, &formats));
        assert!(!LAYER.says("12", 0.125, &formats));
        assert!(!LAYER.says("", 0.125, &formats));
    }
}
