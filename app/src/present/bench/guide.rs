//! The guide to a new test run: how long it takes, how often to read, what to mind.

use model::bench::{Foreseen, Given, Plane, PotIn, RunKind};
use model::cooker::Cooker;
use model::local_time::{Day, LocalTime};
use model::pot::Lid;
use model::safety::Build;
use model::tonight::Rig;

use crate::components::{CautionLevel, Icon};
use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;
use crate::i18n::strings::safety::Safety;
use crate::present::bench::typing::{filled, optional};
use crate::present::bench::when::{of_day, time_typed};
use crate::present::cooker::cautions::{CautionView, cautions as of_build};
use crate::present::cooker::list::fitting_name;
use crate::present::diary::day_from_field;
use crate::present::level;
use crate::present::tonight::Voice;
use crate::present::typed::{Mistake, Steps};
use crate::state::action::BenchAction;
use crate::state::bench::{Reading, RunAbout, RunReadings};
use crate::state::ids::CookerId;
use crate::state::limits;
use crate::state::refused::{Field, Wrong};

/// Every kind, the one that tells most for the least work first.
pub const KINDS: [RunKind; 4] = [
    RunKind::CoolDown,
    RunKind::Boil,
    RunKind::HeatUp,
    RunKind::Free,
];

/// What is typed before a run begins.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// What it is for.
    pub kind: RunKind,
    /// What is tested.
    pub cooker: CookerId,
    /// Its name; empty for the one that is proposed.
    pub name: String,
    /// When it began, as 'HH:MM'; empty means now.
    pub at: String,
    /// On which day, as 'YYYY-MM-DD'; empty means the latest such time that has been.
    pub day: String,
    /// When it was over, as 'HH:MM'; empty means that it goes on.
    pub ended: String,
    /// What the store's thermometer shows, as typed.
    pub store: String,
    /// What the air's shows.
    pub air: String,
    /// Power of the heater.
    pub heater: String,
    /// Anything else.
    pub notes: String,
}

impl Draft {
    /// Nothing typed yet.
    pub fn new(cooker: CookerId) -> Self {
        Self {
            kind: RunKind::CoolDown,
            cooker,
            name: String::new(),
            at: String::new(),
            day: String::new(),
            ended: String::new(),
            store: String::new(),
            air: String::new(),
            heater: String::new(),
            notes: String::new(),
        }
    }

    /// Whether the power of the heater is asked for.
    pub fn is_heated(&self) -> bool {
        matches!(self.kind, RunKind::HeatUp | RunKind::Free)
    }

    /// The run as it is to begin, with its first reading.
    ///
    /// # Errors
    ///
    /// [`Mistake`] of the first field that can't be taken.
    pub fn begin(&self, voice: &Voice<'_>, now: LocalTime) -> Result<BenchAction, Mistake> {
        let degrees = voice.formats.degrees;
        let started = self.started(now)?;
        let ended = self.ended(started)?;
        let store_c = filled(&self.store, Field::ReadingC, limits::READING_C, |shown| {
            degrees.to_c(shown)
        })?;
        let air_c = filled(&self.air, Field::AirC, limits::AIR_C, |shown| {
            degrees.to_c(shown)
        })?;
        let heater_w = if self.is_heated() {
            optional(&self.heater, Field::HeaterW, limits::HEATER_W, |watts| {
                watts
            })?
        } else {
            None
        };
        let name = match self.name.trim() {
            "" => named(voice, self.kind, started.day()),
            name => name.to_owned(),
        };
        Ok(BenchAction::Add {
            cooker: self.cooker,
            started,
            ended,
            about: Box::new(RunAbout {
                name,
                kind: self.kind,
                air_c: Some(air_c),
                heater_w: heater_w.filter(|_| self.kind == RunKind::HeatUp),
                plane: Plane::default(),
                notes: self.notes.trim().to_owned(),
            }),
            pots: Vec::new(),
            readings: RunReadings::Typed(vec![Reading {
                store_c: Some(store_c),
                air_c: Some(air_c),
                heater_w,
                ..Reading::none(started)
            }]),
        })
    }

    /// Whether it began before now.
    pub fn is_earlier(&self) -> bool {
        !self.at.trim().is_empty()
    }

    /// Whether it is over, and is written down from paper.
    pub fn is_over(&self) -> bool {
        self.is_earlier() && !self.ended.trim().is_empty()
    }

    fn started(&self, now: LocalTime) -> Result<LocalTime, Mistake> {
        let day = self.day.trim();
        if !self.is_earlier() || day.is_empty() {
            return time_typed(&self.at, Field::At, now, None);
        }
        let day = day_from_field(day).ok_or(Field::Day.refuse(Wrong::Empty))?;
        Ok(of_day(&self.at, Field::At)?.on(day))
    }

    fn ended(&self, started: LocalTime) -> Result<Option<LocalTime>, Mistake> {
        if !self.is_over() {
            return Ok(None);
        }
        let ended = of_day(&self.ended, Field::OutAt)?;
        Ok(Some(ended.after(started)))
    }

    /// What this run should be like on a cooker; what is not typed yet is taken as usual.
    pub fn foreseen(&self, formats: &Formats, rig: &Rig, cooker: &Cooker) -> Option<Foreseen> {
        let degrees = formats.degrees;
        let typed = |text: &str| crate::state::parse::number(text).ok();
        let celsius = |text: &str| typed(text).map(|shown| degrees.to_c(shown));
        let air_c = celsius(&self.air).unwrap_or(USUAL_AIR_C);
        let usual_c = match self.kind {
            RunKind::HeatUp | RunKind::Free => air_c,
            RunKind::CoolDown | RunKind::Boil => rig.cutout_c(),
        };
        let pot = PotIn {
            in_s: 0.0,
            out_s: None,
            pot: cooker.pot,
            lid: Lid::On,
            water_kg: 1.0,
            start_c: Some(air_c),
            left_kg: None,
        };
        let pots = [pot];
        let heater_w = match self.kind {
            RunKind::HeatUp | RunKind::Free => {
                typed(&self.heater).unwrap_or_else(|| rig.full_sun_w())
            }
            RunKind::CoolDown | RunKind::Boil => 0.0,
        };
        rig.foreseen(&Given {
            kind: self.kind,
            store_c: celsius(&self.store).unwrap_or(usual_c),
            air_c,
            heater: &[(0.0, heater_w)],
            pots: if self.kind == RunKind::Boil {
                &pots
            } else {
                &[]
            },
        })
        .ok()
    }
}

/// The name that a run gets from the app: its kind, and its day.
pub fn named(voice: &Voice<'_>, kind: RunKind, day: Day) -> String {
    let words = &voice.strings.runs.guide;
    let day = voice.formats.short_day(day);
    fitting_name((words.named)((voice.strings.bench.kind)(kind), &day))
}

/// Air where nobody has read it yet. \[°C\]
const USUAL_AIR_C: f64 = 20.0;

/// How the store's and the air's field are stepped: from what is usual, in the unit that is shown.
pub fn degree_steps(formats: &Formats, start_c: f64, (least_c, most_c): (f64, f64)) -> Steps {
    let degrees = formats.degrees;
    Steps {
        by: 1.0,
        range: (degrees.from_c(least_c), degrees.from_c(most_c)),
        start: degrees.from_c(start_c).round(),
    }
}

/// How long it takes and how often to read, in a sentence.
pub fn takes(voice: &Voice<'_>, kind: RunKind, foreseen: Option<&Foreseen>) -> String {
    let words = &voice.strings.runs.guide;
    let Some(foreseen) = foreseen else {
        return words.cannot_foresee.to_owned();
    };
    // Of a boil nobody knows when its pot will go in: it is foreseen from then on.
    let say = match kind {
        RunKind::Boil => words.takes_pot,
        RunKind::CoolDown | RunKind::HeatUp | RunKind::Free => words.takes,
    };
    let sure = if foreseen.length_s < 2.0 * 3600.0 {
        Sure::Near
    } else {
        Sure::Rough
    };
    let first_s = foreseen.every_s(kind, 0.0);
    say(
        &voice.formats.duration(foreseen.length_s, sure),
        &voice.formats.duration(first_s, Sure::Known),
    )
}

type Line = (CautionLevel, Icon, fn(&Safety) -> &'static str);

const HOT: Line = (CautionLevel::Warning, Icon::HotHand, |safety| {
    safety.hot_metal
});
const STEAM: Line = (CautionLevel::Warning, Icon::PotBoils, |safety| safety.steam);
const LIVE: Line = (CautionLevel::Danger, Icon::Bolt, |safety| safety.panel_live);
const BURN: Line = (CautionLevel::Note, Icon::Water, |safety| safety.burn_help);

/// What must be minded in a run of this kind: what the build itself is dangerous by comes first.
pub fn cautions(
    strings: &Strings,
    formats: &Formats,
    kind: RunKind,
    build: Option<&Build>,
) -> Vec<CautionView> {
    let own = build.map(|build| of_build(strings, formats, build));
    let own = own
        .into_iter()
        .flatten()
        .filter(|view| view.level == CautionLevel::Danger);
    let lines: &[Line] = match kind {
        RunKind::CoolDown => &[LIVE, HOT, BURN],
        RunKind::HeatUp => &[LIVE, HOT, BURN],
        RunKind::Boil => &[LIVE, STEAM, HOT, BURN],
        RunKind::Free => &[LIVE, STEAM, HOT, BURN],
    };
    let mut told: Vec<CautionView> = own.collect();
    for (level, icon, text) in lines {
        // A build that is dangerous by its voltage has said so already.
        if *level == CautionLevel::Danger && told.iter().any(|view| view.icon == *icon) {
            continue;
        }
        let safety = &strings.safety;
        told.push(CautionView {
            level: *level,
            icon: *icon,
            word: level::word(safety, *level).to_owned(),
            text: text(safety).to_owned(),
        });
    }
    told
}

#[cfg(test)]
mod tests {
    use model::presets::Preset;

    use super::*;
    use crate::i18n::Language;
    use crate::present::cooker::fault::build_of;
    use crate::present::cooker::tests::household_site;
    use crate::present::tests::speaking;

    fn draft(kind: RunKind) -> Draft {
        Draft {
            kind,
            store: "240".to_owned(),
            air: "18,5".to_owned(),
            ..Draft::new(CookerId(1))
        }
    }

    fn with_voice<T>(language: Language, work: impl FnOnce(&Voice<'_>) -> T) -> T {
        let (strings, formats) = speaking(language);
        work(&Voice {
            strings,
            formats: &formats,
            now: Day::from_ymd(2026, 5, 3).unwrap().at_s(64_800),
        })
    }

    #[test]
    fn a_run_begins_with_its_first_reading() {
        with_voice(Language::English, |voice| {
            let action = draft(RunKind::CoolDown).begin(voice, voice.now).unwrap();
            let BenchAction::Add {
                about,
                readings,
                started,
                ended,
                ..
            } = action
            else {
                unreachable!("a run is added")
            };
            assert!(about.name.starts_with("Cool-down, "), "{}", about.name);
            assert_eq!((about.air_c, about.heater_w), (Some(18.5), None));
            assert_eq!((started, ended), (voice.now, None));
            let RunReadings::Typed(typed) = readings else {
                unreachable!("it is typed")
            };
            assert_eq!(
                (typed.len(), typed[0].store_c, typed[0].at),
                (1, Some(240.0), voice.now)
            );
        });
    }

    #[test]
    fn a_run_may_have_begun_a_while_ago() {
        with_voice(Language::English, |voice| {
            let begun = |at: &str| {
                let draft = Draft {
                    at: at.to_owned(),
                    ..draft(RunKind::Boil)
                };
                draft.begin(voice, voice.now)
            };
            let started = |at: &str| match begun(at).unwrap() {
                BenchAction::Add {
                    started,
                    readings: RunReadings::Typed(typed),
                    ..
                } => {
                    assert_eq!(typed[0].at, started);
                    voice.now.since_s(started)
                }
                _ => unreachable!("a run is added"),
            };
            // It is 18:00.
            assert_eq!(started("17:15"), 2700);
            assert_eq!(started("18:30"), 86_400 - 1800, "yesterday's");
            assert_eq!(begun("x").unwrap_err().field(), Field::At);
        });
    }

    #[test]
    fn what_cannot_be_is_said_beside_its_field() {
        with_voice(Language::English, |voice| {
            let store = |text: &str| {
                let draft = Draft {
                    store: text.to_owned(),
                    ..draft(RunKind::CoolDown)
                };
                draft.begin(voice, voice.now).unwrap_err().field()
            };
            assert_eq!(store(""), Field::ReadingC);
            assert_eq!(store("2000"), Field::ReadingC);
            let draft = Draft {
                heater: "-3".to_owned(),
                ..draft(RunKind::HeatUp)
            };
            assert_eq!(
                draft.begin(voice, voice.now).unwrap_err().field(),
                Field::HeaterW
            );
        });
    }

    #[test]
    fn each_kind_says_what_it_tells_how_long_it_takes_and_what_to_mind() {
        let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let site = household_site();
        let rig = Rig::new(&site, &cooker).unwrap();
        let build = build_of(&site, &cooker).unwrap();
        for language in Language::ALL {
            with_voice(language, |voice| {
                for kind in KINDS {
                    let words = (voice.strings.runs.guide.of)(kind);
                    assert!(!words.tells.is_empty() && 3 < words.steps.len());
                    let foreseen = draft(kind).foreseen(voice.formats, &rig, &cooker).unwrap();
                    let takes = takes(voice, kind, Some(&foreseen));
                    assert!(takes.contains("min"), "{takes}");
                    let told = cautions(voice.strings, voice.formats, kind, Some(&build));
                    assert!((2..=6).contains(&told.len()), "{kind:?}: {}", told.len());
                    let mut texts: Vec<&str> = told.iter().map(|view| view.text.as_str()).collect();
                    texts.sort_unstable();
                    texts.dedup();
                    assert_eq!(texts.len(), told.len());
                }
            });
        }
    }

    #[test]
    fn salt_is_told_before_all_else() {
        let (strings, formats) = speaking(Language::English);
        let cooker = Preset::NitrateInCeramicFibre.cooker(200.0, 11.0);
        let build = build_of(&household_site(), &cooker).unwrap();
        let told = cautions(strings, &formats, RunKind::Boil, Some(&build));
        assert_eq!(
            (told[0].level, told[0].icon),
            (CautionLevel::Danger, Icon::Salt)
        );
    }
}
