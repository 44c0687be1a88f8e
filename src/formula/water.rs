//! The water that brings a dough to its temperature.
//!
//! Water = desired × n − (flour + room + friction [+ preferment]), n = 3, or 4 with a
//! preferment: the trade's rule, printed for three terms without friction in an early
//! 20th-century *Treatise on Baking* ("The Temperature of the Bread Dough").

use crate::measure::{Exact, Mass, Temperature, TemperatureStep, exact};

/// The temperatures that the water has to make up for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WaterPlan {
    /// The dough as it should be.
    pub desired: Temperature,
    /// The flour.
    pub flour: Temperature,
    /// The air in the room.
    pub room: Temperature,
    /// The preferment, if there is one.
    pub preferment: Option<Temperature>,
    /// What mixing adds.
    pub friction: TemperatureStep,
}

/// The temperature of the water. It may come out colder than water can be: then ice makes
/// up for it.
pub fn water(plan: &WaterPlan) -> Temperature {
    let n = if plan.preferment.is_some() { 4 } else { 3 };
    let preferment =
        plan.preferment.as_ref().map_or_else(|| exact(0, 1), |t| t.in_celsius().clone());
    let others = plan.flour.in_celsius() + plan.room.in_celsius() + preferment;
    let degrees =
        plan.desired.in_celsius() * exact(n, 1) - others - plan.friction.in_celsius();
    Temperature::celsius(degrees)
}

/// The temperature of the water that is still to be found, so that together with `given`,
/// water whose temperature is fixed (what the yeast is dissolved in), it comes to `wanted`:
/// (wanted × all − Σ given × its temperature) / rest, the heat balance of one liquid. `None`
/// where nothing is left to be found.
pub fn rest_of_water(
    rest: &Mass,
    given: &[(Mass, Temperature)],
    wanted: &Temperature,
) -> Option<Temperature> {
    let all = given.iter().map(|(mass, _)| mass.clone()).sum::<Mass>() + rest.clone();
    let heat: Exact =
        given.iter().map(|(mass, at)| mass.amount() * at.in_celsius()).sum();
    let needed = wanted.in_celsius() * all.amount() - heat;
    rest.is_positive().then(|| Temperature::celsius(needed / rest.amount()))
}

/// The ice that replaces part of `water` from the tap so that it acts as water of
/// `wanted`: ice = water × (tap − wanted) / (tap + 80) in °C, where 80 is the heat of
/// fusion of ice in calories a gram (144 BTU a pound in the trade's °F form). Nothing
/// where the wanted water is no colder than the tap.
pub fn ice(water: &Mass, tap: &Temperature, wanted: &Temperature) -> Mass {
    let drop = tap.in_celsius() - wanted.in_celsius();
    if drop <= exact(0, 1) {
        return Mass::zero();
    }
    let share: Exact = drop / (tap.in_celsius() + exact(80, 1));
    water * &share.min(exact(1, 1))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fahrenheit(degrees: i64) -> Temperature {
        Temperature::fahrenheit(&exact(degrees, 1))
    }

    fn step(degrees: i64) -> TemperatureStep {
        TemperatureStep::fahrenheit(&exact(degrees, 1))
    }

    fn plan(
        desired: i64,
        flour: i64,
        room: i64,
        preferment: Option<i64>,
        friction: i64,
    ) -> WaterPlan {
        WaterPlan {
            desired: fahrenheit(desired),
            flour: fahrenheit(flour),
            room: fahrenheit(room),
            preferment: preferment.map(fahrenheit),
            friction: step(friction),
        }
    }

    #[test]
    fn published_examples() {
        let cases = [
            // A Treatise on Baking, "The Temperature of the Bread Dough", no friction.
            (plan(78, 67, 85, None, 0), 82),
            (plan(78, 62, 72, None, 0), 100),
            // Pizza Today, June 2018, p. 29.
            (plan(80, 65, 75, None, 35), 65),
            // Common practice, no source.
            (plan(75, 65, 65, None, 8), 87),
            // The rule with four terms: common practice, no source.
            (plan(75, 68, 72, Some(70), 24), 66),
            // Friction found by mixing once: 3 × 78 − (60 + 70 + 72) = 32. Rule: Pizza Today,
            // June 2018, p. 29; numbers by arithmetic.
            (plan(78, 70, 72, None, 32), 60),
        ];
        for (plan, expected) in cases {
            assert_eq!(water(&plan).in_fahrenheit(), exact(expected, 1));
        }
    }

    /// 12 oz of 82 at 110 °F: 3 × 78 − (72 + 72 + 20) = 70 °F for all of it, so
    /// (82 × 70 − 12 × 110) / 70 = 63.14 °F for the rest. By arithmetic.
    #[test]
    fn water_with_its_own_temperature_is_taken_into_account() {
        let ounces = |n: i64| Mass::ounces(&exact(n, 1));
        let wanted = water(&plan(78, 72, 72, None, 20));
        assert_eq!(wanted.in_fahrenheit(), exact(70, 1));
        let given = [(ounces(12), fahrenheit(110))];
        let rest = rest_of_water(&ounces(70), &given, &wanted).expect("70 oz are left");
        assert_eq!(rest.in_fahrenheit(), exact(82 * 70 - 12 * 110, 70));
        assert_eq!(rest_of_water(&Mass::zero(), &given, &wanted), None);
        assert_eq!(rest_of_water(&ounces(1), &[], &wanted), Some(wanted));
    }

    /// Heat balance with 144 BTU a pound (PMQ, Spring 2003) = 80 cal a gram; the cases are
    /// derived by arithmetic.
    #[test]
    fn ice_makes_up_for_warm_taps() {
        let kilos = |n: i64| Mass::grams(exact(n * 1000, 1));
        let celsius = |n: i64| Temperature::celsius(exact(n, 1));
        assert_eq!(ice(&kilos(40), &celsius(20), &celsius(10)), kilos(4));
        assert_eq!(ice(&kilos(10), &fahrenheit(68), &fahrenheit(50)), kilos(1));
        assert_eq!(ice(&kilos(10), &celsius(10), &celsius(20)), Mass::zero());
        let pounds = Mass::ounces(&exact(320, 1));
        let ice = ice(&pounds, &fahrenheit(70), &fahrenheit(40));
        assert_eq!(ice.in_ounces(), exact(320 * 30, 182));
        let pounds = Mass::ounces(&exact(160, 1));
        let ice = super::ice(&pounds, &fahrenheit(65), &fahrenheit(50));
        assert_eq!(ice.in_ounces(), exact(160 * 15, 177));
        assert_eq!(super::ice(&kilos(10), &celsius(20), &celsius(10)), kilos(1));
    }
}
