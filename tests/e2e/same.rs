//! The same diary gives the same answer in the browser and on this machine, to the last bit.

use model::local_time::{Day, LocalTime};
use model::odds::{Replay, Settings};

use crate::browser::Theme;
use crate::evenings::{afternoon, set_up, tap};
use crate::learning::{chances, pot_of_the_day_before, read};
use crate::saved;
use crate::story::story_on;

/// What the app keeps of its beliefs, as the letters that it keeps them in: 15 bits each.
fn bytes_of(text: &str) -> Vec<u8> {
    let (mut bits, mut count, mut bytes) = (0_u64, 0, Vec::new());
    for letter in text.chars() {
        bits = bits << 15 | u64::from(u32::from(letter) - 0x1000);
        count += 15;
        while 8 <= count {
            count -= 8;
            bytes.push((bits >> count & 0xFF) as u8);
        }
        bits &= (1 << count) - 1;
    }
    bytes.truncate(bytes.len() / 8 * 8);
    bytes
}

#[test]
fn what_the_browser_believes_is_believed_here_to_the_last_bit() {
    story_on(afternoon(Theme::Light, 1), "/", async |page| {
        set_up(page).await?;
        page.open("#/diary").await?;
        pot_of_the_day_before(page, "entry-boiled", 50).await?;
        page.open("#/diary").await?;
        tap(page, "previous-day").await?;
        pot_of_the_day_before(page, "entry-not-boiled", 80).await?;
        page.open("#/diary").await?;
        for _ in 0..3 {
            tap(page, "previous-day").await?;
        }
        read(page, "80").await?;
        chances(page).await?;
        // All of it is walked anew, and put away once it is.
        page.evaluate("Object.keys(localStorage).filter(key => key.startsWith('duskpot.beliefs')).forEach(key => localStorage.removeItem(key))")
            .await?;
        page.reload().await?;
        page.until(
            "the beliefs put away",
            "return localStorage.getItem('duskpot.beliefs.0') !== null",
        )
        .await?;
        let kept = async |key: &str| {
            let script = format!("return localStorage.getItem('duskpot.{key}')");
            let kept = page.evaluate(&script).await?;
            Ok::<_, Box<dyn std::error::Error>>(kept.as_str().unwrap_or_default().to_owned())
        };
        let household = saved::copy::read(&kept("household").await?)?;
        // Not when it was saved: a page that goes may by then have lost the zone that it was given.
        let now = "return Math.floor(Date.now() / 1000 - 60 * new Date().getTimezoneOffset())";
        let now = page.evaluate(now).await?.as_i64().ok_or("a time")?;
        let owned = household.cookers.first().ok_or("a cooker")?;
        assert!(2 < owned.journal.events.len());
        let mut replay = Replay::new(Settings::default());
        let (cooker, journal) = (&owned.cooker, &owned.journal);
        replay.belief(&household.site, cooker, journal, LocalTime(now))?;
        let ours = replay.kept_by(Day(i32::MAX)).ok_or("a midnight")?;
        let theirs = bytes_of(&kept("beliefs.0").await?);
        assert_eq!(theirs.len(), ours.len());
        let off = theirs
            .iter()
            .zip(&ours)
            .position(|(one, other)| one != other);
        assert_eq!(off, None, "of {} bytes", ours.len());
        Ok(())
    });
}
