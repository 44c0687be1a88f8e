//! What an instructor must know before anyone eats: allergens that are not known, and
//! water that cannot be as cold as it is asked to be.

use crate::fault::{Fault, Place};
use crate::formula::{Counting, Formula, allergens as sum, dry_unknown, expand};
use crate::measure::exact;
use crate::pantry::yaml_key;
use crate::said;
use crate::statement::Lines;

use super::Case;

/// Ingredients whose allergens are not known.
pub(super) fn allergens(case: Case) -> Vec<Fault> {
    let work = case.work;
    let unknown = sum(&expand(&work.formula, &exact(1, 1))).unknown;
    unknown
        .iter()
        .map(|name| {
            let line = work.formula.lines.iter().find(|line| line.known_as() == name);
            let place =
                line.map_or(&work.recipe.title.place, |line| &line.line.ingredient.place);
            let message = said!("allergens-unknown", name);
            let entry = yaml_key(name) + ":\n  allergens:";
            Fault::caution("allergens-unknown", place, message)
                .help(said!("allergens-unknown-help", entry = Lines(&entry)))
        })
        .collect()
}

/// What the words of a line name beside its ingredient, where that brings an allergen which
/// nothing else in the recipe has: it counts, and its weight is nowhere.
pub(super) fn named_beside(case: Case) -> Vec<Fault> {
    let formula = &case.work.formula;
    let of = |formula: &Formula| sum(&expand(formula, &exact(1, 1)));
    let all = of(formula);
    let mut faults = Vec::new();
    for line in &formula.lines {
        for item in &line.named {
            let mut without = formula.clone();
            for line in &mut without.lines {
                line.named.retain(|named| named.name != item.name);
            }
            if of(&without).lacks(&all) {
                faults.push(beside(&item.name, &line.line.place));
            }
        }
    }
    faults
}

fn beside(name: &str, place: &Place) -> Fault {
    let message = said!("named-beside", name);
    Fault::caution("named-beside", place, message).help(said!("named-beside-help", name))
}

/// A dough that would need water below freezing.
pub(super) fn cold_water(case: Case) -> Vec<Fault> {
    let Some(desired) = &case.work.recipe.dough_temperature else { return Vec::new() };
    let Some(course) = &case.book.content.course else { return Vec::new() };
    let Some(wanted) = crate::work::wanted_water(case.work, &course.room) else {
        return Vec::new();
    };
    if *wanted.in_celsius() >= exact(0, 1) {
        return Vec::new();
    }
    let message = said!("water-too-cold");
    vec![
        Fault::caution("water-too-cold", &desired.place, message)
            .help(said!("water-too-cold-help")),
    ]
}

/// True hydration with an ingredient whose water is not known.
pub(super) fn unknown_water(case: Case) -> Vec<Fault> {
    let work = case.work;
    if work.counting != Counting::Water || work.hydration.is_some() {
        return Vec::new();
    }
    let unknown = dry_unknown(&work.formula, &work.body);
    let lines = work.formula.lines.iter();
    let lines = lines.filter(|line| unknown.contains(&line.known_as()));
    lines
        .map(|line| {
            let message = said!("water-unknown", name = line.title());
            Fault::caution("water-unknown", &line.line.ingredient.place, message)
                .help(said!("water-unknown-help"))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::testing::{assert_fault, assert_no_fault};

    #[test]
    fn what_a_note_names_is_pointed_out() {
        let head = |line: &str| {
            format!(
                "makes: 1 cake\nformula:\n  dough:\n    - 500 g bread flour\n    - {line}\n"
            )
        };
        let body = "## Mix\n~~~ticket\nuses: dough\n~~~\n";
        let line = "100 g lard, with chopped walnuts";
        assert_fault(&head(line), body, "named-beside", line);
        for line in [
            "100 g lard, rubbed into the flour",
            "100 g lard",
            "9 g walnut, with walnuts",
        ] {
            assert_no_fault(&head(line), body, "named-beside");
        }
    }

    #[test]
    fn the_unknown_is_pointed_out() {
        let head = "makes: 1 cake\ndough temperature: 10 °C\nformula:\n  dough:\n    - 500 g bread flour\n    - 5 g baking powder\n    - 200 g water\n";
        let body = "## Mix\n~~~ticket\nuses: dough\n~~~\n";
        assert_fault(head, body, "allergens-unknown", "baking powder");
        assert_fault(head, body, "water-too-cold", "10 °C");
    }
}
