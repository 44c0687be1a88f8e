//! What a line of a formula is for: the trade's words in a section's name, in a note and in
//! what stands in place of a weight.

use crate::model::{AmountLine, Purpose};

/// Words for what is put on later, each whole, wherever they stand in a section's name or
/// in a note that begins with `for` or `to`.
const WORDS: [(Purpose, &[&str]); 4] = [
    (
        Purpose::Wash,
        &["wash", "glaze", "glazing", "brush", "brushing", "egging", "varnish"],
    ),
    (
        Purpose::Dusting,
        &[
            "dusting",
            "dust",
            "flouring",
            "greasing",
            "grease",
            "sprinkling",
            "sprinkle",
            "strewing",
            "bench",
            "finish",
            "finishing",
            "frying",
            "serving",
            "serve",
        ],
    ),
    (
        Purpose::Filling,
        &[
            "filling",
            "fillings",
            "fill",
            "stuffing",
            "frangipane",
            "curd",
            "jam",
            "ganache",
        ],
    ),
    (
        Purpose::Topping,
        &[
            "topping",
            "toppings",
            "icing",
            "frosting",
            "streusel",
            "garnish",
            "decoration",
            "decorating",
            "coating",
        ],
    ),
];

/// Names of sections that say it alone: longer names that hold these words are doughs as
/// well as not (`tin loaf`, `cream` for what is creamed).
const NAMES: [(Purpose, &[&str]); 3] = [
    (Purpose::RollIn, &["roll-in", "roll in", "butter block"]),
    (Purpose::Dusting, &["tin", "tins", "pan", "pans", "tray", "trays"]),
    (
        Purpose::Filling,
        &["custard", "pastry cream", "almond cream", "whipped cream", "buttercream"],
    ),
];

/// The purpose that a section's name says.
fn of_section(name: &str) -> Purpose {
    let name = name.trim().to_lowercase();
    let named = NAMES.iter().find(|(_, names)| names.contains(&name.as_str()));
    named.map(|(purpose, _)| *purpose).or_else(|| of_words(&name)).unwrap_or_default()
}

/// The purpose that a note says: `for dusting`, `to glaze`; what is mixed where it says none.
pub(super) fn of_note(note: Option<&str>) -> Purpose {
    let note = note.map(str::to_lowercase).unwrap_or_default();
    let said = note.starts_with("for ") || note.starts_with("to ");
    said.then(|| of_words(&note)).flatten().unwrap_or_default()
}

/// The purpose of a line without weight: what is for something is put on, as the trade
/// writes `for dusting`; what is `to taste` or `as needed` is mixed.
pub(super) fn of_free(words: &str) -> Purpose {
    let put_on = if words.trim().to_lowercase().starts_with("for ") {
        Purpose::Dusting
    } else {
        Purpose::Mixed
    };
    of_words(&words.to_lowercase()).unwrap_or(put_on)
}

/// The line in its section: its own words say it before the section's name does.
pub(super) fn within(section: &str, line: AmountLine) -> AmountLine {
    let purpose = match line.purpose {
        Purpose::Mixed => of_section(section),
        own => own,
    };
    AmountLine { purpose, ..line }
}

/// The purpose of the last of the words that says one: what a thing is comes last
/// (`filling for the glaze`).
fn of_words(text: &str) -> Option<Purpose> {
    let mut words = text.split(|c: char| !c.is_alphanumeric()).rev();
    words.find_map(|word| {
        let named = WORDS.iter().find(|(_, words)| words.contains(&word));
        named.map(|(purpose, _)| *purpose)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The trade's words: common practice, no source.
    #[test]
    fn sections_say_what_they_are_for() {
        for (name, purpose) in [
            ("dough", Purpose::Mixed),
            ("final dough", Purpose::Mixed),
            ("dry", Purpose::Mixed),
            ("tin loaf dough", Purpose::Mixed),
            ("Roll-in", Purpose::RollIn),
            ("egg wash", Purpose::Wash),
            ("for the glaze", Purpose::Wash),
            ("bench", Purpose::Dusting),
            ("Tin", Purpose::Dusting),
            ("apple filling", Purpose::Filling),
            ("custard", Purpose::Filling),
            ("streusel topping", Purpose::Topping),
            ("cream", Purpose::Mixed),
        ] {
            assert_eq!(of_section(name), purpose, "{name}");
        }
    }

    #[test]
    fn notes_and_words_say_it_too() {
        assert_eq!(of_note(Some("for dusting")), Purpose::Dusting);
        assert_eq!(of_note(Some("to glaze")), Purpose::Wash);
        assert_eq!(of_note(Some("cold")), Purpose::Mixed);
        assert_eq!(of_note(Some("icing, sifted")), Purpose::Mixed);
        assert_eq!(of_free("for the bench"), Purpose::Dusting);
        assert_eq!(of_free("for rolling"), Purpose::Dusting);
        assert_eq!(of_free("as needed"), Purpose::Mixed);
    }
}
