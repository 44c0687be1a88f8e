//! `tourier facts`: everything worked out about a recipe, or several, as JSON.

use crate::read::{Shape, schema};
use crate::said;
use crate::sheet::{Sheet, TogetherSheet, making};

use super::args::{FactsArgs, SchemaOf};
use super::together::{Recipes, names};
use super::{Call, Done, Stop, json, open, say, words};

/// Prints the facts, or their schema.
pub(super) fn run(call: &Call, options: &FactsArgs) -> Done {
    if let Some(of) = options.schema {
        // `--schema course` names a recipe, and `--schema=course` what it describes.
        if let Some(name) = &options.recipe {
            return Err(Stop::Use(said!("facts-schema", name)));
        }
        return schema_of(of);
    }
    let (mut edition, theme) = open(call)?;
    let words = words(&theme, &edition)?;
    let list = options.recipe.as_deref().unwrap_or_default();
    let names = names(call, &mut edition, list, &options.scaling.with)?;
    let recipes = Recipes::new(call, &edition, &names, &options.scaling)?;
    let sheets = recipes.sheets(&words)?;
    if let ([_], [alone]) = (&*names, &*sheets) {
        return print(alone);
    }
    let doughs = recipes.shared()?;
    let doughs = doughs.iter().map(making::shared_fact).collect();
    print(&TogetherSheet { together: 1, doughs, recipes: sheets })
}

/// Prints a schema: the facts' own, or that of a text.
fn schema_of(of: SchemaOf) -> Done {
    let shape = match of {
        SchemaOf::Facts => return print(&schemars::schema_for!(Sheet)),
        SchemaOf::Together => return print(&schemars::schema_for!(TogetherSheet)),
        SchemaOf::Course => Shape::Course,
        SchemaOf::Pantry => Shape::Pantry,
        SchemaOf::Glossary => Shape::Glossary,
        SchemaOf::Class => Shape::Class,
        SchemaOf::Recipe => Shape::Recipe,
        SchemaOf::Technique => Shape::Technique,
        SchemaOf::Translation => Shape::Translation,
    };
    say(schema(shape).as_bytes())
}

fn print(value: &impl serde::Serialize) -> Done {
    say(json(value)?.as_bytes())
}
