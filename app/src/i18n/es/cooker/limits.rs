//! Spanish: what limits a build.

use crate::i18n::strings::cooker::limits::Limits;

pub(super) const LIMITS: Limits = Limits {
    heading: "Qué limita esta construcción",
    how: "La pregunta: cuánta agua hierve en la hora que sigue a la puesta del sol, noche tras noche, si cada día es de sol y nubes. Luego se duplica cada parte, o se reduce la pérdida a la mitad, y se calcula de nuevo.",
    working: "Calculando…",
    sun: |now, better| {
        format!(
            "El calor que recibe. En días corrientes hace hervir {now} por noche; con el doble de calor de sus paneles, por tener más o una resistencia que les vaya mejor, haría hervir {better}."
        )
    },
    store: |now, better| {
        format!(
            "El tamaño del depósito. En días corrientes hace hervir {now} por noche; con el doble de masa haría hervir {better}."
        )
    },
    contact: |now, better| {
        format!(
            "El contacto entre depósito y olla. En días corrientes hace hervir {now} por noche; con el doble de contacto haría hervir {better}."
        )
    },
    jacket: |now, better| {
        format!(
            "El aislamiento. En días corrientes hace hervir {now} por noche; con la mitad de pérdida haría hervir {better}."
        )
    },
    pot: |now| {
        format!(
            "Solo la olla. En días corrientes hace hervir {now} por noche: más de lo que hierve en ella sin derramarse."
        )
    },
    even: |now| {
        format!("Ninguna parte más que las otras. En días corrientes hace hervir {now} por noche.")
    },
    nothing: "Más de una parte. En días corrientes no hierve ni una taza en la hora que sigue a la puesta del sol, y ninguna parte sola, el doble de buena, lo cambia.",
    none: "nada",
    as_built: "Como está",
    twice_sun: "El doble de calor de los paneles",
    twice_store: "El doble de depósito",
    twice_contact: "El doble de contacto",
    half_loss: "La mitad de pérdida",
};
