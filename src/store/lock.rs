//! One publish at a time: a lock beside the output folder. It ends with the program,
//! however that ends, so a lock file left over from a power cut locks nothing.
#![allow(clippy::disallowed_methods, reason = "this room opens files")]

use std::fs::{File, TryLockError, remove_file};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};
use std::time::Duration;

use crate::said;

use super::halt::Busy;
use super::stage::beside;
use super::{Doing, StoreError, doing};

/// How long a publish waits for one who only puts a single file into the folder.
const PATIENCE: Duration = Duration::from_millis(500);
/// How often it asks meanwhile.
const ASK: Duration = Duration::from_millis(25);

/// The right to write to one output folder.
pub(super) struct Lock {
    path: PathBuf,
    _held: File,
    _busy: Busy,
}

/// What to do while another has the lock.
#[derive(Clone, Copy)]
pub(super) enum While<'a> {
    /// Give up after a moment.
    Refuse,
    /// Say so once, and wait.
    Wait(&'a dyn Fn()),
}

impl Lock {
    /// Takes the lock of an output folder.
    ///
    /// # Errors
    /// While another has it, where it is not to be waited for; where the machine refuses.
    pub(super) fn take(output: &Path, meanwhile: While) -> Result<Self, StoreError> {
        let path = beside(output, "lock");
        let folder = path.parent().unwrap_or(&path);
        let (mut told, mut waited) = (false, Duration::ZERO);
        loop {
            // A stop that is asked for here must not leave the file behind.
            let busy = Busy::begin();
            let options = File::options().create(true).append(true).open(&path);
            let held = doing(options, Doing::WriteIn, folder)?;
            match held.try_lock() {
                Ok(()) => {}
                // Some network folders know no locks: there only care helps.
                Err(TryLockError::Error(error))
                    if error.kind() == ErrorKind::Unsupported => {}
                Err(TryLockError::Error(error)) => {
                    return doing(Err(error), Doing::Lock, folder);
                }
                Err(TryLockError::WouldBlock) => {
                    drop(busy);
                    match meanwhile {
                        While::Refuse if waited >= PATIENCE => return Err(taken(output)),
                        While::Wait(tell) if !told => {
                            tell();
                            told = true;
                        }
                        While::Refuse | While::Wait(_) => {}
                    }
                    std::thread::sleep(ASK);
                    waited += ASK;
                    continue;
                }
            }
            if is_at(&held, &path) {
                return Ok(Self { path, _held: held, _busy: busy });
            }
        }
    }
}

impl Drop for Lock {
    fn drop(&mut self) {
        // Where it cannot be taken away it does no harm.
        let _ = remove_file(&self.path);
    }
}

fn taken(output: &Path) -> StoreError {
    let why = said!("place-under-way");
    StoreError::refused(output, Doing::PublishTo, why)
}

/// Whether the file is still the one at `path`: its holder may have taken it away after
/// it was opened here.
#[cfg(unix)]
pub(super) fn is_at(file: &File, path: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    let place = |data: std::fs::Metadata| (data.dev(), data.ino());
    let own = file.metadata().map(place).ok();
    own.is_some() && own == std::fs::metadata(path).map(place).ok()
}

/// Whether the file is still the one at `path`: an open file cannot be taken away here.
#[cfg(not(unix))]
pub(super) fn is_at(_: &File, _: &Path) -> bool {
    true
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_second_publish_is_refused_until_the_first_is_done() {
        let output = std::env::temp_dir().join("tourier-lock-test/output");
        let folder = output.parent().expect("a folder");
        std::fs::create_dir_all(folder).expect("the folder can be made");
        let first = Lock::take(&output, While::Refuse).expect("the lock is free");
        let second = Lock::take(&output, While::Refuse).err().expect("the lock is taken");
        let why = super::super::Why::Refused(said!("place-under-way"));
        assert_eq!(format!("{:?}", second.why), format!("{why:?}"));
        drop(first);
        assert!(!beside(&output, "lock").exists());
        assert!(Lock::take(&output, While::Refuse).is_ok());
        std::fs::remove_dir_all(folder).expect("the folder can be cleared");
    }
}
