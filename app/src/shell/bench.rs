//! The way to the bench's worker, and its answers.

use crate::bench::answer::Answer;
use crate::bench::ask::{Ask, Tongue, What};
use crate::platform::bench::{BenchError, Luggage, ask as ask_beside};
use crate::platform::locale;
use crate::platform::storage::{DeviceShelf, Shelf};
use crate::reactive::untrack;
use crate::shell::Shell;
use crate::state::saved::{message, read_message};

/// Asks the worker.
///
/// # Errors
///
/// Why there is no answer, in words.
pub async fn ask(shell: Shell, what: What, luggage: Luggage) -> Result<Answer, String> {
    let language = shell.words.language().get_untracked();
    let words = &untrack(|| shell.words.strings()).bench.import;
    let ask = Ask {
        voice: Tongue {
            language: language.tag().to_owned(),
            locale: language.format_tag(&locale::languages()),
            degrees: shell
                .words
                .formats()
                .with_untracked(|formats| formats.degrees),
            now: shell.clock.now_untracked(),
        },
        what,
    };
    let question = message(&ask).unwrap_or_default();
    let text = ask_beside(&question, luggage)
        .await
        .map_err(|error| match error {
            BenchError::NotStarted(why) => (words.no_worker)(&why),
            BenchError::Stopped => words.stopped.to_owned(),
        })?;
    match read_message(&text) {
        Some(Answer::Refused(why)) => Err(why),
        Some(answer) => Ok(answer),
        None => Err(words.not_understood.to_owned()),
    }
}

/// Has the worker forget the texts that nothing speaks of any more: neither this household nor
/// anything else that is kept, put aside or can be brought back.
pub async fn sweep(shell: Shell) {
    // What can't be looked through now is looked through another time.
    let Ok(Answer::Keys(keys)) = ask(shell, What::Keys, Luggage::None).await else {
        return;
    };
    let Some(kept) = kept(shell) else { return };
    let is_spoken_of = |key: &String| kept.iter().any(|text| text.contains(key));
    let gone: Vec<String> = keys.into_iter().filter(|key| !is_spoken_of(key)).collect();
    if !gone.is_empty() {
        let _ = ask(shell, What::Sweep(gone), Luggage::None).await;
    }
}

/// Every text of the device's store, and the household as it is now; nothing where one of them can't
/// be read.
fn kept(shell: Shell) -> Option<Vec<String>> {
    let shelf = DeviceShelf;
    let mut texts = vec![shell.store.copy_text(&Vec::new()).ok()?];
    for key in shelf.keys().ok()? {
        texts.extend(shelf.get(&key).ok()?);
    }
    Some(texts)
}
