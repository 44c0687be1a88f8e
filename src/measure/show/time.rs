//! Times in words.

use super::{Notation, Sign};

/// Whole minutes: `45 min`, `1 h`, `1 h 25 min`, `16 h`.
pub fn minutes(minutes: u64, notation: &dyn Notation) -> String {
    let of = |count: u64, sign| notation.of(&count.to_string(), sign);
    match (minutes / 60, minutes % 60) {
        (0, rest) => of(rest, Sign::Minute),
        (hours, 0) => of(hours, Sign::Hour),
        (hours, rest) => {
            notation.together(&of(hours, Sign::Hour), &of(rest, Sign::Minute))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::International;
    use super::*;

    #[test]
    fn hours_and_minutes() {
        assert_eq!(minutes(45, &International), "45 min");
        assert_eq!(minutes(60, &International), "1 h");
        assert_eq!(minutes(85, &International), "1 h 25 min");
    }
}
