//! What sets a cooker apart from one that is made of the same.

use model::cooker::{Cooker, Metal};
use model::jacket::{Jacket, JacketLayer, LayerKind};
use model::panel::Drive;

use super::list::made_of;
use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;
use crate::state::document::Document;
use crate::state::ids::CookerId;

/// So many differences are told; more would be the list of parts over again.
const MOST: usize = 3;

/// How the cooker differs from those of the household that read alike, each in a few words.
pub(super) fn unlike(
    strings: &Strings,
    formats: &Formats,
    document: &Document,
    id: CookerId,
) -> Vec<String> {
    let Some(owned) = document.cooker(id) else {
        return Vec::new();
    };
    let say = |cooker| made_of(strings, formats, cooker);
    let said = say(&owned.cooker);
    let alike: Vec<_> = document
        .cookers
        .iter()
        .filter(|other| other.id != id && say(&other.cooker) == said)
        .map(|other| traits(strings, formats, &other.cooker))
        .collect();
    let differs = |(idx, own): &(usize, String)| {
        let others = alike.iter().filter_map(|other| other.get(*idx));
        !own.is_empty() && others.into_iter().any(|other| other != own)
    };
    let own = traits(strings, formats, &owned.cooker);
    let told = own.into_iter().enumerate().filter(differs);
    told.map(|(_, own)| own).take(MOST).collect()
}

/// What a cooker is beside its media and panels, in the same order for each; a cook sees the first
/// soonest.
fn traits(strings: &Strings, formats: &Formats, cooker: &Cooker) -> [String; 9] {
    let words = &strings.cooker.list;
    let tables = &strings.tables;
    let metal = match cooker.store.metal {
        None => words.no_metal,
        Some(Metal::Fins { .. }) => words.fins,
        Some(Metal::Foam { .. }) => words.foam,
    };
    let charging = &cooker.charging;
    let also = [
        (charging.concentrator.is_some(), strings.cooker.ways.dish),
        (charging.second.is_some(), strings.cooker.ways.second),
        (cooker.carried.is_some(), strings.cooker.ways.carried),
    ];
    let also = also.into_iter().filter(|(is_so, _)| *is_so);
    let also: Vec<_> = also.map(|(_, said)| said).collect();
    let drive = match cooker.heater.drive {
        Drive::Direct => words.straight,
        Drive::Tracker { .. } => words.by_tracker,
    };
    [
        metal.to_owned(),
        jacket(strings, formats, cooker),
        (tables.seat)(cooker.contact.seat).to_owned(),
        also.join(", "),
        (words.pot)(
            (tables.pot_kind)(cooker.pot.kind),
            &formats.litres(cooker.pot.size.props().volume_l),
        ),
        (words.cutout)(&formats.temperature(cooker.store.cutout_c, Sure::Known)),
        drive.to_owned(),
        (words.heater)(&formats.ohms(cooker.heater.resistance_ohm)),
        (words.depth)(&formats.centimetres(cooker.store.depth_m)),
    ]
}

fn jacket(strings: &Strings, formats: &Formats, cooker: &Cooker) -> String {
    let words = &strings.cooker.list;
    let layer = |layer: &JacketLayer| {
        let of = match layer.kind {
            LayerKind::Insulation { material } => (strings.tables.insulation)(material),
            LayerKind::StillAir { .. } => strings.cooker.parts.jacket.still_air,
        };
        (words.charge)(&formats.centimetres(layer.thickness_m), of)
    };
    match &cooker.jacket {
        Jacket::Layers(layered) => {
            let layers: Vec<_> = layered.layers.iter().map(layer).collect();
            layers.join(", ")
        }
        Jacket::Flask { .. } => strings.cooker.ways.flask.to_owned(),
        Jacket::Measured { .. } => words.jacket_measured.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::cooker::list::line;
    use crate::present::tests::english;
    use crate::state::action::{Action, apply};
    use crate::state::sample::{at, full};
    use model::insulation::Insulation;
    use model::presets::Preset;
    use model::seat::Seat;

    fn details(document: &Document) -> Vec<String> {
        let (strings, formats) = english();
        let say = |id| line(strings, &formats, document, id).unwrap().detail;
        let ids = document.cookers.iter().map(|owned| owned.id);
        ids.map(|id| say(id).replace('\u{A0}', " ")).collect()
    }

    #[test]
    fn two_cookers_of_the_same_are_told_apart() {
        let mut document = full();
        document.cookers.truncate(1);
        let first = document.cookers[0].id;
        document.cookers[0].cooker = Preset::SandInPerlite.cooker(320.0, 11.0);
        let alone = details(&document);
        let copy = Action::CopyCooker {
            id: first,
            name: "With fins".to_owned(),
        };
        apply(&mut document, copy, at(20, 0)).unwrap();
        assert_eq!(
            details(&document),
            [&*alone[0], &*alone[0]],
            "copies are the same"
        );
        let second = &mut document.cookers[1].cooker;
        second.store.metal = Some(Metal::USUAL_FINS);
        second.contact.seat = Seat::OilFilm;
        if let Jacket::Layers(layered) = &mut second.jacket {
            layered.layers[0].kind = LayerKind::Insulation {
                material: Insulation::RiceHusk,
            };
            layered.layers[0].thickness_m = 0.12;
        }
        let [plain, finned] = <[String; 2]>::try_from(details(&document)).unwrap();
        assert_eq!(
            finned,
            format!(
                "{} · with fins · 12 cm of rice husk · a film of oil between",
                alone[0]
            )
        );
        assert!(
            plain.contains("no fins") && plain.contains("perlite"),
            "{plain}"
        );
        // Where all of it is another, it says so already.
        document.cookers[1].cooker = Preset::SoapstoneInVermiculite.cooker(320.0, 11.0);
        assert_eq!(details(&document)[0], alone[0]);
    }
}
