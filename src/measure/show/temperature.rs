//! Temperatures: ovens to 5 °C and to 25 °F where that is near enough, else 5 °F; doughs
//! and rooms to the degree.

use crate::measure::{Exact, Label, Temperature, exact, round_to};

use super::{Notation, Sign, number};

/// An oven: to 5 °C; to 25 °F where that is within 5 °F of the exact figure, else to 5 °F.
pub fn oven(oven: &Temperature, notation: &dyn Notation) -> Label {
    let exact_f = oven.in_fahrenheit();
    let dial = round_to(&exact_f, &exact(25, 1));
    let fahrenheit = if (&dial - &exact_f).abs() <= exact(5, 1) {
        dial
    } else {
        round_to(&exact_f, &exact(5, 1))
    };
    degrees(&round_to(oven.in_celsius(), &exact(5, 1)), &fahrenheit, notation)
}

/// Any other temperature: to the degree in both scales.
pub fn temperature(temperature: &Temperature, notation: &dyn Notation) -> Label {
    degrees(temperature.in_celsius(), &temperature.in_fahrenheit(), notation)
}

/// Whole degrees in both scales, also of a difference.
pub fn degrees(celsius: &Exact, fahrenheit: &Exact, notation: &dyn Notation) -> Label {
    Label::new(
        notation.of(&number(celsius, 0, notation), Sign::Celsius),
        notation.of(&number(fahrenheit, 0, notation), Sign::Fahrenheit),
    )
}

#[cfg(test)]
mod tests {
    use super::super::International;
    use super::*;

    #[test]
    fn ovens_have_round_numbers() {
        let shown = |c: i64| oven(&Temperature::celsius(exact(c, 1)), &International);
        assert_eq!(shown(190), Label::new("190 °C", "375 °F"));
        assert_eq!(shown(200), Label::new("200 °C", "390 °F"));
        assert_eq!(shown(180), Label::new("180 °C", "355 °F"));
        assert_eq!(shown(220), Label::new("220 °C", "425 °F"));
    }
}
