//! What a sentence does, and where a text is parted into steps by it.

use super::super::phrase;
use super::super::sentence::sentences;
use super::super::times;

/// What a sentence has to do with time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Doing {
    Bake,
    Wait(Option<&'static str>),
    Hands,
}

/// What a sentence does with its time, by its words.
pub(super) fn doing(sentence: &str) -> Option<Doing> {
    let words: Vec<String> =
        phrase::words(sentence).iter().map(|word| word.text.to_lowercase()).collect();
    let has = |wanted: &[&str]| words.iter().any(|word| wanted.contains(&word.as_str()));
    let begins = |stems: &[&str]| {
        words.iter().any(|word| stems.iter().any(|stem| word.starts_with(stem)))
    };
    if has(&["bake", "bakes", "baked", "roast"])
        || (has(&["oven"]) && !begins(&["preheat", "heat"]))
    {
        return Some(Doing::Bake);
    }
    if begins(&["refrigerat", "chill", "fridge"]) {
        return Some(Doing::Wait(Some("fridge")));
    }
    if begins(&["freez"]) {
        return Some(Doing::Wait(Some("freezer")));
    }
    let waiting = [
        "rest",
        "rise",
        "rises",
        "rising",
        "risen",
        "prove",
        "proof",
        "stand",
        "cool",
        "soak",
        "allow",
        "remain",
        "ferment",
        "leave",
        "set",
        "overnight",
        "wait",
        "double",
        "light",
    ];
    if has(&waiting) {
        return Some(Doing::Wait(None));
    }
    let working = [
        "knead", "beat", "mix", "stir", "whisk", "cream", "boil", "simmer", "cook",
        "fry", "work", "whip", "roll", "steam",
    ];
    begins(&working).then_some(Doing::Hands)
}

/// The text in pieces that each end with the time that is waited for.
pub(super) fn units(text: &str) -> Vec<String> {
    let mut units: Vec<(String, bool)> = Vec::new();
    for sentence in sentences(text) {
        let waits = !times::times(sentence).is_empty()
            && matches!(doing(sentence), Some(Doing::Bake | Doing::Wait(_)));
        match units.last_mut() {
            Some((unit, ended)) if !*ended || !(waits || is_work(sentence)) => {
                unit.push(' ');
                unit.push_str(sentence);
                *ended |= waits;
            }
            _ => units.push((sentence.to_owned(), waits)),
        }
    }
    units.into_iter().map(|(unit, _)| unit).collect()
}

/// Whether a sentence begins with work of its own rather than going on about what came before.
fn is_work(sentence: &str) -> bool {
    let first = sentence.split_whitespace().next().unwrap_or("").to_lowercase();
    !["this", "it", "the", "they", "these", "if", "when", "be", "do", "serve"]
        .contains(&first.as_str())
}
