//! What the word at a place is: of an amount line its weights, its percentage and its
//! allergens, of a step all that was worked out, of a name what it stands for.

use std::ops::Range;

use crate::formula::Scaling;
use crate::measure::exact;
use crate::model::{Content, Recipe};
use crate::read::Shape;
use crate::said;
use crate::sheet::{self, Line, Sheet, StepSheet};
use crate::statement::Statement;
use crate::words::Words;

use super::holds::Holds;
use super::outline::Region;
use super::target::{Target, target};
use super::{Here, keys, names};

/// What is told of a word, and the bytes that it takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// The words it is about.
    pub place: Range<usize>,
    /// What is said of them, line by line.
    pub lines: Vec<Statement>,
}

/// What the word at the spot is.
pub(super) fn told(here: Here, shape: Shape, words: &Words) -> Option<Told> {
    // The recipe is worked out once, and only where that is told.
    let step = || in_step(here, words);
    match target(here, shape) {
        Some(Target::Named(holds, place)) => {
            let mut lines = named(here, (holds, &place), words);
            if lines.is_empty() {
                lines = step().unwrap_or_default();
            }
            some(place, lines)
        }
        Some(Target::Key(node, place)) => {
            let mut lines = says(keys::word(node, "description"));
            lines.extend(step().unwrap_or_default());
            some(place, lines)
        }
        Some(Target::Live(place)) => {
            let lines = live(here, here.words(&place), words);
            some(place, lines)
        }
        Some(Target::Link(place)) => {
            let name = here.words(&place).rsplit('/').next().unwrap_or("");
            let lines = text(&here.edition.content, name.trim_end_matches(".md"));
            some(place, lines)
        }
        Some(Target::Word(place)) => {
            let lines = trade(&here.edition.content, here.words(&place));
            some(place, lines)
        }
        None => {
            let part = here.outline.part(here.spot.at)?;
            some(part.heading.clone(), step()?)
        }
    }
}

fn some(place: Range<usize>, lines: Vec<Statement>) -> Option<Told> {
    (!lines.is_empty()).then_some(Told { place, lines })
}

fn says(text: &str) -> Vec<Statement> {
    if text.is_empty() { Vec::new() } else { vec![said!("here-says", text)] }
}

/// The recipe of this text worked out as written.
fn sheet(here: Here, words: &Words) -> Option<(Recipe, Sheet)> {
    let recipe = names::known(here)?;
    let one = Scaling::Batches(exact(1, 1));
    let sheet = here.edition.sheet(recipe, &one, words).ok()?;
    Some((recipe.clone(), sheet))
}

fn named(
    here: Here,
    (holds, place): (Holds, &Range<usize>),
    words: &Words,
) -> Vec<Statement> {
    let content = &here.edition.content;
    let name = here.words(place).trim();
    match holds {
        Holds::AmountLine => line_at(here, words).unwrap_or_default(),
        Holds::SectionOrIngredient | Holds::Section => live(here, name, words),
        Holds::Recipe | Holds::Technique | Holds::RecipeOrTechnique => {
            text(content, name)
        }
        Holds::Picture => picture(content, name.split(',').next().unwrap_or("")),
        Holds::Step | Holds::ClassStep | Holds::Original => {
            let steps = content.recipes.iter().flat_map(Recipe::steps);
            let step = steps.into_iter().find(|step| step.name == name);
            step.map_or_else(Vec::new, |step| says(&step.title.value))
        }
        Holds::Ingredient => {
            let item =
                here.edition.pantry.find_pieces(name).map(|(item, _)| item.title());
            item.map_or_else(Vec::new, says)
        }
        Holds::Swap | Holds::Way | Holds::Part | Holds::Shape | Holds::Place => {
            Vec::new()
        }
        Holds::Kit | Holds::Video | Holds::Fault | Holds::Family => Vec::new(),
        Holds::Language | Holds::Allergen | Holds::Mark => Vec::new(),
    }
}

/// The line of the formula that holds the spot.
fn line_at(here: Here, words: &Words) -> Option<Vec<Statement>> {
    let (recipe, sheet) = sheet(here, words)?;
    let mut lines = recipe.formula.iter().flat_map(|section| &section.lines);
    let holds = |place: &crate::fault::Place| {
        place.start() <= here.spot.at && here.spot.at <= place.end()
    };
    let at = lines.position(|line| holds(&line.place))?;
    Some(of_line(sheet.formula.get(at)?, &sheet))
}

/// Weights, measure, percentage and allergens of a line.
fn of_line(line: &Line, sheet: &Sheet) -> Vec<Statement> {
    let (ingredient, metric, us) = (&line.ingredient, &line.metric, &line.us_weight);
    let mut amounts = vec![metric.clone()];
    amounts.extend(Some(us.clone()).filter(|us| us != metric));
    amounts.extend(line.us_measure.clone());
    amounts.extend(line.count.clone());
    amounts.retain(|amount| !amount.is_empty());
    amounts.dedup();
    let mut lines = vec![said!("here-line", ingredient, amounts)];
    lines.extend(
        line.percent_label.as_ref().map(|percent| said!("here-percent", percent)),
    );
    let brings = |found: &&sheet::Allergen| found.from.contains(ingredient);
    for list in &sheet.allergens.lists {
        let found: Vec<&str> =
            list.found.iter().filter(brings).map(|found| found.name.as_str()).collect();
        let law = list.law.to_uppercase();
        if !found.is_empty() {
            lines.push(said!("here-allergens", law, found));
        }
    }
    if sheet.allergens.unknown.contains(ingredient) {
        lines.push(said!("here-allergens-unknown"));
    }
    lines
}

/// A live value, or what a ticket uses: a section by its sum, a line by its weight.
fn live(here: Here, written: &str, words: &Words) -> Vec<Statement> {
    let Some((_, sheet)) = sheet(here, words) else { return Vec::new() };
    let name =
        written.rsplit(" of ").next().unwrap_or("").trim_start_matches("the ").trim();
    if name == "pieces" {
        return says(&sheet.scale.makes.metric);
    }
    let section = sheet.totals.sections.iter().find(|section| section.section == name);
    if let Some(section) = section {
        let amounts = vec![section.weight.metric.clone(), section.weight.us.clone()];
        return vec![said!("here-line", ingredient = name, amounts)];
    }
    let line = sheet.formula.iter().find(|line| line.ingredient.ends_with(name));
    line.map_or_else(Vec::new, |line| of_line(line, &sheet))
}

/// The step that the spot stands in: its ticket in words, and when it begins at the earliest.
fn in_step(here: Here, words: &Words) -> Option<Vec<Statement>> {
    match here.outline.region(here.spot.at) {
        Region::Ticket(_) | Region::Heading => {}
        Region::Keys(_) | Region::Fence(_) | Region::Prose(_) => return None,
    }
    let (recipe, sheet) = sheet(here, words)?;
    let part = here.outline.part(here.spot.at)?;
    let ticketed = here.outline.parts.iter().filter(|part| part.ticket.is_some());
    let number = ticketed.take_while(|one| one.range.start < part.range.start).count();
    let step = recipe.steps().nth(number)?;
    let mut steps = sheet.parts.iter().filter_map(|part| match part {
        sheet::Part::Step(sheet) => Some(sheet),
        sheet::Part::Prose { .. } => None,
    });
    Some(of_step(steps.find(|sheet| sheet.step == step.name)?, &sheet))
}

fn of_step(step: &StepSheet, sheet: &Sheet) -> Vec<Statement> {
    let rows = step.ticket.iter().map(|row| {
        let (term, value) = (&row.term, &row.value.metric);
        said!("here-row", term, value)
    });
    let mut lines: Vec<Statement> = rows.collect();
    let time = sheet
        .time
        .steps
        .iter()
        .find(|time| time.step == step.step && time.recipe == sheet.recipe);
    lines.extend(time.map(|time| {
        let start = crate::statement::Amount::Minutes(time.start_min);
        if time.start_min == 0 {
            said!("here-first")
        } else {
            said!("here-starts", start)
        }
    }));
    lines
}

/// A recipe or a technique by the name of its file.
fn text(content: &Content, name: &str) -> Vec<Statement> {
    let recipe = content.recipe(name).map(|it| (&it.title.value, &it.summary));
    let technique = content.techniques.iter().find(|it| it.name == name);
    let found = recipe.or_else(|| technique.map(|it| (&it.title.value, &it.summary)));
    found.map_or_else(Vec::new, |(title, summary)| [says(title), says(summary)].concat())
}

fn picture(content: &Content, name: &str) -> Vec<Statement> {
    let medium = content.media.iter().find(|medium| medium.name == name.trim());
    medium.map_or_else(Vec::new, |medium| {
        let (width, height) = (medium.width as usize, medium.height as usize);
        vec![said!("here-picture", width, height)]
    })
}

/// What a word of the trade means, as far as it is plain text.
fn trade(content: &Content, word: &str) -> Vec<Statement> {
    let entry = content.glossary.iter().find(|entry| {
        let mut forms = std::iter::once(&entry.word).chain(&entry.also);
        forms.any(|form| form.says(word))
    });
    let Some(entry) = entry else { return Vec::new() };
    let mut text = String::new();
    for block in &entry.meaning {
        block.visit(&mut |inline| {
            if let crate::model::Inline::Text { text: words } = inline {
                text.push_str(words);
            }
        });
    }
    says(text.trim())
}
