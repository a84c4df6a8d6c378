//! Spanish: the guide to a test run.

use model::bench::RunKind;

use crate::i18n::strings::runs::guide::{Guide, KindWords};

pub(super) const GUIDE: Guide = Guide {
    title: "Nueva prueba",
    choose: "¿Qué se quiere saber?",
    of: |kind| match kind {
        RunKind::HeatUp => &HEAT_UP,
        RunKind::CoolDown => &COOL_DOWN,
        RunKind::Boil => &BOIL,
        RunKind::Free => &FREE,
    },
    takes: |time, every| {
        format!("Tarda unos {time} desde el comienzo; al principio, una lectura cada {every}.")
    },
    takes_pot: |time, every| {
        format!(
            "Tarda unos {time} desde que entra la olla; al principio, una lectura cada {every}."
        )
    },
    cannot_foresee: "No se puede calcular cuánto tarda con esta cocina. Lea cada diez minutos, y cada uno o dos mientras haya una olla dentro.",
    steps: "Paso a paso",
    write: "Qué se anota",
    cautions: "Antes de empezar",
    before: "Al empezar",
    name: "Nombre de la prueba",
    named: |kind, day| format!("{kind}, {day}"),
    cooker: "Cocina",
    store: "El termómetro del depósito marca",
    store_hint: "Es la primera lectura. También dice cada cuánto hay que leer.",
    air: "Aire junto a la cocina",
    air_hint: "A la sombra, a un brazo de distancia.",
    heater: "Potencia de la resistencia",
    heater_hint: |watts| {
        format!(
            "Voltios por amperios, medidos en la resistencia. Con pleno sol estos paneles deberían dar {watts}."
        )
    },
    notes: "Algo más: viento, quién lee, qué termómetro",
    began: "Cuándo empezó",
    began_hint: "Vacío significa ahora; una hora que aún no ha llegado es la de ayer.",
    day: "Qué día",
    day_hint: "Vacío significa la última vez que el reloj marcó esa hora.",
    ended: "Cuándo terminó",
    ended_hint: "Para una prueba que ya terminó y quedó anotada en papel. Vacío significa que sigue en marcha.",
    write_over: "Anotar esta prueba, y luego sus lecturas",
    start: "Empezar la prueba ahora",
    start_earlier: "Empezar la prueba a esa hora",
    goes_on: |name| format!("{name} sigue en marcha."),
    to_it: "Seguir con ella",
};

const HEAT_UP: KindWords = KindWords {
    tells: "Cuánto calor guarda el depósito y qué parte de la potencia le llega. La resistencia está encendida, sin olla.",
    steps: &[
        "Empiece por la mañana con el depósito frío.",
        "Meta un termómetro en el depósito, a medio camino entre la resistencia y el asiento, de modo que lo toque.",
        "Cierre la tapa como de noche. No entra ninguna olla.",
        "Mida la potencia de la resistencia, o anótela cada vez junto con la temperatura.",
        "Encienda la resistencia al empezar la prueba.",
        "Pare cuando corte el termostato o se vaya el sol.",
    ],
    write: "La temperatura del depósito y la potencia de la resistencia, siempre en el mismo momento.",
};

const COOL_DOWN: KindWords = KindWords {
    tells: "Cuánto deja salir el aislamiento. Nada encendido y ninguna olla dentro.",
    steps: &[
        "Empiece con el depósito caliente, una hora después de apagar la resistencia, para que el aislamiento se haya calentado del todo.",
        "Desconecte el panel de la resistencia, o tápelo.",
        "Meta un termómetro en el depósito de modo que se lea con la tapa cerrada.",
        "Cierre la tapa como de noche y no la abra: cada mirada deja salir calor.",
        "Proteja la cocina del viento y del sol.",
        "Pare cuando el depósito haya perdido la mitad de lo que estaba por encima del aire.",
    ],
    write: "La temperatura del depósito, y la del aire al menos al principio y al final.",
};

const BOIL: KindWords = KindWords {
    tells: "Cómo pasa el calor del depósito a la olla y cuánto pierde la olla. Entra una olla con agua pesada.",
    steps: &[
        "Empiece con el depósito caliente, la resistencia apagada y el panel cubierto.",
        "Pese el agua: un kilogramo es un litro. Lea a qué temperatura está.",
        "Pase un segundo termómetro por la tapa hasta el agua, sin tocar el fondo de la olla.",
        "Lea el depósito, empiece la prueba, meta la olla y dígalo aquí enseguida.",
        "Deje la tapa puesta. Lea hasta el final aunque no hierva.",
        "Siga diez minutos después de que hierva, o de que deje de calentarse. Luego pese lo que queda.",
    ],
    write: "La temperatura del agua cada vez; la del depósito, una de cada dos o tres.",
};

const FREE: KindWords = KindWords {
    tells: "Varias de estas seguidas: una carga, una espera, una o dos ollas.",
    steps: &[
        "Meta un termómetro en el depósito y otro en cada olla.",
        "Empiece la prueba y diga aquí cada olla cuando entra y cuando sale.",
        "Anote la potencia de la resistencia cuando cambie, y 0 cuando esté apagada.",
        "Lea más a menudo mientras haya una olla dentro.",
    ],
    write: "El depósito siempre, la olla mientras está dentro, la potencia cuando cambia, el aire de vez en cuando.",
};
