//! Spanish: what is said of a cooker that was fitted.

use model::bench::{Change, Condition, Doubt, Limit, Parameter, RunFault, Worth};

use crate::i18n::strings::report::found::{FoundWords, HangTogether};
use crate::i18n::strings::report::text::Number;

pub(super) const FOUND: FoundWords = FoundWords {
    no_cooker: "La cocina, tal como está descrita, no se puede calcular: revísela primero.",
    nothing: "Ningún valor de esta cocina encaja con estas lecturas. ¿Es la cocina que se probó, y \
              están bien las columnas?",
    fault: |fault| match fault {
        RunFault::TooFewReadings => "necesita al menos cinco lecturas del depósito o de la olla",
        RunFault::NoStore => "el depósito hay que leerlo al menos una vez",
        RunFault::NotInOrder => "sus lecturas no van en orden",
        RunFault::NoAir => "no se sabe la temperatura del aire: escríbala en la prueba",
        RunFault::NoPower => {
            "un calentamiento necesita la potencia de la resistencia o la luz del sol"
        }
        RunFault::NoPot => "un hervor necesita una olla con agua: diga cuándo entró y cuánta había",
        RunFault::NotIdle => "un enfriamiento no tiene ni olla ni resistencia",
        RunFault::PotsOverlap => "sus ollas no van una tras otra",
        RunFault::Water => "el agua debe ser más que nada y no más de lo que cabe en la olla",
        _ => "no se puede usar",
    },
    of_run: |run, fault| format!("{run}: {fault}."),
    worth: |worth| match worth {
        Worth::None => "Estos valores no sirven: no use ninguno.",
        Worth::Little => "Estas lecturas dicen poco: use solo lo que contaron.",
        Worth::Rough => "Sirve para una respuesta aproximada.",
        Worth::Good => "Tan bueno como las lecturas.",
    },
    rests_on: |n_runs, scatter| match n_runs {
        1 => format!(
            "De una prueba. Dos de cada tres lecturas quedan a menos de {scatter} de la curva."
        ),
        _ => format!(
            "De {n_runs} pruebas juntas. Dos de cada tres lecturas quedan a menos de {scatter} de las curvas."
        ),
    },
    doubt: |doubt, name, number| match doubt {
        Doubt::NotConverged => "La búsqueda de los mejores valores no terminó.".to_owned(),
        Doubt::DoesNotFollow { times_noise } => format!(
            "Las lecturas se curvan de un modo que esta cocina no puede: lo que sobra es {} veces el \
             ruido del termómetro. ¿Se abrió la tapa, se movió la olla, estaba encendida la resistencia?",
            number(*times_noise)
        ),
        Doubt::ManyOff { share, .. } => format!(
            "{name}: el {} % de las lecturas queda muy lejos y cuenta poco.",
            number(100.0 * share)
        ),
        Doubt::NotTold(parameter) => {
            format!("Estas lecturas dicen poco sobre {}.", inside(*parameter))
        }
        Doubt::NotApart(first, second) => format!(
            "Estas pruebas no distinguen entre {} y {}: solo se conocen juntos. Otra clase de prueba los \
             distinguiría.",
            inside(*first),
            inside(*second)
        ),
        Doubt::Unlikely(parameter) => format!(
            "En una cocina así es raro {}: revise cómo está descrita.",
            inside(*parameter)
        ),
        _ => "Hay otra duda.".to_owned(),
    },
    far_off: |is_pot, name, when, value, off| {
        let of = if is_pot {
            "de la olla"
        } else {
            "del depósito"
        };
        format!(
            "{name}: la lectura {of} de {when}, {value}, se aparta {off} de la curva. Puede que esté \
             mal escrita. Aquí cuenta poco; corríjala o bórrela y vuelva a mirar."
        )
    },
    figures: "Lo que se midió",
    parameter: |parameter| match parameter {
        Parameter::Loss => "Pérdida por el aislamiento",
        Parameter::JacketCapacity => "Calor que guarda el aislamiento",
        Parameter::StoreCapacity => "Calor que guarda el depósito",
        Parameter::MeltingPoint => "Punto de fusión",
        Parameter::MeltingRange => "Margen de fusión",
        Parameter::Heater => "Calor que llega",
        Parameter::Contact => "Contacto con la olla",
        Parameter::PotLoss => "Pérdida de la olla",
    },
    parameter_in: inside,
    told: |low, high, described| {
        format!("{low} a {high} en 8 de 10 casos; descrito como {described}")
    },
    told_at: |said, at| format!("{said}; con el depósito a {at}"),
    not_told: "estas lecturas no lo dicen: vale la descripción",
    held: "fijado según la descripción",
    unit: |parameter, number| match parameter {
        Parameter::Loss => format!("{number}\u{A0}W/K"),
        Parameter::JacketCapacity => format!("{number}\u{A0}kJ/K"),
        Parameter::Contact => format!("{number}\u{A0}W/(m²\u{A0}K)"),
        Parameter::MeltingPoint | Parameter::MeltingRange => format!("{number}\u{A0}K"),
        Parameter::StoreCapacity | Parameter::Heater | Parameter::PotLoss => {
            format!("{number}\u{A0}× lo descrito")
        }
    },
    hang_together: HangTogether {
        summary: "Cómo dependen las cifras unas de otras",
        caption: "Correlaciones: 1 o −1 donde dos cifras solo se conocen juntas, 0 donde no se tocan",
        heads: ["Cifra", "con", "correlación"],
    },
    curve: "Lecturas y curva ajustada",
    curve_of: |run| format!("{run}: lecturas y curva ajustada"),
    store_read: "Depósito, leído",
    store_fitted: "Depósito, ajustado",
    pot_read: "Olla, leída",
    pot_fitted: "Olla, ajustada",
    near: |distance| {
        format!(
            "Dos de cada tres lecturas de esta prueba quedan a menos de {distance} de la curva ajustada."
        )
    },
    left_over: |run| format!("Lo que sobra: {run}"),
    left_store: "Depósito, lectura menos curva",
    left_pot: "Olla, lectura menos curva",
    left_sentence: |most| {
        format!(
            "La lectura más lejana queda a {most} de la curva. Si los puntos oscilan alrededor de \
             cero, todo va bien; si forman un arco, al modelo le falta algo."
        )
    },
    why: "Qué limitó la olla",
    boiled: |time| format!("La olla hierve {time} después de entrar."),
    not_boiled: |hottest| format!("La olla no hierve: si se deja dentro llega a {hottest}."),
    just_below: |hottest| {
        format!(
            "Las lecturas llegan al hervor; la curva ajustada queda por debajo, en {hottest}. No se puede decir más de qué la limitó."
        )
    },
    heat_suffices: "En el depósito hay calor de sobra: no pasa a tiempo a la olla.",
    heat_lacks: "En el depósito no hay calor bastante, por bien que se pase.",
    worst: |limit| match limit {
        Limit::Heat => "Sobre todo falta calor en el depósito.",
        Limit::Contact => "Sobre todo falta contacto entre depósito y olla.",
        Limit::FrozenLayer => "Sobre todo frena el calor la capa que se solidifica bajo la olla.",
        Limit::Jacket => "Sobre todo se pierde demasiado por el aislamiento.",
        Limit::PotLoss => "Sobre todo la propia olla pierde demasiado.",
        Limit::HeaterMatch => "Sobre todo la resistencia no va con los paneles.",
        Limit::Sun => "Sobre todo falta sol en los paneles.",
    },
    with: |change, number| match change {
        Change::AsItWas => "Tal como estaba".to_owned(),
        Change::Contact(times) => format!("Con {} veces el contacto", number(*times)),
        Change::Mass(mass_kg) => format!("Con {} kg más de depósito", number(*mass_kg)),
        Change::Hotter(rise_k) => format!("Con el depósito {} más caliente", number(*rise_k)),
        Change::NoLayer => "Con más metal, como aletas, en el depósito".to_owned(),
        Change::Loss(share) => format!(
            "Con el {} % de la pérdida del aislamiento",
            number(100.0 * share)
        ),
        Change::PotLoss(share) => format!(
            "Con el {} % de la pérdida de la olla",
            number(100.0 * share)
        ),
        Change::Match(times) => {
            format!("Con una resistencia que toma {} veces más", number(*times))
        }
        Change::Panels(times) => format!("Con {} veces los paneles", number(*times)),
        Change::Water(share) => format!("Con {} de agua", number(*share)),
    },
    then_boils: |with, time| format!("{with} hierve en {time}."),
    then_not: |with, hottest| format!("{with} llega a {hottest} y no hierve."),
    then_same: |with| format!("{with} no gana casi nada."),
    advice: "Qué la haría hervir, lo más barato primero",
    advise: |change, number| match change {
        Change::AsItWas => "Dejarla como está".to_owned(),
        Change::Contact(times) => format!(
            "Mejor contacto, {} veces el actual: aplanar las caras, sujetar la olla, una película fina \
             de aceite que aguante ese calor",
            number(*times)
        ),
        Change::Mass(mass_kg) => format!("{} kg más de depósito", number(*mass_kg)),
        Change::Hotter(rise_k) => format!(
            "Cargar el depósito {} más caliente, con el termostato puesto a ello, si todas sus partes lo aguantan",
            number(*rise_k)
        ),
        Change::NoLayer => "Más metal, como aletas, en el depósito que se funde".to_owned(),
        Change::Loss(share) => format!(
            "Un aislamiento mejor, con el {} % de la pérdida actual",
            number(100.0 * share)
        ),
        Change::PotLoss(share) => format!(
            "Abrigar la olla, hasta el {} % de su pérdida actual",
            number(100.0 * share)
        ),
        Change::Match(times) => format!(
            "Una resistencia que vaya con los paneles, para {} veces el calor",
            number(*times)
        ),
        Change::Panels(times) => format!("{} veces los paneles", number(*times)),
        Change::Water(share) => format!("Menos agua: {}", number(*share)),
    },
    costs: |advice, time, cost| format!("{advice}: hierve en {time}, cuesta {cost}."),
    no_price: |advice, time| format!("{advice}: hierve en {time}."),
    free: |advice, time| format!("{advice}: hierve en {time}, no cuesta nada."),
    no_advice: "Ningún cambio de los que se probaron, por sí solo, la hace hervir.",
    care: "Trabaje con el depósito frío y los paneles tapados. El aceite, la tela y la paja arden junto \
           a un depósito caliente; los cables, según las normas del lugar y por alguien autorizado.",
    heat: "Adónde fue el calor mientras la olla estuvo dentro",
    heat_parts: [
        "a la olla y el agua",
        "con el vapor",
        "perdido por la olla",
        "perdido por el aislamiento",
        "perdido con la cocina abierta",
        "queda en el depósito",
    ],
    heat_sentence: |all, food| format!("De {all}, {food} pasaron a la olla."),
    standard: "Valores para comparar cocinas",
    litres: "Litros que hierve una carga completa",
    first_litre: "Primer litro, desde 20 °C",
    power_50: "Potencia 50 K por debajo del hervor",
    hold: "Se mantiene por encima del hervor",
    overnight: "Se pierde en una noche de 12 horas",
    sun: "Parte del sol del día que llega a la comida",
    never: "nunca",
    longer: "más de lo que se calculó",
    give_or_take: |spread| format!("{spread} arriba o abajo"),
    boil_time: [
        "Tiempo hasta hervir, leído",
        "cuando las lecturas llegan al hervor; arriba, la curva ajustada",
    ],
    no_boil_read: "no hay hervor en las lecturas",
    boil_corrected: "Lo mismo de 25 °C a 100 °C",
    efficiency: "Parte del calor entregado que tomó el agua",
    above_all: "más que todo el calor que hubo: las lecturas, el agua o la potencia del calentador han de estar mal",
    cooking_power: "Potencia de cocción normalizada a 50 K (ASAE S580.1)",
    not_met: "No se da la potencia de cocción de la norma, porque no se cumplen sus condiciones:",
    condition,
    methods: "Todo se calcula en la red térmica con los valores medidos, con aire a 20 °C y desde un \
              depósito cargado hasta su corte. Qué es cada uno está en el informe de pruebas.",
};

fn inside(parameter: Parameter) -> &'static str {
    match parameter {
        Parameter::Loss => "la pérdida por el aislamiento",
        Parameter::JacketCapacity => "el calor que guarda el aislamiento",
        Parameter::StoreCapacity => "el calor que guarda el depósito",
        Parameter::MeltingPoint => "el punto de fusión",
        Parameter::MeltingRange => "el margen de fusión",
        Parameter::Heater => "el calor que llega",
        Parameter::Contact => "el contacto con la olla",
        Parameter::PotLoss => "la pérdida de la olla",
    }
}

fn condition(condition: &Condition, number: Number<'_>) -> String {
    match condition {
        Condition::NoIrradiance => {
            "no se leyó la luz del sol; la norma no dice nada de un depósito que se vacía de noche"
                .to_owned()
        }
        Condition::Irradiance { intervals } => format!(
            "luz fuera de 450 a 1100 W/m², o que cambia más de 100 W/m², en {intervals} intervalos"
        ),
        Condition::Air { mean_c } => format!("aire a {} °C, no de 20 a 35 °C", number(*mean_c)),
        Condition::WindUnknown => "no se anotó el viento".to_owned(),
        Condition::Wind { wind_m_s } => {
            format!("viento de {} m/s, más de 1 m/s", number(*wind_m_s))
        }
        Condition::AreaUnknown => "no se anotó la superficie que recibe el sol".to_owned(),
        Condition::Load { load_kg_m2 } => {
            format!(
                "{} kg de agua por metro cuadrado, no 7 kg",
                number(*load_kg_m2)
            )
        }
        Condition::TooFewIntervals { intervals } => {
            format!("{intervals} intervalos de diez minutos, menos de 30")
        }
        Condition::Scatter { r2 } => {
            format!(
                "la recta explica el {} % de la dispersión, no el 75 %",
                number(100.0 * r2)
            )
        }
        _ => "otra condición".to_owned(),
    }
}
