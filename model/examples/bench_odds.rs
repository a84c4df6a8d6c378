//! How long the odds take: an edit of today, and diaries from cold.
//!
//! `cargo run --release -p model --example bench_odds` prints milliseconds of one run, in the
//! fastest of some: what else the machine does only ever adds.

use std::error::Error;
use std::hint::black_box;
use std::io::Write;
use std::time::Instant;

use model::dish::Dish;
use model::journal::{Event, Journal, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::odds::{Belief, Replay, Settings};
use model::place::{AirYear, Place};
use model::pot::Lid;
use model::presets::Preset;
use model::sun::{DayLog, Sky};
use model::tonight::Site;

const RUNS: u32 = 5;

fn main() -> Result<(), Box<dyn Error>> {
    let mut out = std::io::stdout().lock();
    let place = Place {
        latitude_deg: 11.0,
        longitude_deg: 38.0,
        altitude_m: 1500.0,
        utc_offset_min: 180,
    };
    let air = AirYear::guess(place.latitude_deg, place.altitude_m)?;
    let site = Site { place, air };
    let today = Day::from_ymd(2026, 11, 25).ok_or("no such day")?;
    let now = today.at_s(17 * 3600);
    let settings = Settings::default();
    for preset in [Preset::AluminiumInPerlite, Preset::SandInPerlite] {
        let cooker = preset.cooker(200.0, place.latitude_deg);
        writeln!(out, "{}", preset.key())?;
        for days in [1, 30, 365] {
            let journal = diary(today, days, &cooker);
            let mut best = f64::INFINITY;
            for _ in 0..RUNS {
                let begun = Instant::now();
                black_box(Belief::replay(&site, &cooker, &journal, now, &settings)?);
                best = best.min(begun.elapsed().as_secs_f64());
            }
            writeln!(
                out,
                "  {days} days from cold, nothing kept: {:.1} ms",
                1e3 * best
            )?;
        }
        let mut journal = diary(today, 365, &cooker);
        let mut replay = Replay::new(settings);
        replay.belief(&site, &cooker, &journal, now)?;
        let bytes = replay.kept().unwrap_or_default();
        let mut opened = f64::INFINITY;
        for _ in 0..RUNS {
            let begun = Instant::now();
            let mut again = Replay::restored(settings, &bytes);
            black_box(again.belief(&site, &cooker, &journal, now)?);
            opened = opened.min(begun.elapsed().as_secs_f64());
        }
        writeln!(
            out,
            "  365 days from cold, {} kB put away: {:.1} ms",
            bytes.len() / 1000,
            1e3 * opened
        )?;
        let supper = supper(today, &cooker, false);
        let (mut edited, mut asked) = (f64::INFINITY, f64::INFINITY);
        for run in 0..RUNS {
            journal
                .skies
                .insert(today, DayLog::SunHours(4.0 + 0.5 * f64::from(run)));
            let begun = Instant::now();
            let belief = replay.belief(&site, &cooker, &journal, now)?;
            edited = edited.min(begun.elapsed().as_secs_f64());
            let begun = Instant::now();
            black_box(belief.ask(&supper, now.plus_s(3600)));
            asked = asked.min(begun.elapsed().as_secs_f64());
        }
        writeln!(
            out,
            "  an edit of today, the year kept: {:.2} ms",
            1e3 * edited
        )?;
        writeln!(out, "  the evening asked: {:.2} ms", 1e3 * asked)?;
    }
    Ok(())
}

fn diary(today: Day, days: i32, cooker: &model::cooker::Cooker) -> Journal {
    let mut journal = Journal::default();
    let skies = [Sky::Clear, Sky::Thin, Sky::Patchy];
    for back in (0..days).rev() {
        let day = today.plus(-back);
        let sky = usize::try_from(day.0.rem_euclid(3)).unwrap_or(0);
        journal
            .skies
            .insert(day, DayLog::Hourly([Some(skies[sky]); 24]));
        if back == 0 {
            continue;
        }
        if day.0.rem_euclid(3) == 0 {
            journal.events.push(Event {
                at: day.at_s(17 * 3600),
                what: What::Reading { store_c: 190.0 },
            });
        }
        let meal = supper(day, cooker, day.0.rem_euclid(2) == 0);
        journal.events.push(Event {
            at: day.at_s(18 * 3600),
            what: What::Meal(meal),
        });
    }
    journal
}

fn supper(day: Day, cooker: &model::cooker::Cooker, boiled: bool) -> Meal {
    let at = |minutes: i64| -> LocalTime { day.at_s(18 * 3600 + 60 * minutes) };
    Meal {
        dish: Dish::WhiteRice,
        food_kg: 0.3,
        water_kg: 0.55,
        start_c: 20.0,
        pot: cooker.pot,
        lid: Lid::On,
        out: None,
        eat_at: at(120),
        outcome: Outcome {
            boiled_at: boiled.then(|| at(35)),
            ..Outcome::default()
        },
    }
}
