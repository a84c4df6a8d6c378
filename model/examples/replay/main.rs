//! Replays a household's copy: what would have been answered just before each pot went in, and
//! what was reported of it.
//!
//! `replay COPY.json`: the file is a copy as the app writes it, form `duskpot`, version 1. Nothing is
//! looked at that was not there yet: entries up to the minute before, the sky of the hours gone by.
//! A sky that was noted later for an earlier day counts as noted on its day, since a copy does not
//! say. Bad input gives one line on stderr that names the field, exit code 2, and nothing on stdout.

mod cooker;
mod copy;
mod cut;
#[path = "../simulate/program.rs"]
mod program;
mod say;
mod when;

use std::process::ExitCode;

use model::journal::What;
use model::odds::{Replay, Settings};

use copy::Household;

fn main() -> ExitCode {
    program::print("replay", answer())
}

fn answer() -> Result<String, String> {
    let (shown, text) = program::only_file("one copy")?;
    replayed(&text).map_err(|error| format!("{shown}: {error}"))
}

fn replayed(text: &str) -> Result<String, String> {
    let household = copy::read(text)?;
    let mut out = String::new();
    for place in 0..household.cookers.len() {
        replay_cooker(&household, place, &mut out)?;
    }
    Ok(out)
}

fn replay_cooker(household: &Household, place: usize, out: &mut String) -> Result<(), String> {
    let Some(owned) = household.cookers.get(place) else {
        return Ok(());
    };
    let (site, cooker) = (&household.site, &owned.cooker);
    let refused =
        |error: model::tonight::TonightError| format!("body.cookers[{place}].cooker: {error}");
    let mut replay = Replay::new(Settings::default());
    out.push_str(&format!("{}\n", owned.name));
    for event in &owned.journal.events {
        let What::Meal(meal) = &event.what else {
            continue;
        };
        let before = cut::before(&owned.journal, event.at, &site.place);
        let belief = replay
            .belief(site, cooker, &before, event.at)
            .map_err(refused)?;
        say::meal(out, &belief, meal, event.at);
    }
    let belief = replay
        .belief(site, cooker, &owned.journal, household.saved_at)
        .map_err(refused)?;
    say::now(out, &belief);
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A real copy, as the app's own tests keep it.
    const COPY: &str = include_str!("../../../app/src/state/saved/v1/sample.json");

    #[test]
    fn a_copy_is_replayed_meal_by_meal() {
        let text = replayed(COPY).unwrap();
        for words in ["Clay block", "boils", "ready", "reported", "the store now"] {
            assert!(text.contains(words), "{words}: {text}");
        }
        assert_eq!(text, replayed(COPY).unwrap());
    }

    #[test]
    fn what_comes_later_changes_nothing_before() {
        let first = |text: &str| {
            let text = replayed(text).unwrap();
            let end = text.find("reported").unwrap();
            text[..end].to_owned()
        };
        let later = COPY.replace(
            "\"boiled_at\": \"2026-11-25T18:55:00\"",
            "\"boiled_at\": null",
        );
        assert!(later != COPY);
        assert_eq!(first(&later), first(COPY));
    }

    #[test]
    fn bad_copies_name_the_field() {
        for (was, is, named) in [
            ("\"format\": \"duskpot\"", "\"format\": \"other\"", "format"),
            ("\"version\": 1", "\"version\": 2", "version"),
            (
                "\"latitude_deg\": -13.4",
                "\"latitude_deg\": \"far\"",
                "body.household.latitude_deg",
            ),
            (
                "\"saved_at\": \"2026-11-25T20:00:00\"",
                "\"saved_at\": \"now\"",
                "saved_at",
            ),
            (
                "\"saved_at\"",
                "\"kept_at\"",
                "the copy itself: missing field `saved_at`",
            ),
            (
                "\"module_w\": 100.0",
                "\"module_w\": -1.0",
                "body.cookers[0].cooker",
            ),
            (
                "\"known_by\": \"layers\"",
                "\"known_by\": \"guess\"",
                "known_by",
            ),
        ] {
            let bad = COPY.replacen(was, is, 1);
            assert!(bad != COPY, "{was}");
            let error = replayed(&bad).unwrap_err();
            assert!(
                error.contains(named) && !error.contains('\n'),
                "{named}: {error}"
            );
        }
        assert!(replayed("{").is_err() && replayed("[]").is_err());
    }
}
