//! The app opens, wherever it is put.

use crate::browser::{Phone, Theme};
use crate::evenings::{afternoon, set_up, tap};
use crate::story::{story, story_on};

#[test]
fn the_page_opens() {
    story(async |page| {
        page.open("").await?;
        page.see("Welcome").await?;
        page.screenshot("first-page").await
    });
}

#[test]
fn a_first_visit_begins_before_all_is_there() {
    story(async |page| {
        page.site.hold_back("_rest.wasm")?;
        page.open("").await?;
        page.see("Welcome").await?;
        page.test("start-example").await?.click().await?;
        page.test("rooms-not-here").await?;
        page.screenshot("on-the-way").await?;
        page.site.give_back("_rest.wasm")?;
        page.press("Try again").await?;
        page.test("verdict").await?;
        // The browser logs what it asked for in vain, and no door was opened before its time.
        let errors = page.console_errors().await?;
        assert!(
            errors.iter().all(|error| error.contains("404")),
            "{errors:?}"
        );
        page.is_kept().await?;
        page.site.stop_server();
        page.reload().await?;
        page.test("verdict").await.map(|_| ())
    });
}

#[test]
fn an_app_that_has_stopped_says_so() {
    story(async |page| {
        page.open("").await?;
        page.evaluate(
            "const error = new WebAssembly.RuntimeError('unreachable');
             return dispatchEvent(new ErrorEvent('error', { error }));",
        )
        .await?;
        page.test("stopped").await?;
        page.screenshot("stopped").await?;
        page.press("Start it again").await?;
        page.see("Welcome").await?;
        assert!(!page.has_test("stopped").await?);
        Ok(())
    });
}

#[test]
fn the_page_opens_in_a_folder_of_a_host() {
    story_on(Phone::default(), "/kitchen/pots/", async |page| {
        page.open("#/more/safety").await?;
        page.is_kept().await?;
        page.site.stop_server();
        page.open("#/more/safety").await?;
        assert_eq!(page.hash().await?, "#/more/safety");
        Ok(())
    });
}

#[test]
fn the_page_is_dark_on_a_dark_phone() {
    let phone = Phone {
        theme: Theme::Dark,
        ..Phone::default()
    };
    story_on(phone, "/", async |page| {
        page.open("").await?;
        let background = page
            .evaluate("return getComputedStyle(document.documentElement).backgroundColor")
            .await?;
        let channels: Vec<u32> = background
            .as_str()
            .unwrap_or_default()
            .split(|c: char| !c.is_ascii_digit())
            .filter_map(|digits| digits.parse().ok())
            .collect();
        assert_eq!(channels.len(), 3, "{background}");
        assert!(channels.iter().all(|&channel| channel < 80), "{background}");
        page.screenshot("first-page-dark").await
    });
}

#[test]
fn the_page_can_reach_no_other_host() {
    story(async |page| {
        page.open("").await?;
        let refused = page
            .evaluate(
                "const refused = new Promise((resolve) => document.addEventListener(
                    'securitypolicyviolation', (event) => resolve(event.effectiveDirective)));
                 fetch('https://elsewhere.invalid/').catch(() => undefined);
                 return refused;",
            )
            .await?;
        assert_eq!(refused, "connect-src");
        // The browser logs the attempt, and that is all that comes of it.
        let errors = page.console_errors().await?;
        assert!(
            errors
                .iter()
                .all(|error| error.contains("Content Security Policy")),
            "{errors:?}"
        );
        Ok(())
    });
}

#[test]
fn what_was_cleared_under_the_app_stays_cleared_and_that_is_said() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        const KEPT: &str = "return localStorage.getItem('duskpot.household') !== null";
        set_up(page).await?;
        page.until("the household to be kept", KEPT).await?;
        // In another window, the settings of the browser; then the person comes back.
        page.evaluate("localStorage.clear(); dispatchEvent(new Event('pageshow'))")
            .await?;
        page.test("save-trouble").await?;
        page.screenshot("cleared").await?;
        page.reload().await?;
        page.see("Welcome").await?;
        // Whoever goes on instead keeps all of it.
        set_up(page).await?;
        page.until("the household to be kept", KEPT).await?;
        page.evaluate("localStorage.clear(); dispatchEvent(new Event('pageshow'))")
            .await?;
        page.test("save-trouble").await?;
        page.evaluate("location.hash = '#/diary'").await?;
        tap(page, "day-clear").await?;
        page.until("the household to be kept again", KEPT).await?;
        assert!(!page.has_test("save-trouble").await?);
        page.reload().await?;
        page.test("day-sun").await.map(|_| ())
    });
}

#[test]
fn what_the_app_named_speaks_the_language_that_is_chosen() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/cooker").await?;
        page.see("My cooker").await?;
        page.open("#/more/settings").await?;
        page.press("Español").await?;
        page.open("#/cooker").await?;
        page.see("Mi cocina").await?;
        assert!(!page.text().await?.contains("My cooker"));
        Ok(())
    });
}
