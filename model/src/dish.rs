//! What is cooked.

use serde::{Deserialize, Serialize};

/// A dish. The serialised names are kept in saved data: never rename one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "to be replaced by the table")]
pub enum Dish {
    WhiteRice,
    BrownRice,
    CommonBeansSoaked,
    CommonBeansUnsoaked,
    RedKidneyBeans,
    BlackBeans,
    Chickpeas,
    Lentils,
    SplitPeas,
    MaizePorridge,
    Potatoes,
    Cassava,
    Pasta,
    MeatStew,
    VegetableStew,
    Eggs,
    Milk,
    TeaWater,
}
