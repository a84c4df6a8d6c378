//! Spanish: the cooker.

mod follows;
mod learned;
mod limits;
mod parts;
mod place;
mod ways;

use crate::i18n::strings::cooker::{Cooker, List, Rebuilt};

pub(super) const COOKER: Cooker = Cooker {
    title: "Cocina",
    copy_name: |name| format!("{name}, copia"),
    list: List {
        count: |n| match n {
            1 => "Una cocina".to_owned(),
            _ => format!("{n} cocinas"),
        },
        heading: "Nuestras cocinas",
        in_use: "En uso",
        not_in_use: "Sin uso",
        made_of: |media, watts| format!("{media}, paneles de {watts}"),
        charge: |mass, medium| format!("{mass} de {medium}"),
        fins: "con aletas",
        foam: "con espuma de metal",
        no_metal: "sin aletas",
        jacket_measured: "aislamiento medido",
        pot: |kind, litres| format!("olla de {kind}, {litres}"),
        cutout: |degrees| format!("corte a {degrees}"),
        straight: "paneles directo a la resistencia",
        by_tracker: "con seguidor",
        heater: |ohms| format!("resistencia de {ohms}"),
        depth: |depth| format!("depósito de {depth} de espesor"),
        on_which: |name| format!("En: {name}"),
        and: |first, last| format!("{first} y {last}"),
        use_this: "Cocinar en esta",
        add: "Añadir una cocina",
        add_how: "¿A cuál se parece más?",
        add_watts: "Todos sus paneles juntos",
        add_note: "Después puede cambiar cada parte. «Esta noche» preguntará por la cocina nueva.",
        name: "Nombre",
        copy: "Hacer una copia",
        copy_note: "Pruebe un cambio en una copia: el diario se queda con esta.",
        erase: "Borrar esta cocina",
        all: "Todas las cocinas",
        gone: "Esta cocina ya no está aquí.",
        manage: "Nombre, copia, borrar",
    },
    follows: follows::FOLLOWS,
    limits: limits::LIMITS,
    learned: learned::LEARNED,
    rebuilt: Rebuilt {
        question: "¿Desde cuándo es así?",
        why: "Lo del diario se cocinó en lo que era entonces.",
        from_now: "Desde ahora",
        always: "Siempre fue así",
        until: |when, made_of| format!("Hasta {when}: {made_of}."),
    },
    parts: parts::PARTS,
    place: place::PLACE,
    ways: ways::WAYS,
};
