//! What becomes of a melt besides cooling: it is carried to the kitchen, it stays liquid too long, a
//! cold pot wakes it.

use super::build::{Build, OnSeat, rounded, small};
use super::ensemble::{Ensemble, column};
use super::lean::greater;
use super::member::{Course, Member, Phase, SHORTEST_S, Stretch};
use super::noise::Noise;
use super::prior::Multiplier;
use super::step::{Fixed, Stage, Step, nodes as nodes_in_use};

/// No melt freezes sooner below its melting point than this. \[K\]
const LEAST_SUPERCOOLING_K: f64 = 3.0;
/// Steps in which a way to the kitchen is walked.
const WAY_STEPS: usize = 4;

/// So far past its nucleation a melt is sure to freeze. \[K\]
const WAKE_K: f64 = 0.01;
/// And so far past where it begins to freeze, as a share of its heat there, a melt does.
const SETS_SHARE: f64 = 1e-5;

impl Course<'_> {
    /// The share of a step at which a melt that is liquid too long freezes.
    pub(super) fn wakes<const N: usize>(&self, member: &Member<N>, step: &Step<N>) -> Option<f64> {
        if !member.is_liquid || self.build.sleep.is_none() {
            return None;
        }
        let at_c = |heat_j: &[f64; N]| self.build.liquid_c(self.coldest_j(member, heat_j)).0;
        let (before_c, after_c, wakes_c) = (
            at_c(&member.heat_j),
            at_c(&step.heat_j),
            member.nucleation_c,
        );
        (after_c + 2.0 * WAKE_K < wakes_c && wakes_c < before_c)
            .then(|| (before_c - wakes_c + WAKE_K) / (before_c - after_c))
    }

    /// Heat of the whole store if all of it were as cold as its coldest node. \[J\]
    fn coldest_j<const N: usize>(&self, member: &Member<N>, heat_j: &[f64; N]) -> f64 {
        let nodes = heat_j.iter().zip(self.build.row.mass_share);
        let per_whole = nodes.take(nodes_in_use::<N>(self.build));
        let coldest = per_whole
            .map(|(heat_j, share)| heat_j / share)
            .fold(f64::INFINITY, f64::min);
        coldest / member.capacity
    }

    /// The share of a step at which a melt without metal begins to freeze: what it lets through to the pot
    /// changes at once.
    pub(super) fn sets<const N: usize>(&self, member: &Member<N>, step: &Step<N>) -> Option<f64> {
        let sets_j = self.build.sets_j?;
        if member.phase == Phase::NoPot || member.is_liquid {
            return None;
        }
        let per_whole = 1.0 / member.capacity;
        let (before_j, after_j) = (member.heat_j[0] * per_whole, step.heat_j[0] * per_whole);
        let past_j = SETS_SHARE * sets_j;
        (after_j + 2.0 * past_j < sets_j && sets_j < before_j)
            .then(|| (before_j - sets_j + past_j) / (before_j - after_j))
    }

    /// In which the frozen layer would change the seat's conductance by itself. \[s\]
    pub(super) fn layer_s<const N: usize>(
        &self,
        member: &Member<N>,
        fixed: &Fixed<'_, N>,
        first: &Stage<N>,
    ) -> f64 {
        if !self.build.freezes() || member.is_liquid {
            return f64::INFINITY;
        }
        let whole_j = |after_s: f64| {
            let heat_j = member.heat_j[0] + after_s * first.rates.node[0];
            heat_j / (self.build.row.mass_share[0] * member.capacity)
        };
        let boils = member.phase == Phase::Boiling;
        let later_w_k = fixed.seat_w_k(whole_j(SHORTEST_S), first.node_c[0], member.pot_c, boils);
        let change = (later_w_k / first.g_seat_w_k.max(1e-9) - 1.0).abs();
        SHORTEST_S / greater(change, 1e-9)
    }

    /// Temperature of a store that holds so much in all. [°C]
    fn mean_c<const N: usize>(&self, member: &Member<N>, heat_j: f64) -> f64 {
        let heat_j = heat_j / member.capacity;
        if member.is_liquid {
            self.build.liquid_c(heat_j).0
        } else {
            self.build.store_c(heat_j).0
        }
    }

    /// Half of the way from store to air, times two, of a store that holds so much in all: as its
    /// temperature half-way through a step without a pot has it, which may be hours. \[W/K\]
    pub(super) fn half_loss_w_k<const N: usize>(
        &self,
        member: &Member<N>,
        stretch: &Stretch,
        heat_j: f64,
    ) -> f64 {
        let told_w_k = self.build.g_half_w_k * member.loss;
        let mut store_c = self.mean_c(member, heat_j);
        if member.phase == Phase::NoPot {
            let [to_jacket, ..] = self.build.jacket_way;
            let lost_w = told_w_k * to_jacket * (store_c - member.jacket_c);
            let gained_j = 0.5 * stretch.duration_s * (stretch.heater_w - lost_w);
            store_c = self.mean_c(member, heat_j + gained_j);
        }
        told_w_k * self.build.loss_share(store_c)
    }

    /// Whether the melt is liquid by now.
    pub(super) fn melt_or_freeze<const N: usize>(&self, member: &mut Member<N>) {
        let Some(sleep) = &self.build.sleep else {
            return;
        };
        let coldest_j = self.coldest_j(member, &member.heat_j);
        if member.is_liquid {
            let frozen = self.build.liquid_c(coldest_j).0 < member.nucleation_c;
            let on_the_wall = member.is_seeded && coldest_j < sleep.liquid_j;
            member.is_liquid = !frozen && !on_the_wall;
        } else {
            member.is_liquid = sleep.liquid_j <= coldest_j && !member.is_seeded;
        }
    }
}

impl Ensemble {
    /// Draws where each melt freezes by itself.
    pub(super) fn draw_nucleation(&mut self, build: &Build, noise: Noise) {
        for member in 0..self.members() {
            let nucleation_c = build.sleep.as_ref().map_or(f64::NEG_INFINITY, |sleep| {
                let at_c = sleep.nucleation_c + sleep.nucleation_sd_k * noise.normal(member);
                at_c.min(sleep.liquid_c - LEAST_SUPERCOOLING_K)
            });
            self.set(column::NUCLEATION, member, nucleation_c);
        }
    }

    /// A store that is charged elsewhere is carried to the kitchen, if it is not there: what it loses
    /// on the way is gone when the pot goes in.
    pub(super) fn bring_in(&mut self, build: &Build, air_c: f64) {
        let Some(carried) = &build.carried else {
            return;
        };
        if self.indoors {
            return;
        }
        self.indoors = true;
        let step_s = carried.way_s / small(WAY_STEPS);
        for member in 0..self.members() {
            for _ in 0..WAY_STEPS {
                let store_c = self.store_c(build, member);
                let loss_w = rounded(carried.can.loss_w_k(store_c, air_c)) * (store_c - air_c);
                for node in 0..build.row.count {
                    let share = build.row.mass_share[node];
                    let left_j = self.get(column::HEAT + node, member) - share * step_s * loss_w;
                    self.set(column::HEAT + node, member, left_j);
                }
            }
        }
    }

    /// A pot that chills the melt on its wall below the point where that freezes is the seed that a
    /// melt below its melting point waits for.
    pub(super) fn seed_with(&mut self, build: &Build, member: usize) {
        let Some(sleep) = &build.sleep else {
            return;
        };
        let store_c = self.seat_c(build, member);
        let factor = Multiplier::Contact.index();
        let contact =
            self.get(column::FACTOR + factor, member) * self.get(column::CONTACT_POT, member);
        let pot_c = self.get(column::POT_C, member);
        let seat_w_k = build.clear_seat_w_k(OnSeat {
            contact,
            inside: self.get(column::FACTOR + factor, member),
            thickness: 1.0,
            store_c,
            pot_c,
            boils: false,
            melt_k: 0.0,
        });
        let fall_k = store_c - pot_c;
        let wall_c = if sleep.touches_pot {
            pot_c
        } else {
            store_c - fall_k * seat_w_k / (seat_w_k + sleep.film_w_k)
        };
        if self.get(column::NUCLEATION, member) <= wall_c {
            return;
        }
        self.set(column::SEEDED, member, 1.0);
        if store_c < sleep.liquid_c {
            self.set(column::LIQUID, member, 0.0);
        }
    }

    /// Puts a member's jacket where it has long been under this store.
    pub(super) fn set_jacket(&mut self, build: &Build, member: usize, air_c: f64) {
        let store_c = self.store_c(build, member);
        let (inner_c, outer_c) = build.steady_jacket_c(store_c, air_c);
        self.set(column::JACKET, member, inner_c);
        self.set(column::OUTER, member, outer_c);
    }
}
