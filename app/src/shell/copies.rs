//! Copies of a household as files: out and in.

use leptos::ev::Event;

use crate::i18n::strings::more::More;
use crate::platform::files::{self, FileError};
use crate::shell::Shell;
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
    let text = shell.store.copy_text().ok()?;
    download(&name, &text);
    Some(name)
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
