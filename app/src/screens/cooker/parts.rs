//! The parts of a cooker as a form.

use crate::reactive::*;
use model::cooker::Cooker;
use model::panel::Drive;

use super::field::{Field, Subject};
use super::form::{Form, Text, site};
use super::jacket::JacketParts;
use super::rebuilt::Formerly;
use super::ways::{Elements, MetalParts, OtherCharges};
use crate::components::{Fold, Icon, Panel};
use crate::present::cooker::fault::check_change;
use crate::present::cooker::list::panels_w;
use crate::present::cooker::parts::{self, Key, Spare, options};
use crate::shell::{Shell, use_shell};
use crate::state::action::Action;
use crate::state::ids::CookerId;
use crate::state::limits;

/// The form and what it is about. Copies stand for the same.
#[derive(Clone, Copy)]
pub(super) struct Described {
    pub(super) shell: Shell,
    pub(super) form: Form,
    cooker: Memo<Option<Cooker>>,
}

impl Described {
    /// Something of the cooker, told only when it changes.
    pub(super) fn read<T: PartialEq + Send + Sync + 'static>(
        self,
        part: impl Fn(&Cooker) -> T + Send + Sync + 'static,
    ) -> Memo<Option<T>> {
        let cooker = self.cooker;
        Memo::new(move |_| cooker.with(|cooker| cooker.as_ref().map(&part)))
    }

    /// Whether something is true of the cooker.
    pub(super) fn is(self, part: impl Fn(&Cooker) -> bool + Send + Sync + 'static) -> Memo<bool> {
        let cooker = self.cooker;
        Memo::new(move |_| cooker.with(|cooker| cooker.as_ref().is_some_and(&part)))
    }
}

/// The form: a fold a part.
#[component]
pub(super) fn Parts(id: CookerId, cooker: Memo<Option<Cooker>>) -> impl IntoView {
    let shell = use_shell();
    let Shell {
        words,
        store,
        dispatch,
        ..
    } = shell;
    let site = site(store);
    let spare = StoredValue::new(Spare::default());
    let apply = Callback::new(move |(field, text): (Field, String)| {
        let (Field::Part(key), Some(site), Some(former)) =
            (field, site.get_untracked(), cooker.get_untracked())
        else {
            return Ok(());
        };
        let formats = words.formats().get_untracked();
        let mut spares = spare.get_value();
        spares.remember(&former);
        let next = parts::changed(&former, &spares, key, &text, &formats)?;
        if next == former {
            return Ok(());
        }
        check_change(&site, &former, &next)?;
        spares.remember(&next);
        dispatch.run(Action::ChangeCooker {
            id,
            cooker: Box::new(next),
        })?;
        spare.set_value(spares);
        Ok(())
    });
    let part = Described {
        shell,
        form: Form::new(shell, Subject::Cooker(cooker), apply),
        cooker,
    };
    let text = move |text: Text| words.text(text);
    view! {
        <Panel heading=text(|strings| strings.cooker.parts.heading) test="cooker-parts">
            <Fold
                summary=text(|strings| strings.cooker.parts.panels.heading)
                test="parts-panels"
            >
                <Panels part />
            </Fold>
            <Fold
                summary=text(|strings| strings.cooker.parts.heater.heading)
                test="parts-heater"
            >
                <Heater part />
            </Fold>
            <Fold summary=text(|strings| strings.cooker.parts.store.heading) test="parts-store">
                <Store part />
            </Fold>
            <Fold
                summary=text(|strings| strings.cooker.parts.jacket.heading)
                test="parts-jacket"
            >
                <JacketParts part />
            </Fold>
            <Fold summary=text(|strings| strings.cooker.ways.charging) test="parts-charging">
                <OtherCharges part />
            </Fold>
            <Fold summary=text(|strings| strings.cooker.parts.seat.heading) test="parts-seat">
                <Seat part />
            </Fold>
            <Fold summary=text(|strings| strings.cooker.parts.pot.heading) test="parts-pot">
                <Pot part />
            </Fold>
            <Formerly id />
        </Panel>
    }
}

#[component]
fn Panels(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let has_sheet = part.is(|cooker| cooker.panels.sheet.is_some());
    let watts = part.read(panels_w);
    let together = move || {
        let watts = words.formats().get().watts(watts.get()?);
        Some((words.strings().cooker.parts.panels.together)(&watts))
    };
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.parts.panels;
    view! {
        {move || {
            (!has_sheet.get())
                .then(|| {
                    form.number(
                        Key::ModuleW,
                        texts.module_w,
                        texts.module_w_hint,
                        "part-module-w",
                    )
                })
        }}
        {form.number(Key::InSeries, texts.in_series, texts.in_series_hint, "part-in-series")}
        {form
            .number(Key::InParallel, texts.in_parallel, texts.in_parallel_hint, "part-in-parallel")}
        <p class="aside">{together}</p>
        {form.number(Key::Tilt, texts.tilt, texts.tilt_hint, "part-tilt")}
        {form
            .select(
                Key::Azimuth,
                words.text(|strings| strings.cooker.parts.panels.azimuth),
                options,
                "part-azimuth",
            )}
        {form
            .toggle(
                Key::Sheet,
                |strings| strings.cooker.parts.panels.sheet,
                |strings| strings.cooker.parts.panels.sheet_detail,
                "part-sheet",
            )}
        {move || {
            has_sheet
                .get()
                .then(|| {
                    [
                        (Key::SheetVmp, texts.v_mp, "", "part-vmp"),
                        (Key::SheetImp, texts.i_mp, "", "part-imp"),
                        (Key::SheetVoc, texts.v_oc, "", "part-voc"),
                        (Key::SheetIsc, texts.i_sc, "", "part-isc"),
                        (Key::SheetAlpha, texts.alpha, "", "part-alpha"),
                        (Key::SheetBeta, texts.beta, "", "part-beta"),
                        (Key::SheetCells, texts.cells, texts.cells_hint, "part-cells"),
                    ]
                        .map(|(key, label, hint, test)| form.number(key, label, hint, test))
                        .into_iter()
                        .collect_view()
                })
        }}
    }
}

#[component]
fn Heater(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let strings = untrack(move || shell.words.strings());
    let texts = &strings.cooker.parts.heater;
    let has_tracker = part.is(|cooker| matches!(cooker.heater.drive, Drive::Tracker { .. }));
    view! {
        {form
            .either(
                Key::Drive,
                |strings| strings.cooker.parts.heater.drive,
                [
                    (
                        |strings| strings.cooker.parts.heater.direct,
                        |strings| strings.cooker.parts.heater.direct_detail,
                    ),
                    (
                        |strings| strings.cooker.parts.heater.tracker,
                        |strings| strings.cooker.parts.heater.tracker_detail,
                    ),
                ],
                "part-drive",
            )}
        {move || {
            has_tracker
                .get()
                .then(|| form.number(Key::Efficiency, texts.efficiency, "", "part-efficiency"))
        }}
        {form.number(Key::HeaterOhm, texts.ohm, texts.ohm_hint, "part-ohm")}
        <Elements part />
        {form.number(Key::WireOhm, texts.wire_ohm, texts.wire_hint, "part-wire-ohm")}
        {form.number(Key::Cutout, texts.cutout, texts.cutout_hint, "part-cutout")}
    }
}

#[component]
fn Store(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.parts.store;
    let n_media = part.read(|cooker| cooker.store.charges.len());
    let media = move || {
        let n_media = n_media.get().unwrap_or_default();
        (0..n_media)
            .map(|idx| view! { <Medium part idx /> })
            .collect_view()
    };
    let has_room = move || n_media.get().is_some_and(|n| n < limits::CHARGES.1);
    view! {
        {media}
        {move || {
            (n_media.get() == Some(0))
                .then(|| {
                    view! {
                        <p class="aside">{words.text(|strings| strings.cooker.ways.no_store_note)}</p>
                    }
                })
        }}
        {move || {
            has_room()
                .then(|| {
                    form.button(
                        Key::AddMedium,
                        words.text(|strings| strings.cooker.parts.store.add),
                        Icon::Plus,
                        "part-add-medium",
                    )
                })
        }}
        <MetalParts part />
        {move || {
            n_media
                .get()
                .is_some_and(|n_media| 0 < n_media)
                .then(|| form.number(Key::Held, texts.held, texts.held_hint, "part-held"))
        }}
        {form.number(Key::Depth, texts.depth, texts.depth_hint, "part-depth")}
    }
}

/// One of the media.
#[component]
fn Medium(part: Described, idx: usize) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let medium = part.read(move |cooker| cooker.store.charges.get(idx).map(|row| row.medium));
    let name = move || {
        let medium = medium.get().flatten();
        medium.map_or("", |medium| (words.strings().tables.medium)(medium))
    };
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.parts.store;
    let label = Signal::derive(move || (words.strings().cooker.parts.store.medium)(idx + 1));
    let remove = Signal::derive(move || (words.strings().cooker.parts.store.remove)(name()));
    view! {
        {form.select(Key::Medium(idx), label, options, "part-medium")}
        {move || {
            form.number(
                Key::MediumKg(idx),
                &(texts.mass)(name()),
                texts.mass_hint,
                "part-medium-kg",
            )
        }}
        {form.button(Key::RemoveMedium(idx), remove, Icon::Bin, "part-remove-medium")}
    }
}

#[component]
fn Seat(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let words = shell.words;
    let strings = untrack(move || words.strings());
    let is_measured = part.is(|cooker| cooker.contact.measured_w_m2k.is_some());
    view! {
        {form
            .select(
                Key::Seat,
                words.text(|strings| strings.cooker.parts.seat.seat),
                options,
                "part-seat",
            )}
        {form
            .toggle(
                Key::ContactKnown,
                |strings| strings.cooker.parts.seat.measured,
                |strings| strings.cooker.parts.seat.measured_detail,
                "part-contact-known",
            )}
        {move || {
            is_measured
                .get()
                .then(|| {
                    form.number(
                        Key::Contact,
                        strings.cooker.parts.seat.contact,
                        "",
                        "part-contact",
                    )
                })
        }}
    }
}

#[component]
fn Pot(part: Described) -> impl IntoView {
    let Described { shell, form, .. } = part;
    let text = move |text: Text| shell.words.text(text);
    let parts = &untrack(move || shell.words.strings()).cooker.parts;
    let (loss, hint) = (parts.pot.loss, parts.store.held_hint);
    view! {
        {form
            .select(
                Key::PotKind,
                text(|strings| strings.cooker.parts.pot.kind),
                options,
                "part-pot-kind",
            )}
        {form
            .select(
                Key::PotSize,
                text(|strings| strings.cooker.parts.pot.size),
                options,
                "part-pot-size",
            )}
        {form
            .select(
                Key::Wrap,
                text(|strings| strings.cooker.parts.pot.wrap),
                options,
                "part-wrap",
            )}
        {form
            .number(
                Key::PotLoss,
                loss,
                hint,
                "part-pot-loss",
            )}
    }
}
