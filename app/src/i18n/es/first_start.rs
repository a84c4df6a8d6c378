//! Spanish: the first start.

use crate::i18n::strings::first_start::FirstStart;

pub(super) const FIRST_START: FirstStart = FirstStart {
    title: "Le damos la bienvenida",
    what_it_does: "Duskpot le dice si la olla de esta noche va a hervir en su cocina solar que guarda calor, cuándo, y cuánto tiempo dejarla. Todo se queda en este aparato.",
    set_up: "Preparar mi cocina",
    show_example: "Muéstreme un ejemplo",
    cooker_name: "Mi cocina",
};
