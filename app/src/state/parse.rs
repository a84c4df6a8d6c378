//! Text as people type it, to a number.
//!
//! A field holds text until it makes sense, so that half a number is not an error while it is
//! typed. What is accepted is wider than what is printed: decimal comma or point, spaces, the
//! digits of several scripts.

/// Why a text is not a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum ParseError {
    /// Nothing was typed.
    #[error("empty")]
    Empty,
    /// There is something in it that no number has.
    #[error("not a number")]
    NotANumber,
    /// It has a part after the decimal sign where only whole numbers make sense.
    #[error("not a whole number")]
    NotWhole,
}

/// First code point of the decimal digits of scripts that phone keyboards offer: Arabic,
/// Persian, Devanagari, Bengali, Gurmukhi, Gujarati, Tamil, Telugu, Kannada, Myanmar, Khmer.
const ZEROS: [u32; 11] = [
    0x0660, 0x06F0, 0x0966, 0x09E6, 0x0A66, 0x0AE6, 0x0BE6, 0x0C66, 0x0CE6, 0x1040, 0x17E0,
];

/// A number as typed.
///
/// The last point or comma is the decimal sign. When the other sign stands before it, that one
/// groups thousands and is passed over: `1.250,5` and `1,250.5` are the same number. A sign that
/// stands twice can only group.
///
/// # Errors
///
/// [`ParseError`] for an empty text or one that is no number.
pub fn number(text: &str) -> Result<f64, ParseError> {
    let plain = plain_text(text)?;
    let unsigned = plain.strip_prefix(['-', '+']).unwrap_or(&plain);
    let only_digits = unsigned.chars().all(|c| c.is_ascii_digit() || c == '.');
    if !only_digits || !unsigned.chars().any(|c| c.is_ascii_digit()) {
        return Err(ParseError::NotANumber);
    }
    decimal(&plain).ok_or(ParseError::NotANumber)
}

/// A number in ASCII digits, with a point at most; the nearest value there is. The parser of saves
/// is used for this too: the standard library's would bring a large table of its own.
pub(super) fn decimal(plain: &str) -> Option<f64> {
    let (sign, digits) = match plain.strip_prefix('-') {
        Some(digits) => ("-", digits),
        None => ("", plain.strip_prefix('+').unwrap_or(plain)),
    };
    let (whole, part) = digits.split_once('.').unwrap_or((digits, ""));
    let or_zero = |digits: &str| if digits.is_empty() { "0" } else { digits }.to_owned();
    let (whole, part) = (or_zero(whole.trim_start_matches('0')), or_zero(part));
    serde_json::from_str(&format!("{sign}{whole}.{part}")).ok()
}

/// A whole number, 0 or more, as typed.
///
/// # Errors
///
/// [`ParseError`] for an empty text, one that is no number, a negative or a broken number.
pub fn whole(text: &str) -> Result<u32, ParseError> {
    let plain = plain_text(text)?;
    match plain.parse() {
        Ok(value) => Ok(value),
        Err(_) if number(text).is_ok_and(|value| 0.0 < value.fract()) => Err(ParseError::NotWhole),
        Err(_) => Err(ParseError::NotANumber),
    }
}

/// The text with a point as its only decimal sign, ASCII digits and no spaces.
fn plain_text(text: &str) -> Result<String, ParseError> {
    let typed: String = text.chars().filter(|c| !is_space(*c)).map(ascii).collect();
    if typed.is_empty() {
        return Err(ParseError::Empty);
    }
    let decimal = typed.rfind(['.', ',']).filter(|&at| {
        let sign = typed.get(at..=at).unwrap_or_default();
        typed.matches(sign).count() == 1
    });
    let (before, after) = match decimal {
        Some(at) => (typed.get(..at), typed.get(at + 1..)),
        None => (Some(typed.as_str()), None),
    };
    let mut plain = without_groups(before.unwrap_or_default())?;
    if let Some(after) = after {
        plain.push('.');
        plain.push_str(after);
    }
    Ok(plain)
}

/// Whole thousands without the signs that group them. A sign with other than three digits after
/// it is a slip of the thumb: `2.4.` is not 24.
fn without_groups(typed: &str) -> Result<String, ParseError> {
    let mut groups = typed.split(['.', ',']);
    let mut plain = groups.next().unwrap_or_default().to_owned();
    for group in groups {
        if group.len() != 3 || plain.is_empty() {
            return Err(ParseError::NotANumber);
        }
        plain.push_str(group);
    }
    Ok(plain)
}

fn is_space(c: char) -> bool {
    c.is_whitespace() || c == '\u{200E}' || c == '\u{200F}' || c == '\''
}

fn ascii(c: char) -> char {
    match c {
        '\u{066B}' | '\u{FF0C}' => ',',
        '\u{2212}' | '\u{2013}' => '-',
        _ => {
            let code = u32::from(c);
            ZEROS
                .iter()
                .find(|zero| (**zero..**zero + 10).contains(&code))
                .and_then(|zero| char::from_digit(code - zero, 10))
                .unwrap_or(c)
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn check(text: &str, expected: Result<f64, ParseError>) {
        match (number(text), expected) {
            (Ok(a), Ok(b)) => assert!((a - b).abs() < 1e-12, "{text:?}: {a}, expected {b}"),
            (a, b) => assert_eq!(a, b, "{text:?}"),
        }
    }

    proptest! {
        // The standard library's parser is another one.
        #[test]
        fn decimals_are_read_as_the_standard_library_reads_them(
            plain in "[-+]?[0-9]{0,18}\\.?[0-9]{1,20}",
        ) {
            prop_assert_eq!(decimal(&plain), plain.parse().ok());
        }
    }

    #[test]
    fn numbers_as_people_type_them() {
        check("2.4", Ok(2.4));
        check("2,4", Ok(2.4));
        check(" 2,4 ", Ok(2.4));
        check("1 250,5", Ok(1250.5));
        check("1.250,5", Ok(1250.5));
        check("1,250.5", Ok(1250.5));
        check("1.250.000", Ok(1_250_000.0));
        check("1'250", Ok(1250.0));
        check("1\u{202F}250,5", Ok(1250.5));
        check("-3", Ok(-3.0));
        check("\u{2212}3", Ok(-3.0));
        check("+3", Ok(3.0));
        check(".5", Ok(0.5));
        check("5.", Ok(5.0));
        check("٢٫٤", Ok(2.4));
        check("२.४", Ok(2.4));
    }

    #[test]
    fn texts_that_are_no_number() {
        check("", Err(ParseError::Empty));
        check("  ", Err(ParseError::Empty));
        for text in [
            "abc", "-", ".", ",", "1e3", "NaN", "inf", "3-4", "2 L", "--2", "2.4.", "1.2.3",
            ",250,5", "1,25.5",
        ] {
            check(text, Err(ParseError::NotANumber));
        }
    }

    #[test]
    fn whole_numbers_only_where_they_are_asked_for() {
        assert_eq!(whole("6"), Ok(6));
        assert_eq!(whole(" ६ "), Ok(6));
        assert_eq!(whole("2,5"), Err(ParseError::NotWhole));
        assert_eq!(whole("-1"), Err(ParseError::NotANumber));
        assert_eq!(whole(""), Err(ParseError::Empty));
        assert_eq!(whole("99999999999"), Err(ParseError::NotANumber));
    }

    proptest! {
        #[test]
        fn any_text_gives_a_finite_number_or_an_error(text in ".{0,12}") {
            if let Ok(value) = number(&text) {
                prop_assert!(value.is_finite());
            }
        }

        #[test]
        fn a_printed_number_is_read_back(value in -1e6..1e6_f64, comma in any::<bool>()) {
            let mut text = format!("{value:.3}");
            if comma { text = text.replace('.', ","); }
            let read = number(&text).unwrap();
            prop_assert!((read - value).abs() <= 0.0005 + 1e-9);
        }
    }
}
