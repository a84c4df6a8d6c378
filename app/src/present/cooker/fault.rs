//! Why a change of a part is not taken, in words.

use model::cooker::Cooker;
use model::local_time::Day;
use model::panel::PanelError;
use model::safety::{Build, Refusal};
use model::tonight::{Rig, Site, TonightError};

use crate::i18n::format::{Formats, Sure};
use crate::i18n::refusal::{parse_refusal, refusal};
use crate::i18n::strings::Strings;
use crate::present::cooker::measure::Number;
use crate::state::parse::ParseError;
use crate::state::refused::Refused;

/// Why a change is not taken.
#[derive(Debug, Clone, PartialEq)]
pub enum Fault {
    /// The text is no number.
    Parse(ParseError),
    /// Below the least that can be, in the model's unit.
    TooLow(f64),
    /// Above the most that can be.
    TooHigh(f64),
    /// The document refuses it.
    Refused(Refused),
    /// It could burn, explode or poison.
    Unsafe(Vec<Refusal>),
    /// The figures do not go together.
    Unworkable(TonightError),
}

impl From<ParseError> for Fault {
    fn from(error: ParseError) -> Self {
        Self::Parse(error)
    }
}

impl From<Refused> for Fault {
    fn from(refused: Refused) -> Self {
        Self::Refused(refused)
    }
}

impl From<TonightError> for Fault {
    fn from(error: TonightError) -> Self {
        Self::Unworkable(error)
    }
}

/// What the checks need to know of a cooker at a place: its jacket in the warmest air, its panels on
/// the coldest morning.
///
/// # Errors
///
/// [`TonightError`] for a jacket that makes no sense.
pub fn build_of(site: &Site, cooker: &Cooker) -> Result<Build, TonightError> {
    let warmest_c = site.air.day_c.iter().copied().fold(f64::MIN, f64::max);
    let coldest_c = site.air.night_c.iter().copied().fold(f64::MAX, f64::min);
    Ok(Build::of(cooker, warmest_c, coldest_c)?)
}

/// Lets a cooker pass that can be built and worked out.
///
/// # Errors
///
/// [`Fault`] with what speaks against it.
pub fn check(site: &Site, cooker: &Cooker) -> Result<(), Fault> {
    passed(refusals(site, cooker)?)
}

/// Lets a change pass that leaves a cooker which can be built and worked out. One that could burn
/// before, such as one from a copy, may change step by step as long as no danger is added.
///
/// # Errors
///
/// [`Fault`] with what speaks against it.
pub fn check_change(site: &Site, former: &Cooker, next: &Cooker) -> Result<(), Fault> {
    let after = refusals(site, next)?;
    if after.is_empty() {
        return Ok(());
    }
    let before = refusals(site, former).unwrap_or_default();
    if after.iter().all(|refusal| before.contains(refusal)) || after.len() < before.len() {
        Ok(())
    } else {
        passed(after)
    }
}

/// What speaks against a cooker as it is built.
///
/// # Errors
///
/// [`TonightError`] for one that can't be worked out: nobody can say whether nonsense is safe.
pub fn refusals(site: &Site, cooker: &Cooker) -> Result<Vec<Refusal>, TonightError> {
    Rig::new(site, cooker)?;
    Ok(build_of(site, cooker)?.refusals())
}

fn passed(refusals: Vec<Refusal>) -> Result<(), Fault> {
    if refusals.is_empty() {
        Ok(())
    } else {
        Err(Fault::Unsafe(refusals))
    }
}

/// What is said beside the field; `number` is how the field measures, if it holds a number.
pub fn words(
    strings: &Strings,
    formats: &Formats,
    fault: &Fault,
    number: Option<Number>,
    today: Day,
) -> String {
    let bound = |value: f64| match number {
        Some(number) => number.with_unit(value, strings, formats),
        None => formats.field(value, 3),
    };
    let said = match fault {
        Fault::Parse(error) => parse_refusal(strings, *error).to_owned(),
        Fault::TooLow(least) => (strings.refusals.too_low)(&bound(*least)),
        Fault::TooHigh(most) => (strings.refusals.too_high)(&bound(*most)),
        Fault::Refused(refused) => refusal(strings, formats, *refused, today),
        Fault::Unsafe(refusals) => {
            let mut said = strings.cooker.parts.refused.to_owned();
            for refusal in refusals {
                said.push(' ');
                said.push_str(&reason(strings, formats, refusal));
            }
            said
        }
        Fault::Unworkable(error) => unworkable(strings, *error).to_owned(),
    };
    format!("{said} {}", strings.cooker.parts.kept)
}

/// What is wrong with figures that do not go together.
pub fn unworkable(strings: &Strings, error: TonightError) -> &'static str {
    let words = &strings.cooker.parts.unworkable;
    match error {
        TonightError::Panel(PanelError::OpenCircuitVoltage { .. }) => words.voltages,
        TonightError::Panel(PanelError::ShortCircuitCurrent { .. }) => words.currents,
        TonightError::Panel(PanelError::CurrentCoefficient(_)) => words.current_coefficient,
        TonightError::Panel(PanelError::VoltageCoefficient(_)) => words.voltage_coefficient,
        TonightError::Panel(PanelError::Cells { .. }) => words.cells,
        TonightError::Panel(PanelError::NoDiode(_)) => words.no_curve,
        _ => words.other,
    }
}

/// Why a combination is not accepted.
pub fn reason(strings: &Strings, formats: &Formats, refusal: &Refusal) -> String {
    let (words, tables) = (&strings.build_safety.refusals, &strings.tables);
    let (medium, insulation) = (tables.medium, tables.insulation);
    let degrees = |celsius| formats.temperature(celsius, Sure::Known);
    match *refusal {
        Refusal::NitrateWithOrganicMedium { nitrate, organic } => {
            (words.nitrate_organic)(medium(nitrate), medium(organic))
        }
        Refusal::NitrateWithOilFilm { nitrate } => (words.nitrate_oil)(medium(nitrate)),
        Refusal::NitrateWithCombustibleJacket {
            nitrate,
            insulation: burns,
        } => (words.nitrate_jacket)(medium(nitrate), insulation(burns)),
        Refusal::NitrateTouchesPot { nitrate } => (words.nitrate_pot)(medium(nitrate)),
        Refusal::NitrateWithWaterOfCrystallisation { nitrate, hydrate } => {
            (words.nitrate_hydrate)(medium(nitrate), medium(hydrate))
        }
        Refusal::AboveMediumLimit {
            medium: row,
            limit_c,
            cut_out_c,
        } => (words.above_medium)(medium(row), &degrees(limit_c), &degrees(cut_out_c)),
        Refusal::AboveInsulationLimit {
            insulation: row,
            limit_c,
            hot_face_c,
        } => (words.above_insulation)(insulation(row), &degrees(limit_c), &degrees(hot_face_c)),
        Refusal::OilFilmTooHot { limit_c, cut_out_c } => {
            (words.oil_too_hot)(&degrees(limit_c), &degrees(cut_out_c))
        }
        Refusal::CutOutUnknown => words.cutout_unknown.to_owned(),
    }
}
