//! Spanish: the room More and its pages.

use crate::i18n::strings::more::More;

pub(super) const MORE: More = More {
    title: "Más",
    settings: "Ajustes",
    copies: "Copias",
    example: "Hogar de ejemplo",
    safety: "Seguridad",
    about: "Acerca de",
    language: "Idioma",
    language_automatic: "Como en este aparato",
    theme: "Claro u oscuro",
    theme_automatic: "Como en este aparato",
    theme_light: "Claro",
    theme_dark: "Oscuro",
    degrees: "Temperaturas en",
    degrees_c: "°C",
    degrees_f: "°F",
    copies_why: "Todo se guarda en este aparato y en ningún otro lugar. Una copia en un archivo sobrevive a un teléfono perdido y lleva su hogar a otro.",
    copy_out: "Hacer una copia en un archivo",
    copy_in: "Traer una copia",
    copy_holds: |n_cookers, n_entries, n_days| {
        let cookers = if n_cookers == 1 {
            "1 cocina".to_owned()
        } else {
            format!("{n_cookers} cocinas")
        };
        let entries = if n_entries == 1 {
            "1 anotación".to_owned()
        } else {
            format!("{n_entries} anotaciones")
        };
        let days = if n_days == 1 {
            "1 día de sol".to_owned()
        } else {
            format!("{n_days} días de sol")
        };
        format!("En esta copia: {cookers}, {entries}, {days}.")
    },
    copy_saved_at: |value| format!("Escrita: {value}."),
    copy_spans: |a, b| format!("Del {a} al {b}."),
    copy_replaces: "Ocupa el lugar de lo que hay aquí ahora. Lo de ahora se pone aparte, para que pueda volver atrás.",
    copy_replace: "Reemplazar con esta copia",
    copy_not_ours: "Este archivo no es una copia de un hogar de Duskpot.",
    copy_newer: "Esta copia la escribió una versión más nueva de Duskpot. Actualice primero; el archivo está bien.",
    copy_damaged: |value| format!("Esta copia está dañada en: {value}. Aquí no cambió nada."),
    copy_unreadable: "No se pudo leer este archivo. Aquí no cambió nada.",
    copy_no_room: "No hay espacio para poner aparte lo que hay ahora, así que no se cambió nada.",
    aside: "Puesto aparte",
    aside_replaced: |value| format!("El hogar anterior a la copia, {value}"),
    aside_damaged: |value| format!("No se pudo leer, {value}"),
    example_what: "Un hogar inventado en un pueblo inventado de la sierra. Pruebe todo allí: su propio hogar no se toca.",
    example_show: "Ver el ejemplo",
    example_leave: "Volver a mi hogar",
    example_anew: "Empezar el ejemplo de nuevo",
};
