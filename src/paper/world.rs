//! What lies before the typesetter while it sets one handout: the press's templates and
//! typefaces, and the handout's own files.
//!
//! What is the same for all handouts of a course stands in a file of its own. The
//! typesetter then finds that most of its templates, and much of what they make, was read
//! and set for the handout before.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Value, json};
use typst::diag::FileResult;
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, Source};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, World};
use typst_as_lib::TypstWorld;

use super::code;
use super::photograph::{self, Photographs};
use super::{Unfound, Unset};

/// The fields that every handout of a course has alike.
const SHARED: [&str; 4] = ["look", "words", "half", "book"];
/// The fields that hold a drawing.
const DRAWN: [&str; 2] = ["svg", "logo"];
/// The field that holds the name of a picture's file.
const SHOWN: &str = "file";
/// The field that holds what a scan code says.
const SCANNED: &str = "scan";

/// A way to set the same words: the template does what it is asked for.
#[derive(Clone, Copy)]
pub(super) struct Setting {
    /// Drawings stand at the head or foot of a column, so that words fill what they would
    /// leave white, instead of right after the words that they show.
    floating: bool,
    /// Everything stands a little closer.
    snug: bool,
    /// And what stands apart does so a little less: hundredths of what it does else.
    tight: Option<u8>,
}

impl Setting {
    /// The ways in the order in which they are tried.
    pub(super) const ALL: [Self; 8] = [
        Self::new(false, false, None),
        Self::new(true, false, None),
        Self::new(false, true, None),
        Self::new(true, true, None),
        Self::new(false, true, Some(68)),
        Self::new(true, true, Some(68)),
        Self::new(false, true, Some(50)),
        Self::new(true, true, Some(50)),
    ];

    const fn new(floating: bool, snug: bool, tight: Option<u8>) -> Self {
        Self { floating, snug, tight }
    }

    /// Whether it is one of the tightest.
    pub(super) fn is_tight(self) -> bool {
        self.tight.is_some()
    }
}

/// The files of one handout, by name.
pub struct Files {
    /// Name to content.
    pub by_name: BTreeMap<String, Bytes>,
    house: Value,
    columns: usize,
}

impl Files {
    /// The files of a handout's data; `families` are all the theme's families of type.
    /// `find` gives the pictures that it shows.
    ///
    /// # Errors
    /// The picture that cannot be shown.
    pub(super) fn new(
        mut data: Value,
        families: &[String],
        find: &dyn Fn(&str) -> Result<Bytes, Unfound>,
    ) -> Result<Self, Unset> {
        let mut found = Pictures::default();
        found.take("data", &mut data);
        let mut house = json!({
            "families": families,
            "alone": data["kind"] != "set" && data["kind"] != "book",
        });
        let columns = if data["kind"] == "student" { 2 } else { 1 };
        for name in SHARED {
            let field = data.as_object_mut().and_then(|fields| fields.remove(name));
            house[name] = field.unwrap_or_default();
        }
        let drawings = found.drawings.into_iter().enumerate();
        let mut by_name: BTreeMap<String, Bytes> = drawings
            .map(|(at, text)| (file_name(at), Bytes::from_string(text)))
            .collect();
        by_name.insert("data.json".to_owned(), Bytes::from_string(data.to_string()));
        let mut files = Self { by_name, house, columns };
        // The smaller ones are made when the template asks for them.
        let sizes = |name: &String| {
            let sizes = photograph::sizes(name).into_iter();
            let sizes =
                sizes.map(|(file, pixels)| json!({ "name": file, "pixels": pixels }));
            (name.clone(), sizes.collect::<Vec<Value>>().into())
        };
        let sizes: serde_json::Map<String, Value> =
            found.photographs.iter().map(sizes).collect();
        files.house["pictures"] = sizes.into();
        for name in found.photographs {
            let bytes = find(&name).map_err(|why| Unset::Picture(name.clone(), why))?;
            files.by_name.insert(name, bytes);
        }
        files.write_house();
        Ok(files)
    }

    /// Has everything set so.
    pub(super) fn set_as(&mut self, setting: Setting) {
        self.house["floating"] = setting.floating.into();
        self.house["snug"] = setting.snug.into();
        self.house["tight"] = setting.tight.into();
        self.write_house();
    }

    /// Columns of a page.
    pub(super) fn columns(&self) -> usize {
        self.columns
    }

    fn write_house(&mut self) {
        let house = Bytes::from_string(self.house.to_string());
        self.by_name.insert("house.json".to_owned(), house);
    }
}

/// What is found in the data of a handout.
#[derive(Default)]
struct Pictures {
    /// Drawings and scan codes, in the order of their files.
    drawings: Vec<String>,
    /// The names of the files of the instructor's pictures.
    photographs: BTreeSet<String>,
}

impl Pictures {
    /// Takes the drawings out of the data, draws the scan codes, and leaves the names of
    /// their files; notes the pictures.
    fn take(&mut self, name: &str, value: &mut Value) {
        match value {
            Value::String(text) if DRAWN.contains(&name) => {
                let file = file_name(self.drawings.len());
                self.drawings.push(std::mem::replace(text, file));
            }
            Value::String(text) if name == SCANNED => {
                self.drawings.push(code::drawn(text));
                *text = file_name(self.drawings.len() - 1);
            }
            Value::String(text) if name == SHOWN && !text.is_empty() => {
                self.photographs.insert(text.clone());
            }
            Value::Array(items) => {
                items.iter_mut().for_each(|item| self.take(name, item));
            }
            Value::Object(fields) => {
                fields.iter_mut().for_each(|(name, it)| self.take(name, it));
            }
            Value::String(_) | Value::Null | Value::Bool(_) | Value::Number(_) => {}
        }
    }
}

fn file_name(number: usize) -> String {
    format!("{number}.svg")
}

/// The press with the files of one handout on it.
pub(super) struct HandoutWorld<'a> {
    pub(super) press: TypstWorld<'a>,
    pub(super) files: &'a Files,
    pub(super) photographs: &'a Photographs,
}

impl World for HandoutWorld<'_> {
    fn library(&self) -> &LazyHash<Library> {
        self.press.library()
    }

    fn book(&self) -> &LazyHash<FontBook> {
        self.press.book()
    }

    fn main(&self) -> FileId {
        self.press.main()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        self.press.source(id)
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let name = id.vpath().get_without_slash();
        let own = self.files.by_name.get(name).cloned();
        let own = own.or_else(|| self.photographs.get(name).ok());
        own.map_or_else(|| self.press.file(id), Ok)
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.press.font(index)
    }

    fn today(&self, offset: Option<Duration>) -> Option<Datetime> {
        self.press.today(offset)
    }
}
