//! `tourier facts`: everything worked out about a recipe, as JSON.

use crate::read::{Shape, schema};
use crate::said;
use crate::sheet::Sheet;

use super::args::{FactsArgs, SchemaOf};
use super::{Call, Done, Stop, in_ways, json, open, recipe, say, words};

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
    let name = options.recipe.as_deref().unwrap_or_default();
    let name = &in_ways(call, &mut edition, name, &options.scaling.with)?;
    let recipe = recipe(call, &edition, name)?;
    let sheet =
        edition.sheet(recipe, &options.scaling.scaling()?, &words).map_err(|reason| {
            Stop::Use(said!("scale-cannot", name, reason = reason.said()))
        })?;
    print(&sheet)
}

/// Prints a schema: the facts' own, or that of a text.
fn schema_of(of: SchemaOf) -> Done {
    let shape = match of {
        SchemaOf::Facts => return print(&schemars::schema_for!(Sheet)),
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
