//! A dough divided, as an instructor writes it, and the steps that take a part of it.

use crate::fault::Placed;
use crate::measure::{Mass, Unit, exact};
use crate::model::{Divide, Part, Portion, Portioned, Recipe, Step};

use super::{amount, fields, quantity};

/// `half for crescents, a quarter for batons, the rest for pinwheels`, `600 g for rolls, the
/// rest for a plait`, `12 pieces of 60 g for knots, the rest for rounds`, `12 pieces`,
/// `pieces of 60 g`.
pub(super) fn divide(value: &Placed<String>) -> Option<Divide> {
    let text = value.value.trim();
    if !text.contains(" for ") {
        return match text.strip_prefix("pieces of ") {
            Some(each) => mass(each).map(Divide::Pieces),
            None => pieces(text).map(Divide::Count),
        };
    }
    let parts: Option<Vec<Portioned>> =
        fields::split(value).iter().map(portioned).collect();
    let parts = parts?;
    let rests = parts.iter().filter(|part| part.portion == Portion::Rest).count();
    (rests <= 1 && parts.len() >= 2).then_some(Divide::Parts(parts))
}

fn portioned(text: &Placed<String>) -> Option<Portioned> {
    let (portion, name) = text.value.split_once(" for ")?;
    let lead = text.value.len() - name.len() + (name.len() - name.trim_start().len());
    let name = name.trim().trim_start_matches("the ").to_owned();
    let place = text.place.part(lead, text.value.len());
    let portion = portion_of(portion.trim())?;
    (!name.is_empty()).then_some(Portioned { name: Placed::new(name, place), portion })
}

fn portion_of(text: &str) -> Option<Portion> {
    if matches!(text, "the rest" | "rest") {
        return Some(Portion::Rest);
    }
    if let Some((count, each)) = text.split_once(" of ") {
        return Some(Portion::Pieces(pieces(count)?, mass(each)?));
    }
    // A weight first: `0.5 kg` is no half.
    let weight = mass(text).map(Portion::Weight);
    weight.or_else(|| amount::part(text).map(Portion::Share))
}

/// `12 pieces`: at most as many as a sheet is cut into.
fn pieces(text: &str) -> Option<u64> {
    let count = text.strip_suffix("pieces").or_else(|| text.strip_suffix("piece"))?;
    let count = count.trim().parse().ok()?;
    (1..=2000).contains(&count).then_some(count)
}

fn mass(text: &str) -> Option<Mass> {
    let (number, unit) = quantity::number(text, false)?;
    let grams = Unit::parse(unit.trim())?.grams()?;
    (number > exact(0, 1)).then(|| Mass::grams(number * grams))
}

/// Lets every step that names its part, and not what it waits for, wait for the last step
/// above of that part, else for the step that divides.
pub(super) fn settle(recipe: &mut Recipe) {
    let mut lines: Vec<(String, Option<String>)> = Vec::new();
    let mut divided: Vec<(String, String)> = Vec::new();
    for part in &mut recipe.parts {
        let Part::Step(step) = part else { continue };
        if let (Some(name), None) = (&step.part, &step.after) {
            let own = lines.iter().rev();
            let own = own.filter(|(_, part)| part.as_ref() == Some(&name.value));
            let last = own.map(|(step, _)| step).next();
            let divides = divided.iter().find(|(part, _)| *part == name.value);
            let after = last.or(divides.map(|(_, step)| step)).cloned();
            step.after = after.map(|step| vec![Placed::new(step, name.place.clone())]);
        }
        lines.push((step.name.clone(), line(step, &lines)));
        if let Some(Divide::Parts(parts)) = step.divide.as_ref().map(|it| &it.value) {
            let named = parts.iter().map(|part| part.name.value.clone());
            divided.extend(named.map(|part| (part, step.name.clone())));
        }
    }
}

/// The part that a step goes on with.
fn line(step: &Step, lines: &[(String, Option<String>)]) -> Option<String> {
    if let Some(part) = &step.part {
        return Some(part.value.clone());
    }
    match step.after.as_deref() {
        None => lines.last()?.1.clone(),
        Some([only]) => lines.iter().find(|(step, _)| *step == only.value)?.1.clone(),
        Some(_) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fault::Place;

    fn read(text: &str) -> Option<Divide> {
        let place = Place::new(&"a.md".into(), 0, text.len());
        divide(&Placed::new(text.to_owned(), place))
    }

    #[test]
    fn doughs_are_divided_in_parts_by_weight_and_by_pieces() {
        let grams = |grams| Mass::grams(exact(grams, 1));
        let portions = |text| match read(text) {
            Some(Divide::Parts(parts)) => {
                parts.into_iter().map(|it| it.portion).collect()
            }
            _ => Vec::new(),
        };
        let half = Portion::Share(exact(1, 2));
        let quarter = Portion::Share(exact(1, 4));
        let read_as = portions("half for crescents, 1/4 for batons, the rest for tarts");
        assert_eq!(read_as, [half, quarter, Portion::Rest]);
        let read_as = portions("600 g for rolls, 12 pieces of 60 g for knots");
        assert_eq!(
            read_as,
            [Portion::Weight(grams(600)), Portion::Pieces(12, grams(60))]
        );
        assert_eq!(read("12 pieces"), Some(Divide::Count(12)));
        assert_eq!(read("pieces of 60 g"), Some(Divide::Pieces(grams(60))));
        for text in ["", "half", "half for a", "some for a, the rest for b", "0 pieces"] {
            assert_eq!(read(text), None, "{text}");
        }
    }
}
