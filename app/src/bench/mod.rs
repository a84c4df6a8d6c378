//! The bench's worker: what it is asked, what it answers, and how it works that out.
//!
//! Reading a long file and fitting a cooker take longer than a tap may wait, and their code is as
//! large as all screens. So both are a program of their own, `src/bin/bench.rs`, which the browser
//! loads when the room Bench first needs it and runs beside the page. Page and worker talk in
//! messages ([`ask`], [`answer`]); an answer that is to be read comes as a [`sheet`], finished words
//! and figures that the page only draws. [`desk`] and what lies under it are linked into the worker
//! alone.

pub mod answer;
pub mod ask;
pub mod desk;
pub mod sheet;
pub mod work;
