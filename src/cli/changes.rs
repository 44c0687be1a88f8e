//! `tourier changes`: what differs between two editions, in a reader's words.

use std::path::Path;

use crate::changes::{Became, Change, ChangedItem, Changes, between};
use crate::edition::Edition;
use crate::said;
use crate::sheet::Units;
use crate::statement::Statement;
use crate::words::Words;

use super::args::{As, ChangesArgs};
use super::{Call, Done, Stop, json, open_in, say, show, words};

/// Prints the differences. An edition with an error has no sheets to compare.
pub(super) fn run(call: &Call, options: &ChangesArgs) -> Done {
    let old = edition_of(call, &options.old)?.0;
    let (new, theme) = edition_of(call, &options.new)?;
    let words = words(&theme, &new)?;
    let changes = between(&old, &new, &words);
    let metric = new.content.course.as_ref().is_none_or(|course| course.metric_first);
    let own = if metric { Units::Metric } else { Units::Us };
    let units = options.units.map_or(own, Units::from);
    let text = match options.form {
        As::Text => text(&changes, units, &words),
        As::Json => json(&changes)?,
    };
    say(text.as_bytes())
}

/// An edition without errors.
fn edition_of(
    call: &Call,
    folder: &Path,
) -> Result<(Edition, crate::theme::Theme), Stop> {
    let (edition, theme) = open_in(call.args.theme.as_deref(), folder)?;
    if edition.stops() {
        call.note(&said!("changes-in", folder = folder.display().to_string()));
        show::faults(&edition, &call.words);
        return Err(Stop::Faults);
    }
    Ok((edition, theme))
}

/// The differences as text: a recipe's title, and under it a line for each.
fn text(changes: &Changes, units: Units, words: &Words) -> String {
    let mut text = match (&changes.old, &changes.new) {
        (Some(old), Some(new)) if old != new => {
            words.tell(&said!("changes-from-to", old, new)) + "\n"
        }
        _ => String::new(),
    };
    if changes.is_empty() {
        text += words.get("changes-none");
        text += "\n";
    }
    let recipes = changes.recipes.iter().map(|one| (one, head_of_recipe(one)));
    let techniques = changes.techniques.iter().map(|one| (one, head_of_technique(one)));
    for (entry, head) in recipes.chain(techniques) {
        text += &format!("\n{}\n", words.tell(&head));
        let line = |change: &Change| format!("  {}\n", units.of(&change.text));
        text.extend(entry.changes.iter().map(line));
    }
    text.trim_start_matches('\n').to_owned()
}

fn head_of_recipe(entry: &ChangedItem) -> Statement {
    let title = &entry.title;
    match entry.became {
        Became::Added => said!("changes-new-recipe", title),
        Became::Removed => said!("changes-recipe-left-out", title),
        Became::Changed => said!("changes-of", title),
    }
}

fn head_of_technique(entry: &ChangedItem) -> Statement {
    let title = &entry.title;
    match entry.became {
        Became::Added => said!("changes-new-technique", title),
        Became::Removed => said!("changes-technique-left-out", title),
        Became::Changed => said!("changes-of", title),
    }
}
