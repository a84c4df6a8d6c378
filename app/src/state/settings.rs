//! How a person wants the app: language, looks, units.

use crate::i18n::Language;

/// The settings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Settings {
    /// Language.
    pub language: LanguageChoice,
    /// Light or dark.
    pub theme: Theme,
    /// Unit of temperatures.
    pub degrees: Degrees,
}

/// Which language to speak.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum LanguageChoice {
    /// The browser's.
    #[default]
    Automatic,
    /// This one.
    Chosen(Language),
}

/// Light or dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Theme {
    /// As the phone has it.
    #[default]
    Automatic,
    /// Light.
    Light,
    /// Dark.
    Dark,
}

/// Unit of temperatures on the screen; inside they are degrees Celsius.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Degrees {
    /// Degrees Celsius.
    #[default]
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

impl Degrees {
    /// A temperature in this unit. The relation is exact (NIST SP 811:2008, B.8).
    pub fn from_c(self, celsius: f64) -> f64 {
        match self {
            Self::Celsius => celsius,
            Self::Fahrenheit => celsius * 1.8 + 32.0,
        }
    }

    /// A number of this unit, in degrees Celsius.
    pub fn to_c(self, shown: f64) -> f64 {
        match self {
            Self::Celsius => shown,
            Self::Fahrenheit => (shown - 32.0) / 1.8,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn degrees_fahrenheit_at_the_fixed_points() {
        for (celsius, fahrenheit) in [(0.0, 32.0), (100.0, 212.0), (-40.0, -40.0)] {
            assert!((Degrees::Fahrenheit.from_c(celsius) - fahrenheit).abs() < 1e-12);
            assert!((Degrees::Fahrenheit.to_c(fahrenheit) - celsius).abs() < 1e-12);
        }
    }
}
