//! The store, without a browser.
