//! The work itself: a text is understood, a cooker is fitted. Plain Rust, so that both can be tested
//! without a browser; the program around it fetches and keeps texts.

mod curves;
mod fit;
mod open;
mod rows;
#[cfg(test)]
mod tests;

use model::bench::readings::Hints;

use crate::bench::answer::Answer;
use crate::bench::ask::{Ask, FitAsk, Near};
use crate::i18n::Language;
use crate::i18n::format::LocaleFormat;
use crate::present::bench::Speech;
use crate::state::bench::{KeptText, RunReadings, Text};

/// What lies on the worker's desk.
#[derive(Debug, Default)]
pub struct Desk {
    held: Option<Held>,
}

/// The text that was opened last.
#[derive(Debug)]
struct Held {
    name: String,
    text: String,
    hints: Hints,
    rows: u32,
    span_s: f64,
}

/// How a question wants its answer said.
pub fn speech(ask: &Ask, locale: LocaleFormat) -> Speech {
    let voice = &ask.voice;
    let language = Language::from_tag(&voice.language).unwrap_or_default();
    Speech::new(language, locale, (voice.degrees, voice.now))
}

impl Desk {
    /// Understands a text and holds it.
    pub fn open(
        &mut self,
        speech: &Speech,
        (name, text): (String, String),
        hints: Hints,
    ) -> Answer {
        match open::open(speech, &text, hints) {
            Ok((opened, hints)) => {
                self.held = Some(Held {
                    name,
                    text,
                    hints,
                    rows: opened.rows,
                    span_s: opened.span_s,
                });
                Answer::Opened(Box::new(opened))
            }
            Err(refused) => {
                self.held = None;
                Answer::Refused(refused)
            }
        }
    }

    /// Understands the text that is held with other hints.
    pub fn again(&mut self, speech: &Speech, hints: Hints) -> Answer {
        let Some(held) = self.held.take() else {
            return Answer::Refused(speech.report.nothing_held.to_owned());
        };
        match open::open(speech, &held.text, hints) {
            Ok((opened, hints)) => {
                self.held = Some(Held {
                    hints,
                    rows: opened.rows,
                    span_s: opened.span_s,
                    ..held
                });
                Answer::Opened(Box::new(opened))
            }
            Err(refused) => {
                // What can't be read so may be read otherwise.
                self.held = Some(held);
                Answer::Refused(refused)
            }
        }
    }

    /// The text that is held, and what is to be kept of it in the household.
    pub fn to_keep(&self) -> Option<(KeptText, &str)> {
        let held = self.held.as_ref()?;
        let kept = KeptText {
            key: key(&held.text),
            name: held.name.clone(),
            rows: held.rows,
            span_s: held.span_s,
            hints: held.hints.clone(),
        };
        Some((kept, &held.text))
    }

    /// What kept texts say; `texts` are theirs, as far as they are there.
    pub fn curves(kept: Vec<KeptText>, texts: &[Text]) -> Answer {
        Answer::Curves(curves::curves(kept, texts))
    }

    /// Rows of a kept text; `texts` has it, if it is there.
    pub fn rows(speech: &Speech, kept: &KeptText, texts: &[Text], near: Option<Near>) -> Answer {
        match rows::rows(speech, kept, texts, near) {
            Ok(rows) => Answer::Rows(rows),
            Err(refused) => Answer::Refused(refused),
        }
    }

    /// Fits a cooker; `texts` are those of [`keys`].
    pub fn fit(&self, speech: &Speech, ask: &FitAsk, texts: &[Text]) -> Answer {
        match fit::fit(speech, ask, texts) {
            Ok(fitted) => Answer::Fitted(Box::new(fitted)),
            Err(refused) => Answer::Refused(refused),
        }
    }
}

/// Keys of the texts that a fit needs.
pub fn keys(ask: &FitAsk) -> Vec<String> {
    let texts = ask.runs.iter().filter_map(|run| match &run.readings {
        RunReadings::File(text) => Some(text.key.clone()),
        RunReadings::Typed(_) => None,
    });
    texts.collect()
}

/// What a text is kept under: its length and a hash of it, so that the same text is kept once and
/// no text ever replaces another. FNV-1a with 64 bits (RFC 9923, its constants).
fn key(text: &str) -> String {
    let hash = text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
    });
    format!("{hash:016x}-{:x}", text.len())
}
