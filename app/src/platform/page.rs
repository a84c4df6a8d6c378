//! The page itself: its address, its language, its looks, its coming and going.

use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Event, FocusOptions, HtmlElement, KeyboardEvent, VisibilityState, Window};

/// Light or dark, as the style sheets know it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PageTheme {
    /// As the phone has it.
    Automatic,
    /// Light.
    Light,
    /// Dark.
    Dark,
}

/// The part of the address after and with its `#`; empty where there is none.
pub fn hash() -> String {
    web_sys::window()
        .and_then(|window| window.location().hash().ok())
        .unwrap_or_default()
}

/// Goes to the address after the `#`, as a step that 'back' takes back.
pub fn go_to_hash(hash: &str) {
    if let Some(window) = web_sys::window() {
        // A browser refuses only what is no address; ours all are.
        let _ = window.location().set_hash(hash);
    }
}

/// Puts another address in place of this one, leaving no step to take back.
pub fn replace_hash(hash: &str) {
    if let Some(window) = web_sys::window() {
        // As above.
        let _ = window.location().replace(hash);
    }
}

/// Calls `on_hash` with the new address whenever it changes.
pub fn watch_hash(on_hash: impl Fn(String) + 'static) {
    listen("hashchange", move |_| on_hash(hash()));
}

/// Calls `on_leave` whenever the page may be about to go: hidden, closed, or put to sleep. It can
/// come several times, and is the last moment that can be counted on.
pub fn watch_leaving(on_leave: impl Fn() + Clone + 'static) {
    let on_hide = on_leave.clone();
    listen("pagehide", move |_| on_hide());
    listen_on_document("visibilitychange", move |_| {
        if is_hidden() {
            on_leave();
        }
    });
}

/// Calls `on_return` whenever the page is shown again.
pub fn watch_return(on_return: impl Fn() + Clone + 'static) {
    let on_show = on_return.clone();
    listen("pageshow", move |_| on_show());
    listen_on_document("visibilitychange", move |_| {
        if !is_hidden() {
            on_return();
        }
    });
}

/// Says the page's language and direction to the browser and to screen readers.
pub fn set_language(tag: &str, direction: &str) {
    set_root_attribute("lang", Some(tag));
    set_root_attribute("dir", Some(direction));
}

/// Sets the looks. The style sheets read `data-theme`; without it they follow the phone.
pub fn set_theme(theme: PageTheme) {
    let value = match theme {
        PageTheme::Automatic => None,
        PageTheme::Light => Some("light"),
        PageTheme::Dark => Some("dark"),
    };
    set_root_attribute("data-theme", value);
}

/// Sets the title in the browser's bar.
pub fn set_title(title: &str) {
    if let Some(document) = web_sys::window().and_then(|window| window.document()) {
        document.set_title(title);
    }
}

/// Whether nothing has the focus: what had it has gone from the page.
pub fn focus_is_lost() -> bool {
    let document = web_sys::window().and_then(|window| window.document());
    document.is_some_and(|document| {
        let focused = document.active_element();
        focused.is_none_or(|element| Some(&element) == document.body().as_deref())
    })
}

/// Calls `on_undo` when the keys are pressed that take something back everywhere, unless a field
/// has them for itself.
pub fn watch_undo(on_undo: impl Fn() + 'static) {
    listen("keydown", move |event| {
        let is_undo = event.dyn_ref::<KeyboardEvent>().is_some_and(|event| {
            (event.ctrl_key() || event.meta_key()) && !event.shift_key() && event.key() == "z"
        });
        let is_typing = find(":is(input, select, textarea):focus").is_some();
        if is_undo && !is_typing {
            on_undo();
        }
    });
}

/// Whether a button of the note that comes and goes has the focus, or a pointer over it.
pub fn toast_has_focus() -> bool {
    find(".toast:is(:focus-within, :hover)").is_some()
}

/// Moves the focus to the first element that a selector finds, without scrolling; whether there
/// is one.
pub fn focus_quietly(selector: &str) -> bool {
    let options = FocusOptions::new();
    options.set_prevent_scroll(true);
    let found = find(selector);
    if let Some(element) = &found {
        // An element that can't take the focus leaves it where it is.
        let _ = element.focus_with_options(&options);
    }
    found.is_some()
}

/// Moves the focus to the first element that a selector finds, and scrolls there; whether there
/// is one. The fold that it is in is opened.
pub fn focus_first(selector: &str) -> bool {
    let found = find(selector);
    if let Some(element) = &found {
        if let Ok(Some(fold)) = element.closest("details") {
            // Our names of attributes can all be set.
            let _ = fold.set_attribute("open", "");
        }
        // As above.
        let _ = element.focus();
    }
    found.is_some()
}

fn find(selector: &str) -> Option<HtmlElement> {
    let document = web_sys::window()?.document()?;
    // Our selectors can all be read.
    document.query_selector(selector).ok()??.dyn_into().ok()
}

/// Moves the focus to an element, so that a screen reader goes on there; scrolls to the page's top.
pub fn focus_on(element_id: &str) {
    let Some(window) = web_sys::window() else {
        return;
    };
    let element = window
        .document()
        .and_then(|document| document.get_element_by_id(element_id));
    if let Some(element) = element.and_then(|element| element.dyn_into::<HtmlElement>().ok()) {
        // An element that can't take the focus leaves it where it is.
        let _ = element.focus();
    }
    // The focus scrolls past what stands above the element; that has to be seen, too.
    window.scroll_to_with_x_and_y(0.0, 0.0);
}

/// Whether the person asked the device for less motion.
pub fn wants_less_motion() -> bool {
    web_sys::window()
        .and_then(|window| {
            window
                .match_media("(prefers-reduced-motion: reduce)")
                .ok()
                .flatten()
        })
        .is_some_and(|query| query.matches())
}

/// Opens the browser's own window for printing.
///
/// # Errors
///
/// The browser's words where it has none.
pub fn print() -> Result<(), String> {
    let window = web_sys::window().ok_or_else(String::new)?;
    window.print().map_err(|error| super::words_of(&error))
}

/// Loads the page anew.
pub fn reload() {
    if let Some(window) = web_sys::window() {
        // Nothing can be done for a page that can't be loaded.
        let _ = window.location().reload();
    }
}

/// Listens on the window for as long as the page lives.
pub(super) fn listen(event: &str, on_event: impl Fn(Event) + 'static) {
    if let Some(window) = web_sys::window() {
        add(&window, event, on_event);
    }
}

fn listen_on_document(event: &str, on_event: impl Fn(Event) + 'static) {
    if let Some(document) = web_sys::window().and_then(|window: Window| window.document()) {
        add(&document, event, on_event);
    }
}

fn add(target: &web_sys::EventTarget, event: &str, on_event: impl Fn(Event) + 'static) {
    let closure = Closure::<dyn Fn(Event)>::new(on_event);
    // Adding a listener fails only for a missing callback.
    let _ = target.add_event_listener_with_callback(event, closure.as_ref().unchecked_ref());
    closure.forget();
}

/// Whether nobody can see the page: another one is in front, or the screen is off.
pub fn is_hidden() -> bool {
    web_sys::window()
        .and_then(|window| window.document())
        .is_some_and(|document| document.visibility_state() == VisibilityState::Hidden)
}

fn set_root_attribute(name: &str, value: Option<&str>) {
    let root = web_sys::window()
        .and_then(|window| window.document())
        .and_then(|document| document.document_element());
    if let Some(root) = root {
        // The names are ours and valid, and the attribute may be missing already.
        let _ = match value {
            Some(value) => root.set_attribute(name, value),
            None => root.remove_attribute(name),
        };
    }
}
