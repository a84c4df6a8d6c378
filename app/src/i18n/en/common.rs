//! English: shared texts.

use crate::i18n::strings::common::{Buttons, Common, Notes, Rooms, Saving, Units};
use crate::state::settings::Degrees;

pub(super) const COMMON: Common = Common {
    app_name: "Duskpot",
    rooms: Rooms {
        tonight: "Tonight",
        diary: "Diary",
        bench: "Bench",
        cooker: "Cooker",
        more: "More",
    },
    buttons: Buttons {
        save: "Save",
        cancel: "Cancel",
        close: "Close",
        back: "Back",
        next: "Next",
        undo: "Undo",
        change: "Change",
        erase: "Erase",
        bring_back: "Bring back",
        add: "Add",
        yes: "Yes",
        no: "No",
        try_again: "Try again",
        less: "Less",
        more: "More",
    },
    saving: Saving {
        saved: "Saved on this device",
        pending: "Saving…",
        cleared: "What this device kept was cleared. You still see it here: change anything and all \
                  of it is kept again; close Duskpot and it is gone.",
        full: "This device has no room left: your last changes are not saved. Keep a copy as a \
               file, then make room.",
        not_allowed: "This browser window keeps nothing, so your changes are gone when it closes. \
                      Keep a copy as a file, or open the app in an ordinary window.",
        failed: "Your last changes could not be saved. Keep a copy as a file.",
        newer_version: "What is saved here was written by a newer version of Duskpot. It is left \
                        as it is; nothing you change now is saved. Connect once to update, or \
                        keep a copy as a file.",
        damaged: "What was saved here could not be read. It was put aside, not thrown away: you \
                  can keep it as a file.",
        damaged_in_place: "What was saved here could not be read, and there is no room to put it \
                           aside. It is left as it is; nothing you change now is saved. Keep it \
                           as a file, then make room.",
        copy_to_file: "Keep a copy as a file",
        copy_damaged_to_file: "Keep what was put aside as a file",
        changed_elsewhere: "Another window changed this household. You see its latest state.",
        change_lost: "Another window changed this household at the same time. Your last change \
                      no longer fits and was left out: please look it over.",
        update_waits: "A new version of Duskpot is ready.",
        update_now: "Update now",
    },
    notes: Notes {
        entry_erased: "Entry erased",
        cooker_erased: |name| format!("{name} erased, with its entries"),
        sky_erased: "The day’s sun erased",
        run_erased: |name| format!("{name} erased, with its readings"),
        reading_erased: "Reading erased",
        brought_back: "Brought back",
        pot_in: "The pot is in",
        taken_back: "Taken back",
        noted: "Noted in the diary",
        hours_replaced: "Replaces the hours you tapped",
        number_replaced: "Replaces the number of hours",
        written_down: "Written down",
        overwritten: |was, time| format!("Written down in place of what was read at {time}: {was}"),
        fit_used: |name| format!("Now used for {name}"),
        copy_brought_in: "The copy is in. What was here before was put aside.",
    },
    units: Units {
        degrees: |number, unit| match unit {
            Degrees::Celsius => format!("{number}\u{A0}°C"),
            Degrees::Fahrenheit => format!("{number}\u{A0}°F"),
        },
        litres: |number| format!("{number}\u{A0}L"),
        kilograms: |number| format!("{number}\u{A0}kg"),
        grams: |number| format!("{number}\u{A0}g"),
        hours: |number| format!("{number}\u{A0}h"),
        minutes: |number| format!("{number}\u{A0}min"),
        hours_minutes: |hours, minutes| format!("{hours}\u{A0}h\u{A0}{minutes}"),
        days: |number| format!("{number}\u{A0}days"),
        watts: |number| format!("{number}\u{A0}W"),
        watt_hours: |number| format!("{number}\u{A0}Wh"),
        kilowatt_hours: |number| format!("{number}\u{A0}kWh"),
        ohms: |number| format!("{number}\u{A0}Ω"),
        centimetres: |number| format!("{number}\u{A0}cm"),
        metres: |number| format!("{number}\u{A0}m"),
        percent: |number| format!("{number}\u{A0}%"),
        from_to: |from, to| format!("{from} to {to}"),
        day_time: |day, time| format!("{day}, {time}"),
        time_tomorrow: |time| format!("{time} tomorrow"),
        time_yesterday: |time| format!("{time} yesterday"),
        time_on: |time, day| format!("{time} on {day}"),
        today: "today",
        yesterday: "yesterday",
        tomorrow: "tomorrow",
    },
    skip_to_content: "Skip to the content",
    rooms_label: "Rooms",
    rooms_coming: "The rest of Duskpot is on its way. This happens only once.",
    rooms_not_here: "The rest of Duskpot could not be downloaded. Look for a connection, then try \
                     again.",
    about: |value| format!("about {value}"),
    about_time: |time| format!("about {time}"),
    not_known: "not known",
    show_table: "Show as a table",
    hide_table: "Hide the table",
    example_banner: "Example household",
    example_back: "Back to mine",
};
