//! Test runs of the cookers: what was done, what was read, and what was found from it.

use model::bench::readings::{Hints, Row};
use model::bench::{
    BoilingTest, ChargeFigures, ChargeSpread, Measured, Parameter, Plane, PotIn, Prices, RunKind,
    Worth,
};
use model::cooker::Cooker;
use model::local_time::LocalTime;

use crate::state::ids::{CookerId, RunId};

/// Everything the room Bench keeps.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Bench {
    /// The runs, in the order they were added.
    pub runs: Vec<TestRun>,
    /// What changes of a build cost, in the household's money.
    pub prices: Prices,
}

/// One test run of a cooker.
#[derive(Debug, Clone, PartialEq)]
pub struct TestRun {
    /// Which.
    pub id: RunId,
    /// The cooker that was tested.
    pub cooker: CookerId,
    /// When it began: the zero of its times.
    pub started: LocalTime,
    /// When it was finished; none while it goes on.
    pub ended: Option<LocalTime>,
    /// What a person says of it.
    pub about: RunAbout,
    /// The pots, by time, none in while another is. Their times count from the start.
    pub pots: Vec<PotIn>,
    /// The readings.
    pub readings: RunReadings,
    /// What was last found from it, alone or together with others.
    pub fit: Option<KeptFit>,
    /// What was taken over from it into the cooker, that cooker before and after. Stays when the
    /// run's facts change and its figures are to be found anew.
    pub used: Option<Box<Used>>,
}

/// What a person says of a run.
#[derive(Debug, Clone, PartialEq)]
pub struct RunAbout {
    /// Its name.
    pub name: String,
    /// What it is for.
    pub kind: RunKind,
    /// The air, where no reading tells it. \[°C\]
    pub air_c: Option<f64>,
    /// Power of the heater, where no reading tells it. \[W\]
    pub heater_w: Option<f64>,
    /// Wind and intercept area, for the standard's cooking power.
    pub plane: Plane,
    /// Anything else.
    pub notes: String,
}

/// The readings of a run.
#[derive(Debug, Clone, PartialEq)]
pub enum RunReadings {
    /// Typed one by one, by time, no two at the same second.
    Typed(Vec<Reading>),
    /// From a text that was pasted or a file; it is kept beside the document.
    File(KeptText),
}

/// What was read at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// When.
    pub at: LocalTime,
    /// Store. \[°C\]
    pub store_c: Option<f64>,
    /// Pot, or the water in it. \[°C\]
    pub pot_c: Option<f64>,
    /// Air. \[°C\]
    pub air_c: Option<f64>,
    /// Power of the heater. \[W\]
    pub heater_w: Option<f64>,
}

/// A text of readings that is kept on the device beside the document.
#[derive(Debug, Clone, PartialEq)]
pub struct KeptText {
    /// What it is kept under; the same for the same text.
    pub key: String,
    /// Name of the file; empty for what was pasted.
    pub name: String,
    /// Rows that could be used.
    pub rows: u32,
    /// From the first of them to the last. \[s\]
    pub span_s: f64,
    /// How it is to be understood.
    pub hints: Hints,
}

/// A text with what it is kept under, on its way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Text {
    /// The key.
    pub key: String,
    /// The text.
    pub text: String,
}

/// What a fit found, as it is kept.
#[derive(Debug, Clone, PartialEq)]
pub struct KeptFit {
    /// When it was worked out.
    pub at: LocalTime,
    /// The runs that were fitted together.
    pub runs: Vec<RunId>,
    /// What it is worth.
    pub worth: Worth,
    /// Usual distance of a reading from the fitted curve. \[K\]
    pub scatter_k: f64,
    /// Each figure of the cooker.
    pub found: Vec<Found>,
    /// The figures of a store that is charged and emptied.
    pub figures: Option<ChargeFigures>,
    /// Their spreads.
    pub spread: Option<ChargeSpread>,
    /// Of the run's last pot.
    pub boiling: Option<BoilingTest>,
    /// Standardised cooking power at 50 K above the air; of a test that meets every condition. \[W\]
    pub standard_w: Option<f64>,
    /// What the description foresees of the same cooker; none of a fit that was kept before that was
    /// kept with it.
    pub described: Option<Described>,
    /// What the description foresees of the run's last pot: from its going in to its boil. \[s\]
    pub described_boil_s: Option<f64>,
}

/// What the description of a cooker foresees, apart from all that was measured of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Described {
    /// Store for which loss and contact are told, as described and as measured. [°C]
    pub working_c: f64,
    /// Each figure of the cooker, with the doubt of a description.
    pub found: Vec<Found>,
    /// The figures of a store that is charged and emptied.
    pub figures: Option<ChargeFigures>,
    /// Their spreads.
    pub spread: Option<ChargeSpread>,
}

/// A cooker that what was found was taken over into.
#[derive(Debug, Clone, PartialEq)]
pub struct Used {
    /// As it was described when it was fitted.
    pub described: Cooker,
    /// With what was measured.
    pub measured: Cooker,
}

/// A figure that was found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Found {
    /// Which.
    pub parameter: Parameter,
    /// The figure with its spread, the model's own error with it.
    pub measured: Measured,
    /// Whether the runs told it; else it is the description's.
    pub told: bool,
}

impl Bench {
    /// The run with this number.
    pub fn run(&self, id: RunId) -> Option<&TestRun> {
        self.runs.iter().find(|run| run.id == id)
    }

    /// Keys of the texts that runs read from.
    pub fn keys(&self) -> Vec<String> {
        let texts = self.runs.iter().filter_map(|run| match &run.readings {
            RunReadings::File(text) => Some(text.key.clone()),
            RunReadings::Typed(_) => None,
        });
        texts.collect()
    }

    /// What the cooker of a run is described as, apart from what was measured by that run itself: else
    /// the same readings would count twice. Figures that were taken over since then are not in it,
    /// either.
    pub fn described<'a>(&'a self, run: &'a TestRun, cooker: &'a Cooker) -> &'a Cooker {
        let mut now = cooker;
        // Each step takes back one taking over; there are no more of them than runs.
        for _ in &self.runs {
            let led_here = |of: &'a TestRun| {
                let used = of.used.as_deref();
                used.filter(|used| of.cooker == run.cooker && used.measured == *now)
            };
            if let Some(used) = led_here(run) {
                return &used.described;
            }
            let Some(used) = self.runs.iter().find_map(led_here) else {
                break;
            };
            now = &used.described;
        }
        cooker
    }

    /// The latest run that goes on.
    pub fn going(&self) -> Option<&TestRun> {
        self.runs.iter().rev().find(|run| run.ended.is_none())
    }
}

impl TestRun {
    /// Time from the start. \[s\]
    pub fn since_start_s(&self, at: LocalTime) -> f64 {
        at.since_s(self.started) as f64
    }

    /// The instant so long after the start.
    pub fn at(&self, since_start_s: f64) -> LocalTime {
        #[expect(
            clippy::cast_possible_truncation,
            reason = "a cast holds to the bounds"
        )]
        self.started.plus_s(since_start_s.round() as i64)
    }

    /// The pot that is in now.
    pub fn pot_in(&self) -> Option<&PotIn> {
        let is_in = |pot: &&PotIn| self.ended.is_none() && pot.out_s.is_none();
        self.pots.last().filter(is_in)
    }

    /// The last pot, where it was not taken out: in a run that is over it stayed to the end.
    pub fn pot_open(&self) -> Option<&PotIn> {
        self.pots.last().filter(|pot| pot.out_s.is_none())
    }

    /// The typed readings; none of a run whose readings are kept as a text.
    pub fn typed(&self) -> &[Reading] {
        match &self.readings {
            RunReadings::Typed(typed) => typed,
            RunReadings::File(_) => &[],
        }
    }

    /// What was read at that time, of the parts for which `new` says something else.
    pub fn overwritten(&self, new: &Reading) -> Option<Reading> {
        let typed = self.typed();
        let place = typed.binary_search_by_key(&new.at, |reading| reading.at);
        let former = typed.get(place.ok()?)?;
        let other =
            |old: Option<f64>, new: Option<f64>| old.filter(|_| new.is_some() && new != old);
        let lost = Reading {
            at: former.at,
            store_c: other(former.store_c, new.store_c),
            pot_c: other(former.pot_c, new.pot_c),
            air_c: other(former.air_c, new.air_c),
            heater_w: other(former.heater_w, new.heater_w),
        };
        (!lost.is_empty()).then_some(lost)
    }

    /// Number of rows of readings.
    pub fn n_rows(&self) -> usize {
        match &self.readings {
            RunReadings::Typed(typed) => typed.len(),
            RunReadings::File(text) => usize::try_from(text.rows).unwrap_or(usize::MAX),
        }
    }

    /// From the first reading to the last. \[s\]
    pub fn span_s(&self) -> f64 {
        match &self.readings {
            RunReadings::Typed(typed) => match (typed.first(), typed.last()) {
                (Some(first), Some(last)) => last.at.since_s(first.at) as f64,
                _ => 0.0,
            },
            RunReadings::File(text) => text.span_s,
        }
    }

    /// The typed readings for the model, times from the start.
    pub fn rows(&self) -> Vec<Row> {
        let row = |(idx, reading): (usize, &Reading)| Row {
            line: idx + 1,
            time_s: self.since_start_s(reading.at),
            store_c: reading.store_c,
            pot_c: reading.pot_c,
            air_c: reading.air_c,
            heater_w: reading.heater_w,
            irradiance_w_m2: None,
        };
        self.typed().iter().enumerate().map(row).collect()
    }
}

impl Reading {
    /// Nothing read yet.
    pub fn none(at: LocalTime) -> Self {
        Self {
            at,
            store_c: None,
            pot_c: None,
            air_c: None,
            heater_w: None,
        }
    }

    /// Whether nothing was read.
    pub fn is_empty(&self) -> bool {
        *self == Self::none(self.at)
    }

    /// This one, with what only the other has.
    #[must_use]
    pub fn or(self, other: &Self) -> Self {
        Self {
            at: self.at,
            store_c: self.store_c.or(other.store_c),
            pot_c: self.pot_c.or(other.pot_c),
            air_c: self.air_c.or(other.air_c),
            heater_w: self.heater_w.or(other.heater_w),
        }
    }
}
