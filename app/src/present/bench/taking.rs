//! What changes of a cooker when what was measured is used for it.

use model::bench::{Parameter, Standing, Stands};
use model::cooker::Cooker;
use model::panel::Drive;
use model::tonight::Site;

use crate::components::Fact;
use crate::i18n::format::Sure;
use crate::i18n::strings::bench::fit::Taking;
use crate::present::bench::figure::{Figure, TO_PERCENTILE};
use crate::present::cooker::facts::two_digits;
use crate::present::tonight::Voice;
use crate::state::bench::KeptFit;

const J_KWH: f64 = 3.6e6;
/// Nobody reads a smaller change off two digits.
const SAME: f64 = 0.002;

/// Each figure that changes, as it is and as it will be; `None` where either cooker can't be worked
/// out.
pub fn changes(voice: &Voice<'_>, site: &Site, now: &Cooker, then: &Cooker) -> Option<Vec<Fact>> {
    let words = &voice.strings.bench.fit.taking;
    let (now, then) = (
        Standing::of(site, now).ok()?,
        Standing::of(site, then).ok()?,
    );
    let at = voice.formats.temperature(now.working_c, Sure::Known);
    let lines = [
        line(
            voice,
            &(words.loss)(&at),
            (now.loss_w_k, then.loss_w_k),
            (1.0, "W/K", false),
        ),
        line(
            voice,
            words.jacket,
            (now.jacket_j_k, then.jacket_j_k),
            (1e-3, "kJ/K", false),
        ),
        line(
            voice,
            words.store,
            (now.store_j, then.store_j),
            (1.0 / J_KWH, "kWh", false),
        ),
        line(
            voice,
            &(words.contact)(&at),
            (now.contact_w_m2k, then.contact_w_m2k),
            (1.0, "W/(m²\u{A0}K)", true),
        ),
        line(
            voice,
            words.pot_loss,
            (now.pot_loss, then.pot_loss),
            (100.0, "%", false),
        ),
        now.tracker
            .zip(then.tracker)
            .and_then(|tracker| line(voice, words.tracker, tracker, (100.0, "%", false))),
    ];
    Some(lines.into_iter().flatten().collect())
}

/// What was measured and is not carried over, since the description has no place for it.
pub fn stays(voice: &Voice<'_>, fit: &KeptFit, now: &Cooker) -> Vec<String> {
    let has_tracker = matches!(now.heater.drive, Drive::Tracker { .. });
    let homeless = [Parameter::MeltingPoint, Parameter::Heater];
    let say = |parameter: Parameter| {
        let figure = Figure::Of(parameter);
        let value = figure.of(fit).filter(|value| value.told)?;
        let said = figure.said(voice.strings, voice.formats, &value);
        Some((voice.strings.bench.fit.taking.stays)(
            figure.name(voice.strings),
            &said,
        ))
    };
    let stays = homeless.into_iter();
    let stays = stays.filter(|of| *of != Parameter::Heater || !has_tracker);
    stays.filter_map(say).collect()
}

fn line(
    voice: &Voice<'_>,
    label: &str,
    (now, then): (Stands, Stands),
    (times, unit, is_way): (f64, &str, bool),
) -> Option<Fact> {
    let words: &Taking = &voice.strings.bench.fit.taking;
    let differs = |one: f64, other: f64| SAME < (other / one - 1.0).abs();
    let doubts = now.doubt.zip(then.doubt);
    let is_known_better = doubts.is_some_and(|(now, then)| differs(now, then));
    if !differs(now.value, then.value) && !is_known_better {
        return None;
    }
    let say = |stands: Stands| two_digits(voice.formats, times * stands.value);
    // The same 8 of 10 cases as in all tables.
    let percent = |share: f64| voice.formats.percent(TO_PERCENTILE * share);
    Some(Fact {
        label: label.to_owned(),
        value: (words.from_to)(&say(now), &say(then), unit),
        detail: doubts.map_or_else(String::new, |(now, then)| {
            let said = if is_way { words.doubt_way } else { words.doubt };
            said(&percent(now), &percent(then))
        }),
        icon: None,
    })
}

#[cfg(test)]
mod tests {
    use model::bench::Measured;
    use model::jacket::Jacket;
    use model::presets::Preset;

    use super::*;
    use crate::i18n::Language;
    use crate::present::cooker::tests::household_site;
    use crate::present::tests::speaking;
    use crate::state::bench::Found;
    use crate::state::ids::RunId;
    use crate::state::sample::{at, kept_fit};

    #[test]
    fn what_changes_is_listed_with_what_it_was_and_what_it_will_be() {
        let now = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let mut then = now.clone();
        then.jacket = Jacket::Measured {
            loss_w_k: 0.61,
            capacity_j_k: 2500.0,
        };
        then.spreads.loss = Some(0.04);
        then.store.capacity_share = 0.9;
        then.spreads.capacity = Some(0.03);
        for language in Language::ALL {
            let (strings, formats) = speaking(language);
            let voice = Voice {
                strings,
                formats: &formats,
                now: at(20, 0),
            };
            let site = household_site();
            let told = changes(&voice, &site, &now, &then).unwrap();
            assert_eq!(told.len(), 3, "{told:?}");
            let point = formats.number(0.61, 2);
            assert!(
                told[0].value.contains(&format!("{point}\u{A0}W/K")),
                "{told:?}"
            );
            assert!(
                told[0].detail.replace('\u{A0}', " ").contains("5 %"),
                "{told:?}"
            );
            assert!(told[1].value.contains("2") && told[1].detail.is_empty());
            assert!(told[2].value.contains("kWh"));
            assert_eq!(changes(&voice, &site, &now, &now), Some(Vec::new()));
        }
    }
    #[test]
    fn what_has_no_place_in_the_description_is_said_not_to_be_carried_over() {
        let (strings, formats) = speaking(Language::English);
        let voice = Voice {
            strings,
            formats: &formats,
            now: at(20, 0),
        };
        let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let mut fit = kept_fit(RunId(1));
        fit.found = vec![Found {
            parameter: Parameter::MeltingPoint,
            measured: Measured {
                value: 118.0,
                sd: 0.5,
            },
            told: true,
        }];
        let said = stays(&voice, &fit, &cooker);
        assert_eq!(said.len(), 1);
        assert!(
            said[0].contains("118") && said[0].contains("not carried over"),
            "{said:?}"
        );
        fit.found[0].told = false;
        assert!(stays(&voice, &fit, &cooker).is_empty());
    }
}
