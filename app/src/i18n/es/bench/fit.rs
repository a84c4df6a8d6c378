//! Spanish: the page of what was found from a run.

use crate::i18n::strings::bench::fit::Fit;

pub(super) const FIT: Fit = Fit {
    title: "Lo que se halló",
    working: "Calculando…",
    together: "Pruebas de esta cocina, ajustadas juntas",
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
    weighed: "Los pesos quedan como los indicó. El depósito cuenta entonces con lo que se midió, hasta \
              que cambie lo que hay en él.",
    used: "Se usa para esta cocina",
};
