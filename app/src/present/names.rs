//! Names that the app gave, in another language than it speaks now.
//!
//! A person may write any name. One that is to the letter what the app itself would have given, in
//! any of its languages, is the app's, and follows the language.

use crate::present::bench::guide::{KINDS, named};
use crate::present::cooker::list::{capital, fitting_name};
use crate::present::tonight::Voice;
use crate::state::action::Action;
use crate::state::bench::TestRun;
use crate::state::document::Document;
use model::presets::Preset;

/// The names of cookers that the app gives, in the same order in each language.
fn of_cookers(voice: &Voice<'_>) -> Vec<String> {
    let words = &voice.strings.first_start;
    let preset = |preset: Preset| fitting_name(capital((words.preset)(preset)));
    let copy = |name: &String| fitting_name((voice.strings.cooker.copy_name)(name));
    let mut names: Vec<String> = std::iter::once(words.cooker_name.to_owned())
        .chain(Preset::ALL.map(preset))
        .collect();
    let mut last = names.clone();
    for _ in 0..COPIES_OF_COPIES {
        last = last.iter().map(copy).collect();
        names.extend(last.iter().cloned());
    }
    names
}

/// A copy of a copy of a copy is named by the app; nobody goes further.
const COPIES_OF_COPIES: usize = 3;

/// The names that the app gives a run, in the same order in each language.
fn of_run(voice: &Voice<'_>, run: &TestRun) -> Vec<String> {
    let kind = voice.strings.bench.kind;
    KINDS
        .into_iter()
        .map(|of| kind(of).to_owned())
        .chain(KINDS.map(|of| named(voice, of, run.started.day())))
        .collect()
}

/// What the app calls something now that has this name, where that is another.
fn now_called(name: &str, all: &[Vec<String>], now: &[String]) -> Option<String> {
    let place = all
        .iter()
        .find_map(|names| names.iter().position(|other| other == name))?;
    now.get(place).filter(|now| *now != name).cloned()
}

/// Gives what the app named its name in the language that is spoken `now`, where `all` are those
/// that it can speak; `None` where nothing has another.
pub fn again(document: &Document, all: &[Voice<'_>], now: &Voice<'_>) -> Option<Action> {
    let in_all = all.iter().map(of_cookers).collect::<Vec<_>>();
    let here = of_cookers(now);
    let cookers: Vec<_> = document
        .cookers
        .iter()
        .filter_map(|owned| Some((owned.id, now_called(&owned.name, &in_all, &here)?)))
        .collect();
    let of = |run: &TestRun| {
        let in_all: Vec<_> = all.iter().map(|voice| of_run(voice, run)).collect();
        let name = now_called(&run.about.name, &in_all, &of_run(now, run))?;
        Some((run.id, name))
    };
    let runs: Vec<_> = document.bench.runs.iter().filter_map(of).collect();
    let is_any = !cookers.is_empty() || !runs.is_empty();
    is_any.then_some(Action::NameAgain { cookers, runs })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::i18n::format::Formats;
    use crate::present::tests::speaking;
    use crate::state::action::apply;
    use crate::state::sample::{at, full, test_run};

    /// The document after it was looked through by somebody who speaks this.
    fn spoken(mut document: Document, language: Language) -> Document {
        let all = Language::ALL.map(speaking);
        let voices: Vec<Voice<'_>> = all
            .iter()
            .map(|(strings, formats): &(_, Formats)| Voice {
                strings,
                formats,
                now: at(20, 0),
            })
            .collect();
        let (strings, formats) = speaking(language);
        let now = Voice {
            strings,
            formats: &formats,
            now: at(20, 0),
        };
        if let Some(action) = again(&document, &voices, &now) {
            apply(&mut document, action, at(20, 0)).unwrap();
        }
        assert_eq!(again(&document, &voices, &now), None, "once is enough");
        document
    }

    #[test]
    fn what_the_app_named_follows_the_language_and_what_a_person_named_stays() {
        let (english, formats) = speaking(Language::English);
        let voice = Voice {
            strings: english,
            formats: &formats,
            now: at(20, 0),
        };
        let mut document = full();
        let run = TestRun {
            cooker: document.cookers[0].id,
            ..test_run()
        };
        document.bench.runs.push(run.clone());
        document.cookers[0].name = of_cookers(&voice)[2].clone();
        document.bench.runs[0].about.name = named(&voice, run.about.kind, run.started.day());
        let spanish = spoken(document.clone(), Language::Spanish);
        let preset = speaking(Language::Spanish).0.first_start.preset;
        assert_eq!(
            spanish.cookers[0].name,
            fitting_name(capital(preset(Preset::ALL[1])))
        );
        let kind = (speaking(Language::Spanish).0.bench.kind)(run.about.kind);
        assert!(spanish.bench.runs[0].about.name.starts_with(kind));
        assert_eq!(spanish.bench.runs[0].fit, run.fit, "nothing else changes");
        assert_eq!(spoken(spanish, Language::English), document);
        document.cookers[0].name = "My cooker, copy, copy".to_owned();
        let copied = spoken(document.clone(), Language::Spanish);
        assert_eq!(copied.cookers[0].name, "Mi cocina, copia, copia");
        assert_eq!(spoken(copied, Language::English), document);
        document.cookers[0].name = "Clay block".to_owned();
        document.bench.runs[0].about.name = "Boil, 3 L".to_owned();
        assert_eq!(spoken(document.clone(), Language::Spanish), document);
    }
}
