//! Spanish: the parts that not every cooker has, and what wears.

use crate::i18n::strings::cooker::ways::Ways;

pub(super) const WAYS: Ways = Ways {
    mm: "mm",
    m2: "m²",
    no_store: "sin depósito",
    no_store_note: "Sin depósito: el calentador calienta la olla directamente, mientras hay sol.",
    element: |number| format!("Resistencia del elemento {number}"),
    element_hint: "Se supone que el interruptor sigue al sol: cada luz tiene la mejor de sus posiciones.",
    add_element: "Añadir un elemento con interruptor",
    remove_element: |number| format!("Quitar el elemento {number}"),
    metal: "Metal dentro del material",
    metal_hint: "Lleva el calor por donde se conduce mal.",
    metals: [
        "ninguno",
        "aletas de pie sobre el asiento",
        "espuma, o lámina arrugada",
    ],
    metal_of: "Hecho de",
    fin: "Espesor de una aleta",
    fin_hint: "Medido en el canto.",
    pitch: "De una aleta a la siguiente",
    pitch_hint: "Del centro de una al centro de la siguiente.",
    foam_share: "Parte del espacio que ocupa el metal",
    foam_share_hint: "Lo dicen sus kilos: un litro de aluminio macizo pesa 2.7 kg, de acero 7.9, de cobre 8.9.",
    metal_weighs: |mass| {
        format!(
            "Con estas medidas el metal pesa unos {mass}. Su calor solo cuenta entre los materiales de arriba: anótelo también allí."
        )
    },
    filled_on: "Llenado el",
    filled_on_hint: "Sus horas fundido lo gastan. Déjelo vacío si no lo sabe.",
    flask: "Un termo de vacío",
    flask_gap: "Entre sus paredes",
    flask_gap_hint: "El espacio vacío entre la pared de adentro y la de afuera.",
    flask_wall: "Sus paredes",
    walls: ["plateadas", "de acero brillante"],
    vacuum: "Su vacío",
    sound: "Intacto",
    sound_detail: "frío por fuera cuando está lleno",
    lost: "Perdido",
    lost_detail: "tibio por fuera cuando está lleno",
    charging: "Otras maneras de cargar",
    dish: "Un disco que sigue al sol",
    dish_detail: "En lugar de los paneles. Junta solo el sol directo.",
    aperture: "Lo que recoge",
    aperture_hint: "El área de frente al sol, sin su propia sombra.",
    optical: "De eso el depósito toma",
    optical_hint: "Espejos limpios y una placa negra: 50 a 70 %.",
    second: "Una segunda carga: red o fuego",
    second_detail: "Cada vez que se usa se anota en el diario.",
    second_w: "Su potencia",
    second_w_hint: "Lo que toma del enchufe, o lo que da el combustible.",
    second_share: "De eso el depósito toma",
    second_share_hint: "Un elemento adentro: casi todo. Un fuego debajo: 10 a 30 %.",
    carried: "Se carga afuera y se lleva adentro",
    carried_detail: "No recibe sol mientras hay una olla encima.",
    way: "El camino toma",
    way_hint: "Desde el sol hasta que está en su forro.",
    wrap: "Envuelto en el camino con",
    wrap_hint: "Una manta o lana alrededor; 0 si nada.",
    turned: "Se da vuelta en la cocina",
    turned_detail: "Así lo que no se fundió queda lejos de la olla.",
    wear_heading: "Desgaste del depósito",
    worn: |medium, hours, degrees| {
        format!(
            "Desde que se llenó, {medium} ha estado fundido unas {hours}. Ahora se funde cerca de \
             {degrees}: lo gastan las horas, y más el calor."
        )
    },
    last_boil: |day, earliest, latest| {
        let latest = latest.map_or_else(
            || "o mucho más tarde".to_owned(),
            |latest| format!("o recién desde {latest}"),
        );
        format!(
            "Si sigue así, una olla como esta ya no hierve a partir de {day} más o menos; puede ser \
             desde {earliest}, {latest}. Un corte más frío lo hace durar, llenarlo de nuevo empieza \
             otra vez."
        )
    },
    worn_out: "Con las cifras como están, una olla como esta ya no hierve a tiempo con él. Llenarlo de nuevo empieza otra vez.",
    never: "Una olla como esta sigue hirviendo con él, con lo que guarda por encima del hervor.",
};
