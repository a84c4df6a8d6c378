//! Whether what is typed at the bench can be meant.

use model::bench::readings::{Column, Correction};
use model::bench::{PotIn, Prices};
use model::local_time::LocalTime;

use crate::state::action::cookers::checked_name;
use crate::state::action::entries::check_past;
use crate::state::bench::{Reading, RunAbout, RunReadings, TestRun};
use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};

pub(super) fn about(about: RunAbout) -> Result<RunAbout, Refused> {
    let name = checked_name(&about.name)?;
    within(Field::AirC, about.air_c, limits::AIR_C)?;
    within(Field::HeaterW, about.heater_w, limits::HEATER_W)?;
    within(Field::WindMS, about.plane.wind_m_s, limits::WIND_M_S)?;
    within(
        Field::ApertureM2,
        about.plane.intercept_m2,
        limits::APERTURE_M2,
    )?;
    if limits::NOTES_LETTERS < about.notes.chars().count() {
        return Err(Field::Notes.refuse(Wrong::TooLong {
            n_most: limits::NOTES_LETTERS,
        }));
    }
    Ok(RunAbout { name, ..about })
}

pub(super) fn run(run: &TestRun, now: LocalTime) -> Result<(), Refused> {
    check_past(Field::At, run.started, now)?;
    if let Some(at) = run.ended {
        end(run, at, now)?;
    }
    readings(run, now)?;
    pots(run, now)
}

pub(super) fn end(run: &TestRun, at: LocalTime, now: LocalTime) -> Result<(), Refused> {
    check_past(Field::OutAt, at, now)?;
    let readings = run.typed().iter().map(|reading| reading.at);
    let earliest = readings.max().unwrap_or(run.started);
    Field::OutAt.not_before(at, earliest)?;
    if let Some(pot) = run.pots.last() {
        let pot_s = pot.out_s.unwrap_or(pot.in_s);
        within_run(Field::OutAt, run, pot_s, run.since_start_s(at))?;
    }
    Ok(())
}

pub(super) fn readings(run: &TestRun, now: LocalTime) -> Result<(), Refused> {
    match &run.readings {
        RunReadings::Typed(typed) => {
            if limits::READINGS < typed.len() {
                return Err(Field::Readings.refuse(Wrong::TooMany {
                    n_most: limits::READINGS,
                }));
            }
            if !typed.is_sorted_by(|a, b| a.at < b.at) {
                return Err(Field::At.refuse(Wrong::Gone));
            }
            typed.iter().try_for_each(|it| reading(run, it, now))
        }
        RunReadings::File(text) => {
            if text.key.is_empty() || text.rows == 0 {
                return Err(Field::Readings.refuse(Wrong::Empty));
            }
            Field::Readings.within(text.span_s, (0.0, limits::RUN_S))?;
            Ok(())
        }
    }
}

pub(super) fn reading(run: &TestRun, reading: &Reading, now: LocalTime) -> Result<(), Refused> {
    check_past(Field::At, reading.at, now)?;
    Field::At.not_before(reading.at, run.started)?;
    if let Some(ended) = run.ended {
        Field::At.not_after(reading.at, ended)?;
    }
    if reading.is_empty() {
        return Err(Field::ReadingC.refuse(Wrong::Empty));
    }
    within(Field::ReadingC, reading.store_c, limits::READING_C)?;
    within(Field::PotC, reading.pot_c, limits::POT_C)?;
    within(Field::AirC, reading.air_c, limits::AIR_C)?;
    within(Field::HeaterW, reading.heater_w, limits::HEATER_W)
}

/// Single cells of a text that are put right or left out.
pub(super) fn corrections(corrections: &[Correction]) -> Result<(), Refused> {
    if limits::CORRECTIONS < corrections.len() {
        return Err(Field::Readings.refuse(Wrong::TooMany {
            n_most: limits::CORRECTIONS,
        }));
    }
    corrections.iter().try_for_each(|of| match of.column {
        Column::Store => within(Field::ReadingC, of.value, limits::READING_C),
        Column::Pot => within(Field::PotC, of.value, limits::POT_C),
        Column::Air => within(Field::AirC, of.value, limits::AIR_C),
        Column::Power => within(Field::HeaterW, of.value, limits::HEATER_W),
        // Light can be left out, and not told otherwise.
        Column::Irradiance if of.value.is_none() => Ok(()),
        Column::Irradiance | Column::Time | Column::Date | Column::Unused => {
            Err(Field::Readings.refuse(Wrong::Gone))
        }
    })
}

/// Pots that hold their water and are in one after another.
pub(super) fn pots(run: &TestRun, now: LocalTime) -> Result<(), Refused> {
    let mut free_s = 0.0;
    let ended = match (&run.readings, run.ended) {
        // The times of a file are its own.
        (RunReadings::File(text), _) => text.span_s,
        (RunReadings::Typed(_), ended) => run.since_start_s(ended.unwrap_or(now)),
    };
    let latest_s = ended + limits::CLOCK_SLACK_S as f64;
    if limits::POTS < run.pots.len() {
        return Err(Field::PutIn.refuse(Wrong::TooMany {
            n_most: limits::POTS,
        }));
    }
    for (idx, pot) in run.pots.iter().enumerate() {
        water(pot)?;
        within_run(Field::PutIn, run, free_s, pot.in_s)?;
        within_run(Field::PutIn, run, pot.in_s, latest_s)?;
        match pot.out_s {
            Some(out_s) => {
                within_run(Field::OutAt, run, pot.in_s, out_s)?;
                within_run(Field::OutAt, run, out_s, latest_s)?;
                free_s = out_s;
            }
            None if idx + 1 < run.pots.len() => {
                return Err(Field::PutIn.refuse(Wrong::MealRunning));
            }
            None => {}
        }
    }
    Ok(())
}

fn water(pot: &PotIn) -> Result<(), Refused> {
    Field::WaterKg.within(pot.water_kg, limits::WATER_KG)?;
    Field::WaterKg.within(pot.water_kg, (limits::LEAST_WET_KG, f64::MAX))?;
    within(Field::StartC, pot.start_c, limits::START_C)?;
    within(Field::LeftKg, pot.left_kg, (0.0, pot.water_kg))?;
    let holds_l = pot.pot.size.props().volume_l;
    if holds_l < pot.water_kg {
        return Err(Field::WaterKg.refuse(Wrong::PotTooSmall { holds_l }));
    }
    Ok(())
}

pub(super) fn prices(prices: &Prices) -> Result<(), Refused> {
    let Prices {
        store_kg,
        seat,
        fins,
        jacket,
        wrap,
        heater,
        panels,
    } = *prices;
    [store_kg, seat, fins, jacket, wrap, heater, panels]
        .into_iter()
        .try_for_each(|price| within(Field::Price, price, limits::PRICE))
}

/// Of two times of a run, from its start, the first before the second.
fn within_run(field: Field, run: &TestRun, first_s: f64, second_s: f64) -> Result<(), Refused> {
    field.within(first_s, (0.0, limits::RUN_S))?;
    field.within(second_s, (0.0, limits::RUN_S))?;
    if second_s < first_s {
        return Err(field.refuse(Wrong::Before {
            earliest: run.at(first_s),
        }));
    }
    Ok(())
}

fn within(field: Field, value: Option<f64>, limits: (f64, f64)) -> Result<(), Refused> {
    value.map_or(Ok(()), |value| field.within(value, limits).map(|_| ()))
}
