//! Spanish: the answer of the screen Tonight.

use crate::i18n::strings::tonight::{Facts, Headlines, Sentences, Sureness, VerdictTexts};

pub(super) const VERDICT: VerdictTexts = VerdictTexts {
    headlines: Headlines {
        will_boil: "Va a hervir",
        will_be_done: "La comida estará lista",
        should_boil: "Debería hervir",
        should_be_done: "La comida debería estar lista",
        may_boil: "Puede que hierva",
        may_be_done: "Puede que esté la comida",
        unlikely_to_boil: "Poco probable que hierva",
        unlikely_to_be_done: "Poco probable que esté la comida",
        may_boil_dry: "Puede secarse",
        not_done: "No estará a tiempo",
        too_late: "Hierve muy tarde",
        will_not_boil: "No va a hervir",
        boils_dry: "Se seca",
        do_not_leave: "No la deje dentro",
        does_not_fit: "No cabe",
        too_little_water: "Muy poca agua",
    },
    sureness: Sureness {
        even_weaker: "aunque el día fuera más flojo",
        as_logged: "si el día fue como se anotó",
        even_grey: "aunque el día fuera gris",
        as_assumed: "si hay sol y nubes por turnos",
        if_all_goes_well: "solo si todo va bien",
        if_clear: "solo tras un día despejado",
        not_even_then: "aunque todo vaya bien",
        not_even_clear: "ni tras un día despejado",
    },
    sentences: Sentences {
        boils_and_done: |eaten| format!("Hierve, y la comida está lista antes de las {eaten}."),
        boils: |eaten| format!("La olla hierve antes de las {eaten}."),
        done_without_boil: |hottest, eaten| {
            format!(
                "La olla llega a unos {hottest}, y la comida está lista antes de las {eaten} sin hervir. También se cuece así, solo que más despacio."
            )
        },
        done_late: |hottest, eaten, done| {
            format!(
                "La olla llega a unos {hottest}, y a las {eaten} la comida no está lista: lo estará {done}, sin hervir."
            )
        },
        spoils: |least, from| {
            format!(
                "En la cocina la comida pasa horas ni fría ni por encima de {least}: {from} ya hay que botarla."
            )
        },
        done_later: |eaten, done| {
            format!("La olla hierve, pero a las {eaten} la comida no está lista: lo estará {done}.")
        },
        not_done: |eaten| format!("La olla hierve, pero a las {eaten} la comida no está lista."),
        boils_later: |eaten, boils| {
            format!("A las {eaten} la olla todavía no hierve: hervirá {boils}.")
        },
        never_boils: |hottest, boiling| {
            format!("La olla llega a unos {hottest}. Aquí el agua hierve a {boiling}.")
        },
        boils_dry: |dry| format!("El agua se acaba {dry}, antes de que la comida esté lista."),
        hope_boils: "Si todo va bien, la olla hierve.",
        hope_done: "Si todo va bien, la comida estará lista de todos modos.",
        sun_unknown: "El sol de hoy todavía no está anotado.",
    },
    facts: Facts {
        put_in: "Métala",
        goes_in: "Entra",
        at: |time| format!("a las {time}"),
        now: "ahora",
        at_the_latest: |time| format!("a más tardar, {time}"),
        boils: "Hierve",
        done: "Comida lista",
        between: |from, to| format!("entre {from} y {to}"),
        at_the_earliest: |time| format!("no antes de las {time}"),
        gets_to: "Llega a",
        leave_in: "Déjela dentro",
        until_eaten: |time| format!("hasta las {time}"),
        take_out: "Sáquela",
        or_it_burns: |time| format!("antes de las {time}, o se quema"),
        look_in: "Mire dentro",
        or_it_is_dry: |time| {
            format!("antes de las {time}: el agua puede acabarse antes de que la comida esté lista")
        },
        or_it_spoils: |time| format!("antes de las {time}, o se echa a perder"),
    },
};
