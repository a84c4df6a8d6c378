//! Skies, entries and what was erased, as saved.

use std::collections::BTreeMap;

use model::journal::{Felt, Meal, Outcome, What};
use model::local_time::Day;
use model::sun::{DayLog, Sky};

use crate::state::document::Entry;
use crate::state::erased::{Erased, ErasedWhat};
use crate::state::saved::reader::{Found, Node, Read};
use crate::state::saved::shape::record;
use crate::state::saved::time;
use crate::state::saved::writer::{Record, Write, Writer};

/// That it was said to be right is written where it was.
impl Write for Entry {
    fn write(&self, out: &mut Writer) {
        let Self {
            id,
            cooker,
            at,
            what,
            is_right,
        } = self;
        let mut fields: Vec<(&str, &dyn Write)> =
            vec![("id", id), ("cooker", cooker), ("at", at), ("what", what)];
        if *is_right {
            fields.push(("right", is_right));
        }
        Record(&fields).write(out);
    }
}

impl Read for Entry {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            id: from.get("id")?,
            cooker: from.get("cooker")?,
            at: from.get("at")?,
            what: from.get("what")?,
            is_right: Option::unwrap_or_default(from.get("right")?),
        })
    }
}

record!(Erased {
    id: "id",
    at: "at",
    what: "what",
});

/// The letter of each sky.
const SKIES: [(Sky, char); 5] = [
    (Sky::Clear, 'c'),
    (Sky::Thin, 't'),
    (Sky::Patchy, 'p'),
    (Sky::Grey, 'g'),
    (Sky::Dark, 'd'),
];

/// The letter of an hour that nobody looked at.
const NOT_LOGGED: char = '.';

/// As hours of sun, or with a letter an hour: `c`lear, `t`hin, `p`atchy, `g`rey, `d`ark; `.` where
/// none was logged.
impl Write for DayLog {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::SunHours(hours) => Record(&[("sun_hours", hours)]).write(out),
            Self::Hourly(skies) => {
                let letters: String = skies.iter().map(|sky| letter(*sky)).collect();
                Record(&[("hourly", &letters)]).write(out);
            }
        }
    }
}

impl Read for DayLog {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.variant()? {
            ("sun_hours", hours) => f64::read(&hours).map(Self::SunHours),
            ("hourly", letters) => {
                hourly(letters.text()?).map_or_else(|| letters.unknown(), |it| Ok(Self::Hourly(it)))
            }
            (_, other) => Err(other.expected("sun_hours or hourly")),
        }
    }
}

fn letter(sky: Option<Sky>) -> char {
    SKIES
        .iter()
        .find(|(of, _)| Some(*of) == sky)
        .map_or(NOT_LOGGED, |(_, letter)| *letter)
}

fn hourly(letters: &str) -> Option<[Option<Sky>; 24]> {
    let mut skies = [None; 24];
    let mut chars = letters.chars();
    for hour in &mut skies {
        let letter = chars.next()?;
        if letter != NOT_LOGGED {
            *hour = Some(SKIES.iter().find(|(_, of)| *of == letter)?.0);
        }
    }
    chars.next().is_none().then_some(skies)
}

impl Write for BTreeMap<Day, DayLog> {
    fn write(&self, out: &mut Writer) {
        out.open("{");
        for (day, log) in self {
            out.field(&time::day(*day), log);
        }
        out.close("}");
    }
}

impl Read for BTreeMap<Day, DayLog> {
    fn read(from: &Node<'_>) -> Found<Self> {
        let mut skies = Self::new();
        for (day, log) in from.entries()? {
            let day = time::read_day(day).ok_or_else(|| from.impossible(day))?;
            skies.insert(day, DayLog::read(&log)?);
        }
        Ok(skies)
    }
}

impl Write for What {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Reading { store_c } => {
                Record(&[("reading", &Record(&[("store_c", store_c)]))]).write(out);
            }
            Self::Felt(felt) => Record(&[("felt", felt)]).write(out),
            Self::Meal(meal) => Record(&[("meal", meal)]).write(out),
            Self::LidOpen { for_s } => {
                Record(&[("lid_open", &Record(&[("for_s", for_s)]))]).write(out);
            }
            Self::HeaterOff { for_s } => {
                Record(&[("heater_off", &Record(&[("for_s", for_s)]))]).write(out);
            }
            Self::TopUp { heat_w, for_s } => {
                let what = Record(&[("heat_w", heat_w), ("for_s", for_s)]);
                Record(&[("top_up", &what)]).write(out);
            }
        }
    }
}

impl Read for What {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.variant()? {
            ("reading", what) => Ok(Self::Reading {
                store_c: what.get("store_c")?,
            }),
            ("felt", what) => Felt::read(&what).map(Self::Felt),
            ("meal", what) => Meal::read(&what).map(Self::Meal),
            ("lid_open", what) => Ok(Self::LidOpen {
                for_s: what.get("for_s")?,
            }),
            ("heater_off", what) => Ok(Self::HeaterOff {
                for_s: what.get("for_s")?,
            }),
            ("top_up", what) => Ok(Self::TopUp {
                heat_w: what.get("heat_w")?,
                for_s: what.get("for_s")?,
            }),
            (_, what) => Err(what.expected("reading, felt, meal, lid_open, heater_off or top_up")),
        }
    }
}

impl Write for Meal {
    fn write(&self, out: &mut Writer) {
        let Self {
            dish,
            food_kg,
            water_kg,
            start_c,
            pot,
            lid,
            out: out_at,
            eat_at,
            outcome:
                Outcome {
                    boiled_at,
                    not_boiled_by,
                    done_at,
                    not_done_by,
                },
        } = self;
        let mut fields: Vec<(&str, &dyn Write)> = vec![
            ("dish", dish),
            ("food_kg", food_kg),
            ("water_kg", water_kg),
            ("start_c", start_c),
            ("pot", pot),
            ("lid", lid),
            ("out", out_at),
            ("eat_at", eat_at),
            ("boiled_at", boiled_at),
            ("not_boiled_by", not_boiled_by),
            ("done_at", done_at),
        ];
        // Older copies of the app can read whatever has no such field.
        if not_done_by.is_some() {
            fields.push(("not_done_by", not_done_by));
        }
        Record(&fields).write(out);
    }
}

impl Read for Meal {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            dish: from.get("dish")?,
            food_kg: from.get("food_kg")?,
            water_kg: from.get("water_kg")?,
            start_c: from.get("start_c")?,
            pot: from.get("pot")?,
            lid: from.get("lid")?,
            out: from.get("out")?,
            eat_at: from.get("eat_at")?,
            outcome: Outcome {
                boiled_at: from.get("boiled_at")?,
                not_boiled_by: from.get("not_boiled_by")?,
                done_at: from.get("done_at")?,
                not_done_by: from.get("not_done_by")?,
            },
        })
    }
}

impl Write for ErasedWhat {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Entry { entry, was_running } => {
                let entry = Record(&[("entry", entry), ("was_running", was_running)]);
                Record(&[("entry", &entry)]).write(out);
            }
            Self::Cooker {
                cooker,
                place,
                was_in_use,
                entries,
                runs,
            } => {
                let cooker = Record(&[
                    ("cooker", cooker),
                    ("place", &u32::try_from(*place).unwrap_or(u32::MAX)),
                    ("was_in_use", was_in_use),
                    ("entries", entries),
                    ("runs", runs),
                ]);
                Record(&[("cooker", &cooker)]).write(out);
            }
            Self::Sky { day, log } => {
                let sky = Record(&[("day", day), ("log", log)]);
                Record(&[("sky", &sky)]).write(out);
            }
            Self::Run { run, place } => {
                let place = u32::try_from(*place).unwrap_or(u32::MAX);
                let run = Record(&[("run", run), ("place", &place)]);
                Record(&[("run", &run)]).write(out);
            }
            Self::Reading { run, reading } => {
                let reading = Record(&[("run", run), ("reading", reading)]);
                Record(&[("reading", &reading)]).write(out);
            }
        }
    }
}

impl Read for ErasedWhat {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.variant()? {
            ("entry", what) => Ok(Self::Entry {
                entry: what.get("entry")?,
                was_running: what.get("was_running")?,
            }),
            ("cooker", what) => Ok(Self::Cooker {
                cooker: what.get("cooker")?,
                place: usize::try_from(what.get::<u32>("place")?).unwrap_or(usize::MAX),
                was_in_use: what.get("was_in_use")?,
                entries: what.get("entries")?,
                runs: Option::unwrap_or_default(what.get("runs")?),
            }),
            ("sky", what) => Ok(Self::Sky {
                day: what.get("day")?,
                log: what.get("log")?,
            }),
            ("run", what) => Ok(Self::Run {
                run: what.get("run")?,
                place: usize::try_from(what.get::<u32>("place")?).unwrap_or(usize::MAX),
            }),
            ("reading", what) => Ok(Self::Reading {
                run: what.get("run")?,
                reading: what.get("reading")?,
            }),
            (_, what) => Err(what.expected("entry, cooker, sky, run or reading")),
        }
    }
}
