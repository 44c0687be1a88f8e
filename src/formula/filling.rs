//! Which sections of a formula spoil, and which are boiled with sugar: custards, creams and
//! syrups, told by what is in them.

use crate::measure::{Mass, exact};
use crate::pantry::{Item, Kind};

use super::Book;
use super::expand::expand;
use super::flow::{is_dough, is_roll_in};
use super::weigh::Formula;

/// From this share of milk, cream, fresh cheese and egg on, a filling spoils like them.
/// Common practice, no source.
const SPOILS: (i64, i64) = (1, 4);

/// From this share of sugar on, sugar and water are a syrup. Common practice, no source.
const SYRUP: (i64, i64) = (3, 10);

/// What is brushed on thinly and baked, by the trade's words for it.
const BRUSHED: [&str; 3] = ["wash", "glaze", "brush"];

/// What sort of filling a section is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Filling {
    /// Milk or cream with egg.
    Custard,
    /// Milk, cream or fresh cheese without egg, or egg alone.
    Cream,
    /// Sugar and water.
    Syrup,
}

impl Filling {
    /// Whether it must be kept cold: custards and creams.
    pub fn spoils(self) -> bool {
        self != Self::Syrup
    }
}

/// What sort of filling `section` is; `None` for dough, roll-in fat, washes and the rest.
pub fn filling(section: &str, formula: &Formula, book: Book) -> Option<Filling> {
    let brushed = BRUSHED.iter().any(|word| section.contains(word));
    if brushed || is_roll_in(section, formula) || is_dough(section, formula, book) {
        return None;
    }
    let lines = formula.lines.iter().filter(|line| line.section == section);
    let part = Formula { lines: lines.cloned().collect() };
    let contents = expand(&part, &exact(1, 1), book);
    let of = |test: &dyn Fn(&Item) -> bool| -> Mass {
        let found = contents.values().filter(|(item, _)| test(item));
        found.map(|(_, mass)| mass.clone()).sum()
    };
    let share = |mass: &Mass| mass.over(&part.total()).unwrap_or_else(|| exact(0, 1));
    let (egg, milk) = (of(&|item| item.kind == Kind::Egg), of(&is_milky));
    let spoils = share(&(egg.clone() + milk.clone())) >= exact(SPOILS.0, SPOILS.1);
    match (spoils, egg.is_positive() && milk.is_positive()) {
        (true, true) => Some(Filling::Custard),
        (true, false) => Some(Filling::Cream),
        (false, _) => {
            let sugar = share(&of(&|item| item.kind == Kind::Sugar));
            let boiled = sugar >= exact(SYRUP.0, SYRUP.1) && has_water(&part);
            boiled.then_some(Filling::Syrup)
        }
    }
}

/// Milk, cream and fresh cheese, but not butter, which keeps; nor dried milk.
fn is_milky(item: &Item) -> bool {
    let milk = item.us.iter().flatten().any(|allergen| allergen.name == "milk");
    let wet = item.water.as_ref().is_some_and(|water| *water >= exact(20, 1));
    milk && wet && matches!(item.kind, Kind::Liquid | Kind::Dairy)
}

fn has_water(part: &Formula) -> bool {
    part.lines.iter().any(|line| line.title() == "water" && line.mass.is_some())
}

#[cfg(test)]
mod tests {
    use super::super::testing;
    use super::*;

    #[test]
    fn told_by_what_is_in_them() {
        let formula = "formula:\n  dough:\n    - 500 g bread flour\n    - 300 g whole milk\n  custard:\n    - 300 g whole milk\n    - 2 egg yolks\n    - 60 g sugar\n  cheese:\n    - 200 g cream cheese\n    - 40 g sugar\n  syrup:\n    - 100 g sugar\n    - 100 g water\n  egg wash:\n    - 1 large egg\n    - 15 g whole milk\n  nuts:\n    - 100 g almonds\n    - 20 g butter\n";
        testing::with_recipe(formula, |formula, book| {
            let sort = |section| filling(section, formula, book);
            assert_eq!(sort("custard"), Some(Filling::Custard));
            assert_eq!(sort("cheese"), Some(Filling::Cream));
            assert_eq!(sort("syrup"), Some(Filling::Syrup));
            for section in ["dough", "egg wash", "nuts", "none"] {
                assert_eq!(sort(section), None, "{section}");
            }
        });
    }
}
