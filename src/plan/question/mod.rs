//! A class laid out as a question: whose batches there are, what they share, and when.

pub(in crate::plan) mod batch_tasks;
pub(in crate::plan) mod class;
pub(in crate::plan) mod clock;
pub(in crate::plan) mod days;
pub(in crate::plan) mod drafting;
pub(in crate::plan) mod gather;
pub(in crate::plan) mod heats;
pub(in crate::plan) mod kind;
pub(in crate::plan) mod problem;
pub(in crate::plan) mod rules;
pub(in crate::plan) mod shown;
pub(in crate::plan) mod stations;
