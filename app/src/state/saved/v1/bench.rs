//! The bench, as saved.

use model::bench::readings::{Column, Correction, Degrees, ElapsedUnit, Hints};
use model::bench::{
    BoilingTest, ChargeFigures, ChargeSpread, Measured, Parameter, Plane, PotIn, Prices, RunKind,
    Worth,
};

use crate::state::bench::{
    Bench, Described, Found, KeptFit, KeptText, Reading, RunAbout, RunReadings, TestRun, Text, Used,
};
use crate::state::saved::reader::{self, Node, Read};
use crate::state::saved::shape::{names, record};
use crate::state::saved::writer::{Record, Write, Writer};

record!(Bench {
    runs: "runs",
    prices: "prices",
});

record!(TestRun {
    id: "id",
    cooker: "cooker",
    started: "started",
    ended: "ended",
    about: "about",
    pots: "pots",
    readings: "readings",
    fit: "fit",
    used: "used",
});

record!(RunAbout {
    name: "name",
    kind: "kind",
    air_c: "air_c",
    heater_w: "heater_w",
    plane: "plane",
    notes: "notes",
});

record!(Plane {
    intercept_m2: "intercept_m2",
    wind_m_s: "wind_m_s",
});

record!(PotIn {
    in_s: "in_s",
    out_s: "out_s",
    pot: "pot",
    lid: "lid",
    water_kg: "water_kg",
    start_c: "start_c",
    left_kg: "left_kg",
});

record!(Reading {
    at: "at",
    store_c: "store_c",
    pot_c: "pot_c",
    air_c: "air_c",
    heater_w: "heater_w",
});

record!(KeptText {
    key: "key",
    name: "name",
    rows: "rows",
    span_s: "span_s",
    hints: "hints",
});

record!(Text {
    key: "key",
    text: "text",
});

record!(Hints {
    columns: "columns",
    elapsed: "elapsed",
    degrees: "degrees",
    corrections: "corrections" or Vec::new(),
});

record!(Correction {
    line: "line",
    column: "column",
    value: "value",
});

record!(KeptFit {
    at: "at",
    runs: "runs",
    worth: "worth",
    scatter_k: "scatter_k",
    found: "found",
    figures: "figures",
    spread: "spread",
    boiling: "boiling",
    standard_w: "standard_w",
    described: "described",
    described_boil_s: "described_boil_s",
});

record!(Described {
    working_c: "working_c",
    found: "found",
    figures: "figures",
    spread: "spread",
});

record!(Used {
    described: "described",
    measured: "measured",
});

record!(Found {
    parameter: "parameter",
    measured: "measured",
    told: "told",
});

record!(Measured {
    value: "value",
    sd: "sd",
});

record!(ChargeFigures {
    litres_per_charge: "litres_per_charge",
    first_litre_s: "first_litre_s",
    power_50_k_w: "power_50_k_w",
    hold_s: "hold_s",
    overnight_loss: "overnight_loss",
    sun_to_food: "sun_to_food",
});

record!(ChargeSpread {
    litres_per_charge: "litres_per_charge",
    first_litre_s: "first_litre_s",
    power_50_k_w: "power_50_k_w",
    hold_s: "hold_s",
    overnight_loss: "overnight_loss",
    sun_to_food: "sun_to_food",
});

record!(BoilingTest {
    start_c: "start_c",
    boil_s: "boil_s",
    corrected_s: "corrected_s",
    hottest_c: "hottest_c",
    evaporated_kg: "evaporated_kg",
    efficiency: "efficiency",
});

record!(Prices {
    store_kg: "store_kg",
    seat: "seat",
    fins: "fins",
    jacket: "jacket",
    wrap: "wrap",
    heater: "heater",
    panels: "panels",
});

names!(RunKind {
    HeatUp: "heat_up",
    CoolDown: "cool_down",
    Boil: "boil",
    Free: "free",
});

names!(Worth {
    None: "none",
    Little: "little",
    Rough: "rough",
    Good: "good",
});

names!(Column {
    Time: "time",
    Date: "date",
    Store: "store",
    Pot: "pot",
    Air: "air",
    Power: "power",
    Irradiance: "irradiance",
    Unused: "unused",
});

names!(Degrees {
    Celsius: "celsius",
    Fahrenheit: "fahrenheit",
});

names!(ElapsedUnit {
    Seconds: "s",
    Minutes: "min",
    Hours: "h",
});

names!(Parameter {
    Loss: "loss_w_k",
    JacketCapacity: "jacket_j_k",
    StoreCapacity: "store_capacity",
    MeltingPoint: "melting_c",
    MeltingRange: "melting_range_k",
    Heater: "heater",
    Contact: "contact_w_m2k",
    PotLoss: "pot_loss",
});

impl Write for RunReadings {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Typed(typed) => Record(&[("typed", typed)]).write(out),
            Self::File(text) => Record(&[("text", text)]).write(out),
        }
    }
}

impl Read for RunReadings {
    fn read(from: &Node<'_>) -> reader::Found<Self> {
        match from.variant()? {
            ("typed", typed) => Read::read(&typed).map(Self::Typed),
            ("text", text) => Read::read(&text).map(Self::File),
            (_, other) => Err(other.expected("typed or text")),
        }
    }
}
