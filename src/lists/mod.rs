//! Lists for the day before and files for other programs: the order in packs, the
//! weigh-out, tables for a spreadsheet, a calendar, a plan as text.

mod calendar;
mod order;
mod priced;
mod sheet;
mod stations;
mod table;
mod text;
mod tubs;

pub use calendar::calendar;
pub use order::{Order, OrderLine, UsWeights, order};
pub use priced::OrderSheet;
pub use sheet::{Card, ClassSheet, LineSheet, SessionSheet, class_sheet, first_units};
pub use stations::{Portion, Station, stations};
pub use table::order_csv;
pub use text::{order_text, timetable_text};
pub use tubs::{Tub, TubLine};
