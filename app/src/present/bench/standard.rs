//! The figures by which builds are compared.

use model::bench::ForCooker;

use super::Speech;
use super::found::{TENTH_SD, Told};
use crate::bench::sheet::Block;
use crate::components::Fact;
use crate::i18n::format::Sure;
use crate::i18n::strings::report::text::Number;

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
    let time: Number<'_> = &|seconds| formats.duration(seconds, Sure::Known);
    let litres: Number<'_> = &|litres| (formats.units.litres)(&formats.field(litres, 1));
    let watts: Number<'_> = &|watts| formats.watts(watts);
    let percent: Number<'_> = &|share| formats.percent(share);
    let n_litres = f64::from(figures.litres_per_charge);
    let (overnight, sun) = (figures.overnight_loss, figures.sun_to_food);
    let spread = told.kept.spread.unwrap_or_default();
    // The middle 8 of 10 of what may be, as in all tables. Name, value, its spread, how both are said, and what stands where there is no value.
    let rows = [
        (
            words.litres,
            Some(n_litres),
            spread.litres_per_charge,
            litres,
            words.never,
        ),
        (
            words.first_litre,
            figures.first_litre_s,
            spread.first_litre_s,
            time,
            words.never,
        ),
        (
            words.power_50,
            figures.power_50_k_w,
            spread.power_50_k_w,
            watts,
            words.never,
        ),
        (
            words.hold,
            figures.hold_s,
            spread.hold_s,
            time,
            words.longer,
        ),
        (
            words.overnight,
            Some(overnight),
            spread.overnight_loss,
            percent,
            words.never,
        ),
        (
            words.sun,
            Some(sun),
            spread.sun_to_food,
            percent,
            words.never,
        ),
    ];
    let fact =
        |(label, value, sd, say, none): (&str, Option<f64>, Option<f64>, Number<'_>, &str)| Fact {
            label: label.to_owned(),
            value: value.map_or_else(|| none.to_owned(), say),
            detail: sd
                .filter(|sd| 0.0 < *sd)
                .map_or_else(String::new, |sd| (words.give_or_take)(&say(TENTH_SD * sd))),
            icon: None,
        };
    rows.into_iter().map(fact).collect()
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
        let [label, detail] = words.boil_time;
        let boil = boiling.boil_s;
        facts.push(Fact {
            detail: boil.map_or_else(String::new, |_| detail.to_owned()),
            ..fact(label, boil.map_or_else(|| words.never.to_owned(), time))
        });
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
