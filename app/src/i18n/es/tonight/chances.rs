//! Spanish: how sure the answer is.

use crate::i18n::strings::tonight::Chances;

pub(super) const CHANCES: Chances = Chances {
    heading: "¿Qué tan seguro es?",
    expect_boil: |eaten| format!("Esperamos que la olla hierva antes de las {eaten}."),
    expect_done: |eaten| {
        format!("Esperamos que la olla hierva y que la comida esté lista antes de las {eaten}.")
    },
    expect_either: |eaten| {
        format!(
            "Esperamos que la comida esté lista antes de las {eaten}, hirviendo o casi. También se cuece sin hervir, solo que más despacio."
        )
    },
    expect_below: |eaten| {
        format!(
            "Esperamos que la comida esté lista antes de las {eaten}, sin hervir. También se cuece así, solo que más despacio."
        )
    },
    may_stay_cold: "Puede que la olla no llegue a hervir.",
    may_be_late: |eaten| format!("Puede que la olla hierva solo después de las {eaten}."),
    close_boil: |eaten| {
        format!("Va muy justo: la olla puede hervir antes de las {eaten} o solo después.")
    },
    may_not_be_done: |eaten| format!("A las {eaten} puede que la comida aún no esté lista."),
    close_done: |eaten| {
        format!("Va muy justo: la comida puede estar lista antes de las {eaten} o solo después.")
    },
    may_boil_dry: "Puede que el agua se acabe antes de que la comida esté lista.",
    stays_cold: |boiling| {
        format!("Esperamos que la olla no llegue a {boiling}, donde hierve el agua aquí.")
    },
    boils_late: |eaten, boils| {
        format!("A las {eaten} esperamos que la olla aún no hierva: {boils} puede ser.")
    },
    not_done: |eaten| format!("A las {eaten} esperamos que la comida no esté lista."),
    done_late: |eaten, done| {
        format!("A las {eaten} esperamos que la comida aún no esté lista: {done} puede ser.")
    },
    boils_dry: "Esperamos que el agua se acabe antes de que la comida esté lista.",
    boils: "Hierve",
    done: |eaten| format!("Comida lista a las {eaten}"),
    latest: |time, figure| format!("a más tardar a las {time}, para {figure}"),
    sooner: |time, figure| format!("mejor a las {time} a más tardar: {figure} entonces"),
    no_later: |figure| format!("no más tarde, para {figure}"),
    no_time: |figure| format!("apenas {figure} a cualquier hora"),
    most: "En la olla caben",
    up_to: |litres| format!("hasta {litres}"),
    for_odds: |figure| format!("todo junto con el agua, para que la comida esté lista {figure}"),
    nothing: "todavía nada",
    reading: "Leer ahora el termómetro",
    reading_settles: |figure| format!("lo dejaría en casi sí o casi no, {figure} veces"),
    reading_little: "diría poco más",
    breakfast: "Agua para el desayuno",
    breakfast_water: |litres, from, by| {
        format!("{litres} adentro a las {from}, hirviendo a las {by}, después de esta olla")
    },
    then: |odds| format!("Entonces, {odds}."),
    store_goes: |from, to, time| format!("El depósito va de unos {from} a unos {to} a las {time}."),
    store_between: |low, high| format!("En 8 de 10 noches así está entonces entre {low} y {high}."),
    store_from: "desde",
    store_to: "hasta",
    ready_by: |eaten, odds| format!("Comida lista a las {eaten}: {odds}."),
    boils_by: |eaten, odds| format!("Hierve antes de las {eaten}: {odds}."),
};
