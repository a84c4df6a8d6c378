//! Spanish: what is said of a text of readings.

use model::bench::readings::{Column, Delimiter, ReadingsError, What};

use crate::i18n::strings::report::text::{Number, TextWords};

pub(super) const TEXT: TextWords = TextWords {
    error: |error| match error {
        ReadingsError::Empty => "No hay ninguna fila.",
        ReadingsError::NoColumns => {
            "No se distinguen columnas: cada fila necesita una hora y una lectura."
        }
        ReadingsError::NoTimes => "No se halló la columna de las horas. Diga abajo cuál es.",
        ReadingsError::NoReadings => "No se halló ninguna columna de lecturas. Diga abajo cuál es.",
        ReadingsError::NoRows => "Ninguna fila tiene una hora que se pueda leer.",
        _ => "No se puede leer.",
    },
    heading: "Lo que se entendió",
    rows: |rows, span| format!("{rows} filas en {span}."),
    columns_guessed: "No se entendieron los nombres de las columnas. La primera se tomó por la hora y la \
                      segunda por el depósito: mírelo, y cambie lo que no sea así.",
    delimiter: ("Entre las columnas", |of| match of {
        Delimiter::Semicolon => "punto y coma",
        Delimiter::Tab => "tabulador",
        Delimiter::Comma => "coma",
        Delimiter::Blanks => "espacios",
    }),
    decimal: ("Signo decimal", "punto", "coma"),
    header: ("Nombres de las columnas", "en el texto", "ninguno"),
    start: "Primera fila",
    remarks: "Qué mirar",
    none: "Nada parece estar mal.",
    count: |n_remarks| match n_remarks {
        "1" => "1 observación. Nada se dejó fuera sin decirlo.".to_owned(),
        _ => format!("{n_remarks} observaciones. Nada se dejó fuera sin decirlo."),
    },
    all: "Todas las observaciones, por fila",
    more: |n_more| format!("y {n_more} más"),
    line_head: "Fila",
    what_head: "Observación",
    line: |line| format!("Fila {line}"),
    lines: |from, to| format!("Filas {from} a {to}"),
    whole: "Todo el texto",
    remark,
    column,
    plot: "Lo que se leyó",
    plot_store: |low, high| format!("El depósito anduvo entre {low} y {high}."),
    plot_pot: |low, high| format!("La olla anduvo entre {low} y {high}."),
    time: "Hora",
};

fn column(column: Column) -> &'static str {
    match column {
        Column::Time => "la hora",
        Column::Date => "la fecha",
        Column::Store => "el depósito",
        Column::Pot => "la olla",
        Column::Air => "el aire",
        Column::Power => "la potencia",
        Column::Irradiance => "la luz del sol",
        Column::Unused => "nada",
    }
}

fn remark(what: &What, number: Number<'_>) -> String {
    match what {
        What::FieldCount { found, wanted } => {
            format!("{found} celdas para {wanted} columnas; se tomaron las que caben")
        }
        What::NoTime => "apartada: no se puede leer la hora".to_owned(),
        What::NotLater => "apartada: no es posterior a la fila anterior".to_owned(),
        What::NotANumber { column: of } => {
            format!("la celda de «{}» no es un número y se apartó", column(*of))
        }
        What::NotSensible { column: of, value } => format!(
            "{} en la columna de «{}» no es una lectura y se apartó",
            number(*value),
            column(*of)
        ),
        What::Gap { gap_s } => format!("antes de esta, {} min sin lecturas", number(gap_s / 60.0)),
        What::Spike {
            column: of,
            value,
            neighbours,
        } => format!(
            "un salto en «{}»: {} entre {}; se conservó",
            column(*of),
            number(*value),
            number(*neighbours)
        ),
        What::Corrected {
            column: of,
            was,
            now,
        } => match was {
            Some(was) => format!(
                "corregida a mano: {} en «{}»; el texto dice {}",
                number(*now),
                column(*of),
                number(*was)
            ),
            None => format!("corregida a mano: {} en «{}»", number(*now), column(*of)),
        },
        What::LeftOut { column: of, was } => match was {
            Some(was) => format!("omitida a mano: {} en «{}»", number(*was), column(*of)),
            None => format!("omitida a mano: «{}»", column(*of)),
        },
        What::Swapped { first, second } => format!(
            "las columnas de «{}» y «{}» parecen estar cambiadas",
            column(*first),
            column(*second)
        ),
        What::LooksFahrenheit { column: of } => {
            format!("«{}» se tomó por °C y parece °F", column(*of))
        }
        What::LooksDecimalComma => {
            "quizá se tomó una coma decimal por la marca entre columnas".to_owned()
        }
        What::ColumnUnused { place } => format!("la columna {place} no se usa"),
        What::ColumnTwice { place } => {
            format!("la columna {place} dice lo mismo que otra y no se usa")
        }
        What::DayFirstGuessed => "se tomó el día por delante del mes".to_owned(),
        What::SecondsGuessed => "las horas se tomaron por segundos".to_owned(),
        What::ShortRun { length_s } => format!(
            "todas las filas caben en {} s: quizá las horas van en otra unidad",
            number(*length_s)
        ),
        _ => "otra cosa".to_owned(),
    }
}
