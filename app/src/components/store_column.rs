//! The store, drawn: how hot it is, against what it takes to boil.

use crate::reactive::*;

use super::unique::unique;
use crate::chart::path;
use crate::chart::scale::{Scale, spread};
use crate::order::in_order;

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
const HOLLOW: &str = "M25.7 34Q25.7 29 33.8 28.5L83.7 28Q91.8 28.5 91.8 34L94.5 130 93.2 227Q93.2 233 83.7 233.5L32.4 234Q23 233.5 23.6 227L22.3 120Z";
/// One line of the weave that stands for what is not known.
const HATCH: &str = "M0 0V6";
/// The glow from the foot up to the surface: name and place of each colour.
const GLOW: [(&str, &str); 3] = [
    ("store-column__deep", "0"),
    ("store-column__mid", "0.55"),
    ("store-column__hot", "1"),
];
/// Where a coal glows brighter than those around it.
const EMBERS: [(f64, f64); 9] = [
    (33.0, 222.0),
    (52.0, 205.0),
    (81.0, 216.0),
    (70.0, 186.0),
    (38.0, 172.0),
    (84.0, 148.0),
    (56.0, 132.0),
    (36.0, 104.0),
    (74.0, 84.0),
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
        let marks = in_order(marks, |a, b| b.1.total_cmp(&a.1));
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
                <svg class="store-column__drawing" viewBox="0 0 128 260" aria-hidden="true">
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
fn contents(view: &StoreColumnView, hollow: &str, fill: &str, hatch: &str) -> View {
    let scale = view.scale();
    let url = |name: &str| format!("url(#{name})");
    let surface = scale.at_clamped(view.now.at);
    let rect = |class: &'static str, from: f64, to: f64, paint: Option<String>| {
        let (top, foot) = (scale.at_clamped(to), scale.at_clamped(from));
        view! {
            <rect class=class x="14" y=round(top) width="94" height=round((foot - top).max(0.0)) fill=paint></rect>
        }
    };
    let band = view
        .band
        .map(|(from, to)| rect("store-column__band", from, to, Some(url(hatch))));
    let melting = view
        .melting
        .as_ref()
        .map(|range| rect("store-column__melting", range.from, range.to, None));
    let boil = view.boil.as_ref().map(|boil| {
        let y = scale.at_clamped(boil.at);
        let wave = format!("M14 {y:.1}q5 -6 10 0t10 0 10 0 10 0 10 0 10 0 10 0 10 0 10 0 10 0");
        view! { <path class="store-column__boil" d=wave></path> }
    });
    let cut_out = view.cut_out.as_ref().map(|cut_out| {
        let y = scale.at_clamped(cut_out.at);
        view! { <path class="store-column__cut-out" d=format!("M14 {y:.1}H108")></path> }
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
            let d = format!("M109 {points_at:.1}H113L122 {stands_at:.1}H128");
            view! { <path class="store-column__leader" data-mark=kind d=d></path> }
        })
        .collect_view();
    let embers = path::dots(EMBERS.into_iter().filter(|ember| surface + 8.0 < ember.1));
    let lit = format!("M14 {surface:.1}q12 -4 24 0t24 0 24 0 24 0");
    view! {
        <path class="store-column__clay" d="M13.5 26Q12.2 15 27 14L59.4 12 90.5 13.5Q106.7 14.5 106 26L109.4 96 107.3 170 109.4 236Q108.7 250 90.5 250.5L58.1 252 25.7 250.5Q8.1 250 8.8 236L6.8 150 10.1 88Z"></path>
        <path class="store-column__rim" d="M9.5 25Q8.1 9 27 8.5L60.8 6.5 91.8 8Q110.7 9 108.7 25Q59.4 19 9.5 25Z"></path>
        <path class="store-column__cuts" d="M13.5 98l6.8 3M104 150l-5.4 4M14.9 196l5.4 -3M102.6 74l-5.4 -2M40.5 244l8.1 1.5M78.3 245l6.8 -1.5"></path>
        <g clip-path=url(hollow)>
            <rect class="store-column__hollow" x="14" y="20" width="94" height="220"></rect>
            <rect
                class="store-column__fill"
                x="14"
                y=round(surface)
                width="94"
                height=round((240.0 - surface).max(0.0))
                fill=url(fill)
            ></rect>
            <path class="store-column__embers" d=embers></path>
            {melting}
            {band}
            <path class="store-column__surface" d=lit></path>
            {cut_out}
            {boil}
        </g>
        {leaders}
    }
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
