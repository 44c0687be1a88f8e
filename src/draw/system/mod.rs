//! The drawing system: strokes and fills, lettering, the plate with its dimensions, arrows and
//! hatches, and how it is written and painted.

pub(in crate::draw) mod arrow;
pub(in crate::draw) mod batch;
pub(in crate::draw) mod dimension;
pub(in crate::draw) mod hatch;
pub(in crate::draw) mod ink;
pub(in crate::draw) mod lettering;
pub(in crate::draw) mod plate;
pub(in crate::draw) mod raster;
pub(in crate::draw) mod svg;
pub(in crate::draw) mod trace;
pub(in crate::draw) mod voice;
