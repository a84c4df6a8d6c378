//! How a text is laid out: what stands between its columns, and what the columns are.

use super::correct::Correction;
use super::names::{column_of, degrees_of, elapsed_of};
use super::number::Numbers;
use super::remark::{ReadingsError, Remark, What};
use super::stamp::{MonthFirst, is_date, is_moment};

/// Lines looked at to find the layout.
const SAMPLE: usize = 60;

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Column {
    /// Clock times, dates with times, or the time elapsed.
    Time,
    /// Dates, beside a column of clock times.
    Date,
    /// Temperature of the store.
    Store,
    /// Temperature of the pot or the water.
    Pot,
    /// Temperature of the air.
    Air,
    /// Electric power of the heater.
    Power,
    /// Irradiance on the panels' plane.
    Irradiance,
    /// Something else.
    Unused,
}

/// What stands between two columns.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Delimiter {
    /// `;`
    Semicolon,
    /// A tab, as a paste from a table has.
    Tab,
    /// `,`
    Comma,
    /// One or more blanks.
    Blanks,
}

/// A unit of temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Degrees {
    /// °C.
    Celsius,
    /// °F.
    Fahrenheit,
}

/// A unit of plain numbers of time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum ElapsedUnit {
    /// s.
    Seconds,
    /// min.
    Minutes,
    /// h.
    Hours,
}

impl ElapsedUnit {
    pub(super) const fn in_s(self) -> f64 {
        match self {
            Self::Seconds => 1.0,
            Self::Minutes => 60.0,
            Self::Hours => 3600.0,
        }
    }
}

/// What a person knows of a text and the text does not say.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Hints {
    /// The columns in order, whatever the header says.
    pub columns: Option<Vec<Column>>,
    /// Unit of plain numbers of time, where the header names none.
    pub elapsed: Option<ElapsedUnit>,
    /// Unit of temperatures, where neither header nor cells name one.
    pub degrees: Option<Degrees>,
    /// Single cells that a person put right or left out.
    pub corrections: Vec<Correction>,
}

/// How a text was understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Form {
    /// Between the columns.
    pub delimiter: Delimiter,
    /// Whether numbers have a decimal comma.
    pub decimal_comma: bool,
    /// Whether there is a header.
    pub header: bool,
    /// The columns in order.
    pub columns: Vec<Column>,
    /// Unit of the temperatures; cells that name their own apart.
    pub degrees: Degrees,
}

/// The layout, with what the reader needs of it.
#[derive(Debug, Clone)]
pub(super) struct Layout {
    pub(super) delimiter: Delimiter,
    /// Last line of the header; 0 without one.
    pub(super) header_end: usize,
    pub(super) columns: Vec<Column>,
    pub(super) degrees: Degrees,
    /// The unit each column's header names, or the hint.
    pub(super) degrees_by_column: Vec<Option<Degrees>>,
    pub(super) elapsed: Option<ElapsedUnit>,
    pub(super) month_first: MonthFirst,
    pub(super) remarks: Vec<Remark>,
}

impl Delimiter {
    /// The commonest first, which decides where two fit.
    const ALL: [Self; 4] = [Self::Semicolon, Self::Tab, Self::Comma, Self::Blanks];

    const fn byte(self) -> Option<u8> {
        match self {
            Self::Semicolon => Some(b';'),
            Self::Tab => Some(b'\t'),
            Self::Comma => Some(b','),
            Self::Blanks => None,
        }
    }
}

/// Hands each line with its number and its cells to `take`, until that returns false.
pub(super) fn records(
    text: &str,
    delimiter: Delimiter,
    mut take: impl FnMut(usize, &[&str]) -> bool,
) {
    let Some(byte) = delimiter.byte() else {
        for (idx, line) in text.lines().enumerate() {
            let line = line.trim();
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            let fields: Vec<&str> = line.split_whitespace().collect();
            if !take(idx + 1, &fields) {
                return;
            }
        }
        return;
    };
    // One quote too many would swallow the rest of the text.
    let quotes = text.bytes().filter(|byte| *byte == b'"').count();
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(byte)
        .has_headers(false)
        .flexible(true)
        .comment(Some(b'#'))
        .quoting(quotes % 2 == 0)
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let mut record = csv::StringRecord::new();
    while let Ok(true) = reader.read_record(&mut record) {
        let line = record.position().map_or(0, csv::Position::line);
        let line = usize::try_from(line).unwrap_or(usize::MAX);
        let fields: Vec<&str> = record.iter().collect();
        if fields.iter().any(|field| !field.is_empty()) && !take(line, &fields) {
            return;
        }
    }
}

type Sample = Vec<(usize, Vec<String>)>;

fn sample(text: &str, delimiter: Delimiter) -> Sample {
    let mut found = Sample::new();
    records(text, delimiter, |line, fields| {
        found.push((
            line,
            fields.iter().map(|field| (*field).to_owned()).collect(),
        ));
        found.len() < SAMPLE
    });
    found
}

/// Whether a cell is a number, a time or nothing.
fn is_datum(cell: &str) -> bool {
    cell.is_empty() || is_moment(cell) || Numbers::default().read(cell, None).is_some()
}

/// Share of the lines in which all cells are data, in two columns at least.
fn fit_of(sample: &Sample) -> f64 {
    let fits = |fields: &[String]| fields.len() >= 2 && fields.iter().all(|cell| is_datum(cell));
    let fitting = sample.iter().filter(|(_, fields)| fits(fields)).count();
    #[expect(clippy::cast_precision_loss, reason = "at most a few dozen")]
    let share = fitting as f64 / sample.len().max(1) as f64;
    share
}

impl Layout {
    pub(super) fn find(text: &str, hints: &Hints) -> Result<Self, ReadingsError> {
        let mut best: Option<(f64, Delimiter, Sample)> = None;
        for delimiter in Delimiter::ALL {
            let sample = sample(text, delimiter);
            let fit = fit_of(&sample);
            if best.as_ref().is_none_or(|(most, ..)| fit > *most) {
                best = Some((fit, delimiter, sample));
            }
        }
        let (fit, delimiter, sample) = best.ok_or(ReadingsError::Empty)?;
        if sample.is_empty() {
            return Err(ReadingsError::Empty);
        }
        if fit <= 0.0 {
            return Err(ReadingsError::NoColumns);
        }
        let is_header = |(_, fields): &&(usize, Vec<String>)| {
            !fields.iter().any(|cell| !cell.is_empty() && is_datum(cell))
        };
        let header: Vec<&(usize, Vec<String>)> = sample.iter().take_while(is_header).collect();
        let data = &sample[header.len()..];
        let first = data
            .first()
            .map(|(_, fields)| fields.as_slice())
            .unwrap_or_default();
        let width = if header.is_empty() {
            usual_width(data)
        } else {
            header
                .iter()
                .map(|(_, fields)| fields.len())
                .max()
                .unwrap_or_default()
        };
        let name = |place: usize| {
            let words: Vec<&str> = header
                .iter()
                .filter_map(|(_, fields)| fields.get(place).map(String::as_str))
                .collect();
            words.join(" ").to_lowercase()
        };
        let names: Vec<String> = (0..width).map(name).collect();
        let mut layout = Self {
            delimiter,
            header_end: header.last().map_or(0, |(line, _)| *line),
            columns: Vec::new(),
            degrees: hints.degrees.unwrap_or(Degrees::Celsius),
            degrees_by_column: names
                .iter()
                .map(|name| degrees_of(name).or(hints.degrees))
                .collect(),
            elapsed: None,
            month_first: MonthFirst::of(data.iter().flat_map(|(_, fields)| fields)),
            remarks: Vec::new(),
        };
        layout.columns = match &hints.columns {
            Some(columns) => {
                let mut columns = columns.clone();
                columns.resize(width.max(columns.len()), Column::Unused);
                layout
                    .degrees_by_column
                    .resize(columns.len(), hints.degrees);
                columns
            }
            None if header.is_empty() => by_place(first, width, data),
            None => by_name(&names, first),
        };
        layout.check(&names, delimiter, data)?;
        Ok(layout)
    }

    /// Refuses what cannot be used, remarks on what is not used.
    fn check(
        &mut self,
        names: &[String],
        delimiter: Delimiter,
        data: &[(usize, Vec<String>)],
    ) -> Result<(), ReadingsError> {
        for place in 0..self.columns.len() {
            let column = self.columns[place];
            if column == Column::Unused {
                self.remarks
                    .push(Remark::whole(What::ColumnUnused { place: place + 1 }));
            } else if self.columns[..place].contains(&column) {
                self.columns[place] = Column::Unused;
                self.remarks
                    .push(Remark::whole(What::ColumnTwice { place: place + 1 }));
            }
        }
        let Some(time) = self
            .columns
            .iter()
            .position(|column| *column == Column::Time)
        else {
            return Err(ReadingsError::NoTimes);
        };
        if !self.columns.iter().any(|column| column.is_number()) {
            return Err(ReadingsError::NoReadings);
        }
        self.elapsed = names.get(time).and_then(|name| elapsed_of(name));
        if let Some(degrees) = self
            .columns
            .iter()
            .zip(&self.degrees_by_column)
            .find_map(|(column, degrees)| degrees.filter(|_| column.is_temperature()))
        {
            self.degrees = degrees;
        }
        let whole = |cell: &String| cell.bytes().all(|byte| byte.is_ascii_digit());
        let pairs = |fields: &[String]| {
            fields.len() >= 3 && fields.len() % 2 == 1 && fields.iter().skip(1).all(whole)
        };
        let comma = delimiter == Delimiter::Comma && self.header_end == 0;
        if comma && data.iter().all(|(_, fields)| pairs(fields)) {
            self.remarks.push(Remark::whole(What::LooksDecimalComma));
        }
        Ok(())
    }
}

/// How many cells most lines have.
fn usual_width(data: &[(usize, Vec<String>)]) -> usize {
    let widths: Vec<usize> = data.iter().map(|(_, fields)| fields.len()).collect();
    let count = |width: usize| widths.iter().filter(|each| **each == width).count();
    widths
        .iter()
        .copied()
        .max_by_key(|width| count(*width))
        .unwrap_or_default()
}

/// Warmth of a kitchen's air through a run, from the coldest to the warmest, and how far it moves at most. [°C, K]
const AIR_C: (f64, f64) = (5.0, 45.0);
const AIR_MOVES_K: f64 = 12.0;
/// With fewer rows nothing is said of a column by what is in it.
const AIR_ROWS: usize = 3;

/// Whether a column stays as the air does: a pot that goes in cold soon leaves that band.
fn is_air(data: &[(usize, Vec<String>)], place: usize) -> bool {
    let mut numbers = Numbers::default();
    let cells = data.iter().filter_map(|(_, fields)| fields.get(place));
    let values: Vec<f64> = cells.filter_map(|cell| numbers.read(cell, None)).collect();
    let low = values.iter().copied().fold(f64::INFINITY, f64::min);
    let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    AIR_ROWS <= values.len() && AIR_C.0 <= low && high <= AIR_C.1 && high - low <= AIR_MOVES_K
}

/// Without a header: the time, then store, pot, air, power, irradiance; but of two readings the second
/// is the air where it stays as that does.
fn by_place(first: &[String], width: usize, data: &[(usize, Vec<String>)]) -> Vec<Column> {
    let mut readings = [
        Column::Store,
        Column::Pot,
        Column::Air,
        Column::Power,
        Column::Irradiance,
    ]
    .into_iter();
    let mut columns = Vec::new();
    for place in 0..width {
        let cell = first.get(place).map(String::as_str).unwrap_or_default();
        let dated = columns.first() == Some(&Column::Date);
        columns.push(match place {
            0 if is_date(cell) => Column::Date,
            0 => Column::Time,
            1 if dated => Column::Time,
            _ => readings.next().unwrap_or(Column::Unused),
        });
    }
    if let Some(last @ Column::Pot) = columns.last_mut()
        && is_air(data, width - 1)
    {
        *last = Column::Air;
    }
    columns
}

/// By the words of the header; where none means the time, a first column of times is it.
fn by_name(names: &[String], first: &[String]) -> Vec<Column> {
    let mut columns: Vec<Column> = names.iter().map(|name| column_of(name)).collect();
    let time = columns.iter().position(|column| *column == Column::Time);
    match time {
        // A column named time with whole dates in it, and clock times in the next.
        Some(place) if first.get(place).is_some_and(|cell| is_date(cell)) => {
            columns[place] = Column::Date;
            if let Some(next) = columns.get_mut(place + 1) {
                *next = Column::Time;
            }
        }
        Some(_) => {}
        None => {
            let date = columns.iter().position(|column| *column == Column::Date);
            let holds_times = |place: usize| first.get(place).is_some_and(|cell| is_moment(cell));
            let unnamed = columns.first() == Some(&Column::Unused);
            if let Some(place) = date.filter(|place| holds_times(*place)) {
                columns[place] = Column::Time;
            } else if unnamed && first.first().is_some_and(|cell| is_datum(cell)) {
                columns[0] = Column::Time;
            }
        }
    }
    columns
}
