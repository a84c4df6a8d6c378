//! What follows from a build, as figures with their names.

use model::cooker::Store;
use model::safety::TOUCH_LIMIT_C;
use model::tonight::{DayTake, Figures, LightLine, YearTake};

use crate::components::{Fact, Icon};
use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;

/// A share this near the best one is as good as it.
const AS_GOOD: f64 = 0.015;
/// Joules of a kilowatt-hour.
const J_KWH: f64 = 3.6e6;
/// Below this a time is told to the minute, above to five. \[s\]
const SHORT_S: f64 = 1200.0;

/// What is worked out after the rest; `None` while it is.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Take {
    /// On a clear day; `Some(None)` where the day has no light.
    pub clear: Option<Option<DayTake>>,
    /// On an ordinary day.
    pub ordinary: Option<Option<DayTake>>,
    /// Over the year.
    pub year: Option<Option<YearTake>>,
}

fn fact(label: &str, value: String, detail: String, icon: Icon) -> Fact {
    Fact {
        label: label.to_owned(),
        value,
        detail,
        icon: Some(icon),
    }
}

/// A number to two digits that count: what a table's figure is worth.
pub fn two_digits(formats: &Formats, value: f64) -> String {
    if value.abs() < f64::MIN_POSITIVE {
        return formats.number(0.0, 0);
    }
    let magnitude = |value: f64| value.abs().log10().floor();
    let step = 10_f64.powf(magnitude(value) - 1.0);
    let rounded = (value / step).round() * step;
    // 0.034 has three decimals, 3.4 one, 34 and 340 none; 9.96 is 10 by now.
    let digits = magnitude(rounded);
    let decimals = (0_u8..=4).find(|decimals| 1.0 - digits <= f64::from(*decimals));
    formats.number(rounded, usize::from(decimals.unwrap_or(4)))
}

/// What the metal within the medium weighs, and where that is told; none without such metal.
pub fn metal_weighs(strings: &Strings, formats: &Formats, store: &Store) -> Option<String> {
    let mass_kg = store.metal_kg().filter(|mass_kg| 0.0 < *mass_kg)?;
    let mass = (strings.common.units.kilograms)(&two_digits(formats, mass_kg));
    Some((strings.cooker.ways.metal_weighs)(&mass))
}

/// What can't work: a store that does not fit in, a cut-out below the boil, heat that never fills it.
pub fn warning(strings: &Strings, formats: &Formats, figures: &Figures) -> Option<String> {
    let words = &strings.cooker.follows;
    let watts = |watts: f64| (strings.common.units.watts)(&two_digits(formats, watts));
    let cutout = formats.temperature(figures.cutout_c, Sure::Known);
    let too_large = figures.too_large_l.map(|(store_l, room_l)| {
        (words.too_large)(&formats.litres(store_l), &formats.litres(room_l))
    });
    let below = below_boil(strings, formats, figures);
    let never_full = (below.is_none() && !figures.gets_full())
        .then(|| (words.never_full)(&watts(figures.loss_w), &cutout, &watts(figures.most_heat_w)));
    let all: Vec<String> = [too_large, below, never_full]
        .into_iter()
        .flatten()
        .collect();
    (!all.is_empty()).then(|| all.join(" "))
}

/// What a cut-out means that is not above the boil.
fn below_boil(strings: &Strings, formats: &Formats, figures: &Figures) -> Option<String> {
    let degrees = |celsius| formats.temperature(celsius, Sure::Known);
    (figures.cutout_c <= figures.boiling_c).then(|| {
        (strings.cooker.follows.below_boil)(&degrees(figures.cutout_c), &degrees(figures.boiling_c))
    })
}

/// The build in one line, or why it boils nothing.
pub fn in_short(strings: &Strings, formats: &Formats, figures: &Figures) -> String {
    let words = &strings.cooker.follows;
    if let Some(below) = below_boil(strings, formats, figures) {
        return below;
    }
    let litre = match figures.litre_s {
        None => words.in_short_never.to_owned(),
        Some(_) if !figures.gets_full() => words.in_short_not_full.to_owned(),
        Some(litre_s) => (words.in_short_litre)(&time(formats, litre_s)),
    };
    (words.in_short)(
        &energy(strings, formats, figures.capacity_j),
        &hold(strings, formats, figures),
        &litre,
    )
}

/// What the heater gets in full sun of what the panels could give: more panels are of little use to
/// a heater that does not match them.
pub fn heater_in_short(strings: &Strings, formats: &Formats, full_sun: &LightLine) -> String {
    let watts = |watts: f64| formats.watts(watts);
    (strings.cooker.follows.in_short_heater)(
        &watts(full_sun.heat_w),
        &watts(full_sun.best_at.power_w()),
    )
}

/// How long it stays above the boil.
fn hold(strings: &Strings, formats: &Formats, figures: &Figures) -> String {
    match figures.cool.hold_s {
        Some(hold_s) => formats.duration(hold_s, Sure::Rough),
        None if figures.capacity_j <= 0.0 => formats.duration(0.0, Sure::Known),
        None => strings.cooker.follows.hold_long.to_owned(),
    }
}

/// A time to boil.
fn time(formats: &Formats, time_s: f64) -> String {
    let sure = if time_s < SHORT_S {
        Sure::Known
    } else {
        Sure::Near
    };
    formats.duration(time_s, sure)
}

/// Heat of a build to two digits, so that a change of a part shows: `0.35 kWh`.
fn energy(strings: &Strings, formats: &Formats, joules: f64) -> String {
    let kilowatt_hours = joules / J_KWH;
    if kilowatt_hours < 0.1 {
        return formats.energy(joules);
    }
    (strings.common.units.kilowatt_hours)(&two_digits(formats, kilowatt_hours))
}

/// The figures that are there at once.
pub fn facts(strings: &Strings, formats: &Formats, figures: &Figures) -> Vec<Fact> {
    let words = &strings.cooker.follows;
    let about = strings.common.about;
    let degrees = |celsius| formats.temperature(celsius, Sure::Known);
    let night_detail = if figures.after_night_l < 0.05 {
        words.night_nothing.to_owned()
    } else {
        (words.night_detail)(&formats.litres(figures.after_night_l))
    };
    let litre = match figures.litre_s {
        Some(litre_s) => about(&time(formats, litre_s)),
        None => words.litre_never.to_owned(),
    };
    vec![
        fact(
            words.capacity,
            energy(strings, formats, figures.capacity_j),
            (words.capacity_detail)(&formats.litres(figures.capacity_l)),
            Icon::Ember,
        ),
        fact(
            words.litre,
            litre,
            (words.litre_detail)(&degrees(20.0)),
            Icon::PotBoils,
        ),
        fact(
            words.hold,
            match figures.cool.hold_s {
                Some(_) => about(&hold(strings, formats, figures)),
                None => hold(strings, formats, figures),
            },
            (words.hold_detail)(&degrees(figures.cutout_c), &degrees(figures.air_c)),
            Icon::Clock,
        ),
        fact(
            words.night,
            about(&formats.temperature(figures.cool.after_night_c, Sure::Near)),
            night_detail,
            Icon::Moon,
        ),
        fact(
            words.loss,
            (strings.common.units.watts)(&two_digits(formats, figures.loss_w)),
            loss_by_kelvin(strings, formats, figures),
            Icon::Jacket,
        ),
        outer_face(strings, formats, figures),
        fact(
            words.seat,
            (words.w_k)(&two_digits(formats, figures.way_w_k)),
            seat_detail(strings, formats, figures),
            Icon::PotSteams,
        ),
    ]
}

/// What the figure of the seat stands beside.
fn seat_detail(strings: &Strings, formats: &Formats, figures: &Figures) -> String {
    let words = &strings.cooker.follows;
    let seat = (words.w_k)(&two_digits(formats, figures.seat_w_k));
    let power = (strings.common.units.watts)(&two_digits(formats, figures.seat_w));
    if figures.melting_c.is_some() {
        return (words.seat_detail_melt)(&seat, &power);
    }
    let fall_k = (figures.cutout_c - figures.boiling_c).max(0.0);
    (words.seat_detail)(&seat, &power, figures.seat_w_k * fall_k < figures.seat_w)
}

/// The loss by the kelvin at the cut-out, and where the bench and the diary tell it.
fn loss_by_kelvin(strings: &Strings, formats: &Formats, figures: &Figures) -> String {
    let words = &strings.cooker.follows;
    let w_k = |value: f64| (words.w_k)(&two_digits(formats, value));
    let at = |celsius| formats.temperature(celsius, Sure::Known);
    (words.loss_detail)(
        &w_k(figures.loss_w_k),
        &at(figures.cutout_c),
        &w_k(figures.working_loss_w_k),
        &at(figures.working_c),
    )
}

fn outer_face(strings: &Strings, formats: &Formats, figures: &Figures) -> Fact {
    let words = &strings.cooker.follows;
    let (value, detail) = match figures.outer_face_c {
        Some(face_c) => (
            (strings.common.about)(&formats.temperature(face_c, Sure::Known)),
            if TOUCH_LIMIT_C.value < face_c {
                words.outer_face_burns
            } else {
                ""
            },
        ),
        None => (
            strings.common.not_known.to_owned(),
            words.outer_face_unknown,
        ),
    };
    fact(words.outer_face, value, detail.to_owned(), Icon::HotHand)
}

/// What the heater takes of the sun.
pub fn take_facts(
    strings: &Strings,
    formats: &Formats,
    take: &Take,
    has_tracker: bool,
) -> Vec<Fact> {
    let words = &strings.cooker.follows;
    let day = |label: &str, take: Option<Option<DayTake>>, icon: Icon| {
        let (value, detail) = match take {
            None => (words.working.to_owned(), String::new()),
            Some(None) => (words.no_light.to_owned(), String::new()),
            Some(Some(take)) => (
                (words.day_heat)(&energy(strings, formats, take.heat_j)),
                (words.of_most)(&formats.percent(take.share)),
            ),
        };
        fact(label, value, detail, icon)
    };
    let mut facts = vec![
        day(words.clear_day, take.clear, Icon::SunClear),
        day(words.ordinary_day, take.ordinary, Icon::SunBroken),
    ];
    let year = match take.year {
        None => words.working.to_owned(),
        Some(None) => words.no_light.to_owned(),
        Some(Some(year)) => formats.percent(year.share),
    };
    facts.push(fact(words.year, year, String::new(), Icon::Panel));
    let best = match take.year {
        _ if has_tracker => Some((words.best_tracker.to_owned(), String::new())),
        Some(Some(year)) if year.best.share <= year.share + AS_GOOD => Some((
            formats.ohms(year.best.resistance_ohm),
            words.best_already.to_owned(),
        )),
        Some(Some(year)) => Some((
            formats.ohms(year.best.resistance_ohm),
            (words.best_detail)(&formats.percent(year.best.share)),
        )),
        None => Some((words.working.to_owned(), String::new())),
        Some(None) => None,
    };
    facts.extend(best.map(|(value, detail)| fact(words.best, value, detail, Icon::Heater)));
    facts
}

#[cfg(test)]
mod tests {
    use model::presets::Preset;

    use super::*;
    use crate::present::cooker::tests::{household_site, spanish};
    use crate::present::tests::english;

    fn figures(preset: Preset) -> Figures {
        Figures::new(&household_site(), &preset.cooker(200.0, 11.0)).unwrap()
    }

    #[test]
    fn two_digits_are_what_a_table_is_worth() {
        let (_, formats) = english();
        for (value, expected) in [
            (0.0, "0"),
            (0.0341, "0.034"),
            (0.25, "0.25"),
            (0.296, "0.30"),
            (3.44, "3.4"),
            (9.96, "10"),
            (34.4, "34"),
            (344.0, "340"),
            (1512.0, "1500"),
        ] {
            let said = two_digits(&formats, value).replace(['\u{A0}', '\u{202F}', ','], "");
            assert_eq!(said, expected, "{value}");
        }
    }

    #[test]
    fn every_figure_is_told_in_both_languages() {
        for (strings, formats) in [english(), spanish()] {
            for preset in Preset::ALL {
                let facts = facts(strings, &formats, &figures(preset));
                assert_eq!(facts.len(), 7);
                for fact in facts {
                    assert!(!fact.label.is_empty() && !fact.value.is_empty(), "{fact:?}");
                    assert!(!fact.value.contains("NaN"), "{fact:?}");
                }
            }
        }
    }

    #[test]
    fn one_line_holds_the_three_figures_that_parts_are_changed_for() {
        let (strings, formats) = english();
        let line = in_short(strings, &formats, &figures(Preset::AluminiumInPerlite));
        assert_eq!(
            line.replace('\u{A0}', " "),
            "0.35 kWh · holds 9 h 30 · 1 L in 4 min"
        );
    }

    #[test]
    fn a_cooker_that_cannot_boil_says_so() {
        let (strings, formats) = english();
        let mut cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        cooker.store.cutout_c = 80.0;
        let figures = Figures::new(&household_site(), &cooker).unwrap();
        let warning = warning(strings, &formats, &figures).unwrap();
        assert_eq!(in_short(strings, &formats, &figures), warning);
        let facts = facts(strings, &formats, &figures);
        assert_eq!(facts[1].value, "never");
        assert!(facts[0].detail.contains("about 0\u{A0}L"), "{:?}", facts[0]);
    }

    #[test]
    fn a_cooker_that_never_gets_full_says_so() {
        let (strings, formats) = english();
        let cooker = Preset::AluminiumInPerlite.cooker(50.0, 11.0);
        let figures = Figures::new(&household_site(), &cooker).unwrap();
        let warning = warning(strings, &formats, &figures).unwrap();
        assert!(warning.starts_with("It never gets full"), "{warning}");
        let line = in_short(strings, &formats, &figures);
        assert!(line.ends_with("never gets full"), "{line}");
        let full = super::warning(
            strings,
            &formats,
            &self::figures(Preset::AluminiumInPerlite),
        );
        assert_eq!(full, None);
    }

    #[test]
    fn what_is_not_worked_out_yet_is_said_to_be() {
        let (strings, formats) = english();
        let facts = take_facts(strings, &formats, &Take::default(), false);
        assert!(facts.iter().all(|fact| fact.value == "being worked out…"));
        let tracker = take_facts(strings, &formats, &Take::default(), true);
        assert_eq!(tracker.last().unwrap().value, "any, with a tracker");
    }
}
