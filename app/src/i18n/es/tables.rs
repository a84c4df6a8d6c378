//! Spanish: names of the rows of the tables.

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
        Medium::Aluminium => "aluminio",
        Medium::CastIron => "hierro fundido",
        Medium::MildSteel => "acero común",
        Medium::Copper => "cobre",
        Medium::Soapstone => "piedra jabón",
        Medium::Granite => "granito",
        Medium::Basalt => "basalto",
        Medium::DrySand => "arena seca",
        Medium::Concrete => "hormigón",
        Medium::Firebrick => "ladrillo refractario",
        Medium::Erythritol => "eritritol",
        Medium::Mannitol => "manitol",
        Medium::AdipicAcid => "ácido adípico",
        Medium::MagnesiumChlorideHexahydrate => "cloruro de magnesio hexahidratado",
        Medium::Hdpe => "polietileno de alta densidad",
        Medium::SodiumNitrate => "nitrato de sodio",
        Medium::PotassiumNitrate => "nitrato de potasio",
        Medium::SodiumPotassiumNitrate => "nitrato de sodio y de potasio, 60 a 40",
        Medium::TernaryNitrateNitrite => "sal de nitratos y nitrito, tres partes",
        Medium::VegetableOil => "aceite vegetal",
    }
}

fn insulation(row: Insulation) -> &'static str {
    match row {
        Insulation::GlassWool => "lana de vidrio",
        Insulation::RockWool => "lana de roca",
        Insulation::Perlite => "perlita",
        Insulation::Vermiculite => "vermiculita",
        Insulation::CalciumSilicate => "silicato de calcio",
        Insulation::CeramicFibre => "fibra cerámica",
        Insulation::RiceHusk => "cáscara de arroz",
        Insulation::Straw => "paja",
        Insulation::Wool => "lana de oveja",
        Insulation::AerogelBlanket => "manta de aerogel",
    }
}

fn lid_fit(row: LidFit) -> &'static str {
    match row {
        LidFit::Plug => "un tapón que cierra bien",
        LidFit::Ordinary => "una tapa con rendija",
        LidFit::Leaky => "una tapa delgada o torcida",
    }
}

fn seat(row: Seat) -> &'static str {
    match row {
        Seat::MachinedClamped => "plano a máquina y apretado",
        Seat::DryFlat => "base plana, no pasa la luz",
        Seat::DryOrdinary => "una olla común sobre una placa",
        Seat::DryWarped => "una base que se mece un poco",
        Seat::BadlyWarped => "una base abollada: cabe una moneda",
        Seat::OilFilm => "una película de aceite",
        Seat::Sleeve => "la olla entra en un hueco",
        Seat::SunkInMelt => "la olla está dentro del material fundido",
        Seat::RadiantGap => "un espacio de aire entre ambos, oscuros",
    }
}

fn pot_kind(row: PotKind) -> &'static str {
    match row {
        PotKind::ThinAluminium => "aluminio delgado",
        PotKind::ThickAluminium => "aluminio grueso",
        PotKind::StainlessSteel => "acero inoxidable",
        PotKind::EnamelledSteel => "acero esmaltado",
        PotKind::CastIron => "hierro fundido",
        PotKind::Clay => "barro",
    }
}

fn wrap(row: Wrap) -> &'static str {
    match row {
        Wrap::Bare => "sin abrigo",
        Wrap::Wrapped => "abrigada",
        Wrap::SunkInCooker => "hundida en la cocina",
    }
}

fn pot_lid(row: Lid) -> &'static str {
    match row {
        Lid::On => "con tapa",
        Lid::Ajar => "tapa entreabierta",
        Lid::Off => "sin tapa",
    }
}

fn dish(row: Dish) -> &'static str {
    match row {
        Dish::WhiteRice => "arroz blanco",
        Dish::BrownRice => "arroz integral",
        Dish::CommonBeansSoaked => "frijoles remojados",
        Dish::CommonBeansUnsoaked => "frijoles sin remojar",
        Dish::RedKidneyBeansSoaked => "frijoles rojos remojados",
        Dish::BlackBeansSoaked => "frijoles negros remojados",
        Dish::ChickpeasSoaked => "garbanzos remojados",
        Dish::Lentils => "lentejas",
        Dish::SplitPeas => "arvejas partidas",
        Dish::MaizePorridge => "papilla de maíz",
        Dish::Potatoes => "papas",
        Dish::Cassava => "yuca",
        Dish::Pasta => "fideos",
        Dish::MeatStew => "guiso con carne",
        Dish::VegetableStew => "guiso de verduras",
        Dish::Eggs => "huevos",
        Dish::Milk => "leche",
        Dish::TeaWater => "agua para té",
    }
}

fn sky(row: Sky) -> &'static str {
    match row {
        Sky::Clear => "despejado",
        Sky::Thin => "nube fina",
        Sky::Patchy => "sol y nubes",
        Sky::Grey => "gris",
        Sky::Dark => "oscuro",
    }
}
