//! Faults in English words.

use std::sync::OnceLock;

use tourier::fault::{Fault, Told};
use tourier::read::words_in;
use tourier::theme::Theme;
use tourier::words::Words;

/// What a fault says.
pub(crate) fn told(fault: &Fault) -> Told {
    static WORDS: OnceLock<Words> = OnceLock::new();
    let words =
        WORDS.get_or_init(|| words_in(&Theme::built_in(), "en").expect("the words"));
    fault.told(words)
}
