//! What a person does, and what becomes of it.
