//! Spanish: the screen Tonight.

mod chances;
mod running;
mod verdict;

use crate::i18n::strings::tonight::{
    CareTexts, CourseTexts, HeatTexts, HelpTexts, NowLine, PlanTexts, StoreTexts, Tonight,
};

pub(super) const TONIGHT: Tonight = Tonight {
    title: "Esta noche",
    now: NowLine {
        sun_from: |day, time, sunrise| format!("{day}, {time} · sol desde las {sunrise}"),
        sun_until: |day, time, sunset| format!("{day}, {time} · sol hasta las {sunset}"),
        sun_is_down: |day, time| format!("{day}, {time} · ya se puso el sol"),
        sun_stays_up: |day, time| format!("{day}, {time} · el sol no se pone"),
    },
    verdict: verdict::VERDICT,
    plan: PlanTexts {
        heading: "Qué se cocina",
        dish: "Plato",
        people: "Personas",
        fewer: "Menos personas",
        more: "Más personas",
        food_and_water: |food, dish, water| format!("{food} de {dish}, {water} de agua"),
        liquid: |litres, dish| format!("{litres} de {dish}"),
        food: "Comida, como se compra",
        how_much: "Cuánto",
        water: "Agua",
        less_food: "Menos comida",
        more_food: "Más comida",
        less_water: "Menos agua",
        more_water: "Más agua",
        pot: "Olla",
        usual_pot: |litres| format!("{litres}, la de siempre"),
        goes_in: "La olla entra",
        now: "Ahora",
        at_a_time: "Más tarde",
        goes_in_at: "Entra a las",
        eaten_at: "Se come a las",
        on_day: |day| format!("Es decir, {day}."),
        details: "Olla, tapa, temperatura inicial",
        pot_kind: "De qué es",
        wrap: "Qué la rodea",
        lid: "Su tapa",
        start: "Temperatura de lo que entra",
        colder: "Más frío",
        warmer: "Más caliente",
        as_the_air: "Tan caliente como el aire.",
        start_meal: "La olla entra ahora",
    },
    help: HelpTexts {
        heading: "Qué ayudaría",
        nothing: "Nada de lo que conocemos hace probable que la comida esté lista a tiempo solo con este calor.",
        looking: "Calculando…",
        likelier: "Nada lo asegura solo con este calor. Esto lo hace más probable:",
        lid_on: ("Ponga la tapa y déjela puesta.", "Con tapa"),
        earlier: (
            |time| format!("Meta la olla a las {time}."),
            |time| format!("A las {time}"),
        ),
        at_once: ("Meta la olla ahora.", "Ahora"),
        soak: (
            |time| format!("Remojados estarían cocidos: remójelos {time} o más y bote esa agua."),
            "Remojados",
        ),
        wait: (
            |time| format!("Deje la cocina al sol y meta la olla a las {time}."),
            |time| format!("A las {time}"),
        ),
        warm: (
            |degrees| {
                format!("Entibie antes el agua a {degrees}, tal vez en una botella oscura al sol.")
            },
            |degrees| format!("Empezar a {degrees}"),
        ),
        wrap: (
            "Abrigue la olla, sin que nada del abrigo toque el depósito caliente.",
            "Abrigarla",
        ),
        smaller: (
            |litres| format!("Use la olla de {litres}."),
            |litres| format!("Olla de {litres}"),
        ),
        fewer: (
            |people, amounts| match people {
                1 => format!("Cocine para una persona: {amounts}."),
                _ => format!("Cocine para {people} personas: {amounts}."),
            },
            |people| format!("Para {people}"),
        ),
        less: (|amounts| format!("Cocine menos: {amounts}."), "Menos"),
        more_water: (
            |litres| format!("Ponga {litres} de agua: con menos se seca."),
            |litres| format!("{litres} de agua"),
        ),
        later: (
            |time| format!("Coma a las {time}."),
            |time| format!("Comer a las {time}"),
        ),
        top_up: (
            |time| format!("Caliente el depósito con su segunda carga, unos {time} desde ahora."),
            "Ya está puesta",
        ),
        fire: (
            |time, degrees| {
                format!(
                    "Caliente antes la olla en otro fuego, unos {time}, hasta que tenga {degrees}."
                )
            },
            |degrees| format!("Empezar a {degrees}"),
        ),
    },
    store: StoreTexts {
        heading: "El depósito ahora",
        now: "Ahora",
        boils: "Hierve el agua",
        melts: "Se funde",
        cut_out: "Se apaga",
        can_boil: |degrees, litres| {
            format!(
                "El depósito está a unos {degrees}: calor para hervir unos {litres} de agua, \
                 si nada se perdiera en el camino."
            )
        },
        can_boil_between: |degrees, low, high| {
            format!(
                "El depósito está a unos {degrees}: calor para hervir entre {low} y {high} de agua, \
                 si nada se perdiera en el camino."
            )
        },
        may_boil: |degrees, litres| {
            format!(
                "El depósito está a unos {degrees}. Puede que no alcance para hervir una taza; en el \
                 mejor caso hierve {litres}."
            )
        },
        can_boil_little: |degrees| {
            format!("El depósito está a unos {degrees}. No alcanza para hervir una taza.")
        },
        too_cold: |degrees| {
            format!("El depósito está a unos {degrees}. Entibia una olla, pero no la hierve.")
        },
        pot_is_in: |degrees| {
            format!("El depósito está a unos {degrees}. Parte de su calor ya está en la olla.")
        },
        molten: |share| format!("Está fundido cerca del {share} de lo que se funde en él."),
        log_reading: "Anotar una lectura del termómetro",
        reading: "El depósito ahora",
        lower: "Más bajo",
        higher: "Más alto",
        reading_hint: "Tocando el depósito, donde va la olla.",
        nothing_logged: "Todavía no hay nada anotado: se supone que el depósito amaneció frío y que hay sol y nubes por turnos.",
        sky_not_logged: "El sol de hoy no está anotado: se suponen sol y nubes por turnos.",
        log_sky: "Toque las horas de hoy",
    },
    course: CourseTexts {
        heading: "A lo largo de la noche",
        store: "Depósito",
        pot: "Olla",
        boils_at: |degrees| format!("hierve {degrees}"),
        in_at: |time| format!("entra {time}"),
        boils: |time| format!("hierve {time}"),
        done: |time| format!("comida lista {time}"),
        eaten: |time| format!("se come {time}"),
        now: |time| format!("ahora {time}"),
        no_past: "Lo de antes no se dibuja: nadie lo midió.",
        sentence: |from, to, end, hottest| {
            format!("El depósito pasa de {from} a {to} a las {end}; la olla llega a {hottest}.")
        },
        time: "Hora",
    },
    heat: HeatTexts {
        heading: "Adónde va el calor",
        food: "A la olla y la comida",
        steam: "Se va con el vapor",
        pot: "Por las paredes y la tapa de la olla",
        jacket: "A través del aislamiento",
        open: "Mientras estuvo abierta",
        left: "Queda en el depósito",
        has: |store| format!("El depósito tiene {store} cuando entra la olla."),
        has_with_sun: |store, sun| {
            format!(
                "El depósito tiene {store} cuando entra la olla, y recibe {sun} del sol mientras \
                 tanto."
            )
        },
        reaches: |food| format!("De eso, {food} llegan a la olla y la comida."),
        reaches_and_steams: |food, steam| {
            format!(
                "De eso, {food} se quedan en la olla y la comida, y {steam} salen de ellas con el \
                 vapor."
            )
        },
    },
    care: CareTexts {
        heading: "Tenga cuidado",
        more: "Más que cuidar",
        hot_store: |degrees| {
            format!(
                "El depósito está a unos {degrees} y quema al tocarlo, aunque no parezca \
                 caliente. Use una agarradera o un trapo grueso y seco, y no deje que los niños \
                 se acerquen."
            )
        },
        igniting_store: |degrees| {
            format!(
                "El depósito está a unos {degrees}: el aceite, la paja, la cáscara, la tela y el \
                 papel que queden sobre él pueden prenderse. Quema al tocarlo; no deje que los \
                 niños se acerquen."
            )
        },
        nitrate_on_aluminium: "La sal nunca debe calentarse de más contra el aluminio: ese fuego no se apaga. Quédese por debajo del corte.",
        unsafe_beans: |time| {
            format!(
                "No coma estos frijoles antes de que hayan hervido fuerte {time}: si solo se \
                 calentaron, pueden enfermarle gravemente. Hiérvalos en otro fuego."
            )
        },
        cassava: "La yuca amarga tiene cianuro. Pélela, rállela o remójela varios días, hiérvala sin tapa y bote el agua.",
        core: |degrees| format!("El centro de la comida debe haber llegado a {degrees}."),
        hold_hot: |degrees| {
            format!("Manténgala a {degrees} o más hasta comerla, o enfríela rápido.")
        },
        never_overnight: "Nunca la deje toda la noche en la cocina mientras se enfría. Volver a hervirla no la hace segura.",
    },
    running: running::RUNNING,
    chances: chances::CHANCES,
    no_estimate: "Con esta cocina, este lugar o este diario no se puede calcular nada. Revise las partes de la cocina.",
    to_cooker: "Ir a la cocina",
};
