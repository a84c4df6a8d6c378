//! The linear system of one implicit step: a row of nodes, the jacket that touches them all, and
//! the pot on the first.

#![allow(
    clippy::needless_range_loop,
    reason = "several short arrays are walked side by side, and their first few places only"
)]

/// Heat that flows into each part in one stage. \[W\]
#[derive(Debug, Clone, Copy)]
pub(super) struct Rates<const N: usize> {
    pub(super) node: [f64; N],
    pub(super) jacket: f64,
    /// Of a jacket of two nodes, the outer one.
    pub(super) outer: f64,
    pub(super) pot: f64,
}

/// The conductances times `gamma h`, and the inverse heat capacities.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stiffness<const N: usize> {
    pub(super) count: usize,
    /// From each node to the next.
    pub(super) link: [f64; N],
    /// From each node to the jacket.
    pub(super) to_jacket: [f64; N],
    /// From the jacket to the air, or to its outer node.
    pub(super) jacket_outward: f64,
    pub(super) outer_to_air: f64,
    /// From the first node to the air.
    pub(super) open: f64,
    pub(super) seat: f64,
    /// From the pot to the air, evaporation with it.
    pub(super) pot_to_air: f64,
    /// Whether the pot's temperature is free.
    pub(super) pot_is_free: bool,
    /// Kelvins per joule.
    pub(super) node_k_j: [f64; N],
    pub(super) jacket_k_j: f64,
    /// 0 where there is no outer node.
    pub(super) outer_k_j: f64,
    pub(super) pot_k_j: f64,
}

/// `1 - gamma h J`, taken apart.
#[derive(Debug, Clone, Copy)]
pub(super) struct Factors<'s, const N: usize> {
    of: &'s Stiffness<N>,
    /// Inverse of what is left on the diagonal.
    inverse: [f64; N],
    /// What is taken of each row into the next.
    below: [f64; N],
    /// How the jacket's rate shifts each node.
    by_jacket: [f64; N],
    /// Of each node's rate, what comes to the one before, and to the jacket.
    inward: [f64; N],
    into_jacket: [f64; N],
    jacket_inverse: f64,
    outer_inverse: f64,
    pot_inverse: f64,
}

impl<const N: usize> Rates<N> {
    pub(super) const NONE: Self = Self {
        node: [0.0; N],
        jacket: 0.0,
        outer: 0.0,
        pot: 0.0,
    };
}

impl<const N: usize> Stiffness<N> {
    /// Nodes in use.
    #[inline]
    fn count(&self) -> usize {
        if N == 1 { 1 } else { self.count.min(N) }
    }
}

impl<'s, const N: usize> Factors<'s, N> {
    #[inline]
    pub(super) fn new(of: &'s Stiffness<N>) -> Self {
        let n = of.count();
        let mut to_jacket = 0.0;
        for node in 0..n {
            to_jacket += of.to_jacket[node];
        }
        let outer_inverse = 1.0 / (1.0 + of.outer_k_j * (of.jacket_outward + of.outer_to_air));
        let through_outer = of.jacket_outward * of.outer_k_j * outer_inverse;
        let outward = of.jacket_outward * (1.0 - through_outer);
        let jacket_own = 1.0 + of.jacket_k_j * (to_jacket + outward);
        let pot_inverse = if of.pot_is_free {
            1.0 / (1.0 + of.pot_k_j * (of.seat + of.pot_to_air))
        } else {
            0.0
        };

        let mut inverse = [0.0; N];
        let mut below = [0.0; N];
        let mut by_jacket = [0.0; N];
        let mut inward = [0.0; N];
        let mut into_jacket = [0.0; N];
        for node in 0..n {
            into_jacket[node] = of.to_jacket[node] * of.node_k_j[node];
            if 0 < node {
                inward[node] = of.link[node - 1] * of.node_k_j[node];
            }
            let mut outward = of.to_jacket[node];
            if node + 1 < n {
                outward += of.link[node];
            }
            let k_j = of.node_k_j[node];
            let mut own;
            let mut border = -of.to_jacket[node] * of.jacket_k_j;
            if node == 0 {
                outward += of.open + of.seat;
                own = 1.0 + k_j * outward - of.seat * of.pot_k_j * pot_inverse * of.seat * k_j;
            } else {
                outward += of.link[node - 1];
                own = 1.0 + k_j * outward;
                // The row above has -link * k_j here, this one -link * k_j(above) there.
                let share = -of.link[node - 1] * of.node_k_j[node - 1] * inverse[node - 1];
                own -= share * (-of.link[node - 1] * k_j);
                border -= share * by_jacket[node - 1];
                below[node] = share;
            }
            inverse[node] = 1.0 / own;
            by_jacket[node] = border;
        }
        for node in (0..n).rev() {
            let mut value = by_jacket[node];
            if node + 1 < n {
                value += inward[node + 1] * by_jacket[node + 1];
            }
            by_jacket[node] = value * inverse[node];
        }
        let mut jacket_left = jacket_own;
        for node in 0..n {
            jacket_left += into_jacket[node] * by_jacket[node];
        }
        Self {
            of,
            inverse,
            below,
            by_jacket,
            inward,
            into_jacket,
            jacket_inverse: 1.0 / jacket_left,
            outer_inverse,
            pot_inverse,
        }
    }

    /// The rates of a stage from its right-hand side.
    #[inline]
    pub(super) fn solve(&self, f: &Rates<N>) -> Rates<N> {
        let of = self.of;
        let n = of.count();
        let mut node = f.node;
        node[0] += of.seat * of.pot_k_j * self.pot_inverse * f.pot;
        for at in 1..n {
            node[at] -= self.below[at] * node[at - 1];
        }
        for at in (0..n).rev() {
            let mut value = node[at];
            if at + 1 < n {
                value += self.inward[at + 1] * node[at + 1];
            }
            node[at] = value * self.inverse[at];
        }
        let outer = f.outer * self.outer_inverse;
        let mut into_jacket = f.jacket + of.jacket_outward * of.outer_k_j * outer;
        for at in 0..n {
            into_jacket += self.into_jacket[at] * node[at];
        }
        let jacket = into_jacket * self.jacket_inverse;
        for at in 0..n {
            node[at] -= self.by_jacket[at] * jacket;
        }
        let pot = (f.pot + of.seat * of.node_k_j[0] * node[0]) * self.pot_inverse;
        let has_outer = 0.0 < of.outer_k_j;
        let outer = if has_outer {
            outer + self.outer_inverse * of.jacket_outward * of.jacket_k_j * jacket
        } else {
            0.0
        };
        Rates {
            node,
            jacket,
            outer,
            pot,
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::network::MAX_NODES;

    fn applied(of: &Stiffness<MAX_NODES>, k: &Rates<MAX_NODES>) -> Rates<MAX_NODES> {
        let n = of.count;
        let mut out = *k;
        let t = |node: usize| of.node_k_j[node] * k.node[node];
        let (jacket_t, pot_t) = (of.jacket_k_j * k.jacket, of.pot_k_j * k.pot);
        let outer_t = of.outer_k_j * k.outer;
        let outward = of.jacket_outward * (jacket_t - outer_t);
        out.jacket += outward;
        if 0.0 < of.outer_k_j {
            out.outer += of.outer_to_air * outer_t - outward;
        }
        for node in 0..n {
            let flow = of.to_jacket[node] * (t(node) - jacket_t);
            out.node[node] += flow;
            out.jacket -= flow;
            if node + 1 < n {
                let flow = of.link[node] * (t(node) - t(node + 1));
                out.node[node] += flow;
                out.node[node + 1] -= flow;
            }
        }
        let flow = of.seat * (t(0) - if of.pot_is_free { pot_t } else { 0.0 });
        out.node[0] += flow + of.open * t(0);
        if of.pot_is_free {
            out.pot += of.pot_to_air * pot_t - flow;
        }
        out
    }

    proptest! {
        /// Put back into the equations, what was solved gives the right-hand side.
        #[test]
        fn solves_its_equations(
            count in 1..=MAX_NODES, pot_is_free: bool, has_outer: bool,
            g in proptest::array::uniform16(0.0..50.0_f64),
            s in proptest::array::uniform9(0.001..2.0_f64),
            f in proptest::array::uniform9(-10.0..10.0_f64),
            outer_to_air in 0.0..50.0_f64,
        ) {
            let six = |from: &[f64]| -> [f64; MAX_NODES] { from[..MAX_NODES].try_into().unwrap() };
            let of = Stiffness {
                count, link: six(&g), to_jacket: six(&g[6..]), jacket_outward: g[12], open: g[13],
                outer_to_air, outer_k_j: if has_outer { s[8] } else { 0.0 },
                seat: g[14], pot_to_air: g[15], pot_is_free, node_k_j: six(&s), jacket_k_j: s[6],
                pot_k_j: s[7],
            };
            let mut rhs = Rates {
                node: six(&f), jacket: f[6], outer: if has_outer { f[8] } else { 0.0 },
                pot: if pot_is_free { f[7] } else { 0.0 },
            };
            for node in count..MAX_NODES {
                rhs.node[node] = 0.0;
            }
            let back = applied(&of, &Factors::new(&of).solve(&rhs));
            for node in 0..count {
                prop_assert!((back.node[node] - rhs.node[node]).abs() < 1e-7);
            }
            prop_assert!((back.jacket - rhs.jacket).abs() < 1e-7);
            prop_assert!((back.outer - rhs.outer).abs() < 1e-7);
            if pot_is_free {
                prop_assert!((back.pot - rhs.pot).abs() < 1e-7);
            }
        }
    }
}
