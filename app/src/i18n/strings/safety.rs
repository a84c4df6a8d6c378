//! Texts of the cautions.

/// Texts of the cautions.
#[derive(Debug)]
pub struct Safety {
    /// Head of the page.
    pub title: &'static str,
    /// Word of a caution that can maim, kill or set the house alight.
    pub danger: &'static str,
    /// Burns by hot metal.
    pub hot_metal: &'static str,
    /// Fire by a hot store.
    pub fire: &'static str,
    /// Molten nitrate salt.
    pub nitrate: &'static str,
    /// Sealed vessels.
    pub pressure: &'static str,
    /// Panels are live.
    pub panel_live: &'static str,
    /// Wires, fuses and who may connect them.
    pub wiring: &'static str,
    /// Dried beans.
    pub beans: &'static str,
    /// Meat.
    pub meat: &'static str,
    /// Keeping cooked food.
    pub holding: &'static str,
    /// Who decides.
    pub cook_decides: &'static str,
}
