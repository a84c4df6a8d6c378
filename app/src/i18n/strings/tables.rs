//! Names of the rows of the tables: media, pots, dishes and the like.
//!
//! Each is a function over the table's own type, so that a row without a name does not compile.

use model::dish::Dish;
use model::insulation::Insulation;
use model::jacket::LidFit;
use model::media::Medium;
use model::pot::{Lid, PotKind, Wrap};
use model::seat::Seat;
use model::sun::Sky;

/// Names of the rows of the tables, as they stand in a list: lower case, no article.
#[derive(Debug)]
pub struct Tables {
    /// Name of a storage medium.
    pub medium: fn(Medium) -> &'static str,
    /// Name of an insulation.
    pub insulation: fn(Insulation) -> &'static str,
    /// How the opening of the jacket is closed.
    pub lid_fit: fn(LidFit) -> &'static str,
    /// How the pot meets the store.
    pub seat: fn(Seat) -> &'static str,
    /// What a pot is made of.
    pub pot_kind: fn(PotKind) -> &'static str,
    /// What stands round the pot.
    pub wrap: fn(Wrap) -> &'static str,
    /// What is on the pot.
    pub pot_lid: fn(Lid) -> &'static str,
    /// Name of a dish.
    pub dish: fn(Dish) -> &'static str,
    /// What a person sees on looking up.
    pub sky: fn(Sky) -> &'static str,
}
