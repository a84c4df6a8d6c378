//! The parts that not every cooker has, as fields.

use crate::reactive::*;
use model::cooker::Metal;
use model::media::Chemistry;

use super::parts::Described;
use crate::components::Icon;
use crate::present::cooker::facts::metal_weighs;
use crate::present::cooker::parts::{Key, Way, options};
use crate::state::limits;

/// Further elements on the heater's switch.
#[component]
pub(super) fn Elements(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.ways;
    let n_more = part.read(|cooker| cooker.charging.more_elements_ohm.len());
    let more = move || {
        let n_more = n_more.get().unwrap_or_default();
        (0..n_more)
            .map(|idx| {
                let number = idx + 2;
                let hint = if idx == 0 { texts.element_hint } else { "" };
                let remove =
                    Signal::derive(move || (words.strings().cooker.ways.remove_element)(number));
                view! {
                    {form
                        .number(
                            Key::Way(Way::ElementOhm(idx)),
                            &(texts.element)(number),
                            hint,
                            "part-element-ohm",
                        )}
                    {form
                        .button(
                            Key::Way(Way::RemoveElement(idx)),
                            remove,
                            Icon::Bin,
                            "part-remove-element",
                        )}
                }
            })
            .collect_view()
    };
    view! {
        {more}
        {move || {
            (n_more.get().is_some_and(|n| n < limits::MORE_ELEMENTS))
                .then(|| {
                    form.button(
                        Key::Way(Way::AddElement),
                        words.text(|strings| strings.cooker.ways.add_element),
                        Icon::Plus,
                        "part-add-element",
                    )
                })
        }}
    }
}

/// What a metal in the medium is.
#[derive(Debug, Clone, Copy, PartialEq)]
enum MetalKind {
    None,
    Fins,
    Foam,
}

/// Metal within the medium, and when a medium that ages was filled in.
#[component]
pub(super) fn MetalParts(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.ways;
    let kind = part.read(|cooker| match cooker.store.metal {
        None => MetalKind::None,
        Some(Metal::Fins { .. }) => MetalKind::Fins,
        Some(Metal::Foam { .. }) => MetalKind::Foam,
    });
    let ages = part.is(|cooker| {
        let mut media = cooker.store.charges.iter();
        media.any(|charge| model::ageing::Ageing::of(charge.medium).is_some())
    });
    let of = move || {
        form.select(
            Key::Way(Way::MetalOf),
            words.text(|strings| strings.cooker.ways.metal_of),
            options,
            "part-metal-of",
        )
    };
    let number = move |way, label, hint, test| form.number(Key::Way(way), label, hint, test);
    let store = part.read(|cooker| cooker.store.clone());
    let weighs = Memo::new(move |_| {
        let (strings, formats) = (words.strings(), words.formats().get());
        store.with(|store| metal_weighs(strings, &formats, store.as_ref()?))
    });
    // A block of metal needs none.
    let is_wanted = part.is(|cooker| {
        let store = &cooker.store;
        let mut media = store.charges.iter().map(|charge| charge.medium);
        store.metal.is_some() || media.any(|medium| medium.props().chemistry != Chemistry::Metal)
    });
    view! {
        {move || {
            is_wanted
                .get()
                .then(|| {
                    view! {
                        {form
                            .select(
                                Key::Way(Way::Metal),
                                words.text(|strings| strings.cooker.ways.metal),
                                options,
                                "part-metal",
                            )}
                        <p class="field__hint">{texts.metal_hint}</p>
                    }
                })
        }}
        {move || {
            match kind.get() {
                Some(MetalKind::Fins) => {
                    view! {
                        {of()}
                        {number(Way::FinM, texts.fin, texts.fin_hint, "part-fin")}
                        {number(Way::PitchM, texts.pitch, texts.pitch_hint, "part-pitch")}
                    }
                }
                Some(MetalKind::Foam) => {
                    view! {
                        {of()}
                        {number(Way::FoamShare, texts.foam_share, texts.foam_share_hint, "part-foam")}
                    }
                }
                Some(MetalKind::None) | None => view! {},
            }
        }}
        {move || weighs.get().map(|weighs| view! { <p class="aside">{weighs}</p> })}
        {move || {
            ages.get()
                .then(|| {
                    form.date(
                        Key::Way(Way::FilledOn),
                        |strings| strings.cooker.ways.filled_on,
                        |strings| strings.cooker.ways.filled_on_hint,
                        "part-filled-on",
                    )
                })
        }}
    }
}

/// A vacuum flask as jacket.
#[component]
pub(super) fn FlaskParts(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let strings = untrack(move || words.strings());
    let (texts, jacket) = (&strings.cooker.ways, &strings.cooker.parts.jacket);
    let number = move |way, label, hint, test| form.number(Key::Way(way), label, hint, test);
    view! {
        {number(Way::FlaskAcross, jacket.across, "", "part-flask-across")}
        {number(Way::FlaskHeight, jacket.height, "", "part-flask-height")}
        {number(Way::FlaskGap, texts.flask_gap, texts.flask_gap_hint, "part-flask-gap")}
        {form
            .select(
                Key::Way(Way::FlaskWall),
                words.text(|strings| strings.cooker.ways.flask_wall),
                options,
                "part-flask-wall",
            )}
        {form
            .either(
                Key::Way(Way::VacuumLost),
                |strings| strings.cooker.ways.vacuum,
                [
                    (
                        |strings| strings.cooker.ways.sound,
                        |strings| strings.cooker.ways.sound_detail,
                    ),
                    (
                        |strings| strings.cooker.ways.lost,
                        |strings| strings.cooker.ways.lost_detail,
                    ),
                ],
                "part-vacuum",
            )}
    }
}

/// A dish, a second charge, a can that is carried.
#[component]
pub(super) fn OtherCharges(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let strings = untrack(move || shell.words.strings());
    let texts = &strings.cooker.ways;
    let has_dish = part.is(|cooker| cooker.charging.concentrator.is_some());
    let has_second = part.is(|cooker| cooker.charging.second.is_some());
    let is_carried = part.is(|cooker| cooker.carried.is_some());
    let number = move |way, label, hint, test| form.number(Key::Way(way), label, hint, test);
    view! {
        {form
            .toggle(
                Key::Way(Way::Dish),
                |strings| strings.cooker.ways.dish,
                |strings| strings.cooker.ways.dish_detail,
                "part-dish",
            )}
        {move || {
            has_dish
                .get()
                .then(|| {
                    view! {
                        {number(
                            Way::Aperture,
                            texts.aperture,
                            texts.aperture_hint,
                            "part-aperture",
                        )}
                        {number(Way::Optical, texts.optical, texts.optical_hint, "part-optical")}
                    }
                })
        }}
        {form
            .toggle(
                Key::Way(Way::Second),
                |strings| strings.cooker.ways.second,
                |strings| strings.cooker.ways.second_detail,
                "part-second",
            )}
        {move || {
            has_second
                .get()
                .then(|| {
                    view! {
                        {number(Way::SecondW, texts.second_w, texts.second_w_hint, "part-second-w")}
                        {number(
                            Way::SecondShare,
                            texts.second_share,
                            texts.second_share_hint,
                            "part-second-share",
                        )}
                    }
                })
        }}
        {form
            .toggle(
                Key::Way(Way::Carried),
                |strings| strings.cooker.ways.carried,
                |strings| strings.cooker.ways.carried_detail,
                "part-carried",
            )}
        {move || {
            is_carried
                .get()
                .then(|| {
                    view! {
                        {number(Way::WayS, texts.way, texts.way_hint, "part-way")}
                        {number(Way::WayWrap, texts.wrap, texts.wrap_hint, "part-wrap-way")}
                        {form
                            .toggle(
                                Key::Way(Way::TurnedOver),
                                |strings| strings.cooker.ways.turned,
                                |strings| strings.cooker.ways.turned_detail,
                                "part-turned",
                            )}
                    }
                })
        }}
    }
}
