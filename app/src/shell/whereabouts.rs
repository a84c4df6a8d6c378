//! Where the device is, as far as it tells without asking anybody.

use crate::platform::{clock, locale};
use crate::state::zones::{Whereabouts, ZonePlace};

/// From the time zone the device is set to, and its clock.
pub fn whereabouts() -> Whereabouts {
    Whereabouts {
        zone: locale::time_zone().and_then(|zone| ZonePlace::of(&zone)),
        utc_offset_min: clock::utc_offset_min(),
    }
}
