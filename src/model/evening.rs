//! What is said of an evening while it runs.

use jiff::civil::DateTime;

/// One line of the day file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Heard {
    /// When it was said: local time.
    pub at: DateTime,
    /// What was said; nothing where only the time was.
    pub said: Vec<Said>,
}

/// One thing that is said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// Of whom.
    pub of: Of,
    /// What.
    pub what: What,
}

/// Of whom, or of what, something is said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Of {
    /// Everybody who bakes.
    All,
    /// Groups by their numbers from 0.
    Groups(Vec<u32>),
    /// One baker of a group, both from 0.
    Baker(u32, u32),
    /// Who teaches.
    Instructor,
    /// A kind of kit.
    Kit(String, Which),
}

/// Which of a kind of kit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// So many of them.
    Some(u32),
    /// The one of this number, from 0.
    Number(u32),
}

/// What is said. Times are minutes since midnight; `None` for now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// A step, as it is written, is done.
    Done(String, Option<i32>),
    /// A step is begun.
    Begun(String, Option<i32>),
    /// A step is left out.
    Skipped(String),
    /// Everything is so many minutes late.
    Late(i32),
    /// Nothing is done yet.
    Nothing,
    /// They went home.
    Gone,
    /// It is out of order.
    Out,
    /// It is in order again.
    Back,
}

impl Said {
    /// The highest group that is named, from 0.
    pub fn highest(&self) -> Option<u32> {
        match &self.of {
            Of::Groups(groups) => groups.iter().copied().max(),
            Of::Baker(group, _) => Some(*group),
            Of::All | Of::Instructor | Of::Kit(..) => None,
        }
    }
}
