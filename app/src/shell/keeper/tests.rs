//! Nothing is lost on the way to the shelf.
