//! The graph of steps: when each can start, when it must, and what decides the end.
//!
//! Pure arithmetic in whole minutes. Nothing here knows a clock or a calendar.

mod job;
mod order;
mod ready;
mod schedule;

#[cfg(test)]
mod tests;

pub use job::{Cycle, Job};
pub use ready::{Worked, ready};
pub use schedule::{Schedule, Timed, schedule};
