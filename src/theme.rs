//! A theme: page templates, style sheet, handout templates, words and fonts, as bytes by
//! name. The default one is inside the program.

use std::borrow::Cow;
use std::collections::BTreeMap;

/// A theme's files by their path below the theme's folder, with forward slashes.
#[derive(Clone, Debug)]
pub struct Theme {
    /// Path to content.
    pub files: BTreeMap<String, Cow<'static, [u8]>>,
}

/// Names a file of the default theme and puts its bytes inside the program.
macro_rules! built_in {
    ($($path:literal),* $(,)?) => {
        &[$(($path, include_bytes!(concat!("../themes/default/", $path)) as &[u8])),*]
    };
}

const BUILT_IN: &[(&str, &[u8])] = built_in![
    "fonts/Amiri-Regular.ttf",
    "fonts/Asap-Bold.ttf",
    "fonts/Asap-Bold.woff2",
    "fonts/Asap-Regular.ttf",
    "fonts/Asap-Regular.woff2",
    "fonts/NotoSansJP-Regular.ttf",
    "fonts/OFL-Asap.txt",
    "fonts/OFL-Vollkorn.txt",
    "fonts/Vollkorn-Bold.ttf",
    "fonts/Vollkorn-Bold.woff2",
    "fonts/Vollkorn-Italic.ttf",
    "fonts/Vollkorn-Italic.woff2",
    "fonts/Vollkorn-Regular.ttf",
    "fonts/Vollkorn-Regular.woff2",
    "paper/bench.typ",
    "paper/book.typ",
    "paper/booklet.typ",
    "paper/class.typ",
    "paper/formula.typ",
    "paper/house.typ",
    "paper/labels.typ",
    "paper/lists.typ",
    "paper/main.typ",
    "paper/prose.typ",
    "paper/run.typ",
    "paper/set.typ",
    "paper/student.typ",
    "site/base.html",
    "site/class.html",
    "site/course.html",
    "site/drawing.html",
    "site/evenings.html",
    "site/find.html",
    "site/formula.html",
    "site/icon.svg",
    "site/instructor.html",
    "site/missing.html",
    "site/offline.js",
    "site/plan.html",
    "site/print.html",
    "site/recipe.html",
    "site/step.html",
    "site/style.css",
    "site/technique.html",
    "site/tourier.js",
    "site/units.html",
    "site/words.html",
    "words/de/allergens.ftl",
    "words/de/change.ftl",
    "words/de/cli.ftl",
    "words/de/dates.ftl",
    "words/de/desk.ftl",
    "words/de/drawing.ftl",
    "words/de/fault.ftl",
    "words/de/handout.ftl",
    "words/de/help.ftl",
    "words/de/here.ftl",
    "words/de/page.ftl",
    "words/de/plan.ftl",
    "words/de/room.ftl",
    "words/de/sheet.ftl",
    "words/de/units.ftl",
    "words/en/change.ftl",
    "words/en/cli.ftl",
    "words/en/dates.ftl",
    "words/en/desk.ftl",
    "words/en/drawing.ftl",
    "words/en/fault.ftl",
    "words/en/handout.ftl",
    "words/en/help.ftl",
    "words/en/here.ftl",
    "words/en/page.ftl",
    "words/en/plan.ftl",
    "words/en/room.ftl",
    "words/en/sheet.ftl",
    "words/en/units.ftl",
    "words/en-US/american.ftl",
    "words/es/allergens.ftl",
    "words/es/change.ftl",
    "words/es/cli.ftl",
    "words/es/dates.ftl",
    "words/es/desk.ftl",
    "words/es/drawing.ftl",
    "words/es/fault.ftl",
    "words/es/handout.ftl",
    "words/es/help.ftl",
    "words/es/here.ftl",
    "words/es/page.ftl",
    "words/es/plan.ftl",
    "words/es/room.ftl",
    "words/es/sheet.ftl",
    "words/es/units.ftl",
    "words/fr/allergens.ftl",
    "words/fr/change.ftl",
    "words/fr/cli.ftl",
    "words/fr/dates.ftl",
    "words/fr/desk.ftl",
    "words/fr/drawing.ftl",
    "words/fr/fault.ftl",
    "words/fr/handout.ftl",
    "words/fr/help.ftl",
    "words/fr/here.ftl",
    "words/fr/page.ftl",
    "words/fr/plan.ftl",
    "words/fr/room.ftl",
    "words/fr/sheet.ftl",
    "words/fr/units.ftl",
    "words/ja/allergens.ftl",
    "words/ja/change.ftl",
    "words/ja/cli.ftl",
    "words/ja/dates.ftl",
    "words/ja/desk.ftl",
    "words/ja/drawing.ftl",
    "words/ja/fault.ftl",
    "words/ja/handout.ftl",
    "words/ja/help.ftl",
    "words/ja/here.ftl",
    "words/ja/page.ftl",
    "words/ja/plan.ftl",
    "words/ja/room.ftl",
    "words/ja/sheet.ftl",
    "words/ja/units.ftl",
];

impl Theme {
    /// The message files of a language by its tag, in the order in which they are read: those
    /// of English, which stand in for what another has not, then those of the language
    /// without what follows its first part, then those of just this tag.
    pub fn words_files(&self, language: &str) -> impl Iterator<Item = &str> {
        let mut tags = vec!["en", plain(language), language];
        tags.dedup();
        tags.into_iter().flat_map(|tag| {
            let folder = format!("words/{tag}/");
            let files = self.files.keys().map(String::as_str);
            files.filter(move |path| path.starts_with(&folder) && path.ends_with(".ftl"))
        })
    }

    /// Whether there are words of a language, by its tag.
    pub fn speaks(&self, language: &str) -> bool {
        let has = |tag: &str| {
            let folder = format!("words/{tag}/");
            self.files.keys().any(|path| path.starts_with(&folder))
        };
        has(language) || has(plain(language))
    }

    /// The tags of the languages that there are words of.
    pub fn languages(&self) -> Vec<String> {
        let files = self.below("words/").filter_map(|path| path.split('/').nth(1));
        let mut tags: Vec<String> = files.map(str::to_owned).collect();
        tags.dedup();
        tags
    }

    /// The default theme.
    pub fn built_in() -> Self {
        let named = |(path, bytes): &(&str, &'static [u8])| {
            ((*path).to_owned(), Cow::Borrowed(*bytes))
        };
        Self { files: BUILT_IN.iter().map(named).collect() }
    }

    /// A file's bytes.
    pub fn bytes(&self, path: &str) -> Option<&[u8]> {
        self.files.get(path).map(|bytes| bytes.as_ref())
    }

    /// A file's text; empty where there is no such file or it is not UTF-8.
    pub fn text(&self, path: &str) -> &str {
        self.bytes(path).and_then(|bytes| std::str::from_utf8(bytes).ok()).unwrap_or("")
    }

    /// The names of the files whose path begins with `folder`, in order.
    pub fn below<'a>(&'a self, folder: &'a str) -> impl Iterator<Item = &'a str> {
        self.files.keys().map(String::as_str).filter(move |path| path.starts_with(folder))
    }
}

/// A language's tag without its region or script.
fn plain(language: &str) -> &str {
    language.split('-').next().unwrap_or(language)
}
