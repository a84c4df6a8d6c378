//! Bad input is refused by name; a good run is fitted.

use super::*;

const COOKER: &str = r#"{
    "panels": {"module_w": 100.0, "sheet": null, "in_series": 1, "in_parallel": 2, "tilt_deg": 10.0, "azimuth_deg": 180.0},
    "heater": {"tracker_efficiency": null, "resistance_ohm": 3.0, "wire_ohm": 0.1, "alpha_per_k": 0.0},
    "store": {"charges": [{"medium": "aluminium", "mass_kg": 5.0}], "finned": false, "depth_m": 0.06, "cutout_c": 280.0},
    "jacket": {"known_by": "measured", "loss_w_k": 0.3, "capacity_j_k": 2000.0},
    "contact": {"seat": "dry_flat", "measured_w_m2k": null},
    "pot": {"kind": "thin_aluminium", "size": "2.5_l", "wrap": "sunk_in_cooker"}
}"#;

#[test]
fn a_cooker_as_the_app_saves_it() {
    let found = cooker::read(COOKER).unwrap();
    assert!((found.store.charges[0].mass_kg - 5.0).abs() < 1e-12);
    assert_eq!(found.contact.measured_w_m2k, None);
}

#[test]
fn a_wrong_field_is_named() {
    for (from, to, wants) in [
        ("\"aluminium\"", "\"cheese\"", "store.charges[0].medium"),
        (
            "\"mass_kg\": 5.0",
            "\"mass_kg\": -1",
            "store.charges[0].mass_kg",
        ),
        (
            "\"known_by\": \"measured\"",
            "\"known_by\": \"hearsay\"",
            "jacket.known_by",
        ),
        ("\"loss_w_k\": 0.3", "\"loss\": 0.3", "jacket.loss"),
        ("\"in_series\": 1", "\"in_series\": 1.5", "panels.in_series"),
        ("\"finned\": false", "\"finned\": 0", "store.finned"),
        ("\"seat\": \"dry_flat\"", "\"seat\": 3", "contact.seat"),
        ("\"pot\": {", "\"pan\": {", "pan"),
    ] {
        let error = cooker::read(&COOKER.replace(from, to)).unwrap_err();
        assert!(error.starts_with(wants), "{to}: {error}");
    }
}

fn evening() -> String {
    let mut text =
        String::from("# kind: boil\n# water_kg: 1.0\n# air_c: 20\ntime (min);store;pot\n");
    for minute in 0..60 {
        let t = f64::from(minute);
        let store = 200.0 - 60.0 * (1.0 - libm::exp(-t / 15.0));
        let pot = 90.0 - 70.0 * libm::exp(-t / 15.0);
        text += &format!("{minute};{store:.1};{pot:.1}\n").replace('.', ",");
    }
    text
}

#[test]
fn a_wrong_note_is_named_with_its_line() {
    let of = cooker::read(COOKER).unwrap();
    for (from, to, wants) in [
        ("# air_c: 20", "# air_c: warm", "line 3: air_c"),
        ("# kind: boil", "# kind: fry", "line 1: kind"),
        ("# water_kg: 1.0", "# water_kg: -1", "line 2: water_kg"),
        ("# water_kg: 1.0", "# watre_kg: 1", "line 2: watre_kg"),
        ("# water_kg: 1.0\n", "", "water_kg"),
        ("# air_c: 20\n", "", "air_c"),
        ("# kind: boil", "# kind: heat_up", "heater_w"),
        (
            "time (min);store;pot",
            "when;store;pot",
            "no column of times",
        ),
    ] {
        let text = evening().replace(from, to);
        match runs::read("evening.csv", &text, &of) {
            Err(error) => assert!(error.starts_with(wants), "{to}: {error}"),
            // A first column of plain numbers under a word nobody knows is still the time.
            Ok(_) => assert_eq!(wants, "no column of times", "{to}"),
        }
    }
}

#[test]
fn a_run_is_fitted_and_told() {
    let of = cooker::read(COOKER).unwrap();
    let files = [runs::read("evening.csv", &evening(), &of).unwrap()];
    let site = runs::site(&files).unwrap();
    let body = Body::new(&site, &of).unwrap();
    let found = fit(&body, &[files[0].run.clone()], &Settings::default()).unwrap();
    let told = report::report(&site, &of, &body, &files, &found).unwrap();
    assert_eq!(told["runs"][0]["rows"], 60);
    assert_eq!(told["parameters"].as_array().unwrap().len(), 6);
    let unmet = &told["runs"][0]["standardised_cooking_power"]["conditions_not_met"];
    assert_eq!(unmet[0], "no irradiance was read");
    assert!(told["runs"][0]["diagnosis"]["limits"][0]["limit"].is_string());
    assert!(told["figures"]["overnight_loss"].as_f64().unwrap() > 0.0);
}
