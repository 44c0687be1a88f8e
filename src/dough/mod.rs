//! The dough as geometry: lock-in, turns, sheets, layers and cutting. Pure and exact.
//!
//! Nothing here knows recipes, words or drawings. Masses, sizes and plans go in; layer
//! counts, thicknesses, polygons and judgments come out as data.

mod batch;
mod bench;
mod direction;
mod edges;
mod fit;
mod layers;
mod lock_in;
mod rolling;
mod root;
mod scale;
mod sheeter;

pub mod cutting;
pub mod shaping;

pub use batch::Batch;
pub use direction::{Direction, narrows};
pub use edges::{Edge, Edges, ends_meet, fold_lines, lock_in_edges, turn_edges};
pub use fit::{
    Margin, Misfit, RolledFor, Strain, bench_fits, block_fits, fat_layer_fits,
    thickness_fits, turn_fits,
};
pub use layers::Layers;
pub use lock_in::{closed_size, usual_block};
pub use rolling::{
    Action, Folded, Laminated, LockedIn, PartInHand, Rolled, laminate, laminate_on,
};
pub use root::root_near;
pub use scale::{
    block_in_proportion, in_proportion, room_in_proportion, room_lengthwise, ruler_step,
};

pub use sheeter::openings;

use crate::measure::Size;

/// The same rectangle with its long side first.
pub fn long_first(size: &Size) -> Size {
    if size.length < size.width { turned(size) } else { size.clone() }
}

/// The same rectangle with its sides exchanged.
fn turned(size: &Size) -> Size {
    Size::new(size.width.clone(), size.length.clone())
}
