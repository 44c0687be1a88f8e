//! `tourier publish`: checks everything, then writes what changed.

use std::io::IsTerminal;
use std::path::Path;

use indicatif::{ProgressBar, ProgressStyle};

use crate::product::{Stock, Workshop};
use crate::store::{self, Look, Outcome, Place, PublishError, Target};

use super::args::{Args, OUTPUT, PublishArgs};
use super::{Done, Stop, counted, open, say, show, stop_clean, words};

/// What is true of the output folder whenever a publish stops before its end.
const STANDS: &str = "nothing is written, and the last edition stands";

/// Publishes the course; with an error in the content nothing is written.
pub(super) fn run(args: &Args, options: &PublishArgs) -> Done {
    stop_clean(STANDS)?;
    let inputs: Vec<&Path> = [Some(args.content.as_path()), args.theme.as_deref()]
        .into_iter()
        .flatten()
        .collect();
    let target = target(options, &inputs)?;
    let from = store::fingerprint(&inputs);
    if let Some(kept) = from.as_deref().and_then(|from| target.stands(from)) {
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
    let outcome = target.publish((&workshop, &from), &step);
    bar.finish_and_clear();
    said(args, &outcome.map_err(stop)?, options)
}

/// The output folder, where it is one. Only a folder that was named is asked what lies in
/// it: `output` is there to be published to.
fn target(options: &PublishArgs, inputs: &[&Path]) -> Result<Target, Stop> {
    let output = options.folder();
    let among_others = options.among_others || output == Path::new(OUTPUT);
    let look = if options.thorough { Look::Thorough } else { Look::Quick };
    Ok(Target::open(&Place { output, inputs, among_others }, look)?)
}

fn said(args: &Args, outcome: &Outcome, options: &PublishArgs) -> Done {
    for note in notes(outcome) {
        anstream::eprintln!("{note}");
    }
    if !args.quiet {
        say(report(outcome, &options.folder().display().to_string()).as_bytes())?;
    }
    if let Some(apart) = outcome.apart.as_ref().filter(|_| !args.quiet) {
        let name = apart.file_name().unwrap_or_default();
        let folder = options.folder().with_file_name(name);
        let folder = folder.display();
        say(format!("what is yours alone is in {folder}/: keep it off the web\n")
            .as_bytes())?;
    }
    Ok(())
}

/// What is worth knowing beyond what was made.
fn notes(outcome: &Outcome) -> Vec<String> {
    let mut notes = Vec::new();
    if let [first, more @ ..] = outcome.mended.as_slice() {
        let others = match more.len() {
            0 => String::new(),
            1 => format!(" and {}", more[0]),
            count => format!(" and {count} other files"),
        };
        notes.push(format!(
            "{first}{others} had been changed or taken away since the last publish: made again"
        ));
    }
    let moved = outcome.moved.iter();
    notes.extend(moved.map(|path| {
        format!(
            "a file of others had no place in the new edition; it is kept as {}",
            path.display()
        )
    }));
    if outcome.recounted {
        notes.push(
            "this version of tourier counts otherwise than the one that published last: \
             where a number differs and you did not touch its text, that is why"
                .to_owned(),
        );
    }
    notes
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
        PublishError::Stopped => Stop::Machine(format!("stopped; {STANDS}")),
        PublishError::Uncleared(error) => Stop::Machine(format!(
            "{error}; the new edition stands, and the next publish tries again"
        )),
        PublishError::Make(path, reason) => {
            anstream::eprintln!("error: {path} cannot be made: {reason}");
            anstream::eprintln!("nothing is written; the last edition stands");
            Stop::Faults
        }
    }
}

fn are(count: usize) -> &'static str {
    if count == 1 { "is" } else { "are" }
}

/// What was made, by kind, and where.
fn report(outcome: &Outcome, folder: &str) -> String {
    if outcome.made.is_empty() && outcome.removed.is_empty() {
        let (files, are) = (counted(outcome.kept, "file"), are(outcome.kept));
        return format!("{files} in {folder}/ {are} up to date; nothing made\n");
    }
    let of =
        |ending: &str| outcome.made.iter().filter(|path| path.ends_with(ending)).count();
    let kinds = [(of(".html"), "page"), (of(".pdf"), "handout"), (of(".svg"), "drawing")];
    let known: usize = kinds.iter().map(|(count, _)| count).sum();
    let made: Vec<String> = kinds
        .iter()
        .chain([&(outcome.made.len() - known, "other file")])
        .filter(|(count, _)| *count > 0)
        .map(|(count, kind)| counted(*count, kind))
        .collect();
    let mut text = format!(
        "made {}",
        if made.is_empty() { "nothing".into() } else { made.join(", ") }
    );
    let were = if outcome.kept == 1 { "was up to date" } else { "were up to date" };
    for (count, what) in [(outcome.kept, were), (outcome.removed.len(), "taken away")] {
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
        let outcome = Outcome { made, kept: 2, ..Outcome::default() };
        let report = report(&outcome, "output");
        assert!(
            report
                .starts_with("made 1 page, 1 handout, 1 other file; 2 were up to date\n")
        );
        let idle = Outcome { kept: 7, ..Outcome::default() };
        assert!(super::report(&idle, "output").contains("nothing made"));
    }
}
