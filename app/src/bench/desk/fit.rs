//! A cooker is fitted to its runs, and what comes of it is told.

use model::bench::{
    Body, Circumstances, Fit, FitError, ForCooker, Given, Measured, PotIn, Run, Settings,
    boiling_test, charge_figures, charge_spread, cooking_power, diagnose, fit as fit_runs,
    readings,
};
use model::cooker::Cooker;
use model::local_time::{Day, LocalTime};
use model::tonight::{Rig, Site, year_take};

use crate::bench::answer::Fitted;
use crate::bench::ask::FitAsk;
use crate::present::bench::Speech;
use crate::present::bench::found::{Told, sheet};
use crate::state::bench::{Described, Found, KeptFit, RunReadings, TestRun, Text};

/// The day of the figures that need a sun: an equinox, the same for everyone.
const DAY: (i32, u32, u32) = (2026, 3, 20);
/// Air of the figures. \[°C\]
const AIR_C: f64 = 20.0;

/// Fits and tells.
pub(super) fn fit(speech: &Speech, ask: &FitAsk, texts: &[Text]) -> Result<Fitted, String> {
    let words = &speech.report.found;
    let no_cooker = || words.no_cooker.to_owned();
    let site = Site {
        place: ask.household.place,
        air: ask.household.air,
    };
    let body = Body::new(&site, &ask.cooker).map_err(|_| no_cooker())?;
    let runs: Vec<Run> = ask
        .runs
        .iter()
        .map(|run| run_of(speech, run, texts))
        .collect::<Result<_, _>>()?;
    let found = fit_runs(&body, &runs, &Settings::default())
        .map_err(|error| trouble(speech, ask, &error))?;
    let measured = found.for_cooker();
    let (year, month, day) = DAY;
    let when = (AIR_C, Day::from_ymd(year, month, day).unwrap_or(Day(0)));
    let figures = charge_figures(&site, &ask.cooker, &measured, when).ok();
    let spread = figures.and_then(|figures| {
        charge_spread(&site, &ask.cooker, &found.doubted(), when, &figures).ok()
    });
    let described = described(&site, (&ask.cooker, body.rig()), &found, when);
    let main = ask.runs.iter().zip(&runs).find(|(run, _)| run.id == ask.of);
    let main = main.or(ask.runs.iter().zip(&runs).next());
    let boiling_c = body.rig().boiling_c().map_err(|_| no_cooker())?;
    let diagnosis = match main {
        Some((_, run)) if !run.pots.is_empty() => {
            let circumstances = Circumstances {
                prices: ask.prices,
                match_gain: year_take(&site, &ask.cooker)
                    .ok()
                    .flatten()
                    .map(|year| (year.best.share / year.share).max(1.0)),
                cutout_c: Some(ask.cooker.store.cutout_c),
            };
            diagnose(&body, run, &found, &circumstances).map_err(|_| no_cooker())?
        }
        _ => None,
    };
    let given_j = diagnosis.as_ref().map(|diagnosis| {
        let account = diagnosis.account;
        account.store_before_j - account.store_after_j + account.from_sun_j
    });
    let of_pot = main.and_then(|(of, run)| Some((of, run, run.pots.last()?)));
    let power = of_pot.map(|(of, run, pot)| cooking_power(run, pot, &of.about.plane, boiling_c));
    let boiling = of_pot.and_then(|(_, run, pot)| boiling_test(run, pot, boiling_c, given_j));
    let kept = KeptFit {
        at: speech.now,
        runs: ask.runs.iter().map(|run| run.id).collect(),
        worth: found.worth,
        scatter_k: found.scatter_k,
        found: found
            .estimates
            .iter()
            .map(|estimate| Found {
                parameter: estimate.parameter,
                measured: Measured {
                    value: estimate.value,
                    sd: found.sd_with_model(estimate),
                },
                told: measured.of(estimate.parameter).is_some(),
            })
            .collect(),
        figures,
        spread,
        boiling,
        standard_w: power.as_ref().and_then(|power| power.at_50_k_w),
        described: Some(described),
        described_boil_s: of_pot.and_then(|(_, run, pot)| boils_as_described(body.rig(), run, pot)),
    };
    let is_measured = measured != ForCooker::default();
    let cooker = is_measured.then(|| Box::new(measured.apply(&body, &ask.cooker)));
    let names: Vec<&str> = ask.runs.iter().map(|run| run.about.name.as_str()).collect();
    // Typed readings begin when the first was taken, those of a file with the run.
    let began = ask.runs.iter().map(|run| {
        let first = run.typed().first();
        first.map_or(run.started, |reading| reading.at)
    });
    let began: Vec<LocalTime> = began.collect();
    let told = Told {
        names: &names,
        began: &began,
        fit: &found,
        measured: &measured,
        kept: &kept,
        power: power.as_ref(),
        diagnosis: diagnosis.as_ref(),
    };
    Ok(Fitted {
        sheet: sheet(speech, &told),
        fit: kept,
        cooker,
    })
}

/// What the description foresees of what the fit found.
fn described(
    site: &Site,
    (cooker, rig): (&Cooker, &Rig),
    fit: &Fit,
    when: (f64, Day),
) -> Described {
    let doubted = fit.described();
    let figures = charge_figures(site, cooker, &ForCooker::default(), when).ok();
    let spread =
        figures.and_then(|figures| charge_spread(site, cooker, &doubted, when, &figures).ok());
    let found = fit.estimates.iter().map(|estimate| Found {
        parameter: estimate.parameter,
        measured: Measured {
            value: estimate.described.value,
            sd: estimate.described.sd,
        },
        told: true,
    });
    Described {
        working_c: rig.working_c(),
        found: found.collect(),
        figures,
        spread,
    }
}

/// How long the run's last pot would take to boil if all were as it is described. \[s\]
fn boils_as_described(rig: &Rig, run: &Run, last: &PotIn) -> Option<f64> {
    let rows = || run.rows.iter();
    let first = rows().find(|row| row.store_c.is_some())?;
    let since_s = |time_s: f64| (time_s - first.time_s).max(0.0);
    let air_c = rows().find_map(|row| row.air_c).or(run.air_c)?;
    let mut heater: Vec<(f64, f64)> = rows()
        .filter_map(|row| Some((since_s(row.time_s), row.heater_w?)))
        .collect();
    if heater.is_empty() {
        heater.push((0.0, run.heater_w.unwrap_or(0.0)));
    }
    let pots = run.pots.iter().map(|pot| {
        let read = rows().find(|row| pot.in_s <= row.time_s);
        PotIn {
            in_s: since_s(pot.in_s),
            out_s: pot.out_s.map(since_s),
            start_c: pot.start_c.or(read.and_then(|row| row.pot_c)),
            ..*pot
        }
    });
    let foreseen = rig.foreseen(&Given {
        kind: run.kind,
        store_c: first.store_c?,
        air_c,
        heater: &heater,
        pots: &pots.collect::<Vec<_>>(),
    });
    let boils_s = foreseen.ok()?.boils_s? - since_s(last.in_s);
    (0.0 < boils_s).then_some(boils_s)
}

/// A run for the model, its times counted from its first row. Runs go by their number, since two
/// may have one name.
fn run_of(speech: &Speech, run: &TestRun, texts: &[Text]) -> Result<Run, String> {
    let mut rows = match &run.readings {
        RunReadings::Typed(_) => run.rows(),
        RunReadings::File(kept) => {
            let text = texts.iter().find(|text| text.key == kept.key);
            let text = text.ok_or(speech.report.lost.to_owned())?;
            let read = readings::read(&text.text, &kept.hints);
            let wrong = |error| (speech.report.text.error)(error).to_owned();
            read.map_err(wrong)?.rows
        }
    };
    let first_s = rows.first().map_or(0.0, |row| row.time_s);
    for row in &mut rows {
        row.time_s -= first_s;
    }
    let mut pots = run.pots.clone();
    for pot in &mut pots {
        // A pot that went in before the first reading is in as the readings begin.
        pot.in_s = (pot.in_s - first_s).max(0.0);
        pot.out_s = pot.out_s.map(|out_s| out_s - first_s);
    }
    pots.retain(|pot| pot.out_s.is_none_or(|out_s| pot.in_s < out_s));
    Ok(Run {
        name: run.id.0.to_string(),
        kind: run.about.kind,
        rows,
        air_c: run.about.air_c,
        heater_w: run.about.heater_w,
        pots,
    })
}

fn trouble(speech: &Speech, ask: &FitAsk, error: &FitError) -> String {
    let words = &speech.report.found;
    match error {
        FitError::Run { name, fault } => {
            let run = ask.runs.iter().find(|run| run.id.0.to_string() == *name);
            let name = run.map_or("", |run| run.about.name.as_str());
            (words.of_run)(name, (words.fault)(*fault))
        }
        FitError::Network(_) => words.no_cooker.to_owned(),
        _ => words.nothing.to_owned(),
    }
}
