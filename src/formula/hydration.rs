//! Hydration: the liquid in a dough over its flour.
//!
//! Plain hydration counts water, milk and other liquids by their whole weight; true
//! hydration counts the water in them, and in dairy, eggs and butter: grams × water in
//! 100 g / 100, the water from USDA SR28 (nutrient 255). The flour's own water is counted
//! in neither, and roll-in fat is no part of the dough.

use crate::measure::{Exact, Mass, exact};
use crate::model::Purpose;
use crate::pantry::{Item, Kind};

use super::body::Body;
use super::expand::{Contents, batch};
use super::flow::Flow;
use super::weigh::{Formula, MadeOf};

/// How hydration is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Counting {
    /// Plain liquids by their whole weight.
    Liquids,
    /// The water in liquids, dairy, eggs and fats.
    Water,
}

/// The hydration of the dough in percent of its flour; `None` without flour, where flour or
/// liquid in it has no weight, and where the water in an ingredient is asked for and not
/// known.
pub fn hydration(formula: &Formula, body: &Body, counting: Counting) -> Option<Exact> {
    if !body.open(formula).is_empty() {
        return None;
    }
    let contents = in_dough(formula, body);
    let flour: Mass = contents
        .values()
        .filter(|(item, _)| item.kind == Kind::Flour)
        .map(|(_, mass)| mass.clone())
        .sum();
    let mut water = Mass::zero();
    for (item, mass) in contents.values() {
        water = water + mass * &share(item, counting)?;
    }
    // Without a liquid there is no hydration to speak of.
    water.over(&flour).filter(Exact::is_positive).map(|share| share * exact(100, 1))
}

/// What is in the dough, without any roll-in fat.
fn in_dough<'a>(formula: &Formula<'a>, body: &Body) -> Contents<'a> {
    let mut contents = Contents::new();
    gather(formula, body, &exact(1, 1), &mut contents);
    contents
}

/// The part of an ingredient that counts; `None` where it is not known.
fn share(item: &Item, counting: Counting) -> Option<Exact> {
    match (counting, item.kind) {
        (Counting::Liquids, Kind::Liquid) => Some(exact(1, 1)),
        (Counting::Liquids, _) => Some(exact(0, 1)),
        (Counting::Water, Kind::Liquid | Kind::Dairy | Kind::Egg | Kind::Fat) => {
            item.water.as_ref().map(|water| water / exact(100, 1))
        }
        (
            Counting::Water,
            Kind::Flour | Kind::Sugar | Kind::Salt | Kind::Leavener | Kind::Other,
        ) => Some(exact(0, 1)),
    }
}

/// Collects what is in the dough, included doughs without their roll-in fat and what is put
/// on them.
fn gather<'a>(
    formula: &Formula<'a>,
    body: &Body,
    factor: &Exact,
    contents: &mut Contents<'a>,
) {
    let lines = body.lines(formula).filter(|(line, _)| line.purpose != Purpose::RollIn);
    for (line, part) in lines {
        let mass = &line.mass() * &(part * factor);
        if let MadeOf::Item(item) = line.source {
            let entry =
                contents.entry(item.name.as_str()).or_insert((item, Mass::zero()));
            entry.1 = entry.1.clone() + mass;
        } else if let Some((recipe, inner)) = line.included() {
            let share = mass.over(&batch(inner, recipe));
            let share = share.unwrap_or_else(|| exact(0, 1));
            let flow = Flow::new(recipe, inner);
            let body = Body::new(recipe, inner, &flow);
            gather(inner, &body, &share, contents);
        }
    }
}

/// The ingredients of the dough whose water is not known, where true hydration needs it.
pub fn dry_unknown<'a>(formula: &Formula<'a>, body: &Body) -> Vec<&'a str> {
    let contents = in_dough(formula, body);
    let unknown = contents.values().filter(|(item, mass)| {
        mass.is_positive() && share(item, Counting::Water).is_none()
    });
    unknown.map(|(item, _)| item.name.as_str()).collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing;
    use super::*;

    fn both(formula: &str, body: &str) -> [Option<Exact>; 2] {
        let mut found = [None, None];
        testing::with_body(formula, body, |formula, recipe, _| {
            let flow = Flow::new(recipe, formula);
            let body = Body::new(recipe, formula, &flow);
            found = [Counting::Liquids, Counting::Water]
                .map(|counting| hydration(formula, &body, counting));
        });
        found
    }

    /// 500 g flour with 200 g whole milk, 250 g egg and 250 g butter: USDA SR28 gives
    /// 88.13, 76.15 and 17.94 g of water in 100 g, so (176.26 + 190.375 + 44.85) / 500.
    #[test]
    fn the_water_in_milk_eggs_and_butter() {
        let formula = "formula:\n  dough:\n    - 500 g bread flour\n    - 200 g whole milk\n    - 250 g egg\n    - 250 g butter\n";
        let found = both(formula, "");
        assert_eq!(found, [Some(exact(40, 1)), Some(exact(82_297, 1000))]);
    }

    /// Wash and roll-in fat are not in the dough; butter worked in at the mixer is.
    #[test]
    fn only_what_is_in_the_dough_counts() {
        let formula = "formula:\n  dough:\n    - 500 g bread flour\n    - 250 g water\n  enriching:\n    - 100 g butter\n    - 20 g sugar\n  roll-in:\n    - 200 g butter\n  wash:\n    - 100 g whole milk\n";
        let body = "## Mix\n~~~ticket\nuses: dough\nkit: 1 mixer\n~~~\n## Enrich\n~~~ticket\nuses: enriching\nkit: 1 mixer\n~~~\n## Wash\n~~~ticket\nuses: roll-in, wash\n~~~\n";
        let water = exact(250 * 9990 + 100 * 1794, 500 * 100);
        assert_eq!(both(formula, body), [Some(exact(50, 1)), Some(water)]);
    }
}
