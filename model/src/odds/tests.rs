//! Whole beliefs: what any diary must show.

use proptest::prelude::*;

use super::filter::effective;
use super::systematic::systematic;
use super::*;
use crate::cooker::{Cooker, SecondCharge};
use crate::dish::Dish;
use crate::jacket::{Jacket, LayeredJacket};
use crate::journal::{Event, Felt, Formerly, Journal, Meal, Outcome, What};
use crate::local_time::{Day, LocalTime};
use crate::place::{AirYear, Place};
use crate::pot::Lid;
use crate::presets::Preset;
use crate::sun::{DayLog, Sky};
use crate::tonight::{Help, Site};

pub(super) const TODAY: Day = Day(20_782);

pub(super) fn site() -> Site {
    let place = Place {
        latitude_deg: 11.0,
        longitude_deg: 38.0,
        altitude_m: 1500.0,
        utc_offset_min: 180,
    };
    let air = AirYear::guess(11.0, 1500.0).unwrap();
    Site { place, air }
}

fn cooker() -> Cooker {
    Preset::AluminiumInPerlite.cooker(200.0, 11.0)
}

fn few() -> Settings {
    Settings {
        members: 200,
        ..Settings::default()
    }
}

fn at(back: i32, hour: i64, minute: i64) -> LocalTime {
    TODAY.plus(-back).at_s(3600 * hour + 60 * minute)
}

fn under(sky: Sky, days: i32) -> Journal {
    let mut journal = Journal::default();
    for back in 0..days {
        let log = DayLog::Hourly([Some(sky); 24]);
        journal.skies.insert(TODAY.plus(-back), log);
    }
    journal
}

fn meal(back: i32, dish: Dish, litres: f64) -> Meal {
    Meal {
        dish,
        food_kg: 0.25 * litres,
        water_kg: 0.75 * litres,
        start_c: 20.0,
        pot: cooker().pot,
        lid: Lid::On,
        out: None,
        eat_at: at(back, 20, 0),
        outcome: Outcome::default(),
    }
}

fn told(journal: &mut Journal, when: LocalTime, what: What) {
    journal.events.push(Event { at: when, what });
    journal.events.sort_by_key(|event| event.at);
}

fn believe(journal: &Journal, now: LocalTime) -> Belief {
    Belief::replay(&site(), &cooker(), journal, now, &few()).unwrap()
}

fn a_week() -> Journal {
    let mut journal = under(Sky::Thin, 8);
    for back in 1..7 {
        let mut supper = meal(back, Dish::WhiteRice, 1.2);
        if back % 2 == 0 {
            supper.outcome.boiled_at = Some(at(back, 18, 40));
        }
        told(&mut journal, at(back, 18, 0), What::Meal(supper));
    }
    told(&mut journal, at(3, 17, 0), What::Reading { store_c: 185.0 });
    told(&mut journal, at(2, 7, 0), What::Felt(Felt::Hot));
    journal
}

#[test]
fn weights_sum_to_one_and_members_do_not_collapse() {
    let belief = believe(&a_week(), at(0, 17, 0));
    let sum: f64 = belief.ensemble.weight.iter().sum();
    assert!((sum - 1.0).abs() < 1e-12, "{sum}");
    assert!(few().members as f64 / 3.0 <= effective(&belief.ensemble.weight) + 1e-9);
    assert!((effective(&belief.ensemble.weight) - belief.store().effective_members).abs() < 1e-9);
}

#[test]
fn the_same_diary_has_the_same_answer_whatever_was_kept() {
    let mut journal = a_week();
    let mut replay = Replay::new(few());
    let now = at(0, 17, 0);
    // Opened on other days before, edited in the past, and back again.
    replay
        .belief(&site(), &cooker(), &journal, at(4, 12, 0))
        .unwrap();
    replay.belief(&site(), &cooker(), &journal, now).unwrap();
    let was = journal.clone();
    journal.skies.insert(TODAY.plus(-3), DayLog::SunHours(2.0));
    told(&mut journal, at(5, 12, 0), What::LidOpen { for_s: 1800 });
    for journal in [&journal, &was] {
        let kept = replay.belief(&site(), &cooker(), journal, now).unwrap();
        let anew = believe(journal, now);
        assert_eq!(kept.store(), anew.store());
        assert_eq!(kept.learned(), anew.learned());
        assert_eq!(kept.doubts(), anew.doubts());
        let supper = meal(0, Dish::CommonBeansSoaked, 1.0);
        assert_eq!(
            kept.ask(&supper, at(0, 18, 0)),
            anew.ask(&supper, at(0, 18, 0))
        );
    }
    let edited = replay.belief(&site(), &cooker(), &journal, now).unwrap();
    assert!(edited.store() != believe(&was, now).store());
}

#[test]
fn what_was_put_away_is_taken_up_again() {
    let mut journal = a_week();
    told(&mut journal, at(4, 16, 0), What::Reading { store_c: 3.0 });
    if let Some(What::Meal(meal)) = journal.events.first_mut().map(|event| &mut event.what) {
        meal.outcome.boiled_at = Some(at(6, 18, 1));
    }
    let now = at(0, 17, 0);
    let mut first = Replay::new(few());
    let belief = first.belief(&site(), &cooker(), &journal, now).unwrap();
    assert!(!belief.doubts().is_empty());
    let bytes = first.kept().unwrap();
    assert!(bytes.len() < 250 * few().members);
    let mut again = Replay::restored(few(), &bytes);
    assert_eq!(again.marks.len(), 1);
    let taken_up = again.belief(&site(), &cooker(), &journal, now).unwrap();
    assert_eq!(taken_up.store(), belief.store());
    assert_eq!(taken_up.learned(), belief.learned());
    assert_eq!(taken_up.doubts(), belief.doubts());
    // Another diary has nothing of it, and broken bytes are none.
    journal.skies.insert(TODAY.plus(-5), DayLog::SunHours(1.0));
    let mut other = Replay::restored(few(), &bytes);
    let walked = other.belief(&site(), &cooker(), &journal, now).unwrap();
    assert_eq!(walked.store(), believe(&journal, now).store());
    for broken in [&bytes[..bytes.len() - 8], &bytes[1..], &[], &[0; 64]] {
        assert!(Replay::restored(few(), broken).marks.is_empty());
    }
}

#[test]
fn a_reading_is_believed_and_narrows_the_store() {
    let before = believe(&under(Sky::Patchy, 3), at(0, 17, 0))
        .store()
        .store_c;
    let mut journal = under(Sky::Patchy, 3);
    let read_c = before.p75;
    told(
        &mut journal,
        at(0, 17, 0),
        What::Reading { store_c: read_c },
    );
    let after = believe(&journal, at(0, 17, 0)).store().store_c;
    assert!((after.p50 - read_c).abs() < 4.0, "{before:?} {after:?}");
    assert!(
        after.p90 - after.p10 < 0.5 * (before.p90 - before.p10),
        "{before:?} {after:?}"
    );
}

#[test]
fn an_impossible_reading_is_kept_as_a_doubt_and_not_swallowed() {
    let plain = believe(&under(Sky::Clear, 4), at(0, 17, 0));
    let mut journal = under(Sky::Clear, 4);
    told(&mut journal, at(0, 16, 0), What::Reading { store_c: 12.0 });
    let told = believe(&journal, at(0, 17, 0));
    assert!(plain.doubts().is_empty());
    let [doubt] = told.doubts() else {
        panic!("{:?}", told.doubts())
    };
    assert_eq!(doubt.report, Report::Reading { store_c: 12.0 });
    assert!(matches!(doubt.believed, Believed::StoreC(band) if 100.0 < band.p50));
    let moved_k = told.store().store_c.p50 - plain.store().store_c.p50;
    assert!(moved_k.abs() < 15.0, "{moved_k}");
}

#[test]
fn a_hand_on_the_store_tells_cold_from_hot() {
    let journal = Journal::default();
    let unknown = believe(&journal, at(0, 8, 0)).store().store_c;
    let felt = |felt| {
        let mut journal = journal.clone();
        told(&mut journal, at(0, 7, 0), What::Felt(felt));
        believe(&journal, at(0, 8, 0)).store().store_c
    };
    assert!(felt(Felt::Cold).p90 < unknown.p90);
    assert!(unknown.p50 < felt(Felt::Hot).p50);
}

/// A boil that took twice as long as usual, and two weeks of pots of which nothing was told: the seat is
/// learned to be worse and is held to be so still, if less; the sky is not blamed.
#[test]
fn what_pots_tell_is_learned_of_the_cooker() {
    let mut journal = under(Sky::Clear, 15);
    for back in 1..15 {
        let water = meal(back, Dish::TeaWater, 1.5);
        let odds = believe(&journal, at(back, 17, 59)).ask(&water, at(back, 18, 0));
        let usual = odds.boils_at.p50.unwrap();
        let mut outcome = Outcome::default();
        if back == 14 {
            let took_s = 2 * usual.since_s(at(back, 18, 0));
            outcome.boiled_at = Some(at(back, 18, 0).plus_s(took_s));
        }
        told(
            &mut journal,
            at(back, 18, 0),
            What::Meal(Meal { outcome, ..water }),
        );
    }
    let all = Settings::default();
    let belief = Belief::replay(&site(), &cooker(), &journal, at(0, 12, 0), &all).unwrap();
    let learned = belief.learned();
    let contact = learned[Multiplier::Contact.index()];
    assert!(contact.now.p50 < 0.97 * contact.prior.p50, "{contact:?}");
    for learned in learned {
        let prior = learned.prior.p90 - learned.prior.p10;
        assert!(
            learned.now.p90 - learned.now.p10 < 1.25 * prior,
            "{learned:?}"
        );
    }
}

#[test]
fn a_pot_that_has_not_boiled_makes_the_rest_later() {
    let mut journal = under(Sky::Clear, 3);
    let water = meal(0, Dish::TeaWater, 1.5);
    told(&mut journal, at(0, 18, 0), What::Meal(water.clone()));
    let put_in = at(0, 18, 0);
    let first = believe(&journal, put_in.plus_s(60)).running().unwrap();
    let usual = first.boils_at.p50.unwrap();
    let late = usual.plus_s(600);
    if let Some(What::Meal(meal)) = journal.events.last_mut().map(|event| &mut event.what) {
        meal.outcome.not_boiled_by = Some(late);
    }
    let later = believe(&journal, late).running().unwrap();
    let is_later = later.boils_at.p50.is_none_or(|later| usual < later);
    assert!(is_later, "{first:?} {later:?}");
    assert!(believe(&journal, late).store().pot_is_in);
}

#[test]
fn a_new_jacket_starts_the_loss_anew_and_nothing_else() {
    let mut journal = a_week();
    let old = cooker();
    let mut new = old.clone();
    if let Jacket::Layers(LayeredJacket { layers, .. }) = &mut new.jacket {
        layers[0].thickness_m += 0.06;
    }
    let before = Belief::replay(&site(), &old, &journal, at(0, 8, 0), &few()).unwrap();
    journal.formerly.push(Formerly {
        until: at(0, 8, 0),
        cooker: old,
    });
    let after = Belief::replay(&site(), &new, &journal, at(0, 8, 0), &few()).unwrap();
    for (before, after) in before.learned().into_iter().zip(after.learned()) {
        let same = before.now == after.now;
        assert_eq!(same, before.multiplier != Multiplier::Loss, "{before:?}");
    }
    let moved_k = before.store().store_c.p50 - after.store().store_c.p50;
    assert!(moved_k.abs() < 0.05, "{moved_k}");
}

#[test]
fn nothing_told_is_wide_and_still_answers() {
    let belief = believe(&Journal::default(), at(0, 17, 0));
    let store = belief.store();
    assert!(60.0 < store.store_c.p95 - store.store_c.p05);
    assert!((0.0..=1.0).contains(&store.full_share.p50));
    let odds = belief.ask(&meal(0, Dish::WhiteRice, 1.0), at(0, 18, 0));
    assert!((0.0..=1.0).contains(&odds.p_boil));
}

#[test]
fn breakfast_comes_after_supper() {
    let belief = believe(&under(Sky::Clear, 3), at(0, 17, 0));
    let supper = meal(0, Dish::WhiteRice, 1.5);
    let breakfast = Meal {
        eat_at: at(-1, 7, 30),
        ..meal(0, Dish::TeaWater, 0.5)
    };
    let put_in = at(-1, 7, 0);
    let with = belief.after(&supper, at(0, 18, 0)).ask(&breakfast, put_in);
    let without = belief.ask(&breakfast, put_in);
    assert!(with.p_boil <= without.p_boil);
    assert!(with.store_before_c.p50 < without.store_before_c.p50 - 5.0);
}

#[test]
fn what_is_offered_helps_and_is_solved_for() {
    let belief = believe(&under(Sky::Patchy, 3), at(0, 17, 0));
    let put_in = at(0, 18, 30);
    let large = meal(0, Dish::WhiteRice, 2.0);
    let before = belief.ask(&large, put_in);
    let found = belief.help(&large, put_in);
    assert!(
        before.p_done < 0.9 && !found.is_empty() && found.len() <= 3,
        "{found:?}"
    );
    for improvement in &found {
        assert!(before.p_done < improvement.p_done, "{found:?}");
    }
    // Nor is it told with the figure that is told without.
    for percent in 5..=14 {
        let p_done = before.p_done + f64::from(percent) / 100.0;
        let help = Help::LidOn;
        let offered = belief.best(&large, put_in, vec![Improvement { help, p_done }]);
        let is_another = Chance::new(p_done).n_in_m() != before.ready().n_in_m();
        assert_eq!(
            offered.len(),
            usize::from(is_another),
            "{percent} on {before:?}"
        );
    }
    let small = meal(0, Dish::TeaWater, 0.3);
    let sunny = believe(&under(Sky::Clear, 3), at(0, 17, 0));
    let easy = sunny.ask(&small, put_in);
    assert!(0.9 <= easy.p_done, "{easy:?}");
    assert!(sunny.help(&small, put_in).is_empty());
    // With less it is as good as was said.
    let most = belief.most(&large, put_in);
    if let Some(times) = most {
        let mut less = large.clone();
        less.food_kg *= times;
        less.water_kg *= times;
        assert!(0.85 <= belief.ask(&less, put_in).p_done);
    }
    let less = found.iter().find_map(|found| match found.help {
        Help::Less { share } => Some(share),
        _ => None,
    });
    assert!(less.is_none_or(|share| (0.29..1.0).contains(&share)));
}

#[test]
fn a_second_charge_is_offered_for_as_long_as_it_takes() {
    let second = SecondCharge {
        power_w: 500.0,
        share: 0.95,
    };
    let (now, put_in) = (at(0, 17, 0), at(0, 18, 30));
    let large = meal(0, Dish::WhiteRice, 1.5);
    let charged = |second| {
        let mut cooker = cooker();
        cooker.charging.second = second;
        Belief::replay(&site(), &cooker, &under(Sky::Grey, 3), now, &few()).unwrap()
    };
    let offered = |belief: &Belief| {
        let all = (0..KINDS_OF_HELP).filter_map(|kind| belief.improvement(&large, put_in, kind));
        all.into_iter()
            .find(|found| matches!(found.help, Help::TopUp { .. }))
    };
    assert_eq!(offered(&charged(None)), None);
    let belief = charged(Some(second));
    assert!(belief.ask(&large, put_in).p_done < 0.5);
    let found = offered(&belief).unwrap();
    let Help::TopUp { heat_w, for_s } = found.help else {
        panic!("{found:?}")
    };
    assert!(
        0.85 <= found.p_done && (heat_w - second.heat_w()).abs() < 1e-9,
        "{found:?}"
    );
    // Less is not enough; and what is told is what comes of it once it is logged.
    let logged = |for_s| {
        let mut journal = under(Sky::Grey, 3);
        told(&mut journal, now, What::TopUp { heat_w, for_s });
        let mut cooker = cooker();
        cooker.charging.second = Some(second);
        let belief = Belief::replay(&site(), &cooker, &journal, now, &few()).unwrap();
        belief.ask(&large, put_in).p_done
    };
    assert!((logged(for_s) - found.p_done).abs() < 1e-9);
    assert!(logged(for_s - 900) < 0.9);
}

#[test]
fn the_latest_time_is_good_and_a_later_one_is_not() {
    let belief = believe(&under(Sky::Clear, 4), at(0, 17, 0));
    let supper = meal(0, Dish::WhiteRice, 1.0);
    let latest = belief.latest_put_in(&supper).unwrap();
    assert!(0.85 <= belief.ask(&supper, latest).p_done);
    assert!(belief.ask(&supper, latest.plus_s(1200)).p_done < 0.95);
    let hopeless = meal(0, Dish::CommonBeansUnsoaked, 2.2);
    let dark = believe(&under(Sky::Dark, 4), at(0, 17, 0));
    assert_eq!(dark.latest_put_in(&hopeless), None);
}

#[test]
fn a_reading_is_worth_most_where_nobody_knows() {
    let belief = believe(&under(Sky::Patchy, 3), at(0, 17, 0));
    let litres = |litres: f64| {
        let meal = meal(0, Dish::TeaWater, litres);
        let odds = belief.ask(&meal, at(0, 18, 0));
        (odds.p_done, belief.reading_worth(&meal, at(0, 18, 0)))
    };
    let unsure = (4..40)
        .map(|tenth| litres(0.1 * f64::from(tenth)))
        .min_by(|a, b| (a.0 - 0.5).abs().total_cmp(&(b.0 - 0.5).abs()))
        .unwrap();
    let (p_done, worth) = unsure;
    assert!((0.2..0.8).contains(&p_done), "{unsure:?}");
    assert!((worth.p_now - p_done).abs() < 1e-12);
    assert!(worth.doubt_left < 0.8 && 0.2 < worth.decides, "{worth:?}");
    let mean = 0.5 * (worth.p_after.p25 + worth.p_after.p75);
    assert!((0.0..=1.0).contains(&mean));
}

fn skies() -> impl Strategy<Value = (Sky, Sky)> {
    (0..5_usize, 0..5_usize).prop_map(|(a, b)| (Sky::ALL[a.min(b)], Sky::ALL[a.max(b)]))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// More sun never lowers the chance to boil: chance is common to both.
    #[test]
    fn more_sun_never_lowers_the_chance(
        (bright, dark) in skies(), litres in 0.3..2.2_f64, days in 1..4_i32,
    ) {
        let odds = |sky| {
            let belief = believe(&under(sky, days), at(0, 18, 30));
            belief.ask(&meal(0, Dish::TeaWater, litres), at(0, 18, 30))
        };
        let (bright, dark) = (odds(bright), odds(dark));
        // Skies differ in their spread too: a member in the bright tail of a dull sky may pass.
        prop_assert!(dark.p_boil <= bright.p_boil + 0.03, "{} {}", dark.p_boil, bright.p_boil);
    }

    /// Every band is in order and every probability one.
    #[test]
    fn bands_are_in_order(
        (sky, _) in skies(), litres in 0.2..2.2_f64, hour in 10..20_i64,
        dish in prop_oneof![Just(Dish::WhiteRice), Just(Dish::RedKidneyBeansSoaked), Just(Dish::TeaWater)],
        read_c in proptest::option::of(20.0..280.0_f64),
    ) {
        let mut journal = under(sky, 2);
        if let Some(store_c) = read_c {
            told(&mut journal, at(0, 9, 0), What::Reading { store_c });
        }
        let belief = believe(&journal, at(0, hour, 0));
        let odds = belief.ask(&meal(0, dish, litres), at(0, hour, 10));
        for p in [odds.p_boil, odds.p_done, odds.p_dry] {
            prop_assert!((0.0..=1.0 + 1e-9).contains(&p));
        }
        prop_assert!(odds.p_done <= odds.p_boil + 1e-9 || dish != Dish::RedKidneyBeansSoaked);
        for band in [odds.boiled_away_kg, odds.store_before_c, odds.store_after_c, belief.store().litres] {
            for pair in band.quantiles().windows(2) {
                prop_assert!(pair[0] <= pair[1], "{band:?}");
            }
        }
        for band in [odds.boils_at, odds.ready_at] {
            let times = band.quantiles().map(|at| at.map_or(i64::MAX, |at| at.0));
            prop_assert!(times.is_sorted(), "{band:?}");
        }
    }
}

proptest! {
    /// Systematic resampling takes each member as often as its weight says, to within one, and on
    /// average exactly.
    #[test]
    fn resampling_is_unbiased(weight in proptest::collection::vec(0.0..1.0_f64, 3..40)) {
        let whole: f64 = weight.iter().sum();
        prop_assume!(0.1 < whole);
        let starts = 400_u32;
        let mut taken = vec![0.0; weight.len()];
        for n in 0..starts {
            let start = (f64::from(n) + 0.5) / f64::from(starts);
            let of = systematic(&weight, 50, start);
            prop_assert!(of.is_sorted() && of.len() == 50);
            for member in of {
                taken[member] += 1.0 / f64::from(starts);
            }
        }
        for (taken, weight) in taken.iter().zip(&weight) {
            prop_assert!((taken - 50.0 * weight / whole).abs() < 0.02, "{taken} {weight}");
        }
    }
}
