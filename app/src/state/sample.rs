//! A made-up household in a made-up hill town, and random ones, for tests.

mod bench;

use model::bench::Prices;
use model::cooker::{Charge, Charging, Contact, Cooker, Metal, Panels, Spreads, Store};
use model::dish::Dish;
use model::insulation::Insulation;
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket, LidFit};
use model::journal::{Felt, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::media::Medium;
use model::panel::{Datasheet, Drive, Heater};
use model::place::{AirYear, Place};
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};
use model::seat::Seat;
use model::sun::{DayLog, Sky};
use proptest::prelude::*;

use crate::state::action::{Action, BenchAction, Seen, apply};
use crate::state::bench::{Reading, RunReadings};
use crate::state::document::{Document, Household, Whose};
use crate::state::ids::{CookerId, EntryId, ErasedId};
use crate::state::plan::{Amount, Plan, TimeOfDay};
use crate::state::settings::{Degrees, LanguageChoice, Theme};

use bench::any_bench_action;
pub(crate) use bench::{add_run, kept_beside_description, kept_fit, kept_text, test_run};

/// The day on which the samples play: 25 November 2026.
pub(crate) const TODAY: Day = Day(20_782);

/// A time of that day.
pub(crate) fn at(hour: i64, minute: i64) -> LocalTime {
    TODAY.at_s(hour * 3600 + minute * 60)
}

pub(crate) fn pot() -> Pot {
    Pot {
        kind: PotKind::ThinAluminium,
        size: PotSize::Litres4,
        wrap: Wrap::Bare,
    }
}

pub(crate) fn cooker() -> Cooker {
    Cooker {
        panels: Panels {
            module_w: 100.0,
            sheet: None,
            in_series: 1,
            in_parallel: 1,
            tilt_deg: 15.0,
            azimuth_deg: 0.0,
        },
        heater: Heater {
            drive: Drive::Direct,
            resistance_ohm: 3.2,
            wire_ohm: 0.1,
            alpha_per_k: 0.0001,
        },
        store: Store {
            charges: vec![Charge {
                medium: Medium::Aluminium,
                mass_kg: 12.5,
            }],
            metal: None,
            depth_m: 0.1,
            cutout_c: 300.0,
            filled_on: None,
            converted: 0.0,
            capacity_share: 1.0,
        },
        jacket: Jacket::Layers(LayeredJacket {
            shape: JacketShape::Cylinder {
                inner_radius_m: 0.12,
                inner_height_m: 0.15,
            },
            layers: vec![JacketLayer {
                kind: LayerKind::Insulation {
                    material: Insulation::Perlite,
                },
                thickness_m: 0.15,
            }],
            lid: LidFit::Ordinary,
            through_rods: 3,
        }),
        contact: Contact {
            seat: Seat::DryOrdinary,
            measured_w_m2k: None,
        },
        pot: pot(),
        charging: Charging::default(),
        carried: None,
        pot_loss_share: 1.0,
        spreads: Spreads::default(),
    }
}

/// A cooker that uses every branch of a cooker's description that the plain one leaves out.
pub(crate) fn elaborate_cooker() -> Cooker {
    let plain = cooker();
    Cooker {
        panels: Panels {
            sheet: Some(Datasheet {
                v_mp_v: 18.2,
                i_mp_a: 5.5,
                v_oc_v: 21.9,
                i_sc_a: 5.9,
                alpha_sc_a_k: 0.003,
                beta_voc_v_k: -0.07,
                cells: 36,
            }),
            ..plain.panels
        },
        heater: Heater {
            drive: Drive::Tracker { efficiency: 0.94 },
            ..plain.heater
        },
        store: Store {
            charges: vec![
                Charge {
                    medium: Medium::SodiumPotassiumNitrate,
                    mass_kg: 6.0,
                },
                Charge {
                    medium: Medium::Aluminium,
                    mass_kg: 1.1,
                },
            ],
            metal: Some(Metal::USUAL_FINS),
            ..plain.store
        },
        jacket: Jacket::Layers(LayeredJacket {
            shape: JacketShape::Box {
                inner_length_m: 0.3,
                inner_width_m: 0.3,
                inner_height_m: 0.2,
            },
            layers: vec![
                JacketLayer {
                    kind: LayerKind::StillAir {
                        hot_emissivity: 0.1,
                        cold_emissivity: 0.9,
                    },
                    thickness_m: 0.01,
                },
                JacketLayer {
                    kind: LayerKind::Insulation {
                        material: Insulation::RockWool,
                    },
                    thickness_m: 0.1,
                },
            ],
            lid: LidFit::Plug,
            through_rods: 0,
        }),
        contact: Contact {
            seat: Seat::OilFilm,
            measured_w_m2k: Some(800.0),
        },
        pot: Pot {
            kind: PotKind::CastIron,
            size: PotSize::Litres2_5,
            wrap: Wrap::SunkInCooker,
        },
        charging: Charging::default(),
        carried: None,
        pot_loss_share: 1.0,
        spreads: Spreads::default(),
    }
}

/// A cooker whose jacket was measured.
pub(crate) fn measured_cooker() -> Cooker {
    Cooker {
        jacket: Jacket::Measured {
            loss_w_k: 0.42,
            capacity_j_k: 900.0,
        },
        ..cooker()
    }
}

pub(crate) fn household() -> Household {
    Household {
        place: Place {
            latitude_deg: -13.4,
            longitude_deg: -71.9,
            altitude_m: 3350.0,
            utc_offset_min: -300,
        },
        air: AirYear {
            day_c: [19.5; 12],
            night_c: [4.0; 12],
        },
        people: 5,
    }
}

pub(crate) fn meal() -> Meal {
    Meal {
        dish: Dish::WhiteRice,
        food_kg: 0.5,
        water_kg: 0.9,
        start_c: 18.0,
        pot: pot(),
        lid: Lid::On,
        out: None,
        eat_at: at(19, 30),
        outcome: Outcome::default(),
    }
}

pub(crate) fn plan() -> Plan {
    Plan {
        dish: Dish::Lentils,
        amount: Amount::Measured {
            food_kg: 0.4,
            water_kg: 1.25,
        },
        pot: Some(pot()),
        lid: Lid::Ajar,
        put_in: Some(TimeOfDay::from_min(18 * 60)),
        eat: TimeOfDay::from_min(19 * 60 + 45),
        start_c: Some(35.5),
    }
}

fn hourly() -> DayLog {
    let mut skies = [None; 24];
    for (hour, sky) in [
        (7, Sky::Thin),
        (8, Sky::Clear),
        (9, Sky::Patchy),
        (10, Sky::Grey),
    ] {
        skies[hour] = Some(sky);
    }
    skies[11] = Some(Sky::Dark);
    DayLog::Hourly(skies)
}

/// A document after the first start.
pub(crate) fn set_up() -> Document {
    done(Document::new(Whose::Own), [set_up_action()])
}

pub(crate) fn set_up_action() -> Action {
    Action::SetUp {
        household: household(),
        name: "Clay block".into(),
        cooker: Box::new(cooker()),
    }
}

/// A document that has something in every corner.
pub(crate) fn full() -> Document {
    let add = |at, what| Action::AddEntry { at, what };
    let mut document = done(
        set_up(),
        [
            add(at(7, 0), What::Reading { store_c: 84.5 }),
            add(at(8, 15), What::LidOpen { for_s: 600 }),
            Action::SetSky {
                day: TODAY,
                log: hourly(),
                possible_h: 12.8,
            },
            Action::SetSky {
                day: TODAY.plus(-1),
                log: DayLog::SunHours(7.5),
                possible_h: 12.8,
            },
            Action::SetSky {
                day: TODAY.plus(-2),
                log: DayLog::SunHours(3.0),
                possible_h: 12.8,
            },
            Action::EraseSky(TODAY.plus(-2)),
            Action::AddCooker {
                name: "Salt tin".into(),
                cooker: Box::new(elaborate_cooker()),
            },
            add(at(9, 0), What::HeaterOff { for_s: 3600 }),
            Action::AddCooker {
                name: "Spare".into(),
                cooker: Box::new(measured_cooker()),
            },
            add(at(9, 30), What::Reading { store_c: 120.0 }),
        ],
    );
    let salt_tin = document.cookers[1].id;
    let spare = document.cookers[2].id;
    let first = document.entries[0].id;
    document = done(
        document,
        [
            Action::EraseCooker(spare),
            Action::EraseEntry(first),
            Action::UseCooker(salt_tin),
            Action::StartMeal {
                at: at(17, 50),
                meal: meal(),
            },
            Action::ChangePlan(plan()),
            Action::ChooseTheme(Theme::Dark),
            Action::ChooseDegrees(Degrees::Fahrenheit),
            Action::ChooseLanguage(LanguageChoice::Chosen(crate::i18n::Language::Spanish)),
        ],
    );
    let running = document.running.unwrap();
    done(
        document,
        [
            Action::SeeMeal {
                id: running,
                seen: Seen::NotBoiledBy(at(18, 30)),
            },
            Action::SeeMeal {
                id: running,
                seen: Seen::BoiledAt(at(18, 55)),
            },
            Action::SeeMeal {
                id: running,
                seen: Seen::DoneAt(at(19, 20)),
            },
        ],
    )
}

/// The same with test runs.
pub(crate) fn full_bench() -> Document {
    let mut document = full();
    let cooker = document.in_use.unwrap();
    let typed = test_run().readings;
    document = done(
        document,
        [
            add_run(cooker, typed.clone()),
            add_run(cooker, RunReadings::File(kept_text())),
            add_run(cooker, typed),
        ],
    );
    let [first, _, third] = [0, 1, 2].map(|idx| document.bench.runs[idx].id);
    let mut fit = kept_fit(first);
    (fit.figures, fit.spread) = (None, None);
    done(
        document,
        [
            Action::Bench(BenchAction::EraseReading {
                run: first,
                at: at(16, 5),
            }),
            Action::Bench(BenchAction::AddReading {
                run: first,
                reading: Reading {
                    air_c: Some(18.0),
                    heater_w: Some(0.0),
                    ..Reading::none(at(16, 7))
                },
            }),
            Action::Bench(BenchAction::KeepFit {
                of: first,
                fit: Box::new(fit),
            }),
            Action::Bench(BenchAction::KeepFit {
                of: third,
                fit: Box::new(kept_beside_description(third)),
            }),
            Action::Bench(BenchAction::Erase(third)),
            Action::Bench(BenchAction::SetPrices(Prices {
                store_kg: Some(3.5),
                ..Prices::default()
            })),
        ],
    )
}

/// The document after these actions, at eight in the evening.
pub(crate) fn done(mut document: Document, actions: impl IntoIterator<Item = Action>) -> Document {
    for action in actions {
        apply(&mut document, action, at(20, 0)).unwrap();
    }
    document
}

/// Any action, sensible or not; numbers that name things are small, so that they often hit.
pub(crate) fn any_action() -> impl Strategy<Value = Action> {
    let id = 0..14_u32;
    let time = (-3..3_i32, 0..86_400_i64).prop_map(|(day, s)| TODAY.plus(day).at_s(s));
    let number = prop_oneof![-50.0..1200.0_f64, Just(f64::NAN), Just(f64::INFINITY)];
    let what = prop_oneof![
        number.clone().prop_map(|store_c| What::Reading { store_c }),
        proptest::bool::ANY.prop_map(|hot| What::Felt(if hot { Felt::Hot } else { Felt::Cold })),
        (-100..200_000_i64).prop_map(|for_s| What::LidOpen { for_s }),
        (-100..9_000_000_i64).prop_map(|for_s| What::HeaterOff { for_s }),
        (number.clone(), -100..200_000_i64)
            .prop_map(|(heat_w, for_s)| What::TopUp { heat_w, for_s }),
        any_meal().prop_map(What::Meal),
    ];
    let name = "[a-z ]{0,50}";
    let seen = (time.clone(), 0..5_u8).prop_map(|(at, kind)| match kind {
        0 => Seen::BoiledAt(at),
        1 => Seen::NotBoiledBy(at),
        2 => Seen::DoneAt(at),
        3 => Seen::NotDoneBy(at),
        _ => Seen::TakenOutAt(at),
    });
    prop_oneof![
        Just(set_up_action()),
        (name, any_cooker()).prop_map(|(name, cooker)| Action::AddCooker {
            name,
            cooker: Box::new(cooker)
        }),
        (id.clone(), name).prop_map(|(id, name)| Action::CopyCooker {
            id: CookerId(id),
            name
        }),
        id.clone().prop_map(|id| Action::UseCooker(CookerId(id))),
        id.clone().prop_map(|id| Action::EraseCooker(CookerId(id))),
        (-3..2_i32, number).prop_map(|(day, hours)| Action::SetSky {
            day: TODAY.plus(day),
            log: DayLog::SunHours(hours),
            possible_h: 12.8,
        }),
        (-3..2_i32).prop_map(|day| Action::EraseSky(TODAY.plus(day))),
        (time.clone(), what.clone()).prop_map(|(at, what)| Action::AddEntry { at, what }),
        (id.clone(), time.clone(), what).prop_map(|(id, at, what)| Action::ChangeEntry {
            id: EntryId(id),
            at,
            what
        }),
        id.clone().prop_map(|id| Action::EraseEntry(EntryId(id))),
        id.clone().prop_map(|id| Action::KeepEntry(EntryId(id))),
        (id.clone(), any_cooker()).prop_map(|(id, cooker)| Action::ChangeCooker {
            id: CookerId(id),
            cooker: Box::new(cooker),
        }),
        (id.clone(), proptest::bool::ANY).prop_map(|(id, is_rebuilt)| Action::SayRebuilt {
            id: CookerId(id),
            is_rebuilt,
        }),
        id.clone().prop_map(|id| Action::BringBack(ErasedId(id))),
        (time, any_meal()).prop_map(|(at, meal)| Action::StartMeal { at, meal }),
        (id, seen).prop_map(|(id, seen)| Action::SeeMeal {
            id: EntryId(id),
            seen
        }),
        Just(Action::CloseMeal),
        any_bench_action().prop_map(Action::Bench),
    ]
}

fn any_cooker() -> impl Strategy<Value = Cooker> {
    prop_oneof![
        Just(cooker()),
        Just(elaborate_cooker()),
        Just(measured_cooker())
    ]
}

fn any_meal() -> impl Strategy<Value = Meal> {
    (
        0..Dish::ALL.len(),
        -1.0..4.0_f64,
        -1.0..5.0_f64,
        -20.0..120.0_f64,
        0..86_400_i64,
    )
        .prop_map(|(dish, food_kg, water_kg, start_c, eat_s)| Meal {
            dish: Dish::ALL[dish],
            food_kg,
            water_kg,
            start_c,
            eat_at: TODAY.at_s(eat_s),
            ..meal()
        })
}
