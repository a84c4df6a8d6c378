//! Shells of a body that conducts, and the jacket made of them.

/// Conductivity against temperature: of a solid and its melt, straight through the melting range.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Conducts {
    pub(crate) solid_w_mk: f64,
    pub(crate) melt_w_mk: f64,
    /// Solidus and liquidus; both infinite for what does not melt. \[°C\]
    pub(crate) range_c: (f64, f64),
}

impl Conducts {
    /// `is_liquid`: it is, though it may be below its melting point.
    pub(crate) fn w_mk(&self, at_c: f64, is_liquid: bool) -> f64 {
        let (solidus_c, liquidus_c) = self.range_c;
        if is_liquid {
            self.melt_w_mk
        } else if at_c <= solidus_c {
            self.solid_w_mk
        } else if liquidus_c <= at_c {
            self.melt_w_mk
        } else {
            let molten = (at_c - solidus_c) / (liquidus_c - solidus_c);
            self.solid_w_mk + molten * (self.melt_w_mk - self.solid_w_mk)
        }
    }
}

/// One shell of a row, cut by two surfaces.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shell {
    pub(crate) volume_m3: f64,
    /// From its inner surface to its middle and on to the outer one, for 1 W/mK. \[1/m\]
    pub(crate) inner_per_m: f64,
    pub(crate) outer_per_m: f64,
}

/// Cuts a body into shells.
///
/// # Arguments
///
/// * `area_m2`: of the surface at each distance.
/// * `edges_m`: distances at which it is cut, rising.
pub(crate) fn cut(area_m2: impl Fn(f64) -> f64, edges_m: &[f64]) -> Vec<Shell> {
    const PARTS: i32 = 16;
    edges_m
        .windows(2)
        .map(|edge| {
            let width_m = (edge[1] - edge[0]) / f64::from(PARTS);
            let mut shell = Shell {
                volume_m3: 0.0,
                inner_per_m: 0.0,
                outer_per_m: 0.0,
            };
            for part in 0..PARTS {
                let area = area_m2(edge[0] + (f64::from(part) + 0.5) * width_m);
                shell.volume_m3 += area * width_m;
                if part < PARTS / 2 {
                    shell.inner_per_m += width_m / area;
                } else {
                    shell.outer_per_m += width_m / area;
                }
            }
            shell
        })
        .collect()
}

/// Edges of so many shells, each this many times as thick as the one before.
pub(crate) fn edges_m(thickness_m: f64, shells: usize, growth: f64) -> Vec<f64> {
    let widths: Vec<f64> = (0..shells).map(|idx| growth.powi(idx as i32)).collect();
    let whole: f64 = widths.iter().sum();
    let mut at_m = 0.0;
    let mut edges = vec![0.0];
    for width in widths {
        at_m += width / whole * thickness_m;
        edges.push(at_m);
    }
    edges
}

/// The shells of a jacket, from the store outwards.
#[derive(Debug, Clone)]
pub(crate) struct Jacket {
    pub(crate) shells: Vec<Shell>,
    /// Heat capacity at 0 °C by volume, and its rise as a share by kelvin. \[J/m3K, 1/K\]
    pub(crate) capacity_j_m3k: f64,
    pub(crate) capacity_rise_k: f64,
    /// Conductivity at each mean temperature. \[°C, W/mK\]
    pub(crate) conductivity: Vec<(f64, f64)>,
    /// Film outside. \[W/K\]
    pub(crate) film_w_k: f64,
}

impl Jacket {
    pub(crate) fn conductivity_w_mk(&self, at_c: f64) -> f64 {
        let points = &self.conductivity;
        let last = points.len() - 1;
        let place = points
            .iter()
            .position(|(held_c, _)| at_c < *held_c)
            .unwrap_or(last)
            .clamp(1, last);
        let ((low_c, low), (high_c, high)) = (points[place - 1], points[place]);
        (low + (high - low) * (at_c - low_c) / (high_c - low_c)).max(0.5 * points[0].1)
    }

    /// What it lets out in the steady state. \[W\]
    pub(crate) fn steady_w(&self, hot_c: f64, air_c: f64) -> f64 {
        let per_m: f64 = self
            .shells
            .iter()
            .map(|shell| shell.inner_per_m + shell.outer_per_m)
            .sum();
        let mut out_w = 0.0;
        for _ in 0..20 {
            let face_c = air_c + out_w / self.film_w_k;
            let parts = 100;
            let step_k = (hot_c - face_c) / f64::from(parts);
            let conducted: f64 = (0..parts)
                .map(|part| {
                    self.conductivity_w_mk(face_c + (f64::from(part) + 0.5) * step_k) * step_k
                })
                .sum();
            out_w = 0.5 * (out_w + conducted / per_m);
        }
        out_w
    }

    pub(crate) fn capacity_j_k(&self, idx: usize) -> f64 {
        self.capacity_j_m3k * self.shells[idx].volume_m3
    }

    /// Heat capacity of a shell at a temperature. \[J/K\]
    pub(crate) fn capacity_at_j_k(&self, idx: usize, at_c: f64) -> f64 {
        self.capacity_j_k(idx) * (1.0 + self.capacity_rise_k * at_c)
    }

    /// Temperature of a shell with this heat. \[°C\]
    pub(crate) fn temperature_c(&self, idx: usize, heat_j: f64) -> f64 {
        let share = heat_j / self.capacity_j_k(idx);
        let rise = self.capacity_rise_k;
        // Root of share = T + rise T^2/2, without loss of digits for a small rise.
        2.0 * share / (1.0 + (1.0 + 2.0 * rise * share).max(0.01).sqrt())
    }

    /// Heat of a shell at a temperature. \[J\]
    pub(crate) fn heat_at_j(&self, idx: usize, at_c: f64) -> f64 {
        self.capacity_j_k(idx) * at_c * (1.0 + 0.5 * self.capacity_rise_k * at_c)
    }
}
