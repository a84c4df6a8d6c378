//! Spanish: shared texts.

use crate::i18n::strings::common::{Buttons, Common, Notes, Rooms, Saving, Units};
use crate::state::settings::Degrees;

pub(super) const COMMON: Common = Common {
    app_name: "Duskpot",
    rooms: Rooms {
        tonight: "Noche",
        bench: "Pruebas",
        diary: "Diario",
        cooker: "Cocina",
        more: "Más",
    },
    buttons: Buttons {
        save: "Guardar",
        cancel: "Cancelar",
        close: "Cerrar",
        back: "Atrás",
        next: "Siguiente",
        undo: "Deshacer",
        change: "Cambiar",
        erase: "Borrar",
        bring_back: "Recuperar",
        add: "Añadir",
        yes: "Sí",
        no: "No",
        try_again: "Intentar de nuevo",
        less: "Menos",
        more: "Más",
    },
    saving: Saving {
        saved: "Guardado en este aparato",
        pending: "Guardando…",
        cleared: "Se borró lo que guardaba este aparato. Aquí todavía se ve: si cambia algo, todo se \
                  guarda otra vez; si cierra Duskpot, se pierde.",
        full: "No queda espacio en este aparato: sus últimos cambios no están guardados. Haga una \
               copia en un archivo y luego libere espacio.",
        not_allowed: "Esta ventana del navegador no guarda nada: sus cambios se pierden al \
                      cerrarla. Haga una copia en un archivo o abra la aplicación en una ventana \
                      normal.",
        failed: "No se pudieron guardar sus últimos cambios. Haga una copia en un archivo.",
        newer_version: "Lo que está guardado aquí lo escribió una versión más nueva de Duskpot. \
                        Se deja como está; nada de lo que cambie ahora se guarda. Conéctese una \
                        vez para actualizar, o haga una copia en un archivo.",
        damaged: "No se pudo leer lo que estaba guardado aquí. Se puso aparte, no se borró: puede \
                  guardarlo en un archivo.",
        damaged_in_place: "No se pudo leer lo que estaba guardado aquí y no hay espacio para \
                           ponerlo aparte. Se deja como está; nada de lo que cambie ahora se \
                           guarda. Guárdelo en un archivo y luego libere espacio.",
        copy_to_file: "Hacer una copia en un archivo",
        copy_damaged_to_file: "Guardar en un archivo lo que se puso aparte",
        changed_elsewhere: "Otra ventana cambió este hogar. Usted ve ahora lo último.",
        change_lost: "Otra ventana cambió este hogar al mismo tiempo. Su último cambio ya no \
                      encaja y quedó fuera: revíselo, por favor.",
        update_waits: "Hay una versión nueva de Duskpot.",
        update_now: "Actualizar ahora",
    },
    notes: Notes {
        entry_erased: "Anotación borrada",
        cooker_erased: |name| format!("Se borró {name}, con sus anotaciones"),
        sky_erased: "Se borró el sol del día",
        run_erased: |name| format!("Se borró {name}, con sus lecturas"),
        reading_erased: "Se borró la lectura",
        brought_back: "Recuperado",
        pot_in: "La olla está dentro",
        taken_back: "Deshecho",
        noted: "Anotado en el diario",
        hours_replaced: "Reemplaza lo tocado",
        number_replaced: "Reemplaza el número",
        written_down: "Anotado",
        overwritten: |was, time| format!("Anotado en lugar de lo que se leyó a las {time}: {was}"),
        fit_used: |name| format!("Ya se usa para {name}"),
        copy_brought_in: "La copia ya está aquí. Lo que había antes se puso aparte.",
    },
    units: Units {
        degrees: |number, unit| match unit {
            Degrees::Celsius => format!("{number}\u{A0}°C"),
            Degrees::Fahrenheit => format!("{number}\u{A0}°F"),
        },
        litres: |number| format!("{number}\u{A0}L"),
        kilograms: |number| format!("{number}\u{A0}kg"),
        grams: |number| format!("{number}\u{A0}g"),
        hours: |number| format!("{number}\u{A0}h"),
        minutes: |number| format!("{number}\u{A0}min"),
        hours_minutes: |hours, minutes| format!("{hours}\u{A0}h\u{A0}{minutes}"),
        days: |number| format!("{number}\u{A0}días"),
        watts: |number| format!("{number}\u{A0}W"),
        watt_hours: |number| format!("{number}\u{A0}Wh"),
        kilowatt_hours: |number| format!("{number}\u{A0}kWh"),
        ohms: |number| format!("{number}\u{A0}Ω"),
        centimetres: |number| format!("{number}\u{A0}cm"),
        metres: |number| format!("{number}\u{A0}m"),
        percent: |number| format!("{number}\u{A0}%"),
        from_to: |from, to| format!("{from} a {to}"),
        day_time: |day, time| format!("{day}, {time}"),
        time_tomorrow: |time| format!("{time} de mañana"),
        time_yesterday: |time| format!("{time} de ayer"),
        time_on: |time, day| format!("{time} del {day}"),
        today: "hoy",
        yesterday: "ayer",
        tomorrow: "mañana",
    },
    skip_to_content: "Ir al contenido",
    rooms_label: "Secciones",
    rooms_coming: "El resto de Duskpot está en camino. Esto pasa solo una vez.",
    rooms_not_here: "El resto de Duskpot no se pudo descargar. Busque una conexión y vuelva a \
                     intentarlo.",
    about: |value| format!("unos {value}"),
    about_time: |time| format!("hacia las {time}"),
    not_known: "no se sabe",
    show_table: "Ver como tabla",
    hide_table: "Ocultar la tabla",
    example_banner: "Hogar de ejemplo",
    example_back: "Volver al mío",
};
