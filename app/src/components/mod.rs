//! The small parts that every screen is made of.
//!
//! A part knows numbers, finished words and callbacks. It knows nothing of stores, pots, languages
//! or saved things, so each can be looked at, and tried, alone.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod action_dock;
mod button;
mod caution;
mod choice;
mod clock_line;
mod data_table;
mod empty_note;
mod entry_row;
mod fact_list;
mod file_button;
mod fold;
mod icon;
mod line_field;
mod number_field;
mod page_link;
mod panel;
mod room_bar;
mod room_header;
mod run_bar;
mod select;
mod sheet;
mod sky_row;
mod status_line;
mod stepper_dots;
mod store_column;
mod sun_hours;
mod toast;
mod toggle;
mod unique;
mod verdict;

pub use action_dock::ActionDock;
pub use button::{Button, LinkButton, Tone};
pub use caution::{Caution, CautionLevel};
pub use choice::{Choice, ChoiceOption};
pub use clock_line::{ClockLine, ClockView};
pub use data_table::{DataTable, TableView};
pub use empty_note::EmptyNote;
pub use entry_row::{EntryRow, EntryView, EntryWords};
pub use fact_list::{Fact, FactList};
pub use file_button::FileButton;
pub use fold::Fold;
pub use icon::{Glyph, Icon};
pub use line_field::{DateField, TextArea, TextField, TimeField};
pub use number_field::{NumberField, NumberFieldText};
pub use page_link::PageLink;
pub use panel::Panel;
pub use room_bar::{RoomBar, RoomLink};
pub use room_header::RoomHeader;
pub use run_bar::{RunBar, RunStep, RunView};
pub use select::{Select, SelectOption};
pub use sheet::Sheet;
pub use sky_row::{SkyPick, SkyRow};
pub use status_line::{StatusLine, StatusTone};
pub use stepper_dots::StepperDots;
pub use store_column::{ColumnMark, ColumnRange, StoreColumn, StoreColumnView};
pub use sun_hours::{Sky, SunHour, SunHours};
pub use toast::{Toast, ToastView};
pub use toggle::Toggle;
pub use verdict::{Verdict, VerdictTone, VerdictView};
