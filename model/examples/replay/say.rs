//! Answers and reports in plain lines.

use std::fmt::Write;

use model::dish::Dish;
use model::journal::{Meal, Outcome};
use model::local_time::LocalTime;
use model::odds::{Band, Belief, Believed, Chance, Multiplier, Report};
use model::pot::Lid;
use model::tonight::Help;

/// Tomorrow's breakfast, by which the morning is judged: half a litre of water, put in at seven.
const BREAKFAST_KG: f64 = 0.5;
const BREAKFAST_IN_S: i64 = 7 * 3600;
const BREAKFAST_EATEN_S: i64 = 8 * 3600;

/// One meal: what would have been answered, and what was reported. Writing to a text never fails.
pub(crate) fn meal(out: &mut String, belief: &Belief, meal: &Meal, put_in: LocalTime) {
    let plan = Meal {
        out: None,
        outcome: Outcome::default(),
        ..meal.clone()
    };
    let store = belief.store();
    let odds = belief.ask(&plan, put_in);
    let worth = belief.reading_worth(&plan, put_in);
    let (year, month, day) = put_in.day().ymd();
    let mut line = |name: &str, text: String| {
        let _ = writeln!(out, "    {name:<12} {text}");
    };
    line(
        &format!("{year:04}-{month:02}-{day:02}"),
        format!(
            "{} in: {:?}, {:.2} kg food, {:.2} kg water, from {:.0} °C, to be eaten {}",
            clock(put_in),
            meal.dish,
            meal.food_kg,
            meal.water_kg,
            meal.start_c,
            clock(meal.eat_at)
        ),
    );
    line("store", format!("{} °C", figures(store.store_c, 0)));
    line(
        "boils",
        format!("{}; {}", chance(odds.boils()), times(odds.boils_at)),
    );
    line(
        "ready",
        format!("{}; {}", chance(odds.ready()), times(odds.ready_at)),
    );
    line(
        "boils away",
        format!(
            "{} kg; dry {}",
            figures(odds.boiled_away_kg, 2),
            chance(Chance::new(odds.p_dry))
        ),
    );
    line(
        "store after",
        format!("{} °C", figures(odds.store_after_c, 0)),
    );
    line(
        "latest in",
        belief.latest_put_in(&plan).map_or_else(
            || "never 9 in 10".to_owned(),
            |at| format!("{} for 9 in 10", clock(at)),
        ),
    );
    line(
        "may hold",
        belief.most(&plan, put_in).map_or_else(
            || "nothing for 9 in 10".to_owned(),
            |times| format!("{times:.2} times as much for 9 in 10"),
        ),
    );
    for found in belief.help(&plan, put_in) {
        line(
            "would help",
            format!("{}: {}", change(found.help), chance(found.ready())),
        );
    }
    line(
        "a reading",
        format!(
            "leaves {:.0} % of the doubt; {:.0} % of readings would nearly decide",
            100.0 * worth.doubt_left,
            100.0 * worth.decides
        ),
    );
    line("breakfast", breakfast(belief, &plan, put_in));
    line("reported", reported(meal));
}

fn change(help: Help) -> String {
    match help {
        Help::LidOn => "the lid on".to_owned(),
        Help::EarlierIn { put_in } | Help::WaitForSun { put_in } => {
            format!("in at {}", clock(put_in))
        }
        Help::Soak { dish } => format!("soaked, {dish:?}"),
        Help::WarmWater { start_c } => format!("warmed in the sun to {start_c:.0} °C"),
        Help::WrapPot => "the pot wrapped".to_owned(),
        Help::SmallerPot { size } => format!("a pot of {} L", size.props().volume_l),
        Help::Less { share } => format!("{:.0} % of it", 100.0 * share),
        Help::MoreWater { water_kg } => format!("{water_kg:.2} kg of water"),
        Help::EatLater { eat_at } => format!("eaten at {}", clock(eat_at)),
        Help::TopUp { heat_w, for_s } => {
            format!(
                "{heat_w:.0} W more into the store for {} min from now",
                for_s / 60
            )
        }
        Help::OtherFire { minutes, start_c } => {
            format!("{minutes:.0} min on another fire, to {start_c:.0} °C")
        }
    }
}

/// Water boiled the next morning, after this meal.
fn breakfast(belief: &Belief, supper: &Meal, put_in: LocalTime) -> String {
    let tomorrow = put_in.day().plus(1);
    let tea = Meal {
        dish: Dish::TeaWater,
        food_kg: 0.0,
        water_kg: BREAKFAST_KG,
        eat_at: tomorrow.at_s(BREAKFAST_EATEN_S),
        lid: Lid::On,
        ..supper.clone()
    };
    let odds = belief
        .after(supper, put_in)
        .ask(&tea, tomorrow.at_s(BREAKFAST_IN_S));
    format!(
        "{BREAKFAST_KG} kg of water at 07:00: {}",
        chance(odds.boils())
    )
}

fn reported(meal: &Meal) -> String {
    let seen = meal.outcome;
    let parts: Vec<String> = [
        ("not boiling yet", seen.not_boiled_by),
        ("boiled", seen.boiled_at),
        ("not done yet", seen.not_done_by),
        ("done", seen.done_at),
        ("out", meal.out),
    ]
    .into_iter()
    .filter_map(|(what, at)| at.map(|at| format!("{what} {}", clock(at))))
    .collect();
    if parts.is_empty() {
        "nothing".to_owned()
    } else {
        parts.join(", ")
    }
}

/// The store now, what was learned, and what is doubted.
pub(crate) fn now(out: &mut String, belief: &Belief) {
    let store = belief.store();
    let _ = writeln!(
        out,
        "    the store now: {} °C, {} L to the boil",
        figures(store.store_c, 0),
        figures(store.litres, 1)
    );
    for learned in belief.learned() {
        let name = match learned.multiplier {
            Multiplier::Loss => "loss",
            Multiplier::Contact => "contact",
            Multiplier::Charging => "charging",
            Multiplier::Capacity => "capacity",
            Multiplier::PotLoss => "pot's loss",
            Multiplier::GrainTime => "time of grain",
            Multiplier::BeanTime => "time of beans",
            Multiplier::PulseTime => "time of pulses",
            Multiplier::OtherTime => "other times",
        };
        let _ = writeln!(
            out,
            "    learned: {name} times {}, before {}",
            figures(learned.now, 2),
            figures(learned.prior, 2)
        );
    }
    for doubt in belief.doubts() {
        let what = match doubt.report {
            Report::Reading { store_c } => format!("a reading of {store_c:.0} °C"),
            Report::Felt(felt) => format!("the store felt {felt:?}"),
            Report::BoiledAt(_) => "it boiled".to_owned(),
            Report::NotBoiledBy(_) => "it did not boil yet".to_owned(),
            Report::DoneAt(_) => "it was done".to_owned(),
            Report::NotDoneBy(_) => "it was not done yet".to_owned(),
        };
        let believed = match doubt.believed {
            Believed::StoreC(band) => format!("{} °C", figures(band, 0)),
            Believed::Time(band) => times(band),
        };
        let (year, month, day) = doubt.at.day().ymd();
        let _ = writeln!(
            out,
            "    doubted: {year:04}-{month:02}-{day:02} {} {what}; expected {believed}",
            clock(doubt.at)
        );
    }
}

fn chance(chance: Chance) -> String {
    let (n, m) = chance.n_in_m();
    format!("{n} in {m} ({:?})", chance.word())
}

/// The middle, and from the tenth to the ninetieth percentile.
fn figures(band: Band<f64>, digits: usize) -> String {
    format!(
        "{:.digits$} ({:.digits$} to {:.digits$})",
        band.p50, band.p10, band.p90
    )
}

fn times(band: Band<Option<LocalTime>>) -> String {
    let time = |at: Option<LocalTime>| at.map_or_else(|| "never".to_owned(), clock);
    format!(
        "{} ({} to {})",
        time(band.p50),
        time(band.p10),
        time(band.p90)
    )
}

fn clock(at: LocalTime) -> String {
    format!("{:02}:{:02}", at.hour(), at.minute())
}
