//! English: the room More and its pages.

use crate::i18n::strings::more::More;

pub(super) const MORE: More = More {
    title: "More",
    settings: "Settings",
    copies: "Keep a copy",
    example: "Example household",
    safety: "Safety",
    about: "About",
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
        format!("In this copy: {cookers}, {entries}, {days}.")
    },
    copy_saved_at: |value| format!("Written {value}."),
    copy_spans: |a, b| format!("From {a} to {b}."),
    copy_replaces: "It takes the place of what is here now. What is here now is put aside, so that you can go back.",
    copy_replace: "Replace with this copy",
    copy_not_ours: "This file is not a copy of a Duskpot household.",
    copy_newer: "This copy was written by a newer version of Duskpot. Update first; the file is fine.",
    copy_damaged: |value| format!("This copy is damaged at: {value}. Nothing was changed here."),
    copy_unreadable: "This file could not be read. Nothing was changed here.",
    copy_no_room: "There is no room to put aside what is here now, so nothing was changed.",
    aside: "Put aside",
    aside_replaced: |value| format!("The household before the copy, {value}"),
    aside_damaged: |value| format!("Could not be read, {value}"),
    example_what: "A made-up household in a made-up hill town. Try everything there: your own household is not touched.",
    example_show: "Show the example",
    example_leave: "Back to my household",
    example_anew: "Start the example over",
};
