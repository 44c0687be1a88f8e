//! What the pieces are made of: everything that is in what is cut, shaped, portioned or
//! laid on the tray, followed through the steps. Wash, dusting, filling and topping are put
//! on later.
//!
//! That all of it counts, and not the sections with much flour alone, is how the trade
//! scales: a batter in two bowls, a choux paste with its eggs, a dough with its soaker weigh
//! what the scale shows when they are divided. Common practice, no source.

use crate::measure::{Exact, Mass, exact};
use crate::model::{Amount, Purpose, Recipe};
use crate::pantry::Kind;

use super::expand::{expand_lines, of_kind};
use super::filling::{Filling, filling};
use super::flow::{Doing, Flow, sections};
use super::weigh::{Formula, LineRef, MadeOf, Weighed};

/// How much of each line the pieces are made of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Body {
    /// For each line the part of it that is in the pieces, nought to one.
    shares: Vec<Exact>,
}

impl Body {
    /// Follows `recipe` to the step that makes its pieces; a base dough to its end.
    pub fn new(recipe: &Recipe, formula: &Formula, flow: &Flow) -> Self {
        let count = formula.lines.len();
        if flow.uses.iter().all(Vec::is_empty) {
            // No step says anything: the words for the sections alone do.
            return Self { shares: vec![exact(1, 1); count] }
                .without_later(formula, None);
        }
        let main = main_section(formula);
        let shares = match maker(recipe, formula, flow, main) {
            Some(steps) => flow.gone_in(&steps, count),
            None => flow.gone_in(&(0..flow.uses.len()).collect::<Vec<_>>(), count),
        };
        let custard = |section: &str| {
            Some(section) != main
                && filling(section, formula, flow) == Some(Filling::Custard)
        };
        let floury = main.is_some_and(|main| {
            flour_of(&|line| line.section == main, formula).is_positive()
        });
        Self { shares }.without_later(formula, floury.then_some(&custard))
    }

    /// Leaves out what is put on later: by its words, and by `custard` where there is a
    /// dough that it can be put on. Without one, a filling is what is made.
    fn without_later(
        mut self,
        formula: &Formula,
        custard: Option<&dyn Fn(&str) -> bool>,
    ) -> Self {
        let mixed = formula
            .lines
            .iter()
            .any(|line| !line.purpose.is_put_on() && line.mass.is_some());
        for (line, share) in formula.lines.iter().zip(&mut self.shares) {
            let later = match line.purpose {
                Purpose::Mixed => custard.is_some_and(|custard| custard(line.section)),
                Purpose::RollIn => false,
                Purpose::Filling => custard.is_some() || mixed,
                Purpose::Wash | Purpose::Dusting | Purpose::Topping => true,
            };
            if later {
                *share = exact(0, 1);
            }
        }
        self
    }

    /// The part of a line that is in the pieces.
    pub fn share(&self, line: LineRef) -> Exact {
        self.shares.get(line).cloned().unwrap_or_else(|| exact(0, 1))
    }

    /// Whether some of a line is in the pieces.
    pub fn holds(&self, line: LineRef) -> bool {
        self.shares.get(line).is_some_and(Exact::is_positive)
    }

    /// Its lines with the part of each.
    pub fn lines<'f, 'a>(
        &'f self,
        formula: &'f Formula<'a>,
    ) -> impl Iterator<Item = (&'f Weighed<'a>, &'f Exact)> {
        formula.lines.iter().zip(&self.shares).filter(|(_, share)| share.is_positive())
    }

    /// Its weight, roll-in fat and all.
    pub fn mass(&self, formula: &Formula) -> Mass {
        self.lines(formula).map(|(line, share)| &line.mass() * share).sum()
    }

    /// The lines in it without a weight, on which its weight depends: flour, liquids, eggs,
    /// fats, sugar. A pinch of salt or spice changes nothing that a scale shows.
    pub fn open<'f, 'a>(&'f self, formula: &'f Formula<'a>) -> Vec<&'f Weighed<'a>> {
        let lines = self.lines(formula).map(|(line, _)| line);
        lines.filter(|line| is_free(line) && weighs(line)).collect()
    }

    /// Whether flour without a weight is in it: then no percentage means anything.
    pub fn flour_is_open(&self, formula: &Formula) -> bool {
        self.open(formula).iter().any(|line| line.is(Kind::Flour))
    }
}

fn is_free(line: &Weighed) -> bool {
    matches!(line.line.amount, Amount::Free(_))
}

fn weighs(line: &Weighed) -> bool {
    match line.source {
        MadeOf::Recipe(_) => true,
        MadeOf::Item(item) => match item.kind {
            Kind::Flour
            | Kind::Liquid
            | Kind::Dairy
            | Kind::Fat
            | Kind::Egg
            | Kind::Sugar => true,
            Kind::Salt | Kind::Leavener | Kind::Other => false,
        },
    }
}

/// The section that the pieces are of: the one with most flour, else the heaviest; of
/// those that are mixed, else of all.
fn main_section<'a>(formula: &Formula<'a>) -> Option<&'a str> {
    let weight = |section: &str, mixed: bool| {
        let of_it = |line: &Weighed| {
            line.section == section && (!mixed || line.purpose == Purpose::Mixed)
        };
        let flour = flour_of(&of_it, formula);
        let lines = formula.lines.iter().filter(|line| of_it(line));
        (flour, lines.map(Weighed::mass).sum::<Mass>())
    };
    let heaviest = |mixed: bool| {
        let all = sections(formula).into_iter().map(|name| (weight(name, mixed), name));
        let there = all.filter(|((_, mass), _)| mass.is_positive());
        // The first of several that weigh the same.
        there.rev().max_by(|(one, _), (two, _)| one.cmp(two)).map(|(_, section)| section)
    };
    heaviest(true).or_else(|| heaviest(false))
}

fn flour_of(of_it: &dyn Fn(&Weighed) -> bool, formula: &Formula) -> Mass {
    let lines = formula.lines.iter().filter(|line| of_it(line));
    of_kind(&expand_lines(lines), Kind::Flour)
}

/// The steps whose materials are in the pieces: those up to where the pieces are made.
/// `None` where nothing is made in pieces.
fn maker(
    recipe: &Recipe,
    formula: &Formula,
    flow: &Flow,
    main: Option<&str>,
) -> Option<Vec<usize>> {
    recipe.makes.as_ref()?.value.count()?;
    let has_main = |steps: &[usize]| {
        let mut used = steps.iter().flat_map(|at| &flow.uses[*at]);
        used.any(|(line, _)| Some(formula.lines[*line].section) == main)
    };
    let doing = flow.doing();
    let with_main = |of: fn(&Doing) -> bool| {
        let steps = (0..doing.len()).filter(move |at| of(&doing[*at]));
        steps.filter(|at| has_main(&flow.before(*at))).collect::<Vec<_>>()
    };
    let first = |of: fn(&Doing) -> bool| with_main(of).first().copied();
    let baked = first(|doing| doing.bakes);
    let by_hand = with_main(|doing| doing.cuts)
        .last()
        .copied()
        .or_else(|| first(|doing| doing.shapes))
        .or_else(|| first(|doing| doing.by_piece))
        .filter(|at| baked.is_none_or(|baked| !flow.before(*at).contains(&baked)));
    let Some(at) = by_hand else {
        let laid = first(|doing| doing.trays && !doing.bakes);
        return Some(flow.before(laid.or(baked).or(doing.len().checked_sub(1))?));
    };
    let before = flow.before(at);
    let earlier: Vec<usize> = before.iter().copied().filter(|step| *step != at).collect();
    // What a shaping step adds is put on the piece, unless it is what is shaped.
    Some(if has_main(&earlier) && !doing[at].cuts { earlier } else { before })
}
