use model::local_time::Day;
use model::tonight::{Rig, Site};
use proptest::prelude::*;

use super::*;
use crate::i18n::Language;
use crate::present::tests::{english, speaking};
use crate::state::action::apply;
use crate::state::document::{Document, Whose};
use crate::state::zones::ZonePlace;

fn nairobi() -> Whereabouts {
    Whereabouts {
        zone: ZonePlace::of("Africa/Nairobi"),
        utc_offset_min: 180,
    }
}

fn nowhere() -> Whereabouts {
    Whereabouts {
        zone: None,
        utc_offset_min: -300,
    }
}

/// Sets up with a draft and gives the household.
fn set_up(draft: &Draft) -> Document {
    let (strings, _) = english();
    let mut document = Document::new(Whose::Own);
    let action = draft.action(strings).unwrap();
    apply(&mut document, action, Day(20_782).at_s(36_000)).unwrap();
    document
}

#[test]
fn what_is_proposed_is_a_household_that_can_cook() {
    let (_, formats) = english();
    let draft = Draft::new(nairobi(), &formats);
    assert_eq!(draft.unanswered(), None);
    let document = set_up(&draft);
    let household = document.household.clone().unwrap();
    assert!((household.place.latitude_deg + 1.3).abs() < 1e-9);
    assert!((household.place.altitude_m - 1700.0).abs() < 1e-9);
    assert_eq!(household.people, 4);
    let owned = document.cooker_in_use().unwrap();
    assert_eq!(owned.name, "My cooker");
    let site = Site {
        place: household.place,
        air: household.air,
    };
    Rig::new(&site, &owned.cooker).unwrap();
}

#[test]
fn every_answer_offered_can_be_put_together() {
    let (_, formats) = english();
    for preset in Preset::ALL {
        for watts in PANELS_W {
            let mut draft = Draft::new(nairobi(), &formats);
            draft.pick_preset(preset.key());
            draft.watts = watts.to_string();
            let document = set_up(&draft);
            let household = document.household.clone().unwrap();
            let site = Site {
                place: household.place,
                air: household.air,
            };
            Rig::new(&site, &document.cooker_in_use().unwrap().cooker).unwrap();
        }
    }
}

#[test]
fn a_device_on_universal_time_asks_for_all_of_the_place() {
    let (strings, formats) = english();
    let universal = Whereabouts {
        zone: None,
        utc_offset_min: 0,
    };
    let mut draft = Draft::new(universal, &formats);
    assert!(draft.latitude.is_empty() && draft.longitude.is_empty());
    assert_eq!(draft.picked_town(), "");
    // A cook need not know her latitude.
    draft.pick_town("Africa/Kampala", &formats);
    assert_eq!(draft.unanswered(), None);
    assert_eq!(draft.picked_town(), "Africa/Kampala");
    assert_eq!(
        draft.place_words(strings, &formats).unwrap(),
        "Near Kampala"
    );
    let place = set_up(&draft).household.unwrap().place;
    assert_eq!(place.utc_offset_min, 0, "the clock stays the device's");
    assert!((place.altitude_m - 1200.0).abs() < 1e-9);
    draft.longitude = "40".to_owned();
    assert_eq!(draft.picked_town(), "");
}

#[test]
fn towns_stand_by_country_and_each_can_be_picked() {
    let (strings, formats) = english();
    let country = |letters: &str| (letters != "AQ").then(|| letters.to_lowercase());
    let listed = towns(strings, None, &country);
    assert_eq!(listed[0].key, "");
    for pair in listed[1..].windows(2) {
        assert!(pair[0].label <= pair[1].label, "{pair:?}");
    }
    for town in &listed[1..] {
        let mut draft = Draft::new(nowhere(), &formats);
        draft.pick_town(&town.key, &formats);
        assert_eq!(draft.picked_town(), town.key);
    }
    let label = |key: &str| {
        let town = listed.iter().find(|town| town.key == key);
        town.map(|town| town.label.as_str())
    };
    // ISO 3166-1.
    assert_eq!(label("Asia/Kathmandu"), Some("np: Kathmandu"));
    assert_eq!(label("Africa/Nairobi"), Some("ke: Nairobi"));
    assert_eq!(label("Antarctica/Vostok"), Some("Vostok"));
    // An old name only for a device that has it.
    assert_eq!(label("Asia/Katmandu"), None);
    let own = towns(strings, Some("Asia/Katmandu"), &country);
    assert_eq!(own.len(), listed.len() + 1);
}

#[test]
fn answers_outlive_a_reload() {
    let (_, formats) = english();
    let mut draft = Draft::new(nairobi(), &formats);
    draft.latitude = "1,5".to_owned();
    draft.height = String::new();
    draft.west = true;
    draft.pick_preset(Preset::SandInPerlite.key());
    draft.people = "seven".to_owned();
    let kept = draft.kept();
    assert_eq!(Draft::resumed(Some(&kept), nairobi(), &formats), draft);
    let new = Draft::new(nairobi(), &formats);
    for broken in [
        "",
        "answers 1",
        "{}",
        &kept.replace("true", "maybe"),
        &kept[2..],
    ] {
        assert_eq!(
            Draft::resumed(Some(broken), nairobi(), &formats),
            new,
            "{broken}"
        );
    }
    assert_eq!(Draft::resumed(None, nairobi(), &formats), new);
}

#[test]
fn a_device_without_a_place_asks_for_the_latitude_only() {
    let (strings, formats) = english();
    let mut draft = Draft::new(nowhere(), &formats);
    assert_eq!(draft.unanswered(), Some(Question::Place));
    assert!(draft.latitude_deg().is_err_and(|it| it.is_empty_field()));
    assert_eq!(draft.place_words(strings, &formats), None);
    draft.latitude = "12,5".to_owned();
    draft.south = true;
    assert_eq!(draft.unanswered(), None);
    assert_eq!(
        draft.place_words(strings, &formats).unwrap(),
        "12.5° south, 75° west"
    );
}

#[test]
fn the_place_has_the_towns_name_until_it_is_changed() {
    let (strings, formats) = speaking(Language::Spanish);
    let mut draft = Draft::new(nairobi(), &formats);
    assert_eq!(
        draft.place_words(strings, &formats).unwrap(),
        "Cerca de Nairobi"
    );
    draft.south = false;
    assert_eq!(
        draft.place_words(strings, &formats).unwrap(),
        "1.3° norte, 36.8° este"
    );
}

#[test]
fn impossible_answers_are_refused() {
    let (strings, formats) = english();
    let say = |mistake: Mistake| {
        mistake
            .words(strings, &formats, Day(0))
            .replace('\u{A0}', " ")
    };
    let mut draft = Draft::new(nairobi(), &formats);
    draft.latitude = "95".to_owned();
    draft.longitude = "-20".to_owned();
    draft.height = "9000".to_owned();
    draft.watts = "0".to_owned();
    draft.people = "0".to_owned();
    assert_eq!(say(draft.latitude_deg().unwrap_err()), "At most 90°.");
    assert_eq!(say(draft.longitude_deg().unwrap_err()), "At least 0°.");
    assert_eq!(say(draft.height_m().unwrap_err()), "At most 6000 m.");
    assert_eq!(say(draft.watts_w().unwrap_err()), "At least 5.0 W.");
    assert_eq!(say(draft.n_people().unwrap_err()), "At least 1.");
    for question in Question::ALL {
        assert_eq!(
            draft.is_answered(question),
            question == Question::Cooker,
            "{question:?}"
        );
    }
}

#[test]
fn the_land_follows_the_height_and_the_height_the_land() {
    let (_, formats) = english();
    let mut draft = Draft::new(nairobi(), &formats);
    assert_eq!(draft.picked_land(), "highland");
    draft.pick_land("highland", &formats);
    assert_eq!(draft.height, "1700", "a height that fits is kept");
    draft.pick_land("mountains", &formats);
    assert_eq!(draft.height, "2500");
    draft.height = "12".to_owned();
    assert_eq!(draft.picked_land(), "sea");
    draft.height = "much".to_owned();
    assert_eq!(draft.picked_land(), "");
    for land in Land::ALL {
        assert_eq!(Land::at(land.typical_m()), land);
    }
}

#[test]
fn questions_follow_one_another() {
    let mut question = Question::ALL[0];
    assert_eq!(question.before(), None);
    for number in 1..Question::ALL.len() {
        let next = question.next().unwrap();
        assert_eq!((next.number(), next.before()), (number, Some(question)));
        question = next;
    }
    assert_eq!(question.next(), None);
}

#[test]
fn every_choice_says_what_it_is() {
    for language in Language::ALL {
        let (strings, formats) = speaking(language);
        let all = [
            land_options(strings, &formats),
            preset_options(strings),
            panel_options(&formats),
            people_options(),
        ];
        for option in all.iter().flatten() {
            assert!(
                !option.label.is_empty() && !option.key.is_empty(),
                "{option:?}"
            );
        }
    }
    let (strings, formats) = english();
    let details: Vec<String> = land_options(strings, &formats)
        .into_iter()
        .map(|land| land.detail.replace('\u{A0}', " "))
        .collect();
    assert_eq!(
        details,
        [
            "up to 300 m",
            "up to 1100 m",
            "up to 2000 m",
            "above 2000 m"
        ]
    );
}

proptest! {
    #[test]
    fn any_place_on_earth_can_be_set_up(
        latitude in 0.0..=90.0_f64, longitude in 0.0..=180.0_f64, south in any::<bool>(),
        west in any::<bool>(), height in -450..=6000_i32, watts in 5..=3600_u32,
    ) {
        let (_, formats) = english();
        let draft = Draft {
            latitude: formats.field(latitude, 1),
            longitude: formats.field(longitude, 1),
            south,
            west,
            height: height.to_string(),
            watts: watts.to_string(),
            ..Draft::new(nowhere(), &formats)
        };
        prop_assert_eq!(draft.unanswered(), None);
        let place = set_up(&draft).household.unwrap().place;
        prop_assert!((place.latitude_deg.abs() - latitude).abs() < 0.051);
        prop_assert!(!south || place.latitude_deg <= 0.0);
    }
}
