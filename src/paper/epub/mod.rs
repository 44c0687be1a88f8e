//! The book of the course as EPUB 3: pages of XHTML from the same data as the printed book,
//! with the drawings and pictures, in the order of reading.
//!
//! Sources: EPUB 3.3 (W3C Recommendation, 2023) for the container, package and navigation;
//! EPUB Accessibility 1.1 (W3C Recommendation, 2023) for what is said of access, in the words
//! of the schema.org accessibility vocabulary.

mod chapter;
mod prose;

use std::collections::{BTreeMap, BTreeSet};
use std::io::{Cursor, Write};

use serde_json::Value;
use sha2::{Digest, Sha256};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipWriter};

use crate::encode::{escape, hex};

use super::{PaperFault, Press};

const CONTAINER: &str = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<container version=\"1.0\" \
    xmlns=\"urn:oasis:names:tc:opendocument:xmlns:container\"><rootfiles><rootfile \
    full-path=\"book/package.opf\" media-type=\"application/oebps-package+xml\"/></rootfiles>\
    </container>\n";

/// How the pages look where the reader has no wish of its own.
const STYLE: &str = "body { line-height: 1.4; }\n\
    h1, h2, h3, h4 { line-height: 1.2; page-break-after: avoid; }\n\
    table { border-collapse: collapse; width: 100%; }\n\
    th, td { text-align: left; vertical-align: top; border-bottom: 1px solid; padding: 0.2em 0.4em 0.2em 0; }\n\
    img { max-width: 100%; }\n\
    .contains { border: 1px solid; padding: 0.4em 0.8em; }\n\
    .note { border-left: 4px solid; padding-left: 0.8em; }\n";

/// What access the book gives, in the words of schema.org.
const ACCESS: [(&str, &str); 10] = [
    ("schema:accessMode", "textual"),
    ("schema:accessMode", "visual"),
    ("schema:accessModeSufficient", "textual"),
    ("schema:accessibilityFeature", "alternativeText"),
    ("schema:accessibilityFeature", "index"),
    ("schema:accessibilityFeature", "readingOrder"),
    ("schema:accessibilityFeature", "structuralNavigation"),
    ("schema:accessibilityFeature", "tableOfContents"),
    ("schema:accessibilityHazard", "none"),
    ("schema:accessibilityFeature", "displayTransformability"),
];

/// Writes what stands on a page.
type WriteOne<'a> = fn(&mut Writer<'a>, &Value) -> String;

/// One page of the book.
struct Page {
    /// Its file.
    file: String,
    title: String,
    body: String,
}

/// A line of the index.
struct Term {
    words: String,
    /// The place that it leads to.
    place: String,
    /// The attributes that say its language, where it is not the book's.
    spoken: String,
}

/// What pages are written with, and what is noted meanwhile.
struct Writer<'a> {
    words: &'a Value,
    language: &'a str,
    /// Names in links and the files they lead to.
    files: BTreeMap<String, String>,
    /// Drawings and pictures that are shown.
    shown: BTreeSet<String>,
    /// For the index: a term, and where it is.
    terms: Vec<Term>,
    /// The page that is being written.
    here: String,
}

impl Press {
    /// The book as EPUB, from the data of the printed one. The same data gives the same
    /// bytes. `summary` says in the course's language what access it gives.
    ///
    /// # Errors
    /// A picture that cannot be shown.
    pub fn epub(&self, data: &[u8], summary: &str) -> Result<Vec<u8>, PaperFault> {
        let whole = |error: &dyn std::fmt::Display| {
            PaperFault::whole("book", super::Unset::machine(&error))
        };
        let told: Value = serde_json::from_slice(data).map_err(|error| whole(&error))?;
        let files = self.files(data)?.by_name;
        let settled = files.get("data.json").map(|bytes| serde_json::from_slice(bytes));
        let settled: Value =
            settled.unwrap_or(Ok(Value::Null)).map_err(|error| whole(&error))?;
        let mut writer = Writer::new(&told, &settled);
        let pages = writer.pages(&settled);
        let package = package(&writer, &settled, (&pages, summary, &hash(data)));
        let nav = writer.nav(&settled, &pages);
        let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
        let mut put = |path: &str, bytes: &[u8]| {
            let stored = path == "mimetype";
            add(&mut zip, path, bytes, stored).map_err(|error| whole(&error))
        };
        put("mimetype", b"application/epub+zip")?;
        put("META-INF/container.xml", CONTAINER.as_bytes())?;
        put("book/package.opf", package.as_bytes())?;
        put("book/nav.xhtml", nav.as_bytes())?;
        put("book/style.css", STYLE.as_bytes())?;
        for page in &pages {
            put(&format!("book/{}", page.file), writer.page(page).as_bytes())?;
        }
        for name in &writer.shown {
            if let Some(bytes) = files.get(name) {
                put(&format!("book/{name}"), bytes)?;
            }
        }
        Ok(zip.finish().map_err(|error| whole(&error))?.into_inner())
    }
}

fn add(
    zip: &mut ZipWriter<Cursor<Vec<u8>>>,
    path: &str,
    bytes: &[u8],
    stored: bool,
) -> Result<(), zip::result::ZipError> {
    let method =
        if stored { CompressionMethod::Stored } else { CompressionMethod::Deflated };
    // The clock is no part of the book.
    let options = SimpleFileOptions::default()
        .compression_method(method)
        .last_modified_time(DateTime::DEFAULT)
        .unix_permissions(0o644);
    zip.start_file(path, options)?;
    Ok(zip.write_all(bytes)?)
}

fn hash(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

impl<'a> Writer<'a> {
    fn new(told: &'a Value, data: &'a Value) -> Self {
        let mut files = BTreeMap::new();
        for part in items(&data["handouts"]).chain(items(&data["techniques"])) {
            let name = text_of(&part["name"]);
            files.insert(name.to_owned(), format!("{}.xhtml", name.replace('/', "-")));
        }
        let language = data["handouts"][0]["language"].as_str().unwrap_or("en");
        let (shown, terms) = (BTreeSet::new(), Vec::new());
        Self { words: &told["words"], language, files, shown, terms, here: String::new() }
    }

    fn word(&self, key: &str) -> String {
        escape(self.words[key].as_str().unwrap_or(key))
    }

    /// A whole page as XHTML.
    fn page(&self, page: &Page) -> String {
        let (language, title) = (self.language, escape(&page.title));
        format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!DOCTYPE html>\n<html \
             xmlns=\"http://www.w3.org/1999/xhtml\" xmlns:epub=\"http://www.idpf.org/2007/ops\" \
             lang=\"{language}\" xml:lang=\"{language}\">\n<head><title>{title}</title><link \
             rel=\"stylesheet\" type=\"text/css\" href=\"style.css\"/></head>\n<body>\n{}\n</body>\n\
             </html>\n",
            page.body
        )
    }

    /// Every page in the order of reading.
    fn pages(&mut self, data: &Value) -> Vec<Page> {
        let mut pages = vec![Page {
            file: "title.xhtml".to_owned(),
            title: text_of(&data["cover"]["title"]).to_owned(),
            body: title_page(data),
        }];
        for it in items(&data["handouts"]) {
            pages.push(self.written(it, Self::recipe));
        }
        for it in items(&data["techniques"]) {
            pages.push(self.written(it, Self::technique));
        }
        pages.push(self.back("glossary.xhtml", "book-glossary", (data, Self::glossary)));
        pages.push(self.back("index.xhtml", "book-index", (data, Self::index)));
        pages
    }

    /// A page at the back of the book, with the word for its title.
    fn back(
        &mut self,
        file: &str,
        key: &str,
        (data, write): (&Value, WriteOne<'a>),
    ) -> Page {
        self.here = file.to_owned();
        let title = text_of(&self.words[key]).to_owned();
        Page { file: file.to_owned(), title, body: write(self, data) }
    }

    fn written(&mut self, it: &Value, write: WriteOne<'a>) -> Page {
        let file = self.files.get(text_of(&it["name"])).cloned().unwrap_or_default();
        self.here.clone_from(&file);
        self.terms.push(Term {
            words: text_of(&it["title"]).to_owned(),
            place: file.clone(),
            spoken: chapter::spoken(it),
        });
        let body = write(self, it);
        Page { file, title: text_of(&it["title"]).to_owned(), body }
    }

    fn glossary(&mut self, data: &Value) -> String {
        let mut out = format!(
            "<section epub:type=\"glossary\"><h1>{}</h1><dl>",
            self.word("book-glossary")
        );
        for (at, it) in items(&data["glossary"]).enumerate() {
            let word = text_of(&it["word"]);
            let place = format!("glossary.xhtml#word-{at}");
            self.terms.push(Term {
                words: word.to_owned(),
                place,
                spoken: String::new(),
            });
            let meaning = self.prose(&it["meaning"], 3);
            out += &format!(
                "<dt epub:type=\"glossterm\" id=\"word-{at}\">{}</dt><dd epub:type=\"glossdef\">{meaning}</dd>",
                escape(word)
            );
        }
        if items(&data["glossary"]).next().is_none() {
            return format!("<section><h1>{}</h1></section>", self.word("book-glossary"));
        }
        out + "</dl></section>"
    }

    fn index(&mut self, _: &Value) -> String {
        self.terms.sort_by_key(|term| term.words.to_lowercase());
        let lines = self.terms.iter().map(|term| {
            let (place, spoken) = (escape(&term.place), &term.spoken);
            let words = escape(term.words.trim_end_matches('.'));
            format!("<li><a href=\"{place}\"{spoken}>{words}</a></li>")
        });
        let (title, lines) = (self.word("book-index"), lines.collect::<String>());
        format!("<section epub:type=\"index\"><h1>{title}</h1><ul>{lines}</ul></section>")
    }

    fn nav(&self, data: &Value, pages: &[Page]) -> String {
        let line = |file: &str, it: &Value| {
            let (language, title) = (chapter::spoken(it), escape(text_of(&it["title"])));
            format!("<li><a href=\"{}\"{language}>{title}</a></li>", escape(file))
        };
        let mut list = String::new();
        for lesson in items(&data["lessons"]) {
            let parts = items(&lesson["parts"]);
            let recipes =
                parts.filter(|part| text_of(&part["name"]).starts_with("recipes/"));
            let parts: String = recipes
                .filter_map(|part| {
                    let file = self.files.get(text_of(&part["name"]))?;
                    Some(line(file, part))
                })
                .collect();
            list += &match text_of(&lesson["title"]) {
                _ if parts.is_empty() => parts,
                "" => parts,
                title => listed(&escape(title), &parts),
            };
        }
        let techniques = items(&data["techniques"]).filter_map(|it| {
            let file = self.files.get(text_of(&it["name"]))?;
            Some(line(file, it))
        });
        let techniques: String = techniques.collect();
        if !techniques.is_empty() {
            list += &listed(&self.word("book-techniques"), &techniques);
        }
        let back = pages
            .iter()
            .filter(|page| ["glossary.xhtml", "index.xhtml"].contains(&&*page.file));
        list.extend(back.map(|page| {
            let (file, title) = (escape(&page.file), escape(&page.title));
            format!("<li><a href=\"{file}\">{title}</a></li>")
        }));
        let contents = self.word("book-contents");
        let body = format!(
            "<nav epub:type=\"toc\" id=\"toc\"><h1>{contents}</h1><ol>{list}</ol></nav>\n<nav \
             epub:type=\"landmarks\" hidden=\"hidden\"><ol><li><a epub:type=\"toc\" \
             href=\"#toc\">{contents}</a></li><li><a epub:type=\"bodymatter\" href=\"{}\">{}</a></li></ol></nav>",
            pages.get(1).map_or("title.xhtml", |page| &page.file),
            self.word("book-begin"),
        );
        let title = self.words["book-contents"].as_str().unwrap_or_default().to_owned();
        self.page(&Page { file: String::new(), title, body })
    }
}

/// A head with what stands below it in the contents.
fn listed(head: &str, lines: &str) -> String {
    format!("<li><span>{head}</span><ol>{lines}</ol></li>")
}

fn title_page(data: &Value) -> String {
    let first = &data["handouts"][0]["course"];
    let parts = [&first["school"], &data["cover"]["line"], &first["instructor"]];
    let parts = parts.into_iter().map(text_of).filter(|part| !part.is_empty());
    let lines: String = parts.map(|part| format!("<p>{}</p>", escape(part))).collect();
    let title = escape(text_of(&data["cover"]["title"]));
    format!("<section epub:type=\"titlepage\"><h1>{title}</h1>{lines}</section>")
}

/// The package document: what the book is, its files, their order.
fn package(
    writer: &Writer,
    data: &Value,
    (pages, summary, hash): (&[Page], &str, &str),
) -> String {
    let date = &data["date"];
    let part = |at: usize, otherwise: i64| date[at].as_i64().unwrap_or(otherwise);
    let day = format!("{:04}-{:02}-{:02}", part(0, 2000), part(1, 1), part(2, 1));
    let creator = text_of(&data["handouts"][0]["course"]["instructor"]);
    let creator = match creator {
        "" => String::new(),
        name => format!("<dc:creator>{}</dc:creator>", escape(name)),
    };
    let access = ACCESS.map(|(property, value)| {
        format!("<meta property=\"{property}\">{value}</meta>\n")
    });
    let file = |(at, page): (usize, &Page)| {
        format!(
            "<item id=\"page-{at}\" href=\"{}\" media-type=\"application/xhtml+xml\"/>\n",
            page.file
        )
    };
    let files: String = pages.iter().enumerate().map(file).collect();
    let shown = writer.shown.iter().enumerate().map(|(at, name)| {
        format!(
            "<item id=\"shown-{at}\" href=\"{name}\" media-type=\"{}\"/>\n",
            kind(name)
        )
    });
    let order: String =
        (1..pages.len()).map(|at| format!("<itemref idref=\"page-{at}\"/>\n")).collect();
    format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<package \
         xmlns=\"http://www.idpf.org/2007/opf\" version=\"3.0\" unique-identifier=\"id\" \
         xml:lang=\"{language}\">\n<metadata xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n\
         <dc:identifier id=\"id\">urn:sha256:{hash}</dc:identifier>\n<dc:title>{title}</dc:title>\n\
         <dc:language>{language}</dc:language>\n{creator}\n<dc:date>{day}</dc:date>\n<meta \
         property=\"dcterms:modified\">{day}T00:00:00Z</meta>\n{access}<meta \
         property=\"schema:accessibilitySummary\">{summary}</meta>\n</metadata>\n<manifest>\n<item \
         id=\"nav\" href=\"nav.xhtml\" media-type=\"application/xhtml+xml\" properties=\"nav\"/>\n\
         <item id=\"style\" href=\"style.css\" media-type=\"text/css\"/>\n{files}{shown}</manifest>\n\
         <spine>\n<itemref idref=\"page-0\"/>\n<itemref idref=\"nav\"/>\n{order}</spine>\n</package>\n",
        language = writer.language,
        title = escape(text_of(&data["cover"]["title"])),
        access = access.concat(),
        summary = escape(summary),
        shown = shown.collect::<String>(),
    )
}

fn kind(name: &str) -> &'static str {
    match name.rsplit('.').next() {
        Some("svg") => "image/svg+xml",
        Some("png" | "PNG") => "image/png",
        _ => "image/jpeg",
    }
}

/// The items of a list; none where it is none.
fn items(value: &Value) -> impl Iterator<Item = &Value> {
    value.as_array().map_or(&[][..], Vec::as_slice).iter()
}

/// A text; an empty one where it is none.
fn text_of(value: &Value) -> &str {
    value.as_str().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn typed_marks_stay_text() {
        assert_eq!(escape("<b>\"&\u{0}\u{7f}"), "&lt;b&gt;&quot;&amp;\u{fffd}\u{fffd}");
    }
}
