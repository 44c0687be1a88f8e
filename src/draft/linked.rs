//! schema.org `Recipe` as JSON-LD, in the shapes that pages have: alone, in a list, in
//! `@graph`, below another thing; steps as text, list, `HowToStep` or `HowToSection`.
#![allow(clippy::wildcard_enum_match_arm, reason = "JSON's kinds are not ours")]

use crate::said;
use serde_json::{Map, Value};

use crate::measure::{Exact, exact, parse};

use super::label;
use super::page::words;
use super::paste;
use super::written::{Group, Told, Written};

/// Things are not sought deeper than this.
const DEEPEST: usize = 12;

type Thing = Map<String, Value>;

/// The first recipe in these texts. Texts that are no JSON are passed over.
pub(super) fn recipe(texts: &[String]) -> Option<Written> {
    let values: Vec<Value> = texts.iter().filter_map(|text| json(text)).collect();
    let mut found = Vec::new();
    values.iter().for_each(|value| seek(value, 0, &mut found));
    let first = *found.first()?;
    let mut written = read(first);
    if found.len() > 1 {
        let others = found.len() - 1;
        written.besides.push(said!("draft-others", others));
    }
    Some(written)
}

/// JSON as pages have it: line breaks within strings, comment marks around it.
fn json(text: &str) -> Option<Value> {
    let plain: String =
        text.chars().map(|sign| if sign.is_control() { ' ' } else { sign }).collect();
    let start = plain.find(['{', '['])?;
    let end = plain.rfind(['}', ']'])?;
    serde_json::from_str(plain.get(start..=end)?).ok()
}

fn seek<'a>(value: &'a Value, depth: usize, found: &mut Vec<&'a Thing>) {
    if depth > DEEPEST {
        return;
    }
    match value {
        Value::Array(items) => items.iter().for_each(|item| seek(item, depth + 1, found)),
        Value::Object(thing) if is(thing, "Recipe") => found.push(thing),
        Value::Object(thing) => {
            thing.values().for_each(|inner| seek(inner, depth + 1, found));
        }
        _ => {}
    }
}

/// Whether a thing is of this type: `Recipe`, `schema:Recipe`, one of several.
fn is(thing: &Thing, kind: &str) -> bool {
    let same = |value: &Value| {
        value.as_str().is_some_and(|name| name.rsplit(['/', ':']).next() == Some(kind))
    };
    match thing.get("@type") {
        Some(Value::Array(kinds)) => kinds.iter().any(same),
        Some(kind) => same(kind),
        None => false,
    }
}

fn read(thing: &Thing) -> Written {
    let mut written = Written {
        title: paste::title(&text(thing, "name")),
        summary: text(thing, "description"),
        makes: texts(thing.get("recipeYield").or_else(|| thing.get("yield"))),
        steps: steps(thing.get("recipeInstructions")),
        baking: thing.get("cookTime").and_then(Value::as_str).and_then(minutes),
        ..Written::default()
    };
    let lines = texts(thing.get("recipeIngredient").or_else(|| thing.get("ingredients")));
    written.groups = grouped(lines);
    let author = texts(thing.get("author"));
    if !author.is_empty() {
        written.beside(|author| said!("draft-author", author), &author.join(", "));
    }
    written
}

/// Some pages put headings among the ingredients: `For the filling:`.
fn grouped(lines: Vec<String>) -> Vec<Group> {
    let mut groups = vec![Group::default()];
    for line in lines.iter().flat_map(|line| line.lines()) {
        match label::heading(line) {
            Some(name) => groups.push(Group { name: Some(name), lines: Vec::new() }),
            None => groups.last_mut().into_iter().for_each(|group| {
                group.lines.push(label::unmarked(line).to_owned());
            }),
        }
    }
    groups
}

fn text(thing: &Thing, key: &str) -> String {
    texts(thing.get(key)).into_iter().next().unwrap_or_default()
}

/// A text, a number, a list of them, or the names of things.
fn texts(value: Option<&Value>) -> Vec<String> {
    match value {
        Some(Value::String(text)) => vec![words(text).trim().to_owned()],
        Some(Value::Number(number)) => vec![number.to_string()],
        Some(Value::Array(items)) => items.iter().take(400).flat_map(flat).collect(),
        Some(Value::Object(thing)) => flat_thing(thing),
        _ => Vec::new(),
    }
}

/// Likewise, of no list within a list.
fn flat(value: &Value) -> Vec<String> {
    match value {
        Value::Object(thing) => flat_thing(thing),
        Value::Array(_) => Vec::new(),
        value => texts(Some(value)),
    }
}

fn flat_thing(thing: &Thing) -> Vec<String> {
    let named =
        ["name", "text", "value", "@value"].iter().find_map(|key| thing.get(*key));
    match named {
        Some(Value::String(text)) => vec![words(text).trim().to_owned()],
        Some(Value::Number(number)) => vec![number.to_string()],
        _ => Vec::new(),
    }
}

fn steps(value: Option<&Value>) -> Vec<Told> {
    let mut told = Vec::new();
    if let Some(value) = value {
        tell(value, None, 0, &mut told);
    }
    told
}

fn tell(value: &Value, group: Option<&str>, depth: usize, told: &mut Vec<Told>) {
    if depth > DEEPEST || told.len() > 400 {
        return;
    }
    match value {
        Value::String(text) => {
            let mut own = paste::method(&words(text));
            for step in &mut own {
                step.group = step.group.take().or_else(|| group.map(str::to_owned));
            }
            told.extend(own);
        }
        Value::Array(items) => {
            items.iter().for_each(|item| tell(item, group, depth + 1, told));
        }
        Value::Object(thing) => tell_thing(thing, group, depth, told),
        _ => {}
    }
}

fn tell_thing(thing: &Thing, group: Option<&str>, depth: usize, told: &mut Vec<Told>) {
    let name = text(thing, "name");
    if let Some(items) = thing.get("itemListElement").or_else(|| thing.get("steps")) {
        let own = if is(thing, "HowToSection") && !name.is_empty() {
            Some(label::heading_words(&name))
        } else {
            None
        };
        tell(items, own.as_deref().or(group), depth + 1, told);
        return;
    }
    if let Some(item) = thing.get("item") {
        tell(item, group, depth + 1, told);
        return;
    }
    let said = text(thing, "text");
    let said = if said.is_empty() { text(thing, "description") } else { said };
    let (heading, said) = if said.is_empty() { (None, name) } else { (Some(name), said) };
    let heading = heading.filter(|heading| {
        !heading.is_empty()
            && heading.len() < 60
            && !said.starts_with(heading.trim_end_matches('…'))
    });
    told.push(Told { heading, group: group.map(str::to_owned), text: said });
}

/// Minutes of an ISO 8601 duration of days, hours, minutes and seconds: `PT1H30M`.
fn minutes(text: &str) -> Option<Exact> {
    let text = text.trim().strip_prefix('P')?;
    let (mut sum, mut number, mut timed) = (exact(0, 1), String::new(), false);
    for sign in text.chars().take(40) {
        let worth = match (sign, timed) {
            ('T', false) => {
                timed = true;
                continue;
            }
            ('D', false) => exact(1440, 1),
            ('H', true) => exact(60, 1),
            ('M', true) => exact(1, 1),
            ('S', true) => exact(1, 60),
            _ if sign.is_ascii_digit() || sign == '.' => {
                number.push(sign);
                continue;
            }
            _ => return None,
        };
        sum += parse(&std::mem::take(&mut number), false)? * worth;
    }
    (number.is_empty() && sum > exact(0, 1)).then_some(sum)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ISO 8601: PT1H30M = PT90M; checked with PyPI `isodate`.
    #[test]
    fn durations() {
        assert_eq!(minutes("PT1H30M"), Some(exact(90, 1)));
        assert_eq!(minutes("PT90M"), Some(exact(90, 1)));
        assert_eq!(minutes("P1DT2H"), Some(exact(1560, 1)));
        assert_eq!(minutes("PT0M"), None);
        assert_eq!(minutes("an hour"), None);
    }

    #[test]
    fn recipes_in_every_place() {
        let cases = [
            r#"{"@type": "Recipe", "name": "Buns"}"#,
            r#"[{"@type": "WebPage"}, {"@type": ["Thing", "Recipe"], "name": "Buns"}]"#,
            r#"{"@graph": [{"@type": "Person"}, {"@type": "http://schema.org/Recipe", "name": "Buns"}]}"#,
            r#"{"@type": "WebPage", "mainEntity": {"@type": "Recipe", "name": "Buns"}}"#,
            "<!-- {\"@type\": \"Recipe\",\n \"name\": \"Buns\"} -->",
        ];
        for case in cases {
            let found = recipe(&["no json".to_owned(), case.to_owned()]);
            assert_eq!(found.map(|found| found.title).as_deref(), Some("Buns"), "{case}");
        }
    }

    #[test]
    fn steps_in_every_shape() {
        let told = |text: &str| {
            let value: Value = serde_json::from_str(text).expect("JSON");
            let told = steps(Some(&value));
            told.into_iter().map(|step| (step.group, step.text)).collect::<Vec<_>>()
        };
        let plain = vec![(None, "Mix.".to_owned()), (None, "Bake.".to_owned())];
        assert_eq!(told(r#"["Mix.", "Bake."]"#), plain);
        assert_eq!(told(r#""<p>Mix.</p><p>Bake.</p>""#), plain);
        assert_eq!(
            told(
                r#"[{"@type": "HowToStep", "text": "Mix."}, {"@type": "HowToStep", "name": "Bake."}]"#
            ),
            plain
        );
        let section = r#"[{"@type": "HowToSection", "name": "For the filling:", "itemListElement": [{"@type": "HowToStep", "text": "Mix."}]}]"#;
        assert_eq!(told(section), [(Some("filling".to_owned()), "Mix.".to_owned())]);
    }
}
