//! The bench's worker, seen from the page: a program of its own that runs beside it.
//!
//! It is started when it is first asked something, and there is one of it. When it can't be started
//! or stops, whoever waits for an answer is told, and the next question starts it anew.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use js_sys::{Array, ArrayBuffer, Function, Promise};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{ErrorEvent, Event, File, HtmlInputElement, MessageEvent, Worker};

/// Its address is taken from that of the page, so that the app works in any folder of a host.
const SCRIPT: &str = "./bench-worker.js";

/// Larger than any logger's file that is of use here: some million rows.
const LARGEST_FILE_BYTES: f64 = 100e6;

/// Why there is no answer.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum BenchError {
    /// It can't be started; in the browser's words, where it has any.
    #[error("the worker does not start: {0}")]
    NotStarted(String),
    /// It stopped before it answered.
    #[error("the worker stopped")]
    Stopped,
}

/// What goes along with a question.
#[derive(Debug, Clone)]
pub enum Luggage {
    /// Nothing.
    None,
    /// A text.
    Text(String),
    /// A file. The page fetches its bytes, which it need not wait for, and hands them over without a
    /// copy; the worker makes a text of them.
    File(File),
}

/// The file picked in a file field, from that field's change event. The field is emptied, so that
/// picking the same file again is a change again.
pub fn picked(event: &Event) -> Option<File> {
    let field = event.target()?.dyn_into::<HtmlInputElement>().ok()?;
    let file = field.files()?.get(0)?;
    field.set_value("");
    (file.size() <= LARGEST_FILE_BYTES).then_some(file)
}

struct Beside {
    worker: Worker,
    is_ready: Cell<bool>,
    /// Questions from before it was ready.
    queue: RefCell<Vec<Array>>,
    /// Those who wait, by the number of their question.
    waiting: RefCell<Vec<(f64, Function)>>,
}

thread_local! {
    static BESIDE: RefCell<Option<Rc<Beside>>> = const { RefCell::new(None) };
    static NEXT: Cell<f64> = const { Cell::new(0.0) };
}

/// Asks the worker and waits for its answer.
///
/// # Errors
///
/// [`BenchError`].
pub async fn ask(message: &str, luggage: Luggage) -> Result<String, BenchError> {
    let beside = beside()?;
    let number = NEXT.with(|next| next.replace(next.get() + 1.0));
    let question = Array::of2(&number.into(), &message.into());
    match luggage {
        Luggage::None => {}
        Luggage::Text(text) => {
            question.push(&text.into());
        }
        Luggage::File(file) => {
            // A file that can't be read comes without bytes, and the worker says so.
            if let Ok(bytes) = JsFuture::from(file.array_buffer()).await {
                question.push(&bytes);
                question.push(&file.name().into());
            }
        }
    }
    let answer = Promise::new(&mut |resolve, _| {
        beside.waiting.borrow_mut().push((number, resolve));
    });
    if beside.is_ready.get() {
        beside.post(&question);
    } else {
        beside.queue.borrow_mut().push(question);
    }
    // The promise is only ever fulfilled: with a text, or with why there is none.
    let answer = JsFuture::from(answer).await.unwrap_or(JsValue::NULL);
    match answer.as_string() {
        Some(text) => Ok(text),
        None => Err(match answer.dyn_into::<Array>() {
            Ok(why) => BenchError::NotStarted(why.get(0).as_string().unwrap_or_default()),
            Err(_) => BenchError::Stopped,
        }),
    }
}

fn beside() -> Result<Rc<Beside>, BenchError> {
    if let Some(beside) = BESIDE.with(|beside| beside.borrow().clone()) {
        return Ok(beside);
    }
    let worker =
        Worker::new(SCRIPT).map_err(|error| BenchError::NotStarted(super::words_of(&error)))?;
    let beside = Rc::new(Beside {
        worker,
        is_ready: Cell::new(false),
        queue: RefCell::default(),
        waiting: RefCell::default(),
    });
    beside.listen();
    BESIDE.with(|place| place.replace(Some(Rc::clone(&beside))));
    Ok(beside)
}

impl Beside {
    fn listen(self: &Rc<Self>) {
        let beside = Rc::clone(self);
        let on_message = move |event: MessageEvent| beside.take(&event.data());
        let on_message = Closure::<dyn Fn(MessageEvent)>::new(on_message).into_js_value();
        self.worker.set_onmessage(Some(on_message.unchecked_ref()));
        let beside = Rc::clone(self);
        let on_error = move |event: Event| {
            // A script that is not there has no words.
            let error = event.dyn_ref::<ErrorEvent>();
            beside.end(&error.map(ErrorEvent::message).unwrap_or_default());
        };
        let on_error = Closure::<dyn Fn(Event)>::new(on_error).into_js_value();
        self.worker.set_onerror(Some(on_error.unchecked_ref()));
    }

    /// An answer with its number, `"ready"`, or why it can't get ready.
    fn take(&self, message: &JsValue) {
        let Some(parts) = message.dyn_ref::<Array>() else {
            self.is_ready.set(true);
            for question in self.queue.take() {
                self.post(&question);
            }
            return;
        };
        let Some(number) = parts.get(0).as_f64() else {
            self.end(&parts.get(1).as_string().unwrap_or_default());
            return;
        };
        let mut waiting = self.waiting.borrow_mut();
        let place = waiting.iter().position(|(of, _)| (of - number).abs() < 0.5);
        if let Some(place) = place {
            let (_, resolve) = waiting.swap_remove(place);
            drop(waiting);
            answer(&resolve, &parts.get(1));
        }
    }

    fn post(&self, question: &Array) {
        let bytes = question.get(2).dyn_into::<ArrayBuffer>();
        let handed_over = bytes.map_or_else(|_| Array::new(), |bytes| Array::of1(&bytes));
        let sent = self
            .worker
            .post_message_with_transfer(question, &handed_over);
        if sent.is_err() {
            self.end("");
        }
    }

    /// Tells all who wait that there will be no answer, and lets go of it.
    fn end(&self, why: &str) {
        let why = if self.is_ready.get() {
            JsValue::NULL
        } else {
            Array::of1(&why.into()).into()
        };
        self.worker.terminate();
        BESIDE.with(|place| place.replace(None));
        for (_, resolve) in self.waiting.take() {
            answer(&resolve, &why);
        }
    }
}

fn answer(resolve: &Function, value: &JsValue) {
    // A promise takes any value.
    let _ = resolve.call1(&JsValue::UNDEFINED, value);
}
