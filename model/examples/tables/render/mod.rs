//! The tables of figures as Markdown.

mod cooker;
mod food;
mod odds;

use model::ageing;
use model::dish::{self, lethality};
use model::flask;
use model::insulation::{HUSK_CHAR_IGNITION_C, STRAW_IGNITION_C};
use model::jacket::{LidFit, OUTER_FILM_W_M2K};
use model::pot::{Lid, loss};
use model::provenance::{Datum, Source};
use model::safety;
use model::seat::{BOILING_FILM_W_M2K, INNER_FILM_W_M2K, THICK_FILM_W_M2K};
use serde::Serialize;

/// All tables, in the order of the page.
pub(crate) fn tables() -> String {
    [
        cooker::media(),
        cooker::melting(),
        cooker::insulations(),
        cooker::conductivities(),
        cooker::seats(),
        cooker::pots(),
        cooker::pot_sizes(),
        food::dishes(),
        food::dish_rules(),
        single_figures(),
        food::food_heat(),
        odds::words(),
        sources(),
    ]
    .join("\n")
}

fn table(title: &str, head: &[&str], rows: impl Iterator<Item = Vec<String>>) -> String {
    let mut text = format!("## {title}\n\n| {} |\n|", head.join(" | "));
    text.push_str(&" --- |".repeat(head.len()));
    text.push('\n');
    for row in rows {
        text.push_str(&format!("| {} |\n", row.join(" | ")));
    }
    text
}

/// The name under which saved data know it.
fn name(item: impl Serialize) -> String {
    serde_json::to_string(&item)
        .unwrap_or_default()
        .trim_matches('"')
        .to_owned()
}

fn names<T: Serialize>(items: &[T]) -> String {
    if items.is_empty() {
        return "-".to_owned();
    }
    items.iter().map(name).collect::<Vec<_>>().join(", ")
}

/// A figure as the code has it, its spread to one or two digits, and its source.
fn cell(datum: Datum) -> String {
    let key = datum.source.key();
    // The code's own digits; the rounding takes off what the binary fraction adds.
    let value = (datum.value * 1e6).round() / 1e6;
    if datum.spread <= 0.0 {
        return format!("{value} [{key}]");
    }
    let first_digit = libm::log10(datum.spread).floor();
    let lead = datum.spread / libm::pow(10.0, first_digit);
    let digits = if lead < 3.0 { 1.0 } else { 0.0 };
    let places = (digits - first_digit).max(0.0) as usize;
    format!("{value} ± {:.places$} [{key}]", datum.spread)
}

fn single_figures() -> String {
    let figures = [
        ("film of air outside the jacket, W/m2K", OUTER_FILM_W_M2K),
        (
            "loss factor of a plug that seals",
            LidFit::Plug.loss_factor(),
        ),
        (
            "loss factor of an ordinary insulated lid",
            LidFit::Ordinary.loss_factor(),
        ),
        ("loss factor of a leaky lid", LidFit::Leaky.loss_factor()),
        ("film of water inside the pot, W/m2K", INNER_FILM_W_M2K),
        (
            "film of boiling water inside the pot, W/m2K",
            BOILING_FILM_W_M2K,
        ),
        (
            "film of thick porridge inside the pot, W/m2K",
            THICK_FILM_W_M2K,
        ),
        ("pool formula in still air, W/m2Pa", loss::POOL_W_M2PA),
        (
            "evaporation against the pool formula",
            loss::EVAPORATION_FACTOR,
        ),
        ("free convection off a pot, W/m2K", loss::CONVECTION_W_M2K),
        ("radiation off a black pot, W/m2K", loss::RADIATION_W_M2K),
        ("loss through a lid against bare water", loss::LID_FACTOR),
        ("loss of a wrapped pot, W/m2K", loss::WRAPPED_W_M2K),
        ("loss of a pot sunk in the cooker, W/m2K", loss::SUNK_W_M2K),
        (
            "evaporation below the boil, lid on, share of open",
            Lid::On.evaporation_share(),
        ),
        (
            "evaporation below the boil, lid ajar, share of open",
            Lid::Ajar.evaporation_share(),
        ),
        ("ageing of a sugar alcohol, 1/h molten", ageing::RATE_PER_H),
        (
            "temperature of the store for that rate, degC",
            ageing::REFERENCE_C,
        ),
        (
            "activation energy of ageing, J/mol",
            ageing::ACTIVATION_J_MOL,
        ),
        (
            "logarithm of the factor by which ageing is off",
            ageing::RATE_LOG_SPREAD,
        ),
        ("gas in a sound vacuum flask, Pa", flask::SOUND_PA),
        ("emissivity of a silvered wall", flask::SILVERED_EMISSIVITY),
        (
            "emissivity of clean bright steel",
            flask::BRIGHT_STEEL_EMISSIVITY,
        ),
        ("accommodation of air on a wall", flask::ACCOMMODATION),
        ("hot holding, degC", dish::HOLD_HOT_C),
        ("hot holding, warning, degC", dish::HOLD_WARN_C),
        ("cold holding, degC", dish::HOLD_COLD_C),
        (
            "hours between cold and hot before discarding",
            dish::DISCARD_AFTER_H,
        ),
        ("z of killing, K", lethality::Z_K),
        ("killing needed, min at 70 degC", lethality::NEEDED_MIN),
        ("killing counts from, degC", lethality::LEAST_C),
        ("thin straw takes fire on a plate, degC", STRAW_IGNITION_C),
        (
            "char of husk in a heap heats itself, degC",
            HUSK_CHAR_IGNITION_C,
        ),
        ("hot to the touch above, degC", safety::TOUCH_LIMIT_C),
        (
            "ignites oil, straw and cloth from, degC",
            safety::IGNITION_CAUTION_C,
        ),
        ("limit of an oil film, degC", safety::OIL_FILM_LIMIT_C),
        ("touch-safe direct voltage, V", safety::TOUCH_SAFE_V),
        ("extra-low direct voltage, V", safety::EXTRA_LOW_V),
    ];
    let rows = figures
        .into_iter()
        .map(|(what, datum)| vec![what.to_owned(), cell(datum)]);
    table("Single figures", &["figure", "value"], rows)
}

fn sources() -> String {
    let rows = Source::ALL
        .iter()
        .map(|source| vec![source.key().to_owned(), source.citation().to_owned()]);
    table("Sources", &["key", "source"], rows)
}
