//! What attributes hold.

use std::borrow::Cow;
use std::cell::RefCell;
use std::rc::Rc;

use leptos::prelude::RenderEffect;
use wasm_bindgen::JsValue;

use crate::reactive::work::Make;
use crate::reactive::{Memo, Signal};

/// The text of an attribute; none where it is not there.
pub type Value = Option<Cow<'static, str>>;

/// Something that an attribute can hold.
pub trait AttrValue {
    /// As its text.
    fn value(self) -> Value;
}

impl AttrValue for &'static str {
    fn value(self) -> Value {
        Some(Cow::Borrowed(self))
    }
}

impl AttrValue for String {
    fn value(self) -> Value {
        Some(Cow::Owned(self))
    }
}

impl AttrValue for bool {
    fn value(self) -> Value {
        self.then_some(Cow::Borrowed(""))
    }
}

impl<T: AttrValue> AttrValue for Option<T> {
    fn value(self) -> Value {
        self.and_then(T::value)
    }
}

/// What makes the text of an attribute anew.
pub struct Followed(Box<dyn Make<Value>>);

/// What an attribute holds, fixed or followed.
pub enum Attr {
    /// It stays.
    Fixed(Value),
    /// It is worked out anew whenever a signal that it reads changes.
    Followed(Followed),
}

/// Something that an attribute can hold, fixed or followed.
pub trait IntoAttr {
    /// As what it holds.
    fn into_attr(self) -> Attr;
}

impl IntoAttr for &'static str {
    fn into_attr(self) -> Attr {
        Attr::Fixed(self.value())
    }
}

impl IntoAttr for String {
    fn into_attr(self) -> Attr {
        Attr::Fixed(self.value())
    }
}

impl IntoAttr for bool {
    fn into_attr(self) -> Attr {
        Attr::Fixed(self.value())
    }
}

impl<T: AttrValue> IntoAttr for Option<T> {
    fn into_attr(self) -> Attr {
        Attr::Fixed(self.value())
    }
}

impl<F, T> IntoAttr for F
where
    F: FnMut() -> T + 'static,
    T: AttrValue,
{
    fn into_attr(self) -> Attr {
        Attr::Followed(Followed(Box::new(Says(self))))
    }
}

impl<T: AttrValue + Clone + Send + Sync + 'static> IntoAttr for Signal<T> {
    fn into_attr(self) -> Attr {
        Attr::Followed(Followed(Box::new(SaysSignal(self))))
    }
}

impl<T: AttrValue + Clone + Send + Sync + 'static> IntoAttr for Memo<T> {
    fn into_attr(self) -> Attr {
        Signal::<T>::from(self).into_attr()
    }
}

/// Makes what a closure says.
struct Says<F>(F);

impl<F, T> Make<Value> for Says<F>
where
    F: FnMut() -> T,
    T: AttrValue,
{
    fn make(&mut self) -> Value {
        self.0().value()
    }
}

/// Makes what a signal holds.
struct SaysSignal<T>(Signal<T>);

impl<T: AttrValue + Clone + Send + Sync + 'static> Make<Value> for SaysSignal<T> {
    fn make(&mut self) -> Value {
        self.0.get().value()
    }
}

/// Where a value goes.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Place {
    Attribute,
    Property,
}

/// An attribute of an element in the page.
pub(super) struct ShownAttr {
    place: Place,
    name: &'static str,
    /// What was put there last; none before the first time.
    last: Rc<RefCell<Option<Value>>>,
    effect: Option<RenderEffect<()>>,
}

impl ShownAttr {
    pub(super) fn new(
        element: &web_sys::Element,
        (place, name, attr): (Place, &'static str, Attr),
    ) -> Self {
        let mut shown = Self {
            place,
            name,
            last: Rc::new(RefCell::new(None)),
            effect: None,
        };
        shown.change(element, attr);
        shown
    }

    /// Whether it is the attribute of that name.
    pub(super) fn is(&self, place: Place, name: &str) -> bool {
        self.place == place && self.name == name
    }

    /// Holds something else from now on.
    pub(super) fn change(&mut self, element: &web_sys::Element, attr: Attr) {
        let Self { place, name, .. } = *self;
        self.effect = match attr {
            Attr::Fixed(value) => {
                put(element, place, name, value, &self.last);
                None
            }
            Attr::Followed(Followed(mut work)) => {
                let (element, last) = (element.clone(), self.last.clone());
                Some(RenderEffect::new(move |_| {
                    put(&element, place, name, work.make(), &last);
                }))
            }
        };
    }
}

/// Touches an attribute only where it is another. What a field holds is looked at each time, since
/// the person may have changed it meanwhile; put there though it is the same, it would have the browser
/// lay out the field anew.
fn put(
    element: &web_sys::Element,
    place: Place,
    name: &str,
    value: Value,
    last: &RefCell<Option<Value>>,
) {
    if place == Place::Attribute && last.borrow().as_ref() == Some(&value) {
        return;
    }
    // All names and elements are our own, so none is refused.
    match (place, &value) {
        (Place::Attribute, Some(text)) => {
            let _ = element.set_attribute(name, text);
        }
        (Place::Attribute, None) => {
            let _ = element.remove_attribute(name);
        }
        (Place::Property, value) => {
            let held = if name == "checked" {
                JsValue::from_bool(value.is_some())
            } else {
                JsValue::from_str(value.as_deref().unwrap_or_default())
            };
            let name = JsValue::from_str(name);
            if js_sys::Reflect::get(element, &name).as_ref() != Ok(&held) {
                let _ = js_sys::Reflect::set(element, &name, &held);
            }
        }
    }
    last.replace(Some(value));
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fixed(value: impl IntoAttr) -> Value {
        match value.into_attr() {
            Attr::Fixed(value) => value,
            Attr::Followed(Followed(mut work)) => work.make(),
        }
    }

    #[test]
    fn an_attribute_that_is_false_or_none_is_not_there() {
        assert_eq!(fixed(false), None);
        assert_eq!(fixed(None::<String>), None);
        assert_eq!(fixed(|| None::<&'static str>), None);
        assert_eq!(fixed(true).as_deref(), Some(""));
        assert_eq!(fixed(Some("page")).as_deref(), Some("page"));
        assert_eq!(fixed(|| "page".to_owned()).as_deref(), Some("page"));
    }
}
