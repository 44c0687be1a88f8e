//! Plain text pasted from anywhere: a title, a list of ingredients, paragraphs or numbered
//! steps. Headings such as *Ingredients* and *Method* help; without them a line is an
//! ingredient if it begins as one does.

mod listed;

use super::label::{Label, heading, is_shouted, label, unmarked};
use super::written::{Group, Told, Written};
use crate::said;

use listed::{begins_as_ingredient, is_told, run};

/// Where in the text a line stands.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Place {
    Top,
    Ingredients,
    Method,
    Besides,
}

/// Reads a recipe's words.
pub(super) fn recipe(text: &str) -> Written {
    let mut reader = Reader {
        written: Written::default(),
        place: Place::Top,
        group: None,
        open: false,
    };
    for line in text.lines().take(4_000) {
        reader.line(line.trim());
    }
    reader.written
}

/// The steps of a text that is all method: numbered, or one a line or paragraph.
pub(super) fn method(text: &str) -> Vec<Told> {
    let mut reader = Reader {
        written: Written::default(),
        place: Place::Method,
        group: None,
        open: false,
    };
    text.lines().take(1_000).for_each(|line| reader.line_of_method(line.trim()));
    reader.written.steps
}

struct Reader {
    written: Written,
    place: Place,
    /// The part of the recipe that steps belong to.
    group: Option<String>,
    /// Whether the last step may go on with the next line.
    open: bool,
}

impl Reader {
    fn line(&mut self, line: &str) {
        if line.is_empty() {
            self.open = false;
            return;
        }
        match label(line) {
            Some(label) => self.label(label, line),
            None => match self.place {
                Place::Top => self.line_of_top(line),
                Place::Ingredients => self.line_of_ingredients(line),
                Place::Method => self.line_of_method(line),
                Place::Besides => self.besides(line),
            },
        }
    }

    fn label(&mut self, label: Label, line: &str) {
        match label {
            Label::Ingredients(rest) => {
                self.place = Place::Ingredients;
                let run = run(rest);
                self.written.group().lines.extend(run);
            }
            Label::Method(rest) => {
                self.place = Place::Method;
                self.group = None;
                if !rest.is_empty() {
                    self.line_of_method(rest);
                }
            }
            Label::Makes => self.written.makes.push(line.to_owned()),
            Label::Oven(rest) => self.written.oven = Some(rest.to_owned()),
            Label::Time => self.besides(line),
            Label::Besides => {
                self.place = Place::Besides;
                self.besides(line);
            }
        }
    }

    fn line_of_top(&mut self, line: &str) {
        let plain = unmarked(line.trim_matches(['#', '*', '=', '_', ' ']));
        if self.written.title.is_empty() {
            self.written.title = title(plain);
        } else if begins_as_ingredient(unmarked(line)) && line.len() < 160 {
            self.place = Place::Ingredients;
            self.line_of_ingredients(line);
        } else if let Some(name) = heading(line) {
            self.place = Place::Ingredients;
            self.written.groups.push(Group { name: Some(name), lines: Vec::new() });
        } else if !line.chars().all(|sign| !sign.is_alphanumeric()) {
            let summary = &mut self.written.summary;
            summary.push_str(if summary.is_empty() { "" } else { " " });
            summary.push_str(plain);
        }
    }

    fn line_of_ingredients(&mut self, line: &str) {
        let item = unmarked(line);
        if let Some(name) = heading(line) {
            self.written.groups.push(Group { name: Some(name), lines: Vec::new() });
        } else if !begins_as_ingredient(item) && is_told(item, line) {
            self.place = Place::Method;
            self.line_of_method(line);
        } else if item.chars().any(char::is_alphanumeric) {
            self.written.group().lines.push(item.to_owned());
        }
    }

    fn line_of_method(&mut self, line: &str) {
        if line.is_empty() {
            self.open = false;
            return;
        }
        let text = unmarked(line);
        if let Some(name) = heading(line) {
            self.group = Some(name);
            self.open = false;
            return;
        }
        let numbered = text.len() < line.len();
        match self.written.steps.last_mut() {
            Some(last) if self.open && !numbered && last.group == self.group => {
                last.text.push(' ');
                last.text.push_str(text);
            }
            _ => self.written.steps.push(Told {
                heading: None,
                group: self.group.clone(),
                text: text.to_owned(),
            }),
        }
        self.open = !text.ends_with(['.', '!']);
    }

    fn besides(&mut self, line: &str) {
        if line.chars().any(char::is_alphanumeric) {
            self.written.beside(|line| said!("draft-besides", line), line);
        }
    }
}

/// A title without a number before it, not shouted: `12.—PLUM CAKE.` is `Plum cake`.
pub(super) fn title(text: &str) -> String {
    let digits = |number: &str| number.chars().all(|sign| sign.is_ascii_digit());
    let named = text.split_once(".—").filter(|(number, _)| digits(number));
    let plain = named.map_or(text, |(_, name)| name).trim_end_matches('.').trim();
    if is_shouted(plain) { lowered(plain) } else { plain.to_owned() }
}

/// Capitals made into a title: `PLUM CAKE` is `Plum cake`.
fn lowered(text: &str) -> String {
    let lower = text.to_lowercase();
    let mut signs = lower.chars();
    signs
        .next()
        .map_or_else(String::new, |first| first.to_uppercase().chain(signs).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lists_and_numbered_steps() {
        let text = "PLUM CAKE\nA cake for school.\n\nIngredients:\n- 1 lb flour\n• 2 eggs\nFor the icing:\n1. 4 oz sugar\n\nMethod\n1. Mix the flour\nand eggs.\n2) Bake it.\nMakes 2 cakes\n";
        let written = recipe(text);
        assert_eq!(
            (written.title.as_str(), written.summary.as_str()),
            ("Plum cake", "A cake for school.")
        );
        assert_eq!(written.groups[0].lines, ["1 lb flour", "2 eggs"]);
        assert_eq!(written.groups[1].name.as_deref(), Some("icing"));
        assert_eq!(written.groups[1].lines, ["4 oz sugar"]);
        let steps: Vec<&str> =
            written.steps.iter().map(|step| step.text.as_str()).collect();
        assert_eq!(steps, ["Mix the flour and eggs.", "Bake it."]);
        assert_eq!(written.makes, ["Makes 2 cakes"]);
    }

    #[test]
    fn no_headings_at_all() {
        let text = "Oat rounds\n\n100 g oats\ntwo eggs\na pinch of salt\n\nStir it all together with a fork.\n\nBake 20 minutes.";
        let written = recipe(text);
        assert_eq!(
            written.groups[0].lines,
            ["100 g oats", "two eggs", "a pinch of salt"]
        );
        assert_eq!(written.steps.len(), 2);
    }

    #[test]
    fn one_run_of_ingredients() {
        let text = "SEED CAKE.\nIngredients.—½ a lb. of butter, ¼ of a lb. of citron-peel, cut small, 6 ozs. of sugar (white, fine), milk.\nMethod.—Cream it. Bake it.\nTime.—1 hour. Sufficient for 1 cake.";
        let written = recipe(text);
        assert_eq!(
            written.groups[0].lines,
            [
                "½ a lb. of butter",
                "¼ of a lb. of citron-peel, cut small",
                "6 ozs. of sugar (white, fine)",
                "milk"
            ]
        );
        assert_eq!(written.steps[0].text, "Cream it. Bake it.");
        assert_eq!(written.besides.len(), 1);
    }
}
