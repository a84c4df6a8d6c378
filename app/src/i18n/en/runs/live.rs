//! English: a test run that goes on.

use crate::i18n::strings::runs::live::Live;

pub(super) const LIVE: Live = Live {
    since: |time, n_readings| format!("Since {time} · {}", readings(n_readings)),
    was: |from, to, n_readings| format!("{from} to {to} · {}", readings(n_readings)),
    clock: "Next reading",
    next_in: "in",
    now: "Read now",
    every: |every, due| format!("Every {every}: the next at {due}."),
    late: |time| format!("{time} late. Nothing is spoilt: read now, the time is kept with it."),
    when_you_can: "When you can",
    left_alone: |time| {
        format!(
            "Nothing is written down since {time}. Read now, or give what was read meanwhile its time: the next time is then proposed."
        )
    },
    missed_one: "While the screen was off one reading was due. Go on with the next.",
    missed: |count| {
        format!("While the screen was off {count} readings were due. Go on with the next.")
    },
    ends: |time, length| format!("It should tell enough by {time}, {length} after its start."),
    ends_with_pot: "How long it takes counts from when the pot goes in.",
    has_told: "It has gone on long enough to tell what it is for.",
    remind: "How long, and reminders",
    keep_on: "Keep the screen on",
    keep_on_detail: "As long as this page is shown",
    call: "Call me for each reading",
    call_detail: "Buzzes, and shows a notice where the browser may. A locked phone may sleep through it; the clock goes on all the same.",
    no_wake: "This browser can’t keep the screen on. Set the phone’s own screen time longer instead.",
    no_notices: "This browser shows no notices. Keep the page open.",
    denied: "Notices are not allowed for this page; the browser’s settings can change that.",
    no_buzz: "This device doesn’t buzz.",
    notice: |name| format!("{name}: time to read"),
    notice_body: "Read the thermometer and write it down.",
    entry: "Write down",
    channel: "What was read",
    store: "Store",
    pot: "Pot",
    air: "Air",
    power: "Power",
    shows: "It shows",
    lower: "lower",
    higher: "higher",
    at: "Read at",
    at_hint: "Empty means now.",
    at_proposed: "Proposed from the reading before. Change it to what the paper says.",
    at_within: "A time between the start of the run and its end.",
    note: "Write it down",
    note_at: |time| format!("Write it down for {time}"),
    from_paper: "Write down from paper",
    readings: "Readings",
    of_text: |count, span| {
        format!(
            "{count} rows over {span}, kept as the text they came in. ‘What it tells’ draws them."
        )
    },
    none_yet: "None yet. The first one starts the clock.",
    value: |name, value| format!("{name} {value}"),
    show_all: |count| format!("Show all {count}"),
    change: "Change a reading",
    plot: "So far",
    foreseen_store: "store, as the cooker is described",
    foreseen_pot: "pot, as the cooker is described",
    read: "read",
    sentence: |value, time| format!("The store showed {value} at {time}."),
    above: |difference| format!("That is {difference} above the cooker as it is described."),
    below: |difference| format!("That is {difference} below the cooker as it is described."),
    as_described: "That is as the cooker is described.",
    time: "Time",
    pots: "Pot",
    pot_in_since: |what, time| format!("{what}, in since {time}"),
    pot_was_in: |what, from, to| format!("{what}, in from {from} to {to}"),
    water_lid: |water, lid| format!("{water} of water, {lid}"),
    left: |water| format!("{water} left"),
    change_pot: "Change the pot",
    pot_changed: "The pot is changed.",
    pot_erased: "The pot is erased.",
    out_hint: "Empty means that it is still in.",
    put_in: "Pot goes in now",
    take_out: "Pot comes out now",
    was_put_in: "Pot went in at that time",
    was_taken_out: "Pot came out at that time",
    earlier: "At another time",
    went_in: "It went in at",
    came_out: "It came out at",
    boils: "It boils now",
    boiled_at: |time| format!("It boiled at {time}"),
    boils_hint: |degrees| format!("Writes {degrees} down for the pot: water boils there here."),
    water: "Water",
    start: "Temperature of the water as it goes in",
    left_label: "Left in it, by weighing",
    left_hint: "Empty means not weighed.",
    too_few: |least, read| {
        format!(
            "Nothing can be found from fewer than {least} readings of store or pot; {read} so far."
        )
    },
    more_readings: "Write more readings",
    finish: "Finish the run",
    finish_earlier: "It ended earlier",
    finished: "It ended at",
    finish_at: |time| format!("Finish the run at {time}"),
    go_on: "Let it go on",
    to_fit: "What it tells",
    erase: "Erase the run",
    gone: "This run is not there any more.",
};

fn readings(count: usize) -> String {
    match count {
        1 => "1 reading".to_owned(),
        _ => format!("{count} readings"),
    }
}
