//! Spanish: test runs.

mod guide;
mod live;
mod report;
mod rows;

use crate::i18n::strings::runs::Runs;

pub(super) const RUNS: Runs = Runs {
    guide: guide::GUIDE,
    live: live::LIVE,
    report: report::REPORT,
    rows: rows::ROWS,
};
