//! Short lists in order.

use std::cmp::Ordering;

/// The items in order; equals stay in the order they came.
///
/// Each is put in its place among those before it, which is made for what a screen or a story
/// holds: a few hundred at most. The standard library's sort is faster on long lists, but every
/// list it sorts brings 4 kB of its own to what a phone downloads.
pub fn in_order<T>(
    items: impl IntoIterator<Item = T>,
    compare: impl Fn(&T, &T) -> Ordering,
) -> Vec<T> {
    let mut list = Vec::new();
    for item in items {
        let place = list.partition_point(|other| compare(other, &item).is_le());
        list.insert(place, item);
    }
    list
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    proptest! {
        #[test]
        fn as_the_standard_library_sorts(keys in proptest::collection::vec(0..20_u8, 0..40)) {
            let mut expected: Vec<(u8, usize)> = keys.into_iter().zip(0..).collect();
            let found = in_order(expected.clone(), |a, b| a.0.cmp(&b.0));
            expected.sort_by_key(|(key, _)| *key);
            prop_assert_eq!(found, expected);
        }
    }
}
