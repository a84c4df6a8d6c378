//! What the household reports is learned from: it changes what is known of the cooker and the odds,
//! and a reload tells the same.

use std::time::Duration;

use crate::browser::Theme;
use crate::evenings::{afternoon, set_up, tap};
use crate::page::Page;
use crate::story::{Outcome, story_on};

type Answer<T> = Result<T, Box<dyn std::error::Error>>;

/// A thermometer's reading on the day that is shown, at the time of day that it is now.
pub(crate) async fn read(page: &Page, shows: &str) -> Outcome {
    tap(page, "add-reading").await?;
    page.test("entry-number").await?.send_keys(shows).await?;
    tap(page, "entry-save").await?;
    page.test("entry").await?;
    Ok(())
}

/// Writes a time of day into a time field, as the browser's own picker does.
async fn put_time(page: &Page, test: &str, time: &str) -> Outcome {
    page.test(test).await?;
    page.evaluate(&format!(
        "const field = document.querySelector('[data-test=\"{test}\"]');
         field.value = '{time}';
         field.dispatchEvent(new Event('input', {{ bubbles: true }}));"
    ))
    .await?;
    Ok(())
}

/// The time in a time field, so many minutes later.
async fn later(page: &Page, test: &str, minutes: u32) -> Answer<String> {
    let value = page.test(test).await?.prop("value").await?;
    let value = value.unwrap_or_default();
    let (hour, minute) = value.split_once(':').ok_or("a time of day")?;
    let at = hour.parse::<u32>()? * 60 + minute.parse::<u32>()? + minutes;
    Ok(format!("{:02}:{:02}", at / 60 % 24, at % 60))
}

/// A pot on the day before the one that is shown, under a clear sky.
pub(crate) async fn pot_of_the_day_before(page: &Page, seen: &str, after_min: u32) -> Outcome {
    tap(page, "previous-day").await?;
    tap(page, "day-clear").await?;
    tap(page, "add-meal").await?;
    let eaten = later(page, "entry-time", 90).await?;
    put_time(page, "entry-eat", &eaten).await?;
    let at = later(page, "entry-time", after_min).await?;
    put_time(page, seen, &at).await?;
    tap(page, "entry-save").await?;
    page.test("entry").await?;
    Ok(())
}

/// How sure tonight is, once all of it is worked out.
pub(crate) async fn chances(page: &Page) -> Answer<String> {
    page.open("#/tonight").await?;
    page.until(
        "all that is worked out of tonight",
        "const facts = document.querySelector('[data-test=chances-facts]');
         return facts !== null && !facts.textContent.includes('…')",
    )
    .await?;
    Ok(page.test("chances-facts").await?.text().await?)
}

/// Waits until a minute has long to go: what is said of now may be another in the next.
async fn early_in_a_minute(page: &Page) -> Outcome {
    while page.evaluate("return new Date().getSeconds() < 35").await? != true {
        tokio::time::sleep(Duration::from_secs(1)).await;
    }
    Ok(())
}

/// What was learned about the cooker.
async fn learned(page: &Page) -> Answer<String> {
    page.open("#/cooker").await?;
    page.until(
        "what was learned",
        "const learned = document.querySelector('[data-test=cooker-learned]');
         return learned !== null && !learned.textContent.includes('…')",
    )
    .await?;
    let text = page
        .evaluate("return document.querySelector('[data-test=cooker-learned]').textContent")
        .await?;
    Ok(text.as_str().unwrap_or_default().to_owned())
}

#[test]
fn readings_teach_what_the_cooker_is_and_a_reload_knows_it() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/diary").await?;
        tap(page, "previous-day").await?;
        tap(page, "day-clear").await?;
        let (at_first, unlearned) = (chances(page).await?, learned(page).await?);
        page.open("#/diary").await?;
        tap(page, "previous-day").await?;
        read(page, "120").await?;
        page.open("#/diary").await?;
        read(page, "60").await?;
        early_in_a_minute(page).await?;
        let (after_two, learned_twice) = (chances(page).await?, learned(page).await?);
        assert_ne!(after_two, at_first);
        assert_ne!(learned_twice, unlearned);
        page.screenshot("cooker-learned").await?;
        page.reload().await?;
        assert_eq!(learned(page).await?, learned_twice);
        assert_eq!(chances(page).await?, after_two);
        page.screenshot("tonight-chances").await
    });
}

#[test]
fn two_pots_teach_what_the_cooker_is_and_a_reload_knows_it() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        let unlearned = learned(page).await?;
        page.open("#/diary").await?;
        pot_of_the_day_before(page, "entry-boiled", 50).await?;
        let learned_once = learned(page).await?;
        assert_ne!(learned_once, unlearned);
        page.open("#/diary").await?;
        tap(page, "previous-day").await?;
        pot_of_the_day_before(page, "entry-not-boiled", 80).await?;
        early_in_a_minute(page).await?;
        let (after_two, learned_twice) = (chances(page).await?, learned(page).await?);
        assert_ne!(learned_twice, learned_once);
        page.reload().await?;
        assert_eq!(learned(page).await?, learned_twice);
        assert_eq!(chances(page).await?, after_two);
        Ok(())
    });
}

/// How many entries are asked about; the diary has been walked through.
async fn asked_about(page: &Page, n: usize) -> Outcome {
    page.until(
        &format!("{n} entries asked about"),
        &format!("return document.querySelectorAll('[data-test=doubt]').length === {n}"),
    )
    .await
}

#[test]
fn what_does_not_fit_is_kept_and_asked_about_until_it_is_said_to_be_right() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/diary").await?;
        for shows in ["180", "20", "25"] {
            tap(page, "add-reading").await?;
            page.test("entry-number").await?.send_keys(shows).await?;
            tap(page, "entry-save").await?;
            page.see(&format!("{shows}\u{a0}°C")).await?;
        }
        asked_about(page, 2).await?;
        page.screenshot("diary-doubt").await?;
        let keep = "document.querySelector('[data-test=doubt-keep]').click()";
        page.evaluate(keep).await?;
        asked_about(page, 1).await?;
        page.reload().await?;
        // The other one is still asked about, so the answer was not lost but kept.
        asked_about(page, 1).await?;
        page.evaluate(keep).await?;
        asked_about(page, 0).await?;
        page.see("20\u{a0}°C").await
    });
}

#[test]
fn what_was_walked_is_kept_on_the_device_and_changes_no_answer() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/diary").await?;
        for _ in 0..3 {
            tap(page, "previous-day").await?;
            tap(page, "day-clear").await?;
        }
        read(page, "150").await?;
        let walked = chances(page).await?;
        page.until(
            "what was walked to on the device",
            "return localStorage.getItem('duskpot.beliefs.0') !== null",
        )
        .await?;
        assert_eq!(chances(page).await?, walked);
        // Gone or broken, it is walked anew.
        page.evaluate("localStorage.setItem('duskpot.beliefs.0', 'x'); localStorage.removeItem('duskpot.beliefs.3')")
            .await?;
        assert_eq!(chances(page).await?, walked);
        // A copy is without it.
        let own = page
            .evaluate("return localStorage.getItem('duskpot.household').includes('beliefs')")
            .await?;
        assert_eq!(own.as_bool(), Some(false));
        Ok(())
    });
}
