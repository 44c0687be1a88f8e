//! The command line: the only room that prints. One file a command.
#![allow(
    clippy::disallowed_methods,
    clippy::print_stdout,
    clippy::print_stderr,
    reason = "this room talks to the terminal"
)]

mod args;
mod changes;
mod class_set;
mod convert;
mod draft;
mod facts;
mod handout;
mod order;
mod preview;
mod proof;
mod publish;
mod scale;
mod shell;
mod show;
mod start;
mod timetable;
mod today;
mod waiting;
mod wrong;

use std::io::{ErrorKind, Write};
use std::path::Path;
use std::process::ExitCode;

use clap::Parser;
use serde::Serialize;

use crate::edition::Edition;
use crate::formula::Scaling;
use crate::model::Recipe;
use crate::paper::{missing_faces, missing_glyphs};
use crate::sheet::Sheet;
use crate::store;
use crate::theme::Theme;
use crate::words::Words;
use args::{Args, Command};

/// Why a command did not do what it was asked.
pub(crate) enum Stop {
    /// Faults in the content, already shown.
    Faults,
    /// Wrong use: what is wrong, and what would be right.
    Use(String),
    /// The machine: disk, permission.
    Machine(String),
}

impl From<store::StoreError> for Stop {
    fn from(error: store::StoreError) -> Self {
        Self::Machine(error.to_string())
    }
}

type Done = Result<(), Stop>;

/// Runs the program with the arguments it was started with.
pub fn run() -> ExitCode {
    let args = match Args::try_parse() {
        Ok(args) => args,
        Err(error) => {
            let typed: Vec<String> =
                std::env::args_os().map(|it| it.to_string_lossy().into_owned()).collect();
            return wrong::say(&error, &typed)
                .map_or_else(|| error.exit(), |message| stop(2, &message));
        }
    };
    args.color.apply();
    match command(&args) {
        Ok(()) => ExitCode::SUCCESS,
        Err(Stop::Faults) => ExitCode::from(1),
        Err(Stop::Use(message)) => stop(2, &message),
        Err(Stop::Machine(message)) => stop(3, &message),
    }
}

fn stop(code: u8, message: &str) -> ExitCode {
    anstream::eprintln!("tourier: {message}");
    ExitCode::from(code)
}

/// Lets a stop by signal leave nothing behind: `stands` says how things are then, where
/// nothing is being written. Asked a second time, it no longer waits for anything.
fn stop_clean(stands: &'static str) -> Done {
    let mut asked = false;
    let on_signal = move || {
        if asked {
            std::process::exit(3);
        }
        asked = true;
        store::halt(|| {
            anstream::eprintln!("tourier: stopped; {stands}");
            std::process::exit(3);
        });
    };
    ctrlc::set_handler(on_signal)
        .map_err(|error| Stop::Machine(format!("cannot listen for a stop: {error}")))
}

/// Writes a result to standard output. A reader that has seen enough is no fault.
fn say(text: &[u8]) -> Done {
    match std::io::stdout().lock().write_all(text) {
        Err(error) if error.kind() != ErrorKind::BrokenPipe => {
            Err(Stop::Machine(format!("cannot write the answer: {error}")))
        }
        _ => Ok(()),
    }
}

fn command(args: &Args) -> Done {
    match &args.command {
        Command::Start(options) => start::run(args, options),
        Command::Publish(options) => publish::run(args, options),
        Command::Preview(options) => preview::run(args, options),
        Command::Handout(options) => handout::run(args, options),
        Command::Proof(options) => proof::run(args, options),
        Command::Facts(options) => facts::run(args, options),
        Command::Scale(options) => scale::run(args, options),
        Command::Timetable(options) => timetable::run(args, options),
        Command::Today(options) => today::run(args, options),
        Command::Order(options) => order::run(args, options),
        Command::Changes(options) => changes::run(args, options),
        Command::Convert(options) => convert::run(args, options),
        Command::Draft(options) => draft::run(args, options),
        Command::Completions(options) => shell::completions(options),
        Command::Manual => shell::manual(),
    }
}

/// Reads and checks the content folder, and loads the theme it is shown with.
fn open(args: &Args) -> Result<(Edition, Theme), Stop> {
    open_in(args.theme.as_deref(), &args.content)
}

/// Says what to do where the content folder is not there.
fn here(content: &Path) -> Done {
    let shown = content.display();
    if content.is_dir() {
        return Ok(());
    }
    if content.exists() {
        return Err(Stop::Use(format!(
            "{shown} is a file, not a content folder; name the folder that holds \
             `course.yaml` with `--content FOLDER`"
        )));
    }
    let begin =
        format!("`tourier start {shown}` writes a small course there to begin from");
    let near = if Path::new("course.yaml").exists() { "." } else { "FOLDER" };
    Err(Stop::Use(format!(
        "there is no content folder {shown}; {begin}, `--content {near}` names another folder"
    )))
}

/// Likewise a content folder that was named otherwise.
fn open_in(theme: Option<&Path>, content: &Path) -> Result<(Edition, Theme), Stop> {
    here(content)?;
    if let Some(folder) = theme.filter(|folder| !folder.is_dir()) {
        let shown = folder.display();
        return Err(Stop::Use(format!(
            "there is no theme in {shown}; `--theme FOLDER` names a folder with the files that \
             differ from the built-in theme"
        )));
    }
    let mut theme = store::theme(theme)?;
    let (sources, mut faults) = store::load(content)?;
    let (media, found) = store::media(content)?;
    faults.extend(found);
    let (faces, found) = store::faces(content)?;
    faults.extend(found);
    for (name, bytes) in faces {
        theme.files.insert(format!("fonts/{name}"), bytes.into());
    }
    let texts = sources.iter().map(|source| (&*source.path, &*source.text));
    faults.extend(missing_glyphs(texts, &theme));
    let mut edition = Edition::new(&sources, media, faults);
    edition.faults.extend(missing_faces(edition.content.families(), &theme));
    let unspoken = crate::check::unspoken(&edition.content, &theme);
    edition.faults.extend(unspoken);
    crate::fault::sort(&mut edition.faults);
    Ok((after(edition, content)?, theme))
}

/// The edition with the one before it, where the course names its folder.
fn after(edition: Edition, content: &Path) -> Result<Edition, Stop> {
    let course = edition.content.course.as_ref();
    let Some(since) = course.and_then(|course| course.since.clone()) else {
        return Ok(edition);
    };
    let Some(folder) = store::below(content, &since.value) else {
        return Ok(edition.after(None));
    };
    let (sources, mut faults) = store::load(&folder)?;
    let (media, found) = store::media(&folder)?;
    faults.extend(found);
    Ok(edition.after(Some(Edition::new(&sources, media, faults))))
}

/// Likewise the content folder of the options, where no fault stops the work, and the words
/// of its language.
fn sound(args: &Args) -> Result<(Edition, Words), Stop> {
    let (edition, theme) = open(args)?;
    stand(&edition)?;
    let words = words(&theme, &edition)?;
    Ok((edition, words))
}

/// Shows the faults of an edition that has an error: nothing of it is worked out.
fn stand(edition: &Edition) -> Done {
    if edition.stops() {
        show::faults(edition);
        return Err(Stop::Faults);
    }
    Ok(())
}

/// An answer for programs, ending its line.
fn json(value: &impl Serialize) -> Result<String, Stop> {
    serde_json::to_string_pretty(value)
        .map(|json| json + "\n")
        .map_err(|error| Stop::Machine(error.to_string()))
}

/// A recipe worked out at a scale.
fn scaled(
    edition: &Edition,
    recipe: &Recipe,
    scaling: &Scaling,
    words: &Words,
) -> Result<Sheet, Stop> {
    edition.sheet(recipe, scaling, words).map_err(|reason| {
        Stop::Use(format!("`{}` cannot be scaled so: {reason}", recipe.name))
    })
}

/// The words of the theme in the course's language, else in English.
fn words(theme: &Theme, edition: &Edition) -> Result<Words, Stop> {
    let language =
        edition.content.course.as_ref().map_or("en", |course| &course.language);
    crate::read::words_in(theme, language).map_err(|fault| {
        let path = &*fault.place.file;
        let text = theme.text(path);
        let before = text.get(..fault.place.start).unwrap_or(text);
        let line = 1 + before.matches('\n').count();
        Stop::Use(format!("the theme's {path}:{line}: {}", fault.message))
    })
}

/// A recipe by its file name. With an error anywhere in the content nothing is worked out.
fn recipe<'a>(edition: &'a Edition, name: &str) -> Result<&'a Recipe, Stop> {
    stand(edition)?;
    let stem = stem(name);
    edition.content.recipe(stem).ok_or_else(|| {
        let known = edition.content.recipes.iter().map(|recipe| recipe.name.as_str());
        nowhere("recipe", stem, &known.collect::<Vec<_>>())
    })
}

/// `1 page`, `2 pages`.
fn counted(count: usize, word: &str) -> String {
    let end = if count == 1 { "" } else { "s" };
    format!("{count} {word}{end}")
}

/// The name in a path such as `recipes/crescents.md`.
fn stem(name: &str) -> &str {
    Path::new(name).file_stem().and_then(|stem| stem.to_str()).unwrap_or(name)
}

/// That there is no such file, and what there is.
fn nowhere(kind: &str, name: &str, known: &[&str]) -> Stop {
    Stop::Use(match crate::fault::nearest(name, known.iter().copied()) {
        Some(near) => format!("there is no {kind} `{name}`; did you mean `{near}`?"),
        None if known.is_empty() => {
            format!("there is no {kind} `{name}`: the content folder holds none")
        }
        None => format!("there is no {kind} `{name}`; there are: {}", known.join(", ")),
    })
}
