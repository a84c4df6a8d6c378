//! What the case form refuses, and how it says where.

use crate::{case, data};
use serde_json::{Value, json};

fn plain() -> Value {
    data(include_str!("data/network.json"))["cases"][3].clone()
}

/// The message for the fourth case with one value replaced; `null` for a path takes the field away.
fn message(path: &str, value: Option<Value>) -> String {
    let mut list = json!([plain()]);
    let (parent, key) = path.rsplit_once('/').unwrap();
    let parent = list[0].pointer_mut(parent).unwrap();
    match (parent, value) {
        (Value::Object(map), Some(value)) => {
            map.insert(key.into(), value);
        }
        (Value::Object(map), None) => {
            map.remove(key);
        }
        (Value::Array(items), Some(value)) => items[key.parse::<usize>().unwrap()] = value,
        _ => unreachable!("a path to nowhere"),
    }
    let error = case::read(&list.to_string()).err();
    assert!(error.is_some(), "{path} was let through");
    error.unwrap_or_default()
}

fn check(path: &str, value: Value, field: &str) {
    let message = message(path, Some(value));
    assert!(message.starts_with("case 0 \"sugar alcohol"), "{message}");
    assert!(message.contains(&format!(": {field}")), "{message}");
}

#[test]
fn every_required_field_is_missed_by_name() {
    for key in plain().as_object().unwrap().keys() {
        let message = message(&format!("/{key}"), None);
        let place = if key == "name" {
            "case 0: "
        } else {
            "case 0 \"sugar alcohol"
        };
        assert!(message.starts_with(place), "{message}");
        assert!(message.contains(&format!("{key}: is missing")), "{message}");
    }
    for key in [
        "mass_kg",
        "cp_a",
        "cp_b",
        "t_solidus",
        "t_liquidus",
        "latent_j_kg",
        "cp_liquid",
    ] {
        let message = message(&format!("/store/0/{key}"), None);
        assert!(
            message.contains(&format!("store[0].{key}: is missing")),
            "{message}"
        );
    }
    for key in ["medium", "depth_m", "k_solid_w_mk", "area_m2"] {
        let message = message(&format!("/seat/layer/{key}"), None);
        assert!(message.contains(&format!("seat.layer.{key}")), "{message}");
    }
}

#[test]
fn every_field_refuses_a_wrong_type() {
    for key in plain().as_object().unwrap().keys() {
        let message = message(&format!("/{key}"), Some(json!({"a": true})));
        assert!(message.contains(&format!(": {key}")), "{message}");
    }
}

#[test]
fn values_without_sense_are_refused() {
    for key in [
        "g_loss_w_k",
        "c_jacket_j_k",
        "g_pot_w_k",
        "c_dry_j_k",
        "water_kg",
        "end_s",
    ] {
        check(&format!("/{key}"), json!(-1.0), key);
    }
    check("/store/0/mass_kg", json!(0.0), "store[0].mass_kg");
    check("/store/0/t_solidus", json!(119.0), "store[0].t_solidus");
    check("/store/0/latent_j_kg", json!(-5.0), "store[0].latent_j_kg");
    check("/store/1/cp_a", json!(-5.0), "store[1].cp_a");
    check("/store", json!([]), "store");
    check("/seat/g_contact_w_k", json!(-5.0), "seat.g_contact_w_k");
    check("/seat/layr", json!({}), "seat.layr");
    check("/seat/layer/medium", json!(2), "seat.layer.medium");
    check("/seat/layer/medium", json!(-1), "seat.layer.medium");
    check("/seat/layer/medium", json!(0.5), "seat.layer.medium");
    check("/altitude_m", json!(12_000.0), "altitude_m");
    check("/t_air_c", json!(-300.0), "t_air_c");
    check("/pot_in_s", json!(-1.0), "pot_in_s");
    check("/pot_out_s", json!(-1.0), "pot_out_s");
}

#[test]
fn times_must_run_forward() {
    check("/power_w", json!([[0.0, 10.0]]), "power_w[0]");
    check("/power_w", json!([[10.0, 0.0, 50.0]]), "power_w[0]");
    check("/power_w", json!([[0.0, 10.0, -50.0]]), "power_w[0]");
    check(
        "/power_w",
        json!([[0.0, 10.0, 5.0], [9.0, 20.0, 5.0]]),
        "power_w[1]",
    );
    check(
        "/power_w",
        json!([[10.0, 20.0, 5.0], [0.0, 5.0, 5.0]]),
        "power_w[1]",
    );
    check("/sample_s", json!([0.0, 20.0, 10.0]), "sample_s[2]");
    check("/sample_s", json!([0.0, 14_400.1]), "sample_s[1]");
    check("/sample_s", json!([-1.0]), "sample_s[0]");
}

#[test]
fn what_is_not_json_is_placed() {
    let text = json!([plain(), plain()]).to_string();
    let broken = |from: &str, to: &str| case::read(&text.replacen(from, to, 1)).err().unwrap();
    let message = broken("\"g_loss_w_k\":0.45", "\"g_loss_w_k\":NaN");
    // The case's name stands in the message where the text names it before the error, which hangs
    // on the order in which serde_json was built to write keys.
    assert!(
        message.starts_with("case 0") && message.contains(": g_loss_w_k: not JSON"),
        "{message}"
    );
    let message = broken("\"depth_m\":0.03", "\"depth_m\":1e999");
    assert!(
        message.contains("case 0") && message.contains("seat.depth_m"),
        "{message}"
    );
    let named = r#"[{"name": "a", "store": []}, {"name": "b", "store": [], "water_kg": Infinity}]"#;
    let message = case::read(named).err().unwrap();
    assert!(
        message.starts_with("case 1 \"b\": water_kg: not JSON"),
        "{message}"
    );
    assert!(case::read("{}").err().unwrap().contains("list"));
    assert!(case::read("[1]").err().unwrap().contains("case 0"));
    assert!(case::read("").is_err());
}
