//! What was learned of a cooker, against what the tables say.

use model::journal::{Journal, What};
use model::odds::{Band, Learned, Multiplier};

use crate::components::Fact;
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::i18n::strings::cooker::learned::Against;

/// Learned is what has a band so much narrower than before anything was reported.
const NARROWER: f64 = 0.85;
/// What was known to this from the start has nothing to learn.
const KNOWN: f64 = 0.02;

/// What was learned, and what was not.
#[derive(Debug, Clone, PartialEq)]
pub struct LearnedView {
    /// What it rests on.
    pub from: String,
    /// What was learned.
    pub known: Vec<Fact>,
    /// What was not, and what would teach it.
    pub open: Vec<Fact>,
}

/// How many things were reported.
pub fn n_reports(journal: &Journal) -> usize {
    let of = |what: &What| match what {
        What::Reading { .. } | What::Felt(_) => 1,
        What::Meal(meal) => {
            let seen = meal.outcome;
            let told = [
                seen.boiled_at,
                seen.not_boiled_by,
                seen.done_at,
                seen.not_done_by,
            ];
            told.into_iter().flatten().count()
        }
        What::LidOpen { .. } | What::HeaterOff { .. } | What::TopUp { .. } => 0,
    };
    journal.events.iter().map(|event| of(&event.what)).sum()
}

/// What was learned, in words.
pub fn learned(
    strings: &Strings,
    formats: &Formats,
    all: &[Learned],
    n_reports: usize,
) -> LearnedView {
    let words = &strings.cooker.learned;
    let (mut known, mut open) = (Vec::new(), Vec::new());
    for one in all.iter().filter(|one| KNOWN < spread(&one.prior)) {
        let is_known = 0 < n_reports && spread(&one.now) < NARROWER * spread(&one.prior);
        if is_known {
            known.push(known_fact(strings, formats, one));
        } else {
            open.push(open_fact(strings, formats, one));
        }
    }
    LearnedView {
        from: if n_reports == 0 {
            words.from_nothing.to_owned()
        } else {
            (words.from)(n_reports)
        },
        known,
        open,
    }
}

/// Width of the 80 % band of a multiplier, as a share.
fn spread(band: &Band<f64>) -> f64 {
    band.p90 / band.p10 - 1.0
}

fn known_fact(strings: &Strings, formats: &Formats, one: &Learned) -> Fact {
    let words = &strings.cooker.learned;
    let times = |times: f64| formats.number(times, if times < 9.95 { 1 } else { 0 });
    let fine = |times: f64| formats.number(times, 2);
    let narrow = spread(&one.now) < 0.25;
    let say = |value: f64| if narrow { fine(value) } else { times(value) };
    let band = (words.so_many_times)(&say(one.now.p50), &say(one.now.p10), &say(one.now.p90));
    let figure = one.told_w_k.map(|told| {
        let w_k = |value: f64| (strings.cooker.follows.w_k)(&formats.number(value, 2));
        (words.figure)(&w_k(told * one.now.p50), &w_k(told))
    });
    Fact {
        label: (words.name)(one.multiplier).to_owned(),
        value: against(words_for(strings, one.multiplier), one.now.p50).to_owned(),
        detail: match figure {
            Some(figure) => format!("{band} ({figure})"),
            None => band,
        },
        icon: None,
    }
}

fn open_fact(strings: &Strings, formats: &Formats, one: &Learned) -> Fact {
    let words = &strings.cooker.learned;
    let times = |times: f64| formats.number(times, 1);
    Fact {
        label: (words.name)(one.multiplier).to_owned(),
        value: (words.anywhere)(&times(one.now.p10), &times(one.now.p90)),
        detail: (words.taught_by)(one.multiplier).to_owned(),
        icon: None,
    }
}

fn words_for(strings: &Strings, multiplier: Multiplier) -> &Against {
    match multiplier {
        Multiplier::GrainTime
        | Multiplier::BeanTime
        | Multiplier::PulseTime
        | Multiplier::OtherTime => &strings.cooker.learned.times,
        _ => &strings.cooker.learned.amounts,
    }
}

fn against(words: &Against, times: f64) -> &'static str {
    match times {
        _ if times < 0.75 => words.much_less,
        _ if times < 11.0 / 12.0 => words.less,
        _ if times <= 13.0 / 12.0 => words.same,
        _ if times <= 4.0 / 3.0 => words.more,
        _ => words.much_more,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::present::tests::speaking;

    fn band(low: f64, middle: f64, high: f64) -> Band<f64> {
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

    fn loss(now: Band<f64>) -> Learned {
        Learned {
            multiplier: Multiplier::Loss,
            prior: band(0.7, 1.0, 1.4),
            now,
            told_w_k: Some(0.4),
        }
    }

    #[test]
    fn what_was_learned_is_told_against_the_table() {
        let (strings, formats) = speaking(Language::English);
        let view = learned(strings, &formats, &[loss(band(1.1, 1.3, 1.4))], 3);
        assert!(view.open.is_empty());
        let Fact { value, detail, .. } = &view.known[0];
        assert_eq!(value, "more");
        assert_eq!(
            detail.replace('\u{A0}', " "),
            "about 1.3 times the table; between 1.1 and 1.4 (0.52 W/K; by the table 0.40 W/K)"
        );
        assert!(view.from.starts_with("From 3 reports"));
    }

    #[test]
    fn what_was_not_learned_says_what_would_teach_it() {
        let (strings, formats) = speaking(Language::English);
        let prior = band(0.7, 1.0, 1.4);
        for (now, n_reports) in [(prior, 2), (band(0.9, 1.0, 1.1), 0)] {
            let view = learned(strings, &formats, &[loss(now)], n_reports);
            assert!(view.known.is_empty());
            assert!(view.open[0].detail.contains("in the morning"));
        }
        let known = Learned {
            prior: band(1.0, 1.0, 1.0),
            ..loss(prior)
        };
        let view = learned(strings, &formats, &[known], 2);
        assert!(view.known.is_empty() && view.open.is_empty());
    }

    #[test]
    fn a_word_for_every_ratio() {
        let (strings, _) = speaking(Language::English);
        let say = |multiplier, times| against(words_for(strings, multiplier), times);
        assert_eq!(say(Multiplier::Charging, 0.7), "much less");
        assert_eq!(say(Multiplier::Charging, 1.0), "as the table says");
        assert_eq!(say(Multiplier::BeanTime, 1.2), "longer");
        assert_eq!(say(Multiplier::BeanTime, 1.5), "much longer");
    }
}
