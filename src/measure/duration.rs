//! How long something takes.

use super::{Exact, ceil};

/// A stretch of time, kept in minutes.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Duration(Exact);

super::quantity!(Duration, minutes, "minutes");

impl Duration {
    /// Whole minutes, rounded up: how a kitchen plans.
    pub fn whole_minutes(&self) -> u64 {
        ceil(&self.0)
    }
}
