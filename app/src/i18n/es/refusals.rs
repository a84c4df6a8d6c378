//! Spanish: refusals.

use crate::i18n::strings::refusals::Refusals;

pub(super) const REFUSALS: Refusals = Refusals {
    not_a_number: "Esto no es un número.",
    not_whole: "Un número entero, por favor.",
    empty: "Aquí hace falta algo.",
    too_long: |n_most| format!("{n_most} letras como máximo."),
    too_low: |value| format!("{value} como mínimo."),
    too_high: |value| format!("{value} como máximo."),
    sun_exceeds_day: |value| {
        format!("Ese día el sol está sobre el horizonte {value}: no pudo brillar más tiempo.")
    },
    pot_too_small: |value| {
        format!("En esta olla caben {value}, y hace falta espacio para que hierva.")
    },
    in_future: "Esa hora todavía no ha llegado.",
    fins_too_close: "Estas aletas ocuparían más de la mitad del espacio. Hágalas más delgadas o sepárelas más.",
    before: |value| format!("No antes de: {value}."),
    after: |value| format!("No después de: {value}."),
    night_warmer: "La noche no puede ser más cálida que el día.",
    gone: "Esto ya no está aquí.",
    meal_running: "Ya hay una olla en la cocina. Sáquela primero.",
    not_a_meal: "Esta anotación no es una comida.",
    last_cooker: "Es su única cocina. Añada otra primero.",
    too_many: |n_most| format!("Duskpot guarda {n_most} de estos como máximo."),
};
