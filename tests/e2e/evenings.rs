//! A household's evenings: set up from nothing, a sunny day and rice, a dark day and beans.
//!
//! The app takes the hour from the device, so the phone is set to a place where it is the middle
//! of the afternoon.

use std::time::{Instant, SystemTime, UNIX_EPOCH};

use thirtyfour::By;

use crate::browser::{Phone, Theme};
use crate::page::Page;
use crate::story::{Outcome, story_on};

/// Places near the equator by their clocks' distance from UTC, from -11 h to 12 h.
const ZONES: [&str; 24] = [
    "Pacific/Pago_Pago",
    "Pacific/Honolulu",
    "Pacific/Marquesas",
    "Pacific/Pitcairn",
    "America/Phoenix",
    "America/Costa_Rica",
    "America/Lima",
    "America/La_Paz",
    "America/Fortaleza",
    "America/Noronha",
    "Atlantic/Cape_Verde",
    "Africa/Abidjan",
    "Africa/Lagos",
    "Africa/Maputo",
    "Africa/Nairobi",
    "Asia/Dubai",
    "Asia/Karachi",
    "Asia/Dhaka",
    "Asia/Jakarta",
    "Asia/Manila",
    "Pacific/Palau",
    "Pacific/Port_Moresby",
    "Pacific/Guadalcanal",
    "Pacific/Fiji",
];

/// A phone where it is between three and four in the afternoon.
pub(crate) fn afternoon(theme: Theme, slowdown: u32) -> Phone {
    let now_s = SystemTime::now()
        .duration_since(UNIX_EPOCH)
        .map_or(0, |since| since.as_secs());
    let utc_h = i64::try_from(now_s / 3600 % 24).unwrap_or(0);
    let idx = (15 - utc_h + 11).rem_euclid(24);
    let zone = usize::try_from(idx)
        .ok()
        .and_then(|idx| ZONES.get(idx))
        .copied();
    Phone {
        theme,
        slowdown,
        time_zone: zone.unwrap_or("Africa/Nairobi"),
        ..Phone::default()
    }
}

/// Presses what has this `data-test`.
pub(crate) async fn tap(page: &Page, test: &str) -> Outcome {
    let found = page.test(test).await?;
    found.scroll_into_view().await?;
    Ok(found.click().await?)
}

/// From nothing to a verdict, with 200 W of panels and every other default. Tells how many taps it
/// took.
pub(crate) async fn set_up(page: &Page) -> Result<u32, Box<dyn std::error::Error>> {
    page.open("").await?;
    tap(page, "start-set-up").await?;
    let mut taps = 1;
    while !page.has_test("verdict").await? {
        if page.has_test("start-panels").await? {
            page.press("200\u{a0}W").await?;
            taps += 1;
        }
        tap(page, "start-next").await?;
        taps += 1;
        if 12 < taps {
            return Err("more than twelve taps to a verdict".into());
        }
        page.until(
            "the next question or the verdict",
            "return document.querySelector('[data-test=start-next], [data-test=verdict]') !== null",
        )
        .await?;
    }
    Ok(taps)
}

/// The verdict's tone.
async fn tone(page: &Page) -> Result<String, Box<dyn std::error::Error>> {
    let verdict = page.test("verdict").await?;
    Ok(verdict.attr("data-tone").await?.unwrap_or_default())
}

/// Picks a dish on the screen Tonight by its key.
async fn cook(page: &Page, words: &str) -> Outcome {
    let dish = page.test("dish").await?;
    for option in dish.find_all(By::Tag("option")).await? {
        if option.text().await?.to_lowercase().contains(words) {
            option.click().await?;
            return Ok(());
        }
    }
    Err(format!("no dish {words}").into())
}

#[test]
fn from_nothing_to_a_verdict_in_few_taps_and_in_no_time() {
    story_on(afternoon(Theme::Light, 6), "/", async |page| {
        let start = Instant::now();
        let taps = set_up(page).await?;
        assert!(taps <= 12, "{taps} taps");
        assert!(start.elapsed().as_secs() < 90, "{:?}", start.elapsed());
        page.screenshot("tonight-first").await
    });
}

#[test]
fn a_sunny_day_boils_rice_and_a_reload_keeps_it() {
    story_on(afternoon(Theme::Dark, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/diary").await?;
        tap(page, "day-clear").await?;
        page.screenshot("diary-clear").await?;
        page.open("#/tonight").await?;
        cook(page, "white rice").await?;
        let sunny = tone(page).await?;
        assert!(["sure", "likely"].contains(&sunny.as_str()), "{sunny}");
        page.screenshot("tonight-sunny").await?;
        page.reload().await?;
        assert_eq!(tone(page).await?, sunny);
        page.is_kept().await?;
        page.site.stop_server();
        page.open("#/diary").await?;
        page.open("#/tonight").await?;
        assert_eq!(tone(page).await?, sunny);
        Ok(())
    });
}

#[test]
fn a_dark_day_does_not_boil_beans() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/diary").await?;
        tap(page, "day-dark").await?;
        page.open("#/tonight").await?;
        cook(page, "kidney").await?;
        assert_eq!(tone(page).await?, "no");
        page.screenshot("tonight-dark").await
    });
}

#[test]
fn a_pot_that_went_in_keeps_its_clock_over_a_reload() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        tap(page, "start-meal").await?;
        page.test("meal-clock").await?;
        page.reload().await?;
        page.test("meal-clock").await?;
        page.screenshot("tonight-running").await
    });
}

/// Whether two places on the screen lie clear of each other, or one of them is not there.
async fn are_apart(
    page: &Page,
    one: &str,
    other: &str,
) -> Result<bool, Box<dyn std::error::Error>> {
    let script = format!(
        "const box = (test) => document.querySelector(test)?.getBoundingClientRect();
         const [a, b] = [box('{one}'), box('{other}')];
         return !a || !b || a.bottom <= b.top || b.bottom <= a.top"
    );
    Ok(page.evaluate(&script).await?.as_bool().unwrap_or_default())
}

#[test]
fn a_running_pot_is_judged_by_its_odds_and_the_way_back_covers_nothing() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/diary").await?;
        tap(page, "day-dark").await?;
        page.open("#/tonight").await?;
        cook(page, "kidney").await?;
        page.test("chances").await?;
        tap(page, "start-meal").await?;
        page.test("toast-action").await?;
        for other in [
            "h1",
            "[data-test=boils-now]",
            "nav a",
            "[data-test=meal-clock]",
        ] {
            let toast = "[data-test=toast-action]";
            assert!(are_apart(page, toast, other).await?, "{other}");
        }
        page.screenshot("tonight-pot-in").await?;
        let clock = page.test("meal-clock").await?.text().await?;
        let card = page.test("running-sure").await?.text().await?;
        assert!(clock.contains("Will not boil"), "{clock}");
        assert!(clock.contains(" in "), "{clock}");
        assert!(card.contains("Ready by"), "{card}");
        // The keyboard comes to it first.
        page.press("Undo").await?;
        page.test("verdict").await?;
        Ok(())
    });
}

#[test]
fn the_rest_of_a_day_is_told_with_one_tap() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/diary").await?;
        tap(page, "previous-day").await?;
        tap(page, "day-clear").await?;
        let sky = |sky: &str| {
            format!("document.querySelectorAll('[data-test=sun-hours] [data-sky={sky}]').length")
        };
        let daylight = page.evaluate(&format!("return {}", sky("clear"))).await?;
        let n_hours = daylight.as_u64().unwrap_or_default();
        assert!(8 < n_hours, "{n_hours} hours");
        // The seventh hour from clear to overcast, and all after it.
        for _ in 0..3 {
            page.evaluate("document.querySelectorAll('[data-test=sun-hours] button')[6].click()")
                .await?;
        }
        page.screenshot("sun-onward").await?;
        tap(page, "sun-onward").await?;
        page.until(
            "a grey afternoon",
            &format!(
                "return {} === 6 && {} === {}",
                sky("clear"),
                sky("overcast"),
                n_hours - 6
            ),
        )
        .await?;
        assert!(!page.has_test("sun-onward").await?);
        Ok(())
    });
}
