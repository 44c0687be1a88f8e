//! What each command, option and value is for, in the language of the course: `--help`, and what
//! completions and the manual page say.
//!
//! The message of a command stands under `help-COMMAND`, that of an option or another word after
//! it under `help-COMMAND-OPTION`, or `help-any-OPTION` where it is the same after each command,
//! that of a value under the option's key and `-VALUE`.

use std::process::ExitCode;

use clap::builder::{PossibleValue, PossibleValuesParser, StyledStr, Styles};
use clap::{Arg, ArgAction, Command, CommandFactory};

use crate::words::Words;

use super::args::{Args, HelpArgs};
use super::{Call, Done, Stop, wrong};

/// What the keys of everything have in place of a command's name.
const ANY: &str = "any";

/// What may be typed, without a word about it.
pub(super) fn grammar() -> Command {
    let last = |name: &'static str, short: char, action: ArgAction| {
        let arg = Arg::new(name).long(name).short(short).action(action);
        arg.global(true).display_order(usize::MAX)
    };
    Args::command().arg(last("help", 'h', ArgAction::Help)).arg(last(
        "version",
        'V',
        ArgAction::Version,
    ))
}

/// The same, each part with what it is for.
pub(super) fn described(words: &Words) -> Command {
    let described = |command: Command| {
        let name = command.get_name().to_owned();
        let about = words.get(&format!("help-{name}")).to_owned();
        command.about(about).mut_args(|arg| describe(arg, &name, words))
    };
    let about = words.get("help-tourier").to_owned();
    let all = grammar();
    let names: Vec<String> =
        all.get_subcommands().map(|command| command.get_name().to_owned()).collect();
    all.mut_subcommand("help", |help| {
        help.mut_arg("command", |name| {
            name.value_parser(PossibleValuesParser::new(names))
        })
    })
    .about(about)
    .subcommand_value_name(words.get("help-head-command").to_uppercase())
    .mut_args(|arg| describe(arg, ANY, words))
    .mut_subcommands(described)
}

fn describe(arg: Arg, command: &str, words: &Words) -> Arg {
    let keys = keys(&arg, command);
    let own = words.find(&keys[0]);
    let help = own.unwrap_or_else(|| words.get(&keys[1])).to_owned();
    let values = arg.get_possible_values();
    let arg = arg.help(help);
    if values.is_empty() || !arg.get_action().takes_values() {
        return arg;
    }
    let values = values.into_iter().map(|value| {
        let mut keys = keys.iter().map(|key| format!("{key}-{}", value.get_name()));
        let help = keys.find_map(|key| words.find(&key).map(str::to_owned));
        match help {
            Some(help) => value.help(help),
            None => value,
        }
    });
    arg.value_parser(PossibleValuesParser::new(values))
}

/// The keys that the message of an option may have, its own first.
fn keys(arg: &Arg, command: &str) -> [String; 2] {
    let name = arg.get_long().unwrap_or(arg.get_id().as_str());
    [command, ANY].map(|command| format!("help-{command}-{name}"))
}

/// A command's examples below their heading.
pub(super) fn examples(command: &Command, words: &Words) -> Option<String> {
    let typed = command.get_after_help()?.to_string();
    let count = typed.lines().count().to_string();
    let heading = words.fill("help-head-examples", &[("count", &count)]);
    let lines = typed.lines().map(|line| format!("\n  {line}"));
    Some(format!("{heading}:{}", lines.collect::<String>()))
}

/// The same with all that the library says of its own in the language, as a terminal shows it.
fn told(words: &Words) -> Command {
    let all = described(words);
    let mut built = all.clone();
    built.build();
    let all = all.mut_subcommands(|command| {
        let mut whole = built.find_subcommand(command.get_name()).cloned();
        let usage = whole.as_mut().map(|whole| usage(whole, words));
        framed(command, usage.unwrap_or_default(), words)
    });
    let usage = usage(&mut built, words);
    framed(all, usage, words)
}

/// How a command is typed.
fn usage(command: &mut Command, words: &Words) -> String {
    let usage = command.render_usage().ansi().to_string();
    let typed = usage.split_once(' ').map_or("", |(_, typed)| typed);
    let options = words.get("help-head-options").trim().to_uppercase();
    typed.replace("[OPTIONS]", &format!("[{options}]"))
}

/// A command with its headings.
fn framed(command: Command, usage: String, words: &Words) -> Command {
    let styles = Styles::default();
    let style = styles.get_usage();
    let template = format!(
        "{{about-with-newline}}\n{style}{}:{style:#} {{usage}}\n\n{{all-args}}{{after-help}}",
        words.get("help-head-usage")
    );
    let examples = examples(&command, words);
    let command = command
        .help_template(template)
        .override_usage(StyledStr::from(usage))
        .subcommand_help_heading(words.get("help-head-commands").to_owned())
        .mut_args(|arg| shown(arg, words));
    match examples {
        Some(examples) => command.after_help(examples),
        None => command,
    }
}

/// An option with its heading, its values and what it is where it is not typed.
fn shown(arg: Arg, words: &Words) -> Arg {
    let heading = if arg.is_positional() { "arguments" } else { "options" };
    let arg = arg.help_heading(words.get(&format!("help-head-{heading}")).to_owned());
    if !arg.get_action().takes_values() {
        return arg;
    }
    let help = arg.get_help().map(ToString::to_string).unwrap_or_default();
    let values = arg.get_possible_values();
    let said = |key: &str, typed: &str| format!("[{}: {typed}]", words.get(key));
    let names: Vec<&str> = values.iter().map(PossibleValue::get_name).collect();
    let names =
        (!names.is_empty()).then(|| said("help-head-values-short", &names.join(", ")));
    let default: Vec<_> =
        arg.get_default_values().iter().map(|value| value.to_string_lossy()).collect();
    let default = default.join(" ");
    let default = (!default.is_empty()).then(|| said("help-head-default", &default));
    let list = list(&values, words);
    let short = [Some(help.clone()), default.clone(), names.clone()];
    let long = if list.is_some() { [list, default] } else { [default, names] };
    let long: Vec<String> = [Some(help)].into_iter().chain(long).flatten().collect();
    arg.help(short.into_iter().flatten().collect::<Vec<_>>().join(" "))
        .long_help(long.join("\n\n"))
        .hide_possible_values(true)
        .hide_default_value(true)
}

/// Values one below another with what they are for; `None` where that needs no saying.
fn list(values: &[PossibleValue], words: &Words) -> Option<String> {
    let styles = Styles::default();
    let style = styles.get_literal();
    let longest = values.iter().map(|value| value.get_name().len()).max()?;
    let row = |value: &PossibleValue| {
        let (name, help) = (value.get_name(), value.get_help()?);
        let room = " ".repeat(longest - name.len());
        Some(format!("\n- {style}{name}{style:#}: {room}{help}"))
    };
    let rows: Option<String> = values.iter().map(row).collect();
    Some(format!("{}:{}", words.get("help-head-values"), rows?))
}

/// Prints the help, or the version, that was asked for with an option.
pub(super) fn asked(words: &Words) -> ExitCode {
    match told(words).try_get_matches() {
        Ok(_) => ExitCode::SUCCESS,
        Err(error) => error.exit(),
    }
}

/// `tourier help`: the same as `--help`.
pub(super) fn run(call: &Call, options: &HelpArgs) -> Done {
    let mut all = told(&call.words);
    all.build();
    let command = match &options.command {
        None => &mut all,
        Some(name) => all
            .find_subcommand_mut(name)
            .ok_or_else(|| Stop::Use(wrong::unknown_command(name)))?,
    };
    anstream::print!("{}", command.render_long_help().ansi());
    Ok(())
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use crate::theme::Theme;

    use super::*;

    /// The keys of a language's file.
    fn written(language: &str) -> BTreeSet<String> {
        let theme = Theme::built_in();
        let text = theme.text(&format!("words/{language}/help.ftl"));
        let keys = text.lines().filter_map(|line| line.split_once(" ="));
        keys.map(|(key, _)| key.to_owned()).filter(|key| !key.starts_with('#')).collect()
    }

    #[test]
    fn each_part_has_its_message_and_each_message_its_part() {
        let english = written("en");
        let mut asked: BTreeSet<String> = ["help-tourier".to_owned()].into();
        let mut ask = |keys: [String; 2]| {
            let known = keys.iter().find(|key| english.contains(*key));
            asked.insert(known.unwrap_or(&keys[0]).clone());
        };
        let all = grammar();
        let arguments = |command: &Command,
                         name: &str,
                         ask: &mut dyn FnMut([String; 2])| {
            for arg in command.get_arguments() {
                let keys = keys(arg, name);
                ask(keys.clone());
                // The names of shells say what they are.
                let values = arg.get_possible_values();
                let values = values.iter().filter(|_| arg.get_id() != "shell");
                for value in values.filter(|_| arg.get_action().takes_values()) {
                    ask(keys.clone().map(|key| format!("{key}-{}", value.get_name())));
                }
            }
        };
        arguments(&all, ANY, &mut ask);
        for command in all.get_subcommands() {
            let name = command.get_name();
            ask([format!("help-{name}"), String::new()]);
            arguments(command, name, &mut ask);
        }
        let heading = |key: &&String| !key.starts_with("help-head-");
        let said: BTreeSet<String> = english.iter().filter(heading).cloned().collect();
        assert_eq!(asked, said);
        for language in ["de", "es", "fr", "ja"] {
            assert_eq!(written(language), english, "{language}");
        }
    }
}
