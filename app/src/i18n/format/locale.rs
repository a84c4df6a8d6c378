//! What a locale says about separators, the clock and dates.

use model::local_time::Day;

/// Whether the clock counts to 24 or twice to 12.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ClockStyle {
    /// `18:40`.
    Hours24,
    /// `6:40 pm`.
    Hours12 {
        /// Word for the hours before noon.
        am: String,
        /// Word for the hours after it.
        pm: String,
    },
}

/// A part of a written date.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum DatePart {
    /// Name of the weekday.
    Weekday,
    /// Day of the month.
    Day,
    /// Name of the month.
    Month,
    /// Text between the parts.
    Text(String),
}

/// The habits of a locale, as far as the app writes in it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LocaleFormat {
    /// Between the whole and the parts.
    pub decimal: char,
    /// Between the thousands, from five digits on.
    pub group: String,
    /// 12 or 24 hours.
    pub clock: ClockStyle,
    /// A date with its weekday.
    pub date: Vec<DatePart>,
    /// A short date.
    pub short_date: Vec<DatePart>,
    /// Names of the weekdays in a date, from Monday.
    pub weekdays: [String; 7],
    /// Names of the months in a date.
    pub months: [String; 12],
    /// Short names of the months.
    pub short_months: [String; 12],
}

impl Default for LocaleFormat {
    /// British English: what is shown where the browser knows no locales.
    fn default() -> Self {
        let text = |text: &str| DatePart::Text(text.to_owned());
        let long = [
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December",
        ];
        let short = [
            "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sept", "Oct", "Nov", "Dec",
        ];
        let days = [
            "Monday",
            "Tuesday",
            "Wednesday",
            "Thursday",
            "Friday",
            "Saturday",
            "Sunday",
        ];
        Self {
            decimal: '.',
            group: "\u{202F}".to_owned(),
            clock: ClockStyle::Hours24,
            date: vec![
                DatePart::Weekday,
                text(" "),
                DatePart::Day,
                text(" "),
                DatePart::Month,
            ],
            short_date: vec![DatePart::Day, text(" "), DatePart::Month],
            weekdays: days.map(str::to_owned),
            months: long.map(str::to_owned),
            short_months: short.map(str::to_owned),
        }
    }
}

impl LocaleFormat {
    /// A number with exactly this many decimals. Thousands are grouped from five digits on, so
    /// that a year or an altitude stays in one piece.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        if !value.is_finite() {
            return "–".to_owned();
        }
        let text = format!("{:.decimals$}", value.abs());
        let (whole, part) = text.split_once('.').unwrap_or((&text, ""));
        let is_zero = text.chars().all(|c| c == '0' || c == '.');
        let mut shown = String::new();
        if value < 0.0 && !is_zero {
            shown.push('\u{2212}');
        }
        let grouped = 4 < whole.len();
        for (at, digit) in whole.chars().enumerate() {
            if grouped && 0 < at && (whole.len() - at).is_multiple_of(3) {
                shown.push_str(&self.group);
            }
            shown.push(digit);
        }
        if !part.is_empty() {
            shown.push(self.decimal);
            shown.push_str(part);
        }
        shown
    }

    /// A time of day, given in seconds since midnight; a full day is midnight again.
    pub fn clock(&self, seconds: f64) -> String {
        let minutes = (seconds / 60.0).round().rem_euclid(1440.0);
        let (hour, minute) = ((minutes / 60.0).floor(), minutes % 60.0);
        match &self.clock {
            ClockStyle::Hours24 => format!("{hour:02.0}:{minute:02.0}"),
            ClockStyle::Hours12 { am, pm } => {
                let half = if hour < 12.0 { am } else { pm };
                let shown = if hour % 12.0 < 0.5 { 12.0 } else { hour % 12.0 };
                format!("{shown:.0}:{minute:02.0}\u{A0}{half}")
            }
        }
    }

    /// An hour of the day by its number alone, 0 to 23.
    pub fn hour(&self, hour: usize) -> String {
        match &self.clock {
            ClockStyle::Hours24 => hour.to_string(),
            ClockStyle::Hours12 { .. } => ((hour + 11) % 12 + 1).to_string(),
        }
    }

    /// Which half of the day an hour is in, 0 to 23; nothing where the clock has none.
    pub fn half(&self, hour: usize) -> &str {
        match &self.clock {
            ClockStyle::Hours24 => "",
            ClockStyle::Hours12 { am, pm } => {
                if hour % 24 < 12 {
                    am
                } else {
                    pm
                }
            }
        }
    }

    /// A date with its weekday.
    pub fn day(&self, day: Day) -> String {
        self.write(day, &self.date, &self.months)
    }

    /// A short date.
    pub fn short_day(&self, day: Day) -> String {
        self.write(day, &self.short_date, &self.short_months)
    }

    /// The weekday, as it stands in a date.
    pub fn weekday(&self, day: Day) -> String {
        // 1970-01-01 was a Thursday, the fourth of a week that starts on Monday.
        let place = usize::try_from((i64::from(day.0) + 3).rem_euclid(7)).unwrap_or(0);
        self.weekdays.get(place).cloned().unwrap_or_default()
    }

    fn write(&self, day: Day, parts: &[DatePart], months: &[String; 12]) -> String {
        let (_, month, day_of_month) = day.ymd();
        let month = usize::try_from(month).unwrap_or(1).saturating_sub(1);
        let name = |names: &[String], at: usize| names.get(at).cloned().unwrap_or_default();
        parts
            .iter()
            .map(|part| match part {
                DatePart::Weekday => self.weekday(day),
                DatePart::Day => day_of_month.to_string(),
                DatePart::Month => name(months, month),
                DatePart::Text(text) => text.clone(),
            })
            .collect()
    }
}
