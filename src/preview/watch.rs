//! Sees that a file was saved. Looking at sizes and times ten times a second costs less
//! than a hundredth of one core for a course of any usual size, and works where the
//! system's own notices do not: on network drives and shared folders.
#![allow(clippy::disallowed_methods, reason = "watching needs a clock")]

use std::time::{Duration, Instant};

use crate::store;

use super::Preview;

/// How often to look.
const LOOK: Duration = Duration::from_millis(100);
/// How long nothing may change before it counts: editors save in several strokes.
const STILL: Duration = Duration::from_millis(40);
/// Looking takes at most one part in so many of the time.
const SHARE: u32 = 25;

/// Makes the edition, and makes it anew after each change, until the preview is stopped.
pub(super) fn watch(preview: &Preview) {
    let mut seen = String::new();
    while !preview.is_stopped() {
        let begun = Instant::now();
        let now = store::stamp(&preview.folders);
        let rest = LOOK.max(begun.elapsed() * SHARE);
        if now != seen {
            seen = settled(preview, now);
            preview.make(seen.clone());
        }
        std::thread::sleep(rest);
    }
}

/// The state of the files once it has been the same for a moment.
fn settled(preview: &Preview, mut now: String) -> String {
    loop {
        std::thread::sleep(STILL);
        let later = store::stamp(&preview.folders);
        if later == now {
            return now;
        }
        now = later;
    }
}
