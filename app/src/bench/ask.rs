//! What the page asks of the worker.

use model::bench::Prices;
use model::bench::readings::Hints;
use model::cooker::Cooker;
use model::local_time::LocalTime;

use crate::state::bench::{KeptText, TestRun, Text};
use crate::state::document::Household;
use crate::state::ids::RunId;
use crate::state::saved::reader::{Found, Node, Read};
use crate::state::saved::shape::record;
use crate::state::saved::writer::{Record, Write, Writer};
use crate::state::settings::Degrees;

/// A question.
#[derive(Debug, Clone, PartialEq)]
pub struct Ask {
    /// How to say the answer.
    pub voice: Tongue,
    /// What is asked.
    pub what: What,
}

/// Language and units of an answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tongue {
    /// Tag of the language.
    pub language: String,
    /// Tag of the locale in which numbers and dates are written.
    pub locale: String,
    /// Unit of temperatures.
    pub degrees: Degrees,
    /// The household's clock.
    pub now: LocalTime,
}

/// What is asked.
#[derive(Debug, Clone, PartialEq)]
pub enum What {
    /// To understand the text that comes along, a paste or a file, and to hold it.
    Open {
        /// What the person says of it.
        hints: Hints,
    },
    /// To understand the text that is held with other hints.
    Again {
        /// What the person says of it.
        hints: Hints,
    },
    /// To keep the text that is held on the device.
    Keep,
    /// To find the figures of a cooker.
    Fit(Box<FitAsk>),
    /// For what kept texts say, to be drawn.
    Curves(Vec<KeptText>),
    /// For rows of a kept text: those there is a doubt about, and those round one.
    Rows {
        /// The text.
        text: KeptText,
        /// The row that is looked for, by its line or by its time.
        near: Option<Near>,
    },
    /// For the texts that are kept under these keys, to go into a copy.
    Texts(Vec<String>),
    /// To keep the texts of a copy.
    Bring(Vec<Text>),
    /// To forget the texts under these keys.
    Sweep(Vec<String>),
    /// For the keys of all texts that have been kept for a day or longer.
    Keys,
}

/// A row that is looked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Near {
    /// By its line in the text, from 1.
    Line(u32),
    /// By its time since the first row. \[s\]
    Time(f64),
}

/// A cooker and its runs.
#[derive(Debug, Clone, PartialEq)]
pub struct FitAsk {
    /// Where it stands.
    pub household: Household,
    /// The cooker as it is described.
    pub cooker: Cooker,
    /// Its runs, fitted together.
    pub runs: Vec<TestRun>,
    /// The one that the answer is about.
    pub of: RunId,
    /// What changes cost.
    pub prices: Prices,
}

record!(Ask {
    voice: "voice",
    what: "what",
});

record!(Tongue {
    language: "language",
    locale: "locale",
    degrees: "degrees",
    now: "now",
});

record!(FitAsk {
    household: "household",
    cooker: "cooker",
    runs: "runs",
    of: "of",
    prices: "prices",
});

impl Write for What {
    fn write(&self, out: &mut Writer) {
        let nothing = Record(&[]);
        match self {
            Self::Open { hints } => Record(&[("open", hints)]).write(out),
            Self::Again { hints } => Record(&[("again", hints)]).write(out),
            Self::Keep => Record(&[("keep", &nothing)]).write(out),
            Self::Fit(ask) => Record(&[("fit", ask)]).write(out),
            Self::Curves(texts) => Record(&[("curves", texts)]).write(out),
            Self::Rows { text, near } => {
                let rows = Record(&[("text", text), ("near", near)]);
                Record(&[("rows", &rows)]).write(out);
            }
            Self::Texts(keys) => Record(&[("texts", keys)]).write(out),
            Self::Bring(texts) => Record(&[("bring", texts)]).write(out),
            Self::Sweep(keys) => Record(&[("sweep", keys)]).write(out),
            Self::Keys => Record(&[("keys", &nothing)]).write(out),
        }
    }
}

impl Read for What {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.variant()? {
            ("open", hints) => Ok(Self::Open {
                hints: Read::read(&hints)?,
            }),
            ("again", hints) => Ok(Self::Again {
                hints: Read::read(&hints)?,
            }),
            ("keep", _) => Ok(Self::Keep),
            ("fit", ask) => Read::read(&ask).map(Self::Fit),
            ("curves", texts) => Read::read(&texts).map(Self::Curves),
            ("rows", rows) => Ok(Self::Rows {
                text: rows.get("text")?,
                near: rows.get("near")?,
            }),
            ("texts", keys) => Read::read(&keys).map(Self::Texts),
            ("bring", texts) => Read::read(&texts).map(Self::Bring),
            ("sweep", keys) => Read::read(&keys).map(Self::Sweep),
            ("keys", _) => Ok(Self::Keys),
            (_, other) => Err(other.expected("a question")),
        }
    }
}

impl Write for Near {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Line(line) => Record(&[("line", line)]).write(out),
            Self::Time(time_s) => Record(&[("time_s", time_s)]).write(out),
        }
    }
}

impl Read for Near {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.variant()? {
            ("line", line) => Read::read(&line).map(Self::Line),
            ("time_s", time_s) => Read::read(&time_s).map(Self::Time),
            (_, other) => Err(other.expected("line or time_s")),
        }
    }
}
