//! What was typed and cannot be understood, said as everything else is said: what is wrong,
//! and what to type instead.
#![allow(
    clippy::wildcard_enum_match_arm,
    reason = "the errors of arguments are not ours"
)]

use clap::Error;
use clap::error::{ContextKind, ContextValue, ErrorKind};

use crate::fault::nearest;
use crate::said;
use crate::statement::Statement;

use super::help::grammar;

/// Words that people type for an option or a command of another name.
const MEANT: [(&str, &str); 28] = [
    ("--output", "--to"),
    ("--out", "--to"),
    ("--dest", "--to"),
    ("--dir", "--to"),
    ("--source", "--content"),
    ("--input", "--content"),
    ("--folder", "--content"),
    ("--format", "--as"),
    ("--json", "--as json"),
    ("--csv", "--as csv"),
    ("--ics", "--as ics"),
    ("--count", "--pieces"),
    ("--number", "--pieces"),
    ("--weight", "--piece-weight"),
    ("--scale", "--batches"),
    ("--factor", "--batches"),
    ("--silent", "--quiet"),
    ("--force", "--among-others"),
    ("--all", "--thorough"),
    ("build", "publish"),
    ("check", "proof"),
    ("serve", "preview"),
    ("watch", "preview"),
    ("new", "start"),
    ("init", "start"),
    ("print", "handout"),
    ("plan", "timetable"),
    ("import", "draft"),
];

/// An example of what each option takes.
const EXAMPLES: [(&str, &str); 16] = [
    ("--content", "content"),
    ("--theme", "my-theme"),
    ("--to", "output"),
    ("--port", "8000"),
    ("--labels", "\"70 x 37 mm\""),
    ("--ready", "\"2027-03-07 09:00\""),
    ("--now", "18:55"),
    ("--pieces", "24"),
    ("--piece-weight", "60g"),
    ("--batches", "1.5"),
    ("--flour", "1kg"),
    ("--total", "2kg"),
    ("--tin", "\"23 cm round\""),
    ("--kind", "bench"),
    ("--units", "us"),
    ("--paper", "letter"),
];

/// What is wrong with the words that were typed, and what would be right; `None` for what
/// is no error: help and version.
pub(super) fn say(error: &Error, typed: &[String]) -> Option<Statement> {
    let command = command(typed);
    Some(match error.kind() {
        ErrorKind::DisplayHelp
        | ErrorKind::DisplayVersion
        | ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand => return None,
        ErrorKind::InvalidSubcommand => {
            unknown_command(&text(error, ContextKind::InvalidSubcommand))
        }
        ErrorKind::UnknownArgument => unknown_argument(error, command.as_ref(), typed),
        ErrorKind::MissingRequiredArgument => missing(error, command.as_ref()),
        ErrorKind::InvalidValue => value(error),
        ErrorKind::ValueValidation => unreadable(error),
        ErrorKind::ArgumentConflict => conflict(error),
        _ => {
            let said = error.to_string();
            let line = said.lines().next().unwrap_or("");
            let said = line.trim_start_matches("error: ");
            said!("typed-wrong", said, help = help(command.as_ref()))
        }
    })
}

/// The command that was typed, with its options.
fn command(typed: &[String]) -> Option<clap::Command> {
    let mut all = grammar();
    all.build();
    let known = |word: &String| all.find_subcommand(word).cloned();
    typed.iter().skip(1).find_map(known)
}

/// What stands after an option, where the words as a whole do not read.
pub(super) fn value_of<'a>(option: &str, typed: &'a [String]) -> Option<&'a str> {
    let words = typed.iter().enumerate();
    words.into_iter().find_map(|(at, word)| match word.strip_prefix(option)? {
        "" => typed.get(at + 1).map(String::as_str),
        rest => rest.strip_prefix('='),
    })
}

fn help(command: Option<&clap::Command>) -> Statement {
    match command {
        Some(command) => {
            let name = command.get_name();
            said!("typed-help", name)
        }
        None => said!("typed-commands"),
    }
}

fn text(error: &Error, kind: ContextKind) -> String {
    match error.get(kind) {
        Some(ContextValue::String(text)) => text.clone(),
        Some(ContextValue::Strings(texts)) => texts.join(" "),
        Some(ContextValue::StyledStr(text)) => text.to_string(),
        _ => String::new(),
    }
}

/// An option's own name: `--kind` of `--kind <KIND>`.
fn option(text: &str) -> &str {
    text.split([' ', '=', '[']).next().unwrap_or(text)
}

fn example(option: &str) -> Option<&'static str> {
    EXAMPLES.iter().find(|(of, _)| *of == option).map(|(_, example)| *example)
}

fn meant(word: &str) -> Option<&'static str> {
    MEANT.iter().find(|(typed, _)| *typed == word).map(|(_, meant)| *meant)
}

/// That there is no such command, and which is near.
pub(super) fn unknown_command(word: &str) -> Statement {
    let mut all = grammar();
    all.build();
    let names: Vec<&str> = all.get_subcommands().map(clap::Command::get_name).collect();
    let near = meant(word).or_else(|| nearest(word, names.iter().copied()));
    match near {
        Some(near) => {
            said!("typed-command-near", word, near)
        }
        None => said!("typed-command", word, names),
    }
}

fn unknown_argument(
    error: &Error,
    command: Option<&clap::Command>,
    typed: &[String],
) -> Statement {
    let word = text(error, ContextKind::InvalidArg);
    let word = option(&word).to_owned();
    if !word.starts_with('-') {
        return unexpected(&word, command);
    }
    let mut known: Vec<String> = Vec::new();
    if let Some(command) = command {
        let longs = command.get_arguments().filter_map(clap::Arg::get_long);
        known.extend(longs.map(|long| format!("--{long}")));
    }
    let has = |meant: &str| known.iter().any(|known| known == option(meant));
    // `--scaling` begins as another option does, or is near one.
    let begins = || {
        let mut found = known.iter().filter(|it| {
            word.len() > 3 && (it.starts_with(&word) || word.starts_with(it.as_str()))
        });
        found.next().filter(|_| found.next().is_none()).cloned()
    };
    let near = meant(&word)
        .filter(|meant| has(meant))
        .map(str::to_owned)
        .or_else(|| nearest(&word, known.iter().map(String::as_str)).map(str::to_owned))
        .or_else(begins);
    // `--pieces -3`: what looks like an option is the value of the one before it.
    let pairs = typed.iter().zip(typed.iter().skip(1));
    let value = pairs.into_iter().find(|(_, it)| it.starts_with(&word));
    if let Some((option, word, right)) =
        value.and_then(|(option, word)| Some((option, word, example(option)?)))
        && word.len() > 1
        && word.trim_start_matches('-').starts_with(|sign: char| sign.is_ascii_digit())
    {
        return said!("option-unreadable-in", option, value = word, example = right);
    }
    let name = command.map(clap::Command::get_name);
    match (near, name) {
        (Some(near), Some(name)) => {
            said!("typed-option-of-near", name, word, near)
        }
        (Some(near), None) => said!("typed-option-near", word, near),
        (None, Some(name)) => said!("typed-option-of", name, word, help = help(command)),
        (None, None) => said!("typed-option", word, help = help(command)),
    }
}

/// A word too many.
fn unexpected(word: &str, command: Option<&clap::Command>) -> Statement {
    let Some(command) = command else {
        return said!("typed-does-not-belong", word, help = help(None));
    };
    let name = command.get_name();
    let takes_folder = command.get_arguments().all(|it| !it.is_positional());
    if takes_folder {
        return said!("typed-takes-no-name", name, word);
    }
    let spaces = command.get_positionals().any(|it| it.get_id() == "amount");
    if spaces {
        return said!("typed-word-too-many", word, name);
    }
    said!("typed-takes-none", name, word, help = help(Some(command)))
}

fn missing(error: &Error, command: Option<&clap::Command>) -> Statement {
    let what = text(error, ContextKind::InvalidArg);
    let Some(command) = command else { return said!("typed-missing", what) };
    let name = command.get_name();
    if what.starts_with("--") {
        let option = option(&what);
        return said!("typed-needs-option", name, option, help = help(Some(command)));
    }
    let (wanted, example) = match name {
        "start" => (said!("typed-want-folder"), "start content"),
        "draft" => (said!("typed-want-recipe-file"), "draft old-card.txt"),
        "changes" => (said!("typed-want-two-folders"), "changes past/autumn content"),
        "convert" => (said!("typed-want-amount"), "convert \"2 cups bread flour\" g"),
        "completions" => (said!("typed-want-shell"), "completions bash"),
        "order" => (said!("typed-want-class"), "order evening-3"),
        "timetable" => (said!("typed-want-class-or-recipe"), "timetable evening-3"),
        "handout" => (said!("typed-want-recipe-or-class"), "handout crescents"),
        _ => {
            let example = format!("{name} crescents");
            return said!("typed-needs-recipe", name, example);
        }
    };
    said!("typed-needs", name, wanted, example)
}

/// A word that is none of those an option takes, or none at all.
fn value(error: &Error) -> Statement {
    let typed = text(error, ContextKind::InvalidArg);
    let option = option(&typed);
    let found = text(error, ContextKind::InvalidValue);
    let valid: Vec<String> = match error.get(ContextKind::ValidValue) {
        Some(ContextValue::Strings(valid)) => valid.clone(),
        _ => Vec::new(),
    };
    let choice = &valid;
    if found.is_empty() {
        return match (example(option), choice.is_empty()) {
            (Some(example), true) => {
                said!("typed-needs-value", option, example)
            }
            (_, false) => said!("typed-needs-choice", option, choice),
            (None, true) => said!("typed-needs-a-value", option),
        };
    }
    let option = option.trim_matches(['<', '>']).to_lowercase();
    match nearest(&found, valid.iter().map(String::as_str)) {
        Some(near) => {
            said!("typed-none-near", option, found, near)
        }
        None => said!("typed-none", option, found, choice),
    }
}

fn unreadable(error: &Error) -> Statement {
    let typed = text(error, ContextKind::InvalidArg);
    let option = option(&typed);
    let found = text(error, ContextKind::InvalidValue);
    match example(option) {
        Some(example) => {
            said!("option-unreadable-as", option, found, example)
        }
        None => said!("option-unreadable-plain", option, found),
    }
}

fn conflict(error: &Error) -> Statement {
    let one = text(error, ContextKind::InvalidArg);
    let other = text(error, ContextKind::PriorArg);
    let (one, other) = (option(&one), option(&other));
    if one == other || other.is_empty() {
        return said!("typed-twice", one);
    }
    said!("typed-not-together", one, other)
}
