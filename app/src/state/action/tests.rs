//! What a person does, and what becomes of it.

mod bench;
mod deeds;
mod refusals;

use proptest::prelude::*;

use super::*;
use crate::state::limits;
use crate::state::refused::{Field, Wrong};
use crate::state::sample::{any_action, at, full, set_up_action};

/// Refused at eight in the evening, with nothing changed.
fn check_refused(document: &Document, action: Action, field: Field, wrong: Wrong) {
    let mut after = document.clone();
    let result = apply(&mut after, action.clone(), at(20, 0));
    assert_eq!(result, Err(Refused { field, wrong }), "{action:?}");
    assert_eq!(&after, document, "{action:?}");
}

proptest! {
    #[test]
    fn whatever_is_done_the_document_holds_together(
        actions in proptest::collection::vec(any_action(), 0..40)
    ) {
        let mut document = Document::default();
        for action in std::iter::once(set_up_action()).chain(actions) {
            let before = document.clone();
            if apply(&mut document, action, at(20, 0)).is_err() {
                prop_assert_eq!(&document, &before);
            }
            prop_assert!(document.entries.is_sorted_by_key(|entry| (entry.at, entry.id)));
            prop_assert!(document.cooker_in_use().is_some());
            for entry in &document.entries {
                prop_assert!(document.cooker(entry.cooker).is_some());
                prop_assert!(entry.id.0 < document.next_id);
            }
            if document.running.is_some() {
                let running = document.running_meal().map(|entry| &entry.what);
                prop_assert!(matches!(running, Some(What::Meal(_))));
            }
            prop_assert!(document.erased.len() <= limits::ERASED);
        }
    }

    #[test]
    fn an_erased_entry_comes_back_as_it_was(
        actions in proptest::collection::vec(any_action(), 0..30), pick in any::<prop::sample::Index>()
    ) {
        let mut document = full();
        for action in actions {
            // A refusal changes nothing.
            let _ = apply(&mut document, action, at(20, 0));
        }
        if document.entries.is_empty() {
            return Ok(());
        }
        let id = document.entries[pick.index(document.entries.len())].id;
        let mut after = document.clone();
        let erased = apply(&mut after, Action::EraseEntry(id), at(20, 0)).unwrap();
        let Done::Erased(erased) = erased else { panic!("{erased:?}") };
        apply(&mut after, Action::BringBack(erased), at(20, 0)).unwrap();
        prop_assert_eq!(&after.entries, &document.entries);
        prop_assert_eq!(after.running, document.running);
    }
}
