//! Figures that two kept runs of one cooker tell otherwise.

use model::bench::{Measured, Parameter, Worth, differ};

use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::bench::figure::{Figure, Value};
use crate::state::bench::{Bench, Found, KeptFit, TestRun};
use crate::state::ids::RunId;

/// This share of the other's spread or less tells a figure better; nearer ones tell it alike.
const BETTER: f64 = 0.75;

/// A figure that another run tells otherwise.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// The other run.
    pub other: RunId,
    /// What there is to say, in sentences.
    pub text: String,
}

/// What other runs of the cooker tell otherwise than this one, beyond what the spreads of both allow
/// together. Each fit is compared with those that share no run with it.
pub fn differences(
    strings: &Strings,
    formats: &Formats,
    bench: &Bench,
    id: RunId,
) -> Vec<Difference> {
    let Some(run) = bench.run(id) else {
        return Vec::new();
    };
    let runs: Vec<(&TestRun, &KeptFit)> = bench
        .runs
        .iter()
        .filter(|other| other.cooker == run.cooker)
        .filter_map(|other| Some((other, other.fit.as_ref()?)))
        .filter(|(_, fit)| fit.worth != Worth::None)
        .collect();
    // All that is compared of this cooker, so that both pages say the same.
    let mut n_compared = 0;
    for (idx, one) in runs.iter().enumerate() {
        for other in runs
            .iter()
            .skip(idx + 1)
            .filter(|other| is_apart(one.1, other.1))
        {
            n_compared += in_both(one.1, other.1).count();
        }
    }
    let Some((_, own)) = runs.iter().find(|(other, _)| other.id == id) else {
        return Vec::new();
    };
    let mut all = Vec::new();
    for (other, fit) in runs.iter().filter(|(_, fit)| is_apart(own, fit)) {
        for (one, theirs) in in_both(own, fit) {
            let is_ratio = one.parameter != Parameter::MeltingPoint;
            if differ(one.measured, theirs.measured, is_ratio, n_compared) {
                all.push(Difference {
                    other: other.id,
                    text: say(strings, formats, (one, theirs), other),
                });
            }
        }
    }
    all
}

/// Whether no run is in both.
fn is_apart(one: &KeptFit, other: &KeptFit) -> bool {
    one.runs.iter().all(|run| !other.runs.contains(run))
}

fn in_both<'a>(
    one: &'a KeptFit,
    other: &'a KeptFit,
) -> impl Iterator<Item = (&'a Found, &'a Found)> {
    let told = one.found.iter().filter(|found| found.told);
    told.filter_map(|found| {
        let mut others = other.found.iter();
        let same = others.find(|other| other.told && other.parameter == found.parameter)?;
        Some((found, same))
    })
}

fn say(
    strings: &Strings,
    formats: &Formats,
    (own, theirs): (&Found, &Found),
    other: &TestRun,
) -> String {
    let words = &strings.bench.fit.differ;
    let figure = Figure::Of(own.parameter);
    let value = |of: Measured| {
        figure.said(
            strings,
            formats,
            &Value {
                value: Some(of.value),
                sd: Some(of.sd),
                told: true,
            },
        )
    };
    let name = &other.about.name;
    let better = if own.measured.sd < BETTER * theirs.measured.sd {
        words.this_better.to_owned()
    } else if theirs.measured.sd < BETTER * own.measured.sd {
        (words.other_better)(name)
    } else {
        words.alike.to_owned()
    };
    let differs = (words.differs)(
        figure.name(strings),
        &value(own.measured),
        name,
        &value(theirs.measured),
    );
    format!("{differs} {better}")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::present::tests::speaking;
    use crate::state::sample::{kept_fit, test_run};

    fn bench(losses: [(f64, f64); 2], is_joint: bool) -> Bench {
        let run = |number: u32, (value, sd)| {
            let id = RunId(number);
            let mut fit = kept_fit(id);
            fit.runs = if is_joint {
                vec![RunId(1), RunId(2)]
            } else {
                vec![id]
            };
            fit.found = vec![Found {
                parameter: Parameter::Loss,
                measured: Measured { value, sd },
                told: true,
            }];
            let mut run = TestRun {
                id,
                fit: Some(fit),
                ..test_run()
            };
            run.about.name = format!("Evening {number}");
            run
        };
        Bench {
            runs: vec![run(1, losses[0]), run(2, losses[1])],
            ..Bench::default()
        }
    }

    fn said(language: Language, bench: &Bench, id: u32) -> Vec<String> {
        let (strings, formats) = speaking(language);
        let all = differences(strings, &formats, bench, RunId(id));
        all.into_iter()
            .map(|one| one.text.replace('\u{A0}', " "))
            .collect()
    }

    #[test]
    fn runs_that_tell_a_figure_otherwise_name_each_other() {
        let bench = bench([(0.50, 0.01), (0.58, 0.02)], false);
        for language in Language::ALL {
            for (id, other) in [(1, "Evening 2"), (2, "Evening 1")] {
                let said = said(language, &bench, id);
                assert_eq!(said.len(), 1, "{said:?}");
                assert!(said[0].contains(other), "{said:?}");
            }
        }
        let said = said(Language::English, &bench, 1);
        assert!(
            said[0].contains("This run tells it more narrowly"),
            "{said:?}"
        );
    }

    #[test]
    fn what_the_spreads_allow_together_or_was_fitted_together_is_no_difference() {
        let near = bench([(0.50, 0.02), (0.54, 0.02)], false);
        assert!(said(Language::English, &near, 1).is_empty());
        let joint = bench([(0.50, 0.01), (0.58, 0.02)], true);
        assert!(said(Language::English, &joint, 1).is_empty());
        let mut untold = bench([(0.50, 0.01), (0.58, 0.02)], false);
        let fit = untold.runs[1].fit.as_mut().unwrap();
        fit.found[0].told = false;
        assert!(said(Language::English, &untold, 1).is_empty());
        let mut other_cooker = bench([(0.50, 0.01), (0.58, 0.02)], false);
        other_cooker.runs[1].cooker = crate::state::ids::CookerId(99);
        assert!(said(Language::English, &other_cooker, 1).is_empty());
    }
}
