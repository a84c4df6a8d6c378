//! Copies of a household as files: out and in.

use leptos::ev::Event;
use leptos::task::spawn_local;

use crate::bench::answer::Answer;
use crate::bench::ask::What;
use crate::i18n::strings::more::More;
use crate::platform::bench::Luggage;
use crate::platform::files::{self, FileError};
use crate::reactive::untrack;
use crate::shell::Shell;
use crate::shell::bench::ask;
use crate::shell::toasts::ToastAbout;
use crate::state::bench::Text;
use crate::state::saved::{DecodeError, Decoded, decode};

/// Why a file could not be brought in. Nothing has changed then.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum CopyTrouble {
    /// The file could not be read.
    #[error(transparent)]
    File(#[from] FileError),
    /// It was read, but is no household.
    #[error(transparent)]
    Decode(#[from] DecodeError),
}

/// Hands the household to the person as a file, and tells the file's name; nothing where there is
/// no text to hand out.
pub fn download_copy(shell: Shell) -> Option<String> {
    let now = shell.clock.device_now();
    let (year, month, day) = now.day().ymd();
    let (hour, minute) = (now.hour(), now.minute());
    let name = format!("duskpot-{year:04}-{month:02}-{day:02}-{hour:02}{minute:02}.json");
    let keys = shell.store.now_is(|document| document.bench.keys());
    if keys.is_empty() {
        let text = shell.store.copy_text(&Vec::new()).ok()?;
        download(&name, &text);
        return Some(name);
    }
    let file = name.clone();
    spawn_local(async move {
        // A copy without the readings of files is better than none, and says so.
        let (texts, lacks) = match ask(shell, What::Texts(keys.clone()), Luggage::None).await {
            Ok(Answer::Texts(texts)) => {
                let lacks = texts.len() < keys.len();
                (texts, lacks.then(String::new))
            }
            Ok(_) => (Vec::new(), Some(String::new())),
            Err(why) => (Vec::new(), Some(why)),
        };
        if let Ok(text) = shell.store.copy_text(&texts) {
            download(&file, &text);
        }
        if let Some(why) = lacks {
            let said = untrack(|| shell.words.strings()).more.copy_lacks_readings;
            shell
                .toasts
                .show(ToastAbout::Said(format!("{said} {why}")), None);
        }
    });
    Some(name)
}

/// Keeps the readings of files that came along in a copy, and comes back when they are on the device;
/// what can't be kept is said.
pub async fn bring_texts(shell: Shell, texts: Vec<Text>) {
    if texts.is_empty() {
        return;
    }
    if let Err(why) = ask(shell, What::Bring(texts), Luggage::None).await {
        shell.toasts.show(ToastAbout::Said(why), None);
    }
}

/// Hands something that was put aside to the person as a file.
pub fn download_aside(shell: Shell, key: &str) {
    if let Ok(Some(text)) = shell.store.aside_text(key) {
        download(&format!("{key}.json"), &text);
    }
}

/// The household in the file that was picked in a file field, from its change event. It is only
/// read: [`Store::replace`](crate::shell::store::Store::replace) brings it in.
///
/// # Errors
///
/// [`CopyTrouble`], for [`trouble_text`] to put into words.
pub async fn read_copy(event: &Event) -> Result<Decoded, CopyTrouble> {
    let text = files::read_picked(event).await?;
    Ok(decode(&text)?)
}

/// What is said about a file that can't be brought in; nothing where no file was picked.
pub fn trouble_text(more: &More, trouble: &CopyTrouble) -> Option<String> {
    match trouble {
        CopyTrouble::File(FileError::NonePicked) => None,
        CopyTrouble::File(FileError::TooLarge) | CopyTrouble::Decode(DecodeError::NotOurs) => {
            Some(more.copy_not_ours.to_owned())
        }
        CopyTrouble::File(_) => Some(more.copy_unreadable.to_owned()),
        CopyTrouble::Decode(DecodeError::Newer { .. }) => Some(more.copy_newer.to_owned()),
        CopyTrouble::Decode(error) => Some((more.copy_damaged)(&error.to_string())),
    }
}

fn download(name: &str, text: &str) {
    // A browser that can't hand out files shows that itself.
    let _ = files::download(name, "application/json", text);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;

    #[test]
    fn each_trouble_has_its_words_and_no_file_has_none() {
        let more = &Language::English.strings().more;
        let said = |trouble| trouble_text(more, &trouble);
        assert_eq!(said(CopyTrouble::File(FileError::NonePicked)), None);
        let damaged = decode("{\"format\":\"duskpot\",\"version\":1}").unwrap_err();
        assert!(said(CopyTrouble::Decode(damaged)).is_some_and(|said| said.contains("saved_at")));
        let newer = decode("{\"format\":\"duskpot\",\"version\":7}").unwrap_err();
        assert_eq!(
            said(CopyTrouble::Decode(newer)).as_deref(),
            Some(more.copy_newer)
        );
    }
}
