//! Publishing from the desk: one at a time, with how far it has come.

use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use hyper::StatusCode;
use serde::Serialize;
use serde_json::json;

use super::super::Publish;
use super::call::Done;

/// How far it has come, and what it said at its end.
#[derive(Clone, Debug, Default, Serialize)]
struct Under {
    running: bool,
    done: usize,
    all: usize,
    /// Whether the new edition stands.
    stands: bool,
    said: Vec<String>,
}

/// What publishes the course.
pub(super) struct Press {
    publish: Publish,
    under: Mutex<Under>,
}

impl Press {
    pub(super) fn new(publish: Publish) -> Self {
        Self { publish, under: Mutex::default() }
    }

    fn under(&self) -> MutexGuard<'_, Under> {
        self.under.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// How far it has come.
    pub(super) fn look(&self) -> Done {
        Ok((StatusCode::OK, json!(self.under().clone())))
    }

    /// Begins, unless it is under way.
    pub(super) fn begin(self: &Arc<Self>) -> Done {
        let mut under = self.under();
        if !under.running {
            *under = Under { running: true, ..Under::default() };
            let press = self.clone();
            std::thread::spawn(move || press.run());
        }
        drop(under);
        self.look()
    }

    fn run(&self) {
        let step = |done, all| {
            let mut under = self.under();
            (under.done, under.all) = (done, all);
        };
        let outcome = (self.publish)(&step);
        let mut under = self.under();
        under.running = false;
        under.stands = outcome.is_ok();
        under.said = outcome.unwrap_or_else(|why| vec![why]);
    }
}
