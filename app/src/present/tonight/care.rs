//! Cautions that go with this dish on this store.

use model::cooker::Cooker;
use model::dish::Dish;
use model::journal::Meal;
use model::safety::{Build, Caution, dish_cautions};
use model::tonight::StoreNow;

use super::Voice;
use super::store::store_sure;
use crate::components::{CautionLevel, Icon};
use crate::i18n::format::Sure;
use crate::order::in_order;
use crate::present::level;

/// A caution in words.
#[derive(Debug, Clone, PartialEq)]
pub struct CareView {
    /// How badly it can go.
    pub level: CautionLevel,
    /// The kind of harm.
    pub icon: Icon,
    /// The level in a word.
    pub word: String,
    /// What to mind.
    pub text: String,
}

/// What the cook must be told, the worst first; of the same level, the food before the store.
pub fn care(voice: &Voice<'_>, dish: Dish, cooker: &Cooker, store: &StoreNow) -> Vec<CareView> {
    let of_dish = dish_cautions(dish);
    let of_store = build(cooker).cautions(store.store_c);
    let sure = store_sure(store);
    let ignites = of_store
        .iter()
        .any(|caution| matches!(caution, Caution::Ignites { .. }));
    let found = of_dish
        .into_iter()
        .chain(of_store)
        // What can set cloth alight burns the skin as well, and says so.
        .filter(|caution| !(ignites && matches!(caution, Caution::HotMetal { .. })))
        .filter_map(|caution| view(voice, caution, sure));
    let rank = |view: &CareView| match view.level {
        CautionLevel::Danger => 0,
        CautionLevel::Warning => 1,
        CautionLevel::Note => 2,
    };
    in_order(found, |a, b| rank(a).cmp(&rank(b)))
}

/// The cooker as far as it can hurt a cook; what its maker must mind stands with the cooker.
fn build(cooker: &Cooker) -> Build {
    Build {
        media: cooker
            .store
            .charges
            .iter()
            .map(|charge| charge.medium)
            .collect(),
        cut_out_c: cooker.store.cutout_c,
        seat: cooker.contact.seat,
        layers: Vec::new(),
        open_circuit_v: 0.0,
        sealed_vessel: false,
    }
}

/// What must be told of a meal of beans that has not had its full boil; none for other dishes.
pub fn unsafe_beans(voice: &Voice<'_>, meal: &Meal) -> Option<CareView> {
    let words = &voice.strings.tonight.care;
    let full_boil = meal.dish.props().full_boil?;
    let boil_s = 60.0 * full_boil.advised_min.value;
    Some(CareView {
        level: CautionLevel::Danger,
        icon: Icon::Beans,
        word: level::word(&voice.strings.safety, CautionLevel::Danger).to_owned(),
        text: (words.unsafe_beans)(&voice.formats.duration(boil_s, Sure::Known)),
    })
}

fn view(voice: &Voice<'_>, caution: Caution, sure: Sure) -> Option<CareView> {
    let words = &voice.strings.tonight.care;
    let safety = &voice.strings.safety;
    let store = |celsius| voice.formats.temperature(celsius, sure);
    let known = |celsius| voice.formats.temperature(celsius, Sure::Known);
    let (level, icon, text) = match caution {
        Caution::MustBoil { .. } => (CautionLevel::Danger, Icon::Beans, safety.beans.to_owned()),
        Caution::Detoxify { .. } => (CautionLevel::Danger, Icon::Soak, words.cassava.to_owned()),
        Caution::CoreTemperature { core_c, .. } => (
            CautionLevel::Warning,
            Icon::Thermometer,
            (words.core)(&known(core_c)),
        ),
        Caution::NeverOvernight { .. } => (
            CautionLevel::Warning,
            Icon::Moon,
            words.never_overnight.to_owned(),
        ),
        Caution::HoldHot { least_c, .. } => (
            CautionLevel::Warning,
            Icon::KeepHot,
            (words.hold_hot)(&known(least_c)),
        ),
        Caution::Ignites { store_c } => (
            CautionLevel::Danger,
            Icon::Alight,
            (words.igniting_store)(&store(store_c)),
        ),
        Caution::HotMetal { store_c } => (
            CautionLevel::Warning,
            Icon::HotHand,
            (words.hot_store)(&store(store_c)),
        ),
        Caution::MoltenNitrate { .. } => {
            (CautionLevel::Danger, Icon::Salt, safety.nitrate.to_owned())
        }
        Caution::NitrateOnAluminium { .. } => (
            CautionLevel::Danger,
            Icon::Salt,
            words.nitrate_on_aluminium.to_owned(),
        ),
        _ => return None,
    };
    Some(CareView {
        level,
        icon,
        word: level::word(safety, level).to_owned(),
        text,
    })
}
