//! Where the heat goes while the pot is in.

use model::tonight::HeatAccount;

use super::Voice;
use crate::chart::{HeatBarView, HeatPart};
use crate::i18n::format::round_to;

/// Less than this is not shown: an eighth of what a cup of water takes. \[J\]
const LEAST_J: f64 = 36e3 / 2.0;

/// Below this all is told in watt-hours, so that the parts can be compared. \[J\]
const SMALL_J: f64 = 3.6e6;

/// The bar of an account.
pub fn heat(voice: &Voice<'_>, account: &HeatAccount) -> HeatBarView {
    let words = &voice.strings.tonight.heat;
    let food_j = account.pot_after_j - account.pot_before_j;
    let parts = [
        (words.food, food_j),
        (words.steam, account.steam_j),
        (words.pot, account.pot_loss_j),
        (words.jacket, account.jacket_j),
        (words.open, account.open_j),
        (words.left, account.store_after_j),
    ];
    let is_small = account.came_j() < SMALL_J;
    let energy = |joules: f64| {
        let (formats, units) = (voice.formats, voice.formats.units);
        let watt_hours = joules.max(0.0) / 3600.0;
        if is_small {
            (units.watt_hours)(&formats.number(round_to(watt_hours, 10.0), 0))
        } else {
            (units.kilowatt_hours)(&formats.number(watt_hours / 1000.0, 2))
        }
    };
    let (store, food) = (energy(account.store_before_j), energy(food_j));
    let sentence = if LEAST_J < account.from_sun_j {
        (words.sentence_with_sun)(&store, &energy(account.from_sun_j), &food)
    } else {
        (words.sentence)(&store, &food)
    };
    HeatBarView {
        name: words.heading.to_owned(),
        parts: parts
            .into_iter()
            .enumerate()
            .filter(|(_, (_, joules))| LEAST_J < *joules)
            .map(|(look, (label, joules))| HeatPart {
                label: label.to_owned(),
                value: energy(joules),
                look,
                share: joules,
            })
            .collect(),
        sentence,
    }
}
