//! A cooker made ready for many members: every figure that they share, in tables that take no more
//! than a multiplication to read.
//!
//! What the platforms make of transcendental functions differs in its last digit, so they are `libm`'s
//! throughout this crate; the rest are the four operations and square roots, which IEEE 754 fixes.
//! What passes this door and the sky's is rounded to 24 binary digits besides.

use super::digest::Digest;
use super::tilt::lever;
use crate::cooker::{Carried, Cooker};
use crate::enthalpy::EnthalpyCurve;
use crate::jacket::Jacket;
use crate::network::{JacketNode, JacketPair, MAX_NODES, Network, NodeRow};
use crate::seat::{BOILING_FILM_W_M2K, INNER_FILM_W_M2K, Seat};
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
/// Share of the loss that follows the conductivity of the insulation; the lid's gap does not.
/// Inferred.
const FOLLOWS_STORE: f64 = 0.75;
/// Rise of a measured loss with the store: that of mineral insulation. From memory. \[1/K\]
const MEASURED_RISE_K: f64 = 0.0012;
/// The film of water in the pot beside its mean: free convection over the hot bottom lets 580 W/m2K
/// through at 25 °C and 1160 at 95, for 10 K (Nu = 0.15 Ra^(1/3)). [°C]
const FILM_POINTS: [(f64, f64); 2] = [
    (25.0, 580.0 / INNER_FILM_W_M2K.value),
    (95.0, 1160.0 / INNER_FILM_W_M2K.value),
];
/// Least of it that is reckoned with.
const LEAST_FILM: f64 = 0.4;
/// The loss is never less or more than these shares of the told one.
const LOSS_SHARES: (f64, f64) = (0.4, 1.6);

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
            touches_pot: false,
        })
    }
}

/// A melt that is all liquid.
#[derive(Debug, Clone, Copy)]
struct MeltBody {
    /// It is, above this. [°C]
    liquidus_c: f64,
    /// From its mean to its wall. \[K/W\]
    k_w: f64,
    /// Whether metal carries its heat to the wall.
    has_metal: bool,
}

/// A pot on the seat.
#[derive(Debug, Clone, Copy)]
pub(super) struct OnSeat {
    /// Multiplies what lies between the store and the pot, and within the store.
    pub(super) contact: f64,
    pub(super) inside: f64,
    /// The film in the pot. \[K/W\]
    pub(super) film_k_w: f64,
    pub(super) store_c: f64,
    pub(super) pot_c: f64,
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
    /// By what share the loss rises with the store, and where it is the one above: insulation
    /// conducts better when it is hot. \[1/K, °C\]
    loss_rise: (f64, f64),
    /// Conductances of the jacket as multiples of it: from the store, across from node to node, and to
    /// the air; a jacket of one node has nothing across.
    pub(super) jacket_way: [f64; 3],
    /// The node next to the store, or the only one. \[J/K\]
    pub(super) c_jacket_j_k: f64,
    /// The outer node; infinite without one. \[J/K\]
    pub(super) c_outer_j_k: f64,
    /// How warm both are in the steady state, 0 at the air to 1 at the store.
    pub(super) warmth: (f64, f64),
    /// From the store to the pot, without what changes in the pot. \[K/W\]
    joint_k_w: f64,
    /// The film of water in the pot, at its mean; 0 where it is taken to be the same always. \[K/W\]
    film_k_w: f64,
    /// A melt's way to its wall while it is all liquid.
    melt_body: Option<MeltBody>,
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
    /// How a melt stays liquid below its melting point; of a store at one temperature.
    pub(super) sleep: Option<Sleep>,
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
        Ok(Self {
            row: rounded_row(parts.row),
            lever: lever(&parts.row),
            g_half_w_k: rounded(2.0 * parts.g_loss_w_k),
            loss_rise: (0.0, 0.0),
            jacket_way,
            c_jacket_j_k: rounded(inner.capacity_j_k),
            c_outer_j_k,
            warmth: (inner.warmth, outer_warmth),
            joint_k_w: rounded(1.0 / parts.seat.g_contact_w_k),
            film_k_w: 0.0,
            melt_body: None,
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
            sleep: Sleep::of(rig, curve).filter(|_| parts.row.count == 1),
            curve: curve.clone(),
            store_c: Table::new(low_j, step_j, store_c.collect()),
            solid,
            vapour_pa: Table::new(VAPOUR_FROM_C, 1.0, vapour_pa.collect()),
        })
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
            self.joint_k_w,
            self.film_k_w,
            self.melt_body.map_or(0.0, |body| body.k_w),
            self.layer_k_w,
            self.layer_elsewhere,
            self.g_open_w_k,
            self.hold_j,
            self.hold_j_k,
            self.loss_rise.0,
            self.loss_rise.1,
            self.cutout_c,
            self.boiling_c,
            self.h_fg_j_kg,
            self.c_outer_j_k,
            self.warmth.0,
            self.warmth.1,
            self.melt_body.map_or(0.0, |body| body.liquidus_c),
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

    /// Film of water in a pot at this temperature, on the boil or off it. \[K/W\]
    #[inline]
    pub(super) fn film_k_w(&self, pot_c: f64, is_boiling: bool) -> f64 {
        if is_boiling {
            return self.film_k_w * (INNER_FILM_W_M2K.value / BOILING_FILM_W_M2K.value);
        }
        let [(from_c, from), (to_c, to)] = FILM_POINTS;
        let share = from + (pot_c - from_c) * ((to - from) / (to_c - from_c));
        self.film_k_w / share.max(LEAST_FILM)
    }

    /// Conductance of a seat on which nothing is frozen, its contact multiplied. \[W/K\]
    ///
    /// Among metal the wall of a melt stays at its melting point while there is any left to freeze
    /// there, however far it is from the middle; without, what freezes there is in the way at once.
    #[inline]
    pub(super) fn clear_seat_w_k(&self, on: OnSeat) -> f64 {
        let g = on.contact / (self.joint_k_w + on.film_k_w);
        let Some(body) = self.melt_body.filter(|body| body.liquidus_c < on.store_c) else {
            return g;
        };
        let through_w_k = g / (1.0 + g * body.k_w / on.inside);
        if !body.has_metal {
            return through_w_k;
        }
        let share = (body.liquidus_c - on.pot_c) / (on.store_c - on.pot_c);
        through_w_k.max(share.clamp(0.0, 1.0) * g)
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
        let (rise_k, told_c) = self.loss_rise;
        (1.0 + rise_k * (store_c - told_c)).clamp(LOSS_SHARES.0, LOSS_SHARES.1)
    }

    /// Corrects for what a network of constant conductances leaves out. The loss rises with the store
    /// as this cooker's jacket does; a measured one is taken to be that of a store half-way to its
    /// cut-out too. The film in the pot grows to the boil. What passes for one temperature is hotter
    /// in its middle than at the seat.
    pub(super) fn corrected_for(
        mut self,
        cooker: &Cooker,
        rig: &Rig,
    ) -> Result<Self, TonightError> {
        let told_c = 0.5 * (self.boiling_c + self.cutout_c.max(self.boiling_c));
        let loss_w_k = |store_c| Ok(cooker.jacket.thermal(store_c, FRESH_WATER_C)?.loss_w_k);
        let rise_k = match &cooker.jacket {
            Jacket::Measured { .. } => MEASURED_RISE_K,
            Jacket::Layers(_) | Jacket::Flask { .. } => {
                let told: Result<f64, TonightError> = loss_w_k(told_c);
                let cooler = 1.0 - loss_w_k(COOL_STORE_C)? / told?;
                FOLLOWS_STORE * cooler / (told_c - COOL_STORE_C)
            }
        };
        self.loss_rise = (rounded(rise_k), told_c);
        if let Some(sleep) = &mut self.sleep {
            sleep.touches_pot = cooker.contact.seat == Seat::SunkInMelt;
        }
        let film_k_w = 1.0 / (INNER_FILM_W_M2K.value * rig.seat_m2());
        self.joint_k_w -= film_k_w;
        match rig.melting_c() {
            None if self.row.count == 1 => self.joint_k_w += rig.body_k_w(),
            None => {}
            Some((_, liquidus_c)) => {
                self.melt_body = Some(MeltBody {
                    liquidus_c,
                    k_w: rounded(rig.body_k_w()),
                    has_metal: cooker.store.metal.is_some(),
                });
            }
        }
        self.joint_k_w = rounded(self.joint_k_w.max(0.0));
        self.film_k_w = rounded(film_k_w);
        Ok(self)
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
