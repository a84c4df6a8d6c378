//! Spanish: what was learned about a cooker.

use model::odds::Multiplier;

use crate::i18n::strings::cooker::learned::{Against, Learned};

pub(super) const LEARNED: Learned = Learned {
    heading: "Lo que aprendimos de su cocina",
    from: |n_reports| match n_reports {
        1 => "De un aviso en el diario, frente a lo que dicen las tablas.".to_owned(),
        _ => format!("De {n_reports} avisos en el diario, frente a lo que dicen las tablas."),
    },
    nothing_from: |n_reports| {
        let so_far = match n_reports {
            1 => "Un aviso en el diario: ya cuenta".to_owned(),
            _ => format!("{n_reports} avisos en el diario: ya cuentan"),
        };
        format!(
            "{so_far} en las probabilidades, pero aún no se conoce ninguna cifra mucho mejor que por las tablas."
        )
    },
    from_nothing: "Aún no hay ningún aviso, así que hablan las tablas. Cada vez que usted dice cuándo hirvió o estuvo lista una olla, o qué marca un termómetro, Duskpot conoce mejor esta cocina.",
    working: "Leyendo el diario…",
    name: |multiplier| match multiplier {
        Multiplier::Loss => "Calor que se pierde por el aislamiento",
        Multiplier::Contact => "Calor que pasa del depósito a la olla",
        Multiplier::Charging => "Calor del sol",
        Multiplier::Capacity => "Calor que guarda el depósito",
        Multiplier::PotLoss => "Calor que la olla cede al aire",
        Multiplier::GrainTime => "Tiempo de arroz, mazamorra, pasta",
        Multiplier::BeanTime => "Tiempo de frijoles",
        Multiplier::PulseTime => "Tiempo de lentejas, arvejas, garbanzos",
        Multiplier::OtherTime => "Tiempo de lo demás",
    },
    amounts: Against {
        much_less: "mucho menos",
        less: "menos",
        same: "como dice la tabla",
        more: "más",
        much_more: "mucho más",
    },
    times: Against {
        much_less: "mucho más corto",
        less: "más corto",
        same: "como dice la tabla",
        more: "más largo",
        much_more: "mucho más largo",
    },
    so_many_times: |middle, low, high| {
        format!("unas {middle} veces la tabla; entre {low} y {high}")
    },
    figure: |now, told| format!("{now}; según la tabla {told}"),
    figure_at: |now, told, at| format!("{now}; según la tabla {told}; con el depósito a {at}"),
    open: "Aún sin aprender",
    not_sure: "aún no es seguro",
    told_already: "Ya se dijo algo de esto. Hacen falta unas ollas más.",
    taught_by: |multiplier| match multiplier {
        Multiplier::Loss => "Lo diría el termómetro por la mañana, antes del sol.",
        Multiplier::Contact => "Diga cuándo hierven las ollas.",
        Multiplier::Charging => "Lo diría el termómetro al final de un día con el sol anotado.",
        Multiplier::Capacity => {
            "Lo diría el termómetro antes de meter una olla y después de sacarla."
        }
        Multiplier::PotLoss => "Diga cuándo hierven las ollas grandes.",
        Multiplier::GrainTime
        | Multiplier::BeanTime
        | Multiplier::PulseTime
        | Multiplier::OtherTime => "Diga cuándo está lista la comida, o si todavía no.",
    },
};
