//! `tourier proof`: checks everything, writes nothing.

use super::args::{Args, As, ProofArgs};
use super::{Done, Stop, open, say, show};

/// Shows every fault; the exit code is 1 where one stops publishing.
pub(super) fn run(args: &Args, options: &ProofArgs) -> Done {
    let (edition, _) = open(args)?;
    match options.form {
        As::Json => say(format!("{}\n", show::json(&edition)).as_bytes())?,
        As::Text => {
            show::faults(&edition);
            if edition.faults.is_empty() && !args.quiet {
                let recipes = edition.content.recipes.len();
                let word = if recipes == 1 { "recipe" } else { "recipes" };
                say(format!("no faults in {recipes} {word}\n").as_bytes())?;
            }
        }
    }
    if edition.stops() { Err(Stop::Faults) } else { Ok(()) }
}
