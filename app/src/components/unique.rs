//! Names that tie a label or a message to its field for a screen reader.

use std::sync::atomic::{AtomicUsize, Ordering};

static NEXT: AtomicUsize = AtomicUsize::new(0);

/// A name that no other element of the page has, beginning with `stem`.
pub(crate) fn unique(stem: &str) -> String {
    format!("{stem}-{}", NEXT.fetch_add(1, Ordering::Relaxed))
}

#[cfg(test)]
mod tests {
    use super::unique;

    #[test]
    fn two_names_differ() {
        assert_ne!(unique("pot"), unique("pot"));
    }
}
