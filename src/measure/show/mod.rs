//! The one place where amounts are rounded and put into words.

mod household;
mod length;
mod mass;
mod notation;
mod number;
mod portion;
mod shown;
mod temperature;
mod time;

pub use household::{Spoons, household};
pub use length::{centimetres, inches, length, size, thickness, tin};
pub use mass::{metric, us_weight};
pub use notation::{International, Notation, Sign};
pub use number::{
    decimal, marked, money, number, percent, plain, tenths, vulgar, whole_percent,
};
pub use portion::{metric_portion, us_portion};
pub use shown::{Shown, Term};
pub use temperature::{degrees, oven, temperature};
pub use time::minutes;
