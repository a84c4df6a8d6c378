//! What kept texts say, thinned to be drawn beside other runs.

use model::bench::readings::{self, Row};

use crate::bench::answer::{Curve, CurveLines};
use crate::bench::sheet::Points;
use crate::present::bench::plot::thinned;
use crate::state::bench::{KeptText, Text};

/// One curve for each text, in their order.
pub(super) fn curves(kept: Vec<KeptText>, texts: &[Text]) -> Vec<Curve> {
    let curve = |kept: KeptText| {
        let text = texts.iter().find(|text| text.key == kept.key);
        Curve {
            lines: text.and_then(|text| lines(&kept, &text.text)),
            text: kept,
        }
    };
    kept.into_iter().map(curve).collect()
}

fn lines(kept: &KeptText, text: &str) -> Option<CurveLines> {
    let rows = readings::read(text, &kept.hints).ok()?.rows;
    Some(CurveLines {
        store: line(&rows, |row| row.store_c),
        pot: line(&rows, |row| row.pot_c),
    })
}

fn line(rows: &[Row], read: fn(&Row) -> Option<f64>) -> Points {
    let first_s = rows.first().map_or(0.0, |row| row.time_s);
    let points: Vec<(f64, f64)> = rows
        .iter()
        .filter_map(|row| Some((row.time_s - first_s, read(row)?)))
        .collect();
    let rounded =
        |(time_s, value_c): (f64, f64)| (time_s.round(), (value_c * 100.0).round() / 100.0);
    Points(thinned(&points).into_iter().map(rounded).collect())
}
