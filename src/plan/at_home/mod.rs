//! The bake at home, planned backwards from when it shall be ready.

pub(in crate::plan) mod home;
pub(in crate::plan) mod latest;
