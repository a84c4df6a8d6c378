//! Single rows of a kept text, to be put right: those there is a doubt about, and those asked for.

use model::bench::readings::{self, Column, Hints, Remark, Row, What};

use crate::bench::answer::{NamedRow, TextRow, TextRows};
use crate::bench::ask::Near;
use crate::present::bench::Speech;
use crate::state::bench::{KeptText, Text};

/// Rows that are named: more than anybody goes through on a phone. The rest are counted.
const MOST_NAMED: usize = 40;
/// Rows on each side of the one that was looked for.
const BESIDE: usize = 3;

/// The rows, as the text has them and as they hold.
pub(super) fn rows(
    speech: &Speech,
    kept: &KeptText,
    texts: &[Text],
    near: Option<Near>,
) -> Result<TextRows, String> {
    let text = texts.iter().find(|text| text.key == kept.key);
    let text = &text.ok_or(speech.report.lost.to_owned())?.text;
    let error = |error| (speech.report.text.error)(error).to_owned();
    let plain = Hints {
        corrections: Vec::new(),
        ..kept.hints.clone()
    };
    let raw = readings::read(text, &plain).map_err(error)?;
    // Where everything is left out there is nothing to be read, and each row still to be opened.
    let held = readings::read(text, &kept.hints);
    let (now, remarks) = match &held {
        Ok(held) => (held.rows.as_slice(), held.remarks.as_slice()),
        Err(_) => (&[][..], raw.remarks.as_slice()),
    };
    let row = |raw: &Row| {
        let held = now.binary_search_by_key(&raw.line, |row| row.line);
        let held = held.ok().and_then(|place| now.get(place));
        TextRow {
            line: u32::try_from(raw.line).unwrap_or(u32::MAX),
            time_s: raw.time_s,
            text: Column::NUMBERS.map(|of| raw.value(of)).to_vec(),
            now: Column::NUMBERS
                .map(|of| held.and_then(|row| row.value(of)))
                .to_vec(),
        }
    };
    let mut named: Vec<NamedRow> = Vec::new();
    let mut n_more = 0_u32;
    for remark in remarks.iter().filter(|remark| is_of_a_row(remark)) {
        let why = speech.remark(&remark.what);
        let line = u32::try_from(remark.line).unwrap_or(u32::MAX);
        if let Some(last) = named.last_mut().filter(|last| last.row.line == line) {
            last.why = format!("{} · {why}", last.why);
            continue;
        }
        let found = raw.rows.binary_search_by_key(&remark.line, |row| row.line);
        let Some(found) = found.ok().and_then(|place| raw.rows.get(place)) else {
            continue;
        };
        if named.len() < MOST_NAMED {
            let row = row(found);
            named.push(NamedRow { row, why });
        } else {
            n_more = n_more.saturating_add(1);
        }
    }
    let has = |of: &Column| raw.rows.iter().any(|row| row.value(*of).is_some());
    let around = near.map_or(0..0, |near| around(&raw.rows, near));
    Ok(TextRows {
        columns: Column::NUMBERS.into_iter().filter(has).collect(),
        named,
        n_more,
        near: raw.rows[around].iter().map(row).collect(),
    })
}

/// What is said of a single row that can be opened.
fn is_of_a_row(remark: &Remark) -> bool {
    let of_a_row = matches!(
        remark.what,
        What::Spike { .. }
            | What::Gap { .. }
            | What::NotANumber { .. }
            | What::NotSensible { .. }
            | What::Corrected { .. }
            | What::LeftOut { .. }
            | What::FieldCount { .. }
    );
    of_a_row && 0 < remark.line
}

/// Places of the rows round the one at or after a line, or nearest to a time.
fn around(rows: &[Row], near: Near) -> std::ops::Range<usize> {
    let place = match near {
        Near::Line(line) => {
            let line = usize::try_from(line).unwrap_or(usize::MAX);
            rows.partition_point(|row| row.line < line)
        }
        Near::Time(time_s) => {
            let after = rows.partition_point(|row| row.time_s < time_s);
            let off = |place: usize| rows.get(place).map(|row| (row.time_s - time_s).abs());
            let before = after.saturating_sub(1);
            match (off(before), off(after)) {
                (Some(earlier), Some(later)) if earlier < later => before,
                (Some(_), None) => before,
                _ => after,
            }
        }
    };
    let place = place.min(rows.len().saturating_sub(1));
    place.saturating_sub(BESIDE)..rows.len().min(place + BESIDE + 1)
}
