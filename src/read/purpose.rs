//! What a line of a formula is for: the trade's words in a section's name, in a note and in
//! what stands in place of a weight.

use crate::model::{AmountLine, Purpose};

use super::lexicon::Lexicon;

/// The purpose that a section's name says.
fn of_section(name: &str, words: &Lexicon) -> Purpose {
    let name = name.trim().to_lowercase();
    let named = words.purpose_of_section(&name).or_else(|| words.purpose_in(&name));
    named.unwrap_or_default()
}

/// The purpose that a note says: `for dusting`, `to glaze`; what is mixed where it says none.
pub(super) fn of_note(note: Option<&str>, words: &Lexicon) -> Purpose {
    let note = note.map(str::to_lowercase).unwrap_or_default();
    let said = words.says_what_for(&note);
    said.then(|| words.purpose_in(&note)).flatten().unwrap_or_default()
}

/// The purpose of a line without weight: what is for something is put on, as the trade
/// writes `for dusting`; what is `to taste` or `as needed` is mixed.
pub(super) fn of_free(text: &str, words: &Lexicon) -> Purpose {
    let text = text.trim().to_lowercase();
    let put_on = if words.is_put_on(&text) { Purpose::Dusting } else { Purpose::Mixed };
    words.purpose_in(&text).unwrap_or(put_on)
}

/// The line in its section: its own words say it before the section's name does.
pub(crate) fn within(section: &str, line: AmountLine, words: &Lexicon) -> AmountLine {
    let purpose = match line.purpose {
        Purpose::Mixed => of_section(section, words),
        own @ (Purpose::RollIn
        | Purpose::Wash
        | Purpose::Dusting
        | Purpose::Filling
        | Purpose::Topping) => own,
    };
    AmountLine { purpose, ..line }
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
            assert_eq!(of_section(name, Lexicon::english()), purpose, "{name}");
        }
    }

    #[test]
    fn notes_and_words_say_it_too() {
        assert_eq!(of_note(Some("for dusting"), Lexicon::english()), Purpose::Dusting);
        assert_eq!(of_note(Some("to glaze"), Lexicon::english()), Purpose::Wash);
        assert_eq!(of_note(Some("cold"), Lexicon::english()), Purpose::Mixed);
        assert_eq!(of_note(Some("icing, sifted"), Lexicon::english()), Purpose::Mixed);
        assert_eq!(of_free("for the bench", Lexicon::english()), Purpose::Dusting);
        assert_eq!(of_free("for rolling", Lexicon::english()), Purpose::Dusting);
        assert_eq!(of_free("as needed", Lexicon::english()), Purpose::Mixed);
    }
}
