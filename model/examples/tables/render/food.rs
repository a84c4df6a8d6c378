//! Tables of what is cooked.

use model::dish::{Dish, DishProps, DoneWhen, FullBoil, Hold, Slowing, Soak, heat_capacity};

use super::{cell, name, table};

pub(super) fn dishes() -> String {
    let head = [
        "dish",
        "portion kg",
        "water per food",
        "cp of the food J/kgK",
        "min at 100 degC",
        "slowing",
        "nothing below degC",
    ];
    table(
        "Dishes",
        &head,
        Dish::ALL.into_iter().map(|dish| {
            let props = dish.props();
            let slowing = match props.slowing {
                Slowing::Z(z) => format!("z, K: {}", cell(z)),
                Slowing::Arrhenius(energy) => format!("Ea, J/mol: {}", cell(energy)),
            };
            let minutes = match props.done_when {
                DoneWhen::Cooked => cell(props.minutes_at_100_c),
                DoneWhen::Boils => "done once it boils".to_owned(),
            };
            vec![
                name(dish),
                cell(props.portion_kg),
                cell(props.water_per_food),
                cell(props.cp_j_kgk),
                minutes,
                slowing,
                cell(props.least_c),
            ]
        }),
    )
}

pub(super) fn dish_rules() -> String {
    let head = [
        "dish",
        "portion in",
        "full boil min",
        "core degC",
        "soak",
        "standing",
    ];
    table(
        "Safety rules of dishes",
        &head,
        Dish::ALL.into_iter().map(|dish| {
            let DishProps {
                basis,
                full_boil,
                core_c,
                soak,
                hold,
                ..
            } = *dish.props();
            let boil = full_boil.map_or_else(
                || "-".to_owned(),
                |FullBoil {
                     least_min,
                     advised_min,
                 }| {
                    format!(
                        "{} at least, {} advised",
                        cell(least_min),
                        cell(advised_min)
                    )
                },
            );
            let soak = match soak {
                Soak::None => "-".to_owned(),
                Soak::Hours(hours) => format!("{hours} h, throw the water away"),
                Soak::Detoxify => "bitter kinds: for days, throw the water away".to_owned(),
            };
            let standing = match hold {
                Hold::Hot => "hot or discard",
                Hold::HotNeverOvernight => "hot or discard, never overnight",
                Hold::Free => "-",
            };
            let core = core_c.map_or_else(|| "-".to_owned(), cell);
            let basis = format!("{basis:?}").to_lowercase();
            vec![name(dish), basis, boil, core, soak, standing.to_owned()]
        }),
    )
}

pub(super) fn food_heat() -> String {
    let pure = |part: fn(&mut heat_capacity::Composition)| {
        let mut composition = heat_capacity::Composition {
            water: 0.0,
            protein: 0.0,
            fat: 0.0,
            carbohydrate: 0.0,
            fibre: 0.0,
            ash: 0.0,
        };
        part(&mut composition);
        [20.0, 60.0, 100.0]
            .map(|t_c| format!("{:.0}", heat_capacity::choi_okos_j_kgk(composition, t_c)))
    };
    let rows = [
        ("water", pure(|c| c.water = 1.0)),
        ("protein", pure(|c| c.protein = 1.0)),
        ("fat", pure(|c| c.fat = 1.0)),
        ("carbohydrate", pure(|c| c.carbohydrate = 1.0)),
        ("fibre", pure(|c| c.fibre = 1.0)),
        ("ash", pure(|c| c.ash = 1.0)),
    ];
    let head = ["part", "J/kgK at 20 degC", "60 degC", "100 degC"];
    let rows = rows.into_iter().map(|(part, values)| {
        let mut row = vec![part.to_owned()];
        row.extend(values);
        row
    });
    table("Specific heat of the parts of food [CO]", &head, rows)
}
