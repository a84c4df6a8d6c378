//! The command line.

/// What is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Arguments {
    pub(crate) seed: u64,
    pub(crate) households: u64,
    pub(crate) days: u32,
    pub(crate) wide: bool,
    /// Reads the thermometer at any hour of the day, not mostly before the pot.
    pub(crate) any_hour: bool,
    /// Prints every pot as a row instead of the report.
    pub(crate) rows: bool,
}

impl Arguments {
    /// Reads the words after the program's name.
    pub(crate) fn parse(words: impl Iterator<Item = String>) -> Result<Self, String> {
        let mut arguments = Self {
            seed: 1,
            households: 100,
            days: 30,
            wide: false,
            any_hour: false,
            rows: false,
        };
        let mut words = words;
        while let Some(word) = words.next() {
            let mut count = |least: u64, most: u64| {
                let value = words.next().ok_or(format!("{word} wants a number"))?;
                value
                    .parse()
                    .ok()
                    .filter(|count| (least..=most).contains(count))
                    .ok_or(format!(
                        "{word} wants a number from {least} to {most}, not {value}"
                    ))
            };
            match word.as_str() {
                "--seed" => arguments.seed = count(0, u64::MAX)?,
                "--households" => arguments.households = count(1, 1_000_000)?,
                "--days" => {
                    arguments.days =
                        u32::try_from(count(1, 366)?).map_err(|why| why.to_string())?;
                }
                "--wide" => arguments.wide = true,
                "--any-hour" => arguments.any_hour = true,
                "--rows" => arguments.rows = true,
                _ => {
                    return Err(format!(
                        "what is {word}? --seed, --households, --days, --wide, --any-hour or --rows"
                    ));
                }
            }
        }
        Ok(arguments)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parse(line: &str) -> Result<Arguments, String> {
        Arguments::parse(line.split_whitespace().map(str::to_owned))
    }

    #[test]
    fn words_become_arguments() {
        let expected = Arguments {
            seed: 7,
            households: 12,
            days: 3,
            wide: true,
            any_hour: false,
            rows: false,
        };
        assert_eq!(
            parse("--seed 7 --wide --households 12 --days 3"),
            Ok(expected)
        );
    }

    #[test]
    fn what_is_no_argument_is_named() {
        for (line, part) in [
            ("--seed", "--seed wants a number"),
            ("--households none", "not none"),
            ("--days 0", "1 to 366"),
            ("--days -3", "not -3"),
            ("--deep", "what is --deep?"),
        ] {
            let message = parse(line).unwrap_err();
            assert!(
                message.contains(part) && !message.contains('\n'),
                "{message}"
            );
        }
    }
}
