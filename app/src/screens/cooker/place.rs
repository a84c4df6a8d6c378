//! Where the household cooks: place, air and people.

use crate::reactive::*;
use model::water::boiling_point_c;

use super::field::{Field, Subject};
use super::form::Form;
use crate::components::{Fold, Icon, Toggle};
use crate::i18n::format::Sure;
use crate::present::cooker::place::{self, Key, is_same_all_year};
use crate::shell::{Shell, use_shell};
use crate::state::action::Action;
use crate::state::document::Household;

/// The fold with the household's place.
#[component]
pub(super) fn WhereWeCook() -> impl IntoView {
    let Shell { words, .. } = use_shell();
    view! {
        <div class="panel">
            <Fold summary=words.text(|strings| strings.cooker.place.heading) test="where-we-cook">
                <PlaceForm />
            </Fold>
        </div>
    }
}

#[component]
fn PlaceForm() -> impl IntoView {
    let shell = use_shell();
    let Shell {
        words,
        store,
        dispatch,
        ..
    } = shell;
    let household = store.read(|document| document.household.clone());
    let apply = Callback::new(move |(field, text): (Field, String)| {
        let (Field::Place(key), Some(former)) = (field, household.get_untracked()) else {
            return Ok(());
        };
        let formats = words.formats().get_untracked();
        let next = place::changed(&former, key, &text, &formats)?;
        if next != former {
            dispatch.run(Action::ChangeHousehold(next))?;
        }
        Ok(())
    });
    let form = Form::new(shell, Subject::Household(household), apply);
    let boils_at = move || {
        let altitude_m = household.with(|household| Some(household.as_ref()?.place.altitude_m))?;
        let boiling_c = boiling_point_c(altitude_m).ok()?;
        let boiling = words.formats().get().temperature(boiling_c, Sure::Known);
        Some((words.strings().cooker.place.boils_at)(&boiling))
    };
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.place;
    view! {
        <p class="aside">{texts.note}</p>
        {form.number(Key::Latitude, texts.latitude, texts.latitude_hint, "place-latitude")}
        {form.number(Key::Longitude, texts.longitude, texts.longitude_hint, "place-longitude")}
        {form.number(Key::Altitude, texts.altitude, "", "place-altitude")}
        <p class="aside" aria-live="polite">{boils_at}</p>
        {form.number(Key::Clock, texts.clock, texts.clock_hint, "place-clock")}
        {form.number(Key::People, texts.people, "", "place-people")}
        <Air form household />
    }
}

/// The air: one day and night for all the year, or month by month.
#[component]
fn Air(form: Form, household: Memo<Option<Household>>) -> impl IntoView {
    let words = use_shell().words;
    let strings = untrack(move || words.strings());
    let texts = &strings.cooker.place;
    let is_same_now = move || {
        household.with_untracked(|household| {
            let air = household.as_ref().map(|household| &household.air);
            air.is_some_and(is_same_all_year)
        })
    };
    // Asked once: typing the same into all months must not take the months away.
    let is_same = RwSignal::new(is_same_now());
    let on_same = move |same: bool| {
        if same {
            form.input(Key::Same.into(), String::new());
        }
        is_same.set(same);
    };
    let month = move |(idx, name): (usize, &&'static str)| {
        view! {
            {form.number(Key::MonthDay(idx), &(texts.month_day)(name), "", "place-month-day")}
            {form.number(Key::MonthNight(idx), &(texts.month_night)(name), "", "place-month-night")}
        }
    };
    view! {
        <h3 class="field__label">{texts.air}</h3>
        <Toggle
            label=words.text(|strings| strings.cooker.place.same)
            detail=words.text(|strings| strings.cooker.place.same_detail)
            on=is_same
            on_change=on_same
            test="place-same"
        />
        {move || {
            if is_same.get() {
                view! {
                    {form.number(Key::Day, texts.day, "", "place-day")}
                    {form.number(Key::Night, texts.night, "", "place-night")}
                }
            } else {
                texts.months.iter().enumerate().map(month).collect_view()
            }
        }}
        <p class="aside">{texts.guess_note}</p>
        <div on:click=move |_| is_same.set(is_same_now())>
            {form
                .button(
                    Key::Guess,
                    words.text(|strings| strings.cooker.place.guess),
                    Icon::Thermometer,
                    "place-guess",
                )}
        </div>
    }
}
