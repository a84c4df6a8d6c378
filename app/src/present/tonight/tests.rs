//! What is said of real evenings.

use std::collections::BTreeMap;

use model::cooker::Cooker;
use model::dish::Dish;
use model::journal::{Event, Journal, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::place::{AirYear, Place};
use model::presets::Preset;
use model::sun::{DayLog, Daylight, Sky};
use model::tonight::{Answer, Evening, Site, Verdict};

use super::care::care;
use super::course::course;
use super::heat::heat;
use super::help::{help, that_fits};
use super::now::now_line;
use super::plan::amounts;
use super::running::{is_over, running};
use super::store::column;
use super::verdict::{Question, verdict};
use super::{Voice, capitalised};
use crate::components::{CautionLevel, VerdictTone, VerdictView};
use crate::i18n::Language;
use crate::i18n::format::{Formats, LocaleFormat};
use crate::state::plan::{Amount, Plan, TimeOfDay};
use crate::state::settings::Degrees;

fn today() -> Day {
    Day::from_ymd(2026, 11, 25).unwrap()
}

fn clock(hour: i64, minute: i64) -> LocalTime {
    today().at_s(3600 * hour + 60 * minute)
}

fn place() -> Place {
    Place {
        latitude_deg: -13.5,
        longitude_deg: -72.0,
        altitude_m: 2750.0,
        utc_offset_min: -300,
    }
}

fn cooker() -> Cooker {
    Preset::AluminiumInPerlite.cooker(160.0, -13.5)
}

fn evening_on(cooker: &Cooker, journal: &Journal, now: LocalTime) -> Evening {
    let place = place();
    let air = AirYear::guess(place.latitude_deg, place.altitude_m).unwrap();
    Evening::new(&Site { place, air }, cooker, journal, now, now).unwrap()
}

fn under(sky: Sky) -> Journal {
    let days = (-2..=0).map(|back| today().plus(back));
    Journal {
        skies: days
            .map(|day| (day, DayLog::Hourly([Some(sky); 24])))
            .collect(),
        events: Vec::new(),
    }
}

fn plan(dish: Dish, people: u32) -> Plan {
    Plan {
        dish,
        amount: Amount::People(people),
        ..Plan::start(people, clock(16, 0))
    }
}

/// An evening that was asked about at 17:00.
struct Told {
    plan: Plan,
    cooker: Cooker,
    evening: Evening,
    question: Question,
    answer: Answer,
}

const NOW: (i64, i64) = (17, 0);

fn told(sky: Sky, plan: Plan) -> Told {
    let now = clock(NOW.0, NOW.1);
    let cooker = cooker();
    let evening = evening_on(&cooker, &under(sky), now);
    let question = Question {
        meal: plan.meal(cooker.pot, 14.0, now),
        put_in: plan.put_in_at(now),
        boiling_c: evening.rig().boiling_c().unwrap(),
        sky_is_logged: true,
    };
    let answer = evening.ask(&question.meal, question.put_in).unwrap();
    Told {
        plan,
        cooker,
        evening,
        question,
        answer,
    }
}

fn formats(language: Language) -> Formats {
    Formats {
        locale: LocaleFormat::default(),
        degrees: Degrees::Celsius,
        units: &language.strings().common.units,
    }
}

fn saying<T>(language: Language, now: LocalTime, say: impl FnOnce(&Voice<'_>) -> T) -> T {
    say(&Voice {
        strings: language.strings(),
        formats: &formats(language),
        now,
    })
}

fn in_english<T>(say: impl FnOnce(&Voice<'_>) -> T) -> T {
    saying(Language::English, clock(NOW.0, NOW.1), say)
}

fn verdict_of(told: &Told) -> VerdictView {
    in_english(|voice| verdict(voice, &told.question, &told.answer))
}
#[test]
fn zz_seed() {
    use crate::state::action::{Action, apply};
    use crate::state::document::{Document, Household, Whose};
    use crate::state::saved::{Layout, encode};
    let place = place();
    let air = AirYear::guess(place.latitude_deg, place.altitude_m).unwrap();
    let now = clock(16, 0);
    let mut seeds: Vec<(&str, Document)> = vec![];
    for (name, preset, w) in [
        ("alu", Preset::AluminiumInPerlite, 160.0),
        ("sand", Preset::SandInPerlite, 100.0),
        ("nitrate", Preset::NitrateInCeramicFibre, 200.0),
        ("ery", Preset::ErythritolInGlassWool, 160.0),
    ] {
        for (sky_name, sky) in [
            ("clear", Some(Sky::Clear)),
            ("grey", Some(Sky::Grey)),
            ("none", None),
            ("patchy", Some(Sky::Patchy)),
        ] {
            let mut document = Document::new(Whose::Own);
            apply(
                &mut document,
                Action::SetUp {
                    household: Household {
                        place,
                        air,
                        people: 4,
                    },
                    name: "Block".into(),
                    cooker: Box::new(preset.cooker(w, -13.5)),
                },
                now,
            )
            .unwrap();
            for back in 0..3 {
                if let Some(sky) = sky {
                    apply(
                        &mut document,
                        Action::SetSky {
                            day: today().plus(-back),
                            log: DayLog::Hourly([Some(sky); 24]),
                            possible_h: 12.0,
                        },
                        now,
                    )
                    .unwrap();
                }
            }
            seeds.push((
                Box::leak(format!("{name}-{sky_name}").into_boxed_str()),
                document,
            ));
        }
    }
    for (name, document) in seeds {
        std::fs::write(
            format!("/tmp/tonight-seed-{name}.json"),
            encode(&document, now, Layout::Compact).unwrap(),
        )
        .unwrap();
    }
}
