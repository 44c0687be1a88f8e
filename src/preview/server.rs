//! Takes browsers' calls and answers them. What takes time is done on threads beside.

use std::convert::Infallible;
use std::future::{Future, poll_fn};
use std::net::IpAddr;
use std::pin::pin;
use std::sync::Arc;
use std::task::Poll;
use std::time::Duration;

use http_body_util::{BodyExt, Channel, Either, Limited};
use hyper::body::{Bytes, Incoming};
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper::{Response, StatusCode};
use hyper_util::rt::{TokioIo, TokioTimer};
use tokio::net::{TcpListener, TcpStream};
use tokio::time::timeout;

use crate::said;

use super::answer::{Answer, Body, begun};
use super::connections::{Connection, Connections, Stage};
use super::page::{self, OWN, Said};
use super::request::{Gate, LARGEST, MOST_LINES, Refusal, Request};
use super::room::{self, Asked, Room, is_local};
use super::served::Served;
use super::{Preview, desk};

/// How long a browser may take to ask, in all.
const PATIENCE: Duration = Duration::from_secs(10);
/// How often an open connection says that it is still open.
const PULSE: Duration = Duration::from_secs(15);
/// So much of what a refused request brings is taken in: a connection that is cut while the
/// other side still talks would lose the answer too.
const HEARD_OUT: usize = 64 << 10;
/// The page for an address that does not exist.
const MISSING: &str = "404.html";

/// Where a call comes in.
pub(super) enum Door {
    /// On this machine only: the pages, and the desk.
    Here(Gate),
    /// On the local network: what a room has.
    Room(Arc<Room>),
}

impl Door {
    /// Whether somebody at this address is heard at all.
    fn hears(&self, peer: IpAddr) -> bool {
        match self {
            Self::Here(_) => peer.is_loopback(),
            Self::Room(_) => is_local(peer),
        }
    }
}

/// Takes calls until the preview is stopped.
pub(super) async fn accept(
    preview: Arc<Preview>,
    listener: std::net::TcpListener,
    door: Door,
) {
    let Ok(listener) = TcpListener::from_std(listener) else { return };
    let (connections, door) = (Connections::default(), Arc::new(door));
    while !preview.is_stopped() {
        let Ok((stream, peer)) = listener.accept().await else {
            // Where the machine has no connection left, one comes free in a moment.
            tokio::time::sleep(Duration::from_millis(50)).await;
            continue;
        };
        if door.hears(peer.ip())
            && let Some(connection) = connections.take()
        {
            tokio::spawn(call(preview.clone(), stream, door.clone(), connection));
        }
    }
}

/// Answers one call, unless it has to make room. A browser that hangs up in the middle is
/// nobody's fault.
async fn call(
    preview: Arc<Preview>,
    stream: TcpStream,
    door: Arc<Door>,
    connection: Connection,
) {
    // Without it answers are only later.
    let _ = stream.set_nodelay(true);
    let heard = service_fn(|request: hyper::Request<Incoming>| {
        let (preview, door, connection) = (&preview, &door, &connection);
        async move {
            Ok::<_, Infallible>(match &**door {
                Door::Here(gate) => answer(preview, gate, connection, request).await,
                Door::Room(room) => in_room(preview, room, connection, request).await,
            })
        }
    });
    let serving = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(PATIENCE)
        .max_buf_size(LARGEST)
        .max_headers(MOST_LINES)
        .keep_alive(false)
        .title_case_headers(true)
        .serve_connection(TokioIo::new(stream), heard);
    let (mut serving, mut hung_up) = (pin!(serving), pin!(connection.is_hung_up()));
    poll_fn(|context| match hung_up.as_mut().poll(context) {
        Poll::Ready(()) => Poll::Ready(()),
        Poll::Pending => serving.as_mut().poll(context).map(drop),
    })
    .await;
}

/// The answer to a request, or why it has none.
async fn answer(
    preview: &Arc<Preview>,
    gate: &Gate,
    connection: &Connection,
    request: hyper::Request<Incoming>,
) -> Response<Body> {
    let (parts, body) = request.into_parts();
    let answer = match gate.read(&parts) {
        Ok(Request::Read(path)) if path == format!("{OWN}events") => {
            connection.becomes(Stage::Listening);
            return events(preview.clone());
        }
        Ok(Request::Read(path)) => {
            connection.becomes(Stage::Answered);
            let preview = preview.clone();
            beside(move || read(&preview, &path)).await
        }
        Ok(Request::Call(name)) => called(preview, connection, name, body).await,
        Err(refusal) => {
            hear_out(body).await;
            Err(refusal)
        }
    };
    let words = || preview.show().words.clone();
    answer.unwrap_or_else(|why| Answer::refused(why, &words())).response()
}

/// Does something that takes time where it holds up nobody.
async fn beside(
    work: impl FnOnce() -> Answer + Send + 'static,
) -> Result<Answer, Refusal> {
    let broke = |_| Answer::remark(StatusCode::INTERNAL_SERVER_ERROR, "");
    Ok(tokio::task::spawn_blocking(work).await.unwrap_or_else(broke))
}

/// Has the desk do something.
async fn called(
    preview: &Arc<Preview>,
    connection: &Connection,
    name: String,
    body: Incoming,
) -> Result<Answer, Refusal> {
    let bytes = whole(body, desk::most(&name)).await?;
    connection.becomes(Stage::Answered);
    let preview = preview.clone();
    beside(move || desk::call(&preview, &name, &bytes)).await
}

/// All that a request brings, within bounds.
async fn whole(body: Incoming, most: usize) -> Result<Bytes, Refusal> {
    match timeout(PATIENCE, Limited::new(body, most).collect()).await {
        Err(_) => Err(Refusal::Slow),
        Ok(Err(why)) if why.is::<http_body_util::LengthLimitError>() => {
            Err(Refusal::Large)
        }
        Ok(Err(_)) => Err(Refusal::Unclear),
        Ok(Ok(whole)) => Ok(whole.to_bytes()),
    }
}

/// The answer to a request from a room, or why it has none.
async fn in_room(
    preview: &Arc<Preview>,
    room: &Arc<Room>,
    connection: &Connection,
    request: hyper::Request<Incoming>,
) -> Response<Body> {
    let (parts, body) = request.into_parts();
    let answer = match room.read(&parts) {
        Ok(Asked::Mark(class)) => marked(preview, (room, connection), class, body).await,
        Ok(asked) => {
            connection.becomes(Stage::Answered);
            let (preview, room) = (preview.clone(), room.clone());
            beside(move || room.answer(&preview, &asked)).await
        }
        Err(refusal) => {
            hear_out(body).await;
            Err(refusal)
        }
    };
    let words = || preview.show().words.clone();
    answer.unwrap_or_else(|why| Answer::refused(why, &words())).response()
}

/// Has a mark of an evening taken in.
async fn marked(
    preview: &Arc<Preview>,
    (room, connection): (&Arc<Room>, &Connection),
    class: String,
    body: Incoming,
) -> Result<Answer, Refusal> {
    let bytes = whole(body, room::MOST).await?;
    connection.becomes(Stage::Answered);
    let (preview, room) = (preview.clone(), room.clone());
    let marked = move || {
        let refused = |why| Answer::refused(why, &preview.show().words.clone());
        room.mark(&preview, &class, &bytes).unwrap_or_else(refused)
    };
    beside(marked).await
}

/// Takes in what a refused request brings, within bounds.
async fn hear_out(body: Incoming) {
    let heard = Limited::new(body, HEARD_OUT).collect();
    // Whatever it was, it is refused.
    let _ = timeout(Duration::from_secs(1), heard).await;
}

/// The answer to a path: a file of the preview itself, of an edition, or a remark.
fn read(preview: &Preview, path: &str) -> Answer {
    if let Some(name) = path.strip_prefix(OWN) {
        return own(preview, name);
    }
    let show = preview.show();
    let (served, mark, faults) =
        (show.served.clone(), show.mark.clone(), show.faults.clone());
    let words = show.words.clone();
    drop(show);
    let Some(served) = served else {
        let page = page::alone(&mark, &faults, &words);
        return Answer::page(StatusCode::SERVICE_UNAVAILABLE, page);
    };
    let said = match (faults.as_slice(), served.cautions()) {
        ([], []) => Said::Nothing,
        ([], cautions) => Said::Cautions(cautions),
        (faults, _) => Said::Faults(faults),
    };
    file(&served, path, &|page| page::shown(page, &mark, said, &served.words))
}

/// A file of the preview itself, or of what is typed at its desk.
fn own(preview: &Preview, name: &str) -> Answer {
    let none = || {
        let show = preview.show();
        Answer::remark(StatusCode::NOT_FOUND, show.words.get("preview-no-file"))
    };
    if let Some(answer) = desk::read(preview, name) {
        return answer;
    }
    let found = page::own(name);
    found.map_or_else(none, |text| Answer::file(name, text.as_bytes().to_vec()))
}

/// What is added to a page.
type Over<'a> = &'a dyn Fn(&str) -> String;

/// A file of an edition. A folder stands for the page in it.
pub(super) fn file(served: &Served, path: &str, over: Over) -> Answer {
    let name = if path.is_empty() || path.ends_with('/') {
        format!("{path}index.html")
    } else {
        path.to_owned()
    };
    match served.order(&name) {
        Ok(Some(bytes)) => found(&name, StatusCode::OK, &bytes, over),
        Ok(None) => missing(served, path, over),
        Err(why) => {
            let remark = said!("preview-cannot-make", name, reason = why.said());
            let text = served.words.tell(&remark);
            Answer::remark(StatusCode::INTERNAL_SERVER_ERROR, &text)
        }
    }
}

fn found(path: &str, status: StatusCode, bytes: &[u8], over: Over) -> Answer {
    if !path.ends_with(".html") {
        return Answer::file(path, bytes.to_vec());
    }
    Answer::page(status, over(&String::from_utf8_lossy(bytes)))
}

/// Where there is no such file: the folder of that name, or the page that says so.
fn missing(served: &Served, path: &str, over: Over) -> Answer {
    let status = StatusCode::NOT_FOUND;
    let folder = format!("{path}/");
    if !path.ends_with('/')
        && let Ok(Some(_)) = served.order(&format!("{folder}index.html"))
    {
        return Answer::moved(&folder);
    }
    match served.order(MISSING) {
        Ok(Some(bytes)) => found(MISSING, status, &bytes, over),
        _ => Answer::remark(status, served.words.get("preview-no-page")),
    }
}

/// Keeps the connection open and says what is on show, now and after each change: server-sent
/// events, as the HTML standard has them.
fn events(preview: Arc<Preview>) -> Response<Body> {
    let (mut sender, body) = Channel::<Bytes, Infallible>::new(4);
    tokio::spawn(async move {
        let mut marks = preview.told.subscribe();
        let mut told = String::new();
        let mut next = "retry: 500\n\n".to_owned();
        // Nobody listens any more where the connection is gone.
        while sender.send_data(Bytes::from(next)).await.is_ok() {
            let mark = marks.borrow_and_update().clone();
            if mark != told {
                next = format!("data: {mark}\n\n");
                told = mark;
                continue;
            }
            let waited = timeout(PULSE, marks.changed()).await;
            next = if waited.is_err() { ": still here\n\n" } else { "" }.to_owned();
        }
    });
    begun(StatusCode::OK, "text/event-stream", Either::Right(body))
}
