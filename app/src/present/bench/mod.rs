//! What the room Bench shows.

pub mod compare;
pub mod figure;
pub mod guide;
pub mod list;
pub mod live;
pub mod results;
pub mod timer;
pub mod typing;
