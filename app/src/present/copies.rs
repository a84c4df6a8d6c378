//! What is in a copy, before it takes the place of anything.

use model::local_time::Day;

use crate::i18n::format::Formats;
use crate::i18n::strings::more::More;
use crate::state::document::{Document, Whose};
use crate::state::saved::Decoded;

/// What a person is told of a copy.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CopyView {
    /// When it was written.
    pub written: String,
    /// What is in it, a sentence each.
    pub lines: Vec<String>,
    /// What has to be known before it is brought in; or nothing.
    pub warning: String,
}

/// The copy in words.
pub fn copy_view(decoded: &Decoded, more: &More, formats: &Formats, today: Day) -> CopyView {
    let document = &decoded.document;
    let warning = match document.whose {
        Whose::Example => more.copy_of_example,
        Whose::Own if is_empty(document) => more.copy_empty,
        Whose::Own => "",
    };
    CopyView {
        written: (more.copy_saved_at)(&formats.instant(decoded.saved_at, today)),
        lines: lines(document, more, formats),
        warning: warning.to_owned(),
    }
}

/// What was put aside in one line: the cookers by name and the days.
pub fn aside_line(document: &Document, more: &More, formats: &Formats) -> String {
    lines(document, more, formats).join(" ")
}

fn lines(document: &Document, more: &More, formats: &Formats) -> Vec<String> {
    if is_empty(document) {
        return Vec::new();
    }
    let names: Vec<&str> = document
        .cookers
        .iter()
        .map(|owned| owned.name.as_str())
        .collect();
    let holds = (more.copy_holds)(names.len(), document.entries.len(), document.skies.len());
    let cookers = (!names.is_empty()).then(|| (more.copy_cookers)(&names.join(", ")));
    let span = document
        .days()
        .map(|(first, last)| (more.copy_spans)(&dated(first, formats), &dated(last, formats)));
    std::iter::once(holds).chain(cookers).chain(span).collect()
}

/// A day with its year: a copy may be years old.
fn dated(day: Day, formats: &Formats) -> String {
    let (year, _, _) = day.ymd();
    format!("{} {year}", formats.short_day(day))
}

fn is_empty(document: &Document) -> bool {
    document.household.is_none() && document.cookers.is_empty()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::i18n::format::LocaleFormat;
    use crate::state::example::example_document;
    use crate::state::sample::{TODAY, at, set_up};
    use crate::state::saved::{Layout, decode, encode};
    use crate::state::settings::Degrees;

    fn formats() -> Formats {
        Formats {
            locale: LocaleFormat::default(),
            degrees: Degrees::Celsius,
            units: &Language::English.strings().common.units,
        }
    }

    fn view(document: &Document) -> CopyView {
        let text = encode(document, at(20, 0), Layout::Readable).unwrap();
        let more = &Language::English.strings().more;
        copy_view(&decode(&text).unwrap(), more, &formats(), TODAY)
    }

    #[test]
    fn a_copy_tells_its_cookers_entries_days_and_date() {
        let mut document = example_document(at(20, 0));
        document.whose = Whose::Own;
        let view = view(&document);
        assert_eq!(view.written, "Written today, 20:00.");
        let n_entries = document.entries.len();
        assert_eq!(
            view.lines,
            [
                format!("It holds 2 cookers, {n_entries} entries, 13 days of sun."),
                "Cookers: Rufo, Brina.".to_owned(),
                "From 12 Nov 2026 to 25 Nov 2026.".to_owned(),
            ]
        );
        assert_eq!(view.warning, "");
    }

    #[test]
    fn a_copy_without_entries_tells_no_days() {
        let view = view(&set_up());
        assert_eq!(view.lines.len(), 2);
        assert!(view.lines[0].contains("1 cooker, 0 entries"), "{view:?}");
    }

    #[test]
    fn a_copy_of_nothing_or_of_the_example_says_so() {
        let empty = view(&Document::new(Whose::Own));
        assert_eq!(empty.lines, Vec::<String>::new());
        assert!(empty.warning.contains("no household"));
        let example = view(&example_document(at(20, 0)));
        assert!(example.warning.contains("made up"));
    }
}
