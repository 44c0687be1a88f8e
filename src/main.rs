//! The `tourier` command.

use std::process::ExitCode;

fn main() -> ExitCode {
    tourier::cli::run()
}
