//! What the site's other pages say of a recipe. It is all that they need of it, so that
//! a recipe need not be worked out again for their sake.

use std::sync::Arc;

use serde::{Deserialize, Serialize};

use crate::measure::Label;
use crate::sheet::{Part, RecipeSheets, Sheet, StepSheet};

use super::prose::plain;

/// A recipe in a few words, as written: for one batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Card {
    /// The recipe's file name.
    pub recipe: String,
    /// Its title.
    pub title: String,
    /// The language of title and summary, where it is not the edition's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub title_in: Option<String>,
    /// What it is, in a sentence.
    pub summary: String,
    /// The family of dough.
    pub family: Option<String>,
    /// What it gives.
    pub makes: Label,
    /// Attended time in words.
    pub hands: String,
    /// All of the time in words.
    pub elapsed: String,
    /// All of the time in minutes.
    pub elapsed_min: u64,
    /// Layers of fat, for layered doughs.
    pub fat_layers: Option<u64>,
    /// The keys of its batch sizes: `x2`.
    pub batches: Vec<String>,
    /// The words by which it is found; most of the card, and kept once.
    #[serde(with = "shared")]
    pub text: Arc<str>,
}

impl Card {
    /// The card of a recipe.
    pub fn new(recipe: &RecipeSheets) -> Self {
        let sheet = &recipe.base;
        Self {
            recipe: sheet.recipe.clone(),
            title: sheet.title.clone(),
            title_in: sheet.title_in().map(str::to_owned),
            summary: sheet.summary.clone(),
            family: sheet.family.clone(),
            makes: sheet.scale.makes.clone(),
            hands: sheet.time.hands.clone(),
            elapsed: sheet.time.elapsed.clone(),
            elapsed_min: sheet.time.elapsed_min,
            fat_layers: sheet.lamination.as_ref().and_then(|it| it.fat_layers),
            batches: recipe.batches.iter().map(|batch| batch.key.clone()).collect(),
            text: text(sheet).into(),
        }
    }

    /// The recipe's page, from the site's root.
    pub(super) fn page(&self) -> String {
        format!("recipes/{}/index.html", self.recipe)
    }
}

fn text(sheet: &Sheet) -> String {
    let mut text = sheet.summary.clone();
    let mut say = |words: &str| {
        text.push(' ');
        text.push_str(words);
    };
    sheet.family.iter().for_each(|family| say(family));
    sheet.formula.iter().for_each(|line| say(&line.ingredient));
    say(&plain(&sheet.opening));
    for part in &sheet.parts {
        match part {
            Part::Step(step) => self::step(step, &mut say),
            Part::Prose { title, content } => {
                say(title);
                say(&plain(content));
            }
        }
    }
    text
}

fn step(step: &StepSheet, say: &mut impl FnMut(&str)) {
    say(&step.title);
    step.until.iter().for_each(|until| say(&until.metric));
    say(&plain(&step.prose));
}

/// A text that several have, as it is written down.
mod shared {
    use std::sync::Arc;

    use serde::{Deserialize, Deserializer, Serializer};

    pub(super) fn serialize<S: Serializer>(
        text: &Arc<str>,
        to: S,
    ) -> Result<S::Ok, S::Error> {
        to.serialize_str(text)
    }

    pub(super) fn deserialize<'d, D: Deserializer<'d>>(
        from: D,
    ) -> Result<Arc<str>, D::Error> {
        String::deserialize(from).map(Arc::from)
    }
}
