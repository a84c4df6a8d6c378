//! Every drawing of the app, cut by hand on a grid of 24 by 24.
//!
//! Lines take the colour of the text beside them; embers keep their own. A drawing never stands
//! alone: words beside it, or a label on its button, say the same.

use leptos::prelude::*;

/// What can be drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Icon {
    /// A pot under the evening star.
    Tonight,
    /// A tied notebook with a sun on it.
    Diary,
    /// A clay block with its pot hole and a coal inside.
    Cooker,
    /// A bench with a curve over it.
    Bench,
    /// Three river stones.
    More,
    /// A plus.
    Plus,
    /// A minus.
    Minus,
    /// A tick.
    Tick,
    /// A cross.
    Cross,
    /// Points the way reading goes.
    Onward,
    /// Points against the way reading goes.
    Back,
    /// Points down: there is more under here.
    Unfold,
    /// An arrow that turns back.
    Undo,
    /// A knife-cut pencil.
    Pencil,
    /// A clay bin with a lid.
    Bin,
    /// A sheet with lines.
    Note,
    /// A bell-shaped alarm with a stroke.
    Alarm,
    /// An i in a stone.
    About,
    /// Two sheets: a copy.
    Copy,
    /// An arrow into a tray.
    Keep,
    /// An arrow out of a tray.
    Fetch,
    /// A page from a press.
    Print,
    /// Two builds side by side.
    Compare,
    /// A globe with two meridians.
    Languages,
    /// A magnifying glass.
    Look,
    /// A house in the hills.
    Household,
    /// People around a pot.
    People,
    /// A clock face.
    Clock,
    /// A pot that boils over with bubbles and steam.
    PotBoils,
    /// A pot in steam.
    PotSteams,
    /// A pot with one bubble and a question's curl.
    PotSimmers,
    /// A pot with a closed lid, no steam.
    PotCold,
    /// A pot with its lid lifted.
    LidOpen,
    /// A smaller pot beside a larger.
    PotSmaller,
    /// A bowl that is eaten from.
    Bowl,
    /// Beans in a row.
    Beans,
    /// Beans under water.
    Soak,
    /// A drop.
    Water,
    /// A drop with rising warmth.
    WarmWater,
    /// A flame.
    Flame,
    /// A coal that glows.
    Ember,
    /// A thermometer.
    Thermometer,
    /// A scale with a bowl.
    Weight,
    /// A clear sun with long rays.
    SunClear,
    /// A sun behind streaks.
    SunHaze,
    /// A sun half behind a cloud.
    SunBroken,
    /// A closed cloud.
    Overcast,
    /// A cloud with rain.
    Rain,
    /// A crescent.
    Moon,
    /// A dotted ring: not told yet.
    Unset,
    /// A panel on its stand.
    Panel,
    /// A coil: the heater.
    Heater,
    /// A heater with a stroke: switched off.
    HeaterOff,
    /// A jacket of fluff around a core.
    Jacket,
    /// A coin.
    Coin,
    /// A hand over rising heat: burns.
    HotHand,
    /// Cloth in flame: sets alight.
    Alight,
    /// A crystal with drops: molten salt.
    Salt,
    /// A lid with a whistle: needs a relief valve.
    Valve,
    /// A bolt: live in the sun.
    Bolt,
    /// A plate under a cover with a clock: keep hot or cool fast.
    KeepHot,
}

/// A drawing: its lines, the part that is filled, and the part that glows.
struct Drawing {
    lines: &'static str,
    solid: &'static str,
    glow: &'static str,
}

const fn lines(lines: &'static str) -> Drawing {
    Drawing {
        lines,
        solid: "",
        glow: "",
    }
}

const fn solid(lines: &'static str, solid: &'static str) -> Drawing {
    Drawing {
        lines,
        solid,
        glow: "",
    }
}

const fn glow(lines: &'static str, glow: &'static str) -> Drawing {
    Drawing {
        lines,
        solid: "",
        glow,
    }
}

impl Icon {
    const fn drawing(self) -> Drawing {
        match self {
            Self::Tonight => Drawing {
                lines: "M4 12.5h16M5.5 12.5l1 6.5q.2 1.5 1.8 1.5h7.4q1.6 0 1.8-1.5l1-6.5M2.5 14.5h3M18.5 14.5h3",
                solid: "M17 2l.8 2.2L20 5l-2.200.8L17 8l-.8-2.200L14 5l2.200-.8z",
                glow: "M8.500 9.500q-1.500-1.500 0-3.200t0-3.300M12 9.500q-1-1.200 0-2.500",
            },
            Self::Diary => glow(
                "M5.500 3.500h12q1.500 0 1.500 1.600v14q0 1.400-1.500 1.400h-12zM8.500 3.500v17M3.500 7.500h4M3.500 12h4M3.500 16.500h4",
                "M13.700 9.700a2.300 2.300 0 1 0 .1 0zM13.700 6.300v1.200M13.700 16.500v1.200M9.900 12h.8M16.700 12h.8",
            ),
            Self::Cooker => glow(
                "M3.500 20.500l.7-11.300q.1-1.200 1.300-1.200h2.300l.9 4.500h6.600l.9-4.500h2.300q1.200 0 1.300 1.200l.7 11.300zM9.500 5.500h5M12 3.500v2",
                "M9 16.700q1-1.300 2 0t2 0 2 0",
            ),
            Self::Bench => glow(
                "M2.500 15.500h19M5 15.500v5M19 15.500v5M8 18h8",
                "M3.500 12q4-.5 6-5t5-3.500q3 .6 6 5.500",
            ),
            Self::More => solid(
                "M3 17.500q-.3-3 3.200-3t3.500 2.800q0 2.400-3.400 2.400-3.200 0-3.300-2.200zM13.500 17.700q0-2.900 3.600-2.900t3.600 2.600-3.500 2.300-3.700-2zM8.300 10.500q-.1-4 4-3.900 3.800.1 3.700 3.400-.2 2.700-3.900 2.700-3.700 0-3.800-2.200z",
                "",
            ),
            Self::Plus => lines("M12 4.500v15M4.500 12h15"),
            Self::Minus => lines("M4.500 12h15"),
            Self::Tick => lines("M4.500 12.800l4.800 5L19.500 6"),
            Self::Cross => lines("M5.500 5.500l13 13M18.500 5.500l-13 13"),
            Self::Onward => lines("M9 5l7 7-7 7"),
            Self::Back => lines("M15 5l-7 7 7 7"),
            Self::Unfold => lines("M5 9l7 7 7-7"),
            Self::Undo => lines("M8.500 4.500L4 9l4.500 4.500M4.500 9h9q6 .3 6 5.500t-6 5.500H8"),
            Self::Pencil => {
                lines("M4 20l1-4.500L16.500 4l3.500 3.500L8.500 19zM14 6.500l3.500 3.500")
            }
            Self::Bin => lines(
                "M5 8l1.300 12.500h11.400L19 8M3.500 6.500q8.500-2 17 0M10 5V3.500h4V5M10 11.500v5.500M14 11.500v5.500",
            ),
            Self::Note => lines("M6 3.500h9l3.500 3.500v13.500H6zM9 10h6M9 13.500h6M9 17h3.500"),
            Self::Alarm => solid(
                "M12 3.500l9 16.500q-9 1.500-18 0zM12 9.500v5",
                "M12 16.500a1.200 1.200 0 1 0 .1 0z",
            ),
            Self::About => solid(
                "M12 3q9 .3 9 8.700 0 9.300-9 9.300t-9-9Q3 3 12 3zM12 11v6",
                "M12 6.300a1.300 1.300 0 1 0 .1 0z",
            ),
            Self::Copy => lines("M8.500 7.500h11v13h-11zM5.500 16.500h-1v-13h11v1"),
            Self::Keep => lines(
                "M12 3.500V14M7.500 10l4.500 4.500 4.500-4.500M4 15.500V20q8 1.200 16 0v-4.500",
            ),
            Self::Fetch => {
                lines("M12 14.500V4M7.500 8L12 3.500 16.500 8M4 15.500V20q8 1.200 16 0v-4.500")
            }
            Self::Print => {
                lines("M7 8.500v-5h10v5M7 16.500H4q-.8-4-.0-8h16q.8 4 0 8h-3M7 13.500h10v7H7z")
            }
            Self::Compare => lines(
                "M3.500 20.500l.6-9h5.800l.6 9zM13.500 20.500l.8-16h5.400l.8 16zM5 8.500h4M2.500 20.500h19",
            ),
            Self::Languages => {
                lines("M12 3a9 9 0 1 0 .1 0zM3.200 12h17.600M12 3q-8 9 0 18M12 3q8 9 0 18")
            }
            Self::Look => lines("M10.500 4a6.500 6.500 0 1 0 .1 0zM15.500 15.500l5 5"),
            Self::Household => glow(
                "M3.500 11.500L12 4l8.500 7.500M5.500 10v10.500h13V10",
                "M10 20v-5.500h4V20",
            ),
            Self::People => lines(
                "M8 5.500a2.700 2.700 0 1 0 .1 0zM16.500 7.500a2.200 2.200 0 1 0 .1 0zM3 19.500q.3-6 5-6t5 6M14.500 14.500q5.700-1.600 6.500 5",
            ),
            Self::Clock => lines("M12 3.500a8.500 8.500 0 1 0 .1 0zM12 7.500V12l3.500 2.500"),
            Self::PotBoils => Drawing {
                lines: "M3.500 11.500h17M5 11.500l1 7.500q.2 1.500 1.800 1.500h8.400q1.600 0 1.800-1.500l1-7.500M2 13.500h3M19 13.500h3",
                solid: "M9 13.500a1.200 1.200 0 1 0 .1 0zM14.500 13.200a1.500 1.500 0 1 0 .1 0zM11.700 16.700a1.200 1.200 0 1 0 .1 0z",
                glow: "M8 9q-2-2 0-3.500T8 2M12.300 9q-2-2 0-3.500t0-3.500M16.600 9q-2-2 0-3.500t0-3.500",
            },
            Self::PotSteams => Drawing {
                lines: "M3.500 11.500h17M5 11.500l1 7.500q.2 1.500 1.800 1.500h8.400q1.600 0 1.800-1.500l1-7.500M2 13.500h3M19 13.500h3",
                solid: "M9.500 15a1.200 1.200 0 1 0 .1 0zM14.500 15a1.200 1.200 0 1 0 .1 0z",
                glow: "M9.500 9q-2-2 0-3.500t0-3M14.500 9q-2-2 0-3.500t0-3",
            },
            Self::PotSimmers => Drawing {
                lines: "M3.500 11.500h17M5 11.500l1 7.500q.2 1.500 1.800 1.500h8.400q1.600 0 1.800-1.500l1-7.500M2 13.500h3M19 13.500h3M9.500 5.200q0-2.700 2.600-2.700t2.600 2.300q0 1.300-1.300 1.900t-1.200 1.500",
                solid: "M12.100 9a.7.7 0 1 0 .1 0z",
                glow: "M8.500 16.500q1.200-1.300 2.400 0t2.400 0 2.400 0",
            },
            Self::PotCold => lines(
                "M3.500 11.500h17M5 11.500l1 7.500q.2 1.500 1.800 1.500h8.400q1.600 0 1.800-1.500l1-7.500M2 13.500h3M19 13.500h3M5 9.500q7-5 14 0M12 7V5M8.500 16h7",
            ),
            Self::LidOpen => glow(
                "M3.500 12.500h17M5 12.500l1 6.500q.2 1.500 1.800 1.500h8.400q1.600 0 1.800-1.500l1-6.500M9 6q5.500-5.500 12-1.500M14.500 3l-.7-1.500",
                "M6 10q-1.500-1.500 0-3t0-3",
            ),
            Self::PotSmaller => lines(
                "M2.500 9.500h11M3.500 9.500l.7 9.500q.1 1.500 1.300 1.500h5q1.200 0 1.300-1.500l.7-9.500M15 14h7M15.700 14l.5 5.200q.1 1.300 1 1.300h2.600q.9 0 1-1.300l.5-5.200M18.500 4.500v6M16 8l2.500 2.700L21 8",
            ),
            Self::Bowl => glow(
                "M3 11.500h18q-.5 7-6 8.500H9q-5.500-1.500-6-8.500zM15 9l5-6",
                "M8 8.500q-1.500-1.500 0-3t0-2.500M12 8.500q-1.500-1.500 0-3",
            ),
            Self::Beans => lines(
                "M4 9q-.5-4.500 3.500-4.500 3.500 0 3 2.500-.3 1.600-2 1.700-1.300.1-1.200 1.600Q7 12 5.500 12T4 9zM13.500 18.500q-4-.5-3.500-3.500.5-2.500 2.500-2 1.500.4 2.300-.8.900-1.400 2.700-.9 2.700.9 1 4.300-1.500 3-5 2.900zM15.500 7.500q0-3 2.500-3 2.700 0 2.500 2.700-.2 2-1.800 2.300-3.200.4-3.200-2z",
            ),
            Self::Soak => glow(
                "M4 5l1.300 14q.1 1.500 1.700 1.500h10q1.600 0 1.700-1.500L20 5M9 14q-.3-2 1.300-2t1.300 1.800-1.300 1.800T9 14zM13 17q-.2-2 1.300-2t1.300 1.700-1.300 1.600T13 17z",
                "M4.700 9q1.800-1.500 3.600 0t3.700 0 3.700 0 3.600 0",
            ),
            Self::Water => lines(
                "M12 3q7 8 6.500 12.500-.6 5-6.500 5t-6.500-5Q5 11 12 3zM8.700 15.500q.3 2.300 2.800 2.600",
            ),
            Self::WarmWater => glow(
                "M9 5q5.500 6.500 5.200 10.300-.5 4.700-5.200 4.700t-5.200-4.700Q3.500 11.500 9 5z",
                "M17 11q-1.500-1.700 0-3.500t0-3.500M20.500 11q-1.500-1.700 0-3.500t0-3.500",
            ),
            Self::Flame => glow(
                "M12 2.500q1 4 4 6.500 3 3 2.500 6.500-.8 5-6.500 5t-6.500-5q-.4-3.500 2.500-6 .3 2 1.500 2.500Q9 6 12 2.500z",
                "M12 13.500q2.500 2.500 2 4-.5 1.200-2 1.200t-2-1.200q-.5-1.500 2-4z",
            ),
            Self::Ember => glow(
                "M4 17q-1-5 3-7.500 4.500-3 9.500-.5 4.500 2.500 3.500 7.500-2 4-8 4t-8-3.500z",
                "M8 16l2.500-2.500L13 15.500l3-3M9.500 6.500q-1-1.300 0-2.700M14 5.500q-1-1.300 0-2.500",
            ),
            Self::Thermometer => glow(
                "M9.500 14V5q0-2.500 2.500-2.500T14.500 5v9q2.500 1.800 1.500 4.500-1 2.500-4 2.500t-4-2.500q-1-2.700 1.500-4.500zM17.500 6h2.500M17.500 10h2",
                "M12 9v7.500M11 18q1 .8 2 0",
            ),
            Self::Weight => lines(
                "M4 20.500l1.500-8h13l1.500 8zM12 12.500V9M5 5.500q.5 3.500 7 3.500t7-3.500zM9.500 16.500h5",
            ),
            Self::SunClear => glow(
                "M12 1.700v3.100M12 19.200v3.100M1.700 12h3.100M19.200 12h3.100M4.700 4.700l2.200 2.200M17.100 17.100l2.200 2.200M4.700 19.300l2.200-2.200M17.100 6.900l2.200-2.200",
                "M12 7.500a4.500 4.500 0 1 0 .1 0z",
            ),
            Self::SunHaze => glow(
                "M2.500 14h19M4.500 17.500h15M7.500 21h9M12 2v2.500M4.500 5l1.800 1.800M19.500 5l-1.800 1.800",
                "M7.300 11.500a4.700 4.700 0 0 1 9.400 0",
            ),
            Self::SunBroken => glow(
                "M7 20.500q-4-.2-4-3.500t3.500-3.500q1-3.500 4.700-3.500t4.600 3.700q4 .3 4 3.500 0 3.300-3.800 3.300zM15.500 2v1.800M21.500 8h-1.700M19.800 3.700l-1.300 1.300",
                "M12 6.500q1.200-1.700 3.500-1.500 3.300.5 3.300 3.800 0 1.200-.7 2.200",
            ),
            Self::Overcast => lines(
                "M6.500 18.500q-4-.2-4-3.700t3.700-3.600q1-4.700 5.800-4.700t5.700 4.800q3.800.3 3.800 3.700t-4 3.500z",
            ),
            Self::Rain => lines(
                "M6.500 14.500q-4-.2-4-3.500t3.700-3.400q1-4.300 5.800-4.300t5.700 4.500q3.800.3 3.800 3.400t-4 3.300zM8 17.500l-1 3M12.500 17.500l-1 3M17 17.500l-1 3",
            ),
            Self::Moon => lines(
                "M19.500 14.500Q17.500 20.500 11.500 20.500 4 20 4 12.500 4 6 10 3.500q-2 5.500 1.500 9t8 2z",
            ),
            Self::Unset => lines(
                "M12 4.500h.1M17.300 6.700h.1M19.500 12h.1M17.300 17.300h.1M12 19.500h.1M6.700 17.300h.1M4.500 12h.1M6.700 6.700h.1",
            ),
            Self::Panel => glow(
                "M5.500 10.500h15l-2.500 7H2.500zM8 10.500l-1.800 7M13 10.500l-1.300 7M4 14h15.200M10.500 17.500l-1 3.500h5",
                "M17 2.500a2.300 2.300 0 1 0 .1 0z",
            ),
            Self::Heater => glow(
                "M2 12h3M19 12h3",
                "M5 12q1-6 2.300-6t1.700 6 1.500 6 1.500-6 1.500-6 1.500 6 1.700 6 2.300-6",
            ),
            Self::HeaterOff => lines(
                "M2 12h3M19 12h3M5 12q1-6 2.300-6t1.700 6 1.500 6 1.500-6 1.500-6 1.500 6 1.700 6 2.300-6M4 20.500L20 3.500",
            ),
            Self::Jacket => glow(
                "M4 20q-2-1.500-1-4-1.500-2 0-4Q1.500 9.500 4 8q0-3 3-3 1.500-2.500 5-1.500 3.500-1 5 1.500 3 0 3 3 2.500 1.500 1 4 1.500 2 0 4 1 2.500-1 4",
                "M8 20.500v-10h8v10z",
            ),
            Self::Coin => lines(
                "M12 3.500q8.500.3 8.500 8.500t-8.500 8.500-8.500-8.500 8.500-8.500zM9 9.500q3-2.500 6 0M9 14.500q3 2.500 6 0M12 6.500v11",
            ),
            Self::HotHand => glow(
                "M7 15V8.500q0-1.200 1-1.200t1 1.200V6q0-1.200 1.100-1.200T11.200 6V5q0-1.200 1.100-1.200T13.400 5v1.500q0-1.100 1-1.100t1 1.200v5l1.200-1.900q.8-1 1.700-.4.800.6.300 1.700L15.500 15z",
                "M5.500 21q-1-1.200 0-2.500M10 21q-1-1.200 0-2.500M14.500 21q-1-1.200 0-2.500M19 21q-1-1.200 0-2.500",
            ),
            Self::Alight => glow(
                "M3 20.500q2-3 0-6t0-5.500h8M3 20.500h17l-1.500-4",
                "M15.500 3.500q.8 3 2.800 5t1.500 4.300q-.8 2.700-4.300 2.700t-4.300-2.700q-.3-2.300 1.500-3.800.3 1 1 1.300-.2-4 1.800-6.800z",
            ),
            Self::Salt => glow(
                "M8 3.500l5 3v6l-5 3-5-3v-6zM3 6.500l5 3 5-3M8 9.500v6",
                "M17.500 11q2.500 3.200 2.300 5-.3 2.200-2.300 2.200t-2.300-2.200q-.2-1.800 2.300-5zM4 20.500h16.500",
            ),
            Self::Valve => glow(
                "M4.500 11q7.500-5 15 0v9.500h-15zM3 14h18M10.500 8.300V5.500h3v2.800",
                "M12 3.500V1.500M8.500 4.500L7 3M15.500 4.500L17 3",
            ),
            Self::Bolt => solid("M13.500 2.500L5 13.500h6L9.500 21.500 19 9.500h-6.500z", ""),
            Self::KeepHot => glow(
                "M3 18.500h18M4.500 16q.5-8 7.500-8t7.500 8zM12 8V6",
                "M7.500 4.500q-1-1.200 0-2.500M16.500 4.500q-1-1.200 0-2.500",
            ),
        }
    }

    /// True where the drawing points along the line of reading, so that it turns with it.
    const fn turns(self) -> bool {
        matches!(self, Self::Onward | Self::Back | Self::Undo)
    }
}

/// Draws an icon as large as the text beside it asks for.
#[component]
pub fn Glyph(
    /// What to draw.
    icon: Icon,
) -> impl IntoView {
    let Drawing { lines, solid, glow } = icon.drawing();
    let part = |class: &'static str, d: &'static str| {
        (!d.is_empty()).then(|| view! { <path class=class d=d></path> })
    };
    view! {
        <svg
            class="glyph"
            class:glyph--turns=icon.turns()
            viewBox="0 0 24 24"
            aria-hidden="true"
            focusable="false"
        >
            {part("glyph__glow", glow)}
            {part("glyph__lines", lines)}
            {part("glyph__solid", solid)}
        </svg>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A path starts with a move, and holds only letters of commands, digits, signs and spaces.
    #[test]
    fn paths_are_well_formed() {
        let drawn = [
            Icon::Tonight,
            Icon::Diary,
            Icon::Cooker,
            Icon::Bench,
            Icon::More,
            Icon::PotBoils,
            Icon::PotSimmers,
            Icon::HotHand,
            Icon::Salt,
            Icon::SunBroken,
            Icon::Beans,
        ];
        for icon in drawn {
            let Drawing { lines, solid, glow } = icon.drawing();
            for path in [lines, solid, glow]
                .into_iter()
                .filter(|path| !path.is_empty())
            {
                assert!(path.starts_with('M'), "{icon:?}");
                assert!(
                    path.chars()
                        .all(|sign| "MmLlHhVvQqTtAaZz0123456789.- ".contains(sign)),
                    "{icon:?}"
                );
            }
        }
    }
}
