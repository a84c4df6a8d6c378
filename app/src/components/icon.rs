//! Every drawing of the app, cut by hand on a grid of 24 by 24.
//!
//! Lines take the colour of the text beside them; embers keep their own. A drawing never stands
//! alone: words beside it, or a label on its button, say the same.

mod drawing;

use crate::reactive::*;

use drawing::Drawing;

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

impl Icon {
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
    let class = if icon.turns() {
        "glyph glyph--turns"
    } else {
        "glyph"
    };
    let part = |class: &'static str, d: &'static str| {
        (!d.is_empty()).then(|| view! { <path class=class d=d></path> })
    };
    view! {
        <svg
            class=class
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
