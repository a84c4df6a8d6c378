//! Values out of a tree, and the place of the one that is wrong.

use super::DecodeError;
use super::tree::Tree;

/// A value, or what is wrong and where. Boxed, since every field hands it on.
pub(crate) type Found<T> = Result<T, Box<DecodeError>>;

/// Can be read from a save.
pub(crate) trait Read: Sized {
    /// The value that stands there.
    fn read(from: &Node<'_>) -> Found<Self>;
}

/// A part of a tree that knows where it stands.
#[derive(Clone, Copy)]
pub(crate) struct Node<'a> {
    tree: &'a Tree,
    step: Step<'a>,
    outer: Option<&'a Self>,
}

/// The last step of the way to a part.
#[derive(Clone, Copy)]
enum Step<'a> {
    Start,
    Name(&'a str),
    Place(usize),
}

impl<'a> Node<'a> {
    /// A tree to which places are told from here.
    pub(crate) fn start(tree: &'a Tree) -> Self {
        Self {
            tree,
            step: Step::Start,
            outer: None,
        }
    }

    /// This part, with places told from here.
    pub(crate) fn restart(&self) -> Self {
        Self::start(self.tree)
    }

    /// The field of a record; nothing where there is none, which an `Option` takes.
    pub(crate) fn get<T: Read>(&self, name: &str) -> Found<T> {
        T::read(&self.field(name)?)
    }

    pub(crate) fn field<'b>(&'b self, name: &'b str) -> Found<Node<'b>> {
        let mut found = self.fields()?.iter().filter(|(of, _)| of == name);
        let tree = found.next().map_or(&Tree::Null, |(_, tree)| tree);
        let node = self.inner(tree, Step::Name(name));
        match found.next() {
            None => Ok(node),
            Some(_) => Err(node.expected("only one of that name")),
        }
    }

    /// The names and values of a record whose names are not known beforehand.
    pub(crate) fn entries<'b>(&'b self) -> Found<impl Iterator<Item = (&'b str, Node<'b>)>> {
        let fields = self.fields()?.iter();
        Ok(fields.map(|(name, tree)| (name.as_str(), self.inner(tree, Step::Name(name)))))
    }

    /// The only field of a record: the name says which of several kinds the value is.
    pub(crate) fn variant<'b>(&'b self) -> Found<(&'b str, Node<'b>)> {
        match self.tree {
            Tree::Record(fields) => match fields.as_slice() {
                [(name, tree)] => Ok((name, self.inner(tree, Step::Name(name)))),
                _ => Err(self.expected("one kind")),
            },
            _ => Err(self.expected("a kind")),
        }
    }

    /// A text.
    pub(crate) fn text(&self) -> Found<&'a str> {
        match self.tree {
            Tree::Text(text) => Ok(text),
            _ => Err(self.expected("a text")),
        }
    }

    /// What is wrong with a shape.
    #[cold]
    pub(crate) fn expected(&self, what: &str) -> Box<DecodeError> {
        let mut at = self.at();
        if !at.is_empty() {
            at.push_str(": ");
        }
        at.push_str("expected ");
        at.push_str(what);
        Box::new(DecodeError::Shape { at })
    }

    /// A value of the right shape that can't be.
    #[cold]
    pub(crate) fn impossible(&self, value: &str) -> Box<DecodeError> {
        Box::new(DecodeError::Value {
            at: self.at(),
            value: value.to_owned(),
        })
    }

    /// The text of a value that there is no such thing as.
    #[cold]
    pub(crate) fn unknown<T>(&self) -> Found<T> {
        Err(self.impossible(self.text()?))
    }

    fn inner<'b>(&'b self, tree: &'b Tree, step: Step<'b>) -> Node<'b> {
        Node {
            tree,
            step,
            outer: Some(self),
        }
    }

    fn fields(&self) -> Found<&'a [(String, Tree)]> {
        match self.tree {
            Tree::Record(fields) => Ok(fields),
            _ => Err(self.expected("a record")),
        }
    }

    fn whole(&self) -> Found<i64> {
        match self.tree {
            Tree::Whole(whole) => Ok(*whole),
            _ => Err(self.expected("a whole number")),
        }
    }

    /// As `entries[3].at`.
    fn at(&self) -> String {
        let mut at = self.outer.map(Self::at).unwrap_or_default();
        match self.step {
            Step::Start => {}
            Step::Name(name) => {
                if !at.is_empty() {
                    at.push('.');
                }
                at.push_str(name);
            }
            Step::Place(place) => at.push_str(&format!("[{place}]")),
        }
        at
    }
}

impl Read for bool {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.tree {
            Tree::Flag(flag) => Ok(*flag),
            _ => Err(from.expected("true or false")),
        }
    }
}

impl Read for f64 {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.tree {
            Tree::Number(number) => Ok(*number),
            Tree::Whole(whole) => Ok(*whole as Self),
            _ => Err(from.expected("a number")),
        }
    }
}

impl Read for i64 {
    fn read(from: &Node<'_>) -> Found<Self> {
        from.whole()
    }
}

impl Read for i32 {
    fn read(from: &Node<'_>) -> Found<Self> {
        Self::try_from(from.whole()?).map_err(|_| from.expected("a smaller number"))
    }
}

impl Read for u32 {
    fn read(from: &Node<'_>) -> Found<Self> {
        Self::try_from(from.whole()?).map_err(|_| from.expected("a number from 0 to 4294967295"))
    }
}

impl Read for String {
    fn read(from: &Node<'_>) -> Found<Self> {
        from.text().map(ToOwned::to_owned)
    }
}

impl<T: Read> Read for Box<T> {
    fn read(from: &Node<'_>) -> Found<Self> {
        T::read(from).map(Self::new)
    }
}

impl<T: Read> Read for Option<T> {
    fn read(from: &Node<'_>) -> Found<Self> {
        match from.tree {
            Tree::Null => Ok(None),
            _ => T::read(from).map(Some),
        }
    }
}

impl<T: Read> Read for Vec<T> {
    fn read(from: &Node<'_>) -> Found<Self> {
        let Tree::List(list) = from.tree else {
            return Err(from.expected("a list"));
        };
        let mut items = Self::with_capacity(list.len());
        for (place, tree) in list.iter().enumerate() {
            items.push(T::read(&from.inner(tree, Step::Place(place)))?);
        }
        Ok(items)
    }
}

impl<const N: usize> Read for [f64; N] {
    fn read(from: &Node<'_>) -> Found<Self> {
        let numbers: Vec<f64> = Read::read(from)?;
        Self::try_from(numbers).map_err(|_| from.expected(&format!("{N} numbers")))
    }
}
