//! Spanish: what follows from a build.

use crate::i18n::strings::cooker::follows::{Cool, Follows, PanelPlot};

pub(super) const FOLLOWS: Follows = Follows {
    heading: "Qué resulta de esta construcción",
    in_short: |capacity, hold, litre| format!("{capacity} · aguanta {hold} · {litre}"),
    in_short_litre: |time| format!("1\u{A0}L en {time}"),
    in_short_heater: |gets, could| format!("la resistencia recibe {gets} de {could} a pleno sol"),
    in_short_never: "no hierve un litro",
    capacity: "Calor desde el hervor hasta el corte",
    capacity_detail: |litres| format!("hace hervir unos {litres} de agua"),
    hold: "Sigue sobre el hervor durante",
    hold_detail: |cutout, air| format!("desde {cutout}, sin sol ni olla, con aire a {air}"),
    hold_long: "semanas",
    night: "Tras una noche de 12 horas",
    night_detail: |litres| format!("todavía hace hervir unos {litres}"),
    night_nothing: "ya no hace hervir nada",
    loss: "Se pierde por el aislamiento, lleno",
    loss_detail: |full, full_c, halfway, halfway_c| {
        format!(
            "{full} a {full_c}. Las pruebas y el diario la dan para un depósito a medio camino del hervor, donde el aislamiento conduce menos: {halfway} a {halfway_c}"
        )
    },
    outer_face: "Cara exterior del aislamiento",
    outer_face_burns: "quema al tocarla",
    outer_face_unknown: "el aislamiento se midió, no se describió",
    seat: "Del depósito a la olla",
    seat_detail: |seat, power, more| {
        let why = if more {
            "el agua que hierve toma el calor mejor que la que se calienta"
        } else {
            "lo que está junto al asiento conduce mal"
        };
        format!(
            "al sacar calor sin pausa, desde el centro del depósito. El asiento por sí solo deja pasar {seat} hacia el agua que se calienta. Un depósito lleno da al principio {power} a una olla que hierve: {why}"
        )
    },
    seat_detail_melt: |seat, power| {
        format!(
            "al sacar calor sin pausa, desde el centro del depósito, cuando la mitad de lo fundido ya se endureció. El asiento por sí solo deja pasar {seat} hacia el agua que se calienta. Un depósito lleno da al principio {power} a una olla que hierve, antes de que algo se endurezca en el asiento"
        )
    },
    litre: "Un litro hierve en",
    litre_detail: |start| format!("agua a {start}, depósito lleno, con tapa"),
    litre_never: "nunca",
    below_boil: |cutout, boil| {
        format!(
            "El termostato corta a {cutout} y aquí el agua hierve a {boil}: esta cocina no puede hacer hervir nada."
        )
    },
    too_large: |store, room| {
        format!("El depósito ocupa {store} y el hueco del aislamiento es de {room}: no cabe.")
    },
    never_full: |loss, cutout, heat| {
        format!(
            "Nunca se llena: a {cutout} pierde {loss}, y todo lo que lo calienta son {heat}. Lo que se dice de un depósito lleno es más de lo que dará."
        )
    },
    in_short_not_full: "nunca se llena",
    take_heading: "Qué toma la resistencia del sol",
    clear_day: "En un día despejado de ahora",
    ordinary_day: "En un día corriente de ahora",
    year: "En el año",
    day_heat: |energy| format!("{energy} de calor"),
    of_most: |percent| format!("{percent} de lo máximo que dan los paneles"),
    best: "Resistencia que más toma",
    best_detail: |percent| format!("tomaría {percent} en el año"),
    best_already: "en el año la suya toma casi lo mismo; ninguna resistencia va bien con toda luz, así que a pleno sol puede tomar menos de lo que los paneles podrían dar",
    best_tracker: "cualquiera, con seguidor",
    working: "calculando…",
    no_light: "sin luz",
    w_k: |number| format!("{number}\u{A0}W/K"),
    volts: |number| format!("{number}\u{A0}V"),
    amperes: |number| format!("{number}\u{A0}A"),
    cool: Cool {
        name: "Un depósito lleno que se enfría",
        store: "Depósito, sin sol ni olla",
        boil: |temperature| format!("hervor, {temperature}"),
        melts: |temperature| format!("se solidifica, {temperature}"),
        sentence: |cutout, boil, hold, air| {
            format!(
                "Sin sol y sin olla, con aire a {air}, baja de {cutout} al hervor, a {boil}, en {hold}."
            )
        },
        sentence_long: |cutout, boil| {
            format!("Sin sol y sin olla queda semanas entre {cutout} y el hervor, a {boil}.")
        },
        sentence_below: |cutout, boil| {
            format!("Empieza a {cutout}, por debajo del hervor, a {boil}.")
        },
        head_time: "Después de",
        head_store: "Depósito",
    },
    panel: PanelPlot {
        name: "Los paneles y la resistencia, corriente y tensión",
        full: "Paneles a pleno sol",
        half: "Paneles a medio sol",
        load: |ohms| format!("Resistencia y cables, {ohms}"),
        works: "Donde trabajan",
        sentence: |full, full_most, half, half_most| {
            format!(
                "A pleno sol la resistencia recibe {full} de los {full_most} que podrían dar los paneles; a medio sol, {half} de {half_most}."
            )
        },
        sentence_tracker: |full, half| {
            format!(
                "El seguidor mantiene los paneles donde más dan: la resistencia recibe {full} a pleno sol y {half} a medio sol."
            )
        },
        head_light: "Luz",
        head_volts: "Voltios",
        head_amperes: "Amperios",
        head_heat: "Recibe la resistencia",
        head_most: "Podrían dar los paneles",
    },
};
