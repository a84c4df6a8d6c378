//! The last two weeks: the sun of each day and the store in its evening.

use model::local_time::{DAY_S, Day, LocalTime};
use model::tonight::{Point, Weather};

use crate::chart::{DayBar, DayBarsView};
use crate::components::TableView;
use crate::i18n::format::Sure;
use crate::present::tonight::Voice;

/// Days that are shown.
pub const N_DAYS: i32 = 14;
/// Evening on a day without sun. [s]
const EVENING_S: i64 = 18 * 3600;
/// The least that a full bar stands for. [h]
const LEAST_MOST_H: f64 = 6.0;

/// What is known of a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayFigures {
    /// Which.
    pub day: Day,
    /// Hours of full sun, where the sky was logged. \[h\]
    pub full_sun_h: Option<f64>,
    /// The store when the sun was gone, where that has been. [°C]
    pub store_c: Option<f64>,
}

/// When a day's sun is gone from the panel; at six where it had none.
pub fn evening_of(weather: &Weather, day: Day) -> LocalTime {
    let sunset = weather.sunset(day.start());
    if sunset == day.start() {
        day.at_s(EVENING_S)
    } else {
        sunset
    }
}

/// The store at an instant: the last point up to it, of the same day.
pub fn store_at(points: &[Point], at: LocalTime) -> Option<f64> {
    points
        .iter()
        .rev()
        .find(|point| point.at <= at)
        .filter(|point| at.since_s(point.at) < DAY_S / 12)
        .map(|point| point.store_c)
}

/// The plot; `picked` is the day that is open.
pub fn bars(voice: &Voice<'_>, days: &[DayFigures], picked: Day) -> DayBarsView {
    let words = &voice.strings.diary;
    let formats = voice.formats;
    let sun_most = days
        .iter()
        .filter_map(|day| day.full_sun_h)
        .fold(LEAST_MOST_H, f64::max)
        .ceil();
    let store_most = days
        .iter()
        .filter_map(|day| day.store_c)
        .fold(100.0, f64::max);
    let store_range = (0.0, (store_most / 50.0).ceil() * 50.0);
    let told =
        |value: Option<String>| value.unwrap_or_else(|| voice.strings.common.not_known.into());
    let sun = |day: &DayFigures| day.full_sun_h.map(|hours| formats.sun_hours(hours));
    let store = |day: &DayFigures| day.store_c.map(|it| formats.temperature(it, Sure::Near));
    let bar = |day: &DayFigures| DayBar {
        label: day.day.ymd().2.to_string(),
        spoken: format!(
            "{}: {} {}; {} {}",
            formats.day(day.day),
            words.table_head_sun,
            told(sun(day)),
            words.table_head_store,
            told(store(day)),
        ),
        sun: day.full_sun_h,
        store: day.store_c,
        picked: day.day == picked,
    };
    let row = |day: &DayFigures| vec![formats.day(day.day), told(sun(day)), told(store(day))];
    DayBarsView {
        name: words.last_name.to_owned(),
        days: days.iter().map(bar).collect(),
        sun_label: (words.bar_label)(&formats.sun_hours(sun_most)),
        store_label: (words.line_label)(&formats.temperature_band(
            store_range.0,
            store_range.1,
            Sure::Near,
        )),
        sun_most,
        store_range,
        sentence: sentence(voice, days),
        table: (
            voice.strings.common.show_table.to_owned(),
            TableView {
                caption: words.last_heading.to_owned(),
                heads: [
                    words.table_head_day,
                    words.table_head_sun,
                    words.table_head_store,
                ]
                .map(str::to_owned)
                .to_vec(),
                rows: days.iter().map(row).collect(),
            },
        ),
    }
}

fn sentence(voice: &Voice<'_>, days: &[DayFigures]) -> String {
    let words = &voice.strings.diary;
    let suns: Vec<f64> = days.iter().filter_map(|day| day.full_sun_h).collect();
    let count = u32::try_from(suns.len()).map_or(1.0, f64::from);
    let mut said = if suns.is_empty() {
        words.no_told_days.to_owned()
    } else {
        let mean_h = suns.iter().sum::<f64>() / count;
        (words.told_days)(&suns.len().to_string(), &voice.formats.sun_hours(mean_h))
    };
    let hottest = days
        .iter()
        .filter_map(|day| Some((day.store_c?, day.day)))
        .max_by(|(a, _), (b, _)| a.total_cmp(b));
    if let Some((store_c, day)) = hottest {
        said.push(' ');
        said.push_str(&(words.hottest)(
            &voice.formats.temperature(store_c, Sure::Near),
            &voice.formats.near_day(day, voice.now.day()),
        ));
    }
    said
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::tests::english;

    fn point(at: LocalTime, store_c: f64) -> Point {
        Point {
            at,
            store_c,
            pot_c: None,
        }
    }

    #[test]
    fn the_store_is_that_of_the_last_point_before() {
        let day = Day(20_000);
        let points = [point(day.at_s(0), 20.0), point(day.at_s(1800), 30.0)];
        assert_eq!(store_at(&points, day.at_s(2000)), Some(30.0));
        assert_eq!(store_at(&points, day.at_s(1799)), Some(20.0));
        assert_eq!(store_at(&points, day.plus(-1).at_s(1799)), None);
        assert_eq!(store_at(&points, day.at_s(43_200)), None);
    }

    #[test]
    fn the_plot_says_what_it_shows() {
        let (strings, formats) = english();
        let voice = Voice {
            strings,
            formats: &formats,
            now: Day(20_001).at_s(70_000),
        };
        let days = [
            DayFigures {
                day: Day(20_000),
                full_sun_h: Some(5.0),
                store_c: Some(213.0),
            },
            DayFigures {
                day: Day(20_001),
                full_sun_h: None,
                store_c: None,
            },
        ];
        let view = bars(&voice, &days, Day(20_001));
        assert!(view.days[1].picked);
        assert_eq!(
            view.sentence.replace('\u{A0}', " "),
            "The sun was noted on 1 of the last 14 days: 5 h of full sun a day. \
             Hottest evening: about 215 °C, yesterday."
        );
        assert_eq!(view.table.1.rows.len(), 2);
        let (none, _) = (sentence(&voice, &[]), ());
        assert_eq!(none, strings.diary.no_told_days);
    }
}
