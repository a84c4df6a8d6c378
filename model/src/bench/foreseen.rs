//! What a described cooker would show in a test run: how long the run takes, and how often to read.

use crate::bench::plan::{Sample, THERMOMETER_AT};
use crate::bench::run::{PotIn, RunKind};
use crate::network::{Ledger, Network, PotPhase, PotState, Span, State, run};
use crate::tonight::{Leaning, Rig, TonightError, water};

/// What is known as a run begins, and what was done in it so far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Given<'a> {
    /// What the run is for.
    pub kind: RunKind,
    /// Store as it begins. [°C]
    pub store_c: f64,
    /// Air meanwhile. [°C]
    pub air_c: f64,
    /// Power of the heater: from when on, and how much, in order of time; what is told first holds
    /// before that, too. \[s, W\]
    pub heater: &'a [(f64, f64)],
    /// The pots, in order of time.
    pub pots: &'a [PotIn],
}

/// A run as it is foreseen.
#[derive(Debug, Clone, PartialEq)]
pub struct Foreseen {
    /// From its start, at even steps, some time past its end. \[s, °C\]
    pub samples: Vec<Sample>,
    /// How long it takes to tell what it is for. \[s\]
    pub length_s: f64,
    /// When the last pot boils. \[s\]
    pub boils_s: Option<f64>,
}

/// Steps of the samples, with a pot in and without. \[s\]
const POT_STEP_S: f64 = 60.0;
const STEP_S: f64 = 300.0;
/// A cool-down tells the loss once the store has lost this share of what it was above the air.
/// Common practice, no source.
const COOLED_SHARE: f64 = 0.5;
/// Its least and its most length: the jacket must have settled, and a maker sleeps. Common practice,
/// no source. \[s\]
const COOL_DOWN_S: (f64, f64) = (3.0 * 3600.0, 14.0 * 3600.0);
/// A heat-up ends below the thermostat, which would hide the power. \[K\]
const BELOW_CUTOUT_K: f64 = 5.0;
/// The least and the most of a heat-up: a day of sun has no more. \[s\]
const HEAT_UP_S: (f64, f64) = (1800.0, 10.0 * 3600.0);
/// A boil is read so long past its start, or past the pot's hottest. Common practice, no source. \[s\]
const BOILED_S: f64 = 600.0;
/// The least and the most of a boil. \[s\]
const BOIL_S: (f64, f64) = (900.0, 4.0 * 3600.0);
/// A free run is looked ahead so far. \[s\]
const FREE_S: f64 = 12.0 * 3600.0;
/// A pot that gains no more than this in a step has come to its hottest. \[K\]
const STANDS_K: f64 = 0.05;

/// Intervals between readings that a person can keep to. \[s\]
const INTERVALS_S: [f64; 7] = [60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, 3600.0];
/// What store or pot may change from one reading to the next: some thermometer's errors, so that the
/// curve's bend is seen. Inferred. \[K\]
const CHANGE_K: f64 = 6.0;
/// The shortest and the longest interval with a pot in, while heating, and otherwise. \[s\]
const POT_INTERVAL_S: (f64, f64) = (60.0, 300.0);
const HEATED_INTERVAL_S: (f64, f64) = (300.0, 1800.0);
const IDLE_INTERVAL_S: (f64, f64) = (300.0, 1800.0);

impl Given<'_> {
    /// Power of the heater from a time on, and when it changes next. \[W, s\]
    fn heater_at(&self, time_s: f64) -> (f64, f64) {
        if self.kind == RunKind::CoolDown {
            return (0.0, f64::INFINITY);
        }
        let is_past = |step: &&(f64, f64)| step.0 <= time_s;
        let next = self.heater.iter().find(|step| !is_past(step));
        let now = self.heater.iter().rfind(is_past).or(self.heater.first());
        (
            now.map_or(0.0, |step| step.1.max(0.0)),
            next.map_or(f64::INFINITY, |step| step.0),
        )
    }
}

impl Rig {
    /// Heat that the panels give in full sun, for a heat-up whose power nobody knows. \[W\]
    pub fn full_sun_w(&self) -> f64 {
        /// Standard test conditions: IEC 60904-3. \[W/m², °C\]
        const FULL_SUN: (f64, f64) = (1000.0, 25.0);
        self.heat.heat_w(FULL_SUN.0, FULL_SUN.1)
    }

    /// What this cooker would show in a run.
    ///
    /// # Errors
    ///
    /// [`TonightError`] for a temperature, power or pot out of range.
    pub fn foreseen(&self, given: &Given<'_>) -> Result<Foreseen, TonightError> {
        let net = self.network(&Leaning::AS_TOLD, false)?;
        let jacket_c = 0.5 * (given.store_c + given.air_c);
        let mut walk = Walk {
            rig: self,
            net: &net,
            given,
            state: State::new(&net, 0.0, given.store_c, jacket_c)?,
            pots: given.pots.iter().copied().peekable(),
            out_s: f64::INFINITY,
            boils_s: None,
        };
        let mut samples = vec![walk.sample()];
        let mut length_s = None;
        loop {
            walk.step()?;
            let sample = walk.sample();
            if length_s.is_none() {
                length_s = self.ends(&walk, &samples, &sample);
            }
            samples.push(sample);
            if let Some(length_s) = length_s
                && length_s * 1.1 <= sample.time_s
            {
                return Ok(Foreseen {
                    samples,
                    length_s,
                    boils_s: walk.boils_s,
                });
            }
        }
    }

    /// How long the run takes, once that is seen.
    fn ends(&self, walk: &Walk<'_>, before: &[Sample], now: &Sample) -> Option<f64> {
        let given = walk.given;
        let after = |(least_s, most_s): (f64, f64), is_told: bool| {
            let is_over = (is_told && least_s <= now.time_s) || most_s <= now.time_s;
            is_over.then_some(now.time_s.min(most_s))
        };
        match given.kind {
            RunKind::CoolDown => {
                let left = now.store_c? - given.air_c;
                let whole = given.store_c - given.air_c;
                after(COOL_DOWN_S, left <= COOLED_SHARE * whole)
            }
            RunKind::HeatUp => {
                let full = self.cutout_c() - BELOW_CUTOUT_K <= now.store_c?;
                after(HEAT_UP_S, full)
            }
            RunKind::Boil => {
                let hottest = match (before.last().and_then(|last| last.pot_c), now.pot_c) {
                    (Some(before_c), Some(now_c)) => now_c - before_c < STANDS_K,
                    _ => false,
                };
                let told = walk.boils_s.is_some() || hottest;
                after(BOIL_S, told).map(|at_s| (at_s + BOILED_S).min(BOIL_S.1))
            }
            RunKind::Free => after((FREE_S, FREE_S), false),
        }
    }
}

/// A run on its way.
struct Walk<'a> {
    rig: &'a Rig,
    net: &'a Network<'a>,
    given: &'a Given<'a>,
    state: State,
    pots: std::iter::Peekable<std::iter::Copied<std::slice::Iter<'a, PotIn>>>,
    out_s: f64,
    boils_s: Option<f64>,
}

impl Walk<'_> {
    /// Goes on to the next sample, or to where a pot goes in or comes out.
    fn step(&mut self) -> Result<(), TonightError> {
        let now_s = self.state.time_s();
        if self.out_s <= now_s {
            self.state.take_pot_out();
            self.out_s = f64::INFINITY;
        }
        if let Some(pot) = self.pots.next_if(|pot| pot.in_s <= now_s) {
            let mut meal = water(pot.pot, pot.water_kg);
            meal.lid = pot.lid;
            meal.start_c = pot.start_c.unwrap_or(self.given.air_c);
            let load = self.rig.load(&meal, &Leaning::AS_TOLD, self.given.air_c);
            self.state.put_pot_in(load)?;
            self.out_s = pot.out_s.unwrap_or(f64::INFINITY);
            self.boils_s = None;
        }
        let step_s = if self.state.pot().is_some() || self.given.kind == RunKind::Boil {
            POT_STEP_S
        } else {
            STEP_S
        };
        let next_s = self.pots.peek().map_or(f64::INFINITY, |pot| pot.in_s);
        let (heater_w, changes_s) = self.given.heater_at(now_s);
        let to_s = (now_s + step_s).min(next_s).min(self.out_s).min(changes_s);
        let span = Span {
            duration_s: (to_s - now_s).max(0.0),
            heater_w,
            air_c: self.given.air_c,
        };
        run(
            self.net,
            &mut self.state,
            &span,
            &mut Ledger::default(),
            &mut (),
        )?;
        let boils = self
            .state
            .pot()
            .is_some_and(|pot| pot.phase() == PotPhase::Boiling);
        if boils && self.boils_s.is_none() {
            self.boils_s = Some(self.state.time_s());
        }
        Ok(())
    }

    fn sample(&self) -> Sample {
        Sample {
            time_s: self.state.time_s(),
            store_c: Some(self.state.at_share_c(self.net, THERMOMETER_AT)),
            pot_c: self.state.pot().map(PotState::t_c),
        }
    }
}

impl Foreseen {
    /// Store and pot at a time, straight between the samples; `None` outside them.
    pub fn at(&self, time_s: f64) -> Option<Sample> {
        let after = self
            .samples
            .iter()
            .position(|sample| time_s <= sample.time_s)?;
        let (to, from) = (self.samples[after], self.samples[after.saturating_sub(1)]);
        let span_s = to.time_s - from.time_s;
        let part = if span_s > 0.0 {
            (time_s - from.time_s) / span_s
        } else {
            1.0
        };
        let between = |from: Option<f64>, to: Option<f64>| Some(from? + part * (to? - from?));
        (0.0 <= time_s).then(|| Sample {
            time_s,
            store_c: between(from.store_c, to.store_c),
            pot_c: between(from.pot_c, to.pot_c),
        })
    }

    /// How long to wait from one reading to the next at a time of the run: until store or pot has
    /// changed by some kelvins, as far as the kind of run bears it, and rounded to what a person can
    /// keep to. \[s\]
    pub fn every_s(&self, kind: RunKind, time_s: f64) -> f64 {
        let now = self.at(time_s);
        let has_pot = kind == RunKind::Boil || now.is_some_and(|now| now.pot_c.is_some());
        let (least_s, most_s) = match kind {
            _ if has_pot => POT_INTERVAL_S,
            RunKind::HeatUp => HEATED_INTERVAL_S,
            RunKind::CoolDown | RunKind::Boil | RunKind::Free => IDLE_INTERVAL_S,
        };
        let wait_s = INTERVALS_S
            .into_iter()
            .filter(|wait_s| (least_s..=most_s).contains(wait_s))
            .rev()
            .find(|wait_s| self.change_k(time_s, *wait_s) <= CHANGE_K);
        wait_s.unwrap_or(least_s)
    }

    /// By how much store or pot changes from a time on, whichever changes more; 0 past the end. \[K\]
    fn change_k(&self, time_s: f64, wait_s: f64) -> f64 {
        let Some((now, then)) = self.at(time_s).zip(self.at(time_s + wait_s)) else {
            return 0.0;
        };
        let change = |from: Option<f64>, to: Option<f64>| match (from, to) {
            (Some(from), Some(to)) => (to - from).abs(),
            _ => 0.0,
        };
        change(now.store_c, then.store_c).max(change(now.pot_c, then.pot_c))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::bench::fit::tests::site;
    use crate::pot::{Lid, Pot, PotKind, PotSize, Wrap};
    use crate::presets::Preset;

    fn rig() -> Rig {
        let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        Rig::new(&site(), &cooker).unwrap()
    }

    fn pot() -> PotIn {
        PotIn {
            in_s: 300.0,
            out_s: None,
            pot: Pot {
                kind: PotKind::ThinAluminium,
                size: PotSize::Litres2_5,
                wrap: Wrap::SunkInCooker,
            },
            lid: Lid::On,
            water_kg: 1.0,
            start_c: Some(20.0),
            left_kg: None,
        }
    }

    const fn given(kind: RunKind, store_c: f64, pots: &[PotIn]) -> Given<'_> {
        Given {
            kind,
            store_c,
            air_c: 20.0,
            heater: &[(0.0, 150.0)],
            pots,
        }
    }

    /// Newton's law of cooling: with one heat capacity C and one loss G the excess halves in
    /// ln 2 C / G. Seven kilograms of aluminium of 1 kJ/kgK and the jacket round it at some 0.5 W/K
    /// are two to six hours.
    #[test]
    fn a_cool_down_takes_hours_and_is_read_ever_more_seldom() {
        let foreseen = rig()
            .foreseen(&given(RunKind::CoolDown, 250.0, &[]))
            .unwrap();
        let hours = foreseen.length_s / 3600.0;
        assert!((3.0..=14.0).contains(&hours), "{hours}");
        assert!(foreseen.boils_s.is_none());
        let stores = foreseen.samples.windows(2);
        assert!(
            stores
                .clone()
                .all(|pair| pair[1].store_c <= pair[0].store_c)
        );
        let early_s = foreseen.every_s(RunKind::CoolDown, 0.0);
        let late_s = foreseen.every_s(RunKind::CoolDown, 0.9 * foreseen.length_s);
        assert!(
            (300.0..=1800.0).contains(&early_s) && early_s <= late_s,
            "{early_s} {late_s}"
        );
    }

    #[test]
    fn a_boil_is_read_every_minute_or_two_until_it_has_boiled_a_while() {
        let pots = [pot()];
        let foreseen = rig().foreseen(&given(RunKind::Boil, 250.0, &pots)).unwrap();
        let boils_s = foreseen.boils_s.unwrap();
        assert!((400.0..2400.0).contains(&boils_s), "{boils_s}");
        assert!(boils_s + BOILED_S <= foreseen.length_s + POT_STEP_S);
        assert!(foreseen.every_s(RunKind::Boil, 400.0) <= 120.0);
        assert!(foreseen.at(100.0).unwrap().pot_c.is_none());
        let rising = foreseen.at(boils_s - 60.0).unwrap().pot_c.unwrap();
        assert!((60.0..96.0).contains(&rising), "{rising}");
    }

    /// A pot that never boils is read until it is at its hottest.
    #[test]
    fn a_boil_on_a_cold_store_ends_too() {
        let pots = [pot()];
        let idle = Given {
            heater: &[],
            ..given(RunKind::Boil, 70.0, &pots)
        };
        let foreseen = rig().foreseen(&idle).unwrap();
        assert_eq!(foreseen.boils_s, None);
        assert!((BOIL_S.0..=BOIL_S.1).contains(&foreseen.length_s));
    }

    #[test]
    fn a_heat_up_ends_below_the_thermostat() {
        let rig = rig();
        let foreseen = rig.foreseen(&given(RunKind::HeatUp, 20.0, &[])).unwrap();
        let end = foreseen.at(foreseen.length_s).unwrap();
        // 150 W into some 7 kJ/K: 260 K take 3.4 h and what is lost meanwhile.
        assert!((3.0..=10.0).contains(&(foreseen.length_s / 3600.0)));
        assert!(end.store_c.unwrap() <= rig.cutout_c());
        assert!(rig.full_sun_w() > 100.0 && rig.full_sun_w() <= 200.0);
    }

    /// Half the power for the first half of the time and one and a half for the second is as much
    /// heat as an even one, and a store that loses less on its way is no colder at the end.
    #[test]
    fn the_power_is_followed_as_it_changes() {
        let rig = rig();
        let even = rig.foreseen(&given(RunKind::Free, 20.0, &[])).unwrap();
        let rising = Given {
            heater: &[(0.0, 75.0), (1.5 * 3600.0, 225.0)],
            ..given(RunKind::Free, 20.0, &[])
        };
        let rising = rig.foreseen(&rising).unwrap();
        let store_c = |of: &Foreseen, hours: f64| of.at(3600.0 * hours).unwrap().store_c.unwrap();
        assert!(store_c(&rising, 1.5) < store_c(&even, 1.5) - 20.0);
        let gain_k = store_c(&rising, 3.0) - store_c(&even, 3.0);
        assert!((0.0..30.0).contains(&gain_k), "{gain_k}");
    }

    proptest! {
        #[test]
        fn any_sensible_run_can_be_foreseen(
            kind in 0..4_usize,
            store_c in -10.0..350.0_f64,
            air_c in -10.0..40.0_f64,
            at in 0.0..20.0_f64,
        ) {
            let kind = [RunKind::HeatUp, RunKind::CoolDown, RunKind::Boil, RunKind::Free][kind];
            let pots = [pot()];
            let pots = if matches!(kind, RunKind::Boil | RunKind::Free) { &pots[..] } else { &[] };
            let given = Given { air_c, ..given(kind, store_c, pots) };
            let foreseen = rig().foreseen(&given).unwrap();
            prop_assert!(foreseen.length_s > 0.0 && foreseen.length_s <= FREE_S.max(COOL_DOWN_S.1));
            let every_s = foreseen.every_s(kind, at * 3600.0);
            prop_assert!((60.0..=1800.0).contains(&every_s));
            prop_assert!(foreseen.samples.windows(2).all(|pair| pair[0].time_s <= pair[1].time_s));
        }
    }
}
