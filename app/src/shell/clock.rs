//! Now, as a signal: one for all screens.

use crate::reactive::*;
use model::local_time::{Day, LocalTime};
use model::place::Place;

use crate::state::zones::offset_on_min;

/// The clock of the kitchen. Copies stand for the same one.
#[derive(Clone, Copy)]
pub struct Clock {
    device: StoredValue<fn() -> LocalTime>,
    shown: RwSignal<LocalTime>,
    pinned: RwSignal<Option<LocalTime>>,
    now: Memo<LocalTime>,
    zone: StoredValue<Option<Zone>>,
}

/// How far the device's clock is ahead of universal time on a day. \[min\]
pub type Zone = fn(Day) -> i32;

impl Clock {
    /// A clock that reads the device's through `device`.
    pub fn new(device: fn() -> LocalTime) -> Self {
        let shown = RwSignal::new(whole_minute(device()));
        let pinned = RwSignal::new(None);
        Self {
            device: StoredValue::new(device),
            shown,
            pinned,
            now: Memo::new(move |_| pinned.get().unwrap_or_else(|| shown.get())),
            zone: StoredValue::new(None),
        }
    }

    /// The same in the time zone that the device knows.
    pub fn in_zone(self, zone: Zone) -> Self {
        self.zone.set_value(Some(zone));
        self
    }

    /// A place with its clock as it is set on a day: summer time shifts it, where the device is in
    /// the zone that the household told.
    pub fn place_on(&self, place: Place, day: Day) -> Place {
        let utc_offset_min = self.zone.with_value(|zone| {
            zone.map_or(place.utc_offset_min, |zone| {
                offset_on_min(place.utc_offset_min, day, zone)
            })
        });
        Place {
            utc_offset_min,
            ..place
        }
    }

    /// Now, to the minute: it changes once a minute.
    pub fn now(&self) -> Memo<LocalTime> {
        self.now
    }

    /// Now to the second, without following it.
    pub fn now_untracked(&self) -> LocalTime {
        self.pinned
            .get_untracked()
            .unwrap_or_else(|| self.device_now())
    }

    /// Now on the device's own clock, whatever is shown.
    pub fn device_now(&self) -> LocalTime {
        self.device.with_value(|device| device())
    }

    /// Reads the device's clock again.
    pub fn tick(&self) {
        let minute = whole_minute(self.device_now());
        if self.shown.get_untracked() != minute {
            self.shown.set(minute);
        }
    }

    /// Shows this time instead of the device's; none goes back to the device's.
    pub fn pin(&self, at: Option<LocalTime>) {
        self.pinned.set(at);
    }
}

fn whole_minute(at: LocalTime) -> LocalTime {
    at.plus_s(-at.0.rem_euclid(60))
}
