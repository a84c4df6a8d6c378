//! Questions as they come, and what is fetched and kept for them.

use std::cell::RefCell;
use std::rc::Rc;

use crate::bench::answer::Answer;
use crate::bench::ask::{Ask, What};
use crate::bench::desk::{Desk, keys, speech};
use crate::i18n::format::LocaleFormat;
use crate::platform::beside::{Question, serve};
use crate::platform::texts::{Texts, TextsError};
use crate::present::bench::Speech;
use crate::state::bench::Text;
use crate::state::saved::{message, read_message};

/// A text that nobody speaks of is left for a day: another window may be about to. \[ms\]
const LEFT_MS: f64 = 86_400e3;

/// Answers questions, written as `locale` says, for as long as the page lives.
pub fn work(locale: fn(&str) -> LocaleFormat) {
    let desk = Rc::new(RefCell::new(Desk::default()));
    serve(move |question| {
        let desk = Rc::clone(&desk);
        async move {
            // A question that is none comes from a page of another version, which reads no answer
            // of ours, either.
            let Some(ask) = read_message::<Ask>(&question.message) else {
                return String::new();
            };
            let speech = speech(&ask, locale(&ask.voice.locale));
            let answer = match answer(&desk, &speech, ask.what, &question).await {
                Ok(answer) => answer,
                Err(TextsError::Full) => Answer::Refused(speech.report.full.to_owned()),
                Err(TextsError::Browser(_)) => {
                    Answer::Refused(speech.report.keeps_nothing.to_owned())
                }
            };
            message(&answer).unwrap_or_default()
        }
    });
}

async fn answer(
    desk: &RefCell<Desk>,
    speech: &Speech,
    what: What,
    question: &Question,
) -> Result<Answer, TextsError> {
    Ok(match what {
        What::Open { hints } => match question.text() {
            Some(text) => desk.borrow_mut().open(speech, text, hints),
            None => Answer::Refused(speech.strings.bench.import.unreadable.to_owned()),
        },
        What::Again { hints } => desk.borrow_mut().again(speech, hints),
        What::Keep => {
            let held = desk
                .borrow()
                .to_keep()
                .map(|(kept, text)| (kept, text.to_owned()));
            match held {
                Some((kept, text)) => {
                    Texts::open().await?.put(&kept.key, &text).await?;
                    Answer::Kept(kept)
                }
                None => Answer::Refused(speech.report.nothing_held.to_owned()),
            }
        }
        What::Fit(ask) => {
            let texts = fetch(keys(&ask)).await?;
            desk.borrow().fit(speech, &ask, &texts)
        }
        What::Curves(kept) => {
            let texts = fetch(kept.iter().map(|text| text.key.clone()).collect()).await?;
            Desk::curves(kept, &texts)
        }
        What::Rows { text, near } => {
            let texts = fetch(vec![text.key.clone()]).await?;
            Desk::rows(speech, &text, &texts, near)
        }
        What::Texts(keys) => Answer::Texts(fetch(keys).await?),
        What::Bring(texts) => {
            let shelf = Texts::open().await?;
            for Text { key, text } in &texts {
                shelf.put(key, text).await?;
            }
            Answer::Done
        }
        What::Sweep(keys) => {
            Texts::open().await?.remove(&keys).await?;
            Answer::Done
        }
        What::Keys => Answer::Keys(Texts::open().await?.keys_older_than(LEFT_MS).await?),
    })
}

/// The texts under these keys, as far as they are there.
async fn fetch(keys: Vec<String>) -> Result<Vec<Text>, TextsError> {
    let mut texts = Vec::new();
    if keys.is_empty() {
        return Ok(texts);
    }
    let shelf = Texts::open().await?;
    for key in keys {
        if let Some(text) = shelf.get(&key).await? {
            texts.push(Text { key, text });
        }
    }
    Ok(texts)
}
