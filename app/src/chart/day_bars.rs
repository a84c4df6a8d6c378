//! The last days: how much sun each had, and how hot the store was.

use crate::reactive::*;

use super::path;
use super::scale::Scale;
use crate::components::{DataTable, Fold, TableView};

/// A day.
#[derive(Clone, Debug, PartialEq)]
pub struct DayBar {
    /// Its short name: '12'.
    pub label: String,
    /// All that is known of it, for a screen reader.
    pub spoken: String,
    /// How much sun it had, or nothing where nobody told.
    pub sun: Option<f64>,
    /// How hot the store was.
    pub store: Option<f64>,
    /// True for the day that is picked.
    pub picked: bool,
}

/// What the plot shows.
#[derive(Clone, Debug, PartialEq)]
pub struct DayBarsView {
    /// What a screen reader calls the plot.
    pub name: String,
    /// The days in order.
    pub days: Vec<DayBar>,
    /// What a bar is, and what its full height means.
    pub sun_label: String,
    /// What the line is, and what its foot and top mean.
    pub store_label: String,
    /// Sun of a bar of full height.
    pub sun_most: f64,
    /// Foot and top of the line's scale.
    pub store_range: (f64, f64),
    /// The same as the plot, in a sentence or two.
    pub sentence: String,
    /// What opens the table, and the table.
    pub table: (String, TableView),
}

/// Days side by side, seven a row on a narrow screen; each can be tapped.
#[component]
pub fn DayBars(
    /// What it shows.
    #[prop(into)]
    view: Signal<DayBarsView>,
    /// Called with the place of the tapped day.
    #[prop(into)]
    on_pick: Callback<usize>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let table = Signal::derive(move || view.get().table.1);
    let summary = Signal::derive(move || view.get().table.0);
    let days = move || {
        let view = view.get();
        (0..view.days.len())
            .filter_map(|idx| day(&view, idx, on_pick))
            .collect_view()
    };
    view! {
        <figure class="day-bars" data-test=test>
            <ol class="day-bars__days" aria-label=move || view.get().name>
                {days}
            </ol>
            <ul class="day-bars__key">
                <li class="day-bars__key-line" data-part="sun">{move || view.get().sun_label}</li>
                <li class="day-bars__key-line" data-part="store">{move || view.get().store_label}</li>
            </ul>
            <figcaption class="day-bars__sentence">{move || view.get().sentence}</figcaption>
            <Fold summary>
                <DataTable table />
            </Fold>
        </figure>
    }
}

fn day(view: &DayBarsView, idx: usize, on_pick: Callback<usize>) -> Option<View> {
    let DayBar {
        label,
        spoken,
        sun,
        picked,
        ..
    } = view.days.get(idx)?.clone();
    let height = Scale::new((0.0, view.sun_most), (0.0, 100.0));
    let bar = sun.map(|sun| {
        let top = 100.0 - height.at_clamped(sun);
        // The bar's top is cut aslant, by hand.
        let d = format!(
            "M22 100V{top:.1}L50 {:.1}L78 {top:.1}V100Z",
            (top - 3.0).max(0.0)
        );
        view! { <path class="day-bars__bar" d=d></path> }
    });
    let unknown = sun
        .is_none()
        .then(|| view! { <path class="day-bars__unknown" d="M22 98H78"></path> });
    let StoreLine { line, casing, dot } = store_line(view, idx);
    let drawn = view! {
        <li class="day-bars__day">
            <button
                type="button"
                class="day-bars__cell"
                aria-label=spoken
                aria-pressed=if picked { "true" } else { "false" }
                on:click=move |_| on_pick.run(idx)
            >
                <svg class="day-bars__drawing" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
                    {bar}
                    {unknown}
                    <path class="day-bars__casing" d=casing></path>
                    <path class="day-bars__line" d=line></path>
                    <path class="day-bars__dot" d=dot></path>
                </svg>
                <span class="day-bars__label">{label}</span>
            </button>
        </li>
    };
    Some(drawn)
}

/// The part of the store's line that runs through one day, what sets it off from the bar behind
/// it, and its dot.
struct StoreLine {
    line: String,
    casing: String,
    dot: String,
}

/// Goes half way to each neighbour, so that the parts of days side by side make one line. The
/// casing ends a little before, so that it does not cut into the line of the neighbour.
fn store_line(view: &DayBarsView, idx: usize) -> StoreLine {
    let scale = Scale::new(view.store_range, (94.0, 6.0));
    let store = |idx: Option<usize>| {
        idx.and_then(|idx| view.days.get(idx))
            .and_then(|day| day.store)
            .map_or(f64::NAN, |store| scale.at_clamped(store))
    };
    let (before, own, after) = (
        store(idx.checked_sub(1)),
        store(Some(idx)),
        store(Some(idx + 1)),
    );
    let ends = |margin: f64| {
        let part = (50.0 - margin) / 100.0;
        let towards = |other: f64| own + (other - own) * part;
        path::line([
            (margin, towards(before)),
            (50.0, own),
            (100.0 - margin, towards(after)),
        ])
    };
    StoreLine {
        line: ends(0.0),
        casing: ends(10.0),
        dot: path::dots([(50.0, own)]),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn view(stores: &[Option<f64>]) -> DayBarsView {
        let day = |store: &Option<f64>| DayBar {
            label: String::new(),
            spoken: String::new(),
            sun: Some(5.0),
            store: *store,
            picked: false,
        };
        DayBarsView {
            name: String::new(),
            days: stores.iter().map(day).collect(),
            sun_label: String::new(),
            store_label: String::new(),
            sun_most: 12.0,
            store_range: (0.0, 300.0),
            sentence: String::new(),
            table: Default::default(),
        }
    }

    #[test]
    fn parts_of_the_line_meet_between_days() {
        let view = view(&[Some(300.0), Some(0.0)]);
        assert_eq!(store_line(&view, 0).line, "M50 6L100 50");
        assert_eq!(store_line(&view, 1).line, "M0 50L50 94");
        assert_eq!(store_line(&view, 1).casing, "M10 58.8L50 94");
        assert_eq!(store_line(&view, 1).dot, "M50 94h0");
    }

    #[test]
    fn a_day_that_nobody_told_of_breaks_the_line() {
        let view = view(&[Some(300.0), None]);
        assert_eq!(store_line(&view, 0).line, "M50 6");
        assert_eq!(store_line(&view, 1).line, "");
        assert_eq!(store_line(&view, 1).dot, "");
    }
}
