//! What is written is read back.
