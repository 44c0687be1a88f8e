//! What is said to a person, as data: which message it is, and what goes into it. The words
//! stand in the message files; `Words::tell` puts them together, at the way out.

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

/// What goes into a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Value {
    /// What someone wrote, a name, a key of the format: the same in every language.
    Text(String),
    /// A whole number, which chooses between the forms of a message.
    Number(String),
    /// Another statement.
    Said(Statement),
    /// Things one after another.
    List(Vec<Value>),
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

impl Say for std::sync::Arc<str> {
    fn value(&self) -> Value {
        (**self).value()
    }
}

impl Say for char {
    fn value(&self) -> Value {
        Value::Text(self.to_string())
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
