//! A cooker as a household describes it: its parts, before any physics.

use serde::{Deserialize, Serialize};

use crate::carry::CarriedCan;
use crate::concentrator::Concentrator;
use crate::error::ModelError;
use crate::filling::{Filling, Fins};
use crate::jacket::Jacket;
use crate::local_time::Day;
use crate::media::{Chemistry, Medium};
use crate::panel::{Array, Datasheet, Element, Heater, PanelError, Taps};
use crate::pot::Pot;
use crate::seat::Seat;

/// Everything that describes one cooker.
#[derive(Debug, Clone, PartialEq)]
pub struct Cooker {
    /// The photovoltaic modules.
    pub panels: Panels,
    /// The resistor and how it hangs on the panel.
    pub heater: Heater,
    /// What holds the heat.
    pub store: Store,
    /// What keeps it in.
    pub jacket: Jacket,
    /// How a pot meets the store.
    pub contact: Contact,
    /// The pot that is used most.
    pub pot: Pot,
    /// Dry loss of its pots over what their kind says: 1 where it was not measured.
    pub pot_loss_share: f64,
    /// What else charges it than one element on the panels.
    pub charging: Charging,
    /// How it comes to the kitchen, where it is charged elsewhere.
    pub carried: Option<Carried>,
    /// How well what was measured on it is known.
    pub spreads: Spreads,
}

/// How well what was measured on a cooker is known: one standard deviation of each figure as a share
/// of it. `None` where nothing was measured, or nobody said how well; then the doubt is that of the
/// table, or of a usual measurement.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Spreads {
    /// Of the loss through the jacket.
    pub loss: Option<f64>,
    /// Of the contact conductance.
    pub contact: Option<f64>,
    /// Of the heat that the store holds.
    pub capacity: Option<f64>,
    /// Of the heat that a tracker's efficiency lets arrive.
    pub charging: Option<f64>,
    /// Of the pot's dry loss.
    pub pot_loss: Option<f64>,
}

impl Spreads {
    /// Those of the figures that are the same in both: a spread belongs to the figure that it was
    /// measured with.
    #[must_use]
    pub fn of_what_stays(self, old: &Cooker, new: &Cooker) -> Self {
        let same = |spread: Option<f64>, is_same: bool| spread.filter(|_| is_same);
        Self {
            loss: same(self.loss, old.jacket == new.jacket),
            contact: same(self.contact, old.contact == new.contact),
            capacity: same(self.capacity, old.store == new.store),
            charging: same(
                self.charging,
                old.panels == new.panels && old.heater == new.heater,
            ),
            pot_loss: same(
                self.pot_loss,
                old.pot == new.pot && old.pot_loss_share.to_bits() == new.pot_loss_share.to_bits(),
            ),
        }
    }
}

impl Cooker {
    /// What the panels heat: the heater's element, or those on its switch.
    ///
    /// # Errors
    ///
    /// As [`Heater::checked`] and [`Taps::new`].
    pub fn element(&self) -> Result<Element, PanelError> {
        if self.charging.more_elements_ohm.is_empty() {
            return Ok(Element::One(self.heater.checked()?));
        }
        let mut elements_ohm = vec![self.heater.resistance_ohm];
        elements_ohm.extend(&self.charging.more_elements_ohm);
        let Heater {
            wire_ohm,
            alpha_per_k,
            ..
        } = self.heater;
        Ok(Element::Switched(Taps::new(
            &elements_ohm,
            wire_ohm,
            alpha_per_k,
        )?))
    }
}

/// What charges a cooker beside the panels and their one element, or in their place.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Charging {
    /// Further elements beside the heater's own, at most two, on one switch that joins them as
    /// suits the light; straight on the panels, whatever the heater's drive. \[Ω\]
    pub more_elements_ohm: Vec<f64>,
    /// A tracked mirror or lens in place of the panels.
    pub concentrator: Option<Concentrator>,
    /// A second charge that the household can turn on.
    pub second: Option<SecondCharge>,
}

/// A second charge: the grid, a generator or a fire.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct SecondCharge {
    /// Power that is paid for. \[W\]
    pub power_w: f64,
    /// Share of it that reaches the store: 1 for an element inside it, 0.1 to 0.3 for a fire under
    /// it (common practice, no source).
    pub share: f64,
}

impl SecondCharge {
    /// Heat that reaches the store while it is on. \[W\]
    pub fn heat_w(&self) -> f64 {
        self.power_w * self.share
    }
}

/// A store that is charged outside and carried to the kitchen.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Carried {
    /// What it loses on the way.
    pub can: CarriedCan,
    /// How long that takes. \[s\]
    pub way_s: f64,
    /// Whether it is turned over there, so that what is still solid lies away from the pot.
    pub turned_over: bool,
}

/// The photovoltaic modules and where they look.
#[derive(Debug, Clone, PartialEq)]
pub struct Panels {
    /// Rated power of one module at 1000 W/m² and 25 °C. \[W\]
    pub module_w: f64,
    /// Its data sheet, where there is one; otherwise a typical sheet is scaled to the watts.
    pub sheet: Option<Datasheet>,
    /// Modules one behind the other.
    pub in_series: u32,
    /// Such rows side by side.
    pub in_parallel: u32,
    /// Slope of the plane, 0 lying flat. \[deg\]
    pub tilt_deg: f64,
    /// Where the plane looks, from north by east. \[deg\]
    pub azimuth_deg: f64,
}

impl Panels {
    /// The data sheet of one module: its own, or a typical one of so many watts.
    ///
    /// # Errors
    ///
    /// [`PanelError::RatedPower`] for watts that no module has.
    pub fn sheet_or_typical(&self) -> Result<Datasheet, PanelError> {
        match self.sheet {
            Some(sheet) => Ok(sheet),
            None => Datasheet::typical(self.module_w),
        }
    }

    /// All modules wired up.
    ///
    /// # Errors
    ///
    /// As [`Array::new`] and [`Panels::sheet_or_typical`].
    pub fn array(&self) -> Result<Array, PanelError> {
        Array::new(&self.sheet_or_typical()?, self.in_series, self.in_parallel)
    }
}

/// What holds the heat.
#[derive(Debug, Clone, PartialEq)]
pub struct Store {
    /// The media in it, all at one temperature or nearly so; none where the element heats the pot
    /// without a store.
    pub charges: Vec<Charge>,
    /// Metal that carries the heat through a poorly conducting medium.
    pub metal: Option<Metal>,
    /// Thickness of the medium under the seat. \[m\]
    pub depth_m: f64,
    /// Temperature at which the thermostat takes the heater off. [°C]
    pub cutout_c: f64,
    /// The day on which a medium that ages was filled in fresh; `None` where nobody knows.
    pub filled_on: Option<Day>,
    /// Share of such a medium that its hours molten have converted: 0 fresh, 1 all.
    pub converted: f64,
    /// Heat it holds over what its media and masses say; 1 unless it was measured.
    pub capacity_share: f64,
}

/// Metal within a medium, from the seat through its depth.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Metal {
    /// Straight fins that stand on the seat.
    Fins {
        /// What they are made of; a metal.
        of: Medium,
        /// Thickness of one. \[m\]
        thickness_m: f64,
        /// From one to the next; more than the thickness. \[m\]
        pitch_m: f64,
    },
    /// Open foam, or crumpled foil and wire that touch.
    Foam {
        /// What it is made of; a metal.
        of: Medium,
        /// Share of the volume, up to about 0.15.
        share: f64,
    },
}

/// Share of what the metal of fins could carry that built ones do: ends that fall short, gaps at the
/// seat, welds. From 0.5 to 1, from memory.
const BUILT_FINS: f64 = 0.75;
/// The same of foam, beside a third of its metal: thin struts, lumps where they meet, foil that
/// touches here and there. From 0.6 to 1.1, from memory.
const BUILT_FOAM: f64 = 0.85;

impl Store {
    /// What the metal within the medium weighs by its measures, where it stands in all of it; `None`
    /// without any. It counts as heat only as far as it is among the media. \[kg\]
    pub fn metal_kg(&self) -> Option<f64> {
        let metal = self.metal?;
        let (of, share) = (metal.of(), metal.share());
        let is_medium = |charge: &&Charge| charge.medium.props().chemistry != Chemistry::Metal;
        let media = self.charges.iter().filter(is_medium);
        let between_m3: f64 = media
            .map(|charge| charge.mass_kg / charge.medium.props().density_kg_m3.value)
            .sum();
        Some(of.props().density_kg_m3.value * between_m3 * share / (1.0 - share))
    }
}

impl Store {
    /// Room that the media take: sand as it lies, a melt as a liquid. \[L\]
    pub fn volume_l(&self) -> f64 {
        let of = |charge: &Charge| {
            let props = charge.medium.props();
            let solid_kg_m3 = props.density_kg_m3.value;
            let density_kg_m3 = props
                .melt
                .map_or(solid_kg_m3, |melt| melt.density_liquid_kg_m3.value);
            1e3 * charge.mass_kg / density_kg_m3.min(solid_kg_m3)
        };
        self.charges.iter().map(of).sum()
    }
}

impl Metal {
    /// Fins as they are commonly cut: 2 mm of aluminium every 15 mm. Common practice, no source.
    pub const USUAL_FINS: Self = Self::Fins {
        of: Medium::Aluminium,
        thickness_m: 0.002,
        pitch_m: 0.015,
    };
    /// A tenth of the volume, crumpled aluminium. Common practice, no source.
    pub const USUAL_FOAM: Self = Self::Foam {
        of: Medium::Aluminium,
        share: 0.1,
    };

    /// What it is made of.
    pub fn of(self) -> Medium {
        match self {
            Self::Fins { of, .. } | Self::Foam { of, .. } => of,
        }
    }

    /// Share of the room that it takes.
    pub fn share(self) -> f64 {
        match self {
            Self::Fins {
                thickness_m,
                pitch_m,
                ..
            } => thickness_m / pitch_m,
            Self::Foam { share, .. } => share,
        }
    }

    /// The metal itself, if its measures make sense.
    ///
    /// # Errors
    ///
    /// [`ModelError`] with the first value that is out of range.
    pub fn checked(self) -> Result<Self, ModelError> {
        self.layer_w_mk(1.0, 0.1, 0.01)?;
        Ok(self)
    }

    /// Conductivity of the medium with the metal in it, along the metal. \[W/mK\]
    ///
    /// # Errors
    ///
    /// As [`Metal::checked`].
    pub fn through_w_mk(self, medium_w_mk: f64) -> Result<f64, ModelError> {
        Ok(match self {
            Self::Fins {
                of,
                thickness_m,
                pitch_m,
            } => Filling::new(
                BUILT_FINS * conductivity(of),
                medium_w_mk,
                thickness_m / pitch_m,
            )?
            .in_parallel_w_mk(),
            Self::Foam { of, share } => {
                Filling::new(BUILT_FOAM * conductivity(of), medium_w_mk, share)?.foam_w_mk()
            }
        })
    }

    /// Conductivity that the network's frozen layer needs. \[W/mK\]
    ///
    /// # Arguments
    ///
    /// * `medium_w_mk`: of the solid medium.
    /// * `depth_m`: of the layer when all is solid; the fins reach as far.
    /// * `seat_m2`: that the metal stands on.
    ///
    /// # Errors
    ///
    /// As [`Metal::checked`].
    pub fn layer_w_mk(
        self,
        medium_w_mk: f64,
        depth_m: f64,
        seat_m2: f64,
    ) -> Result<f64, ModelError> {
        match self {
            Self::Fins {
                of,
                thickness_m,
                pitch_m,
            } => {
                let fins = Fins {
                    metal_w_mk: BUILT_FINS * conductivity(of),
                    thickness_m,
                    length_m: depth_m,
                    pitch_m,
                    seat_m2,
                };
                let layer_w_mk = fins
                    .checked()?
                    .layer_conductivity_w_mk(medium_w_mk, depth_m);
                // Where the fins lie close, what freezes first is what stands nearest to the seat, and
                // its heat goes the whole length of the metal.
                Ok(layer_w_mk.min(self.through_w_mk(medium_w_mk)?))
            }
            Self::Foam { .. } => self.through_w_mk(medium_w_mk),
        }
    }
}

fn conductivity(of: Medium) -> f64 {
    of.props().conductivity_w_mk.value
}

/// One medium of a store.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Charge {
    /// Which.
    pub medium: Medium,
    /// How much. \[kg\]
    pub mass_kg: f64,
}

/// How a pot meets the store.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contact {
    /// Kind of seat.
    pub seat: Seat,
    /// Contact conductance, where it was measured. \[W/(m² K)\]
    pub measured_w_m2k: Option<f64>,
}

#[cfg(test)]
mod tests {
    use crate::presets::Preset;

    /// By hand: between two fins of 2 mm every 15 mm lie 13 mm of medium; a litre of aluminium has
    /// 2.7 kg (from memory), one of erythritol 1.48 kg (Zalba and others 2003).
    #[test]
    fn fins_weigh_what_their_measures_say() {
        let mut store = Preset::ErythritolUnderPot.cooker(200.0, 11.0).store;
        let litres = 5.0 / 1.48;
        let expected_kg = 2.7 * litres * 2.0 / 13.0;
        let mass_kg = store.metal_kg().unwrap();
        assert!(
            (mass_kg / expected_kg - 1.0).abs() < 0.05,
            "{mass_kg} of {expected_kg}"
        );
        store.metal = None;
        assert_eq!(store.metal_kg(), None);
    }
}
