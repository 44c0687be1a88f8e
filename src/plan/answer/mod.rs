//! The answer: the timetable with its rows and names, or why there is none and what helps.

pub(in crate::plan) mod changed;
pub(in crate::plan) mod heating;
pub(in crate::plan) mod name;
pub(in crate::plan) mod planned;
pub(in crate::plan) mod reason;
pub(in crate::plan) mod rows;
pub(in crate::plan) mod timetable;
