//! What was told, taken in by the members: readings, a hand on the store, what was seen of a pot.

use super::doubt::{Believed, Doubt, Report};
use super::ensemble::{Ensemble, column};
use super::filter::assimilate;
use super::prior::Offset;
use super::regress::Seen;
use super::report::{self, Mixture, SeenPot, Sits};
use super::road::{Past, Road};
use super::{band_of, seconds};
use crate::journal::Felt;
use crate::local_time::LocalTime;
use crate::tonight::TonightError;

/// A pot is followed so long past what was reported of it, so that a member that boils later says
/// how much later. \[s\]
const LOOK_AHEAD_S: i64 = 2700;

/// A report as it is taken in.
struct Said {
    at: LocalTime,
    what: Report,
    /// What was believed before it.
    believed: Believed,
    mixture: Mixture,
}

impl Road<'_> {
    pub(super) fn read(
        &mut self,
        past: &mut Past,
        at: LocalTime,
        read_c: f64,
    ) -> Result<(), TonightError> {
        let epoch = self.epoch(past.epoch)?;
        let thermometer = self.settings.thermometer;
        let store_c = |ensemble: &Ensemble, member: usize| match thermometer.sits {
            Sits::InStore => ensemble.sensed_c(&epoch.build, member),
            Sits::OnSeat => ensemble.seat_c(&epoch.build, member),
        };
        let believed = Believed::StoreC(band_of(&past.ensemble, store_c));
        let said = Said {
            at,
            what: Report::Reading { store_c: read_c },
            believed,
            mixture: Mixture::READING,
        };
        let shown = |ensemble: &Ensemble, member: usize| {
            Seen::alone(store_c(ensemble, member) + ensemble.thermometer_k(member))
        };
        self.hear(past, said, shown, |shown| {
            report::reading(read_c, shown.value, thermometer)
        })
    }

    pub(super) fn feel(
        &mut self,
        past: &mut Past,
        at: LocalTime,
        felt: Felt,
    ) -> Result<(), TonightError> {
        let epoch = self.epoch(past.epoch)?;
        let face_c = |ensemble: &Ensemble, member| ensemble.seat_c(&epoch.build, member);
        let believed = Believed::StoreC(band_of(&past.ensemble, face_c));
        let said = Said {
            at,
            what: Report::Felt(felt),
            believed,
            mixture: Mixture::FELT,
        };
        let touched = |ensemble: &Ensemble, member| Seen::alone(face_c(ensemble, member));
        self.hear(past, said, touched, |face| report::felt(felt, face.value))
    }

    /// Takes one report in.
    fn hear(
        &mut self,
        past: &mut Past,
        said: Said,
        seen: impl Fn(&Ensemble, usize) -> Seen,
        meant: impl Fn(Seen) -> f64,
    ) -> Result<(), TonightError> {
        let epoch = self.epoch(past.epoch)?;
        let address = said.at.0.wrapping_mul(16);
        let address = address.wrapping_add(said.what.number());
        let likelihood = |seen: Seen| said.mixture.of(meant(seen));
        let expected = assimilate(
            &mut past.ensemble,
            &epoch.build,
            (self.settings.seed, address),
            seen,
            likelihood,
        );
        if said.mixture.doubts(expected) {
            past.doubts.push(Doubt {
                at: said.at,
                report: said.what,
                believed: said.believed,
            });
        }
        Ok(())
    }

    /// Takes in what was seen of the pot that is in.
    pub(super) fn hear_of_pot(&mut self, past: &mut Past) -> Result<(), TonightError> {
        let Some(pot) = past.pot.clone() else {
            return Ok(());
        };
        let seen = pot.meal.outcome;
        let known = |at: Option<LocalTime>| at.filter(|at| *at <= self.now);
        let reports = [
            known(seen.not_boiled_by).map(Report::NotBoiledBy),
            known(seen.boiled_at).map(Report::BoiledAt),
            known(seen.not_done_by).map(Report::NotDoneBy),
            known(seen.done_at).map(Report::DoneAt),
        ];
        let Some(last) = reports
            .iter()
            .flatten()
            .filter_map(|report| report.at())
            .max()
        else {
            return Ok(());
        };
        let mut ahead = past.clone();
        self.carry(&mut ahead, last.max(past.ensemble.at).plus_s(LOOK_AHEAD_S))?;
        for (to, from) in [
            (column::SEEN_BOIL, column::BOILS_AT),
            (column::SEEN_DONE, column::DONE_AT),
        ] {
            let times = ahead.ensemble.column(from);
            past.ensemble.column_mut(to).copy_from_slice(times);
        }
        let put_in_s = seconds(pot.put_in);
        for what in reports.into_iter().flatten() {
            let Some(at) = what.at() else { continue };
            let place = what.column();
            let time_s = move |ensemble: &Ensemble, member: usize| ensemble.get(place, member);
            let believed = Believed::time(&past.ensemble, time_s);
            let (mixture, meant) = report::of_pot(what);
            let said = Said {
                at,
                what,
                believed,
                mixture,
            };
            let seen = move |ensemble: &Ensemble, member: usize| Seen {
                value: time_s(ensemble, member),
                beside: ensemble.offset(Offset::Late, member),
            };
            self.hear(past, said, seen, |seen| {
                meant(SeenPot {
                    late_min: (seconds(at) - seen.value) / 60.0,
                    took_min: (seen.value - put_in_s) / 60.0,
                    lags: libm::exp(seen.beside),
                })
            })?;
        }
        Ok(())
    }
}
