//! `tourier preview`: the site on this machine only, made anew when a file is saved.

use std::io::{ErrorKind, Write};
use std::path::PathBuf;
use std::sync::Arc;

use crate::edition::Edition;
use crate::preview::{Open, Opened, Preview};
use crate::said;
use crate::statement::machine;
use crate::store::{Doing, StoreError, Why};
use crate::words::Words;

use super::args::PreviewArgs;
use super::{Call, Done, Stop, here, open_in, show, words};

/// Serves until Ctrl-C.
pub(super) fn run(call: &Call, options: &PreviewArgs) -> Done {
    here(&call.args.content)?;
    let listener =
        Preview::listen(options.port).map_err(|error| taken(&error, options))?;
    let port = listener.local_addr().map_err(unserved)?.port();
    let mut folders = vec![call.args.content.clone()];
    folders.extend(call.args.theme.clone());
    let preview = Arc::new(Preview::new(open(call), folders, call.words.clone()));
    let stopped = preview.clone();
    ctrlc::set_handler(move || stopped.stop()).map_err(|error| {
        Stop::Machine(said!("preview-no-stop", error = machine(&error)))
    })?;
    let address = format!("http://127.0.0.1:{port}/");
    call.say(&said!("preview-at", address))?;
    std::io::stdout().flush().map_err(unserved)?;
    preview.run(listener).map_err(unserved)?;
    if call.args.quiet { Ok(()) } else { call.say(&said!("preview-over")) }
}

/// Opens the content as it is now, and says on the terminal what is wrong with it.
fn open(call: &Call) -> Open {
    let (content, quiet) = (call.args.content.clone(), call.args.quiet);
    let before = call.words.clone();
    let theme: Option<PathBuf> = call.args.theme.clone();
    Box::new(move || {
        let (edition, theme) =
            open_in(theme.as_deref(), &content).map_err(|stop| reason(stop, &before))?;
        let words = words(&theme, &edition).map_err(|stop| reason(stop, &before))?;
        if !quiet || edition.stops() {
            show::faults(&edition, &words);
        }
        if edition.stops() {
            anstream::eprintln!("{}", words.get("preview-waits"));
        }
        let faults = texts(&edition, &words);
        Ok(Opened { edition, theme, words, faults })
    })
}

/// Every fault as plain text.
fn texts(edition: &Edition, words: &Words) -> Vec<String> {
    let layout = show::Layout::plain();
    edition
        .faults
        .iter()
        .map(|fault| layout.render(fault, &edition.texts, words))
        .collect()
}

/// Why the content could not be opened, in words.
fn reason(stop: Stop, words: &Words) -> String {
    let reason = match stop {
        Stop::Faults => said!("preview-faults"),
        Stop::Use(reason) | Stop::Machine(reason) => reason,
    };
    anstream::eprintln!("{}", words.tell(&said!("cli-stop", message = reason)));
    words.tell(&reason)
}

fn taken(error: &std::io::Error, options: &PreviewArgs) -> Stop {
    let port = options.port.unwrap_or_default();
    match error.kind() {
        ErrorKind::AddrInUse => Stop::Use(said!("preview-port-in-use", port)),
        _ => Stop::Machine(said!("preview-no-port", port, error = machine(error))),
    }
}

fn unserved(error: std::io::Error) -> Stop {
    let path = PathBuf::from("127.0.0.1");
    StoreError { path, doing: Doing::Serve, why: Why::Machine(error) }.into()
}
