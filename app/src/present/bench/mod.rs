//! What the room Bench shows.

pub mod list;
