//! The way of the members through a diary: light, acts and reports in the order of time.

use std::sync::Arc;

use super::Settings;
use super::belief::first_day;
use super::doubt::Doubt;
use super::edges::Edges;
use super::ensemble::Ensemble;
use super::epoch::Epoch;
use super::load::Load;
use super::member::Course;
use super::noise::{Noise, Purpose};
use super::prior::{Multiplier, OFFSETS, Offset};
use super::sky::{SkyDay, sky_day};
use super::untold::may_be_untold;
use crate::journal::{Felt, Journal, Meal, What};
use crate::local_time::{Day, LocalTime};
use crate::tonight::TonightError;

/// A first reading is believed up to so much over the cut-out: a thermostat is off, and a spot by the
/// heater is hotter. Inferred. \[K\]
const HOTTER_K: f64 = 60.0;
/// And down to so much under the air of a usual night, for a hard frost. Inferred. \[K\]
const COLDER_K: f64 = 15.0;

/// A pot that is in.
#[derive(Debug, Clone)]
pub(super) struct InPot {
    pub(super) load: Arc<Load>,
    pub(super) meal: Meal,
    pub(super) put_in: LocalTime,
    /// Which of the journal's events.
    event: usize,
}

/// What is believed at an instant.
#[derive(Debug, Clone)]
pub(super) struct Past {
    pub(super) ensemble: Ensemble,
    pub(super) pot: Option<InPot>,
    pub(super) doubts: Vec<Doubt>,
    /// Which cooker it is.
    pub(super) epoch: usize,
}

/// What happens at an instant, in the order in which it happens.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Act {
    PotOut(usize),
    Changed(usize),
    Reading(f64),
    Felt(Felt),
    PotIn(usize),
}

impl Act {
    fn order(self) -> u8 {
        match self {
            Self::PotOut(_) => 0,
            Self::Changed(_) => 1,
            Self::Reading(_) | Self::Felt(_) => 2,
            Self::PotIn(_) => 3,
        }
    }
}

/// A diary to walk through.
pub(super) struct Road<'a> {
    pub(super) journal: &'a Journal,
    pub(super) epochs: &'a [Arc<Epoch>],
    pub(super) settings: &'a Settings,
    pub(super) now: LocalTime,
    acts: Vec<(LocalTime, Act)>,
    edges: Edges,
    /// The first day that anything hangs on.
    begins: Day,
    /// The days that were last needed.
    skies: Vec<(Day, usize, SkyDay)>,
}

impl<'a> Road<'a> {
    /// `first` is the first day to be walked.
    pub(super) fn new(
        journal: &'a Journal,
        epochs: &'a [Arc<Epoch>],
        settings: &'a Settings,
        first: Day,
        now: LocalTime,
    ) -> Self {
        let mut acts = Vec::new();
        for (idx, event) in journal.events.iter().enumerate() {
            match &event.what {
                What::Reading { store_c } => acts.push((event.at, Act::Reading(*store_c))),
                What::Felt(felt) => acts.push((event.at, Act::Felt(*felt))),
                What::Meal(meal) => {
                    acts.push((event.at, Act::PotIn(idx)));
                    acts.push((meal.leaves_at().max(event.at), Act::PotOut(idx)));
                }
                What::LidOpen { .. } | What::HeaterOff { .. } | What::TopUp { .. } => {}
            }
        }
        for (idx, former) in journal.formerly.iter().enumerate() {
            acts.push((former.until, Act::Changed(idx + 1)));
        }
        acts.retain(|(at, _)| first.start() <= *at);
        acts.sort_by_key(|(at, act)| (*at, act.order()));
        Self {
            journal,
            epochs,
            settings,
            now,
            begins: first_day(journal, now.day()),
            acts,
            edges: Edges::new(journal, first, now.day()),
            skies: Vec::new(),
        }
    }

    /// Which cooker it was at an instant.
    pub(super) fn epoch_at(journal: &Journal, at: LocalTime) -> usize {
        journal
            .formerly
            .iter()
            .take_while(|former| former.until <= at)
            .count()
    }

    pub(super) fn epoch(&self, idx: usize) -> Result<Arc<Epoch>, TonightError> {
        let last = self.epochs.last();
        let found = self.epochs.get(idx).or(last).cloned();
        found.ok_or(TonightError::NoCooker)
    }

    /// A belief in which nothing was reported yet.
    pub(super) fn begin(&mut self, at: LocalTime) -> Result<Past, TonightError> {
        let seed = self.settings.seed;
        let first_read = self.first_read(at.day())?;
        let at = first_read.map_or(at, |(read_at, _)| read_at);
        let idx = Self::epoch_at(self.journal, at);
        let epoch = self.epoch(idx)?;
        let mut ensemble = Ensemble::new(self.settings.members.max(1), at);
        let noise = Noise::new(seed, Purpose::Multiplier).at(0);
        for (multiplier, log_sd) in Multiplier::ALL.into_iter().zip(epoch.log_sd) {
            ensemble.draw(multiplier, log_sd, noise);
        }
        for (offset, sd) in self.offsets(&epoch) {
            ensemble.draw_offset(offset, sd, noise);
        }
        let air_c = self.first_air_c(at.day(), idx)?;
        ensemble.draw_nucleation(&epoch.build, Noise::new(seed, Purpose::Nucleation));
        ensemble.draw_dishes(Noise::new(seed, Purpose::Dish));
        let start = Noise::new(seed, Purpose::Start);
        match first_read {
            Some((_, read_c)) => ensemble.start_near(&epoch.build, air_c, read_c, start),
            None => ensemble.start(&epoch.build, air_c, start),
        }
        ensemble.begin_day(at.day(), seed);
        Ok(Past {
            ensemble,
            pot: None,
            doubts: Vec::new(),
            epoch: idx,
        })
    }

    /// What is off by so much, before anything was reported.
    fn offsets(&self, epoch: &Epoch) -> [(Offset, f64); OFFSETS] {
        let thermometer_sd_k = self.settings.thermometer.offset_sd_k();
        let has_nodes = 1 < epoch.build.row.count;
        Offset::all((thermometer_sd_k, epoch.melt_sd_k), has_nodes)
    }

    /// The reading that a diary begins with, where nothing was told before it on its first day.
    pub(super) fn begins_with(&self, first: Day) -> Option<(LocalTime, f64)> {
        let event = self.journal.events.first()?;
        let What::Reading { store_c } = event.what else {
            return None;
        };
        let has_begun = event.at.day() == first && event.at <= self.now;
        (has_begun && self.journal.first_day() == Some(first)).then_some((event.at, store_c))
    }

    /// The reading that a diary begins with: whatever the store was until then, it is near that now.
    /// None where no store of this cooker is so hot or so cold: then it is a reading like any other
    /// that does not fit.
    fn first_read(&mut self, first: Day) -> Result<Option<(LocalTime, f64)>, TonightError> {
        let Some((at, read_c)) = self.begins_with(first) else {
            return Ok(None);
        };
        let idx = Self::epoch_at(self.journal, at);
        let air_c = self.first_air_c(first, idx)?;
        let cutout_c = self.epoch(idx)?.build.cutout_c;
        let can_be = air_c - COLDER_K..cutout_c + HOTTER_K;
        Ok(can_be.contains(&read_c).then_some((at, read_c)))
    }

    /// Air as a day begins. [°C]
    fn first_air_c(&mut self, day: Day, epoch: usize) -> Result<f64, TonightError> {
        let first = self.sky(day, epoch)?.first();
        Ok(first.map_or(20.0, |step| step.air_c))
    }

    /// The sky of a day.
    fn sky(&mut self, day: Day, epoch: usize) -> Result<&SkyDay, TonightError> {
        let known = |held: &(Day, usize, SkyDay)| (held.0, held.1) == (day, epoch);
        let place = match self.skies.iter().position(known) {
            Some(place) => place,
            None => {
                let of = self.epoch(epoch)?;
                let sky = sky_day(&of.rig, self.journal, (self.begins, day))?;
                if 4 < self.skies.len() {
                    self.skies.remove(0);
                }
                self.skies.push((day, epoch, sky));
                self.skies.len() - 1
            }
        };
        self.skies
            .get(place)
            .map(|held| &held.2)
            .ok_or(TonightError::NoCooker)
    }

    /// Carries a belief to an instant, with all that was done and told on the way.
    pub(super) fn walk(&mut self, past: &mut Past, to: LocalTime) -> Result<(), TonightError> {
        let from = past.ensemble.at;
        let mut next = self.acts.partition_point(|(at, _)| *at < from);
        while let Some(&(at, act)) = self.acts.get(next) {
            if to <= at {
                break;
            }
            self.carry(past, at)?;
            self.act(past, at, act)?;
            next += 1;
        }
        self.carry(past, to)
    }

    /// What was done and told at the very instant `now`, and what is known of a pot that is in.
    pub(super) fn arrive(&mut self, past: &mut Past) -> Result<(), TonightError> {
        let now = self.now;
        let from = self.acts.partition_point(|(at, _)| *at < now);
        let to = self.acts.partition_point(|(at, _)| *at <= now);
        for place in from..to {
            if let Some(&(at, act)) = self.acts.get(place) {
                self.act(past, at, act)?;
            }
        }
        self.hear_of_pot(past)
    }

    /// Carries the members, midnights and all, doing nothing.
    pub(super) fn carry(&mut self, past: &mut Past, to: LocalTime) -> Result<(), TonightError> {
        let seed = self.settings.seed;
        let epoch = self.epoch(past.epoch)?;
        let edges = std::mem::take(&mut self.edges);
        let mut carried = Ok(());
        while past.ensemble.at < to {
            let day = past.ensemble.at.day();
            let midnight = day.plus(1).start();
            let sky = match self.sky(day, past.epoch) {
                Ok(sky) => sky,
                Err(error) => {
                    carried = Err(error);
                    break;
                }
            };
            let course = Course {
                build: &epoch.build,
                load: past.pot.as_ref().map(|pot| &*pot.load),
                out_when_ready: false,
                pots_only: false,
            };
            let ensemble = &mut past.ensemble;
            let last_air_c = sky.last().map_or(20.0, |step| step.air_c);
            ensemble.carry(&course, sky, &edges, seed, to.min(midnight));
            if ensemble.at == midnight {
                ensemble.begin_day(midnight.day(), seed);
                ensemble.drift(&epoch.log_sd, midnight.day(), seed);
                let sd_k = self.settings.thermometer.offset_sd_k();
                ensemble.move_thermometer(sd_k, midnight.day(), seed);
                if may_be_untold(self.journal, day) {
                    ensemble.cook_untold(&epoch, last_air_c, day, seed);
                }
            }
        }
        self.edges = edges;
        carried
    }

    fn act(&mut self, past: &mut Past, at: LocalTime, act: Act) -> Result<(), TonightError> {
        match act {
            Act::Reading(store_c) => self.read(past, at, store_c),
            Act::Felt(felt) => self.feel(past, at, felt),
            Act::Changed(idx) => self.change(past, at, idx),
            Act::PotOut(idx) => {
                if past.pot.as_ref().is_some_and(|pot| pot.event == idx) {
                    self.pot_out(past)?;
                }
                Ok(())
            }
            Act::PotIn(idx) => {
                self.pot_out(past)?;
                self.pot_in(past, at, idx)
            }
        }
    }

    fn pot_in(&mut self, past: &mut Past, at: LocalTime, idx: usize) -> Result<(), TonightError> {
        let Some(What::Meal(meal)) = self.journal.events.get(idx).map(|event| &event.what) else {
            return Ok(());
        };
        let air_c = self.air_c(at, past.epoch)?;
        let epoch = self.epoch(past.epoch)?;
        past.ensemble.bring_in(&epoch.build, air_c);
        let load = epoch.load(meal, at, air_c);
        past.ensemble
            .put_in(&epoch.build, &load, meal, self.settings.seed);
        past.pot = Some(InPot {
            load: Arc::new(load),
            meal: meal.clone(),
            put_in: at,
            event: idx,
        });
        Ok(())
    }

    pub(super) fn air_c(&mut self, at: LocalTime, epoch: usize) -> Result<f64, TonightError> {
        let place = usize::try_from(at.second_of_day() / super::sky::STEP_S).unwrap_or(0);
        let sky = self.sky(at.day(), epoch)?;
        Ok(sky.get(place).map_or(20.0, |step| step.air_c))
    }

    /// The pot comes out, and what was reported of it is heard.
    fn pot_out(&mut self, past: &mut Past) -> Result<(), TonightError> {
        self.hear_of_pot(past)?;
        past.pot = None;
        past.ensemble.take_out();
        Ok(())
    }

    /// The cooker was changed: what hangs on the parts that are the same is kept.
    fn change(&mut self, past: &mut Past, at: LocalTime, idx: usize) -> Result<(), TonightError> {
        let (old, new) = (self.epoch(past.epoch)?, self.epoch(idx)?);
        let members = past.ensemble.members();
        let store_c: Vec<f64> = (0..members)
            .map(|member| past.ensemble.store_c(&old.build, member))
            .collect();
        let noise = Noise::new(self.settings.seed, Purpose::Multiplier).at(at.0);
        for multiplier in Multiplier::ALL {
            let place = multiplier.index();
            let same = multiplier.is_kept(&old.cooker, &new.cooker);
            if let Some(log_sd) = new.log_sd.get(place).filter(|_| !same) {
                past.ensemble.draw(multiplier, *log_sd, noise);
            }
        }
        let nucleation = Noise::new(self.settings.seed, Purpose::Nucleation);
        past.ensemble.draw_nucleation(&new.build, nucleation);
        let air_c = self.air_c(at, idx)?;
        if !Multiplier::Capacity.is_kept(&old.cooker, &new.cooker) {
            let of_store = |(offset, _): &(Offset, f64)| {
                !matches!(offset, Offset::Thermometer | Offset::Air | Offset::Late)
            };
            for (offset, sd) in self.offsets(&new).into_iter().filter(of_store) {
                past.ensemble.draw_offset(offset, sd, noise);
            }
        }
        for (member, store_c) in store_c.into_iter().enumerate() {
            past.ensemble.set_store_c(&new.build, member, store_c);
            if old.build.warmth != new.build.warmth {
                past.ensemble.set_jacket(&new.build, member, air_c);
            }
        }
        past.epoch = idx;
        Ok(())
    }

    /// Skies from a day on, for as many days; and when the cooker stood open or was off.
    pub(super) fn ahead(
        &mut self,
        from: Day,
        days: i32,
        epoch: usize,
    ) -> Result<(Vec<SkyDay>, Edges), TonightError> {
        let skies = (0..days)
            .map(|n| self.sky(from.plus(n), epoch).cloned())
            .collect::<Result<_, _>>()?;
        Ok((skies, self.edges.clone()))
    }
}
