//! English: single rows of an imported run.

use crate::i18n::strings::runs::rows::Rows;

pub(super) const ROWS: Rows = Rows {
    heading: "Single rows",
    lead: "Open a row to put a reading right or to leave it out. The text itself is kept as it came in, and what you change can be brought back.",
    none: "There is nothing to say of any row.",
    more: |count| format!("and {count} more rows like these"),
    count: |n_changed, n_left_out| {
        format!("Readings put right by hand: {n_changed}. Left out by hand: {n_left_out}.")
    },
    other: "Any other row",
    go_to: "Row or time",
    go_to_hint: "The number of the row in the text, or a time such as 18:05.",
    show: "Show it",
    earlier: "Earlier rows",
    later: "Later rows",
    row: |row, time| format!("Row {row} · {time}"),
    left_out: "left out",
    change: |row| format!("Row {row}"),
    text: |read| format!("The text says: {read}."),
    empty: "A field that you empty is left out.",
    leave_out: "Leave the row out",
    bring_back: "As in the text",
    was_changed: |row| format!("Row {row} is put right. The text is kept as it was."),
    was_left_out: |row| format!("Row {row} is left out. The text is kept as it was."),
    was_brought_back: |row| format!("Row {row} holds again as in the text."),
};
