//! What limited a pot, what would make it boil, and where the heat went.

use model::bench::{Advice, Change, Diagnosis, Fate, Ranked};

use super::Speech;
use crate::bench::sheet::Block;
use crate::chart::{HeatBarView, HeatPart};
use crate::i18n::format::{Sure, round_to};

/// Limits that are told: those after them change next to nothing.
const TOLD: usize = 4;
/// Ways that are offered.
const OFFERED: usize = 6;
/// Less than this is not shown: half of what a cup of water takes. \[J\]
const LEAST_J: f64 = 18e3;

/// What limited it; `is_read` where the readings reach the boil.
pub(super) fn limits(speech: &Speech, diagnosis: &Diagnosis, is_read: bool) -> Vec<Block> {
    let words = &speech.report.found;
    let fate = diagnosis.as_it_was;
    if is_read && fate.boils_s.is_none() {
        // Nobody is told that a pot did not boil that was read to.
        return vec![
            Block::Heading(words.why.to_owned()),
            Block::Lead((words.just_below)(&hottest(speech, fate))),
        ];
    }
    let mut blocks = vec![
        Block::Heading(words.why.to_owned()),
        Block::Lead(match fate.boils_s {
            Some(boils_s) => (words.boiled)(&time(speech, boils_s)),
            None => (words.not_boiled)(&hottest(speech, fate)),
        }),
    ];
    let mut sentences = Vec::new();
    if fate.boils_s.is_none() {
        let why = if diagnosis.heat_suffices {
            words.heat_suffices
        } else {
            words.heat_lacks
        };
        sentences.push(why.to_owned());
    }
    if let Some(worst) = diagnosis.limits.first() {
        sentences.push((words.worst)(worst.limit).to_owned());
    }
    blocks.push(Block::Text(sentences.join(" ")));
    let ranked = diagnosis.limits.iter().take(TOLD);
    blocks.push(Block::List(
        ranked
            .map(|ranked| tried(speech, ranked, diagnosis.water_kg))
            .collect(),
    ));
    if fate.boils_s.is_none() {
        blocks.extend(advice(speech, diagnosis));
    }
    blocks
}

fn tried(speech: &Speech, ranked: &Ranked, water_kg: f64) -> String {
    let words = &speech.report.found;
    let with = (words.with)(&ranked.change, &|value| {
        size(speech, (&ranked.change, water_kg), value)
    });
    match ranked.fate.boils_s {
        _ if !ranked.helps => (words.then_same)(&with),
        Some(boils_s) => (words.then_boils)(&with, &time(speech, boils_s)),
        None => (words.then_not)(&with, &hottest(speech, ranked.fate)),
    }
}

/// How large a change is: a number, a difference of temperatures with its unit, or litres of the water
/// that was in the pot.
fn size(speech: &Speech, (change, water_kg): (&Change, f64), value: f64) -> String {
    match change {
        // Downwards: with more it need not boil.
        Change::Water(_) => speech
            .formats
            .litres((10.0 * value * water_kg).floor() / 10.0),
        Change::Hotter(_) => speech.whole_difference(value),
        _ => speech.rough(value),
    }
}

fn advice(speech: &Speech, diagnosis: &Diagnosis) -> Vec<Block> {
    let words = &speech.report.found;
    let mut blocks = vec![Block::Heading(words.advice.to_owned())];
    if diagnosis.advice.is_empty() {
        blocks.push(Block::Text(words.no_advice.to_owned()));
        return blocks;
    }
    let line = |advice: &Advice| {
        let change = (&advice.change, diagnosis.water_kg);
        let what = (words.advise)(&advice.change, &|value| size(speech, change, value));
        let boils_s = advice.fate.boils_s?;
        let time = time(speech, boils_s);
        Some(match advice.cost {
            None => (words.no_price)(&what, &time),
            Some(cost) if cost < 0.005 => (words.free)(&what, &time),
            Some(cost) => (words.costs)(&what, &time, &speech.number(cost)),
        })
    };
    let lines = diagnosis.advice.iter().take(OFFERED).filter_map(line);
    blocks.push(Block::List(lines.collect()));
    blocks.push(Block::Text(words.care.to_owned()));
    blocks
}

/// Where the heat went.
pub(super) fn heat(speech: &Speech, diagnosis: &Diagnosis) -> Vec<Block> {
    let words = &speech.report.found;
    let account = &diagnosis.account;
    let food_j = account.pot_after_j - account.pot_before_j;
    let parts = [
        food_j,
        account.steam_j,
        account.pot_loss_j,
        account.jacket_j,
        account.open_j,
        account.store_after_j,
    ];
    let energy = |joules: f64| {
        let watt_hours = round_to(joules.max(0.0) / 3600.0, 5.0);
        (speech.formats.units.watt_hours)(&speech.formats.number(watt_hours, 0))
    };
    let came_j = account.store_before_j + account.from_sun_j;
    let view = HeatBarView {
        name: words.heat.to_owned(),
        parts: parts
            .into_iter()
            .zip(words.heat_parts)
            .enumerate()
            .filter(|(_, (joules, _))| LEAST_J < *joules)
            .map(|(look, (joules, label))| HeatPart {
                label: label.to_owned(),
                value: energy(joules),
                look,
                share: joules,
            })
            .collect(),
        sentence: (words.heat_sentence)(&energy(came_j), &energy(food_j)),
    };
    vec![Block::Heading(words.heat.to_owned()), Block::Heat(view)]
}

fn time(speech: &Speech, seconds: f64) -> String {
    speech.formats.duration(seconds, Sure::Known)
}

fn hottest(speech: &Speech, fate: Fate) -> String {
    speech.formats.temperature(fate.hottest_c, Sure::Known)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::present::bench::speech;

    #[test]
    fn less_water_is_told_in_litres_that_do() {
        let change = Change::Water(0.55);
        let said = |language, water_kg| {
            let speech = speech(language);
            let size = |value| size(&speech, (&change, water_kg), value);
            (speech.report.found.advise)(&change, &size).replace('\u{A0}', " ")
        };
        // 0.55 of 1.5 L are 0.825 L.
        assert_eq!(said(Language::English, 1.5), "Less water: 0.8 L");
        assert!(said(Language::Spanish, 1.5).starts_with("Menos agua: 0"));
        assert_eq!(said(Language::English, 0.7), "Less water: 0.3 L");
    }
}
