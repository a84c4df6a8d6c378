//! What a person must be told of a build, grouped by what it is about.

use std::cmp::Reverse;

use model::insulation::InsulationHazard;
use model::media::Hazard;
use model::safety::{Build, Caution};

use crate::components::{CautionLevel, Icon};
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::order::in_order;
use crate::present::cooker::fault::reason;
use crate::present::cooker::list::capital;
use crate::present::level;

/// A caution as it is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct CautionView {
    /// How badly it can go.
    pub level: CautionLevel,
    /// The kind of harm, drawn.
    pub icon: Icon,
    /// The level in a word.
    pub word: String,
    /// Whole sentences.
    pub text: String,
}

/// What cautions are about, in the order they are shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum About {
    Nitrate,
    Fire,
    Burns,
    Electricity,
    Pressure,
    Medium(usize),
    Insulation(usize),
}

/// Sentences about one thing.
struct Group {
    level: CautionLevel,
    icon: Icon,
    sentences: Vec<String>,
}

/// The cautions of a build with its store at the cut-out, the worst first; before them what must
/// not be built at all, as one from a copy may hold.
pub fn cautions(strings: &Strings, formats: &Formats, build: &Build) -> Vec<CautionView> {
    let refused = build.refusals().into_iter().map(|refusal| CautionView {
        level: CautionLevel::Danger,
        icon: Icon::Alight,
        word: strings.safety.danger.to_owned(),
        text: reason(strings, formats, &refusal),
    });
    refused.chain(minded(strings, formats, build)).collect()
}

fn minded(strings: &Strings, formats: &Formats, build: &Build) -> Vec<CautionView> {
    let words = &strings.build_safety;
    let mut groups: Vec<(About, Group)> = Vec::new();
    for caution in build.cautions(build.cut_out_c) {
        let Some((about, level, icon, sentence)) = told(strings, formats, build, &caution) else {
            continue;
        };
        let Some((_, group)) = groups.iter_mut().find(|(of, _)| *of == about) else {
            let group = Group {
                level,
                icon,
                sentences: vec![sentence],
            };
            groups.push((about, group));
            continue;
        };
        if rank(group.level) < rank(level) {
            group.level = level;
        }
        if !group.sentences.contains(&sentence) {
            group.sentences.push(sentence);
        }
    }
    let worst_first = |(about, group): &(About, Group)| (Reverse(rank(group.level)), *about);
    in_order(groups, |a, b| worst_first(a).cmp(&worst_first(b)))
        .into_iter()
        .map(|(about, group)| {
            let name = match about {
                About::Medium(idx) => build
                    .media
                    .get(idx)
                    .map(|row| (strings.tables.medium)(*row)),
                About::Insulation(idx) => build
                    .layers
                    .get(idx)
                    .map(|layer| (strings.tables.insulation)(layer.material)),
                _ => None,
            };
            let head = name.map(|name| (words.cautions.about)(&capital(name)));
            let text: Vec<String> = head.into_iter().chain(group.sentences).collect();
            CautionView {
                level: group.level,
                icon: group.icon,
                word: level::word(&strings.safety, group.level).to_owned(),
                text: text.join(" "),
            }
        })
        .collect()
}

fn rank(level: CautionLevel) -> u8 {
    match level {
        CautionLevel::Note => 0,
        CautionLevel::Warning => 1,
        CautionLevel::Danger => 2,
    }
}

/// One caution: what it is about, how bad, and the sentence; none for what dishes bring.
fn told(
    strings: &Strings,
    formats: &Formats,
    build: &Build,
    caution: &Caution,
) -> Option<(About, CautionLevel, Icon, String)> {
    use CautionLevel::{Danger, Note, Warning};
    let (safety, words) = (&strings.safety, &strings.build_safety.cautions);
    let volts = |volts: f64| (strings.cooker.follows.volts)(&formats.number(volts, 0));
    let of_medium = |medium| build.media.iter().position(|other| *other == medium);
    let said = |text: &str| text.to_owned();
    Some(match *caution {
        Caution::Ignites { .. } => (About::Fire, Danger, Icon::Alight, said(safety.fire)),
        Caution::HotMetal { .. } => (About::Burns, Warning, Icon::HotHand, said(safety.hot_metal)),
        Caution::MoltenNitrate { .. } => (About::Nitrate, Danger, Icon::Salt, said(safety.nitrate)),
        Caution::NitrateOnAluminium { .. } => (
            About::Nitrate,
            Danger,
            Icon::Salt,
            said(words.nitrate_aluminium),
        ),
        Caution::NitrateJacketUnknown { .. } => (
            About::Nitrate,
            Danger,
            Icon::Salt,
            said(words.nitrate_unknown),
        ),
        Caution::NitrateNearBinder { insulation, .. } => {
            let name = (strings.tables.insulation)(insulation);
            (
                About::Nitrate,
                Danger,
                Icon::Salt,
                (words.nitrate_binder)(name),
            )
        }
        Caution::SealedVessel => (About::Pressure, Danger, Icon::Valve, said(safety.pressure)),
        Caution::AboveTouchSafe {
            open_circuit_v,
            limit_v,
        } => {
            let text = (words.above_touch)(&volts(open_circuit_v), &volts(limit_v));
            (About::Electricity, Danger, Icon::Bolt, text)
        }
        Caution::BeyondExtraLow {
            open_circuit_v,
            limit_v,
        } => {
            let text = (words.beyond_low)(&volts(open_circuit_v), &volts(limit_v));
            (About::Electricity, Danger, Icon::Bolt, text)
        }
        Caution::PanelsLive => (
            About::Electricity,
            Danger,
            Icon::Bolt,
            said(safety.panel_live),
        ),
        Caution::SwitchRatedForDirectCurrent => (
            About::Electricity,
            Warning,
            Icon::Bolt,
            said(words.switch_dc),
        ),
        Caution::FuseAndWireByLocalCode => {
            (About::Electricity, Warning, Icon::Bolt, said(safety.wiring))
        }
        Caution::OfMedium { medium, hazard } => {
            let (level, icon) = match hazard {
                Hazard::Combustible | Hazard::HotLiquid | Hazard::ExpandsOnMelting => {
                    (Warning, Icon::Flame)
                }
                Hazard::Oxidiser | Hazard::Toxic | Hazard::SpallsWhenWet | Hazard::Vapour => {
                    (Warning, Icon::Alarm)
                }
                _ => (Note, Icon::Note),
            };
            let about = About::Medium(of_medium(medium)?);
            (about, level, icon, said((words.medium)(hazard)))
        }
        Caution::Corrodes { medium, metal } => {
            let text = (words.corrodes)((strings.tables.medium)(metal));
            (About::Medium(of_medium(medium)?), Note, Icon::Note, text)
        }
        Caution::OfInsulation { insulation, hazard } => {
            let layer = build
                .layers
                .iter()
                .position(|layer| layer.material == insulation)?;
            let (level, icon) = match hazard {
                InsulationHazard::Combustible | InsulationHazard::SelfHeats => {
                    (Warning, Icon::Flame)
                }
                InsulationHazard::AsbestosInOldStock | InsulationHazard::Dust => {
                    (Warning, Icon::Alarm)
                }
                _ => (Note, Icon::Note),
            };
            let about = About::Insulation(layer);
            (about, level, icon, said((words.insulation)(hazard)))
        }
        Caution::MustBoil { .. }
        | Caution::Detoxify { .. }
        | Caution::CoreTemperature { .. }
        | Caution::HoldHot { .. }
        | Caution::NeverOvernight { .. } => return None,
    })
}

#[cfg(test)]
mod tests {
    use model::presets::Preset;

    use super::*;
    use crate::present::cooker::fault::build_of;
    use crate::present::cooker::tests::{household_site, spanish};
    use crate::present::tests::english;

    fn of(preset: Preset) -> Vec<CautionView> {
        let (strings, formats) = english();
        let cooker = preset.cooker(200.0, 11.0);
        let build = build_of(&household_site(), &cooker).unwrap();
        cautions(strings, &formats, &build)
    }

    #[test]
    fn salt_is_the_first_thing_told_of_a_salt_store() {
        let views = of(Preset::NitrateInCeramicFibre);
        assert_eq!(
            (views[0].level, views[0].icon),
            (CautionLevel::Danger, Icon::Salt)
        );
        assert!(views.iter().any(|view| view.icon == Icon::Bolt));
    }

    #[test]
    fn a_thing_is_told_once() {
        for preset in Preset::ALL {
            let views = of(preset);
            assert!(
                3 <= views.len() && views.len() <= 8,
                "{preset:?}: {}",
                views.len()
            );
            for pair in views.windows(2) {
                assert!(rank(pair[1].level) <= rank(pair[0].level), "{preset:?}");
            }
        }
    }

    #[test]
    fn a_danger_has_the_level_and_the_word_it_has_on_the_page_of_cautions() {
        let (strings, _) = english();
        let of = |text: &str| {
            let views = of(Preset::AluminiumInPerlite);
            let view = views.into_iter().find(|view| view.text.contains(text));
            view.map(|view| (view.level, view.word)).unwrap()
        };
        let safety = &strings.safety;
        assert_eq!(
            of(safety.panel_live),
            (CautionLevel::Danger, safety.danger.to_owned())
        );
        assert_eq!(
            of(safety.hot_metal),
            (CautionLevel::Warning, safety.warning.to_owned())
        );
    }

    #[test]
    fn what_must_not_be_built_comes_before_all_else() {
        let (strings, formats) = english();
        let mut cooker = Preset::NitrateInCeramicFibre.cooker(200.0, 11.0);
        cooker.contact.seat = model::seat::Seat::SunkInMelt;
        let build = build_of(&household_site(), &cooker).unwrap();
        let views = cautions(strings, &formats, &build);
        assert!(
            views[0].text.starts_with("Never a pot in molten"),
            "{views:?}"
        );
        assert_eq!(views[0].level, CautionLevel::Danger);
    }

    #[test]
    fn high_voltage_is_a_danger_in_both_languages() {
        for (strings, formats) in [english(), spanish()] {
            let mut cooker = Preset::AluminiumInPerlite.cooker(100.0, 11.0);
            cooker.panels.in_series = 6;
            let build = build_of(&household_site(), &cooker).unwrap();
            let views = cautions(strings, &formats, &build);
            let bolt = views.iter().find(|view| view.icon == Icon::Bolt).unwrap();
            assert_eq!(bolt.level, CautionLevel::Danger);
            assert!(bolt.text.contains("120"), "{}", bolt.text);
        }
    }
}
