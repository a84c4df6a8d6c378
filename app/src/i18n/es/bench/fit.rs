//! Spanish: the page of what was found from a run.

use crate::i18n::strings::bench::fit::{Differ, Fit, Taking};

pub(super) const FIT: Fit = Fit {
    title: "Lo que se halló",
    working: "Calculando…",
    together: "Pruebas de esta cocina, ajustadas juntas",
    differ: Differ {
        differs: |figure, own, run, theirs| {
            format!(
                "{figure}: {own} según esta prueba, {theirs} según «{run}». Están más lejos de lo que sus \
                 márgenes permiten juntos: algo fue distinto los dos días, o una no fue como se anotó."
            )
        },
        this_better: "Esta prueba lo dice con menos margen. Ajustadas juntas, cada una cuenta por lo que dice.",
        other_better: |run| {
            format!(
                "«{run}» lo dice con menos margen. Ajustadas juntas, cada una cuenta por lo que dice."
            )
        },
        alike: "Las dos lo dicen con parecido margen. Ajústelas juntas, o repita una de ellas.",
        fit_both: "Ajustar las dos juntas",
    },
    costs: "Lo que cuestan los cambios",
    costs_why: "En su dinero, hasta donde lo sepa. Los consejos se ordenan así, lo más barato primero.",
    prices: [
        "Un kilo más de depósito",
        "Un asiento mejor: aplanado, sujeto, con una película de aceite",
        "Aletas en un depósito que se funde",
        "Otro tanto de aislamiento",
        "Un abrigo para la olla",
        "Una resistencia que vaya con los paneles",
        "Otros tantos paneles",
    ],
    use_it: "Usar para esta cocina",
    taking: Taking {
        title: |name| format!("Qué cambia en {name}"),
        lead: "Primero lo que cuenta ahora; luego lo que contará desde el primer día de su diario. Se puede deshacer.",
        none: "Nada: la cocina ya cuenta como se midió.",
        loss: |at| format!("Pérdida por el aislamiento, con el depósito a {at}"),
        jacket: "Calor que guarda el aislamiento",
        store: "Calor que guarda el depósito, del hervor al corte",
        contact: |at| format!("Contacto con la olla, con el depósito a {at}"),
        pot_loss: "Calor que pierde la olla, de lo que dice su tipo",
        tracker: "Parte que el seguidor lleva a la resistencia",
        from_to: |now, then, unit| format!("{now} → {then}\u{A0}{unit}"),
        doubt: |now, then| format!("a menos de {now} en 8 de 10 casos ahora, {then} después"),
        doubt_way: |now, then| {
            format!(
                "todo el camino hasta la olla, con la capa de agua en ella: a menos de {now} en 8 de 10 \
                 casos ahora, {then} después"
            )
        },
        stays: |name, value| {
            format!(
                "{name} se midió, {value}, pero no se traslada: la descripción de una cocina no tiene \
                 lugar para eso. Por eso las respuestas para esta cocina difieren de los valores de aquí."
            )
        },
        rest: "Todo lo demás queda como se describió.",
        do_it: "Usar estas cifras",
    },
    weighed: "Los pesos quedan como los indicó. El depósito cuenta entonces con lo que se midió, hasta \
              que cambie lo que hay en él.",
    used: "Se usa para esta cocina",
};
