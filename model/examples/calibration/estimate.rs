//! The estimate under judgement, asked as a household would ask it.

use model::journal::Journal;
use model::local_time::LocalTime;
use model::odds::{Band as Seven, Replay, Settings};
use model::tonight::TonightError;

use crate::diary::Asked;
use crate::household::Household;

/// Quantiles of something that may never come: 5, 25, 50, 75 and 95 %; infinite where it does not.
pub(crate) type Band = [f64; 5];

/// What is said before a pot goes in.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Said {
    /// As it is told to a cook, never sure.
    pub(crate) boils: f64,
    pub(crate) ready: f64,
    /// Seconds from putting in.
    pub(crate) boil_s: Band,
    pub(crate) ready_s: Band,
    pub(crate) store_c: Band,
}

/// One household's estimate, which keeps what it worked out of the past.
pub(crate) struct Estimate {
    replay: Replay,
}

impl Estimate {
    pub(crate) fn new() -> Self {
        Self {
            replay: Replay::new(Settings::default()),
        }
    }

    /// Asks about a pot just before it goes in.
    pub(crate) fn ask(
        &mut self,
        household: &Household,
        journal: &Journal,
        asked: &Asked,
    ) -> Result<Said, TonightError> {
        let (site, cooker) = (&household.site, &household.cooker);
        let belief = self.replay.belief(site, cooker, journal, asked.at)?;
        let odds = belief.ask(&asked.meal, asked.at);
        let since =
            |at: Option<LocalTime>| at.map_or(f64::INFINITY, |at| at.since_s(asked.at) as f64);
        Ok(Said {
            boils: odds.boils().probability(),
            ready: odds.ready().probability(),
            boil_s: five(odds.boils_at.map(since)),
            ready_s: five(odds.ready_at.map(since)),
            store_c: five(belief.store().store_c),
        })
    }
}

fn five(band: Seven<f64>) -> Band {
    [band.p05, band.p25, band.p50, band.p75, band.p95]
}
