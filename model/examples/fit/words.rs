//! Names of what the fit, the figures and the diagnosis say.

use model::bench::readings::{Column, What};
use model::bench::{Change, Condition, Doubt, Limit, Worth};
use serde_json::{Value, json};

pub(crate) const fn worth(worth: Worth) -> &'static str {
    match worth {
        Worth::None => "none",
        Worth::Little => "little",
        Worth::Rough => "rough",
        Worth::Good => "good",
    }
}

pub(crate) fn doubt(doubt: &Doubt) -> String {
    match doubt {
        Doubt::NotConverged => "the search came to no end".into(),
        Doubt::DoesNotFollow { times_noise } => {
            format!("the residuals are {times_noise:.1} times the noise: the model does not follow")
        }
        Doubt::FarOff {
            run,
            time_s,
            is_pot,
            read_c,
            off_k,
        } => format!(
            "run {}: the {} at {time_s:.0} s, {read_c:.1} °C, is {off_k:+.1} K off: mistyped?",
            run + 1,
            if *is_pot { "pot" } else { "store" }
        ),
        Doubt::ManyOff { run, share } => {
            format!(
                "{:.0} % of the readings of run {} are far off",
                100.0 * share,
                run + 1
            )
        }
        Doubt::NotTold(parameter) => format!("the runs tell little of {}", parameter.key()),
        Doubt::NotApart(first, second) => {
            format!(
                "these runs cannot tell {} and {} apart",
                first.key(),
                second.key()
            )
        }
        Doubt::Unlikely(parameter) => format!("{} is unlikely for such a build", parameter.key()),
        _ => "another doubt".into(),
    }
}

pub(crate) const fn limit(limit: Limit) -> &'static str {
    match limit {
        Limit::Heat => "heat_in_the_store",
        Limit::Contact => "contact",
        Limit::FrozenLayer => "frozen_layer",
        Limit::Jacket => "jacket",
        Limit::PotLoss => "pot_loss",
        Limit::HeaterMatch => "heater_match",
        Limit::Sun => "sun",
    }
}

pub(crate) fn change(change: Change) -> Value {
    let (name, amount) = match change {
        Change::AsItWas => ("as_it_was", 1.0),
        Change::Contact(times) => ("contact_times", times),
        Change::Mass(mass_kg) => ("more_mass_kg", mass_kg),
        Change::Hotter(rise_k) => ("hotter_k", rise_k),
        Change::NoLayer => ("fins", 1.0),
        Change::Loss(share) => ("jacket_loss_share", share),
        Change::PotLoss(share) => ("pot_loss_share", share),
        Change::Match(times) => ("better_match_times", times),
        Change::Panels(times) => ("panels_times", times),
        Change::Water(share) => ("water_share", share),
    };
    json!({ "what": name, "amount": amount })
}

pub(crate) fn condition(condition: &Condition) -> String {
    match condition {
        Condition::NoIrradiance => "no irradiance was read".into(),
        Condition::Irradiance { intervals } => format!(
            "irradiance outside 450 to 1100 W/m2 or unsteady by over 100 W/m2 in {intervals} intervals"
        ),
        Condition::Air { mean_c } => format!("air of {mean_c:.1} degC, not 20 to 35"),
        Condition::WindUnknown => "the wind is not known".into(),
        Condition::Wind { wind_m_s } => format!("wind of {wind_m_s} m/s, over 1"),
        Condition::AreaUnknown => "the intercept area is not known".into(),
        Condition::Load { load_kg_m2 } => {
            format!("{load_kg_m2:.1} kg of water by square metre, not 7")
        }
        Condition::TooFewIntervals { intervals } => format!("{intervals} intervals, fewer than 30"),
        Condition::Scatter { r2 } => format!("the line explains {r2:.2} of the scatter, not 0.75"),
        _ => "another condition".into(),
    }
}

const fn column(column: Column) -> &'static str {
    match column {
        Column::Time => "time",
        Column::Date => "date",
        Column::Store => "store",
        Column::Pot => "pot",
        Column::Air => "air",
        Column::Power => "power",
        Column::Irradiance => "irradiance",
        Column::Unused => "unused",
    }
}

pub(crate) fn remark(what: &What) -> String {
    match what {
        What::FieldCount { found, wanted } => format!("{found} cells for {wanted} columns"),
        What::NoTime => "set aside: no time can be read".into(),
        What::NotLater => "set aside: no later than the line before".into(),
        What::NotANumber { column: of } => format!("{}: not a number", column(*of)),
        What::NotSensible { column: of, value } => {
            format!("{}: {value} is no reading", column(*of))
        }
        What::Gap { gap_s } => format!("a gap of {gap_s:.0} s before this"),
        What::Spike {
            column: of,
            value,
            neighbours,
        } => format!("{}: {value:.1} among {neighbours:.1}", column(*of)),
        What::Swapped { first, second } => {
            format!(
                "{} and {} seem to have changed places",
                column(*first),
                column(*second)
            )
        }
        What::LooksFahrenheit { column: of } => format!("{}: looks like degF", column(*of)),
        What::LooksDecimalComma => "a decimal comma may have been taken for a separator".into(),
        What::ColumnUnused { place } => format!("column {place} is not used"),
        What::ColumnTwice { place } => format!("column {place} repeats another and is not used"),
        What::DayFirstGuessed => "the day was taken to stand before the month".into(),
        What::SecondsGuessed => "times were taken for seconds".into(),
        What::ShortRun { length_s } => format!("all rows lie within {length_s} s"),
        _ => "another remark".into(),
    }
}
