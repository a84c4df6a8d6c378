//! Spanish: the room Bench.

mod fit;
mod import;
mod list;

use model::bench::RunKind;

use crate::i18n::strings::bench::Bench;

pub(super) const BENCH: Bench = Bench {
    title: "Pruebas",
    kind: |kind| match kind {
        RunKind::HeatUp => "Calentamiento",
        RunKind::CoolDown => "Enfriamiento",
        RunKind::Boil => "Hervor",
        RunKind::Free => "Prueba libre",
    },
    fit: fit::FIT,
    import: import::IMPORT,
    list: list::LIST,
};
