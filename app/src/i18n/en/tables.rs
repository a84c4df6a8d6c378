//! English: names of the rows of the tables.

use model::dish::Dish;
use model::insulation::Insulation;
use model::jacket::LidFit;
use model::media::Medium;
use model::pot::{Lid, PotKind, Wrap};
use model::seat::Seat;
use model::sun::Sky;

use crate::i18n::strings::tables::Tables;

pub(super) const TABLES: Tables = Tables {
    medium,
    insulation,
    lid_fit,
    seat,
    pot_kind,
    wrap,
    pot_lid,
    dish,
    sky,
};

fn medium(row: Medium) -> &'static str {
    match row {
        Medium::Aluminium => "aluminium",
        Medium::CastIron => "cast iron",
        Medium::MildSteel => "mild steel",
        Medium::Copper => "copper",
        Medium::Soapstone => "soapstone",
        Medium::Granite => "granite",
        Medium::Basalt => "basalt",
        Medium::DrySand => "dry sand",
        Medium::Concrete => "concrete",
        Medium::Firebrick => "firebrick",
        Medium::Erythritol => "erythritol",
        Medium::Mannitol => "mannitol",
        Medium::AdipicAcid => "adipic acid",
        Medium::MagnesiumChlorideHexahydrate => "magnesium chloride hexahydrate",
        Medium::Hdpe => "high-density polyethylene",
        Medium::SodiumNitrate => "sodium nitrate",
        Medium::PotassiumNitrate => "potassium nitrate",
        Medium::SodiumPotassiumNitrate => "sodium and potassium nitrate, 60 to 40",
        Medium::TernaryNitrateNitrite => "nitrate and nitrite salt, three parts",
        Medium::VegetableOil => "vegetable oil",
    }
}

fn insulation(row: Insulation) -> &'static str {
    match row {
        Insulation::GlassWool => "glass wool",
        Insulation::RockWool => "rock wool",
        Insulation::Perlite => "perlite",
        Insulation::Vermiculite => "vermiculite",
        Insulation::CalciumSilicate => "calcium silicate",
        Insulation::CeramicFibre => "ceramic fibre",
        Insulation::RiceHusk => "rice husk",
        Insulation::Straw => "straw",
        Insulation::Wool => "sheep’s wool",
        Insulation::AerogelBlanket => "aerogel blanket",
    }
}

fn lid_fit(row: LidFit) -> &'static str {
    match row {
        LidFit::Plug => "a plug that seals",
        LidFit::Ordinary => "a lid with a gap",
        LidFit::Leaky => "a thin or crooked lid",
    }
}

fn seat(row: Seat) -> &'static str {
    match row {
        Seat::MachinedClamped => "machined flat and clamped",
        Seat::DryFlat => "flat base, no light between",
        Seat::DryOrdinary => "an ordinary pot on a plate",
        Seat::DryWarped => "a base that rocks a little",
        Seat::BadlyWarped => "a dented base: a coin fits under it",
        Seat::OilFilm => "a film of oil between",
        Seat::Sleeve => "the pot stands in a well",
        Seat::SunkInMelt => "the pot sits in the melt",
        Seat::RadiantGap => "a gap of air between, both sides dark",
    }
}

fn pot_kind(row: PotKind) -> &'static str {
    match row {
        PotKind::ThinAluminium => "thin aluminium",
        PotKind::ThickAluminium => "thick aluminium",
        PotKind::StainlessSteel => "stainless steel",
        PotKind::EnamelledSteel => "enamelled steel",
        PotKind::CastIron => "cast iron",
        PotKind::Clay => "clay",
    }
}

fn wrap(row: Wrap) -> &'static str {
    match row {
        Wrap::Bare => "bare",
        Wrap::Wrapped => "wrapped",
        Wrap::SunkInCooker => "sunk in the cooker",
    }
}

fn pot_lid(row: Lid) -> &'static str {
    match row {
        Lid::On => "lid on",
        Lid::Ajar => "lid ajar",
        Lid::Off => "no lid",
    }
}

fn dish(row: Dish) -> &'static str {
    match row {
        Dish::WhiteRice => "white rice",
        Dish::BrownRice => "brown rice",
        Dish::CommonBeansSoaked => "beans, soaked",
        Dish::CommonBeansUnsoaked => "beans, not soaked",
        Dish::RedKidneyBeansSoaked => "red kidney beans, soaked",
        Dish::BlackBeansSoaked => "black beans, soaked",
        Dish::ChickpeasSoaked => "chickpeas, soaked",
        Dish::Lentils => "lentils",
        Dish::SplitPeas => "split peas",
        Dish::MaizePorridge => "maize porridge",
        Dish::Potatoes => "potatoes",
        Dish::Cassava => "cassava",
        Dish::Pasta => "pasta",
        Dish::MeatStew => "stew with meat",
        Dish::VegetableStew => "vegetable stew",
        Dish::Eggs => "eggs",
        Dish::Milk => "milk",
        Dish::TeaWater => "water for tea",
    }
}

fn sky(row: Sky) -> &'static str {
    match row {
        Sky::Clear => "clear",
        Sky::Thin => "thin cloud",
        Sky::Patchy => "sun and cloud",
        Sky::Grey => "grey",
        Sky::Dark => "dark",
    }
}
