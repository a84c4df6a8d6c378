//! Where the melt of a store froze in a run, by the readings alone.
//!
//! A melt without crystals cools past its melting point as a liquid, and freezes when it will: then its
//! temperature jumps up. So the same store takes two ways down, and no description says which one it took.

use super::{SAME_TIME_S, Sample, Stretch};
use crate::bench::run::PotIn;
use crate::numerics::median::median;

/// A store has been molten throughout when it was read so far above its liquidus. Inferred, as the
/// next three: above the noise of a kitchen thermometer. \[K\]
const MOLTEN_K: f64 = 2.0;
/// It is well past its freezing so far below its solidus. \[K\]
const PAST_K: f64 = 6.0;
/// A rise by this, with nothing that heats, is the heat of crystals. \[K\]
const RISE_K: f64 = 4.0;
/// Within so long. \[s\]
const RISE_S: f64 = 1800.0;
/// Readings so close are told by their median. \[s\]
const CLOSE_S: f64 = 150.0;
/// And where there are so many, two on either side, where there are fewer, one.
const MANY: usize = 60;
/// A store that freezes on the way passes its melting point at a fraction of its pace: a tenth for sugar
/// alcohols, a third for salts among metal. Inferred from their heats.
const LIQUID_PACE: f64 = 0.45;
/// What never froze would have done so below all that was read. \[K\]
const BELOW_K: f64 = 5.0;

/// A store's temperature at a time. \[s, °C\]
type Point = (f64, f64);

/// How a melt that stayed liquid below its melting point froze.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Freezing {
    /// When it did; `None` for one that was not seen to. \[s\]
    pub(super) at_s: Option<f64>,
    /// It was liquid at all that was read before, and so down to here at least. [°C]
    pub(super) liquid_to_c: f64,
}

/// How the melt froze; `None` for one that froze at its melting point, as far as can be seen.
pub(super) fn freezing(
    samples: &[Sample],
    stretches: &[Stretch],
    pots: &[PotIn],
    (solidus_c, liquidus_c): (f64, f64),
) -> Option<Freezing> {
    let points = steadied(samples);
    let is_left_alone = |from_s: f64, to_s: f64| {
        let heats = |stretch: &&Stretch| {
            stretch.from_s + SAME_TIME_S < to_s
                && from_s < stretch.to_s - SAME_TIME_S
                && 1.0 < stretch.heater_w
        };
        !stretches.iter().any(|stretch| heats(&stretch))
    };
    let molten = points
        .iter()
        .position(|(_, store_c)| liquidus_c + MOLTEN_K <= *store_c)?;
    let cools = points.get(molten..)?;
    let freezing = |at_s| Freezing {
        at_s,
        liquid_to_c: (cools.iter().map(|(_, store_c)| *store_c)).fold(f64::INFINITY, f64::min)
            - BELOW_K,
    };
    if let Some(at_s) = jumped_at_s(cools, solidus_c, &is_left_alone) {
        return Some(freezing(Some(at_s)));
    }
    let past = cools
        .iter()
        .position(|(_, store_c)| *store_c <= solidus_c - PAST_K)?;
    let above = cools
        .get(..past)?
        .iter()
        .rposition(|(_, store_c)| liquidus_c + MOLTEN_K <= *store_c)?;
    let (from, to) = (*cools.get(above)?, *cools.get(past)?);
    // A pot changes the pace, and a cold one is a seed.
    let is_in = |pot: &PotIn| pot.in_s <= to.0 && pot.out_s.is_none_or(|out_s| from.0 <= out_s);
    if pots.iter().any(is_in) || !is_left_alone(from.0, to.0) {
        return None;
    }
    let band_k = from.1 - to.1;
    let before = cools
        .get(..above)?
        .iter()
        .rposition(|(at_s, store_c)| {
            from.1 + 0.5 * band_k <= *store_c && is_left_alone(*at_s, from.0)
        })
        .and_then(|idx| pace_k_s(*cools.get(idx)?, from));
    let after = cools
        .get(past..)?
        .iter()
        .find(|(at_s, store_c)| *store_c <= to.1 - 0.5 * band_k && is_left_alone(to.0, *at_s))
        .and_then(|later| pace_k_s(to, *later));
    let usual = before.or(after)?;
    (LIQUID_PACE * usual <= pace_k_s(from, to)?).then(|| freezing(None))
}

/// What the store fell by in each second.
fn pace_k_s(from: Point, to: Point) -> Option<f64> {
    let took_s = to.0 - from.0;
    (0.0 < took_s).then_some((from.1 - to.1) / took_s)
}

/// When the first rise began that nothing but crystals can make. \[s\]
fn jumped_at_s(
    cools: &[Point],
    solidus_c: f64,
    is_left_alone: &impl Fn(f64, f64) -> bool,
) -> Option<f64> {
    cools.iter().enumerate().find_map(|(idx, (at_s, store_c))| {
        let mut later = cools.iter().skip(idx + 1);
        let (next_s, _) = *later.clone().next()?;
        let until_s = next_s.max(at_s + RISE_S);
        let rises = later.any(|(later_s, later_c)| {
            *later_s <= until_s && store_c + RISE_K <= *later_c && is_left_alone(*at_s, *later_s)
        });
        // The lowest of them: one that is lower still follows at once.
        let lower = cools
            .iter()
            .skip(idx + 1)
            .take_while(|(later_s, _)| *later_s <= until_s)
            .any(|(_, later_c)| later_c < store_c);
        (*store_c < solidus_c - 1.0 && rises && !lower).then_some(*at_s)
    })
}

/// Readings of the store, each told by the median of those about it, so that single wild ones tell nothing.
fn steadied(samples: &[Sample]) -> Vec<Point> {
    let read: Vec<Point> = samples
        .iter()
        .filter_map(|sample| Some((sample.time_s, sample.store_c?)))
        .collect();
    let aside = if read.len() < MANY { 1 } else { 2 };
    (0..read.len())
        .map(|idx| {
            let at_s = read[idx].0;
            let from = read.partition_point(|(time_s, _)| *time_s < at_s - CLOSE_S);
            let to = read.partition_point(|(time_s, _)| *time_s <= at_s + CLOSE_S);
            let from = from.min(idx.saturating_sub(aside));
            let to = to.max((idx + aside + 1).min(read.len()));
            let mut about: Vec<f64> = read[from..to].iter().map(|(_, store_c)| *store_c).collect();
            (at_s, median(&mut about))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pot::{Lid, Pot, PotKind, PotSize, Wrap};

    const MELTING_C: (f64, f64) = (117.0, 119.0);

    /// Read every five minutes, by what happens in each.
    fn seen(
        from_c: f64,
        falls: &[(usize, f64)],
        heater_w: f64,
        pots: &[PotIn],
    ) -> Option<Freezing> {
        let mut store_c = from_c;
        let mut samples = Vec::new();
        for (steps, fall_k) in falls {
            for _ in 0..*steps {
                // A thermometer that wavers by a kelvin.
                let off_k = [0.6, -0.5, 0.1, -0.9, 0.8][samples.len() % 5];
                // And now and then is nowhere near.
                let wild_k = if samples.len() % 23 == 19 { -40.0 } else { 0.0 };
                samples.push(Sample {
                    time_s: 300.0 * samples.len() as f64,
                    store_c: Some(store_c + off_k + wild_k),
                    pot_c: None,
                });
                store_c -= fall_k;
            }
        }
        let stretch = Stretch {
            from_s: 0.0,
            to_s: 300.0 * samples.len() as f64,
            heater_w,
            air_c: 20.0,
        };
        freezing(&samples, &[stretch], pots, MELTING_C)
    }

    #[test]
    fn a_melt_that_jumps_was_liquid_as_far_as_that() {
        let jumps = [(50, 0.8), (1, -18.0), (60, 0.0), (40, 0.8)];
        let found = seen(140.0, &jumps, 0.0, &[]).unwrap();
        let off_s = found.at_s.unwrap() - 50.0 * 300.0;
        assert!(off_s.abs() <= 600.0, "{off_s}");
        assert!(found.liquid_to_c < 99.0);
        // With the heater on it may be the heater.
        assert_eq!(seen(140.0, &jumps, 150.0, &[]), None);
    }

    #[test]
    fn a_melt_that_passes_at_its_pace_stayed_liquid() {
        // 140 °C and 80 readings on, at the pace of a liquid, and nothing seen of crystals.
        let found = seen(140.0, &[(80, 0.6)], 0.0, &[]).unwrap();
        assert_eq!(found.at_s, None);
        assert!((80.0..92.0).contains(&found.liquid_to_c));
        // Begun within the melting range there may have been crystals.
        assert_eq!(seen(118.0, &[(80, 0.6)], 0.0, &[]), None);
        // The pace of a cold pot tells nothing.
        let pot = PotIn {
            in_s: 600.0,
            out_s: None,
            pot: Pot {
                kind: PotKind::ThinAluminium,
                size: PotSize::Litres2_5,
                wrap: Wrap::SunkInCooker,
            },
            lid: Lid::On,
            water_kg: 1.0,
            start_c: None,
            left_kg: None,
        };
        assert_eq!(seen(140.0, &[(80, 0.6)], 0.0, &[pot]), None);
    }

    #[test]
    fn a_melt_that_stands_at_its_melting_point_froze_there() {
        let stands = [(40, 0.5), (100, 0.05), (60, 0.5)];
        assert_eq!(seen(140.0, &stands, 0.0, &[]), None);
        assert_eq!(seen(140.0, &[(30, 0.2)], 0.0, &[]), None);
    }
}
