//! The `tourier` command.

use std::process::ExitCode;

/// Typesetting spends a quarter of its time asking for memory and giving it back; this
/// allocator takes half as long as the system's. It is the program's choice: who uses the
/// library makes their own.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> ExitCode {
    tourier::cli::run()
}
