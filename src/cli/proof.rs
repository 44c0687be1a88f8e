//! `tourier proof`: checks everything, writes nothing.

use crate::edition::Edition;
use crate::fault;
use crate::product::{Stock, long_handouts, poor_prints};
use crate::said;
use crate::theme::Theme;

use super::args::{As, ProofArgs};
use super::{Call, Done, Stop, open, say, show, words};

/// Shows every fault; the exit code is 1 where one stops publishing.
pub(super) fn run(call: &Call, options: &ProofArgs) -> Done {
    let (mut edition, theme) = open(call)?;
    if !edition.stops() {
        on_paper(&mut edition, &theme)?;
    }
    match options.form {
        As::Json => say(format!("{}\n", show::json(&edition, &call.words)).as_bytes())?,
        As::Text => {
            show::faults(&edition, &call.words);
            if edition.faults.is_empty() && !call.args.quiet {
                let count = edition.content.recipes.len();
                call.say(&said!("proof-sound", count))?;
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
