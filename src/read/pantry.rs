//! `pantry.yaml` to the course's own ingredients.

use crate::fault::{Fault, FileName, Placed};
use crate::measure::{Mass, Unit};
use crate::model::{PantryEntry, Quantity};
use crate::said;

use super::fields::{Fields, entries_of};
use super::yaml::Node;
use super::{course, quantity};

/// Reads the ingredients from the text of `file`.
pub(super) fn read(
    file: &FileName,
    text: &str,
    faults: &mut Vec<Fault>,
) -> Vec<PantryEntry> {
    let entries = entries_of(file, text, faults);
    entries.into_iter().map(|(name, node)| entry(name, node, faults)).collect()
}

/// What may be said of an ingredient.
const KEYS: [&str; 8] =
    ["like", "also", "kind", "density", "portions", "allergens", "pack", "price"];

fn entry(
    name: Placed<String>,
    node: Placed<Node>,
    faults: &mut Vec<Fault>,
) -> PantryEntry {
    if is_weighed(&name.value) {
        let message = said!("pantry-amount");
        let help = said!("pantry-amount-help");
        faults.push(Fault::error("bad-amount", &name.place, message).help(help));
    }
    let mut fields = Fields::new(node, &KEYS, faults);
    for key in ["like", "density", "allergens"] {
        fields.filled_in(key, &name.value);
    }
    let (allergens, read_on_pack) = allergens(&mut fields);
    let entry = PantryEntry {
        name,
        like: fields.text("like"),
        also: fields.list_of_texts("also"),
        kind: fields.text("kind"),
        portions: portions(&mut fields),
        allergens,
        read_on_pack,
        pack: fields.parsed("pack", "250 g", pack).map(|pack| pack.value),
        price_minor: fields.parsed("price", "3.20", price).map(|price| price.value),
    };
    fields.finish();
    entry
}

/// The weight of a pack, which is never nothing.
fn pack(text: &str) -> Option<Mass> {
    course::mass(text).filter(Mass::is_positive)
}

/// Whether a name begins with a weight or a measure; `00 flour` and `2 % milk` do not.
fn is_weighed(name: &str) -> bool {
    let amount = super::amount_of(name, false).map(|(quantity, _)| quantity);
    match amount {
        Some(Quantity::Unit(_, unit)) => unit != Unit::Percent,
        Some(Quantity::Sum(_)) => true,
        Some(Quantity::Pieces(..) | Quantity::Batches(_)) | None => false,
    }
}

/// What is written where the pack lists no allergen.
const NONE: &str = "none";
/// What is written behind the allergens of a pack that lists fewer than the name says.
const READ: &str = "read on the pack";

/// `allergens: milk, wheat`, `allergens: none`, `allergens: none, read on the pack`.
fn allergens(fields: &mut Fields) -> (Option<Vec<Placed<String>>>, bool) {
    let said = fields.list("allergens").filter(|said| !said.is_empty());
    let Some(said) = said else { return (None, false) };
    let (read, said): (Vec<_>, Vec<_>) =
        said.into_iter().partition(|word| word.value == READ);
    let (none, said): (Vec<_>, Vec<_>) =
        said.into_iter().partition(|word| word.value == NONE);
    let odd = if said.is_empty() == none.is_empty() {
        none.first().or(read.first())
    } else {
        None
    };
    if let Some(word) = odd {
        let message = said!("pack-not-said");
        fields.faults().push(
            Fault::error("bad-value", &word.place, message)
                .help(said!("pack-not-said-help")),
        );
        return (None, false);
    }
    (Some(said), !read.is_empty())
}

/// `density: 0.46 g/ml` or `density: 1 tbsp = 6.8 g`, and `portions:` a list of the
/// latter.
fn portions(fields: &mut Fields) -> Vec<Placed<String>> {
    let density = fields.text("density");
    density.into_iter().chain(fields.list("portions").unwrap_or_default()).collect()
}

/// A price to the hundredth, in hundredths.
fn price(text: &str) -> Option<i64> {
    let (value, rest) = quantity::number(text, text.contains(','))?;
    let minor = value * crate::measure::exact(100, 1);
    (rest.trim().is_empty() && minor.is_integer()).then(|| minor.to_i64())?
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pack_holds_something() {
        for (pack, sound) in [
            ("250 g", true),
            ("1 lb", true),
            ("0 g", false),
            ("0.0 kg", false),
            ("g", false),
        ] {
            let mut faults = Vec::new();
            let text = format!("soft butter:\n  like: butter\n  pack: {pack}\n");
            read(&"pantry.yaml".into(), &text, &mut faults);
            let names: Vec<&str> = faults.iter().map(|fault| fault.name).collect();
            assert_eq!(names.is_empty(), sound, "{pack}: {names:?}");
            assert!(sound || names == ["bad-value"], "{pack}: {names:?}");
        }
    }
}
