//! The figures by which builds are compared.

use model::bench::ForCooker;

use super::Speech;
use super::found::Told;
use crate::bench::sheet::Block;
use crate::components::Fact;
use crate::i18n::format::Sure;

/// The figures, those of a standard with the conditions that do not hold.
pub(super) fn figures(speech: &Speech, told: &Told<'_>) -> Vec<Block> {
    let words = &speech.report.found;
    let mut blocks = vec![Block::Heading(words.standard.to_owned())];
    let facts = own(speech, told);
    // Without a measured figure they would be the description's.
    if *told.measured != ForCooker::default() && !facts.is_empty() {
        blocks.push(Block::Facts(facts));
        blocks.push(Block::Text(words.methods.to_owned()));
    }
    let facts = of_standards(speech, told);
    if !facts.is_empty() {
        blocks.push(Block::Facts(facts));
    }
    if let Some(power) = told.power.filter(|power| power.at_50_k_w.is_none()) {
        let number = |value: f64| speech.rough(value);
        let unmet = power.unmet.iter();
        blocks.push(Block::Text(words.not_met.to_owned()));
        blocks.push(Block::List(
            unmet
                .map(|condition| (words.condition)(condition, &number))
                .collect(),
        ));
    }
    blocks
}

fn own(speech: &Speech, told: &Told<'_>) -> Vec<Fact> {
    let words = &speech.report.found;
    let Some(figures) = &told.kept.figures else {
        return Vec::new();
    };
    let formats = &speech.formats;
    let time = |seconds: f64| formats.duration(seconds, Sure::Known);
    let litres = |litres: f64| (formats.units.litres)(&formats.field(litres, 1));
    let fact = |label: &str, value: Option<String>, none: &str, spread: Option<String>| Fact {
        label: label.to_owned(),
        value: value.unwrap_or_else(|| none.to_owned()),
        detail: spread
            .map(|spread| (words.give_or_take)(&spread))
            .unwrap_or_default(),
        icon: None,
    };
    let spread = told.kept.spread.as_ref();
    vec![
        fact(
            words.litres,
            Some(litres(f64::from(figures.litres_per_charge))),
            words.never,
            spread
                .and_then(|spread| spread.litres_per_charge)
                .map(litres),
        ),
        fact(
            words.first_litre,
            figures.first_litre_s.map(time),
            words.never,
            spread.and_then(|spread| spread.first_litre_s).map(time),
        ),
        fact(
            words.power_50,
            figures.power_50_k_w.map(|watts| formats.watts(watts)),
            words.never,
            spread
                .and_then(|spread| spread.power_50_k_w)
                .map(|watts| formats.watts(watts)),
        ),
        fact(
            words.hold,
            figures.hold_s.map(time),
            words.longer,
            spread.and_then(|spread| spread.hold_s).map(time),
        ),
        fact(
            words.overnight,
            Some(formats.percent(figures.overnight_loss)),
            words.never,
            spread
                .and_then(|spread| spread.overnight_loss)
                .map(|share| formats.percent(share)),
        ),
        fact(
            words.sun,
            Some(formats.percent(figures.sun_to_food)),
            words.never,
            spread
                .and_then(|spread| spread.sun_to_food)
                .map(|share| formats.percent(share)),
        ),
    ]
}

fn of_standards(speech: &Speech, told: &Told<'_>) -> Vec<Fact> {
    let words = &speech.report.found;
    let formats = &speech.formats;
    let time = |seconds: f64| formats.duration(seconds, Sure::Known);
    let fact = |label: &str, value: String| Fact {
        label: label.to_owned(),
        value,
        detail: String::new(),
        icon: None,
    };
    let mut facts = Vec::new();
    if let Some(boiling) = &told.kept.boiling {
        let never = || words.never.to_owned();
        facts.push(fact(
            words.boil_time,
            boiling.boil_s.map_or_else(never, time),
        ));
        if let Some(corrected_s) = boiling.corrected_s {
            facts.push(fact(words.boil_corrected, time(corrected_s)));
        }
        if let Some(share) = boiling.efficiency {
            facts.push(fact(words.efficiency, formats.percent(share)));
        }
    }
    if let Some(watts) = told.kept.standard_w {
        facts.push(fact(words.cooking_power, formats.watts(watts)));
    }
    facts
}
