//! Single readings that a person put right or left out. The text stays as it is.

use super::Row;
use super::form::Column;
use super::remark::{Remark, What};

/// What a person says of one cell of a text.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Correction {
    /// Line of the text, from 1.
    pub line: u32,
    /// In which column.
    pub column: Column,
    /// What it should say, in °C, W or W/m²; `None` leaves it out.
    pub value: Option<f64>,
}

/// Puts rows right and remarks on each cell that was: what of a correction has no row stays undone.
/// A row that nothing is left of goes.
pub(super) fn correct(rows: &mut Vec<Row>, corrections: &[Correction], remarks: &mut Vec<Remark>) {
    let mut emptied = Vec::new();
    for correction in corrections {
        let Correction {
            line,
            column,
            value,
        } = *correction;
        let line = usize::try_from(line).unwrap_or(usize::MAX);
        let place = rows.binary_search_by_key(&line, |row| row.line);
        let Some(row) = place.ok().and_then(|place| rows.get_mut(place)) else {
            continue;
        };
        let was = row.value(column);
        row.put(column, value);
        let what = match value {
            Some(now) => What::Corrected { column, was, now },
            None => What::LeftOut { column, was },
        };
        remarks.push(Remark::at(line, what));
        if row.is_empty() {
            emptied.push(line);
        }
    }
    rows.retain(|row| !(emptied.contains(&row.line) && row.is_empty()));
}

#[cfg(test)]
mod tests {
    use super::super::{Column, Correction, Hints, ReadingsError, What, read};

    const TEXT: &str = "time_s,store_c,pot_c\n0,200,20\n60,19.9,25\n120,199,30\n180,198,35\n240,197,40\n300,196,45\n360,195,50\n420,194,55\n";

    fn corrected(corrections: &[Correction]) -> super::super::Readings {
        let hints = Hints {
            corrections: corrections.to_vec(),
            ..Hints::default()
        };
        read(TEXT, &hints).unwrap()
    }

    const fn cell(line: u32, column: Column, value: Option<f64>) -> Correction {
        Correction {
            line,
            column,
            value,
        }
    }

    #[test]
    fn a_mistyped_cell_is_put_right_and_no_spike_any_more() {
        let is_spike = |what: What| matches!(what, What::Spike { .. });
        let before = corrected(&[]);
        assert!(
            before
                .remarks
                .iter()
                .any(|remark| remark.line == 3 && is_spike(remark.what))
        );
        let after = corrected(&[cell(3, Column::Store, Some(199.5))]);
        assert_eq!(after.rows[1].store_c, Some(199.5));
        assert_eq!(after.rows[1].pot_c, Some(25.0));
        assert!(!after.remarks.iter().any(|remark| is_spike(remark.what)));
        let said = What::Corrected {
            column: Column::Store,
            was: Some(19.9),
            now: 199.5,
        };
        assert!(
            after
                .remarks
                .iter()
                .any(|remark| remark.line == 3 && remark.what == said)
        );
    }

    #[test]
    fn what_is_left_out_is_said_and_a_row_without_readings_goes() {
        let one = corrected(&[cell(3, Column::Store, None)]);
        assert_eq!(one.rows.len(), 8);
        assert_eq!(one.rows[1].store_c, None);
        let row = corrected(&[
            cell(3, Column::Store, None),
            cell(3, Column::Pot, None),
            cell(99, Column::Pot, None),
        ]);
        assert_eq!(row.rows.len(), 7);
        let left_out = |what: What| matches!(what, What::LeftOut { .. });
        let said = row
            .remarks
            .iter()
            .filter(|remark| left_out(remark.what))
            .count();
        assert_eq!(said, 2);
        // The times of the others are what they were.
        assert!((row.rows[1].time_s - 120.0).abs() < 1e-9);
    }

    #[test]
    fn where_all_is_left_out_nothing_is_read() {
        let all: Vec<Correction> = (2..=9)
            .flat_map(|line| [Column::Store, Column::Pot].map(|of| cell(line, of, None)))
            .collect();
        let hints = Hints {
            corrections: all,
            ..Hints::default()
        };
        assert_eq!(read(TEXT, &hints), Err(ReadingsError::NoRows));
    }
}
