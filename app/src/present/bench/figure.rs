//! The figures by which builds are compared: what each is called, its unit, what a run has of it.

use model::bench::{ChargeFigures, ChargeSpread, Measured, Parameter, Worth};

use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::i18n::strings::runs::report::Named;
use crate::present::cooker::facts::two_digits;
use crate::state::bench::{Found, KeptFit};
use crate::state::settings::Degrees;

/// Standard deviations from the middle to the tenth and the ninetieth percentile of a normal
/// distribution.
pub const TO_PERCENTILE: f64 = 1.2816;

/// A figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Figure {
    /// One of the cooker's, as it was measured.
    Of(Parameter),
    /// Litres boiled per charge.
    Litres,
    /// First-litre time.
    FirstLitre,
    /// Power at 50 K below the boil.
    Power50,
    /// Hold time to the boil line.
    Hold,
    /// Overnight loss.
    Overnight,
    /// Share of the day's sun that reaches the food.
    SunToFood,
    /// Time to boil, as it was.
    BoilTime,
    /// Time to boil, corrected.
    BoilCorrected,
    /// Efficiency of the boil.
    Efficiency,
    /// Standardised cooking power.
    Standard,
}

/// What a run has of a figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Value {
    /// The value; `None` where there is none, as of a litre that never boils.
    pub value: Option<f64>,
    /// One standard deviation, where it is known.
    pub sd: Option<f64>,
    /// Whether the runs told it.
    pub told: bool,
}

/// How a figure is shown: what its value is multiplied by, and the unit then.
type Shown = (f64, &'static str);

const MINUTES: Shown = (1.0 / 60.0, "min");
const HOURS: Shown = (1.0 / 3600.0, "h");
const KILOJOULES: Shown = (1e-3, "kJ/K");
const PERCENT: Shown = (100.0, "%");

impl Figure {
    /// What is measured of a cooker.
    pub const MEASURED: [Self; 8] = [
        Self::Of(Parameter::Loss),
        Self::Of(Parameter::JacketCapacity),
        Self::Of(Parameter::StoreCapacity),
        Self::Of(Parameter::MeltingPoint),
        Self::Of(Parameter::MeltingRange),
        Self::Of(Parameter::Heater),
        Self::Of(Parameter::Contact),
        Self::Of(Parameter::PotLoss),
    ];

    /// Those that are worked out under the same conditions, and those of the published tests.
    pub const STANDARD: [Self; 10] = [
        Self::Litres,
        Self::FirstLitre,
        Self::Power50,
        Self::Hold,
        Self::Overnight,
        Self::SunToFood,
        Self::BoilTime,
        Self::BoilCorrected,
        Self::Efficiency,
        Self::Standard,
    ];

    /// A stable name, as the file of results has it.
    pub fn key(self) -> &'static str {
        match self {
            Self::Of(parameter) => parameter.key(),
            Self::Litres => "litres_per_charge",
            Self::FirstLitre => "first_litre_s",
            Self::Power50 => "power_50_k_below_boil_w",
            Self::Hold => "hold_to_boil_line_s",
            Self::Overnight => "overnight_loss",
            Self::SunToFood => "sun_to_food",
            Self::BoilTime => "time_to_boil_s",
            Self::BoilCorrected => "time_to_boil_corrected_s",
            Self::Efficiency => "boil_efficiency",
            Self::Standard => "standardised_cooking_power_w",
        }
    }

    /// The unit of the file of results; empty for a share.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Of(Parameter::Loss) => "W/K",
            Self::Of(Parameter::JacketCapacity) => "J/K",
            Self::Of(Parameter::MeltingPoint) => "°C",
            Self::Of(Parameter::MeltingRange) => "K",
            Self::Of(Parameter::Contact) => "W/(m² K)",
            Self::Of(Parameter::StoreCapacity | Parameter::Heater | Parameter::PotLoss)
            | Self::Overnight
            | Self::SunToFood
            | Self::Efficiency => "",
            Self::Litres => "L",
            Self::FirstLitre | Self::Hold | Self::BoilTime | Self::BoilCorrected => "s",
            Self::Power50 | Self::Standard => "W",
        }
    }

    /// How it came about, as the file of results has it.
    pub fn method(self) -> &'static str {
        match self {
            Self::Of(Parameter::Loss | Parameter::Contact) => {
                "least squares on the heat network; store half-way between boil and cut-out"
            }
            Self::Of(_) => "least squares on the heat network",
            Self::Litres
            | Self::FirstLitre
            | Self::Power50
            | Self::Hold
            | Self::Overnight
            | Self::SunToFood => "heat network with the measured values under standard conditions",
            Self::BoilTime => "as read",
            Self::BoilCorrected | Self::Efficiency => "Water Boiling Test 4.2.3",
            Self::Standard => "ASAE S580.1",
        }
    }

    /// The same of what the description foresees.
    pub fn foreseen_by(self) -> &'static str {
        match self {
            Self::Of(_) => "as described",
            _ => "heat network with the described values",
        }
    }

    /// The tenth and the ninetieth percentile: by the logarithm where the fit searches by it, and of
    /// times and powers, which wide descriptions would else put below nothing.
    pub fn band(self, value: f64, sd: f64) -> (f64, f64) {
        let is_ratio = match self {
            Self::Of(parameter) => parameter != Parameter::MeltingPoint,
            Self::FirstLitre | Self::Power50 | Self::Hold => true,
            _ => false,
        };
        if is_ratio && 0.0 < value {
            let times = (TO_PERCENTILE * sd / value).exp();
            return (value / times, value * times);
        }
        let half = TO_PERCENTILE * sd;
        // Of degrees alone there are fewer than none.
        let least = match self {
            Self::Of(Parameter::MeltingPoint) => f64::NEG_INFINITY,
            _ => 0.0,
        };
        ((value - half).max(least), value + half)
    }

    /// Whether it tells of the run's pot, not of the cooker.
    pub fn is_of_pot(self) -> bool {
        matches!(
            self,
            Self::BoilTime | Self::BoilCorrected | Self::Efficiency | Self::Standard
        )
    }

    fn shown(self) -> Shown {
        match self {
            Self::Of(Parameter::StoreCapacity | Parameter::Heater | Parameter::PotLoss)
            | Self::Overnight
            | Self::SunToFood
            | Self::Efficiency => PERCENT,
            Self::Of(Parameter::JacketCapacity) => KILOJOULES,
            Self::FirstLitre | Self::BoilTime | Self::BoilCorrected => MINUTES,
            Self::Hold => HOURS,
            other => (1.0, other.unit()),
        }
    }

    /// What it is called and what it is; of what is measured of a cooker, `None`.
    pub fn named(self, strings: &Strings) -> Option<&Named> {
        let named = &strings.runs.report.named;
        Some(match self {
            Self::Of(_) => return None,
            Self::Litres => &named.litres,
            Self::FirstLitre => &named.first_litre,
            Self::Power50 => &named.power_50,
            Self::Hold => &named.hold,
            Self::Overnight => &named.overnight,
            Self::SunToFood => &named.sun_to_food,
            Self::BoilTime => &named.boil_time,
            Self::BoilCorrected => &named.boil_corrected,
            Self::Efficiency => &named.efficiency,
            Self::Standard => &named.standard,
        })
    }

    /// What it is called.
    pub fn name(self, strings: &Strings) -> &'static str {
        match (self, self.named(strings)) {
            (Self::Of(parameter), _) => (strings.runs.report.parameter)(parameter),
            (_, Some(named)) => named.name,
            (_, None) => "",
        }
    }

    /// What a fit has of it; `None` where it says nothing of it at all.
    pub fn of(self, fit: &KeptFit) -> Option<Value> {
        let plain = |value: Option<f64>| Value {
            value,
            sd: None,
            told: true,
        };
        match self {
            Self::Of(parameter) => of_found(&fit.found, parameter),
            Self::BoilTime => Some(plain(fit.boiling?.boil_s)),
            Self::BoilCorrected => Some(plain(fit.boiling?.corrected_s)),
            Self::Efficiency => Some(plain(Some(fit.boiling?.efficiency?))),
            Self::Standard => Some(plain(Some(fit.standard_w?))),
            _ => self.of_charge((&fit.figures?, fit.spread.as_ref()), is_measured(fit)),
        }
    }

    /// What the description of the cooker foresees of it, kept with a fit.
    pub fn of_description(self, fit: &KeptFit) -> Option<Value> {
        let described = fit.described.as_ref()?;
        match self {
            Self::Of(parameter) => of_found(&described.found, parameter),
            Self::BoilTime => Some(Value {
                value: Some(fit.described_boil_s?),
                sd: None,
                told: true,
            }),
            Self::BoilCorrected | Self::Efficiency | Self::Standard => None,
            _ => self.of_charge(
                (described.figures.as_ref()?, described.spread.as_ref()),
                true,
            ),
        }
    }

    fn of_charge(
        self,
        (figures, spread): (&ChargeFigures, Option<&ChargeSpread>),
        told: bool,
    ) -> Option<Value> {
        let of_spread = |sd: fn(&ChargeSpread) -> Option<f64>| spread.and_then(sd);
        let (value, sd) = match self {
            Self::Litres => (
                Some(f64::from(figures.litres_per_charge)),
                of_spread(|spread| spread.litres_per_charge),
            ),
            Self::FirstLitre => (
                figures.first_litre_s,
                of_spread(|spread| spread.first_litre_s),
            ),
            Self::Power50 => (
                figures.power_50_k_w,
                of_spread(|spread| spread.power_50_k_w),
            ),
            Self::Hold => (figures.hold_s, of_spread(|spread| spread.hold_s)),
            Self::Overnight => (
                Some(figures.overnight_loss),
                of_spread(|spread| spread.overnight_loss),
            ),
            Self::SunToFood => (
                Some(figures.sun_to_food),
                of_spread(|spread| spread.sun_to_food),
            ),
            _ => return None,
        };
        Some(Value { value, sd, told })
    }

    /// The value in words, with its band where there is one.
    pub fn said(self, strings: &Strings, formats: &Formats, value: &Value) -> String {
        let words = &strings.runs.report;
        if !value.told {
            return words.not_told.to_owned();
        }
        let Some(middle) = value.value else {
            return words.no_value.to_owned();
        };
        let (times, unit) = self.shown();
        let is_degrees = self == Self::Of(Parameter::MeltingPoint);
        // Differences go by the same degrees as temperatures.
        let is_difference = self == Self::Of(Parameter::MeltingRange);
        let degrees = formats.degrees;
        let difference = |kelvin: f64| degrees.from_c(kelvin) - degrees.from_c(0.0);
        let (middle, sd, unit) = if is_degrees {
            let middle = degrees.from_c(middle);
            (middle, value.sd.map(difference), unit_of(degrees))
        } else if is_difference {
            let middle = difference(middle);
            (middle, value.sd.map(difference), unit_of(degrees))
        } else {
            (middle * times, value.sd.map(|sd| sd * times), unit)
        };
        match sd.filter(|sd| *sd > 0.0) {
            None if self == Self::Efficiency && PERCENT.0 < middle => {
                (words.above_all)(&(words.plain)(&two_digits(formats, middle), unit))
            }
            None if self == Self::Litres => (words.plain)(&formats.number(middle, 0), unit),
            None => (words.plain)(&two_digits(formats, middle), unit),
            Some(sd) => {
                let (low, high) = self.band(middle, sd);
                let least = if is_degrees { f64::NEG_INFINITY } else { 0.0 };
                let half = TO_PERCENTILE * sd;
                // Only whole litres count.
                let least_step = if self == Self::Litres { 1.0 } else { 0.0 };
                let number = |value: f64| as_known(formats, value, (middle, half.max(least_step)));
                (words.banded)(
                    &number(middle),
                    &number(low.max(least)),
                    &number(high),
                    unit,
                )
            }
        }
    }
}

/// What was found of a parameter.
fn of_found(found: &[Found], parameter: Parameter) -> Option<Value> {
    let found = found.iter().find(|found| found.parameter == parameter)?;
    let Measured { value, sd } = found.measured;
    Some(Value {
        value: Some(value),
        sd: Some(sd),
        told: found.told,
    })
}

/// The unit of temperatures and of their differences.
pub fn unit_of(degrees: Degrees) -> &'static str {
    match degrees {
        Degrees::Celsius => "°C",
        Degrees::Fahrenheit => "°F",
    }
}

/// Whether a fit told anything of the cooker; without it the figures would be the description's own.
fn is_measured(fit: &KeptFit) -> bool {
    fit.worth != Worth::None && fit.found.iter().any(|found| found.told)
}

/// Digits of a figure that anybody measures at a hearth, at most.
const DIGITS: f64 = 3.0;

/// A number with no more digits than half its band is known to, and no more than [`DIGITS`] of
/// `middle`, the value of which it is a part.
fn as_known(formats: &Formats, value: f64, (middle, half): (f64, f64)) -> String {
    let least = middle.abs().max(f64::MIN_POSITIVE).log10().floor() + 1.0 - DIGITS;
    let magnitude = half.log10().floor().max(least);
    let step = 10_f64.powf(magnitude);
    let decimals = (0_u8..=5).find(|decimals| -magnitude <= f64::from(*decimals));
    formats.number(
        (value / step).round() * step,
        usize::from(decimals.unwrap_or(5)),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::tests::english;
    use crate::state::ids::RunId;
    use crate::state::sample::kept_fit;

    fn said(figure: Figure, value: f64, sd: f64) -> String {
        let (strings, formats) = english();
        let value = Value {
            value: Some(value),
            sd: Some(sd),
            told: true,
        };
        figure
            .said(strings, &formats, &value)
            .replace('\u{A0}', " ")
    }

    #[test]
    fn no_digit_that_is_not_known_is_shown() {
        let loss = Figure::Of(Parameter::Loss);
        assert_eq!(said(loss, 0.4123, 0.02), "0.41 (0.39 to 0.44) W/K");
        // By the logarithm: 0.41 over and times exp(1.2816 x 0.2 / 0.41).
        assert_eq!(said(loss, 0.4123, 0.2), "0.4 (0.2 to 0.8) W/K");
        let contact = Figure::Of(Parameter::Contact);
        assert_eq!(said(contact, 512.0, 40.0), "510 (460 to 570) W/(m² K)");
        assert_eq!(said(Figure::FirstLitre, 1085.0, 60.0), "18 (17 to 19) min");
        assert_eq!(said(Figure::Overnight, 0.31, 0.02), "31 (28 to 34) %");
        // However sure: nobody measures a thousandth of a minute.
        assert_eq!(
            said(Figure::FirstLitre, 247.0, 0.1),
            "4.12 (4.11 to 4.12) min"
        );
        assert_eq!(said(Figure::Litres, 3.0, 0.0), "3 L");
        assert_eq!(said(Figure::Litres, 3.0, 0.5), "3 (2 to 4) L");
    }

    #[test]
    fn more_than_all_is_remarked_on() {
        let (strings, formats) = english();
        let said = |share| {
            let value = Value {
                value: Some(share),
                sd: None,
                told: true,
            };
            let said = Figure::Efficiency.said(strings, &formats, &value);
            said.replace('\u{A0}', " ")
        };
        assert_eq!(said(0.62), "62 %");
        assert_eq!(said(1.2), "120 %: can’t be, look the run over");
    }

    #[test]
    fn what_was_not_told_is_called_so() {
        let (strings, formats) = english();
        let mut value = Value {
            value: Some(1.0),
            sd: Some(0.3),
            told: false,
        };
        let loss = Figure::Of(Parameter::Loss);
        assert_eq!(loss.said(strings, &formats, &value), "not told");
        value.told = true;
        value.value = None;
        assert_eq!(Figure::FirstLitre.said(strings, &formats, &value), "never");
    }

    #[test]
    fn figures_of_a_fit_that_told_nothing_are_no_measurement() {
        let mut fit = kept_fit(RunId(1));
        assert!(Figure::Litres.of(&fit).is_some_and(|value| value.told));
        fit.worth = Worth::None;
        assert!(Figure::Litres.of(&fit).is_some_and(|value| !value.told));
        fit.worth = Worth::Rough;
        fit.found.iter_mut().for_each(|found| found.told = false);
        assert!(Figure::SunToFood.of(&fit).is_some_and(|value| !value.told));
        // The time that was read stands whatever the fit is worth.
        assert!(Figure::BoilTime.of(&fit).is_some_and(|value| value.told));
    }

    #[test]
    fn figures_have_keys_and_names_of_their_own() {
        let (strings, _) = english();
        let all: Vec<Figure> = Figure::MEASURED
            .into_iter()
            .chain(Figure::STANDARD)
            .collect();
        let distinct = |of: &dyn Fn(Figure) -> &'static str| {
            let mut texts: Vec<&str> = all.iter().map(|figure| of(*figure)).collect();
            texts.sort_unstable();
            texts.dedup();
            texts.len()
        };
        assert_eq!(distinct(&Figure::key), 18);
        assert_eq!(distinct(&|figure| figure.name(strings)), 18);
        for figure in Figure::STANDARD {
            assert!(
                figure
                    .named(strings)
                    .is_some_and(|named| named.means.len() > 20)
            );
        }
    }
}
