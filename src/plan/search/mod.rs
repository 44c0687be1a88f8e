//! How a plan is found and proven: in waves, by bounds, by small moves, by the solver.

pub(in crate::plan) mod board;
pub(in crate::plan) mod bounds;
pub(in crate::plan) mod firm;
pub(in crate::plan) mod first;
pub(in crate::plan) mod lateness;
pub(in crate::plan) mod merge;
pub(in crate::plan) mod ovens;
pub(in crate::plan) mod polish;
pub(in crate::plan) mod solve;
pub(in crate::plan) mod solver;
pub(in crate::plan) mod tidy;
pub(in crate::plan) mod waves;
