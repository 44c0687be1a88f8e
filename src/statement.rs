//! What is said to a person, as data: which message it is, and what goes into it. The words
//! stand in the message files; `Words::tell` puts them together, at the way out.

use crate::measure::show::{self, Notation, Sign};
use crate::measure::{Exact, Length, Mass, Size, Temperature, exact};
use crate::said;

/// One message and its values.
///
/// ```
/// use tourier::said;
/// use tourier::statement::Value;
///
/// let statement = said!("no-steps", recipe = "plain-loaf", count = 3_usize);
/// assert_eq!(statement.key, "no-steps");
/// assert_eq!(statement.values[1], ("count", Value::Number("3".to_owned())));
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Statement {
    /// The key of the message.
    pub key: &'static str,
    /// What goes into it, by the names that the message has for it.
    pub values: Vec<(&'static str, Value)>,
}

impl Statement {
    /// Whether it ends in lines to be written, so that it says too little without them.
    pub fn has_lines(&self) -> bool {
        self.values.iter().any(|(_, value)| matches!(value, Value::Lines(_)))
    }
}

/// What goes into a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Value {
    /// What someone wrote, a name, a key of the format: the same in every language.
    Text(String),
    /// What is to be written, in lines of its own.
    Lines(String),
    /// A whole number, which chooses between the forms of a message.
    Number(String),
    /// An amount, in numbers and units as the language writes them.
    Amount(Amount),
    /// Another statement.
    Said(Statement),
    /// Things one after another.
    List(Vec<Value>),
}

/// An amount, rounded where it is put into words. Lengths and weights are said in metric
/// units: a fault is about what stands in one text, not about what a student reads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Amount {
    /// A number to so many decimals.
    Number(Exact, u32),
    /// A length as a ruler reads it: `28 cm`.
    Length(Length),
    /// A rectangle: `60 × 25 cm`.
    Size(Size),
    /// A thickness, to half a millimetre.
    Thickness(Length),
    /// A small difference of lengths, to a tenth of a millimetre.
    Gap(Length),
    /// A weight within a hundredth; with its milligrams where they count.
    Weight {
        /// How much.
        mass: Mass,
        /// Whether a fine scale is at hand.
        fine: bool,
    },
    /// A temperature in °C.
    Celsius(Temperature),
    /// A temperature in °F.
    Fahrenheit(Temperature),
    /// A time in whole minutes.
    Minutes(u64),
}

impl Amount {
    /// It in numbers and units.
    pub fn words(&self, notation: &dyn Notation) -> String {
        match self {
            Self::Number(number, places) => show::number(number, *places, notation),
            Self::Length(length) => show::length(length, notation).metric,
            Self::Size(size) => show::size(size, notation).metric,
            Self::Thickness(length) => show::thickness(length, notation).metric,
            Self::Gap(length) => {
                let number = show::number(&length.in_millimetres(), 1, notation);
                notation.of(&number, Sign::Millimetre)
            }
            Self::Weight { mass, fine } => {
                show::metric(mass, &exact(1, 100), *fine).words(notation)
            }
            Self::Celsius(heat) => show::temperature(heat, notation).metric,
            Self::Fahrenheit(heat) => show::temperature(heat, notation).us,
            Self::Minutes(minutes) => show::minutes(*minutes, notation),
        }
    }
}

/// What a machine or a library says, in its own words.
pub fn machine(error: &impl std::fmt::Display) -> Statement {
    let reason = error.to_string();
    said!("machine-says", reason)
}

/// What can stand in a message.
pub trait Say {
    /// It as a value.
    fn value(&self) -> Value;
}

impl<T: Say + ?Sized> Say for &T {
    fn value(&self) -> Value {
        (**self).value()
    }
}

impl Say for Value {
    fn value(&self) -> Value {
        self.clone()
    }
}

impl Say for Amount {
    fn value(&self) -> Value {
        Value::Amount(self.clone())
    }
}

impl Say for str {
    fn value(&self) -> Value {
        Value::Text(self.to_owned())
    }
}

impl Say for String {
    fn value(&self) -> Value {
        Value::Text(self.clone())
    }
}

impl Say for char {
    fn value(&self) -> Value {
        Value::Text(self.to_string())
    }
}

/// What is to be written, in lines of its own beneath what is said of it.
#[derive(Clone, Copy, Debug)]
pub struct Lines<'a>(pub &'a str);

impl Say for Lines<'_> {
    fn value(&self) -> Value {
        Value::Lines(self.0.to_owned())
    }
}

impl Say for Statement {
    fn value(&self) -> Value {
        Value::Said(self.clone())
    }
}

impl<T: Say> Say for [T] {
    fn value(&self) -> Value {
        Value::List(self.iter().map(Say::value).collect())
    }
}

impl<T: Say, const N: usize> Say for [T; N] {
    fn value(&self) -> Value {
        self.as_slice().value()
    }
}

impl<T: Say> Say for Vec<T> {
    fn value(&self) -> Value {
        self.as_slice().value()
    }
}

/// Whole numbers.
macro_rules! numbers {
    ($($kind:ty),*) => {
        $(impl Say for $kind {
            fn value(&self) -> Value {
                Value::Number(self.to_string())
            }
        })*
    };
}

numbers!(i32, i64, u16, u32, u64, usize);

/// A statement: `said!("unused-line", name, count = lines.len())`. The key and the names of the
/// values are those of a message in `words/en/`; `tests/statements.rs` holds both together.
#[doc(hidden)]
#[macro_export]
macro_rules! said {
    (@value $name:ident) => { $crate::statement::Say::value(&$name) };
    (@value $name:ident $value:expr) => { $crate::statement::Say::value(&$value) };
    ($key:literal $(, $name:ident $(= $value:expr)?)* $(,)?) => {
        $crate::statement::Statement {
            key: $key,
            values: vec![$((stringify!($name), $crate::said!(@value $name $($value)?))),*],
        }
    };
}
