//! What is to be seen, in a form that is small to download.
//!
//! A [`View`] is plain data: an element with its attributes, a text, several views, or work that
//! is done again whenever a signal it reads changes. The `view!` macro fills it in; [`shown`]
//! draws it. When the work is done again, elements from the same tags stay in the page, so that
//! focus and what is typed stay; work inside of it begins anew. There is one type and one copy of
//! that code, where views whose types tell what they hold need a copy for each.

mod attr;
mod into_view;
mod shown;

use std::borrow::Cow;
use std::rc::Rc;

use leptos::html::ElementType;
use leptos::prelude::{NodeRef, document};
use leptos::tachys::html::node_ref::NodeRefContainer;
use wasm_bindgen::JsCast;

use self::attr::Place;
use self::shown::Shown;
use super::work::{Job, Make};

pub use self::attr::{Attr, AttrValue, IntoAttr, Value};
pub use self::into_view::{CollectView, IntoView};

/// Something to be seen.
pub struct View(Box<Node>);

type Text = Cow<'static, str>;
type Work = Box<dyn Make<View>>;
type Handler = Rc<dyn Job<web_sys::Event, ()>>;
type Told = Box<dyn FnOnce(&web_sys::Element)>;
type Fixed = &'static [(&'static str, &'static str)];

enum Node {
    Nothing,
    Text(Text),
    Several(Vec<View>),
    Element(Element),
    Followed(Work),
}

struct Element {
    tag: &'static str,
    is_drawn: bool,
    fixed: Fixed,
    attrs: Vec<(Place, &'static str, Attr)>,
    events: Vec<(&'static str, Handler)>,
    children: Vec<View>,
    told: Option<Told>,
}

impl View {
    /// An element of the page, with the attributes that never change.
    #[inline(never)]
    pub fn element(tag: &'static str, fixed: Fixed) -> Self {
        Self::new_element(tag, fixed, false)
    }

    /// An element of a drawing, with the attributes that never change.
    #[inline(never)]
    pub fn drawn(tag: &'static str, fixed: Fixed) -> Self {
        Self::new_element(tag, fixed, true)
    }

    fn new_element(tag: &'static str, fixed: Fixed, is_drawn: bool) -> Self {
        Self::of(Node::Element(Element {
            tag,
            is_drawn,
            fixed,
            attrs: Vec::new(),
            events: Vec::new(),
            children: Vec::new(),
            told: None,
        }))
    }

    /// Views one after the other; none yet.
    #[inline(never)]
    pub fn several() -> Self {
        Self::of(Node::Several(Vec::new()))
    }

    /// Nothing to be seen.
    #[inline(never)]
    pub fn nothing() -> Self {
        Self::of(Node::Nothing)
    }

    /// A text that is always the same.
    #[inline(never)]
    pub fn fixed_text(text: &'static str) -> Self {
        Self::of(Node::Text(Cow::Borrowed(text)))
    }

    /// A text.
    #[inline(never)]
    pub fn text(text: String) -> Self {
        Self::of(Node::Text(Cow::Owned(text)))
    }

    /// What `work` makes, made anew whenever a signal that it reads changes.
    #[inline(never)]
    fn followed(work: Work) -> Self {
        Self::of(Node::Followed(work))
    }

    fn of(node: Node) -> Self {
        Self(Box::new(node))
    }

    /// With this inside, after what is there.
    #[inline(always)]
    #[must_use]
    pub fn child(self, child: impl IntoView) -> Self {
        self.with_child(child.into_view())
    }

    #[inline(never)]
    fn with_child(mut self, child: Self) -> Self {
        match &mut *self.0 {
            Node::Element(Element { children, .. }) | Node::Several(children) => {
                children.push(child);
            }
            Node::Nothing | Node::Text(_) | Node::Followed(_) => {}
        }
        self
    }

    /// With this attribute.
    #[inline(always)]
    #[must_use]
    pub fn attr(self, name: &'static str, value: impl IntoAttr) -> Self {
        self.with_attr(Place::Attribute, name, value.into_attr())
    }

    /// With this held by a field: its `value`, or whether it is `checked`.
    #[inline(always)]
    #[must_use]
    pub fn prop(self, name: &'static str, value: impl IntoAttr) -> Self {
        self.with_attr(Place::Property, name, value.into_attr())
    }

    #[inline(never)]
    fn with_attr(mut self, place: Place, name: &'static str, attr: Attr) -> Self {
        if let Node::Element(element) = &mut *self.0 {
            element.attrs.push((place, name, attr));
        }
        self
    }

    /// Calls this with each event of that name.
    #[inline(always)]
    #[must_use]
    pub fn on(self, name: &'static str, handler: impl Fn(web_sys::Event) + 'static) -> Self {
        self.with_handler(name, Rc::new(handler))
    }

    #[inline(never)]
    fn with_handler(mut self, name: &'static str, handler: Handler) -> Self {
        if let Node::Element(element) = &mut *self.0 {
            element.events.push((name, handler));
        }
        self
    }

    /// Tells `node` of the element once it is there.
    #[must_use]
    pub fn node_ref<E>(mut self, node: NodeRef<E>) -> Self
    where
        E: ElementType + 'static,
        E::Output: JsCast + Clone + 'static,
    {
        if let Node::Element(element) = &mut *self.0 {
            element.told = Some(Box::new(move |element| node.load(element)));
        }
        self
    }
}

/// What stands between the tags of a component: made at once, or at each asking.
pub trait ToChildren<F> {
    /// From what makes it.
    fn to_children(make: F) -> Self;
}

impl<F: FnOnce() -> Self> ToChildren<F> for View {
    #[inline(always)]
    fn to_children(make: F) -> Self {
        make()
    }
}

/// What stands between the tags of a component that shows it more than once.
pub type ChildrenFn = Rc<dyn Fn() -> View>;

impl<F: Fn() -> View + 'static> ToChildren<F> for ChildrenFn {
    fn to_children(make: F) -> Self {
        Rc::new(make)
    }
}

/// Shows what `make` makes in the page, for as long as the page lives.
pub fn mount(make: impl FnOnce() -> View + 'static) {
    leptos::mount::mount_to_body(move || {
        let shown = Shown::new(make());
        if let Some(body) = document().body() {
            shown.stay_in(&body);
        }
    });
}
