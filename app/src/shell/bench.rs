//! The way to the bench's worker, and its answers.

use crate::bench::answer::Answer;
use crate::bench::ask::{Ask, Tongue, What};
use crate::platform::bench::{BenchError, Luggage, ask as ask_beside};
use crate::platform::locale;
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
