//! Carries a store through logged and coming time.

use crate::cooker::Carried;
use crate::journal::{Journal, Meal, What};
use crate::local_time::LocalTime;
use crate::network::{Ledger, Network, Span, State, Watch, run};
use crate::tonight::weather::{STEP_S, Weather};
use crate::tonight::{Leaning, Rig, TonightError};

/// An interval of local time, its end not in it.
type Interval = (LocalTime, LocalTime);

/// A pot that is seen to boil gets so many times what it loses to the air. Common practice, no
/// source.
const BOILS_ON: f64 = 2.0;

/// What a household did to the cooker, or saw of it, at an instant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Act<'a> {
    /// A thermometer was read. [°C]
    Reading(f64),
    /// A pot came out.
    PotOut,
    /// A pot went in.
    PotIn(&'a Meal),
    /// The pot was seen to boil.
    Boils,
}

/// The acts of a journal in time order; a pot that leaves makes room for one that comes.
pub(super) fn acts(journal: &Journal) -> Vec<(LocalTime, Act<'_>)> {
    let mut acts: Vec<(LocalTime, Act<'_>)> = Vec::new();
    for event in &journal.events {
        match &event.what {
            What::Reading { store_c } => put(&mut acts, event.at, Act::Reading(*store_c)),
            What::Meal(meal) => {
                // A pot that came out in the minute it went in was in all the same.
                let leaves_at = meal.leaves_at().max(event.at.plus_s(1));
                put(&mut acts, event.at, Act::PotIn(meal));
                put(&mut acts, leaves_at, Act::PotOut);
                if let Some((at, act)) = seen(meal, event.at, leaves_at) {
                    put(&mut acts, at, act);
                }
            }
            What::Felt(_) | What::LidOpen { .. } | What::HeaterOff { .. } | What::TopUp { .. } => {}
        }
    }
    acts
}

/// What was seen of a pot while it was in.
pub(super) fn seen(
    meal: &Meal,
    put_in: LocalTime,
    leaves_at: LocalTime,
) -> Option<(LocalTime, Act<'_>)> {
    let boiled_at = meal.outcome.boiled_at?.max(put_in.plus_s(1));
    (boiled_at < leaves_at).then_some((boiled_at, Act::Boils))
}

/// Puts an act in its place in time, behind those that came before it to the same place.
fn put<'a>(acts: &mut Vec<(LocalTime, Act<'a>)>, at: LocalTime, act: Act<'a>) {
    let rank = |at, act: &_| (at, matches!(act, Act::PotIn(_)));
    let place = acts.partition_point(|(other_at, other)| rank(*other_at, other) <= rank(at, &act));
    acts.insert(place, (at, act));
}

/// One cooker under one leaning, ready to be carried through time.
pub(super) struct Course<'a> {
    rig: &'a Rig,
    weather: &'a Weather,
    leaning: Leaning,
    shut: Network<'a>,
    open: Network<'a>,
    stood_open: Vec<Interval>,
    heater_off: Vec<Interval>,
    /// With the heat that reaches the store. \[W\]
    top_ups: Vec<(Interval, f64)>,
}

impl<'a> Course<'a> {
    pub(super) fn new(
        rig: &'a Rig,
        weather: &'a Weather,
        journal: &Journal,
        leaning: Leaning,
    ) -> Result<Self, TonightError> {
        let mut stood_open = Vec::new();
        let mut heater_off = Vec::new();
        let mut top_ups = Vec::new();
        for event in &journal.events {
            match event.what {
                What::LidOpen { for_s } => stood_open.push((event.at, event.at.plus_s(for_s))),
                What::HeaterOff { for_s } => heater_off.push((event.at, event.at.plus_s(for_s))),
                What::TopUp { heat_w, for_s } => {
                    top_ups.push(((event.at, event.at.plus_s(for_s)), heat_w));
                }
                What::Reading { .. } | What::Felt(_) | What::Meal(_) => {}
            }
        }
        Ok(Self {
            rig,
            weather,
            leaning,
            shut: rig.network(&leaning, false)?,
            open: rig.network(&leaning, true)?,
            stood_open,
            heater_off,
            top_ups,
        })
    }

    pub(super) fn network(&self) -> &Network<'a> {
        &self.shut
    }

    /// Air temperature at an instant. [°C]
    pub(super) fn air_c(&self, at: LocalTime) -> f64 {
        self.weather.at(at).1
    }

    /// A store that has stood in the air since `at`.
    pub(super) fn cold(&self, at: LocalTime) -> Result<State, TonightError> {
        let air_c = self.air_c(at);
        Ok(State::new(&self.shut, seconds(at), air_c, air_c)?)
    }

    /// Does one act to the store.
    pub(super) fn act(&self, state: &mut State, act: Act<'_>) -> Result<(), TonightError> {
        match act {
            Act::Reading(store_c) => self.read(state, store_c + self.leaning.reading_k),
            Act::PotOut => {
                state.take_pot_out();
            }
            Act::PotIn(meal) => self.put_in(state, meal)?,
            Act::Boils => self.boil(state),
        }
        Ok(())
    }

    /// The pot was seen to boil: it is at the boil, and the store at least as hot as it takes to
    /// keep it there. What was reckoned to have cooked at an earlier boil has not.
    fn boil(&self, state: &mut State) {
        let boiling_c = self.shut.boiling_point_c();
        let air_c = self.air_c(local(state.time_s()));
        let Some(pot) = state.pot_mut() else { return };
        let loss_w = pot.see_boiling(boiling_c, air_c);
        let store_c = state.store_c(&self.shut);
        let g_w_k = self
            .rig
            .warming_seat_w_k(&self.shut, store_c.max(boiling_c));
        let least_c = boiling_c + BOILS_ON * loss_w / g_w_k;
        if store_c < least_c {
            let missing_j = self.rig.heat_between_j(store_c, least_c);
            let jacket_c = state.jacket_c() + 0.5 * (least_c - store_c);
            state.set_store(&self.shut, state.store_j() + missing_j, jacket_c);
        }
    }

    /// A pot goes in.
    pub(super) fn put_in(&self, state: &mut State, meal: &Meal) -> Result<(), TonightError> {
        let at = local(state.time_s());
        let air_c = self.air_c(at);
        if let Some(carried) = &self.rig.carried
            && !state.indoors
        {
            self.carry(state, carried, air_c)?;
        }
        let load = self.rig.load(meal, &self.leaning, air_c);
        self.rig.put_in(&self.shut, state, load)
    }

    /// The can is carried to the kitchen: what it loses on the way is gone when the pot goes in.
    fn carry(&self, state: &mut State, carried: &Carried, air_c: f64) -> Result<(), TonightError> {
        let loss_w_k = carried.can.loss_w_k(state.store_c(&self.shut), air_c);
        let on_the_way = self.shut.with_lid_w_k(loss_w_k)?;
        let span = Span {
            duration_s: carried.way_s,
            heater_w: 0.0,
            air_c,
        };
        let time_s = state.time_s();
        run(&on_the_way, state, &span, &mut Ledger::default(), &mut ())?;
        state.set_time_s(time_s);
        state.indoors = true;
        if carried.turned_over {
            state.turn_over(&self.shut);
        }
        Ok(())
    }

    /// Takes a reading for the store's temperature.
    ///
    /// Within the melting range a thermometer says nothing of how much has melted: there the heat
    /// that was worked out is kept. The jacket, half-way to the air, is moved half as far.
    fn read(&self, state: &mut State, store_c: f64) {
        let expected_c = state.mixed_store_c(&self.shut);
        let read_j = self.rig.heat_at_j(store_c);
        let kept = self.rig.is_melting(expected_c) && self.rig.is_melting(store_c);
        if !kept {
            let jacket_c = state.half_way_c(&self.shut) + 0.5 * (store_c - expected_c);
            state.set_store(&self.shut, read_j, jacket_c);
        }
    }

    /// Carries the store to `to`; nothing happens if it is there already. Tells what of the sun's heat
    /// it took: less than came where it is cut out. \[J\]
    pub(super) fn advance(
        &self,
        state: &mut State,
        to: LocalTime,
        ledger: &mut Ledger,
        watch: &mut impl Watch,
    ) -> Result<f64, TonightError> {
        let mut at = local(state.time_s());
        let mut taken_j = 0.0;
        while at < to {
            let next = self.next_change(at).min(to);
            let (heater_w, air_c) = self.weather.at(at);
            let top_up_w: f64 = self
                .top_ups
                .iter()
                .filter(|(interval, _)| contains(interval, at))
                .map(|(_, heat_w)| heat_w)
                .sum();
            // A can in the kitchen is not where it is charged.
            let away = self.rig.carried.is_some() && state.pot().is_some();
            if !away && heater_w > 0.0 {
                state.indoors = false;
            }
            let sun_w = if away || inside(&self.heater_off, at) {
                0.0
            } else {
                heater_w
            };
            let net = if inside(&self.stood_open, at) {
                &self.open
            } else {
                &self.shut
            };
            #[expect(clippy::cast_precision_loss, reason = "at most half an hour")]
            let duration_s = next.since_s(at) as f64;
            let sun_w = sun_w * self.leaning.charging;
            let heater_w = sun_w + top_up_w;
            let span = Span {
                duration_s,
                heater_w,
                air_c,
            };
            let before_j = ledger.heater_j;
            run(net, state, &span, ledger, watch)?;
            if 0.0 < heater_w {
                // A second charge at the same time is cut out together with the sun's.
                taken_j += (ledger.heater_j - before_j) * sun_w / heater_w;
            }
            at = next;
        }
        Ok(taken_j)
    }

    /// The next instant after `at` at which power, air or cover may change.
    fn next_change(&self, at: LocalTime) -> LocalTime {
        let step_end = at.plus_s(1).ceil_to_s(STEP_S);
        self.stood_open
            .iter()
            .chain(&self.heater_off)
            .chain(self.top_ups.iter().map(|(interval, _)| interval))
            .flat_map(|&(from, to)| [from, to])
            .filter(|&edge| at < edge)
            .fold(step_end, Ord::min)
    }
}

fn contains(&(from, to): &Interval, at: LocalTime) -> bool {
    from <= at && at < to
}

fn inside(intervals: &[Interval], at: LocalTime) -> bool {
    intervals.iter().any(|interval| contains(interval, at))
}

/// Local time as the network counts it. \[s\]
#[expect(clippy::cast_precision_loss, reason = "exact for 285 million years")]
pub(super) fn seconds(at: LocalTime) -> f64 {
    at.0 as f64
}

/// The network's time as local time, to the nearest second.
#[expect(
    clippy::cast_possible_truncation,
    reason = "rounded, and saturating out of range"
)]
pub(super) fn local(time_s: f64) -> LocalTime {
    LocalTime(time_s.round() as i64)
}
