//! Painters of what is no page and no paper: tables for a spreadsheet, a calendar, a plan
//! and an order as text.

mod calendar;
mod evening;
mod table;
mod text;

pub use calendar::{calendar, sessions};
pub use table::order_csv;
pub use text::{order_text, timetable_text};
