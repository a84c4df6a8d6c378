//! English: readings from a paste or a file.

use model::bench::readings::{Column, Degrees, ElapsedUnit};

use crate::i18n::strings::bench::import::Import;

pub(super) const IMPORT: Import = Import {
    title: "Paste or open readings",
    lead: "Columns from a table, or the file of a logger: a time and the temperature of the store in \
           each row, and what else was read.",
    paste: "Rows",
    paste_hint: "Such as 17:00; 251; 18, with the names of the columns in the first row.",
    read_paste: "Read the rows",
    open_file: "Open a file",
    reading: "Reading…",
    columns: "Its columns",
    column: |place, sample| format!("Column {place}: {sample}"),
    holds: |column| match column {
        Column::Time => "Time",
        Column::Date => "Date",
        Column::Store => "Store",
        Column::Pot => "Pot",
        Column::Air => "Air",
        Column::Power => "Power of the heater, W",
        Column::Irradiance => "Sunlight, W/m²",
        Column::Unused => "Not used",
    },
    degrees: "Temperatures in",
    degrees_of: |degrees| match degrees {
        Degrees::Celsius => "°C",
        Degrees::Fahrenheit => "°F",
    },
    elapsed: "Plain numbers of time are",
    elapsed_of: |unit| match unit {
        None => "as the text says",
        Some(ElapsedUnit::Seconds) => "seconds",
        Some(ElapsedUnit::Minutes) => "minutes",
        Some(ElapsedUnit::Hours) => "hours",
    },
    swapped: "Two columns seem to have changed places.",
    swap: "Change them back",
    about: "The test run",
    cooker: "Cooker",
    name: "Name of the run",
    kind: "Kind of run",
    started: "Day of the first row",
    day_guessed: "The rows tell only times of day. This is the latest day on which all of them have been: \
                  change it if it was another.",
    air: "Air",
    air_hint: "Needed where no column tells it.",
    heater: "Power of the heater",
    heater_hint: "As a meter shows it, where no column tells it. Empty where it was off.",
    water: "Water in the pot",
    pot_in: "Pot went in, after the first row",
    pot_out: "Pot came out, after the first row",
    less: |label| format!("Less: {label}"),
    more: |label| format!("More: {label}"),
    keep: "Keep this run",
    no_worker: |why| {
        let text = "This browser can’t start the part of the app that reads and works out test runs. \
                    Reload the page; if that does not help, try another browser.";
        if why.is_empty() {
            text.to_owned()
        } else {
            format!("{text} It says: {why}")
        }
    },
    stopped: "The working out stopped in the middle. Nothing that is kept was lost: please try again.",
    not_understood: "Two versions of the app are mixed: please reload the page.",
    unreadable: "This file can’t be read.",
};
