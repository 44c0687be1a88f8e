//! `tourier completions` and `tourier manual`: what a shell and `man` read, made from the
//! options themselves.

use std::io::Write;

use clap_complete::generate;
use clap_mangen::Man;

use crate::statement::machine;
use crate::words::Words;

use super::args::CompletionsArgs;
use super::help::{described, examples};
use super::{Call, Done, Stop, say};

/// Prints the completions for a shell.
pub(super) fn completions(call: &Call, options: &CompletionsArgs) -> Done {
    let mut text = Vec::new();
    generate(options.shell, &mut described(&call.words), "tourier", &mut text);
    say(&text)
}

/// The headings of manual pages, and the messages in their place.
const HEADINGS: [(&str, &str); 6] = [
    ("NAME", "help-head-name"),
    ("SYNOPSIS", "help-head-usage"),
    ("DESCRIPTION", "help-head-description"),
    ("OPTIONS", "help-head-options"),
    ("SUBCOMMANDS", "help-head-commands"),
    ("VERSION", "help-head-version"),
];

/// Prints the manual page, with a section for each command.
pub(super) fn manual(call: &Call) -> Done {
    let mut text = Vec::new();
    let mut command = described(&call.words);
    command.build();
    let written = Man::new(command.clone()).render(&mut text).and_then(|()| {
        let mut commands = command.get_subcommands();
        commands.try_for_each(|command| section(command, &call.words, &mut text))
    });
    written.map_err(|error| Stop::Machine(machine(&error)))?;
    let mut page = said(&String::from_utf8_lossy(&text), &call.words);
    // There is one page: its list of commands leads to its own sections, not to others.
    for one in command.get_subcommands() {
        let name = one.get_name();
        page = page.replace(&format!("tourier\\-{name}(1)"), &format!("tourier {name}"));
    }
    say(page.as_bytes())
}

/// A page with what the library says of its own said in the language.
fn said(page: &str, words: &Words) -> String {
    let line = |line: &str| {
        let heading =
            line.split_once(' ').filter(|(mark, _)| [".SH", ".SS"].contains(mark));
        let known = heading.and_then(|(mark, own)| {
            let (_, key) = HEADINGS.iter().find(|(heading, _)| *heading == own)?;
            Some(format!("{mark} \"{}\"\n", words.get(key).trim().to_uppercase()))
        });
        known.unwrap_or_else(|| format!("{line}\n"))
    };
    let page: String = page.lines().map(line).collect();
    let [values, default] =
        ["help-head-values", "help-head-default"].map(|key| words.get(key));
    page.replace("Possible values:", &format!("{values}:"))
        .replace("[default: ", &format!("[{default}: "))
}

/// One command's part of the page: its name, what it does, how it is written, its options
/// and examples.
fn section(
    command: &clap::Command,
    words: &Words,
    text: &mut Vec<u8>,
) -> std::io::Result<()> {
    writeln!(text, ".SH \"TOURIER {}\"", command.get_name().to_uppercase())?;
    let page = Man::new(command.clone());
    for part in [Man::render_description_section, Man::render_options_section] {
        let mut own = Vec::new();
        part(&page, &mut own)?;
        // Its headings stand one level lower here.
        text.write_all(String::from_utf8_lossy(&own).replace(".SH ", ".SS ").as_bytes())?;
    }
    if let Some(examples) = examples(command, words) {
        writeln!(text, ".PP")?;
        for line in examples.lines() {
            writeln!(text, "{}\n.br", line.trim().replace('\\', "\\\\"))?;
        }
    }
    Ok(())
}
