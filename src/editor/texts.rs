//! The texts that an editor has open, as they are this moment.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use serde_json::Value;
use url::Url;

use super::position::byte;

/// One text that is open.
#[derive(Clone, Debug)]
pub(super) struct Text {
    /// Its words.
    pub(super) words: String,
    /// Its number, which grows with each change.
    pub(super) version: i64,
}

/// The texts that are open, by their paths below the content folder.
pub(super) type Texts = BTreeMap<String, Text>;

/// The content folder, and its files by their addresses.
pub(super) struct Folder(pub(super) PathBuf);

impl Folder {
    /// The path of a file below the folder; `None` where it is elsewhere.
    pub(super) fn file(&self, address: &str) -> Option<String> {
        let path = Url::parse(address).ok()?.to_file_path().ok()?;
        let below = path.strip_prefix(&self.0).ok()?;
        let parts = below.components().map(|part| part.as_os_str().to_str());
        let parts: Option<Vec<&str>> = parts.collect();
        Some(parts?.join("/")).filter(|file| !file.is_empty())
    }

    /// The address of a file below the folder.
    pub(super) fn address(&self, file: &str) -> Option<String> {
        let path: PathBuf = self.0.join(file.split('/').collect::<PathBuf>());
        Url::from_file_path(path).ok().map(String::from)
    }

    /// The folder of the content that a file belongs to: the nearest above it that `holds` a
    /// course.
    pub(super) fn above(address: &str, holds: &dyn Fn(&Path) -> bool) -> Option<PathBuf> {
        let path = Url::parse(address).ok()?.to_file_path().ok()?;
        path.ancestors().skip(1).find(|folder| holds(folder)).map(Path::to_owned)
    }
}

impl Text {
    /// Makes changes, one after the other: a stretch replaced, or all of it.
    pub(super) fn change(&mut self, changes: &Value) {
        for change in changes.as_array().into_iter().flatten() {
            let new = change.get("text").and_then(Value::as_str).unwrap_or("");
            let Some(range) = change.get("range").filter(|range| !range.is_null()) else {
                new.clone_into(&mut self.words);
                continue;
            };
            let of =
                |key: &str| byte(&self.words, range.get(key).unwrap_or(&Value::Null));
            let (start, end) = (of("start"), of("end"));
            self.words.replace_range(start..end.max(start), new);
        }
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn changes_are_made_one_after_the_other() {
        let mut text = Text { words: "a𐐀b\nc\n".into(), version: 1 };
        let at =
            |line: u32, character: u32| json!({ "line": line, "character": character });
        text.change(&json!([
            { "range": { "start": at(0, 1), "end": at(0, 3) }, "text": "卵" },
            { "range": { "start": at(1, 1), "end": at(1, 1) }, "text": "d" },
        ]));
        assert_eq!(text.words, "a卵b\ncd\n");
        text.change(&json!([{ "text": "new" }]));
        assert_eq!(text.words, "new");
    }

    #[test]
    fn addresses_lead_to_files_and_back() {
        let folder = Folder(std::env::temp_dir().join("a course"));
        let address = folder.address("recipes/crème.md").expect("an address");
        assert!(address.ends_with("/a%20course/recipes/cr%C3%A8me.md"), "{address}");
        assert_eq!(folder.file(&address).as_deref(), Some("recipes/crème.md"));
        assert_eq!(folder.file("file:///elsewhere/a.md"), None);
        assert_eq!(folder.file("untitled:Untitled-1"), None);
    }
}
