//! One member carried through a stretch of constant light and air, by the equations of
//! [`crate::network`].

use super::build::Build;
use super::lean::{cube_root, greater, lesser};
use super::load::{Load, Slowing};
use super::prior::MOST_TILT;
use super::step::{At, Fixed, Stage, Step, nodes};
use crate::water::CP_J_KGK;

/// Steps with a pot in, as a share of the time in which pot and store come together.
const POT_STEP: f64 = 0.35;
/// For the gap between them that this holds; it is longer for a narrower one. \[K\]
const WIDE_GAP_K: f64 = 100.0;
const LEAST_GAP_K: f64 = 0.05;
/// The pot warms by so much in a step at most. \[K\]
const POT_STEP_K: f64 = 12.0;
/// Shortest and longest step with a pot in. \[s\]
const POT_STEPS_S: (f64, f64) = (4.0, 600.0);
/// A store cut into nodes meets the pot with its first node alone: the first step, and how much
/// longer than the time since then the next may be. \[s\]
const FIRST_STEP_S: f64 = 8.0;
const STEP_GROWTH: f64 = 0.5;
/// A step is shortened to this share of it while the nodes' slopes foretell their temperatures worse
/// than this, but not below the last. \[K, s\]
const KINK_SHARE: f64 = 0.4;
const KINK_K: f64 = 1.5;
const KINK_S: f64 = 1.0;
/// Closer than this to the boil is at the boil. \[K\]
const AT_BOIL_K: f64 = 1e-9;
/// By how much a step may change the conductance of a seat that freezes, and the shortest such. \[s\]
const LAYER_SHARE: f64 = 0.2;
pub(super) const SHORTEST_S: f64 = 1.0;
/// Tries to end a step where a melt freezes at last, or begins to.
const MELT_TRIES: usize = 3;
/// After so many steps in a row that are shorter than this, time goes on all the same. \[s\]
const MOST_STANDS: u32 = 20;
const LEAST_MOVE_S: f64 = 1e-3;
/// What is left of a stretch shorter than this is over. \[s\]
const OVER_S: f64 = 1e-6;

/// What a member's pot is doing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Phase {
    /// There is none, or it was taken out.
    #[default]
    NoPot,
    /// Off the boil.
    Simple,
    /// At the local boiling point.
    Boiling,
    /// The water is gone.
    Dry,
}

/// A member while it is carried.
#[derive(Debug, Clone, Copy)]
pub(super) struct Member<const N: usize> {
    pub(super) heat_j: [f64; N],
    pub(super) jacket_c: f64,
    /// Of a jacket of two nodes, the outer one. [°C]
    pub(super) outer_c: f64,
    /// The melt is liquid, above its melting point or below.
    pub(super) is_liquid: bool,
    /// A wall in it is cold enough for it to freeze there.
    pub(super) is_seeded: bool,
    /// Where it freezes by itself. [°C]
    pub(super) nucleation_c: f64,
    pub(super) phase: Phase,
    pub(super) pot_c: f64,
    pub(super) water_kg: f64,
    pub(super) doneness: f64,
    pub(super) boil_s: f64,
    /// When it first boiled, was done, had boiled long enough, lost its water; infinite before.
    pub(super) boils_at_s: f64,
    pub(super) done_at_s: f64,
    pub(super) safe_at_s: f64,
    pub(super) dry_at_s: f64,
    /// Multipliers.
    pub(super) capacity: f64,
    /// How much more of the heat the far side of the store gets.
    pub(super) tilt: f64,
    /// How far the thermostat is off. \[K\]
    pub(super) cut_out_k: f64,
    /// And the melting point. \[K\]
    pub(super) melt_k: f64,
    pub(super) loss: f64,
    pub(super) contact: f64,
    /// Of the way through the store to the seat.
    pub(super) inside: f64,
    /// Pot and dry food, beside what was told.
    pub(super) dry: f64,
    pub(super) pot_air: f64,
    pub(super) pot_steam: f64,
    pub(super) cook_time: f64,
    pub(super) slowing: Slowing,
}

/// A stretch of constant light and air.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stretch {
    /// When it begins, on the kitchen clock. \[s\]
    pub(super) start_s: f64,
    pub(super) duration_s: f64,
    /// Heater of this member, while the thermostat lets it. \[W\]
    pub(super) heater_w: f64,
    pub(super) air_c: f64,
    pub(super) open: bool,
}

/// Where a member's heat went. \[J\]
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Account {
    pub(super) heater_j: f64,
    pub(super) jacket_air_j: f64,
    pub(super) open_j: f64,
    pub(super) pot_air_j: f64,
    pub(super) steam_j: f64,
}

/// A pot that is in, and how a member's own quantities differ from it.
pub(super) struct Course<'a> {
    pub(super) build: &'a Build,
    pub(super) load: Option<&'a Load>,
    /// Take the pot out once it is ready.
    pub(super) out_when_ready: bool,
    /// Only the pots are asked about: a member without one is left where it is.
    pub(super) pots_only: bool,
}

impl Course<'_> {
    /// Carries a member through a stretch.
    pub(super) fn carry<const N: usize>(
        &self,
        member: &mut Member<N>,
        stretch: &Stretch,
        account: &mut Account,
    ) {
        let mut left_s = stretch.duration_s;
        let mut stood = 0;
        while OVER_S < left_s {
            let at_s = stretch.start_s + stretch.duration_s - left_s;
            if let (Phase::NoPot, Some(lumped)) = (member.phase, &self.build.lumped) {
                let rest = Stretch {
                    start_s: at_s,
                    duration_s: left_s,
                    ..*stretch
                };
                return self.idle(lumped, member, &rest, account);
            }
            let moved_s = self.advance(member, stretch, at_s, left_s, account);
            // One that only changes to and fro waits for a moment.
            stood = if moved_s < LEAST_MOVE_S { stood + 1 } else { 0 };
            left_s -= if MOST_STANDS < stood {
                SHORTEST_S.max(moved_s)
            } else {
                moved_s
            };
        }
    }

    /// One step, or the part of it up to a change of phase; its length. \[s\]
    fn advance<const N: usize>(
        &self,
        member: &mut Member<N>,
        stretch: &Stretch,
        at_s: f64,
        left_s: f64,
        account: &mut Account,
    ) -> f64 {
        let fixed = self.fixed(member, stretch);
        if member.phase == Phase::Boiling && fixed.surplus_w(&member.heat_j) < 0.0 {
            member.phase = Phase::Simple;
            return 0.0;
        }
        let from = At {
            heat_j: member.heat_j,
            jacket_c: member.jacket_c,
            outer_c: member.outer_c,
            pot_c: member.pot_c,
        };
        let first = fixed.stage(&from);
        let since_s = self
            .load
            .map_or(at_s, |load| at_s - super::seconds(load.put_in));
        let mut h_s = self.step_s(member, &fixed, &first, (since_s, left_s));
        let mut step = self.tried(&fixed, member, &from, &first, h_s);
        for _ in 0..MELT_TRIES {
            let Some(share) = self.wakes(member, &step).or(self.sets(member, &step)) else {
                break;
            };
            h_s *= share;
            step = self.tried(&fixed, member, &from, &first, h_s);
        }
        // Past the end of melting the store cools faster than its slope foretold.
        while member.phase != Phase::NoPot && KINK_K < step.kink_k && KINK_S < h_s {
            h_s *= KINK_SHARE;
            step = self.tried(&fixed, member, &from, &first, h_s);
        }

        let Some((part, change)) = self.first_change(member, &fixed, &step, h_s) else {
            self.take(member, &step, at_s, h_s, account);
            if member.phase == Phase::Simple && self.build.boiling_c < member.pot_c {
                self.flash(member, account);
            }
            return h_s;
        };
        let moved_s = part * h_s;
        if OVER_S < moved_s {
            let step = self.tried(&fixed, member, &from, &first, moved_s);
            self.take(member, &step, at_s, moved_s, account);
        }
        match change {
            Phase::Boiling => {
                self.flash(member, account);
                member.boils_at_s = member.boils_at_s.min(at_s + moved_s);
                if !self.load.is_some_and(Load::cooks) {
                    member.done_at_s = member.done_at_s.min(member.boils_at_s);
                }
            }
            Phase::Dry => {
                // Steam that the interpolation had too much of warms the pot instead.
                let least_kg = self.load.map_or(0.0, |load| load.least_water_kg);
                let owed_kg = least_kg - member.water_kg;
                let owed_j = owed_kg * self.build.h_fg_j_kg;
                account.steam_j -= owed_j + owed_kg * CP_J_KGK * member.pot_c;
                member.water_kg = least_kg;
                member.pot_c += owed_j / self.capacity_j_k(member);
                member.dry_at_s = member.dry_at_s.min(at_s + moved_s);
            }
            Phase::Simple | Phase::NoPot => {}
        }
        member.phase = change;
        self.see_whether_ready(member, at_s + moved_s);
        moved_s
    }

    fn tried<const N: usize>(
        &self,
        fixed: &Fixed<'_, N>,
        member: &Member<N>,
        from: &At<N>,
        first: &Stage<N>,
        h_s: f64,
    ) -> Step<N> {
        let pot_k_j = 1.0 / self.pot_capacity_j_k(member, first, h_s);
        fixed.held(from, first, pot_k_j, h_s)
    }

    /// The first change of phase within a step: the share of it that comes before, and to what.
    fn first_change<const N: usize>(
        &self,
        member: &Member<N>,
        fixed: &Fixed<'_, N>,
        step: &Step<N>,
        h_s: f64,
    ) -> Option<(f64, Phase)> {
        let load = self.load?;
        if !matches!(member.phase, Phase::Simple | Phase::Boiling) {
            return None;
        }
        let boiling_c = self.build.boiling_c;
        let first = if member.phase == Phase::Simple {
            // One that has just gone off the boil falls first, whatever comes within the step.
            let rises = member.pot_c < boiling_c - AT_BOIL_K || 0.0 <= step.pot_k_s;
            (boiling_c + AT_BOIL_K < step.pot_c && rises).then(|| {
                let risen_k = step.pot_c - member.pot_c;
                let missing_k = boiling_c - member.pot_c;
                let part = along(h_s * step.pot_k_s, risen_k, missing_k);
                (part, Phase::Boiling)
            })
        } else {
            let after_w = fixed.surplus_w(&step.heat_j);
            (after_w < 0.0).then(|| {
                let before_w = fixed.surplus_w(&member.heat_j);
                let part = before_w / (before_w - after_w);
                (part.clamp(0.0, 1.0), Phase::Simple)
            })
        };
        let spare_kg = member.water_kg - load.least_water_kg;
        if step.steamed_kg <= spare_kg {
            return first;
        }
        let part = along(step.steam_kg_s * h_s, step.steamed_kg, spare_kg);
        match first {
            Some((sooner, _)) if sooner < part => first,
            _ => Some((part, Phase::Dry)),
        }
    }

    /// Brings a pot to the boiling point: what is above it turns to steam at once, and what the
    /// interpolation fell short by is owed by the steam.
    fn flash<const N: usize>(&self, member: &mut Member<N>, account: &mut Account) {
        let excess_j = self.capacity_j_k(member) * (member.pot_c - self.build.boiling_c);
        let flashed_kg = excess_j / self.build.h_fg_j_kg;
        member.water_kg = (member.water_kg - flashed_kg).max(0.0);
        account.steam_j += flashed_kg * (self.build.h_fg_j_kg + CP_J_KGK * self.build.boiling_c);
        member.pot_c = self.build.boiling_c;
    }

    fn fixed<const N: usize>(&self, member: &Member<N>, stretch: &Stretch) -> Fixed<'_, N> {
        let row = &self.build.row;
        let n = nodes::<N>(self.build);
        let mut whole = [0.0; N];
        for (whole, share) in whole.iter_mut().zip(row.mass_share).take(n) {
            *whole = 1.0 / (share * member.capacity);
        }
        let heat_j: f64 = member.heat_j.iter().take(n).sum();
        Fixed {
            course: self,
            phase: member.phase,
            is_liquid: member.is_liquid,
            whole,
            g_half_w_k: self.half_loss_w_k(member, stretch, heat_j),
            g_open_w_k: if stretch.open {
                self.build.g_open_w_k
            } else {
                0.0
            },
            contact: member.contact,
            thickness: self.load.map_or(1.0, |load| load.thickness),
            inside: member.inside,
            melt_k: member.melt_k,
            tilt: member.tilt.clamp(-MOST_TILT, MOST_TILT),
            g_pot_air_w_k: self
                .load
                .map_or(0.0, |load| load.g_air_w_k * member.pot_air),
            surface_w_pa: self
                .load
                .map_or(0.0, |load| load.surface_w_pa * member.pot_steam),
            air_c: stretch.air_c,
            heater_w: stretch.heater_w,
            hold_j: self.build.hold_j + member.cut_out_k * self.build.hold_j_k,
        }
    }

    /// Length of the next step. \[s\]
    fn step_s<const N: usize>(
        &self,
        member: &Member<N>,
        fixed: &Fixed<'_, N>,
        first: &Stage<N>,
        (since_s, left_s): (f64, f64),
    ) -> f64 {
        if member.phase == Phase::NoPot {
            return left_s;
        }
        // How fast pot and first node come together, and how far they still have to.
        let pot_k_j = if member.phase == Phase::Boiling {
            0.0
        } else {
            1.0 / self.capacity_j_k(member)
        };
        let node_k_j = first.node_k_j[0];
        let mut closing_s = (first.g_seat_w_k + first.steam_w_k) * pot_k_j;
        if self.build.row.count == 1 {
            closing_s += first.g_seat_w_k * node_k_j;
        }
        let closing_s = greater(closing_s, 1e-6);
        let pot_k_s = first.rates.pot * pot_k_j;
        let gap_k_s = (first.rates.node[0] * node_k_j - pot_k_s).abs();
        let gap_k = greater(gap_k_s / closing_s, LEAST_GAP_K);
        // The error of a step goes with the cube of its length.
        let wanted_s = POT_STEP / closing_s * cube_root(WIDE_GAP_K / gap_k);
        let warming_s = POT_STEP_K / greater(pot_k_s.abs(), 1e-6);
        let mut h_s = lesser(warming_s, wanted_s).clamp(POT_STEPS_S.0, POT_STEPS_S.1);
        let layer_s = self.layer_s(member, fixed, first);
        h_s = greater(lesser(LAYER_SHARE * layer_s, h_s), SHORTEST_S);
        if 1 < self.build.row.count {
            h_s = lesser(FIRST_STEP_S + STEP_GROWTH * since_s, h_s);
        }
        if left_s <= h_s {
            left_s
        } else if left_s < 2.0 * h_s {
            0.5 * left_s
        } else {
            h_s
        }
    }

    fn capacity_j_k<const N: usize>(&self, member: &Member<N>) -> f64 {
        self.dry_j_k(member) + CP_J_KGK * member.water_kg
    }

    /// Pot, lid and dry food of a member. \[J/K\]
    fn dry_j_k<const N: usize>(&self, member: &Member<N>) -> f64 {
        self.load.map_or(1.0, |load| member.dry * load.c_dry_j_k)
    }

    /// The pot's heat capacity half-way through a step in which it evaporates.
    fn pot_capacity_j_k<const N: usize>(
        &self,
        member: &Member<N>,
        first: &Stage<N>,
        h_s: f64,
    ) -> f64 {
        let half_kg = match member.phase {
            Phase::Simple => 0.5 * h_s * first.steam_w / self.build.h_fg_j_kg,
            _ => 0.0,
        };
        self.dry_j_k(member) + CP_J_KGK * greater(member.water_kg - half_kg, 0.0)
    }

    /// Makes a step a member's own, with what it did to the pot.
    fn take<const N: usize>(
        &self,
        member: &mut Member<N>,
        step: &Step<N>,
        at_s: f64,
        h_s: f64,
        account: &mut Account,
    ) {
        let before_c = member.pot_c;
        let before_kg = member.water_kg;
        member.heat_j = step.heat_j;
        member.jacket_c = step.jacket_c;
        member.outer_c = step.outer_c;
        self.melt_or_freeze(member);
        account.heater_j += step.heater_j;
        account.jacket_air_j += step.jacket_air_j;
        account.open_j += step.open_j;
        let Some(load) = self.load.filter(|_| member.phase != Phase::NoPot) else {
            return;
        };
        account.pot_air_j += step.pot_air_j;
        member.pot_c = step.pot_c;
        match member.phase {
            Phase::Boiling => {
                member.pot_c = self.build.boiling_c;
                member.water_kg -= step.steamed_kg;
                let rate = load.cook_rate_per_s(member.pot_c, member.slowing);
                self.cook(member, rate, at_s, h_s);
                let before_s = member.boil_s;
                member.boil_s += h_s;
                if load.full_boil_s <= member.boil_s {
                    let safe_s = at_s + (load.full_boil_s - before_s).max(0.0);
                    member.safe_at_s = member.safe_at_s.min(safe_s);
                }
            }
            Phase::Simple => {
                member.water_kg -= step.steamed_kg;
                if load.cooks() {
                    let along_k = h_s * step.pot_k_s;
                    let way = (before_c, along_k, step.pot_c);
                    let rate = load.mean_cook_rate_per_s(way, member.slowing);
                    self.cook(member, rate, at_s, h_s);
                }
            }
            Phase::Dry | Phase::NoPot => {}
        }
        let steamed_kg = before_kg - member.water_kg;
        account.steam_j +=
            steamed_kg * (self.build.h_fg_j_kg + CP_J_KGK * 0.5 * (before_c + member.pot_c));
        self.see_whether_ready(member, at_s + h_s);
    }

    fn cook<const N: usize>(&self, member: &mut Member<N>, rate_per_s: f64, at_s: f64, h_s: f64) {
        let gained = h_s * rate_per_s / member.cook_time;
        let missing = 1.0 - member.doneness;
        if 0.0 < gained && 0.0 < missing && missing <= gained {
            member.done_at_s = member.done_at_s.min(at_s + h_s * missing / gained);
        }
        member.doneness += gained;
    }

    fn see_whether_ready<const N: usize>(&self, member: &mut Member<N>, now_s: f64) {
        if self.out_when_ready && member.ready_at_s() <= now_s {
            member.phase = Phase::NoPot;
        }
    }
}

impl<const N: usize> Member<N> {
    /// When the food is done and safe. \[s\]
    pub(super) fn ready_at_s(&self) -> f64 {
        self.done_at_s.max(self.safe_at_s)
    }
}

/// The share of a step at which what changes by `whole` over it, and by `first` at the pace of its
/// start, has changed by `part`: on the parabola through both.
pub(super) fn along(first: f64, whole: f64, part: f64) -> f64 {
    if part <= 0.0 {
        return 0.0;
    }
    let bend = whole - first;
    // The root of bend x^2 + first x - part that loses no digits.
    let root = first * first + 4.0 * bend * part;
    let share = 2.0 * part / (first + root.max(0.0).sqrt());
    if share.is_finite() && 0.0 < share {
        share.min(1.0)
    } else {
        (part / whole).clamp(0.0, 1.0)
    }
}

#[cfg(test)]
#[path = "member_tests.rs"]
mod tests;
