//! The litre that nearly boiled: 2.6 kg of aluminium at 250 °C hold just enough for it, and a dry
//! seat lets too little through before it is lost.
//!
//! The readings of one evening of the finer model are fitted and diagnosed; then each piece of
//! advice is followed in the finer model itself.

use std::error::Error;
use std::io::Write;

use model::bench::readings::Row;
use model::bench::{
    Body, Change, Circumstances, Diagnosis, Limit, PotIn, Run, RunKind, Settings, diagnose, fit,
};
use model::cooker::Cooker;
use model::jacket::Jacket;
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};
use model::presets::Preset;
use model::seat::Seat;
use model::tonight::Site;

use super::truth::build::Truth;
use super::truth::kitchen::{Charge, Joint};
use super::truth::random::Random;
use super::{AIR_C, NOISE_K, Steady, meal, site};

/// Evenings, each with other noise.
const EVENINGS: u64 = 10;
const START_C: f64 = 250.0;
const WATER_C: f64 = 25.0;
/// Between pot and store: some 130 W/m2K. \[m\]
const GAP_M: f64 = 0.25e-3;
/// A pot is waited for so long. \[min\]
const PATIENCE_MIN: i64 = 240;

const POT: PotIn = PotIn {
    in_s: 0.0,
    out_s: None,
    pot: Pot {
        kind: PotKind::ThinAluminium,
        size: PotSize::Litres1_5,
        wrap: Wrap::SunkInCooker,
    },
    lid: Lid::On,
    water_kg: 1.0,
    start_c: None,
    left_kg: None,
};

fn cooker() -> Cooker {
    let mut cooker = Preset::AluminiumInPerlite.cooker(100.0, 11.0);
    cooker.store.charges[0].mass_kg = 2.6;
    cooker.store.depth_m = 0.05;
    cooker.store.cutout_c = START_C;
    cooker.contact.seat = Seat::DryWarped;
    cooker.pot = POT.pot;
    if let Jacket::Layers(layered) = &mut cooker.jacket {
        layered.shape = model::jacket::JacketShape::Cylinder {
            inner_radius_m: 0.08,
            inner_height_m: 0.12,
        };
    }
    cooker
}

/// The finer model as the tables have it, and its pot.
fn drawn(site: &Site, seed: u64) -> Result<(Truth, Charge), Box<dyn Error>> {
    let mut truth = Truth::draw(site, &cooker(), ([1.0; 4], 0.0), Random::new(seed, 2), 0)?;
    truth.kitchen.row.set(START_C, AIR_C);
    let mut charge = truth.charge(&meal(&POT), Lid::On, 0.0);
    charge.start_c = WATER_C;
    truth.kitchen.contact.joint = Joint::Gap(GAP_M);
    charge.film_w_m2k = (900.0, 3500.0);
    Ok((truth, charge))
}

pub(crate) fn nearly_boiled(out: &mut impl Write, seed: u64) -> Result<(), Box<dyn Error>> {
    let site = site(0.0);
    let (mut right, mut followed, mut boiled) = (0, 0, 0);
    for evening in 0..EVENINGS {
        let seed = seed.wrapping_mul(1000).wrapping_add(evening);
        let found = diagnosed(&site, seed)?;
        let first = found.limits.first().ok_or("no limit")?;
        let is_right = found.as_it_was.boils_s.is_none()
            && found.heat_suffices
            && first.limit == Limit::Contact;
        right += u32::from(is_right);
        if evening == 0 {
            writeln!(
                out,
                "the litre: gets to {:.1} degC, limited by {:?}",
                found.as_it_was.hottest_c, first.limit
            )?;
        }
        for advice in &found.advice {
            let Some(boils_s) = follow(&site, seed, advice.change)? else {
                continue;
            };
            followed += 1;
            boiled += u32::from(boils_s.is_some());
            if evening == 0 {
                writeln!(
                    out,
                    "  {:?}: told {:.0} min, boils after {}",
                    advice.change,
                    advice.fate.boils_s.unwrap_or(f64::NAN) / 60.0,
                    boils_s.map_or("never".into(), |s| format!("{:.0} min", s as f64 / 60.0)),
                )?;
            }
        }
    }
    writeln!(
        out,
        "the litre: diagnosed right on {right} of {EVENINGS} evenings; {boiled} of {followed} pieces of advice boil it"
    )?;
    Ok(())
}

fn diagnosed(site: &Site, seed: u64) -> Result<Diagnosis, Box<dyn Error>> {
    let (mut truth, charge) = drawn(site, seed)?;
    let mut noise = Random::new(seed, 3);
    truth.kitchen.put_in(charge);
    let mut rows = Vec::new();
    for minute in 0..=120 {
        truth.kitchen.run(60 * minute, &Steady(0.0));
        let mut noisy = |at_c: f64| at_c + NOISE_K * noise.normal();
        rows.push(Row {
            line: rows.len() + 1,
            time_s: 60.0 * minute as f64,
            store_c: Some(noisy(truth.kitchen.row.store_c_at(0.5))),
            pot_c: truth.kitchen.water_c().map(&mut noisy),
            ..Row::default()
        });
    }
    let run = Run {
        name: "litre".into(),
        kind: RunKind::Boil,
        rows,
        air_c: Some(AIR_C),
        heater_w: None,
        pots: vec![POT],
    };
    let body = Body::new(site, &cooker())?;
    let found = fit(&body, std::slice::from_ref(&run), &Settings::default())?;
    let told = Circumstances {
        cutout_c: None,
        ..Circumstances::default()
    };
    diagnose(&body, &run, &found, &told)?.ok_or_else(|| "no pot".into())
}

/// When the litre boils with the advice followed; `None` for advice that a truth has no place for.
/// \[s\]
fn follow(site: &Site, seed: u64, change: Change) -> Result<Option<Option<i64>>, Box<dyn Error>> {
    let (mut truth, mut charge) = drawn(site, seed)?;
    let kitchen = &mut truth.kitchen;
    match change {
        Change::Contact(times) => {
            kitchen.contact.joint = narrower(kitchen.contact.joint, times);
        }
        Change::Hotter(rise_k) => kitchen.row.set(START_C + rise_k, AIR_C),
        Change::PotLoss(share) => charge.air_w_k *= share,
        Change::Water(share) => charge.water_kg *= share,
        Change::Loss(share) => {
            for (_, w_mk) in &mut kitchen.row.jacket.conductivity {
                *w_mk *= share;
            }
            kitchen.row.store.leak_w_k *= share;
        }
        _ => return Ok(None),
    }
    kitchen.put_in(charge);
    kitchen.run(60 * PATIENCE_MIN, &Steady(0.0));
    Ok(Some(kitchen.fate().and_then(|fate| fate.boiled_s)))
}

/// A joint that lets so many times as much through.
fn narrower(joint: Joint, times: f64) -> Joint {
    let Joint::Gap(width_m) = joint else {
        return joint;
    };
    let wanted = times * joint.w_m2k(200.0, 80.0);
    let (mut narrow_m, mut wide_m) = (1e-6, width_m);
    for _ in 0..50 {
        let middle_m = 0.5 * (narrow_m + wide_m);
        if Joint::Gap(middle_m).w_m2k(200.0, 80.0) < wanted {
            wide_m = middle_m;
        } else {
            narrow_m = middle_m;
        }
    }
    Joint::Gap(narrow_m)
}
