//! Texts of the cooker.

pub mod follows;
pub mod learned;
pub mod limits;
pub mod parts;
pub mod place;
pub mod ways;

/// Texts of the cooker.
#[derive(Debug)]
pub struct Cooker {
    /// Head of the screen.
    pub title: &'static str,
    /// Name of the copy of a cooker.
    pub copy_name: fn(name: &str) -> String,
    /// The list of the household's cookers, and what is done with one as a whole.
    pub list: List,
    /// What follows from a build.
    pub follows: follows::Follows,
    /// What limits it.
    pub limits: limits::Limits,
    /// What was learned about it.
    pub learned: learned::Learned,
    /// Its parts were changed.
    pub rebuilt: Rebuilt,
    /// Its parts, as a form.
    pub parts: parts::Parts,
    /// Where the household cooks.
    pub place: place::Place,
    /// The parts that not every cooker has, and what wears.
    pub ways: ways::Ways,
}

/// Its parts were changed.
#[derive(Debug)]
pub struct Rebuilt {
    /// Question: from when on it is like this.
    pub question: &'static str,
    /// What hangs on the answer.
    pub why: &'static str,
    /// Button: it was another cooker before.
    pub from_now: &'static str,
    /// Button: it was put right.
    pub always: &'static str,
    /// What it was until then.
    pub until: fn(when: &str, made_of: &str) -> String,
}

/// The list of cookers, and what is done with one as a whole.
#[derive(Debug)]
pub struct List {
    /// Under the head of the screen: how many cookers there are.
    pub count: fn(n: usize) -> String,
    /// Heads the list.
    pub heading: &'static str,
    /// Mark of the cooker that is cooked on.
    pub in_use: &'static str,
    /// Mark of a cooker that is not.
    pub not_in_use: &'static str,
    /// A cooker in a few words: its media with their masses, and the watts of its panels.
    pub made_of: fn(media: &str, watts: &str) -> String,
    /// A medium with its mass: '7 kg of aluminium'.
    pub charge: fn(mass: &str, medium: &str) -> String,
    /// What sets it apart from another of the same: it has fins within its medium.
    pub fins: &'static str,
    /// It has metal foam there.
    pub foam: &'static str,
    /// It has neither.
    pub no_metal: &'static str,
    /// What its jacket loses was measured.
    pub jacket_measured: &'static str,
    /// The pot used most: what it is made of, and its litres.
    pub pot: fn(kind: &str, litres: &str) -> String,
    /// Where its thermostat cuts out.
    pub cutout: fn(degrees: &str) -> String,
    /// Its panels are wired straight to the heater.
    pub straight: &'static str,
    /// They are not.
    pub by_tracker: &'static str,
    /// Resistance of its heater.
    pub heater: fn(ohms: &str) -> String,
    /// Thickness of its store.
    pub depth: fn(depth: &str) -> String,
    /// Leads from another room to the cooker that it answers for, by its name.
    pub on_which: fn(name: &str) -> String,
    /// Between the parts of a list of two or more.
    pub and: fn(first: &str, last: &str) -> String,
    /// Button: cook on this one.
    pub use_this: &'static str,
    /// Opens the questions for another cooker.
    pub add: &'static str,
    /// Question: which of the usual ways of building is nearest.
    pub add_how: &'static str,
    /// Question: rated power of all panels together.
    pub add_watts: &'static str,
    /// What happens after adding.
    pub add_note: &'static str,
    /// Label of the name.
    pub name: &'static str,
    /// Button: a copy of this one.
    pub copy: &'static str,
    /// What a copy is good for.
    pub copy_note: &'static str,
    /// Button: erase this one.
    pub erase: &'static str,
    /// Leads back to the list.
    pub all: &'static str,
    /// The cooker of the address is not there.
    pub gone: &'static str,
    /// Heads name, copy and erase.
    pub manage: &'static str,
}
