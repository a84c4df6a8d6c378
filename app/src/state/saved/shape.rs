//! How a record and a choice of names are described, once for writing and reading.

/// A record: each field of the document with its name in the save, in the order of the save.
///
/// `or` gives the value of a field that older saves have not; a field that may be missing for good
/// is an `Option` in the document and needs none.
macro_rules! record {
    (@read $from:ident $name:literal) => {
        $from.get($name)?
    };
    (@read $from:ident $name:literal $default:expr) => {
        Option::unwrap_or($from.get($name)?, $default)
    };
    ($of:ty { $($field:ident: $name:literal $(or $default:expr)?),* $(,)? }) => {
        impl $crate::state::saved::writer::Write for $of {
            fn write(&self, out: &mut $crate::state::saved::writer::Writer) {
                let Self { $($field),* } = self;
                $crate::state::saved::writer::Record(&[$(($name, $field)),*]).write(out);
            }
        }

        impl $crate::state::saved::reader::Read for $of {
            fn read(
                from: &$crate::state::saved::reader::Node<'_>,
            ) -> $crate::state::saved::reader::Found<Self> {
                Ok(Self { $($field: record!(@read from $name $($default)?)),* })
            }
        }
    };
}

/// One of several things, saved by its name.
macro_rules! names {
    ($of:ty { $($variant:ident: $name:literal),* $(,)? }) => {
        impl $crate::state::saved::writer::Write for $of {
            fn write(&self, out: &mut $crate::state::saved::writer::Writer) {
                let name = match self {
                    $(Self::$variant => $name,)*
                };
                name.write(out);
            }
        }

        impl $crate::state::saved::reader::Read for $of {
            fn read(
                from: &$crate::state::saved::reader::Node<'_>,
            ) -> $crate::state::saved::reader::Found<Self> {
                const ALL: &[(&str, $of)] = &[$(($name, <$of>::$variant)),*];
                let text = from.text()?;
                let row = ALL.iter().find(|(name, _)| *name == text);
                row.map_or_else(|| from.unknown(), |(_, row)| Ok(*row))
            }
        }
    };
}

pub(crate) use {names, record};

#[cfg(test)]
mod tests {
    use crate::state::saved::Layout;
    use crate::state::saved::reader::{Found, Node, Read};
    use crate::state::saved::writer::{Write, Writer};

    #[derive(Debug, PartialEq)]
    struct Lamp {
        power_w: f64,
        hung_at_m: f64,
        label: Option<String>,
    }

    record!(Lamp {
        power_w: "power_w",
        hung_at_m: "height_m" or 2.0,
        label: "label",
    });

    fn read(text: &str) -> Found<Lamp> {
        Lamp::read(&Node::start(&serde_json::from_str(text).unwrap()))
    }

    #[test]
    fn a_field_of_later_days_has_its_stand_in() {
        let lamp = Lamp {
            power_w: 7.0,
            hung_at_m: 2.0,
            label: None,
        };
        assert_eq!(read(r#"{"power_w":7}"#), Ok(lamp));
        let error = read(r#"{"height_m":3.0}"#).unwrap_err();
        assert_eq!(error.to_string(), "power_w: expected a number");
        assert!(read(r#"{"power_w":7.0,"height_m":"high"}"#).is_err());
    }

    #[test]
    fn it_is_written_under_its_name() {
        let mut out = Writer::new(Layout::Compact);
        Lamp {
            power_w: 7.0,
            hung_at_m: 3.0,
            label: None,
        }
        .write(&mut out);
        let expected = r#"{"power_w":7.0,"height_m":3.0,"label":null}"#;
        assert_eq!(out.finish().unwrap(), expected);
    }
}
