//! Members drawn in proportion to their weights.

use super::build::small;

/// Systematic resampling: members by their weights, at even steps from a chance start in 0 to 1.
/// Each is taken as often as its weight says, to within one.
pub(super) fn systematic(weight: &[f64], count: usize, start: f64) -> Vec<usize> {
    let whole: f64 = weight.iter().sum();
    let step = whole / small(count);
    let mut taken = Vec::with_capacity(count);
    let mut reached = weight.first().copied().unwrap_or(0.0);
    let mut member = 0;
    for n in 0..count {
        let wanted = (small(n) + start) * step;
        while reached < wanted && member + 1 < weight.len() {
            member += 1;
            reached += weight[member];
        }
        taken.push(member);
    }
    taken
}
