//! The openings of a sheeter, pass by pass, from one thickness to another.
//!
//! No pass takes more than a third of what lies there, the last no more than a quarter where
//! the dial allows, so that the layers are not torn and the sheet comes out as it is set. Common
//! practice, no source.

use num_traits::ToPrimitive;

use crate::measure::{Exact, Length, exact};

/// What lies before a pass over what lies after it, at most; and before the last one.
const BEFORE: [(i64, i64); 2] = [(3, 2), (4, 3)];

/// A dial's steps, in tenths of a millimetre, up to so many of them.
const DIAL: [(i64, i64); 3] = [(1, 30), (5, 100), (10, i64::MAX)];

/// More passes than this are none of a sheeter's.
const MOST: usize = 24;

/// The openings in order; the last is what it is rolled to.
pub fn openings(from: &Length, to: &Length) -> Vec<Length> {
    let (from, to) = (tenths(from), tenths(to));
    let mut openings = vec![to.clone()];
    let last = before(&to, BEFORE[1]).or_else(|| before(&to, BEFORE[0]));
    let mut next = last;
    while let Some(opening) = next.filter(|opening| *opening < from) {
        if openings.len() == MOST {
            break;
        }
        openings.push(opening.clone());
        next = before(&opening, BEFORE[0]);
    }
    openings.reverse();
    openings.into_iter().map(|it| Length::centimetres(it / exact(100, 1))).collect()
}

fn tenths(length: &Length) -> Exact {
    length.amount() * exact(100, 1)
}

/// The largest setting of the dial from which one pass comes to an opening; `None` where none is
/// larger than it.
fn before(opening: &Exact, (over, under): (i64, i64)) -> Option<Exact> {
    let most = opening * exact(over, under);
    let step = DIAL.iter().find(|(_, up_to)| most <= exact(*up_to, 1))?.0;
    let steps = (&most / exact(step, 1)).trunc().to_integer().to_i64()?;
    Some(exact(steps * step, 1)).filter(|setting| setting > opening)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(tenths: i64) -> Length {
        Length::centimetres(exact(tenths, 100))
    }

    /// From 30 to 4 mm by hand, backwards: 4 × 4/3 = 5.3, so 5; × 3/2 = 7.5; 11.25, so 11; 16.5,
    /// so 16; 24; 36 is more than 30.
    #[test]
    fn passes_by_hand() {
        let tenths = [240, 160, 110, 75, 50, 40];
        assert_eq!(openings(&mm(300), &mm(40)), tenths.map(mm));
        assert_eq!(openings(&mm(60), &mm(50)), [mm(50)]);
        assert_eq!(openings(&mm(50), &mm(60)), [mm(60)], "nothing to roll");
    }

    #[test]
    fn no_pass_takes_more_than_a_third() {
        for from in (10..600).step_by(7) {
            for to in (5..from).step_by(3) {
                let all = openings(&mm(from), &mm(to));
                assert_eq!(all.last(), Some(&mm(to)));
                let mut before = mm(from);
                for opening in all {
                    let left = opening.over(&before).expect("it is thick");
                    assert!(left >= exact(2, 3), "{from} to {to}");
                    assert!(opening < before, "{from} to {to}");
                    before = opening;
                }
            }
        }
    }
}
