//! Where water boils at the height of the classroom.
//!
//! Printed points: Colorado State University Extension, *High Altitude Food Preparation*,
//! Table 1; between them along straight lines, which stays within 1 °F of the physics.
//! Above 10,000 ft the last line is carried on, to 5000 m at most.

use crate::measure::{Exact, Length, Temperature, exact};

/// Height in feet, and where water boils there in °F.
const BOILS: [(i64, i64); 5] =
    [(0, 212), (2000, 208), (5000, 203), (7500, 198), (10_000, 193)];

/// The temperature at which water boils so high above the sea. Below the sea as on it.
pub fn boiling(altitude: &Length) -> Temperature {
    let feet = altitude.in_inches() / exact(12, 1);
    let lines = BOILS.windows(2);
    let line = lines.clone().find(|line| feet <= exact(line[1].0, 1));
    let Some([from, to]) = line.or_else(|| lines.last()) else {
        return Temperature::fahrenheit(&exact(212, 1));
    };
    let slope = exact(to.1 - from.1, to.0 - from.0);
    let up: Exact = feet.max(exact(0, 1)) - exact(from.0, 1);
    Temperature::fahrenheit(&(exact(from.1, 1) + up * slope))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(feet: i64) -> Exact {
        boiling(&Length::inches(&exact(12 * feet, 1))).in_fahrenheit()
    }

    /// Colorado State University Extension, Table 1; "just under 1 °F lower per 500 ft" and
    /// 198 °F at 7,500 ft: University of Wyoming Extension, *Baking at High Altitudes*.
    #[test]
    fn printed_points() {
        let points =
            [(-100, 212), (0, 212), (2000, 208), (5000, 203), (7500, 198), (10_000, 193)];
        for (feet, fahrenheit) in points {
            assert_eq!(at(feet), exact(fahrenheit, 1), "{feet} ft");
        }
    }

    /// ICAO standard atmosphere and Antoine's equation for water, worked out beforehand:
    /// within 1 °F.
    #[test]
    fn stays_near_the_physics() {
        let physics =
            [(1000, 2102), (3000, 2065), (5280, 2024), (7000, 1992), (8000, 1974)];
        for (feet, tenths) in physics {
            let off = at(feet) - exact(tenths, 10);
            assert!(off <= exact(1, 1) && off >= exact(-1, 1), "{feet} ft");
        }
    }
}
