//! Where the heat goes while the pot is in.

use model::tonight::HeatAccount;

use super::Voice;
use crate::chart::{HeatBarView, HeatPart};

/// Less than this is not shown: an eighth of what a cup of water takes. \[J\]
const LEAST_J: f64 = 36e3 / 2.0;

/// Below this all is told in watt-hours, so that the parts can be compared. \[J\]
const SMALL_J: f64 = 3.6e6;

/// All is told in steps of ten watt-hours. \[J\]
const STEP_J: f64 = 36e3;

/// What is too little to be shown comes to less than this in all, in steps.
const HIDDEN_STEPS: f64 = 4.0;

/// The bar of an account.
pub fn heat(voice: &Voice<'_>, account: &HeatAccount) -> HeatBarView {
    let words = &voice.strings.tonight.heat;
    let parts = [
        (words.food, account.pot_after_j - account.pot_before_j),
        (words.steam, account.steam_j),
        (words.pot, account.pot_loss_j),
        (words.jacket, account.jacket_j),
        (words.open, account.open_j),
        (words.left, account.store_after_j),
    ];
    let steps = |joules: f64| joules.max(0.0) / STEP_J;
    let store = steps(account.store_before_j).round();
    let sun = steps(account.from_sun_j).round();
    let shown = parts.map(|(_, joules)| {
        let is_shown = LEAST_J < joules;
        if is_shown { steps(joules) } else { 0.0 }
    });
    let told = to_sum(shown, store + sun);
    let is_small = account.came_j() < SMALL_J;
    let energy = |steps: f64| {
        let (formats, units) = (voice.formats, voice.formats.units);
        if is_small {
            (units.watt_hours)(&formats.number(steps * 10.0, 0))
        } else {
            (units.kilowatt_hours)(&formats.number(steps / 100.0, 2))
        }
    };
    let has = if 0.0 < sun {
        (words.has_with_sun)(&energy(store), &energy(sun))
    } else {
        (words.has)(&energy(store))
    };
    let [food, steam, ..] = told;
    let reaches = if 0.0 < steam {
        (words.reaches_and_steams)(&energy(food), &energy(steam))
    } else {
        (words.reaches)(&energy(food))
    };
    HeatBarView {
        name: words.heading.to_owned(),
        parts: parts
            .into_iter()
            .zip(told)
            .enumerate()
            .filter(|(_, (_, told))| 0.0 < *told)
            .map(|(look, ((label, joules), told))| HeatPart {
                label: label.to_owned(),
                value: energy(told),
                look,
                share: joules,
            })
            .collect(),
        sentence: format!("{has} {reaches}"),
    }
}

/// The parts in whole steps that come to the whole beside them: who adds up what is shown finds it.
/// Those that rounding wrongs most are given what is missing. Where the whole is another than that
/// of the parts, as of a pot that gave heat away, they come to their own sum.
fn to_sum<const N: usize>(parts: [f64; N], whole: f64) -> [f64; N] {
    let sum: f64 = parts.iter().sum();
    let whole = if (sum - whole).abs() < HIDDEN_STEPS {
        whole
    } else {
        sum.round()
    };
    let mut told = parts.map(f64::floor);
    let missing = |told: &[f64; N]| whole - told.iter().sum::<f64>();
    // Each turn brings it nearer by one.
    for _ in 0..2 * N {
        if missing(&told).abs() < 0.5 {
            break;
        }
        let way = missing(&told).signum();
        let owed = |part: f64, told: f64| (part - told) * way;
        let next = told
            .iter_mut()
            .zip(parts)
            .filter(|(told, part)| 0.0 < *part && 0.0 <= **told + way)
            .max_by(|(a, one), (b, other)| owed(*one, **a).total_cmp(&owed(*other, **b)));
        let Some((told, _)) = next else { break };
        *told += way;
    }
    told
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::tests::english;
    use model::local_time::LocalTime;

    fn view(account: &HeatAccount) -> HeatBarView {
        let (strings, formats) = english();
        let voice = Voice {
            strings,
            formats: &formats,
            now: LocalTime(60_000),
        };
        heat(&voice, account)
    }

    fn number(text: &str) -> f64 {
        let digits = text.split('\u{A0}').next().unwrap();
        digits.parse().unwrap()
    }

    /// Watt-hours that all lie near the middle between two steps.
    fn account(food_wh: f64, steam_wh: f64) -> HeatAccount {
        let [food, steam, wall, jacket, left] =
            [food_wh, steam_wh, 36.0, 84.0, 614.0].map(|watt_hours| 3600.0 * watt_hours);
        HeatAccount {
            store_before_j: food + steam + wall + jacket + left,
            pot_before_j: 0.0,
            from_sun_j: 0.0,
            store_after_j: left,
            pot_after_j: food,
            jacket_j: jacket,
            pot_loss_j: wall,
            open_j: 0.0,
            steam_j: steam,
        }
    }

    #[test]
    fn the_parts_add_up_to_what_there_was() {
        for (food_wh, steam_wh) in [(184.0, 44.0), (186.0, 0.0), (184.0, 4.0), (504.0, 46.0)] {
            let account = account(food_wh, steam_wh);
            let view = view(&account);
            let sum: f64 = view.parts.iter().map(|part| number(&part.value)).sum();
            let all = number(view.sentence.strip_prefix("The store has ").unwrap());
            assert!((sum - all).abs() < 1e-6, "{view:?}");
            for part in &view.parts {
                let is_kwh = part.value.contains("kWh");
                let told_j = number(&part.value) * if is_kwh { 3.6e6 } else { 3600.0 };
                assert!((told_j - part.share).abs() < STEP_J, "{part:?}");
            }
        }
    }

    #[test]
    fn what_steams_away_is_named_beside_what_stays() {
        let hard = view(&account(40.0, 250.0)).sentence;
        assert!(
            hard.contains("250\u{A0}Wh") || hard.contains("0.25\u{A0}kWh"),
            "{hard}"
        );
        assert!(!view(&account(40.0, 0.0)).sentence.contains("steam"));
    }

    #[test]
    fn a_pot_that_gives_heat_away_stops_no_sum() {
        let mut account = account(-200.0, 0.0);
        account.store_before_j = -40.0 * 3600.0;
        assert!(!view(&account).parts.is_empty());
        let sum = |parts: [f64; 3], whole| to_sum(parts, whole).iter().sum::<f64>();
        assert!(
            sum([0.0, 0.0, 0.0], 3.0).abs() < 1e-9,
            "there is none to give it to"
        );
        assert!((sum([1.6, 1.6, 0.4], 3.0) - 3.0).abs() < 1e-9);
    }
}
