//! The lines of each drawing, on its grid of 24 by 24.

use super::Icon;

/// A drawing: its lines, the part that is filled, and the part that glows.
pub(super) struct Drawing {
    /// Stroked.
    pub(super) lines: &'static str,
    /// Filled.
    pub(super) solid: &'static str,
    /// Stroked in the colour of ember.
    pub(super) glow: &'static str,
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
    /// How it is drawn.
    pub(super) const fn drawing(self) -> Drawing {
        match self {
            Self::Tonight => Drawing {
                lines: "M4 12.5h16M5.5 12.5l1 6.5q.2 1.5 1.8 1.5h7.4q1.6 0 1.8-1.5l1-6.5M2.5 14.5h3M18.5 14.5h3",
                solid: "M17 2l.8 2.2L20 5l-2.2.8L17 8l-.8-2.2L14 5l2.2-.8z",
                glow: "M8.5 9.5q-1.5-1.5 0-3.2t0-3.3M12 9.5q-1-1.2 0-2.5",
            },
            Self::Diary => glow(
                "M5.5 3.5h12q1.5 0 1.5 1.6v14q0 1.4-1.5 1.4h-12zM8.5 3.5v17M3.5 7.5h4M3.5 12h4M3.5 16.5h4",
                "M13.7 9.7a2.3 2.3 0 1 0 .1 0zM13.7 6.3v1.2M13.7 16.5v1.2M9.9 12h.8M16.7 12h.8",
            ),
            Self::Cooker => glow(
                "M3.5 20.5l.7-11.3q.1-1.2 1.3-1.2h2.3l.9 4.5h6.6l.9-4.5h2.3q1.2 0 1.3 1.2l.7 11.3zM9.5 5.5h5M12 3.5v2",
                "M9 16.7q1-1.3 2 0t2 0 2 0",
            ),
            Self::Bench => glow(
                "M2.5 15.5h19M5 15.5v5M19 15.5v5M8 18h8",
                "M3.5 12q4-.5 6-5t5-3.5q3 .6 6 5.5",
            ),
            Self::More => solid(
                "M3 17.5q-.3-3 3.2-3t3.5 2.8q0 2.4-3.4 2.4-3.2 0-3.3-2.2zM13.5 17.7q0-2.9 3.6-2.9t3.6 2.6-3.5 2.3-3.7-2zM8.3 10.5q-.1-4 4-3.9 3.8.1 3.7 3.4-.2 2.7-3.9 2.7-3.7 0-3.8-2.2z",
                "",
            ),
            Self::Plus => lines("M12 4.5v15M4.5 12h15"),
            Self::Minus => lines("M4.5 12h15"),
            Self::Tick => lines("M4.5 12.8l4.8 5L19.5 6"),
            Self::Cross => lines("M5.5 5.5l13 13M18.5 5.5l-13 13"),
            Self::Onward => lines("M9 5l7 7-7 7"),
            Self::Back => lines("M15 5l-7 7 7 7"),
            Self::Unfold => lines("M5 9l7 7 7-7"),
            Self::Undo => lines("M8.5 4.5L4 9l4.5 4.5M4.5 9h9q6 .3 6 5.5t-6 5.5H8"),
            Self::Pencil => lines("M4 20l1-4.5L16.5 4l3.5 3.5L8.5 19zM14 6.5l3.5 3.5"),
            Self::Bin => lines(
                "M5 8l1.3 12.5h11.4L19 8M3.5 6.5q8.5-2 17 0M10 5V3.5h4V5M10 11.5v5.5M14 11.5v5.5",
            ),
            Self::Note => lines("M6 3.5h9l3.5 3.5v13.5H6zM9 10h6M9 13.5h6M9 17h3.5"),
            Self::Alarm => solid(
                "M12 3.5l9 16.5q-9 1.5-18 0zM12 9.5v5",
                "M12 16.5a1.2 1.2 0 1 0 .1 0z",
            ),
            Self::About => solid(
                "M12 3q9 .3 9 8.7 0 9.3-9 9.3t-9-9Q3 3 12 3zM12 11v6",
                "M12 6.3a1.3 1.3 0 1 0 .1 0z",
            ),
            Self::Copy => lines("M8.5 7.5h11v13h-11zM5.5 16.5h-1v-13h11v1"),
            Self::Keep => lines("M12 3.5V14M7.5 10l4.5 4.5 4.5-4.5M4 15.5V20q8 1.2 16 0v-4.5"),
            Self::Fetch => lines("M12 14.5V4M7.5 8L12 3.5 16.5 8M4 15.5V20q8 1.2 16 0v-4.5"),
            Self::Print => lines("M7 8.5v-5h10v5M7 16.5H4q-.8-4 0-8h16q.8 4 0 8h-3M7 13.5h10v7H7z"),
            Self::Compare => {
                lines("M3.5 20.5l.6-9h5.8l.6 9zM13.5 20.5l.8-16h5.4l.8 16zM5 8.5h4M2.5 20.5h19")
            }
            Self::Languages => {
                lines("M12 3a9 9 0 1 0 .1 0zM3.2 12h17.6M12 3q-8 9 0 18M12 3q8 9 0 18")
            }
            Self::Look => lines("M10.5 4a6.5 6.5 0 1 0 .1 0zM15.5 15.5l5 5"),
            Self::Household => glow(
                "M3.5 11.5L12 4l8.5 7.5M5.5 10v10.5h13V10",
                "M10 20v-5.5h4V20",
            ),
            Self::People => lines(
                "M8 5.5a2.7 2.7 0 1 0 .1 0zM16.5 7.5a2.2 2.2 0 1 0 .1 0zM3 19.5q.3-6 5-6t5 6M14.5 14.5q5.7-1.6 6.5 5",
            ),
            Self::Clock => lines("M12 3.5a8.5 8.5 0 1 0 .1 0zM12 7.5V12l3.5 2.5"),
            Self::PotBoils => Drawing {
                lines: "M3.5 11.5h17M5 11.5l1 7.5q.2 1.5 1.8 1.5h8.4q1.6 0 1.8-1.5l1-7.5M2 13.5h3M19 13.5h3",
                solid: "M8.3 14a.9.9 0 1 0 .1 0zM12.8 13.4a1.2 1.2 0 1 0 .1 0zM15.6 15.8a.9.9 0 1 0 .1 0zM10.7 17a1.1 1.1 0 1 0 .1 0zM14.2 18.3a.7.7 0 1 0 .1 0z",
                glow: "M8 9q-2-2 0-3.5T8 2M12.3 9q-2-2 0-3.5t0-3.5M16.6 9q-2-2 0-3.5t0-3.5",
            },
            Self::PotSteams => Drawing {
                lines: "M3.5 11.5h17M5 11.5l1 7.5q.2 1.5 1.8 1.5h8.4q1.6 0 1.8-1.5l1-7.5M2 13.5h3M19 13.5h3",
                solid: "",
                glow: "M9.5 9q-2-2 0-3.5t0-3M14.5 9q-2-2 0-3.5t0-3M7.7 16q1.1-1.4 2.2 0t2.2 0 2.2 0 2.2 0",
            },
            Self::PotSimmers => Drawing {
                lines: "M3.5 11.5h17M5 11.5l1 7.5q.2 1.5 1.8 1.5h8.4q1.6 0 1.8-1.5l1-7.5M2 13.5h3M19 13.5h3M9.5 5.2q0-2.7 2.6-2.7t2.6 2.3q0 1.3-1.3 1.9t-1.2 1.5",
                solid: "M12.1 9a.7.7 0 1 0 .1 0z",
                glow: "M8.5 16.5q1.2-1.3 2.4 0t2.4 0 2.4 0",
            },
            Self::PotCold => lines(
                "M3.5 11.5h17M5 11.5l1 7.5q.2 1.5 1.8 1.5h8.4q1.6 0 1.8-1.5l1-7.5M2 13.5h3M19 13.5h3M5 9.5q7-5 14 0M12 7V5M8.5 16h7",
            ),
            Self::LidOpen => glow(
                "M3.5 12.5h17M5 12.5l1 6.5q.2 1.5 1.8 1.5h8.4q1.6 0 1.8-1.5l1-6.5M9 6q5.5-5.5 12-1.5M14.5 3l-.7-1.5",
                "M6 10q-1.5-1.5 0-3t0-3",
            ),
            Self::PotSmaller => lines(
                "M2.5 9.5h11M3.5 9.5l.7 9.5q.1 1.5 1.3 1.5h5q1.2 0 1.3-1.5l.7-9.5M15 14h7M15.7 14l.5 5.2q.1 1.3 1 1.3h2.6q.9 0 1-1.3l.5-5.2M18.5 4.5v6M16 8l2.5 2.7L21 8",
            ),
            Self::Bowl => glow(
                "M3 11.5h18q-.5 7-6 8.5H9q-5.5-1.5-6-8.5zM15 9l5-6",
                "M8 8.5q-1.5-1.5 0-3t0-2.5M12 8.5q-1.5-1.5 0-3",
            ),
            Self::Beans => lines(
                "M4 9q-.5-4.5 3.5-4.5 3.5 0 3 2.5-.3 1.6-2 1.7-1.3.1-1.2 1.6Q7 12 5.5 12T4 9zM13.5 18.5q-4-.5-3.5-3.5.5-2.5 2.5-2 1.5.4 2.3-.8.9-1.4 2.7-.9 2.7.9 1 4.3-1.5 3-5 2.9zM15.5 7.5q0-3 2.5-3 2.7 0 2.5 2.7-.2 2-1.8 2.3-3.2.4-3.2-2z",
            ),
            Self::Soak => glow(
                "M4 5l1.3 14q.1 1.5 1.7 1.5h10q1.6 0 1.7-1.5L20 5M9 14q-.3-2 1.3-2t1.3 1.8-1.3 1.8T9 14zM13 17q-.2-2 1.3-2t1.3 1.7-1.3 1.6T13 17z",
                "M4.7 9q1.8-1.5 3.6 0t3.7 0 3.7 0 3.6 0",
            ),
            Self::Water => {
                lines("M12 3q7 8 6.5 12.5-.6 5-6.5 5t-6.5-5Q5 11 12 3zM8.7 15.5q.3 2.3 2.8 2.6")
            }
            Self::WarmWater => glow(
                "M9 5q5.5 6.5 5.2 10.3-.5 4.7-5.2 4.7t-5.2-4.7Q3.5 11.5 9 5z",
                "M17 11q-1.5-1.7 0-3.5t0-3.5M20.5 11q-1.5-1.7 0-3.5t0-3.5",
            ),
            Self::Flame => glow(
                "M12 2.5q1 4 4 6.5 3 3 2.5 6.5-.8 5-6.5 5t-6.5-5q-.4-3.5 2.5-6 .3 2 1.5 2.5Q9 6 12 2.5z",
                "M12 13.5q2.5 2.5 2 4-.5 1.2-2 1.2t-2-1.2q-.5-1.5 2-4z",
            ),
            Self::Ember => glow(
                "M4 17q-1-5 3-7.5 4.5-3 9.5-.5 4.5 2.5 3.5 7.5-2 4-8 4t-8-3.5z",
                "M8 16l2.5-2.5L13 15.5l3-3M9.5 6.5q-1-1.3 0-2.7M14 5.5q-1-1.3 0-2.5",
            ),
            Self::Thermometer => glow(
                "M9.5 14V5q0-2.5 2.5-2.5T14.5 5v9q2.5 1.8 1.5 4.5-1 2.5-4 2.5t-4-2.5q-1-2.7 1.5-4.5zM17.5 6h2.5M17.5 10h2",
                "M12 9v7.5M11 18q1 .8 2 0",
            ),
            Self::Weight => {
                lines("M4 20.5l1.5-8h13l1.5 8zM12 12.5V9M5 5.5q.5 3.5 7 3.5t7-3.5zM9.5 16.5h5")
            }
            Self::SunClear => glow(
                "M12 1.7v3.1M12 19.2v3.1M1.7 12h3.1M19.2 12h3.1M4.7 4.7l2.2 2.2M17.1 17.1l2.2 2.2M4.7 19.3l2.2-2.2M17.1 6.9l2.2-2.2",
                "M12 7.5a4.5 4.5 0 1 0 .1 0z",
            ),
            Self::SunHaze => glow(
                "M2.5 14h19M4.5 17.5h15M7.5 21h9M12 2v2.5M4.5 5l1.8 1.8M19.5 5l-1.8 1.8",
                "M7.3 11.5a4.7 4.7 0 0 1 9.4 0",
            ),
            Self::SunBroken => glow(
                "M7 20.5q-4-.2-4-3.5t3.5-3.5q1-3.5 4.7-3.5t4.6 3.7q4 .3 4 3.5 0 3.3-3.8 3.3zM15.5 2v1.8M21.5 8h-1.7M19.8 3.7l-1.3 1.3",
                "M12 6.5q1.2-1.7 3.5-1.5 3.3.5 3.3 3.8 0 1.2-.7 2.2",
            ),
            Self::Overcast => {
                lines("M6.5 18.5q-4-.2-4-3.7t3.7-3.6q1-4.7 5.8-4.7t5.7 4.8q3.8.3 3.8 3.7t-4 3.5z")
            }
            Self::Rain => lines(
                "M6.5 14.5q-4-.2-4-3.5t3.7-3.4q1-4.3 5.8-4.3t5.7 4.5q3.8.3 3.8 3.4t-4 3.3zM8 17.5l-1 3M12.5 17.5l-1 3M17 17.5l-1 3",
            ),
            Self::Moon => {
                lines("M19.5 14.5Q17.5 20.5 11.5 20.5 4 20 4 12.5 4 6 10 3.5q-2 5.5 1.5 9t8 2z")
            }
            Self::Unset => lines(
                "M12 4.5h.1M17.3 6.7h.1M19.5 12h.1M17.3 17.3h.1M12 19.5h.1M6.7 17.3h.1M4.5 12h.1M6.7 6.7h.1",
            ),
            Self::Panel => glow(
                "M5.5 10.5h15l-2.5 7H2.5zM8 10.5l-1.8 7M13 10.5l-1.3 7M4 14h15.2M10.5 17.5l-1 3.5h5",
                "M17 2.5a2.3 2.3 0 1 0 .1 0z",
            ),
            Self::Heater => glow(
                "M2 12h3M19 12h3",
                "M5 12q1-6 2.3-6t1.7 6 1.5 6 1.5-6 1.5-6 1.5 6 1.7 6 2.3-6",
            ),
            Self::HeaterOff => lines(
                "M2 12h3M19 12h3M5 12q1-6 2.3-6t1.7 6 1.5 6 1.5-6 1.5-6 1.5 6 1.7 6 2.3-6M4 20.5L20 3.5",
            ),
            Self::Jacket => glow(
                "M4 20q-2-1.5-1-4-1.5-2 0-4Q1.5 9.5 4 8q0-3 3-3 1.5-2.5 5-1.5 3.5-1 5 1.5 3 0 3 3 2.5 1.5 1 4 1.5 2 0 4 1 2.5-1 4",
                "M8 20.5v-10h8v10z",
            ),
            Self::Coin => lines(
                "M12 3.5q8.5.3 8.5 8.5t-8.5 8.5-8.5-8.5 8.5-8.5zM9 9.5q3-2.5 6 0M9 14.5q3 2.5 6 0M12 6.5v11",
            ),
            Self::HotHand => glow(
                "M7 15V8.5q0-1.2 1-1.2t1 1.2V6q0-1.2 1.1-1.2T11.2 6V5q0-1.2 1.1-1.2T13.4 5v1.5q0-1.1 1-1.1t1 1.2v5l1.2-1.9q.8-1 1.7-.4.8.6.3 1.7L15.5 15z",
                "M5.5 21q-1-1.2 0-2.5M10 21q-1-1.2 0-2.5M14.5 21q-1-1.2 0-2.5M19 21q-1-1.2 0-2.5",
            ),
            Self::Alight => glow(
                "M3 20.5q2-3 0-6t0-5.5h8M3 20.5h17l-1.5-4",
                "M15.5 3.5q.8 3 2.8 5t1.5 4.3q-.8 2.7-4.3 2.7t-4.3-2.7q-.3-2.3 1.5-3.8.3 1 1 1.3-.2-4 1.8-6.8z",
            ),
            Self::Salt => glow(
                "M8 3.5l5 3v6l-5 3-5-3v-6zM3 6.5l5 3 5-3M8 9.5v6",
                "M17.5 11q2.5 3.2 2.3 5-.3 2.2-2.3 2.2t-2.3-2.2q-.2-1.8 2.3-5zM4 20.5h16.5",
            ),
            Self::Valve => glow(
                "M4.5 11q7.5-5 15 0v9.5h-15zM3 14h18M10.5 8.3V5.5h3v2.8",
                "M12 3.5V1.5M8.5 4.5L7 3M15.5 4.5L17 3",
            ),
            Self::Bolt => solid("M13.5 2.5L5 13.5h6L9.5 21.5 19 9.5h-6.5z", ""),
            Self::KeepHot => glow(
                "M3 18.5h18M4.5 16q.5-8 7.5-8t7.5 8zM12 8V6",
                "M7.5 4.5q-1-1.2 0-2.5M16.5 4.5q-1-1.2 0-2.5",
            ),
        }
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
