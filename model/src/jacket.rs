//! The insulation round the store: what it lets out and what heat it holds.
//!
//! Heat is taken to leave by five ways at once: the side, the two ends, the edges between them,
//! the opening, and rods through the jacket. The first three are conduction with published shape
//! factors ([`crate::conduction`]), then a film of air on the outside. The network puts the whole
//! jacket into one node half-way between store and air, G_SJ = G_JA = 2 G_loss. The capacity given
//! here is therefore twice the heat that the steady jacket holds, per kelvin between store and
//! air: for a flat wall this is its whole heat capacity, for a thick ring or an edge less, because
//! most of the material there is nearly as cold as the air. Two nodes ([`JacketThermal::pair`]) do
//! better: against the jacket cut into eighty shells, over a day of charging and a night, the heat
//! that leaves the store and the heat that reaches the air are within 3 % up to a thickness of three
//! radii, and the store in the morning within 0.5 K. With one node what leaves the store is up to
//! 10 % off there.

mod capacity;
mod faces;
mod pair;

use std::f64::consts::PI;

use serde::{Deserialize, Serialize};

use crate::conduction::{corner_w_k, edge_w_k, in_series, wall_w_k};
use crate::flask::Flask;
use crate::insulation::Insulation;
use crate::network::JacketPair;
use crate::out_of_range::{OutOfRange, Quantity, in_range};
use crate::provenance::{Datum, Source};

/// Film of still air on the outside, convection and radiation together, W/m2K.
pub const OUTER_FILM_W_M2K: Datum = Datum::new(10.0, 2.5, Source::CommonPractice);
/// Conductivity of the steel of a rod through the jacket, W/mK.
const ROD_CONDUCTIVITY_W_MK: f64 = 51.0;
/// Cross section of a 6 mm rod, m2.
const ROD_SECTION_M2: f64 = PI * 0.003 * 0.003;
/// The edge of a cylinder is a ring: its length is taken this share of the thickness outside the
/// inner radius, where an axisymmetric solution with thicknesses of 0.5 to 1.5 radii puts it.
const RING_SHARE: f64 = 0.2;
/// Beyond this many radii more thickness no longer lengthens the edge; with it, a thicker jacket
/// always lets less through.
const RING_RADII: f64 = 2.0;

/// The room inside the jacket that the store fills.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "shape")]
pub enum JacketShape {
    /// An upright cylinder.
    Cylinder {
        /// Inner radius, m.
        inner_radius_m: f64,
        /// Inner height, m.
        inner_height_m: f64,
    },
    /// A rectangular box.
    Box {
        /// Inner length, m.
        inner_length_m: f64,
        /// Inner width, m.
        inner_width_m: f64,
        /// Inner height, m.
        inner_height_m: f64,
    },
}

/// What a layer is made of.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum LayerKind {
    /// An insulation of the table.
    Insulation {
        /// Which one.
        material: Insulation,
    },
    /// A closed layer of air between two faces; bright foil has an emissivity of about 0.05 to
    /// 0.1, dull or sooty faces 0.9.
    StillAir {
        /// Emissivity of the inner, hotter face.
        hot_emissivity: f64,
        /// Emissivity of the outer, colder face.
        cold_emissivity: f64,
    },
}

/// One layer, as thick all round.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct JacketLayer {
    /// What it is made of.
    #[serde(flatten)]
    pub kind: LayerKind,
    /// Thickness, m.
    pub thickness_m: f64,
}

/// How well the opening for the pot is closed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LidFit {
    /// A plug of insulation as thick as the jacket that seals.
    Plug,
    /// A lid of insulation with a gap round it.
    Ordinary,
    /// A thin or crooked lid.
    Leaky,
}

impl LidFit {
    /// Every fit.
    pub const ALL: [Self; 3] = [Self::Plug, Self::Ordinary, Self::Leaky];

    /// What the heat lost by conduction is multiplied by.
    #[must_use]
    pub const fn loss_factor(self) -> Datum {
        match self {
            Self::Plug => Datum::new(1.1, 0.1, Source::Inferred),
            Self::Ordinary => Datum::new(1.4, 0.2, Source::Inferred),
            Self::Leaky => Datum::new(1.8, 0.3, Source::Inferred),
        }
    }
}

/// A jacket described by what it is made of.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LayeredJacket {
    /// The room inside.
    pub shape: JacketShape,
    /// Layers from the store outwards, at least one.
    pub layers: Vec<JacketLayer>,
    /// The opening.
    pub lid: LidFit,
    /// Steel rods of 6 mm from the store to the outside: legs, bolts, the tube of a thermometer.
    pub through_rods: u32,
}

/// A jacket, described or measured.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "known_by")]
pub enum Jacket {
    /// Worked out from what it is made of.
    Layers(LayeredJacket),
    /// Measured on the cooker, say by a night of cooling.
    Measured {
        /// Heat lost per kelvin between store and air, W/K.
        loss_w_k: f64,
        /// Heat capacity that counts, J/K.
        capacity_j_k: f64,
    },
    /// A vacuum flask.
    Flask {
        /// Its walls and its neck.
        flask: Flask,
        /// Heat capacity of the outer wall, J/K.
        wall_j_k: f64,
    },
}

/// What the network needs of the jacket.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JacketThermal {
    /// Heat lost per kelvin between store and air in the steady state, W/K: G_loss.
    pub loss_w_k: f64,
    /// Heat capacity of the node half-way between store and air, J/K: C_J.
    pub capacity_j_k: f64,
    /// The same heat as two nodes, which follow a fast charge better; not known for a measured
    /// jacket.
    pub pair: Option<JacketPair>,
    /// Temperature of the outer face, degC; not known for a measured jacket.
    pub outer_face_c: Option<f64>,
}

/// Conductances of the ways through the layers, without the film outside, W/K.
#[derive(Debug, Clone, Copy)]
struct Ways {
    walls_w_k: f64,
    edges_w_k: f64,
}

impl Jacket {
    /// What the network needs, for a store at `hot_c` in air at `air_c`.
    ///
    /// The conductivity of each layer is taken at its mean temperature, so the loss of a layered
    /// jacket rises with the heat of the store.
    ///
    /// # Example
    ///
    /// ```
    /// use model::insulation::Insulation;
    /// use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket, LidFit};
    ///
    /// let jacket = Jacket::Layers(LayeredJacket {
    ///     shape: JacketShape::Cylinder { inner_radius_m: 0.10, inner_height_m: 0.15 },
    ///     layers: vec![JacketLayer {
    ///         kind: LayerKind::Insulation { material: Insulation::Perlite },
    ///         thickness_m: 0.10,
    ///     }],
    ///     lid: LidFit::Plug,
    ///     through_rods: 0,
    /// });
    /// let hot = jacket.thermal(300.0, 20.0)?;
    /// let warm = jacket.thermal(100.0, 20.0)?;
    /// assert!(warm.loss_w_k < hot.loss_w_k);
    /// # Ok::<(), model::out_of_range::OutOfRange>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when a size, a temperature or a measured figure is outside its range or not
    /// a number, or when there is no layer.
    pub fn thermal(&self, hot_c: f64, air_c: f64) -> Result<JacketThermal, OutOfRange> {
        match self {
            Self::Layers(layered) => layered.thermal(hot_c, air_c),
            Self::Flask { flask, wall_j_k } => flask.thermal(hot_c, air_c, *wall_j_k),
            Self::Measured {
                loss_w_k,
                capacity_j_k,
            } => Ok(JacketThermal {
                loss_w_k: in_range(Quantity::MeasuredLoss, *loss_w_k, 0.001, 100.0)?,
                capacity_j_k: in_range(Quantity::MeasuredCapacity, *capacity_j_k, 1.0, 1e6)?,
                pair: None,
                outer_face_c: None,
            }),
        }
    }
}

impl Jacket {
    /// The room inside seen from above, m2; `None` for a jacket whose size is not known.
    #[must_use]
    pub fn opening_m2(&self) -> Option<f64> {
        match self {
            Self::Layers(layered) => Some(match layered.shape {
                JacketShape::Cylinder { inner_radius_m, .. } => PI * inner_radius_m.powi(2),
                JacketShape::Box {
                    inner_length_m,
                    inner_width_m,
                    ..
                } => inner_length_m * inner_width_m,
            }),
            Self::Flask { flask, .. } => Some(PI * flask.inner_radius_m.powi(2)),
            Self::Measured { .. } => None,
        }
    }

    /// Height of the room inside, m; `None` for a jacket whose size is not known.
    #[must_use]
    pub fn inner_height_m(&self) -> Option<f64> {
        match self {
            Self::Layers(layered) => Some(match layered.shape {
                JacketShape::Cylinder { inner_height_m, .. }
                | JacketShape::Box { inner_height_m, .. } => inner_height_m,
            }),
            Self::Flask { flask, .. } => Some(flask.inner_height_m),
            Self::Measured { .. } => None,
        }
    }

    /// Share of the walls of the room inside that lies under the pot; 1 for a jacket whose size is
    /// not known.
    #[must_use]
    pub fn floor_share(&self) -> f64 {
        let (floor_m2, round_m, height_m) = match self {
            Self::Measured { .. } => return 1.0,
            Self::Flask { flask, .. } => {
                let r = flask.inner_radius_m;
                (PI * r * r, 2.0 * PI * r, flask.inner_height_m)
            }
            Self::Layers(layered) => match layered.shape {
                JacketShape::Cylinder {
                    inner_radius_m: r,
                    inner_height_m,
                } => (PI * r * r, 2.0 * PI * r, inner_height_m),
                JacketShape::Box {
                    inner_length_m: l,
                    inner_width_m: w,
                    inner_height_m,
                } => (l * w, 2.0 * (l + w), inner_height_m),
            },
        };
        floor_m2 / (2.0 * floor_m2 + round_m * height_m)
    }
}

impl LayeredJacket {
    fn thermal(&self, hot_c: f64, air_c: f64) -> Result<JacketThermal, OutOfRange> {
        self.check(hot_c, air_c)?;
        let solved = self.solve(hot_c, air_c);
        let conduction_w_k = self.conduction_w_k(&solved.conductivities_w_mk);
        let rods_w_k = f64::from(self.through_rods)
            * wall_w_k(ROD_CONDUCTIVITY_W_MK, ROD_SECTION_M2, self.thickness_m());
        let loss_w_k = conduction_w_k * self.lid.loss_factor().value + rods_w_k;
        Ok(JacketThermal {
            loss_w_k,
            capacity_j_k: self.capacity_j_k(&solved, air_c),
            pair: self.pair(&solved, air_c, loss_w_k),
            outer_face_c: solved.wall_faces_c.last().copied(),
        })
    }

    /// Temperatures of the faces from the store outwards, one more than there are layers, degC:
    /// what each layer has to stand.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] as for [`Jacket::thermal`].
    pub fn faces_c(&self, hot_c: f64, air_c: f64) -> Result<Vec<f64>, OutOfRange> {
        self.check(hot_c, air_c)?;
        Ok(self.solve(hot_c, air_c).wall_faces_c)
    }

    /// Thickness of all layers, m.
    #[must_use]
    pub fn thickness_m(&self) -> f64 {
        self.layers.iter().map(|layer| layer.thickness_m).sum()
    }

    fn check(&self, hot_c: f64, air_c: f64) -> Result<(), OutOfRange> {
        match self.shape {
            JacketShape::Cylinder {
                inner_radius_m,
                inner_height_m,
            } => {
                in_range(Quantity::InnerRadius, inner_radius_m, 0.01, 2.0)?;
                in_range(Quantity::InnerHeight, inner_height_m, 0.01, 100.0)?;
            }
            JacketShape::Box {
                inner_length_m,
                inner_width_m,
                inner_height_m,
            } => {
                in_range(Quantity::InnerLength, inner_length_m, 0.01, 100.0)?;
                in_range(Quantity::InnerWidth, inner_width_m, 0.01, 100.0)?;
                in_range(Quantity::InnerHeight, inner_height_m, 0.01, 100.0)?;
            }
        }
        let layer_count = u32::try_from(self.layers.len()).map_or(f64::INFINITY, f64::from);
        in_range(Quantity::LayerCount, layer_count, 1.0, 8.0)?;
        for layer in &self.layers {
            in_range(Quantity::LayerThickness, layer.thickness_m, 0.001, 2.0)?;
            if let LayerKind::StillAir {
                hot_emissivity,
                cold_emissivity,
            } = layer.kind
            {
                in_range(Quantity::Emissivity, hot_emissivity, 0.01, 1.0)?;
                in_range(Quantity::Emissivity, cold_emissivity, 0.01, 1.0)?;
            }
        }
        in_range(Quantity::StoreTemperature, hot_c, -40.0, 700.0)?;
        in_range(Quantity::AirTemperature, air_c, -40.0, 60.0)?;
        Ok(())
    }

    /// Conduction through layers and film, for given conductivities, W/K.
    fn conduction_w_k(&self, conductivities_w_mk: &[f64]) -> f64 {
        let ways = self.ways(conductivities_w_mk);
        let film_w_k = OUTER_FILM_W_M2K.value * self.outer_area_m2();
        in_series(&[ways.walls_w_k + ways.edges_w_k, film_w_k])
    }

    /// Edges and corners see the layers as one of the same thickness and flat resistance, so a
    /// layer split in two gives the same answer.
    fn ways(&self, conductivities_w_mk: &[f64]) -> Ways {
        let flat_m2k_w: f64 = self.flat_resistances(conductivities_w_mk).sum();
        let thickness_m = self.thickness_m();
        let edge_conductivity = thickness_m / flat_m2k_w;
        match self.shape {
            JacketShape::Cylinder {
                inner_radius_m,
                inner_height_m,
            } => {
                let side_mk_w: f64 = self.side_resistances(conductivities_w_mk).sum();
                let ends = 2.0 * PI * inner_radius_m * inner_radius_m / flat_m2k_w;
                let ring_radius_m =
                    inner_radius_m + RING_SHARE * thickness_m.min(RING_RADII * inner_radius_m);
                let ring_m = 2.0 * PI * ring_radius_m;
                Ways {
                    walls_w_k: inner_height_m / side_mk_w + ends,
                    edges_w_k: edge_w_k(edge_conductivity, 2.0 * ring_m),
                }
            }
            JacketShape::Box {
                inner_length_m: l,
                inner_width_m: w,
                inner_height_m: h,
            } => Ways {
                walls_w_k: 2.0 * (l * w + w * h + h * l) / flat_m2k_w,
                edges_w_k: edge_w_k(edge_conductivity, 4.0 * (l + w + h))
                    + 8.0 * corner_w_k(edge_conductivity, thickness_m),
            },
        }
    }

    fn outer_area_m2(&self) -> f64 {
        let thickness_m = self.thickness_m();
        match self.shape {
            JacketShape::Cylinder {
                inner_radius_m,
                inner_height_m,
            } => {
                let radius_m = inner_radius_m + thickness_m;
                2.0 * PI * radius_m * (inner_height_m + 2.0 * thickness_m + radius_m)
            }
            JacketShape::Box {
                inner_length_m,
                inner_width_m,
                inner_height_m,
            } => {
                let [l, w, h] = [inner_length_m, inner_width_m, inner_height_m]
                    .map(|inner_m| inner_m + 2.0 * thickness_m);
                2.0 * (l * w + w * h + h * l)
            }
        }
    }
}

#[cfg(test)]
mod tests;
#[cfg(test)]
mod transient_tests;
