//! From the name of a device's time zone to a place that is near enough to start from.
//!
//! `zones.txt` holds the principal place of each zone: the zone's name, the country (ISO 3166-1, two
//! letters; `-` for an old name, which a device may still have), latitude and longitude in degrees, to
//! a tenth. Source: the public-domain time zone database of the IANA, release 2025b,
//! `zone.tab` and the links to its zones. Two old names that the database links to a zone far
//! away stand with their own places.

use model::local_time::Day;

use crate::state::limits;
use crate::state::parse::decimal;

const ZONES: &str = include_str!("zones.txt");

/// Zones whose principal place lies high, with its height to the hundred metres. From memory. [m]
///
/// The others lie below 700 m, where [`LOWLAND_M`] puts the boil 2 °C too high at most.
const HIGH: [(&str, f64); 56] = [
    ("Africa/Addis_Ababa", 2400.0),
    ("Africa/Asmara", 2300.0),
    ("Africa/Asmera", 2300.0),
    ("Africa/Blantyre", 1000.0),
    ("Africa/Bujumbura", 800.0),
    ("Africa/Gaborone", 1000.0),
    ("Africa/Harare", 1500.0),
    ("Africa/Johannesburg", 1700.0),
    ("Africa/Kampala", 1200.0),
    ("Africa/Kigali", 1500.0),
    ("Africa/Lubumbashi", 1200.0),
    ("Africa/Lusaka", 1300.0),
    ("Africa/Maseru", 1600.0),
    ("Africa/Mbabane", 1200.0),
    ("Africa/Nairobi", 1700.0),
    ("Africa/Windhoek", 1700.0),
    ("America/Argentina/Jujuy", 1200.0),
    ("America/Argentina/Mendoza", 800.0),
    ("America/Argentina/Salta", 1200.0),
    ("America/Argentina/San_Luis", 700.0),
    ("America/Bogota", 2600.0),
    ("America/Boise", 800.0),
    ("America/Caracas", 900.0),
    ("America/Chihuahua", 1400.0),
    ("America/Ciudad_Juarez", 1100.0),
    ("America/Costa_Rica", 1200.0),
    ("America/Denver", 1600.0),
    ("America/El_Salvador", 700.0),
    ("America/Guatemala", 1500.0),
    ("America/Jujuy", 1200.0),
    ("America/La_Paz", 3600.0),
    ("America/Mendoza", 800.0),
    ("America/Mexico_City", 2200.0),
    ("America/Sao_Paulo", 800.0),
    ("America/Tegucigalpa", 1000.0),
    ("Asia/Almaty", 800.0),
    ("Asia/Amman", 900.0),
    ("Asia/Bishkek", 800.0),
    ("Asia/Damascus", 700.0),
    ("Asia/Dushanbe", 800.0),
    ("Asia/Hebron", 900.0),
    ("Asia/Jerusalem", 800.0),
    ("Asia/Kabul", 1800.0),
    ("Asia/Kathmandu", 1400.0),
    ("Asia/Katmandu", 1400.0),
    ("Asia/Samarkand", 700.0),
    ("Asia/Tehran", 1200.0),
    ("Asia/Thimbu", 2300.0),
    ("Asia/Thimphu", 2300.0),
    ("Asia/Ulaanbaatar", 1300.0),
    ("Asia/Ulan_Bator", 1300.0),
    ("Asia/Urumqi", 800.0),
    ("Asia/Yerevan", 1000.0),
    ("Europe/Andorra", 1000.0),
    ("Europe/Madrid", 700.0),
    ("Indian/Antananarivo", 1300.0),
];

/// A height for places that are not high. [m]
pub const LOWLAND_M: f64 = 100.0;

/// The principal place of a time zone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ZonePlace {
    /// The zone's name in the database.
    pub zone: &'static str,
    /// The country's two letters (ISO 3166-1); none of a zone's old name.
    pub country: Option<&'static str>,
    /// North positive. [deg]
    pub latitude_deg: f64,
    /// East positive. [deg]
    pub longitude_deg: f64,
    /// Height above the sea, roughly. [m]
    pub altitude_m: f64,
}

/// Where the device is, as far as it tells.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Whereabouts {
    /// The principal place of its time zone.
    pub zone: Option<ZonePlace>,
    /// Its clock less universal time. [min]
    pub utc_offset_min: i32,
}

impl ZonePlace {
    /// The principal place of a zone; none for a zone without one, such as `UTC`.
    pub fn of(time_zone: &str) -> Option<Self> {
        ZONES.lines().find_map(|line| {
            let rest = line.strip_prefix(time_zone)?.strip_prefix(' ')?;
            Self::read(line.get(..time_zone.len())?, rest)
        })
    }

    /// The principal places of all zones, as the database lists them.
    pub fn all() -> impl Iterator<Item = Self> {
        ZONES.lines().filter_map(|line| {
            let (zone, rest) = line.split_once(' ')?;
            Self::read(zone, rest)
        })
    }

    fn read(zone: &'static str, rest: &'static str) -> Option<Self> {
        let (country, rest) = rest.split_once(' ')?;
        let (latitude, longitude) = rest.split_once(' ')?;
        let height = HIGH.iter().find(|(name, _)| *name == zone);
        Some(Self {
            zone,
            country: Some(country).filter(|country| *country != "-"),
            latitude_deg: decimal(latitude)?,
            longitude_deg: decimal(longitude)?,
            altitude_m: height.map_or(LOWLAND_M, |(_, height_m)| *height_m),
        })
    }

    /// The principal place's name: the last part of the zone's, written as people write it.
    pub fn name(&self) -> String {
        let last = self.zone.rsplit('/').next().unwrap_or(self.zone);
        match WRITTEN.iter().find(|(squeezed, _)| *squeezed == last) {
            Some((_, name)) => (*name).to_owned(),
            None => apart(last),
        }
    }
}

/// Names that the database squeezes into its letters. From memory.
const WRITTEN: [(&str, &str); 4] = [
    ("ComodRivadavia", "Comodoro Rivadavia"),
    ("DumontDUrville", "Dumont d’Urville"),
    ("St_Johns", "St. John’s"),
    ("McMurdo", "McMurdo"),
];

/// A squeezed name with its words apart: `DumontUrville`, `La_Paz`.
fn apart(squeezed: &str) -> String {
    let mut name = String::new();
    let mut before = ' ';
    for letter in squeezed.chars() {
        if before.is_ascii_lowercase() && letter.is_ascii_uppercase() {
            name.push(' ');
        }
        name.push(if letter == '_' { ' ' } else { letter });
        before = letter;
    }
    name
}

/// Between two looks at a zone's clock, days: no summer time is shorter.
const LOOK_DAYS: i32 = 28;
/// Looks that make a year, and some more.
const LOOKS: i32 = 14;

/// How far a household's clock is ahead of universal time on a day. \[min\]
///
/// What it told once holds for the season in which it told it. Where the device's zone has that
/// offset at some time of the year, it is the household's zone, and the device knows the rest; where
/// it never has, the household knows better than its device.
///
/// `zone` gives the device's offset on a day.
pub fn offset_on_min(told_min: i32, day: Day, zone: impl Fn(Day) -> i32) -> i32 {
    let on_day_min = zone(day);
    let is_its_zone = on_day_min == told_min
        || (1..LOOKS).any(|look| zone(day.plus(LOOK_DAYS * look)) == told_min);
    if is_its_zone { on_day_min } else { told_min }
}

/// Where a clock stands that is so far ahead of universal time, when nothing else is known: the
/// longitude whose sun it follows. Within the limits of a place. [deg]
pub fn longitude_of_clock(utc_offset_min: i32) -> f64 {
    let (least, most) = limits::LONGITUDE_DEG;
    (f64::from(utc_offset_min) / 4.0).clamp(least, most)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(zone: &str, name: &str, latitude_deg: f64, longitude_deg: f64) {
        let place = ZonePlace::of(zone).unwrap();
        assert_eq!(place.name(), name);
        // Coordinates of cities, from memory; a degree is nearer than the sun can tell.
        assert!((place.latitude_deg - latitude_deg).abs() < 1.0, "{place:?}");
        assert!(
            (place.longitude_deg - longitude_deg).abs() < 1.0,
            "{place:?}"
        );
    }

    #[test]
    fn zones_stand_where_their_cities_do() {
        check("Africa/Nairobi", "Nairobi", -1.3, 36.8);
        check("America/La_Paz", "La Paz", -16.5, -68.1);
        check(
            "America/Argentina/Buenos_Aires",
            "Buenos Aires",
            -34.6,
            -58.4,
        );
        check("Asia/Kathmandu", "Kathmandu", 27.7, 85.3);
        check("Asia/Calcutta", "Calcutta", 22.6, 88.4);
        check("Pacific/Auckland", "Auckland", -36.8, 174.8);
        check("Africa/Asmera", "Asmera", 15.3, 38.9);
    }

    #[test]
    fn names_are_written_as_people_write_them() {
        let name = |zone: &str| ZonePlace::of(zone).unwrap().name();
        assert_eq!(name("Antarctica/DumontDUrville"), "Dumont d’Urville");
        assert_eq!(
            name("America/Argentina/ComodRivadavia"),
            "Comodoro Rivadavia"
        );
        assert_eq!(name("America/Port-au-Prince"), "Port-au-Prince");
        for place in ZonePlace::all().filter(|place| !place.zone.ends_with("McMurdo")) {
            let name = place.name();
            let mut pairs = name.chars().zip(name.chars().skip(1));
            let is_squeezed =
                pairs.any(|(one, next)| one.is_ascii_lowercase() && next.is_ascii_uppercase());
            assert!(!is_squeezed && !name.contains('_'), "{name}");
        }
    }

    #[test]
    fn high_places_are_known_to_be_high() {
        let height_m = |zone: &str| ZonePlace::of(zone).unwrap().altitude_m;
        // From memory.
        assert!((height_m("America/La_Paz") - 3600.0).abs() < 150.0);
        assert!((height_m("Africa/Nairobi") - 1700.0).abs() < 150.0);
        assert!((height_m("Africa/Lagos") - LOWLAND_M).abs() < 1e-9);
    }

    #[test]
    fn what_is_no_zone_has_no_place() {
        for text in [
            "",
            "UTC",
            "Etc/GMT+3",
            "Africa",
            "Africa/Nairob",
            "Africa/Nairobi 1",
        ] {
            assert_eq!(ZonePlace::of(text), None, "{text:?}");
        }
    }

    #[test]
    fn every_line_can_be_read_and_lies_on_earth() {
        let mut n_lines = 0;
        for line in ZONES.lines() {
            let zone = line.split(' ').next().unwrap();
            let place = ZonePlace::of(zone).unwrap();
            assert!(place.latitude_deg.abs() <= 90.0 && place.longitude_deg.abs() <= 180.0);
            assert!(!place.name().is_empty());
            n_lines += 1;
        }
        assert!(450 < n_lines);
    }

    #[test]
    fn every_high_place_is_a_zone() {
        for (zone, height_m) in HIGH {
            assert!(ZonePlace::of(zone).is_some(), "{zone}");
            assert!(LOWLAND_M < height_m, "{zone}");
        }
    }

    /// Summer time as in the European Union: from the last Sunday of March to the last of October.
    #[test]
    fn summer_time_shifts_the_clock_of_its_own_zone() {
        let change = |month, day| Day::from_ymd(2026, month, day).unwrap();
        let (spring, autumn) = (change(3, 29), change(10, 25));
        let madrid = |day: Day| {
            let in_summer = (spring..autumn).contains(&Day(day.0));
            if in_summer { 120 } else { 60 }
        };
        let (winter_day, summer_day) = (change(2, 1), change(7, 1));
        for told_min in [60, 120] {
            assert_eq!(offset_on_min(told_min, winter_day, madrid), 60);
            assert_eq!(offset_on_min(told_min, summer_day, madrid), 120);
        }
        // A device that stands in another zone than the household says.
        assert_eq!(offset_on_min(-180, summer_day, madrid), -180);
    }

    #[test]
    fn a_clock_without_a_zone_tells_its_longitude() {
        assert!((longitude_of_clock(180) - 45.0).abs() < 1e-9);
        assert!((longitude_of_clock(840) - 180.0).abs() < 1e-9);
    }
}
