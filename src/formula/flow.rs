//! What is on the bench at a step: which lines have gone in by then, and how much of them
//! is dough that is rolled and cut.

use crate::measure::{Duration, Exact, Mass, exact};
use crate::model::{Pace, Purpose, Recipe, Step, Use};
use crate::pantry::Kind;

use super::expand::{expand_lines, of_kind};
use super::parts::Parts;
use super::weigh::{Formula, LineRef, MadeOf, Weighed};

/// A section with at least this share of flour is dough or batter, whatever is done with
/// it. Common practice, no source: creams hold under a tenth, the richest pastry over a
/// third.
const DOUGH_FLOUR: (i64, i64) = (1, 4);

/// A pause up to this leaves what is in the bowl as it is, in minutes; a pastry is chilled
/// for longer. Common practice, no source.
const SHORT_PAUSE: i64 = 20;

/// Which lines each step uses, and which steps come before it.
#[derive(Clone, Debug)]
pub struct Flow {
    /// What each step does.
    work: Vec<Doing>,
    /// For each step: the lines used and the share of each.
    pub uses: Vec<Vec<(LineRef, Exact)>>,
    /// For each step: the steps it waits for.
    pub after: Vec<Vec<usize>>,
    /// The parts of the dough, where it is divided.
    pub parts: Parts,
}

/// What a step does with what is on the bench.
#[derive(Clone, Copy, Debug)]
#[expect(clippy::struct_excessive_bools, reason = "each is one line of a ticket")]
pub(super) struct Doing {
    /// Cuts a sheet.
    pub(super) cuts: bool,
    /// Shapes pieces.
    pub(super) shapes: bool,
    /// Takes so long for each piece.
    pub(super) by_piece: bool,
    /// Lays so many on a tray.
    pub(super) trays: bool,
    /// Bakes.
    pub(super) bakes: bool,
    /// Bakes, or cooks to a core.
    pub(super) heats: bool,
    /// Rolls, folds or encloses fat.
    pub(super) rolls: bool,
    /// A short pause without work.
    pub(super) short_pause: bool,
}

impl Doing {
    fn of(step: &Step) -> Self {
        let hands = step.hands.as_ref().map(|hands| &hands.value);
        let short = Duration::minutes(exact(SHORT_PAUSE, 1));
        let paused = step.wait.as_ref().is_some_and(|wait| wait.value.usual <= short);
        Self {
            cuts: step.cut.is_some(),
            shapes: step.shape.is_some(),
            by_piece: hands.is_some_and(|it| matches!(it.pace, Some(Pace::Piece(_)))),
            trays: step.per_tray.is_some(),
            bakes: step.bake.is_some(),
            heats: step.bake.is_some() || step.core.is_some(),
            rolls: step.sheet.is_some() || step.laminates(),
            short_pause: paused && hands.is_none(),
        }
    }

    /// Whether what was mixed before it is no longer a mass in the bowl after it.
    fn ends_mixing(self) -> bool {
        self.cuts || self.shapes || self.rolls || self.bakes
    }
}

impl Flow {
    /// Follows the materials of `recipe` through its steps. Names that match nothing are
    /// passed over: a check names them.
    pub fn new(recipe: &Recipe, formula: &Formula) -> Self {
        let steps: Vec<&Step> = recipe.steps().collect();
        let number = |name: &str| steps.iter().position(|step| step.name == name);
        let after = steps.iter().enumerate().map(|(at, step)| match &step.after {
            Some(names) => names.iter().filter_map(|name| number(&name.value)).collect(),
            None => at.checked_sub(1).into_iter().collect(),
        });
        let work = steps.iter().map(|step| Doing::of(step)).collect();
        let (uses, parts) = (vec![Vec::new(); steps.len()], Parts::new(steps.len()));
        let mut flow = Self { after: after.collect(), uses, work, parts };
        for (at, step) in steps.iter().enumerate() {
            flow.parts.put(at, step, &flow.after[at]);
            for used in &step.uses {
                flow.put(at, &used.value, formula);
            }
            if let Some(divide) = &step.divide {
                let mass = flow.mass(at, formula);
                flow.parts.divide(at, &divide.value, &mass);
            }
        }
        flow
    }

    /// Lets a step use something: it goes in, or, where all of it is in already or the step
    /// rolls it, a share of the dough is taken and goes its own way.
    fn put(&mut self, at: usize, used: &Use, formula: &Formula) {
        let share = &used.share.part;
        let lines = lines_of(&used.name, formula);
        let whole = exact(1, 1);
        let before = self.before(at);
        let in_already = |line: &LineRef| -> Exact {
            let uses = before.iter().flat_map(|at| &self.uses[*at]);
            uses.filter(|(used, _)| used == line).map(|(_, share)| share).sum()
        };
        let is_dough = is_a_dough(&lines, formula);
        let all_in = lines.iter().all(|line| in_already(line) >= whole);
        let doing = self.work[at];
        if is_dough && *share < whole && (all_in || doing.rolls || doing.cuts) {
            self.parts.take(at, share, lines.clone());
        }
        if !is_dough || !all_in {
            self.uses[at].extend(lines.into_iter().map(|line| (line, share.clone())));
        }
    }

    /// The dough and roll-in fat on the bench at a step: the part of it that it works on.
    fn mass(&self, step: usize, formula: &Formula) -> Mass {
        let gone_in = self.gone_in_whole(step, formula);
        let lines = formula.lines.iter().zip(&gone_in);
        let dough = lines.filter(|(line, _)| !line.purpose.is_put_on());
        let whole: Mass = dough.map(|(line, share)| &line.mass() * share).sum();
        &whole * self.parts.share(step)
    }

    /// The part of each line that has gone in by a step; all of what a share is taken of.
    fn gone_in_whole(&self, step: usize, formula: &Formula) -> Vec<Exact> {
        let mut gone_in = self.gone_in(&self.before(step), formula.lines.len());
        for (line, share) in gone_in.iter_mut().enumerate() {
            if self.parts.takes(step, line) {
                *share = exact(1, 1);
            }
        }
        gone_in
    }

    /// What each step does, in order.
    pub(super) fn doing(&self) -> &[Doing] {
        &self.work
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

    /// The part of each line that has gone in by the end of `steps`: nought to one, however
    /// often a line is named.
    pub(super) fn gone_in(&self, steps: &[usize], lines: usize) -> Vec<Exact> {
        let mut shares = vec![exact(0, 1); lines];
        for (line, share) in steps.iter().flat_map(|at| &self.uses[*at]) {
            shares[*line] = (&shares[*line] + share).min(exact(1, 1));
        }
        shares
    }

    /// The first step that uses a line of `section`.
    fn goes_in_at(&self, section: &str, formula: &Formula) -> Option<usize> {
        let of_it =
            |(line, _): &(LineRef, Exact)| formula.lines[*line].section == section;
        self.uses.iter().position(|uses| uses.iter().any(of_it))
    }

    /// Whether two sections meet in the bowl: used in one step, or in two of which one
    /// leads to the other with nothing rolled, shaped or baked between. With `at_once` only
    /// short pauses lie between.
    pub(super) fn meet(
        &self,
        one: &str,
        two: &str,
        formula: &Formula,
        at_once: bool,
    ) -> bool {
        let at = [one, two].map(|section| self.goes_in_at(section, formula));
        let [Some(one), Some(two)] = at else { return false };
        let (first, last) =
            if self.before(two).contains(&one) { (one, two) } else { (two, one) };
        let before = self.before(last);
        if !before.contains(&first) {
            // Two bowls that a later step brings together.
            return !at_once && self.brought_together(one, two);
        }
        let between = before.into_iter().filter(|at| {
            *at != first && *at != last && self.before(*at).contains(&first)
        });
        let ends = |at: usize| {
            let doing = self.work[at];
            doing.ends_mixing()
                || (at_once && !doing.short_pause && self.uses[at].is_empty())
        };
        !self.work[first].ends_mixing() && !between.into_iter().any(ends)
    }

    /// Whether a step after both, with nothing rolled, shaped or baked before it, waits for
    /// both.
    fn brought_together(&self, one: usize, two: usize) -> bool {
        (0..self.after.len()).any(|at| {
            let before = self.before(at);
            let ends = |at: &usize| self.work[*at].ends_mixing();
            before.contains(&one)
                && before.contains(&two)
                && !before.iter().filter(|step| **step != at).any(ends)
        })
    }

    /// Whether a line of `section` is baked, or cooked to a core, in the end.
    pub(super) fn is_heated(&self, section: &str, formula: &Formula) -> bool {
        let at = self.goes_in_at(section, formula);
        at.is_some_and(|at| self.from(at).iter().any(|later| self.work[*later].heats))
    }

    /// The dough on the bench at `step`: its weight without roll-in fat, and the fat.
    /// Of a divided dough it is the part that the step works on.
    pub fn on_bench(&self, step: usize, formula: &Formula) -> (Mass, Mass) {
        let (dough, fat) = self.whole(step, formula);
        let share = self.parts.share(step);
        (&dough * share, &fat * share)
    }

    /// The same before any division.
    pub fn whole(&self, step: usize, formula: &Formula) -> (Mass, Mass) {
        let (mut dough, mut fat) = (Mass::zero(), Mass::zero());
        let gone_in = self.gone_in_whole(step, formula);
        for (line, share) in formula.lines.iter().zip(&gone_in) {
            let mass = &line.mass() * share;
            match line.purpose {
                Purpose::RollIn => fat = fat + mass,
                Purpose::Mixed => {
                    let within = roll_in_share(line);
                    fat = fat + &mass * &within;
                    dough = dough + &mass * &(exact(1, 1) - within);
                }
                Purpose::Wash
                | Purpose::Dusting
                | Purpose::Filling
                | Purpose::Topping => {}
            }
        }
        (dough, fat)
    }
}

/// Whether lines are all of one section that is dough: with flour, or made elsewhere.
fn is_a_dough(lines: &[LineRef], formula: &Formula) -> bool {
    let Some(section) = lines.first().map(|line| formula.lines[*line].section) else {
        return false;
    };
    let of_it = |line: &LineRef| formula.lines[*line].section == section;
    let makes_dough = |line: &LineRef| {
        let line = &formula.lines[*line];
        let made = matches!(line.source, MadeOf::Recipe(_)) || line.is(Kind::Flour);
        made && line.purpose == Purpose::Mixed
    };
    let own = (0..formula.lines.len()).filter(of_it);
    lines.iter().any(makes_dough) && own.eq(lines.iter().copied())
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
        MadeOf::Item(item) => item.name.clone(),
        MadeOf::Recipe(recipe) => recipe.name.clone(),
    };
    let own = [singular(line.title()), singular(&key)].into_iter();
    own.chain(line.line.stands_for.iter().map(|name| singular(name))).collect()
}

fn singular(name: &str) -> String {
    let name = name.to_lowercase();
    if let Some(stem) = name.strip_suffix("ies") {
        return format!("{stem}y");
    }
    name.strip_suffix('s').filter(|stem| !stem.ends_with('s')).unwrap_or(&name).to_owned()
}

/// Whether a section holds so much flour that it is dough or batter by itself, rather than
/// a filling, a wash or roll-in fat.
pub(super) fn is_floury(section: &str, formula: &Formula) -> bool {
    let lines = || formula.lines.iter().filter(|line| line.section == section);
    let flour = of_kind(&expand_lines(lines()), Kind::Flour);
    let total: Mass = lines().filter_map(|line| line.mass.clone()).sum();
    flour.over(&total).is_some_and(|share| share >= exact(DOUGH_FLOUR.0, DOUGH_FLOUR.1))
}

/// The sections of a formula in order, each once.
pub fn sections<'a>(formula: &Formula<'a>) -> Vec<&'a str> {
    let mut sections: Vec<&str> = Vec::new();
    for line in &formula.lines {
        if !sections.contains(&line.section) {
            sections.push(line.section);
        }
    }
    sections
}

/// The part of an included dough that is its roll-in fat, through any number of levels.
fn roll_in_share(line: &Weighed) -> Exact {
    let Some((_, formula)) = line.included() else { return exact(0, 1) };
    let fat: Mass = formula
        .lines
        .iter()
        .map(|line| {
            let whole = line.purpose == Purpose::RollIn;
            let share = if whole { exact(1, 1) } else { roll_in_share(line) };
            &line.mass() * &share
        })
        .sum();
    fat.over(&formula.total()).unwrap_or_else(|| exact(0, 1))
}

/// Whether a section is roll-in fat.
pub fn is_roll_in(section: &str, formula: &Formula) -> bool {
    let mut lines = formula.lines.iter().filter(|line| line.section == section);
    lines.any(|line| line.purpose == Purpose::RollIn)
}
