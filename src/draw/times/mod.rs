//! Figures of time: the steps of a recipe, and the plan of a class.

pub(in crate::draw) mod chart;
pub(in crate::draw) mod rows;
pub(in crate::draw) mod timeline;
