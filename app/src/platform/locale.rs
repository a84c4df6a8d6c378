//! The browser's languages, and how its locales write numbers and dates.

use js_sys::{Array, Date, Function, Intl, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// A piece of something that was written, with the name of what it is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    /// What it is: `decimal`, `group`, `weekday`, `literal` and so on (ECMA-402).
    pub kind: String,
    /// What is written there.
    pub text: String,
}

/// The person's languages, the most wanted first, as BCP 47 tags.
pub fn languages() -> Vec<String> {
    let Some(window) = web_sys::window() else {
        return Vec::new();
    };
    window
        .navigator()
        .languages()
        .iter()
        .filter_map(|tag| tag.as_string())
        .collect()
}

/// The time zone the device is set to, by its name in the IANA database.
pub fn time_zone() -> Option<String> {
    let format: Intl::DateTimeFormat = built("DateTimeFormat", "en", &[])?.unchecked_into();
    let options = format.resolved_options();
    Reflect::get(&options, &"timeZone".into()).ok()?.as_string()
}

/// Names of countries in a language, by their two letters (ISO 3166-1); of one that the browser does
/// not know, none.
pub fn countries(tag: &str) -> impl Fn(&str) -> Option<String> + use<> {
    let names = built(
        "DisplayNames",
        tag,
        &[("type", "region"), ("fallback", "none")],
    );
    let of = names.as_ref().and_then(|names| {
        Reflect::get(names, &"of".into())
            .ok()?
            .dyn_into::<Function>()
            .ok()
    });
    move |country| {
        let name = of.as_ref()?.call1(names.as_ref()?, &country.into());
        name.ok()?.as_string()
    }
}

/// A number written in a locale, in pieces; nothing where the browser doesn't know the locale.
pub fn number_parts(tag: &str, value: f64) -> Vec<Part> {
    let Some(format) = built("NumberFormat", tag, &[]) else {
        return Vec::new();
    };
    let format: Intl::NumberFormat = format.unchecked_into();
    parts(&format.format_to_parts(value))
}

/// A date and time written in a locale, in pieces. It is given in milliseconds since 1970 and
/// written as universal time. The options are those of `Intl.DateTimeFormat`.
pub fn date_parts(tag: &str, utc_ms: f64, options: &[(&str, &str)]) -> Vec<Part> {
    let mut all = vec![("timeZone", "UTC")];
    all.extend_from_slice(options);
    let Some(format) = built("DateTimeFormat", tag, &all) else {
        return Vec::new();
    };
    let format: Intl::DateTimeFormat = format.unchecked_into();
    parts(&format.format_to_parts(&Date::new(&JsValue::from_f64(utc_ms))))
}

/// Builds a formatter of `Intl` by name: its constructors throw on a tag they can't read, which
/// the typed bindings would turn into a crash.
fn built(class: &str, tag: &str, options: &[(&str, &str)]) -> Option<JsValue> {
    let intl = Reflect::get(&js_sys::global(), &"Intl".into()).ok()?;
    let class: Function = Reflect::get(&intl, &class.into()).ok()?.dyn_into().ok()?;
    let bag = Object::new();
    for (name, value) in options {
        Reflect::set(&bag, &(*name).into(), &(*value).into()).ok()?;
    }
    // Digits are written in the Latin set everywhere, as the fields are.
    Reflect::set(&bag, &"numberingSystem".into(), &"latn".into()).ok()?;
    Reflect::construct(&class, &Array::of2(&tag.into(), &bag)).ok()
}

fn parts(array: &Array) -> Vec<Part> {
    let text = |part: &JsValue, name: &str| {
        Reflect::get(part, &name.into())
            .ok()
            .and_then(|value| value.as_string())
    };
    array
        .iter()
        .filter_map(|part| {
            Some(Part {
                kind: text(&part, "type")?,
                text: text(&part, "value")?,
            })
        })
        .collect()
}
