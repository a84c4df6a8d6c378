//! A page of an answer: finished words, figures and plots, which the page only draws.

use crate::chart::{HeatBarView, HeatPart, LineChartView, LineStyle, Mark, Series};
use crate::components::{Fact, TableView};
use crate::state::saved::reader::{Found, Node, Read};
use crate::state::saved::shape::{names, record};
use crate::state::saved::writer::{Record, Write, Writer};

/// A part of a sheet.
#[derive(Debug, Clone, PartialEq)]
pub enum Block {
    /// Begins a slab of its own.
    Heading(String),
    /// The sentence that matters most.
    Lead(String),
    /// A sentence or more.
    Text(String),
    /// Sentences, one under the other.
    List(Vec<String>),
    /// Figures with their names.
    Facts(Vec<Fact>),
    /// A plot.
    Lines(Box<LineChartView>),
    /// Where heat went.
    Heat(HeatBarView),
    /// A table for those who ask: what opens it, and the table.
    Table(String, TableView),
}

impl Write for Block {
    fn write(&self, out: &mut Writer) {
        let (name, value): (_, &dyn Write) = match self {
            Self::Heading(text) => ("heading", text),
            Self::Lead(text) => ("lead", text),
            Self::Text(text) => ("text", text),
            Self::List(lines) => ("list", lines),
            Self::Facts(facts) => ("facts", facts),
            Self::Lines(view) => ("lines", view),
            Self::Heat(view) => ("heat", view),
            Self::Table(summary, table) => {
                let table = Record(&[("summary", summary), ("table", table)]);
                return Record(&[("table", &table)]).write(out);
            }
        };
        Record(&[(name, value)]).write(out);
    }
}

impl Read for Block {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.variant()? {
            ("heading", text) => Read::read(&text).map(Self::Heading),
            ("lead", text) => Read::read(&text).map(Self::Lead),
            ("text", text) => Read::read(&text).map(Self::Text),
            ("list", lines) => Read::read(&lines).map(Self::List),
            ("facts", facts) => Read::read(&facts).map(Self::Facts),
            ("lines", view) => Read::read(&view).map(Self::Lines),
            ("heat", view) => Read::read(&view).map(Self::Heat),
            ("table", what) => Ok(Self::Table(what.get("summary")?, what.get("table")?)),
            (_, other) => Err(other.expected("a block")),
        }
    }
}

/// Without its drawing, which figures of a sheet have not.
impl Write for Fact {
    fn write(&self, out: &mut Writer) {
        Record(&[
            ("label", &self.label),
            ("value", &self.value),
            ("detail", &self.detail),
        ])
        .write(out);
    }
}

impl Read for Fact {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            label: from.get("label")?,
            value: from.get("value")?,
            detail: from.get("detail")?,
            icon: None,
        })
    }
}

record!(TableView {
    caption: "caption",
    heads: "heads",
    rows: "rows",
});

record!(HeatBarView {
    name: "name",
    parts: "parts",
    sentence: "sentence",
});

impl Write for HeatPart {
    fn write(&self, out: &mut Writer) {
        Record(&[
            ("label", &self.label),
            ("value", &self.value),
            ("look", &u32::try_from(self.look).unwrap_or_default()),
            ("share", &self.share),
        ])
        .write(out);
    }
}

impl Read for HeatPart {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            label: from.get("label")?,
            value: from.get("value")?,
            look: usize::try_from(from.get::<u32>("look")?).unwrap_or_default(),
            share: from.get("share")?,
        })
    }
}

names!(LineStyle {
    Store: "store",
    Pot: "pot",
    Air: "air",
    Measured: "measured",
    MeasuredPot: "measured_pot",
    Fitted: "fitted",
    Other: "other",
    First: "first",
    Second: "second",
    Third: "third",
    Fourth: "fourth",
    Fifth: "fifth",
});

record!(Mark {
    at: "at",
    label: "label",
});

/// Points of a line, which go as one list of numbers.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Points(pub Vec<(f64, f64)>);

impl Write for Points {
    fn write(&self, out: &mut Writer) {
        let numbers: Vec<f64> = self.0.iter().flat_map(|(x, y)| [*x, *y]).collect();
        numbers.write(out);
    }
}

impl Read for Points {
    fn read(from: &Node<'_>) -> Found<Self> {
        let numbers = Vec::<f64>::read(from)?;
        let pair = |pair: &[f64]| match pair {
            [x, y] => Some((*x, *y)),
            _ => None,
        };
        Ok(Self(numbers.chunks(2).filter_map(pair).collect()))
    }
}

/// There are no bands on a sheet.
impl Write for Series {
    fn write(&self, out: &mut Writer) {
        Record(&[
            ("label", &self.label),
            ("points", &Points(self.points.clone())),
            ("style", &self.style),
        ])
        .write(out);
    }
}

impl Read for Series {
    fn read(from: &Node<'_>) -> Found<Self> {
        let Points(points) = from.get("points")?;
        Ok(Self {
            label: from.get("label")?,
            points,
            band: Vec::new(),
            style: from.get("style")?,
        })
    }
}

impl Write for LineChartView {
    fn write(&self, out: &mut Writer) {
        let (summary, table) = &self.table;
        Record(&[
            ("name", &self.name),
            ("series", &self.series),
            ("levels", &self.levels),
            ("moments", &self.moments),
            ("x_ticks", &self.x_ticks),
            ("y_unit", &self.y_unit),
            ("sentence", &self.sentence),
            ("summary", summary),
            ("table", table),
        ])
        .write(out);
    }
}

impl Read for LineChartView {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            name: from.get("name")?,
            series: from.get("series")?,
            levels: from.get("levels")?,
            moments: from.get("moments")?,
            x_ticks: from.get("x_ticks")?,
            y_unit: from.get("y_unit")?,
            sentence: from.get("sentence")?,
            table: (from.get("summary")?, from.get("table")?),
        })
    }
}
