//! Linear equations of a few unknowns, without the heap.

/// The factors of a square matrix, rows exchanged for the largest pivot (Gauss).
pub(crate) struct Factors<const N: usize> {
    lu: [[f64; N]; N],
    row: [usize; N],
    dim: usize,
}

impl<const N: usize> Factors<N> {
    /// Factors the leading `dim` rows and columns of `matrix`.
    ///
    /// A singular matrix gives factors whose solutions are not finite; the caller sees that.
    pub(crate) fn new(matrix: [[f64; N]; N], dim: usize) -> Self {
        let mut lu = matrix;
        let mut row = [0; N];
        for (i, r) in row.iter_mut().enumerate() {
            *r = i;
        }
        for k in 0..dim {
            let mut pivot = k;
            for i in k + 1..dim {
                if lu[i][k].abs() > lu[pivot][k].abs() {
                    pivot = i;
                }
            }
            lu.swap(k, pivot);
            row.swap(k, pivot);
            let inverse = 1.0 / lu[k][k];
            let top = lu[k];
            for under in lu.iter_mut().take(dim).skip(k + 1) {
                let factor = under[k] * inverse;
                if factor.abs() > 0.0 {
                    for (entry, above) in under.iter_mut().zip(top).take(dim).skip(k + 1) {
                        *entry -= factor * above;
                    }
                }
                under[k] = factor;
            }
            lu[k][k] = inverse;
        }
        Self { lu, row, dim }
    }

    /// Solves for one right-hand side.
    pub(crate) fn solve(&self, rhs: &[f64; N]) -> [f64; N] {
        let mut x = [0.0; N];
        for i in 0..self.dim {
            let known: f64 = dot(&self.lu[i][..i], &x[..i]);
            x[i] = rhs[self.row[i]] - known;
        }
        for i in (0..self.dim).rev() {
            let known: f64 = dot(&self.lu[i][i + 1..self.dim], &x[i + 1..self.dim]);
            x[i] = (x[i] - known) * self.lu[i][i];
        }
        x
    }
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn solves_what_needs_a_pivot() {
        let a = [[0.0, 2.0, 1.0], [1.0, 1.0, 0.0], [4.0, 0.0, 3.0]];
        let x = Factors::new(a, 3).solve(&[7.0, 3.0, 13.0]);
        for (row, rhs) in a.iter().zip([7.0, 3.0, 13.0]) {
            let back: f64 = row.iter().zip(x).map(|(a, x)| a * x).sum();
            assert!((back - rhs).abs() < 1e-12);
        }
    }
}
