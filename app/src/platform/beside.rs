//! The bench's worker, seen from inside: what the page asks, and the way back.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Array, ArrayBuffer, Promise, Uint8Array};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, future_to_promise};
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};

/// A question as it comes.
#[derive(Debug, Clone)]
pub struct Question {
    /// Its words.
    pub message: String,
    /// A text, or the bytes of a file.
    luggage: JsValue,
    /// The file's name.
    name: String,
}

/// Answers each question of the page by `work`, one after another in the order in which they come, for
/// as long as the page wants: what is to be kept is there for whoever asks next.
pub fn serve<F>(work: impl Fn(Question) -> F + 'static)
where
    F: Future<Output = String> + 'static,
{
    let Ok(scope) = js_sys::global().dyn_into::<DedicatedWorkerGlobalScope>() else {
        return;
    };
    let work = Rc::new(work);
    let page = scope.clone();
    let last = RefCell::new(Promise::resolve(&JsValue::UNDEFINED));
    let on_message = move |event: MessageEvent| {
        let parts = Array::from(&event.data());
        let question = Question {
            message: parts.get(1).as_string().unwrap_or_default(),
            luggage: parts.get(2),
            name: parts.get(3).as_string().unwrap_or_default(),
        };
        let (work, page, number) = (Rc::clone(&work), page.clone(), parts.get(0));
        let before = last.borrow().clone();
        let turn = future_to_promise(async move {
            // Whatever became of it, it is over.
            let _ = JsFuture::from(before).await;
            let answer = work(question).await;
            post(&page, &Array::of2(&number, &answer.into()));
            Ok(JsValue::UNDEFINED)
        });
        drop(last.replace(turn));
    };
    let on_message = Closure::<dyn Fn(MessageEvent)>::new(on_message).into_js_value();
    scope.set_onmessage(Some(on_message.unchecked_ref()));
    post(&scope, &JsValue::from_str("ready"));
}

fn post(page: &DedicatedWorkerGlobalScope, message: &JsValue) {
    // Only what can't be copied is refused, and texts and numbers can.
    let _ = page.post_message(message);
}

impl Question {
    /// Name and text of what came along, where anything did.
    pub fn text(&self) -> Option<(String, String)> {
        let text = match self.luggage.as_string() {
            Some(text) => text,
            None => decoded(Uint8Array::new(self.luggage.dyn_ref::<ArrayBuffer>()?).to_vec()),
        };
        Some((self.name.clone(), text))
    }
}

/// As its byte order mark says, else UTF-8; what is neither has its letters replaced, its numbers not.
fn decoded(bytes: Vec<u8>) -> String {
    let units = |unit: fn([u8; 2]) -> u16| -> Vec<u16> {
        let pairs = bytes.get(2..).unwrap_or_default().chunks_exact(2);
        let pair = |pair: &[u8]| pair.try_into().map(unit).unwrap_or_default();
        pairs.map(pair).collect()
    };
    match bytes.get(..2) {
        Some([0xff, 0xfe]) => String::from_utf16_lossy(&units(u16::from_le_bytes)),
        Some([0xfe, 0xff]) => String::from_utf16_lossy(&units(u16::from_be_bytes)),
        _ => String::from_utf8(bytes)
            .unwrap_or_else(|error| String::from_utf8_lossy(error.as_bytes()).into_owned()),
    }
}

#[cfg(test)]
mod tests {
    use super::decoded;

    #[test]
    fn texts_of_other_encodings_are_read() {
        assert_eq!(decoded(b"time;store".to_vec()), "time;store");
        assert_eq!(decoded(vec![0xff, 0xfe, b'1', 0, b';', 0]), "1;");
        assert_eq!(decoded(vec![0xfe, 0xff, 0, b'1', 0, b';']), "1;");
        // A degree sign in Latin-1, which loggers write.
        assert_eq!(decoded(b"store (\xb0C);1".to_vec()), "store (\u{fffd}C);1");
    }
}
