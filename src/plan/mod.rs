//! Plans: a class as a question of tasks and lags, answered by a solver; and the home plan.

mod answer;
mod at_home;
mod question;
mod search;
mod under_way;

pub use answer::planned::planned;
pub use answer::reason::{
    Amendment, Beside, Explanation, Reason, Remedy, Short, explain,
};
pub use answer::rows::{Left, Row};
pub use answer::timetable::{
    Activity, Caveat, Counted, Deed, Heating, Now, Objective, Optimality, Pause,
    StepName, Timetable, Verdict,
};
pub use at_home::home::home;
pub use question::batch_tasks::{
    BatchTasks, Holds, Lag, Moves, StepPlan, Venue, batch_tasks, elsewhere,
};
pub use question::class::{ClassBatch, ClassDraft, PoolName, Show, Unclear, Who, draft};
pub use question::clock::Clock;
pub use question::gather::Gathering;
pub use question::kind::{Kind, Together};
pub use question::problem::{
    Baking, Claim, Goal, Layout, Link, Ovens, Pool, Problem, Store, Task,
};
pub use question::stations::{
    SharedDough, SizedRecipe, Station, scaled, scaling, shared, stations, together,
};
pub use search::solve::{Answer, Effort, Plan, Watch, fits, fits_soon, solve};
pub use under_way::evening::{Evening, Progress, Unready};
pub use under_way::shift::{Shift, Why};
pub use under_way::spot::Unheard;
