//! What is said of a text of readings.

use model::bench::readings::{Column, Readings, Remark, What};
use model::local_time::Day;

use super::Speech;
use super::plot::{Line, Of, plot};
use crate::bench::sheet::Block;
use crate::chart::LineStyle;
use crate::components::{Fact, TableView};
use crate::i18n::format::Sure;

/// Remarks that are said at once; the rest stand in the table.
const FIRST: usize = 3;
/// Remarks in the table: a phone draws as many at once. The rest are counted.
const MOST: usize = 500;
/// The first day of the calendar stands where a text has clock times and no date.
const NO_DATE: Day = Day(0);

/// The sheet of a text that was understood; `is_guess` where its columns were not named.
pub fn sheet(speech: &Speech, readings: &Readings, is_guess: bool) -> Vec<Block> {
    let words = &speech.report.text;
    let rows = speech.count(readings.rows.len());
    let span_s = readings.rows.last().map_or(0.0, |row| row.time_s);
    let span = speech.formats.duration(span_s, Sure::Known);
    let mut blocks = vec![
        Block::Heading(words.heading.to_owned()),
        Block::Lead((words.rows)(&rows, &span)),
    ];
    if is_guess {
        blocks.push(Block::Text(words.columns_guessed.to_owned()));
    }
    blocks.push(Block::Facts(form(speech, readings)));
    blocks.extend(lines(speech, readings).map(|view| Block::Lines(Box::new(view))));
    blocks.extend(remarks(speech, &readings.remarks));
    blocks
}

fn form(speech: &Speech, readings: &Readings) -> Vec<Fact> {
    let words = &speech.report.text;
    let form = &readings.form;
    let fact = |label: &str, value: &str| Fact {
        label: label.to_owned(),
        value: value.to_owned(),
        detail: String::new(),
        icon: None,
    };
    let (delimiter, name) = words.delimiter;
    let (decimal, point, comma) = words.decimal;
    let (header, there, none) = words.header;
    let mut facts = vec![
        fact(delimiter, name(form.delimiter)),
        fact(decimal, if form.decimal_comma { comma } else { point }),
        fact(header, if form.header { there } else { none }),
    ];
    if let Some(start) = readings.start {
        let when = if start.day() == NO_DATE {
            speech.formats.clock(start, Sure::Known)
        } else {
            speech.formats.instant(start, speech.now.day())
        };
        facts.push(fact(words.start, &when));
    }
    facts
}

fn lines(speech: &Speech, readings: &Readings) -> Option<crate::chart::LineChartView> {
    let words = &speech.report.text;
    let strings = speech.strings;
    let points = |column: Column| -> Vec<(f64, f64)> {
        let rows = readings.rows.iter();
        rows.filter_map(|row| Some((row.time_s, row.value(column)?)))
            .collect()
    };
    let range = |points: &[(f64, f64)]| {
        let values = || points.iter().map(|point| point.1);
        let ends = (values().reduce(f64::min)?, values().reduce(f64::max)?);
        let say = |celsius| speech.formats.temperature(celsius, Sure::Known);
        Some((say(ends.0), say(ends.1)))
    };
    let (store, pot) = (points(Column::Store), points(Column::Pot));
    let mut sentence = Vec::new();
    if let Some((low, high)) = range(&store) {
        sentence.push((words.plot_store)(&low, &high));
    }
    if let Some((low, high)) = range(&pot) {
        sentence.push((words.plot_pot)(&low, &high));
    }
    let line = |label, style, points| Line {
        label,
        style,
        points,
    };
    let lines = vec![
        line(strings.tonight.course.store, LineStyle::Store, store),
        line(strings.tonight.course.pot, LineStyle::Pot, pot),
        line(
            strings.bench.import.air,
            LineStyle::Air,
            points(Column::Air),
        ),
    ];
    plot(
        speech,
        words.plot,
        (Of::Temperatures, lines),
        sentence.join(" "),
    )
}

fn remarks(speech: &Speech, remarks: &[Remark]) -> Vec<Block> {
    let words = &speech.report.text;
    let mut blocks = vec![Block::Heading(words.remarks.to_owned())];
    if remarks.is_empty() {
        blocks.push(Block::Text(words.none.to_owned()));
        return blocks;
    }
    let place = |remark: &Remark| match (remark.line, remark.through) {
        (0, _) => words.whole.to_owned(),
        (line, through) if line == through => (words.line)(&line.to_string()),
        (line, through) => (words.lines)(&line.to_string(), &through.to_string()),
    };
    let row = |remark: &Remark| vec![place(remark), speech.remark(&remark.what)];
    blocks.push(Block::Text((words.count)(&speech.count(remarks.len()))));
    let first = remarks
        .iter()
        .take(FIRST)
        .map(|remark| row(remark).join(": "));
    let mut first: Vec<String> = first.collect();
    if FIRST < remarks.len() {
        first.push((words.more)(&speech.count(remarks.len() - FIRST)));
    }
    blocks.push(Block::List(first));
    if FIRST < remarks.len() {
        let mut rows: Vec<Vec<String>> = remarks.iter().take(MOST).map(row).collect();
        if MOST < remarks.len() {
            rows.push(vec![
                String::new(),
                (words.more)(&speech.count(remarks.len() - MOST)),
            ]);
        }
        let table = TableView {
            caption: words.remarks.to_owned(),
            heads: vec![words.line_head.to_owned(), words.what_head.to_owned()],
            rows,
        };
        blocks.push(Block::Table(words.all.to_owned(), table));
    }
    blocks
}

impl Speech {
    /// A remark in words, without the row that it is about.
    pub fn remark(&self, what: &What) -> String {
        (self.report.text.remark)(what, &|value| self.rough(value))
    }
}
