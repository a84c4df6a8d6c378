//! The answer, as JSON.

use model::bench::{
    Advice, Body, ChargeFigures, ChargeSpread, Circumstances, Diagnosis, Fate, Fit, Measured,
    boiling_test, charge_figures, charge_spread, cooking_power, diagnose,
};
use model::cooker::Cooker;
use model::local_time::Day;
use model::tonight::{Site, year_take};
use serde_json::{Value, json};

use crate::runs::RunFile;
use crate::words;

/// The day of the figures that need a sun: an equinox, the same for everyone.
const DAY: (i32, u32, u32) = (2026, 3, 20);
/// Air of the figures. [°C]
const AIR_C: f64 = 20.0;

pub(crate) fn report(
    site: &Site,
    cooker: &Cooker,
    body: &Body,
    files: &[RunFile],
    fit: &Fit,
) -> Result<Value, String> {
    let measured = fit.for_cooker();
    let (year, month, day) = DAY;
    let day = Day::from_ymd(year, month, day).unwrap_or(Day(0));
    let figures =
        charge_figures(site, cooker, &measured, (AIR_C, day)).map_err(|error| error.to_string())?;
    let spread = charge_spread(site, cooker, &fit.doubted(), (AIR_C, day), &figures)
        .map_err(|error| error.to_string())?;
    let boiling_c = body.rig().boiling_c().map_err(|error| error.to_string())?;
    // What the best resistor would take of a year's sun over what this heater takes.
    let match_gain = year_take(site, cooker)
        .map_err(|error| error.to_string())?
        .map(|year| (year.best.share / year.share).max(1.0));
    let circumstances = |file: &RunFile| Circumstances {
        prices: file.prices,
        match_gain,
        cutout_c: Some(cooker.store.cutout_c),
    };
    let runs: Vec<Value> = files
        .iter()
        .map(|file| run(body, file, fit, (boiling_c, &circumstances(file))))
        .collect::<Result<_, _>>()?;
    let free: Vec<&str> = fit
        .estimates
        .iter()
        .filter(|estimate| !estimate.held)
        .map(|estimate| estimate.parameter.key())
        .collect();
    let untold: Vec<Value> = fit
        .untold
        .iter()
        .map(|(first, second)| json!([first.key(), second.key()]))
        .collect();
    Ok(json!({
        "worth": words::worth(fit.worth),
        "doubts": fit.doubts.iter().map(words::doubt).collect::<Vec<_>>(),
        "scatter_k": fit.scatter_k,
        "noise_k": fit.noise_k,
        "parameters": parameters(fit),
        "correlations": { "of": free, "matrix": fit.correlations },
        "cannot_tell_apart": untold,
        "for_the_cooker": {
            "loss_w_k": figure(measured.loss_w_k),
            "jacket_j_k": figure(measured.jacket_j_k),
            "store_capacity": figure(measured.capacity),
            "melting_c": figure(measured.melting_c),
            "heater": figure(measured.heater),
            "contact_w_m2k": figure(measured.contact_w_m2k),
            "pot_loss": figure(measured.pot_loss),
        },
        "figures": charge(&figures),
        "figures_sd": charge_sd(&spread),
        "runs": runs,
    }))
}

fn parameters(fit: &Fit) -> Vec<Value> {
    fit.estimates
        .iter()
        .map(|estimate| {
            json!({
                "name": estimate.parameter.key(),
                "value": estimate.value,
                "standard_error": estimate.sd,
                "with_model_error": fit.sd_with_model(estimate),
                "described": estimate.described.value,
                "described_spread": estimate.described.sd,
                "held": estimate.held,
                "told_by_the_runs": estimate.told,
            })
        })
        .collect()
}

fn figure(measured: Option<Measured>) -> Value {
    measured.map_or(
        Value::Null,
        |measured| json!({ "value": measured.value, "sd": measured.sd }),
    )
}

fn charge(figures: &ChargeFigures) -> Value {
    json!({
        "air_c": AIR_C,
        "litres_per_charge": figures.litres_per_charge,
        "first_litre_s": figures.first_litre_s,
        "power_50_k_below_boil_w": figures.power_50_k_w,
        "hold_to_boil_line_s": figures.hold_s,
        "overnight_loss": figures.overnight_loss,
        "sun_to_food": figures.sun_to_food,
    })
}

fn charge_sd(spread: &ChargeSpread) -> Value {
    json!({
        "litres_per_charge": spread.litres_per_charge,
        "first_litre_s": spread.first_litre_s,
        "power_50_k_below_boil_w": spread.power_50_k_w,
        "hold_to_boil_line_s": spread.hold_s,
        "overnight_loss": spread.overnight_loss,
        "sun_to_food": spread.sun_to_food,
    })
}

fn run(
    body: &Body,
    file: &RunFile,
    fit: &Fit,
    (boiling_c, circumstances): (f64, &Circumstances),
) -> Result<Value, String> {
    let of = &file.run;
    let found = fit.runs.iter().find(|found| found.name == of.name);
    let diagnosis = diagnose(body, of, fit, circumstances).map_err(|error| error.to_string())?;
    let given_j = diagnosis.as_ref().map(|diagnosis| {
        let account = diagnosis.account;
        account.store_before_j - account.store_after_j + account.from_sun_j
    });
    let power = of
        .pots
        .last()
        .map(|pot| cooking_power(of, pot, &file.plane, boiling_c));
    let water = of
        .pots
        .last()
        .and_then(|pot| boiling_test(of, pot, boiling_c, given_j));
    let remarks: Vec<Value> = file
        .remarks
        .iter()
        .map(|remark| {
            json!({
                "line": remark.line,
                "through": remark.through,
                "what": words::remark(&remark.what),
            })
        })
        .collect();
    Ok(json!({
        "name": of.name,
        "rows": of.rows.len(),
        "remarks": remarks,
        "rms_k": found.map(|found| found.rms_k),
        "store_at_start_c": found.map(|found| found.start_c),
        "standardised_cooking_power": power.map(|power| json!({
            "intervals": power.intervals.len(),
            "at_50_k_w": power.at_50_k_w,
            "line_at_zero_w": power.line.map(|line| line.at_zero_w),
            "line_slope_w_k": power.line.map(|line| line.slope_w_k),
            "line_r2": power.line.map(|line| line.r2),
            "conditions_not_met": power.unmet.iter().map(words::condition).collect::<Vec<_>>(),
        })),
        "water_boiling_test": water.map(|water| json!({
            "start_c": water.start_c,
            "hottest_c": water.hottest_c,
            "boil_s": water.boil_s,
            "corrected_s": water.corrected_s,
            "evaporated_kg": water.evaporated_kg,
            "efficiency": water.efficiency,
        })),
        "diagnosis": diagnosis.map(|diagnosis| self::diagnosis(&diagnosis)),
    }))
}

fn fate(fate: Fate) -> Value {
    json!({ "boils_s": fate.boils_s, "hottest_c": fate.hottest_c })
}

fn diagnosis(diagnosis: &Diagnosis) -> Value {
    let limits: Vec<Value> = diagnosis
        .limits
        .iter()
        .map(|ranked| {
            json!({
                "limit": words::limit(ranked.limit),
                "change": words::change(ranked.change),
                "then": fate(ranked.fate),
                "without_it": fate(ranked.without),
                "helps": ranked.helps,
            })
        })
        .collect();
    let advice: Vec<Value> = diagnosis
        .advice
        .iter()
        .map(
            |Advice {
                 change,
                 fate: then,
                 cost,
             }| {
                json!({ "change": words::change(*change), "then": fate(*then), "cost": cost })
            },
        )
        .collect();
    let account = diagnosis.account;
    json!({
        "as_it_was": fate(diagnosis.as_it_was),
        "heat_suffices": diagnosis.heat_suffices,
        "limits": limits,
        "advice": advice,
        "heat_j": {
            "store_before": account.store_before_j,
            "pot_before": account.pot_before_j,
            "from_sun": account.from_sun_j,
            "store_after": account.store_after_j,
            "pot_after": account.pot_after_j,
            "jacket": account.jacket_j,
            "pot_loss": account.pot_loss_j,
            "steam": account.steam_j,
        },
    })
}
