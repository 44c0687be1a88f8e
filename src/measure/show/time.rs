//! Times in words.

/// Whole minutes: `45 min`, `1 h`, `1 h 25 min`, `16 h`.
pub fn minutes(minutes: u64) -> String {
    match (minutes / 60, minutes % 60) {
        (0, rest) => format!("{rest} min"),
        (hours, 0) => format!("{hours} h"),
        (hours, rest) => format!("{hours} h {rest} min"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hours_and_minutes() {
        assert_eq!(minutes(45), "45 min");
        assert_eq!(minutes(60), "1 h");
        assert_eq!(minutes(85), "1 h 25 min");
    }
}
