//! `tourier proof`: checks everything, writes nothing.

use crate::check;
use crate::edition::Edition;
use crate::fault;
use crate::product::{Inputs, long_handouts, poor_prints};
use crate::said;
use crate::theme::Theme;

use super::args::{As, ProofArgs};
use super::{Call, Done, Stop, open, say, show, words};

/// Shows every fault; the exit code is 1 where one stops publishing.
pub(super) fn run(call: &Call, options: &ProofArgs) -> Done {
    let (mut edition, theme) = open(call)?;
    edition.faults.extend(check::open_notes(&edition.content));
    fault::sort(&mut edition.faults);
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
    let found = Inputs::new(edition, &words, theme).map(|inputs| {
        let (long, poor) = (long_handouts(&inputs), poor_prints(&inputs));
        long.into_iter().chain(poor).collect::<Vec<_>>()
    });
    edition.faults.extend(found.unwrap_or_default());
    fault::sort(&mut edition.faults);
    Ok(())
}
