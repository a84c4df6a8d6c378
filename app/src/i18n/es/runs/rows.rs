//! Spanish: single rows of an imported run.

use crate::i18n::strings::runs::rows::Rows;

pub(super) const ROWS: Rows = Rows {
    heading: "Filas sueltas",
    lead: "Abra una fila para corregir una lectura o para omitirla. El texto mismo se guarda tal como llegó, y lo que cambie puede recuperarse.",
    none: "No hay nada que decir de ninguna fila.",
    more: |count| format!("y {count} filas más como estas"),
    count: |n_changed, n_left_out| {
        format!("Lecturas corregidas a mano: {n_changed}. Omitidas a mano: {n_left_out}.")
    },
    other: "Cualquier otra fila",
    go_to: "Fila u hora",
    go_to_hint: "El número de la fila en el texto, o una hora como 18:05.",
    show: "Mostrarla",
    earlier: "Filas anteriores",
    later: "Filas siguientes",
    row: |row, time| format!("Fila {row} · {time}"),
    left_out: "omitida",
    change: |row| format!("Fila {row}"),
    text: |read| format!("El texto dice: {read}."),
    empty: "Un campo que usted vacíe queda omitido.",
    leave_out: "Omitir la fila",
    bring_back: "Como en el texto",
    was_changed: |row| format!("La fila {row} está corregida. El texto se guarda como estaba."),
    was_left_out: |row| format!("La fila {row} queda omitida. El texto se guarda como estaba."),
    was_brought_back: |row| format!("La fila {row} vale otra vez como en el texto."),
};
