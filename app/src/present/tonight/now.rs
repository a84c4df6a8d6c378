//! The line under the head.

use model::local_time::LocalTime;
use model::sun::Daylight;
use model::tonight::Doubt;

use super::Voice;
use crate::i18n::format::Sure;
use crate::present::cooker::list::capital;

/// Day, time, and what the sun is doing; the daylight is today's.
pub fn now_line(voice: &Voice<'_>, daylight: Daylight) -> String {
    let words = &voice.strings.tonight.now;
    let day = capital(&voice.formats.weekday(voice.now.day()));
    let time = voice.time(voice.now, Sure::Known);
    match daylight {
        Daylight::Between { rises, .. } if voice.now < rises => {
            (words.sun_from)(&day, &time, &voice.time(rises, Sure::Near))
        }
        Daylight::Between { sets, .. } if voice.now < sets => {
            (words.sun_until)(&day, &time, &voice.time(sets, Sure::Near))
        }
        Daylight::Between { .. } | Daylight::NotAtAll => (words.sun_is_down)(&day, &time),
        Daylight::AllDay => (words.sun_stays_up)(&day, &time),
    }
}

/// What the diary lacks of today's sun, once there is something to log of it.
pub fn lacks_sun(doubts: &[Doubt], daylight: Daylight, now: LocalTime) -> Option<Doubt> {
    let has_begun = match daylight {
        Daylight::Between { rises, .. } => rises < now,
        Daylight::AllDay => true,
        Daylight::NotAtAll => false,
    };
    doubts.iter().copied().find(|doubt| {
        let lacks =
            matches!(doubt, Doubt::NothingLogged) || *doubt == Doubt::SkyNotLogged(now.day());
        has_begun && lacks
    })
}
