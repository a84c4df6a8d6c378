//! What stands round every screen: the rooms, what the app has to say about itself, the way back.

use std::time::Duration;

use crate::reactive::*;
use model::sun::Sky;

use crate::components::{
    Icon, RoomBar, RoomLink, RunBar, RunStep, RunView, StatusLine, StatusTone, Toast, ToastView,
};
use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;
use crate::i18n::strings::common::{Common, Saving};
use crate::platform::page::{toast_has_focus, watch_undo};
use crate::platform::storage::StorageError;
use crate::shell::Shell;
use crate::shell::copies::{download_aside, download_copy};
use crate::shell::example::Told;
use crate::shell::keeper::{Lock, Notice, SaveStatus};
use crate::shell::toasts::{TOAST_MS, ToastAbout, ToastNote, Toasts};
use crate::shell::wiring::{Updates, keep_focus};
use crate::state::action::{Action, BenchAction};
use crate::state::document::Whose;
use crate::state::example::today::Phase;
use crate::state::route::{BenchPage, MorePage, Route};

/// The bar with the rooms.
#[component]
pub fn Rooms(
    /// What the app works with.
    shell: Shell,
) -> impl IntoView {
    let route = shell.router.route();
    let has_household = shell.store.has_household();
    let rooms = Signal::derive(move || {
        let names = &shell.words.strings().common.rooms;
        let route = route.get();
        let link = |to: Route, label: &str, icon, current| RoomLink {
            href: to.hash(),
            label: label.to_owned(),
            icon,
            current,
        };
        vec![
            link(
                Route::Tonight,
                names.tonight,
                Icon::Tonight,
                route == Route::Tonight,
            ),
            link(
                Route::Diary(None),
                names.diary,
                Icon::Diary,
                matches!(route, Route::Diary(_)),
            ),
            link(
                Route::Cooker(None),
                names.cooker,
                Icon::Cooker,
                matches!(route, Route::Cooker(_)),
            ),
            link(
                Route::Bench(BenchPage::List),
                names.bench,
                Icon::Bench,
                matches!(route, Route::Bench(_)),
            ),
            link(
                Route::More(MorePage::Menu),
                names.more,
                Icon::More,
                matches!(route, Route::More(_)),
            ),
        ]
    });
    view! {
        <Show when=move || has_household.get() && !matches!(route.get(), Route::Start(_))>
            <RoomBar label=shell.words.text(|strings| strings.common.rooms_label) rooms />
        </Show>
    }
}

/// What the app has to say about itself, above the screen: saving, other windows, updates, the
/// example.
#[component]
pub fn Announcements(
    /// What the app works with.
    shell: Shell,
    /// Whether a new version waits.
    updates: Updates,
) -> impl IntoView {
    let store = shell.store;
    let words = shell.words;
    let whose = store.whose();
    let trouble = move || {
        let status = store.status().get();
        trouble_text(&status, &words.strings().common.saving).map(|_| {
            let text = Signal::derive(move || {
                let saving = &words.strings().common.saving;
                trouble_text(&store.status().get(), saving)
                    .unwrap_or_default()
                    .to_owned()
            });
            view! {
                <StatusLine
                    tone=StatusTone::Trouble
                    text
                    action=words.text(|strings| strings.common.saving.copy_to_file)
                    on_action=Callback::new(move |()| {
                        download_copy(shell);
                    })
                    test="save-trouble"
                />
            }
        })
    };
    let notice = move || {
        store
            .notice()
            .get()
            .map(|notice| view! { <NoticeLine shell notice /> })
    };
    view! {
        {trouble}
        {notice}
        <Show when=move || updates.waits().get()>
            <StatusLine
                tone=StatusTone::Notice
                text=words.text(|strings| strings.common.saving.update_waits)
                action=words.text(|strings| strings.common.saving.update_now)
                on_action=Callback::new(move |()| updates.apply(shell))
                test="update"
            />
        </Show>
        <Show when=move || whose.get() == Whose::Example>
            <StatusLine
                tone=StatusTone::Notice
                text=words.text(|strings| strings.common.example_banner)
                action=words.text(|strings| strings.common.example_back)
                on_action=Callback::new(move |()| shell.example.leave())
                test="example"
            />
        </Show>
    }
}

/// The example's day while it is told; over every screen, so that all of them can be looked at.
#[component]
pub fn DayBar(
    /// What the app works with.
    shell: Shell,
) -> impl IntoView {
    let Shell { words, example, .. } = shell;
    let told = example.told();
    let store_now = shell.estimates.store_now();
    let view = Signal::derive(move || {
        told.get().map_or_else(RunView::default, |told| {
            let store_c = match store_now.get() {
                Some(Ok(store)) => Some(store.store_c),
                _ => None,
            };
            run_view(&told, store_c, words.strings(), &words.formats().get())
        })
    });
    let on_step = move |step| match step {
        RunStep::HoldOrRun => example.hold_or_run(),
        RunStep::Step => example.step(),
        RunStep::Stop => example.stop(),
    };
    let is_told = Memo::new(move |_| told.get().is_some());
    view! {
        <Show when=move || is_told.get()>
            <RunBar
                label=words.text(|strings| strings.more.day.title)
                view
                on_step=Callback::new(on_step)
            />
        </Show>
    }
}

fn run_view(told: &Told, store_c: Option<f64>, strings: &Strings, formats: &Formats) -> RunView {
    let day = &strings.more.day;
    let (text, icon) = match told.phase {
        Phase::Sun(sky) => ((day.sun)((strings.tables.sky)(sky)), of_sky(sky)),
        Phase::Evening => (day.evening.to_owned(), Icon::Moon),
        Phase::PotIn => (day.pot_in.to_owned(), Icon::PotSteams),
        Phase::Boils => (day.boils.to_owned(), Icon::PotBoils),
        Phase::Done => (day.done.to_owned(), Icon::Bowl),
    };
    // What the day does to the store stands further down the screen.
    let store = store_c.map(|store_c| {
        let degrees = formats.temperature(store_c, Sure::Near);
        format!(" {}", (day.store)(&degrees))
    });
    let text = text + store.as_deref().unwrap_or_default();
    let hold_or_run = match told {
        Told { runs: true, .. } => day.pause,
        Told { is_over: true, .. } => day.again,
        Told { .. } => day.go_on,
    };
    RunView {
        clock: formats.clock(told.at, Sure::Known),
        text,
        icon: Some(icon),
        share: told.share,
        has_step: !told.runs && !told.is_over,
        hold_or_run: hold_or_run.to_owned(),
        step: day.step.to_owned(),
        stop: day.stop.to_owned(),
    }
}

fn of_sky(sky: Sky) -> Icon {
    match sky {
        Sky::Clear => Icon::SunClear,
        Sky::Thin => Icon::SunHaze,
        Sky::Patchy => Icon::SunBroken,
        Sky::Grey => Icon::Overcast,
        Sky::Dark => Icon::Rain,
    }
}

/// What has to be told once, until it is put away.
#[component]
fn NoticeLine(shell: Shell, notice: Notice) -> impl IntoView {
    let words = shell.words;
    let (tone, text, aside): (_, fn(&Common) -> &'static str, _) = match notice {
        Notice::PutAside { key } => (
            StatusTone::Trouble,
            |common| common.saving.damaged,
            Some(key),
        ),
        Notice::ChangedElsewhere => (
            StatusTone::Notice,
            |common| common.saving.changed_elsewhere,
            None,
        ),
        Notice::ChangeLost => (
            StatusTone::Trouble,
            |common| common.saving.change_lost,
            None,
        ),
        Notice::CopyBroughtIn => (
            StatusTone::Notice,
            |common| common.notes.copy_brought_in,
            None,
        ),
    };
    let is_aside = aside.is_some();
    let action = Signal::derive(move || {
        let common = &words.strings().common;
        let label = if is_aside {
            common.saving.copy_damaged_to_file
        } else {
            common.buttons.close
        };
        label.to_owned()
    });
    let on_action = Callback::new(move |()| {
        if let Some(key) = &aside {
            download_aside(shell, key);
        }
        shell.store.dismiss_notice();
    });
    view! {
        <StatusLine
            tone
            text=Signal::derive(move || text(&words.strings().common).to_owned())
            action
            on_action
            test="notice"
        />
    }
}

/// What was just done, with the way to take it back.
#[component]
pub fn UndoToast(
    /// What the app works with.
    shell: Shell,
) -> impl IntoView {
    let Shell {
        toasts,
        words,
        dispatch,
        ..
    } = shell;
    let shown = toasts.shown();
    let view = Signal::derive(move || {
        shown.get().map(|toast| {
            let common = &words.strings().common;
            let undo = toast.undo.is_some().then_some(common.buttons.undo);
            ToastView {
                text: toast_text(&toast.about, common),
                action: undo.unwrap_or_default().to_owned(),
            }
        })
    });
    effect(move || {
        if let Some(ToastNote { number, .. }) = shown.get() {
            put_away_later(toasts, number);
        }
    });
    let put_away = move || {
        let toast = shown.get_untracked();
        if let Some(toast) = &toast {
            toasts.put_away(toast.number);
            keep_focus();
        }
        toast
    };
    let on_action = move |()| {
        let Some(undo) = put_away().and_then(|toast| toast.undo) else {
            return;
        };
        let is_addition = matches!(
            undo,
            Action::EraseEntry(_) | Action::Bench(BenchAction::UseFit { .. })
        );
        let about = if is_addition {
            ToastAbout::TakenBack
        } else {
            ToastAbout::BroughtBack
        };
        // Without a way back of its own: what was taken back is done again where it was done.
        if dispatch.run(undo).is_ok() {
            toasts.show(about, None);
        }
    };
    watch_undo(move || {
        let can_undo =
            shown.with_untracked(|toast| toast.as_ref().is_some_and(|toast| toast.undo.is_some()));
        if can_undo {
            on_action(());
        }
    });
    view! {
        <Toast
            view
            close=words.text(|strings| strings.common.buttons.close)
            on_action=Callback::new(on_action)
            on_close=Callback::new(move |()| {
                put_away();
            })
        />
    }
}

/// Puts a note away once it was there for long enough and nobody is about to press its buttons.
fn put_away_later(toasts: Toasts, number: u32) {
    let stay = Duration::from_millis(u64::from(TOAST_MS));
    set_timeout(
        move || {
            if toast_has_focus() {
                put_away_later(toasts, number);
            } else {
                toasts.put_away(number);
            }
        },
        stay,
    );
}

fn trouble_text(status: &SaveStatus, saving: &Saving) -> Option<&'static str> {
    match status {
        SaveStatus::Saved | SaveStatus::Pending => None,
        SaveStatus::Cleared => Some(saving.cleared),
        SaveStatus::Failed(StorageError::Full) => Some(saving.full),
        SaveStatus::Failed(StorageError::NotAllowed) => Some(saving.not_allowed),
        SaveStatus::Failed(_) => Some(saving.failed),
        SaveStatus::Locked(Lock::Newer) => Some(saving.newer_version),
        SaveStatus::Locked(Lock::DamagedInPlace) => Some(saving.damaged_in_place),
    }
}

fn toast_text(about: &ToastAbout, common: &Common) -> String {
    let notes = &common.notes;
    match about {
        ToastAbout::EntryErased => notes.entry_erased.to_owned(),
        ToastAbout::CookerErased { name } => (notes.cooker_erased)(name),
        ToastAbout::SkyErased => notes.sky_erased.to_owned(),
        ToastAbout::RunErased { name } => (notes.run_erased)(name),
        ToastAbout::ReadingErased => notes.reading_erased.to_owned(),
        ToastAbout::BroughtBack => notes.brought_back.to_owned(),
        ToastAbout::TakenBack => notes.taken_back.to_owned(),
        ToastAbout::PotIn => notes.pot_in.to_owned(),
        ToastAbout::Noted => notes.noted.to_owned(),
        ToastAbout::HoursReplaced => notes.hours_replaced.to_owned(),
        ToastAbout::NumberReplaced => notes.number_replaced.to_owned(),
        ToastAbout::WrittenDown => notes.written_down.to_owned(),
        ToastAbout::Overwritten { was, time } => (notes.overwritten)(was, time),
        ToastAbout::Said(text) => text.clone(),
        ToastAbout::FitUsed { cooker } => (notes.fit_used)(cooker),
    }
}
