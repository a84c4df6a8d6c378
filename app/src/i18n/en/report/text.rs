//! English: what is said of a text of readings.

use model::bench::readings::{Column, Delimiter, ReadingsError, What};

use crate::i18n::strings::report::text::{Number, TextWords};

pub(super) const TEXT: TextWords = TextWords {
    error: |error| match error {
        ReadingsError::Empty => "There are no rows in it.",
        ReadingsError::NoColumns => {
            "No columns can be told apart: each row needs a time and a reading."
        }
        ReadingsError::NoTimes => "No column of times was found. Say below which one it is.",
        ReadingsError::NoReadings => "No column of readings was found. Say below which one it is.",
        ReadingsError::NoRows => "Not one row has a time that can be read.",
        _ => "It can’t be read.",
    },
    heading: "What was understood",
    rows: |rows, span| format!("{rows} rows over {span}."),
    columns_guessed: "No names of columns were understood. The first column was taken for the time and \
                      the second for the store: please look, and change what is wrong.",
    delimiter: ("Between the columns", |of| match of {
        Delimiter::Semicolon => "semicolon",
        Delimiter::Tab => "tab",
        Delimiter::Comma => "comma",
        Delimiter::Blanks => "blanks",
    }),
    decimal: ("Decimal sign", "point", "comma"),
    header: ("Names of columns", "in the text", "none"),
    start: "First row",
    remarks: "What to look at",
    none: "Nothing in it looks wrong.",
    count: |n_remarks| match n_remarks {
        "1" => "1 remark. Nothing was left out in silence.".to_owned(),
        _ => format!("{n_remarks} remarks. Nothing was left out in silence."),
    },
    all: "All remarks, by row",
    more: |n_more| format!("and {n_more} more"),
    line_head: "Row",
    what_head: "Remark",
    line: |line| format!("Row {line}"),
    lines: |from, to| format!("Rows {from} to {to}"),
    whole: "All of it",
    remark,
    column,
    plot: "What was read",
    plot_store: |low, high| format!("The store went between {low} and {high}."),
    plot_pot: |low, high| format!("The pot went between {low} and {high}."),
    time: "Time",
};

fn column(column: Column) -> &'static str {
    match column {
        Column::Time => "time",
        Column::Date => "date",
        Column::Store => "store",
        Column::Pot => "pot",
        Column::Air => "air",
        Column::Power => "power",
        Column::Irradiance => "sunlight",
        Column::Unused => "unused",
    }
}

fn remark(what: &What, number: Number<'_>) -> String {
    match what {
        What::FieldCount { found, wanted } => {
            format!("{found} cells for {wanted} columns; those that fit were taken")
        }
        What::NoTime => "set aside: no time can be read".to_owned(),
        What::NotLater => "set aside: no later than the row before".to_owned(),
        What::NotANumber { column: of } => {
            format!(
                "the cell of the {} is no number and was set aside",
                column(*of)
            )
        }
        What::NotSensible { column: of, value } => format!(
            "{} in the column of the {} is no reading and was set aside",
            number(*value),
            column(*of)
        ),
        What::Gap { gap_s } => format!(
            "nothing was read for {} min before this",
            number(gap_s / 60.0)
        ),
        What::Spike {
            column: of,
            value,
            neighbours,
        } => format!(
            "a spike in the {}: {} among {}; it was kept",
            column(*of),
            number(*value),
            number(*neighbours)
        ),
        What::Corrected {
            column: of,
            was,
            now,
        } => match was {
            Some(was) => format!(
                "put right by hand: {} for the {}, where the text says {}",
                number(*now),
                column(*of),
                number(*was)
            ),
            None => format!(
                "put right by hand: {} for the {}",
                number(*now),
                column(*of)
            ),
        },
        What::LeftOut { column: of, was } => match was {
            Some(was) => format!("left out by hand: {} of the {}", number(*was), column(*of)),
            None => format!("left out by hand: the {}", column(*of)),
        },
        What::Swapped { first, second } => format!(
            "the columns of {} and {} seem to have changed places",
            column(*first),
            column(*second)
        ),
        What::LooksFahrenheit { column: of } => {
            format!("the {} was taken for °C and looks like °F", column(*of))
        }
        What::LooksDecimalComma => {
            "a decimal comma may have been taken for the mark between columns".to_owned()
        }
        What::ColumnUnused { place } => format!("column {place} is not used"),
        What::ColumnTwice { place } => {
            format!("column {place} says the same as another and is not used")
        }
        What::DayFirstGuessed => "the day was taken to stand before the month".to_owned(),
        What::SecondsGuessed => "the times were taken for seconds".to_owned(),
        What::ShortRun { length_s } => format!(
            "all rows lie within {} s: perhaps the times are in another unit",
            number(*length_s)
        ),
        _ => "something else".to_owned(),
    }
}
