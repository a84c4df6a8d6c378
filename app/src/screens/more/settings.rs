//! Language, looks and units.

use crate::reactive::*;

use crate::components::{Choice, ChoiceOption};
use crate::i18n::Language;
use crate::screens::more::Page;
use crate::shell::use_shell;
use crate::state::action::Action;
use crate::state::settings::{Degrees, LanguageChoice, Theme};

const AUTOMATIC: &str = "automatic";
const LIGHT: &str = "light";
const DARK: &str = "dark";
const CELSIUS: &str = "celsius";
const FAHRENHEIT: &str = "fahrenheit";

/// Language, looks and units; each takes effect at once.
#[component]
pub(super) fn SettingsPage() -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let settings = shell.store.settings();
    let choose = move |action| {
        // A setting can't be refused.
        let _ = shell.dispatch.run(action);
    };

    let languages = Signal::derive(move || {
        let automatic = option(AUTOMATIC, words.strings().more.language_automatic);
        let named = |language: Language| option(language.tag(), language.own_name());
        std::iter::once(automatic)
            .chain(Language::ALL.map(named))
            .collect()
    });
    let language = Signal::derive(move || match settings.get().language {
        LanguageChoice::Automatic => AUTOMATIC.to_owned(),
        LanguageChoice::Chosen(language) => language.tag().to_owned(),
    });
    let on_language = move |key: String| {
        let choice =
            Language::from_tag(&key).map_or(LanguageChoice::Automatic, LanguageChoice::Chosen);
        choose(Action::ChooseLanguage(choice));
    };

    let themes = Signal::derive(move || {
        let more = &words.strings().more;
        vec![
            option(AUTOMATIC, more.theme_automatic),
            option(LIGHT, more.theme_light),
            option(DARK, more.theme_dark),
        ]
    });
    let theme = Signal::derive(move || {
        let key = match settings.get().theme {
            Theme::Automatic => AUTOMATIC,
            Theme::Light => LIGHT,
            Theme::Dark => DARK,
        };
        key.to_owned()
    });
    let on_theme = move |key: String| {
        choose(Action::ChooseTheme(match key.as_str() {
            LIGHT => Theme::Light,
            DARK => Theme::Dark,
            _ => Theme::Automatic,
        }));
    };

    let degrees_options = Signal::derive(move || {
        let more = &words.strings().more;
        vec![
            option(CELSIUS, more.degrees_c),
            option(FAHRENHEIT, more.degrees_f),
        ]
    });
    let degrees = Signal::derive(move || {
        let key = match settings.get().degrees {
            Degrees::Celsius => CELSIUS,
            Degrees::Fahrenheit => FAHRENHEIT,
        };
        key.to_owned()
    });
    let on_degrees = move |key: String| {
        choose(Action::ChooseDegrees(match key.as_str() {
            FAHRENHEIT => Degrees::Fahrenheit,
            _ => Degrees::Celsius,
        }));
    };

    view! {
        <Page title=|strings| strings.more.settings>
            <div class="panel stack">
                <Choice
                    label=words.text(|strings| strings.more.language)
                    options=languages
                    picked=language
                    on_pick=Callback::new(on_language)
                    test="language"
                />
                <Choice
                    label=words.text(|strings| strings.more.theme)
                    options=themes
                    picked=theme
                    on_pick=Callback::new(on_theme)
                    test="theme"
                />
                <Choice
                    label=words.text(|strings| strings.more.degrees)
                    options=degrees_options
                    picked=degrees
                    on_pick=Callback::new(on_degrees)
                    test="degrees"
                />
            </div>
        </Page>
    }
}

fn option(key: &str, label: &str) -> ChoiceOption {
    ChoiceOption {
        key: key.to_owned(),
        label: label.to_owned(),
        detail: String::new(),
        icon: None,
    }
}
