//! English: the room More and its pages.

use crate::i18n::strings::more::{AboutPage, More, ToldDay};

pub(super) const MORE: More = More {
    title: "More",
    settings: "Settings",
    copies: "Keep a copy",
    example: "Example household",
    safety: "Safety",
    about: "About",
    settings_line: "Language, light or dark, °C or °F",
    copies_line: "As a file, to keep or to take to another phone",
    example_line: "Look round, and watch a whole day in 30 seconds",
    safety_line: "Heat, salt, pressure, electricity, food",
    about_line: "What it works out, what it does not know, offline",
    language: "Language",
    language_automatic: "As on this device",
    theme: "Light or dark",
    theme_automatic: "As on this device",
    theme_light: "Light",
    theme_dark: "Dark",
    degrees: "Temperatures in",
    degrees_c: "°C",
    degrees_f: "°F",
    copies_why: "Everything is kept on this device and nowhere else. A copy as a file survives a lost phone, and carries your household to another one.",
    copy_out: "Keep a copy as a file",
    copy_in: "Bring a copy back",
    copy_holds: |n_cookers, n_entries, n_days| {
        let cookers = if n_cookers == 1 {
            "1 cooker".to_owned()
        } else {
            format!("{n_cookers} cookers")
        };
        let entries = if n_entries == 1 {
            "1 entry".to_owned()
        } else {
            format!("{n_entries} entries")
        };
        let days = if n_days == 1 {
            "1 day of sun".to_owned()
        } else {
            format!("{n_days} days of sun")
        };
        format!("It holds {cookers}, {entries}, {days}.")
    },
    copy_cookers: |names| format!("Cookers: {names}."),
    copy_empty: "There is no household in this copy yet, only settings.",
    copy_of_example: "This is a copy of the example household, which is made up.",
    copy_saved_at: |value| format!("Written {value}."),
    copy_spans: |a, b| format!("From {a} to {b}."),
    copy_replaces: "It takes the place of what is here now. What is here now is put aside, so that you can go back.",
    copy_takes_place: "It becomes the household on this device.",
    copy_picked: "The copy you picked",
    copy_take: "Bring this copy in",
    copy_is_out: |name| format!("The copy is among your downloads: {name}"),
    copies_own_only: "You are in the example household. Copies are made of your own: go back to it first.",
    keeping: "Kept on this device",
    keeping_promised: "The browser has promised to keep it even when the device runs short of room.",
    keeping_not_promised: "The browser may clear it when the device runs short of room, or when it has not been opened for long. Keep a copy now and then.",
    trouble: "If saving fails",
    trouble_steps: [
        "Keep a copy as a file first. It holds what you see, saved or not.",
        "Make room: erase what was put aside on this page, then pictures, videos or apps on this device. Duskpot tries again with your next change.",
        "A private window keeps nothing. Open Duskpot in an ordinary window and bring the copy in there.",
        "Clearing the browser’s data clears your household, too. Keep a copy before you do.",
        "Two windows at a time do no harm: each takes over what the other saved.",
    ],
    copy_replace: "Replace with this copy",
    copy_not_ours: "This file is not a copy of a Duskpot household.",
    copy_newer: "This copy was written by a newer version of Duskpot. Update first; the file is fine.",
    copy_damaged: |value| format!("This copy is damaged at: {value}. Nothing was changed here."),
    copy_unreadable: "This file could not be read. Nothing was changed here.",
    copy_lacks_readings: "The copy lacks readings of files.",
    copy_no_room: "There is no room to put aside what is here now, so nothing was changed.",
    aside: "Put aside",
    aside_why: "What a copy replaced, the last three times, and what could not be read. It takes up room until you erase it.",
    aside_not_read: "The browser does not say what was put aside.",
    aside_to_file: "Keep as a file",
    aside_erase_sure: "Erase this for good? It can’t be brought back afterwards.",
    aside_replaced: |value| format!("The household before the copy, {value}"),
    aside_damaged: |value| format!("Could not be read, {value}"),
    example_what: "A made-up household in a made-up hill town. Try everything there: your own household is not touched.",
    example_who: "Ilvane and Toreo live in Olmaquira, a hill town that is on no map, with two children and a grandmother. They cook on Rufo, a block of aluminium in perlite; Brina, of soapstone, is the older one. Their last two weeks are in the diary, the grey days and the open lid, too.",
    example_not_now: "Your own household could not be saved just now, so it stays on the screen. Keep a copy as a file first.",
    example_show: "Show the example",
    example_leave: "Back to my household",
    example_anew: "Start the example over",
    day: ToldDay {
        title: "A whole day in 30 seconds",
        what: "The sun comes up, the store warms, the pot goes in after dark and boils. You can stop the clock at any time, look round the rooms, and go on.",
        what_in_steps: "This device asks for less motion, so the day waits for you: each tap takes it forward by an hour.",
        start: "Watch the day",
        pause: "Pause",
        go_on: "Go on",
        step: "One hour on",
        stop: "Stop",
        again: "Once more",
        sun: |sky| format!("Sky: {sky}."),
        evening: "The sun is down.",
        store: |degrees| format!("The store has {degrees}."),
        pot_in: "The pot is in: rice for five.",
        boils: "It boils, on stored sun.",
        done: "Done and served.",
    },
    about_page: AboutPage {
        does: "What it works out",
        does_list: [
            "How hot the store is now, from the skies, the readings and the pots you log.",
            "Whether a pot will boil tonight, when it boils and when the food is done.",
            "When the pot must go in at the latest.",
            "What would help when it looks doubtful: at most three things, each worked out.",
            "Where the heat goes, and what follows from the way your cooker is built.",
        ],
        sure: "How sure it is",
        sure_list: [
            "Every answer is asked of 512 cookers that may be yours: each loses, takes up and holds a little more or less heat than the tables say, under a sky a little better or worse. The odds tell in how many of them the meal is ready. What you report makes those count more that fit.",
            "The figures come from published tables and from common practice. What you measure yourself counts for more: one thermometer reading late in the day makes the evening much surer.",
            "Times and temperatures are rounded to what is known of them. ‘About’ means just that.",
        ],
        not_known: "What it does not know",
        not_known_list: [
            "The weather to come. The rest of today is taken to be like the last sky you logged; a day without a log, like sun and cloud; leaning in your favour, like a clear day, and against you, like a grey one.",
            "What nobody logged: a lid left open, a pot taken out early, shade or dust on the panel.",
            "How hot every spot of your store is. It knows the mean; near the heater it can be hotter.",
            "The age of your beans, how salty the water is, how thick the porridge. These can double a cooking time.",
            "Whether your cooker is built safely. See the page on safety.",
        ],
        device: "Where it is kept",
        device_list: [
            "Everything you enter stays on this device. There is no account, and nothing is sent anywhere.",
            "Nobody else can bring it back for you, either. Keep a copy as a file.",
        ],
        offline_looking: "Looking whether all of it is on this device…",
        offline_ready: "All of Duskpot is on this device. It opens and works without a connection.",
        offline_unsupported: "This browser window does not keep apps, so Duskpot needs a connection each time it is opened. An ordinary window of a newer browser would keep it.",
        offline_not_stored: "Not all of Duskpot is on this device yet. Stay connected for a minute and open this page again; if that does not help, make room.",
        version: |version| format!("Duskpot {version}"),
        licence: "Licence",
        licence_line: "Free to use, to change and to pass on. There is no warranty.",
    },
};
