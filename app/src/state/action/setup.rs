//! Place, air and people.

use crate::state::action::{Done, cookers};
use crate::state::document::{Document, Household};
use crate::state::ids::{CookerId, RunId};
use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};
use model::cooker::Cooker;

pub(super) fn set_up(
    document: &mut Document,
    household: Household,
    name: &str,
    cooker: Cooker,
) -> Result<Done, Refused> {
    check(&household)?;
    let done = cookers::add(document, name, cooker)?;
    document.household = Some(household);
    Ok(done)
}

pub(super) fn change_household(
    document: &mut Document,
    household: Household,
) -> Result<Done, Refused> {
    check(&household)?;
    document.household = Some(household);
    Ok(Done::Changed)
}

/// Names what is still there.
pub(super) fn name_again(
    document: &mut Document,
    cookers: &[(CookerId, String)],
    runs: &[(RunId, String)],
) -> Result<Done, Refused> {
    for (_, name) in cookers {
        cookers::checked_name(name)?;
    }
    for (_, name) in runs {
        cookers::checked_name(name)?;
    }
    for owned in &mut document.cookers {
        if let Some((_, name)) = cookers.iter().find(|(id, _)| *id == owned.id) {
            owned.name.clone_from(name);
        }
    }
    for run in &mut document.bench.runs {
        if let Some((_, name)) = runs.iter().find(|(id, _)| *id == run.id) {
            run.about.name.clone_from(name);
        }
    }
    Ok(Done::Changed)
}

fn check(household: &Household) -> Result<(), Refused> {
    let place = household.place;
    Field::LatitudeDeg.within(place.latitude_deg, limits::LATITUDE_DEG)?;
    Field::LongitudeDeg.within(place.longitude_deg, limits::LONGITUDE_DEG)?;
    Field::AltitudeM.within(place.altitude_m, limits::ALTITUDE_M)?;
    Field::UtcOffsetMin.within(f64::from(place.utc_offset_min), limits::UTC_OFFSET_MIN)?;
    for (day_c, night_c) in household.air.day_c.into_iter().zip(household.air.night_c) {
        Field::AirC.within(day_c, limits::AIR_C)?;
        Field::AirC.within(night_c, limits::AIR_C)?;
        if day_c < night_c {
            return Err(Field::AirC.refuse(Wrong::NightWarmerThanDay));
        }
    }
    Field::People.count(household.people, limits::PEOPLE)?;
    Ok(())
}
