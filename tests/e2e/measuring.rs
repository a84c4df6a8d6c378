//! Test runs: one is guided, read with one thumb and keeps its clock; two builds are laid beside each
//! other and go out as a file.

use std::error::Error;

use serde_json::Value;

use crate::browser::Theme;
use crate::evenings::{afternoon, set_up, tap};
use crate::page::Page;
use crate::story::{Outcome, story_on};

type Answer<T> = Result<T, Box<dyn Error>>;

/// Writes into a field, in place of what is there.
async fn put(page: &Page, test: &str, text: &str) -> Outcome {
    let field = page.test(test).await?;
    field.scroll_into_view().await?;
    field.clear().await?;
    Ok(field.send_keys(text).await?)
}

/// What a place says.
async fn said(page: &Page, test: &str) -> Answer<String> {
    Ok(page.test(test).await?.text().await?)
}

/// How many readings are listed.
async fn readings(page: &Page) -> Answer<u64> {
    let script = "return document.querySelectorAll('[data-test=run-reading]').length";
    Ok(page.evaluate(script).await?.as_u64().unwrap_or_default())
}

/// Waits until so many readings are listed.
async fn sees_readings(page: &Page, count: u64) -> Outcome {
    page.until(
        &format!("{count} readings"),
        &format!("return document.querySelectorAll('[data-test=run-reading]').length === {count}"),
    )
    .await
}

/// Waits until the countdown has gone on; two readings of one second would be one.
async fn a_second_passes(page: &Page) -> Outcome {
    page.evaluate("window.shown = undefined").await?;
    page.until(
        "a second of the countdown",
        "const said = document.querySelector('[data-test=run-countdown]')?.textContent;
         window.shown ??= said;
         return /^\\d+:\\d\\d$/.test(said) && said !== window.shown",
    )
    .await
}

/// A cool-down that has just begun.
async fn begin(page: &Page) -> Outcome {
    set_up(page).await?;
    page.open("#/bench").await?;
    tap(page, "to-new").await?;
    page.test("run-steps").await?;
    // Before anything is begun, what is dangerous about it is told.
    let cautions = said(page, "run-cautions").await?;
    assert!(cautions.contains("burns"), "{cautions}");
    let takes = said(page, "run-takes").await?;
    assert!(takes.contains("min"), "{takes}");
    put(page, "run-store", "240").await?;
    put(page, "run-air", "19").await?;
    tap(page, "run-start").await?;
    page.test("run-clock").await?;
    sees_readings(page, 1).await
}

#[test]
fn a_guided_cool_down_keeps_its_clock_over_a_reload() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        begin(page).await?;
        let due = said(page, "run-clock-lines").await?;
        a_second_passes(page).await?;
        put(page, "run-number", "238,5").await?;
        tap(page, "run-note").await?;
        sees_readings(page, 2).await?;
        page.screenshot("run-light").await?;
        let before = said(page, "run-clock-lines").await?;
        page.reload().await?;
        sees_readings(page, 2).await?;
        // The clock has gone on from the last reading, not begun anew.
        assert_eq!(said(page, "run-clock-lines").await?, before);
        assert!(due.contains("min"), "{due}");
        a_second_passes(page).await?;
        tap(page, "run-finish").await?;
        page.test("run-to-fit").await?;
        assert!(!page.has_test("run-clock").await?);
        Ok(())
    });
}

#[test]
fn a_reading_is_refused_changed_erased_and_brought_back() {
    story_on(afternoon(Theme::Dark, 1), "/", async |page| {
        begin(page).await?;
        put(page, "run-number", "9999").await?;
        tap(page, "run-note").await?;
        page.see("At most 650").await?;
        assert_eq!(readings(page).await?, 1);
        a_second_passes(page).await?;
        put(page, "run-number", "237").await?;
        tap(page, "run-note").await?;
        sees_readings(page, 2).await?;
        page.see("Store 237").await?;
        // The latest stands first; a tap on it changes it.
        page.evaluate("document.querySelector('[data-test=run-reading]').click()")
            .await?;
        put(page, "change-store", "236").await?;
        tap(page, "change-save").await?;
        page.see("Store 236").await?;
        page.screenshot("run-dark").await?;
        page.evaluate("document.querySelector('[data-test=run-reading]').click()")
            .await?;
        tap(page, "change-erase").await?;
        sees_readings(page, 1).await?;
        page.press("Undo").await?;
        sees_readings(page, 2).await?;
        page.see("Store 236").await
    });
}

#[test]
fn a_pot_goes_in_gets_another_lid_and_comes_out_weighed() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/bench/new").await?;
        page.test("run-kind").await?;
        page.evaluate("document.querySelectorAll('[data-test=run-kind] input')[1].click()")
            .await?;
        put(page, "run-store", "250").await?;
        put(page, "run-air", "19").await?;
        tap(page, "run-start").await?;
        page.test("run-pots").await?;
        put(page, "pot-water", "40").await?;
        tap(page, "pot-put-in").await?;
        page.see("At most 30").await?;
        put(page, "pot-water", "1.2").await?;
        tap(page, "pot-put-in").await?;
        page.see("1.2\u{a0}L of water, lid on, in since").await?;
        put(page, "pot-left", "1.3").await?;
        tap(page, "pot-take-out").await?;
        page.see("At most 1.2").await?;
        put(page, "pot-left", "1.1").await?;
        tap(page, "pot-take-out").await?;
        page.see("1.1\u{a0}kg left").await
    });
}

/// The device's clock so many minutes ago, as a field of time has it.
async fn minutes_ago(page: &Page, minutes: i32) -> Answer<String> {
    let script = format!(
        "const at = new Date(Date.now() - {minutes} * 60000);
         return [at.getHours(), at.getMinutes()].map(it => String(it).padStart(2, '0')).join(':')"
    );
    let time = page.evaluate(&script).await?;
    Ok(time.as_str().unwrap_or_default().to_owned())
}

/// Sets a field of time, as the phone's own clock does.
async fn set_time(page: &Page, test: &str, time: &str) -> Outcome {
    page.until(
        &format!("the field {test}"),
        &format!("return document.querySelector('[data-test={test}]') !== null"),
    )
    .await?;
    page.evaluate(&format!(
        "const field = document.querySelector('[data-test={test}]');
         field.value = '{time}';
         field.dispatchEvent(new Event('input', {{ bubbles: true }}));"
    ))
    .await?;
    Ok(())
}

#[test]
fn a_boil_that_began_a_while_ago_is_told_with_its_pot_and_its_boil() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/bench/new").await?;
        page.test("run-kind").await?;
        page.evaluate("document.querySelectorAll('[data-test=run-kind] input')[1].click()")
            .await?;
        put(page, "run-store", "250").await?;
        put(page, "run-air", "19").await?;
        let (began, went_in) = (minutes_ago(page, 30).await?, minutes_ago(page, 25).await?);
        set_time(page, "run-began", &began).await?;
        page.see("Start the run at that time").await?;
        page.screenshot("run-began").await?;
        tap(page, "run-start").await?;
        page.test("run-pots").await?;
        page.see(&format!("Since {began}")).await?;
        page.see("counts from when the pot goes in").await?;
        // A time that is to come is called one, in whatever fold it was typed.
        set_time(page, "run-at", &minutes_ago(page, -20).await?).await?;
        put(page, "run-number", "240").await?;
        tap(page, "run-note").await?;
        page.see("That time has not come yet.").await?;
        set_time(page, "run-at", "").await?;
        set_time(page, "pot-in-at", &went_in).await?;
        tap(page, "pot-put-in").await?;
        page.see(&format!("in since {went_in}")).await?;
        tap(page, "pot-boils").await?;
        sees_readings(page, 2).await?;
        page.screenshot("run-boils").await?;
        page.see("Written down").await?;
        page.press("Undo").await?;
        sees_readings(page, 1).await
    });
}

/// The day before on the device's clock, as a field of dates has it.
async fn yesterday(page: &Page) -> Answer<String> {
    let script = "const at = new Date(Date.now() - 86400000);
         return [at.getFullYear(), at.getMonth() + 1, at.getDate()]
             .map(it => String(it).padStart(2, '0')).join('-')";
    let day = page.evaluate(script).await?;
    Ok(day.as_str().unwrap_or_default().to_owned())
}

/// What a field holds.
async fn holds(page: &Page, test: &str, text: &str) -> Outcome {
    page.until(
        &format!("{test} holds {text}"),
        &format!("return document.querySelector('[data-test={test}]')?.value === '{text}'"),
    )
    .await
}

#[test]
fn an_evening_on_paper_is_written_down_the_day_after() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/bench/new").await?;
        page.test("run-kind").await?;
        put(page, "run-store", "240").await?;
        put(page, "run-air", "19").await?;
        set_time(page, "run-began", "18:00").await?;
        let day = yesterday(page).await?;
        set_time(page, "run-day", &day).await?;
        set_time(page, "run-ended", "23:00").await?;
        page.see("Write this run down, then its readings").await?;
        page.screenshot("run-on-paper").await?;
        tap(page, "run-start").await?;
        // No clock runs for it, and nothing is late.
        page.test("run-paper").await?;
        assert!(!page.has_test("run-clock").await?);
        holds(page, "run-at", "18:10").await?;
        set_time(page, "run-at", "18:20").await?;
        put(page, "run-number", "236").await?;
        page.see("Write it down for 18:20 yesterday").await?;
        tap(page, "run-note").await?;
        sees_readings(page, 2).await?;
        // The paper's own rhythm from now on.
        for (time, degrees) in [("18:40", "232"), ("19:00", "228"), ("19:20", "224")] {
            holds(page, "run-at", time).await?;
            put(page, "run-number", degrees).await?;
            tap(page, "run-note").await?;
        }
        sees_readings(page, 5).await?;
        page.screenshot("run-from-paper").await?;
        // The end may be told later, too.
        tap(page, "run-go-on").await?;
        page.test("run-clock").await?;
        assert!(!said(page, "run-clock-lines").await?.contains("late"));
        set_time(page, "run-finish-at", "22:30").await?;
        page.see("Finish the run at 22:30 yesterday").await?;
        tap(page, "run-finish").await?;
        page.test("run-paper").await?;
        page.see("22:30").await
    });
}

/// A boil that was fitted, as it stands in a save.
fn boiled(id: u32, name: &str, cooker: &Value, contact_w_m2k: f64) -> Value {
    let at = |minute: u32| format!("2026-03-0{}T18:{minute:02}:00", 1 + id % 9);
    let reading = |minute: u32| {
        serde_json::json!({
            "at": at(minute),
            "store_c": 250.0 - 3.0 * f64::from(minute),
            "pot_c": (minute > 0).then(|| (19.0 + 3.0 * f64::from(minute)).min(95.0)),
            "air_c": 19.0,
            "heater_w": null,
        })
    };
    serde_json::json!({
        "id": id,
        "cooker": cooker["id"],
        "started": at(0),
        "ended": at(40),
        "about": {
            "name": name, "kind": "boil", "air_c": 19.0, "heater_w": null,
            "plane": { "intercept_m2": null, "wind_m_s": null }, "notes": "",
        },
        "pots": [{
            "in_s": 60.0, "out_s": 2400.0, "pot": cooker["cooker"]["pot"], "lid": "on",
            "water_kg": 1.0, "start_c": 19.0, "left_kg": null,
        }],
        "readings": { "typed": (0..=40).step_by(5).map(reading).collect::<Vec<_>>() },
        "fit": {
            "at": at(41), "runs": [id], "worth": "good", "scatter_k": 0.9,
            "found": [{
                "parameter": "contact_w_m2k",
                "measured": { "value": contact_w_m2k, "sd": 30.0 },
                "told": true,
            }],
            "figures": null, "spread": null, "boiling": null, "standard_w": null,
        },
    })
}

/// Puts two fitted boils into the household that is kept on the device.
async fn seed(page: &Page) -> Outcome {
    const KEY: &str = "duskpot.household";
    let kept = page
        .evaluate(&format!("return localStorage.getItem('{KEY}')"))
        .await?;
    let mut save: Value = serde_json::from_str(kept.as_str().unwrap_or_default())?;
    let cooker = save["body"]["cookers"][0].clone();
    let runs = save["body"]["bench"]["runs"]
        .as_array_mut()
        .ok_or("a bench in the save")?;
    runs.push(boiled(901, "Dry seat", &cooker, 310.0));
    runs.push(boiled(902, "=Oiled seat", &cooker, 520.0));
    save["body"]["next_id"] = 903.into();
    let text = Value::from(save.to_string());
    page.evaluate(&format!("localStorage.setItem('{KEY}', {text})"))
        .await?;
    page.reload().await
}

#[test]
fn two_builds_are_compared_printed_and_go_out_as_a_file() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.until(
            "the household to be kept",
            "return localStorage.getItem('duskpot.household') !== null",
        )
        .await?;
        seed(page).await?;
        page.open("#/bench/compare").await?;
        page.test("compare-store").await?;
        page.see("B · Dry seat").await?;
        let measured = said(page, "compare-measured").await?;
        assert!(measured.contains("W/(m² K)"), "{measured}");
        page.screenshot("compare").await?;
        tap(page, "compare-csv").await?;
        page.see("was handed to the browser").await?;
        let file = page.downloaded("duskpot-results-").await?;
        assert!(
            file.starts_with("build,run,figure,value,unit,sd,low,high,method\r\n"),
            "{file}"
        );
        assert!(
            file.contains(",Dry seat,contact_w_m2k,310,W/(m² K),30,"),
            "{file}"
        );
        assert!(file.contains(",'=Oiled seat,contact_w_m2k,520,"), "{file}");
        tap(page, "to-print").await?;
        let builds = said(page, "report-builds").await?;
        assert!(builds.contains("above the sea"), "{builds}");
        page.test("report-conditions").await?;
        let methods = said(page, "report-methods").await?;
        assert!(methods.contains("8 of 10"), "{methods}");
        page.test("report-definitions").await?;
        page.test("print").await?;
        Ok(())
    });
}
