//! From what the browser writes in a locale to the habits that our own formats follow.

use crate::i18n::format::{ClockStyle, DatePart, LocaleFormat};
use crate::platform::locale::{Part, date_parts, number_parts};

/// Milliseconds in a day.
const DAY_MS: f64 = 86_400_000.0;

/// Writes a date, given in milliseconds, with options, in pieces.
type DateParts<'a> = &'a dyn Fn(f64, &[(&str, &str)]) -> Vec<Part>;

/// The habits of a locale. What the browser doesn't tell is left as in British English.
pub fn locale_format(tag: &str) -> LocaleFormat {
    read_locale(&|value| number_parts(tag, value), &|utc_ms, options| {
        date_parts(tag, utc_ms, options)
    })
}

fn read_locale(number: &dyn Fn(f64) -> Vec<Part>, date: DateParts<'_>) -> LocaleFormat {
    let mut format = LocaleFormat::default();
    let sample = number(1_234_567.5);
    if let Some(decimal) = named(&sample, "decimal").and_then(|text| text.chars().next()) {
        format.decimal = decimal;
    }
    if let Some(group) = named(&sample, "group") {
        format.group = group;
    }
    let long = [("weekday", "long"), ("day", "numeric"), ("month", "long")];
    let short = [("day", "numeric"), ("month", "short")];
    if let Some(parts) = date_pattern(&date(0.0, &long)) {
        format.date = parts;
    }
    if let Some(parts) = date_pattern(&date(0.0, &short)) {
        format.short_date = parts;
    }
    for (at, name) in format.weekdays.iter_mut().enumerate() {
        // 1970-01-05 was a Monday.
        rename(
            name,
            named(&date(DAY_MS * (4.0 + at as f64), &long), "weekday"),
        );
    }
    for (at, name) in format.months.iter_mut().enumerate() {
        rename(name, named(&date(mid_month_ms(at), &long), "month"));
    }
    for (at, name) in format.short_months.iter_mut().enumerate() {
        rename(name, named(&date(mid_month_ms(at), &short), "month"));
    }
    format.clock = clock_style(date);
    format
}

fn clock_style(date: DateParts<'_>) -> ClockStyle {
    let options = [("hour", "numeric"), ("minute", "2-digit")];
    let half = |hour: f64| named(&date(hour * 3_600_000.0, &options), "dayPeriod");
    match (half(6.0), half(18.0)) {
        (Some(am), Some(pm)) => ClockStyle::Hours12 { am, pm },
        _ => ClockStyle::Hours24,
    }
}

fn mid_month_ms(month: usize) -> f64 {
    DAY_MS * (14.0 + 30.44 * month as f64)
}

fn rename(name: &mut String, found: Option<String>) {
    if let Some(found) = found {
        *name = found;
    }
}

fn named(parts: &[Part], kind: &str) -> Option<String> {
    parts
        .iter()
        .find(|part| part.kind == kind)
        .map(|part| part.text.clone())
}

fn date_pattern(parts: &[Part]) -> Option<Vec<DatePart>> {
    let pattern: Vec<DatePart> = parts
        .iter()
        .map(|part| match part.kind.as_str() {
            "weekday" => DatePart::Weekday,
            "day" => DatePart::Day,
            "month" => DatePart::Month,
            _ => DatePart::Text(part.text.clone()),
        })
        .collect();
    pattern.contains(&DatePart::Day).then_some(pattern)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn part(kind: &str, text: &str) -> Part {
        Part {
            kind: kind.into(),
            text: text.into(),
        }
    }

    #[test]
    fn a_browser_that_tells_nothing_leaves_british_english() {
        assert_eq!(
            read_locale(&|_| vec![], &|_, _| vec![]),
            LocaleFormat::default()
        );
    }

    #[test]
    fn what_the_browser_tells_is_taken() {
        let number = |_| {
            vec![
                part("integer", "1"),
                part("group", "."),
                part("decimal", ","),
            ]
        };
        let date = |utc_ms: f64, options: &[(&str, &str)]| {
            if options.iter().any(|(name, _)| *name == "hour") {
                let half = if utc_ms < 43_200_000.0 {
                    "a. m."
                } else {
                    "p. m."
                };
                return vec![part("hour", "6"), part("dayPeriod", half)];
            }
            let day = format!("{:.0}", (utc_ms / DAY_MS).rem_euclid(7.0));
            let month = format!("m{:.0}", (utc_ms / DAY_MS / 30.44).floor());
            vec![
                part("weekday", &day),
                part("literal", ", "),
                part("day", "1"),
                part("literal", " de "),
                part("month", &month),
            ]
        };
        let format = read_locale(&number, &date);
        assert_eq!((format.decimal, format.group.as_str()), (',', "."));
        assert_eq!(format.weekdays[0], "4");
        assert_eq!(
            (format.months[0].as_str(), format.months[11].as_str()),
            ("m0", "m11")
        );
        assert_eq!(format.date[1], DatePart::Text(", ".into()));
        assert_eq!(
            format.clock,
            ClockStyle::Hours12 {
                am: "a. m.".into(),
                pm: "p. m.".into()
            }
        );
    }
}
