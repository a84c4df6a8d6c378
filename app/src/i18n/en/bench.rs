//! English: the room Bench.

mod fit;
mod import;
mod list;

use model::bench::RunKind;

use crate::i18n::strings::bench::Bench;

pub(super) const BENCH: Bench = Bench {
    title: "Bench",
    kind: |kind| match kind {
        RunKind::HeatUp => "Heat-up",
        RunKind::CoolDown => "Cool-down",
        RunKind::Boil => "Boil",
        RunKind::Free => "Free run",
    },
    fit: fit::FIT,
    import: import::IMPORT,
    list: list::LIST,
};
