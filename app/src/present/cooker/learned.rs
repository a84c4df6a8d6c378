//! What was learned of a cooker, against what the tables say.

use model::journal::{Journal, Outcome, What};
use model::odds::{Band, Learned, Multiplier};

use crate::components::Fact;
use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;
use crate::i18n::strings::cooker::learned::Against;

/// Learned is what has a band so much narrower than before anything was reported: of some hundred
/// members by weight, the band of what no report touches wavers by a tenth or two.
const NARROWER: f64 = 0.75;
/// What was known to this from the start has nothing to learn.
const KNOWN: f64 = 0.02;
/// A band of a quarter is told with two decimals.
const NARROW: f64 = 0.223;
/// What any report of heat says something of.
const OF_HEAT: [Multiplier; 3] = [Multiplier::Loss, Multiplier::Charging, Multiplier::Capacity];
/// What a report says something of that comes after a pot was in.
const OF_POTS: [Multiplier; 2] = [Multiplier::Contact, Multiplier::PotLoss];

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

/// What was reported, as far as something can be learned from it.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Reports {
    /// How many things.
    pub count: usize,
    /// What they say something of.
    touched: Vec<Multiplier>,
    /// Of which what would teach it was told.
    told: Vec<Multiplier>,
}

impl Reports {
    /// All of a journal.
    pub fn of(journal: &Journal) -> Self {
        let mut reports = Self::default();
        let has_pots = journal
            .events
            .iter()
            .any(|event| matches!(event.what, What::Meal(_)));
        for event in &journal.events {
            match &event.what {
                What::Reading { .. } | What::Felt(_) => {
                    reports.count += 1;
                    reports.touched.extend(OF_HEAT);
                    if has_pots {
                        reports.touched.extend(OF_POTS);
                    }
                }
                What::Meal(meal) => {
                    let Outcome {
                        boiled_at,
                        not_boiled_by,
                        done_at,
                        not_done_by,
                    } = meal.outcome;
                    let of_boil = boiled_at.iter().chain(&not_boiled_by).count();
                    let of_food = done_at.iter().chain(&not_done_by).count();
                    reports.count += of_boil + of_food;
                    if 0 < of_boil + of_food {
                        reports.touched.extend(OF_HEAT.iter().chain(&OF_POTS));
                    }
                    if 0 < of_boil {
                        reports.told.push(Multiplier::Contact);
                    }
                    if 0 < of_food {
                        let of_cooking = Multiplier::of_cooking(meal.dish);
                        reports.touched.push(of_cooking);
                        reports.told.push(of_cooking);
                    }
                }
                What::LidOpen { .. } | What::HeaterOff { .. } | What::TopUp { .. } => {}
            }
        }
        reports
    }
}

/// What was learned, in words.
pub fn learned(
    strings: &Strings,
    formats: &Formats,
    all: &[Learned],
    reports: &Reports,
) -> LearnedView {
    let words = &strings.cooker.learned;
    let (mut known, mut open) = (Vec::new(), Vec::new());
    for one in all.iter().filter(|one| KNOWN < spread(&one.prior)) {
        let is_touched = reports.touched.contains(&one.multiplier);
        if is_touched && spread(&one.now) < NARROWER * spread(&one.prior) {
            known.push(known_fact(strings, formats, one));
        } else {
            open.push(open_fact(strings, one, reports));
        }
    }
    LearnedView {
        from: match reports.count {
            0 => words.from_nothing.to_owned(),
            count if known.is_empty() => (words.nothing_from)(count),
            count => (words.from)(count),
        },
        known,
        open,
    }
}

/// Width of the 80 % band of a multiplier's logarithm, which goes with its standard deviation.
fn spread(band: &Band<f64>) -> f64 {
    (band.p90 / band.p10).ln()
}

fn known_fact(strings: &Strings, formats: &Formats, one: &Learned) -> Fact {
    let words = &strings.cooker.learned;
    let times = |times: f64| formats.number(times, if times < 9.95 { 1 } else { 0 });
    let fine = |times: f64| formats.number(times, 2);
    let narrow = spread(&one.now) < NARROW;
    let say = |value: f64| if narrow { fine(value) } else { times(value) };
    let band = (words.so_many_times)(&say(one.now.p50), &say(one.now.p10), &say(one.now.p90));
    let figure = one.told_w_k.map(|told| {
        let w_k = |value: f64| (strings.cooker.follows.w_k)(&formats.number(value, 2));
        let (now, told) = (w_k(told * one.now.p50), w_k(told));
        match one.told_at_c {
            Some(at_c) => {
                let at = formats.temperature(at_c, Sure::Known);
                (words.figure_at)(&now, &told, &at)
            }
            None => (words.figure)(&now, &told),
        }
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

/// What nothing is known of has no figure.
fn open_fact(strings: &Strings, one: &Learned, reports: &Reports) -> Fact {
    let words = &strings.cooker.learned;
    let is_told = reports.told.contains(&one.multiplier);
    let (value, detail) = if is_told {
        (words.not_sure, words.told_already)
    } else {
        (strings.common.not_known, (words.taught_by)(one.multiplier))
    };
    Fact {
        label: (words.name)(one.multiplier).to_owned(),
        value: value.to_owned(),
        detail: detail.to_owned(),
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
            told_at_c: Some(188.0),
        }
    }

    /// So many reports, each of the heat.
    fn reports(count: usize) -> Reports {
        let touched = if count == 0 { vec![] } else { OF_HEAT.to_vec() };
        Reports {
            count,
            touched,
            ..Reports::default()
        }
    }

    #[test]
    fn what_was_learned_is_told_against_the_table() {
        let (strings, formats) = speaking(Language::English);
        let view = learned(strings, &formats, &[loss(band(1.1, 1.3, 1.4))], &reports(3));
        assert!(view.open.is_empty());
        let Fact { value, detail, .. } = &view.known[0];
        assert_eq!(value, "more");
        assert_eq!(
            detail.replace('\u{A0}', " "),
            "about 1.3 times the table; between 1.1 and 1.4 (0.52 W/K; by the table 0.40 W/K; the store at 188 °C)"
        );
        assert!(view.from.starts_with("From 3 reports"));
    }

    #[test]
    fn what_was_not_learned_has_no_figure_and_says_what_would_teach_it() {
        let (strings, formats) = speaking(Language::English);
        let prior = band(0.7, 1.0, 1.4);
        let nearly = band(0.75, 1.0, 1.33);
        for (now, count) in [(prior, 2), (nearly, 2), (band(0.9, 1.0, 1.1), 0)] {
            let view = learned(strings, &formats, &[loss(now)], &reports(count));
            assert!(view.known.is_empty());
            assert_eq!(view.open[0].value, "not known");
            assert!(view.open[0].detail.contains("in the morning"));
            assert!(view.from.contains("the tables"), "{}", view.from);
        }
        let known = Learned {
            prior: band(1.0, 1.0, 1.0),
            ..loss(prior)
        };
        let view = learned(strings, &formats, &[known], &reports(2));
        assert!(view.known.is_empty() && view.open.is_empty());
    }

    #[test]
    fn a_figure_that_no_report_says_anything_of_is_not_told_as_learned() {
        let (strings, formats) = speaking(Language::English);
        let rice = Learned {
            multiplier: Multiplier::GrainTime,
            told_w_k: None,
            told_at_c: None,
            ..loss(band(0.95, 1.0, 1.05))
        };
        let mut journal = Journal::default();
        let mut log = |what| {
            let at = model::local_time::LocalTime(1000);
            journal.events.push(model::journal::Event { at, what });
            Reports::of(&journal)
        };
        let n_known = |reports: &Reports| learned(strings, &formats, &[rice], reports).known.len();
        let warm = log(What::Reading { store_c: 150.0 });
        assert_eq!((warm.count, n_known(&warm)), (1, 0));
        let mut meal = crate::state::sample::meal();
        meal.dish = model::dish::Dish::CommonBeansSoaked;
        meal.outcome = Outcome {
            done_at: Some(model::local_time::LocalTime(9000)),
            ..Outcome::default()
        };
        let beans = log(What::Meal(meal.clone()));
        assert_eq!((beans.count, n_known(&beans)), (2, 0));
        meal.dish = model::dish::Dish::WhiteRice;
        let told = log(What::Meal(meal));
        assert_eq!(n_known(&told), 1);
        // Nobody is asked for what was told.
        let unsure = Learned {
            now: rice.prior,
            ..rice
        };
        let view = learned(strings, &formats, &[unsure], &told);
        assert_eq!(view.open[0].value, "not sure yet");
        let view = learned(strings, &formats, &[unsure], &beans);
        assert_eq!(view.open[0].value, "not known");
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
