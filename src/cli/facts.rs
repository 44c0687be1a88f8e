//! `tourier facts`: everything worked out about a recipe, as JSON.

use crate::read::{Shape, schema};
use crate::sheet::Sheet;

use super::args::{Args, FactsArgs, SchemaOf};
use super::{Done, Stop, json, open, recipe, say, words};

/// Prints the facts, or their schema.
pub(super) fn run(args: &Args, options: &FactsArgs) -> Done {
    if let Some(of) = options.schema {
        // `--schema course` names a recipe, and `--schema=course` what it describes.
        if let Some(name) = &options.recipe {
            return Err(Stop::Use(format!(
                "write --schema={name} for the schema of a text, or leave `{name}` out for \
                 that of the facts"
            )));
        }
        return schema_of(of);
    }
    let (edition, theme) = open(args)?;
    let words = words(&theme, &edition)?;
    let name = options.recipe.as_deref().unwrap_or_default();
    let recipe = recipe(&edition, name)?;
    let sheet = edition
        .sheet(recipe, &options.scaling.scaling()?, &words)
        .map_err(|reason| Stop::Use(format!("`{name}` cannot be scaled so: {reason}")))?;
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
    };
    say(schema(shape).as_bytes())
}

fn print(value: &impl serde::Serialize) -> Done {
    say(json(value)?.as_bytes())
}
