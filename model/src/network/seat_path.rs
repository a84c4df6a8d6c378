//! The way from the store to the food, each part of it as its temperatures have it.
//!
//! A [`super::Seat`] is one conductance. This is what stands behind it in a cooker that is known by its
//! parts: the store's own inside, the air or the film under the pot, the water in it. It is plain
//! arithmetic, so that an ensemble reads the same digits off it on every platform.

use crate::seat::{BOILING_FILM_W_M2K, Gap, INNER_FILM_W_M2K, Through, warming_film_w_m2k};

/// Between the store's face and the pot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SeatJoint {
    /// The same at any temperature, W/K: a film, or what was measured.
    Even(f64),
    /// Air.
    Gap(Gap),
}

/// A melt's way to its wall while it is all liquid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeltWay {
    /// It is, above this, degC.
    pub liquidus_c: f64,
    /// From its mean to its wall, K/W.
    pub k_w: f64,
    /// Whether metal carries its heat to the wall.
    pub has_metal: bool,
}

/// The way from the store to the food.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeatPath {
    /// Within the store, from the node at the seat to the face that the pot meets, K/W.
    pub face_k_w: f64,
    /// Under the pot.
    pub joint: SeatJoint,
    /// The joint in its mean state, by which the faces' temperatures are told, K/W.
    pub joint_k_w: f64,
    /// The film of water in the pot, in its mean, K/W.
    pub film_k_w: f64,
    /// For a melt.
    pub melt: Option<MeltWay>,
}

/// What it is asked for.
#[derive(Clone, Copy, Debug)]
pub(crate) struct OnPath {
    /// Multiplies the conductance of the whole.
    pub(crate) contact: f64,
    /// Multiplies what conducts within the store.
    pub(crate) inside: f64,
    /// Divides what the film in the pot lets through.
    pub(crate) thickness: f64,
    pub(crate) store_c: f64,
    pub(crate) pot_c: f64,
    pub(crate) boils: bool,
    /// A melt that is liquid and above its melting point.
    pub(crate) melt: Option<MeltWay>,
}

/// A conductance and how it grows with the temperatures at its ends.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Clear {
    pub(crate) w_k: f64,
    /// W/K per kelvin of the store.
    pub(crate) by_store: f64,
    /// And of the pot.
    pub(crate) by_pot: f64,
}

impl SeatPath {
    /// Film in the pot, and its growth with the pot's temperature. \[K/W, 1/W\]
    #[inline(always)]
    fn film(&self, on: &OnPath) -> (f64, f64) {
        let mean_k_w = on.thickness * self.film_k_w;
        if on.boils {
            let share = INNER_FILM_W_M2K.value / BOILING_FILM_W_M2K.value;
            return (mean_k_w * share, 0.0);
        }
        let (film, slope) = warming_film_w_m2k(on.pot_c);
        let film_k_w = mean_k_w * INNER_FILM_W_M2K.value / film;
        (film_k_w, -film_k_w * slope / film)
    }

    /// Conductance with nothing frozen on the seat.
    ///
    /// The faces of an air gap are told from how the fall from store to food is shared out in the mean
    /// state of the gap. Among metal the wall of a melt stays at its melting point while there is any left
    /// to freeze there, however far it is from the middle; without, what freezes there is in the way at
    /// once.
    ///
    /// Always put into its caller, so that who asks for no slopes has none worked out.
    #[inline(always)]
    pub(crate) fn clear(&self, on: &OnPath) -> Clear {
        let fall_k = on.store_c - on.pot_c;
        let (film_k_w, film_by_pot) = self.film(on);
        let (joint_k_w, by_store, by_pot) = match &self.joint {
            SeatJoint::Even(w_k) => (1.0 / w_k, 0.0, film_by_pot),
            SeatJoint::Gap(gap) => {
                let whole_w_k = 1.0 / (self.face_k_w + self.joint_k_w + film_k_w);
                let (behind, before) = (self.face_k_w * whole_w_k, film_k_w * whole_w_k);
                // The shares of the fall move with the film.
                let moves = fall_k * whole_w_k * film_by_pot;
                let Through {
                    w_k,
                    by_hot,
                    by_cold,
                } = gap.through(on.store_c - behind * fall_k, on.pot_c + before * fall_k);
                let k_w = 1.0 / w_k;
                let by_hot = -by_hot * k_w * k_w;
                let by_cold = -by_cold * k_w * k_w;
                (
                    k_w,
                    (1.0 - behind) * by_hot + before * by_cold,
                    behind * (1.0 + moves) * by_hot
                        + (1.0 - before) * (1.0 + moves) * by_cold
                        + film_by_pot,
                )
            }
        };
        let w_k = on.contact / (self.face_k_w + joint_k_w + film_k_w);
        let per = -w_k * w_k / on.contact;
        let clear = Clear {
            w_k,
            by_store: per * by_store,
            by_pot: per * by_pot,
        };
        match on.melt {
            None => clear,
            Some(melt) => clear.through_melt(melt, on),
        }
    }
}

impl Clear {
    #[inline(always)]
    fn through_melt(self, melt: MeltWay, on: &OnPath) -> Self {
        let left = 1.0 / (1.0 + self.w_k * melt.k_w / on.inside);
        let through = Self {
            w_k: self.w_k * left,
            by_store: self.by_store * left * left,
            by_pot: self.by_pot * left * left,
        };
        if !melt.has_metal {
            return through;
        }
        let fall_k = on.store_c - on.pot_c;
        let share = (melt.liquidus_c - on.pot_c) / fall_k;
        let held = share.clamp(0.0, 1.0);
        if held * self.w_k <= through.w_k {
            return through;
        }
        let (by_store, by_pot) = if share < 1.0 {
            (-share / fall_k, (share - 1.0) / fall_k)
        } else {
            (0.0, 0.0)
        };
        Self {
            w_k: held * self.w_k,
            by_store: held * self.by_store + self.w_k * by_store,
            by_pot: held * self.by_pot + self.w_k * by_pot,
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::seat::Seat;

    fn path(seat: Seat, face_k_w: f64, melt: bool) -> SeatPath {
        let gap = Gap::of(seat, 0.2, 0.1);
        let area_m2 = seat.area_m2(0.2, 0.1);
        SeatPath {
            face_k_w,
            joint: gap.map_or(SeatJoint::Even(20.0), SeatJoint::Gap),
            joint_k_w: gap.map_or(1.0 / 20.0, |gap| 1.0 / gap.through(200.0, 80.0).w_k),
            film_k_w: 1.0 / (INNER_FILM_W_M2K.value * area_m2),
            melt: melt.then_some(MeltWay {
                liquidus_c: 119.0,
                k_w: 0.1,
                has_metal: true,
            }),
        }
    }

    const ON: OnPath = OnPath {
        contact: 1.0,
        inside: 1.0,
        thickness: 1.0,
        store_c: 250.0,
        pot_c: 60.0,
        boils: false,
        melt: None,
    };

    /// A usual dry seat under a pot of 20 cm, worked by hand: 0.18 mm of air between a plate of 250 degC
    /// and a pot whose wall is some 40 K above water of 60 degC (the film of 870 W/m2K and the gap
    /// share 190 K), 175 degC in the mean: 0.0366 W/mK (CoolProp 8.0.0) / 0.18 mm + 2.7 = 207 W/m2K;
    /// behind it 870: 167 W/m2K, on 0.0314 m2 5.25 W/K.
    #[test]
    fn a_dry_seat_by_hand() {
        let w_k = path(Seat::DryOrdinary, 0.0, false).clear(&ON).w_k;
        assert!((w_k / 5.25 - 1.0).abs() < 0.015, "{w_k}");
    }

    #[test]
    fn a_hotter_seat_lets_more_through_and_a_film_does_not() {
        let cool = OnPath {
            store_c: 130.0,
            ..ON
        };
        for seat in Seat::ALL {
            let path = path(seat, 0.01, false);
            let rise = path.clear(&ON).w_k / path.clear(&cool).w_k;
            match path.joint {
                SeatJoint::Even(_) => assert!((rise - 1.0).abs() < 1e-12, "{seat:?} {rise}"),
                SeatJoint::Gap(_) => assert!((1.05..1.6).contains(&rise), "{seat:?} {rise}"),
            }
        }
    }

    proptest! {
        /// The slopes are those of the values.
        #[test]
        fn slopes_are_slopes(
            idx in 0..Seat::ALL.len(),
            store_c in 130.0..350.0_f64,
            pot_c in 20.0..94.0_f64,
            face_k_w in 0.0..0.2_f64,
            melts in any::<bool>(),
        ) {
            // A wide gap begins to move at once.
            prop_assume!(Seat::ALL[idx] != Seat::RadiantGap);
            let path = path(Seat::ALL[idx], face_k_w, melts);
            let at = |store_c, pot_c| {
                path.clear(&OnPath { store_c, pot_c, melt: path.melt, ..ON })
            };
            let told = at(store_c, pot_c);
            let h = 1e-3;
            let by_store = (at(store_c + h, pot_c).w_k - at(store_c - h, pot_c).w_k) / (2.0 * h);
            let by_pot = (at(store_c, pot_c + h).w_k - at(store_c, pot_c - h).w_k) / (2.0 * h);
            let close = |told: f64, is: f64, w_k: f64| (told - is).abs() < 1e-6 * w_k;
            prop_assert!(close(told.by_store, by_store, told.w_k), "{:?} {}", told, by_store);
            prop_assert!(close(told.by_pot, by_pot, told.w_k), "{:?} {}", told, by_pot);
        }
    }
}
