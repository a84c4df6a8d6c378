//! What a person does with the app, in a real browser.
//!
//! Each story is a test that opens the built site in a phone-sized Chromium with an empty profile,
//! served from a copy of its own on loopback. The stories run one after another, however many
//! threads the test runner has: two browsers on a small machine slow each other down past any time
//! limit. `sh tests/run.sh` builds the site and installs the browser before it runs them.
//!
//! - [`story`] runs one story: it sets up, looks for trouble at the end, and cleans up.
//! - [`page`] holds what a person sees and does; a story should need nothing else.
//! - [`browser`] is Chromium and its driver; [`site`] is the built site and its server.

mod browser;
mod found;
mod page;
mod site;
mod story;

mod bench;
mod cooker;
mod evenings;
mod harness;
mod learning;
mod measuring;
mod offline;
mod opening;
mod same;
mod saved;
mod updates;
