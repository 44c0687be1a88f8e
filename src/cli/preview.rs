//! `tourier preview`: the site on this machine only, made anew when a file is saved.
#![allow(clippy::wildcard_enum_match_arm, reason = "the machine's errors are not ours")]

use std::io::{ErrorKind, IsTerminal, Write};
use std::net::{IpAddr, Ipv4Addr, TcpListener, UdpSocket};
use std::path::PathBuf;
use std::sync::Arc;

use crate::check;
use crate::edition::Edition;
use crate::preview::{
    Desk, NoKey, Open, Opened, Preview, Room, Since, Unopened, is_local,
};
use crate::said;
use crate::statement::machine;
use crate::store::{self, Doing, StoreError, Why};
use crate::words::Words;

use super::args::PreviewArgs;
use super::{
    Call, Done, Loaded, Pictures, Stop, here, loaded, open_typed, opened, publish, scan,
    show, words,
};

/// Serves until Ctrl-C.
pub(super) fn run(call: &Call, options: &PreviewArgs) -> Done {
    here(&call.content)?;
    let listener =
        Preview::listen(options.port).map_err(|error| taken(&error, options))?;
    let port = listener.local_addr().map_err(unserved)?.port();
    let mut folders = vec![call.content.clone()];
    folders.extend(call.args.theme.clone());
    let preview = Preview::new(open(call), folders, call.words.clone());
    let desk = desk(call, options)?;
    let below = desk.as_ref().map_or_else(String::new, |desk| desk.address(options.desk));
    let preview = Arc::new(desk.into_iter().fold(preview, Preview::with));
    let room = options.room.map(|at| room(call, at, options.port)).transpose()?;
    let stopped = preview.clone();
    ctrlc::set_handler(move || stopped.stop()).map_err(|error| {
        Stop::Machine(said!("preview-no-stop", error = machine(&error)))
    })?;
    let address = format!("http://127.0.0.1:{port}/{below}");
    call.say(&said!("preview-at", address = address.clone()))?;
    if let Some((room, _)) = &room {
        call.say(&said!("room-at", address = room.address()))?;
        anstream::print!("{}", scan::code(&room.address()));
    }
    std::io::stdout().flush().map_err(unserved)?;
    if !options.no_browser && has_display() {
        // Whoever has no browser that opens has the address.
        let _ = open::that_detached(&address);
    }
    preview.run(listener, room).map_err(unserved)?;
    if call.args.quiet { Ok(()) } else { call.say(&said!("preview-over")) }
}

/// The desk, unless the preview is only to be read.
fn desk(call: &Call, options: &PreviewArgs) -> Result<Option<Desk>, Stop> {
    if options.to_read {
        return Ok(None);
    }
    let content = call.content.clone();
    let desk = Desk::new(content, publish::from_desk(call.clone()), since(call));
    desk.map(Some).map_err(keyless)
}

/// Opens the course as it was published last, with the pictures and the theme of now, and as
/// it is saved now.
fn since(call: &Call) -> Since {
    let call = call.clone();
    Box::new(move || {
        let (content, theme) = (&call.content, call.args.theme.as_deref());
        let both = || -> Result<_, Stop> {
            let Some(sources) = store::published(content)? else { return Ok(None) };
            let now = loaded(theme, content, &Pictures::default())?;
            let then = Loaded { sources, faults: Vec::new(), ..now.clone() };
            let show = |loaded| -> Result<Opened, Stop> {
                let (edition, theme) = opened(loaded, content)?;
                let words = words(&theme, &edition)?;
                let faults = texts(&edition, &words);
                Ok(Opened { edition, theme, words, faults })
            };
            Ok(Some([show(then)?, show(now)?]))
        };
        both().map_err(|stop| reason(stop, &call.words, false))
    })
}

fn keyless(why: NoKey) -> Stop {
    Stop::Machine(said!("desk-no-key", why = why.0))
}

/// A room at an address of the local network, and where it listens. It has the port that is
/// asked for, so that a firewall can be told of it, else a free one.
fn room(
    call: &Call,
    at: Option<IpAddr>,
    port: Option<u16>,
) -> Result<(Room, TcpListener), Stop> {
    let at = at.or_else(own_address);
    let at = at.ok_or_else(|| Stop::Use(said!("room-no-address")))?;
    let address = at.to_string();
    if !is_local(at) {
        return Err(Stop::Use(said!("room-not-local", address)));
    }
    let refused = |error| {
        let path = PathBuf::from(&address);
        Stop::from(StoreError { path, doing: Doing::Serve, why: Why::Machine(error) })
    };
    let listener = TcpListener::bind((at, port.unwrap_or(0))).map_err(refused)?;
    let at = listener.local_addr().map_err(refused)?;
    let room = Room::new(call.content.clone(), at).map_err(keyless)?;
    Ok((room, listener))
}

/// The address from which this machine would speak to others. Nothing is sent: a socket of
/// this kind only looks up the way, to an address that nobody has (RFC 5737).
fn own_address() -> Option<IpAddr> {
    let socket = UdpSocket::bind((Ipv4Addr::UNSPECIFIED, 0)).ok()?;
    socket.connect((Ipv4Addr::new(192, 0, 2, 1), 9)).ok()?;
    Some(socket.local_addr().ok()?.ip()).filter(|own| !own.is_loopback())
}

/// Whether somebody at a terminal sees a browser that is opened.
fn has_display() -> bool {
    let is_set = |name: &str| std::env::var_os(name).is_some_and(|it| !it.is_empty());
    let shows = cfg!(any(target_os = "macos", windows));
    let shown = shows || is_set("DISPLAY") || is_set("WAYLAND_DISPLAY");
    std::io::stdout().is_terminal() && shown
}

/// Opens the content as it is now, and says on the terminal what is wrong with it.
fn open(call: &Call) -> Open {
    let (content, quiet) = (call.content.clone(), call.args.quiet);
    let before = call.words.clone();
    let theme: Option<PathBuf> = call.args.theme.clone();
    let pictures = Pictures::default();
    Box::new(move |typed| {
        let fresh = Pictures::default();
        let pictures = if typed.is_empty() { &fresh } else { &pictures };
        let opened = open_typed(theme.as_deref(), &content, typed, pictures);
        let said = |stop| reason(stop, &before, typed.is_empty());
        let (edition, theme) = opened.map_err(said)?;
        let words = words(&theme, &edition).map_err(said)?;
        // What is typed is told at the desk, with every letter anew.
        if typed.is_empty() && (!quiet || edition.stops()) {
            show::faults(&edition, &words);
        }
        if typed.is_empty() && edition.stops() {
            anstream::eprintln!("{}", words.get("preview-waits"));
        }
        let faults = texts(&edition, &words);
        Ok(Opened { edition, theme, words, faults })
    })
}

/// Every fault as plain text.
fn texts(edition: &Edition, words: &Words) -> Vec<String> {
    let layout = show::Layout::plain();
    let notes = check::open_notes(&edition.content);
    edition
        .faults
        .iter()
        .chain(&notes)
        .map(|fault| layout.render(fault, &edition.texts, words))
        .collect()
}

/// Why the content could not be opened, said on the terminal where it is `aloud`.
fn reason(stop: Stop, words: &Words, aloud: bool) -> Unopened {
    let reason = match stop {
        Stop::Faults => said!("preview-faults"),
        Stop::Use(reason) | Stop::Machine(reason) => reason,
    };
    if aloud {
        anstream::eprintln!(
            "{}",
            words.tell(&said!("cli-stop", message = reason.clone()))
        );
    }
    Unopened(reason)
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
