//! What the worker answers.

use model::bench::readings::{Column, Degrees, ElapsedUnit};
use model::cooker::Cooker;
use model::local_time::LocalTime;

use crate::bench::sheet::{Block, Points};
use crate::state::bench::{KeptFit, KeptText, Text};
use crate::state::saved::reader::{Found, Node, Read};
use crate::state::saved::shape::record;
use crate::state::saved::writer::{Record, Write, Writer};

/// An answer.
#[derive(Debug, Clone, PartialEq)]
pub enum Answer {
    /// A text was understood.
    Opened(Box<Opened>),
    /// The text that was held is kept.
    Kept(KeptText),
    /// What was found of a cooker.
    Fitted(Box<Fitted>),
    /// The texts that were asked for, as far as they are there.
    Texts(Vec<Text>),
    /// Keys of texts.
    Keys(Vec<String>),
    /// What the texts that were asked for say, to be drawn.
    Curves(Vec<Curve>),
    /// Rows of a kept text.
    Rows(TextRows),
    /// It is done.
    Done,
    /// It can't be; why, in words.
    Refused(String),
}

/// How a text was understood.
#[derive(Debug, Clone, PartialEq)]
pub struct Opened {
    /// The columns in order.
    pub columns: Vec<Column>,
    /// What stands in each: a few cells of it.
    pub samples: Vec<String>,
    /// Unit of its temperatures.
    pub degrees: Degrees,
    /// Unit of its times, where they are plain numbers.
    pub elapsed: Option<ElapsedUnit>,
    /// Two columns that seem to have changed places.
    pub swapped: Option<Vec<Column>>,
    /// When the first row was taken, where the text says the day.
    pub start: Option<LocalTime>,
    /// Rows that could be used.
    pub rows: u32,
    /// From the first to the last. \[s\]
    pub span_s: f64,
    /// When the pot has its first and its last reading, from the first row. \[s\]
    pub pot_s: Option<[f64; 2]>,
    /// Whether the power of the heater or the light is told by a column.
    pub has_power: bool,
    /// Whether the air is.
    pub has_air: bool,
    /// What it says, in words and drawn.
    pub sheet: Vec<Block>,
}

/// Rows of a kept text.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct TextRows {
    /// The columns of numbers it has.
    pub columns: Vec<Column>,
    /// Those there is something to say of, in order.
    pub named: Vec<NamedRow>,
    /// How many more of these there are.
    pub n_more: u32,
    /// Those round the one that was looked for, in order.
    pub near: Vec<TextRow>,
}

/// A row, and what there is to say of it.
#[derive(Debug, Clone, PartialEq)]
pub struct NamedRow {
    /// The row.
    pub row: TextRow,
    /// Why it is named, in words.
    pub why: String,
}

/// A row of a text.
#[derive(Debug, Clone, PartialEq)]
pub struct TextRow {
    /// Its line, from 1.
    pub line: u32,
    /// Since the first row. \[s\]
    pub time_s: f64,
    /// What the text says of each of [`Column::NUMBERS`].
    pub text: Vec<Option<f64>>,
    /// What holds.
    pub now: Vec<Option<f64>>,
}

/// What a kept text says, thinned to be drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Curve {
    /// The text.
    pub text: KeptText,
    /// Its curves; none where the text can't be had any more.
    pub lines: Option<CurveLines>,
}

/// Times since the first row and temperatures. \[s, °C\]
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CurveLines {
    /// Of the store.
    pub store: Points,
    /// Of the pot.
    pub pot: Points,
}

/// What was found of a cooker.
#[derive(Debug, Clone, PartialEq)]
pub struct Fitted {
    /// To be kept with the runs.
    pub fit: KeptFit,
    /// The cooker with what was measured in it; none where nothing was.
    pub cooker: Option<Box<Cooker>>,
    /// What it says, in words and drawn.
    pub sheet: Vec<Block>,
}

record!(Opened {
    columns: "columns",
    samples: "samples",
    degrees: "degrees",
    elapsed: "elapsed",
    swapped: "swapped",
    start: "start",
    rows: "rows",
    span_s: "span_s",
    pot_s: "pot_s",
    has_power: "has_power",
    has_air: "has_air",
    sheet: "sheet",
});

record!(TextRows {
    columns: "columns",
    named: "named",
    n_more: "n_more",
    near: "near",
});

record!(NamedRow {
    row: "row",
    why: "why",
});

record!(TextRow {
    line: "line",
    time_s: "time_s",
    text: "text",
    now: "now",
});

record!(Curve {
    text: "text",
    lines: "lines",
});

record!(CurveLines {
    store: "store",
    pot: "pot",
});

record!(Fitted {
    fit: "fit",
    cooker: "cooker",
    sheet: "sheet",
});

impl Write for Answer {
    fn write(&self, out: &mut Writer) {
        let (name, value): (_, &dyn Write) = match self {
            Self::Opened(opened) => ("opened", opened),
            Self::Kept(text) => ("kept", text),
            Self::Fitted(fitted) => ("fitted", fitted),
            Self::Texts(texts) => ("texts", texts),
            Self::Keys(keys) => ("keys", keys),
            Self::Curves(curves) => ("curves", curves),
            Self::Rows(rows) => ("rows", rows),
            Self::Done => ("done", &true),
            Self::Refused(why) => ("refused", why),
        };
        Record(&[(name, value)]).write(out);
    }
}

impl Read for Answer {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.variant()? {
            ("opened", opened) => Read::read(&opened).map(Self::Opened),
            ("kept", text) => Read::read(&text).map(Self::Kept),
            ("fitted", fitted) => Read::read(&fitted).map(Self::Fitted),
            ("texts", texts) => Read::read(&texts).map(Self::Texts),
            ("keys", keys) => Read::read(&keys).map(Self::Keys),
            ("curves", curves) => Read::read(&curves).map(Self::Curves),
            ("rows", rows) => Read::read(&rows).map(Self::Rows),
            ("done", _) => Ok(Self::Done),
            ("refused", why) => Read::read(&why).map(Self::Refused),
            (_, other) => Err(other.expected("an answer")),
        }
    }
}
