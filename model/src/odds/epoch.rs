//! A cooker as it was until it was changed, put together for members.

use super::build::{Build, rounded};
use super::digest::Digest;
use super::load::Load;
use super::prior::{MULTIPLIERS, Multiplier, UNTOLD_FULL, melt_sd_k};
use crate::cooker::Cooker;
use crate::journal::Meal;
use crate::local_time::LocalTime;
use crate::tonight::{Leaning, Rig, Site, TonightError};
use crate::water::CP_J_KGK;

/// A cooker as it was for a time.
#[derive(Debug)]
pub(super) struct Epoch {
    pub(super) cooker: Cooker,
    pub(super) rig: Rig,
    pub(super) build: Build,
    pub(super) log_sd: [f64; MULTIPLIERS],
    pub(super) melt_sd_k: f64,
    /// Of a pot that was cooked and not told. \[J/K\]
    pub(super) untold_j_k: f64,
    site: Site,
    /// Of all by which it makes a difference.
    pub(super) fingerprint: u64,
}

impl Epoch {
    /// Whether it is of this cooker in this place.
    pub(super) fn is_of(&self, site: &Site, cooker: &Cooker) -> bool {
        self.site == *site && self.cooker == *cooker
    }

    pub(super) fn new(site: &Site, cooker: &Cooker) -> Result<Self, TonightError> {
        let rig = Rig::new(site, cooker)?;
        let build = Build::new(&rig)?;
        let log_sd = Multiplier::ALL.map(|multiplier| multiplier.log_sd(cooker, &rig));
        let melt_sd_k = melt_sd_k(cooker);
        let untold_kg = UNTOLD_FULL * cooker.pot.size.props().volume_l;
        let untold_j_k = rounded(cooker.pot.capacity_j_k() + CP_J_KGK * untold_kg);
        Ok(Self {
            fingerprint: fingerprint(site, (cooker, &rig), &build, &log_sd)
                .number(melt_sd_k)
                .number(untold_j_k)
                .value(),
            build,
            log_sd,
            melt_sd_k,
            untold_j_k,
            site: *site,
            cooker: cooker.clone(),
            rig,
        })
    }

    /// A pot of this meal. Its quantities are as told; members have their own.
    pub(super) fn load(&self, meal: &Meal, put_in: LocalTime, air_c: f64) -> Load {
        let pot = self.rig.load(meal, &Leaning::AS_TOLD, air_c);
        let full_boil_s = meal
            .dish
            .props()
            .full_boil
            .map_or(0.0, |boil| 60.0 * boil.advised_min.value);
        let least_sd_k = meal.dish.props().least_c.spread;
        let dish = (full_boil_s, least_sd_k);
        Load::new(&pot, dish, put_in, self.build.boiling_c)
    }
}

/// A fingerprint of a cooker's physics: what makes no difference to it does not show.
fn fingerprint(
    site: &Site,
    (cooker, rig): (&Cooker, &Rig),
    build: &Build,
    log_sd: &[f64; MULTIPLIERS],
) -> Digest {
    let place = site.place;
    let plane = rig.setting.plane;
    let mut digest = build
        .digest()
        .word(u64::from(place.utc_offset_min.cast_unsigned()));
    for number in [
        place.latitude_deg,
        place.longitude_deg,
        place.altitude_m,
        plane.tilt_deg,
        plane.azimuth_deg,
    ]
    .iter()
    .chain(log_sd)
    .chain(&site.air.day_c)
    .chain(&site.air.night_c)
    {
        digest = digest.number(*number);
    }
    // Beliefs of before it could be measured still hold.
    if cooker.pot_loss_share.to_bits() != 1.0_f64.to_bits() {
        digest = digest.number(cooker.pot_loss_share);
    }
    // What the panels make of some lights, their cells cool and warm.
    for light in (1..=26).map(|step| 50.0 * f64::from(step)) {
        digest = digest
            .number(rig.heat.heat_w(light, 10.0))
            .number(rig.heat.heat_w(light, 50.0));
    }
    digest
}
