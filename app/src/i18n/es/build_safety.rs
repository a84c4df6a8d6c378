//! Spanish: what must not be built, and what must be told of a build.

use model::insulation::InsulationHazard;
use model::media::Hazard;

use crate::i18n::strings::build_safety::{BuildSafety, Cautions, Refusals};

pub(super) const BUILD_SAFETY: BuildSafety = BuildSafety {
    refusals: Refusals {
        nitrate_organic: |nitrate, organic| {
            format!("Nunca {nitrate} con {organic}: calientes, los dos juntos pueden explotar.")
        },
        nitrate_oil: |nitrate| {
            format!(
                "Nunca aceite ni grasa sobre un depósito de {nitrate}: la sal aviva un fuego que no se puede apagar."
            )
        },
        nitrate_jacket: |nitrate, insulation| {
            format!(
                "Nunca {insulation} alrededor de {nitrate}: arde, y la sal aviva el fuego. Use un aislante mineral."
            )
        },
        nitrate_pot: |nitrate| {
            format!(
                "Nunca una olla dentro de {nitrate} fundido: tocaría comida y lo que se derrame. Ponga la olla sobre una placa."
            )
        },
        nitrate_hydrate: |nitrate, hydrate| {
            format!(
                "Nunca {nitrate} con {hydrate}: su agua se vuelve vapor y arroja la sal fundida."
            )
        },
        above_medium: |medium, limit, cutout| {
            format!(
                "El termostato cortaría a {cutout}, pero el material «{medium}» aguanta {limit} como máximo. Más caliente se descompone, se funde o arde."
            )
        },
        above_insulation: |insulation, limit, face| {
            format!(
                "El aislante «{insulation}» llegaría a {face}, pero aguanta {limit} como máximo. Baje el termostato o ponga otro aislante por dentro."
            )
        },
        oil_too_hot: |limit, cutout| {
            format!(
                "El aceite del asiento humea por encima de {limit} y puede arder; este depósito llega a {cutout}. Elija un asiento seco o un corte más bajo."
            )
        },
        cutout_unknown: "Hace falta la temperatura del termostato.",
    },
    cautions: Cautions {
        nitrate_aluminium: "Junto a aluminio la sal nunca debe recalentarse: ataca el metal, y el aluminio que arde en nitrato no se puede apagar.",
        nitrate_unknown: "Asegúrese de que nada en el aislamiento pueda arder.",
        nitrate_binder: |insulation| {
            format!(
                "Antes de poner la sal, queme al aire libre la resina del aislante «{insulation}»: arde."
            )
        },
        corrodes: |metal| format!("Ataca el metal «{metal}»: busque fugas."),
        switch_dc: "Un termostato o interruptor de corriente alterna hace aquí un arco y se quema: use uno para corriente continua.",
        above_touch: |volts, limit| {
            format!(
                "Los paneles llegan a {volts} en una mañana fría y clara. Por encima de {limit}, tocarlos puede matar."
            )
        },
        beyond_low: |volts, limit| {
            format!(
                "Los paneles llegan a {volts} en una mañana fría y clara, más que la muy baja tensión de {limit}: debe conectarlos una persona autorizada."
            )
        },
        about: |name| format!("{name}:"),
        medium,
        insulation,
    },
};

fn medium(hazard: Hazard) -> &'static str {
    match hazard {
        Hazard::Oxidiser => "Aviva el fuego: lejos de aceite, azúcar, plástico, carbón y cáscara.",
        Hazard::Combustible => "Arde: manténgalo lejos de llamas y chispas.",
        Hazard::Toxic => "Es venenoso: manténgalo lejos de la comida y de los niños.",
        Hazard::Dust => {
            "Su polvo daña los pulmones: mójelo o use mascarilla al cortarlo o verterlo."
        }
        Hazard::Vapour => "Caliente, su vapor irrita: caliéntelo donde corra el aire.",
        Hazard::SpallsWhenWet => {
            "Con agua dentro puede reventar al calentarse: hay que dejar que se seque durante días y calentar despacio la primera vez."
        }
        Hazard::Supercools => {
            "Puede seguir líquido por debajo de su punto de fusión y retener su calor."
        }
        Hazard::Ages => "Las horas en caliente lo gastan: guarda menos cada año.",
        Hazard::Corrosive => "Ataca el metal.",
        Hazard::ExpandsOnMelting => "Crece al fundirse: deje espacio o el recipiente revienta.",
        Hazard::LosesWater => "Pierde su agua si no está cerrado.",
        Hazard::ThermalShock => "Se raja si se calienta o enfría en un solo sitio.",
        Hazard::HotLiquid => "Caliente es líquido: un derrame quema hondo.",
    }
}

fn insulation(hazard: InsulationHazard) -> &'static str {
    match hazard {
        InsulationHazard::Combustible => "Puede arder sin llama durante horas, sin que se vea.",
        InsulationHazard::Dust => "Su polvo y su fibra dañan: guantes, mascarilla, y tápelo.",
        InsulationHazard::Damp => "Húmedo apenas aísla: manténgalo seco.",
        InsulationHazard::BinderFumes => {
            "Su resina humea la primera vez que se calienta: hágalo al aire libre."
        }
        InsulationHazard::AsbestosInOldStock => "El viejo puede tener amianto: use nuevo.",
        InsulationHazard::SelfHeats => "Puede calentarse solo la primera vez: quédese a su lado.",
        InsulationHazard::Settles => "Se asienta: rellénelo.",
        InsulationHazard::Pests => "Atrae insectos y ratones.",
    }
}
