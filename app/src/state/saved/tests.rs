//! What is written is read back.

use model::bench::Parameter;
use model::cooker::{Charging, Metal};
use model::dish::Dish;
use model::insulation::Insulation;
use model::jacket::LidFit;
use model::journal::{Formerly, What};
use model::media::Medium;
use model::pot::{Lid, PotKind, PotSize, Wrap};
use model::presets::Preset;
use model::seat::Seat;
use proptest::prelude::*;

use super::reader::Read;
use super::*;
use crate::state::action::apply;
use crate::state::bench::RunReadings;
use crate::state::document::Whose;
use crate::state::plan::Amount;
use crate::state::sample::{any_action, at, full, full_bench, set_up};
use crate::state::settings::Settings;

/// A save of the first version, written by the app.
const V1: &str = include_str!("v1/sample.json");

/// The same, from before there were test runs.
const V1_FIRST: &str = include_str!("v1/first.json");

/// The same of a household with numbers and names at the edge, as small as can be.
const V1_EDGES: &str = include_str!("v1/edges.json");

/// The same before anything is known.
const V1_EMPTY: &str = include_str!("v1/empty.json");

/// A household whose numbers and names are the hardest to write.
fn at_the_edges() -> Document {
    let mut document = full();
    document.whose = Whose::Example;
    document.cookers[0].name =
        "\"Tall\" \\ pot / \u{8}\u{9}\u{a}\u{c}\u{d}\u{1}\u{1f}\u{7f} é ☀ 🜂 \u{2028}".into();
    document.cookers[1].name = String::new();
    let panels = &mut document.cookers[0].cooker.panels;
    panels.module_w = f64::MAX;
    panels.in_series = u32::MAX;
    panels.tilt_deg = -0.0;
    panels.azimuth_deg = 5e-324;
    let store = &mut document.cookers[0].cooker.store;
    store.charges.clear();
    store.depth_m = 0.1 + 0.2;
    store.cutout_c = 123_456_789_012_345_680.0;
    let household = document.household.as_mut().unwrap();
    household.place.altitude_m = 1e16;
    household.place.utc_offset_min = i32::MIN;
    for (month, air_c) in household.air.day_c.iter_mut().enumerate() {
        *air_c = 1.0 / 3.0 * 10_f64.powi(3 * i32::try_from(month).unwrap() - 17);
    }
    document.entries[0].what = What::LidOpen { for_s: i64::MIN };
    document.entries[1].what = What::HeaterOff { for_s: i64::MAX };
    document.plan.as_mut().unwrap().amount = Amount::People(0);
    document.settings = Settings::default();
    document
}

fn round_trip(document: &Document) -> Decoded {
    let text = encode(document, at(20, 0), Layout::Compact).unwrap();
    decode(&text).unwrap()
}

fn check_error(change: impl FnOnce(&mut serde_json::Value), expected: DecodeError) {
    let mut save: serde_json::Value = serde_json::from_str(V1).unwrap();
    change(&mut save);
    assert_eq!(decode(&save.to_string()), Err(expected));
}

fn value(at: &str, value: &str) -> DecodeError {
    DecodeError::Value {
        at: at.to_owned(),
        value: value.to_owned(),
    }
}

#[test]
fn a_save_from_before_the_bench_is_read() {
    assert_eq!(decode(V1_FIRST).unwrap().document, full());
}

#[test]
fn a_full_household_survives() {
    let document = full_bench();
    assert_eq!(
        round_trip(&document),
        Decoded {
            document,
            saved_at: at(20, 0),
            texts: Vec::new(),
        }
    );
}

#[test]
fn a_copy_carries_the_readings_of_files() {
    let document = full_bench();
    let texts = vec![Text {
        key: document.bench.keys().remove(0),
        text: "time;store\n17:00;\"251\"\n".into(),
    }];
    let text = encode_with(&document, at(20, 0), Layout::Readable, &texts).unwrap();
    let decoded = decode(&text).unwrap();
    assert_eq!((decoded.document, decoded.texts), (document, texts));
}

#[test]
fn an_empty_one_survives_too() {
    assert_eq!(
        round_trip(&Document::default()).document,
        Document::default()
    );
}

#[test]
fn the_committed_save_of_version_1_is_read_and_written_alike() {
    let decoded = decode(V1).unwrap();
    let document = &decoded.document;
    assert_eq!((document.cookers.len(), document.entries.len()), (2, 3));
    assert_eq!((document.skies.len(), document.erased.len()), (2, 5));
    assert_eq!(document.bench.runs.len(), 2);
    assert!(document.running_meal().is_some() && document.plan.is_some());
    let written = encode(&decoded.document, decoded.saved_at, Layout::Readable).unwrap();
    assert_eq!(written.trim(), V1.trim());
}

/// Fits that were kept before the description was kept with them.
/// A pot's measured loss goes along; of a cooker without one nothing is written, as in older saves.
#[test]
fn what_a_pot_was_measured_to_lose_is_kept() {
    let mut document = set_up();
    let write = |document: &Document| encode(document, at(20, 0), Layout::Compact).unwrap();
    assert!(!write(&document).contains("pot_loss_share"));
    let cooker = &mut document.cookers[0].cooker;
    cooker.pot_loss_share = 1.4;
    cooker.spreads.pot_loss = Some(0.1);
    let written = write(&document);
    assert!(written.contains(r#""pot_loss_share":1.4"#));
    assert_eq!(decode(&written).unwrap().document, document);
    // A copy whose spreads were written before there was one for the pot.
    let older = written.replace(r#","pot_loss":0.1"#, "");
    assert!(older.len() < written.len());
    let read = decode(&older).unwrap().document;
    assert_eq!(read.cookers[0].cooker.spreads.pot_loss, None);
}

/// Copies of before single rows could be put right have none that were.
#[test]
fn a_save_without_corrected_rows_is_read() {
    let (before, rest) = V1
        .split_once(",\n                \"corrections\": [")
        .unwrap();
    let (_, after) = rest.split_once("\n                ]").unwrap();
    let document = decode(&format!("{before}{after}")).unwrap().document;
    let runs = document.bench.runs.iter();
    let texts = runs.filter_map(|run| match &run.readings {
        RunReadings::File(text) => Some(text),
        RunReadings::Typed(_) => None,
    });
    let corrections: Vec<usize> = texts.map(|text| text.hints.corrections.len()).collect();
    assert_eq!(corrections, [0]);
}

#[test]
fn a_save_without_descriptions_beside_its_fits_is_read() {
    let lines = V1.lines().filter(|line| !line.contains("\"described"));
    let without = lines.collect::<Vec<_>>().join("\n");
    let without = without.replace("\"standard_w\": null,", "\"standard_w\": null");
    assert!(without.len() < V1.len());
    assert_eq!(
        decode(&without).unwrap().document,
        decode(V1).unwrap().document
    );
}

#[test]
fn what_is_written_is_the_same_to_the_byte() {
    let document = at_the_edges();
    let written = encode(&document, at(20, 0), Layout::Compact).unwrap();
    assert_eq!(written, V1_EDGES.trim_end());
    assert_eq!(decode(&written).unwrap().document, document);
    let written = encode(&Document::default(), at(20, 0), Layout::Readable).unwrap();
    assert_eq!(written, V1_EMPTY.trim_end());
}

#[test]
fn what_is_not_ours_is_told_apart() {
    for text in [
        "",
        "null",
        "[]",
        "{}",
        "{\"format\":\"other\",\"version\":1}",
        "not json",
    ] {
        assert_eq!(decode(text), Err(DecodeError::NotOurs), "{text}");
    }
    check_error(|save| save["version"] = 0.into(), DecodeError::NotOurs);
}

#[test]
fn a_newer_save_is_left_alone() {
    check_error(
        |save| save["version"] = 2.into(),
        DecodeError::Newer { version: 2 },
    );
}

#[test]
fn a_broken_value_is_named_with_its_place() {
    check_error(
        |save| save["body"]["entries"][0]["at"] = "2026-02-30T10:00:00".into(),
        value("entries[0].at", "2026-02-30T10:00:00"),
    );
    check_error(
        |save| {
            save["body"]["cookers"][1]["cooker"]["store"]["charges"][0]["medium"] = "cheese".into();
        },
        value("cookers[1].cooker.store.charges[0].medium", "cheese"),
    );
    check_error(
        |save| save["body"]["in_use"] = 77.into(),
        value("in_use", "77"),
    );
    check_error(
        |save| save["body"]["next_id"] = 1.into(),
        value("next_id", "1"),
    );
    check_error(
        |save| save["saved_at"] = "noon".into(),
        value("saved_at", "noon"),
    );
    check_error(
        |save| save["body"]["skies"]["2026-11-25"]["hourly"] = "cc".into(),
        value("skies.2026-11-25.hourly", "cc"),
    );
}

#[test]
fn a_broken_shape_is_told() {
    let mut save: serde_json::Value = serde_json::from_str(V1).unwrap();
    save["body"]["cookers"] = 3.into();
    assert!(matches!(
        decode(&save.to_string()),
        Err(DecodeError::Shape { .. })
    ));
    let cut = V1.get(..V1.len() / 2).unwrap();
    let huge = V1.replace("3350.0", "1e999");
    let twice = V1.replace("\"people\": 5", "\"people\": 5, \"people\": 6");
    let deep = V1.replace("\"entries\": [", &"\"entries\": [".repeat(100_000));
    for text in [cut, &huge, &twice, &deep] {
        assert!(matches!(decode(text), Err(DecodeError::Shape { .. })));
    }
}

#[test]
fn a_broken_shape_is_named_with_its_place() {
    fn shape(at: &str) -> DecodeError {
        DecodeError::Shape { at: at.to_owned() }
    }
    check_error(
        |save| save["body"]["entries"][2]["what"]["meal"]["food_kg"] = "much".into(),
        shape("entries[2].what.meal.food_kg: expected a number"),
    );
    check_error(
        |save| save["body"]["household"]["people"] = (-1).into(),
        shape("household.people: expected a number from 0 to 4294967295"),
    );
    check_error(
        |save| save["body"]["cookers"][0]["cooker"]["jacket"]["shape"] = serde_json::json!({}),
        shape("cookers[0].cooker.jacket.shape.kind: expected a text"),
    );
    check_error(
        |save| save["body"]["household"]["air_day_c"] = serde_json::json!([20.0]),
        shape("household.air_day_c: expected 12 numbers"),
    );
    check_error(
        |save| save["body"] = serde_json::Value::Null,
        shape("expected a record"),
    );
}

#[test]
fn a_name_that_is_not_known_is_passed_over() {
    let newer = V1.replace("\"people\": 5", "\"people\": 5, \"guests\": [{}]");
    assert_eq!(decode(&newer), decode(V1));
}

/// The names that saves of version 1 use. A change here breaks every diary there is.
#[test]
fn names_of_table_rows_are_frozen() {
    fn check<T: Read + Write + Copy + PartialEq + std::fmt::Debug>(rows: &[T], names: &str) {
        let mut found = Vec::new();
        for row in rows {
            let mut out = Writer::new(Layout::Compact);
            row.write(&mut out);
            let tree = serde_json::from_str(&out.finish().unwrap()).unwrap();
            let node = Node::start(&tree);
            assert_eq!(T::read(&node).unwrap(), *row);
            found.push(node.text().unwrap().to_owned());
        }
        assert_eq!(found.join(" "), names);
    }
    check(
        &Medium::ALL,
        "aluminium cast_iron mild_steel copper soapstone granite basalt dry_sand concrete \
         firebrick erythritol mannitol adipic_acid magnesium_chloride_hexahydrate hdpe \
         sodium_nitrate potassium_nitrate sodium_potassium_nitrate ternary_nitrate_nitrite \
         vegetable_oil",
    );
    check(
        &Insulation::ALL,
        "glass_wool rock_wool perlite vermiculite calcium_silicate ceramic_fibre rice_husk straw \
         wool aerogel_blanket",
    );
    check(
        &Dish::ALL,
        "white_rice brown_rice common_beans_soaked common_beans_unsoaked \
         red_kidney_beans_soaked black_beans_soaked chickpeas_soaked lentils split_peas \
         maize_porridge potatoes cassava pasta meat_stew vegetable_stew eggs milk tea_water",
    );
    check(
        &Seat::ALL,
        "machined_clamped dry_flat dry_ordinary dry_warped badly_warped oil_film sleeve \
         sunk_in_melt radiant_gap",
    );
    check(&LidFit::ALL, "plug ordinary leaky");
    check(
        &PotKind::ALL,
        "thin_aluminium thick_aluminium stainless_steel enamelled_steel cast_iron clay",
    );
    check(&PotSize::ALL, "1.5_l 2.5_l 4_l 6_l 10_l");
    check(&Wrap::ALL, "bare wrapped sunk_in_cooker");
    check(&Lid::ALL, "on ajar off");
    check(
        &Parameter::ALL,
        "loss_w_k jacket_j_k store_capacity melting_c melting_range_k heater contact_w_m2k pot_loss",
    );
}

proptest! {
    #[test]
    fn any_household_survives(actions in proptest::collection::vec(any_action(), 0..40)) {
        let mut document = set_up();
        for action in actions {
            // A refusal changes nothing.
            let _ = apply(&mut document, action, at(20, 0));
        }
        prop_assert_eq!(round_trip(&document).document, document);
    }

    #[test]
    fn no_text_is_too_odd(text in ".{0,80}", cut in 0..V1.len(), byte in any::<u8>()) {
        // Whatever is read, reading ends with a value.
        let _ = decode(&text);
        let mut damaged = V1.as_bytes().to_vec();
        damaged[cut] = byte;
        let _ = decode(&String::from_utf8_lossy(&damaged));
    }
}

/// Every way of building, and an entry that the first saves did not know.
#[test]
fn every_preset_survives() {
    let mut document = full();
    for preset in Preset::ALL {
        let mut cooker = preset.cooker(200.0, 11.0);
        cooker.charging.more_elements_ohm = vec![7.0, 20.5];
        cooker.store.filled_on = Some(at(7, 0).day());
        document.cookers[0].cooker = cooker;
        document.entries[0].what = What::TopUp {
            heat_w: 475.0,
            for_s: 1800,
        };
        assert_eq!(round_trip(&document).document, document, "{preset:?}");
    }
}

#[test]
fn a_cooker_of_the_first_saves_has_usual_fins_and_one_element() {
    let document = decode(V1).unwrap().document;
    let [plain, finned] = [0, 1].map(|idx| &document.cookers[idx].cooker);
    assert_eq!(plain.store.metal, None);
    assert_eq!(finned.store.metal, Some(Metal::USUAL_FINS));
    for cooker in [plain, finned] {
        assert_eq!(cooker.charging, Charging::default());
        assert_eq!((cooker.carried, cooker.store.filled_on), (None, None));
    }
}

#[test]
fn what_a_cooker_was_and_what_was_said_to_be_right_survive() {
    let mut document = full();
    let plain = encode(&document, at(20, 0), Layout::Compact).unwrap();
    assert!(!plain.contains("formerly") && !plain.contains("right"));
    let owned = &mut document.cookers[0];
    owned.formerly.push(Formerly {
        until: at(9, 0),
        cooker: owned.cooker.clone(),
    });
    owned.is_asked = true;
    document.entries[1].is_right = true;
    assert_eq!(round_trip(&document).document, document);
    let old = decode(V1).unwrap().document;
    assert!(old.cookers.iter().all(|owned| owned.formerly.is_empty()));
    assert!(old.entries.iter().all(|entry| !entry.is_right));
}
