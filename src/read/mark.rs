//! Marks of texts: short, and another one for another text.

use sha2::{Digest, Sha256};

use crate::encode::hex;

/// So many letters make a mistake as rare as one in sixteen million.
const LETTERS: usize = 6;

/// The mark of what is said in these texts, however its lines are broken.
pub(super) fn mark(texts: &[&str]) -> String {
    let mut hash = Sha256::new();
    for text in texts {
        for word in text.split_whitespace() {
            hash.update(word.as_bytes());
            hash.update(b" ");
        }
        hash.update(b"\n");
    }
    let mut mark = hex(&hash.finalize());
    mark.truncate(LETTERS);
    mark
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mark_is_of_the_words_and_not_of_their_lines() {
        assert_eq!(mark(&["Fold it\nin three."]), mark(&["Fold it  in three."]));
        assert_ne!(mark(&["Fold it in three."]), mark(&["Fold it in four."]));
        assert_ne!(mark(&["a b", ""]), mark(&["a", "b"]));
        assert_eq!(mark(&[]).len(), LETTERS);
    }
}
