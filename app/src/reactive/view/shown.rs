//! What is drawn in the page, and how it becomes something else.

use std::cell::RefCell;
use std::rc::Rc;

use leptos::prelude::{Owner, RenderEffect, document};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, UnwrapThrowExt};

use super::attr::ShownAttr;
use super::{Element, Fixed, Handler, Node, Text, View, Work};

/// A view in the page. Each is at least one node, so that its place is known.
pub(super) enum Shown {
    Nothing(web_sys::Comment),
    Text(web_sys::Text, Text),
    /// Views, and the mark after the last of them.
    Several(Vec<Self>, web_sys::Comment),
    Element(Box<ShownElement>),
    Followed {
        place: Place,
        _effect: RenderEffect<()>,
    },
}

/// Where what is followed is kept: here, and with the work that renews it.
pub(super) struct Place(Rc<RefCell<Option<Shown>>>);

impl Drop for Place {
    /// The work may wait for its turn yet, and holds the place until then: what is in it must follow
    /// nothing any longer, since what it would read is gone with the screen.
    fn drop(&mut self) {
        if let Ok(mut place) = self.0.try_borrow_mut() {
            place.take();
        }
    }
}

pub(super) struct ShownElement {
    node: web_sys::Element,
    tag: &'static str,
    fixed: Fixed,
    attrs: Vec<ShownAttr>,
    events: Vec<ShownEvent>,
    children: Vec<Shown>,
}

/// A handler with the part of the screen that it belongs to.
type Owned = (Option<Owner>, Handler);

struct ShownEvent {
    name: &'static str,
    work: Rc<RefCell<Owned>>,
    _listener: Closure<dyn Fn(web_sys::Event)>,
}

impl Shown {
    /// Draws a view, in no place yet.
    pub(super) fn new(view: View) -> Self {
        match *view.0 {
            Node::Nothing => Self::Nothing(document().create_comment("")),
            Node::Text(text) => Self::Text(document().create_text_node(&text), text),
            Node::Several(views) => Self::Several(
                views.into_iter().map(Self::new).collect(),
                document().create_comment(""),
            ),
            Node::Element(element) => Self::Element(Box::new(ShownElement::new(element))),
            Node::Followed(work) => {
                let place = Rc::new(RefCell::new(None));
                let _effect = follow(work, place.clone());
                let place = Place(place);
                Self::Followed { place, _effect }
            }
        }
    }

    /// Goes into `parent`, never to be taken out.
    pub(super) fn stay_in(self, parent: &web_sys::Node) {
        self.place(parent, None);
        std::mem::forget(self);
    }

    /// Becomes another view. An element from the same tags stays, with what the person did to it.
    fn change(&mut self, view: View) {
        match (&mut *self, *view.0) {
            (Self::Nothing(_), Node::Nothing) => {}
            (Self::Text(node, shown), Node::Text(text)) => {
                if *shown != text {
                    node.set_data(&text);
                    *shown = text;
                }
            }
            (Self::Several(shown, end), Node::Several(views)) => change_all(shown, end, views),
            (Self::Element(shown), Node::Element(element)) if shown.is_like(&element) => {
                shown.change(element);
            }
            // Work that is another makes something of its own, even where it looks the same.
            (_, node) => self.give_way(Self::new(View::of(node))),
        }
    }

    fn give_way(&mut self, other: Self) {
        let first = self.first();
        if let Some(parent) = first.parent_node() {
            other.place(&parent, Some(&first));
            self.take_out(&parent);
        }
        *self = other;
    }

    fn first(&self) -> web_sys::Node {
        let mut first = None;
        self.each_node(&mut |node| {
            first.get_or_insert_with(|| node.clone());
        });
        first.unwrap_throw()
    }

    fn place(&self, parent: &web_sys::Node, before: Option<&web_sys::Node>) {
        self.each_node(&mut |node| {
            // A new node can go anywhere.
            let _ = parent.insert_before(node, before);
        });
    }

    fn take_out(&self, parent: &web_sys::Node) {
        self.each_node(&mut |node| {
            // It may have been taken out by someone else, such as an extension of the browser.
            let _ = parent.remove_child(node);
        });
    }

    fn each_node(&self, see: &mut dyn FnMut(&web_sys::Node)) {
        match self {
            Self::Nothing(node) => see(node),
            Self::Text(node, _) => see(node),
            Self::Several(shown, end) => {
                for one in shown {
                    one.each_node(see);
                }
                see(end);
            }
            Self::Element(shown) => see(&shown.node),
            Self::Followed { place, .. } => {
                if let Some(shown) = &*place.0.borrow() {
                    shown.each_node(see);
                }
            }
        }
    }
}

fn change_all(shown: &mut Vec<Shown>, end: &web_sys::Comment, views: Vec<View>) {
    let parent = end.parent_node();
    if let Some(parent) = &parent {
        for gone in shown.drain(views.len().min(shown.len())..) {
            gone.take_out(parent);
        }
    }
    let mut views = views.into_iter();
    for (shown, view) in shown.iter_mut().zip(&mut views) {
        shown.change(view);
    }
    for view in views {
        let new = Shown::new(view);
        if let Some(parent) = &parent {
            new.place(parent, Some(end));
        }
        shown.push(new);
    }
}

/// Keeps in `place` what `work` makes.
fn follow(mut work: Work, place: Rc<RefCell<Option<Shown>>>) -> RenderEffect<()> {
    RenderEffect::new(move |_| {
        let view = work.make();
        let mut place = place.borrow_mut();
        match &mut *place {
            Some(shown) => shown.change(view),
            None => *place = Some(Shown::new(view)),
        }
    })
}

impl ShownElement {
    fn new(element: Element) -> Self {
        let Element {
            tag,
            is_drawn,
            fixed,
            attrs,
            events,
            children,
            told,
        } = element;
        let node = if is_drawn {
            document().create_element_ns(Some("http://www.w3.org/2000/svg"), tag)
        } else {
            document().create_element(tag)
        };
        // The tags are the app's own, so none is refused.
        let node = node.unwrap_throw();
        for (name, value) in fixed {
            let _ = node.set_attribute(name, value);
        }
        let children: Vec<Shown> = children.into_iter().map(Shown::new).collect();
        for child in &children {
            child.place(&node, None);
        }
        let attrs = attrs.into_iter().map(|attr| ShownAttr::new(&node, attr));
        let attrs = attrs.collect();
        let events = events
            .into_iter()
            .map(|(name, handler)| ShownEvent::new(&node, name, handler))
            .collect();
        if let Some(told) = told {
            told(&node);
        }
        Self {
            node,
            tag,
            fixed,
            attrs,
            events,
            children,
        }
    }

    /// Whether it can become that element: they come from the same tags.
    fn is_like(&self, element: &Element) -> bool {
        self.tag == element.tag
            && self.fixed == element.fixed
            && self.children.len() == element.children.len()
            && self.attrs.len() == element.attrs.len()
            && self.events.len() == element.events.len()
            && (self.attrs.iter().zip(&element.attrs))
                .all(|(shown, (place, name, _))| shown.is(*place, name))
            && (self.events.iter().zip(&element.events))
                .all(|(shown, (name, _))| shown.name == *name)
    }

    fn change(&mut self, element: Element) {
        for (shown, view) in self.children.iter_mut().zip(element.children) {
            shown.change(view);
        }
        for (shown, (_, _, attr)) in self.attrs.iter_mut().zip(element.attrs) {
            shown.change(&self.node, attr);
        }
        for (shown, (_, handler)) in self.events.iter().zip(element.events) {
            shown.work.replace((Owner::current(), handler));
        }
        if let Some(told) = element.told {
            told(&self.node);
        }
    }
}

impl ShownEvent {
    fn new(node: &web_sys::Element, name: &'static str, handler: Handler) -> Self {
        let work = Rc::new(RefCell::new((Owner::current(), handler)));
        let called = work.clone();
        let listener: Box<dyn Fn(web_sys::Event)> = Box::new(move |event| {
            let (owner, handler) = called.borrow().clone();
            match owner {
                Some(owner) => owner.with(|| handler.run(event)),
                None => handler.run(event),
            }
        });
        let listener = Closure::wrap(listener);
        let _ = node.add_event_listener_with_callback(name, listener.as_ref().unchecked_ref());
        Self {
            name,
            work,
            _listener: listener,
        }
    }
}
