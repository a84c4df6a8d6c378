//! Spanish: the answer of the screen Tonight.

use crate::i18n::strings::tonight::{Facts, Headlines, Sentences, Sureness, VerdictTexts};

pub(super) const VERDICT: VerdictTexts = VerdictTexts {
    headlines: Headlines {
        will_boil: "Va a hervir",
        will_be_done: "Estará lista",
        should_boil: "Debería hervir",
        should_be_done: "Debería estar lista",
        may_not_boil: "Tal vez no hierva",
        may_not_be_done: "Tal vez no esté lista",
        may_boil_dry: "Puede secarse",
        not_done: "No estará a tiempo",
        too_late: "Hierve muy tarde",
        will_not_boil: "No va a hervir",
        boils_dry: "Se seca",
        does_not_fit: "No cabe",
    },
    sureness: Sureness {
        even_weaker: "aunque el día fuera más flojo",
        as_logged: "si el día fue como se anotó",
        as_assumed: "si hay sol y nubes por turnos",
        if_all_goes_well: "a menos que todo vaya bien",
        not_even_then: "aunque todo vaya bien",
    },
    sentences: Sentences {
        boils_and_done: |eaten| format!("Hierve y está lista antes de las {eaten}."),
        boils: |eaten| format!("Hierve antes de las {eaten}."),
        done_without_boil: |hottest, eaten| {
            format!("Llega a unos {hottest} y está lista antes de las {eaten} sin hervir.")
        },
        done_later: |eaten, done| {
            format!("Hierve, pero a las {eaten} no está lista: lo estará {done}.")
        },
        not_done: |eaten| format!("Hierve, pero a las {eaten} no está lista."),
        boils_later: |eaten, boils| format!("A las {eaten} todavía no hierve: hervirá {boils}."),
        never_boils: |hottest, boiling| {
            format!("Llega a unos {hottest}. Aquí el agua hierve a {boiling}.")
        },
        boils_dry: |dry| format!("El agua se acaba {dry}, antes de que la comida esté lista."),
    },
    facts: Facts {
        put_in: "Métala",
        at: |time| format!("a las {time}"),
        now: "ahora",
        at_the_latest: |time| format!("a más tardar, {time}"),
        boils: "Hierve",
        done: "Lista",
        between: |from, to| format!("entre {from} y {to}"),
        at_the_earliest: |time| format!("no antes de las {time}"),
        gets_to: "Llega a",
        leave_in: "Déjela dentro",
        until_eaten: |time| format!("hasta las {time}"),
        take_out: "Sáquela",
        or_it_burns: |time| format!("antes de las {time}, o se quema"),
    },
};
