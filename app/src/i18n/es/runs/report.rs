//! Spanish: test runs beside each other.

use model::bench::{Parameter, Worth};

use crate::i18n::strings::runs::report::{ConditionHeads, FigureNames, Named, Report};

pub(super) const REPORT: Report = Report {
    title: "Comparar",
    printed_title: "Informe de pruebas",
    dated: |day| format!("Escrito el {day}"),
    choose: "Pruebas que se ponen lado a lado",
    at_most: |count| format!("Como mucho {count} a la vez."),
    no_runs: "Todavía no hay ninguna prueba.",
    run_line: |cooker, kind, day| format!("{cooker} · {kind} · {day}"),
    aligned: "Superpuestas donde",
    at_start: "empieza la prueba",
    at_pot: "entra la olla",
    drawn: "Se dibuja",
    plot_store: "El depósito",
    plot_pot: "La olla",
    curve: |name, from, to, time| format!("{name} va de {from} a {to} en {time}."),
    in_file: |name| format!("Las lecturas de {name} se están trayendo de su archivo."),
    file_gone: |name| {
        format!("Las lecturas de {name} estaban en un archivo que ya no se puede leer.")
    },
    not_read: |name| format!("{name} no tiene lecturas de esto."),
    lettered: |letter, name| format!("{letter} · {name}"),
    as_described: |letter| format!("{letter} · según la descripción"),
    beside: "Al lado, lo que prevé la descripción",
    beside_detail: "De la misma cocina, por sus partes y las tablas, antes de que estas pruebas midieran nada de ella. Las bandas son tan anchas como suelen errar las descripciones.",
    beside_none: "Abra una prueba y haga que se calcule otra vez: así se guardan con ella las cifras de la descripción.",
    measured: "Lo que se midió",
    figures: "Cifras en las mismas condiciones",
    figure: "Cifra",
    banded: |value, low, high, unit| format!("{value} ({low} a {high})\u{A0}{unit}"),
    plain: |value, unit| format!("{value}\u{A0}{unit}"),
    above_all: |value| format!("{value}: no puede ser, revise la prueba"),
    not_told: "no lo dicen",
    no_value: "nunca",
    not_fitted: "sin calcular",
    air_in_file: "leído, en el archivo",
    together: |names| {
        format!("Calculadas juntas, y por eso con las mismas cifras de la cocina: {names}.")
    },
    fit_first: "Abra una prueba y haga que se calcule, para que sus cifras aparezcan aquí.",
    parameter: |parameter| match parameter {
        Parameter::Loss => "Pérdida de calor",
        Parameter::JacketCapacity => "Calor en el aislamiento",
        Parameter::StoreCapacity => "Depósito, frente a lo descrito",
        Parameter::MeltingPoint => "Punto de fusión",
        Parameter::MeltingRange => "Margen de fusión",
        Parameter::Heater => "Resistencia, frente a lo medido",
        Parameter::Contact => "Contacto con la olla",
        Parameter::PotLoss => "Pérdida de la olla, frente a lo descrito",
    },
    told_at: "Pérdida y contacto valen para el depósito a",
    told_halfway: |loss| {
        format!("{loss}, con el depósito a medio camino entre el hervor y el corte")
    },
    worth: "Valor del ajuste",
    worth_of: |worth| match worth {
        Worth::None => "ninguno",
        Worth::Little => "poco",
        Worth::Rough => "aproximado",
        Worth::Good => "bueno",
    },
    scatter: "Una lectura se aparta",
    named: FigureNames {
        litres: Named {
            name: "Litros hervidos por carga",
            means: "Litros que un depósito lleno lleva al hervor uno tras otro; cada uno entra cuando sale el anterior. Enteros, de 4 horas como mucho cada uno.",
        },
        first_litre: Named {
            name: "Tiempo del primer litro",
            means: "Desde que el primer litro entra en un depósito lleno hasta que hierve.",
        },
        power_50: Named {
            name: "Potencia 50 K por debajo del hervor",
            means: "Calor que ganan por segundo el primer litro y su olla al pasar 50 K por debajo del hervor.",
        },
        hold: Named {
            name: "Tiempo hasta la línea del hervor",
            means: "Desde el depósito lleno hasta que no guarda más calor que al hervor, sin olla.",
        },
        overnight: Named {
            name: "Pérdida de la noche",
            means: "Parte del calor de un depósito lleno, por encima del aire, que se pierde en 12 horas, sin olla.",
        },
        sun_to_food: Named {
            name: "Parte del sol del día que llega a la comida",
            means: "Calor para hervir la mayor cantidad de agua que hierve en la hora tras la puesta del sol del 20 de marzo, el último de cuatro días de cielo normal, entre la potencia nominal de los paneles por las horas de pleno sol de ese día.",
        },
        boil_time: Named {
            name: "Tiempo hasta hervir",
            means: "Desde que entra la olla hasta el hervor del lugar: la última olla de la prueba, tal como fue.",
        },
        boil_corrected: Named {
            name: "Tiempo hasta hervir, corregido",
            means: "Lo mismo por 75 K entre la subida propia del agua (Water Boiling Test 4.2.3).",
        },
        efficiency: Named {
            name: "Rendimiento del hervor",
            means: "Calor en el agua y en lo que se evaporó, entre lo que dieron mientras tanto el depósito y la resistencia (Water Boiling Test 4.2.3).",
        },
        standard: Named {
            name: "Potencia de cocción normalizada",
            means: "A 50 K por encima del aire y 700 W/m² (ASAE S580.1), solo si se cumplen todas sus condiciones.",
        },
    },
    csv: "Guardar los resultados en un archivo",
    csv_saved: |name| format!("{name} se entregó al navegador."),
    csv_failed: |reason| format!("No se pudo guardar el archivo. El navegador dice: {reason}"),
    to_print: "Una página para imprimir",
    print: "Imprimir, o guardar en PDF",
    print_hint: "Sigue la ventana del navegador: una impresora, o un archivo en formato PDF.",
    print_failed: "Este navegador no puede imprimir una página.",
    builds: "Cocinas y lugar",
    build: |name, made_of| format!("{name}: {made_of}."),
    parts: |jacket, seat, pot, cutout| {
        format!("Aislamiento: {jacket}. Asiento: {seat}. Olla: {pot}. Corta a {cutout}.")
    },
    place: |height, boil| format!("A {height} sobre el mar, donde el agua hierve a {boil}."),
    conditions: "Pruebas y sus condiciones",
    heads: ConditionHeads {
        run: "Prueba",
        began: "Empezó",
        took: "Duró",
        air: "Aire",
        heater: "Resistencia",
        water: "Agua en las ollas",
        readings: "Lecturas",
    },
    methods: "Cómo se midió y con qué seguridad",
    method: &[
        "Cada prueba es una tabla de temperaturas y horas. Las cifras de una cocina son aquellas con las que una red de depósito, aislamiento, asiento, olla y aire muestra esas lecturas, halladas por mínimos cuadrados no lineales en los que las lecturas sueltas muy apartadas cuentan menos (soft-L1).",
        "Tras cada cifra está la banda que contiene 8 de cada 10 valores posibles. Sale de la dispersión de las lecturas, de cómo se arrastran en el tiempo y del error propio del modelo. De lo que las pruebas dicen menos de la mitad se escribe «no lo dicen».",
        "Las cifras en las mismas condiciones se calculan con lo medido, fuera cual fuera el tiempo de las pruebas: un depósito lleno está a la temperatura de corte, con el aislamiento a medio camino hacia el aire, el aire a 20 °C y la resistencia apagada; un litro es 1,000 kg de agua a 20 °C en la olla de la casa, con la tapa puesta. Lo que las pruebas no dicen queda como en la descripción y ensancha las bandas tanto como suelen errar las descripciones.",
        "«Según la descripción» es lo que prevén de la misma cocina sus partes y las tablas, antes de que estas pruebas midieran nada de ella; el tiempo hasta hervir es el de la olla de la propia prueba, desde su mismo comienzo.",
    ],
    definitions: "Qué son las cifras",
};
