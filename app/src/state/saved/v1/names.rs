//! The names of table rows and choices. Frozen, whatever the rows are called elsewhere.

use model::dish::Dish;
use model::insulation::Insulation;
use model::jacket::LidFit;
use model::journal::Felt;
use model::media::Medium;
use model::pot::{Lid, PotKind, PotSize, Wrap};
use model::seat::Seat;

use crate::state::document::Whose;
use crate::state::saved::shape::names;
use crate::state::settings::{Degrees, Theme};

names!(Whose {
    Own: "own",
    Example: "example",
});

names!(Theme {
    Automatic: "automatic",
    Light: "light",
    Dark: "dark",
});

names!(Felt {
    Cold: "cold",
    Hot: "hot",
});

names!(Degrees {
    Celsius: "celsius",
    Fahrenheit: "fahrenheit",
});

names!(Medium {
    Aluminium: "aluminium",
    CastIron: "cast_iron",
    MildSteel: "mild_steel",
    Copper: "copper",
    Soapstone: "soapstone",
    Granite: "granite",
    Basalt: "basalt",
    DrySand: "dry_sand",
    Concrete: "concrete",
    Firebrick: "firebrick",
    Erythritol: "erythritol",
    Mannitol: "mannitol",
    AdipicAcid: "adipic_acid",
    MagnesiumChlorideHexahydrate: "magnesium_chloride_hexahydrate",
    Hdpe: "hdpe",
    SodiumNitrate: "sodium_nitrate",
    PotassiumNitrate: "potassium_nitrate",
    SodiumPotassiumNitrate: "sodium_potassium_nitrate",
    TernaryNitrateNitrite: "ternary_nitrate_nitrite",
    VegetableOil: "vegetable_oil",
});

names!(Insulation {
    GlassWool: "glass_wool",
    RockWool: "rock_wool",
    Perlite: "perlite",
    Vermiculite: "vermiculite",
    CalciumSilicate: "calcium_silicate",
    CeramicFibre: "ceramic_fibre",
    RiceHusk: "rice_husk",
    Straw: "straw",
    Wool: "wool",
    AerogelBlanket: "aerogel_blanket",
});

names!(Dish {
    WhiteRice: "white_rice",
    BrownRice: "brown_rice",
    CommonBeansSoaked: "common_beans_soaked",
    CommonBeansUnsoaked: "common_beans_unsoaked",
    RedKidneyBeansSoaked: "red_kidney_beans_soaked",
    BlackBeansSoaked: "black_beans_soaked",
    ChickpeasSoaked: "chickpeas_soaked",
    Lentils: "lentils",
    SplitPeas: "split_peas",
    MaizePorridge: "maize_porridge",
    Potatoes: "potatoes",
    Cassava: "cassava",
    Pasta: "pasta",
    MeatStew: "meat_stew",
    VegetableStew: "vegetable_stew",
    Eggs: "eggs",
    Milk: "milk",
    TeaWater: "tea_water",
});

names!(Seat {
    MachinedClamped: "machined_clamped",
    DryFlat: "dry_flat",
    DryOrdinary: "dry_ordinary",
    DryWarped: "dry_warped",
    BadlyWarped: "badly_warped",
    OilFilm: "oil_film",
    Sleeve: "sleeve",
    SunkInMelt: "sunk_in_melt",
    RadiantGap: "radiant_gap",
});

names!(LidFit {
    Plug: "plug",
    Ordinary: "ordinary",
    Leaky: "leaky",
});

names!(PotKind {
    ThinAluminium: "thin_aluminium",
    ThickAluminium: "thick_aluminium",
    StainlessSteel: "stainless_steel",
    EnamelledSteel: "enamelled_steel",
    CastIron: "cast_iron",
    Clay: "clay",
});

names!(PotSize {
    Litres1_5: "1.5_l",
    Litres2_5: "2.5_l",
    Litres4: "4_l",
    Litres6: "6_l",
    Litres10: "10_l",
});

names!(Wrap {
    Bare: "bare",
    Wrapped: "wrapped",
    SunkInCooker: "sunk_in_cooker",
});

names!(Lid {
    On: "on",
    Ajar: "ajar",
    Off: "off",
});
