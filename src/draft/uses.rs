//! Which step each ingredient goes into, by the words of the steps.

use crate::said;
use crate::statement::Statement;

use super::lines::{Ingredient, Section};
use super::phrase;
use super::steps::{Plan, Step};

/// Gives every section or ingredient to the step that names it first.
pub(super) fn share_out(formula: &[Section], plan: &mut Plan) {
    for section in formula {
        let lines: Vec<&Ingredient> =
            section.lines.iter().filter_map(|line| line.found.as_ref().ok()).collect();
        if !lines.is_empty() {
            share_section(section, &lines, formula, plan);
        }
    }
}

fn share_section(
    section: &Section,
    lines: &[&Ingredient],
    formula: &[Section],
    plan: &mut Plan,
) {
    let steps = own_steps(section, plan);
    let found: Vec<Option<usize>> =
        lines.iter().map(|line| named_in(line, &steps, plan)).collect();
    let first = found.iter().flatten().min().or(steps.first()).copied().unwrap_or(0);
    let lost: Vec<&str> = lines
        .iter()
        .zip(&found)
        .filter(|(_, at)| at.is_none())
        .map(|(line, _)| line.written.as_str())
        .collect();
    let title = plan.steps[first].title.clone();
    if lost.len() == lines.len() {
        let section = &section.name;
        plan.doubts.push(said!("draft-lost-all", section, title));
    } else if !lost.is_empty() {
        let names = lost.iter().map(|name| said!("draft-lost-one", name));
        let names: Vec<Statement> = names.collect();
        plan.doubts.push(said!("draft-lost", names, title));
    }
    let apart = lines.iter().all(|line| is_alone(line, formula));
    let together = found.iter().all(|at| at.is_none_or(|at| at == first));
    if together || !apart {
        plan.steps[first].uses.push(section.name.clone());
        return;
    }
    for (line, at) in lines.iter().zip(found) {
        let step = &mut plan.steps[at.unwrap_or(first)];
        step.uses.push(line.written.clone());
        braces(line, step);
    }
}

/// The steps told for a section, else all steps.
fn own_steps(section: &Section, plan: &Plan) -> Vec<usize> {
    let own: Vec<usize> = plan
        .steps
        .iter()
        .enumerate()
        .filter(|(_, step)| {
            step.group
                .as_deref()
                .is_some_and(|group| section.name == group.to_lowercase())
        })
        .map(|(at, _)| at)
        .collect();
    if own.is_empty() { (0..plan.steps.len()).collect() } else { own }
}

/// The first step that names an ingredient, or all that is left: `the dry ingredients`.
fn named_in(line: &Ingredient, steps: &[usize], plan: &Plan) -> Option<usize> {
    let names = names(line);
    let of = |at: &&usize| mention(&plan.steps[**at].text, &names).is_some();
    let all = |at: &&usize| plan.steps[**at].text.to_lowercase().contains("ingredients");
    steps.iter().find(of).or_else(|| steps.iter().find(all)).copied()
}

/// What an ingredient may be called in the method: its name, and the last word of it.
fn names(line: &Ingredient) -> Vec<Vec<String>> {
    let words = |name: &str| -> Vec<String> {
        phrase::words(name).iter().map(|word| singular(word.text)).collect()
    };
    let mut names = vec![words(&line.written), words(&line.known)];
    for at in 0..2 {
        names.push(names[at].last().cloned().into_iter().collect());
    }
    for at in 0..2 {
        // `cocoa powder` is told as cocoa, `vanilla extract` as vanilla.
        let general = ["powder", "extract", "seed", "essence"];
        if let [first, last] = &names[at][..]
            && general.contains(&last.as_str())
        {
            names.push(vec![first.clone()]);
        }
    }
    names.retain(|name| !name.is_empty());
    names
}

/// Where an ingredient is named, in words of the text: from, to.
fn mention(text: &str, names: &[Vec<String>]) -> Option<(usize, usize)> {
    let words = phrase::words(text);
    let plain: Vec<String> = words.iter().map(|word| singular(word.text)).collect();
    let lower = |at: usize| {
        words.get(at).map_or_else(String::new, |word| word.text.to_lowercase())
    };
    names.iter().find_map(|name| {
        let mut places = plain.windows(name.len()).enumerate();
        let (at, _) = places.find(|(at, window)| {
            // `Flour the board`, `butter a tin`: what is done, not what is meant.
            let verb = matches!(lower(at + name.len()).as_str(), "the" | "a" | "an");
            *window == &name[..] && !verb
        })?;
        Some((words[at].start, words[at + name.len() - 1].end))
    })
}

fn singular(word: &str) -> String {
    let word = word.to_lowercase();
    let stem =
        word.strip_suffix('s').filter(|stem| stem.len() > 2 && !stem.ends_with('s'));
    stem.unwrap_or(&word).to_owned()
}

/// Whether no other line is of the same ingredient: then its name alone says which is meant.
fn is_alone(line: &Ingredient, formula: &[Section]) -> bool {
    let all = formula.iter().flat_map(|section| &section.lines);
    let ends = |other: &Ingredient| {
        other.known == line.known
            || other.written.ends_with(&format!(" {}", line.written))
    };
    let plain = !line.written.contains(',')
        && !formula.iter().any(|section| section.name == line.written);
    plain && all.filter(|other| other.found.as_ref().is_ok_and(ends)).count() == 1
}

/// Makes the ingredient live where the step names it in full.
fn braces(line: &Ingredient, step: &mut Step) {
    let name: Vec<String> =
        phrase::words(&line.written).iter().map(|word| singular(word.text)).collect();
    let Some((start, end)) = mention(&step.text, &[name]) else { return };
    let next = step.text[end..].split_whitespace().next().unwrap_or("").to_lowercase();
    let compound = ["mixture", "syrup", "wash", "and"]
        .iter()
        .any(|word| next.starts_with(word) && *word != "and");
    let free = step.live.iter().all(|((from, to), _)| end <= *from || *to <= start);
    let first = start == 0;
    if free && !compound && !first {
        step.live.push(((start, end), line.written.clone()));
        step.live.sort();
    }
}
