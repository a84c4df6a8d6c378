//! Spanish: the first start.

use model::presets::Preset;

use crate::i18n::strings::first_start::FirstStart;

pub(super) const FIRST_START: FirstStart = FirstStart {
    title: "Le damos la bienvenida",
    what_it_does: "Duskpot le dice si la olla de esta noche va a hervir en su cocina solar que guarda calor, cuándo, y cuánto tiempo dejarla. Todo se queda en este aparato.",
    set_up: "Preparar mi cocina",
    set_up_takes: "Cinco preguntas, un minuto. Cada una tiene ya una respuesta elegida.",
    set_up_takes_place: "Cinco preguntas, un minuto. Todas menos la primera tienen ya una respuesta elegida.",
    show_example: "Muéstreme un ejemplo",
    bring_copy: "Traer una copia",
    copy_is: "¿Ya usó Duskpot, en este aparato o en otro? Una copia es un archivo con todo un hogar, guardado allí en «Más».",
    safety_why: "Lo que quema, revienta o enferma en una cocina así, y qué hacer. Léalo antes de cocinar.",
    cooker_name: "Mi cocina",
    question: |number, of| format!("Pregunta {number} de {of}"),
    done: "Listo",
    changed_later: "Más adelante puede cambiar todas las respuestas.",

    place: "¿Dónde cocina?",
    place_near: |town| format!("Cerca de {town}"),
    place_at: |latitude, south, longitude, west| {
        let latitude_side = if south { "sur" } else { "norte" };
        let longitude_side = if west { "oeste" } else { "este" };
        format!("{latitude}° {latitude_side}, {longitude}° {longitude_side}")
    },
    place_why: "Es la ciudad principal de la zona horaria de su aparato. Su sol sirve hasta a unos cientos de kilómetros.",
    place_unknown: "Este aparato no dice dónde está. Elija la ciudad más cercana, o indique la latitud y la longitud; basta al grado.",
    place_other: "Cocino en otro lugar",
    place_numbers: "Latitud y longitud",
    town: "La más cercana de estas ciudades",
    town_in: |country, town| format!("{country}: {town}"),
    no_town: "Ninguna elegida",
    latitude: "Latitud",
    longitude: "Longitud",
    north_or_south: "Al norte o al sur del ecuador",
    north: "Norte",
    south: "Sur",
    east_or_west: "Al este o al oeste de Greenwich",
    east: "Este",
    west: "Oeste",

    height: "¿A qué altura sobre el mar?",
    height_why: "Cuanto más alto, menos calor necesita el agua para hervir y más tarda la comida.",
    height_pick: "La tierra de aquí",
    near_the_sea: "Cerca del mar",
    hills: "Cerros",
    highland: "Tierra alta",
    mountains: "Montañas",
    up_to: |height| format!("hasta {height}"),
    above: |height| format!("más de {height}"),
    height_number: "O la altura, si la sabe",

    cooker: "¿De qué está hecha su cocina?",
    cooker_pick: "Basta la más parecida",
    preset,
    preset_good_for,

    panels: "¿Cuántos vatios de paneles?",
    panels_why: "Los vatios están escritos detrás de cada panel. Sume los que alimentan esta cocina.",
    panels_pick: "Tamaños usuales",
    panels_number: "U otro número, todos los paneles juntos",

    people: "¿Cuántas personas comen de costumbre?",
    people_why: "La olla de esta noche empieza con comida para tantas personas.",
    people_pick: "A la mesa",
    people_number: "U otro número",
};

fn preset(preset: Preset) -> &'static str {
    match preset {
        Preset::AluminiumInPerlite => "Bloque de aluminio en perlita",
        Preset::SteelInRockWool => "Placa de acero o hierro en lana de roca",
        Preset::SoapstoneInVermiculite => "Piedra jabón en vermiculita",
        Preset::SandInPerlite => "Balde de arena seca en perlita",
        Preset::ErythritolInGlassWool => "Eritritol con aletas en lana de vidrio",
        Preset::NitrateInCeramicFibre => "Sal de nitrato con aletas en fibra cerámica",
        Preset::StraightToPot => "Panel directo a la olla, sin depósito",
        Preset::ErythritolUnderPot => "Eritritol con aletas en una lata bajo la olla",
        Preset::ConcreteInRockWool => "Hormigón en lana de roca",
        Preset::MortarUnderAirGap => "Resistencia en mortero, la olla sobre un espacio de aire",
        Preset::BareNitrate => "Sal de nitrato en una lata, sin aletas",
        Preset::NitrateCarried => "Sal de nitrato en una lata que se lleva adentro",
        Preset::NitrateUnderDish => "Sal de nitrato con aletas bajo un disco que sigue al sol",
        Preset::AluminiumInFlask => "Bloque de aluminio en un termo de vacío",
        Preset::AluminiumAndGrid => "Bloque de aluminio en perlita, con la red al lado",
    }
}

fn preset_good_for(preset: Preset) -> &'static str {
    match preset {
        Preset::AluminiumInPerlite => "entrega rápido su calor: hierve pronto",
        Preset::SteelInRockWool => "de la chatarra: firme, hierve pronto",
        Preset::SoapstoneInVermiculite => "guarda el calor para platos largos",
        Preset::SandInPerlite => "la más barata: lenta, mantiene caliente",
        Preset::ErythritolInGlassWool => "se funde cerca de 119 °C: pareja, nunca muy caliente",
        Preset::NitrateInCeramicFibre => {
            "guarda lo máximo, se funde a 220 °C; para quien conoce la sal"
        }
        Preset::StraightToPot => "nada que construir: cocina mientras hay sol",
        Preset::ErythritolUnderPot => "el mismo calor, y cualquier olla se apoya encima",
        Preset::ConcreteInRockWool => "de arena y cemento: barato, entrega lento su calor",
        Preset::MortarUnderAirGap => "sirve cualquier olla, lenta: póngala mientras hay sol",
        Preset::BareNitrate => "más fácil de hacer; se endurece bajo la olla y se frena",
        Preset::NitrateCarried => "se carga afuera y se da vuelta en la cocina",
        Preset::NitrateUnderDish => "pide sol pleno; caliente en pocas horas",
        Preset::AluminiumInFlask => "sigue caliente de noche mientras dure el vacío",
        Preset::AluminiumAndGrid => "se completa en días oscuros donde hay enchufe",
    }
}
