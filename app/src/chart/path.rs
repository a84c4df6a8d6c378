//! From points on the screen to the text of an SVG path.

use std::fmt::Write as _;

/// A line through the points, broken where one is not a number.
pub fn line(points: impl IntoIterator<Item = (f64, f64)>) -> String {
    let mut path = String::new();
    let mut pen_down = false;
    for (x, y) in points {
        if x.is_finite() && y.is_finite() {
            push(&mut path, if pen_down { 'L' } else { 'M' }, x, y);
            pen_down = true;
        } else {
            pen_down = false;
        }
    }
    path
}

/// A closed shape between an upper and a lower edge, both from start to end.
///
/// A point where either edge is not a number is left out. Empty with fewer than two points left.
pub fn band(points: impl IntoIterator<Item = (f64, f64, f64)>) -> String {
    let points: Vec<_> = points
        .into_iter()
        .filter(|(x, lower, upper)| x.is_finite() && lower.is_finite() && upper.is_finite())
        .collect();
    if points.len() < 2 {
        return String::new();
    }
    let upper_edge = points.iter().map(|&(x, _, upper)| (x, upper));
    let lower_edge = points.iter().rev().map(|&(x, lower, _)| (x, lower));
    let mut path = line(upper_edge.chain(lower_edge));
    path.push('Z');
    path
}

/// A dot at each point: a line without length, which round ends make visible and which keeps its
/// shape however the drawing is stretched.
pub fn dots(points: impl IntoIterator<Item = (f64, f64)>) -> String {
    let mut path = String::new();
    for (x, y) in points {
        if x.is_finite() && y.is_finite() {
            push(&mut path, 'M', x, y);
            path.push_str("h0");
        }
    }
    path
}

/// Adds a command with its point, to a tenth of a unit: finer than a screen shows.
fn push(path: &mut String, command: char, x: f64, y: f64) {
    // Writing to a string can't fail.
    let _ = write!(path, "{command}{} {}", tenth(x), tenth(y));
}

fn tenth(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_breaks_where_a_point_is_missing() {
        let path = line([
            (0.0, 1.0),
            (2.0, 3.04),
            (f64::NAN, 0.0),
            (4.0, 5.0),
            (6.0, 7.0),
        ]);
        assert_eq!(path, "M0 1L2 3M4 5L6 7");
    }

    #[test]
    fn a_band_goes_out_on_top_and_back_below() {
        assert_eq!(
            band([(0.0, 9.0, 1.0), (5.0, 8.0, 2.0)]),
            "M0 1L5 2L5 8L0 9Z"
        );
        assert_eq!(band([(0.0, 9.0, 1.0), (5.0, f64::NAN, 2.0)]), "");
    }

    #[test]
    fn a_dot_has_no_length() {
        assert_eq!(dots([(1.25, 2.0)]), "M1.3 2h0");
    }
}
