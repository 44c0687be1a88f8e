//! Figures of pieces: cutting, shaping, and what lies on a tray.

pub(in crate::draw) mod cut;
pub(in crate::draw) mod shape;
pub(in crate::draw) mod tray;
