//! Numbers by chance, the same on every machine for the same seed.

/// A permuted congruential generator, PCG-XSH-RR 64/32: M. E. O'Neill, HMC-CS-2014-0905 (2014).
#[derive(Debug, Clone)]
pub(crate) struct Random {
    state: u64,
    /// Odd; tells one stream from another.
    stream: u64,
}

const MULTIPLIER: u64 = 6_364_136_223_846_793_005;

impl Random {
    /// The stream of numbers that belongs to a seed and a purpose.
    pub(crate) fn new(seed: u64, purpose: u64) -> Self {
        let mut random = Self {
            state: 0,
            stream: (purpose << 1) | 1,
        };
        random.next_u32();
        random.state = random.state.wrapping_add(seed);
        random.next_u32();
        random
    }

    fn next_u32(&mut self) -> u32 {
        let old = self.state;
        self.state = old.wrapping_mul(MULTIPLIER).wrapping_add(self.stream);
        let shifted = (((old >> 18) ^ old) >> 27) as u32;
        shifted.rotate_right((old >> 59) as u32)
    }

    /// From 0 to 1, both left out.
    pub(crate) fn unit(&mut self) -> f64 {
        (f64::from(self.next_u32()) + 0.5) / 4_294_967_296.0
    }

    /// Between two bounds.
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }

    /// Whether something of this probability happens.
    pub(crate) fn chance(&mut self, probability: f64) -> bool {
        self.unit() < probability
    }

    /// Standard normal: Box and Muller, Ann. Math. Stat. 29 (1958) 610.
    pub(crate) fn normal(&mut self) -> f64 {
        let radius = (-2.0 * self.unit().ln()).sqrt();
        radius * (std::f64::consts::TAU * self.unit()).cos()
    }

    /// A factor about 1 that is never negative: lognormal with this share as its deviation.
    pub(crate) fn factor(&mut self, share: f64) -> f64 {
        let sigma = (1.0 + share * share).ln().sqrt();
        (sigma * self.normal()).exp()
    }

    /// Waiting time with this mean.
    pub(crate) fn wait(&mut self, mean: f64) -> f64 {
        -mean * self.unit().ln()
    }

    /// One of some things, each as likely as its weight; the last where the weights are all 0.
    pub(crate) fn pick<T: Copy>(&mut self, choices: &[(T, f64)]) -> Option<T> {
        let sum: f64 = choices.iter().map(|(_, weight)| weight).sum();
        let mut rest = sum * self.unit();
        for &(thing, weight) in choices {
            rest -= weight;
            if rest < 0.0 {
                return Some(thing);
            }
        }
        choices.last().map(|(thing, _)| *thing)
    }
}
