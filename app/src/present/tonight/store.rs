//! The store now, drawn as a column.

use model::cooker::Cooker;
use model::tonight::StoreNow;

use super::Voice;
use crate::components::{ColumnMark, ColumnRange, StoreColumnView};
use crate::i18n::format::{Sure, round_to};

/// The foot of the column lies this low, or at the store's own temperature. [°C]
const FOOT_C: f64 = 20.0;
/// Room over the highest mark. \[K\]
const HEADROOM_K: f64 = 10.0;
/// Water that is not worth boiling. \[L\]
const CUP_L: f64 = 0.2;

/// What a store that is warm is told to boil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Boils {
    /// As much as the model says.
    AsTold,
    /// What it may boil in 8 of 10 cases. \[L\]
    Between(f64, f64),
    /// A pot is in, which has some of its heat already: what more it would boil from cold says
    /// nothing of that one.
    PotIsIn,
}

/// The column of a cooker; `boiling_c` is where water boils. [°C]
pub fn column(
    voice: &Voice<'_>,
    cooker: &Cooker,
    store: &StoreNow,
    boils: Boils,
    boiling_c: f64,
) -> StoreColumnView {
    let words = &voice.strings.tonight.store;
    let formats = voice.formats;
    let (low_c, high_c) = store.band_c;
    let sure = store_sure(store);
    let cutout_c = cooker.store.cutout_c;
    let known = |celsius| formats.temperature(celsius, Sure::Known);
    StoreColumnView {
        low: FOOT_C.min(low_c),
        high: cutout_c.max(high_c).max(boiling_c) + HEADROOM_K,
        now: ColumnMark {
            at: store.store_c,
            label: words.now.to_owned(),
            value: formats.temperature(store.store_c, sure),
        },
        band: Some((low_c, high_c)),
        boil: Some(ColumnMark {
            at: boiling_c,
            label: words.boils.to_owned(),
            value: known(boiling_c),
        }),
        melting: melting_c(cooker).map(|(from, to)| ColumnRange {
            from,
            to,
            label: words.melts.to_owned(),
            value: formats.temperature_band(from, to, Sure::Known),
        }),
        cut_out: Some(ColumnMark {
            at: cutout_c,
            label: words.cut_out.to_owned(),
            value: known(cutout_c),
        }),
        sentence: sentence(voice, store, boils, boiling_c, sure),
    }
}

fn sentence(
    voice: &Voice<'_>,
    store: &StoreNow,
    boils: Boils,
    boiling_c: f64,
    sure: Sure,
) -> String {
    let words = &voice.strings.tonight.store;
    let degrees = voice.formats.temperature(store.store_c, sure);
    let say = |litres: f64| {
        let number = voice.formats.field(rough_l(litres), 1);
        (voice.strings.common.units.litres)(&number)
    };
    let (low_l, high_l) = match boils {
        Boils::Between(low_l, high_l) => (low_l, high_l),
        Boils::AsTold | Boils::PotIsIn => (store.litres, store.litres),
    };
    let is_band = matches!(boils, Boils::Between(..));
    let may_boil = is_band && boiling_c < store.band_c.1 && CUP_L <= high_l;
    let mut sentence = if boils == Boils::PotIsIn {
        (words.pot_is_in)(&degrees)
    } else if store.litres < CUP_L && may_boil {
        (words.may_boil)(&degrees, &say(high_l))
    } else if store.store_c <= boiling_c {
        (words.too_cold)(&degrees)
    } else if store.litres < CUP_L {
        (words.can_boil_little)(&degrees)
    } else if rough_l(low_l) < rough_l(high_l) {
        (words.can_boil_between)(&degrees, &say(low_l.max(0.0)), &say(high_l))
    } else {
        (words.can_boil)(&degrees, &say(store.litres))
    };
    if let Some(share) = store.molten_share.filter(|share| 0.02 < *share) {
        sentence.push(' ');
        sentence.push_str(&(words.molten)(
            &voice.formats.percent(round_to(share, 0.1)),
        ));
    }
    sentence
}

/// How well the temperature of the store is known.
pub fn store_sure(store: &StoreNow) -> Sure {
    let (low_c, high_c) = store.band_c;
    Sure::of_band_c(high_c - low_c)
}

/// Litres to what is known of them.
fn rough_l(litres: f64) -> f64 {
    round_to(litres, if litres < 2.0 { 0.1 } else { 0.5 })
}

/// The melting range of the heaviest medium that melts. [°C]
fn melting_c(cooker: &Cooker) -> Option<(f64, f64)> {
    cooker
        .store
        .charges
        .iter()
        .filter_map(|charge| Some((charge.mass_kg, charge.medium.props().melt?)))
        .max_by(|(a_kg, _), (b_kg, _)| a_kg.total_cmp(b_kg))
        .map(|(_, melt)| (melt.solidus_c.value, melt.liquidus_c.value))
}
