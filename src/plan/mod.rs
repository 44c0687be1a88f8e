//! Plans: a class as a question of tasks and lags, answered by a solver; and the home plan.

mod board;
mod bounds;
mod changed;
mod class;
mod clock;
mod day;
mod evening;
mod firm;
mod first;
mod fixing;
mod home;
mod latest;
mod lost;
mod merge;
mod model;
mod name;
mod ovens;
mod planned;
mod polish;
mod problem;
mod reason;
mod rows;
mod shift;
mod solve;
mod spot;
mod stations;
mod strand;
mod timetable;
mod today;
mod waves;

pub use class::{ClassDraft, PoolName, Show, Unclear, Unit, Who, draft};
pub use clock::Clock;
pub use day::{
    Heard, Of, Said, TAKEN_BACK, What, Which, day_line, read_day, read_day_file,
};
pub use evening::{Evening, Unready};
pub use home::home;
pub use planned::planned;
pub use problem::{Bake, Goal, Layout, Link, Ovens, Pool, Problem, Store, Task, Use};
pub use reason::{Change, Explanation, Reason, Remedy, Short, explain};
pub use rows::{Left, Row};
pub use shift::{Shift, Why};
pub use solve::{Answer, Effort, Plan, Watch, fits, fits_soon, solve};
pub use spot::Unheard;
pub use stations::{Portion, Station, scaled, scaling, stations};
pub use strand::{Holds, Lag, Moves, Room, StepPlan, Strand, elsewhere, strand};
pub use timetable::{
    Activity, Counted, Deed, Kind, Note, Now, Objective, Standing, StepName, Timetable,
    Verdict, Wait,
};
