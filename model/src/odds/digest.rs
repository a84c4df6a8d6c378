//! A fingerprint of what a belief hangs on.

use crate::journal::{Event, Felt, Meal, What};
use crate::local_time::LocalTime;
use crate::pot::Lid;
use crate::sun::{DayLog, Sky};

/// A running fingerprint: the 64-bit mixing of SplitMix64 over one word after another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Digest(u64);

impl Digest {
    pub(super) fn new() -> Self {
        Self(0x6A09_E667_F3BC_C908)
    }

    pub(super) fn of_value(value: u64) -> Self {
        Self(value)
    }

    pub(super) fn value(self) -> u64 {
        self.0
    }

    pub(super) fn word(self, word: u64) -> Self {
        let z = (self.0.rotate_left(23) ^ word).wrapping_add(0x9E37_79B9_7F4A_7C15);
        let z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        Self(z ^ (z >> 31))
    }

    pub(super) fn number(self, number: f64) -> Self {
        self.word(number.to_bits())
    }

    pub(super) fn time(self, at: LocalTime) -> Self {
        self.word(at.0.cast_unsigned())
    }

    fn maybe(self, at: Option<LocalTime>) -> Self {
        match at {
            Some(at) => self.word(1).time(at),
            None => self.word(0),
        }
    }

    pub(super) fn sky(self, log: Option<&DayLog>) -> Self {
        match log {
            None => self.word(0),
            Some(DayLog::SunHours(hours)) => self.word(1).number(*hours),
            Some(DayLog::Hourly(skies)) => {
                let letter = |sky: &Option<Sky>| sky.map_or(0, |sky| 1 + sky as u64);
                let words = skies
                    .chunks(8)
                    .map(|hours| hours.iter().fold(0, |word, sky| word << 8 | letter(sky)));
                words.fold(self.word(2), Self::word)
            }
        }
    }

    pub(super) fn event(self, event: &Event) -> Self {
        let digest = self.time(event.at);
        match &event.what {
            What::Reading { store_c } => digest.word(1).number(*store_c),
            What::Felt(felt) => digest.word(2).word(u64::from(*felt == Felt::Hot)),
            What::LidOpen { for_s } => digest.word(3).word(for_s.cast_unsigned()),
            What::HeaterOff { for_s } => digest.word(4).word(for_s.cast_unsigned()),
            What::Meal(meal) => digest.word(5).meal(meal),
            What::TopUp { heat_w, for_s } => {
                digest.word(6).number(*heat_w).word(for_s.cast_unsigned())
            }
        }
    }

    fn meal(self, meal: &Meal) -> Self {
        let lid = match meal.lid {
            Lid::On => 0,
            Lid::Ajar => 1,
            Lid::Off => 2,
        };
        let pot = meal.pot;
        let seen = meal.outcome;
        self.word(meal.dish as u64)
            .number(meal.food_kg)
            .number(meal.water_kg)
            .number(meal.start_c)
            .word((pot.kind as u64) << 16 | (pot.size as u64) << 8 | pot.wrap as u64)
            .word(lid)
            .maybe(meal.out)
            .time(meal.eat_at)
            .maybe(seen.boiled_at)
            .maybe(seen.not_boiled_by)
            .maybe(seen.done_at)
            .maybe(seen.not_done_by)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn top_up(heat_w: f64, for_s: i64) -> What {
        What::TopUp { heat_w, for_s }
    }

    #[test]
    fn whatever_differs_shows() {
        let event = |at, what| {
            Digest::new().event(&Event {
                at: LocalTime(at),
                what,
            })
        };
        let all = [
            event(1, What::Reading { store_c: 100.0 }),
            event(2, What::Reading { store_c: 100.0 }),
            event(1, What::Reading { store_c: 100.5 }),
            event(1, What::Felt(Felt::Cold)),
            event(1, What::Felt(Felt::Hot)),
            event(1, What::LidOpen { for_s: 60 }),
            event(1, What::HeaterOff { for_s: 60 }),
            event(1, top_up(400.0, 60)),
            event(1, top_up(400.0, 61)),
            event(1, top_up(401.0, 60)),
            Digest::new().sky(None),
            Digest::new().sky(Some(&DayLog::SunHours(6.0))),
            Digest::new().sky(Some(&DayLog::Hourly([None; 24]))),
            Digest::new().sky(Some(&DayLog::Hourly([Some(Sky::Clear); 24]))),
        ];
        for (idx, one) in all.iter().enumerate() {
            assert!(!all[..idx].contains(one), "{idx}");
        }
    }
}
