//! Spanish: a test run that goes on.

use crate::i18n::strings::runs::live::Live;

pub(super) const LIVE: Live = Live {
    since: |time, n_readings| format!("Desde {time} · {}", readings(n_readings)),
    was: |from, to, n_readings| format!("{from} a {to} · {}", readings(n_readings)),
    clock: "Próxima lectura",
    next_in: "en",
    now: "Lea ahora",
    every: |every, due| format!("Cada {every}: la próxima, {due}."),
    late: |time| format!("{time} de retraso. No se pierde nada: lea ahora, la hora queda anotada."),
    when_you_can: "Cuando pueda",
    left_alone: |time| {
        format!(
            "Última anotación: {time}. Lea ahora, o dé su hora a lo que se leyó entretanto: la hora siguiente se propone sola."
        )
    },
    missed_one: "Con la pantalla apagada tocaba una lectura. Siga con la próxima.",
    missed: |count| {
        format!("Con la pantalla apagada tocaban {count} lecturas. Siga con la próxima.")
    },
    ends: |time, length| format!("Debería bastar {time}, {length} después de empezar."),
    ends_with_pot: "Cuánto dura se cuenta desde que entra la olla.",
    has_told: "Ya ha durado lo bastante para saber lo que se busca.",
    remind: "Cuánto dura, y avisos",
    keep_on: "Dejar la pantalla encendida",
    keep_on_detail: "Mientras se muestre esta página",
    call: "Avisarme de cada lectura",
    call_detail: "Vibra y, si el navegador puede, muestra un aviso. Un teléfono bloqueado puede no avisar; el reloj sigue igual.",
    no_wake: "Este navegador no puede dejar la pantalla encendida. Alargue el tiempo de pantalla en los ajustes del teléfono.",
    no_notices: "Este navegador no muestra avisos. Deje la página abierta.",
    denied: "Los avisos no están permitidos para esta página; se cambia en los ajustes del navegador.",
    no_buzz: "Este aparato no vibra.",
    notice: |name| format!("{name}: toca leer"),
    notice_body: "Lea el termómetro y anótelo.",
    entry: "Anotar",
    channel: "Qué se leyó",
    store: "Depósito",
    pot: "Olla",
    air: "Aire",
    power: "Potencia",
    shows: "Marca",
    lower: "menos",
    higher: "más",
    at: "Leído a las",
    at_hint: "Vacío quiere decir ahora.",
    at_proposed: "Propuesta a partir de la lectura anterior. Cámbiela por la que dice el papel.",
    at_within: "Una hora entre el comienzo y el final de la prueba.",
    note: "Anotarlo",
    note_at: |time| format!("Anotarlo: {time}"),
    from_paper: "Anotar desde el papel",
    readings: "Lecturas",
    of_text: |count, span| {
        format!(
            "{count} filas en {span}, guardadas como el texto del que vinieron. «Lo que dice» las dibuja."
        )
    },
    none_yet: "Ninguna todavía. La primera pone en marcha el reloj.",
    value: |name, value| format!("{name} {value}"),
    show_all: |count| format!("Ver las {count}"),
    change: "Cambiar una lectura",
    plot: "Hasta ahora",
    foreseen_store: "depósito, según la descripción",
    foreseen_pot: "olla, según la descripción",
    read: "leído",
    sentence: |value, time| format!("El depósito marcaba {value}: {time}."),
    above: |difference| format!("Son {difference} por encima de la cocina según su descripción."),
    below: |difference| format!("Son {difference} por debajo de la cocina según su descripción."),
    as_described: "Coincide con la cocina según su descripción.",
    time: "Hora",
    pots: "Olla",
    pot_in_since: |what, time| format!("{what}, dentro desde {time}"),
    pot_was_in: |what, from, to| format!("{what}, dentro de {from} a {to}"),
    water_lid: |water, lid| format!("{water} de agua, {lid}"),
    left: |water| format!("quedan {water}"),
    change_pot: "Cambiar la olla",
    pot_changed: "La olla está cambiada.",
    pot_erased: "La olla está borrada.",
    out_hint: "Vacío quiere decir que sigue dentro.",
    put_in: "La olla entra ahora",
    take_out: "La olla sale ahora",
    was_put_in: "La olla entró a esa hora",
    was_taken_out: "La olla salió a esa hora",
    earlier: "A otra hora",
    went_in: "Entró a las",
    came_out: "Salió a las",
    boils: "Ya hierve",
    boiled_at: |time| format!("Hirvió: {time}"),
    boils_hint: |degrees| format!("Anota {degrees} en la olla: a eso hierve el agua aquí."),
    water: "Agua",
    start: "Temperatura del agua al entrar",
    left_label: "Lo que queda, pesado",
    left_hint: "Vacío quiere decir sin pesar.",
    too_few: |least, read| {
        format!("De menos de {least} lecturas de depósito u olla no se halla nada; van {read}.")
    },
    more_readings: "Anotar más lecturas",
    finish: "Terminar la prueba",
    finish_earlier: "Terminó antes",
    finished: "Terminó a las",
    finish_at: |time| format!("Terminar la prueba: {time}"),
    go_on: "Que siga",
    to_fit: "Lo que dice",
    erase: "Borrar la prueba",
    gone: "Esta prueba ya no está.",
};

fn readings(count: usize) -> String {
    match count {
        1 => "1 lectura".to_owned(),
        _ => format!("{count} lecturas"),
    }
}
