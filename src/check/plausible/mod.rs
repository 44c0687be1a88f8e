//! Slips of the hand: values that the trade does not know, and values that cannot be.
//!
//! A decimal point one place off, °F for °C, hours for minutes. What lies outside the ranges
//! here is pointed out; what nobody can do is an error. The ranges are wide: they are to
//! find the slip, not to teach. Where no source is named, a range is common practice.

mod heat;
mod share;
mod time;

use crate::fault::Fault;

use super::Case;

/// The faults of every temperature, time and share of a recipe.
pub(super) fn slips(case: Case) -> Vec<Fault> {
    let mut faults = heat::steps(case);
    faults.extend(heat::dough(case));
    faults.extend(time::steps(case));
    faults
}

/// The shares of a formula that could be weighed.
pub(super) use share::shares;
