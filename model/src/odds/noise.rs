//! Chance that can be looked up: every draw has an address and is the same whoever asks first.
//!
//! A draw is addressed by the seed, the member, what it is for and when. Nothing is consumed, so a
//! replay from the middle of a diary meets the same chances as one from its start. The mixing
//! function is SplitMix64's (Steele, Lea and Flood, Fast splittable pseudorandom number generators,
//! OOPSLA 2014), chained over the parts of the address.

/// The golden ratio's odd neighbour in 64 bits, SplitMix64's increment.
const GAMMA: u64 = 0x9E37_79B9_7F4A_7C15;

/// What a draw is for. Each purpose has draws of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u64)]
pub(super) enum Purpose {
    /// A multiplier's first value.
    Multiplier = 1,
    /// The store before the first day.
    Start = 2,
    /// A day's sky.
    SkyDay = 3,
    /// An hour's sky.
    SkyHour = 4,
    /// A day's air.
    AirDay = 5,
    /// A day's jacket.
    LossDay = 6,
    /// What differs from pot to pot.
    Pot = 7,
    /// Where resampling begins to count.
    Resample = 8,
    /// The kernel's jitter.
    Kernel = 9,
    /// An imagined thermometer.
    Reading = 10,
    /// How a multiplier wanders overnight.
    Drift = 11,
    /// Where a melt freezes by itself.
    Nucleation = 12,
    /// A pot that was not told.
    Untold = 13,
    /// How a thermometer is moved overnight.
    Thermometer = 14,
    /// How long this household's own dishes take.
    Dish = 15,
}

/// Draws of one seed and purpose.
#[derive(Debug, Clone, Copy)]
pub(super) struct Noise(u64);

impl Noise {
    pub(super) fn new(seed: u64, purpose: Purpose) -> Self {
        Self(mix(seed ^ mix(GAMMA.wrapping_mul(purpose as u64))))
    }

    /// Draws at one more coordinate of the address.
    pub(super) fn at(self, coordinate: i64) -> Self {
        Self(mix(self.0 ^ GAMMA.wrapping_mul(coordinate.cast_unsigned())))
    }

    /// Evenly between 0 and 1, neither of them. 52 bits.
    pub(super) fn uniform(self, member: usize) -> f64 {
        let bits = mix(self.0.wrapping_add(GAMMA.wrapping_mul(member as u64 + 1))) >> 12;
        // Exact: an integer below 2^52 plus a half.
        #[expect(clippy::cast_precision_loss, reason = "below 2^52")]
        let count = bits as f64;
        (count + 0.5) * (1.0 / 4_503_599_627_370_496.0)
    }

    /// Standard normal.
    pub(super) fn normal(self, member: usize) -> f64 {
        normal_quantile(self.uniform(member))
    }
}

/// SplitMix64's finalizer.
fn mix(z: u64) -> u64 {
    let z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    let z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^ (z >> 31)
}

/// Value below which a standard normal lies with this probability.
///
/// Wichura, Algorithm AS 241, Applied Statistics 37 (1988) 477: PPND7, good to about 1 in 10^7.
pub(super) fn normal_quantile(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180_625 - q * q;
        let over =
            ((59.109_374_72 * r + 159.291_132_02) * r + 50.434_271_938) * r + 3.387_132_717_9;
        let under = ((67.187_563_6 * r + 78.757_757_664) * r + 17.895_169_469) * r + 1.0;
        return q * over / under;
    }
    let tail = if q < 0.0 { p } else { 1.0 - p };
    let r = (-libm::log(tail.max(f64::MIN_POSITIVE))).sqrt();
    let size = if r <= 5.0 {
        let r = r - 1.6;
        (((0.170_238_21 * r + 1.306_728_48) * r + 2.756_815_3) * r + 1.423_437_277_7)
            / ((0.120_211_32 * r + 0.737_002_5) * r + 1.0)
    } else {
        let r = r - 5.0;
        (((0.017_337_203 * r + 0.428_682_94) * r + 3.081_226_3) * r + 6.657_905_115)
            / ((0.012_258_202 * r + 0.241_978_94) * r + 1.0)
    };
    if q < 0.0 { -size } else { size }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mixing_is_split_mix() {
        // The first outputs of SplitMix64 seeded with 0, as published with Java's and Vigna's code.
        assert_eq!(mix(GAMMA), 0xE220_A839_7B1D_CDAF);
        assert_eq!(mix(GAMMA.wrapping_mul(2)), 0x6E78_9E6A_A1B9_65F4);
    }

    #[test]
    fn quantiles_are_those_of_the_tables() {
        // Two-sided points of the normal distribution, any statistical table.
        for (p, z) in [
            (0.5, 0.0),
            (0.9, 1.281_551_6),
            (0.975, 1.959_964_0),
            (0.05, -1.644_853_6),
            (0.999, 3.090_232_3),
            (1e-12, -7.034_484_5),
        ] {
            assert!((normal_quantile(p) - z).abs() < 2e-6, "{p}");
        }
    }

    #[test]
    fn draws_are_normal_and_unrelated() {
        let day = Noise::new(7, Purpose::SkyDay);
        let hour = Noise::new(7, Purpose::SkyHour);
        let count = 20_000_u32;
        let (mut sum, mut squares, mut common, mut next) = (0.0, 0.0, 0.0, 0.0);
        for n in 0..count {
            let member = n as usize % 500;
            let z = day.at(i64::from(n) / 500).normal(member);
            sum += z;
            squares += z * z;
            common += z * hour.at(i64::from(n) / 500).normal(member);
            next += z * day.at(i64::from(n) / 500 + 1).normal(member);
        }
        let n = f64::from(count);
        // Four standard errors.
        assert!((sum / n).abs() < 0.03 && (squares / n - 1.0).abs() < 0.04);
        assert!((common / n).abs() < 0.03 && (next / n).abs() < 0.03);
    }

    #[test]
    fn an_address_has_one_draw() {
        let noise = Noise::new(1, Purpose::Pot).at(20_000).at(3);
        assert_eq!(noise.normal(9).to_bits(), noise.normal(9).to_bits());
        assert!(noise.normal(9).to_bits() != noise.normal(8).to_bits());
        assert!((0.0..1.0).contains(&noise.uniform(0)));
    }
}
