//! Temperatures, and differences between them: two kinds that never mix by accident.

use std::ops::{Add, Mul, Sub};

use super::{Exact, exact, float};

/// A temperature, kept in degrees Celsius.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Temperature(Exact);

/// A difference between two temperatures, kept in Celsius degrees. A friction factor is
/// one: 9 Fahrenheit degrees are 5 Celsius degrees, with no 32 in it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct TemperatureStep(Exact);

/// How much cooler a fan oven is set, in Celsius degrees: "about 20 °C below the stated
/// temperature" (New South Wales Government, healthy kids conversion chart).
const FAN: i64 = 20;

impl Temperature {
    /// The mark to which an oven is set for it: the nearest 5 °C.
    #[must_use]
    pub fn dial(&self) -> Self {
        Self(super::round_to(&self.0, &exact(5, 1)))
    }

    /// A temperature in °C.
    pub fn celsius(degrees: Exact) -> Self {
        Self(degrees)
    }

    /// A temperature in °F: °C = (°F − 32) × 5/9, exactly (NIST SP 811 B.8).
    pub fn fahrenheit(degrees: &Exact) -> Self {
        Self((degrees - exact(32, 1)) * exact(5, 9))
    }

    /// The temperature in °C.
    pub fn in_celsius(&self) -> &Exact {
        &self.0
    }

    /// The temperature in °F.
    pub fn in_fahrenheit(&self) -> Exact {
        &self.0 * exact(9, 5) + exact(32, 1)
    }

    /// The setting with a fan that bakes like this one without.
    #[must_use]
    pub fn with_fan(&self) -> Self {
        Self(&self.0 - exact(FAN, 1))
    }

    /// The setting without a fan that bakes like this one with it.
    #[must_use]
    pub fn without_fan(&self) -> Self {
        Self(&self.0 + exact(FAN, 1))
    }

    /// The temperature in °C for showing.
    pub fn float(&self) -> f64 {
        float(&self.0)
    }
}

impl TemperatureStep {
    /// A difference in Celsius degrees.
    pub fn celsius(degrees: Exact) -> Self {
        Self(degrees)
    }

    /// A difference in Fahrenheit degrees.
    pub fn fahrenheit(degrees: &Exact) -> Self {
        Self(degrees * exact(5, 9))
    }

    /// The difference in Celsius degrees.
    pub fn in_celsius(&self) -> &Exact {
        &self.0
    }
}

impl Sub for &Temperature {
    type Output = TemperatureStep;
    fn sub(self, other: Self) -> TemperatureStep {
        TemperatureStep(&self.0 - &other.0)
    }
}

impl Add<&TemperatureStep> for &Temperature {
    type Output = Temperature;
    fn add(self, step: &TemperatureStep) -> Temperature {
        Temperature(&self.0 + &step.0)
    }
}

impl Add for TemperatureStep {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Mul<&Exact> for &TemperatureStep {
    type Output = TemperatureStep;
    fn mul(self, factor: &Exact) -> TemperatureStep {
        TemperatureStep(&self.0 * factor)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// °C = (°F − 32) × 5/9: NIST SP 811 B.8; the pairs by arithmetic.
    #[test]
    fn both_scales_agree_exactly() {
        let pairs = [
            (32, exact(0, 1)),
            (41, exact(5, 1)),
            (70, exact(190, 9)),
            (135, exact(515, 9)),
            (165, exact(665, 9)),
            (212, exact(100, 1)),
            (375, exact(1715, 9)),
            (-40, exact(-40, 1)),
        ];
        for (fahrenheit, celsius) in pairs {
            let degrees = Temperature::fahrenheit(&exact(fahrenheit, 1));
            assert_eq!(*degrees.in_celsius(), celsius);
            assert_eq!(degrees.in_fahrenheit(), exact(fahrenheit, 1));
        }
    }

    /// A difference has no 32 in it: 9 Fahrenheit degrees are 5 Celsius degrees.
    #[test]
    fn differences_are_another_kind() {
        let step = TemperatureStep::fahrenheit(&exact(9, 1));
        assert_eq!(*step.in_celsius(), exact(5, 1));
        let fridge = Temperature::celsius(exact(4, 1));
        assert_eq!((&fridge + &step).in_celsius(), &exact(9, 1));
    }

    /// "About 20 °C below": New South Wales Government conversion chart.
    #[test]
    fn a_fan_is_set_cooler() {
        let oven = Temperature::celsius(exact(190, 1));
        assert_eq!(oven.with_fan(), Temperature::celsius(exact(170, 1)));
        assert_eq!(oven.with_fan().without_fan(), oven);
    }
}
