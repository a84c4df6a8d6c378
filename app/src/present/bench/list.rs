//! A line of the list of test runs.

use model::bench::RunKind;
use model::local_time::Day;

use crate::components::{EntryView, Icon};
use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;
use crate::state::bench::TestRun;

/// The drawing of a kind of run.
pub fn icon(kind: RunKind) -> Icon {
    match kind {
        RunKind::HeatUp => Icon::Heater,
        RunKind::CoolDown => Icon::Thermometer,
        RunKind::Boil => Icon::PotSteams,
        RunKind::Free => Icon::Bench,
    }
}

/// How many readings there are, and over how long.
pub fn readings(strings: &Strings, formats: &Formats, run: &TestRun) -> String {
    let words = &strings.bench.list;
    match run.n_rows() {
        0 => words.no_readings.to_owned(),
        n_rows => (words.readings)(n_rows, &formats.duration(run.span_s(), Sure::Known)),
    }
}

/// The line of a run; `cooker` is the name of what was tested.
pub fn line(
    strings: &Strings,
    formats: &Formats,
    run: &TestRun,
    (cooker, today): (&str, Day),
) -> EntryView {
    let words = &strings.bench.list;
    let readings = readings(strings, formats, run);
    let detail = if run.ended.is_none() {
        (words.going)(cooker, &readings)
    } else {
        (words.over)(cooker, &readings)
    };
    EntryView {
        when: formats.instant(run.started, today),
        title: run.about.name.clone(),
        detail: match run.fit {
            Some(_) => (words.found)(&detail),
            None => detail,
        },
        icon: icon(run.about.kind),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::tests::english;
    use crate::state::sample::{TODAY, test_run};

    #[test]
    fn a_line_says_what_was_tested_and_how_much_was_read() {
        let (strings, formats) = english();
        let mut run = test_run();
        let said = line(strings, &formats, &run, ("Clay block", TODAY));
        assert_eq!(said.title, "Evening boil");
        assert_eq!(
            said.detail.replace('\u{A0}', " "),
            "Clay block · 3 readings in 20 min · worked out"
        );
        (run.fit, run.ended) = (None, None);
        let said = line(strings, &formats, &run, ("Clay block", TODAY)).detail;
        assert!(said.starts_with("Goes on · Clay block"), "{said}");
    }
}
