//! Text that changes with the batch and the unit system: every form of it in the page,
//! each only once.
//!
//! Class `m` shows in metric, `u` in US units; `b` with `b-KEY` shows at those batches.

use crate::measure::Label;
use crate::sheet::{RecipeSheets, Sheet};

use super::html::{Html, escape};

/// A recipe at all its batch sizes, to read the same value from each.
pub(super) struct Batches<'a> {
    /// Batch keys, in the page's order.
    pub(super) keys: Vec<&'a str>,
    /// The sheets in the same order.
    pub(super) sheets: Vec<&'a Sheet>,
}

impl<'a> Batches<'a> {
    /// The batches of a recipe; the recipe as written where it has no others.
    pub(super) fn new(recipe: &'a RecipeSheets) -> Self {
        if recipe.batches.is_empty() {
            return Self { keys: vec!["x1"], sheets: vec![&recipe.base] };
        }
        Self {
            keys: recipe.batches.iter().map(|batch| batch.key.as_str()).collect(),
            sheets: recipe.batches.iter().map(|batch| &batch.sheet).collect(),
        }
    }

    /// A value in both unit systems, at every size; nothing at the sizes without it.
    pub(super) fn label(&self, read: impl Fn(&Sheet) -> Option<&Label>) -> Html {
        let labels =
            self.sheets.iter().map(|sheet| read(sheet).cloned().unwrap_or_default());
        varied(&self.keys, &labels.collect::<Vec<_>>())
    }

    /// One label a batch.
    pub(super) fn labels(&self, labels: &[Label]) -> Html {
        varied(&self.keys, labels)
    }

    /// A value that is the same in both unit systems, at every size.
    pub(super) fn text(&self, read: impl Fn(&Sheet) -> Option<String>) -> Html {
        let labels =
            self.sheets.iter().map(|sheet| Label::same(read(sheet).unwrap_or_default()));
        varied(&self.keys, &labels.collect::<Vec<_>>())
    }

    /// The classes that show something only at the sizes where `holds`; empty where it
    /// holds at all of them.
    pub(super) fn classes(&self, holds: impl Fn(&Sheet) -> bool) -> String {
        let at = |(_, sheet): &(&&str, &&Sheet)| holds(sheet);
        let keys: Vec<&str> =
            self.keys.iter().zip(&self.sheets).filter(at).map(|(key, _)| *key).collect();
        batch_classes(&keys, self.keys.len())
    }
}

/// One label a batch as HTML: each different text once, with the classes of the batches
/// and the unit systems that it serves.
pub(super) fn varied(keys: &[&str], labels: &[Label]) -> Html {
    if labels.iter().all(|label| label.metric == label.us) {
        return Html(spans(keys, "", labels.iter().map(|label| label.us.as_str())));
    }
    let metric = spans(keys, "m", labels.iter().map(|label| label.metric.as_str()));
    Html(metric + &spans(keys, "u", labels.iter().map(|label| label.us.as_str())))
}

/// The different texts in order of first use, each with the batches that it serves.
pub(super) fn grouped<'t, 'k>(
    keys: &[&'k str],
    texts: impl Iterator<Item = &'t str>,
) -> Vec<(&'t str, Vec<&'k str>)> {
    let mut groups: Vec<(&str, Vec<&str>)> = Vec::new();
    for (key, text) in keys.iter().zip(texts) {
        match groups.iter_mut().find(|(known, _)| *known == text) {
            Some((_, keys)) => keys.push(key),
            None => groups.push((text, vec![key])),
        }
    }
    groups
}

/// `b b-half b-x1`; nothing where all `of` batches are meant.
pub(super) fn batch_classes(keys: &[&str], of: usize) -> String {
    if keys.len() == of {
        return String::new();
    }
    let classes: Vec<String> =
        keys.iter().map(|key| format!("b-{}", escape(key))).collect();
    format!("b {}", classes.join(" ")).trim_end().to_owned()
}

fn spans<'t>(keys: &[&str], unit: &str, texts: impl Iterator<Item = &'t str>) -> String {
    grouped(keys, texts)
        .iter()
        .filter(|(text, _)| !text.is_empty())
        .map(|(text, at)| span(&[unit, &batch_classes(at, keys.len())], text))
        .collect()
}

fn span(classes: &[&str], text: &str) -> String {
    let text = escape(text);
    match class_list(classes).as_str() {
        "" => text,
        classes => format!("<span class=\"{classes}\">{text}</span>"),
    }
}

/// Classes as an attribute has them, without the empty ones.
pub(super) fn class_list(classes: &[&str]) -> String {
    let named = classes.iter().copied().filter(|class| !class.is_empty());
    named.collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    const KEYS: [&str; 3] = ["half", "x1", "x2"];

    #[test]
    fn what_never_changes_carries_no_marks() {
        assert_eq!(varied(&KEYS, &vec![Label::same("a & b"); 3]).0, "a &amp; b");
    }

    #[test]
    fn units_alone_make_two_forms() {
        let label = Label::new("500 g", "1 lb");
        let both = "<span class=\"m\">500 g</span><span class=\"u\">1 lb</span>";
        assert_eq!(varied(&KEYS, &vec![label; 3]).0, both);
    }

    #[test]
    fn equal_values_are_merged() {
        let labels = [Label::same("1"), Label::same("2"), Label::same("1")];
        let merged =
            "<span class=\"b b-half b-x2\">1</span><span class=\"b b-x1\">2</span>";
        assert_eq!(varied(&KEYS, &labels).0, merged);
        let labels =
            [Label::new("9 g", "¼ oz"), Label::new("9 g", "½ oz"), Label::same("")];
        assert_eq!(
            varied(&KEYS, &labels).0,
            "<span class=\"m b b-half b-x1\">9 g</span>\
             <span class=\"u b b-half\">¼ oz</span><span class=\"u b b-x1\">½ oz</span>"
        );
    }
}
