//! What limits a build: which of its parts, made better by a factor of two, boils most.
//!
//! The measure is the most water that comes to the boil within an hour of sunset, evening after
//! evening, when every day is an ordinary one; without a store, the most that stands in it from the
//! morning and has boiled by sunset. It feels all that a build can lack: sun, room for
//! heat, a way into the pot, a jacket. Each part is then doubled, or the loss halved, and the
//! whole is solved again.

use crate::cooker::Cooker;
use crate::journal::Journal;
use crate::local_time::Day;
use crate::network::Ledger;
use crate::pot::Pot;
use crate::tonight::course::Course;
use crate::tonight::track::{PotWatch, Track};
use crate::tonight::water;
use crate::tonight::{Leaning, Rig, Site, TonightError, Weather};

/// The pot must boil within this of sunset, and then stays in for all of it. \[s\]
const WITHIN_S: i64 = 3600;
/// When a pot goes in that is heated without a store. \[s\]
const MORNING_S: i64 = 7 * 3600;
/// Days of the same kind, one after another: by the last the store no longer remembers the first.
const DAYS: i32 = 4;
/// The least and the most water sought. \[kg\]
const SOUGHT_KG: (f64, f64) = (0.1, 60.0);
/// How closely the water is found, as a share of it.
const CLOSE: f64 = 0.03;

/// A change of a build.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Better {
    /// None: the build as it stands.
    AsBuilt,
    /// Twice the heat from panel and heater.
    TwiceTheSun,
    /// Twice the mass of every medium.
    TwiceTheStore,
    /// Twice the conductance from store to pot.
    TwiceTheContact,
    /// Half the loss through the jacket.
    HalfTheLoss,
}

impl Better {
    /// Every change, the build as it stands first.
    pub const ALL: [Self; 5] = [
        Self::AsBuilt,
        Self::TwiceTheSun,
        Self::TwiceTheStore,
        Self::TwiceTheContact,
        Self::HalfTheLoss,
    ];

    fn leaning(self) -> Leaning {
        let as_told = Leaning::AS_TOLD;
        match self {
            Self::AsBuilt | Self::TwiceTheStore => as_told,
            Self::TwiceTheSun => Leaning {
                charging: 2.0,
                ..as_told
            },
            Self::TwiceTheContact => Leaning {
                contact: 2.0,
                ..as_told
            },
            Self::HalfTheLoss => Leaning {
                loss: 0.5,
                ..as_told
            },
        }
    }
}

/// A build and its ordinary days, ready to be tried.
#[derive(Debug, Clone)]
pub struct Trial {
    rig: Rig,
    larger: Rig,
    weather: Weather,
    first: Day,
    pot: Pot,
    has_store: bool,
}

impl Trial {
    /// Puts the build together for ordinary days from this one on.
    ///
    /// # Errors
    ///
    /// [`TonightError`] for a place or a cooker that makes no sense.
    pub fn new(site: &Site, cooker: &Cooker, first: Day) -> Result<Self, TonightError> {
        let rig = Rig::new(site, cooker)?;
        let mut twice = cooker.clone();
        for charge in &mut twice.store.charges {
            charge.mass_kg *= 2.0;
        }
        let skies = Journal::default().skies;
        let weather = Weather::new(&rig, &skies, first, first.plus(DAYS), first.start())?;
        Ok(Self {
            larger: Rig::new(site, &twice)?,
            rig,
            weather,
            first,
            pot: cooker.pot,
            has_store: !cooker.store.charges.is_empty(),
        })
    }

    /// The most water of 20 °C that boils within an hour of sunset, every evening; 0 where not
    /// even a cup does. In a pot like the household's, as if it held any amount. \[L\]
    ///
    /// # Errors
    ///
    /// [`TonightError`] from the network.
    pub fn litres(&self, better: Better) -> Result<f64, TonightError> {
        let rig = match better {
            Better::TwiceTheStore => &self.larger,
            _ => &self.rig,
        };
        let journal = Journal::default();
        let course = Course::new(rig, &self.weather, &journal, better.leaning())?;
        let (mut boils_kg, mut fails_kg) = SOUGHT_KG;
        if !self.boils(&course, boils_kg)? {
            return Ok(0.0);
        }
        if self.boils(&course, fails_kg)? {
            return Ok(fails_kg);
        }
        while boils_kg * (1.0 + CLOSE) < fails_kg {
            let middle_kg = (boils_kg * fails_kg).sqrt();
            if self.boils(&course, middle_kg)? {
                boils_kg = middle_kg;
            } else {
                fails_kg = middle_kg;
            }
        }
        Ok(boils_kg)
    }

    /// Whether so much water boils in time on the last of the evenings.
    fn boils(&self, course: &Course<'_>, water_kg: f64) -> Result<bool, TonightError> {
        let meal = water(self.pot, water_kg);
        let mut state = course.cold(self.first.start())?;
        let mut ledger = Ledger::default();
        let mut boils = false;
        for n_day in 0..DAYS {
            let day = self.first.plus(n_day);
            let sunset = self.weather.sunset(day.start());
            let (put_in, until) = if self.has_store {
                (sunset, sunset.plus_s(WITHIN_S))
            } else {
                (day.at_s(MORNING_S), sunset)
            };
            course.advance(&mut state, put_in, &mut ledger, &mut ())?;
            course.put_in(&mut state, &meal)?;
            let mut watch = PotWatch::new(Track::default(), 0.0);
            course.advance(&mut state, until, &mut ledger, &mut watch)?;
            state.take_pot_out();
            boils = watch.boils_s.is_some();
        }
        Ok(boils)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::jacket::{Jacket, LidFit};
    use crate::place::{AirYear, Place};
    use crate::presets::Preset;
    use crate::seat::Seat;

    fn litres(cooker: &Cooker) -> [f64; 5] {
        let place = Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m: 1500.0,
            utc_offset_min: 180,
        };
        let site = Site {
            place,
            air: AirYear::guess(11.0, 1500.0).unwrap(),
        };
        let day = Day::from_ymd(2026, 3, 20).unwrap();
        let trial = Trial::new(&site, cooker, day).unwrap();
        Better::ALL.map(|better| trial.litres(better).unwrap())
    }

    fn most_helped_by(litres: [f64; 5]) -> Better {
        let best = (1..5)
            .max_by(|&a, &b| litres[a].total_cmp(&litres[b]))
            .unwrap();
        Better::ALL[best]
    }

    #[test]
    fn a_small_panel_lacks_sun() {
        let found = litres(&Preset::AluminiumInPerlite.cooker(60.0, 11.0));
        assert_eq!(most_helped_by(found), Better::TwiceTheSun, "{found:?}");
    }

    #[test]
    fn a_dented_pot_lacks_contact() {
        let mut cooker = Preset::AluminiumInPerlite.cooker(300.0, 11.0);
        cooker.contact.seat = Seat::BadlyWarped;
        let found = litres(&cooker);
        assert_eq!(most_helped_by(found), Better::TwiceTheContact, "{found:?}");
    }

    #[test]
    fn a_small_store_under_much_sun_lacks_mass() {
        let mut cooker = Preset::AluminiumInPerlite.cooker(600.0, 11.0);
        cooker.store.charges[0].mass_kg = 2.0;
        cooker.contact.seat = Seat::MachinedClamped;
        let found = litres(&cooker);
        assert_eq!(most_helped_by(found), Better::TwiceTheStore, "{found:?}");
    }

    #[test]
    fn a_thin_jacket_lacks_jacket() {
        let mut cooker = Preset::AluminiumInPerlite.cooker(300.0, 11.0);
        if let Jacket::Layers(jacket) = &mut cooker.jacket {
            jacket.layers[0].thickness_m = 0.04;
            jacket.lid = LidFit::Leaky;
        }
        cooker.contact.seat = Seat::MachinedClamped;
        let found = litres(&cooker);
        assert!(1.2 * found[0] < found[4], "{found:?}");
        assert_eq!(most_helped_by(found), Better::HalfTheLoss, "{found:?}");
    }

    #[test]
    fn nothing_that_is_better_boils_less() {
        for preset in Preset::ALL {
            let [as_built, better @ ..] = litres(&preset.cooker(300.0, 11.0));
            // Over a gap of air a pot takes longer than the hour.
            assert!(
                0.1 < as_built || preset == Preset::MortarUnderAirGap,
                "{preset:?}"
            );
            // A larger store takes longer to get hot: twice the mass may boil less.
            for idx in [0, 2, 3] {
                assert!(
                    (1.0 - CLOSE) * as_built <= better[idx],
                    "{preset:?}: {better:?}"
                );
            }
        }
    }
}
