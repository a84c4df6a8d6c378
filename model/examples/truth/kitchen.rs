//! A true cooker carried through time: heater, thermostat, pot, boil, doneness.

use super::row::{OnSeat, Row};

/// Specific heat of water. \[J/kgK\]
const WATER_J_KGK: f64 = 4186.0;
/// Kelvin by which the thermostat's two switchings differ.
const HYSTERESIS_K: f64 = 5.0;
/// The sun counts as near the thermostat's threshold within so much. \[K\]
const NEAR_K: f64 = 2.0;
/// Water this near the boil may be taken for boiling. [K]
const NEARLY_K: f64 = 2.0;
/// Steps: with a pot in or near the threshold, in the sun, and at rest. \[s\]
const FINE_S: i64 = 1;
const SUNNY_S: i64 = 10;
const RESTING_S: i64 = 60;
const STEFAN_BOLTZMANN: f64 = 5.670_374e-8;

/// How the joint between pot and store conducts.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Joint {
    /// A gap of air of this width. \[m\]
    Gap(f64),
    /// A well that the pot stands in: air under its base, and another width round its side.
    Well {
        base_gap_m: f64,
        side_gap_m: f64,
        /// Of the area that the pot takes heat through.
        base_share: f64,
    },
    /// A film. \[W/m2K\]
    Film(f64),
}

impl Joint {
    /// Conductance between two faces. \[W/m2K\]
    pub(crate) fn w_m2k(self, hot_c: f64, cold_c: f64) -> f64 {
        match self {
            Self::Film(w_m2k) => w_m2k,
            Self::Well {
                base_gap_m,
                side_gap_m,
                base_share,
            } => {
                let across = |gap_m| Self::Gap(gap_m).w_m2k(hot_c, cold_c);
                base_share * across(base_gap_m) + (1.0 - base_share) * across(side_gap_m)
            }
            Self::Gap(width_m) => {
                // Still air from 50 to 300 °C, a straight line within 2 % of the U.S. Standard
                // Atmosphere 1976, and grey faces of 0.3 and 0.2.
                let air = 0.0248 + 6.9e-5 * 0.5 * (hot_c + cold_c);
                let (hot_k, cold_k) = (hot_c + 273.15, cold_c + 273.15);
                let square = hot_k * hot_k + cold_k * cold_k;
                let radiation = STEFAN_BOLTZMANN * square * (hot_k + cold_k) / 7.333;
                air / (width_m + 0.5e-6) + radiation
            }
        }
    }
}

/// How the pot meets the store, true figures.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Contact {
    pub(crate) joint: Joint,
    pub(crate) area_m2: f64,
    /// The pot stands in the melt itself.
    pub(crate) is_in_melt: bool,
}

/// A pot as it goes in, true figures.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Charge {
    pub(crate) water_kg: f64,
    /// Of dry food, and of the metal. \[J/K\]
    pub(crate) food_j_k: f64,
    pub(crate) metal_j_k: f64,
    pub(crate) start_c: f64,
    /// To the air, with the pot 55 K warmer; it grows with the fifth root. \[W/K\]
    pub(crate) air_w_k: f64,
    /// Evaporation by vapour pressure, the lid's share counted. \[W/Pa\]
    pub(crate) evaporates_w_pa: f64,
    /// Film of water at 80 °C and at the boil, by area of the contact. \[W/m2K\]
    pub(crate) film_w_m2k: (f64, f64),
    pub(crate) boiling_c: f64,
    /// Heat of vaporisation there. \[J/kg\]
    pub(crate) h_fg_j_kg: f64,
    pub(crate) cooks: Option<Cooks>,
    /// Full boil that makes it safe. \[s\]
    pub(crate) full_boil_s: f64,
}

/// How a dish cooks: its time at 100 °C, and how that grows in the cold.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Cooks {
    pub(crate) time_s: f64,
    pub(crate) slowing: Slows,
    pub(crate) least_c: f64,
}

/// The two laws of the tables.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Slows {
    /// Ten times as long per so many kelvin.
    Z(f64),
    /// Activation energy. \[J/mol\]
    Arrhenius(f64),
}

impl Cooks {
    fn per_s(&self, at_c: f64) -> f64 {
        if at_c < self.least_c {
            return 0.0;
        }
        let factor = match self.slowing {
            Slows::Z(z_k) => 10_f64.powf((at_c - 100.0) / z_k),
            Slows::Arrhenius(j_mol) => {
                (j_mol / 8.314_463 * (1.0 / 373.15 - 1.0 / (at_c + 273.15))).exp()
            }
        };
        factor / self.time_s
    }
}

/// What became of a pot. Instants as the kitchen counts them. \[s\]
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Fate {
    pub(crate) boiled_s: Option<i64>,
    pub(crate) done_s: Option<i64>,
    pub(crate) safe_s: Option<i64>,
    pub(crate) dry_s: Option<i64>,
    /// When the water first came within two kelvin of the boil.
    pub(crate) nearly_s: Option<i64>,
    pub(crate) boiled_away_kg: f64,
}

/// A pot in the cooker.
#[derive(Debug, Clone, Copy)]
struct Inside {
    charge: Charge,
    water_kg: f64,
    water_c: f64,
    wall_c: f64,
    boiling: bool,
    full_boil_s: f64,
    doneness: f64,
    fate: Fate,
}

impl Inside {
    fn water_j_k(&self) -> f64 {
        self.charge.food_j_k + WATER_J_KGK * self.water_kg
    }

    fn held_j(&self) -> f64 {
        self.water_j_k() * self.water_c + self.charge.metal_j_k * self.wall_c
    }
}

/// Where the heat went. \[J\]
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Books {
    pub(crate) heater_j: f64,
    pub(crate) jacket_j: f64,
    pub(crate) leak_j: f64,
    pub(crate) pot_air_j: f64,
    pub(crate) steam_j: f64,
    /// Heat above 0 °C that came and went with pots and left with steam.
    pub(crate) brought_j: f64,
    pub(crate) taken_j: f64,
}

impl Books {
    /// What came less what went.
    pub(crate) fn balance_j(&self) -> f64 {
        self.heater_j + self.brought_j
            - self.jacket_j
            - self.leak_j
            - self.pot_air_j
            - self.steam_j
            - self.taken_j
    }
}

/// The steps of time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Pace {
    /// One second with a pot in or near the thermostat's threshold, ten in the sun, sixty at rest.
    Chosen,
    /// One second always.
    Seconds,
}

/// Sun and air by the minute. \[W, °C\]
pub(crate) trait Outdoors {
    /// Heater's power with the thermostat shut, and air.
    fn at(&self, minute: i64) -> (f64, f64);
}

/// A true cooker.
#[derive(Debug, Clone)]
pub(crate) struct Kitchen {
    pub(crate) row: Row,
    pub(crate) contact: Contact,
    /// Where the thermostat sits, as a share of the mass from the seat, and where it cuts out.
    pub(crate) thermostat: (f64, f64),
    pub(crate) pace: Pace,
    pub(crate) now_s: i64,
    pub(crate) books: Books,
    heater_on: bool,
    inside: Option<Inside>,
}

impl Kitchen {
    pub(crate) fn new(row: Row, contact: Contact, thermostat: (f64, f64), now_s: i64) -> Self {
        Self {
            row,
            contact,
            thermostat,
            pace: Pace::Chosen,
            now_s,
            books: Books::default(),
            heater_on: true,
            inside: None,
        }
    }

    /// Heat above 0 °C in all of it. \[J\]
    pub(crate) fn held_j(&self) -> f64 {
        self.row.held_j() + self.inside.map_or(0.0, |inside| inside.held_j())
    }

    pub(crate) fn put_in(&mut self, charge: Charge) {
        self.take_out();
        let inside = Inside {
            charge,
            water_kg: charge.water_kg,
            water_c: charge.start_c,
            wall_c: charge.start_c,
            boiling: false,
            full_boil_s: 0.0,
            doneness: 0.0,
            fate: Fate::default(),
        };
        self.books.brought_j += inside.held_j();
        self.inside = Some(inside);
    }

    pub(crate) fn take_out(&mut self) -> Option<Fate> {
        let inside = self.inside.take()?;
        self.books.taken_j += inside.held_j();
        Some(inside.fate)
    }

    /// What has become of the pot so far.
    pub(crate) fn fate(&self) -> Option<Fate> {
        self.inside.map(|inside| inside.fate)
    }

    /// Water in the pot, if one is in. \[°C\]
    #[allow(
        dead_code,
        reason = "read by the fits of its readings, not by the calibration"
    )]
    pub(crate) fn water_c(&self) -> Option<f64> {
        self.inside.map(|inside| inside.water_c)
    }

    /// Carries all to an instant.
    pub(crate) fn run(&mut self, to_s: i64, outdoors: &impl Outdoors) {
        while self.now_s < to_s {
            let minute = self.now_s.div_euclid(60);
            let (sun_w, air_c) = outdoors.at(minute);
            let end_s = ((minute + 1) * 60).min(to_s);
            while self.now_s < end_s {
                let dt_s = self.pace_s(sun_w).min(end_s - self.now_s);
                self.now_s += dt_s;
                self.step(dt_s as f64, sun_w, air_c);
            }
        }
    }

    fn pace_s(&self, sun_w: f64) -> i64 {
        let (share, cut_out_c) = self.thermostat;
        if self.pace == Pace::Seconds || self.inside.is_some() {
            return FINE_S;
        }
        if sun_w <= 0.0 {
            return RESTING_S;
        }
        let at_c = self.row.store_c_at(share);
        let next_c = if self.heater_on {
            cut_out_c
        } else {
            cut_out_c - HYSTERESIS_K
        };
        if (at_c - next_c).abs() < NEAR_K {
            FINE_S
        } else {
            SUNNY_S
        }
    }

    fn step(&mut self, dt_s: f64, sun_w: f64, air_c: f64) {
        let (share, cut_out_c) = self.thermostat;
        if 0.0 < sun_w {
            let at_c = self.row.store_c_at(share);
            if cut_out_c <= at_c {
                self.heater_on = false;
            } else if at_c <= cut_out_c - HYSTERESIS_K {
                self.heater_on = true;
            }
        }
        let heater_w = if self.heater_on { sun_w } else { 0.0 };
        self.books.heater_j += heater_w * dt_s;
        let flow = match self.inside.take() {
            None => self.row.solve(dt_s, heater_w, air_c, None),
            Some(mut inside) => {
                let flow = self.with_pot(&mut inside, dt_s, heater_w, air_c);
                self.inside = Some(inside);
                flow
            }
        };
        self.row.commit();
        self.books.jacket_j += flow.jacket_air_j;
        self.books.leak_j += flow.leak_j;
        self.books.pot_air_j += flow.pot_air_j;
    }

    fn with_pot(
        &mut self,
        inside: &mut Inside,
        dt_s: f64,
        heater_w: f64,
        air_c: f64,
    ) -> super::row::Flow {
        let charge = inside.charge;
        let is_dry = inside.water_kg <= 0.01;
        let warmer_k = inside.water_c - air_c;
        let film_w_m2k = if inside.boiling {
            charge.film_w_m2k.1
        } else {
            // Free convection over the base doubles from cold to nearly boiling.
            charge.film_w_m2k.0 * (0.42 + 0.58 * inside.water_c / 80.0)
        };
        let evaporation = if is_dry || inside.boiling {
            (0.0, 0.0)
        } else {
            charge.evaporation(inside.water_c, air_c)
        };
        let contact = self.contact;
        let seat_c = self.row.seat_c();
        let mut seat = OnSeat {
            water_c: inside.water_c,
            wall_c: inside.wall_c,
            water_j_k: inside.water_j_k(),
            wall_j_k: charge.metal_j_k,
            film_w_k: film_w_m2k * contact.area_m2,
            contact_w_k: contact.joint.w_m2k(seat_c, inside.wall_c) * contact.area_m2,
            air_w_k: charge.air_w_k * (warmer_k.max(1.0) / 55.0).powf(0.2),
            evaporation,
            is_in_melt: contact.is_in_melt,
            held_c: None,
        };
        if inside.boiling && !is_dry {
            seat.held_c = Some(charge.boiling_c);
        }
        let mut flow = self.row.solve(dt_s, heater_w, air_c, Some(&seat));
        let over = !is_dry && seat.held_c.is_none() && charge.boiling_c < flow.water_c;
        let under = seat.held_c.is_some()
            && flow.surplus_j < dt_s * charge.evaporation(charge.boiling_c, air_c).0;
        if over || under {
            seat.held_c = over.then_some(charge.boiling_c);
            if under {
                seat.evaporation = charge.evaporation(inside.water_c, air_c);
            }
            flow = self.row.solve(dt_s, heater_w, air_c, Some(&seat));
        }
        inside.boiling = seat.held_c.is_some();
        inside.water_c = flow.water_c;
        inside.wall_c = flow.wall_c;
        let steam_j = if inside.boiling {
            flow.surplus_j
        } else {
            flow.evaporated_j
        };
        let gone_kg = steam_j / charge.h_fg_j_kg;
        inside.water_kg -= gone_kg;
        inside.fate.boiled_away_kg += gone_kg;
        self.books.steam_j += steam_j;
        self.books.taken_j += gone_kg * WATER_J_KGK * inside.water_c;
        inside.tell(dt_s, self.now_s, is_dry);
        flow
    }
}

impl Inside {
    /// Keeps the account of boil, doneness and safety.
    fn tell(&mut self, dt_s: f64, now_s: i64, is_dry: bool) {
        if is_dry {
            self.boiling = false;
            self.fate.dry_s.get_or_insert(now_s);
            return;
        }
        if self.charge.boiling_c - NEARLY_K <= self.water_c {
            self.fate.nearly_s.get_or_insert(now_s);
        }
        if self.boiling {
            self.fate.boiled_s.get_or_insert(now_s);
            self.full_boil_s += dt_s;
        }
        if self.fate.safe_s.is_none() && self.charge.full_boil_s <= self.full_boil_s {
            self.fate.safe_s = Some(now_s);
        }
        if self.fate.done_s.is_none() {
            match &self.charge.cooks {
                Some(cooks) => {
                    self.doneness += cooks.per_s(self.water_c) * dt_s;
                    if 1.0 <= self.doneness {
                        self.fate.done_s = Some(now_s);
                    }
                }
                None => self.fate.done_s = self.fate.boiled_s,
            }
        }
    }
}

impl Charge {
    /// Heat that evaporation takes below the boil, and its slope. \[W, W/K\]
    fn evaporation(&self, water_c: f64, air_c: f64) -> (f64, f64) {
        // Magnus form with the constants of FAO-56, eq. 11; air of half its saturation.
        let pressure_pa = |at_c: f64| 610.8 * (17.27 * at_c / (at_c + 237.3)).exp();
        let water_pa = pressure_pa(water_c);
        let excess_pa = water_pa - 0.5 * pressure_pa(air_c);
        if excess_pa <= 0.0 {
            return (0.0, 0.0);
        }
        let slope_pa_k = 4098.0 * water_pa / (water_c + 237.3).powi(2);
        (
            self.evaporates_w_pa * excess_pa,
            self.evaporates_w_pa * slope_pa_k,
        )
    }
}
