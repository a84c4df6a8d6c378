//! What each question shows: large choices, and a number for those who know better.

use crate::reactive::*;

use crate::components::{
    Caution, CautionLevel, Choice, ChoiceOption, Fold, Icon, NumberField, NumberFieldText, Select,
};
use crate::i18n::strings::Strings;
use crate::platform::locale;
use crate::present::first_start::{
    DEGREE_STEPS, Draft, HEIGHT_STEPS, PEOPLE_STEPS, Question, WATT_STEPS, land_options,
    panel_options, people_options, preset_options, towns,
};
use crate::present::typed::{Mistake, Steps, stepped};
use crate::shell::{Shell, use_shell};

/// The answers to one question.
#[component]
pub(super) fn Answers(question: Question, draft: RwSignal<Draft>) -> impl IntoView {
    match question {
        Question::Place => view! { <PlaceAnswer draft /> },
        Question::Height => view! { <HeightAnswer draft /> },
        Question::Cooker => view! { <CookerAnswer draft /> },
        Question::Panels => view! { <PanelAnswer draft /> },
        Question::People => view! { <PeopleAnswer draft /> },
    }
}

/// A number of the draft: where it stands, how it counts, what is wrong with it.
#[derive(Clone, Copy)]
struct Number {
    draft: RwSignal<Draft>,
    text: fn(&mut Draft) -> &mut String,
    steps: Steps,
    mistake: fn(&Draft) -> Option<Mistake>,
    test: &'static str,
}

impl Number {
    fn view(self, label: &'static str, unit: &'static str) -> impl IntoView {
        let Self {
            draft,
            text,
            steps,
            mistake,
            test,
        } = self;
        let Shell { words, clock, .. } = use_shell();
        let strings = untrack(move || words.strings());
        let value = Memo::new(move |_| text(&mut draft.get()).clone());
        // What nobody has typed into yet is not wrong.
        let is_touched = RwSignal::new(false);
        let error = Memo::new(move |_| {
            let mistake = draft.with(mistake)?;
            if mistake.is_empty_field() && !is_touched.get() {
                return None;
            }
            let today = clock.now().get().day();
            Some(mistake.words(words.strings(), &words.formats().get(), today))
        });
        let on_step = move |n_steps| {
            let formats = words.formats().get_untracked();
            draft.update(|draft| {
                let field = text(draft);
                *field = stepped(&formats, field, n_steps, steps);
            });
        };
        let words = NumberFieldText {
            label: label.to_owned(),
            unit: unit.to_owned(),
            less: format!("{label}: {}", strings.common.buttons.less),
            more: format!("{label}: {}", strings.common.buttons.more),
            hint: String::new(),
        };
        view! {
            <NumberField
                text=words
                value
                on_input=move |typed: String| {
                    is_touched.set(true);
                    draft.update(|draft| *text(draft) = typed);
                }
                on_step
                error
                test
            />
        }
    }
}

#[component]
fn PlaceAnswer(draft: RwSignal<Draft>) -> impl IntoView {
    let Shell { words, .. } = use_shell();
    let strings = untrack(move || words.strings());
    let texts = &strings.first_start;
    let is_known = draft.with_untracked(|draft| draft.whereabouts.zone.is_some());
    let named = move || {
        let strings = words.strings();
        let formats = words.formats().get();
        draft.with(|draft| draft.place_words(strings, &formats))
    };
    let why = if is_known {
        texts.place_why
    } else {
        texts.place_unknown
    };
    let latitude = Number {
        draft,
        text: |draft| &mut draft.latitude,
        steps: Steps {
            range: (0.0, 90.0),
            ..DEGREE_STEPS
        },
        mistake: |draft| draft.latitude_deg().err(),
        test: "start-latitude",
    };
    let longitude = Number {
        draft,
        text: |draft| &mut draft.longitude,
        steps: DEGREE_STEPS,
        mistake: |draft| draft.longitude_deg().err(),
        test: "start-longitude",
    };
    let own = draft.with_untracked(|draft| draft.whereabouts.zone.map(|zone| zone.zone));
    let options = Signal::derive(move || {
        let countries = locale::countries(words.language().get().tag());
        towns(words.strings(), own, &countries)
    });
    let picked = Memo::new(move |_| draft.with(|draft| draft.picked_town().to_owned()));
    let on_town = move |zone: String| {
        let formats = words.formats().get_untracked();
        draft.update(|draft| draft.pick_town(&zone, &formats));
    };
    let other = if is_known {
        texts.place_other
    } else {
        texts.place_numbers
    };
    view! {
        <p class="lead" data-test="start-place">{named}</p>
        <p class="aside">{why}</p>
        <Select label=texts.town.to_owned() options picked on_pick=on_town test="start-town" />
        <Fold summary=other.to_owned() test="start-place-other">
            {latitude.view(texts.latitude, "°")}
            <Side
                label=texts.north_or_south
                sides=(texts.north, texts.south)
                is_second=Signal::derive(move || draft.with(|draft| draft.south))
                on_pick=move |south| draft.update(|draft| draft.south = south)
                test="start-north-south"
            />
            {longitude.view(texts.longitude, "°")}
            <Side
                label=texts.east_or_west
                sides=(texts.east, texts.west)
                is_second=Signal::derive(move || draft.with(|draft| draft.west))
                on_pick=move |west| draft.update(|draft| draft.west = west)
                test="start-east-west"
            />
        </Fold>
    }
}

/// One of two sides of the earth.
#[component]
fn Side(
    label: &'static str,
    sides: (&'static str, &'static str),
    is_second: Signal<bool>,
    #[prop(into)] on_pick: Callback<bool>,
    test: &'static str,
) -> impl IntoView {
    let option = |key: &str, label: &str| ChoiceOption {
        key: key.to_owned(),
        label: label.to_owned(),
        detail: String::new(),
        icon: None,
    };
    let picked = move || if is_second.get() { "second" } else { "first" };
    view! {
        <Choice
            label=label.to_owned()
            options=vec![option("first", sides.0), option("second", sides.1)]
            picked=Signal::derive(move || picked().to_owned())
            on_pick=move |key: String| on_pick.run(key == "second")
            test
        />
    }
}

#[component]
fn HeightAnswer(draft: RwSignal<Draft>) -> impl IntoView {
    let Shell { words, .. } = use_shell();
    let strings = untrack(move || words.strings());
    let texts = &strings.first_start;
    let formats = words.formats();
    let number = Number {
        draft,
        text: |draft| &mut draft.height,
        steps: HEIGHT_STEPS,
        mistake: |draft| draft.height_m().err(),
        test: "start-height",
    };
    view! {
        <p class="aside">{texts.height_why}</p>
        <Choice
            label=texts.height_pick.to_owned()
            options=Signal::derive(move || land_options(words.strings(), &formats.get()))
            picked=Signal::derive(move || draft.with(|draft| draft.picked_land().to_owned()))
            on_pick=move |key: String| {
                draft.update(|draft| draft.pick_land(&key, &formats.get_untracked()));
            }
            test="start-land"
        />
        {number.view(texts.height_number, "m")}
    }
}

#[component]
fn CookerAnswer(draft: RwSignal<Draft>) -> impl IntoView {
    let Shell { words, .. } = use_shell();
    let is_nitrate = Memo::new(move |_| draft.with(|draft| draft.preset.holds_nitrate()));
    view! {
        <Choice
            label=words.text(|strings| strings.first_start.cooker_pick)
            options=Signal::derive(move || preset_options(words.strings()))
            picked=Signal::derive(move || draft.with(|draft| draft.preset.key().to_owned()))
            on_pick=move |key: String| draft.update(|draft| draft.pick_preset(&key))
            test="start-preset"
        />
        <Show when=move || is_nitrate.get()>
            <Caution
                level=CautionLevel::Danger
                icon=Icon::Salt
                word=words.text(|strings| strings.safety.danger)
                text=words.text(|strings| strings.safety.nitrate)
                test="start-nitrate"
            />
        </Show>
    }
}

#[component]
fn PanelAnswer(draft: RwSignal<Draft>) -> impl IntoView {
    let number = Number {
        draft,
        text: |draft| &mut draft.watts,
        steps: WATT_STEPS,
        mistake: |draft| draft.watts_w().err(),
        test: "start-watts",
    };
    let formats = use_shell().words.formats();
    view! {
        <Counted
            number
            options=Signal::derive(move || panel_options(&formats.get()))
            unit="W"
            why=|strings| strings.first_start.panels_why
            pick=|strings| strings.first_start.panels_pick
            label=|strings| strings.first_start.panels_number
            test="start-panels"
        />
    }
}

#[component]
fn PeopleAnswer(draft: RwSignal<Draft>) -> impl IntoView {
    let number = Number {
        draft,
        text: |draft| &mut draft.people,
        steps: PEOPLE_STEPS,
        mistake: |draft| draft.n_people().err(),
        test: "start-people-number",
    };
    view! {
        <Counted
            number
            options=Signal::derive(people_options)
            unit=""
            why=|strings| strings.first_start.people_why
            pick=|strings| strings.first_start.people_pick
            label=|strings| strings.first_start.people_number
            test="start-people"
        />
    }
}

/// A number that usually is one of a few.
#[component]
fn Counted(
    number: Number,
    options: Signal<Vec<ChoiceOption>>,
    unit: &'static str,
    why: fn(&Strings) -> &'static str,
    pick: fn(&Strings) -> &'static str,
    label: fn(&Strings) -> &'static str,
    test: &'static str,
) -> impl IntoView {
    let Shell { words, .. } = use_shell();
    let strings = untrack(move || words.strings());
    let Number { draft, text, .. } = number;
    let picked = Signal::derive(move || text(&mut draft.get()).trim().to_owned());
    view! {
        <p class="aside">{why(strings)}</p>
        <Choice
            label=pick(strings).to_owned()
            options
            picked
            on_pick=move |key: String| draft.update(|draft| *text(draft) = key)
            test
        />
        {number.view(label(strings), unit)}
    }
}
