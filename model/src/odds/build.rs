//! A cooker made ready for many members: every figure that they share, in tables that take no more
//! than a multiplication to read.
//!
//! What the platforms make of transcendental functions differs in its last digit, so they are `libm`'s
//! throughout this crate; the rest are the four operations and square roots, which IEEE 754 fixes.
//! What passes this door and the sky's is rounded to 24 binary digits besides.

use super::digest::Digest;
use crate::cooker::Carried;
use crate::enthalpy::EnthalpyCurve;
use crate::network::{
    JacketNode, JacketPair, LossRise, MAX_NODES, MeltWay, Network, NodeRow, OnPath, SeatJoint,
    SeatPath,
};
use crate::seat::Gap;
use crate::tonight::{Leaning, Rig, TonightError};
use crate::water::vapour_pressure_pa;

/// Cells of the table of the store's temperature.
const CURVE_CELLS: usize = 2048;
/// The same as a number.
const CURVE_CELLS_F: f64 = 2048.0;
/// Coldest and hottest store of the table; beyond them its end cells go on straight. [°C]
const STORE_RANGE_C: (f64, f64) = (-60.0, 560.0);
/// The table of vapour pressure begins here and goes by kelvins. [°C]
const VAPOUR_FROM_C: f64 = -60.0;
/// Its length.
const VAPOUR_CELLS: u8 = 200;
/// The loss of a cool store is taken at this temperature, in air at the next. [°C]
const COOL_STORE_C: f64 = 50.0;
const FRESH_WATER_C: f64 = 20.0;
/// To 24 binary digits: what a compiler makes of one formula by another order of its sums is the same
/// after it, but for one value in many millions.
pub(super) fn rounded(value: f64) -> f64 {
    #[expect(clippy::cast_possible_truncation, reason = "rounding is the purpose")]
    let short = value as f32;
    f64::from(short)
}

/// Values at even steps, straight between them and beyond their ends.
#[derive(Debug, Clone)]
pub(super) struct Table {
    from: f64,
    per_step: f64,
    values: Vec<f64>,
}

impl Table {
    pub(super) fn new(from: f64, step: f64, values: Vec<f64>) -> Self {
        Self {
            from,
            per_step: 1.0 / step,
            values,
        }
    }

    /// Value and slope.
    #[inline]
    pub(super) fn at(&self, x: f64) -> (f64, f64) {
        let place = (x - self.from) * self.per_step;
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "saturates below 0 and above the end, where the end cells go on"
        )]
        let cell = (place as usize).min(self.values.len().saturating_sub(2));
        match self.values.get(cell..cell + 2) {
            Some(&[low, high]) => {
                #[expect(clippy::cast_precision_loss, reason = "some thousands at most")]
                let along = place - cell as f64;
                (low + along * (high - low), (high - low) * self.per_step)
            }
            _ => (f64::NAN, f64::NAN),
        }
    }
}

/// A melt that stays liquid until it nucleates.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sleep {
    /// Heat of the whole store when it has just melted. \[J\]
    pub(super) liquid_j: f64,
    /// Temperature of the same. [°C]
    pub(super) liquid_c: f64,
    /// Fall of the liquid's temperature by its heat. \[K/J\]
    k_j: f64,
    /// Where it nucleates, and the spread of that. [°C, K]
    pub(super) nucleation_c: f64,
    pub(super) nucleation_sd_k: f64,
    /// From the melt to a cold wall in it. \[W/K\]
    pub(super) film_w_k: f64,
    /// The pot stands in the melt itself and chills what touches it to its own temperature.
    pub(super) touches_pot: bool,
}

impl Sleep {
    fn of(rig: &Rig, curve: &EnthalpyCurve) -> Option<Self> {
        let (nucleation_c, liquid_c) = curve.supercooled_range_c()?;
        let liquid_j = curve.supercooled_enthalpy_j(liquid_c)?;
        let cold_j = curve.supercooled_enthalpy_j(nucleation_c)?;
        Some(Self {
            liquid_j: rounded(liquid_j),
            liquid_c: rounded(liquid_c),
            k_j: rounded((liquid_c - nucleation_c) / (liquid_j - cold_j)),
            nucleation_c: rounded(nucleation_c),
            nucleation_sd_k: rounded(rig.supercooling_sd_k()),
            film_w_k: rounded(rig.melt_film_w_k()),
            touches_pot: rig.is_pot_in_melt(),
        })
    }
}

/// A pot on the seat.
#[derive(Debug, Clone, Copy)]
pub(super) struct OnSeat {
    /// Multiplies what lies between the store and the pot, and within the store.
    pub(super) contact: f64,
    pub(super) inside: f64,
    /// Of the load: how much less the film in the pot lets through than that of water.
    pub(super) thickness: f64,
    pub(super) store_c: f64,
    pub(super) pot_c: f64,
    pub(super) boils: bool,
    /// How far the melting point is off. \[K\]
    pub(super) melt_k: f64,
}

/// A cooker for many members.
#[derive(Debug, Clone)]
pub(super) struct Build {
    /// The store's nodes.
    pub(super) row: NodeRow,
    /// Where each lies, -1 at the seat to 1 at the far end, by the heater's heat.
    pub(super) lever: [f64; MAX_NODES],
    /// Half of the way from store to air, times two: store to jacket, and jacket to air. \[W/K\]
    pub(super) g_half_w_k: f64,
    loss_rise: LossRise,
    /// Conductances of the jacket as multiples of it: from the store, across from node to node, and to
    /// the air; a jacket of one node has nothing across.
    pub(super) jacket_way: [f64; 3],
    /// The node next to the store, or the only one. \[J/K\]
    pub(super) c_jacket_j_k: f64,
    /// The outer node; infinite without one. \[J/K\]
    pub(super) c_outer_j_k: f64,
    /// How warm both are in the steady state, 0 at the air to 1 at the store.
    pub(super) warmth: (f64, f64),
    /// From the store to the food, nothing frozen on the seat.
    path: SeatPath,
    /// Heat of the whole store where a melt without metal begins to freeze on the seat. \[J\]
    pub(super) sets_j: Option<f64>,
    /// Resistance of a layer frozen through; 0 where nothing freezes on the seat. \[K/W\]
    pub(super) layer_k_w: f64,
    layer_elsewhere: f64,
    /// From the store's face while it stands open. \[W/K\]
    pub(super) g_open_w_k: f64,
    /// Heat of the whole store about which the thermostat works. \[J\]
    pub(super) hold_j: f64,
    /// And what it takes per kelvin there. \[J/K\]
    pub(super) hold_j_k: f64,
    /// Temperature of the same. [°C]
    pub(super) cutout_c: f64,
    /// How it comes to the kitchen, where it is charged elsewhere.
    pub(super) carried: Option<Carried>,
    pub(super) boiling_c: f64,
    pub(super) h_fg_j_kg: f64,
    /// How a melt stays liquid below its melting point.
    pub(super) sleep: Option<Sleep>,
    /// The same as one node, for the hours without a pot, where a melt is cut into nodes.
    pub(super) lumped: Option<Box<Self>>,
    curve: EnthalpyCurve,
    store_c: Table,
    solid: Option<Table>,
    vapour_pa: Table,
}

impl Build {
    pub(super) fn new(rig: &Rig) -> Result<Self, TonightError> {
        let net = rig.network(&Leaning::AS_TOLD, false)?;
        let open = rig.network(&Leaning::AS_TOLD, true)?;
        let parts = net.parts();
        let curve = net.curve();
        let low_j = curve.enthalpy_j(STORE_RANGE_C.0);
        let step_j = (curve.enthalpy_j(STORE_RANGE_C.1) - low_j) / CURVE_CELLS_F;
        let heats = || (0..=CURVE_CELLS).map(|cell| low_j + step_j * small(cell));
        let store_c = heats().map(|heat_j| rounded(curve.temperature_c(heat_j)));
        let solid = parts.seat.layer.map(|layer| {
            let part = heats().map(|heat_j| rounded(curve.solid_fraction(layer.medium, heat_j)));
            Table::new(low_j, step_j, part.collect())
        });
        let only = JacketNode {
            warmth: 0.5,
            capacity_j_k: parts.c_jacket_j_k,
        };
        let (inner, jacket_way, c_outer_j_k, outer_warmth) = match net.pair {
            None => (only, [1.0, 0.0, 1.0], f64::INFINITY, 0.5),
            Some(JacketPair { inner, outer }) => {
                let spans = [
                    1.0 - inner.warmth,
                    inner.warmth - outer.warmth,
                    outer.warmth,
                ];
                let way = spans.map(|span| rounded(0.5 / span));
                (inner, way, rounded(outer.capacity_j_k), outer.warmth)
            }
        };
        let vapour_pa = (0..=VAPOUR_CELLS)
            .map(|cell| rounded(vapour_pressure_pa(VAPOUR_FROM_C + f64::from(cell))));
        let build = Self {
            row: rounded_row(parts.row),
            lever: parts.row.lever().map(rounded),
            g_half_w_k: rounded(2.0 * parts.g_loss_w_k),
            loss_rise: LossRise {
                per_k: rounded(net.loss_rise.per_k),
                told_c: rounded(net.loss_rise.told_c),
            },
            jacket_way,
            c_jacket_j_k: rounded(inner.capacity_j_k),
            c_outer_j_k,
            warmth: (inner.warmth, outer_warmth),
            path: rounded_path(rig.seat_path()),
            sets_j: rig
                .seat_path()
                .melt
                .filter(|melt| !melt.has_metal)
                .map(|melt| rounded(curve.highest_enthalpy_j(melt.liquidus_c))),
            layer_k_w: parts.seat.layer.map_or(0.0, |layer| {
                rounded(layer.depth_m / (layer.k_solid_w_mk * layer.area_m2))
            }),
            layer_elsewhere: parts.seat.layer.map_or(0.0, |layer| layer.elsewhere),
            g_open_w_k: rounded(open.parts().g_lid_w_k),
            hold_j: hold_j(&net),
            hold_j_k: rounded(
                curve.enthalpy_j(rig.cutout_c()) - curve.enthalpy_j(rig.cutout_c() - 1.0),
            ),
            cutout_c: rig.cutout_c(),
            carried: rig.carried,
            boiling_c: rounded(net.boiling_point_c()),
            h_fg_j_kg: rounded(net.heat_of_vaporisation_j_kg()),
            sleep: Sleep::of(rig, curve),
            lumped: None,
            curve: curve.clone(),
            store_c: Table::new(low_j, step_j, store_c.collect()),
            solid,
            vapour_pa: Table::new(VAPOUR_FROM_C, 1.0, vapour_pa.collect()),
        };
        let melts_in_nodes = 1 < parts.row.count && rig.melting_c().is_some();
        Ok(Self {
            lumped: melts_in_nodes.then(|| Box::new(build.as_one_node())),
            ..build
        })
    }

    /// The same store at one temperature.
    fn as_one_node(&self) -> Self {
        Self {
            row: NodeRow::SINGLE,
            lever: NodeRow::SINGLE.lever().map(rounded),
            ..self.clone()
        }
    }

    /// A fingerprint of every figure.
    pub(super) fn digest(&self) -> Digest {
        let row = &self.row;
        let mut digest = Digest::new()
            .word(row.count as u64)
            .word(row.thermostat_node as u64);
        let figures = [
            self.g_half_w_k,
            self.c_jacket_j_k,
            self.layer_k_w,
            self.layer_elsewhere,
            self.g_open_w_k,
            self.hold_j,
            self.hold_j_k,
            self.loss_rise.per_k,
            self.loss_rise.told_c,
            self.cutout_c,
            self.boiling_c,
            self.h_fg_j_kg,
            self.c_outer_j_k,
            self.warmth.0,
            self.warmth.1,
            self.store_c.from,
            self.store_c.per_step,
        ];
        let sleep = self.sleep.iter().flat_map(|sleep| {
            [
                sleep.liquid_j,
                sleep.liquid_c,
                sleep.k_j,
                sleep.nucleation_c,
                sleep.nucleation_sd_k,
                sleep.film_w_k,
                f64::from(u8::from(sleep.touches_pot)),
            ]
        });
        let carried = self.carried.iter().flat_map(|carried| {
            let loss_w_k = |store_c| rounded(carried.can.loss_w_k(store_c, FRESH_WATER_C));
            [
                carried.way_s,
                loss_w_k(COOL_STORE_C),
                loss_w_k(self.cutout_c),
            ]
        });
        for number in sleep.chain(carried) {
            digest = digest.number(number);
        }
        let solid = self.solid.iter().flat_map(|solid| &solid.values);
        for number in figures
            .iter()
            .chain(&row.mass_share)
            .chain(&row.link_w_k)
            .chain(&row.heater_share)
            .chain(&row.jacket_share)
            .chain(&self.jacket_way)
            .chain(&self.store_c.values)
            .chain(&path_figures(&self.path))
            .chain(solid)
        {
            digest = digest.number(*number);
        }
        digest
    }

    /// Temperature of the store with this heat in the whole of it, and its slope. [°C, K/J]
    #[inline]
    pub(super) fn store_c(&self, store_j: f64) -> (f64, f64) {
        self.store_c.at(store_j)
    }

    /// The same of a melt that is liquid, above its melting point or below.
    #[inline]
    pub(super) fn liquid_c(&self, store_j: f64) -> (f64, f64) {
        match &self.sleep {
            Some(sleep) if store_j < sleep.liquid_j => (
                sleep.liquid_c - sleep.k_j * (sleep.liquid_j - store_j),
                sleep.k_j,
            ),
            _ => self.store_c(store_j),
        }
    }

    /// Heat of the whole store at a temperature. \[J\]
    pub(super) fn heat_j(&self, store_c: f64) -> f64 {
        self.curve.enthalpy_j(store_c)
    }

    /// Whether anything freezes on the seat.
    pub(super) fn freezes(&self) -> bool {
        self.solid.is_some()
    }

    /// Whether a melt is cut into nodes.
    #[inline]
    pub(super) fn melts_in_nodes(&self) -> bool {
        self.lumped.is_some()
    }

    /// Conductance of a seat on which nothing is frozen, its contact multiplied. \[W/K\]
    #[inline]
    pub(super) fn clear_seat_w_k(&self, on: OnSeat) -> f64 {
        let melt = self.path.melt.and_then(|melt| {
            let liquidus_c = melt.liquidus_c + on.melt_k;
            (liquidus_c < on.store_c).then_some(MeltWay { liquidus_c, ..melt })
        });
        let on = OnPath {
            contact: on.contact,
            inside: on.inside,
            thickness: on.thickness,
            store_c: on.store_c,
            pot_c: on.pot_c,
            boils: on.boils,
            melt,
        };
        self.path.clear(&on).w_k
    }

    /// Conductance of the seat, its contact multiplied, under a store with this heat. \[W/K\]
    #[inline]
    pub(super) fn seat_w_k(&self, on: OnSeat, store_j: f64) -> f64 {
        let g = self.clear_seat_w_k(on);
        match &self.solid {
            None => g,
            Some(solid) => {
                let part = (solid.at(store_j).0 - self.layer_elsewhere).clamp(0.0, 1.0);
                g / (1.0 + part * g * self.layer_k_w / on.inside)
            }
        }
    }

    /// Temperatures of the jacket's nodes in the steady state, the inner first. [°C]
    pub(super) fn steady_jacket_c(&self, store_c: f64, air_c: f64) -> (f64, f64) {
        let at = |warmth: f64| air_c + warmth * (store_c - air_c);
        (at(self.warmth.0), at(self.warmth.1))
    }

    /// The loss of a store at this temperature beside the one that is told.
    #[inline]
    pub(super) fn loss_share(&self, store_c: f64) -> f64 {
        self.loss_rise.share(store_c)
    }

    /// Vapour pressure of water and its slope. \[Pa, Pa/K\]
    #[inline]
    pub(super) fn vapour_pa(&self, water_c: f64) -> (f64, f64) {
        self.vapour_pa.at(water_c)
    }
}

/// A small count as a number.
pub(super) fn small(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::INFINITY, f64::from)
}

fn rounded_path(path: SeatPath) -> SeatPath {
    SeatPath {
        face_k_w: rounded(path.face_k_w),
        joint: match path.joint {
            SeatJoint::Even(w_k) => SeatJoint::Even(rounded(w_k)),
            SeatJoint::Gap(gap) => SeatJoint::Gap(Gap {
                still_m: rounded(gap.still_m),
                radiant_w_k4: rounded(gap.radiant_w_k4),
                ..gap
            }),
        },
        joint_k_w: rounded(path.joint_k_w),
        film_k_w: rounded(path.film_k_w),
        melt: path.melt.map(|melt| MeltWay {
            liquidus_c: rounded(melt.liquidus_c),
            k_w: rounded(melt.k_w),
            ..melt
        }),
    }
}

/// What describes a way to the food, for a fingerprint.
fn path_figures(path: &SeatPath) -> [f64; 9] {
    let (even_w_k, still_m, radiant_w_k4, steadiness) = match path.joint {
        SeatJoint::Even(w_k) => (w_k, 0.0, 0.0, 0.0),
        SeatJoint::Gap(gap) => {
            let steadiness = gap.steadiness.map_or(0.0, |steadiness| steadiness.figure());
            (0.0, gap.still_m, gap.radiant_w_k4, steadiness)
        }
    };
    let (liquidus_c, k_w) = path
        .melt
        .map_or((0.0, 0.0), |melt| (melt.liquidus_c, melt.k_w));
    [
        path.face_k_w,
        path.joint_k_w,
        path.film_k_w,
        even_w_k,
        still_m,
        radiant_w_k4,
        steadiness,
        liquidus_c,
        k_w,
    ]
}

fn rounded_row(row: NodeRow) -> NodeRow {
    let each = |values: [f64; MAX_NODES]| values.map(rounded);
    NodeRow {
        mass_share: each(row.mass_share),
        link_w_k: each(row.link_w_k),
        heater_share: each(row.heater_share),
        jacket_share: each(row.jacket_share),
        ..row
    }
}

/// The middle of the thermostat's hysteresis.
fn hold_j(net: &Network<'_>) -> f64 {
    net.thermostat_j
        .map_or(f64::INFINITY, |(out_j, in_j)| 0.5 * (out_j + in_j))
}
