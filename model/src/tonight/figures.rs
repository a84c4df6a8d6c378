//! What follows from a build at once: the figures a maker asks for.

use crate::cooker::Cooker;
use crate::jacket::Jacket;
use crate::panel::{Drive, Element, Heater};
use crate::place::AirYear;
use crate::tonight::{CoolDown, LightLine, Rig, Site, TonightError, light_lines};

/// Water whose time to boil is told. \[kg\]
const LITRE_KG: f64 = 1.0;
/// A store is said to be too large for a room that it would overfill by more than this: densities of
/// tables, measures to the centimetre. Inferred.
const ROOM_SLACK: f64 = 1.1;
/// Months of a year.
const MONTHS: f64 = 12.0;

/// What follows from a build, in the mean air of its place.
#[derive(Debug, Clone, PartialEq)]
pub struct Figures {
    /// The air it is worked out in: the mean of the year. [°C]
    pub air_c: f64,
    /// Where water boils there. [°C]
    pub boiling_c: f64,
    /// Where the thermostat cuts out. [°C]
    pub cutout_c: f64,
    /// Heat from the boil to the cut-out. \[J\]
    pub capacity_j: f64,
    /// The same as water of 20 °C that it brings to the boil. \[L\]
    pub capacity_l: f64,
    /// The full store as it cools.
    pub cool: CoolDown,
    /// What is left after a night, as water. \[L\]
    pub after_night_l: f64,
    /// What the jacket lets out with the store at the cut-out. \[W\]
    pub loss_w: f64,
    /// The same by the kelvin. \[W/K\]
    pub loss_w_k: f64,
    /// A store half-way between the boil and the cut-out, for which a loss is measured, learned and
    /// compared. [°C]
    pub working_c: f64,
    /// Loss by the kelvin with the store at [`Figures::working_c`] and the air at 20 °C. \[W/K\]
    pub working_loss_w_k: f64,
    /// The outer face of the jacket then; not known where the loss was measured. [°C]
    pub outer_face_c: Option<f64>,
    /// From the store's face to the food, through the seat alone. \[W/K\]
    pub seat_w_k: f64,
    /// From the middle of the store to the food, half of a melt frozen. \[W/K\]
    pub way_w_k: f64,
    /// Into water at the boil from a store at the cut-out. \[W\]
    pub seat_w: f64,
    /// Room that the store takes, where the room inside the jacket is smaller, and that. \[L\]
    pub too_large_l: Option<(f64, f64)>,
    /// The most that heats it: full sun, or the second charge. \[W\]
    pub most_heat_w: f64,
    /// How long a litre takes in a full store; `None` where it never boils. \[s\]
    pub litre_s: Option<f64>,
    /// Melting range of the medium that melts. [°C]
    pub melting_c: Option<(f64, f64)>,
    /// All that lies between the panels' terminals, of switched elements those that full sun
    /// takes; `None` behind a tracker. \[Ω\]
    pub load_ohm: Option<f64>,
    /// Panels and heater at full and at half sun.
    pub light: [LightLine; 2],
}

impl Figures {
    /// Works out the figures of a cooker at a place.
    ///
    /// # Errors
    ///
    /// [`TonightError`] from the part that makes no sense.
    pub fn new(site: &Site, cooker: &Cooker) -> Result<Self, TonightError> {
        let air_c = mean_c(&site.air);
        let rig = Rig::new(site, cooker)?;
        let (boiling_c, cutout_c) = (rig.boiling_c()?, rig.cutout_c());
        let jacket = cooker.jacket.thermal(cutout_c, air_c)?;
        let loss_w_k = match cooker.jacket {
            // What was measured is told for another store.
            Jacket::Measured { .. } => rig.loss_w_k() * rig.loss_share(cutout_c),
            Jacket::Layers(_) | Jacket::Flask { .. } => jacket.loss_w_k,
        };
        let cool = rig.cool_down(air_c)?;
        let light = light_lines(cooker, air_c)?;
        let load_ohm = match cooker.element()? {
            Element::One(Heater {
                drive: Drive::Direct,
                resistance_ohm,
                wire_ohm,
                ..
            }) => Some(resistance_ohm + wire_ohm),
            Element::One(_) => None,
            Element::Switched(_) => {
                let [full, _] = &light;
                Some(full.works_at.voltage_v / full.works_at.current_a)
            }
        };
        let second_w = cooker.charging.second.map_or(0.0, |second| second.heat_w());
        let store_l = cooker.store.volume_l();
        let room_l = room_l(&cooker.jacket);
        Ok(Self {
            too_large_l: room_l
                .filter(|room_l| ROOM_SLACK * room_l < store_l)
                .map(|room_l| (store_l, room_l)),
            most_heat_w: light[0].heat_w.max(second_w),
            air_c,
            boiling_c,
            cutout_c,
            capacity_j: rig.capacity_j()?,
            capacity_l: rig.litres(rig.heat_at_j(cutout_c), cooker.pot)?,
            after_night_l: rig.litres(cool.after_night_j, cooker.pot)?,
            cool,
            loss_w: loss_w_k * (cutout_c - air_c),
            loss_w_k,
            working_c: rig.working_c(),
            working_loss_w_k: rig.loss_w_k(),
            outer_face_c: jacket.outer_face_c,
            seat_w_k: rig.face_w_k(),
            way_w_k: rig.way_w_k(),
            seat_w: rig.seat_w()?,
            litre_s: rig.boil_from_full_s(cooker.pot, LITRE_KG, air_c)?,
            melting_c: rig.melting_c(),
            load_ohm,
            light,
        })
    }
}

impl Figures {
    /// Whether it gets to the cut-out at all: what heats it is more than what the jacket lets out there.
    pub fn gets_full(&self) -> bool {
        self.loss_w < self.most_heat_w
    }
}

/// The room inside a jacket, where its size is known. \[L\]
fn room_l(jacket: &Jacket) -> Option<f64> {
    Some(1e3 * jacket.opening_m2()? * jacket.inner_height_m()?)
}

fn mean_c(air: &AirYear) -> f64 {
    air.day_c.iter().chain(&air.night_c).sum::<f64>() / (2.0 * MONTHS)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cooker::SecondCharge;
    use crate::place::Place;
    use crate::presets::Preset;

    fn site() -> Site {
        let place = Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m: 1500.0,
            utc_offset_min: 180,
        };
        Site {
            place,
            air: AirYear {
                day_c: [25.0; 12],
                night_c: [15.0; 12],
            },
        }
    }

    /// A frozen salt conducts some 0.5 to 1 W/mK, a tenth of aluminium in it twenty times as much: the
    /// seat, which is the same, is then most of the way. Common practice, no source.
    #[test]
    fn fins_shorten_the_way_from_the_middle_of_the_store() {
        let site = site();
        for preset in [Preset::ErythritolUnderPot, Preset::NitrateInCeramicFibre] {
            let finned = preset.cooker(200.0, 11.0);
            let mut bare = finned.clone();
            bare.store.metal = None;
            let [with, without] = [&finned, &bare].map(|it| Figures::new(&site, it).unwrap());
            assert!((with.seat_w_k - without.seat_w_k).abs() < 1e-9);
            assert!(with.way_w_k < with.seat_w_k && 3.0 * without.way_w_k < with.way_w_k);
        }
    }

    /// What goes in must be more than what goes out; a second charge can be what fills it.
    #[test]
    fn a_store_that_loses_more_than_it_gets_never_gets_full() {
        let site = site();
        let full = |panels_w: f64, second: Option<SecondCharge>| {
            let mut cooker = Preset::AluminiumInPerlite.cooker(panels_w, 11.0);
            cooker.charging.second = second;
            let figures = Figures::new(&site, &cooker).unwrap();
            assert_eq!(figures.gets_full(), figures.loss_w < figures.most_heat_w);
            figures.gets_full()
        };
        let grid = SecondCharge {
            power_w: 800.0,
            share: 1.0,
        };
        assert!(full(300.0, None));
        assert!(!full(50.0, None));
        assert!(full(50.0, Some(grid)));
    }

    /// Dry sand weighs some 1.6 kg a litre as it lies (the table's own figure): 25 kg fill a bucket of
    /// 16 litres, and no pan of 5.
    #[test]
    fn a_store_that_does_not_fit_into_its_jacket_is_told() {
        let site = site();
        for preset in Preset::ALL {
            let cooker = preset.cooker(200.0, 11.0);
            let figures = Figures::new(&site, &cooker).unwrap();
            assert_eq!(figures.too_large_l, None, "{preset:?}");
        }
        let mut cooker = Preset::SandInPerlite.cooker(200.0, 11.0);
        for charge in &mut cooker.store.charges {
            charge.mass_kg = 100.0;
        }
        let told = Figures::new(&site, &cooker).unwrap().too_large_l;
        let (store_l, room_l) = told.unwrap();
        assert!(
            (55.0..70.0).contains(&store_l) && room_l < store_l,
            "{told:?}"
        );
        cooker.jacket = Jacket::Measured {
            loss_w_k: 0.5,
            capacity_j_k: 500.0,
        };
        assert_eq!(Figures::new(&site, &cooker).unwrap().too_large_l, None);
    }

    #[test]
    fn the_figures_of_a_build_agree_with_one_another() {
        let site = site();
        for preset in Preset::ALL {
            let cooker = preset.cooker(200.0, 11.0);
            if cooker.store.charges.is_empty() {
                continue;
            }
            let figures = Figures::new(&site, &cooker).unwrap();
            assert!((figures.air_c - 20.0).abs() < 1e-9);
            // A litre from 20 °C to the boil takes 4.19 kJ/K, and the pot its share.
            let litre_j = 4190.0 * (figures.boiling_c - 20.0);
            let per_litre = figures.capacity_j / figures.capacity_l / litre_j;
            assert!((1.0..1.4).contains(&per_litre), "{preset:?}: {per_litre}");
            assert!(figures.after_night_l < figures.capacity_l);
            let outer_c = figures.outer_face_c.unwrap_or(40.0);
            assert!(20.0 < outer_c && outer_c < 60.0, "{preset:?}: {outer_c}");
            // What a supercooled melt holds back has not been lost when it falls below the boil.
            let supercools = figures.melting_c.is_some_and(|(from_c, _)| from_c < 130.0);
            let mean_loss_w = figures.capacity_j / figures.cool.hold_s.unwrap();
            assert!(
                supercools || mean_loss_w < 1.3 * figures.loss_w,
                "{preset:?}: {mean_loss_w}"
            );
        }
    }
}
