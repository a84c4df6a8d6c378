//! The plan of tonight, as saved.

use serde::{Deserialize, Serialize};

use super::cooker::SavedPot;
use super::leaf;
use crate::state::plan::{Amount, Plan, TimeOfDay};
use crate::state::saved::DecodeError;

#[derive(Serialize, Deserialize)]
pub(super) struct SavedPlan {
    dish: String,
    amount: SavedAmount,
    pot: Option<SavedPot>,
    lid: String,
    /// As `18:40`; none means now.
    put_in: Option<String>,
    eat: String,
    start_c: Option<f64>,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "by")]
enum SavedAmount {
    People { people: u32 },
    Measured { food_kg: f64, water_kg: f64 },
}

impl SavedPlan {
    pub(super) fn from_plan(plan: &Plan) -> Self {
        Self {
            dish: leaf::name(plan.dish),
            amount: match plan.amount {
                Amount::People(people) => SavedAmount::People { people },
                Amount::Measured { food_kg, water_kg } => {
                    SavedAmount::Measured { food_kg, water_kg }
                }
            },
            pot: plan.pot.as_ref().map(SavedPot::from_pot),
            lid: leaf::name(plan.lid),
            put_in: plan.put_in.map(TimeOfDay::field),
            eat: plan.eat.field(),
            start_c: plan.start_c,
        }
    }

    pub(super) fn into_plan(self) -> Result<Plan, DecodeError> {
        let pot = self.pot.map(SavedPot::into_pot).transpose();
        Ok(Plan {
            dish: leaf::row("plan.dish", &self.dish)?,
            amount: match self.amount {
                SavedAmount::People { people } => Amount::People(people),
                SavedAmount::Measured { food_kg, water_kg } => {
                    Amount::Measured { food_kg, water_kg }
                }
            },
            pot: pot.map_err(|error| error.within("plan.pot"))?,
            lid: leaf::row("plan.lid", &self.lid)?,
            put_in: self
                .put_in
                .map(|text| time_of_day("plan.put_in", &text))
                .transpose()?,
            eat: time_of_day("plan.eat", &self.eat)?,
            start_c: self.start_c,
        })
    }
}

fn time_of_day(at: &str, text: &str) -> Result<TimeOfDay, DecodeError> {
    TimeOfDay::from_field(text).ok_or_else(|| DecodeError::value(at, text))
}
