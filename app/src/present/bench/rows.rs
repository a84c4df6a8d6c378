//! Single rows of an imported run: how they are listed, and what a person makes of one.

use model::bench::readings::{Column, Correction};
use model::local_time::LocalTime;

use crate::bench::answer::TextRow;
use crate::bench::ask::Near;
use crate::components::{EntryView, Icon};
use crate::i18n::format::Sure;
use crate::present::bench::live::read;
use crate::present::bench::typing::{Channel, ReadingDraft};
use crate::present::bench::when::When;
use crate::present::tonight::Voice;
use crate::present::typed::Mistake;
use crate::state::bench::{Reading, TestRun};
use crate::state::parse::ParseError;
use crate::state::refused::Field;

/// The reading of a row, of the run that it is in.
pub fn reading(run: &TestRun, row: &TextRow, values: &[Option<f64>]) -> Reading {
    let value = |channel: Channel| values.get(channel.place()).copied().flatten();
    Reading {
        at: run.at(row.time_s),
        store_c: value(Channel::Store),
        pot_c: value(Channel::Pot),
        air_c: value(Channel::Air),
        heater_w: value(Channel::Power),
    }
}

/// A row in a list; `why` is what there is to say of it.
pub fn entry(voice: &Voice<'_>, run: &TestRun, row: &TextRow, why: &str) -> EntryView {
    let words = &voice.strings.runs.rows;
    let now = reading(run, row, &row.now);
    let is_left_out = row.now.iter().all(Option::is_none);
    EntryView {
        when: (words.row)(&row.line.to_string(), &voice.time(now.at, Sure::Known)),
        title: if is_left_out {
            words.left_out.to_owned()
        } else {
            read(voice, &now)
        },
        detail: why.to_owned(),
        icon: Icon::Thermometer,
    }
}

/// How many readings of a run's text are put right, and how many are left out.
pub fn counts(corrections: &[Correction]) -> (usize, usize) {
    let n_left_out = corrections.iter().filter(|of| of.value.is_none()).count();
    (corrections.len() - n_left_out, n_left_out)
}

/// The row that a field names, by its number or by a time of day in the run.
///
/// # Errors
///
/// [`Mistake`] of the field.
pub fn near(text: &str, run: &TestRun, now: LocalTime) -> Result<Near, Mistake> {
    let text = text.trim();
    if text.contains(':') {
        let at = When::of(run, now).typed(text, Field::Readings)?;
        return Ok(Near::Time(run.since_start_s(at)));
    }
    let line = text.parse().ok().filter(|line| 0 < *line);
    let why = if text.is_empty() {
        ParseError::Empty
    } else {
        ParseError::NotANumber
    };
    line.map(Near::Line)
        .ok_or(Mistake::Text(Field::Readings, why))
}

/// Corrections with a row as the fields have it: `before` is what they showed when it was opened. What
/// was not touched stays as it is; what says the same as the text is none.
///
/// # Errors
///
/// [`Mistake`] of the first field that can't be taken.
pub fn changed(
    voice: &Voice<'_>,
    corrections: &[Correction],
    (run, row): (&TestRun, &TextRow),
    (before, after): (&ReadingDraft, &ReadingDraft),
) -> Result<Vec<Correction>, Mistake> {
    let at = run.at(row.time_s);
    let is_all_empty = after.shows.iter().all(|shows| shows.trim().is_empty());
    let new = if is_all_empty {
        Reading::none(at)
    } else {
        after.shown(voice.formats, at)?
    };
    let text = ReadingDraft::of(&reading(run, row, &row.text), voice.formats);
    let mut kept = corrections.to_vec();
    for channel in Channel::ALL {
        let place = channel.place();
        let shows = |draft: &ReadingDraft| draft.shows.get(place).cloned().unwrap_or_default();
        let column = Column::NUMBERS[place];
        if shows(before) == shows(after) {
            continue;
        }
        kept.retain(|of| (of.line, of.column) != (row.line, column));
        if shows(after).trim() != shows(&text) {
            kept.push(Correction {
                line: row.line,
                column,
                value: channel.of(&new),
            });
        }
    }
    Ok(by_line(kept))
}

/// Corrections with all of a row left out.
pub fn left_out(corrections: &[Correction], row: &TextRow) -> Vec<Correction> {
    let mut kept = brought_back(corrections, row);
    let all = Column::NUMBERS.into_iter().zip(&row.text).zip(&row.now);
    let is_there = all.filter(|((_, text), now)| text.is_some() || now.is_some());
    kept.extend(is_there.map(|((column, _), _)| Correction {
        line: row.line,
        column,
        value: None,
    }));
    by_line(kept)
}

/// Corrections with none of a row.
pub fn brought_back(corrections: &[Correction], row: &TextRow) -> Vec<Correction> {
    let others = corrections.iter().filter(|of| of.line != row.line);
    others.copied().collect()
}

fn by_line(mut corrections: Vec<Correction>) -> Vec<Correction> {
    corrections.sort_by_key(|of| of.line);
    corrections
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::present::tests::speaking;
    use crate::state::sample::{at, test_run};

    fn row() -> TextRow {
        let values = vec![Some(19.96), Some(25.0), None, None, Some(700.0)];
        TextRow {
            line: 3,
            time_s: 60.0,
            text: values.clone(),
            now: values,
        }
    }

    fn typed(shows: &str, then: &str) -> Result<Vec<Correction>, Mistake> {
        let (strings, formats) = speaking(Language::Spanish);
        let voice = Voice {
            strings,
            formats: &formats,
            now: at(20, 0),
        };
        let (run, row) = (test_run(), row());
        let before = ReadingDraft::of(&reading(&run, &row, &row.now), &formats);
        assert_eq!(before.shows[0], "20");
        let mut after = before.clone();
        after.shows[0] = shows.to_owned();
        let once = changed(&voice, &[], (&run, &row), (&before, &after))?;
        let mut last = after.clone();
        last.shows[0] = then.to_owned();
        changed(&voice, &once, (&run, &row), (&after, &last))
    }

    #[test]
    fn only_what_was_touched_is_put_right_and_the_texts_own_is_no_correction() {
        let cell = |value| Correction {
            line: 3,
            column: Column::Store,
            value,
        };
        assert_eq!(typed("199,6", "199,6").unwrap(), [cell(Some(199.6))]);
        assert_eq!(typed("", "").unwrap(), [cell(None)]);
        assert_eq!(typed("199,6", "20").unwrap(), []);
        assert!(typed("1999", "1999").is_err());
    }

    #[test]
    fn a_row_is_left_out_with_all_it_has_and_brought_back() {
        let other = Correction {
            line: 9,
            column: Column::Pot,
            value: Some(31.0),
        };
        let without = left_out(&[other], &row());
        let columns: Vec<Column> = without.iter().map(|of| of.column).collect();
        let expected = [Column::Store, Column::Pot, Column::Irradiance, Column::Pot];
        assert_eq!(columns, expected);
        assert_eq!(counts(&without), (1, 3));
        assert_eq!(brought_back(&without, &row()), [other]);
    }

    #[test]
    fn a_row_is_looked_for_by_its_number_or_its_time() {
        let run = test_run();
        let now = at(23, 0);
        assert_eq!(near(" 1200", &run, now), Ok(Near::Line(1200)));
        assert!(near("0", &run, now).is_err() && near("x", &run, now).is_err());
        assert!(near("", &run, now).is_err());
        let Ok(Near::Time(time_s)) = near("20:00", &run, now) else {
            panic!("no time")
        };
        assert_eq!(run.at(time_s), at(20, 0));
    }
}
