//! The curve of the whole store.

use super::medium::{MediumCurve, Melt};
use super::segment::Segment;
use super::supercooled::Branch;
use crate::error::{ModelError, positive};

/// Enthalpy of a store against its temperature, and back.
#[derive(Clone, Debug)]
pub struct EnthalpyCurve {
    pub(super) media: Vec<(f64, MediumCurve)>,
    pub(super) segments: Vec<Segment>,
    sensible_j_k: f64,
    /// What the melt follows below its liquidus until it freezes; its place is after the others.
    pub(super) branch: Option<Branch>,
}

/// How much of a medium is solid on one stretch of the curve.
#[derive(Clone, Copy, Debug)]
pub(crate) enum SolidPart {
    /// The same all along the stretch.
    Constant(f64),
    /// Falls with temperature to 0 at the liquidus.
    WithTemperature { liquidus_c: f64, range_k: f64 },
    /// Falls with enthalpy to 0 at the end of a plateau.
    WithEnthalpy { end_j: f64, latent_j: f64 },
}

impl SolidPart {
    /// Whether none of it is.
    pub(crate) fn is_molten(self) -> bool {
        matches!(self, Self::Constant(part) if part <= 0.0)
    }
}

impl EnthalpyCurve {
    /// The curve of media given by mass in kg and thermal curve.
    ///
    /// # Errors
    /// No medium; a mass that is not positive; a medium whose enthalpy does not rise, or whose solidus
    /// lies above its liquidus.
    pub fn new(media: &[(f64, MediumCurve)]) -> Result<Self, ModelError> {
        if media.is_empty() {
            return Err(ModelError::Inconsistent {
                quantity: "media",
                why: "a store needs at least one medium",
            });
        }
        for (mass_kg, medium) in media {
            positive("mass_kg", *mass_kg)?;
            medium.check()?;
        }
        let mut curve = Self {
            media: media.to_vec(),
            segments: Vec::new(),
            sensible_j_k: 0.0,
            branch: None,
        };
        curve.build();
        Ok(curve)
    }

    fn build(&mut self) {
        let mut breaks: Vec<f64> = Vec::new();
        for (_, melt) in self.melts() {
            for t_c in [melt.t_solidus_c, melt.t_liquidus_c] {
                if let Err(place) = breaks.binary_search_by(|other| other.total_cmp(&t_c)) {
                    breaks.insert(place, t_c);
                }
            }
        }

        let mut low_c = f64::NEG_INFINITY;
        let mut h_j = 0.0;
        for &t_c in &breaks {
            let ramp = self.ramp(low_c, t_c, h_j);
            h_j = ramp.high_j;
            self.segments.push(ramp);
            let latent_j: f64 = self
                .melts()
                .filter(|(_, melt)| melt.melts_at_once_at(t_c))
                .map(|(mass_kg, melt)| mass_kg * melt.latent_j_kg)
                .sum();
            if latent_j > 0.0 {
                self.segments.push(Segment::plateau(t_c, h_j, latent_j));
                h_j += latent_j;
            }
            low_c = t_c;
        }
        self.segments.push(self.ramp(low_c, f64::INFINITY, h_j));

        let zero_j = self.enthalpy_j(0.0);
        for segment in &mut self.segments {
            *segment = segment.lowered_by(zero_j);
        }
        self.sensible_j_k = self
            .media
            .iter()
            .map(|(mass_kg, medium)| mass_kg * medium.cp_solid_j_kgk(0.0).max(100.0))
            .sum();
    }

    fn melts(&self) -> impl Iterator<Item = (f64, Melt)> {
        self.media
            .iter()
            .filter_map(|(mass_kg, medium)| medium.melt.map(|melt| (*mass_kg, melt)))
    }

    /// The stretch between two neighbouring break points; `h_j` is the enthalpy at the lower one, or at
    /// the upper one if there is no lower.
    fn ramp(&self, low_c: f64, high_c: f64, h_j: f64) -> Segment {
        let anchor_c = match (low_c.is_finite(), high_c.is_finite()) {
            (true, _) => low_c,
            (false, true) => high_c,
            (false, false) => 0.0,
        };
        let (mut capacity_j_k, mut slope_j_k2) = (0.0, 0.0);
        for (mass_kg, medium) in &self.media {
            match medium.melt {
                Some(melt) if low_c >= melt.t_liquidus_c => {
                    capacity_j_k += mass_kg * melt.cp_liquid_j_kgk;
                }
                Some(melt) if low_c >= melt.t_solidus_c => {
                    capacity_j_k += mass_kg * melt.latent_j_kg / melt.range_k();
                }
                _ => {
                    capacity_j_k += mass_kg * medium.cp_solid_j_kgk(anchor_c);
                    slope_j_k2 += mass_kg * medium.cp_b_j_kgk2;
                }
            }
        }
        Segment::ramp(anchor_c, h_j, capacity_j_k, slope_j_k2, (low_c, high_c))
    }

    /// Enthalpy at a temperature, J; 0 at 0 degC. At a melting point: all solid.
    pub fn enthalpy_j(&self, t_c: f64) -> f64 {
        self.segments
            .iter()
            .find(|segment| t_c <= segment.high_c)
            .map_or(f64::NAN, |segment| segment.enthalpy_j(t_c))
    }

    /// Temperature at an enthalpy, degC.
    pub fn temperature_c(&self, h_j: f64) -> f64 {
        self.segment(self.segment_of(h_j)).temperature(h_j).0
    }

    /// Heat capacity at an enthalpy, J/K; infinite on a plateau.
    pub fn heat_capacity_j_k(&self, h_j: f64) -> f64 {
        1.0 / self.segment(self.segment_of(h_j)).temperature(h_j).1
    }

    /// Share of a medium that is solid at an enthalpy, 0 to 1.
    ///
    /// 1 for a medium that does not melt, and for an index past the last medium. Media with the same
    /// single melting point melt side by side.
    pub fn solid_fraction(&self, medium: usize, h_j: f64) -> f64 {
        self.solid_fraction_on(medium, self.segment_of(h_j), h_j)
    }

    /// The same on a stretch that is known.
    pub(crate) fn solid_fraction_on(&self, medium: usize, segment: usize, h_j: f64) -> f64 {
        let (t_c, _) = self.segment(segment).temperature(h_j);
        match self.solid_part(medium, segment) {
            SolidPart::Constant(part) => part,
            SolidPart::WithTemperature {
                liquidus_c,
                range_k,
            } => ((liquidus_c - t_c) / range_k).clamp(0.0, 1.0),
            SolidPart::WithEnthalpy { end_j, latent_j } => {
                ((end_j - h_j) / latent_j).clamp(0.0, 1.0)
            }
        }
    }

    /// Number of media.
    pub fn media(&self) -> usize {
        self.media.len()
    }

    /// Mass of all media, kg.
    pub fn mass_kg(&self) -> f64 {
        self.media.iter().map(|(mass_kg, _)| mass_kg).sum()
    }

    /// Heat capacity of the solid store at 0 degC, J/K: the measure of a small error in enthalpy.
    pub(crate) fn sensible_j_k(&self) -> f64 {
        self.sensible_j_k
    }

    pub(crate) fn segment(&self, index: usize) -> &Segment {
        match &self.branch {
            Some(branch) if index >= self.segments.len() => &branch.segment,
            _ => &self.segments[index.min(self.segments.len() - 1)],
        }
    }

    pub(crate) fn segment_of(&self, h_j: f64) -> usize {
        self.segments
            .iter()
            .position(|segment| h_j <= segment.high_j)
            .unwrap_or(self.segments.len() - 1)
    }

    /// The highest enthalpy at which the store is no hotter than this, J: a plateau counts whole.
    pub(crate) fn highest_enthalpy_j(&self, t_c: f64) -> f64 {
        self.segments
            .iter()
            .rev()
            .find(|segment| t_c >= segment.low_c)
            .map_or(f64::NAN, |segment| {
                if segment.is_plateau() {
                    segment.high_j
                } else {
                    segment.enthalpy_j(t_c)
                }
            })
    }

    /// How much of a medium is solid along a stretch.
    pub(crate) fn solid_part(&self, medium: usize, segment: usize) -> SolidPart {
        if let Some(branch) = &self.branch
            && segment >= self.segments.len()
            && branch.medium == medium
        {
            return SolidPart::Constant(0.0);
        }
        let segment = self.segment(segment);
        let Some(melt) = self.media.get(medium).and_then(|(_, curve)| curve.melt) else {
            return SolidPart::Constant(1.0);
        };
        if segment.is_plateau() && melt.melts_at_once_at(segment.low_c) {
            SolidPart::WithEnthalpy {
                end_j: segment.high_j,
                latent_j: segment.high_j - segment.low_j,
            }
        } else if segment.high_c <= melt.t_solidus_c {
            SolidPart::Constant(1.0)
        } else if segment.low_c >= melt.t_liquidus_c {
            SolidPart::Constant(0.0)
        } else {
            SolidPart::WithTemperature {
                liquidus_c: melt.t_liquidus_c,
                range_k: melt.range_k(),
            }
        }
    }
}

impl Melt {
    fn range_k(&self) -> f64 {
        self.t_liquidus_c - self.t_solidus_c
    }

    fn melts_at_once_at(&self, t_c: f64) -> bool {
        self.t_solidus_c >= t_c && self.t_liquidus_c <= t_c
    }
}

#[cfg(test)]
#[path = "tests.rs"]
mod tests;
