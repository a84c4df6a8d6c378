//! What we cook on: its parts changed, refused and kept; a second cooker added, copied, erased.

use thirtyfour::{By, Key};

use crate::page::Page;
use crate::story::{Outcome, story};

type Answer<T> = Result<T, Box<dyn std::error::Error>>;

/// The example household's room Cooker.
async fn room(page: &Page) -> Outcome {
    page.open("").await?;
    tap(page, "start-example").await?;
    page.test("verdict").await?;
    page.open("#/cooker").await?;
    page.test("cooker-facts").await?;
    Ok(())
}

/// Presses what has this `data-test`; of a fold, its heading.
async fn tap(page: &Page, test: &str) -> Outcome {
    let found = page.test(test).await?;
    let pressed = match found.tag_name().await?.as_str() {
        "details" => found.find(By::Tag("summary")).await?,
        _ => found,
    };
    // Near the middle, where nothing that stays in sight lies over it.
    page.evaluate(&format!(
        "document.querySelector('[data-test=\"{test}\"]').scrollIntoView({{ block: 'center' }})"
    ))
    .await?;
    Ok(pressed.click().await?)
}

/// Types over what a field says, letter by letter.
async fn type_over(page: &Page, test: &str, text: &str) -> Outcome {
    let field = page.test(test).await?;
    page.evaluate(&format!(
        "document.querySelector('[data-test=\"{test}\"]').scrollIntoView({{ block: 'center' }})"
    ))
    .await?;
    field.send_keys(Key::Control + "a").await?;
    Ok(field.send_keys(text).await?)
}

/// What a place says.
async fn said(page: &Page, test: &str) -> Answer<String> {
    Ok(page.test(test).await?.text().await?)
}

/// How many of these there are.
async fn count(page: &Page, test: &str) -> Answer<u64> {
    let script = format!("return document.querySelectorAll('[data-test=\"{test}\"]').length");
    Ok(page.evaluate(&script).await?.as_u64().unwrap_or_default())
}

#[test]
fn a_number_that_cannot_be_leaves_the_cooker_as_it_was() {
    story(async |page| {
        room(page).await?;
        let before = said(page, "cooker-in-short").await?;
        tap(page, "parts-heater").await?;
        // 90 on the way to 900 would be a cooker that boils nothing.
        type_over(page, "part-cutout", "900").await?;
        page.see("At most 600").await?;
        assert_eq!(
            page.test("part-cutout")
                .await?
                .prop("value")
                .await?
                .as_deref(),
            Some("900")
        );
        assert_eq!(said(page, "cooker-in-short").await?, before);
        type_over(page, "part-cutout", "220").await?;
        assert_ne!(said(page, "cooker-in-short").await?, before);
        page.reload().await?;
        tap(page, "parts-heater").await?;
        let kept = page.test("part-cutout").await?.prop("value").await?;
        assert_eq!(kept.as_deref(), Some("220"));
        page.screenshot("cooker-parts").await
    });
}

#[test]
fn what_can_burn_is_refused_with_the_reason() {
    story(async |page| {
        room(page).await?;
        let before = said(page, "cooker-facts").await?;
        tap(page, "parts-jacket").await?;
        let layer = page.test("part-layer").await?;
        for option in layer.find_all(By::Tag("option")).await? {
            if option.text().await? == "straw" {
                option.click().await?;
            }
        }
        page.see("This can’t be built.").await?;
        page.see("straw would come to").await?;
        assert_eq!(said(page, "cooker-facts").await?, before);
        // The list shows what the jacket is still made of.
        let picked =
            "return document.querySelector('[data-test=part-layer]').selectedOptions[0].text";
        assert_eq!(page.evaluate(picked).await?.as_str(), Some("perlite"));
        page.screenshot("cooker-refused").await
    });
}

#[test]
fn cookers_come_are_used_and_go_and_come_back() {
    story(async |page| {
        room(page).await?;
        let n_before = count(page, "cooker-line").await?;
        tap(page, "add-cooker").await?;
        tap(page, "add-now").await?;
        page.see("In use").await?;
        tap(page, "cooker-manage").await?;
        type_over(page, "cooker-name", "The new one").await?;
        tap(page, "copy-cooker").await?;
        page.see("The new one, copy").await?;
        tap(page, "use-cooker").await?;
        page.until(
            "the copy in use",
            "return document.querySelector('[data-test=use-cooker]') === null",
        )
        .await?;
        // The rooms that answer for it name it, as there are others, and lead to all of them.
        for room in ["#/", "#/diary"] {
            page.open(room).await?;
            page.see("On: The new one, copy").await?;
        }
        tap(page, "on-which").await?;
        page.test("cooker-in-use").await?;
        tap(page, "cooker-manage").await?;
        tap(page, "erase-cooker").await?;
        page.see("The new one, copy erased").await?;
        assert_eq!(count(page, "cooker-line").await?, n_before + 1);
        page.press("Undo").await?;
        page.see("Brought back").await?;
        assert_eq!(count(page, "cooker-line").await?, n_before + 2);
        page.screenshot("cooker-list").await
    });
}

#[test]
fn what_limits_a_build_is_worked_out_when_asked_for() {
    story(async |page| {
        room(page).await?;
        tap(page, "cooker-limits").await?;
        page.until(
            "what limits",
            "return document.querySelector('[data-test=cooker-limit]').textContent.includes('ordinary days')",
        )
        .await?;
        tap(page, "cooker-take").await?;
        page.until(
            "what the heater takes",
            "return !document.querySelector('[data-test=cooker-take-facts]').textContent.includes('…')",
        )
        .await?;
        page.screenshot("cooker-limits").await
    });
}

#[test]
fn a_changed_cooker_is_asked_from_when_on_it_is_so() {
    story(async |page| {
        room(page).await?;
        tap(page, "parts-heater").await?;
        type_over(page, "part-cutout", "220").await?;
        page.see("From when on is it like this?").await?;
        page.screenshot("cooker-rebuilt").await?;
        // It is asked until it is answered.
        page.reload().await?;
        tap(page, "rebuilt-now").await?;
        page.see("Until today").await?;
        assert!(!page.has_test("rebuilt").await?);
        page.reload().await?;
        assert_eq!(count(page, "formerly").await?, 1);
        // What was put right leaves no trace.
        tap(page, "parts-heater").await?;
        type_over(page, "part-cutout", "230").await?;
        tap(page, "rebuilt-always").await?;
        page.until(
            "no question",
            "return document.querySelector('[data-test=rebuilt]') === null",
        )
        .await?;
        assert_eq!(count(page, "formerly").await?, 1);
        Ok(())
    });
}

#[test]
fn what_a_store_was_measured_to_hold_is_a_line_within_limits() {
    story(async |page| {
        room(page).await?;
        let before = said(page, "cooker-in-short").await?;
        tap(page, "parts-store").await?;
        type_over(page, "part-held", "400").await?;
        page.see("At most 300").await?;
        assert_eq!(said(page, "cooker-in-short").await?, before);
        type_over(page, "part-held", "80").await?;
        assert_ne!(said(page, "cooker-in-short").await?, before);
        page.reload().await?;
        tap(page, "parts-store").await?;
        let kept = page.test("part-held").await?.prop("value").await?;
        assert_eq!(kept.as_deref(), Some("80"));
        page.screenshot("cooker-held").await
    });
}
