//! Shares of the flour: salt, yeast, other leaveners, sugar, and the water of yeast doughs.

use crate::fault::Fault;
use crate::formula::{Counting, MadeOf, Weighed, hydration, yeast_as_fresh};
use crate::measure::{Exact, exact};
use crate::pantry::Kind;
use crate::said;
use crate::statement::Amount;

use super::Case;

/// The most of each, in percent of the flour. Salt is 1.8 to 2.2, sourdough and rye up to 3;
/// yeast, counted as fresh, 0.3 to 9 in rich doughs; baking powder 3 to 5, scones 8. Common practice, no source.
const SALT: i64 = 5;
const YEAST: i64 = 16;
const LEAVENER: i64 = 15;
/// Where less than this part of what is mixed is flour (puddings of roots and fruit, batters with
/// meal), salt is held against so much. Common practice, no source. Leaveners lift the flour
/// that there is.
const LEAST_FLOUR: (i64, i64) = (1, 3);
/// True water of a yeast dough over its flour, in percent: stiff, rich doughs have 40,
/// ciabatta 85, batters for yeasted pancakes 140. Common practice, no source.
const WATER: [i64; 2] = [33, 150];

/// What is far from its usual share of the flour.
pub(in super::super) fn shares(case: Case) -> Vec<Fault> {
    let mut faults = most(case);
    faults.extend(water(case));
    faults
}

/// Lines of the dough that are too much of the flour.
fn most(case: Case) -> Vec<Fault> {
    let formula = &case.work.formula;
    let lines = formula.lines.iter().zip(&case.work.percentages.lines);
    let flour = &case.work.percentages.flour;
    let least = &case.work.body.mass(formula) * &exact(LEAST_FLOUR.0, LEAST_FLOUR.1);
    let lean = flour.over(&least).map_or_else(|| exact(1, 1), |it| it.min(exact(1, 1)));
    let faults = lines.filter_map(|(line, percent)| {
        let (most, counts) = limit(line)?;
        let percent = percent.as_ref()?;
        let counted = percent * counts;
        let counted = if is_salt(line) { &counted * &lean } else { counted };
        (counted > exact(most, 1)).then(|| {
            let message =
                said!("unlikely-share", percent = Amount::Number(percent.clone(), 0));
            Fault::caution("unlikely-share", &line.line.place, message)
                .help(said!("unlikely-share-help"))
        })
    });
    faults.collect()
}

fn is_salt(line: &Weighed) -> bool {
    matches!(line.source, MadeOf::Item(item) if item.kind == Kind::Salt)
}

/// The most that is usual of an ingredient, in percent of the flour, and how often it counts.
fn limit(line: &Weighed) -> Option<(i64, Exact)> {
    let MadeOf::Item(item) = line.source else { return None };
    match item.kind {
        Kind::Salt => Some((SALT, exact(1, 1))),
        Kind::Leavener => Some(match yeast_as_fresh(&item.name) {
            Some(fresh) => (YEAST, fresh),
            None => (LEAVENER, exact(1, 1)),
        }),
        Kind::Flour
        | Kind::Liquid
        | Kind::Dairy
        | Kind::Fat
        | Kind::Egg
        | Kind::Sugar
        | Kind::Other => None,
    }
}

/// The lines of yeast.
pub(super) fn has_yeast(case: Case) -> bool {
    let yeast = |line: &Weighed| match line.source {
        MadeOf::Item(item) => yeast_as_fresh(&item.name).is_some(),
        MadeOf::Recipe(_) => false,
    };
    case.work.formula.lines.iter().any(yeast)
}

/// A yeast dough that is a powder or a soup.
fn water(case: Case) -> Option<Fault> {
    let formula = &case.work.formula;
    let own = formula.lines.iter().all(|line| matches!(line.source, MadeOf::Item(_)));
    if !own || !has_yeast(case) {
        return None;
    }
    let water = hydration(formula, &case.work.body, Counting::Water)?;
    if water >= exact(WATER[0], 1) && water <= exact(WATER[1], 1) {
        return None;
    }
    let line = formula
        .lines
        .iter()
        .find(|line| line.is(Kind::Liquid))
        .or(formula.lines.first())?;
    let percent = Amount::Number(water, 0);
    let message = said!("unlikely-water", percent);
    Some(
        Fault::caution("unlikely-share", &line.line.place, message)
            .help(said!("unlikely-water-help")),
    )
}

#[cfg(test)]
mod tests {
    use super::super::super::testing::{assert_fault, assert_no_fault};

    const BODY: &str = "## Mix\n~~~ticket\nuses: dough\nhands: 5 min\n~~~\n";

    fn head(water: &str, salt: &str, yeast: &str) -> String {
        format!(
            "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - {water}\n    - {salt}\n    - {yeast}\n"
        )
    }

    #[test]
    fn tenfold_slips_are_found() {
        let good = ["300 g water", "10 g fine salt", "7 g instant yeast"];
        for (at, slip) in [
            (0, "100 g water"),
            (0, "1000 g water"),
            (1, "100 g fine salt"),
            (2, "70 g instant yeast"),
            (2, "200 g fresh yeast"),
            (2, "80 g active dry yeast"),
        ] {
            let mut lines = good;
            lines[at] = slip;
            assert_fault(
                &head(lines[0], lines[1], lines[2]),
                BODY,
                "unlikely-share",
                slip,
            );
        }
        for (at, fine) in [
            (0, "210 g water"),
            (0, "450 g water"),
            (1, "15 g fine salt"),
            (2, "45 g fresh yeast"),
        ] {
            let mut lines = good;
            lines[at] = fine;
            assert_no_fault(&head(lines[0], lines[1], lines[2]), BODY, "unlikely-share");
        }
    }

    /// A war-time pudding of roots (Ministry of Food leaflet) has a spoon of salt to four ounces of
    /// flour in two pounds; ten times the salt is a slip there too.
    #[test]
    fn little_flour_in_much_else_is_no_measure() {
        let head = |salt: &str| {
            format!(
                "makes: 1 pudding\nformula:\n  dough:\n    - 227 g potato, grated\n    - 170 g carrot, grated\n    - 312 g raisins\n    - 113 g plain flour\n    - 85 g sugar\n    - 85 g lard\n    - {salt} fine salt\n"
            )
        };
        assert_no_fault(&head("6 g"), BODY, "unlikely-share");
        assert_fault(&head("60 g"), BODY, "unlikely-share", "60 g fine salt");
    }

    /// Brioche has little water of its own: eggs and butter bring it.
    #[test]
    fn eggs_are_water_too() {
        let head = "makes: 1 loaf\nformula:\n  dough:\n    - 500 g bread flour\n    - 30 g whole milk\n    - 300 g egg\n    - 250 g butter\n    - 10 g fine salt\n    - 7 g instant yeast\n";
        assert_no_fault(head, BODY, "unlikely-share");
    }
}
