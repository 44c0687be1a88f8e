//! `tourier changes`: what differs between two editions, in a reader's words.

use std::path::Path;

use crate::changes::{Became, Change, Changes, Entry, between};
use crate::edition::Edition;
use crate::sheet::Units;

use super::args::{Args, As, ChangesArgs};
use super::{Done, Stop, json, open_in, say, show, words};

/// Prints the differences. An edition with an error has no sheets to compare.
pub(super) fn run(args: &Args, options: &ChangesArgs) -> Done {
    let old = edition_of(args, &options.old)?.0;
    let (new, theme) = edition_of(args, &options.new)?;
    let words = words(&theme, &new)?;
    let changes = between(&old, &new, &words);
    let metric = new.content.course.as_ref().is_none_or(|course| course.metric_first);
    let own = if metric { Units::Metric } else { Units::Us };
    let units = options.units.map_or(own, Units::from);
    let text = match options.form {
        As::Text => text(&changes, units),
        As::Json => json(&changes)?,
    };
    say(text.as_bytes())
}

/// An edition without errors.
fn edition_of(
    args: &Args,
    folder: &Path,
) -> Result<(Edition, crate::theme::Theme), Stop> {
    let (edition, theme) = open_in(args.theme.as_deref(), folder)?;
    if edition.stops() {
        anstream::eprintln!("in {}:", folder.display());
        show::faults(&edition);
        return Err(Stop::Faults);
    }
    Ok((edition, theme))
}

/// The differences as text: a recipe's title, and under it a line for each.
fn text(changes: &Changes, units: Units) -> String {
    let mut text = match (&changes.old, &changes.new) {
        (Some(old), Some(new)) if old != new => format!("from {old} to {new}\n"),
        _ => String::new(),
    };
    if changes.is_empty() {
        text.push_str("nothing differs that a reader would see\n");
    }
    for (kind, entries) in
        [("recipe", &changes.recipes), ("technique", &changes.techniques)]
    {
        text.extend(entries.iter().map(|one| entry(one, kind, units)));
    }
    text.trim_start_matches('\n').to_owned()
}

fn entry(entry: &Entry, kind: &str, units: Units) -> String {
    let title = &entry.title;
    match entry.became {
        Became::Added => format!("\n{title} (new {kind})\n"),
        Became::Removed => format!("\n{title} ({kind} left out)\n"),
        Became::Changed => {
            let line = |change: &Change| format!("  {}\n", units.of(&change.text));
            let lines: String = entry.changes.iter().map(line).collect();
            format!("\n{title}\n{lines}")
        }
    }
}
