//! Texts of what limits a build.

/// Texts of what limits a build.
#[derive(Debug)]
pub struct Limits {
    /// Heads it.
    pub heading: &'static str,
    /// How it is found.
    pub how: &'static str,
    /// While it is worked out.
    pub working: &'static str,
    /// The heat it gets: litres as built, with twice the sun.
    pub sun: fn(now: &str, better: &str) -> String,
    /// The mass of the store: litres as built, with twice the mass.
    pub store: fn(now: &str, better: &str) -> String,
    /// The contact between store and pot.
    pub contact: fn(now: &str, better: &str) -> String,
    /// The jacket.
    pub jacket: fn(now: &str, better: &str) -> String,
    /// Only the size of the pot.
    pub pot: fn(now: &str) -> String,
    /// No one part more than the others.
    pub even: fn(now: &str) -> String,
    /// It boils nothing, whatever is doubled.
    pub nothing: &'static str,
    /// Stands for no water at all.
    pub none: &'static str,
    /// As built.
    pub as_built: &'static str,
    /// Twice the sun.
    pub twice_sun: &'static str,
    /// Twice the store.
    pub twice_store: &'static str,
    /// Twice the contact.
    pub twice_contact: &'static str,
    /// Half the loss.
    pub half_loss: &'static str,
}
