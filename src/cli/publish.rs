//! `tourier publish`: checks everything, then writes what changed.

use std::io::IsTerminal;
use std::path::Path;

use indicatif::{ProgressBar, ProgressStyle};

use crate::preview::Publish;
use crate::product::{Inputs, Products};
use crate::said;
use crate::statement::Statement;
use crate::store::{self, Look, Outcome, Place, PublishError, Target};

use super::args::{OUTPUT, PublishArgs};
use super::courses::several;
use super::{Call, Done, Stop, further, open, show, stop_clean, words};

/// Publishes the course, or several side by side; of one with an error in its content nothing
/// is written.
pub(super) fn run(call: &Call, options: &PublishArgs) -> Done {
    stop_clean(call, said!("publish-stands"))?;
    match call.args.content.as_slice() {
        [] | [_] => one(call, options),
        courses => several(call, courses, options),
    }
}

/// Publishes one course.
pub(super) fn one(call: &Call, options: &PublishArgs) -> Done {
    let bar = progress(call);
    let step = |done: usize, all: usize| {
        bar.set_length(all as u64);
        bar.set_position(done as u64);
    };
    let outcome = publish(call, options, &step);
    bar.finish_and_clear();
    report(call, &outcome?, options)
}

/// Publishing asked for at the desk: it says what it made.
pub(super) fn from_desk(call: Call) -> Publish {
    Box::new(move |step| {
        let options = PublishArgs::default();
        let told = |stop| match stop {
            Stop::Faults => call.tell(&said!("publish-unwritten")),
            Stop::Use(why) | Stop::Machine(why) => call.tell(&why),
        };
        let content = &call.content;
        let (texts, _) = store::load(content).map_err(|why| told(why.into()))?;
        let outcome = publish(&call, &options, step).map_err(told)?;
        // The edition stands; without them only the next one is not compared with it.
        let _ = store::keep_published(content, &texts);
        let folder = options.folder().display().to_string();
        let lines = notes(&outcome).into_iter().chain(made(&outcome, &folder));
        Ok(lines.map(|line| call.tell(&line)).collect())
    })
}

/// What publishing did; with an error in the content nothing is written.
fn publish(
    call: &Call,
    options: &PublishArgs,
    step: &(dyn Fn(usize, usize) + Sync),
) -> Result<Outcome, Stop> {
    let read: Vec<&Path> = [Some(call.content.as_path()), call.args.theme.as_deref()]
        .into_iter()
        .flatten()
        .collect();
    let target = target(options, &read)?;
    let from = store::fingerprint(&read);
    if let Some(kept) = from.as_deref().and_then(|from| target.stands(from)) {
        return Ok(Outcome { kept, ..Outcome::default() });
    }
    let (edition, theme) = open(call)?;
    if !call.args.quiet || edition.stops() {
        show::faults(&edition, &call.words);
    }
    if edition.stops() {
        call.note(&said!("publish-unwritten"));
        return Err(Stop::Faults);
    }
    let words = words(&theme, &edition)?;
    let further = further(&theme, &edition)?;
    let all = Inputs::all(&edition, &words, &further, &theme);
    let products: Result<Vec<Products>, _> = all.iter().map(Products::new).collect();
    let products = products.map_err(|fault| stop(call, fault.into()))?;
    // Known again next time only where nothing has to be said of it then, and nothing was
    // changed while it was read.
    let known = edition.faults.is_empty() && from == store::fingerprint(&read);
    let from = from.filter(|_| known).unwrap_or_default();
    target.publish((&products, &from), &step).map_err(|error| stop(call, error))
}

/// The output folder, where it is one. Only a folder that was named is asked what lies in
/// it: `output` is there to be published to.
fn target(options: &PublishArgs, inputs: &[&Path]) -> Result<Target, Stop> {
    let output = options.folder();
    let among_others = options.among_others || output == Path::new(OUTPUT);
    let look = if options.thorough { Look::Thorough } else { Look::Quick };
    let target = Target::open(&Place { output, inputs, among_others }, look)?;
    Ok(target.sharing(options.shared.as_deref()))
}

/// Says what was made, and what is worth knowing beyond that.
fn report(call: &Call, outcome: &Outcome, options: &PublishArgs) -> Done {
    notes(outcome).iter().for_each(|note| call.note(note));
    if call.args.quiet {
        return Ok(());
    }
    let folder = options.folder().display().to_string();
    made(outcome, &folder).iter().try_for_each(|line| call.say(line))?;
    let Some(apart) = &outcome.apart else { return Ok(()) };
    let name = apart.file_name().unwrap_or_default();
    let folder = options.folder().with_file_name(name).display().to_string();
    call.say(&said!("publish-apart", folder))
}

/// What is worth knowing beyond what was made.
fn notes(outcome: &Outcome) -> Vec<Statement> {
    let mut notes = Vec::new();
    match outcome.mended.as_slice() {
        [] => {}
        [file] => notes.push(said!("publish-mended", file)),
        [file, other] => notes.push(said!("publish-mended-two", file, other)),
        [file, more @ ..] => {
            let count = more.len();
            notes.push(said!("publish-mended-more", file, count));
        }
    }
    let moved = outcome.moved.iter();
    notes.extend(
        moved.map(|path| said!("publish-kept", path = path.display().to_string())),
    );
    if outcome.recounted {
        notes.push(said!("publish-recounted"));
    }
    notes
}

/// A bar on a terminal, nothing in a pipe or where none is wanted.
fn progress(call: &Call) -> ProgressBar {
    if call.args.quiet || !std::io::stderr().is_terminal() {
        return ProgressBar::hidden();
    }
    let files = call.words.get("publish-progress");
    let style = ProgressStyle::with_template(&["{bar:32} {pos}/{len} ", files].concat())
        .unwrap_or_else(|_| ProgressStyle::default_bar());
    ProgressBar::new(0).with_style(style)
}

fn stop(call: &Call, error: PublishError) -> Stop {
    match error {
        PublishError::Template(fault) => Stop::Use(fault.said()),
        PublishError::Store(error) => {
            Stop::Machine(said!("publish-old-stands", error = error.said()))
        }
        PublishError::Stopped => {
            Stop::Machine(said!("cli-stopped", stands = said!("publish-stands")))
        }
        PublishError::Uncleared(error) => {
            Stop::Machine(said!("publish-new-stands", error = error.said()))
        }
        PublishError::Make(path, why) => {
            call.note(&said!("publish-cannot-make", path, reason = why.said()));
            call.note(&said!("publish-unwritten"));
            Stop::Faults
        }
    }
}

/// What was made, by kind, and where.
fn made(outcome: &Outcome, folder: &str) -> Vec<Statement> {
    let (kept, removed) = (outcome.kept, outcome.removed.len());
    if outcome.made.is_empty() && removed == 0 {
        return vec![said!("publish-idle", count = kept, folder)];
    }
    let mut line = match kinds(outcome) {
        kinds if kinds.is_empty() => said!("publish-made-nothing"),
        kinds => said!("publish-made", kinds),
    };
    if kept > 0 {
        line = said!("publish-and-kept", made = line, count = kept);
    }
    if removed > 0 {
        line = said!("publish-and-removed", made = line, count = removed);
    }
    vec![line, said!("publish-begins", folder)]
}

/// How many files of each kind were made.
fn kinds(outcome: &Outcome) -> Vec<Statement> {
    let of =
        |ending: &str| outcome.made.iter().filter(|path| path.ends_with(ending)).count();
    let (pages, handouts, drawings) = (of(".html"), of(".pdf"), of(".svg"));
    let others = outcome.made.len() - pages - handouts - drawings;
    let kinds = [
        (pages, said!("publish-pages", count = pages)),
        (handouts, said!("publish-handouts", count = handouts)),
        (drawings, said!("publish-drawings", count = drawings)),
        (others, said!("publish-others", count = others)),
    ];
    kinds.into_iter().filter(|(count, _)| *count > 0).map(|(_, kind)| kind).collect()
}

#[cfg(test)]
mod tests {
    use super::super::english;
    use super::*;

    #[test]
    fn the_report_counts_by_kind() {
        let said = |outcome: &Outcome| -> Vec<String> {
            let words = english();
            made(outcome, "output").iter().map(|line| words.tell(line)).collect()
        };
        let files = ["index.html", "a/a.pdf", "b.css"].map(str::to_owned).to_vec();
        let outcome = Outcome { made: files, kept: 2, ..Outcome::default() };
        let line = "made 1 page, 1 handout, 1 other file; 2 were up to date";
        assert_eq!(said(&outcome), [line, "the course begins at output/index.html"]);
        let idle = Outcome { kept: 7, ..Outcome::default() };
        assert_eq!(said(&idle), ["7 files in output/ are up to date; nothing made"]);
    }
}
