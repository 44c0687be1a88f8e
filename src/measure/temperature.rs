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

impl Temperature {
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
