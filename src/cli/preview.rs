//! `tourier preview`: the site on this machine only, made anew when a file is saved.

use std::io::{ErrorKind, Write};
use std::path::PathBuf;
use std::sync::Arc;

use crate::edition::Edition;
use crate::preview::{Open, Opened, Preview};
use crate::store;

use super::args::{Args, PreviewArgs};
use super::{Done, Stop, here, open_in, say, show, words};

/// Serves until Ctrl-C.
pub(super) fn run(args: &Args, options: &PreviewArgs) -> Done {
    here(&args.content)?;
    let listener =
        Preview::listen(options.port).map_err(|error| taken(&error, options))?;
    let port = listener.local_addr().map_err(machine)?.port();
    let mut folders = vec![args.content.clone()];
    folders.extend(args.theme.clone());
    let preview = Arc::new(Preview::new(open(args), folders));
    let stopped = preview.clone();
    ctrlc::set_handler(move || stopped.stop())
        .map_err(|error| Stop::Machine(format!("cannot listen for Ctrl-C: {error}")))?;
    let place =
        format!("the course is at http://127.0.0.1:{port}/ until you press Ctrl-C\n");
    say(place.as_bytes())?;
    std::io::stdout().flush().map_err(machine)?;
    preview.run(listener).map_err(machine)?;
    if args.quiet { Ok(()) } else { say(b"the preview is over\n") }
}

/// Opens the content as it is now, and says on the terminal what is wrong with it.
fn open(args: &Args) -> Open {
    let (content, quiet) = (args.content.clone(), args.quiet);
    let theme: Option<PathBuf> = args.theme.clone();
    Box::new(move || {
        let (edition, theme) = open_in(theme.as_deref(), &content).map_err(reason)?;
        if !quiet || edition.stops() {
            show::faults(&edition);
        }
        if edition.stops() {
            anstream::eprintln!("nothing newer is shown until this is mended");
        }
        let words = words(&theme, &edition).map_err(reason)?;
        let faults = texts(&edition);
        Ok(Opened { edition, theme, words, faults })
    })
}

/// Every fault as plain text.
fn texts(edition: &Edition) -> Vec<String> {
    let layout = show::Layout::plain();
    edition.faults.iter().map(|fault| layout.render(fault, &edition.texts)).collect()
}

/// Why the content could not be opened, in words.
fn reason(stop: Stop) -> String {
    let reason = match stop {
        Stop::Faults => "there are faults".to_owned(),
        Stop::Use(reason) | Stop::Machine(reason) => reason,
    };
    anstream::eprintln!("tourier: {reason}");
    reason
}

fn taken(error: &std::io::Error, options: &PreviewArgs) -> Stop {
    let port = options.port.unwrap_or_default();
    match error.kind() {
        ErrorKind::AddrInUse => Stop::Use(format!(
            "port {port} is in use; leave out --port to have a free one"
        )),
        _ => Stop::Machine(format!("cannot serve on port {port}: {error}")),
    }
}

fn machine(error: std::io::Error) -> Stop {
    let path = PathBuf::from("127.0.0.1");
    store::StoreError { path, doing: "serve on", source: error }.into()
}
