//! The runs: readings by column, and what no column tells by notes.

use model::bench::readings::{self, Degrees, ElapsedUnit, Hints, Note, Remark};
use model::bench::{Plane, Prices, Run, RunKind};
use model::cooker::Cooker;
use model::place::{AirYear, Place};
use model::pot::Lid;
use model::tonight::Site;

/// One file, understood.
pub(crate) struct RunFile {
    pub(crate) run: Run,
    pub(crate) remarks: Vec<Remark>,
    pub(crate) plane: Plane,
    pub(crate) prices: Prices,
    name: String,
    altitude_m: Option<f64>,
    latitude_deg: Option<f64>,
}

const KEYS: [&str; 21] = [
    "kind",
    "air_c",
    "heater_w",
    "water_kg",
    "start_c",
    "left_kg",
    "lid",
    "altitude_m",
    "latitude_deg",
    "wind_m_s",
    "intercept_m2",
    "elapsed",
    "degrees",
    "price_store_kg",
    "price_seat",
    "price_fins",
    "price_jacket",
    "price_wrap",
    "price_heater",
    "price_panels",
    "name",
];

/// The notes of a file, each refusal with its line.
struct Notes<'a>(&'a [Note]);

impl Notes<'_> {
    fn find(&self, key: &str) -> Option<&Note> {
        self.0.iter().find(|note| note.key == key)
    }

    fn number(&self, key: &str) -> Result<Option<f64>, String> {
        let Some(note) = self.find(key) else {
            return Ok(None);
        };
        let value = note.value.replace(',', ".");
        let value = value.parse::<f64>().ok().filter(|value| value.is_finite());
        value
            .map(Some)
            .ok_or_else(|| refused(note, "must be a number"))
    }

    fn positive(&self, key: &str) -> Result<Option<f64>, String> {
        match (self.number(key)?, self.find(key)) {
            (Some(value), Some(note)) if value <= 0.0 => {
                Err(refused(note, "must be greater than 0"))
            }
            (value, _) => Ok(value),
        }
    }

    fn choice<T: Copy>(&self, key: &str, choices: &[(&str, T)]) -> Result<Option<T>, String> {
        let Some(note) = self.find(key) else {
            return Ok(None);
        };
        let value = note.value.to_lowercase();
        let found = choices.iter().find(|(name, _)| *name == value);
        let names: Vec<&str> = choices.iter().map(|(name, _)| *name).collect();
        found
            .map(|(_, value)| Some(*value))
            .ok_or_else(|| refused(note, &format!("must be one of {}", names.join(", "))))
    }
}

fn refused(note: &Note, why: &str) -> String {
    format!(
        "line {}: {}: {why}, not \"{}\"",
        note.line, note.key, note.value
    )
}

pub(crate) fn read(name: &str, text: &str, cooker: &Cooker) -> Result<RunFile, String> {
    let notes = readings::notes(text);
    if let Some(note) = notes.iter().find(|note| !KEYS.contains(&note.key.as_str())) {
        return Err(format!(
            "line {}: {}: is not a known key",
            note.line, note.key
        ));
    }
    let notes = Notes(&notes);
    let hints = Hints {
        columns: None,
        corrections: Vec::new(),
        elapsed: notes.choice(
            "elapsed",
            &[
                ("s", ElapsedUnit::Seconds),
                ("min", ElapsedUnit::Minutes),
                ("h", ElapsedUnit::Hours),
            ],
        )?,
        degrees: notes.choice(
            "degrees",
            &[("c", Degrees::Celsius), ("f", Degrees::Fahrenheit)],
        )?,
    };
    let read = readings::read(text, &hints).map_err(|error| error.to_string())?;
    let mut run = Run {
        name: notes
            .find("name")
            .map_or(name, |note| &note.value)
            .to_owned(),
        kind: RunKind::Free,
        rows: read.rows,
        air_c: notes.number("air_c")?,
        heater_w: notes.number("heater_w")?.map(|power_w| power_w.max(0.0)),
        pots: Vec::new(),
    };
    let lids = [("on", Lid::On), ("ajar", Lid::Ajar), ("off", Lid::Off)];
    let lid = notes.choice("lid", &lids)?.unwrap_or(Lid::On);
    let (start_c, left_kg) = (notes.number("start_c")?, notes.number("left_kg")?);
    match (
        run.pot_while_read(cooker.pot, lid, 1.0),
        notes.positive("water_kg")?,
    ) {
        (Some(_), None) => {
            return Err("water_kg: is missing, and there is a column of the pot".into());
        }
        (None, Some(_)) => return Err("water_kg: is given, and no column of the pot".into()),
        (Some(mut pot), Some(water_kg)) => {
            pot.water_kg = water_kg;
            pot.start_c = start_c;
            pot.left_kg = left_kg;
            run.pots.push(pot);
        }
        (None, None) => {}
    }
    let kinds = [
        ("heat_up", RunKind::HeatUp),
        ("cool_down", RunKind::CoolDown),
        ("boil", RunKind::Boil),
        ("free", RunKind::Free),
    ];
    run.kind = match (
        notes.choice("kind", &kinds)?,
        run.pots.is_empty(),
        run.has_power(),
    ) {
        (Some(kind), _, _) => kind,
        (None, false, false) => RunKind::Boil,
        (None, true, false) => RunKind::CoolDown,
        (None, _, true) => RunKind::Free,
    };
    run.checked().map_err(|fault| fault.to_string())?;
    Ok(RunFile {
        remarks: read.remarks,
        plane: Plane {
            intercept_m2: notes.positive("intercept_m2")?,
            wind_m_s: notes.number("wind_m_s")?,
        },
        prices: Prices {
            store_kg: notes.number("price_store_kg")?,
            seat: notes.number("price_seat")?,
            fins: notes.number("price_fins")?,
            jacket: notes.number("price_jacket")?,
            wrap: notes.number("price_wrap")?,
            heater: notes.number("price_heater")?,
            panels: notes.number("price_panels")?,
        },
        name: name.into(),
        altitude_m: notes.number("altitude_m")?,
        latitude_deg: notes.number("latitude_deg")?,
        run,
    })
}

/// Where the runs were made: the last altitude and latitude that any of them notes; sea level and
/// 10° north where none does.
pub(crate) fn site(files: &[RunFile]) -> Result<Site, String> {
    let last = |read: fn(&RunFile) -> Option<f64>| {
        files
            .iter()
            .rev()
            .find_map(|file| Some((file, read(file)?)))
    };
    let altitude = last(|file| file.altitude_m);
    let latitude = last(|file| file.latitude_deg);
    let place = Place {
        latitude_deg: latitude.map_or(10.0, |(_, deg)| deg),
        longitude_deg: 0.0,
        altitude_m: altitude.map_or(0.0, |(_, altitude_m)| altitude_m),
        utc_offset_min: 0,
    };
    let named = altitude
        .or(latitude)
        .map_or("", |(file, _)| file.name.as_str());
    let place = place
        .checked()
        .map_err(|error| format!("{named}: {error}"))?;
    let air = AirYear::guess(place.latitude_deg, place.altitude_m)
        .map_err(|error| format!("{named}: {error}"))?;
    Ok(Site { place, air })
}
