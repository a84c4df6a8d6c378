//! One step of a stiff solver with an error estimate and a dense output.
//!
//! RODAS of E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd edition 1996,
//! section VI.4: a Rosenbrock method of order 4 with an embedded method of order 3, both stiffly accurate
//! and L-stable, and a continuous extension of order 3. Each step solves linear equations only, so its cost
//! is fixed; and because it is L-stable, a fast part (a jacket of a few grams) never dictates the step.
//! Like every Rosenbrock method with the exact Jacobian it keeps linear invariants exactly: energies
//! that sum to a constant do so to rounding, in the dense output too.

use super::cubic::Cubic;
use super::linear::Factors;

/// Equations `dx/dt = f(x)`, with integrals `dq/dt = g(x)` that do not feed back.
pub(crate) trait System<const X: usize, const Q: usize> {
    /// How many of the `X` places are in use.
    fn dim(&self) -> usize;
    /// The rates of change at `x`.
    fn rates(&self, x: &[f64; X], f: &mut [f64; X], g: &mut [f64; Q]);
    /// The derivatives of the rates; both matrices come in as zeros.
    fn jacobian(&self, x: &[f64; X], df: &mut [[f64; X]; X], dg: &mut [[f64; X]; Q]);
}

/// A tried step: the change over it as a polynomial, and the error estimate.
pub(crate) struct Step<const X: usize, const Q: usize> {
    x: [[f64; X]; 4],
    q: [[f64; Q]; 3],
    /// Estimated error of `x` at the end of the step.
    pub(crate) x_error: [f64; X],
    /// Estimated error of `q` at the end of the step.
    pub(crate) q_error: [f64; Q],
}

const GAMMA: f64 = 0.25;
const A: [[f64; 4]; 4] = [
    [1.544, 0.0, 0.0, 0.0],
    [0.946_678_528_081_582_6, 0.255_701_169_898_328_4, 0.0, 0.0],
    [
        3.314_825_187_068_521,
        2.896_124_015_972_201,
        0.998_641_913_997_781_7,
        0.0,
    ],
    [
        1.221_224_509_226_641,
        6.019_134_481_288_629,
        12.537_083_329_320_87,
        -0.687_886_036_105_895,
    ],
];
const C: [[f64; 5]; 5] = [
    [-5.6688, 0.0, 0.0, 0.0, 0.0],
    [
        -2.430_093_356_833_875,
        -0.206_359_915_709_191_5,
        0.0,
        0.0,
        0.0,
    ],
    [
        -0.107_352_905_815_137_5,
        -9.594_562_251_023_355,
        -20.470_286_148_096_16,
        0.0,
        0.0,
    ],
    [
        7.496_443_313_967_647,
        -10.246_804_314_643_52,
        -33.999_903_528_199_05,
        11.708_908_932_061_6,
        0.0,
    ],
    [
        8.083_246_795_921_522,
        -7.981_132_988_064_893,
        -31.521_594_328_743_71,
        16.319_305_431_231_36,
        -6.058_818_238_834_054,
    ],
];
const D: [[f64; 5]; 2] = [
    [
        10.126_235_083_445_86,
        -7.487_995_877_610_167,
        -34.800_918_615_557_47,
        -7.992_771_707_568_823,
        1.025_137_723_295_662,
    ],
    [
        -0.676_280_339_280_125_3,
        6.087_714_651_680_015,
        16.430_843_208_924_78,
        24.767_225_114_183_86,
        -6.594_389_125_716_872,
    ],
];

impl<const X: usize, const Q: usize> Step<X, Q> {
    /// Tries a step of length `h` from `x`.
    pub(crate) fn new(system: &impl System<X, Q>, x: &[f64; X], h: f64) -> Self {
        let dim = system.dim();
        let mut df = [[0.0; X]; X];
        let mut dg = [[0.0; X]; Q];
        system.jacobian(x, &mut df, &mut dg);
        let diagonal = 1.0 / (GAMMA * h);
        for (i, row) in df.iter_mut().enumerate().take(dim) {
            for entry in row.iter_mut().take(dim) {
                *entry = -*entry;
            }
            row[i] += diagonal;
        }
        let factors = Factors::new(df, dim);

        let mut u = [[0.0; X]; 6];
        let mut v = [[0.0; Q]; 6];
        let mut at = *x;
        let mut moved_q = [0.0; Q];
        for stage in 0..6 {
            if stage == 5 {
                // The embedded result is the point of the last stage.
                for i in 0..dim {
                    at[i] += u[4][i];
                }
            } else if stage > 0 {
                let a = &A[stage - 1];
                for i in 0..dim {
                    at[i] = x[i] + (0..stage).map(|j| a[j] * u[j][i]).sum::<f64>();
                }
            }
            let mut f = [0.0; X];
            let mut g = [0.0; Q];
            system.rates(&at, &mut f, &mut g);
            if stage > 0 {
                let c = &C[stage - 1];
                for (j, cj) in c.iter().enumerate().take(stage) {
                    let scaled = cj / h;
                    for i in 0..dim {
                        f[i] += scaled * u[j][i];
                    }
                    for i in 0..Q {
                        g[i] += scaled * v[j][i];
                    }
                }
            }
            u[stage] = factors.solve(&f);
            for i in 0..Q {
                let coupled: f64 = (0..dim).map(|j| dg[i][j] * u[stage][j]).sum();
                v[stage][i] = (g[i] + coupled) * GAMMA * h;
            }
        }
        for i in 0..Q {
            moved_q[i] = (0..4).map(|j| A[3][j] * v[j][i]).sum::<f64>() + v[4][i] + v[5][i];
        }
        let mut end = at;
        for i in 0..dim {
            end[i] += u[5][i];
        }
        let bend = D.map(|d| combined(&d, &u));
        let bend_q = D.map(|d| combined(&d, &v));
        Self {
            x: [*x, end, bend[0], bend[1]],
            q: [moved_q, bend_q[0], bend_q[1]],
            x_error: u[5],
            q_error: v[5],
        }
    }

    /// Component `i` of the solution over the step, as a polynomial of the fraction of the step.
    pub(crate) fn x_poly(&self, i: usize) -> Cubic {
        poly(self.x[0][i], self.x[1][i], self.x[2][i], self.x[3][i])
    }

    /// Growth of integral `i` since the start of the step, as a polynomial of the fraction of the step.
    pub(crate) fn q_poly(&self, i: usize) -> Cubic {
        poly(0.0, self.q[0][i], self.q[1][i], self.q[2][i])
    }

    /// The solution after `fraction` of the step.
    pub(crate) fn x_at(&self, fraction: f64) -> [f64; X] {
        let mut out = [0.0; X];
        for (i, value) in out.iter_mut().enumerate() {
            *value = interpolate(
                self.x[0][i],
                self.x[1][i],
                self.x[2][i],
                self.x[3][i],
                fraction,
            );
        }
        out
    }

    /// The growth of the integrals after `fraction` of the step.
    pub(crate) fn q_at(&self, fraction: f64) -> [f64; Q] {
        let mut out = [0.0; Q];
        for (i, value) in out.iter_mut().enumerate() {
            *value = interpolate(0.0, self.q[0][i], self.q[1][i], self.q[2][i], fraction);
        }
        out
    }
}

/// The sum of the first five stages, each with its weight.
fn combined<const N: usize>(weights: &[f64; 5], stages: &[[f64; N]; 6]) -> [f64; N] {
    let mut sum = [0.0; N];
    for (weight, stage) in weights.iter().zip(stages) {
        for (total, value) in sum.iter_mut().zip(stage) {
            *total += weight * value;
        }
    }
    sum
}

fn interpolate(start: f64, end: f64, bend: f64, twist: f64, x: f64) -> f64 {
    let rest = 1.0 - x;
    start * rest + x * (end + rest * (bend + x * twist))
}

fn poly(start: f64, end: f64, bend: f64, twist: f64) -> Cubic {
    Cubic {
        k: [start, end - start + bend, twist - bend, -twist],
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Stiff: x0 is drawn to cos-like motion of x1, x2 at a rate of 1e6; q integrates x1.
    struct Stiff;

    impl System<3, 1> for Stiff {
        fn dim(&self) -> usize {
            3
        }
        fn rates(&self, x: &[f64; 3], f: &mut [f64; 3], g: &mut [f64; 1]) {
            *f = [1e6 * (x[1] * x[1] - x[0]), x[2], -x[1]];
            g[0] = x[1];
        }
        fn jacobian(&self, x: &[f64; 3], df: &mut [[f64; 3]; 3], dg: &mut [[f64; 3]; 1]) {
            *df = [[-1e6, 2e6 * x[1], 0.0], [0.0, 0.0, 1.0], [0.0, -1.0, 0.0]];
            dg[0] = [0.0, 1.0, 0.0];
        }
    }

    fn errors(steps: u32) -> (f64, f64) {
        let h = 1.0 / f64::from(steps);
        let mut x = [1.0, 1.0, 0.0];
        let mut q = 0.0;
        for _ in 0..steps {
            let step = Step::new(&Stiff, &x, h);
            x = step.x_at(1.0);
            q += step.q_at(1.0)[0];
        }
        ((x[1] - 1f64.cos()).abs(), (q - 1f64.sin()).abs())
    }

    #[test]
    fn order_is_four_however_stiff() {
        let (coarse, coarse_q) = errors(8);
        let (fine, fine_q) = errors(16);
        assert!(coarse / fine > 14.0, "{coarse:e} {fine:e}");
        assert!(coarse_q / fine_q > 14.0, "{coarse_q:e} {fine_q:e}");
    }

    #[test]
    fn polynomial_agrees_with_the_values_and_the_truth() {
        let h = 0.1;
        let step = Step::new(&Stiff, &[1.0, 1.0, 0.0], h);
        for fraction in [0.0, 0.3, 0.7, 1.0] {
            let x = step.x_at(fraction);
            for (i, value) in x.iter().enumerate() {
                assert!((step.x_poly(i).at(fraction) - value).abs() < 1e-12);
            }
            assert!((step.q_poly(0).at(fraction) - step.q_at(fraction)[0]).abs() < 1e-12);
            assert!((x[1] - (fraction * h).cos()).abs() < 1e-6);
            assert!((step.q_at(fraction)[0] - (fraction * h).sin()).abs() < 1e-6);
        }
    }
}
