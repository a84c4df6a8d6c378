use super::*;

fn view(points: Vec<(f64, f64)>, level: f64) -> LineChartView {
    LineChartView {
        name: String::new(),
        series: vec![Series {
            label: String::new(),
            points,
            band: vec![(0.0, 90.0, 310.0)],
            style: LineStyle::Store,
        }],
        levels: vec![Mark {
            at: level,
            label: String::new(),
        }],
        moments: Vec::new(),
        x_ticks: Vec::new(),
        y_unit: String::new(),
        sentence: String::new(),
        table: Default::default(),
    }
}

#[test]
fn axes_hold_points_bands_and_levels() {
    let axes = view(vec![(0.0, 120.0), (6.0, 180.0)], 96.0)
        .axes()
        .expect("something to draw");
    assert!(axes.y_ticks.first() <= Some(&90.0));
    assert!(Some(&310.0) <= axes.y_ticks.last());
    assert!((axes.x.at(3.0) - 500.0).abs() < 1e-9);
}

#[test]
fn nothing_is_drawn_from_nothing() {
    assert!(view(Vec::new(), 96.0).axes().is_none());
}

#[test]
fn lanes_fall_away_from_the_side_with_the_words() {
    let start = |lane| Lane {
        side: "start",
        lane,
    };
    let end = |lane| Lane { side: "end", lane };
    assert_eq!(lanes(&[100.0, 200.0, 900.0]), [start(0), start(1), end(2)]);
    assert_eq!(lanes(&[500.0, 560.0, 700.0]), [end(2), end(1), end(0)]);
    assert!(lanes(&[]).is_empty());
}

#[test]
fn alike_lines_have_letters_and_strokes_of_their_own() {
    let letters = LineStyle::ALIKE.map(LineStyle::letter);
    assert_eq!(letters, ['A', 'B', 'C', 'D', 'E'].map(Some));
    let mut names = LineStyle::ALIKE.map(LineStyle::name).to_vec();
    names.dedup();
    assert_eq!(names.len(), 5);
    assert_eq!(LineStyle::Store.letter(), None);
}

#[test]
fn the_words_of_a_level_keep_clear_of_the_curves() {
    let seat = |points: Vec<(f64, f64)>| {
        let view = view(points, 200.0);
        let axes = view.axes().unwrap();
        level_seat(&view, &axes, axes.y.at(200.0))
    };
    let at = |side, lies| Seat { side, lies };
    // Just above the line at its end; at its end and its start; and nowhere near.
    assert_eq!(
        seat(vec![(0.0, 300.0), (6.0, 300.0), (10.0, 205.0)]),
        at("start", "above")
    );
    assert_eq!(seat(vec![(0.0, 205.0), (10.0, 205.0)]), at("end", "below"));
    assert_eq!(seat(vec![(0.0, 300.0), (10.0, 300.0)]), at("end", "above"));
    // A steep fall through the words has no point in them.
    assert_eq!(
        seat(vec![(0.0, 300.0), (7.0, 300.0), (10.0, 100.0)]),
        at("start", "above")
    );
}
