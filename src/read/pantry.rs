//! `pantry.yaml` to the course's own ingredients.

use std::sync::Arc;

use crate::fault::{Fault, Placed};
use crate::model::PantryEntry;

use super::fields::Fields;
use super::yaml::Node;
use super::{course, quantity};

/// Reads the ingredients from the text of `file`.
pub(super) fn read(
    file: &Arc<str>,
    text: &str,
    faults: &mut Vec<Fault>,
) -> Vec<PantryEntry> {
    let entries = Fields::entries_of(file, text, faults);
    entries.into_iter().map(|(name, node)| entry(name, node, faults)).collect()
}

fn entry(
    name: Placed<String>,
    node: Placed<Node>,
    faults: &mut Vec<Fault>,
) -> PantryEntry {
    let mut fields = Fields::new(node, faults);
    let entry = PantryEntry {
        name,
        like: fields.text("like"),
        also: fields.list_of_texts("also"),
        kind: fields.text("kind"),
        portions: portions(&mut fields),
        allergens: fields.list("allergens"),
        pack: fields.parsed("pack", "250 g", course::mass).map(|pack| pack.value),
        price_minor: fields.parsed("price", "3.20", price).map(|price| price.value),
    };
    fields.finish();
    entry
}

/// `density: 0.46 g/ml` or `density: 1 tbsp = 6.8 g`, and `portions:` a list of the
/// latter.
fn portions(fields: &mut Fields) -> Vec<Placed<String>> {
    let density = fields.text("density");
    density.into_iter().chain(fields.list("portions").unwrap_or_default()).collect()
}

/// A price to the hundredth, in hundredths.
fn price(text: &str) -> Option<i64> {
    let (value, rest) = quantity::number(text, true)?;
    let minor = value * crate::measure::exact(100, 1);
    (rest.trim().is_empty() && minor.is_integer()).then(|| minor.to_i64())?
}
