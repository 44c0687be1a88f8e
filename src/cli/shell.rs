//! `tourier completions` and `tourier manual`: what a shell and `man` read, made from the
//! options themselves.

use std::io::Write;

use clap::CommandFactory;
use clap_complete::generate;
use clap_mangen::Man;

use crate::statement::machine;

use super::args::{Args, CompletionsArgs};
use super::{Done, Stop, say};

/// Prints the completions for a shell.
pub(super) fn completions(options: &CompletionsArgs) -> Done {
    let mut text = Vec::new();
    generate(options.shell, &mut Args::command(), "tourier", &mut text);
    say(&text)
}

/// Prints the manual page, with a section for each command.
pub(super) fn manual() -> Done {
    let mut text = Vec::new();
    let mut command = Args::command();
    command.build();
    let commands =
        || command.get_subcommands().filter(|one| one.get_name() != "help").cloned();
    let written = Man::new(command.clone())
        .render(&mut text)
        .and_then(|()| commands().try_for_each(|command| section(&command, &mut text)));
    written.map_err(|error| Stop::Machine(machine(&error)))?;
    // There is one page: its list of commands leads to its own sections, not to others.
    let page =
        commands().fold(String::from_utf8_lossy(&text).into_owned(), |page, one| {
            let name = one.get_name();
            page.replace(&format!("tourier\\-{name}(1)"), &format!("tourier {name}"))
        });
    say(page.as_bytes())
}

/// One command's part of the page: its name, what it does, how it is written, its options
/// and examples.
fn section(command: &clap::Command, text: &mut Vec<u8>) -> std::io::Result<()> {
    writeln!(text, ".SH \"TOURIER {}\"", command.get_name().to_uppercase())?;
    let page = Man::new(command.clone());
    for part in [Man::render_description_section, Man::render_options_section] {
        let mut own = Vec::new();
        part(&page, &mut own)?;
        // Its headings stand one level lower here.
        text.write_all(String::from_utf8_lossy(&own).replace(".SH ", ".SS ").as_bytes())?;
    }
    if let Some(examples) = command.get_after_help() {
        writeln!(text, ".PP")?;
        for line in examples.to_string().lines() {
            writeln!(text, "{}\n.br", line.trim().replace('\\', "\\\\"))?;
        }
    }
    Ok(())
}
