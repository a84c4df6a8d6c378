//! The line under the head.

use model::sun::Daylight;

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
