//! Plots, drawn as real lines, each with a sentence that says the same.
//!
//! A plot's curves are stretched to the room there is, while its words are ordinary text beside
//! them: they grow with the reader's own text size, and are never stretched.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod day_bars;
mod heat_bar;
mod line_chart;
pub mod path;
pub mod scale;

pub use day_bars::{DayBar, DayBars, DayBarsView};
pub use heat_bar::{HeatBar, HeatBarView, HeatPart};
pub use line_chart::{LineChart, LineChartView, LineStyle, Mark, Series};
