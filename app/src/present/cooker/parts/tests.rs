//! Every field can be read and written, and what can burn is refused in words.

use model::jacket::Jacket;
use model::local_time::Day;
use model::media::Medium;
use model::panel::Drive;
use model::presets::Preset;
use model::safety::Refusal;

use super::*;
use crate::present::cooker::fault::{check, check_change, words};
use crate::present::cooker::tests::{household_site, spanish};
use crate::present::tests::english;

const NUMBERS: [Key; 23] = [
    Key::ModuleW,
    Key::InSeries,
    Key::InParallel,
    Key::Tilt,
    Key::SheetVmp,
    Key::SheetImp,
    Key::SheetVoc,
    Key::SheetIsc,
    Key::SheetAlpha,
    Key::SheetBeta,
    Key::SheetCells,
    Key::Efficiency,
    Key::HeaterOhm,
    Key::WireOhm,
    Key::Cutout,
    Key::MediumKg(0),
    Key::Held,
    Key::PotLoss,
    Key::Depth,
    Key::Across,
    Key::LayerM(0),
    Key::Rods,
    Key::Contact,
];

fn edited(cooker: &Cooker, key: Key, text: &str) -> Result<Cooker, Fault> {
    let (_, formats) = english();
    let mut spare = Spare::default();
    spare.remember(cooker);
    let changed = changed(cooker, &spare, key, text, &formats)?;
    check(&household_site(), &changed)?;
    Ok(changed)
}

/// A cooker that has every part: data sheet, tracker, measured contact.
fn full() -> Cooker {
    let cooker = Preset::AluminiumInPerlite.cooker(100.0, 11.0);
    let cooker = edited(&cooker, Key::Sheet, "true").unwrap();
    let cooker = edited(&cooker, Key::Drive, "true").unwrap();
    edited(&cooker, Key::ContactKnown, "true").unwrap()
}

#[test]
fn every_number_is_written_as_it_is_read() {
    let (_, formats) = english();
    let cooker = full();
    for key in NUMBERS {
        let shown = text(&cooker, key, &formats);
        assert!(says(&cooker, key, &shown, &formats), "{key:?}: {shown}");
        let up = stepped(&cooker, key, &shown, 1, &formats);
        assert_ne!(up, shown, "{key:?}");
        let changed = changed(&cooker, &Spare::default(), key, &up, &formats).unwrap();
        assert_eq!(text(&changed, key, &formats), up, "{key:?}");
    }
}

#[test]
fn every_list_leads_back_to_what_is_picked() {
    let (strings, formats) = english();
    let cooker = full();
    let keys = [
        Key::Azimuth,
        Key::Medium(0),
        Key::Layer(0),
        Key::LidFit,
        Key::Seat,
        Key::PotKind,
        Key::PotSize,
        Key::Wrap,
    ];
    for key in keys {
        let options = options(strings, &formats, key);
        assert!(3 <= options.len(), "{key:?}");
        assert!(
            options
                .iter()
                .any(|option| option.key == picked(&cooker, key)),
            "{key:?}"
        );
        for option in options {
            let changed = changed(&cooker, &Spare::default(), key, &option.key, &formats).unwrap();
            assert_eq!(picked(&changed, key), option.key, "{key:?}");
        }
    }
}

#[test]
fn what_is_impossible_is_refused() {
    let cooker = full();
    assert_eq!(
        edited(&cooker, Key::MediumKg(0), "-2"),
        Err(Fault::TooLow(0.05))
    );
    assert_eq!(
        edited(&cooker, Key::Cutout, "900"),
        Err(Fault::TooHigh(600.0))
    );
    assert_eq!(
        edited(&cooker, Key::LayerM(0), "0"),
        Err(Fault::TooLow(0.001))
    );
    assert!(matches!(
        edited(&cooker, Key::ModuleW, ""),
        Err(Fault::Parse(_))
    ));
    // A voltage at most power above that of the open circuit.
    assert!(matches!(
        edited(&cooker, Key::SheetVmp, "30"),
        Err(Fault::Unworkable(_))
    ));
}

#[test]
fn what_can_burn_is_refused_with_the_reason() {
    let salt = Preset::NitrateInCeramicFibre.cooker(200.0, 11.0);
    let husk = model::insulation::Insulation::ALL
        .iter()
        .position(|row| *row == model::insulation::Insulation::RiceHusk)
        .unwrap();
    let fault = edited(&salt, Key::Layer(0), &husk.to_string()).unwrap_err();
    let Fault::Unsafe(refusals) = &fault else {
        panic!("{fault:?}")
    };
    assert!(
        refusals
            .iter()
            .any(|refusal| matches!(refusal, Refusal::NitrateWithCombustibleJacket { .. }))
    );
    let (strings, formats) = english();
    let said = words(strings, &formats, &fault, None, Day(0));
    assert!(
        said.contains("rice husk") && said.contains("nothing was changed"),
        "{said}"
    );
    let (strings, formats) = spanish();
    let said = words(strings, &formats, &fault, None, Day(0));
    assert!(
        said.contains("cáscara de arroz") && said.contains("nada cambió"),
        "{said}"
    );
}

/// Such a cooker comes from a copy that was changed by hand.
#[test]
fn a_cooker_that_could_burn_can_be_made_safe_step_by_step() {
    let site = household_site();
    let (_, formats) = english();
    let spare = Spare::default();
    let mut both = Preset::NitrateInCeramicFibre.cooker(200.0, 11.0);
    both.contact.seat = model::seat::Seat::OilFilm;
    assert!(matches!(check(&site, &both), Err(Fault::Unsafe(refusals)) if 2 <= refusals.len()));
    let step = |cooker: &Cooker, key, text: &str| {
        let next = changed(cooker, &spare, key, text, &formats).unwrap();
        check_change(&site, cooker, &next).map(|()| next)
    };
    // What has nothing to do with the danger can be changed, and less danger is welcome.
    step(&both, Key::Tilt, "20").unwrap();
    let cool = step(&both, Key::Cutout, "190").unwrap();
    // More is not.
    assert!(step(&cool, Key::Cutout, "320").is_err());
    let dry = step(&cool, Key::Seat, "1").unwrap();
    assert_eq!(check(&site, &dry), Ok(()));
}

#[test]
fn a_medium_can_be_added_and_taken_out_down_to_no_store() {
    let cooker = full();
    let two = edited(&cooker, Key::AddMedium, "").unwrap();
    assert_eq!(two.store.charges.len(), 2);
    let one = edited(&two, Key::RemoveMedium(0), "").unwrap();
    assert_eq!(one.store.charges[0].medium, Medium::MildSteel);
    let none = edited(&one, Key::RemoveMedium(0), "").unwrap();
    assert!(none.store.charges.is_empty());
}

#[test]
fn a_jacket_that_was_measured_can_be_described_again_as_it_was() {
    let (_, formats) = english();
    let cooker = full();
    let mut spare = Spare::default();
    spare.remember(&cooker);
    let measured = changed(&cooker, &spare, Key::JacketKnown, "true", &formats).unwrap();
    let Jacket::Measured { loss_w_k, .. } = measured.jacket else {
        panic!("{:?}", measured.jacket)
    };
    // It starts from what the description gives.
    assert!((0.1..1.0).contains(&loss_w_k), "{loss_w_k}");
    spare.remember(&measured);
    let again = changed(&measured, &spare, Key::JacketKnown, "false", &formats).unwrap();
    assert_eq!(again.jacket, cooker.jacket);
}

#[test]
fn a_room_keeps_its_width_and_height_when_it_becomes_square() {
    let (_, formats) = english();
    let cooker = full();
    let square = changed(&cooker, &Spare::default(), Key::Shape, "true", &formats).unwrap();
    for key in [Key::Length, Key::Width] {
        assert_eq!(
            text(&square, key, &formats),
            text(&cooker, Key::Across, &formats)
        );
    }
    assert_eq!(
        text(&square, Key::Height, &formats),
        text(&cooker, Key::Height, &formats)
    );
    assert_eq!(text(&square, Key::Across, &formats), "");
}

#[test]
fn a_sheet_keeps_its_coefficients_as_shares_and_gives_the_watts() {
    let (_, formats) = english();
    let cooker = full();
    let beta = text(&cooker, Key::SheetBeta, &formats);
    let changed = edited(&cooker, Key::SheetVoc, "24").unwrap();
    assert_eq!(text(&changed, Key::SheetBeta, &formats), beta);
    let changed = edited(&changed, Key::SheetImp, "5.7").unwrap();
    let expected_w = changed.panels.sheet.unwrap().rated_w();
    assert!((changed.panels.module_w - expected_w).abs() < 1e-9);
}

#[test]
fn a_tracker_that_was_there_comes_back_as_it_was() {
    let (_, formats) = english();
    let mut spare = Spare::default();
    let cooker = edited(&full(), Key::Efficiency, "88").unwrap();
    spare.remember(&cooker);
    let direct = changed(&cooker, &spare, Key::Drive, "false", &formats).unwrap();
    assert_eq!(direct.heater.drive, Drive::Direct);
    let again = changed(&direct, &spare, Key::Drive, "true", &formats).unwrap();
    assert_eq!(again.heater.drive, cooker.heater.drive);
}

#[test]
fn azimuths_are_winds() {
    let mut cooker = full();
    for (azimuth_deg, wind) in [
        (0.0, "0"),
        (-45.0, "14"),
        (180.0, "8"),
        (352.0, "0"),
        (10.0, "0"),
    ] {
        cooker.panels.azimuth_deg = azimuth_deg;
        assert_eq!(picked(&cooker, Key::Azimuth), wind, "{azimuth_deg}");
    }
}
