//! Readings of a test run, from a paste of columns or a logger's file.
//!
//! Text goes in, rows and remarks come out. Nothing is dropped in silence: what could not be used
//! stands among the remarks with the line it is on, counted from 1 as an editor counts. Values
//! that look wrong, such as spikes and columns that have changed places, are remarked on and kept:
//! a robust fit bears them, and a person decides.
//!
//! What is understood: commas, semicolons, tabs or spaces between the columns; a decimal point or
//! a decimal comma; a header or none; degrees Celsius or Fahrenheit; clock times that pass
//! midnight, dates and times after ISO 8601 and two other common orders, or the time elapsed in
//! seconds, minutes or hours. Lines that begin with `#` are notes, `# key: value`.

mod checks;
mod correct;
mod form;
mod names;
mod number;
mod remark;
mod spikes;
mod stamp;

#[cfg(test)]
mod tests;

pub use correct::Correction;
pub use form::{Column, Degrees, Delimiter, ElapsedUnit, Form, Hints};
pub(in crate::bench) use spikes::wild;

pub use remark::{ReadingsError, Remark, What};

use crate::local_time::LocalTime;
use form::{Layout, records};
use number::Numbers;
use stamp::{Clock, Stamped};

/// Coldest and hottest that a thermometer of this job can show. What lies outside is a broken
/// wire or an error code, as -127 and 9999 are. [°C]
const SENSIBLE_C: (f64, f64) = (-60.0, 1000.0);
/// The same for power, \[W\], and irradiance, \[W/m²\]; a little below 0 is an instrument's zero.
const SENSIBLE_W: (f64, f64) = (-20.0, 20_000.0);

/// One row of readings. A reading that is not there is `None`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Row {
    /// Line of the text it was on, from 1.
    pub line: usize,
    /// Since the first row. \[s\]
    pub time_s: f64,
    /// Store. [°C]
    pub store_c: Option<f64>,
    /// Pot, or the water in it. [°C]
    pub pot_c: Option<f64>,
    /// Air. [°C]
    pub air_c: Option<f64>,
    /// Electric power of the heater. \[W\]
    pub heater_w: Option<f64>,
    /// On the plane of the panels. \[W/m²\]
    pub irradiance_w_m2: Option<f64>,
}

impl Row {
    /// The reading in a column of numbers.
    pub fn value(&self, column: Column) -> Option<f64> {
        match column {
            Column::Store => self.store_c,
            Column::Pot => self.pot_c,
            Column::Air => self.air_c,
            Column::Power => self.heater_w,
            Column::Irradiance => self.irradiance_w_m2,
            Column::Time | Column::Date | Column::Unused => None,
        }
    }

    fn set(&mut self, column: Column, value: f64) {
        self.put(column, Some(value));
    }

    /// Whether nothing was read.
    pub fn is_empty(&self) -> bool {
        Column::NUMBERS.iter().all(|of| self.value(*of).is_none())
    }

    fn put(&mut self, column: Column, value: Option<f64>) {
        let place = match column {
            Column::Store => &mut self.store_c,
            Column::Pot => &mut self.pot_c,
            Column::Air => &mut self.air_c,
            Column::Power => &mut self.heater_w,
            Column::Irradiance => &mut self.irradiance_w_m2,
            Column::Time | Column::Date | Column::Unused => return,
        };
        *place = value;
    }
}

/// A line `# key: value`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Note {
    /// Line of the text, from 1.
    pub line: usize,
    /// Before the colon, in small letters.
    pub key: String,
    /// After it.
    pub value: String,
}

/// What was read.
#[derive(Debug, Clone, PartialEq)]
pub struct Readings {
    /// In order of time, each later than the one before, corrected as the hints say.
    pub rows: Vec<Row>,
    /// In order of lines.
    pub remarks: Vec<Remark>,
    /// Lines that begin with `#` and have a colon.
    pub notes: Vec<Note>,
    /// How the text was understood.
    pub form: Form,
    /// When the first row was taken, where the times say so; on a day of no date, the first day of
    /// the calendar stands.
    pub start: Option<LocalTime>,
}

/// Reads a paste or a file.
///
/// `hints` settle what the text leaves open; [`Hints::default`] guesses all of it.
///
/// # Errors
///
/// [`ReadingsError`] where no column of times, no column of readings or no row at all is found.
pub fn read(text: &str, hints: &Hints) -> Result<Readings, ReadingsError> {
    let text = text.trim_start_matches('\u{feff}');
    // One kind of line end, so that lines are counted as an editor counts them.
    let unified;
    let text = if text.contains('\r') {
        unified = text.replace("\r\n", "\n").replace('\r', "\n");
        unified.as_str()
    } else {
        text
    };
    let layout = Layout::find(text, hints)?;
    let mut reader = Reader::new(&layout, hints);
    records(text, layout.delimiter, |line, fields| {
        if line > layout.header_end {
            reader.take(line, fields);
        }
        true
    });
    let mut remarks = layout.remarks.clone();
    remarks.append(&mut reader.remarks);
    if reader.rows.is_empty() {
        return Err(ReadingsError::NoRows);
    }
    let mut rows = reader.rows;
    let first_s = rows.first().map_or(0.0, |row| row.time_s);
    for row in &mut rows {
        row.time_s -= first_s;
    }
    correct::correct(&mut rows, &hints.corrections, &mut remarks);
    if rows.is_empty() {
        return Err(ReadingsError::NoRows);
    }
    checks::look(&rows, &layout, reader.clock.unit_guessed(), &mut remarks);
    remarks.sort_by_key(|remark| (remark.line, remark.through));
    Ok(Readings {
        notes: notes(text),
        start: reader.clock.start(),
        form: Form {
            delimiter: layout.delimiter,
            decimal_comma: reader.numbers.decimal == Some(','),
            header: layout.header_end > 0,
            columns: layout.columns,
            degrees: layout.degrees,
        },
        rows,
        remarks,
    })
}

/// The lines `# key: value` of a text.
pub fn notes(text: &str) -> Vec<Note> {
    let note = |(idx, line): (usize, &str)| {
        let (key, value) = line.trim().strip_prefix('#')?.split_once(':')?;
        Some(Note {
            line: idx + 1,
            key: key.trim().to_lowercase(),
            value: value.trim().to_owned(),
        })
    };
    text.lines().enumerate().filter_map(note).collect()
}

/// What is carried from row to row.
struct Reader<'a> {
    layout: &'a Layout,
    numbers: Numbers,
    clock: Clock,
    rows: Vec<Row>,
    remarks: Vec<Remark>,
}

impl<'a> Reader<'a> {
    fn new(layout: &'a Layout, hints: &Hints) -> Self {
        Self {
            layout,
            numbers: Numbers::default(),
            clock: Clock::new(layout.elapsed.or(hints.elapsed)),
            rows: Vec::new(),
            remarks: layout.month_first.guess_remark().into_iter().collect(),
        }
    }

    fn take(&mut self, line: usize, fields: &[&str]) {
        let layout = self.layout;
        let wanted = layout.columns.len();
        // A separator at the end of a line makes one empty field too many.
        let spare = fields.len() == wanted + 1 && fields.last().is_some_and(|last| last.is_empty());
        if fields.len() != wanted && !spare {
            let found = fields.len();
            self.remark(line, What::FieldCount { found, wanted });
        }
        let cell = |wanted: Column| {
            let place = layout.columns.iter().position(|column| *column == wanted)?;
            fields.get(place).copied()
        };
        let stamp = self.clock.read(
            cell(Column::Date),
            cell(Column::Time).unwrap_or_default(),
            layout.month_first.is_first(),
            &mut self.numbers,
        );
        let time_s = match stamp {
            Stamped::At(time_s) => time_s,
            Stamped::NotLater => return self.remark(line, What::NotLater),
            Stamped::Unreadable => return self.remark(line, What::NoTime),
        };
        let mut row = Row {
            line,
            time_s,
            ..Row::default()
        };
        for ((column, degrees), field) in layout
            .columns
            .iter()
            .zip(&layout.degrees_by_column)
            .zip(fields)
        {
            if !column.is_number() || field.is_empty() {
                continue;
            }
            match self.numbers.read(field, *degrees) {
                Some(value) if column.is_sensible(value) => row.set(*column, value),
                Some(value) => self.remark(
                    line,
                    What::NotSensible {
                        column: *column,
                        value,
                    },
                ),
                None => self.remark(line, What::NotANumber { column: *column }),
            }
        }
        self.rows.push(row);
    }

    fn remark(&mut self, line: usize, what: What) {
        // One remark for a run of lines with the same fault.
        if let Some(last) = self.remarks.last_mut()
            && last.through + 1 == line
            && last.what == what
        {
            last.through = line;
            return;
        }
        self.remarks.push(Remark::at(line, what));
    }
}

impl Column {
    /// Those whose cells are numbers to be kept.
    pub const NUMBERS: [Self; 5] = [
        Self::Store,
        Self::Pot,
        Self::Air,
        Self::Power,
        Self::Irradiance,
    ];

    /// Whether its cells are numbers to be kept.
    pub const fn is_number(self) -> bool {
        matches!(
            self,
            Self::Store | Self::Pot | Self::Air | Self::Power | Self::Irradiance
        )
    }

    /// Whether its cells are temperatures.
    pub const fn is_temperature(self) -> bool {
        matches!(self, Self::Store | Self::Pot | Self::Air)
    }

    fn is_sensible(self, value: f64) -> bool {
        let (low, high) = if self.is_temperature() {
            SENSIBLE_C
        } else {
            SENSIBLE_W
        };
        (low..=high).contains(&value)
    }
}
