//! Times in words.

/// Whole minutes: `45 min`, `1 h`, `1 h 25 min`, `16 h`.
pub fn minutes(minutes: u64) -> String {
    match (minutes / 60, minutes % 60) {
        (0, rest) => format!("{rest} min"),
        (hours, 0) => format!("{hours} h"),
        (hours, rest) => format!("{hours} h {rest} min"),
    }
}

/// A minute of the day by the clock: `07:05`, `18:00`.
pub fn clock(minute: u64) -> String {
    format!("{:02}:{:02}", minute / 60 % 24, minute % 60)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hours_and_minutes() {
        assert_eq!(minutes(45), "45 min");
        assert_eq!(minutes(60), "1 h");
        assert_eq!(minutes(85), "1 h 25 min");
        assert_eq!((clock(425), clock(18 * 60)), ("07:05".into(), "18:00".into()));
    }
}
