//! Spanish: readings from a paste or a file.

use model::bench::readings::{Column, Degrees, ElapsedUnit};

use crate::i18n::strings::bench::import::Import;

pub(super) const IMPORT: Import = Import {
    title: "Pegar o abrir lecturas",
    lead: "Columnas de una tabla, o el archivo de un registrador: en cada fila una hora y la \
           temperatura del depósito, y lo demás que se leyó.",
    paste: "Filas",
    paste_hint: "Como 17:00; 251; 18, con los nombres de las columnas en la primera fila.",
    read_paste: "Leer las filas",
    open_file: "Abrir un archivo",
    reading: "Leyendo…",
    columns: "Sus columnas",
    column: |place, sample| format!("Columna {place}: {sample}"),
    holds: |column| match column {
        Column::Time => "Hora",
        Column::Date => "Fecha",
        Column::Store => "Depósito",
        Column::Pot => "Olla",
        Column::Air => "Aire",
        Column::Power => "Potencia de la resistencia, W",
        Column::Irradiance => "Luz del sol, W/m²",
        Column::Unused => "No se usa",
    },
    degrees: "Temperaturas en",
    degrees_of: |degrees| match degrees {
        Degrees::Celsius => "°C",
        Degrees::Fahrenheit => "°F",
    },
    elapsed: "Los números sueltos de tiempo son",
    elapsed_of: |unit| match unit {
        None => "lo que diga el texto",
        Some(ElapsedUnit::Seconds) => "segundos",
        Some(ElapsedUnit::Minutes) => "minutos",
        Some(ElapsedUnit::Hours) => "horas",
    },
    swapped: "Dos columnas parecen estar cambiadas.",
    swap: "Cambiarlas",
    about: "La prueba",
    cooker: "Cocina",
    name: "Nombre de la prueba",
    kind: "Clase de prueba",
    started: "Día de la primera fila",
    day_guessed: "Las filas solo dicen la hora. Este es el último día con el que todas ya han pasado: \
                  cámbielo si fue otro.",
    air: "Aire",
    air_hint: "Hace falta si ninguna columna lo dice.",
    heater: "Potencia de la resistencia",
    heater_hint: "Como la marca un medidor, si ninguna columna la dice. Vacío si estaba apagada.",
    water: "Agua en la olla",
    pot_in: "La olla entró, después de la primera fila",
    pot_out: "La olla salió, después de la primera fila",
    less: |label| format!("Menos: {label}"),
    more: |label| format!("Más: {label}"),
    keep: "Guardar esta prueba",
    no_worker: |why| {
        let text = "Este navegador no puede poner en marcha la parte que lee y calcula las pruebas. \
                    Vuelva a cargar la página; si no basta, pruebe otro navegador.";
        if why.is_empty() {
            text.to_owned()
        } else {
            format!("{text} Dice: {why}")
        }
    },
    stopped: "El cálculo se detuvo a medias. No se perdió nada de lo guardado: inténtelo de nuevo.",
    not_understood: "Se mezclaron dos versiones de la aplicación: vuelva a cargar la página.",
    unreadable: "Este archivo no se puede leer.",
};
