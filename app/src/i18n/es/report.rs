//! Spanish: what the bench's worker says.

mod found;
mod text;

use crate::i18n::strings::report::Report;

/// The texts.
pub static REPORT: Report = Report {
    text: text::TEXT,
    found: found::FOUND,
    full: "En este aparato no queda sitio para las lecturas, así que no se guardan. Haga sitio, o \
           borre una prueba más antigua, e inténtelo de nuevo.",
    keeps_nothing: "Esta ventana del navegador no guarda lecturas de archivos. Abra la aplicación \
                    en una ventana corriente, o escriba las lecturas.",
    lost: "Las lecturas de una prueba ya no están en este aparato: recupere la copia que las tiene, \
           o borre la prueba.",
    nothing_held: "El texto ya no está: ábralo de nuevo, por favor.",
};
