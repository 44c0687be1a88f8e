//! An evening under way: what is said of it, what that fixes, and what moves.

pub(in crate::plan) mod evening;
pub(in crate::plan) mod fixing;
pub(in crate::plan) mod hearing;
pub(in crate::plan) mod lost;
pub(in crate::plan) mod shift;
pub(in crate::plan) mod spot;
pub(in crate::plan) mod today;
