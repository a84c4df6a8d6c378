//! Spanish: the list of test runs.

use crate::i18n::strings::bench::list::List;

pub(super) const LIST: List = List {
    heading: "Pruebas",
    none: "Con un termómetro, un reloj y una tarde se sabe cuánto pierde una cocina, cuánto guarda \
           y cuánto pasa a la olla, y por qué una olla no hirvió. Todavía no hay ninguna prueba.",
    count: |n_runs| match n_runs {
        0 => "¿Qué tan buena es esta cocina?".to_owned(),
        1 => "1 prueba".to_owned(),
        _ => format!("{n_runs} pruebas"),
    },
    going: |cooker, readings| format!("En curso · {cooker} · {readings}"),
    over: |cooker, readings| format!("{cooker} · {readings}"),
    readings: |n_rows, span| match n_rows {
        1 => "1 lectura".to_owned(),
        _ => format!("{n_rows} lecturas en {span}"),
    },
    no_readings: "aún sin lecturas",
    gone: "Esta prueba ya no está.",
    all: "Todas las pruebas",
    found: |line| format!("{line} · calculada"),
};
