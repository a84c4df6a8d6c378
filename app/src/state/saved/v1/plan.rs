//! The plan of tonight, as saved.

use crate::state::plan::{Amount, Plan, TimeOfDay};
use crate::state::saved::reader::{Found, Node, Read};
use crate::state::saved::shape::record;
use crate::state::saved::writer::{Record, Write, Writer};

record!(Plan {
    dish: "dish",
    amount: "amount",
    pot: "pot",
    lid: "lid",
    put_in: "put_in",
    eat: "eat",
    start_c: "start_c",
});

impl Write for Amount {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::People(people) => Record(&[("by", &"people"), ("people", people)]).write(out),
            Self::Measured { food_kg, water_kg } => Record(&[
                ("by", &"measured"),
                ("food_kg", food_kg),
                ("water_kg", water_kg),
            ])
            .write(out),
        }
    }
}

impl Read for Amount {
    fn read(from: &Node<'_>) -> Found<Self> {
        let by = from.field("by")?;
        match by.text()? {
            "people" => Ok(Self::People(from.get("people")?)),
            "measured" => Ok(Self::Measured {
                food_kg: from.get("food_kg")?,
                water_kg: from.get("water_kg")?,
            }),
            _ => by.unknown(),
        }
    }
}

/// As `18:40`.
impl Write for TimeOfDay {
    fn write(&self, out: &mut Writer) {
        self.field().write(out);
    }
}

impl Read for TimeOfDay {
    fn read(from: &Node<'_>) -> Found<Self> {
        Self::from_field(from.text()?).map_or_else(|| from.unknown(), Ok)
    }
}
