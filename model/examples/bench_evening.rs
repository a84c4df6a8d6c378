//! How long an evening's answer takes: the store carried through a fortnight, a question, its help.
//!
//! `cargo run --release -p model --example bench_evening`

#![allow(clippy::print_stdout, reason = "a program that prints figures")]

use std::error::Error;
use std::time::Instant;

use model::dish::Dish;
use model::journal::{Event, Journal, Meal, Outcome, What};
use model::local_time::Day;
use model::place::{AirYear, Place};
use model::pot::Lid;
use model::presets::Preset;
use model::sun::{DayLog, Sky};
use model::tonight::{Evening, Rig, Site};

const RUNS: u32 = 20;

fn main() -> Result<(), Box<dyn Error>> {
    let place = Place {
        latitude_deg: 11.0,
        longitude_deg: 38.0,
        altitude_m: 1500.0,
        utc_offset_min: 180,
    };
    let site = Site {
        place,
        air: AirYear::guess(place.latitude_deg, place.altitude_m)?,
    };
    let today = Day::from_ymd(2026, 11, 25).ok_or("no such day")?;
    for preset in Preset::ALL {
        let cooker = preset.cooker(200.0, place.latitude_deg);
        let rice = Meal {
            dish: Dish::WhiteRice,
            food_kg: 0.4,
            water_kg: 0.72,
            start_c: 20.0,
            pot: cooker.pot,
            lid: Lid::On,
            out: None,
            eat_at: today.at_s(19 * 3600 + 1800),
            outcome: Outcome::default(),
        };
        let mut journal = Journal::default();
        for back in 0..14 {
            let day = today.plus(-back);
            let sky = Sky::ALL.get(usize::try_from(back % 3)?).copied();
            journal.skies.insert(day, DayLog::Hourly([sky; 24]));
            if 0 < back {
                let meal = Meal {
                    eat_at: day.at_s(19 * 3600 + 1800),
                    ..rice.clone()
                };
                journal.events.push(Event {
                    at: day.at_s(18 * 3600),
                    what: What::Meal(meal),
                });
            }
        }
        journal.events.reverse();
        let now = today.at_s(17 * 3600);

        let rig_ms = milliseconds(|| Rig::new(&site, &cooker).map(drop))?;
        let new_ms = milliseconds(|| Evening::new(&site, &cooker, &journal, now, now).map(drop))?;
        let evening = Evening::new(&site, &cooker, &journal, now, now)?;
        let put_in = today.at_s(18 * 3600);
        let ask_ms = milliseconds(|| evening.ask(&rice, put_in).map(drop))?;
        let beans = Meal {
            dish: Dish::CommonBeansUnsoaked,
            ..rice
        };
        let help_ms = milliseconds(|| evening.help(&beans, put_in).map(drop))?;
        println!(
            "{:26} rig {rig_ms:6.2} ms  fortnight {new_ms:6.2} ms  ask {ask_ms:6.2} ms  help {help_ms:6.2} ms",
            preset.key()
        );
    }
    Ok(())
}

/// Mean time of one run.
fn milliseconds<E: Error + 'static>(mut run: impl FnMut() -> Result<(), E>) -> Result<f64, E> {
    run()?;
    let start = Instant::now();
    for _ in 0..RUNS {
        run()?;
    }
    Ok(start.elapsed().as_secs_f64() * 1e3 / f64::from(RUNS))
}
