//! Where the heater lies in a store that is not at one temperature.

use super::build::rounded;
use crate::network::{MAX_NODES, NodeRow};

/// Places of nodes from seat to far end, -1 to 1, their mean by the heater's shares moved to 0: more at
/// one end is less at the other.
pub(super) fn lever(row: &NodeRow) -> [f64; MAX_NODES] {
    let mut lever = [0.0; MAX_NODES];
    let (mut before, mut mean) = (0.0, 0.0);
    let shares = row.mass_share.iter().zip(&row.heater_share);
    for (lever, (mass, heat)) in lever.iter_mut().zip(shares).take(row.count) {
        *lever = 2.0 * (before + 0.5 * mass) - 1.0;
        before += mass;
        mean += heat * *lever;
    }
    for place in lever.iter_mut().take(row.count) {
        *place = rounded(*place - mean);
    }
    lever
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::network::NodeRow;

    #[test]
    fn what_one_end_gets_more_the_other_gets_less() {
        let mut row = NodeRow {
            count: 3,
            ..NodeRow::SINGLE
        };
        for (node, share) in [0.2, 0.3, 0.5].into_iter().enumerate() {
            row.mass_share[node] = share;
            row.heater_share[node] = share;
        }
        // Middles at 0.1, 0.35 and 0.75 of the way: -0.8, -0.3 and 0.5, whose mean is 0.
        for (lever, expected) in lever(&row).into_iter().zip([-0.8, -0.3, 0.5]) {
            assert!((lever - expected).abs() < 1e-6, "{lever}");
        }
        assert!(lever(&NodeRow::SINGLE)[0].abs() < 1e-12);
    }
}
