//! Spanish: the room More and its pages.

use crate::i18n::strings::more::{AboutPage, More, ToldDay};

pub(super) const MORE: More = More {
    title: "Más",
    settings: "Ajustes",
    copies: "Copias",
    example: "Hogar de ejemplo",
    safety: "Seguridad",
    about: "Acerca de",
    settings_line: "Idioma, claro u oscuro, °C o °F",
    copies_line: "En un archivo, para guardar o llevar a otro teléfono",
    example_line: "Mire un hogar inventado y un día entero en 30 segundos",
    safety_line: "Calor, sal, presión, electricidad, comida",
    about_line: "Qué calcula, qué no sabe, sin conexión",
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
        format!("Contiene {cookers}, {entries}, {days}.")
    },
    copy_cookers: |names| format!("Cocinas: {names}."),
    copy_empty: "En esta copia todavía no hay un hogar, solo ajustes.",
    copy_of_example: "Es una copia del hogar de ejemplo, que es inventado.",
    copy_saved_at: |value| format!("Escrita: {value}."),
    copy_spans: |a, b| format!("Del {a} al {b}."),
    copy_replaces: "Ocupa el lugar de lo que hay aquí ahora. Lo de ahora se pone aparte, para que pueda volver atrás.",
    copy_takes_place: "Pasa a ser el hogar de este aparato.",
    copy_picked: "La copia elegida",
    copy_take: "Traer esta copia",
    copy_is_out: |name| format!("La copia está entre sus descargas: {name}"),
    copies_own_only: "Está en el hogar de ejemplo. Las copias son de su propio hogar: vuelva primero a él.",
    keeping: "Guardado en este aparato",
    keeping_promised: "El navegador ha prometido conservarlo aunque al aparato le falte espacio.",
    keeping_not_promised: "El navegador puede borrarlo si al aparato le falta espacio o si pasa mucho tiempo sin abrirse. Haga una copia de vez en cuando.",
    trouble: "Si no se puede guardar",
    trouble_steps: [
        "Primero haga una copia en un archivo. Contiene lo que ve, guardado o no.",
        "Haga espacio: borre en esta página lo puesto aparte y luego fotos, videos o aplicaciones de este aparato. Duskpot lo intenta de nuevo con su próximo cambio.",
        "Una ventana privada no guarda nada. Abra Duskpot en una ventana normal y traiga allí la copia.",
        "Si borra los datos del navegador, también se borra su hogar. Haga antes una copia.",
        "Dos ventanas a la vez no hacen daño: cada una toma lo que guardó la otra.",
    ],
    copy_replace: "Reemplazar con esta copia",
    copy_not_ours: "Este archivo no es una copia de un hogar de Duskpot.",
    copy_newer: "Esta copia la escribió una versión más nueva de Duskpot. Actualice primero; el archivo está bien.",
    copy_damaged: |value| format!("Esta copia está dañada en: {value}. Aquí no cambió nada."),
    copy_unreadable: "No se pudo leer este archivo. Aquí no cambió nada.",
    copy_lacks_readings: "A la copia le faltan lecturas de archivos.",
    copy_no_room: "No hay espacio para poner aparte lo que hay ahora, así que no se cambió nada.",
    aside: "Puesto aparte",
    aside_why: "Lo que una copia reemplazó, las últimas tres veces, y lo que no se pudo leer. Ocupa espacio hasta que lo borre.",
    aside_not_read: "El navegador no dice qué se puso aparte.",
    aside_to_file: "Guardar en un archivo",
    aside_erase_sure: "¿Borrar esto para siempre? Después no se puede recuperar.",
    aside_replaced: |value| format!("El hogar anterior a la copia, {value}"),
    aside_damaged: |value| format!("No se pudo leer, {value}"),
    example_what: "Un hogar inventado en un pueblo inventado de la sierra. Pruebe todo allí: su propio hogar no se toca.",
    example_who: "Ilvane y Toreo viven en Olmaquira, un pueblo de la sierra que no está en ningún mapa, con dos hijos y una abuela. Cocinan en Rufo, un bloque de aluminio en perlita; Brina, de piedra jabón, es la más vieja. Sus últimas dos semanas están en el diario, también los días grises y la tapa abierta.",
    example_not_now: "Su propio hogar no se pudo guardar ahora, por eso sigue en la pantalla. Haga primero una copia en un archivo.",
    example_show: "Ver el ejemplo",
    example_leave: "Volver a mi hogar",
    example_anew: "Empezar el ejemplo de nuevo",
    day: ToldDay {
        title: "Un día entero en 30 segundos",
        what: "Sale el sol, el depósito se calienta, la olla entra al anochecer y hierve. Puede parar el reloj cuando quiera, mirar las pantallas y seguir.",
        what_in_steps: "Este aparato pide menos movimiento, así que el día le espera: cada toque lo adelanta una hora.",
        start: "Ver el día",
        pause: "Pausa",
        go_on: "Seguir",
        step: "Una hora más",
        stop: "Parar",
        again: "Otra vez",
        sun: |sky| format!("Cielo: {sky}."),
        evening: "Se puso el sol.",
        store: |degrees| format!("El depósito tiene {degrees}."),
        pot_in: "Entró la olla: arroz para cinco.",
        boils: "Hierve con el sol guardado.",
        done: "Listo y servido.",
    },
    about_page: AboutPage {
        does: "Qué calcula",
        does_list: [
            "Qué tan caliente está el depósito ahora, según los cielos, las lecturas y las ollas que anota.",
            "Si una olla hervirá esta noche, cuándo hierve y cuándo está lista la comida.",
            "Cuándo debe entrar la olla a más tardar.",
            "Qué ayudaría si hay dudas: tres cosas como mucho, cada una calculada.",
            "Adónde va el calor y qué resulta de la forma en que está hecha su cocina.",
        ],
        sure: "Qué tan seguro está",
        sure_list: [
            "Cada respuesta se pregunta a 512 cocinas que podrían ser la suya: cada una pierde, recibe y guarda algo más o algo menos de calor que lo que dicen las tablas, con un cielo algo mejor o peor. Lo probable dice en cuántas de ellas la comida está lista. Con lo que usted cuenta pesan más las que encajan.",
            "Las cifras vienen de tablas publicadas y de la práctica común. Lo que usted mide vale más: una lectura del termómetro al final del día da mucha más seguridad a la noche.",
            "Las horas y temperaturas se redondean a lo que se sabe de ellas. «Alrededor de» quiere decir eso.",
        ],
        not_known: "Qué no sabe",
        not_known_list: [
            "El tiempo que vendrá. El resto de hoy se toma como el último cielo anotado; un día sin anotar, como sol y nubes; con las cifras a favor, como un día despejado, y en contra, como uno gris.",
            "Lo que nadie anotó: una tapa abierta, una olla sacada antes, sombra o polvo en el panel.",
            "El calor en cada punto del depósito. Conoce la media; junto a la resistencia puede estar más caliente.",
            "La edad de sus frijoles, la sal del agua, lo espeso de la papilla. Pueden duplicar el tiempo de cocción.",
            "Si su cocina está hecha de forma segura. Vea la página de seguridad.",
        ],
        device: "Dónde se guarda",
        device_list: [
            "Todo lo que anota se queda en este aparato. No hay cuenta y nada se envía a ninguna parte.",
            "Tampoco nadie más puede recuperarlo por usted. Haga una copia en un archivo.",
        ],
        offline_looking: "Mirando si todo está en este aparato…",
        offline_ready: "Todo Duskpot está en este aparato. Se abre y funciona sin conexión.",
        offline_unsupported: "Esta ventana del navegador no conserva aplicaciones, así que Duskpot necesita conexión cada vez que se abre. Una ventana normal de un navegador más nuevo lo conservaría.",
        offline_not_stored: "Todavía no está todo Duskpot en este aparato. Quede un minuto con conexión y vuelva a abrir esta página; si no ayuda, haga espacio.",
        version: |version| format!("Duskpot {version}"),
        licence: "Licencia",
        licence_line: "Se puede usar, cambiar y pasar a otros libremente. No hay garantía.",
    },
};
