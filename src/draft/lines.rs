//! Amount lines, tried with the program's own reader: what it takes is kept as it was
//! written, what it refuses is left to the author.

use crate::fault::{Fault, Severity};
use crate::formula::{Book, MadeOf, weigh};
use crate::model::Content;
use crate::pantry::Pantry;
use crate::read::{self, Source};
use crate::said;
use crate::statement::Statement;
use crate::theme::Theme;
use crate::words::Words;

use super::phrase;
use super::written::Written;

/// What is not said by a course of its own.
const COURSE: &str = "title: draft\nsummary: s\n";

/// Reads trial recipes as the author's course would.
pub(super) struct Trial {
    course: Vec<Source>,
    pantry: Pantry,
    /// The words in which doubts are told: those of the course's language.
    pub(super) words: Words,
}

/// One section of the formula.
#[derive(Debug)]
pub(super) struct Section {
    /// Its name.
    pub(super) name: String,
    /// Its lines, in order.
    pub(super) lines: Vec<DraftLine>,
}

/// One line.
#[derive(Debug)]
pub(super) struct DraftLine {
    /// As it stands in the draft.
    pub(super) text: String,
    /// What it is made of; the reason where it is not taken.
    pub(super) found: Result<Ingredient, Statement>,
    /// Something to look at where it is taken.
    pub(super) doubt: Option<Statement>,
}

/// What a taken line names.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Ingredient {
    /// As the line has it.
    pub(super) written: String,
    /// As the pantry has it.
    pub(super) known: String,
}

impl Trial {
    /// Of the course's `course.yaml` and `pantry.yaml`, as far as they are there.
    pub(super) fn new(course: &[Source]) -> Self {
        let wanted =
            |file: &&Source| ["course.yaml", "pantry.yaml"].contains(&file.path.as_str());
        let mut course: Vec<Source> = course.iter().filter(wanted).cloned().collect();
        if course.iter().all(|file| file.path != "course.yaml") {
            course.push(Source { path: "course.yaml".into(), text: COURSE.into() });
        }
        let (content, ..) = read::content(&course);
        let (pantry, _) = Pantry::of(&content);
        let language = content.course.as_ref().map_or("en", |it| it.language.as_str());
        let words = read::words_in(&Theme::built_in(), language).unwrap_or_default();
        Self { course, pantry, words }
    }

    /// The course with these recipes.
    pub(super) fn with(&self, recipes: impl IntoIterator<Item = Source>) -> Vec<Source> {
        self.course.iter().cloned().chain(recipes).collect()
    }

    /// Whether `makes` is read.
    pub(super) fn makes(&self, makes: &str) -> bool {
        let files = self.with([recipe(0, makes, "500 g water")]);
        let (content, ..) = read::content(&files);
        content.recipes.first().is_some_and(|recipe| recipe.makes.is_some())
    }

    /// What each line comes to; the fault where it is not taken.
    fn lines(&self, lines: &[String]) -> Vec<Result<Ingredient, Fault>> {
        let recipes =
            lines.iter().enumerate().map(|(at, line)| recipe(at, "1 loaf", line));
        let (content, _, faults) = read::content(&self.with(recipes));
        (0..lines.len()).map(|at| self.line(at, &content, &faults)).collect()
    }

    fn line(
        &self,
        at: usize,
        content: &Content,
        faults: &[Fault],
    ) -> Result<Ingredient, Fault> {
        let unread = || {
            Fault::error(
                "bad-amount",
                &crate::fault::Place::file("draft"),
                said!("no-amount"),
            )
        };
        let file = path(at);
        let is_error = |fault: &&Fault| fault.severity == Severity::Error;
        if let Some(fault) =
            faults.iter().filter(is_error).find(|fault| *fault.place.file == *file)
        {
            return Err(fault.clone());
        }
        let recipe = content.recipe(&name(at)).ok_or_else(unread)?;
        let formula = weigh(recipe, Book { content, pantry: &self.pantry });
        if let Some(fault) = formula.faults.iter().find(is_error) {
            return Err(fault.clone());
        }
        let line = formula.lines.first().ok_or_else(unread)?;
        let known = match line.source {
            MadeOf::Item(item) => item.name.clone(),
            MadeOf::Recipe(recipe) => recipe.title.value.clone(),
        };
        Ok(Ingredient { written: line.title().to_owned(), known })
    }
}

fn name(at: usize) -> String {
    format!("line-{at}")
}

fn path(at: usize) -> String {
    format!("recipes/{}.md", name(at))
}

/// A recipe of one line.
fn recipe(at: usize, makes: &str, line: &str) -> Source {
    let (makes, line) = (quoted(makes), quoted(line));
    let text = format!(
        "---\ntitle: t\nsummary: s\nmakes: {makes}\nformula:\n  dough:\n    - {line}\n---\n"
    );
    Source { path: path(at), text }
}

/// A text as YAML in single quotes.
pub(super) fn quoted(text: &str) -> String {
    format!("'{}'", text.replace('\'', "''"))
}

/// The formula: every line tried, where need be turned around (`Flour, 2 cups`).
pub(super) fn formula(written: &Written, trial: &Trial) -> Vec<Section> {
    let all: Vec<String> = written
        .groups
        .iter()
        .flat_map(|group| &group.lines)
        .map(|line| trimmed(line))
        .collect();
    let found = trial.lines(&all);
    let turned: Vec<Option<String>> = all
        .iter()
        .zip(&found)
        .map(|(line, found)| if found.is_err() { turned(line) } else { None })
        .collect();
    let again: Vec<String> = turned.iter().flatten().cloned().collect();
    let mut second = trial.lines(&again).into_iter();
    let lines: Vec<DraftLine> = all
        .into_iter()
        .zip(found)
        .zip(turned)
        .map(|((text, found), turned)| {
            let other = turned.and_then(|turned| Some((turned, second.next()?.ok()?)));
            line(text, found, other)
        })
        .collect();
    let mut lines = without_weight(lines, trial).into_iter();
    let mut names: Vec<String> = Vec::new();
    let sections = written.groups.iter().map(|group| Section {
        name: section_name(group.name.as_deref(), &mut names),
        lines: lines.by_ref().take(group.lines.len()).collect(),
    });
    sections.collect()
}

/// What stands in the pantry for a line of which nothing is known, so that a sheet says so.
const UNREAD: &str = "ingredient to settle";

/// The lines that are not taken, without their weight: an ingredient that is left out would
/// take its allergens along. Where its name is not known either, the line stands for itself
/// among what is not known.
fn without_weight(lines: Vec<DraftLine>, trial: &Trial) -> Vec<DraftLine> {
    let refused = |line: &&DraftLine| line.found.is_err();
    let forms = |line: &DraftLine| {
        let text: String = line.text.chars().take(120).collect();
        [
            format!("{}, as needed", name_in(&line.text)),
            format!("{UNREAD}, as needed ({text})"),
        ]
    };
    let tried: Vec<String> = lines.iter().filter(refused).flat_map(forms).collect();
    let found = trial.lines(&tried);
    let mut pairs = tried.chunks(2).zip(found.chunks(2));
    let open = |line: DraftLine| {
        let Err(why) = &line.found else { return line };
        let taken = pairs.next().and_then(|(forms, found)| {
            let at = found.iter().position(Result::is_ok)?;
            Some((forms.get(at)?.clone(), found.get(at)?.clone().ok()?))
        });
        let Some((text, found)) = taken else { return line };
        let doubt = said!("draft-no-weight", line = line.text, text, why);
        DraftLine { text, found: Ok(found), doubt: Some(doubt) }
    };
    lines.into_iter().map(open).collect()
}

/// The name within a line, without its number, unit and note: `½ a teaspoonful of carbonate
/// of ammonia` is `carbonate of ammonia`.
fn name_in(line: &str) -> String {
    let is_part = |word: &&str| {
        let plain = word.trim_matches(|sign: char| !sign.is_alphanumeric());
        phrase::is_figure(word)
            || phrase::word(plain).is_some()
            || read::is_unit(plain)
            || ["a", "an", "of", "the", "heaped", "about"].contains(&plain)
    };
    let words = line.split_whitespace().skip_while(is_part);
    let name = words.collect::<Vec<_>>().join(" ");
    name.split([',', '(', ';']).next().unwrap_or_default().trim().to_owned()
}

/// A line without the sign that parts it from the next.
fn trimmed(line: &str) -> String {
    let line = line.trim_end_matches([',', ';']).trim();
    let sentence =
        line.ends_with('.') && line.rsplit(' ').next().is_some_and(|last| last.len() > 4);
    let line = if sentence { line.trim_end_matches('.') } else { line };
    line.to_owned()
}

/// A line with its number in figures, turned around where the amount stands last: `Flour, two
/// cups` is `2 cups flour`, `¼ of a lb. of butter` is `1/4 lb. of butter`.
fn turned(line: &str) -> Option<String> {
    let parts = [", ", ": ", " – "];
    let halves = parts.iter().find_map(|part| line.split_once(part));
    let last = halves.and_then(|(name, amount)| {
        let one = !phrase::is_figure(name) && !amount.contains(", ");
        let behind = format!(" {}", name.trim().to_lowercase());
        one.then(|| figures(amount.trim(), &behind)).flatten()
    });
    last.or_else(|| figures(line, "").filter(|turned| turned != line))
}

/// A text that begins with a number, that number in figures, and what is to stand behind it.
fn figures(text: &str, behind: &str) -> Option<String> {
    let words = phrase::words(text);
    let (number, used) = phrase::number(&words)?;
    let rest = text.get(words.get(used - 1)?.end..)?.trim();
    let whole = number.trunc();
    let part = &number - &whole;
    let figures = match (whole.is_zero(), part.is_zero()) {
        (_, true) => whole.to_string(),
        (true, false) => part.to_string(),
        (false, false) => format!("{whole} {part}"),
    };
    (!rest.is_empty()).then(|| format!("{figures} {rest}{behind}"))
}

fn line(
    text: String,
    found: Result<Ingredient, Fault>,
    other: Option<(String, Ingredient)>,
) -> DraftLine {
    match (found, other) {
        (Ok(found), _) => DraftLine { text, found: Ok(found), doubt: None },
        (Err(_), Some((turned, found))) => {
            let doubt = said!("draft-turned", text, turned);
            DraftLine { text: turned, found: Ok(found), doubt: Some(doubt) }
        }
        (Err(fault), None) => DraftLine { text, found: Err(why(fault)), doubt: None },
    }
}

/// What is wrong with a line, and the remedy where it says something by itself.
fn why(fault: Fault) -> Statement {
    let why = fault.message;
    match fault.help {
        Some(help) if help.has_lines() => {
            said!("draft-why", why, help = said!("draft-ask-proof"))
        }
        Some(help) => said!("draft-why", why, help = *help),
        None => why,
    }
}

/// A name that a key can have, told apart from those before it.
fn section_name(heading: Option<&str>, names: &mut Vec<String>) -> String {
    let plain = |sign: char| if sign.is_alphanumeric() { sign } else { ' ' };
    let words: String =
        heading.unwrap_or("mixture").chars().map(plain).take(40).collect();
    let words = words.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
    let words = if words.starts_with(char::is_alphabetic) {
        words
    } else {
        format!("part {words}")
    };
    let base = words.trim().to_owned();
    let mut name = base.clone();
    let mut count = 2;
    while names.contains(&name) {
        name = format!("{base} {count}");
        count += 1;
    }
    names.push(name.clone());
    name
}

#[cfg(test)]
mod tests {
    use super::super::written::Group;
    use super::*;

    #[test]
    fn lines_are_kept_turned_or_left() {
        let lines = ["500 g bread flour,", "some joy", "2 dried eggs, dry"]
            .map(str::to_owned)
            .to_vec();
        let written = Written {
            groups: vec![Group { name: Some("For the Dough!".into()), lines }],
            ..Written::default()
        };
        let formula = formula(&written, &Trial::new(&[]));
        assert_eq!(formula[0].name, "for the dough");
        let figures = |line: &str| turned(line).unwrap_or_default();
        assert_eq!(figures("¼ of a lb. of butter"), "1/4 lb. of butter");
        assert_eq!(
            figures("Corn meal, seven and a half ounces"),
            "7 1/2 ounces corn meal"
        );
        let [flour, joy, egg] = &formula[0].lines[..] else { panic!("three lines") };
        assert_eq!(flour.text, "500 g bread flour");
        assert_eq!(joy.text, "ingredient to settle, as needed (some joy)");
        assert_eq!(egg.text, "dried eggs, as needed");
        assert!(flour.doubt.is_none() && joy.doubt.is_some() && egg.doubt.is_some());
        assert_eq!(name_in("½ a teaspoonful of carbonate of soda"), "carbonate of soda");
    }

    #[test]
    fn names_of_sections_are_told_apart() {
        let mut names = Vec::new();
        let name =
            |heading: Option<&str>, names: &mut Vec<String>| section_name(heading, names);
        assert_eq!(name(None, &mut names), "mixture");
        assert_eq!(name(Some("Mixture"), &mut names), "mixture 2");
        assert_eq!(name(Some("2nd: 'layer'"), &mut names), "part 2nd layer");
    }
}
