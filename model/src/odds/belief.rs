//! What is believed now, and how it came about.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::ahead::Ahead;
use super::band::Band;
use super::digest::Digest;
use super::doubt::Doubt;
use super::edges::Edges;
use super::ensemble::{Ensemble, column};
use super::epoch::Epoch;
use super::filter::effective;
use super::prior::{MULTIPLIERS, Multiplier, cook_log_sd};
use super::road::{InPot, Past, Road};
use super::sky::{STEP_S, SkyDay};
use super::{Settings, band_of};
use crate::cooker::Cooker;
use crate::dish::Dish;
use crate::journal::Journal;
use crate::local_time::{Day, LocalTime};
use crate::pot::Lid;
use crate::tonight::{Site, TonightError};

/// Raise this with every change of the model that changes an answer: what was put away before is
/// then walked anew.
const MODEL: u64 = 14;
/// A diary is walked from so many days back at least, if it goes back so far, and from so many more at
/// most. What drifts keeps a third of what was learned of it before; a season's reports teach the
/// rest anew.
const MOST_DAYS: i32 = 120;
const ROUND_DAYS: i32 = 30;
/// Beliefs are kept of each of the last days, and of every seventh before.
const KEPT_DAYS: i32 = 21;
const KEPT_EVERY: i32 = 7;
/// Days worked out from today on.
const DAYS_AHEAD: i32 = 3;

/// Walks through diaries and keeps what was believed at their midnights, so that an edit is worked
/// out from the day it touches on. Whatever was kept, the answer is the same.
#[derive(Debug, Default)]
pub struct Replay {
    pub(super) settings: Settings,
    pub(super) marks: BTreeMap<Day, Mark>,
    /// One more, within the last day that was asked about.
    pub(super) today: Option<Mark>,
    epochs: Vec<Arc<Epoch>>,
}

/// A belief at the midnight that begins a day.
#[derive(Debug)]
pub(super) struct Mark {
    /// Of everything before.
    pub(super) fingerprint: Digest,
    pub(super) past: Past,
}

impl Replay {
    /// One that has walked nowhere yet.
    pub fn new(settings: Settings) -> Self {
        Self {
            settings,
            ..Self::default()
        }
    }

    /// What is believed at `now` of a cooker with this journal.
    ///
    /// Only what was told of times up to `now` is taken in; a pot that is in stays in.
    ///
    /// # Errors
    ///
    /// [`TonightError`] for a place, a cooker or a log that makes no sense.
    pub fn belief(
        &mut self,
        site: &Site,
        cooker: &Cooker,
        journal: &Journal,
        now: LocalTime,
    ) -> Result<Belief, TonightError> {
        let today = now.day();
        let first = first_day(journal, today);
        let epochs = self.epochs(site, cooker, journal)?;
        let (day, prints, digest) = self.last_mark(journal, &epochs, first, today);
        let settings = self.settings;
        let mut road = Road::new(journal, &epochs, &settings, day.max(first), now);
        let print = road.print_of_today(digest, first);
        let mut past = match self.taken_up(print) {
            Some(past) => past,
            None => self.walk(&mut road, (day, first), &prints, today)?,
        };
        self.marks.retain(|at, _| is_kept(*at, today));
        self.keep_today(&mut road, &mut past, print)?;
        road.walk(&mut past, now)?;
        road.arrive(&mut past)?;
        let (skies, edges) = road.ahead(today, DAYS_AHEAD, past.epoch)?;
        let epoch = epochs
            .get(past.epoch)
            .or(epochs.last())
            .cloned()
            .ok_or(TonightError::NoCooker)?;
        Ok(Belief {
            settings,
            epoch,
            ensemble: past.ensemble,
            pot: past.pot,
            doubts: past.doubts,
            skies,
            skies_from: today,
            edges,
            ahead: Ahead::default(),
        })
    }

    /// Walks so many days at most towards today, keeping what is believed on the way, and says how
    /// many are left then: what takes long can be done in parts, with no other outcome.
    ///
    /// # Errors
    ///
    /// As [`Replay::belief`].
    pub fn walk_on(
        &mut self,
        site: &Site,
        cooker: &Cooker,
        journal: &Journal,
        now: LocalTime,
        days: i32,
    ) -> Result<i32, TonightError> {
        let today = now.day();
        let first = first_day(journal, today);
        let epochs = self.epochs(site, cooker, journal)?;
        let (day, prints, _) = self.last_mark(journal, &epochs, first, today);
        let from = day.max(first);
        let to = from.plus(days.max(0)).min(today);
        if from < to {
            let settings = self.settings;
            let mut road = Road::new(journal, &epochs, &settings, from, now);
            self.walk(&mut road, (day, first), &prints, to)?;
            self.marks.retain(|at, _| is_kept(*at, today) || *at == to);
        }
        Ok(today.0 - to.0)
    }

    /// From the last midnight that holds to another.
    fn walk(
        &mut self,
        road: &mut Road<'_>,
        (day, first): (Day, Day),
        prints: &BTreeMap<Day, Digest>,
        to: Day,
    ) -> Result<Past, TonightError> {
        self.marks.retain(|marked, _| *marked <= day);
        let mut at = day.max(first);
        let mut past = match self.marks.get(&day) {
            Some(mark) => mark.past.clone(),
            None => road.begin(at.start())?,
        };
        while at < to {
            at = at.plus(1);
            road.walk(&mut past, at.start())?;
            if let Some(fingerprint) = prints.get(&at)
                && (at == to || is_kept(at, road.now.day()))
            {
                let mark = Mark {
                    fingerprint: *fingerprint,
                    past: past.clone(),
                };
                self.marks.insert(at, mark);
            }
        }
        Ok(past)
    }

    /// The cookers of a journal, in order, the present one last.
    fn epochs(
        &mut self,
        site: &Site,
        cooker: &Cooker,
        journal: &Journal,
    ) -> Result<Vec<Arc<Epoch>>, TonightError> {
        let cookers = journal.formerly.iter().map(|former| &former.cooker);
        let mut epochs = Vec::new();
        for cooker in cookers.chain([cooker]) {
            let mut all = self.epochs.iter().chain(&epochs);
            let known = all.find(|epoch| epoch.is_of(site, cooker));
            epochs.push(match known {
                Some(epoch) => Arc::clone(epoch),
                None => Arc::new(Epoch::new(site, cooker)?),
            });
        }
        self.epochs.clone_from(&epochs);
        Ok(epochs)
    }

    /// The last midnight before now at which a belief was kept that still holds; the fingerprints of
    /// all midnights; and that of all before today.
    fn last_mark(
        &self,
        journal: &Journal,
        epochs: &[Arc<Epoch>],
        first: Day,
        today: Day,
    ) -> (Day, BTreeMap<Day, Digest>, Digest) {
        let settings = self.settings;
        let mut digest = Digest::new()
            .word(MODEL)
            .word(settings.seed)
            .word(settings.members as u64)
            .number(settings.thermometer.sd_k)
            .word(settings.thermometer.sits as u64)
            .word(u64::from(first.0.cast_unsigned()));
        let mut prints = BTreeMap::new();
        let mut last = first.plus(-1);
        let mut event = journal
            .events
            .partition_point(|event| event.at < first.start());
        let mut day = first;
        while day < today {
            let epoch = Road::epoch_at(journal, day.start());
            digest = digest
                .sky(journal.skies.get(&day))
                .word(epochs.get(epoch).map_or(0, |epoch| epoch.fingerprint));
            for former in &journal.formerly {
                if former.until.day() == day {
                    digest = digest.time(former.until);
                }
            }
            while let Some(next) = journal
                .events
                .get(event)
                .filter(|next| next.at.day() <= day)
            {
                digest = digest.event(next);
                event += 1;
            }
            day = day.plus(1);
            let holds = self
                .marks
                .get(&day)
                .is_some_and(|mark| mark.fingerprint == digest);
            if holds {
                last = day;
            }
            prints.insert(day, digest);
        }
        (last, prints, digest)
    }
}

/// Whether what is believed at the midnight that begins a day is kept for later.
fn is_kept(day: Day, today: Day) -> bool {
    today.plus(-KEPT_DAYS) <= day || day.0.rem_euclid(KEPT_EVERY) == 0
}

/// The day a diary is walked from.
pub(super) fn first_day(journal: &Journal, today: Day) -> Day {
    let first = journal.first_day().map_or(today, |day| day.min(today));
    let too_far = today.plus(-MOST_DAYS);
    if first < too_far {
        Day(too_far.0.div_euclid(ROUND_DAYS) * ROUND_DAYS)
    } else {
        first
    }
}

/// What is believed of a cooker at an instant.
#[derive(Debug, Clone)]
pub struct Belief {
    pub(super) settings: Settings,
    pub(super) epoch: Arc<Epoch>,
    pub(super) ensemble: Ensemble,
    pub(super) pot: Option<InPot>,
    doubts: Vec<Doubt>,
    skies: Vec<SkyDay>,
    skies_from: Day,
    pub(super) edges: Edges,
    pub(super) ahead: Ahead,
}

/// The store as it may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StoreBands {
    /// Temperature of the store, mixed. [°C]
    pub store_c: Band<f64>,
    /// Under the seat. [°C]
    pub seat_c: Band<f64>,
    /// Litres of water of 20 °C that the heat above the boil would bring to the boil. \[L\]
    pub litres: Band<f64>,
    /// Share of the useful span, boil to cut-out, that is full: 0 to 1.
    pub full_share: Band<f64>,
    /// Whether a pot is in.
    pub pot_is_in: bool,
    /// How many members the weights are worth.
    pub effective_members: f64,
}

/// What was learned of one multiplier.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Learned {
    /// Which.
    pub multiplier: Multiplier,
    /// Before anything was reported.
    pub prior: Band<f64>,
    /// Now.
    pub now: Band<f64>,
    /// What it multiplies, where it is one figure: the loss, the seat, the usual pot's loss. \[W/K\]
    pub told_w_k: Option<f64>,
    /// The store's temperature at which that is told, where it changes with it. [°C]
    pub told_at_c: Option<f64>,
}

impl Belief {
    /// What is believed at `now` of a cooker with this journal, walked from its first day.
    ///
    /// # Errors
    ///
    /// As [`Replay::belief`].
    pub fn replay(
        site: &Site,
        cooker: &Cooker,
        journal: &Journal,
        now: LocalTime,
        settings: &Settings,
    ) -> Result<Self, TonightError> {
        Replay::new(*settings).belief(site, cooker, journal, now)
    }

    /// When it is the belief of.
    pub fn at(&self) -> LocalTime {
        self.ensemble.at
    }

    /// The store now.
    pub fn store(&self) -> StoreBands {
        let (build, rig) = (&self.epoch.build, &self.epoch.rig);
        let pot = self.epoch.cooker.pot;
        StoreBands {
            store_c: band_of(&self.ensemble, |all, one| all.store_c(build, one)),
            seat_c: band_of(&self.ensemble, |all, one| all.seat_c(build, one)),
            litres: band_of(&self.ensemble, |all, one| {
                let capacity = all.get(column::FACTOR + Multiplier::Capacity.index(), one);
                let litres = rig.litres(all.store_j(build, one), pot);
                litres.map_or(f64::NAN, |litres| capacity * litres)
            }),
            full_share: band_of(&self.ensemble, |all, one| {
                rig.full_share(all.store_j(build, one)).unwrap_or(f64::NAN)
            }),
            pot_is_in: self.pot.is_some(),
            effective_members: effective(&self.ensemble.weight),
        }
    }

    /// Reports that could not be explained, the earliest first.
    pub fn doubts(&self) -> &[Doubt] {
        &self.doubts
    }

    /// What was learned of the cooker.
    pub fn learned(&self) -> [Learned; MULTIPLIERS] {
        Multiplier::ALL.map(|multiplier| {
            // A cooking time's logarithm is kept in spreads of the dish.
            let spread = typical_dish(multiplier).map_or(1.0, |dish| cook_log_sd(dish)[0]);
            let place = column::LOG + multiplier.index();
            let log_sd = self.epoch.log_sd.get(multiplier.index()).copied();
            let pot = self.epoch.cooker.pot;
            Learned {
                multiplier,
                prior: prior_band(spread * log_sd.unwrap_or(0.0)),
                now: band_of(&self.ensemble, |all, one| {
                    libm::exp(spread * all.get(place, one))
                }),
                told_w_k: match multiplier {
                    Multiplier::Loss => Some(self.epoch.rig.loss_w_k()),
                    Multiplier::Contact => Some(self.epoch.rig.seat_w_k()),
                    Multiplier::PotLoss => {
                        Some(self.epoch.cooker.pot_loss_share * pot.loss_w_k(Lid::On))
                    }
                    _ => None,
                },
                told_at_c: matches!(multiplier, Multiplier::Loss | Multiplier::Contact)
                    .then(|| self.epoch.rig.working_c()),
            }
        })
    }

    /// Temperature at which water boils here. [°C]
    pub fn boiling_c(&self) -> f64 {
        self.epoch.build.boiling_c
    }

    /// The end of the day's last half hour of sun at the heater, or `from` where it is later. Looks
    /// at the day of `from`.
    pub(super) fn sunset(&self, from: LocalTime) -> LocalTime {
        let day = from.day();
        let steps = self.sky(day).map_or(&[][..], |sky| &sky[..]);
        let lit = steps.iter().rposition(super::sky::SkyStep::is_lit);
        lit.and_then(|step| i64::try_from(step + 1).ok())
            .map_or(from, |steps| day.at_s(steps * STEP_S))
            .max(from)
    }

    /// The sky of a day; of one that is too far off, the last that was worked out.
    pub(super) fn sky(&self, day: Day) -> Option<&SkyDay> {
        let place = usize::try_from(day.0.saturating_sub(self.skies_from.0)).unwrap_or(0);
        self.skies.get(place).or(self.skies.last())
    }

    /// The same belief with fewer members, for searches.
    pub(super) fn thinned(&self, members: usize) -> Self {
        Self {
            ensemble: self.ensemble.thinned(members, 0.5),
            ..self.clone()
        }
    }

    pub(super) fn of(&self, ensemble: Ensemble) -> Self {
        Self {
            ensemble,
            pot: None,
            ..self.clone()
        }
    }
}

/// A dish whose spread stands for its kind.
fn typical_dish(multiplier: Multiplier) -> Option<Dish> {
    match multiplier {
        Multiplier::GrainTime => Some(Dish::WhiteRice),
        Multiplier::BeanTime => Some(Dish::CommonBeansSoaked),
        Multiplier::PulseTime => Some(Dish::ChickpeasSoaked),
        Multiplier::OtherTime => Some(Dish::MeatStew),
        _ => None,
    }
}

fn prior_band(log_sd: f64) -> Band<f64> {
    let at = |p: f64| libm::exp(log_sd * super::noise::normal_quantile(p));
    Band {
        p05: at(0.05),
        p10: at(0.1),
        p25: at(0.25),
        p50: at(0.5),
        p75: at(0.75),
        p90: at(0.9),
        p95: at(0.95),
    }
}
