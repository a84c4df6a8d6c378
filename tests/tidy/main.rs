//! The rules of the rooms, kept by a test: who may know whom, and where things may stand.

#![allow(clippy::unwrap_used, reason = "a tree that cannot be read has failed")]

use std::fs;
use std::path::{Path, PathBuf};

/// Lines a source file may have.
const MOST_LINES: usize = 500;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// The files under a folder whose names end so.
fn files(folder: &str, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut folders = vec![root().join(folder)];
    while let Some(next) = folders.pop() {
        for entry in fs::read_dir(next).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.to_str().is_some_and(|name| name.ends_with(ending)) {
                found.push(path);
            }
        }
    }
    assert!(!found.is_empty(), "nothing under {folder}");
    found
}

/// The lines of code, without comments, that hold one of the words; as `file:line: text`.
fn lines_with(folder: &str, words: &[&str]) -> Vec<String> {
    let mut hits = Vec::new();
    for path in files(folder, ".rs") {
        let text = fs::read_to_string(&path).unwrap();
        for (idx, line) in text.lines().enumerate() {
            let code = line.split("//").next().unwrap_or_default();
            if words.iter().any(|word| code.contains(word)) {
                hits.push(format!("{}:{}: {}", path.display(), idx + 1, line.trim()));
            }
        }
    }
    hits
}

#[track_caller]
fn holds_none(folder: &str, words: &[&str]) {
    let hits = lines_with(folder, words);
    assert!(
        hits.is_empty(),
        "{folder} must not know of {words:?}:\n{}",
        hits.join("\n")
    );
}

#[test]
fn the_model_knows_no_screen_no_browser_no_clock() {
    holds_none(
        "model/src",
        &[
            "leptos",
            "web_sys",
            "js_sys",
            "wasm_bindgen",
            "Utc::now",
            "Local::now",
            "SystemTime",
            "Instant::now",
        ],
    );
}

#[test]
fn the_household_and_what_screens_show_are_plain_rust() {
    for room in [
        "app/src/state",
        "app/src/present",
        "app/src/i18n",
        "app/src/bench/desk",
    ] {
        holds_none(
            room,
            &[
                "leptos",
                "web_sys",
                "js_sys",
                "crate::shell",
                "crate::screens",
                "crate::platform",
            ],
        );
    }
}

#[test]
fn parts_and_charts_know_only_numbers_and_words() {
    for room in ["app/src/components", "app/src/chart"] {
        holds_none(
            room,
            &[
                "model::",
                "crate::state",
                "crate::i18n",
                "crate::shell",
                "crate::present",
            ],
        );
    }
}

#[test]
fn only_the_platform_touches_storage_and_clock() {
    for room in [
        "app/src/screens",
        "app/src/shell",
        "app/src/components",
        "app/src/state",
    ] {
        holds_none(
            room,
            &["gloo_storage", "local_storage", "Date::new_0", "Date::now"],
        );
    }
}

#[test]
fn colours_stand_in_the_tokens_only() {
    for path in files("app/styles", ".css") {
        if path.ends_with("tokens.css") {
            continue;
        }
        let text = fs::read_to_string(&path).unwrap();
        for (idx, line) in text.lines().enumerate() {
            let colour = line.contains("rgb(")
                || line.contains("hsl(")
                || line.split('#').skip(1).any(|rest| {
                    let hex = rest.chars().take_while(char::is_ascii_hexdigit).count();
                    matches!(hex, 3 | 4 | 6 | 8) && line.contains(':')
                });
            let token = line.trim_start().starts_with("--");
            assert!(token || !colour, "{}:{}: {line}", path.display(), idx + 1);
        }
    }
}

#[test]
fn nothing_is_asked_of_another_host() {
    for (folder, ending) in [
        ("app/src", ".rs"),
        ("app/styles", ".css"),
        ("public", ".js"),
    ] {
        for path in files(folder, ending) {
            let text = fs::read_to_string(&path).unwrap();
            for (idx, line) in text.lines().enumerate() {
                let asked = line.contains("http://") || line.contains("https://");
                let named =
                    line.contains("www.w3.org/2000/svg") || line.trim_start().starts_with("//");
                assert!(!asked || named, "{}:{}: {line}", path.display(), idx + 1);
            }
        }
    }
}

#[test]
fn files_stay_small() {
    for folder in ["model/src", "app/src", "tests"] {
        for path in files(folder, ".rs") {
            let lines = fs::read_to_string(&path).unwrap().lines().count();
            assert!(lines <= MOST_LINES, "{} has {lines} lines", path.display());
        }
    }
}

#[test]
fn no_test_is_switched_off() {
    let ignored = concat!("#[", "ignore");
    let panics = concat!("#[", "should_panic");
    for folder in ["model/src", "model/tests", "app/src", "tests"] {
        holds_none(folder, &[ignored, panics]);
    }
}
