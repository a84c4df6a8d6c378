//! One test run: what was done to the cooker, and what was read.

use crate::bench::readings::Row;
use crate::pot::{Lid, Pot};

/// What a run is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RunKind {
    /// The heater on, no pot: tells what the store holds and what the heater gives.
    HeatUp,
    /// Nothing on, no pot: tells what the jacket lets out.
    CoolDown,
    /// A pot of water in: tells how the heat gets into it.
    Boil,
    /// Several of these, one after another.
    Free,
}

/// A pot of water that goes into the cooker.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PotIn {
    /// When it goes in, in the run's own time. \[s\]
    pub in_s: f64,
    /// When it comes out; it stays to the end otherwise. \[s\]
    pub out_s: Option<f64>,
    /// The vessel.
    pub pot: Pot,
    /// Its lid.
    pub lid: Lid,
    /// Water in it. \[kg\]
    pub water_kg: f64,
    /// Temperature it goes in with, where that was measured apart from the readings. [°C]
    pub start_c: Option<f64>,
    /// Water left when it came out, by weighing. \[kg\]
    pub left_kg: Option<f64>,
}

/// One run.
#[derive(Debug, Clone, PartialEq)]
pub struct Run {
    /// What it is called.
    pub name: String,
    /// What it is for.
    pub kind: RunKind,
    /// The readings, in order of time.
    pub rows: Vec<Row>,
    /// The air, where no column of readings tells it. [°C]
    pub air_c: Option<f64>,
    /// Power of the heater, where no column tells it. \[W\]
    pub heater_w: Option<f64>,
    /// The pots, in order of time.
    pub pots: Vec<PotIn>,
}

/// Why a run cannot be used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum RunFault {
    /// Fewer than five rows with a temperature of store or pot.
    #[error("a run needs at least five readings of store or pot")]
    TooFewReadings,
    /// The store was never read.
    #[error("the store must be read at least once")]
    NoStore,
    /// Rows that are not in order of time, or not numbers.
    #[error("the rows are not in order of time")]
    NotInOrder,
    /// No column of the air and no single value.
    #[error("air_c: the temperature of the air is not known")]
    NoAir,
    /// A heat-up without power or irradiance.
    #[error("heater_w: a heat-up needs the heater's power or the irradiance on the panels")]
    NoPower,
    /// A boil without a pot.
    #[error("water_kg: a boil needs a pot of water")]
    NoPot,
    /// A cool-down with a pot in it or the heater on.
    #[error("a cool-down has neither pot nor heater")]
    NotIdle,
    /// Pots that overlap, or come out before they go in.
    #[error("the pots are not one after another")]
    PotsOverlap,
    /// Water that no pot holds.
    #[error("water_kg: must be more than 0 and no more than the pot holds")]
    Water,
}

impl Run {
    /// A pot that was in while the column of the pot had readings, first to last.
    pub fn pot_while_read(&self, pot: Pot, lid: Lid, water_kg: f64) -> Option<PotIn> {
        let mut read = self.rows.iter().filter(|row| row.pot_c.is_some());
        let first = read.next()?;
        let last = read.next_back().unwrap_or(first);
        let ends_with_run = self.rows.last().is_some_and(|row| row.line == last.line);
        Some(PotIn {
            in_s: first.time_s,
            out_s: (!ends_with_run).then_some(last.time_s),
            pot,
            lid,
            water_kg,
            start_c: None,
            left_kg: None,
        })
    }

    /// Time from the first row to the last. \[s\]
    pub fn length_s(&self) -> f64 {
        match (self.rows.first(), self.rows.last()) {
            (Some(first), Some(last)) => last.time_s - first.time_s,
            _ => 0.0,
        }
    }

    /// Whether the heater's power is known from the readings or for the whole run.
    pub fn has_power(&self) -> bool {
        self.heater_w.is_some()
            || self
                .rows
                .iter()
                .any(|row| row.heater_w.is_some() || row.irradiance_w_m2.is_some())
    }

    /// The run itself, if it makes sense.
    ///
    /// # Errors
    ///
    /// The first [`RunFault`] found.
    pub fn checked(&self) -> Result<&Self, RunFault> {
        let in_order = self
            .rows
            .windows(2)
            .all(|pair| pair[0].time_s < pair[1].time_s);
        if !in_order || self.rows.iter().any(|row| !row.time_s.is_finite()) {
            return Err(RunFault::NotInOrder);
        }
        let with = |read: fn(&Row) -> bool| self.rows.iter().filter(|row| read(row)).count();
        if with(|row| row.store_c.is_some() || row.pot_c.is_some()) < 5 {
            return Err(RunFault::TooFewReadings);
        }
        if with(|row| row.store_c.is_some()) == 0 {
            return Err(RunFault::NoStore);
        }
        if self.air_c.is_none() && with(|row| row.air_c.is_some()) == 0 {
            return Err(RunFault::NoAir);
        }
        let runs_on = self.rows.iter().any(|row| {
            row.heater_w
                .or(self.heater_w)
                .is_some_and(|power_w| power_w > 1.0)
        });
        match self.kind {
            RunKind::HeatUp if !self.has_power() => return Err(RunFault::NoPower),
            RunKind::Boil if self.pots.is_empty() => return Err(RunFault::NoPot),
            RunKind::CoolDown if runs_on || !self.pots.is_empty() => {
                return Err(RunFault::NotIdle);
            }
            _ => {}
        }
        let mut free_s = f64::NEG_INFINITY;
        for pot in &self.pots {
            let out_s = pot.out_s.unwrap_or(f64::INFINITY);
            if !(free_s <= pot.in_s && pot.in_s < out_s) {
                return Err(RunFault::PotsOverlap);
            }
            if !(pot.water_kg > 0.0 && pot.water_kg <= 1.05 * pot.pot.size.props().volume_l) {
                return Err(RunFault::Water);
            }
            free_s = out_s;
        }
        Ok(self)
    }
}
