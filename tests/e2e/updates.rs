//! A new version is offered, and never forced on the person who cooks.

use crate::page::Page;
use crate::story::{Outcome, story};

/// One visit of the old version; then the host has a new one, and the page is opened again.
async fn meet_new_version(page: &Page) -> Outcome {
    page.open("").await?;
    page.is_kept().await?;
    page.site.release("newer")?;
    page.open("#/more/safety").await?;
    page.test("update").await?;
    Ok(())
}

#[test]
fn a_new_version_takes_over_when_it_is_asked_to() {
    story(async |page| {
        meet_new_version(page).await?;
        assert_eq!(page.release().await?, None);
        page.press("Update now").await?;
        page.until(
            "the new version",
            "return document.querySelector('meta[name=release]') !== null",
        )
        .await?;
        assert_eq!(page.hash().await?, "#/more/safety");
        // Only the new version is left on the device, and there is nothing more to offer.
        let stores = page
            .evaluate("return caches.keys().then((names) => names.length)")
            .await?;
        assert_eq!(stores, 1);
        assert!(!page.has_test("update").await?);
        page.site.stop_server();
        page.reload().await?;
        assert_eq!(page.release().await?.as_deref(), Some("newer"));
        Ok(())
    });
}

#[test]
fn a_new_version_waits_while_the_old_one_is_in_use() {
    story(async |page| {
        meet_new_version(page).await?;
        page.reload().await?;
        page.test("update").await?;
        assert_eq!(page.release().await?, None);
        page.site.stop_server();
        page.reload().await?;
        assert_eq!(page.release().await?, None);
        Ok(())
    });
}

#[test]
fn a_new_version_that_is_not_whole_is_not_offered() {
    story(async |page| {
        page.open("").await?;
        page.is_kept().await?;
        page.site.release("newer")?;
        page.site.damage("index.html")?;
        let look = "const registration = await navigator.serviceWorker.ready;
                    await registration.update().catch(() => undefined);";
        page.evaluate(look).await?;
        page.until(
            "the end of the download",
            "return (await navigator.serviceWorker.ready).installing === null",
        )
        .await?;
        assert!(!page.has_test("update").await?);
        assert_eq!(page.release().await?, None);
        Ok(())
    });
}
