//! A text of readings is understood.

use model::bench::readings::{self, Column, Delimiter, Hints, Readings, ReadingsError, Row, What};

use crate::bench::answer::Opened;
use crate::present::bench::{Speech, text};
use crate::state::limits;

/// Cells of a column that are shown to tell what it is.
const SAMPLE_CELLS: usize = 3;
/// More columns than any logger of this job writes.
const MOST_COLUMNS: usize = 24;

/// What was understood, and the hints with which it was.
pub(super) fn open(
    speech: &Speech,
    text: &str,
    mut hints: Hints,
) -> Result<(Opened, Hints), String> {
    let (readings, is_guess) = match readings::read(text, &hints) {
        Ok(readings) => (readings, false),
        Err(ReadingsError::NoTimes | ReadingsError::NoReadings) if hints.columns.is_none() => {
            let (readings, columns) =
                guessed(text, &hints).ok_or(error(speech, ReadingsError::NoReadings))?;
            hints.columns = Some(columns);
            (readings, true)
        }
        Err(wrong) => return Err(error(speech, wrong)),
    };
    let span_s = readings.rows.last().map_or(0.0, |row| row.time_s);
    let pots = || readings.rows.iter().filter(|row| row.pot_c.is_some());
    let pot_s = pots().next().zip(pots().next_back());
    let opened = Opened {
        samples: samples(text, &readings),
        degrees: readings.form.degrees,
        elapsed: hints.elapsed,
        swapped: swapped(&readings),
        start: readings.start,
        rows: u32::try_from(readings.rows.len()).unwrap_or(u32::MAX),
        span_s: span_s.min(limits::RUN_S),
        pot_s: pot_s.map(|(first, last)| [first.time_s, last.time_s]),
        has_power: has(&readings, |row| row.heater_w.or(row.irradiance_w_m2)),
        has_air: has(&readings, |row| row.air_c),
        sheet: text::sheet(speech, &readings, is_guess),
        columns: readings.form.columns,
    };
    // Kept as they were understood, so that the report knows what was read.
    hints.columns = Some(opened.columns.clone());
    Ok((opened, hints))
}

fn error(speech: &Speech, wrong: ReadingsError) -> String {
    (speech.report.text.error)(wrong).to_owned()
}

fn has(readings: &Readings, read: fn(&Row) -> Option<f64>) -> bool {
    readings.rows.iter().any(|row| read(row).is_some())
}

/// The usual order where no names tell: time, store, and of the rest nothing.
fn guessed(text: &str, hints: &Hints) -> Option<(Readings, Vec<Column>)> {
    (2..=MOST_COLUMNS).find_map(|n_columns| {
        let mut columns = vec![Column::Unused; n_columns];
        columns[..2].copy_from_slice(&[Column::Time, Column::Store]);
        let hints = Hints {
            columns: Some(columns.clone()),
            ..hints.clone()
        };
        let readings = readings::read(text, &hints).ok()?;
        let fits = |what: What| !matches!(what, What::FieldCount { .. });
        let all_fit = readings.remarks.iter().all(|remark| fits(remark.what));
        all_fit.then_some((readings, columns))
    })
}

/// The columns with the two exchanged that seem to have changed places throughout.
fn swapped(readings: &Readings) -> Option<Vec<Column>> {
    let (first, second) = readings
        .remarks
        .iter()
        .find_map(|remark| match remark.what {
            What::Swapped { first, second } => Some((first, second)),
            _ => None,
        })?;
    let exchange = |column: &Column| match *column {
        column if column == first => second,
        column if column == second => first,
        column => column,
    };
    Some(readings.form.columns.iter().map(exchange).collect())
}

/// The first cells of each column.
fn samples(text: &str, readings: &Readings) -> Vec<String> {
    let cut = |line: &str| -> Vec<String> {
        let cell = |cell: &str| cell.trim().trim_matches('"').to_owned();
        match readings.form.delimiter {
            Delimiter::Semicolon => line.split(';').map(cell).collect(),
            Delimiter::Tab => line.split('\t').map(cell).collect(),
            Delimiter::Comma => line.split(',').map(cell).collect(),
            Delimiter::Blanks => line.split_whitespace().map(cell).collect(),
        }
    };
    let lines = text.lines().map(str::trim);
    let lines = lines.filter(|line| !line.is_empty() && !line.starts_with('#'));
    let rows: Vec<Vec<String>> = lines.take(SAMPLE_CELLS).map(cut).collect();
    let sample = |place: usize| {
        let cells = rows.iter().filter_map(|row| row.get(place));
        let cells: Vec<&str> = cells.map(String::as_str).collect();
        cells.join(" · ")
    };
    (0..readings.form.columns.len()).map(sample).collect()
}
