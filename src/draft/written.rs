//! A recipe as somebody else wrote it, before any of it is understood.

use crate::measure::Exact;
use crate::said;
use crate::statement::Statement;

/// Lists longer than this are cut, and it is said.
const MOST_LINES: usize = 200;
const MOST_STEPS: usize = 100;
/// A title, a heading or an amount line has at most so many characters, a step or a summary so
/// many.
const MOST_LINE: usize = 300;
const MOST_STEP: usize = 4_000;

/// What was found in the text, in its own words.
#[derive(Debug, Default)]
pub(super) struct Written {
    /// What it is called; empty where it is not said.
    pub(super) title: String,
    /// What it is said to be.
    pub(super) summary: String,
    /// What it is said to give.
    pub(super) makes: Vec<String>,
    /// Its ingredients.
    pub(super) groups: Vec<Group>,
    /// Its method.
    pub(super) steps: Vec<Told>,
    /// The oven, where it is said apart from the steps.
    pub(super) oven: Option<String>,
    /// Minutes in the oven, where they are said apart from the steps.
    pub(super) baking: Option<Exact>,
    /// What is said besides, each with a word of what it is.
    pub(super) besides: Vec<Statement>,
}

/// Ingredients under one heading.
#[derive(Debug, Default)]
pub(super) struct Group {
    /// The heading, if there is one.
    pub(super) name: Option<String>,
    /// The lines.
    pub(super) lines: Vec<String>,
}

/// One step as it is told.
#[derive(Debug, Default)]
pub(super) struct Told {
    /// Its own heading.
    pub(super) heading: Option<String>,
    /// The part of the recipe that it belongs to: `filling`.
    pub(super) group: Option<String>,
    /// What is to be done.
    pub(super) text: String,
}

impl Written {
    /// Keeps what is said besides the steps, as a line of plain text.
    pub(super) fn beside(&mut self, say: impl FnOnce(String) -> Statement, text: &str) {
        self.besides.push(say(clean(text, MOST_LINE)));
    }

    /// The group that further lines go into.
    pub(super) fn group(&mut self) -> &mut Group {
        if self.groups.is_empty() {
            self.groups.push(Group::default());
        }
        let last = self.groups.len() - 1;
        &mut self.groups[last]
    }

    /// Cleans every text and cuts what is too much for a recipe, saying so.
    pub(super) fn bound(&mut self) {
        self.title = clean(&self.title, MOST_LINE);
        self.summary = clean(&self.summary, MOST_STEP);
        self.makes.truncate(8);
        self.besides.truncate(20);
        for text in self.makes.iter_mut().chain(&mut self.oven) {
            *text = clean(text, MOST_LINE);
        }
        self.bound_lists();
        self.groups.retain(|group| !group.lines.is_empty());
    }

    fn bound_lists(&mut self) {
        let mut left = MOST_LINES;
        let mut cut = false;
        for group in &mut self.groups {
            group.name = group.name.take().map(|name| clean(&name, MOST_LINE));
            group.lines.iter_mut().for_each(|line| *line = clean(line, MOST_LINE));
            group.lines.retain(|line| !line.is_empty());
            cut |= group.lines.len() > left;
            group.lines.truncate(left);
            left -= group.lines.len();
        }
        for step in &mut self.steps {
            step.heading = step.heading.take().map(|heading| clean(&heading, MOST_LINE));
            step.group = step.group.take().map(|group| clean(&group, MOST_LINE));
            step.text = clean(&step.text, MOST_STEP);
        }
        self.steps.retain(|step| !step.text.is_empty());
        cut |= self.steps.len() > MOST_STEPS;
        self.steps.truncate(MOST_STEPS);
        if cut {
            let (lines, steps) = (MOST_LINES, MOST_STEPS);
            self.besides.push(said!("draft-longer", lines, steps));
        }
    }
}

/// One line of plain text: no control signs, no marks that turn the reading direction, no
/// white space but single spaces, at most so many characters.
fn clean(text: &str, most: usize) -> String {
    let hidden = |sign: char| matches!(sign, '\u{200b}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}' | '\u{fffc}');
    let mut kept = String::new();
    for sign in text.chars().filter(|sign| !hidden(*sign)) {
        let space = sign.is_whitespace() || sign.is_control();
        if !space {
            kept.push(sign);
        } else if !kept.ends_with(' ') && !kept.is_empty() {
            kept.push(' ');
        }
    }
    let kept = kept.trim();
    match kept.char_indices().nth(most) {
        Some((end, _)) => format!("{}…", kept[..end].trim_end()),
        None => kept.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_strangers_text_becomes_one_plain_line() {
        assert_eq!(clean("  a\u{202e}b\r\n\tc\u{0} ", 300), "ab c");
        assert_eq!(clean("abcdef", 3), "abc…");
    }

    #[test]
    fn what_is_too_much_is_cut_and_said() {
        let line = || "1 egg".to_owned();
        let mut written = Written {
            groups: vec![Group { name: None, lines: (0..500).map(|_| line()).collect() }],
            ..Written::default()
        };
        written.bound();
        assert_eq!(written.groups[0].lines.len(), 200);
        assert_eq!(written.besides.len(), 1);
    }
}
