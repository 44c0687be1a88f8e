//! Which sections of a formula spoil, and which are boiled with sugar: custards, creams and
//! syrups, told by what is in them.

use crate::measure::{Exact, Mass, exact};
use crate::model::Purpose;
use crate::pantry::{Item, Kind, Role};

use super::expand::{Contents, expand_lines};
use super::flow::{Flow, is_floury};
use super::weigh::{Formula, Weighed};

/// From this share of milk, cream, fresh cheese and egg on, a filling spoils like them.
/// Common practice, no source.
const SPOILS: (i64, i64) = (1, 4);

/// From this share of sugar on, sugar and water are a syrup. Common practice, no source.
const SYRUP: (i64, i64) = (3, 10);

/// What is baked with at least this much flour over its milk, cream and egg sets as batter,
/// not as custard. Common practice, no source.
const BATTER: (i64, i64) = (1, 3);

/// Less water, milk and egg than this over its flour leaves flour dry: it must be mixed with
/// something. Common practice, no source: the stiffest pastry takes a fifth.
const DRY: (i64, i64) = (1, 10);

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

/// What sort of filling `section` is; `None` for dough and batter, roll-in fat, washes and
/// the rest.
pub fn filling(section: &str, formula: &Formula, flow: &Flow) -> Option<Filling> {
    let lines = || formula.lines.iter().filter(|line| line.section == section);
    let apart = |line: &Weighed| match line.purpose {
        Purpose::Wash | Purpose::RollIn => true,
        Purpose::Mixed | Purpose::Dusting | Purpose::Filling | Purpose::Topping => false,
    };
    if lines().any(apart) || is_floury(section, formula) {
        return None;
    }
    let contents = expand_lines(lines());
    let total: Mass = lines().map(Weighed::mass).sum();
    let share = |mass: &Mass| mass.over(&total).unwrap_or_else(|| exact(0, 1));
    let (egg, milk) = (sum(&contents, &is_egg), sum(&contents, &is_milky));
    let spoils = share(&(egg.clone() + milk.clone())) >= exact(SPOILS.0, SPOILS.1);
    if spoils {
        let batter = is_batter(section, &milk, formula, flow);
        let both = egg.is_positive() && milk.is_positive();
        return (!batter).then_some(if both { Filling::Custard } else { Filling::Cream });
    }
    let sugar = share(&sum(&contents, &|item| item.kind == Kind::Sugar));
    let has_water = lines().any(|line| line.plays(Role::Water) && line.mass.is_some());
    (sugar >= exact(SYRUP.0, SYRUP.1) && has_water).then_some(Filling::Syrup)
}

/// Whether a section sets as batter: it is baked, and with what it meets in the bowl it has
/// flour enough for its milk, cream and egg. Only flour that is dry by itself must meet
/// something; a pastry may as well be lined with custard, so it counts only where egg alone
/// is beaten into it at once, as into choux.
fn is_batter(section: &str, milk: &Mass, formula: &Formula, flow: &Flow) -> bool {
    if is_put_on(section, formula) || !flow.is_heated(section, formula) {
        return false;
    }
    let meets = |other: &str| {
        if other == section {
            return true;
        }
        if is_put_on(other, formula) {
            return false;
        }
        if is_dry(section, formula) || is_dry(other, formula) {
            return flow.meet(section, other, formula, false);
        }
        !milk.is_positive() && flow.meet(section, other, formula, true)
    };
    let lines = formula.lines.iter().filter(|line| meets(line.section));
    let contents = expand_lines(lines);
    let wet = sum(&contents, &|item| is_egg(item) || is_milky(item));
    let flour = sum(&contents, &|item| item.kind == Kind::Flour);
    flour.over(&wet).is_some_and(|share| share >= exact(BATTER.0, BATTER.1))
}

fn is_put_on(section: &str, formula: &Formula) -> bool {
    let mut lines = formula.lines.iter().filter(|line| line.section == section);
    lines.any(|line| line.purpose.is_put_on())
}

/// Whether a section is flour that nothing has made into a dough yet.
fn is_dry(section: &str, formula: &Formula) -> bool {
    let contents =
        expand_lines(formula.lines.iter().filter(|line| line.section == section));
    let flour = sum(&contents, &|item| item.kind == Kind::Flour);
    let wet = sum(&contents, &|item| is_egg(item) || item.kind == Kind::Liquid);
    let share: Option<Exact> = wet.over(&flour);
    share.is_some_and(|share| share < exact(DRY.0, DRY.1))
}

fn is_egg(item: &Item) -> bool {
    item.kind == Kind::Egg
}

/// The weight of what passes a test.
fn sum(contents: &Contents, test: &dyn Fn(&Item) -> bool) -> Mass {
    let found = contents.values().filter(|(item, _)| test(item));
    found.map(|(_, mass)| mass.clone()).sum()
}

/// Milk, cream and fresh cheese, but not butter, which keeps; nor dried milk.
fn is_milky(item: &Item) -> bool {
    let milk = item.holds("milk");
    let wet = item.water.as_ref().is_some_and(|water| *water >= exact(20, 1));
    let keeps = match item.kind {
        Kind::Liquid | Kind::Dairy => false,
        Kind::Flour
        | Kind::Fat
        | Kind::Egg
        | Kind::Sugar
        | Kind::Salt
        | Kind::Leavener
        | Kind::Other => true,
    };
    milk && wet && !keeps
}

#[cfg(test)]
mod tests {
    use super::super::testing;
    use super::*;

    #[test]
    fn told_by_what_is_in_them() {
        let formula = "formula:\n  dough:\n    - 500 g bread flour\n    - 300 g whole milk\n  custard:\n    - 300 g whole milk\n    - 2 egg yolks\n    - 60 g sugar\n  cheese:\n    - 200 g cream cheese\n    - 40 g sugar\n  syrup:\n    - 100 g sugar\n    - 100 g water\n  egg wash:\n    - 1 large egg\n    - 15 g whole milk\n  nuts:\n    - 100 g almonds\n    - 20 g butter\n";
        testing::with_body(formula, "", |formula, recipe, _| {
            let flow = Flow::new(recipe, formula);
            let sort = |section| filling(section, formula, &flow);
            assert_eq!(sort("custard"), Some(Filling::Custard));
            assert_eq!(sort("cheese"), Some(Filling::Cream));
            assert_eq!(sort("syrup"), Some(Filling::Syrup));
            for section in ["dough", "egg wash", "nuts", "none"] {
                assert_eq!(sort(section), None, "{section}");
            }
        });
    }
}
