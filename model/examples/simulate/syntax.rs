//! Where in the list of cases a syntax error lies.
//!
//! `NaN`, `Infinity` and numbers too large are syntax errors of JSON; whoever wrote them wants to know
//! which case and field they are in, not only which line.

/// What a syntax error at a line and column (both from 1) is about: "case 2 (name), field: ".
pub(crate) fn place(text: &str, line: usize, column: usize) -> String {
    let mut scan = Scan::default();
    for (row, content) in text.split_inclusive('\n').enumerate() {
        // Columns count bytes.
        let content = if row + 1 == line {
            content.get(..column.saturating_sub(1)).unwrap_or(content)
        } else {
            content
        };
        content.chars().for_each(|c| scan.take(c));
        if row + 1 == line {
            break;
        }
    }
    scan.place()
}

#[derive(Default)]
struct Scan {
    depth: usize,
    case: usize,
    in_string: bool,
    escaped: bool,
    /// The last whole string, and the one under way.
    string: String,
    /// The last key at the level of the case's own fields.
    key: String,
    name: String,
}

impl Scan {
    fn take(&mut self, c: char) {
        if self.in_string {
            match (self.escaped, c) {
                (false, '\\') => self.escaped = true,
                (false, '"') => {
                    self.in_string = false;
                    if self.depth == 2 && self.key == "name" && self.name.is_empty() {
                        self.name.clone_from(&self.string);
                    }
                }
                _ => {
                    self.escaped = false;
                    self.string.push(c);
                }
            }
            return;
        }
        match c {
            '"' => {
                self.in_string = true;
                self.string.clear();
            }
            ':' if self.depth == 2 => self.key.clone_from(&self.string),
            ':' if self.depth > 2 => {
                let top = self.key.split('.').next().unwrap_or_default();
                self.key = format!("{top}.{}", self.string);
            }
            ',' if self.depth == 1 => {
                self.case += 1;
                self.name.clear();
                self.key.clear();
            }
            '[' | '{' => self.depth += 1,
            ']' | '}' => self.depth = self.depth.saturating_sub(1),
            _ => {}
        }
    }

    fn place(&self) -> String {
        if self.depth < 2 {
            return String::new();
        }
        let name = if self.name.is_empty() {
            String::new()
        } else {
            format!(" \"{}\"", self.name)
        };
        format!("case {}{name}: {}: ", self.case, self.key)
    }
}
