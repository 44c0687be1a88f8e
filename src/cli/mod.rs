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
mod courses;
mod draft;
mod editor;
mod facts;
mod handout;
mod help;
mod note;
mod order;
mod preview;
mod proof;
mod publish;
mod scale;
mod scan;
mod shell;
mod show;
mod start;
mod timetable;
mod today;
mod together;
mod waiting;
mod wrong;

use std::collections::BTreeMap;
use std::io::{ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::{Mutex, PoisonError};

use clap::FromArgMatches;
use serde::Serialize;

use crate::edition::{Edition, Further};
use crate::fault::Fault;
use crate::formula::Scaling;
use crate::media::Medium;
use crate::model::Recipe;
use crate::paper::{missing_faces, missing_glyphs};
use crate::preview::Typed;
use crate::read::{Source, is_bench, words_in};
use crate::said;
use crate::sheet::Sheet;
use crate::statement::{Statement, machine};
use crate::store;
use crate::theme::Theme;
use crate::words::Words;
use args::{Args, Command};

/// Why a command did not do what it was asked.
pub(crate) enum Stop {
    /// Faults in the content, already shown.
    Faults,
    /// Wrong use: what is wrong, and what would be right.
    Use(Statement),
    /// The machine: disk, permission.
    Machine(Statement),
}

impl From<store::StoreError> for Stop {
    fn from(error: store::StoreError) -> Self {
        Self::Machine(error.said())
    }
}

type Done = Result<(), Stop>;

/// What a command works with: what was typed, and the words that it answers in.
#[derive(Clone)]
struct Call {
    args: Args,
    /// The content folder that it is about.
    content: PathBuf,
    words: Words,
}

impl Call {
    /// The words are those of the course's language, as far as that can be read; else
    /// English ones. A fault in the theme is said where its words are needed.
    fn new(args: Args) -> Self {
        let named = args.content.first().cloned();
        let content = named.unwrap_or_else(|| PathBuf::from(args::CONTENT));
        let read = if let Command::Changes(options) = &args.command {
            &options.new
        } else {
            &content
        };
        let words = spoken(args.theme.as_deref(), read);
        Self { args, content, words }
    }

    /// The same for another of the content folders that were named.
    fn of(&self, content: &Path) -> Self {
        let words = spoken(self.args.theme.as_deref(), content);
        Self { args: self.args.clone(), content: content.to_owned(), words }
    }

    /// What a statement says.
    fn tell(&self, statement: &Statement) -> String {
        self.words.tell(statement)
    }

    /// Writes a statement to standard output, as a line of its own.
    fn say(&self, statement: &Statement) -> Done {
        say((self.tell(statement) + "\n").as_bytes())
    }

    /// Writes a statement to standard error.
    fn note(&self, statement: &Statement) {
        anstream::eprintln!("{}", self.tell(statement));
    }
}

/// The words of a course's language, as far as that can be read; else English ones.
fn spoken(theme: Option<&Path>, content: &Path) -> Words {
    let theme = store::theme(theme).unwrap_or_else(|_| Theme::built_in());
    store::language(content)
        .filter(|language| theme.speaks(language))
        .and_then(|language| words_in(&theme, &language).ok())
        .unwrap_or_else(english)
}

/// The program's own words.
fn english() -> Words {
    words_in(&Theme::built_in(), "en").unwrap_or_default()
}

/// Runs the program with the arguments it was started with.
pub fn run() -> ExitCode {
    let parsed = help::grammar().try_get_matches();
    let args = match parsed.and_then(|typed| Args::from_arg_matches(&typed)) {
        Ok(args) => args,
        Err(error) => return not_run(&error),
    };
    args.color.apply();
    let call = Call::new(args);
    match command(&call) {
        Ok(()) => ExitCode::SUCCESS,
        Err(Stop::Faults) => ExitCode::from(1),
        Err(Stop::Use(message)) => stop(2, &message, &call.words),
        Err(Stop::Machine(message)) => stop(3, &message, &call.words),
    }
}

/// Says what is wrong with the words that were typed, or the help that they ask for.
fn not_run(error: &clap::Error) -> ExitCode {
    let typed: Vec<String> =
        std::env::args_os().map(|it| it.to_string_lossy().into_owned()).collect();
    let content = wrong::value_of("--content", &typed).unwrap_or(args::CONTENT);
    let theme = wrong::value_of("--theme", &typed).map(Path::new);
    let words = spoken(theme, Path::new(content));
    match wrong::say(error, &typed) {
        Some(message) => stop(2, &message, &words),
        None => help::asked(&words),
    }
}

fn stop(code: u8, message: &Statement, words: &Words) -> ExitCode {
    tell_stop(message, words);
    ExitCode::from(code)
}

/// Says why a command stopped.
fn tell_stop(message: &Statement, words: &Words) {
    anstream::eprintln!("{}", words.tell(&said!("cli-stop", message)));
}

/// Lets a stop by signal leave nothing behind: `stands` says how things are then, where
/// nothing is being written. Asked a second time, it no longer waits for anything.
fn stop_clean(call: &Call, stands: Statement) -> Done {
    let stopped = call.tell(&said!("cli-stop", message = said!("cli-stopped", stands)));
    let mut asked = false;
    let on_signal = move || {
        if asked {
            std::process::exit(3);
        }
        asked = true;
        store::halt(|| {
            anstream::eprintln!("{stopped}");
            std::process::exit(3);
        });
    };
    ctrlc::set_handler(on_signal)
        .map_err(|error| Stop::Machine(said!("cli-no-stop", error = machine(&error))))
}

/// Writes a result to standard output. A reader that has seen enough is no fault.
fn say(text: &[u8]) -> Done {
    match std::io::stdout().lock().write_all(text) {
        Err(error) if error.kind() != ErrorKind::BrokenPipe => {
            Err(Stop::Machine(said!("cli-no-answer", error = machine(&error))))
        }
        _ => Ok(()),
    }
}

fn command(call: &Call) -> Done {
    let several = call.args.content.len() > 1;
    if several && !matches!(call.args.command, Command::Publish(_)) {
        return Err(Stop::Use(said!("typed-twice", one = "--content")));
    }
    match &call.args.command {
        Command::Start(options) => start::run(call, options),
        Command::Publish(options) => publish::run(call, options),
        Command::Preview(options) => preview::run(call, options),
        Command::Editor => editor::run(call),
        Command::Handout(options) => handout::run(call, options),
        Command::Proof(options) => proof::run(call, options),
        Command::Facts(options) => facts::run(call, options),
        Command::Scale(options) => scale::run(call, options),
        Command::Timetable(options) => timetable::run(call, options),
        Command::Today(options) => today::run(call, options),
        Command::Note(options) => note::run(call, options),
        Command::Order(options) => order::run(call, options),
        Command::Changes(options) => changes::run(call, options),
        Command::Convert(options) => convert::run(call, options),
        Command::Draft(options) => draft::run(call, options),
        Command::Completions(options) => shell::completions(call, options),
        Command::Manual => shell::manual(call),
        Command::Help(options) => help::run(call, options),
    }
}

/// Reads and checks the content folder, and loads the theme it is shown with.
fn open(call: &Call) -> Result<(Edition, Theme), Stop> {
    open_in(call.args.theme.as_deref(), &call.content)
}

/// What tells a content folder from others.
const COURSE: &str = "course.yaml";

/// Says what to do where the content folder is not there.
fn here(content: &Path) -> Done {
    let shown = content.display().to_string();
    if content.is_dir() {
        return Ok(());
    }
    if content.exists() {
        return Err(Stop::Use(said!("content-file", folder = shown)));
    }
    let near = if Path::new(COURSE).exists() { "." } else { "FOLDER" };
    Err(Stop::Use(said!("content-none", folder = shown, near)))
}

/// What a command that is advised needs to be told to read this folder: nothing where it
/// is read anyway.
fn content_option(folder: &Path) -> String {
    let shown = folder.display().to_string();
    if folder.components().eq(Path::new("content").components()) {
        String::new()
    } else if shown.contains(char::is_whitespace) {
        format!(" --content \"{shown}\"")
    } else {
        format!(" --content {shown}")
    }
}

/// Likewise a content folder that was named otherwise.
fn open_in(theme: Option<&Path>, content: &Path) -> Result<(Edition, Theme), Stop> {
    open_typed(theme, content, &Typed::new(), &Pictures::default())
}

/// Likewise with texts that are typed in place of those that are saved.
fn open_typed(
    theme: Option<&Path>,
    content: &Path,
    typed: &Typed,
    pictures: &Pictures,
) -> Result<(Edition, Theme), Stop> {
    here(content)?;
    if let Some(folder) = theme.filter(|folder| !folder.is_dir()) {
        let shown = folder.display().to_string();
        return Err(Stop::Use(said!("theme-none", folder = shown)));
    }
    opened(loaded(theme, content, pictures)?.with(typed), content)
}

/// A content folder as it stands on disk.
#[derive(Clone)]
struct Loaded {
    sources: Vec<Source>,
    media: Vec<Medium>,
    faults: Vec<Fault>,
    theme: Theme,
}

impl Loaded {
    /// The same with texts in place of those on disk.
    fn with(mut self, laid: &BTreeMap<String, String>) -> Self {
        store::lay_over(&mut self.sources, &mut self.faults, laid);
        self
    }
}

/// Reads a content folder and the theme that it is shown with.
fn loaded(
    theme: Option<&Path>,
    content: &Path,
    pictures: &Pictures,
) -> Result<Loaded, Stop> {
    let mut theme = store::theme(theme)?;
    let (sources, mut faults) = store::load(content)?;
    let (media, found) = pictures.read(content)?;
    faults.extend(found);
    let (faces, found) = store::faces(content)?;
    faults.extend(found);
    for (name, bytes) in faces {
        theme.files.insert(format!("fonts/{name}"), bytes.into());
    }
    Ok(Loaded { sources, media, faults, theme })
}

/// Checks a content folder that was read.
fn opened(loaded: Loaded, content: &Path) -> Result<(Edition, Theme), Stop> {
    let Loaded { sources, media, mut faults, theme } = loaded;
    // Notes are not printed.
    let printed = sources.iter().filter(|source| !is_bench(&source.path));
    let texts = printed.map(|source| (&*source.path, &*source.text));
    faults.extend(missing_glyphs(texts, &theme));
    let mut edition = Edition::new(&sources, media, faults);
    edition.faults.extend(missing_faces(edition.content.families(), &theme));
    let unspoken = crate::check::unspoken(&edition.content, &theme);
    edition.faults.extend(unspoken);
    crate::fault::sort(&mut edition.faults);
    Ok((after(edition, content)?, theme))
}

/// The pictures as they were read last, by the state of their folder: with every letter that
/// is typed all of them would be read anew.
#[derive(Default)]
struct Pictures(Mutex<Option<(String, Read)>>);

/// Pictures, and the faults of files that are none.
type Read = (Vec<Medium>, Vec<Fault>);

impl Pictures {
    fn read(&self, content: &Path) -> Result<Read, store::StoreError> {
        let mut last = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let now = store::stamp(&[content.join("media")]);
        match &*last {
            Some((then, read)) if *then == now => Ok(read.clone()),
            _ => Ok(last.insert((now, store::media(content)?)).1.clone()),
        }
    }
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
fn sound(call: &Call) -> Result<(Edition, Words), Stop> {
    let (edition, theme) = open(call)?;
    stand(call, &edition)?;
    let words = words(&theme, &edition)?;
    Ok((edition, words))
}

/// Shows the faults of an edition that has an error: nothing of it is worked out.
fn stand(call: &Call, edition: &Edition) -> Done {
    if edition.stops() {
        show::faults(edition, &call.words);
        return Err(Stop::Faults);
    }
    Ok(())
}

/// An answer for programs, ending its line.
fn json(value: &impl Serialize) -> Result<String, Stop> {
    serde_json::to_string_pretty(value)
        .map(|json| json + "\n")
        .map_err(|error| Stop::Machine(machine(&error)))
}

/// A recipe worked out at a scale.
fn scaled(
    edition: &Edition,
    recipe: &Recipe,
    scaling: &Scaling,
    words: &Words,
) -> Result<Sheet, Stop> {
    edition.sheet(recipe, scaling, words).map_err(|reason| {
        Stop::Use(said!("scale-cannot", name = recipe.name, reason = reason.said()))
    })
}

/// The words of the theme in the course's language, else in English.
fn words(theme: &Theme, edition: &Edition) -> Result<Words, Stop> {
    let language =
        edition.content.course.as_ref().map_or("en", |course| &course.language);
    words_in(theme, language).map_err(|fault| unspeakable(theme, fault))
}

/// The edition in the further languages that the course names.
fn further(theme: &Theme, edition: &Edition) -> Result<Vec<Further>, Stop> {
    edition.further(theme).map_err(|fault| unspeakable(theme, fault))
}

/// That words of the theme do not read.
fn unspeakable(theme: &Theme, fault: Fault) -> Stop {
    let path = &*fault.place.file;
    let text = theme.text(path);
    let before = text.get(..fault.place.start()).unwrap_or(text);
    let line = 1 + before.matches('\n').count();
    Stop::Use(said!("theme-words", path, line, message = fault.message))
}

/// A recipe by its file name. With an error anywhere in the content nothing is worked out.
fn recipe<'a>(call: &Call, edition: &'a Edition, name: &str) -> Result<&'a Recipe, Stop> {
    stand(call, edition)?;
    let stem = stem(name);
    edition.content.recipe(stem).ok_or_else(|| {
        let known = edition.content.recipes.iter().map(|recipe| recipe.name.as_str());
        nowhere(said!("kind-recipe"), stem, &known.collect::<Vec<_>>())
    })
}

/// The name under which a recipe is had in the ways that were asked for.
fn in_ways(
    call: &Call,
    edition: &mut Edition,
    name: &str,
    ways: &[String],
) -> Result<String, Stop> {
    if ways.is_empty() {
        return Ok(name.to_owned());
    }
    let recipe = recipe(call, edition, name)?.name.clone();
    let ways: Vec<&str> = ways.iter().map(|way| way.trim()).collect();
    edition.in_ways(&recipe, &ways).map_err(|why| {
        let reason = why.said(&recipe);
        Stop::Use(said!("way-cannot", name = recipe, reason))
    })
}

/// The name in a path such as `recipes/crescents.md`.
fn stem(name: &str) -> &str {
    Path::new(name).file_stem().and_then(|stem| stem.to_str()).unwrap_or(name)
}

/// That there is no such file, and what there is.
fn nowhere(kind: Statement, name: &str, known: &[&str]) -> Stop {
    Stop::Use(match crate::fault::nearest(name, known.iter().copied()) {
        Some(near) => said!("none-near", kind, name, near),
        None if known.is_empty() => {
            said!("none-at-all", kind, name)
        }
        None => said!("none-known", kind, name, known),
    })
}
