//! What the browser gives us. Nothing outside this room touches the browser.

pub mod worker;
