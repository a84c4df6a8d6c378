use proptest::prelude::*;

use super::*;

fn near(actual: f64, expected: f64) {
    assert!(
        (actual - expected).abs() < 1e-9,
        "{actual} is not {expected}"
    );
}

#[test]
fn ends_go_to_ends() {
    let scale = Scale::new((20.0, 300.0), (260.0, 0.0));
    near(scale.at(20.0), 260.0);
    near(scale.at(300.0), 0.0);
    near(scale.at(160.0), 130.0);
    near(scale.at_clamped(400.0), 0.0);
}

#[test]
fn a_single_value_lies_in_the_middle() {
    near(Scale::new((7.0, 7.0), (0.0, 100.0)).at(7.0), 50.0);
}

#[test]
fn range_skips_what_is_no_number() {
    assert_eq!(range([3.0, f64::NAN, -1.0]), Some((-1.0, 3.0)));
    assert_eq!(range([f64::NAN]), None);
}

#[test]
fn ticks_are_round() {
    assert_eq!(round_ticks(18.0, 262.0, 5), vec![0.0, 100.0, 200.0, 300.0]);
    assert_eq!(
        round_ticks(18.0, 262.0, 7),
        vec![0.0, 50.0, 100.0, 150.0, 200.0, 250.0, 300.0]
    );
    assert_eq!(
        round_ticks(0.1, 0.52, 4),
        vec![0.0, 0.2, 0.4, 0.6000000000000001]
    );
}

#[test]
fn labels_that_are_clear_stay() {
    assert_eq!(
        spread(&[10.0, 50.0, 90.0], 20.0, 100.0),
        vec![10.0, 50.0, 90.0]
    );
}

#[test]
fn labels_that_collide_share_the_shift() {
    let places = spread(&[50.0, 54.0], 20.0, 100.0);
    near(places[0], 42.0);
    near(places[1], 62.0);
}

#[test]
fn labels_at_the_end_stay_on_the_line() {
    assert_eq!(spread(&[100.0, 99.0], 20.0, 100.0), vec![100.0, 80.0]);
}

#[test]
fn crowded_labels_are_dropped() {
    assert_eq!(
        thinned(&[0.0, 5.0, 10.0, 12.0], 10.0),
        vec![true, false, true, false]
    );
}

proptest! {
    #[test]
    fn ticks_cover_the_range_and_are_few(
        lo in -500.0..500.0_f64, length in 0.01..2000.0_f64, most in 3_u32..9,
    ) {
        let hi = lo + length;
        let ticks = round_ticks(lo, hi, most);
        prop_assert!(2 <= ticks.len() && ticks.len() <= most as usize);
        let slack = 1e-6 * length.max(1.0);
        prop_assert!(ticks[0] <= lo + slack && hi <= ticks[ticks.len() - 1] + slack);
    }

    #[test]
    fn labels_never_overlap(
        wanted in prop::collection::vec(-20.0..120.0_f64, 1..7), gap in 1.0..30.0_f64,
    ) {
        let places = spread(&wanted, gap, 100.0);
        let fits = gap.min(100.0 / (wanted.len() - 1).max(1) as f64);
        let mut sorted = places.clone();
        sorted.sort_by(f64::total_cmp);
        for pair in sorted.windows(2) {
            prop_assert!(fits <= pair[1] - pair[0] + 1e-6);
        }
        prop_assert!(-1e-6 <= sorted[0] && sorted[sorted.len() - 1] <= 100.0 + 1e-6);
    }

    #[test]
    fn labels_keep_their_order(wanted in prop::collection::vec(0.0..100.0_f64, 2..7)) {
        let places = spread(&wanted, 12.0, 100.0);
        for first in 0..wanted.len() {
            for second in 0..wanted.len() {
                if wanted[first] < wanted[second] {
                    prop_assert!(places[first] < places[second]);
                }
            }
        }
    }
}
