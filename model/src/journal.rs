//! What a household knows about its days: the sky, readings, meals, mishaps.
//!
//! Plain data in time order. Nothing here is computed; a doubtful entry is kept as it was
//! logged and reported beside the result that it makes doubtful.

use std::collections::BTreeMap;

use crate::cooker::Cooker;
use crate::dish::Dish;
use crate::local_time::{Day, LocalTime};
use crate::pot::{Lid, Pot};
use crate::sun::DayLog;

/// A household's log, as far as it touches one cooker.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Journal {
    /// The sky of each day that was logged.
    pub skies: BTreeMap<Day, DayLog>,
    /// Everything with an instant of its own, in time order.
    pub events: Vec<Event>,
    /// What the cooker was before it was changed, the earliest first.
    pub formerly: Vec<Formerly>,
}

/// A cooker before a change of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Formerly {
    /// When it was changed.
    pub until: LocalTime,
    /// What it was before.
    pub cooker: Cooker,
}

/// Something that happened at an instant.
#[derive(Debug, Clone, PartialEq)]
pub struct Event {
    /// When, on the kitchen clock.
    pub at: LocalTime,
    /// What happened.
    pub what: What,
}

/// The kinds of things a household logs.
#[derive(Debug, Clone, PartialEq)]
pub enum What {
    /// A thermometer in the store showed this. [°C]
    Reading {
        /// The temperature read. [°C]
        store_c: f64,
    },
    /// A pot went in.
    Meal(Meal),
    /// The cooker stood open.
    LidOpen {
        /// For how long. \[s\]
        for_s: i64,
    },
    /// A hand felt the store, or a drop of water was thrown on it.
    Felt(Felt),
    /// The heater got nothing: unplugged, a blown fuse, the panel used for something else.
    HeaterOff {
        /// For how long. \[s\]
        for_s: i64,
    },
    /// Heat came from elsewhere: the grid, a generator, a fire.
    TopUp {
        /// What reaches the store. \[W\]
        heat_w: f64,
        /// For how long. \[s\]
        for_s: i64,
    },
}

/// What a hand near the store tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Felt {
    /// The palm stays on it.
    Cold,
    /// It can't be touched.
    Hot,
}

/// One pot of food: what is in it and when it goes in and out.
#[derive(Debug, Clone, PartialEq)]
pub struct Meal {
    /// What is cooked.
    pub dish: Dish,
    /// Dry or raw food. \[kg\]
    pub food_kg: f64,
    /// Water added, 1 kg to the litre. \[kg\]
    pub water_kg: f64,
    /// Temperature of the pot and what is in it when it goes in. [°C]
    pub start_c: f64,
    /// The vessel.
    pub pot: Pot,
    /// Its lid.
    pub lid: Lid,
    /// When it came out, if it did; otherwise it stays until it is eaten.
    pub out: Option<LocalTime>,
    /// When it is to be eaten.
    pub eat_at: LocalTime,
    /// What was seen of it.
    pub outcome: Outcome,
}

/// What a household saw of a meal; each part may be unknown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Outcome {
    /// When it boiled, if it did.
    pub boiled_at: Option<LocalTime>,
    /// It was looked at then and had not boiled.
    pub not_boiled_by: Option<LocalTime>,
    /// When the food was soft.
    pub done_at: Option<LocalTime>,
    /// It was tasted then and was not done.
    pub not_done_by: Option<LocalTime>,
}

impl Journal {
    /// The first day anything was logged on.
    pub fn first_day(&self) -> Option<Day> {
        let sky = self.skies.keys().next().copied();
        let event = self.events.iter().map(|event| event.at.day()).min();
        match (sky, event) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        }
    }
}

impl Meal {
    /// When the pot is out of the cooker again.
    pub fn leaves_at(&self) -> LocalTime {
        self.out.unwrap_or(self.eat_at)
    }
}
