//! The ways in which a recipe is offered: the swaps that its author names, what a line leaves
//! the choice of (`butter or lard`), and what may be left out (`walnuts, if you like`).
//!
//! A recipe in one of its ways is a recipe like any other: whatever is worked out of a recipe
//! is worked out of it in the same way, and no calculation knows of ways.

use std::collections::{BTreeMap, BTreeSet};

use crate::fault::{Fault, Place, Severity};
use crate::measure::exact;
use crate::model::{
    Alternative, AmountLine, Block, Brace, Change, InWay, Ingredient, Inline, Live, Part,
    Recipe, Step, Swap, Target,
};
use crate::pantry::Item;
use crate::read::within;
use crate::said;
use crate::statement::Statement;

use super::allergens::{AllergenSum, Listed, allergens};
use super::expand::expand;
use super::flow::{Flow, lines_of};
use super::weigh::{Formula, MadeOf, weigh};
use super::{Book, beside};

/// A line of a formula as written: its section, and its number there.
type LineAt = (usize, usize);

/// One way in which a recipe is offered.
#[derive(Clone, Debug)]
pub struct Way<'a> {
    /// Its name: as its author wrote it, what is taken (`lard`), or what is left out
    /// (`without walnuts`).
    pub name: String,
    /// What it is called in the course's language: `sans noix`. It may be asked for by that
    /// too.
    pub called: String,
    /// What it does.
    does: Does<'a>,
}

#[derive(Clone, Debug)]
enum Does<'a> {
    /// What its author names.
    Swap(&'a Swap),
    /// Takes another of those that a line leaves the choice of.
    Takes(LineAt, String),
    /// Leaves out a line.
    Leaves(LineAt),
    /// Leaves out a step, and what goes in only there.
    LeavesStep(&'a str),
    /// Does some steps with other kit.
    OtherKit(Vec<(&'a str, &'a Alternative)>),
}

/// Why a recipe cannot be had in a way.
#[derive(Clone, Debug)]
pub enum Unoffered {
    /// It is offered in no way of this name.
    Unknown(String),
    /// Two ways change one line; the name of the second.
    Twice(String),
    /// A change is of nothing in the recipe: what it names, and where that is said.
    Nothing(String, Place),
    /// A change is of several lines, of which each has a section of its own: what it names,
    /// where, and the sections.
    Several(String, Place, Vec<String>),
    /// It leaves nothing of the formula.
    Empty(String),
    /// The recipe that comes of it has errors.
    Faulty(Vec<Fault>),
}

impl Unoffered {
    /// The reason in words; `recipe` is the recipe's file name.
    pub fn said(&self, recipe: &str) -> Statement {
        match self {
            Self::Unknown(way) => said!("unknown-way", way, recipe),
            Self::Twice(way) => said!("ways-at-odds", way),
            Self::Nothing(name, _) => said!("swap-of-nothing", name),
            Self::Several(name, _, sections) => said!("swap-of-several", name, sections),
            Self::Empty(way) => said!("swap-leaves-nothing", way),
            Self::Faulty(faults) => faults
                .iter()
                .map(|fault| fault.message.clone())
                .next()
                .unwrap_or_else(|| said!("swap-of-nothing", name = recipe)),
        }
    }
}

impl Way<'_> {
    /// Whether its author named it.
    pub fn is_swap(&self) -> bool {
        match self.does {
            Does::Swap(_) => true,
            Does::Takes(..)
            | Does::Leaves(_)
            | Does::LeavesStep(_)
            | Does::OtherKit(_) => false,
        }
    }
}

/// Every way in which a recipe is offered: its swaps, the other kit of its steps, then what its
/// lines leave the choice of, then what may be left out. A name stands for the first of its kind.
pub fn ways<'a>(recipe: &'a Recipe, book: Book) -> Vec<Way<'a>> {
    let way = |name: String, does| Way { called: name.clone(), name, does };
    let swap = |swap: &'a Swap| way(swap.name.value.clone(), Does::Swap(swap));
    let words = book.pantry.lexicon();
    let without = |title: &str, does| {
        let name = format!("without {}", title.to_lowercase());
        let called = words.without(title).unwrap_or_else(|| name.clone());
        Way { name, called, does }
    };
    let mut all: Vec<Way> = recipe.swaps.iter().map(swap).collect();
    for name in kits(recipe) {
        let steps = recipe.steps().filter_map(|step| {
            let other = step.others.iter().find(|other| other.name.says(name))?;
            Some((step.name.as_str(), other))
        });
        all.push(way(name.to_owned(), Does::OtherKit(steps.collect())));
    }
    for (at, line) in lines(recipe) {
        for other in others(line, book) {
            all.push(way(other.clone(), Does::Takes(at, other)));
        }
    }
    for (at, line) in lines(recipe).filter(|(_, line)| line.optional) {
        all.push(without(line.ingredient.value.title(), Does::Leaves(at)));
    }
    for step in recipe.steps().filter(|step| step.optional) {
        all.push(without(&step.title.value, Does::LeavesStep(&step.name)));
    }
    let mut seen = BTreeSet::new();
    all.retain(|way| seen.insert(way.name.to_lowercase()));
    all
}

/// The kit that steps may be done with instead, each once.
pub fn kits(recipe: &Recipe) -> Vec<&str> {
    let mut names: Vec<&str> = Vec::new();
    for other in recipe.steps().flat_map(|step| &step.others) {
        if !names.iter().any(|name| other.name.says(name)) {
            names.push(&other.name.value);
        }
    }
    names
}

fn lines(recipe: &Recipe) -> impl Iterator<Item = (LineAt, &AmountLine)> {
    recipe.formula.iter().enumerate().flat_map(|(section, all)| {
        all.lines.iter().enumerate().map(move |(at, line)| ((section, at), line))
    })
}

/// The first ingredient that a name leaves the choice of, and the others; a name that is known
/// leaves none.
fn choices(name: &str, book: Book) -> (String, Vec<String>) {
    if book.pantry.find(name).is_some() {
        return (name.to_owned(), Vec::new());
    }
    beside::either(name, book)
}

/// What a line leaves the choice of, but the first, as far as it is known.
fn others(line: &AmountLine, book: Book) -> Vec<String> {
    let Ingredient::Pantry(name) = &line.ingredient.value else { return Vec::new() };
    let (name, mut others) = choices(name, book);
    if let Some(note) = &line.note {
        others.extend(beside::noted(&name, note, book).others);
    }
    others.retain(|name| book.pantry.find(name).is_some());
    others
}

/// The items that the swaps of a recipe bring in, beside the line that each stands in place
/// of: their allergens count, for the recipe is offered so. With the faults of those that are
/// nothing known.
pub(super) fn offered<'a>(
    recipe: &'a Recipe,
    book: Book<'a>,
    look_up: &dyn Fn(
        &'a AmountLine,
    ) -> Result<(MadeOf<'a>, Vec<&'a Item>), Option<Fault>>,
) -> (Vec<&'a Item>, Vec<Fault>) {
    let (mut items, mut faults) = (Vec::new(), Vec::new());
    for line in recipe.swaps.iter().flat_map(Swap::lines) {
        items.extend(beside::named(line, recipe, book));
        match look_up(line) {
            Ok((MadeOf::Item(item), instead)) => {
                items.extend(instead.iter().chain([&item]));
            }
            Ok((MadeOf::Recipe(inner), _)) => {
                let formula = weigh(inner, book);
                let inside = expand(&formula, &exact(1, 1));
                items.extend(inside.into_values().map(|(item, _)| item));
            }
            Err(fault) => faults.extend(fault),
        }
    }
    (items, faults)
}

/// The recipe as written, without what it is offered with instead: what a way is held against.
pub(super) fn plain(recipe: &Recipe) -> Recipe {
    let mut plain = Recipe { swaps: Vec::new(), own_pages: Vec::new(), ..recipe.clone() };
    for part in &mut plain.parts {
        if let Part::Step(step) = part {
            step.others.clear();
        }
    }
    plain
}

/// The recipe in some of its ways.
///
/// # Errors
/// The reason, where it is not offered so, or what comes of it cannot be weighed.
pub fn in_ways(recipe: &Recipe, names: &[&str], book: Book) -> Result<Recipe, Unoffered> {
    let offered = ways(recipe, book);
    let written = plain(recipe);
    let formula = weigh(&written, book);
    let mut edit = Edit::of(&written, &formula);
    let (mut found, mut called): (Vec<String>, Vec<String>) = Default::default();
    for name in names {
        let asked = name.to_lowercase();
        let by_name = |way: &&Way| way.name.to_lowercase() == asked;
        let by_call = |way: &&Way| way.called.to_lowercase() == asked;
        let way = offered.iter().find(by_name).or_else(|| offered.iter().find(by_call));
        let way = way.ok_or_else(|| Unoffered::Unknown((*name).to_owned()))?;
        edit.add(way, book)?;
        let same = way.name == way.called;
        called.push(if same { (*name).to_owned() } else { way.called.clone() });
        let known = by_name(&way);
        found.push(if known { (*name).to_owned() } else { way.name.clone() });
    }
    let mut made = edit.made(&found, &called, book);
    // A file may have the very name that the way would have.
    while book.content.recipe(&made.name).is_some_and(|known| known.way != made.way) {
        made.name += "-way";
    }
    if made.formula.is_empty() {
        return Err(Unoffered::Empty(found.join(", ")));
    }
    let faults = weigh(&made, book).faults;
    let stops = faults.iter().any(|fault| fault.severity == Severity::Error);
    if stops { Err(Unoffered::Faulty(faults)) } else { Ok(made) }
}

/// What becomes of a recipe.
struct Edit<'a> {
    recipe: &'a Recipe,
    formula: &'a Formula<'a>,
    /// What stands in place of lines; nothing where one is left out.
    lines: BTreeMap<LineAt, Vec<AmountLine>>,
    /// Lines more, by section.
    more: Vec<(usize, AmountLine)>,
    /// Steps that are left out.
    steps: BTreeSet<String>,
    /// Steps as they are done with other kit.
    others: BTreeMap<String, &'a Alternative>,
}

impl<'a> Edit<'a> {
    fn of(recipe: &'a Recipe, formula: &'a Formula<'a>) -> Self {
        let (lines, more, steps) = (BTreeMap::new(), Vec::new(), BTreeSet::new());
        Self { recipe, formula, lines, more, steps, others: BTreeMap::new() }
    }

    /// Takes in what a way does.
    fn add(&mut self, way: &Way<'a>, book: Book) -> Result<(), Unoffered> {
        let before: BTreeSet<LineAt> = self.lines.keys().copied().collect();
        let free = |at: LineAt| match before.contains(&at) {
            true => Err(Unoffered::Twice(way.name.clone())),
            false => Ok(at),
        };
        match &way.does {
            Does::Takes(at, other) => {
                let written = self.line(*at);
                let line = taken(written, other, book);
                self.lines.insert(free(*at)?, vec![line]);
            }
            Does::Leaves(at) => {
                self.lines.insert(free(*at)?, Vec::new());
            }
            Does::LeavesStep(step) => {
                self.steps.insert((*step).to_owned());
            }
            Does::OtherKit(steps) => {
                for (step, other) in steps {
                    if self.others.insert((*step).to_owned(), other).is_some() {
                        return Err(Unoffered::Twice(way.name.clone()));
                    }
                }
            }
            Does::Swap(swap) => {
                for change in &swap.changes {
                    self.change(change, &free)?;
                }
            }
        }
        Ok(())
    }

    fn change(
        &mut self,
        change: &Change,
        free: &dyn Fn(LineAt) -> Result<LineAt, Unoffered>,
    ) -> Result<(), Unoffered> {
        match change {
            Change::Instead { line, of } => {
                let (first, rest) = self.these(of)?;
                let line = line.as_ref().clone();
                self.lines.entry(free(first)?).or_default().push(line);
                for at in rest {
                    self.lines.entry(free(at)?).or_default();
                }
            }
            Change::Without(of) => {
                let found = self.found(&of.name);
                if let Some(step) = found.is_empty().then(|| self.step(&of.name)) {
                    let nothing =
                        || Unoffered::Nothing(of.name.clone(), of.place.clone());
                    self.steps.insert(step.ok_or_else(nothing)?);
                }
                for at in found {
                    self.lines.insert(free(at)?, Vec::new());
                }
            }
            Change::Beside { line, section } => {
                let mut all = self.recipe.formula.iter();
                let at = all.position(|known| known.name.value == section.value);
                let nothing =
                    || Unoffered::Nothing(section.value.clone(), section.place.clone());
                self.more.push((at.ok_or_else(nothing)?, line.as_ref().clone()));
            }
        }
        Ok(())
    }

    fn line(&self, (section, at): LineAt) -> &'a AmountLine {
        &self.recipe.formula[section].lines[at]
    }

    /// The line that a change is about, and others of the same name in its section: what
    /// stands in place of it stands in place of all of them.
    fn these(&self, of: &Target) -> Result<(LineAt, Vec<LineAt>), Unoffered> {
        let found = self.found(&of.name);
        let Some((first, rest)) = found.split_first() else {
            return Err(Unoffered::Nothing(of.name.clone(), of.place.clone()));
        };
        if rest.iter().all(|other| other.0 == first.0) {
            return Ok((*first, rest.to_vec()));
        }
        let names = found
            .iter()
            .map(|(section, _)| self.recipe.formula[*section].name.value.clone());
        let mut sections: Vec<String> = names.collect();
        sections.dedup();
        Err(Unoffered::Several(of.name.clone(), of.place.clone(), sections))
    }

    /// The lines that a name means: an ingredient, one in a section, or a whole section.
    fn found(&self, name: &str) -> Vec<LineAt> {
        let all = self.at(&lines_of(name, self.formula));
        let Some((name, section)) = name.rsplit_once(" in ").filter(|_| all.is_empty())
        else {
            return all;
        };
        let inside = |at: &LineAt| self.recipe.formula[at.0].name.value == section.trim();
        self.at(&lines_of(name, self.formula)).into_iter().filter(inside).collect()
    }

    fn at(&self, found: &[usize]) -> Vec<LineAt> {
        let same = |line: &AmountLine| {
            found.iter().any(|at| std::ptr::eq(self.formula.lines[*at].line, line))
        };
        lines(self.recipe).filter(|(_, line)| same(line)).map(|(at, _)| at).collect()
    }

    /// The step with this heading.
    fn step(&self, heading: &str) -> Option<String> {
        let heading = heading.to_lowercase();
        let mut steps = self.recipe.steps();
        let found = steps.find(|step| {
            step.title.value.to_lowercase() == heading || step.name == heading
        });
        found.map(|step| step.name.clone())
    }

    /// The recipe that comes of it.
    fn made(mut self, names: &[String], called: &[String], book: Book) -> Recipe {
        self.leave_with_steps();
        let mut made = self.recipe.clone();
        for part in &mut made.parts {
            if let Part::Step(step) = part
                && let Some(other) = self.others.get(&step.name)
            {
                **step = done_so(step, other);
            }
        }
        made.name = way_name(&self.recipe.name, names);
        made.title.value = format!("{} ({})", self.recipe.title.value, called.join(", "));
        made.way = Some(InWay { of: self.recipe.name.clone(), names: names.to_vec() });
        for (section, all) in made.formula.iter_mut().enumerate() {
            let name = all.name.value.clone();
            let place = |(at, line): (usize, &AmountLine)| -> Vec<AmountLine> {
                match self.lines.get(&(section, at)) {
                    None => vec![line.clone()],
                    Some(new) => {
                        let own = new.iter().map(|new| standing_for(new, line, book));
                        own.map(|new| within(&name, new, book.pantry.lexicon())).collect()
                    }
                }
            };
            let kept: Vec<AmountLine> =
                all.lines.iter().enumerate().flat_map(place).collect();
            let more = self.more.iter().filter(|(at, _)| *at == section);
            let more =
                more.map(|(_, line)| within(&name, line.clone(), book.pantry.lexicon()));
            all.lines = kept.into_iter().chain(more).collect();
        }
        made.formula.retain(|section| !section.lines.is_empty());
        let there = |name: &str| made.formula.iter().any(|it| it.name.value == name);
        made.preferments.retain(|it| {
            there(&it.section.value)
                && it.from.as_ref().is_none_or(|from| there(&from.value))
        });
        let mut leaving = self.steps.clone();
        leaving.extend(self.without_uses(&mut made, book));
        for step in &leaving {
            leave_step(&mut made, step);
        }
        made
    }

    /// Lines that go only into steps that are left out go with them.
    fn leave_with_steps(&mut self) {
        let flow = Flow::new(self.recipe, self.formula);
        let steps: Vec<&str> =
            self.recipe.steps().map(|step| step.name.as_str()).collect();
        for (at, line) in self.formula.lines.iter().enumerate() {
            let users: Vec<&str> = (0..steps.len())
                .filter(|step| flow.uses[*step].iter().any(|(used, _)| *used == at))
                .map(|step| steps[step])
                .collect();
            let gone = |step: &&str| self.steps.contains(*step);
            if !users.is_empty() && users.iter().all(gone) {
                let found =
                    lines(self.recipe).find(|(_, own)| std::ptr::eq(*own, line.line));
                if let Some((place, _)) = found {
                    self.lines.entry(place).or_default();
                }
            }
        }
    }

    /// Takes what is left out from what steps use and from their prose. The steps that may be
    /// left out and have nothing left to use.
    fn without_uses(&self, made: &mut Recipe, book: Book) -> Vec<String> {
        let plain = made.clone();
        let new = weigh(&plain, book);
        let gone = |name: &str| {
            !lines_of(name, self.formula).is_empty() && lines_of(name, &new).is_empty()
        };
        let left = |live: &Live| match live {
            Live::Named { name, .. } if gone(name) => Some(Live::LeftOut(name.clone())),
            Live::Named { .. }
            | Live::LeftOut(_)
            | Live::Temperature(_)
            | Live::Size(_)
            | Live::Length(_)
            | Live::Pieces => None,
        };
        let prose = |blocks: &[Block<Brace>]| -> Vec<Block<Brace>> {
            blocks.iter().map(|block| block.with_live(&left)).collect()
        };
        made.opening = prose(&made.opening);
        let mut idle = Vec::new();
        for part in &mut made.parts {
            match part {
                Part::Prose { content, .. } => *content = prose(content),
                Part::Step(step) => {
                    step.prose = prose(&step.prose);
                    let used = !step.uses.is_empty();
                    step.uses.retain(|used| !gone(&used.value.name));
                    if step.optional && used && step.uses.is_empty() {
                        idle.push(step.name.clone());
                    }
                }
            }
        }
        idle
    }
}

/// The words of a step that is done with other kit, with the cautions of the step as written.
fn safe(step: &Step, own: &Step) -> Vec<Block<Brace>> {
    let is_caution = |block: &&Block<Brace>| matches!(block, Block::Caution { .. });
    let cautions = step.prose.iter().filter(is_caution);
    let cautions = cautions.filter(|caution| !own.prose.contains(caution));
    own.prose.iter().chain(cautions).cloned().collect()
}

/// A step as it is done with other kit. Its place among the steps is as written.
fn done_so(step: &Step, other: &Alternative) -> Step {
    let own = &other.step;
    let prose = if own.prose.is_empty() { step.prose.clone() } else { safe(step, own) };
    let has_words = !own.prose.is_empty() || own.until.is_some();
    Step {
        done_with: has_words.then(|| other.name.value.clone()),
        title: step.title.clone(),
        until: own.until.clone().or_else(|| step.until.clone()),
        prose,
        day: step.day.clone(),
        after: step.after.clone(),
        part: step.part.clone(),
        ..own.as_ref().clone()
    }
}

/// A line with another of those between which it leaves the choice. A second amount in
/// brackets was of the first.
fn taken(line: &AmountLine, other: &str, book: Book) -> AmountLine {
    let mut line = line.clone();
    let (first, _) = choices(line.ingredient.value.title(), book);
    line.ingredient.value = Ingredient::Pantry(other.to_owned());
    line.also = None;
    line.note = line.note.and_then(|note| beside::noted(&first, &note, book).rest);
    line
}

/// A line with the names of what it stands in place of.
fn standing_for(new: &AmountLine, old: &AmountLine, book: Book) -> AmountLine {
    let title = old.ingredient.value.title();
    let mut names = vec![title.to_owned()];
    names.extend(book.pantry.find(title).map(|item| item.name.clone()));
    names.push(beside::either(title, book).0);
    names.extend(old.stands_for.iter().cloned());
    names.dedup();
    AmountLine { stands_for: names, ..new.clone() }
}

/// Takes a step out: what waited for it waits for what it waited for.
fn leave_step(recipe: &mut Recipe, name: &str) {
    let steps: Vec<_> = recipe.steps().map(|step| step.name.clone()).collect();
    let Some(at) = steps.iter().position(|step| step == name) else { return };
    let own = recipe.steps().nth(at).and_then(|step| step.after.clone());
    let above = at.checked_sub(1).map(|above| steps[above].clone());
    let next = steps.get(at + 1);
    for part in &mut recipe.parts {
        let Part::Step(step) = part else { continue };
        match &mut step.after {
            // The step above it is another one now, which is right where this one had none.
            None if Some(&step.name) == next => step.after.clone_from(&own),
            None => {}
            Some(after) if after.iter().any(|it| it.value == name) => {
                let place = step.title.place.clone();
                after.retain(|it| it.value != name);
                let placed = |name: &String| {
                    crate::fault::Placed::new(name.clone(), place.clone())
                };
                match &own {
                    Some(own) => after.extend(own.iter().cloned()),
                    None => after.extend(above.iter().map(placed)),
                }
            }
            Some(_) => {}
        }
    }
    recipe.parts.retain(|part| !matches!(part, Part::Step(step) if step.name == name));
}

/// The file name of a recipe in some of its ways: `tin-loaf-with-oat-drink`.
fn way_name(recipe: &str, names: &[String]) -> String {
    let mut name = recipe.to_owned();
    for way in names {
        let sign = |sign: char| if sign.is_ascii_alphanumeric() { sign } else { '-' };
        let plain: String = way.to_lowercase().chars().map(sign).collect();
        let plain = plain.split('-').filter(|part| !part.is_empty()).collect::<Vec<_>>();
        let plain = plain.join("-");
        let with = if plain.starts_with("without-") { "" } else { "with-" };
        name = format!("{name}-{with}{plain}");
    }
    name
}

/// Where the steps of a recipe in one of its ways still speak, in plain text, of what it has not:
/// the step's heading and the word.
pub fn still_told<'a>(way: &'a Recipe, book: Book) -> Vec<(&'a Place, String)> {
    let written = way.way.as_ref().and_then(|it| book.content.recipe(&it.of));
    let Some(written) = written else { return Vec::new() };
    let titles = |recipe: &Recipe| -> Vec<String> {
        let all = lines(recipe).map(|(_, line)| line.ingredient.value.title());
        all.map(str::to_lowercase).collect()
    };
    let (old, new) = (titles(written), titles(way));
    let head = |title: &str| title.rsplit(' ').next().unwrap_or(title).to_owned();
    let heads: BTreeSet<String> = new.iter().map(|title| head(title)).collect();
    let gone = old.iter().filter(|title| !new.contains(title));
    let gone: BTreeSet<String> =
        gone.map(|title| head(title)).filter(|head| !heads.contains(head)).collect();
    let mut found = Vec::new();
    for step in way.steps() {
        let mut text = String::new();
        let mut see = |inline: &Inline<Brace>| {
            if let Inline::Text { text: own } = inline {
                text += &own.to_lowercase();
            }
        };
        step.prose.iter().for_each(|block| block.visit(&mut see));
        let words = || text.split(|sign: char| !sign.is_alphanumeric());
        let told = gone.iter().find(|name| words().any(|word| word == name.as_str()));
        found.extend(told.map(|name| (&step.title.place, name.clone())));
    }
    found
}

/// What a way is made without: the allergens of the recipe as written that the way has not,
/// for each law; nothing where an allergen of the way is not known.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Without {
    /// The names of each law, by its key.
    pub lists: BTreeMap<&'static str, Vec<String>>,
}

/// What a recipe in one of its ways is made without; nothing of a recipe as written.
pub fn without(way: &Recipe, book: Book) -> Without {
    let written = way.way.as_ref().and_then(|it| book.content.recipe(&it.of));
    let Some(written) = written.map(plain) else { return Without::default() };
    let sum = |recipe: &Recipe| -> AllergenSum {
        allergens(&expand(&weigh(recipe, book), &exact(1, 1)))
    };
    let (before, after) = (sum(&written), sum(way));
    if !after.unknown.is_empty() {
        return Without::default();
    }
    let left = |list: &Listed| {
        let after = after.by(list.law);
        let gone =
            list.found.iter().filter(|it| after.iter().all(|on| on.name != it.name));
        (list.law, gone.map(|found| found.name.clone()).collect())
    };
    Without { lists: before.lists.iter().map(left).collect() }
}
