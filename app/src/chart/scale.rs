//! From data to the screen: ranges, round ticks, labels that keep clear of each other.

use crate::order::in_order;

/// A straight line from a range of data to a range of the screen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    data: (f64, f64),
    screen: (f64, f64),
}

impl Scale {
    /// Maps `data.0` to `screen.0` and `data.1` to `screen.1`.
    ///
    /// A data range without length is widened by one half to each side, so that its one value
    /// comes to the middle.
    pub fn new(data: (f64, f64), screen: (f64, f64)) -> Self {
        let (lo, hi) = data;
        let data = if (hi - lo).abs() < f64::EPSILON {
            (lo - 0.5, hi + 0.5)
        } else {
            data
        };
        Self { data, screen }
    }

    /// Where `value` comes to lie; outside the screen when it is outside the data.
    pub fn at(&self, value: f64) -> f64 {
        let (lo, hi) = self.data;
        let (start, end) = self.screen;
        start + (value - lo) / (hi - lo) * (end - start)
    }

    /// Where `value` comes to lie, kept on the screen.
    pub fn at_clamped(&self, value: f64) -> f64 {
        let (start, end) = self.screen;
        self.at(value).clamp(start.min(end), start.max(end))
    }
}

/// Smallest and largest of the finite values; none where there is no such value.
pub fn range(values: impl IntoIterator<Item = f64>) -> Option<(f64, f64)> {
    values
        .into_iter()
        .filter(|value| value.is_finite())
        .fold(None, |range, value| {
            Some(range.map_or((value, value), |(lo, hi): (f64, f64)| {
                (lo.min(value), hi.max(value))
            }))
        })
}

/// At most `most` ticks (and at least two) at 1, 2 or 5 times a power of ten, from at or below
/// `lo` to at or above `hi`.
pub fn round_ticks(lo: f64, hi: f64, most: u32) -> Vec<f64> {
    let (lo, hi) = if lo <= hi { (lo, hi) } else { (hi, lo) };
    let (lo, hi) = if hi - lo < 1e-9 {
        (lo - 0.5, hi + 0.5)
    } else {
        (lo, hi)
    };
    if !(lo.is_finite() && hi.is_finite()) {
        return Vec::new();
    }
    let most = f64::from(most.max(2));
    let mut power = 10_f64.powf(((hi - lo) / most).log10().floor());
    loop {
        for step in [power, 2.0 * power, 5.0 * power] {
            let first = (lo / step + 1e-9).floor();
            let last = (hi / step - 1e-9).ceil();
            if last - first + 1.0 <= most {
                return steps(first, last, step);
            }
        }
        power *= 10.0;
        if !power.is_finite() {
            return vec![lo, hi];
        }
    }
}

/// `first` to `last` times `step`, by whole steps so that no error adds up.
fn steps(first: f64, last: f64, step: f64) -> Vec<f64> {
    let mut ticks = Vec::new();
    let mut count = first;
    while count <= last + 0.5 {
        ticks.push(count * step);
        count += 1.0;
    }
    ticks
}

/// Moves labels apart along a line until no two are nearer than `gap`, within `0..=length`.
///
/// `wanted` are the places they point at, in any order; the answer keeps that order. Labels that
/// collide share the shift, so each stays as near to its place as the others allow. Where the line
/// is too short for all, the gap shrinks to what fits.
pub fn spread(wanted: &[f64], gap: f64, length: f64) -> Vec<f64> {
    let order = in_order(0..wanted.len(), |&a, &b| {
        let place = |idx: usize| wanted.get(idx).copied().unwrap_or_default();
        place(a).total_cmp(&place(b))
    });
    let spaces = wanted.len().saturating_sub(1).max(1);
    let gap = gap.min(length / f64::from(u32::try_from(spaces).unwrap_or(u32::MAX)));
    // Labels that touch form a block, laid at the mean of what its members want.
    let mut blocks: Vec<Block> = Vec::new();
    for &idx in &order {
        let wish = wanted
            .get(idx)
            .copied()
            .unwrap_or_default()
            .clamp(0.0, length);
        let mut block = Block {
            start: wish,
            sum: wish,
            members: vec![idx],
        };
        while let Some(last) = blocks.pop_if(|last| block.start < last.end(gap) + gap) {
            block = last.join(block, gap, length);
        }
        blocks.push(block);
    }
    let mut places = vec![0.0; wanted.len()];
    for block in blocks {
        let mut place = block.start;
        for idx in block.members {
            if let Some(slot) = places.get_mut(idx) {
                *slot = place;
            }
            place += gap;
        }
    }
    places
}

/// Labels that stand one gap apart.
struct Block {
    start: f64,
    /// Sum of where each member would have the block start.
    sum: f64,
    members: Vec<usize>,
}

impl Block {
    fn count(&self) -> f64 {
        f64::from(u32::try_from(self.members.len()).unwrap_or(u32::MAX))
    }

    fn end(&self, gap: f64) -> f64 {
        self.start + gap * (self.count() - 1.0)
    }

    fn join(mut self, after: Self, gap: f64, length: f64) -> Self {
        let n_before = self.count();
        self.sum += after.sum - gap * n_before * after.count();
        self.members.extend(after.members);
        let room = length - gap * (self.count() - 1.0);
        self.start = (self.sum / self.count()).clamp(0.0, room.max(0.0));
        self
    }
}

/// Which of the labels, in order along a line, can be shown with `gap` between them; the first
/// always can.
pub fn thinned(places: &[f64], gap: f64) -> Vec<bool> {
    let mut last: Option<f64> = None;
    places
        .iter()
        .map(|&place| {
            let free = last.is_none_or(|last| last + gap <= place);
            if free {
                last = Some(place);
            }
            free
        })
        .collect()
}

#[cfg(test)]
mod tests;
