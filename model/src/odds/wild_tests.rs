//! Diaries in which nothing fits.

use super::ensemble::Ensemble;
use super::filter::{DIMS, weigh_anew};
use super::regress::Seen;
use super::tests::{TODAY, site};
use super::*;
use crate::cooker::Cooker;
use crate::dish::Dish;
use crate::journal::{Event, Journal, Meal, Outcome, What};
use crate::local_time::LocalTime;
use crate::pot::Lid;
use crate::presets::Preset;
use crate::sun::DayLog;

fn pot(cooker: &Cooker, eat_at: LocalTime) -> Meal {
    Meal {
        dish: Dish::WhiteRice,
        food_kg: 0.4,
        water_kg: 0.9,
        start_c: 20.0,
        pot: cooker.pot,
        lid: Lid::On,
        out: None,
        eat_at,
        outcome: Outcome::default(),
    }
}

/// Cold after the sunniest days and red-hot after the darkest, and pots that boil at once.
fn upside_down(cooker: &Cooker, read_c: [f64; 2]) -> Journal {
    let mut journal = Journal::default();
    for back in 1..16 {
        let day = TODAY.plus(-back);
        let is_sunny = back % 3 == 0;
        let hours = if is_sunny { 10.5 } else { 0.0 };
        journal.skies.insert(day, DayLog::SunHours(hours));
        let store_c = read_c[usize::from(is_sunny)];
        let mut supper = pot(cooker, day.at_s(20 * 3600));
        supper.outcome.boiled_at = Some(day.at_s(18 * 3600 + 120));
        let mut told = |at_s, what| {
            let at = day.at_s(at_s);
            journal.events.push(Event { at, what });
        };
        told(17 * 3600, What::Reading { store_c });
        told(18 * 3600, What::Meal(supper));
    }
    journal.events.sort_by_key(|event| event.at);
    journal
}

/// Whatever is told, every member stays a store that can be, and the odds are odds.
#[test]
fn no_report_makes_a_store_that_cannot_be() {
    for preset in [
        Preset::AluminiumInPerlite,
        Preset::SandInPerlite,
        Preset::ErythritolInGlassWool,
    ] {
        let cooker = preset.cooker(200.0, 11.0);
        for read_c in [[300.0, 25.0], [480.0, 10.0]] {
            let journal = upside_down(&cooker, read_c);
            let now = TODAY.at_s(17 * 3600);
            let belief = Belief::replay(&site(), &cooker, &journal, now, &Settings::default());
            let belief = belief.unwrap();
            assert!(!belief.doubts().is_empty());
            let ensemble = &belief.ensemble;
            for member in 0..ensemble.members() {
                let store_c = ensemble.store_c(&belief.epoch.build, member);
                assert!((-60.0..600.0).contains(&store_c), "{preset:?} {store_c}");
            }
            let odds = belief.ask(&pot(&cooker, TODAY.at_s(20 * 3600)), now);
            assert!((0.0..=1.0).contains(&odds.p_boil));
        }
    }
}

/// A report that some forty members alone explain puts the others nowhere they cannot be.
#[test]
fn members_that_explain_nothing_stay_among_stores() {
    let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    let journal = upside_down(&cooker, [120.0, 250.0]);
    let now = TODAY.at_s(17 * 3600);
    let belief = Belief::replay(&site(), &cooker, &journal, now, &Settings::default()).unwrap();
    let build = &belief.epoch.build;
    let mut ensemble = belief.ensemble.clone();
    let members = ensemble.members();
    let explain = DIMS + 4;
    let weight: Vec<f64> = (0..members)
        .map(|member| {
            if member < explain {
                1.0 / explain as f64
            } else {
                0.0
            }
        })
        .collect();
    let spread = |all: &Ensemble| {
        let stores = (0..members).map(|member| all.store_c(build, member));
        stores.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), c| {
            (low.min(c), high.max(c))
        })
    };
    let before = spread(&ensemble);
    let seen = |all: &Ensemble, one: usize| Seen::alone(all.store_c(build, one));
    weigh_anew(&mut ensemble, build, weight, seen);
    let after = spread(&ensemble);
    let wide_k = before.1 - before.0;
    assert!(
        before.0 - wide_k < after.0 && after.1 < before.1 + wide_k,
        "{before:?} {after:?}"
    );
}
