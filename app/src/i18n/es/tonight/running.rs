//! Spanish: a meal in the cooker.

use crate::i18n::strings::tonight::Running;

pub(super) const RUNNING: Running = Running {
    heading: |dish| format!("En la cocina: {dish}"),
    went_in: |amounts, time| format!("{amounts}; dentro desde las {time}."),
    goes_in: |amounts, time| format!("{amounts}; entra a las {time}."),
    boils: |time| format!("Hierve {time}"),
    should_boil_now: "Ya debería hervir",
    will_not_boil: |hottest| format!("No hierve, llega a unos {hottest}"),
    may_not_boil: "Puede que no hierva",
    done: |time| format!("Comida lista {time}"),
    not_done_by: |time| format!("A las {time} la comida no está lista"),
    should_be_done: "La comida ya debería estar lista",
    is_done: "Comida lista",
    in_time: |span| format!("en {span}"),
    at_in: |about, span| format!("{about}, en {span}"),
    about_now: "más o menos ahora",
    between: |from, to| format!("Entre {from} y {to}, por lo que se sabe."),
    not_before: |time| format!("No antes de las {time}, por lo que se sabe."),
    out_by: |time| format!("Saque la olla antes de las {time}, o se quema."),
    lacks_water: |time| {
        format!(
            "Mire dentro antes de las {time}: el agua puede acabarse antes de que la comida esté \
             lista. Añada agua caliente."
        )
    },
    spoils_by: |time| format!("Saque la olla antes de las {time}, o la comida se echa a perder."),
    was_to_be_eaten: |time| format!("Se iba a comer a las {time}."),
    stays_until: |time| format!("Puede quedarse hasta las {time}."),
    boiled_at: |time| format!("Hirvió a las {time}."),
    not_boiled_by: |time| format!("A las {time} todavía no hervía."),
    done_at: |time| format!("La comida estuvo lista a las {time}."),
    not_done_then: |time| format!("A las {time} la comida no estaba lista."),
    out_at: |time| format!("Salió a las {time}."),
    ask: "¿Qué ve usted?",
    boils_now: "Ya hierve",
    not_yet: "Todavía no hierve",
    not_done_yet: "Todavía no está lista",
    done_now: "Ya está lista",
    out_now: "Ya la saqué",
    after_heading: |dish| format!("¿Cómo salió: {dish}?"),
    after_told: |dish| format!("Así salió: {dish}"),
    after_why: "Lo que usted diga queda en el diario. Deje vacío lo que no sepa.",
    when_boiled: "Hirvió a las",
    did_not_boil: "No hirvió",
    was_not_done: "La comida no estuvo lista",
    when_done: "La comida estuvo lista a las",
    when_out: "Salió a las",
    keep: "Guardar",
    plan_next: "Pensar la próxima comida",
};
