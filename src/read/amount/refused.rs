//! What is said of a line that cannot be read, with what would be.

use crate::fault::{Fault, Place, Placed, clip};
use crate::said;

/// The fault of a line whose amount cannot be read to its end.
pub(crate) fn bad_amount(place: &Place) -> Fault {
    Fault::error("bad-amount", place, said!("amount-not-whole"))
        .help(said!("amount-not-whole-help"))
}

/// The fault of a line without an amount, with the line as it would read.
pub(super) fn unreadable(line: &Placed<String>, name: &str) -> Fault {
    let name = clip(name.trim());
    let name = if name.is_empty() { "butter" } else { &name };
    Fault::error("bad-amount", &line.place, said!("no-amount"))
        .help(said!("no-amount-help", name))
}

/// Of a heaped spoon, which weighs nothing known.
pub(super) fn heaped(place: &Place) -> Fault {
    let message = said!("heaped-spoon");
    Fault::error("bad-amount", place, message).help(said!("heaped-spoon-help"))
}

/// Of a cup that is none: a coffee cup, a tumbler.
pub(super) fn vessel(place: &Place) -> Fault {
    let message = said!("unknown-vessel");
    Fault::error("bad-amount", place, message).help(said!("unknown-vessel-help"))
}

/// Of a measure that was worth different things at different times and places.
pub(super) fn old(place: &Place) -> Fault {
    let message = said!("old-measure");
    Fault::error("bad-amount", place, message).help(said!("old-measure-help"))
}
