//! English: the list of test runs.

use crate::i18n::strings::bench::list::List;

pub(super) const LIST: List = List {
    heading: "Test runs",
    none: "A thermometer, a clock and an evening tell what a cooker loses, holds and passes on to \
           the pot, and why a pot did not boil. No run is kept yet.",
    count: |n_runs| match n_runs {
        0 => "How good is this build?".to_owned(),
        1 => "1 test run".to_owned(),
        _ => format!("{n_runs} test runs"),
    },
    going: |cooker, readings| format!("Goes on · {cooker} · {readings}"),
    over: |cooker, readings| format!("{cooker} · {readings}"),
    readings: |n_rows, span| match n_rows {
        1 => "1 reading".to_owned(),
        _ => format!("{n_rows} readings in {span}"),
    },
    no_readings: "no readings yet",
    gone: "This test run is not there any more.",
    all: "All test runs",
    found: |line| format!("{line} · worked out"),
};
