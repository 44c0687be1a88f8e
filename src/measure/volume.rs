//! Volume.

use super::{Exact, Mass};

/// A volume, kept in millilitres.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Volume(Exact);

super::quantity!(Volume, millilitres, "millilitres");

impl Volume {
    /// The weight of this volume at `density` grams a millilitre.
    pub fn weigh(&self, density: &Exact) -> Mass {
        Mass::grams(&self.0 * density)
    }
}
