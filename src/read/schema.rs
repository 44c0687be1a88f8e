//! The shapes of the YAML files and heads as JSON Schema (draft 2020-12), so that editors
//! complete and check while someone types. They know the keys and the plainest shapes; what
//! a value means only the readers know.

use std::sync::OnceLock;

use serde_json::Value;

use super::parts_of;

/// A kind of text that has a schema.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// `course.yaml`.
    Course,
    /// `pantry.yaml`.
    Pantry,
    /// `glossary.yaml`.
    Glossary,
    /// A class.
    Class,
    /// The head of a recipe.
    Recipe,
    /// The head of a technique.
    Technique,
    /// The head of a recipe or technique in a further language.
    Translation,
}

impl Shape {
    /// Every kind.
    pub const ALL: [Self; 7] = [
        Self::Course,
        Self::Pantry,
        Self::Glossary,
        Self::Class,
        Self::Recipe,
        Self::Technique,
        Self::Translation,
    ];

    /// What a file is, by its path below the content folder.
    pub fn of(path: &str) -> Option<Self> {
        let further = path.strip_prefix("in/").and_then(|path| path.split_once('/'));
        if let Some((_, path)) = further {
            let (folder, _, ending) = parts_of(path);
            let is_text = matches!((folder, ending), ("recipes" | "techniques", "md"));
            return is_text.then_some(Self::Translation);
        }
        match parts_of(path) {
            ("", "course", "yaml") => Some(Self::Course),
            ("", "pantry", "yaml") => Some(Self::Pantry),
            ("", "glossary", "yaml") => Some(Self::Glossary),
            ("classes", _, "yaml") => Some(Self::Class),
            ("recipes", _, "md") => Some(Self::Recipe),
            ("techniques", _, "md") => Some(Self::Technique),
            _ => None,
        }
    }

    /// Whether all of it is keys and values: else it has a head and a body.
    pub fn is_yaml(self) -> bool {
        match self {
            Self::Course | Self::Pantry | Self::Glossary | Self::Class => true,
            Self::Recipe | Self::Technique | Self::Translation => false,
        }
    }
}

/// The schema of a kind of text, taken apart.
pub(crate) fn tree(shape: Shape) -> &'static Value {
    static ALL: [OnceLock<Value>; Shape::ALL.len()] =
        [const { OnceLock::new() }; Shape::ALL.len()];
    let at = Shape::ALL.iter().position(|one| *one == shape).unwrap_or(0);
    ALL[at].get_or_init(|| serde_json::from_str(schema(shape)).unwrap_or_default())
}

/// The schema of a kind of text, as JSON.
pub fn schema(shape: Shape) -> &'static str {
    match shape {
        Shape::Course => include_str!("schema/course.json"),
        Shape::Pantry => include_str!("schema/pantry.json"),
        Shape::Glossary => include_str!("schema/glossary.json"),
        Shape::Class => include_str!("schema/class.json"),
        Shape::Recipe => include_str!("schema/recipe.json"),
        Shape::Technique => include_str!("schema/technique.json"),
        Shape::Translation => include_str!("schema/translation.json"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::read::{Source, content};
    use crate::statement::Value;

    fn name(value: &Value) -> String {
        let Value::Text(text) = value else { panic!("no name: {value:?}") };
        text.clone()
    }

    /// The keys that a reader knows, from what it says to one that it does not.
    fn known(path: &str, text: &str) -> Vec<String> {
        let source = Source { path: path.into(), text: text.into() };
        let faults = content(&[source]).2;
        let unknown = faults.into_iter().find(|fault| fault.name == "unknown-key");
        let help = unknown.and_then(|fault| fault.help).expect("a remedy");
        let Some((_, Value::List(list))) = help.values.first() else {
            panic!("no keys are named: {help:?}")
        };
        let mut keys: Vec<String> = list.iter().map(name).collect();
        keys.sort();
        // A reader that looks at a key twice names it twice.
        keys.dedup();
        keys
    }

    /// The keys of the schema at this pointer.
    fn keys(shape: Shape, pointer: &str) -> Vec<String> {
        let schema: serde_json::Value =
            serde_json::from_str(schema(shape)).expect("a schema is JSON");
        let at = schema.pointer(pointer).and_then(|at| at.as_object());
        let mut keys: Vec<String> =
            at.into_iter().flatten().map(|(k, _)| k.clone()).collect();
        keys.sort();
        keys
    }

    #[test]
    #[expect(clippy::too_many_lines, reason = "a table")]
    fn schemas_know_the_readers_keys() {
        const ODD: &str = "qqqqqqqq: 1";
        let head = format!("---\n{ODD}\n---\n");
        for (path, text, shape, pointer) in [
            ("course.yaml", ODD, Shape::Course, "/properties"),
            (
                "course.yaml",
                "kit: {qqqqqqqq: 1}",
                Shape::Course,
                "/properties/kit/properties",
            ),
            (
                "course.yaml",
                "room: {qqqqqqqq: 1}",
                Shape::Course,
                "/properties/room/properties",
            ),
            (
                "course.yaml",
                "theme: {qqqqqqqq: 1}",
                Shape::Course,
                "/properties/theme/properties",
            ),
            (
                "course.yaml",
                "lessons:\n  - qqqqqqqq: 1\n    title: a",
                Shape::Course,
                "/properties/lessons/items/properties",
            ),
            (
                "pantry.yaml",
                "a: {qqqqqqqq: 1}",
                Shape::Pantry,
                "/additionalProperties/properties",
            ),
            (
                "glossary.yaml",
                "a: {qqqqqqqq: 1, means: b}",
                Shape::Glossary,
                "/additionalProperties/anyOf/1/properties",
            ),
            ("classes/a.yaml", ODD, Shape::Class, "/properties"),
            (
                "classes/a.yaml",
                "makes:\n  - qqqqqqqq: 1\n    recipe: a",
                Shape::Class,
                "/properties/makes/items/properties",
            ),
            ("recipes/a.md", &head, Shape::Recipe, "/properties"),
            ("techniques/a.md", &head, Shape::Technique, "/properties"),
            ("in/fr/recipes/a.md", &head, Shape::Translation, "/properties"),
            (
                "recipes/a.md",
                "---\n---\n## a\n~~~ticket\nqqqqqqqq: 1\n~~~\n",
                Shape::Recipe,
                "/$defs/ticket/properties",
            ),
            (
                "techniques/a.md",
                "---\ndrawing:\n  - qqqqqqqq: 1\n---\n",
                Shape::Technique,
                "/properties/drawing/items/properties",
            ),
        ] {
            assert_eq!(keys(shape, pointer), known(path, text), "{path} {pointer}");
        }
    }
}
