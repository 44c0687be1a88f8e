//! Runs before the program is built: hashes its sources and its own theme, so that a changed program makes
//! its files anew and an unchanged one does not.
#![allow(clippy::disallowed_methods, reason = "a build script reads the sources")]
#![allow(clippy::print_stdout, reason = "so a build script answers")]

use std::fs;
use std::path::Path;

/// FNV-1a: short, and the same on every machine.
fn hash(bytes: &[u8], start: u64) -> u64 {
    bytes.iter().fold(start, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

fn walk(folder: &Path, sum: &mut u64) {
    let Ok(entries) = fs::read_dir(folder) else { return };
    let mut paths: Vec<_> = entries.flatten().map(|entry| entry.path()).collect();
    paths.sort();
    for path in paths {
        if path.is_dir() {
            walk(&path, sum);
        } else if let Ok(bytes) = fs::read(&path) {
            *sum = hash(&bytes, *sum);
        }
    }
}

fn main() {
    let mut sum = 0xcbf2_9ce4_8422_2325;
    walk(Path::new("src"), &mut sum);
    walk(Path::new("themes"), &mut sum);
    sum = hash(&fs::read("Cargo.lock").unwrap_or_default(), sum);
    println!("cargo:rerun-if-changed=src");
    println!("cargo:rerun-if-changed=themes");
    println!("cargo:rerun-if-changed=Cargo.lock");
    println!("cargo:rustc-env=TOURIER_BUILD={sum:016x}");
}
