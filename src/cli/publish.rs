//! `tourier publish`: checks everything, then writes what changed.

use std::io::IsTerminal;
use std::path::Path;

use indicatif::{ProgressBar, ProgressStyle};

use crate::product::{Stock, Workshop};
use crate::store::{self, Outcome, PublishError};

use super::args::{Args, PublishArgs};
use super::{Done, Stop, open, say, show, words};

/// Publishes the course; with an error in the content nothing is written.
pub(super) fn run(args: &Args, options: &PublishArgs) -> Done {
    let inputs: Vec<&Path> = [Some(args.content.as_path()), args.theme.as_deref()]
        .into_iter()
        .flatten()
        .collect();
    let from = store::fingerprint(&inputs);
    if let Some(kept) = stands(options, from.as_deref())? {
        return said(args, &Outcome { kept, ..Outcome::default() }, options);
    }
    let (edition, theme) = open(args)?;
    if !args.quiet || edition.stops() {
        show::faults(&edition);
    }
    if edition.stops() {
        anstream::eprintln!("nothing is written; the last edition stands");
        return Err(Stop::Faults);
    }
    store::apart(&options.to, &inputs)?;
    let words = words(&theme, &edition)?;
    let stock = Stock::new(&edition, &words, &theme).ok_or(Stop::Faults)?;
    let workshop = Workshop::new(&stock).map_err(|fault| stop(fault.into()))?;
    let bar = progress(args);
    let step = |done: usize, all: usize| {
        bar.set_length(all as u64);
        bar.set_position(done as u64);
    };
    // Known again next time only where nothing has to be said of it then, and nothing was
    // changed while it was read.
    let known = edition.faults.is_empty() && from == store::fingerprint(&inputs);
    let from = from.filter(|_| known).unwrap_or_default();
    let outcome = store::publish(&options.to, (&workshop, &from), &step);
    bar.finish_and_clear();
    said(args, &outcome.map_err(stop)?, options)
}

/// How many files of the edition stand, where there is nothing to do.
fn stands(options: &PublishArgs, from: Option<&str>) -> Result<Option<usize>, Stop> {
    Ok(from.map_or(Ok(None), |from| store::stands(&options.to, from))?)
}

fn said(args: &Args, outcome: &Outcome, options: &PublishArgs) -> Done {
    if !args.quiet {
        say(report(outcome, &options.to.display().to_string()).as_bytes())?;
    }
    Ok(())
}

/// A bar on a terminal, nothing in a pipe or where none is wanted.
fn progress(args: &Args) -> ProgressBar {
    if args.quiet || !std::io::stderr().is_terminal() {
        return ProgressBar::hidden();
    }
    let style = ProgressStyle::with_template("{bar:32} {pos}/{len} files")
        .unwrap_or_else(|_| ProgressStyle::default_bar());
    ProgressBar::new(0).with_style(style)
}

fn stop(error: PublishError) -> Stop {
    match error {
        PublishError::Template(fault) => Stop::Use(fault.to_string()),
        PublishError::Store(error) => {
            Stop::Machine(format!("{error}; the last edition stands"))
        }
        PublishError::Make(path, reason) => {
            anstream::eprintln!("error: {path} cannot be made: {reason}");
            anstream::eprintln!("nothing is written; the last edition stands");
            Stop::Faults
        }
    }
}

/// What was made, by kind, and where.
fn report(outcome: &Outcome, folder: &str) -> String {
    if outcome.made.is_empty() && outcome.removed.is_empty() {
        return format!(
            "{} files in {folder}/ are up to date; nothing made\n",
            outcome.kept
        );
    }
    let of =
        |ending: &str| outcome.made.iter().filter(|path| path.ends_with(ending)).count();
    let kinds =
        [(of(".html"), "pages"), (of(".pdf"), "handouts"), (of(".svg"), "drawings")];
    let known: usize = kinds.iter().map(|(count, _)| count).sum();
    let made: Vec<String> = kinds
        .iter()
        .chain([&(outcome.made.len() - known, "other files")])
        .filter(|(count, _)| *count > 0)
        .map(|(count, kind)| format!("{count} {kind}"))
        .collect();
    let mut text = format!(
        "made {}",
        if made.is_empty() { "nothing".into() } else { made.join(", ") }
    );
    for (count, what) in
        [(outcome.kept, "were up to date"), (outcome.removed.len(), "taken away")]
    {
        if count > 0 {
            text.push_str(&format!("; {count} {what}"));
        }
    }
    format!("{text}\nthe course begins at {folder}/index.html\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_report_counts_by_kind() {
        let made = ["index.html", "a/a.pdf", "b.css"].map(str::to_owned).to_vec();
        let outcome = Outcome { made, kept: 2, removed: Vec::new() };
        let report = report(&outcome, "output");
        assert!(
            report.starts_with(
                "made 1 pages, 1 handouts, 1 other files; 2 were up to date\n"
            )
        );
        let idle = Outcome { kept: 7, ..Outcome::default() };
        assert!(super::report(&idle, "output").contains("nothing made"));
    }
}
