//! What an editor is told while someone writes in it: faults, what may be written, what a word
//! is and where it is defined, and the changes that mend a fault; by the Language Server
//! Protocol 3.17.
//!
//! One thread reads what the editor says and answers at once what may be written, from the text
//! as it is this moment; another works the content out with the newest texts laid over those
//! on disk, says what is wrong, and answers the rest.
#![allow(clippy::wildcard_enum_match_arm, reason = "the protocol's words are not ours")]

mod answer;
mod position;
mod texts;
mod worked;

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use lsp_server::{Connection, Message, Notification, Request, Response};
use serde_json::{Value, json};

use crate::edition::Edition;
use crate::here::Spot;
use crate::words::Words;

use position::byte;
use texts::{Folder, Text};
use worked::{Desk, Worked};

/// The content as it was opened.
pub struct Opened {
    /// The content, read and checked.
    pub edition: Edition,
    /// The words of its language.
    pub words: Words,
}

/// Texts by their paths below the content folder, which stand in place of those on disk.
pub type Laid = BTreeMap<String, String>;

/// Opens the content with texts laid over it, and reads the disk anew where that is asked for;
/// nothing where it cannot be opened.
pub type Open = Box<dyn Fn(&Laid, bool) -> Option<Opened> + Send + Sync>;

/// What the edge gives: how a content folder is known, and how it is opened.
pub struct Edge {
    /// The content folder that was named, if it is there.
    pub named: Option<PathBuf>,
    /// Whether a folder holds a course.
    pub holds: Box<dyn Fn(&Path) -> bool>,
    /// How a folder is opened.
    pub open: Box<dyn Fn(PathBuf) -> Open>,
}

/// The protocol broke off: what the library says of it.
pub type Broken = Box<dyn std::error::Error + Send + Sync>;

/// Speaks with an editor over standard input and output until it ends.
///
/// # Errors
/// Where the other side does not keep to the protocol.
pub fn serve(edge: &Edge) -> Result<(), Broken> {
    let (connection, threads) = Connection::stdio();
    talk(&connection, edge)?;
    // Whoever writes ends when nobody can send any more.
    drop(connection);
    threads.join()?;
    Ok(())
}

fn talk(connection: &Connection, edge: &Edge) -> Result<(), Broken> {
    let (id, began) = connection.initialize_start()?;
    let abilities = json!({
        "capabilities": {
            "positionEncoding": "utf-16",
            "textDocumentSync": { "openClose": true, "change": 2, "save": true },
            "completionProvider": { "triggerCharacters": [" ", ":", "{", "(", "/", ",", "[", "~", "-"] },
            "hoverProvider": true,
            "definitionProvider": true,
            "codeActionProvider": { "codeActionKinds": ["quickfix"] },
        },
        "serverInfo": { "name": "tourier", "version": env!("CARGO_PKG_VERSION") },
    });
    connection.initialize_finish(id, abilities)?;
    let Some(folder) = folder(connection, edge, &began)? else { return Ok(()) };
    let (folder, first) = folder;
    let desk = Arc::new(Desk::default());
    let open = (edge.open)(folder.clone());
    let room = Arc::new(Room { folder: Folder(folder), desk: desk.clone() });
    let (worker, sender) = (room.clone(), connection.sender.clone());
    let working = std::thread::spawn(move || {
        worker.work(&open, &|message| {
            // Nobody listens any more where the editor is gone.
            let _ = sender.send(message);
        });
    });
    let result = room.listen(connection, first);
    desk.with(|shared| shared.over = true);
    working.join().map_err(|_| "the worker broke")?;
    result
}

/// The content folder: the one that was named, else the one of the first text that is opened;
/// with that message. `None` where the editor ended before.
fn folder(
    connection: &Connection,
    edge: &Edge,
    began: &Value,
) -> Result<Option<(PathBuf, Option<Message>)>, Broken> {
    let root = began.get("rootUri").and_then(Value::as_str);
    let below = root.and_then(|root| {
        let root = url::Url::parse(root).ok()?.to_file_path().ok()?;
        let content = root.join("content");
        [content, root].into_iter().find(|folder| (edge.holds)(folder))
    });
    if let Some(folder) = edge.named.clone().or(below) {
        return Ok(Some((folder, None)));
    }
    for message in &connection.receiver {
        if let Message::Request(request) = &message {
            if connection.handle_shutdown(request)? {
                return Ok(None);
            }
            connection.sender.send(nothing(request.clone()).into())?;
        }
        let Message::Notification(note) = &message else { continue };
        let address = document(&note.params);
        if let Some(folder) = Folder::above(address, &*edge.holds) {
            return Ok(Some((folder, Some(message))));
        }
    }
    Ok(None)
}

/// The address of the text that a message is about.
fn document(params: &Value) -> &str {
    params.pointer("/textDocument/uri").and_then(Value::as_str).unwrap_or("")
}

fn nothing(request: Request) -> Response {
    Response::new_ok(request.id, Value::Null)
}

/// What both threads know.
struct Room {
    folder: Folder,
    desk: Arc<Desk>,
}

impl Room {
    /// Takes what the editor says until it ends.
    fn listen(
        &self,
        connection: &Connection,
        first: Option<Message>,
    ) -> Result<(), Broken> {
        self.desk.with(|shared| (shared.changed, shared.on_disk) = (true, true));
        for message in first.into_iter().chain(&connection.receiver) {
            match message {
                Message::Request(request) => {
                    if connection.handle_shutdown(&request)? {
                        return Ok(());
                    }
                    if let Some(answer) = self.at_once(request) {
                        connection.sender.send(answer.into())?;
                    }
                }
                Message::Notification(note) => self.note(&note),
                Message::Response(_) => {}
            }
        }
        Ok(())
    }

    /// Answers what does not wait for the newest texts; the rest is laid aside.
    fn at_once(&self, request: Request) -> Option<Response> {
        match request.method.as_str() {
            "textDocument/completion" => {
                let worked = self.desk.with(|shared| shared.worked.clone());
                let Some(worked) = worked else { return self.later(request) };
                let answer = self.completion(&worked, &request.params);
                Some(Response::new_ok(request.id, answer))
            }
            "textDocument/hover"
            | "textDocument/definition"
            | "textDocument/codeAction" => self.later(request),
            method => {
                let message = format!("not spoken here: {method}");
                let code = lsp_server::ErrorCode::MethodNotFound as i32;
                Some(Response::new_err(request.id, code, message))
            }
        }
    }

    fn later(&self, request: Request) -> Option<Response> {
        self.desk.with(|shared| shared.asked.push(request));
        None
    }

    /// What may be written, from the text as it is this moment.
    fn completion(&self, worked: &Worked, params: &Value) -> Value {
        let file = self.folder.file(document(params));
        let text = file.as_ref().and_then(|file| {
            self.desk.with(|shared| Some(shared.texts.get(file)?.words.clone()))
        });
        let (Some(file), Some(text)) = (file, text) else { return Value::Null };
        let at = byte(&text, params.get("position").unwrap_or(&Value::Null));
        answer::completion(worked, Spot { file: &file, text: &text, at })
    }

    /// A text that was opened, changed, saved or closed.
    fn note(&self, note: &Notification) {
        let file = self.folder.file(document(&note.params));
        let params = &note.params;
        let version = params.pointer("/textDocument/version").and_then(Value::as_i64);
        match (note.method.as_str(), file) {
            ("textDocument/didOpen", Some(file)) => {
                let words = params.pointer("/textDocument/text").and_then(Value::as_str);
                let words = words.unwrap_or("").to_owned();
                let text = Text { words, version: version.unwrap_or(0) };
                self.desk.with(|shared| {
                    shared.texts.insert(file, text);
                    shared.changed = true;
                });
            }
            ("textDocument/didChange", Some(file)) => self.desk.with(|shared| {
                if let Some(text) = shared.texts.get_mut(&file) {
                    text.change(params.get("contentChanges").unwrap_or(&Value::Null));
                    text.version = version.unwrap_or(text.version + 1);
                    shared.changed = true;
                }
            }),
            ("textDocument/didClose", Some(file)) => self.desk.with(|shared| {
                shared.texts.remove(&file);
                (shared.changed, shared.on_disk) = (true, true);
            }),
            ("textDocument/didSave" | "workspace/didChangeWatchedFiles", _) => {
                self.desk.with(|shared| (shared.changed, shared.on_disk) = (true, true));
            }
            _ => {}
        }
    }

    /// Works out what has changed, says what is wrong, and answers, until the editor ends.
    fn work(&self, open: &Open, send: &dyn Fn(Message)) {
        let mut shown: BTreeMap<String, Value> = BTreeMap::new();
        while let Some(task) = self.desk.next() {
            if let Some((texts, on_disk)) = task.texts
                && let Some(worked) = worked::work(open, &texts, on_disk)
            {
                let worked = Arc::new(worked);
                self.desk.with(|shared| shared.worked = Some(worked.clone()));
                for note in self.faults(&worked, &mut shown) {
                    send(note.into());
                }
            }
            let worked = self.desk.with(|shared| shared.worked.clone());
            for request in task.asked {
                let answer = match &worked {
                    Some(worked) => self.answer(worked, request),
                    None => nothing(request),
                };
                send(answer.into());
            }
        }
    }

    /// What is wrong, by file, where that is news.
    fn faults(
        &self,
        worked: &Worked,
        shown: &mut BTreeMap<String, Value>,
    ) -> Vec<Notification> {
        let mut found: BTreeMap<&str, Vec<Value>> = BTreeMap::new();
        for fault in &worked.edition.faults {
            let of_file = found.entry(&fault.place.file).or_default();
            of_file.push(answer::diagnostic(worked, fault));
        }
        let open = worked.versions.keys().map(String::as_str);
        let files: BTreeSet<String> = found
            .keys()
            .copied()
            .chain(open)
            .chain(shown.keys().map(String::as_str))
            .map(str::to_owned)
            .collect();
        let notes = files.into_iter().filter_map(|file| {
            let faults = found.remove(&*file).unwrap_or_default();
            let version = worked.versions.get(&file);
            let uri = self.folder.address(&file)?;
            let params = json!({ "uri": uri, "version": version, "diagnostics": faults });
            let news = shown.insert(file, params.clone()) != Some(params.clone());
            news.then(|| {
                Notification::new("textDocument/publishDiagnostics".into(), params)
            })
        });
        notes.collect()
    }

    /// Answers with the content worked out with the newest texts.
    fn answer(&self, worked: &Worked, request: Request) -> Response {
        let Request { id, method, params } = request;
        let Some(file) = self.folder.file(document(&params)) else {
            return Response::new_ok(id, Value::Null);
        };
        let text = worked.edition.texts.text(&file);
        let at = byte(text, params.get("position").unwrap_or(&Value::Null));
        let spot = Spot { file: &file, text, at };
        let answer = match method.as_str() {
            "textDocument/completion" => self.completion(worked, &params),
            "textDocument/hover" => answer::hover(worked, spot),
            "textDocument/definition" => answer::definition(worked, spot, &self.folder),
            "textDocument/codeAction" => {
                let range = params.get("range").unwrap_or(&Value::Null);
                answer::actions(worked, &file, range, &self.folder)
            }
            _ => Value::Null,
        };
        Response::new_ok(id, answer)
    }
}
