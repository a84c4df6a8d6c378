//! What a fit looks for.

/// A figure of the cooker that runs can tell.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Parameter {
    /// Steady loss through the jacket, store at its working temperature. \[W/K\]
    Loss,
    /// Heat capacity of the jacket, as one node half-way out. \[J/K\]
    JacketCapacity,
    /// Heat the store holds over what its description says, at every temperature.
    StoreCapacity,
    /// Middle of the melting range. [°C]
    MeltingPoint,
    /// Width of the melting range. \[K\]
    MeltingRange,
    /// Heat that reaches the store over the power that was measured at the heater; over what the
    /// panels should give, where only the light was measured.
    Heater,
    /// Between store and pot, store at its working temperature. \[W/(m² K)\]
    Contact,
    /// Dry loss of the pot over what its description says.
    PotLoss,
}

/// What the description says of a parameter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prior {
    /// In the parameter's unit.
    pub value: f64,
    /// One standard deviation, in the same unit.
    pub sd: f64,
}

/// One value of each.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Values {
    /// See [`Parameter::Loss`]. \[W/K\]
    pub loss_w_k: f64,
    /// See [`Parameter::JacketCapacity`]. \[J/K\]
    pub jacket_j_k: f64,
    /// See [`Parameter::StoreCapacity`].
    pub capacity: f64,
    /// See [`Parameter::MeltingPoint`]; 0 where nothing melts. [°C]
    pub melting_c: f64,
    /// See [`Parameter::MeltingRange`]; 0 where nothing melts. \[K\]
    pub melting_k: f64,
    /// See [`Parameter::Heater`].
    pub heater: f64,
    /// See [`Parameter::Contact`]. \[W/(m² K)\]
    pub contact_w_m2k: f64,
    /// See [`Parameter::PotLoss`].
    pub pot_loss: f64,
    /// Conductance within a store that is not at one temperature over what its description says; 1 of
    /// any other. It is found with the rest, since readings hang on it, and is no figure that is told.
    pub within: f64,
    /// How much more of the heater's heat the far end of such a store gets than its seat, as a share; 0
    /// where the heat goes by the mass.
    pub heater_tilt: f64,
}

/// Doubt of a jacket described by its layers, and of what it holds: as a share. Conductivity hot
/// and moist, thickness, the gap of the lid. Wide, so that a run decides. Inferred.
const LOSS_SHARE: f64 = 0.5;
const JACKET_SHARE: f64 = 0.3;
/// Of what a store holds: its weight, its specific heat, what else gets hot with it. Inferred.
const CAPACITY_SHARE: f64 = 0.12;
/// Of a melting point and of the width of melting, for technical qualities. Inferred. \[K, share\]
const MELTING_POINT_K: f64 = 4.0;
const MELTING_RANGE_SHARE: f64 = 0.7;
/// Of a power that was measured: a plain meter, and the wires behind it. Common practice, no source.
const METER_SHARE: f64 = 0.025;
/// Of a power worked out from the light: dust, the sheet, the match. From memory.
const LIGHT_SHARE: f64 = 0.15;
/// Of a contact by the look of the seat. Inferred.
const CONTACT_SHARE: f64 = 0.9;
/// Doubt of where in a store that conducts poorly its heater lies: elements are laid where there is room.
/// Inferred.
pub(super) const HEATER_TILT: f64 = 0.4;
/// The far end gets so much more or less at most.
pub(super) const MOST_TILT: f64 = 0.9;
/// How far the ends of such a store may be from its middle as a run begins, as a share of how much hotter
/// it is than the air, and for any. Inferred. \[share, K\]
pub(super) const START_TILT: (f64, f64) = (0.12, 1.0);
/// Of a pot's dry loss. Inferred.
const POT_SHARE: f64 = 0.3;

impl Parameter {
    /// Every parameter.
    pub const ALL: [Self; 8] = [
        Self::Loss,
        Self::JacketCapacity,
        Self::StoreCapacity,
        Self::MeltingPoint,
        Self::MeltingRange,
        Self::Heater,
        Self::Contact,
        Self::PotLoss,
    ];

    /// A stable name, with its unit where it has one.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Loss => "loss_w_k",
            Self::JacketCapacity => "jacket_j_k",
            Self::StoreCapacity => "store_capacity",
            Self::MeltingPoint => "melting_c",
            Self::MeltingRange => "melting_range_k",
            Self::Heater => "heater",
            Self::Contact => "contact_w_m2k",
            Self::PotLoss => "pot_loss",
        }
    }

    /// Whether it is searched by its logarithm: what cannot be negative.
    pub(super) const fn is_ratio(self) -> bool {
        !matches!(self, Self::MeltingPoint)
    }

    /// One standard deviation of the description, in the parameter's unit.
    pub(super) fn described_sd(self, described: &Values, power_measured: bool) -> f64 {
        let share = match self {
            Self::Loss => LOSS_SHARE,
            Self::JacketCapacity => JACKET_SHARE,
            Self::StoreCapacity => CAPACITY_SHARE,
            Self::MeltingPoint => return MELTING_POINT_K,
            Self::MeltingRange => MELTING_RANGE_SHARE,
            Self::Heater if power_measured => METER_SHARE,
            Self::Heater => LIGHT_SHARE,
            Self::Contact => CONTACT_SHARE,
            Self::PotLoss => POT_SHARE,
        };
        share * described.get(self)
    }
}

impl Values {
    /// The value of a parameter.
    pub const fn get(&self, parameter: Parameter) -> f64 {
        match parameter {
            Parameter::Loss => self.loss_w_k,
            Parameter::JacketCapacity => self.jacket_j_k,
            Parameter::StoreCapacity => self.capacity,
            Parameter::MeltingPoint => self.melting_c,
            Parameter::MeltingRange => self.melting_k,
            Parameter::Heater => self.heater,
            Parameter::Contact => self.contact_w_m2k,
            Parameter::PotLoss => self.pot_loss,
        }
    }

    /// Puts a value in its place.
    pub const fn set(&mut self, parameter: Parameter, value: f64) {
        let place = match parameter {
            Parameter::Loss => &mut self.loss_w_k,
            Parameter::JacketCapacity => &mut self.jacket_j_k,
            Parameter::StoreCapacity => &mut self.capacity,
            Parameter::MeltingPoint => &mut self.melting_c,
            Parameter::MeltingRange => &mut self.melting_k,
            Parameter::Heater => &mut self.heater,
            Parameter::Contact => &mut self.contact_w_m2k,
            Parameter::PotLoss => &mut self.pot_loss,
        };
        *place = value;
    }
}

/// What one number of the search stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Unknown {
    /// A figure of the cooker.
    Shared(Parameter),
    /// [`Values::within`].
    Within,
    /// [`Values::heater_tilt`].
    HeaterTilt,
    /// The store as a run began.
    StoreStart(usize),
    /// How much hotter its far end was than its middle.
    TiltStart(usize),
    /// The jacket as a run began.
    JacketStart(usize),
    /// A pot of a run as it went in.
    PotStart(usize, usize),
    /// What the metal of a pot of a run takes, over what its table says.
    PotMetal(usize, usize),
}

/// One direction of the search: 0 is the description, 1 one standard deviation more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Axis {
    pub(super) unknown: Unknown,
    centre: f64,
    /// Of the logarithm for a ratio.
    pub(super) sd: f64,
    ratio: bool,
}

/// Change of a logarithm by which slopes are found: large against the integrator's own error, small
/// against the curve.
const STEP_LN: f64 = 0.001;
/// The same for a temperature. \[K\]
const STEP_K: f64 = 0.04;
/// The search keeps within so many natural logarithms of the description.
const FARTHEST_LN: f64 = 3.5;

impl Axis {
    pub(super) fn shared(parameter: Parameter, prior: Prior) -> Self {
        let ratio = parameter.is_ratio();
        Self {
            unknown: Unknown::Shared(parameter),
            centre: prior.value,
            sd: if ratio {
                prior.sd / prior.value
            } else {
                prior.sd
            },
            ratio,
        }
    }

    pub(super) const fn own(unknown: Unknown, centre: f64, sd: f64) -> Self {
        Self {
            unknown,
            centre,
            sd,
            ratio: false,
        }
    }

    /// A factor, by its logarithm.
    pub(super) const fn own_factor(unknown: Unknown, log_sd: f64) -> Self {
        Self {
            unknown,
            centre: 1.0,
            sd: log_sd,
            ratio: true,
        }
    }

    /// The value at a place on the axis.
    pub(super) fn value(&self, x: f64) -> f64 {
        if self.ratio {
            self.centre * libm::exp((self.sd * x).clamp(-FARTHEST_LN, FARTHEST_LN))
        } else {
            self.centre + self.sd * x
        }
    }

    /// Step for the slope, in units of the axis.
    pub(super) fn step(&self) -> f64 {
        if self.ratio {
            STEP_LN / self.sd
        } else {
            STEP_K / self.sd
        }
    }
}
