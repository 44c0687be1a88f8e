//! `225 g (1 cup)` must agree with itself; what a recipe says it makes must be there.

use crate::fault::Fault;
use crate::formula::{Weighed, weigh_unit};
use crate::measure::{Mass, exact, show};
use crate::model::{Makes, Quantity};

use super::Case;

/// A stated yield may be this much more than the formula less its loss.
const YIELD_TOLERANCE: (i64, i64) = (1, 100);

/// The second amount in brackets within the ingredient's tolerance of the first.
pub(super) fn second_amounts(case: Case) -> Vec<Fault> {
    case.work.formula.lines.iter().filter_map(|line| second_amount(line, case)).collect()
}

fn second_amount(line: &Weighed, case: Case) -> Option<Fault> {
    let also = line.line.also.as_ref()?;
    let first = line.mass.as_ref()?;
    let second = match &also.value {
        Quantity::Unit(count, unit) => weigh_unit(count, *unit, line.source, case.book)?,
        Quantity::Pieces(..) | Quantity::Batches(_) => return None,
    };
    let off = second.over(first)? - exact(1, 1);
    let tolerance = exact(3, 100);
    if off <= tolerance && off >= -tolerance {
        return None;
    }
    let message = format!(
        "the amount in brackets is {}, {} % {} than the first",
        grams(&second),
        show::decimal(&(&off * exact(100, 1)).abs(), 0),
        if off > exact(0, 1) { "more" } else { "less" },
    );
    Some(Fault::caution("amounts-disagree", &also.place, message).help(format!(
        "The first counts: {}. Change one of them, or leave the second out.",
        grams(first)
    )))
}

fn grams(mass: &Mass) -> String {
    show::metric(mass, &exact(1, 100), true).words
}

/// A recipe that makes a weight must have it.
pub(super) fn yields(case: Case) -> Vec<Fault> {
    let recipe = case.work.recipe;
    let Some(makes) = &recipe.makes else { return Vec::new() };
    let Makes::Weight(stated) = &makes.value else { return Vec::new() };
    let there = &case.work.formula.total() * &(exact(1, 1) - &recipe.loss);
    let most = &there * &(exact(1, 1) + exact(YIELD_TOLERANCE.0, YIELD_TOLERANCE.1));
    if *stated <= most {
        return Vec::new();
    }
    let message = format!("the formula gives only {} after its loss", grams(&there));
    let help = format!("Write `makes: {}`, or raise the formula.", grams(&there));
    vec![Fault::error("yield-off", &makes.place, message).help(help)]
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    const BODY: &str = "## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n";

    /// USDA SR28 NDB 01145: 1 cup of butter is 227 g.
    #[test]
    fn the_bracket_is_held_against_the_weight() {
        let head = |also: &str| {
            format!("makes: 1 loaf\nformula:\n  dough:\n    - 225 g ({also}) butter\n")
        };
        assert_no_fault(&head("1 cup"), BODY, "amounts-disagree");
        assert_fault(&head("2 cups"), BODY, "amounts-disagree", "2 cups");
    }

    #[test]
    fn what_it_makes_is_there() {
        let head = |weight: &str| {
            format!(
                "makes: {weight}\nloss: 2 %\nformula:\n  dough:\n    - 1000 g bread flour\n"
            )
        };
        assert_no_fault(&head("980 g"), BODY, "yield-off");
        assert_fault(&head("1000 g"), BODY, "yield-off", "1000 g");
    }
}
