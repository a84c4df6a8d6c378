//! Shells of store and jacket in one row, and one implicit step through them.
//!
//! ```text
//! water - wall - contact - store shells - jacket shells - film - air
//! ```
//!
//! The state of each shell is its heat; the step solves for the temperatures at its end with the heat
//! capacities of its beginning, and books the very flows of that solution, so heat is kept whatever
//! the step. Insulation carries next to nothing along the store's face: the shells of the store are
//! taken in four groups, each with a column of jacket of its own behind it. All is tridiagonal
//! (Thomas's algorithm), the columns eliminated first.

use super::heat::HeatTable;
use super::shell::{Conducts, Jacket, Shell};

/// The shells of a store.
#[derive(Debug, Clone)]
pub(crate) struct Store {
    pub(crate) shells: Vec<Shell>,
    pub(crate) mass_kg: Vec<f64>,
    pub(crate) heat_j: Vec<f64>,
    pub(crate) conducts: Conducts,
    /// Shares of the heater's power.
    pub(crate) heater_share: Vec<f64>,
    /// Shares of the face that the jacket covers.
    pub(crate) jacket_share: Vec<f64>,
    /// What passes by the jacket, lid's gap and rods. \[W/K\]
    pub(crate) leak_w_k: f64,
}

/// What sits on the seat, as the row sees it in one step.
#[derive(Debug, Clone, Copy)]
pub(crate) struct OnSeat {
    pub(crate) water_c: f64,
    pub(crate) wall_c: f64,
    pub(crate) water_j_k: f64,
    pub(crate) wall_j_k: f64,
    /// Water and wall. \[W/K\]
    pub(crate) film_w_k: f64,
    /// Wall and face of the store. \[W/K\]
    pub(crate) contact_w_k: f64,
    pub(crate) air_w_k: f64,
    /// Evaporation at `water_c` and its slope. \[W, W/K\]
    pub(crate) evaporation: (f64, f64),
    /// The melt touches the pot itself, which is then as cold a wall in it as the pot is.
    pub(crate) is_in_melt: bool,
    /// Held at the boil: the temperature.
    pub(crate) held_c: Option<f64>,
}

/// What a step did.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Flow {
    pub(crate) water_c: f64,
    pub(crate) wall_c: f64,
    pub(crate) jacket_air_j: f64,
    pub(crate) leak_j: f64,
    pub(crate) pot_air_j: f64,
    /// Latent heat of what evaporated below the boil.
    pub(crate) evaporated_j: f64,
    /// What a pot that is held at the boil got beyond its losses.
    pub(crate) surplus_j: f64,
}

/// Store and jacket with the room to work in.
#[derive(Debug, Clone)]
pub(crate) struct Row {
    pub(crate) store: Store,
    pub(crate) jacket: Jacket,
    pub(crate) table: HeatTable,
    /// All of a melt that supercools is liquid, above its melting point or below.
    pub(crate) is_liquid: bool,
    store_c: Vec<f64>,
    store_j_k: Vec<f64>,
    store_link_w_k: Vec<f64>,
    columns: Vec<Column>,
    since_links_s: f64,
    /// The face that meets the pot, in the last solution; infinite without a pot. \[°C\]
    face_c: f64,
    /// Place of the first shell behind pot and wall.
    first: usize,
    upper: Vec<f64>,
    right: Vec<f64>,
}

/// The jacket behind some shells of the store. Its figures are those of a jacket that is all like it.
#[derive(Debug, Clone)]
struct Column {
    /// The shell of the store that it takes heat from, and its share of the jacket.
    at: usize,
    share: f64,
    heat_j: Vec<f64>,
    t_c: Vec<f64>,
    link_w_k: Vec<f64>,
    from_store_w_k: f64,
    /// The solution: each shell from the one before, the first from the store.
    upper: Vec<f64>,
    right: Vec<f64>,
}

/// Groups of the store's shells.
const COLUMNS: usize = 4;

/// One column for each group of shells that turns a face to the jacket, at the middle of its faces.
fn columns(share: &[f64], shells: usize) -> Vec<Column> {
    let whole: f64 = share.iter().sum();
    let of_group = share.len().div_ceil(COLUMNS);
    let mut columns = Vec::new();
    for (group, own) in share.chunks(of_group).enumerate() {
        let sum: f64 = own.iter().sum();
        if sum <= 0.0 {
            continue;
        }
        let places = own.iter().enumerate();
        let middle = places.map(|(idx, share)| idx as f64 * share).sum::<f64>() / sum;
        columns.push(Column {
            at: group * of_group + middle.round() as usize,
            share: sum / whole,
            heat_j: vec![0.0; shells],
            t_c: vec![0.0; shells],
            link_w_k: vec![0.0; shells],
            from_store_w_k: 0.0,
            upper: vec![0.0; shells],
            right: vec![0.0; shells],
        });
    }
    columns
}

/// Conductances that follow the temperature are taken anew after so much time. \[s\]
const LINKS_S: f64 = 20.0;

impl Row {
    pub(crate) fn new(store: Store, jacket: Jacket, table: HeatTable) -> Self {
        let n = store.shells.len();
        let mut row = Self {
            store_c: vec![0.0; n],
            store_j_k: vec![0.0; n],
            store_link_w_k: vec![0.0; n],
            columns: columns(&store.jacket_share, jacket.shells.len()),
            since_links_s: LINKS_S,
            face_c: f64::INFINITY,
            first: 0,
            upper: vec![0.0; n + 2],
            right: vec![0.0; n + 2],
            store,
            jacket,
            table,
            is_liquid: false,
        };
        row.read();
        row
    }

    /// Puts store and jacket at temperatures: the jacket on a straight line to the air.
    pub(crate) fn set(&mut self, store_c: f64, air_c: f64) {
        let heat_j_kg = self.table.heat_j_kg(store_c);
        for (heat_j, mass_kg) in self.store.heat_j.iter_mut().zip(&self.store.mass_kg) {
            *heat_j = heat_j_kg * mass_kg;
        }
        let shells = self.jacket.shells.len();
        for column in &mut self.columns {
            for (idx, heat_j) in column.heat_j.iter_mut().enumerate() {
                let out = (idx as f64 + 0.5) / shells as f64;
                *heat_j = self
                    .jacket
                    .heat_at_j(idx, store_c + out * (air_c - store_c));
            }
        }
        self.since_links_s = LINKS_S;
        self.is_liquid = false;
        self.melt_or_freeze(store_c);
        self.read();
    }

    /// Heats as they are, their temperatures by whether the melt is liquid.
    fn melt_or_freeze(&mut self, coldest_c: f64) {
        let each = self.store.heat_j.iter().zip(&self.store.mass_kg);
        let heats_j_kg = each.map(|(heat_j, mass_kg)| heat_j / mass_kg);
        self.is_liquid = self.table.is_liquid(self.is_liquid, coldest_c, heats_j_kg);
    }

    /// Temperatures and capacities from heats.
    fn read(&mut self) {
        for (idx, (heat_j, mass_kg)) in self
            .store
            .heat_j
            .iter()
            .zip(&self.store.mass_kg)
            .enumerate()
        {
            let (at_c, j_kgk) = self.table.at(heat_j / mass_kg, self.is_liquid);
            self.store_c[idx] = at_c;
            self.store_j_k[idx] = j_kgk * mass_kg;
        }
        for column in &mut self.columns {
            for (idx, (t_c, heat_j)) in column.t_c.iter_mut().zip(&column.heat_j).enumerate() {
                *t_c = self.jacket.temperature_c(idx, *heat_j);
            }
        }
    }

    fn link(&mut self) {
        let n = self.store_c.len();
        let liquid = self.is_liquid;
        let shells = &self.store.shells;
        for idx in 0..n {
            let here = self.store.conducts.w_mk(self.store_c[idx], liquid);
            let outward = shells[idx].outer_per_m / here;
            self.store_link_w_k[idx] = if idx + 1 < n {
                let next = self.store.conducts.w_mk(self.store_c[idx + 1], liquid);
                1.0 / (outward + shells[idx + 1].inner_per_m / next)
            } else {
                0.0
            };
        }
        let jacket = &self.jacket;
        for column in &mut self.columns {
            let mut here = jacket.conductivity_w_mk(column.t_c[0]);
            let jacket_w_k = here / jacket.shells[0].inner_per_m;
            // The heat that leaves through the outermost face crosses half a shell to get there.
            let own_k_w = if column.at + 1 == n {
                let conducts_w_mk = self.store.conducts.w_mk(self.store_c[column.at], liquid);
                self.store.shells[column.at].outer_per_m / conducts_w_mk
            } else {
                0.0
            };
            column.from_store_w_k = jacket_w_k / (1.0 + own_k_w * column.share * jacket_w_k);
            for idx in 0..column.t_c.len() {
                let outward = jacket.shells[idx].outer_per_m / here;
                column.link_w_k[idx] = if let Some(next_c) = column.t_c.get(idx + 1) {
                    let next = jacket.conductivity_w_mk(*next_c);
                    here = next;
                    1.0 / (outward + jacket.shells[idx + 1].inner_per_m / next)
                } else {
                    1.0 / (outward + 1.0 / jacket.film_w_k)
                };
            }
        }
        self.since_links_s = 0.0;
    }

    /// Conductance from the middle of the first shell to the face that the pot meets. \[W/K\]
    fn face_w_k(&self) -> f64 {
        self.store.conducts.w_mk(self.store_c[0], self.is_liquid) / self.store.shells[0].inner_per_m
    }

    /// Solves one step of the whole row; nothing changes before [`Row::commit`].
    pub(crate) fn solve(
        &mut self,
        dt_s: f64,
        heater_w: f64,
        air_c: f64,
        pot: Option<&OnSeat>,
    ) -> Flow {
        self.since_links_s += dt_s;
        if LINKS_S <= self.since_links_s || self.store.conducts.range_c.0.is_finite() {
            self.link();
        }
        let per_s = 1.0 / dt_s;
        let n = self.store_c.len();
        let first = if pot.is_some() { 2 } else { 0 };

        // Inwards out: what stands before an unknown is eliminated as soon as it is met.
        let mut link_in = 0.0;
        if let Some(pot) = pot {
            let (own, right) = match pot.held_c {
                Some(held_c) => (1.0, held_c),
                None => {
                    let (evaporation_w, slope_w_k) = pot.evaporation;
                    (
                        pot.water_j_k * per_s + pot.film_w_k + pot.air_w_k + slope_w_k,
                        pot.water_j_k * per_s * pot.water_c + pot.air_w_k * air_c - evaporation_w
                            + slope_w_k * pot.water_c,
                    )
                }
            };
            let coupled = if pot.held_c.is_some() {
                0.0
            } else {
                pot.film_w_k
            };
            self.upper[0] = coupled / own;
            self.right[0] = right / own;
            let seat_w_k = 1.0 / (1.0 / pot.contact_w_k + 1.0 / self.face_w_k());
            let own = pot.wall_j_k * per_s + pot.film_w_k + seat_w_k;
            let pivot = 1.0 / (own - pot.film_w_k * self.upper[0]);
            self.upper[1] = seat_w_k * pivot;
            self.right[1] =
                (pot.wall_j_k * per_s * pot.wall_c + pot.film_w_k * self.right[0]) * pivot;
            link_in = seat_w_k;
        }
        for column in &mut self.columns {
            column.eliminate(&self.jacket, per_s, air_c);
        }
        let mut columns = self.columns.iter();
        let mut column = columns.next();
        for idx in 0..n {
            let at = first + idx;
            let link_out = self.store_link_w_k[idx];
            let leak = self.store.jacket_share[idx] * self.store.leak_w_k;
            let held = self.store_j_k[idx] * per_s;
            let mut own = held + link_in + link_out + leak;
            let mut right =
                held * self.store_c[idx] + heater_w * self.store.heater_share[idx] + leak * air_c;
            if let Some(behind) = column.filter(|column| column.at == idx) {
                let g_w_k = behind.share * behind.from_store_w_k;
                own += g_w_k * (1.0 - behind.upper[0]);
                right += g_w_k * behind.right[0];
                column = columns.next();
            }
            let (before_upper, before_right) = if at == 0 {
                (0.0, 0.0)
            } else {
                (self.upper[at - 1], self.right[at - 1])
            };
            let pivot = 1.0 / (own - link_in * before_upper);
            self.upper[at] = link_out * pivot;
            self.right[at] = (right + link_in * before_right) * pivot;
            link_in = link_out;
        }
        for at in (0..first + n - 1).rev() {
            self.right[at] += self.upper[at] * self.right[at + 1];
        }
        self.flow(dt_s, air_c, pot)
    }

    /// Finishes the solution and reads what flows in it.
    fn flow(&mut self, dt_s: f64, air_c: f64, pot: Option<&OnSeat>) -> Flow {
        let mut flow = Flow::default();
        self.first = if pot.is_some() { 2 } else { 0 };
        for column in &mut self.columns {
            let mut before_c = self.right[self.first + column.at];
            for (right, upper) in column.right.iter_mut().zip(&column.upper) {
                *right += upper * before_c;
                before_c = *right;
            }
            let film_w_k = column.link_w_k.last().copied().unwrap_or(0.0);
            flow.jacket_air_j += column.share * film_w_k * (before_c - air_c) * dt_s;
        }
        for idx in 0..self.store_c.len() {
            let leak_w_k = self.store.jacket_share[idx] * self.store.leak_w_k;
            flow.leak_j += leak_w_k * (self.right[self.first + idx] - air_c) * dt_s;
        }
        self.face_c = f64::INFINITY;
        if let Some(pot) = pot {
            flow.water_c = self.right[0];
            flow.wall_c = self.right[1];
            let (shell_c, face_w_k) = (self.right[2], self.face_w_k());
            let both_w_k = pot.contact_w_k + face_w_k;
            self.face_c = if pot.is_in_melt {
                flow.wall_c
            } else {
                (face_w_k * shell_c + pot.contact_w_k * flow.wall_c) / both_w_k
            };
            flow.pot_air_j = pot.air_w_k * (flow.water_c - air_c) * dt_s;
            let (evaporation_w, slope_w_k) = pot.evaporation;
            if let Some(held_c) = pot.held_c {
                let gained_j = pot.film_w_k * (flow.wall_c - held_c) * dt_s;
                flow.surplus_j = gained_j - flow.pot_air_j - pot.water_j_k * (held_c - pot.water_c);
            } else {
                flow.evaporated_j =
                    (evaporation_w + slope_w_k * (flow.water_c - pot.water_c)) * dt_s;
            }
        }
        flow
    }

    /// Takes the last solution over into the heats.
    pub(crate) fn commit(&mut self) {
        for column in &mut self.columns {
            for idx in 0..column.t_c.len() {
                let rise_k = column.right[idx] - column.t_c[idx];
                column.heat_j[idx] += self.jacket.capacity_at_j_k(idx, column.t_c[idx]) * rise_k;
            }
        }
        for idx in 0..self.store_c.len() {
            let rise_k = self.right[self.first + idx] - self.store_c[idx];
            self.store.heat_j[idx] += self.store_j_k[idx] * rise_k;
        }
        self.read();
        let own_c = self.store_c.iter().copied();
        let coldest_c = own_c.fold(self.face_c, f64::min);
        let was_liquid = self.is_liquid;
        self.melt_or_freeze(coldest_c);
        if self.is_liquid != was_liquid {
            self.since_links_s = LINKS_S;
            self.read();
        }
    }

    /// Temperature of the shell at this share of the mass from the seat. \[°C\]
    pub(crate) fn store_c_at(&self, share: f64) -> f64 {
        let whole_kg: f64 = self.store.mass_kg.iter().sum();
        let mut rest_kg = share * whole_kg;
        for (at_c, mass_kg) in self.store_c.iter().zip(&self.store.mass_kg) {
            rest_kg -= mass_kg;
            if rest_kg <= 0.0 {
                return *at_c;
            }
        }
        self.store_c[self.store_c.len() - 1]
    }

    /// Temperature that the store would have if it were mixed. \[°C\]
    pub(crate) fn mixed_c(&self) -> f64 {
        let whole_kg: f64 = self.store.mass_kg.iter().sum();
        self.table
            .at(
                self.store.heat_j.iter().sum::<f64>() / whole_kg,
                self.is_liquid,
            )
            .0
    }

    /// Temperature of the face that meets the pot, by its shell. \[°C\]
    pub(crate) fn seat_c(&self) -> f64 {
        self.store_c[0]
    }

    /// Heat in store and jacket above 0 °C. \[J\]
    pub(crate) fn held_j(&self) -> f64 {
        let jacket_j = |column: &Column| column.share * column.heat_j.iter().sum::<f64>();
        self.store.heat_j.iter().sum::<f64>() + self.columns.iter().map(jacket_j).sum::<f64>()
    }
}

impl Column {
    /// From the air inwards: each shell by the one before it, the first by the store's.
    fn eliminate(&mut self, jacket: &Jacket, per_s: f64, air_c: f64) {
        let (mut carried, mut carried_right) = (0.0, air_c);
        for idx in (0..self.t_c.len()).rev() {
            let outward = self.link_w_k[idx];
            let inward = if idx == 0 {
                self.from_store_w_k
            } else {
                self.link_w_k[idx - 1]
            };
            let held = jacket.capacity_at_j_k(idx, self.t_c[idx]) * per_s;
            let inverse = 1.0 / (held + inward + outward - outward * carried);
            carried_right = (held * self.t_c[idx] + outward * carried_right) * inverse;
            carried = inward * inverse;
            self.upper[idx] = carried;
            self.right[idx] = carried_right;
        }
    }
}
