//! The figures by which builds are compared.

use model::bench::ForCooker;

use super::Speech;
use super::found::{TENTH_SD, Told};
use crate::bench::sheet::Block;
use crate::components::Fact;
use crate::i18n::format::{Sure, round_to};
use crate::i18n::strings::report::text::Number;
use crate::state::bench::KeptFit;

/// \[s\]
const HOUR_S: f64 = 3600.0;

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
    let facts = of_standards(speech, told.kept);
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
    // What is known to some hours is told in whole ones.
    let is_rough = spread.hold_s.is_some_and(|sd| HOUR_S < TENTH_SD * sd);
    let step_s = if is_rough { HOUR_S } else { 0.25 * HOUR_S };
    let long: Number<'_> = &|seconds| formats.duration(round_to(seconds, step_s), Sure::Known);
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
            long,
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

fn of_standards(speech: &Speech, kept: &KeptFit) -> Vec<Fact> {
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
    if let Some(boiling) = &kept.boiling {
        let [label, detail] = words.boil_time;
        let boil = boiling.boil_s;
        facts.push(Fact {
            detail: boil.map_or_else(String::new, |_| detail.to_owned()),
            ..fact(
                label,
                boil.map_or_else(|| words.no_boil_read.to_owned(), time),
            )
        });
        if let Some(corrected_s) = boiling.corrected_s {
            facts.push(fact(words.boil_corrected, time(corrected_s)));
        }
        if let Some(share) = boiling.efficiency {
            let detail = if share <= 1.0 { "" } else { words.above_all };
            facts.push(Fact {
                detail: detail.to_owned(),
                ..fact(words.efficiency, formats.percent(share))
            });
        }
    }
    if let Some(watts) = kept.standard_w {
        facts.push(fact(words.cooking_power, formats.watts(watts)));
    }
    facts
}

#[cfg(test)]
mod tests {
    use model::bench::BoilingTest;

    use super::*;
    use crate::i18n::Language;
    use crate::i18n::format::LocaleFormat;
    use crate::state::ids::RunId;
    use crate::state::sample::{at, kept_fit};
    use crate::state::settings::Degrees;

    fn said(boil_s: Option<f64>, efficiency: f64) -> Vec<(String, String)> {
        let mut kept = kept_fit(RunId(1));
        kept.boiling = kept.boiling.map(|test| BoilingTest {
            boil_s,
            efficiency: Some(efficiency),
            ..test
        });
        let spoken = (Degrees::Celsius, at(20, 0));
        let speech = Speech::new(Language::English, LocaleFormat::default(), spoken);
        let facts = of_standards(&speech, &kept).into_iter();
        facts.map(|fact| (fact.value, fact.detail)).collect()
    }

    #[test]
    fn more_heat_than_there_was_is_remarked_on() {
        let of = |share| said(Some(900.0), share).last().unwrap().clone();
        assert!(of(1.18).1.contains("must be wrong"), "{:?}", of(1.18));
        assert_eq!(of(0.9).1, "");
    }

    #[test]
    fn a_pot_that_was_not_read_to_boil_is_not_said_never_to() {
        assert_eq!(said(None, 0.5)[0].0, "no boil in the readings");
    }
}
