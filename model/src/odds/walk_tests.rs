//! A diary walked in parts, and the way of an evening.

use std::collections::BTreeSet;

use proptest::prelude::*;

use super::tests::site;
use super::{Belief, KINDS_OF_HELP, Replay, Settings, Trials};
use crate::dish::Dish;
use crate::journal::{Event, Journal, Meal, Outcome, What};
use crate::local_time::{Day, LocalTime};
use crate::pot::Lid;
use crate::presets::Preset;
use crate::sun::{DayLog, Sky};
use crate::tonight::Help;

const TODAY: Day = Day(20_000);

fn settings() -> Settings {
    Settings {
        members: 32,
        ..Settings::default()
    }
}

fn supper(day: Day, boiled: bool) -> Meal {
    Meal {
        dish: Dish::WhiteRice,
        food_kg: 0.3,
        water_kg: 0.55,
        start_c: 20.0,
        pot: Preset::AluminiumInPerlite.cooker(200.0, 11.0).pot,
        lid: Lid::On,
        out: None,
        eat_at: day.at_s(20 * 3600),
        outcome: Outcome {
            boiled_at: boiled.then(|| day.at_s(18 * 3600 + 1500)),
            ..Outcome::default()
        },
    }
}

fn diary(days: i32) -> Journal {
    let mut journal = Journal::default();
    for back in (0..days).rev() {
        let day = TODAY.plus(-back);
        let log = DayLog::Hourly([Some(Sky::Clear); 24]);
        journal.skies.insert(day, log);
        if 0 < back {
            journal.events.push(Event {
                at: day.at_s(18 * 3600),
                what: What::Meal(supper(day, back % 2 == 0)),
            });
        }
    }
    journal
}

fn now() -> LocalTime {
    TODAY.at_s(17 * 3600)
}

#[test]
fn a_diary_walked_in_parts_ends_as_one_walked_at_once() {
    let (site, journal) = (site(), diary(40));
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    let whole = Belief::replay(&site, &cooker, &journal, now(), &settings()).unwrap();
    let mut replay = Replay::new(settings());
    let mut left = i32::MAX;
    while 0 < left {
        let before = left;
        left = replay.walk_on(&site, &cooker, &journal, now(), 3).unwrap();
        assert!(left < before);
    }
    let parts = replay.belief(&site, &cooker, &journal, now()).unwrap();
    assert_eq!(parts.store(), whole.store());
    assert_eq!(parts.learned(), whole.learned());
    // What was changed today is today's only.
    let mut journal = journal;
    journal.skies.insert(TODAY, DayLog::SunHours(3.0));
    let left = replay.walk_on(&site, &cooker, &journal, now(), 0).unwrap();
    assert_eq!(left, 0);
    journal.skies.insert(TODAY.plus(-5), DayLog::SunHours(3.0));
    let left = replay.walk_on(&site, &cooker, &journal, now(), 0).unwrap();
    assert_eq!(left, 5);
}

/// What is told by then.
type Change<'a> = &'a dyn Fn(&mut Journal);

/// Minute by minute, with reports of now and corrections of this morning, a pot of last night that is
/// still in, and one of today.
#[test]
fn what_is_kept_within_today_changes_no_answer() {
    let site = site();
    for (days, preset) in [
        (0, Preset::AluminiumInPerlite),
        (3, Preset::AluminiumInPerlite),
        (2, Preset::SandInPerlite),
    ] {
        let cooker = preset.cooker(200.0, 11.0);
        let mut journal = diary(days);
        let mut replay = Replay::new(settings());
        let reading = |hour: i64, store_c| Event {
            at: TODAY.at_s(3600 * hour),
            what: What::Reading { store_c },
        };
        let tell = |journal: &mut Journal, event: Event| {
            let place = journal.events.partition_point(|other| other.at <= event.at);
            journal.events.insert(place, event);
        };
        let steps: [(i64, Change<'_>); 10] = [
            (9 * 60, &|_| ()),
            (12 * 60 + 7, &|_| ()),
            (12 * 60 + 8, &|_| ()),
            (13 * 60, &|journal| tell(journal, reading(13, 150.0))),
            (14 * 60 + 1, &|_| ()),
            (14 * 60 + 2, &|journal| tell(journal, reading(11, 120.0))),
            (15 * 60, &|journal| {
                journal.skies.insert(TODAY, DayLog::SunHours(5.0));
            }),
            (15 * 60 + 1, &|journal| {
                let what = What::HeaterOff { for_s: 3600 };
                let at = TODAY.at_s(3600 * 10);
                tell(journal, Event { at, what });
            }),
            (18 * 60 + 20, &|journal| {
                let what = What::Meal(supper(TODAY, true));
                let at = TODAY.at_s(3600 * 17);
                tell(journal, Event { at, what });
            }),
            (21 * 60, &|_| ()),
        ];
        for (minute, change) in steps {
            change(&mut journal);
            let now = TODAY.at_s(60 * minute);
            let kept = replay.belief(&site, &cooker, &journal, now).unwrap();
            let fresh = Belief::replay(&site, &cooker, &journal, now, &settings()).unwrap();
            assert_eq!(kept.store(), fresh.store(), "{days} days, minute {minute}");
            assert_eq!(kept.learned(), fresh.learned());
            assert_eq!(kept.doubts(), fresh.doubts());
        }
    }
}

#[test]
fn the_way_of_an_evening_begins_at_the_store_and_has_a_pot_while_one_is_in() {
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    let belief = Belief::replay(&site(), &cooker, &diary(3), now(), &settings()).unwrap();
    let put_in = now().plus_s(3600);
    let times = (0..9).map(|n| now().plus_s(n * 1800));
    let course = belief.course(&supper(TODAY, false), put_in, times);
    assert_eq!(course.len(), 9);
    let has_pot: Vec<bool> = course.iter().map(|one| one.pot_c.is_some()).collect();
    let expected = [false, false, true, true, true, true, true, false, false];
    assert_eq!(has_pot, expected);
    let first = belief.store().store_c.p50;
    assert!((course[0].store_c.p50 - first).abs() < 10.0);
    for one in course {
        let quantiles = one.store_c.quantiles();
        assert!(quantiles.windows(2).all(|pair| pair[0] <= pair[1]));
    }
}

#[test]
fn the_way_of_a_running_pot_begins_where_it_is() {
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    let mut journal = diary(3);
    let put_in = TODAY.at_s(18 * 3600);
    journal.events.push(Event {
        at: put_in,
        what: What::Meal(supper(TODAY, false)),
    });
    let now = put_in.plus_s(120);
    let belief = Belief::replay(&site(), &cooker, &journal, now, &settings()).unwrap();
    let times = || (0..4).map(|n| now.plus_s(n * 3600));
    let course = belief.running_course(times());
    let has_pot: Vec<bool> = course.iter().map(|one| one.pot_c.is_some()).collect();
    assert_eq!(has_pot, [true, true, false, false]);
    let first = belief.store().store_c.p50;
    assert!((course[0].store_c.p50 - first).abs() < 10.0);
    let pot = |place: usize| course[place].pot_c.map(|pot_c| pot_c.p50);
    assert!(pot(0) < pot(1), "{course:?}");
    let none = Belief::replay(&site(), &cooker, &diary(3), now, &settings()).unwrap();
    assert!(none.running_course(times()).is_empty());
}

/// What is advised for the pot stays what it is while the clock goes on.
#[test]
fn an_earlier_time_is_round_and_the_latest_that_does() {
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    let mut supper = supper(TODAY, false);
    supper.eat_at = TODAY.at_s(19 * 3600 + 600);
    let put_in = TODAY.at_s(19 * 3600);
    let mut told = Vec::new();
    for minute in 0..4 {
        let now = now().plus_s(60 * minute);
        let belief = Belief::replay(&site(), &cooker, &diary(3), now, &settings()).unwrap();
        let latest = belief.latest_put_in(&supper).unwrap();
        let help = belief.improvement(&supper, put_in, 2).unwrap().help;
        let Help::EarlierIn { put_in } = help else {
            panic!("{help:?}");
        };
        assert_eq!(put_in.0.rem_euclid(300), 0);
        assert!(
            (0..300).contains(&latest.since_s(put_in)),
            "{latest:?} {put_in:?}"
        );
        told.push(put_in);
    }
    let apart_s = told
        .iter()
        .max()
        .unwrap()
        .since_s(*told.iter().min().unwrap());
    assert!(apart_s <= 300, "{told:?}");
}

/// No heater leads there, and nothing cools below the air: it is asked about like any other that does
/// not fit, and the store stays what the cooker can be.
#[test]
fn a_first_reading_of_what_cannot_be_is_doubted() {
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    let cold = Belief::replay(&site(), &cooker, &Journal::default(), now(), &settings()).unwrap();
    for store_c in [600.0, -15.0] {
        let mut journal = Journal::default();
        journal.events.push(Event {
            at: now().plus_s(-1800),
            what: What::Reading { store_c },
        });
        let belief = Belief::replay(&site(), &cooker, &journal, now(), &settings()).unwrap();
        assert_eq!(belief.doubts().len(), 1, "{store_c}");
        let off_k = belief.store().store_c.p50 - cold.store().store_c.p50;
        assert!(off_k.abs() < 30.0, "{store_c}: {off_k}");
    }
}

#[test]
fn a_first_reading_is_believed_however_hot() {
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    for store_c in [30.0, 120.0, 240.0, 280.0] {
        let mut journal = Journal::default();
        journal.events.push(Event {
            at: now().plus_s(-1800),
            what: What::Reading { store_c },
        });
        let belief = Belief::replay(&site(), &cooker, &journal, now(), &settings()).unwrap();
        let store = belief.store().store_c;
        assert!((store.p50 - store_c).abs() < 20.0, "{store_c}: {store:?}");
        assert!(belief.doubts().is_empty());
        // As well on the morrow.
        let later = now().plus_s(86_400);
        let walked = Belief::replay(&site(), &cooker, &journal, later, &settings()).unwrap();
        assert!(walked.doubts().is_empty());
    }
}

/// A change of a diary: of a day so many back, of one of four kinds. No two touch the same thing.
type Edit = (i32, u8);

fn edited(journal: &mut Journal, (back, kind): Edit) {
    let day = TODAY.plus(-back);
    let mut insert = |at: LocalTime, what: What| {
        let place = journal.events.partition_point(|event| event.at <= at);
        journal.events.insert(place, Event { at, what });
    };
    match kind {
        0 => insert(day.at_s(15 * 3600), What::Reading { store_c: 150.0 }),
        1 => insert(day.at_s(8 * 3600), What::LidOpen { for_s: 900 }),
        2 => {
            journal.skies.insert(day, DayLog::SunHours(4.5));
        }
        _ => journal
            .events
            .retain(|event| event.at.day() != day || event.at.hour() != 18),
    }
}

/// All that is told of a belief, to the last digit.
fn told(belief: &Belief) -> String {
    let supper = supper(TODAY, false);
    let odds = belief.ask(&supper, now().plus_s(3600));
    format!(
        "{:?} {:?} {:?} {odds:?}",
        belief.store(),
        belief.learned(),
        belief.doubts()
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    /// The same diary, the same answer: in whichever order it came about, and whatever was asked and
    /// put away on the way.
    #[test]
    fn an_answer_hangs_on_the_diary_alone(
        edits in proptest::collection::btree_set((0..12_i32, 0..4_u8), 1..7),
        later in 0..7_usize, kind in 0..3_usize,
    ) {
        let presets =
            [Preset::SoapstoneInVermiculite, Preset::ErythritolInGlassWool, Preset::NitrateCarried];
        let (site, cooker) = (site(), presets[kind].cooker(200.0, 11.0));
        let mut whole = diary(15);
        for edit in &edits {
            edited(&mut whole, *edit);
        }
        let cold = Belief::replay(&site, &cooker, &whole, now(), &settings()).unwrap();
        let edits: Vec<Edit> = BTreeSet::into_iter(edits).collect();
        let (first, last) = edits.split_at(later.min(edits.len()));
        for order in [
            edits.iter().rev().copied().collect::<Vec<_>>(),
            last.iter().chain(first).copied().collect(),
        ] {
            let mut replay = Replay::new(settings());
            let mut journal = diary(15);
            replay.belief(&site, &cooker, &journal, now()).unwrap();
            for edit in order {
                edited(&mut journal, edit);
                replay.belief(&site, &cooker, &journal, now()).unwrap();
            }
            let walked = replay.belief(&site, &cooker, &journal, now()).unwrap();
            prop_assert_eq!(told(&walked), told(&cold));
            let bytes = replay.kept().unwrap();
            let mut restored = Replay::restored(settings(), &bytes);
            let restored = restored.belief(&site, &cooker, &journal, now()).unwrap();
            prop_assert_eq!(told(&restored), told(&cold));
        }
    }
}

/// Whatever was asked before, the way to a pot is kept and the answer is the same, to the last digit.
#[test]
fn what_was_carried_for_another_question_changes_no_answer() {
    for preset in [
        Preset::AluminiumInPerlite,
        Preset::SandInPerlite,
        Preset::NitrateCarried,
    ] {
        let cooker = preset.cooker(200.0, 11.0);
        let mut journal = diary(3);
        journal.events.push(Event {
            at: now().plus_s(-600),
            what: What::Meal(supper(TODAY, false)),
        });
        let at = now().plus_s(420);
        let belief = Belief::replay(&site(), &cooker, &journal, at, &settings()).unwrap();
        let tomorrow = supper(TODAY.plus(1), false);
        let mut small = tomorrow.clone();
        small.water_kg = 0.2;
        // Later and earlier, at whole hours and between them, twice the same.
        for minutes in [0, 1500, 61, 1440, 1403, 1500, 1403, 1501, 20] {
            let put_in = at.plus_s(60 * minutes);
            for meal in [&tomorrow, &small] {
                let fresh = belief.clone();
                assert_eq!(belief.ask(meal, put_in), fresh.ask(meal, put_in));
                let times = || (0..9).map(|n| at.plus_s(n * 9000));
                let kept = belief.course(meal, put_in, times());
                assert_eq!(
                    format!("{kept:?}"),
                    format!("{:?}", fresh.course(meal, put_in, times()))
                );
            }
            let mut direct = belief.ensemble.clone();
            let running = belief.pot.as_ref().map(|pot| &*pot.load);
            belief.carry(&mut direct, running, false, put_in);
            assert_eq!(
                format!("{:?}", belief.at_later(put_in)),
                format!("{direct:?}")
            );
        }
    }
}

/// All members asked part by part come to the same as all at once, to the last digit.
#[test]
fn the_odds_are_the_same_part_by_part() {
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    let mut journal = diary(3);
    // Weights that differ.
    let read = What::Reading { store_c: 190.0 };
    journal.events.push(Event {
        at: now().plus_s(-600),
        what: read,
    });
    let belief = Belief::replay(&site(), &cooker, &journal, now(), &settings()).unwrap();
    for water_kg in [0.5, 1.3, 2.2] {
        let mut meal = supper(TODAY, false);
        meal.water_kg = water_kg;
        let put_in = now().plus_s(3600);
        let whole = belief.ask(&meal, put_in).p_done;
        let parts = [0..5, 5..6, 6..31, 31..32];
        let sum = |sum, part| belief.add_done(sum, (&meal, put_in), &part);
        let added: f64 = parts.into_iter().fold(0.0, sum);
        assert_eq!(
            added.to_bits() << 1,
            whole.to_bits() << 1,
            "{added} {whole}"
        );
    }
}

/// A search in bits ends as one that is worked out at once, and each bit tries but one plan.
#[test]
fn a_search_in_bits_finds_the_same() {
    let cooker = Preset::AluminiumAndGrid.cooker(200.0, 11.0);
    let mut journal = diary(3);
    for back in 0..3 {
        let log = DayLog::SunHours(3.0);
        journal.skies.insert(TODAY.plus(-back), log);
    }
    let belief = Belief::replay(&site(), &cooker, &journal, now(), &settings()).unwrap();
    let mut large = supper(TODAY, false);
    (large.food_kg, large.water_kg) = (1.2, 2.0);
    let put_in = now().plus_s(3600);
    fn in_bits<T>(mut bit: impl FnMut(&Trials) -> T) -> (T, usize) {
        let trials = Trials::default();
        let mut bits = 1;
        loop {
            if let Some(found) = trials.bit(&mut bit) {
                return (found, bits);
            }
            bits += 1;
        }
    }
    let (latest, bits) = in_bits(|trials| belief.latest_put_in_by(&large, trials));
    assert_eq!(latest, belief.latest_put_in(&large));
    assert!(2 < bits);
    let (most, bits) = in_bits(|trials| belief.most_by(&large, put_in, trials));
    assert_eq!(most, belief.most(&large, put_in));
    assert!(1 < bits, "{most:?}");
    let mut found = 0;
    for kind in 0..KINDS_OF_HELP {
        let (help, _) = in_bits(|trials| belief.improvement_by(&large, put_in, kind, trials));
        assert_eq!(help, belief.improvement(&large, put_in, kind));
        found += usize::from(help.is_some());
    }
    assert!(4 < found);
}
