//! Figures of layered doughs: the lock-in, the turns, the layers and how the sheet grows.

pub(in crate::draw) mod block;
pub(in crate::draw) mod envelope;
pub(in crate::draw) mod growth;
pub(in crate::draw) mod lock_in;
pub(in crate::draw) mod panels;
pub(in crate::draw) mod roll;
pub(in crate::draw) mod section;
pub(in crate::draw) mod stack;
pub(in crate::draw) mod turn;
