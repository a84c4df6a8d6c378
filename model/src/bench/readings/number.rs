//! A cell with a number.

use super::form::Degrees;

/// Reads numbers with the decimal mark that the text was found to use.
#[derive(Debug, Default)]
pub(super) struct Numbers {
    /// The first decimal mark met; the other one is then no number.
    pub(super) decimal: Option<char>,
}

impl Numbers {
    /// A number, with or without its unit; temperatures come out in °C.
    pub(super) fn read(&mut self, cell: &str, degrees: Option<Degrees>) -> Option<f64> {
        let (digits, unit) = split_unit(cell);
        let value = self.plain(digits)?;
        Some(match unit.or(degrees) {
            Some(Degrees::Fahrenheit) => fahrenheit_to_c(value),
            _ => value,
        })
    }

    /// A number without a unit.
    pub(super) fn plain(&mut self, digits: &str) -> Option<f64> {
        // Only digits and signs: "nan" and "inf" are no readings.
        let numeric =
            |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '+' | '-' | 'e' | 'E');
        if !digits.chars().all(numeric) || !digits.contains(|c: char| c.is_ascii_digit()) {
            let minus = digits.strip_prefix('\u{2212}')?;
            return self.plain(minus).map(|value| -value);
        }
        let mark = digits
            .rfind(['.', ','])
            .and_then(|at| digits[at..].chars().next());
        let Some(mark) = mark else {
            return digits.parse().ok();
        };
        if mark != *self.decimal.get_or_insert(mark) {
            return None;
        }
        let thousands = if mark == ',' { '.' } else { ',' };
        if mark == '.' && !digits.contains(thousands) {
            return digits.parse().ok();
        }
        let (whole, part) = digits.rsplit_once(mark)?;
        let whole = without_thousands(whole, thousands)?;
        format!("{whole}.{part}").parse().ok()
    }
}

pub(super) fn fahrenheit_to_c(value: f64) -> f64 {
    (value - 32.0) / 1.8
}

/// A whole part without the marks between its thousands; `None` where they stand elsewhere.
fn without_thousands(whole: &str, thousands: char) -> Option<String> {
    let mut groups = whole.split(thousands);
    let mut joined = groups.next()?.to_owned();
    for group in groups {
        if group.len() != 3 || joined.is_empty() {
            return None;
        }
        joined.push_str(group);
    }
    Some(joined)
}

/// The digits and the unit after them. Watts and the like need no turning.
fn split_unit(cell: &str) -> (&str, Option<Degrees>) {
    let end = cell
        .rfind(|c: char| c.is_ascii_digit() || matches!(c, '.' | ','))
        .map_or(0, |at| at + 1);
    let (digits, unit) = cell.split_at(end);
    let unit = unit.trim();
    match unit {
        "" => (digits, None),
        "\u{b0}F" | "F" | "degF" | "deg F" => (digits, Some(Degrees::Fahrenheit)),
        "\u{b0}C" | "C" | "degC" | "deg C" => (digits, Some(Degrees::Celsius)),
        "W" | "W/m2" | "W/m\u{b2}" => (digits, None),
        // Not a unit of this job: no number then.
        _ => (cell, None),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fresh(cell: &str) -> Option<f64> {
        Numbers::default().read(cell, None)
    }

    #[test]
    fn numbers_with_either_mark() {
        for (cell, value) in [
            ("25.3", 25.3),
            ("25,3", 25.3),
            ("-0,5", -0.5),
            ("\u{2212}3.5", -3.5),
            ("1.234,5", 1234.5),
            ("1,234.5", 1234.5),
            ("2e2", 200.0),
            ("212 \u{b0}F", 100.0),
            ("212F", 100.0),
            ("85 \u{b0}C", 85.0),
            ("150 W", 150.0),
        ] {
            let got = fresh(cell).unwrap();
            assert!((got - value).abs() < 1e-9, "{cell}: {got}");
        }
    }

    #[test]
    fn what_is_no_number() {
        for cell in [
            "nan",
            "inf",
            "",
            "-",
            "n/a",
            "25.3.1.",
            "12,34,5",
            "hot",
            "1 2",
            "3 bananas",
        ] {
            assert_eq!(fresh(cell), None, "{cell}");
        }
    }

    #[test]
    fn the_other_mark_is_refused_once_one_is_known() {
        let mut numbers = Numbers::default();
        assert_eq!(numbers.read("25,5", None), Some(25.5));
        assert_eq!(numbers.read("25.5", None), None);
        assert_eq!(numbers.read("25", None), Some(25.0));
    }
}
