//! The jacket as fields.

use crate::reactive::*;
use model::cooker::Cooker;
use model::jacket::{Jacket, JacketShape, LayerKind, LayeredJacket};

use super::parts::Described;
use super::ways::FlaskParts;
use crate::components::Icon;
use crate::present::cooker::parts::{Key, options};
use crate::state::limits;

fn layered(cooker: &Cooker) -> Option<&LayeredJacket> {
    match &cooker.jacket {
        Jacket::Layers(layered) => Some(layered),
        Jacket::Measured { .. } | Jacket::Flask { .. } => None,
    }
}

/// The jacket: described, measured, or a flask.
#[component]
pub(super) fn JacketParts(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let strings = untrack(move || shell.words.strings());
    let texts = &strings.cooker.parts.jacket;
    let is_layered = part.is(|cooker| layered(cooker).is_some());
    let is_flask = part.is(|cooker| matches!(cooker.jacket, Jacket::Flask { .. }));
    view! {
        {form
            .select(
                Key::JacketKnown,
                shell.words.text(|strings| strings.cooker.parts.jacket.known_by),
                options,
                "part-jacket-known",
            )}
        {move || {
            if is_flask.get() {
                view! { <FlaskParts part /> }
            } else if is_layered.get() {
                view! { <Layered part /> }
            } else {
                view! {
                    {form.number(Key::Loss, texts.loss, texts.loss_hint, "part-loss")}
                    {form
                        .number(
                            Key::Capacity,
                            texts.capacity,
                            texts.capacity_hint,
                            "part-capacity",
                        )}
                }
            }
        }}
    }
}

#[component]
fn Layered(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.parts.jacket;
    let is_box = part.is(|cooker| {
        layered(cooker).is_some_and(|layered| matches!(layered.shape, JacketShape::Box { .. }))
    });
    let n_layers = part.read(|cooker| layered(cooker).map_or(0, |layered| layered.layers.len()));
    let layers = move || {
        let n_layers = n_layers.get().unwrap_or_default();
        (0..n_layers)
            .map(|idx| view! { <Layer part idx is_only=n_layers < 2 /> })
            .collect_view()
    };
    let has_room = move || n_layers.get().is_some_and(|n| n < limits::LAYERS.1);
    view! {
        {form
            .either(
                Key::Shape,
                |strings| strings.cooker.parts.jacket.shape,
                [
                    (|strings| strings.cooker.parts.jacket.cylinder, |_| ""),
                    (|strings| strings.cooker.parts.jacket.boxed, |_| ""),
                ],
                "part-shape",
            )}
        {move || {
            if is_box.get() {
                view! {
                    {form.number(Key::Length, texts.length, "", "part-length")}
                    {form.number(Key::Width, texts.width, "", "part-width")}
                }
            } else {
                form.number(Key::Across, texts.across, "", "part-across")
            }
        }}
        {form.number(Key::Height, texts.height, "", "part-height")}
        {layers}
        {move || {
            has_room()
                .then(|| {
                    form.button(
                        Key::AddLayer,
                        words.text(|strings| strings.cooker.parts.jacket.add),
                        Icon::Plus,
                        "part-add-layer",
                    )
                })
        }}
        {form
            .select(
                Key::LidFit,
                words.text(|strings| strings.cooker.parts.jacket.lid),
                options,
                "part-lid-fit",
            )}
        {form.number(Key::Rods, texts.rods, texts.rods_hint, "part-rods")}
    }
}

/// One of the layers.
#[component]
fn Layer(part: Described, idx: usize, is_only: bool) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.parts.jacket;
    let is_air = part.is(move |cooker| {
        let layer = layered(cooker).and_then(|layered| layered.layers.get(idx));
        layer.is_some_and(|layer| matches!(layer.kind, LayerKind::StillAir { .. }))
    });
    let label = Signal::derive(move || (words.strings().cooker.parts.jacket.layer)(idx + 1));
    let remove = Signal::derive(move || (words.strings().cooker.parts.jacket.remove)(idx + 1));
    view! {
        {form.select(Key::Layer(idx), label, options, "part-layer")}
        {form.number(Key::LayerM(idx), &(texts.thickness)(idx + 1), "", "part-layer-cm")}
        {move || {
            is_air
                .get()
                .then(|| {
                    view! {
                        {form
                            .number(
                                Key::HotFace(idx),
                                texts.hot_face,
                                texts.face_hint,
                                "part-hot-face",
                            )}
                        {form
                            .number(
                                Key::ColdFace(idx),
                                texts.cold_face,
                                texts.face_hint,
                                "part-cold-face",
                            )}
                    }
                })
        }}
        {(!is_only)
            .then(|| form.button(Key::RemoveLayer(idx), remove, Icon::Bin, "part-remove-layer"))}
    }
}
