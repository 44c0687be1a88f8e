//! Ready by: when each step begins so that all is done at a wanted time of day.

/// Minutes of a day.
const DAY: i64 = 24 * 60;

/// When one step is worked on, counted in minutes from the first step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Worked {
    /// From here.
    pub start: u64,
    /// For so long somebody stands there; 0 where nobody has to.
    pub hands: u64,
}

/// When each step begins, in minutes from the midnight that begins the day on which all is
/// `ready` (a minute of that day); before it, less than 0. `None` where somebody would have
/// to work outside the hours `awake`, from and to in minutes of a day.
pub fn ready(
    steps: &[Worked],
    elapsed: u64,
    ready: u64,
    awake: [u64; 2],
) -> Option<Vec<i64>> {
    let minutes = |value: u64| i64::try_from(value).ok();
    let begin = minutes(ready)? - minutes(elapsed)?;
    let [from, to] = [minutes(awake[0])?, minutes(awake[1])?];
    let mut starts = Vec::new();
    for step in steps {
        let (start, hands) = (begin + minutes(step.start)?, minutes(step.hands)?);
        let of_day = start.rem_euclid(DAY);
        if hands > 0 && (of_day < from || of_day + hands > to) {
            return None;
        }
        starts.push(start);
    }
    Some(starts)
}

#[cfg(test)]
mod tests {
    use super::*;

    const AWAKE: [u64; 2] = [7 * 60, 22 * 60 + 30];

    fn worked(start: u64, hands: u64) -> Worked {
        Worked { start, hands }
    }

    #[test]
    fn counted_back_from_the_end() {
        let steps = [worked(0, 10), worked(10, 0), worked(70, 20)];
        assert_eq!(ready(&steps, 90, 12 * 60, AWAKE), Some(vec![630, 640, 700]));
    }

    #[test]
    fn a_night_may_lie_between_but_nobody_works_in_it() {
        let steps = [worked(0, 10), worked(10, 0), worked(12 * 60, 20)];
        let elapsed = 12 * 60 + 20;
        assert_eq!(ready(&steps, elapsed, 8 * 60, AWAKE), Some(vec![-260, -250, 460]));
        assert_eq!(ready(&steps, elapsed, 18 * 60, AWAKE), None);
    }
}
