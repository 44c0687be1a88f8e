//! What is on the bench at a step: which lines have gone in by then, and how much of them
//! is dough that is rolled and cut.

use crate::fault::Placed;
use crate::measure::{Exact, Mass, exact};
use crate::model::{Recipe, Step, Use};
use crate::pantry::Kind;

use super::Book;
use super::expand::{expand_lines, of_kind};
use super::weigh::{Formula, LineRef, Source, Weighed};

/// A section with at least this share of flour is dough, not filling. Common practice, no
/// source: creams hold under a tenth, the richest pastry over a third.
const DOUGH_FLOUR: (i64, i64) = (1, 4);

/// The section that holds the fat to roll in, alone or with a little flour.
const ROLL_IN: &str = "roll-in";

/// Which lines each step uses, and which steps come before it.
#[derive(Clone, Debug)]
pub struct Flow {
    /// For each step: whether it needs a mixer, and whether it rolls, folds or cuts.
    work: Vec<(bool, bool)>,
    /// For each step: the lines used and the share of each.
    pub uses: Vec<Vec<(LineRef, Exact)>>,
    /// For each step: the steps it waits for.
    pub after: Vec<Vec<usize>>,
}

impl Flow {
    /// Follows the materials of `recipe` through its steps. Names that match nothing are
    /// passed over: a check names them.
    pub fn new(recipe: &Recipe, formula: &Formula) -> Self {
        let steps: Vec<&Step> = recipe.steps().collect();
        let uses = steps
            .iter()
            .map(|step| {
                step.uses.iter().flat_map(|used| used_lines(used, formula)).collect()
            })
            .collect();
        let number = |name: &str| steps.iter().position(|step| step.name == name);
        let after = steps.iter().enumerate().map(|(at, step)| match &step.after {
            Some(names) => names.iter().filter_map(|name| number(&name.value)).collect(),
            None => at.checked_sub(1).into_iter().collect(),
        });
        let mixer = |step: &Step| step.kit.iter().any(|(_, kit)| kit.contains("mixer"));
        let rolls =
            |step: &Step| step.sheet.is_some() || step.laminates() || step.cut.is_some();
        let work = steps.iter().map(|step| (mixer(step), rolls(step))).collect();
        Self { after: after.collect(), uses, work }
    }

    /// Whether a line is mixed into the dough: it goes in at a step with a mixer, or beside
    /// a line of `dough` at a step that neither rolls nor folds nor cuts.
    pub fn is_mixed(&self, line: LineRef, dough: &dyn Fn(LineRef) -> bool) -> bool {
        self.uses.iter().zip(&self.work).any(|(uses, (mixer, rolls))| {
            uses.iter().any(|(used, _)| *used == line)
                && (*mixer || (!rolls && uses.iter().any(|(used, _)| dough(*used))))
        })
    }

    /// The steps that come after `step`, and itself, in order.
    pub fn from(&self, step: usize) -> Vec<usize> {
        (0..self.after.len()).filter(|at| self.before(*at).contains(&step)).collect()
    }

    /// The steps that come before `step`, and itself, in order.
    pub fn before(&self, step: usize) -> Vec<usize> {
        let mut seen = vec![false; self.after.len()];
        let mut open = vec![step];
        while let Some(at) = open.pop() {
            if !std::mem::replace(&mut seen[at], true) {
                open.extend(&self.after[at]);
            }
        }
        (0..seen.len()).filter(|at| seen[*at]).collect()
    }

    /// The dough on the bench at `step`: its weight without roll-in fat, and the fat.
    pub fn on_bench(&self, step: usize, formula: &Formula, book: Book) -> (Mass, Mass) {
        let (mut dough, mut fat) = (Mass::zero(), Mass::zero());
        let sections = dough_sections(formula, book);
        for at in self.before(step) {
            for (line, share) in &self.uses[at] {
                let line = &formula.lines[*line];
                let mass = &line.mass() * share;
                if is_roll_in(line.section, formula) {
                    fat = fat + mass;
                } else if sections.contains(&line.section) {
                    let within = roll_in_share(line, book);
                    fat = fat + &mass * &within;
                    dough = dough + &mass * &(exact(1, 1) - within);
                }
            }
        }
        (dough, fat)
    }
}

fn used_lines(used: &Placed<Use>, formula: &Formula) -> Vec<(LineRef, Exact)> {
    let share = &used.value.share.part;
    lines_of(&used.value.name, formula)
        .into_iter()
        .map(|line| (line, share.clone()))
        .collect()
}

/// The lines that a name in a ticket or in braces means: those of the section of that
/// name, else the ingredient by its name, its last word or words, or its plural.
pub fn lines_of(name: &str, formula: &Formula) -> Vec<LineRef> {
    let every = |fits: &dyn Fn(&Weighed) -> bool| -> Vec<LineRef> {
        formula
            .lines
            .iter()
            .enumerate()
            .filter(|(_, line)| fits(line))
            .map(|(at, _)| at)
            .collect()
    };
    let section = every(&|line| line.section == name);
    if !section.is_empty() {
        return section;
    }
    let name = singular(name);
    let whole = every(&|line| titles(line).contains(&name));
    if !whole.is_empty() {
        return whole;
    }
    let tail = format!(" {name}");
    every(&|line| titles(line).iter().any(|title| title.ends_with(&tail)))
}

fn titles(line: &Weighed) -> Vec<String> {
    let key = match line.source {
        Source::Item(item) => item.name.clone(),
        Source::Recipe(recipe) => recipe.name.clone(),
    };
    vec![singular(line.title()), singular(&key)]
}

fn singular(name: &str) -> String {
    let name = name.to_lowercase();
    if let Some(stem) = name.strip_suffix("ies") {
        return format!("{stem}y");
    }
    name.strip_suffix('s').filter(|stem| !stem.ends_with('s')).unwrap_or(&name).to_owned()
}

/// Whether a section is dough that is rolled, shaped and weighed, rather than a filling,
/// a wash or roll-in fat.
pub fn is_dough(section: &str, formula: &Formula, book: Book) -> bool {
    if is_roll_in(section, formula) {
        return false;
    }
    let lines = || formula.lines.iter().filter(|line| line.section == section);
    let flour = of_kind(&expand_lines(lines(), book), Kind::Flour);
    let total: Mass = lines().filter_map(|line| line.mass.clone()).sum();
    flour.over(&total).is_some_and(|share| share >= exact(DOUGH_FLOUR.0, DOUGH_FLOUR.1))
}

/// The sections that are dough, each once: to ask of every line would cost as often as much.
pub fn dough_sections<'a>(formula: &Formula<'a>, book: Book) -> Vec<&'a str> {
    let mut sections: Vec<&str> = Vec::new();
    for line in &formula.lines {
        if !sections.contains(&line.section) {
            sections.push(line.section);
        }
    }
    sections.retain(|section| is_dough(section, formula, book));
    sections
}

/// The part of an included dough that is its roll-in fat, through any number of levels.
fn roll_in_share(line: &Weighed, book: Book) -> Exact {
    let Source::Recipe(recipe) = line.source else { return exact(0, 1) };
    let formula = super::weigh(recipe, book).0;
    let fat: Mass = formula
        .lines
        .iter()
        .map(|line| {
            let whole = is_roll_in(line.section, &formula);
            let share = if whole { exact(1, 1) } else { roll_in_share(line, book) };
            &line.mass() * &share
        })
        .sum();
    fat.over(&formula.total()).unwrap_or_else(|| exact(0, 1))
}

/// Whether a section is roll-in fat: it is called so, as the trade does, or holds nothing
/// but fat.
pub fn is_roll_in(section: &str, formula: &Formula) -> bool {
    if section == ROLL_IN {
        return true;
    }
    let mut lines = formula.lines.iter().filter(|line| line.section == section);
    let all_fat = lines.all(|line| line.mass.is_some() && line.is(Kind::Fat));
    all_fat && formula.lines.iter().any(|line| line.section == section)
}
