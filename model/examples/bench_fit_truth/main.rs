//! Fits cookers to readings of a finer model of them, and counts how often the answer is right.
//!
//! `bench_fit_truth [CASES [SEED [MELTS [BEDS]]]]`: each case is a cooker drawn round a common build by the spreads
//! of the tables, a heat-up, a cool-down and a boil of it, read once a minute by a thermometer with
//! 1 K of noise. Printed: how many are within 5 % in loss, 10 % in contact and 5 % in capacity, and
//! how many of the 90 % intervals hold the truth; first of metals, then of stores that
//! conduct poorly, then of such that melt.

#[allow(dead_code, reason = "a cooker's part of it is enough here")]
#[path = "../truth/mod.rs"]
mod truth;

mod litre;

use std::error::Error;
use std::io::Write;
use std::process::ExitCode;

use model::bench::readings::Row;
use model::bench::{Body, Fit, Parameter, PotIn, Run, RunKind, Settings, fit};
use model::cooker::Cooker;
use model::dish::Dish;
use model::enthalpy::{EnthalpyCurve, MediumCurve};
use model::journal::{Meal, Outcome};
use model::local_time::LocalTime;
use model::place::{AirYear, Place};
use model::pot::Lid;
use model::presets::Preset;
use model::tonight::Site;
use truth::build::Truth;
use truth::kitchen::Outdoors;
use truth::random::Random;

/// Noise of the thermometer. \[K\]
const NOISE_K: f64 = 1.0;
/// A kitchen balance, as a share.
const WEIGHED: f64 = 0.005;
const AIR_C: f64 = 18.0;
/// Half the width of a 90 % interval, in standard deviations.
const NINETY: f64 = 1.645;
/// What is asked of each figure, and what stands for it.
const ASKED: [(Parameter, f64); 3] = [
    (Parameter::Loss, 0.05),
    (Parameter::Contact, 0.10),
    (Parameter::StoreCapacity, 0.05),
];
/// Stores of nearly one temperature.
const BUILDS: [Preset; 2] = [Preset::AluminiumInPerlite, Preset::SteelInRockWool];
/// Stores that conduct poorly, counted apart: no thermometer tells the whole of them.
const BEDS: [Preset; 2] = [Preset::SoapstoneInVermiculite, Preset::SandInPerlite];
/// Melts between fins, counted apart: they have several temperatures at once, and freeze in the way.
const MELTS: [Preset; 2] = [Preset::ErythritolInGlassWool, Preset::NitrateInCeramicFibre];
/// Streams of chance of the beds and the melts, beside those of the others.
const BEDS_FROM: u64 = 1 << 21;
const MELTS_FROM: u64 = 1 << 20;

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            // A closed stderr leaves the exit code to tell.
            let _ = writeln!(std::io::stderr(), "bench_fit_truth: {error}");
            ExitCode::from(2)
        }
    }
}

fn run() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1);
    let cases: u32 = arguments.next().map_or(Ok(100), |text| text.parse())?;
    let seed: u64 = arguments.next().map_or(Ok(1), |text| text.parse())?;
    // A melt takes as long as ten metals.
    let melts: u32 = arguments
        .next()
        .map_or(Ok(cases / 4), |text| text.parse())?;
    let beds: u32 = arguments
        .next()
        .map_or(Ok(cases / 4), |text| text.parse())?;
    let mut out = std::io::stdout();
    count(
        &mut out,
        "of nearly one temperature",
        &BUILDS,
        (cases, seed, 0),
    )?;
    count(
        &mut out,
        "that conduct poorly",
        &BEDS,
        (beds, seed, BEDS_FROM),
    )?;
    count(&mut out, "that melt", &MELTS, (melts, seed, MELTS_FROM))?;
    litre::nearly_boiled(&mut out, seed)
}

/// Fits so many cases of these builds, and counts.
fn count(
    out: &mut impl Write,
    title: &str,
    builds: &[Preset],
    (cases, seed, from): (u32, u64, u64),
) -> Result<(), Box<dyn Error>> {
    writeln!(out, "stores {title}")?;
    let mut counts = [[0_u32; 2]; ASKED.len()];
    let mut offs: Vec<Vec<(Preset, f64)>> = vec![Vec::new(); ASKED.len()];
    for case in 0..cases {
        let preset = builds[case as usize % builds.len()];
        let (found, truths) = one(preset, Random::new(seed, from + u64::from(case)))?;
        let mut line = format!("{case:3} {:24} {:?}", preset.key(), found.worth);
        for (idx, ((parameter, share), truth)) in ASKED.iter().zip(truths).enumerate() {
            let estimate = found.estimate(*parameter).ok_or("an estimate is missing")?;
            let off = estimate.value / truth - 1.0;
            let sd = found.sd_with_model(estimate) / estimate.value;
            counts[idx][0] += u32::from(off.abs() <= *share);
            counts[idx][1] += u32::from(off.abs() <= NINETY * sd);
            offs[idx].push((preset, 100.0 * off));
            line += &format!(
                "  {} {:+5.1} % sd {:.1}",
                parameter.key(),
                100.0 * off,
                100.0 * sd
            );
        }
        writeln!(out, "{line}")?;
    }
    for (((parameter, share), [close, inside]), offs) in ASKED.iter().zip(counts).zip(&offs) {
        let all = offs.iter().map(|(_, off)| *off);
        writeln!(
            out,
            "{:15} within {:2.0} %: {close} of {cases}; 90 % intervals hold {inside} of {cases}; median off {:+.1} %",
            parameter.key(),
            100.0 * share,
            middle(all)
        )?;
        for build in builds {
            let own = offs.iter().filter(|(preset, _)| preset == build);
            writeln!(
                out,
                "    {:24} median off {:+.1} %",
                build.key(),
                middle(own.map(|(_, off)| *off))
            )?;
        }
    }
    Ok(())
}

/// The median; not a number of nothing.
fn middle(values: impl Iterator<Item = f64>) -> f64 {
    let mut values: Vec<f64> = values.collect();
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(f64::NAN)
}

/// A place with the same air all year.
fn site(altitude_m: f64) -> Site {
    Site {
        place: Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m,
            utc_offset_min: 180,
        },
        air: AirYear {
            day_c: [AIR_C; 12],
            night_c: [AIR_C; 12],
        },
    }
}

/// Plain water, as a household would log it.
fn meal(pot: &PotIn) -> Meal {
    Meal {
        dish: Dish::TeaWater,
        food_kg: 0.0,
        water_kg: pot.water_kg,
        start_c: 20.0,
        pot: pot.pot,
        lid: pot.lid,
        out: None,
        eat_at: LocalTime(0),
        outcome: Outcome::default(),
    }
}

/// One cooker: the fit, and its true loss, contact and capacity.
fn one(preset: Preset, mut random: Random) -> Result<(Fit, [f64; 3]), Box<dyn Error>> {
    let site = site(1500.0);
    let cooker = preset.cooker(200.0, 11.0);
    let noise = Random::new(random.unit().to_bits(), 1);
    let mut truth = Truth::draw(&site, &cooker, ([1.0; 4], 1.0), random, 0)?;
    let truths = true_figures(&truth, &cooker);
    let runs = runs(&mut truth, &cooker, noise);
    let body = Body::new(&site, &cooker)?;
    Ok((fit(&body, &runs, &Settings::default())?, truths))
}

/// Loss, contact and capacity over that of the description.
fn true_figures(truth: &Truth, cooker: &Cooker) -> [f64; 3] {
    let (loss_w_k, contact_w_m2k) = truth.measurable(cooker.store.cutout_c);
    let row = &truth.kitchen.row;
    let mass_kg: f64 = row.store.mass_kg.iter().sum();
    let heat_j = |at_c: f64| mass_kg * row.table.heat_j_kg(at_c);
    let (low_c, high_c) = (60.0, cooker.store.cutout_c - 20.0);
    let media: Vec<(f64, MediumCurve)> = cooker
        .store
        .charges
        .iter()
        .map(|charge| (charge.mass_kg, charge.medium.into()))
        .collect();
    let described_j = EnthalpyCurve::new(&media).map_or(f64::NAN, |curve| {
        curve.enthalpy_j(high_c) - curve.enthalpy_j(low_c)
    });
    let capacity = (heat_j(high_c) - heat_j(low_c)) / described_j;
    // By the area of the description: a run tells the whole way, not how wide the pot is.
    let described_m2 = cooker.contact.seat.area_m2(
        cooker.pot.size.props().diameter_m.value,
        cooker.store.depth_m,
    );
    let contact_w_m2k = contact_w_m2k * truth.kitchen.contact.area_m2 / described_m2;
    [loss_w_k, contact_w_m2k, capacity]
}

/// Steady sun, or none.
struct Steady(f64);

impl Outdoors for Steady {
    fn at(&self, _minute: i64) -> (f64, f64) {
        (self.0, AIR_C)
    }
}

/// A kitchen with a noisy thermometer.
struct Reader<'a> {
    truth: &'a mut Truth,
    noise: Random,
    start_s: i64,
}

impl Reader<'_> {
    /// Reads once a minute for so long.
    fn read(&mut self, minutes: i64, sun_w: f64) -> Vec<Row> {
        self.start_s = self.truth.kitchen.now_s;
        let mut rows = Vec::new();
        for minute in 0..=minutes {
            let kitchen = &mut self.truth.kitchen;
            let before_j = kitchen.books.heater_j;
            kitchen.run(self.start_s + 60 * minute, &Steady(sun_w));
            let given_w = if minute == 0 {
                sun_w
            } else {
                (kitchen.books.heater_j - before_j) / 60.0
            };
            let store_c = kitchen.row.store_c_at(0.5);
            let pot_c = kitchen.water_c();
            let mut noisy = |at_c: f64| at_c + NOISE_K * self.noise.normal();
            rows.push(Row {
                line: rows.len() + 1,
                time_s: 60.0 * minute as f64,
                store_c: Some(noisy(store_c)),
                pot_c: pot_c.map(&mut noisy),
                heater_w: Some(given_w),
                ..Row::default()
            });
        }
        rows
    }
}

fn runs(truth: &mut Truth, cooker: &Cooker, noise: Random) -> Vec<Run> {
    let mut reader = Reader {
        truth,
        noise,
        start_s: 0,
    };
    let run = |kind: RunKind, rows: Vec<Row>, pots: Vec<PotIn>| Run {
        name: format!("{kind:?}"),
        kind,
        rows,
        air_c: Some(AIR_C),
        heater_w: None,
        pots,
    };
    let heat = reader.read(420, 200.0);
    let cool = reader.read(720, 0.0);
    // Charged again, unread.
    reader.read(300, 200.0);
    let pot = PotIn {
        in_s: 0.0,
        out_s: None,
        pot: cooker.pot,
        lid: Lid::On,
        water_kg: 1.5,
        start_c: None,
        left_kg: None,
    };
    let mut charge = reader.truth.charge(&meal(&pot), Lid::On, WEIGHED);
    // The film inside the pot is no part of the cooker and no run tells it from the contact.
    charge.film_w_m2k = (900.0, 3500.0);
    reader.truth.kitchen.put_in(charge);
    let boil = reader.read(120, 0.0);
    vec![
        run(RunKind::HeatUp, heat, vec![]),
        run(RunKind::CoolDown, cool, vec![]),
        run(RunKind::Boil, boil, vec![pot]),
    ]
}
