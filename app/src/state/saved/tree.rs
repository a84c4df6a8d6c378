//! A JSON text as a tree.
//!
//! Unlike `serde_json::Value` it keeps a name that stands twice, which is damage and must be seen.

use std::fmt;

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};

/// A JSON value (RFC 8259, 3).
#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Tree {
    Null,
    Flag(bool),
    Whole(i64),
    Number(f64),
    Text(String),
    List(Vec<Self>),
    Record(Vec<(String, Self)>),
}

impl<'de> Deserialize<'de> for Tree {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        from.deserialize_any(AnyValue)
    }
}

struct AnyValue;

impl<'de> Visitor<'de> for AnyValue {
    type Value = Tree;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_unit<E>(self) -> Result<Tree, E> {
        Ok(Tree::Null)
    }

    fn visit_bool<E>(self, flag: bool) -> Result<Tree, E> {
        Ok(Tree::Flag(flag))
    }

    fn visit_i64<E>(self, whole: i64) -> Result<Tree, E> {
        Ok(Tree::Whole(whole))
    }

    fn visit_u64<E>(self, whole: u64) -> Result<Tree, E> {
        // Beyond the whole numbers that are counted with, a number is only a size.
        Ok(i64::try_from(whole).map_or(Tree::Number(whole as f64), Tree::Whole))
    }

    fn visit_f64<E>(self, number: f64) -> Result<Tree, E> {
        Ok(Tree::Number(number))
    }

    fn visit_str<E>(self, text: &str) -> Result<Tree, E> {
        Ok(Tree::Text(text.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Tree, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element()? {
            list.push(item);
        }
        Ok(Tree::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Tree, A::Error> {
        let mut record = Vec::new();
        while let Some(entry) = entries.next_entry()? {
            record.push(entry);
        }
        Ok(Tree::Record(record))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parse(text: &str) -> Result<Tree, serde_json::Error> {
        serde_json::from_str(text)
    }

    #[test]
    fn each_kind_of_value_is_kept() {
        let tree = parse(r#"{"a":[null,true,-3,0.1,"x\n"],"b":{},"a":18446744073709551615}"#);
        let list = Tree::List(vec![
            Tree::Null,
            Tree::Flag(true),
            Tree::Whole(-3),
            Tree::Number(0.1),
            Tree::Text("x\n".into()),
        ]);
        let expected = Tree::Record(vec![
            ("a".into(), list),
            ("b".into(), Tree::Record(vec![])),
            ("a".into(), Tree::Number(18_446_744_073_709_551_615.0)),
        ]);
        assert_eq!(tree.unwrap(), expected);
    }

    #[test]
    fn what_would_break_the_reader_is_an_error() {
        for text in ["[".repeat(100_000), "1e999".into(), "\"\\ud800\"".into()] {
            assert!(parse(&text).is_err());
        }
        let deep = format!("{}{}", "[".repeat(100_000), "]".repeat(100_000));
        assert!(parse(&deep).is_err());
    }
}
