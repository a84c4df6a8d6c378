//! What would help, in words, and what each changes in the plan.

use model::dish::Soak;
use model::journal::{Meal, What};
use model::local_time::LocalTime;
use model::odds::{Chance, Improvement, OddsWord};
use model::pot::{Lid, Pot, PotSize, Wrap};
use model::tonight::Help;

use super::plan::amounts;
use super::verdict::is_good;
use super::{Voice, ended};
use crate::i18n::format::{Sure, round_to};
use crate::present::odds::{figure, odds};
use crate::state::limits;
use crate::state::plan::{Amount, Plan, TimeOfDay};

/// One thing that would help.
#[derive(Debug, Clone, PartialEq)]
pub struct HelpView {
    /// What to do, with its numbers.
    pub sentence: String,
    /// The words of the button.
    pub button: String,
    /// The plan with it done.
    pub plan: Plan,
    /// What is to be noted instead, where it is nothing of the plan.
    pub noted: Option<What>,
}

/// The changes that are worth offering to who is told these odds now, and whether one of them may
/// do. Each is told with better odds, and not with such as a meal is cooked otherwise for; where one
/// may do, those that leave it unlikely are no help beside it.
pub fn that_help(
    voice: &Voice<'_>,
    now: Chance,
    found: Vec<Improvement>,
) -> (Vec<Improvement>, bool) {
    let told = |chance| figure(voice.strings, voice.formats, chance);
    let may_do = |found: &Improvement| OddsWord::Even <= found.ready().word();
    let is_any = found.iter().any(may_do);
    let is_help = |found: &Improvement| {
        let then = found.ready();
        let is_better = now < then && told(now) != told(then);
        is_better && (may_do(found) || !is_any && OddsWord::Unlikely <= then.word())
    };
    (found.into_iter().filter(is_help).collect(), is_any)
}

/// The latest time for nine chances in ten beside the changes that were tried for a pot that is not
/// good enough at `put_in`. The time was found over a part of what may be, and the changes are told by
/// all of it: theirs count. None where the part denies what is told of the pot.
pub fn latest_beside(
    latest: Option<LocalTime>,
    put_in: LocalTime,
    tried: &[Improvement],
) -> Option<Option<LocalTime>> {
    let mut is_denied = false;
    for found in tried {
        match found.help {
            Help::EarlierIn { put_in: at } | Help::WaitForSun { put_in: at }
                if is_good(found.ready()) =>
            {
                return Some(Some(at));
            }
            Help::EarlierIn { .. } => is_denied = true,
            _ => {}
        }
    }
    match latest {
        Some(_) if is_denied => Some(None),
        Some(latest) => (latest < put_in).then_some(Some(latest)),
        None => Some(None),
    }
}

/// The same with the odds that it gives.
pub fn with_odds(voice: &Voice<'_>, plan: &Plan, meal: &Meal, found: &Improvement) -> HelpView {
    let view = help(voice, plan, meal, found.help);
    let odds = odds(voice.strings, voice.formats, found.ready());
    let then = (voice.strings.tonight.chances.then)(&odds);
    HelpView {
        sentence: format!("{} {then}", view.sentence),
        ..view
    }
}

/// Words and plan for one kind of help.
pub fn help(voice: &Voice<'_>, plan: &Plan, meal: &Meal, help: Help) -> HelpView {
    let words = &voice.strings.tonight.help;
    let formats = voice.formats;
    let both = |pair: (&str, &str)| (pair.0.to_owned(), pair.1.to_owned());
    let mut next = plan.clone();
    let mut noted = None;
    let (sentence, button) = match help {
        Help::LidOn => {
            next.lid = Lid::On;
            both(words.lid_on)
        }
        Help::EarlierIn { put_in } if put_in <= voice.now.plus_s(59) => {
            next.put_in = None;
            both(words.at_once)
        }
        Help::EarlierIn { put_in } => {
            let time = goes_in(voice, &mut next, put_in);
            ((words.earlier.0)(&time), (words.earlier.1)(&time))
        }
        Help::WaitForSun { put_in } => {
            let time = goes_in(voice, &mut next, put_in);
            ((words.wait.0)(&time), (words.wait.1)(&time))
        }
        Help::Soak { dish } => {
            next.dish = dish;
            next.amount = same_food(plan, meal, dish);
            let hours = match dish.props().soak {
                Soak::Hours(hours) => f64::from(hours),
                Soak::None | Soak::Detoxify => 0.0,
            };
            let long = formats.duration(hours * 3600.0, Sure::Known);
            ((words.soak.0)(&long), words.soak.1.to_owned())
        }
        Help::WarmWater { start_c } => {
            let degrees = starts_at(voice, &mut next, start_c);
            ((words.warm.0)(&degrees), (words.warm.1)(&degrees))
        }
        Help::WrapPot => {
            next.pot = Some(Pot {
                wrap: Wrap::Wrapped,
                ..meal.pot
            });
            both(words.wrap)
        }
        Help::SmallerPot { size } => {
            next.pot = Some(Pot { size, ..meal.pot });
            let litres = formats.litres(size.props().volume_l);
            ((words.smaller.0)(&litres), (words.smaller.1)(&litres))
        }
        Help::Less { share } => less(voice, &mut next, meal, share),
        Help::MoreWater { water_kg } => {
            let water_kg = (water_kg * 20.0).ceil() / 20.0;
            next.amount = Amount::Measured {
                food_kg: meal.food_kg,
                water_kg,
            };
            let litres = litres_fine(voice, water_kg);
            ((words.more_water.0)(&litres), (words.more_water.1)(&litres))
        }
        Help::EatLater { eat_at } => {
            next.eat = TimeOfDay::of(eat_at);
            let time = voice.time(eat_at, Sure::Known);
            ((words.later.0)(&time), (words.later.1)(&time))
        }
        Help::TopUp { heat_w, for_s } => {
            noted = Some(What::TopUp { heat_w, for_s });
            let for_s = i32::try_from(for_s).map_or(f64::MAX, f64::from);
            let long = formats.duration(for_s, Sure::Near);
            ((words.top_up.0)(&long), words.top_up.1.to_owned())
        }
        Help::OtherFire { minutes, start_c } => {
            let degrees = starts_at(voice, &mut next, start_c);
            let long = formats.duration(minutes.max(3.0) * 60.0, fire_sure(minutes));
            ((words.fire.0)(&long, &degrees), (words.fire.1)(&degrees))
        }
    };
    HelpView {
        sentence: ended(sentence),
        button,
        plan: next,
        noted,
    }
}

/// What makes a meal fit that the pot is too small for: a larger pot, fewer people.
pub fn that_fits(voice: &Voice<'_>, plan: &Plan, meal: &Meal) -> Vec<HelpView> {
    let words = &voice.strings.tonight.help;
    let litres_of = |(food_kg, water_kg): (f64, f64)| water_kg + food_kg * limits::FOOD_L_KG;
    let mut found = Vec::new();
    let needed_l = litres_of(plan.amounts_kg());
    if let Some(size) = PotSize::ALL
        .into_iter()
        .find(|size| needed_l <= size.props().volume_l)
    {
        let litres = voice.formats.litres(size.props().volume_l);
        found.push(HelpView {
            sentence: (words.smaller.0)(&litres),
            button: (words.smaller.1)(&litres),
            plan: Plan {
                pot: Some(Pot { size, ..meal.pot }),
                ..plan.clone()
            },
            noted: None,
        });
    }
    let holds_l = meal.pot.size.props().volume_l;
    if let Amount::People(people) = plan.amount {
        let smaller = |people| Plan {
            amount: Amount::People(people),
            ..plan.clone()
        };
        let fitting = (1..people)
            .rev()
            .map(|people| (people, smaller(people)))
            .find(|(_, plan)| litres_of(plan.amounts_kg()) <= holds_l);
        if let Some((people, plan)) = fitting {
            let amounts = amounts(voice, plan.dish, plan.amounts_kg());
            found.push(HelpView {
                sentence: (words.fewer.0)(people, &amounts),
                button: (words.fewer.1)(people),
                plan,
                noted: None,
            });
        }
    }
    found
}

fn fire_sure(minutes: f64) -> Sure {
    if minutes < 8.0 {
        Sure::Known
    } else {
        Sure::Near
    }
}

/// Has the pot go in at a time, to the whole minute.
fn goes_in(voice: &Voice<'_>, plan: &mut Plan, put_in: LocalTime) -> String {
    plan.put_in = Some(TimeOfDay::of(put_in));
    voice.time(put_in, Sure::Known)
}

/// Has what goes in at least this warm: rounded up to five degrees, so that it still helps.
fn starts_at(voice: &Voice<'_>, plan: &mut Plan, start_c: f64) -> String {
    let degrees = voice.formats.degrees;
    let step = 5.0;
    let shown = (degrees.from_c(start_c) / step).ceil() * step;
    let start_c = degrees.to_c(shown).min(START_MOST_C.max(start_c));
    plan.start_c = Some(start_c);
    voice.formats.temperature(start_c, Sure::Known)
}

/// Rounding up does not lead beyond this: on a high mountain water boils at 85 degC. [°C]
const START_MOST_C: f64 = 85.0;

/// Weighed food stays what it was when the dish changes; its water follows the dish.
fn same_food(plan: &Plan, meal: &Meal, dish: model::dish::Dish) -> Amount {
    match plan.amount {
        Amount::People(people) => Amount::People(people),
        Amount::Measured { .. } => Amount::Measured {
            food_kg: meal.food_kg,
            water_kg: meal.food_kg * dish.props().water_per_food.value,
        },
    }
}

/// Fewer people where that is how the meal was planned, less food and water otherwise; rounded
/// down, so that it still helps.
fn less(voice: &Voice<'_>, plan: &mut Plan, meal: &Meal, share: f64) -> (String, String) {
    let words = &voice.strings.tonight.help;
    if let Amount::People(people) = plan.amount
        && let Some(fewer) = (1..people)
            .rev()
            .find(|&fewer| f64::from(fewer) <= share * f64::from(people))
    {
        plan.amount = Amount::People(fewer);
        let amounts = amounts(voice, plan.dish, plan.amounts_kg());
        return ((words.fewer.0)(fewer, &amounts), (words.fewer.1)(fewer));
    }
    let floor = |kg: f64| (kg * share * 100.0).floor() / 100.0;
    let (food_kg, water_kg) = (floor(meal.food_kg), floor(meal.water_kg));
    plan.amount = Amount::Measured { food_kg, water_kg };
    let amounts = amounts(voice, plan.dish, (food_kg, water_kg));
    ((words.less.0)(&amounts), words.less.1.to_owned())
}

/// Litres to a twentieth.
fn litres_fine(voice: &Voice<'_>, litres: f64) -> String {
    (voice.formats.units.litres)(&voice.formats.field(round_to(litres, 0.05), 2))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::tests::english;

    #[test]
    fn what_does_not_help_is_no_help() {
        let (strings, formats) = english();
        let voice = Voice {
            strings,
            formats: &formats,
            now: LocalTime(60_000),
        };
        let offered = |now, then: &[f64]| {
            let found = then.iter().map(|&p_done| Improvement {
                help: Help::LidOn,
                p_done,
            });
            let (helps, may_do) = that_help(&voice, Chance::new(now), found.collect());
            let helps: Vec<f64> = helps.iter().map(|found| found.p_done).collect();
            (helps, may_do)
        };
        // From the first word of the scale to the next is told with 'very unlikely'.
        assert_eq!(offered(0.02, &[0.12]), (vec![], false));
        // A first step, where there is none better.
        assert_eq!(offered(0.02, &[0.12, 0.3]), (vec![0.3], false));
        assert_eq!(offered(0.02, &[0.7, 0.3, 0.12]), (vec![0.7], true));
        // The same figure, and a worse one.
        assert_eq!(offered(0.62, &[0.64, 0.97, 0.5]), (vec![0.97], true));
    }

    /// No figure for a time stands beside another for the same time.
    #[test]
    fn the_latest_time_is_told_by_the_changes_that_were_tried() {
        let at = |minute: i64| LocalTime(60_000 + 60 * minute);
        let earlier = |p_done| {
            let put_in = at(-30);
            vec![Improvement {
                help: Help::EarlierIn { put_in },
                p_done,
            }]
        };
        let told = |latest, tried: &[Improvement]| latest_beside(latest, at(0), tried);
        assert_eq!(told(None, &earlier(0.9)), Some(Some(at(-30))));
        assert_eq!(told(Some(at(-30)), &earlier(0.8)), Some(None));
        assert_eq!(told(None, &earlier(0.8)), Some(None));
        assert_eq!(told(Some(at(-5)), &[]), Some(Some(at(-5))));
        assert_eq!(told(None, &[]), Some(None));
        // A pot that is not good enough then is not told to be so later.
        assert_eq!(told(Some(at(20)), &[]), None);
    }
}
