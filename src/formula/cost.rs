//! What the ingredients cost, by the weight used; whole packs are the order list's matter.

use num_traits::ToPrimitive;

use crate::measure::{Exact, exact};

use super::expand::Contents;

/// Ingredients that come from the tap.
const FREE: [&str; 2] = ["water", "ice"];

/// The cost of `contents` in the smallest unit of money, rounded; `None` where a price is
/// not known.
pub fn cost(contents: &Contents) -> Option<i64> {
    let mut sum = exact(0, 1);
    let bought = contents.values().filter(|(item, mass)| {
        !mass.amount().is_zero() && !FREE.contains(&item.name.as_str())
    });
    for (item, mass) in bought {
        let (pack, price) = item.pack.as_ref().zip(item.price_minor)?;
        sum += mass.over(pack)? * Exact::from_integer(price.into());
    }
    sum.round().to_integer().to_i64()
}
