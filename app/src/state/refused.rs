//! Why an action was not carried out: which field, and what is wrong with it.

use model::local_time::LocalTime;

/// An action that was not carried out. Nothing was changed.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{field:?}: {wrong:?}")]
pub struct Refused {
    /// The field that holds what is wrong.
    pub field: Field,
    /// What is wrong with it.
    pub wrong: Wrong,
}

/// A field of the screens, as far as something typed into it can be wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Field {
    /// Name of a cooker.
    Name,
    /// People who usually eat.
    People,
    /// Latitude. \[deg\]
    LatitudeDeg,
    /// Longitude. \[deg\]
    LongitudeDeg,
    /// Height above the sea. \[m\]
    AltitudeM,
    /// The household's clock less universal time. \[min\]
    UtcOffsetMin,
    /// A monthly temperature of the day or the night. \[°C\]
    AirC,
    /// Hours of sun of a day. \[h\]
    SunHours,
    /// The day a sky is logged for.
    Day,
    /// When something happened.
    At,
    /// A thermometer in the store. \[°C\]
    ReadingC,
    /// How long the lid stood open or the heater got nothing. \[s\]
    ForS,
    /// Heat of a top-up into the store, or power of a second charge. \[W\]
    TopUpW,
    /// Elements on a switch, as a list.
    Elements,
    /// A share of what is caught or paid for that arrives, or of metal in a medium.
    Share,
    /// Aperture of a dish. \[m²\]
    ApertureM2,
    /// Dry or raw food. \[kg\]
    FoodKg,
    /// Water. \[kg\]
    WaterKg,
    /// Temperature of what goes in. \[°C\]
    StartC,
    /// When the pot goes in.
    PutIn,
    /// When it is eaten.
    EatAt,
    /// When the pot came out.
    OutAt,
    /// When it boiled.
    BoiledAt,
    /// When it was looked at and had not boiled.
    NotBoiledBy,
    /// When it was done.
    DoneAt,
    /// When it was tasted and was not done.
    NotDoneBy,
    /// A cooker as a whole.
    Cooker,
    /// An entry as a whole.
    Entry,
    /// Rated power of a module. \[W\]
    ModuleW,
    /// Modules in series or in parallel.
    Modules,
    /// Slope of the panel. \[deg\]
    TiltDeg,
    /// Where the panel looks. \[deg\]
    AzimuthDeg,
    /// A rating of the panel's data sheet.
    Datasheet,
    /// Resistance of the element or of the wires. \[Ω\]
    Ohm,
    /// How the element's resistance changes with its heat. \[1/K\]
    ElementAlpha,
    /// Efficiency of the tracker.
    TrackerEfficiency,
    /// The media of the store, as a list.
    Charges,
    /// Mass of a medium. \[kg\]
    ChargeKg,
    /// Thickness of the medium under the seat. \[m\]
    DepthM,
    /// Temperature at which the thermostat cuts out. \[°C\]
    CutoutC,
    /// A size of the room inside the jacket. \[m\]
    JacketSizeM,
    /// The layers of the jacket, as a list.
    Layers,
    /// Thickness of a layer. \[m\]
    LayerM,
    /// Emissivity of a face.
    Emissivity,
    /// Rods through the jacket.
    Rods,
    /// Measured heat loss. \[W/K\]
    LossWK,
    /// Measured heat capacity of the jacket. \[J/K\]
    CapacityJK,
    /// What the store was measured to hold, as a share.
    CapacityShare,
    /// What its pots were measured to lose, as a share.
    PotLossShare,
    /// Measured contact conductance. \[W/(m² K)\]
    ContactWM2k,
    /// Power of the heater. \[W\]
    HeaterW,
    /// A thermometer in the pot. \[°C\]
    PotC,
    /// Mean wind. \[m/s\]
    WindMS,
    /// Water that is left. \[kg\]
    LeftKg,
    /// What a person writes about a run.
    Notes,
    /// What a change costs.
    Price,
    /// A test run as a whole.
    Run,
    /// The readings of a run, as a list.
    Readings,
}

/// What is wrong with a field.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Wrong {
    /// It is no number, or not a finite one.
    NotANumber,
    /// It is empty.
    Empty,
    /// It has too many letters.
    TooLong {
        /// The most it can have.
        n_most: usize,
    },
    /// Below the least it can be.
    TooLow {
        /// The least, in the field's own unit.
        least: f64,
    },
    /// Above the most it can be.
    TooHigh {
        /// The most, in the field's own unit.
        most: f64,
    },
    /// More hours of sun than the day has.
    SunExceedsDay {
        /// The hours it has. \[h\]
        possible_h: f64,
    },
    /// More than the pot holds.
    PotTooSmall {
        /// What it holds. \[L\]
        holds_l: f64,
    },
    /// Fins that leave less than half of the room to what is between them.
    FinsTooClose,
    /// A time that has not come yet.
    InFuture,
    /// A time before something that must come first.
    Before {
        /// The earliest it can be.
        earliest: LocalTime,
    },
    /// A time after something that must come later.
    After {
        /// The latest it can be.
        latest: LocalTime,
    },
    /// The night is given as warmer than the day.
    NightWarmerThanDay,
    /// What was to be changed is not there any more.
    Gone,
    /// A pot is in the cooker already.
    MealRunning,
    /// The entry is no meal.
    NotAMeal,
    /// The only cooker can't be erased.
    LastCooker,
    /// More of these than are kept.
    TooMany {
        /// The most that are kept.
        n_most: usize,
    },
}

impl Field {
    /// A refusal of this field.
    pub fn refuse(self, wrong: Wrong) -> Refused {
        Refused { field: self, wrong }
    }

    /// The number, if it is finite and within `least..=most`.
    ///
    /// # Errors
    ///
    /// [`Refused`] with this field and the bound that was passed.
    pub fn within(self, value: f64, (least, most): (f64, f64)) -> Result<f64, Refused> {
        if !value.is_finite() {
            Err(self.refuse(Wrong::NotANumber))
        } else if value < least {
            Err(self.refuse(Wrong::TooLow { least }))
        } else if most < value {
            Err(self.refuse(Wrong::TooHigh { most }))
        } else {
            Ok(value)
        }
    }

    /// The count, if it is within `least..=most`.
    ///
    /// # Errors
    ///
    /// [`Refused`] with this field and the bound that was passed.
    pub fn count(self, count: u32, (least, most): (u32, u32)) -> Result<(), Refused> {
        self.within(f64::from(count), (f64::from(least), f64::from(most)))
            .map(|_| ())
    }

    /// The time, if it is not before `earliest`.
    ///
    /// # Errors
    ///
    /// [`Wrong::Before`].
    pub fn not_before(self, at: LocalTime, earliest: LocalTime) -> Result<LocalTime, Refused> {
        if at < earliest {
            Err(self.refuse(Wrong::Before { earliest }))
        } else {
            Ok(at)
        }
    }

    /// The time, if it is not after `latest`.
    ///
    /// # Errors
    ///
    /// [`Wrong::After`].
    pub fn not_after(self, at: LocalTime, latest: LocalTime) -> Result<LocalTime, Refused> {
        if latest < at {
            Err(self.refuse(Wrong::After { latest }))
        } else {
            Ok(at)
        }
    }
}
