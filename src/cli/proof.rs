//! `tourier proof`: checks everything, writes nothing.

use super::args::{Args, As, ProofArgs};
use super::{Done, Stop, open, show};

/// Shows every fault; the exit code is 1 where one stops publishing.
pub(super) fn run(args: &Args, options: &ProofArgs) -> Done {
    let (edition, _) = open(args)?;
    match options.form {
        As::Json => println!("{}", show::json(&edition)),
        As::Text => {
            show::faults(&edition);
            if edition.faults.is_empty() && !args.quiet {
                let recipes = edition.content.recipes.len();
                println!("no faults in {recipes} recipes");
            }
        }
    }
    if edition.stops() { Err(Stop::Faults) } else { Ok(()) }
}
