use model::presets::Preset;

use super::*;
use crate::present::cooker::fault::check_change;
use crate::present::cooker::parts::{Key, Spare, changed, says, text};
use crate::present::cooker::tests::household_site;
use crate::present::tests::english;

/// A cooker that has every such part.
fn all_parts() -> Cooker {
    let mut cooker = Preset::AluminiumInFlask.cooker(200.0, 11.0);
    let changes = [
        (Way::AddElement, ""),
        (Way::AddElement, ""),
        (Way::Metal, "1"),
        (Way::Dish, ON),
        (Way::Second, ON),
        (Way::Carried, ON),
        (Way::FilledOn, "2026-05-04"),
    ];
    for (way, text) in changes {
        pick(&mut cooker, way, text);
    }
    cooker
}

#[test]
fn numbers_are_shown_typed_and_kept() {
    let (_, formats) = english();
    let numbers = [
        (Way::ElementOhm(0), "7.5"),
        (Way::ElementOhm(1), "30"),
        (Way::FinM, "1.5"),
        (Way::PitchM, "12"),
        (Way::FlaskAcross, "24"),
        (Way::FlaskHeight, "18"),
        (Way::FlaskGap, "6"),
        (Way::Aperture, "2.4"),
        (Way::Optical, "55"),
        (Way::SecondW, "800"),
        (Way::SecondShare, "20"),
        (Way::WayS, "15"),
        (Way::WayWrap, "4"),
    ];
    let mut cooker = all_parts();
    for (way, typed) in numbers {
        let key = Key::Way(way);
        let next = changed(&cooker, &Spare::default(), key, typed, &formats).unwrap();
        assert!(says(&next, key, typed, &formats), "{way:?}");
        assert_eq!(text(&next, key, &formats), typed, "{way:?}");
        assert!(!says(&cooker, key, typed, &formats), "{way:?}");
        check_change(&household_site(), &cooker, &next).unwrap();
        cooker = next;
    }
    // What a plain cooker has not is passed over.
    let plain = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    for (way, typed) in numbers {
        let key = Key::Way(way);
        let same = changed(&plain, &Spare::default(), key, typed, &formats).unwrap();
        assert_eq!((same, value(&plain, way)), (plain.clone(), None), "{way:?}");
    }
}

#[test]
fn what_is_picked_is_shown_as_picked() {
    let picks = [
        (Way::Metal, "2"),
        (Way::MetalOf, "1"),
        (Way::FlaskWall, "1"),
        (Way::VacuumLost, ON),
        (Way::TurnedOver, ON),
        (Way::FilledOn, "2026-06-01"),
        (Way::Second, "false"),
        (Way::Dish, "false"),
    ];
    let mut cooker = all_parts();
    for (way, text) in picks {
        assert_ne!(picked(&cooker, way).as_deref(), Some(text), "{way:?}");
        pick(&mut cooker, way, text);
        assert_eq!(picked(&cooker, way).as_deref(), Some(text), "{way:?}");
    }
    pick(&mut cooker, Way::RemoveElement(0), "");
    assert_eq!(cooker.charging.more_elements_ohm.len(), 1);
    pick(&mut cooker, Way::Carried, "false");
    assert_eq!(cooker.carried, None);
}

#[test]
fn every_list_has_a_name_for_what_is_picked() {
    let (strings, _) = english();
    for way in [Way::Metal, Way::MetalOf, Way::FlaskWall] {
        let picked = picked(&all_parts(), way).unwrap();
        let names = options(strings, way);
        assert!(names.iter().any(|option| option.key == picked), "{way:?}");
    }
}
