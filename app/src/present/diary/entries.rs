//! The entries of a day, and what was erased.

use model::journal::{Felt, What};

use crate::components::{EntryView, Icon};
use crate::i18n::format::Sure;
use crate::present::diary::draft::Kind;
use crate::present::tonight::Voice;
use crate::present::tonight::{plan, running};
use crate::state::document::Entry;
use crate::state::erased::{Erased, ErasedWhat};

/// The drawing of a kind of entry.
pub fn icon(kind: Kind) -> Icon {
    match kind {
        Kind::Reading => Icon::Thermometer,
        Kind::Felt => Icon::HotHand,
        Kind::Meal => Icon::PotSteams,
        Kind::LidOpen => Icon::LidOpen,
        Kind::HeaterOff => Icon::HeaterOff,
        Kind::TopUp => Icon::Heater,
    }
}

/// A line of the diary.
pub fn entry(voice: &Voice<'_>, entry: &Entry) -> EntryView {
    EntryView {
        when: voice.time(entry.at, Sure::Known),
        title: title(voice, &entry.what),
        detail: detail(voice, &entry.what),
        icon: icon(Kind::of(&entry.what)),
    }
}

fn title(voice: &Voice<'_>, what: &What) -> String {
    let (words, formats) = (&voice.strings.diary, voice.formats);
    let span = |for_s: i64| {
        let for_s = i32::try_from(for_s).map_or(f64::MAX, f64::from);
        formats.duration(for_s, Sure::Known)
    };
    match what {
        What::Reading { store_c } => (words.reading)(&formats.temperature(*store_c, Sure::Known)),
        What::Felt(Felt::Cold) => words.felt_cold.to_owned(),
        What::Felt(Felt::Hot) => words.felt_hot.to_owned(),
        What::LidOpen { for_s } => (words.lid_open)(&span(*for_s)),
        What::HeaterOff { for_s } => (words.heater_off)(&span(*for_s)),
        What::TopUp { heat_w, for_s } => (words.top_up)(&formats.watts(*heat_w), &span(*for_s)),
        What::Meal(meal) => plan::amounts(voice, meal.dish, (meal.food_kg, meal.water_kg)),
    }
}

fn detail(voice: &Voice<'_>, what: &What) -> String {
    let What::Meal(meal) = what else {
        return String::new();
    };
    let seen = running::answered(voice, meal);
    if seen.is_empty() {
        voice.strings.diary.not_seen.to_owned()
    } else {
        seen.join(" ")
    }
}

/// Something that was erased, in a few words.
pub fn erased(voice: &Voice<'_>, erased: &Erased) -> String {
    let words = &voice.strings.diary;
    let today = voice.now.day();
    match &erased.what {
        ErasedWhat::Entry { entry, .. } => (words.erased_entry)(
            &title(voice, &entry.what),
            &voice.formats.instant(entry.at, today),
        ),
        ErasedWhat::Cooker { cooker, .. } => (words.erased_cooker)(&cooker.name),
        ErasedWhat::Run { run, .. } => (words.erased_run)(&run.about.name),
        ErasedWhat::Reading { reading, .. } => {
            (words.erased_reading)(&voice.formats.instant(reading.at, today))
        }
        ErasedWhat::Sky { day, .. } => (words.erased_sky)(&voice.formats.near_day(*day, today)),
    }
}

#[cfg(test)]
mod tests {
    use model::local_time::Day;

    use super::*;
    use crate::present::tests::english;
    use crate::state::ids::{CookerId, EntryId, ErasedId};

    fn reading(what: What) -> Entry {
        Entry {
            id: EntryId(3),
            cooker: CookerId(1),
            at: Day(20_000).at_s(18 * 3600 + 2400),
            what,
            is_right: false,
        }
    }

    #[test]
    fn lines_say_when_and_what() {
        let (strings, formats) = english();
        let voice = Voice {
            strings,
            formats: &formats,
            now: Day(20_000).at_s(70_000),
        };
        let say = |what| entry(&voice, &reading(what)).title.replace('\u{A0}', " ");
        assert_eq!(say(What::Reading { store_c: 181.6 }), "Thermometer: 182 °C");
        assert_eq!(say(What::LidOpen { for_s: 600 }), "Lid open for 10 min");
        assert_eq!(
            say(What::HeaterOff { for_s: 5400 }),
            "Heater off for 1 h 30"
        );
        let gone = Erased {
            id: ErasedId(1),
            at: voice.now,
            what: ErasedWhat::Entry {
                entry: reading(What::LidOpen { for_s: 600 }),
                was_running: false,
            },
        };
        let when = formats.instant(Day(20_000).at_s(67_200), Day(20_000));
        let what = "Lid open for 10 min, ";
        assert_eq!(
            erased(&voice, &gone).replace('\u{A0}', " "),
            format!("{what}{when}").replace('\u{A0}', " ")
        );
    }
}
