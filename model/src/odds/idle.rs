//! A melt among metal while no pot is in.
//!
//! It is cut into nodes for the sake of the pot, whose pull they feel within seconds. Between pots hours
//! pass, in which heat only evens out between them; so the store then goes as one node, and within it
//! heat flows by secants of temperature over heat, implicitly: no step is too long for that, and no
//! node gets hotter than its hottest neighbour was, whatever melts or freezes.

use super::build::Build;
use super::member::{Account, Course, Member, Stretch};
use super::step::nodes;

/// Steps in which the heat of a stretch evens out, each twice as long as the one before.
const PARTS: u32 = 4;
/// Nodes that differ by less than this of their heat are even.
const EVEN_SHARE: f64 = 1e-7;

impl Course<'_> {
    /// Carries a member without a pot. `lumped` is the same build as one node.
    pub(super) fn idle<const N: usize>(
        &self,
        lumped: &Build,
        member: &mut Member<N>,
        stretch: &Stretch,
        account: &mut Account,
    ) {
        let n = nodes::<N>(self.build);
        let before_j: f64 = member.heat_j.iter().take(n).sum();
        let mut whole = *member;
        whole.heat_j = [0.0; N];
        whole.heat_j[0] = before_j;
        let course = Course {
            build: lumped,
            ..*self
        };
        course.carry(&mut whole, stretch, account);
        let gained_j = whole.heat_j[0] - before_j;
        let (heat_j, was_liquid) = (member.heat_j, member.is_liquid);
        *member = whole;
        member.heat_j = heat_j;
        for (heat_j, share) in member.heat_j.iter_mut().zip(self.build.row.mass_share) {
            *heat_j += share * gained_j;
        }
        // It froze as a whole, or not at all; it is molten when all of it is.
        member.is_liquid &= was_liquid;
        self.even_out(member, stretch.duration_s);
        self.melt_or_freeze(member);
    }

    /// Heat flows between the nodes for so long.
    fn even_out<const N: usize>(&self, member: &mut Member<N>, duration_s: f64) {
        let row = &self.build.row;
        let n = nodes::<N>(self.build);
        let mut held = [0.0; N];
        let mut heat_j = [0.0; N];
        for node in 0..n {
            held[node] = row.mass_share[node] * member.capacity;
            heat_j[node] = member.heat_j[node] / held[node];
        }
        let store_c = |heat_j: f64| {
            if member.is_liquid {
                self.build.liquid_c(heat_j)
            } else {
                self.build.store_c(heat_j)
            }
        };
        let mut part_s = duration_s / f64::from((1 << PARTS) - 1);
        for _ in 0..PARTS {
            let most = heat_j.iter().take(n).fold(f64::MIN, |a, b| a.max(*b));
            let least = heat_j.iter().take(n).fold(f64::MAX, |a, b| a.min(*b));
            if most - least <= EVEN_SHARE * most.abs() {
                break;
            }
            // Eliminated from the seat on, then read off backwards.
            let (mut carries, mut gives) = ([0.0; N], [0.0; N]);
            let mut before = 0.0;
            for node in 0..n {
                let after = if node + 1 < n {
                    let apart_j = heat_j[node + 1] - heat_j[node];
                    let (here_c, slope) = store_c(heat_j[node]);
                    let per_j = if EVEN_SHARE * most.abs() < apart_j.abs() {
                        (store_c(heat_j[node + 1]).0 - here_c) / apart_j
                    } else {
                        slope
                    };
                    part_s * member.inside * row.link_w_k[node] * per_j.max(0.0)
                } else {
                    0.0
                };
                let (carried, given) = match node {
                    0 => (0.0, 0.0),
                    _ => (carries[node - 1], gives[node - 1]),
                };
                let pivot = held[node] + before * (1.0 - carried) + after;
                carries[node] = after / pivot;
                gives[node] = (held[node] * heat_j[node] + before * given) / pivot;
                before = after;
            }
            let mut next_j = 0.0;
            for node in (0..n).rev() {
                next_j = gives[node] + carries[node] * next_j;
                heat_j[node] = next_j;
            }
            part_s *= 2.0;
        }
        for node in 0..n {
            member.heat_j[node] = heat_j[node] * held[node];
        }
    }
}
