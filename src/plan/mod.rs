//! Plans: a class as a question of tasks and lags, answered by a solver; and the home plan.

mod bounds;
mod class;
mod clock;
mod first;
mod home;
mod latest;
mod model;
mod name;
mod problem;
mod reason;
mod rows;
mod solve;
mod strand;
mod timetable;
mod today;

pub use class::{ClassDraft, PoolName, Show, Unclear, Unit, Who, draft};
pub use clock::Clock;
pub use home::home;
pub use name::{group_word, who};
pub use problem::{Bake, Goal, Layout, Link, Ovens, Pool, Problem, Store, Task, Use};
pub use reason::{Explanation, explain};
pub use rows::{Row, together};
pub use solve::{Answer, Effort, Plan, Watch, fits, solve};
pub use strand::{Holds, Lag, Moves, Room, StepPlan, Strand, elsewhere, strand};
pub use timetable::{Activity, Span, Timetable, Wait};
pub use today::{Done, adjust, read_done};
