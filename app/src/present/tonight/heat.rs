//! Where the heat goes while the pot is in.

use model::tonight::HeatAccount;

use super::Voice;
use crate::chart::{HeatBarView, HeatPart};

/// Less than this is not shown: an eighth of what a cup of water takes. [J]
const LEAST_J: f64 = 36e3 / 2.0;

/// The bar of an account.
pub fn heat(voice: &Voice<'_>, account: &HeatAccount) -> HeatBarView {
    let words = &voice.strings.tonight.heat;
    let formats = voice.formats;
    let food_j = account.pot_after_j - account.pot_before_j;
    let parts = [
        (words.food, food_j),
        (words.steam, account.steam_j),
        (words.pot, account.pot_loss_j),
        (words.jacket, account.jacket_j),
        (words.open, account.open_j),
        (words.left, account.store_after_j),
    ];
    let (store, food) = (
        formats.energy(account.store_before_j.max(0.0)),
        formats.energy(food_j.max(0.0)),
    );
    let sentence = if LEAST_J < account.from_sun_j {
        (words.sentence_with_sun)(&store, &formats.energy(account.from_sun_j), &food)
    } else {
        (words.sentence)(&store, &food)
    };
    HeatBarView {
        name: words.heading.to_owned(),
        parts: parts
            .into_iter()
            .filter(|(_, joules)| LEAST_J < *joules)
            .map(|(label, joules)| HeatPart {
                label: label.to_owned(),
                value: formats.energy(joules),
                share: joules,
            })
            .collect(),
        sentence,
    }
}
