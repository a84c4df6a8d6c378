//! The combinations that are not accepted.

use super::{Build, OIL_FILM_LIMIT_C, Refusal};
use crate::media::Chemistry;
use crate::seat::Seat;

/// True also where the temperature is not a number: what is not known is not accepted.
fn exceeds(temperature_c: f64, limit_c: f64) -> bool {
    temperature_c.is_nan() || limit_c < temperature_c
}

pub(super) fn of(build: &Build) -> Vec<Refusal> {
    let mut found = Vec::new();
    if build.cut_out_c.is_nan() {
        found.push(Refusal::CutOutUnknown);
    }
    nitrates(build, &mut found);
    for &medium in &build.media {
        let limit_c = medium.props().limit_c.value;
        if limit_c < build.cut_out_c {
            found.push(Refusal::AboveMediumLimit {
                medium,
                limit_c,
                cut_out_c: build.cut_out_c,
            });
        }
    }
    for layer in &build.layers {
        let limit_c = layer.material.props().limit_c.value;
        if exceeds(layer.hot_face_c, limit_c) {
            found.push(Refusal::AboveInsulationLimit {
                insulation: layer.material,
                limit_c,
                hot_face_c: layer.hot_face_c,
            });
        }
    }
    let limit_c = OIL_FILM_LIMIT_C.value;
    if build.seat.holds_oil() && limit_c < build.cut_out_c {
        found.push(Refusal::OilFilmTooHot {
            limit_c,
            cut_out_c: build.cut_out_c,
        });
    }
    found
}

/// A strong oxidiser with anything that burns is a propellant: California Code of Regulations,
/// title 8, section 5188, keeps all organic matter from nitrate baths.
fn nitrates(build: &Build, found: &mut Vec<Refusal>) {
    for nitrate in build.nitrates() {
        for &organic in build
            .media
            .iter()
            .filter(|medium| medium.props().chemistry.is_organic())
        {
            found.push(Refusal::NitrateWithOrganicMedium { nitrate, organic });
        }
        for hydrate in build.of_chemistry(Chemistry::SaltHydrate) {
            found.push(Refusal::NitrateWithWaterOfCrystallisation { nitrate, hydrate });
        }
        if build.seat.holds_oil() {
            found.push(Refusal::NitrateWithOilFilm { nitrate });
        }
        if build.seat == Seat::SunkInMelt {
            found.push(Refusal::NitrateTouchesPot { nitrate });
        }
        for layer in build
            .layers
            .iter()
            .filter(|layer| layer.material.props().is_combustible())
        {
            let insulation = layer.material;
            found.push(Refusal::NitrateWithCombustibleJacket {
                nitrate,
                insulation,
            });
        }
    }
}
