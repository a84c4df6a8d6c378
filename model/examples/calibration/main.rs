//! Whether the odds are honest: many households whose truth is a finer model, each with a diary
//! kept as people keep one, are asked about every pot before it goes in.
//!
//! `cargo run --release -p model --example calibration -- --seed N --households N [--days N]
//! [--wide] [--any-hour] [--rows]` prints reliability by tenths, Brier score and skill, coverage of
//! the bands and the error of the store's temperature, with and without a thermometer, and a line a
//! requirement. `--wide` draws the truth with twice the spreads of the tables; `--any-hour` has the
//! thermometer read at any hour of the day, not mostly before the pot; `--rows` prints every pot
//! instead. The same arguments give the same figures. Bad arguments get one line on the error stream and exit code 2.

#![allow(
    clippy::print_stdout,
    reason = "the program's result goes to standard output"
)]

mod arguments;
mod diary;
mod estimate;
mod household;
mod report;
mod score;
#[path = "../truth/mod.rs"]
mod truth;

use std::error::Error;
use std::process::ExitCode;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Instant;

use arguments::Arguments;
use estimate::Estimate;
use household::Household;
use report::Report;
use score::Pot;

/// Share of the heater's heat within which the truth's books must balance.
const BALANCE_SHARE: f64 = 1e-3;

/// Pots without and with a thermometer.
type Pots = [Vec<Pot>; 2];

fn main() -> ExitCode {
    let arguments = match Arguments::parse(std::env::args().skip(1)) {
        Ok(arguments) => arguments,
        Err(message) => {
            eprintln!("calibration: {message}");
            return ExitCode::from(2);
        }
    };
    match judge(&arguments) {
        Ok(pots) if arguments.rows => {
            print_rows(&pots);
            ExitCode::SUCCESS
        }
        Ok(pots) => {
            println!(
                "seed {}, {} households, {} days{}{}\n",
                arguments.seed,
                arguments.households,
                arguments.days,
                if arguments.wide { ", wide" } else { "" },
                if arguments.any_hour {
                    ", read at any hour"
                } else {
                    ""
                },
            );
            for (with_thermometer, pots) in [false, true].into_iter().zip(&pots) {
                let report = Report {
                    pots,
                    with_thermometer,
                };
                println!("{report}");
            }
            ExitCode::SUCCESS
        }
        Err(error) => {
            eprintln!("calibration: {error}");
            ExitCode::FAILURE
        }
    }
}

/// Every pot as a row of comma-separated values.
fn print_rows(pots: &Pots) {
    let quantiles = |name: &str| {
        ["05", "25", "50", "75", "95"]
            .map(|p| format!("{name}_{p}"))
            .join(",")
    };
    println!(
        "thermometer,household,preset,day,dish,p_boils,boiled,p_ready,ready,boil_s,{},ready_s,{},store_c,{}",
        quantiles("boil_s"),
        quantiles("ready_s"),
        quantiles("store_c")
    );
    for (thermometer, pots) in pots.iter().enumerate() {
        for pot in pots {
            let list = |band: [f64; 5]| band.map(|value| format!("{value:.1}")).join(",");
            println!(
                "{thermometer},{},{},{},{:?},{:.3},{},{:.3},{},{:.0},{},{:.0},{},{:.1},{}",
                pot.household,
                pot.preset,
                pot.day,
                pot.dish,
                pot.said.boils,
                u8::from(pot.boiled),
                pot.said.ready,
                u8::from(pot.ready),
                pot.boil_s,
                list(pot.said.boil_s),
                pot.ready_s,
                list(pot.said.ready_s),
                pot.store_c,
                list(pot.said.store_c)
            );
        }
    }
}

/// Judges all households, some at a time.
fn judge(arguments: &Arguments) -> Result<Pots, Box<dyn Error>> {
    let start = Instant::now();
    let next = AtomicU64::new(0);
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let mut judged: Vec<(u64, Result<Pots, String>)> = std::thread::scope(|scope| {
        let workers: Vec<_> = (0..threads)
            .map(|_| {
                scope.spawn(|| {
                    let mut mine = Vec::new();
                    loop {
                        let idx = next.fetch_add(1, Ordering::Relaxed);
                        if arguments.households <= idx {
                            return mine;
                        }
                        let pots = judge_one(arguments, idx).map_err(|error| error.to_string());
                        mine.push((idx, pots));
                    }
                })
            })
            .collect();
        workers
            .into_iter()
            .flat_map(|worker| worker.join().unwrap_or_default())
            .collect()
    });
    judged.sort_by_key(|(idx, _)| *idx);
    let mut all = Pots::default();
    for (idx, pots) in judged {
        let pots = pots.map_err(|error| format!("household {idx}: {error}"))?;
        for (held, own) in all.iter_mut().zip(pots) {
            held.extend(own);
        }
    }
    eprintln!(
        "{:.0} s on {threads} threads",
        start.elapsed().as_secs_f64()
    );
    Ok(all)
}

fn judge_one(arguments: &Arguments, idx: u64) -> Result<Pots, Box<dyn Error>> {
    let width = if arguments.wide { 2.0 } else { 1.0 };
    let mut household = Household::draw(arguments.seed, idx, width)?;
    let before_j = household.truth.kitchen.held_j();
    let seed = arguments.seed ^ (idx << 20);
    let lived = diary::live(&mut household, seed, arguments.days, arguments.any_hour);
    let kitchen = &household.truth.kitchen;
    let lost_j = kitchen.held_j() - before_j - kitchen.books.balance_j();
    if BALANCE_SHARE * kitchen.books.heater_j < lost_j.abs() {
        return Err(format!("the truth lost {lost_j:.0} J").into());
    }
    let mut pots = Pots::default();
    for (with_thermometer, pots) in [false, true].into_iter().zip(&mut pots) {
        let mut reader = lived.reader(with_thermometer);
        let mut estimate = Estimate::new();
        for asked in &lived.asked {
            let journal = reader.at(asked.at);
            let said = estimate.ask(&household, journal, asked)?;
            pots.push(Pot::new((idx, household.preset.key()), said, asked));
        }
    }
    Ok(pots)
}
