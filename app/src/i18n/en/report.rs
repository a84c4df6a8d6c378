//! English: what the bench's worker says.

mod found;
mod text;

use crate::i18n::strings::report::Report;

/// The texts.
pub static REPORT: Report = Report {
    text: text::TEXT,
    found: found::FOUND,
    full: "This device has no room left for the readings, so they are not kept. Make room, or erase \
           an older test run, and try again.",
    keeps_nothing: "This browser window keeps no readings of files. Open the app in an ordinary \
                    window, or type the readings.",
    lost: "The readings of a run are not on this device any more: bring back the copy that holds \
           them, or erase the run.",
    nothing_held: "The text is gone meanwhile: please open it again.",
};
