//! Which screen is shown, and the address that leads there.
//!
//! Addresses live after the `#`, so that a reload of any of them needs no server that knows it.

use model::local_time::Day;

use crate::state::ids::{CookerId, RunId};

/// Where a person is in the app.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Route {
    /// Will it boil, when, how long to leave it in.
    #[default]
    Tonight,
    /// What the sun and the pots did: today, or the day named.
    Diary(Option<Day>),
    /// What is cooked on: the cooker in use, or the one named.
    Cooker(Option<CookerId>),
    /// How good a build is, and why a pot did not boil.
    Bench(BenchPage),
    /// The rest.
    More(MorePage),
    /// The first start: its welcome, 0, or one of its questions, from 1.
    Start(u8),
}

/// A page of the room Bench.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum BenchPage {
    /// The runs.
    #[default]
    List,
    /// A new run.
    New,
    /// Readings that are pasted, or of a logger's file.
    Import,
    /// Several runs or builds beside each other.
    Compare,
    /// The same, to be printed.
    Print,
    /// One run: its readings as they come, and what is said of it.
    Run(RunId),
    /// What is found from it.
    Fit(RunId),
}

/// A page of the room More.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum MorePage {
    /// The list of the pages.
    #[default]
    Menu,
    /// Language, looks, units.
    Settings,
    /// Keep a copy, bring one back, what was set aside.
    Copies,
    /// The example household.
    Example,
    /// Cautions.
    Safety,
    /// What this is, how sure it is, the licence.
    About,
}

impl MorePage {
    /// Every page, in the order of the menu.
    pub const ALL: [Self; 6] = [
        Self::Menu,
        Self::Settings,
        Self::Copies,
        Self::Example,
        Self::Safety,
        Self::About,
    ];

    fn slug(self) -> &'static str {
        match self {
            Self::Menu => "",
            Self::Settings => "settings",
            Self::Copies => "copies",
            Self::Example => "example",
            Self::Safety => "safety",
            Self::About => "about",
        }
    }
}

impl BenchPage {
    /// Pages that are not about one run, with what stands for them in an address.
    const WHOLE: [(Self, &'static str); 5] = [
        (Self::List, ""),
        (Self::New, "new"),
        (Self::Import, "import"),
        (Self::Compare, "compare"),
        (Self::Print, "print"),
    ];

    fn slug(self) -> String {
        match self {
            Self::Run(id) => id.0.to_string(),
            Self::Fit(id) => format!("{}/fit", id.0),
            whole => {
                let mut all = Self::WHOLE.iter();
                let found = all.find(|(page, _)| *page == whole);
                found.map_or("", |(_, slug)| slug).to_owned()
            }
        }
    }

    fn from_slug(slug: &str) -> Self {
        if let Some((page, _)) = Self::WHOLE.iter().find(|(_, of)| *of == slug) {
            return *page;
        }
        let (id, rest) = slug.split_once('/').unwrap_or((slug, ""));
        match (id.parse().map(RunId), rest) {
            (Ok(id), "") => Self::Run(id),
            (Ok(id), "fit") => Self::Fit(id),
            _ => Self::List,
        }
    }
}

impl Route {
    /// The address of this place, with its `#`.
    pub fn hash(self) -> String {
        match self {
            Self::Tonight => "#/tonight".into(),
            Self::Diary(None) => "#/diary".into(),
            Self::Diary(Some(day)) => {
                let (year, month, day) = day.ymd();
                format!("#/diary/{year:04}-{month:02}-{day:02}")
            }
            Self::Cooker(None) => "#/cooker".into(),
            Self::Cooker(Some(id)) => format!("#/cooker/{}", id.0),
            Self::Bench(BenchPage::List) => "#/bench".into(),
            Self::Bench(page) => format!("#/bench/{}", page.slug()),
            Self::More(MorePage::Menu) => "#/more".into(),
            Self::More(page) => format!("#/more/{}", page.slug()),
            Self::Start(0) => "#/start".into(),
            Self::Start(question) => format!("#/start/{question}"),
        }
    }

    /// The place an address leads to; an address that leads nowhere is Tonight's.
    pub fn from_hash(hash: &str) -> Self {
        let path = hash.trim_start_matches('#').trim_matches('/');
        let (room, rest) = path.split_once('/').unwrap_or((path, ""));
        match (room, rest) {
            ("diary", "") => Self::Diary(None),
            ("diary", day) => Self::Diary(day_from(day)),
            ("cooker", "") => Self::Cooker(None),
            ("cooker", id) => Self::Cooker(id.parse().ok().map(CookerId)),
            ("bench", slug) => Self::Bench(BenchPage::from_slug(slug)),
            ("more", slug) => MorePage::ALL
                .into_iter()
                .find(|page| page.slug() == slug)
                .map_or(Self::More(MorePage::Menu), Self::More),
            ("start", question) => Self::Start(question.parse().unwrap_or(0)),
            _ => Self::Tonight,
        }
    }

    /// Where a person is taken who asks for this place: the first start as long as there is no
    /// household, except for pages that need none; Tonight instead of the first start after it.
    pub fn allowed(self, has_household: bool) -> Self {
        match self {
            Self::Start(_) if has_household => Self::Tonight,
            Self::Start(_) | Self::More(_) => self,
            Self::Tonight | Self::Diary(_) | Self::Cooker(_) | Self::Bench(_) if has_household => {
                self
            }
            Self::Tonight | Self::Diary(_) | Self::Cooker(_) | Self::Bench(_) => Self::Start(0),
        }
    }
}

fn day_from(text: &str) -> Option<Day> {
    let mut parts = text.splitn(3, '-');
    let year = parts.next()?.parse().ok()?;
    let month = parts.next()?.parse().ok()?;
    let day = parts.next()?.parse().ok()?;
    Day::from_ymd(year, month, day)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn check(hash: &str, expected: Route) {
        assert_eq!(Route::from_hash(hash), expected, "{hash:?}");
    }

    #[test]
    fn addresses_lead_to_places() {
        check("", Route::Tonight);
        check("#", Route::Tonight);
        check("#/tonight", Route::Tonight);
        check("#/diary", Route::Diary(None));
        check("#/diary/", Route::Diary(None));
        check(
            "#/diary/2026-11-25",
            Route::Diary(Day::from_ymd(2026, 11, 25)),
        );
        check("#/cooker", Route::Cooker(None));
        check("#/cooker/3", Route::Cooker(Some(CookerId(3))));
        check("#/bench", Route::Bench(BenchPage::List));
        check("#/bench/new", Route::Bench(BenchPage::New));
        check("#/bench/7", Route::Bench(BenchPage::Run(RunId(7))));
        check("#/bench/7/fit", Route::Bench(BenchPage::Fit(RunId(7))));
        check("#/more", Route::More(MorePage::Menu));
        check("#/more/copies", Route::More(MorePage::Copies));
        check("#/start", Route::Start(0));
        check("#/start/2", Route::Start(2));
        check("#/start/soon", Route::Start(0));
    }

    #[test]
    fn an_address_that_leads_nowhere_leads_somewhere_sensible() {
        check("#/nowhere", Route::Tonight);
        check("#/diary/2026-02-30", Route::Diary(None));
        check("#/diary/yesterday", Route::Diary(None));
        check("#/cooker/first", Route::Cooker(None));
        check("#/bench/7/guess", Route::Bench(BenchPage::List));
        check("#/more/nothing", Route::More(MorePage::Menu));
    }

    #[test]
    fn without_a_household_only_the_start_and_more_are_open() {
        assert_eq!(Route::Tonight.allowed(false), Route::Start(0));
        assert_eq!(Route::Diary(None).allowed(false), Route::Start(0));
        assert_eq!(
            Route::More(MorePage::Safety).allowed(false),
            Route::More(MorePage::Safety)
        );
        assert_eq!(Route::Start(3).allowed(true), Route::Tonight);
        assert_eq!(Route::Diary(None).allowed(true), Route::Diary(None));
    }

    fn any_bench_page() -> impl Strategy<Value = BenchPage> {
        let whole = BenchPage::WHOLE.map(|(page, _)| page);
        prop_oneof![
            (0..whole.len()).prop_map(move |page| whole[page]),
            any::<u32>().prop_map(|id| BenchPage::Run(RunId(id))),
            any::<u32>().prop_map(|id| BenchPage::Fit(RunId(id))),
        ]
    }

    fn any_route() -> impl Strategy<Value = Route> {
        prop_oneof![
            Just(Route::Tonight),
            any::<u8>().prop_map(Route::Start),
            proptest::option::of(-5000..60_000).prop_map(|day| Route::Diary(day.map(Day))),
            proptest::option::of(any::<u32>()).prop_map(|id| Route::Cooker(id.map(CookerId))),
            any_bench_page().prop_map(Route::Bench),
            (0..MorePage::ALL.len()).prop_map(|page| Route::More(MorePage::ALL[page])),
        ]
    }

    proptest! {
        #[test]
        fn an_address_leads_back(route in any_route()) {
            prop_assert_eq!(Route::from_hash(&route.hash()), route);
        }

        #[test]
        fn no_text_is_too_odd(hash in ".{0,40}") {
            let route = Route::from_hash(&hash);
            prop_assert_eq!(Route::from_hash(&route.hash()), route);
        }
    }
}
