//! `tourier proof`: checks everything, writes nothing.

use crate::edition::Edition;
use crate::fault;
use crate::product::{Stock, long_handouts, poor_prints};
use crate::theme::Theme;

use super::args::{Args, As, ProofArgs};
use super::{Done, Stop, counted, open, say, show, words};

/// Shows every fault; the exit code is 1 where one stops publishing.
pub(super) fn run(args: &Args, options: &ProofArgs) -> Done {
    let (mut edition, theme) = open(args)?;
    if !edition.stops() {
        on_paper(&mut edition, &theme)?;
    }
    match options.form {
        As::Json => say(format!("{}\n", show::json(&edition)).as_bytes())?,
        As::Text => {
            show::faults(&edition);
            if edition.faults.is_empty() && !args.quiet {
                let recipes = counted(edition.content.recipes.len(), "recipe");
                say(format!("no faults in {recipes}\n").as_bytes())?;
            }
        }
    }
    if edition.stops() { Err(Stop::Faults) } else { Ok(()) }
}

/// Adds what only shows when a sheet is set in type.
fn on_paper(edition: &mut Edition, theme: &Theme) -> Done {
    let words = words(theme, edition)?;
    let found = Stock::new(edition, &words, theme).map(|stock| {
        let (long, poor) = (long_handouts(&stock), poor_prints(&stock));
        long.into_iter().chain(poor).collect::<Vec<_>>()
    });
    edition.faults.extend(found.unwrap_or_default());
    fault::sort(&mut edition.faults);
    Ok(())
}
