//! What is asked beside an entry that does not fit the rest.

use model::journal::What;
use model::local_time::LocalTime;
use model::odds::{Believed, Doubt, Report};

use crate::i18n::format::Sure;
use crate::present::tonight::Voice;
use crate::state::document::{Entry, minute};

/// What is asked beside an entry; none where it fits, or was said to be right.
pub fn asked(voice: &Voice<'_>, entry: &Entry, doubts: &[Doubt]) -> Option<String> {
    if entry.is_right {
        return None;
    }
    let doubt = doubts.iter().find(|doubt| is_of(doubt, entry))?;
    let words = &voice.strings.diary;
    let formats = voice.formats;
    let expected = match doubt.believed {
        Believed::StoreC(band) => {
            let sure = Sure::of_band_c(band.p90 - band.p10);
            Some(formats.temperature_band(band.p10, band.p90, sure))
        }
        Believed::Time(band) => {
            let ends = band.p10.zip(band.p90);
            ends.map(|(from, to)| formats.clock_band(from, to, Sure::Near))
        }
    };
    Some(match expected {
        Some(expected) => (words.doubt)(&expected),
        None => words.doubt_plain.to_owned(),
    })
}

/// Whether a doubt is about something that this entry reports.
fn is_of(doubt: &Doubt, entry: &Entry) -> bool {
    let seen = match &entry.what {
        What::Meal(meal) => meal.outcome,
        What::Reading { store_c } => {
            let is_same = matches!(
                doubt.report,
                Report::Reading { store_c: doubted_c } if doubted_c.total_cmp(store_c).is_eq()
            );
            return is_same && is_at(doubt, entry);
        }
        What::Felt(felt) => {
            let is_same = matches!(doubt.report, Report::Felt(doubted) if doubted == *felt);
            return is_same && is_at(doubt, entry);
        }
        What::LidOpen { .. } | What::HeaterOff { .. } | What::TopUp { .. } => return false,
    };
    match doubt.report {
        Report::BoiledAt(at) => is_seen(seen.boiled_at, at),
        Report::NotBoiledBy(at) => is_seen(seen.not_boiled_by, at),
        Report::DoneAt(at) => is_seen(seen.done_at, at),
        Report::NotDoneBy(at) => is_seen(seen.not_done_by, at),
        Report::Reading { .. } | Report::Felt(_) => false,
    }
}

/// The diary is told to the model by the minute.
fn is_at(doubt: &Doubt, entry: &Entry) -> bool {
    doubt.at == minute(entry.at)
}

fn is_seen(seen_at: Option<LocalTime>, at: LocalTime) -> bool {
    seen_at.map(minute) == Some(minute(at))
}

#[cfg(test)]
mod tests {
    use model::journal::Felt;
    use model::local_time::Day;
    use model::odds::Band;

    use super::*;
    use crate::present::tests::english;
    use crate::state::ids::{CookerId, EntryId};
    use crate::state::plan::Plan;
    use crate::state::sample::pot;

    const DAY: Day = Day(20_000);

    fn at(hour: i64, minute: i64) -> LocalTime {
        DAY.at_s(3600 * hour + 60 * minute)
    }

    fn band<T: Copy>(low: T, middle: T, high: T) -> Band<T> {
        Band {
            p05: low,
            p10: low,
            p25: middle,
            p50: middle,
            p75: middle,
            p90: high,
            p95: high,
        }
    }

    fn ask(what: What, doubt: Doubt) -> Option<String> {
        let (strings, formats) = english();
        let voice = Voice {
            strings,
            formats: &formats,
            now: at(21, 0),
        };
        let entry = Entry {
            id: EntryId(3),
            cooker: CookerId(1),
            at: at(18, 0),
            what,
            is_right: false,
        };
        asked(&voice, &entry, &[doubt]).map(|asked| asked.replace('\u{A0}', " "))
    }

    #[test]
    fn a_reading_that_does_not_fit_is_asked_about_with_what_was_expected() {
        let doubt = Doubt {
            at: at(18, 0),
            report: Report::Reading { store_c: 20.0 },
            believed: Believed::StoreC(band(171.0, 180.0, 189.0)),
        };
        let asked = ask(What::Reading { store_c: 20.0 }, doubt.clone()).unwrap();
        assert_eq!(
            asked,
            "This does not fit the rest: 170 to 190 °C was expected. Keep it, or change it?"
        );
        let fits = What::Reading { store_c: 180.0 };
        assert_eq!(ask(fits, doubt.clone()), None);
        assert_eq!(ask(What::Felt(Felt::Cold), doubt), None);
    }

    #[test]
    fn a_meal_is_asked_about_by_what_was_seen_of_it() {
        let mut meal = Plan::start(4, at(18, 0)).meal(pot(), 18.0, at(18, 0));
        meal.outcome.boiled_at = Some(at(18, 5));
        let doubt = |report, middle: Option<LocalTime>| Doubt {
            at: at(18, 5),
            report,
            believed: Believed::Time(band(middle, middle, middle)),
        };
        let boiled = Report::BoiledAt(at(18, 5));
        let asked = ask(What::Meal(meal.clone()), doubt(boiled, Some(at(18, 40))));
        assert!(asked.unwrap().contains("18:40 was expected"));
        let asked = ask(What::Meal(meal.clone()), doubt(boiled, None));
        assert!(asked.unwrap().contains("not expected at all"));
        // Seconds are no matter to the model.
        meal.outcome.boiled_at = Some(at(18, 5).plus_s(40));
        assert!(ask(What::Meal(meal.clone()), doubt(boiled, None)).is_some());
        let other = Report::DoneAt(at(18, 5));
        assert_eq!(ask(What::Meal(meal), doubt(other, None)), None);
    }
}
