//! What else happened on the day, and what was erased lately.

use crate::reactive::*;
use model::journal::Meal;
use model::local_time::LocalTime;

use super::scene::{Form, Scene, say};
use crate::components::{Button, EntryRow, Fold, Icon, Panel};
use crate::i18n::strings::Strings;
use crate::present::diary::draft::{Draft, Kind, POWER_STEPS};
use crate::present::diary::entries::{entry as entry_view, erased, icon};
use crate::screens::doubted::Doubted;
use crate::shell::toasts::ToastAbout;
use crate::state::action::Action;
use crate::state::document::{Document, Entry};
use crate::state::ids::ErasedId;
use crate::state::plan::{Plan, TimeOfDay};

impl Scene {
    /// What a meal here usually is.
    fn usual_meal(&self, at: LocalTime) -> Option<Meal> {
        self.shell.store.now_is(|document| usual_meal(document, at))
    }

    /// Opens the sheet for something new: now, or this time of day on a day that has been.
    fn add(&self, kind: Kind) {
        let now = self.shell.clock.now_untracked();
        let at = TimeOfDay::of(now).on(self.day.get_untracked());
        let formats = self.shell.words.formats().get_untracked();
        if let Some(meal) = self.usual_meal(at) {
            let top_up_w = self.shell.store.now_is(usual_top_up_w);
            self.open(None, Draft::new(kind, at, meal, top_up_w, &formats));
        }
    }

    /// Opens the sheet for an entry.
    fn change(&self, entry: &Entry) {
        let formats = self.shell.words.formats().get_untracked();
        if let Some(meal) = self.usual_meal(entry.at) {
            let draft = Draft::of(entry.at, &entry.what, meal, &formats);
            self.open(Some(entry), draft);
        }
    }

    fn open(&self, entry: Option<&Entry>, draft: Draft) {
        self.form.set(Some(Form {
            id: entry.map(|entry| entry.id),
            draft,
            refused: None,
            is_tried: false,
        }));
    }
}

fn usual_meal(document: &Document, at: LocalTime) -> Option<Meal> {
    let household = document.household.as_ref()?;
    let pot = document.cooker_in_use()?.cooker.pot;
    let second = i32::try_from(at.second_of_day()).map_or(0.0, f64::from);
    let air_c = household
        .air
        .air_c(&household.place, at.day().0, second)
        .max(0.0);
    Some(Plan::start(household.people, at).meal(pot, air_c, at))
}

/// What the second charge of the cooker gives, or a small element.
fn usual_top_up_w(document: &Document) -> f64 {
    let second = document
        .cooker_in_use()
        .and_then(|owned| owned.cooker.charging.second);
    second.map_or(POWER_STEPS.start, |second| second.heat_w())
}

fn kind_label(kind: Kind) -> (fn(&Strings) -> &'static str, &'static str) {
    match kind {
        Kind::Reading => (|strings| strings.diary.add_reading, "add-reading"),
        Kind::Felt => (|strings| strings.diary.add_felt, "add-felt"),
        Kind::Meal => (|strings| strings.diary.add_meal, "add-meal"),
        Kind::LidOpen => (|strings| strings.diary.add_lid, "add-lid"),
        Kind::HeaterOff => (|strings| strings.diary.add_heater, "add-heater"),
        Kind::TopUp => (|strings| strings.diary.add_top_up, "add-top-up"),
    }
}

/// The entries of the day by time, and what adds one.
#[component]
pub(super) fn Entries(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let all = shell.store.read(|document| {
        let in_use = document.in_use;
        let own = document
            .entries
            .iter()
            .filter(|entry| Some(entry.cooker) == in_use);
        own.cloned().collect::<Vec<Entry>>()
    });
    let entries = Memo::new(move |_| {
        let day = scene.day.get();
        all.with(|all| {
            let of_day = all.iter().filter(|entry| entry.at.day() == day);
            of_day.cloned().collect::<Vec<Entry>>()
        })
    });
    let row = move |entry: Entry| {
        let shown = entry.clone();
        let view = Signal::derive(move || say(shell, |voice| entry_view(voice, &shown)));
        let (changed, doubted) = (entry.clone(), entry.clone());
        view! {
            <EntryRow
                entry=view
                on_press=Callback::new(move |()| scene.change(&changed))
                test="entry"
            />
            <Doubted shell entry=doubted>
                <Button
                    label=words.text(|strings| strings.diary.change_it)
                    on_press=Callback::new({
                        let entry = entry.clone();
                        move |()| scene.change(&entry)
                    })
                    icon=Icon::Pencil
                    test="doubt-change"
                />
            </Doubted>
        }
    };
    let add = move |kind: Kind| {
        let (label, test) = kind_label(kind);
        view! {
            <Button
                label=words.text(label)
                on_press=Callback::new(move |()| scene.add(kind))
                icon=icon(kind)
                test
            />
        }
    };
    view! {
        <Panel heading=words.text(|strings| strings.diary.entries_heading) test="entries">
            {move || {
                let entries = entries.get();
                if entries.is_empty() {
                    let none = words.text(|strings| strings.diary.no_entries);
                    view! { <p class="aside">{none}</p> }
                } else {
                    entries.into_iter().map(row).collect_view()
                }
            }}
            <div class="diary-add">{Kind::ALL.map(add).collect_view()}</div>
        </Panel>
    }
}

/// What was erased lately, each with the way back.
#[component]
pub(super) fn ErasedLately(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let gone = shell.store.read(|document| document.erased.clone());
    let wrong = RwSignal::new(None::<String>);
    let bring_back = move |id: ErasedId| match shell.dispatch.run(Action::BringBack(id)) {
        Ok(_) => {
            wrong.set(None);
            shell.toasts.show(ToastAbout::BroughtBack, None);
        }
        Err(refused) => wrong.set(Some(super::scene::say_refused(shell, refused))),
    };
    let rows = move || {
        let lines = gone.with(|gone| {
            say(shell, |voice| {
                gone.iter()
                    .rev()
                    .map(|one| (one.id, erased(voice, one)))
                    .collect::<Vec<_>>()
            })
        });
        let row = move |(id, said): (ErasedId, String)| {
            view! {
                <li class="diary-erased__line">
                    <span>{said}</span>
                    <Button
                        label=words.text(|strings| strings.common.buttons.bring_back)
                        on_press=Callback::new(move |()| bring_back(id))
                        icon=Icon::Undo
                        test="bring-back"
                    />
                </li>
            }
        };
        let lines = lines.into_iter().map(row).collect_view();
        view! { <ul class="diary-erased">{lines}</ul> }
    };
    let is_any = Memo::new(move |_| gone.with(|gone| !gone.is_empty()));
    view! {
        <Show when=move || is_any.get()>
            <div class="diary-gone">
                <Fold summary=words.text(|strings| strings.diary.erased_heading) test="erased">
                    {rows}
                    {move || {
                        wrong
                            .get()
                            .map(|wrong| view! { <p class="field__error" role="alert">{wrong}</p> })
                    }}
                </Fold>
            </div>
        </Show>
    }
}
