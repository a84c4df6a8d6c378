//! What the words of a header mean, in English and in Spanish.

use super::form::{Column, Degrees, ElapsedUnit};

fn has_any(name: &str, words: &[&str]) -> bool {
    words.iter().any(|word| name.contains(word))
}

/// What a column of this header, in small letters, holds.
pub(super) fn column_of(name: &str) -> Column {
    let bare = name.split(['(', '[']).next().unwrap_or_default().trim();
    let warm = degrees_of(name).is_some() || name.contains("temp");
    if !warm
        && has_any(
            name,
            &[
                "irradiance",
                "irradiancia",
                "insolation",
                "w/m",
                "sun",
                "solar",
                "light",
                "luz",
            ],
        )
    {
        Column::Irradiance
    } else if !warm
        && (has_any(name, &["power", "potencia", "watt", "heater"]) || name.ends_with("(w)"))
    {
        Column::Power
    } else if has_any(name, &["pot", "water", "food", "olla", "agua", "comida"]) {
        Column::Pot
    } else if has_any(
        name,
        &["air", "ambient", "room", "outside", "outdoor", "afuera"],
    ) {
        Column::Air
    } else if has_any(
        name,
        &[
            "store",
            "storage",
            "block",
            "core",
            "plate",
            "metal",
            "salt",
            "stone",
            "sand",
            "deposito",
            "dep\u{f3}sito",
            "bloque",
            "piedra",
            "arena",
        ],
    ) {
        Column::Store
    } else if has_any(
        name,
        &[
            "time", "clock", "elapsed", "hour", "minute", "second", "hora", "tiempo",
        ],
    ) || matches!(bare, "t" | "h" | "s" | "min" | "hh:mm" | "hh:mm:ss")
    {
        Column::Time
    } else if has_any(name, &["date", "day", "fecha"]) {
        Column::Date
    } else {
        Column::Unused
    }
}

/// The unit of temperature that a header names.
pub(super) fn degrees_of(name: &str) -> Option<Degrees> {
    if has_any(
        name,
        &["\u{b0}f", "(f)", "[f]", "degf", "deg f", "fahrenheit", "_f"],
    ) {
        Some(Degrees::Fahrenheit)
    } else if has_any(name, &["\u{b0}c", "(c)", "[c]", "degc", "deg c", "celsius"])
        || name.ends_with("_c")
    {
        Some(Degrees::Celsius)
    } else {
        None
    }
}

/// The unit of time that a header names.
pub(super) fn elapsed_of(name: &str) -> Option<ElapsedUnit> {
    let words: Vec<&str> = name.split(|c: char| !c.is_alphanumeric()).collect();
    let has = |units: &[&str]| words.iter().any(|word| units.contains(word));
    if has(&["s", "sec", "second", "seconds"]) {
        Some(ElapsedUnit::Seconds)
    } else if has(&["min", "mins", "minute", "minutes"]) {
        Some(ElapsedUnit::Minutes)
    } else if has(&["h", "hr", "hour", "hours"]) {
        Some(ElapsedUnit::Hours)
    } else {
        None
    }
}
