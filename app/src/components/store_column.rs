//! The store, drawn: how hot it is, against what it takes to boil.

use leptos::prelude::*;

use super::unique::unique;
use crate::chart::scale::{Scale, spread};

/// A height of the column with its words.
#[derive(Clone, Debug, PartialEq)]
pub struct ColumnMark {
    /// Where it lies, on the scale of the column.
    pub at: f64,
    /// What it is.
    pub label: String,
    /// Its figure with the unit.
    pub value: String,
}

/// A stretch of the column with its words.
#[derive(Clone, Debug, PartialEq)]
pub struct ColumnRange {
    /// Where it starts, on the scale of the column.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// What it is.
    pub label: String,
    /// Its figures with the unit.
    pub value: String,
}

/// What the column shows. All places are on one scale, whatever its unit.
#[derive(Clone, Debug, PartialEq)]
pub struct StoreColumnView {
    /// Foot of the column.
    pub low: f64,
    /// Top of the column.
    pub high: f64,
    /// How full it is.
    pub now: ColumnMark,
    /// Between what bounds it may as well be; shaded.
    pub band: Option<(f64, f64)>,
    /// Where a pot boils.
    pub boil: Option<ColumnMark>,
    /// Where the medium melts.
    pub melting: Option<ColumnRange>,
    /// Where the heater is switched off.
    pub cut_out: Option<ColumnMark>,
    /// The same in a sentence.
    pub sentence: String,
}

/// Height of the drawing, in its own units.
const DRAWN_HEIGHT: f64 = 260.0;
/// Top of the hollow that fills.
const HOLLOW_TOP: f64 = 30.0;
/// Foot of the hollow.
const HOLLOW_FOOT: f64 = 232.0;
/// Outline of the hollow, uneven as a hand leaves it.
const HOLLOW: &str = "M19 34Q19 29 25 28.5L62 28Q68 28.5 68 34L70 130 69 227Q69 233 62 233.5L24 234Q17 233.5 17.5 227L16.5 120Z";
/// One line of the weave that stands for what is not known.
const HATCH: &str = "M0 0V6";
/// The glow from the foot up to the surface: name and place of each colour.
const GLOW: [(&str, &str); 3] = [
    ("store-column__deep", "0"),
    ("store-column__mid", "0.55"),
    ("store-column__hot", "1"),
];
/// Two lines of a label and a little air, against a column of 16 times the text size.
const LABEL_HEIGHT: f64 = 41.0;

/// A label, where it points and where it stands.
#[derive(Clone, Debug, PartialEq)]
struct Placed {
    kind: &'static str,
    label: String,
    value: String,
    points_at: f64,
    stands_at: f64,
}

impl StoreColumnView {
    fn scale(&self) -> Scale {
        Scale::new((self.low, self.high), (HOLLOW_FOOT, HOLLOW_TOP))
    }

    /// The labels from the top down, none over another.
    fn labels(&self) -> Vec<Placed> {
        let scale = self.scale();
        let mark =
            |kind, mark: &ColumnMark| (kind, mark.at, mark.label.clone(), mark.value.clone());
        let mut marks = vec![mark("now", &self.now)];
        marks.extend(self.boil.as_ref().map(|boil| mark("boil", boil)));
        marks.extend(
            self.cut_out
                .as_ref()
                .map(|cut_out| mark("cut-out", cut_out)),
        );
        marks.extend(self.melting.as_ref().map(|range| {
            let middle = f64::midpoint(range.from, range.to);
            ("melting", middle, range.label.clone(), range.value.clone())
        }));
        marks.sort_by(|a, b| b.1.total_cmp(&a.1));
        let points: Vec<f64> = marks.iter().map(|mark| scale.at_clamped(mark.1)).collect();
        let margin = LABEL_HEIGHT / 2.0;
        let wanted: Vec<f64> = points.iter().map(|point| point - margin).collect();
        let stands = spread(&wanted, LABEL_HEIGHT, DRAWN_HEIGHT - LABEL_HEIGHT);
        marks
            .into_iter()
            .zip(points)
            .zip(stands)
            .map(|(((kind, _, label, value), points_at), place)| Placed {
                kind,
                label,
                value,
                points_at,
                stands_at: place + margin,
            })
            .collect()
    }
}

/// A clay block with its hollow full of glow, and what matters marked beside it.
#[component]
pub fn StoreColumn(
    /// What it shows now.
    #[prop(into)]
    view: Signal<StoreColumnView>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let hollow = unique("hollow");
    let fill = unique("fill");
    let hatch = unique("hatch");
    let label = |placed: Placed| {
        let Placed {
            kind,
            label,
            value,
            stands_at,
            ..
        } = placed;
        let place = format!("--at: {:.4}", stands_at / DRAWN_HEIGHT);
        view! {
            <li class="store-column__label" data-mark=kind style=place>
                <span class="store-column__name">{label}</span>
                " "
                <span class="store-column__value">{value}</span>
            </li>
        }
    };
    let stops = GLOW.map(|(class, offset)| view! { <stop class=class offset=offset></stop> });
    let drawn = {
        let (hollow, fill, hatch) = (hollow.clone(), fill.clone(), hatch.clone());
        move || contents(&view.get(), &hollow, &fill, &hatch)
    };
    view! {
        <figure class="store-column" data-test=test>
            <div class="store-column__frame">
                <svg class="store-column__drawing" viewBox="0 0 96 260" aria-hidden="true">
                    <defs>
                        <clipPath id=hollow>
                            <path d=HOLLOW />
                        </clipPath>
                        <linearGradient id=fill x1="0" y1="1" x2="0" y2="0">
                            {stops}
                        </linearGradient>
                        <pattern
                            id=hatch
                            width="6"
                            height="6"
                            patternUnits="userSpaceOnUse"
                            patternTransform="rotate(45)"
                        >
                            <path class="store-column__hatch" d=HATCH />
                        </pattern>
                    </defs>
                    {drawn}
                </svg>
                <ul class="store-column__labels">
                    {move || view.get().labels().into_iter().map(label).collect_view()}
                </ul>
            </div>
            <figcaption class="store-column__sentence">{move || view.get().sentence}</figcaption>
        </figure>
    }
}

fn round(length: f64) -> String {
    format!("{length:.1}")
}

/// The block, what fills it, the marks across it and the leaders to their labels.
fn contents(view: &StoreColumnView, hollow: &str, fill: &str, hatch: &str) -> AnyView {
    let scale = view.scale();
    let url = |name: &str| format!("url(#{name})");
    let surface = scale.at_clamped(view.now.at);
    let rect = |class: &'static str, from: f64, to: f64, paint: Option<String>| {
        let (top, foot) = (scale.at_clamped(to), scale.at_clamped(from));
        view! {
            <rect class=class x="10" y=round(top) width="70" height=round((foot - top).max(0.0)) fill=paint></rect>
        }
    };
    let band = view
        .band
        .map(|(from, to)| rect("store-column__band", from, to, Some(url(hatch))));
    let melting = view.melting.as_ref().map(|range| {
        let (top, foot) = (scale.at_clamped(range.to), scale.at_clamped(range.from));
        let bracket = format!("M76 {top:.1}h4V{foot:.1}h-4");
        let drawn = rect("store-column__melting", range.from, range.to, None);
        (
            drawn,
            view! { <path class="store-column__bracket" d=bracket></path> },
        )
    });
    let (melting, bracket) = melting.unzip();
    let boil = view.boil.as_ref().map(|boil| {
        let y = scale.at_clamped(boil.at);
        let wave = format!("M10 {y:.1}q4 -5 8 0t8 0 8 0 8 0 8 0 8 0 8 0 8 0");
        view! { <path class="store-column__boil" d=wave></path> }
    });
    let cut_out = view.cut_out.as_ref().map(|cut_out| {
        let y = scale.at_clamped(cut_out.at);
        view! { <path class="store-column__cut-out" d=format!("M10 {y:.1}H80")></path> }
    });
    let leaders = view
        .labels()
        .into_iter()
        .map(|placed| {
            let Placed {
                kind,
                points_at,
                stands_at,
                ..
            } = placed;
            let d = format!("M80 {points_at:.1}H83L91 {stands_at:.1}H96");
            view! { <path class="store-column__leader" data-mark=kind d=d></path> }
        })
        .collect_view();
    let lit = format!("M10 {surface:.1}q9 -3 18 0t18 0 18 0 18 0");
    view! {
        <path class="store-column__clay" d="M10 26Q9 15 20 14L44 12 67 13.5Q79 14.5 78.5 26L81 96 79.5 170 81 236Q80.5 250 67 250.5L43 252 19 250.5Q6 250 6.5 236L5 150 7.5 88Z"></path>
        <path class="store-column__rim" d="M7 25Q6 9 20 8.5L45 6.5 68 8Q82 9 80.5 25Q44 19 7 25Z"></path>
        <path class="store-column__cuts" d="M10 98l5 3M77 150l-4 4M11 196l4-3M76 74l-4-2M30 244l6 1.5M58 245l5-1.5"></path>
        <g clip-path=url(hollow)>
            <rect class="store-column__hollow" x="10" y="20" width="70" height="220"></rect>
            <rect
                class="store-column__fill"
                x="10"
                y=round(surface)
                width="70"
                height=round((240.0 - surface).max(0.0))
                fill=url(fill)
            ></rect>
            {melting}
            {band}
            <path class="store-column__surface" d=lit></path>
            {cut_out}
            {boil}
        </g>
        {bracket}
        {leaders}
    }
    .into_any()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mark(at: f64) -> ColumnMark {
        ColumnMark {
            at,
            label: "mark".into(),
            value: format!("{at}"),
        }
    }

    fn view(now: f64, boil: f64, cut_out: f64) -> StoreColumnView {
        StoreColumnView {
            low: 20.0,
            high: 300.0,
            now: mark(now),
            band: None,
            boil: Some(mark(boil)),
            melting: Some(ColumnRange {
                from: 215.0,
                to: 225.0,
                label: "melts".into(),
                value: "215 to 225".into(),
            }),
            cut_out: Some(mark(cut_out)),
            sentence: String::new(),
        }
    }

    #[test]
    fn labels_keep_clear_of_each_other_and_inside() {
        for now in [20.0, 119.0, 121.0, 219.0, 300.0, 400.0] {
            let labels = view(now, 120.0, 222.0).labels();
            assert_eq!(labels.len(), 4);
            for pair in labels.windows(2) {
                assert!(LABEL_HEIGHT - 1e-6 <= pair[1].stands_at - pair[0].stands_at);
            }
            assert!(LABEL_HEIGHT / 2.0 - 1e-6 <= labels[0].stands_at);
            assert!(labels[3].stands_at <= DRAWN_HEIGHT - LABEL_HEIGHT / 2.0 + 1e-6);
        }
    }

    #[test]
    fn the_hotter_stands_higher() {
        let labels = view(180.0, 120.0, 280.0).labels();
        let kinds: Vec<_> = labels.iter().map(|placed| placed.kind).collect();
        assert_eq!(kinds, ["cut-out", "melting", "now", "boil"]);
    }
}
