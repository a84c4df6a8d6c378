//! Spanish: the page of what was found from a run.

use crate::i18n::strings::bench::fit::Fit;

pub(super) const FIT: Fit = Fit {
    title: "Lo que se halló",
    working: "Calculando…",
    together: "Pruebas de esta cocina, ajustadas juntas",
    use_it: "Usar para esta cocina",
    used: "Se usa para esta cocina",
};
