//! The one place where amounts are rounded and put into words.

mod household;
mod length;
mod mass;
mod number;
mod portion;
mod temperature;
mod time;

pub use household::{Spoons, household};
pub use length::{centimetres, inches, length, size, thickness, tin};
pub use mass::{Shown, metric, us_weight};
pub use number::{decimal, money, plain, tenths, vulgar};
pub use portion::{metric_portion, us_portion};
pub use temperature::{oven, temperature};
pub use time::{clock, minutes};
