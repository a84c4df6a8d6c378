//! Tables of what a cooker is built of.

use model::insulation::Insulation;
use model::media::Medium;
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};
use model::seat::{Joint, Seat};

use super::{cell, name, names, table};

pub(super) fn media() -> String {
    let head = [
        "medium",
        "density kg/m3",
        "cp = a + b T, J/kgK, T in degC",
        "fit within J/kgK",
        "conductivity W/mK",
        "limit degC",
        "chemistry",
        "hazards",
    ];
    table(
        "Storage media",
        &head,
        Medium::ALL.into_iter().map(|medium| {
            let props = medium.props();
            let cp = props.cp;
            vec![
                name(medium),
                cell(props.density_kg_m3),
                format!(
                    "{} + {} T ± {} [{}]",
                    cp.cp_a_j_kgk,
                    cp.cp_b_j_kgk2,
                    cp.spread_j_kgk,
                    cp.source.key()
                ),
                cp.fit_error_j_kgk.to_string(),
                cell(props.conductivity_w_mk),
                cell(props.limit_c),
                name(props.chemistry),
                names(props.hazards),
            ]
        }),
    )
}

pub(super) fn melting() -> String {
    let head = [
        "medium",
        "solidus degC",
        "liquidus degC",
        "latent heat J/kg",
        "cp of the liquid J/kgK",
        "conductivity of the liquid W/mK",
        "density of the liquid kg/m3",
        "freezes below the solidus by K",
    ];
    let rows = Medium::ALL.into_iter().filter_map(|medium| {
        let melt = medium.props().melt?;
        Some(vec![
            name(medium),
            cell(melt.solidus_c),
            cell(melt.liquidus_c),
            cell(melt.latent_j_kg),
            cell(melt.cp_liquid_j_kgk),
            cell(melt.conductivity_liquid_w_mk),
            cell(melt.density_liquid_kg_m3),
            cell(medium.supercooling_k()?),
        ])
    });
    table("Melting", &head, rows)
}

pub(super) fn insulations() -> String {
    let head = [
        "insulation",
        "density kg/m3",
        "cp J/kgK",
        "limit of the hot face degC",
        "hazards",
    ];
    table(
        "Insulation",
        &head,
        Insulation::ALL.into_iter().map(|insulation| {
            let props = insulation.props();
            vec![
                name(insulation),
                cell(props.density_kg_m3),
                cell(props.cp_j_kgk),
                cell(props.limit_c),
                names(props.hazards),
            ]
        }),
    )
}

pub(super) fn conductivities() -> String {
    let head = ["insulation", "mean degC: conductivity W/mK"];
    table(
        "Conductivity of insulation",
        &head,
        Insulation::ALL.into_iter().map(|insulation| {
            let points = insulation.props().conductivity.iter();
            let listed = points
                .map(|point| format!("{}: {}", point.mean_c, cell(point.conductivity_w_mk)))
                .collect::<Vec<_>>();
            vec![name(insulation), listed.join("; ")]
        }),
    )
}

pub(super) fn seats() -> String {
    let head = ["seat", "joint", "contact W/m2K, 200 to 100 degC"];
    table(
        "Seat of the pot",
        &head,
        Seat::ALL.into_iter().map(|seat| {
            let joint = match seat.joint() {
                Joint::Gap { mean_gap_m } => format!("air, m: {}", cell(mean_gap_m)),
                Joint::Open { gap_m } => format!("open air, m: {}", cell(gap_m)),
                Joint::Film { conductance_w_m2k } => {
                    format!("film, W/m2K: {}", cell(conductance_w_m2k))
                }
            };
            vec![
                name(seat),
                joint,
                format!("{:.0}", seat.contact_w_m2k(200.0, 100.0)),
            ]
        }),
    )
}

pub(super) fn pots() -> String {
    let head = [
        "pot",
        "mean wall m",
        "density kg/m3",
        "cp J/kgK",
        "emissivity",
        "mass kg, 1.5 / 2.5 / 4 / 6 / 10 L",
        "loss W/K at 4 L with lid: bare / wrapped / sunk",
    ];
    table(
        "Pots",
        &head,
        PotKind::ALL.into_iter().map(|kind| {
            let props = kind.props();
            let masses = PotSize::ALL.map(|size| {
                format!(
                    "{:.2}",
                    Pot {
                        kind,
                        size,
                        wrap: Wrap::Bare
                    }
                    .mass_kg()
                )
            });
            let losses = Wrap::ALL.map(|wrap| {
                format!(
                    "{:.2}",
                    Pot {
                        kind,
                        size: PotSize::Litres4,
                        wrap
                    }
                    .loss_w_k(Lid::On)
                )
            });
            vec![
                name(kind),
                cell(props.wall_m),
                cell(props.density_kg_m3),
                cell(props.cp_j_kgk),
                cell(props.emissivity),
                masses.join(" / "),
                losses.join(" / "),
            ]
        }),
    )
}

pub(super) fn pot_sizes() -> String {
    let head = ["size", "diameter m", "height m"];
    table(
        "Sizes of pots",
        &head,
        PotSize::ALL.into_iter().map(|size| {
            let props = size.props();
            vec![name(size), cell(props.diameter_m), cell(props.height_m)]
        }),
    )
}
