//! One run gone through again and again.

use super::{Advice, Change, Circumstances, Diagnosis, Fate, Limit, Ranked};
use crate::bench::body::Body;
use crate::bench::fit::Values;
use crate::bench::plan::{Followed, Plan, Start};
use crate::error::ModelError;
use crate::network::{Network, PotState, State, Watch};
use crate::tonight::HeatAccount;

/// The pot is looked at this often for its hottest. \[s\]
const LOOK_S: f64 = 30.0;

/// Everything but the heat as good as a build could have it.
const EVERYTHING_ELSE: [Change; 4] = [
    Change::Contact(10.0),
    Change::NoLayer,
    Change::Loss(0.1),
    Change::PotLoss(0.1),
];

/// A pot's run, ready to be gone through with one thing changed.
pub(super) struct Case<'a> {
    pub(super) body: &'a Body,
    pub(super) values: Values,
    /// The same, leaning against the cook by what the fit does not know.
    pub(super) careful: Values,
    pub(super) plan: Plan,
    /// The same with the pot left in.
    pub(super) long: Plan,
    pub(super) start: Start,
    pub(super) at_s: f64,
    /// Whether the heater was on before the pot went in.
    pub(super) heated: bool,
    pub(super) circumstances: Circumstances,
}

impl Case<'_> {
    pub(super) fn diagnosis(&self) -> Result<Diagnosis, ModelError> {
        let as_it_was = self.fate(Change::AsItWas)?;
        let heat_suffices = self
            .fate_of(&self.values, &EVERYTHING_ELSE)?
            .boils_s
            .is_some();
        let mut limits = Vec::new();
        for (limit, change, all_but_gone) in self.trials()? {
            let fate = self.fate(change)?;
            limits.push(Ranked {
                limit,
                change,
                fate,
                without: self.fate(all_but_gone)?,
                helps: fate.beats(as_it_was),
            });
        }
        limits.sort_by(|a, b| a.without.order(b.without));
        if as_it_was.boils_s.is_none() {
            // More heat boils any pot: it is the reason only where nothing else would.
            limits.sort_by_key(|ranked| match ranked.limit {
                Limit::Heat if heat_suffices => 1,
                Limit::Heat => 0,
                _ if !heat_suffices => 1,
                _ if ranked.without.boils_s.is_some() => 0,
                _ => 2,
            });
        }
        let mut advice = Vec::new();
        if as_it_was.boils_s.is_none() {
            for scale in self.scales() {
                advice.extend(self.least(scale)?);
            }
            advice.sort_by(|a, b| {
                let cost = |advice: &Advice| advice.cost.unwrap_or(f64::INFINITY);
                cost(a).total_cmp(&cost(b)).then(a.fate.order(b.fate))
            });
        }
        Ok(Diagnosis {
            as_it_was,
            heat_suffices,
            limits,
            advice,
            account: self.account()?,
            water_kg: self.plan.pots.last().map_or(0.0, |pot| pot.water_kg),
        })
    }

    /// Each limit with the change that is told of it, and with one that all but ends it.
    fn trials(&self) -> Result<Vec<(Limit, Change, Change)>, ModelError> {
        let more = self.more_heat()?;
        let mut trials = vec![
            (Limit::Heat, more, more),
            (Limit::Contact, Change::Contact(2.0), Change::Contact(10.0)),
            (Limit::Jacket, Change::Loss(0.5), Change::Loss(0.1)),
            (Limit::PotLoss, Change::PotLoss(0.5), Change::PotLoss(0.1)),
        ];
        if self.body.freezes() {
            trials.push((Limit::FrozenLayer, Change::NoLayer, Change::NoLayer));
        }
        if self.heated {
            trials.push((Limit::Sun, Change::Panels(2.0), Change::Panels(2.0)));
            if let Some(gain) = self.circumstances.match_gain {
                trials.push((Limit::HeaterMatch, Change::Match(gain), Change::Match(gain)));
            }
        }
        Ok(trials)
    }

    /// A fifth more heat above the boil than there was.
    fn more_heat(&self) -> Result<Change, ModelError> {
        let curve = self.long.curve(self.body, &self.values)?;
        let net = self.body.network(&curve, &self.values)?;
        let store_c = self.store_at_pot(&net)?;
        let over_k = (store_c - net.boiling_point_c()).max(10.0);
        Ok(Change::Hotter(0.2 * over_k))
    }

    fn store_at_pot(&self, net: &Network<'_>) -> Result<f64, ModelError> {
        let followed = self.follow(net, &self.values, &self.start, &mut ())?;
        let stay = followed.stays.last();
        Ok(stay.map_or(self.start.store_c, |stay| stay.before.mixed_store_c(net)))
    }

    fn follow(
        &self,
        net: &Network<'_>,
        values: &Values,
        start: &Start,
        watch: &mut impl Watch,
    ) -> Result<Followed, ModelError> {
        self.long.follow(self.body, net, values, start, watch)
    }

    /// What becomes of the pot with one thing changed.
    pub(super) fn fate(&self, change: Change) -> Result<Fate, ModelError> {
        self.fate_of(&self.values, &[change])
    }

    /// Whether the pot boils with one thing changed, leaning against the cook too.
    pub(super) fn surely_boils(&self, change: Change) -> Result<bool, ModelError> {
        for values in [&self.values, &self.careful] {
            if self.fate_of(values, &[change])?.boils_s.is_none() {
                return Ok(false);
            }
        }
        Ok(true)
    }

    /// What becomes of the pot with several.
    fn fate_of(&self, of: &Values, changes: &[Change]) -> Result<Fate, ModelError> {
        let mut values = *of;
        let mut start = self.start.clone();
        let mut long = self.long.clone();
        for change in changes {
            self.make(*change, (&mut values, &mut start, &mut long))?;
        }
        let curve = long.curve(self.body, &values)?;
        let mut net = self.body.network(&curve, &values)?;
        if changes.contains(&Change::NoLayer) {
            net = self.body.unfrozen(&net, &values)?;
        }
        let mut peak = Peak::from(self.at_s);
        let followed = long.follow(self.body, &net, &values, &start, &mut peak)?;
        let boiled_at_s = followed
            .stays
            .last()
            .and_then(|stay| stay.after.pot())
            .and_then(PotState::boiled_at_s);
        Ok(Fate {
            boils_s: boiled_at_s.map(|at_s| at_s - self.at_s),
            hottest_c: peak.hottest_c,
        })
    }

    fn make(
        &self,
        change: Change,
        (values, start, long): (&mut Values, &mut Start, &mut Plan),
    ) -> Result<(), ModelError> {
        match change {
            Change::AsItWas | Change::NoLayer => {}
            Change::Contact(times) => values.contact_w_m2k *= times,
            Change::Loss(share) => values.loss_w_k *= share,
            Change::PotLoss(share) => values.pot_loss *= share,
            Change::Match(times) | Change::Panels(times) => values.heater *= times,
            Change::Water(share) => {
                if let Some(pot) = long.pots.last_mut() {
                    pot.water_kg *= share;
                }
            }
            Change::Mass(mass_kg) => {
                let before = self.long.curve(self.body, &self.values)?;
                values.capacity *= 1.0 + mass_kg / before.mass_kg();
                if !self.at_cutout() {
                    let same_j = before.enthalpy_j(start.store_c);
                    start.store_c = self.long.curve(self.body, values)?.temperature_c(same_j);
                }
            }
            Change::Hotter(rise_k) => start.lift_k = rise_k,
        }
        Ok(())
    }

    /// Whether the thermostat kept the store from taking more: then more mass takes more heat.
    fn at_cutout(&self) -> bool {
        let near = |cutout_c: f64| self.start.store_c > cutout_c - 10.0;
        self.circumstances.cutout_c.is_some_and(near)
    }

    fn account(&self) -> Result<HeatAccount, ModelError> {
        let curve = self.long.curve(self.body, &self.values)?;
        let net = self.body.network(&curve, &self.values)?;
        let followed = self
            .plan
            .follow(self.body, &net, &self.values, &self.start, &mut ())?;
        let stay = followed.stays.last();
        let Some(stay) = stay else {
            return Ok(HeatAccount::default());
        };
        let air_c = self.plan.air_c;
        let account = HeatAccount::between(&net, &stay.before, &stay.after, &stay.ledger, air_c);
        // What passes through the gap of a shut lid is the jacket's loss.
        Ok(HeatAccount {
            jacket_j: account.jacket_j + account.open_j,
            open_j: 0.0,
            ..account
        })
    }
}

/// Keeps the hottest a pot gets.
struct Peak {
    next_s: f64,
    hottest_c: f64,
}

impl Peak {
    fn from(at_s: f64) -> Self {
        Self {
            next_s: at_s,
            hottest_c: f64::NEG_INFINITY,
        }
    }
}

impl Watch for Peak {
    fn next_sample_s(&self) -> Option<f64> {
        Some(self.next_s)
    }

    fn sample(&mut self, _net: &Network<'_>, state: &State) {
        self.next_s += LOOK_S;
        if let Some(pot) = state.pot() {
            self.hottest_c = self.hottest_c.max(pot.t_c());
        }
    }
}
