//! Values into a text.

use super::Layout;

/// Can be written into a save.
pub(super) trait Write {
    /// Writes the value.
    fn write(&self, out: &mut Writer);
}

/// A JSON text that grows. Names and values come in the order they are written.
pub(super) struct Writer {
    text: serde_json::Result<String>,
    layout: Layout,
    depth: usize,
    is_first: bool,
}

/// The fields of a record: names, which need no escapes, and values.
pub(super) struct Record<'a>(pub(super) &'a [(&'a str, &'a dyn Write)]);

impl Writer {
    pub(super) fn new(layout: Layout) -> Self {
        Self {
            text: Ok(String::new()),
            layout,
            depth: 0,
            is_first: true,
        }
    }

    /// All that was written.
    pub(super) fn finish(self) -> serde_json::Result<String> {
        self.text
    }

    /// Begins a list or a record.
    pub(super) fn open(&mut self, bracket: &str) {
        self.push(bracket);
        self.depth += 1;
        self.is_first = true;
    }

    /// Ends a list or a record.
    pub(super) fn close(&mut self, bracket: &str) {
        self.depth -= 1;
        if !self.is_first {
            self.line();
        }
        self.push(bracket);
        self.is_first = false;
    }

    /// One of a list.
    pub(super) fn item(&mut self, value: &dyn Write) {
        self.next();
        value.write(self);
    }

    /// One of a record.
    pub(super) fn field(&mut self, name: &str, value: &dyn Write) {
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
        out.push_json(serde_json::to_string(self));
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
