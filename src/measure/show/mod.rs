//! The one place where amounts are rounded and put into words.

mod length;
mod number;
mod temperature;
mod time;

pub use length::{length, size, thickness};
pub use number::{decimal, plain, vulgar};
pub use temperature::{oven, temperature};
pub use time::minutes;
