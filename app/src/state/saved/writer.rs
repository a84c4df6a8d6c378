//! Values into a text.

use super::Layout;

/// Can be written into a save.
pub(crate) trait Write {
    /// Writes the value.
    fn write(&self, out: &mut Writer);
}

/// A JSON text that grows. Names and values come in the order they are written.
pub(crate) struct Writer {
    text: serde_json::Result<String>,
    layout: Layout,
    depth: usize,
    is_first: bool,
}

/// The fields of a record: names, which need no escapes, and values.
pub(crate) struct Record<'a>(pub(crate) &'a [(&'a str, &'a dyn Write)]);

impl Writer {
    pub(crate) fn new(layout: Layout) -> Self {
        Self {
            text: Ok(String::new()),
            layout,
            depth: 0,
            is_first: true,
        }
    }

    /// All that was written.
    pub(crate) fn finish(self) -> serde_json::Result<String> {
        self.text
    }

    /// Begins a list or a record.
    pub(crate) fn open(&mut self, bracket: &str) {
        self.push(bracket);
        self.depth += 1;
        self.is_first = true;
    }

    /// Ends a list or a record.
    pub(crate) fn close(&mut self, bracket: &str) {
        self.depth -= 1;
        if !self.is_first {
            self.line();
        }
        self.push(bracket);
        self.is_first = false;
    }

    /// One of a list.
    pub(crate) fn item(&mut self, value: &dyn Write) {
        self.next();
        value.write(self);
    }

    /// One of a record.
    pub(crate) fn field(&mut self, name: &str, value: &dyn Write) {
        self.next();
        self.push("\"");
        self.push(name);
        self.push(match self.layout {
            Layout::Compact => "\":",
            Layout::Readable => "\": ",
        });
        value.write(self);
    }

    fn next(&mut self) {
        if !self.is_first {
            self.push(",");
        }
        self.line();
        self.is_first = false;
    }

    fn line(&mut self) {
        if self.layout == Layout::Readable {
            self.push("\n");
            for _ in 0..self.depth {
                self.push("  ");
            }
        }
    }

    fn push(&mut self, part: &str) {
        if let Ok(text) = &mut self.text {
            text.push_str(part);
        }
    }

    /// A number or a text as JSON has it.
    fn push_json(&mut self, part: serde_json::Result<String>) {
        match part {
            Ok(part) => self.push(&part),
            Err(error) => self.text = Err(error),
        }
    }
}

impl Write for Record<'_> {
    fn write(&self, out: &mut Writer) {
        out.open("{");
        for (name, value) in self.0 {
            out.field(name, *value);
        }
        out.close("}");
    }
}

impl Write for bool {
    fn write(&self, out: &mut Writer) {
        out.push(if *self { "true" } else { "false" });
    }
}

impl Write for f64 {
    fn write(&self, out: &mut Writer) {
        out.push(&number(*self));
    }
}

/// A number as JSON has it: the fewest digits that read back as the same, with a point or an
/// exponent that tells it from a whole number. `null` for what JSON has no number for.
fn number(value: f64) -> String {
    let size = value.abs();
    if !value.is_finite() {
        "null".to_owned()
    } else if 0.0 < size && !(1e-5..1e16).contains(&size) {
        let sign = if 1.0 < size { "e+" } else { "e" };
        format!("{value:e}").replace('e', sign)
    } else {
        let mut text = value.to_string();
        if !text.contains('.') {
            text.push_str(".0");
        }
        text
    }
}

impl Write for i64 {
    fn write(&self, out: &mut Writer) {
        out.push(&self.to_string());
    }
}

impl Write for i32 {
    fn write(&self, out: &mut Writer) {
        i64::from(*self).write(out);
    }
}

impl Write for u32 {
    fn write(&self, out: &mut Writer) {
        i64::from(*self).write(out);
    }
}

impl Write for &str {
    fn write(&self, out: &mut Writer) {
        out.push_json(serde_json::to_string(self));
    }
}

impl Write for String {
    fn write(&self, out: &mut Writer) {
        self.as_str().write(out);
    }
}

impl<T: Write> Write for Box<T> {
    fn write(&self, out: &mut Writer) {
        T::write(self, out);
    }
}

impl<T: Write> Write for Option<T> {
    fn write(&self, out: &mut Writer) {
        match self {
            None => out.push("null"),
            Some(value) => value.write(out),
        }
    }
}

impl<T: Write> Write for Vec<T> {
    fn write(&self, out: &mut Writer) {
        out.open("[");
        for item in self {
            out.item(item);
        }
        out.close("]");
    }
}

impl<const N: usize> Write for [f64; N] {
    fn write(&self, out: &mut Writer) {
        out.open("[");
        for number in self {
            out.item(number);
        }
        out.close("]");
    }
}

#[cfg(test)]
mod tests {
    use super::number;
    use proptest::prelude::*;

    proptest! {
        // serde_json writes by an algorithm of its own. Where two shortest texts lie equally near
        // the number, either may be picked: both are read back as it.
        #[test]
        fn numbers_are_written_as_serde_json_writes_them(bits in any::<u64>(), value in -1e6..1e6_f64) {
            for value in [f64::from_bits(bits), value, value.round(), value / 100.0] {
                let (ours, theirs) = (number(value), serde_json::to_string(&value).unwrap());
                if ours != theirs {
                    let read: f64 = ours.parse().unwrap();
                    prop_assert_eq!(read.to_bits(), value.to_bits(), "{} {}", &ours, &theirs);
                    prop_assert_eq!(ours.len(), theirs.len(), "{} {}", &ours, &theirs);
                }
            }
        }
    }

    #[test]
    fn the_edges_are_written_as_serde_json_writes_them() {
        for value in [
            0.0,
            -0.0,
            1e-5,
            9.99e-6,
            1e16,
            9e15,
            5e-324,
            f64::MAX,
            f64::NAN,
        ] {
            assert_eq!(number(value), serde_json::to_string(&value).unwrap());
        }
    }
}
