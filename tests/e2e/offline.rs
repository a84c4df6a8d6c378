//! After one visit the app needs its server no more.

use crate::browser::Phone;
use crate::story::{story, story_on};

#[test]
fn the_app_opens_without_its_server_after_one_visit() {
    story(async |page| {
        page.open("").await?;
        page.is_kept().await?;
        page.site.stop_server();
        page.reload().await?;
        page.open("#/more/safety").await?;
        assert_eq!(page.hash().await?, "#/more/safety");
        page.role("heading", "Safety").await?;
        page.screenshot("offline").await
    });
}

#[test]
fn everything_of_the_app_is_on_the_device_after_one_visit() {
    story(async |page| {
        page.open("").await?;
        page.is_kept().await?;
        page.site.stop_server();
        page.reload().await?;
        // The files that the page itself has not asked for yet, among others.
        let missing = page
            .evaluate(
                "const addresses = ['./', 'manifest.webmanifest', 'icons/icon-512.png',
                    ...[...document.querySelectorAll('link[href]')].map((link) => link.href)];
                 const answers = await Promise.all(addresses.map((address) =>
                    fetch(address).then((answer) => answer.ok, () => false)));
                 return addresses.filter((_, index) => !answers[index]);",
            )
            .await?;
        assert_eq!(missing, serde_json::json!([]));
        Ok(())
    });
}

#[test]
fn the_app_is_kept_on_a_slow_phone() {
    let phone = Phone {
        slowdown: 6,
        ..Phone::default()
    };
    story_on(phone, "/", async |page| {
        page.open("").await?;
        page.is_kept().await?;
        page.site.stop_server();
        page.reload().await
    });
}

#[test]
fn a_site_that_is_not_whole_is_not_kept() {
    story(async |page| {
        // As when a page is opened while its host is just putting up a new version.
        page.site.damage("icons/icon-512.png")?;
        page.open("").await?;
        let end = page
            .evaluate(
                "const registration = await navigator.serviceWorker.register('./sw.js');
                 const worker = registration.installing ?? registration.waiting ?? registration.active;
                 return new Promise((resolve) => {
                    const look = () => {
                        if (['activated', 'redundant'].includes(worker.state)) resolve(worker.state);
                    };
                    worker.addEventListener('statechange', look);
                    look();
                 });",
            )
            .await?;
        assert_eq!(end, "redundant");
        Ok(())
    });
}
