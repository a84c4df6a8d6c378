//! What was typed into a field, and what is said beside it when it can't be taken.

use model::local_time::Day;

use crate::i18n::format::{Formats, round_to};
use crate::i18n::refusal::{parse_refusal, refusal};
use crate::i18n::strings::Strings;
use crate::state::parse::{self, ParseError};
use crate::state::refused::{Field, Refused};

/// Why what was typed can't be taken.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Mistake {
    /// It can't be read.
    Text(Field, ParseError),
    /// It can be read, and can't be meant.
    Refused(Refused),
}

/// How a field's step buttons count.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Steps {
    /// From one step to the next, in the field's unit.
    pub by: f64,
    /// Where they end.
    pub range: (f64, f64),
    /// Where they start from while the field holds no number.
    pub start: f64,
}

impl Mistake {
    /// The field that holds it.
    pub fn field(&self) -> Field {
        match self {
            Self::Text(field, _) => *field,
            Self::Refused(refused) => refused.field,
        }
    }

    /// Whether the field is merely empty, which is no reproach before anything was pressed.
    pub fn is_empty_field(&self) -> bool {
        matches!(self, Self::Text(_, ParseError::Empty))
    }

    /// What is said beside the field.
    pub fn words(&self, strings: &Strings, formats: &Formats, today: Day) -> String {
        match self {
            Self::Text(_, error) => parse_refusal(strings, *error).to_owned(),
            Self::Refused(refused) => refusal(strings, formats, *refused, today),
        }
    }
}

impl From<Refused> for Mistake {
    fn from(refused: Refused) -> Self {
        Self::Refused(refused)
    }
}

/// A number within a range.
///
/// # Errors
///
/// [`Mistake`] of this field.
pub fn number(text: &str, field: Field, range: (f64, f64)) -> Result<f64, Mistake> {
    let value = parse::number(text).map_err(|error| Mistake::Text(field, error))?;
    Ok(field.within(value, range)?)
}

/// A whole number within a range.
///
/// # Errors
///
/// [`Mistake`] of this field.
pub fn whole(text: &str, field: Field, range: (u32, u32)) -> Result<u32, Mistake> {
    let value = parse::whole(text).map_err(|error| Mistake::Text(field, error))?;
    field.count(value, range)?;
    Ok(value)
}

/// The text after so many steps up, or down when negative: the next round number that way.
pub fn stepped(formats: &Formats, text: &str, n_steps: i32, steps: Steps) -> String {
    let Steps {
        by,
        range: (least, most),
        start,
    } = steps;
    let next = match parse::number(text) {
        Ok(value) => {
            let ahead = value + f64::from(n_steps) * by;
            let round = round_to(ahead, by);
            // From 250 a step of 100 goes to 300, not past it.
            let overshoot = (round - value) * f64::from(n_steps.signum());
            if by * (f64::from(n_steps.abs()) + 1e-9) < overshoot {
                round - f64::from(n_steps.signum()) * by
            } else {
                round
            }
        }
        Err(_) => start,
    };
    formats.field(next.clamp(least, most), 2)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::present::tests::english;

    const WATTS: Steps = Steps {
        by: 100.0,
        range: (10.0, 3600.0),
        start: 200.0,
    };

    #[test]
    fn steps_go_to_round_numbers_and_stop_at_the_ends() {
        let (_, formats) = english();
        let step = |text, n| stepped(&formats, text, n, WATTS);
        assert_eq!(step("200", 1), "300");
        assert_eq!(step("250", 1), "300");
        assert_eq!(step("250", -1), "200");
        assert_eq!(step("299", 1), "300");
        assert_eq!(step("60", -1), "10");
        assert_eq!(step("3600", 1), "3600");
        assert_eq!(step("", 1), "200");
        assert_eq!(step("abc", -1), "200");
    }

    #[test]
    fn mistakes_are_said_in_words() {
        let (strings, formats) = english();
        let say = |text| {
            number(text, Field::ModuleW, WATTS.range)
                .unwrap_err()
                .words(strings, &formats, Day(0))
                .replace('\u{A0}', " ")
        };
        assert_eq!(say("x"), "This is not a number.");
        assert_eq!(say("9000"), "At most 3600 W.");
        assert_eq!(say(""), "Something is needed here.");
        assert!(number("", Field::ModuleW, WATTS.range).is_err_and(|it| it.is_empty_field()));
        let people = whole("2.5", Field::People, (1, 200)).unwrap_err();
        assert_eq!(people.field(), Field::People);
        assert_eq!(
            people.words(strings, &formats, Day(0)),
            "A whole number, please."
        );
    }

    proptest! {
        #[test]
        fn steps_move_the_way_they_say(value in 10.0..3600.0_f64, up in any::<bool>()) {
            let (_, formats) = english();
            let n = if up { 1 } else { -1 };
            let text = formats.field(value, 2);
            let after: f64 = stepped(&formats, &text, n, WATTS).parse().unwrap();
            let moved = (after - value) * f64::from(n);
            prop_assert!((-0.01..=100.01).contains(&moved), "{value} {after}");
        }
    }
}
