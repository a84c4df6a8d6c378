//! Texts of the cautions.

/// Texts of the cautions.
#[derive(Debug)]
pub struct Safety {
    /// Head of the page.
    pub title: &'static str,
    /// What stands above all cautions: local codes, licensed persons.
    pub first: &'static str,
    /// Word of a caution that can maim, kill or set the house alight.
    pub danger: &'static str,
    /// Word of a caution that can hurt.
    pub warning: &'static str,
    /// Word of what is good to know.
    pub note: &'static str,
    /// Head: heat and fire.
    pub group_heat: &'static str,
    /// Head: molten salt, and what must not come near it.
    pub group_salt: &'static str,
    /// Head: closed vessels.
    pub group_pressure: &'static str,
    /// Head: panels, wires, fuses.
    pub group_electricity: &'static str,
    /// Head: beans and other food.
    pub group_food: &'static str,
    /// Burns by hot metal.
    pub hot_metal: &'static str,
    /// Fire by a hot store.
    pub fire: &'static str,
    /// Steam, and what boils over.
    pub steam: &'static str,
    /// What a burn needs at once.
    pub burn_help: &'static str,
    /// Molten nitrate salt.
    pub nitrate: &'static str,
    /// What to do when nitrate salt is spilt or burns.
    pub nitrate_trouble: &'static str,
    /// Sealed vessels.
    pub pressure: &'static str,
    /// Panels are live.
    pub panel_live: &'static str,
    /// Wires, fuses and who may connect them.
    pub wiring: &'static str,
    /// Where a fuse and a switch sit, and which.
    pub fuse: &'static str,
    /// Dried beans.
    pub beans: &'static str,
    /// Meat.
    pub meat: &'static str,
    /// Keeping cooked food.
    pub holding: &'static str,
    /// Who decides.
    pub cook_decides: &'static str,
}
