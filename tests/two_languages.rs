//! One course in two languages: one source of every number, and no caution is lost.

use std::collections::BTreeSet;

use serde_json::Value;
use tourier::edition::{Edition, Further};
use tourier::formula::Scaling;
use tourier::measure::exact;
use tourier::product::{Inputs, Product, Products};
use tourier::read::{Source, words_in};
use tourier::sheet::Sheet;
use tourier::store;
use tourier::theme::Theme;
use tourier::words::Words;

/// A small course in English with a recipe in French too.
const COURSE: &str = "title: Bread\nsummary: Four evenings.\nlanguage: en\nalso in: { fr: [loaf] }\naddress: https://bread.example/\n";
const RECIPE: &str = "---\ntitle: Loaf\nsummary: A loaf.\nmakes: 2 loaves\nformula:\n  dough:\n    - 500 g bread flour, sifted\n    - 340 g water\n    - 10 g fine salt\n    - 3 g instant yeast\n---\n\nA loaf.\n\n## Mix\n~~~ticket\nuses: dough\nhands: 12 min\nwhere: bench\nuntil: it is smooth\n~~~\nMix {dough} for 5 minutes.\n\n> Caution: Do not taste the dough.\n\n## Bake\n~~~ticket\nbake: 230 °C, 35 min\n~~~\nBake at {230 °C}.\n\n## What can go wrong\nLittle.\n";
const WORDS: &str = "Bread: Le pain\nFour evenings.: Quatre soirées.\nloaves: pains\ndough: pâte\nsifted: tamisée\nbench: plan de travail\n";

fn french(course: &Course) -> String {
    let mark = |name: &str| {
        let recipe = course.edition.content.recipe("loaf").expect("a loaf");
        recipe.marks.get(name).cloned().unwrap_or_default()
    };
    format!(
        "---\ntitle: Pain\nsummary: Un pain.\nmark: {}\n---\n\nUn pain.\n\n## Cuire\n~~~ticket\ntranslates: bake\nmark: {}\n~~~\nCuisez à {{230 °C}}.\n\n## Pétrir\n~~~ticket\ntranslates: mix\nmark: {}\nuntil: elle est lisse\n~~~\nPétrissez {{pâte}} pendant 5 minutes.\n\n> Attention : ne goûtez pas la pâte.\n\n## Ce qui peut mal tourner\n~~~ticket\ntranslates: what-can-go-wrong\nmark: {}\n~~~\nPeu.\n",
        mark(""),
        mark("bake"),
        mark("mix"),
        mark("what-can-go-wrong"),
    )
}

struct Course {
    edition: Edition,
    theme: Theme,
}

impl Course {
    fn new(recipe: &str, translated: Option<&str>) -> Self {
        let source = |path: &str, text: &str| Source {
            path: path.to_owned(),
            text: text.to_owned(),
        };
        let mut files =
            vec![source("course.yaml", COURSE), source("recipes/loaf.md", recipe)];
        files.push(source("in/fr/words.yaml", WORDS));
        files.extend(translated.map(|text| source("in/fr/recipes/loaf.md", text)));
        let edition = Edition::new(&files, Vec::new(), Vec::new());
        Self { edition, theme: Theme::built_in() }
    }

    fn further(&self) -> Further {
        self.edition.further(&self.theme).expect("words").remove(0)
    }

    fn faults(&self) -> Vec<&'static str> {
        self.edition.faults.iter().map(|fault| fault.name).collect()
    }

    /// The French page and sheet as one text.
    fn shown(&self) -> String {
        let further = self.further();
        let sheet = sheet(&further.edition, &further.words, "loaf");
        serde_json::to_string(&sheet).expect("facts")
    }
}

fn sheet(edition: &Edition, words: &Words, name: &str) -> Sheet {
    let recipe = edition.content.recipe(name).expect("a recipe");
    edition.sheet(recipe, &Scaling::Batches(exact(1, 1)), words).expect("a sheet")
}

/// A sound translation, and the faults of it where the two texts are changed.
fn changed(of_original: (&str, &str), of_translation: (&str, &str)) -> Course {
    let text = french(&Course::new(RECIPE, None));
    let recipe = RECIPE.replace(of_original.0, of_original.1);
    assert!(of_original.0.is_empty() || recipe != RECIPE);
    let changed = text.replace(of_translation.0, of_translation.1);
    assert!(of_translation.0.is_empty() || changed != text);
    Course::new(&recipe, Some(&changed))
}

#[test]
fn a_translation_stands_in_for_its_original() {
    let course = changed(("", ""), ("", ""));
    assert_eq!(course.faults(), [""; 0]);
    let further = course.further();
    let own = sheet(&further.edition, &further.words, "loaf");
    let shown = serde_json::to_string(&own).expect("facts");
    for text in [
        "Pain",
        "Cuisez à ",
        "Pétrissez ",
        "elle est lisse",
        "ne goûtez pas la pâte.",
        "farine de force",
        "2 pains",
        "tamisée",
        "plan de travail",
        "Peu.",
    ] {
        assert!(shown.contains(text), "{text}: {shown}");
    }
    // Steps keep their names and their order, in whatever order they are translated.
    let first =
        sheet(&course.edition, &words_in(&course.theme, "en").expect("w"), "loaf");
    let names = |sheet: &Sheet| -> Vec<String> {
        sheet.time.steps.iter().map(|step| step.step.clone()).collect()
    };
    assert_eq!(names(&own), names(&first));
    assert!(!shown.contains("Do not taste") && !shown.contains("bench"), "{shown}");
}

#[test]
fn what_has_fallen_behind_is_said_and_its_caution_stands_in_the_first_language() {
    let course = changed(("Do not taste the dough", "Do not taste it raw"), ("", ""));
    assert_eq!(course.faults(), ["translation-behind"]);
    let shown = course.shown();
    assert!(shown.contains("Do not taste it raw") && shown.contains("Pétrissez "));
    assert!(!shown.contains("ne goûtez pas") && shown.contains("it is smooth"));
}

#[test]
fn a_caution_that_is_missing_stands_in_the_first_language() {
    let course = changed(("", ""), ("> Attention : ne goûtez pas la pâte.", "Voilà."));
    assert_eq!(course.faults(), ["translation-caution"]);
    assert!(course.shown().contains("Do not taste the dough."));
}

#[test]
fn a_part_that_is_missing_stands_in_the_first_language() {
    let text = french(&Course::new(RECIPE, None));
    let (before, rest) = text.split_once("## Pétrir").expect("a part");
    let after = rest.split_once("## Ce qui").map_or("", |(_, after)| after);
    let course = Course::new(RECIPE, Some(&format!("{before}## Ce qui{after}")));
    assert_eq!(course.faults(), ["translation-missing"]);
    let shown = course.shown();
    assert!(shown.contains("Do not taste the dough.") && shown.contains("Cuisez à "));
}

/// A number of the translation's own is never shown, in figures or in braces.
#[test]
fn other_numbers_are_never_shown() {
    for (from, to) in [
        ("pendant 5 minutes", "pendant 8 minutes"),
        ("pendant 5 minutes", "pendant longtemps"),
        ("{230 °C}", "{175 °C}"),
        ("{230 °C}", "{230 °C} ou {175 °C}"),
        ("{230 °C}", "230 °C"),
        ("{pâte}", "{farine de force}"),
        ("{pâte}", "{half of the pâte}"),
        ("elle est lisse", "elle est lisse après 9 min"),
    ] {
        let course = changed(("", ""), (from, to));
        assert!(course.faults().contains(&"translation-numbers"), "{to}");
        let shown = course.shown();
        for number in ["8 minutes", "175", "9 min"] {
            assert!(!shown.contains(number), "{to}: {number} is shown");
        }
    }
}

/// Another way to do a step, with other kit, has its own words in the second language too: beside
/// the step, and on the page of the recipe as it is made so; never the step's words for other kit.
#[test]
fn other_kit_is_told_in_the_second_language() {
    let by_hand = "\n~~~ticket by hand\nhands: 20 min\nuntil: it stretches\n~~~\nKnead {dough} on the bench.\n";
    let recipe = RECIPE
        .replace("formula:", "own page: [by hand]\nformula:")
        .replace("for 5 minutes.", "by machine.")
        .replace("taste the dough.\n", &format!("taste the dough.\n{by_hand}"));
    let bare = Course::new(&recipe, None);
    let text = french(&bare).replace("pendant 5 minutes", "à la machine");
    let mark = |name: &str| {
        bare.edition.content.recipe("loaf").expect("a loaf").marks[name].clone()
    };
    let sources = |course: &Course, told: &[&str], never: &[&str]| {
        let further = course.further();
        let beside = sheet(&further.edition, &further.words, "loaf");
        let mut all = further.edition.content.recipes.iter();
        let made_so = all.find(|recipe| recipe.way.is_some()).expect("a page of its own");
        let page = sheet(&further.edition, &further.words, &made_so.name);
        let step = |sheet: &Sheet| {
            let part = serde_json::to_value(&sheet.parts[0]).expect("a step");
            part.to_string()
        };
        let others =
            serde_json::to_value(&beside.parts[0]).expect("a step")["others"].to_string();
        for text in told {
            assert!(others.contains(text), "{text}: {others}");
            assert!(step(&page).contains(text), "{text}: {}", step(&page));
        }
        for text in never {
            assert!(!step(&page).contains(text), "{text}: {}", step(&page));
        }
        assert!(step(&page).contains("caution"), "{}", step(&page));
    };
    // Without them, the first language's, and it is pointed out.
    let course = Course::new(&recipe, Some(&text));
    assert_eq!(course.faults(), ["translation-missing"]);
    sources(&course, &["on the bench"], &["à la machine", "elle est lisse"]);
    // With them, those.
    let own = format!(
        "\n~~~ticket by hand\nmark: {}\nuntil: elle s’étire\n~~~\nPétrissez {{pâte}} à la main.\n",
        mark("mix by hand")
    );
    let told =
        text.replace("goûtez pas la pâte.\n", &format!("goûtez pas la pâte.\n{own}"));
    let course = Course::new(&recipe, Some(&told));
    assert_eq!(course.faults(), [""; 0]);
    sources(&course, &["à la main", "elle s’étire"], &["à la machine", "on the bench"]);
    // Made from an older text, they are shown, and it is pointed out.
    let course = Course::new(&recipe.replace("on the bench", "on a board"), Some(&told));
    assert_eq!(course.faults(), ["translation-behind"]);
    // With other numbers they are not.
    let course =
        Course::new(&recipe, Some(&told.replace("à la main", "9 minutes à la main")));
    assert_eq!(course.faults(), ["translation-numbers"]);
    sources(&course, &["on the bench"], &["à la machine"]);
    // What it is to be another way of is named.
    let course =
        Course::new(&recipe, Some(&told.replace("ticket by hand", "ticket by hnad")));
    assert!(course.faults().contains(&"translation-unknown"));
}

#[test]
fn what_translates_nothing_is_an_error() {
    for (from, to, name) in [
        ("translates: mix\n", "", "translates-nothing"),
        ("translates: mix\n", "translates: mixing\n", "translation-unknown"),
        ("until: elle", "wait: 5 min\nuntil: elle", "unknown-key"),
    ] {
        let course = changed(("", ""), (from, to));
        assert!(course.faults().contains(&name), "{to}: {:?}", course.faults());
        assert!(course.edition.stops(), "{to}");
    }
}

/// What is typed into a translation is text, whatever it looks like.
#[test]
fn hostile_words_are_text() {
    let hostile = "<script>alert(document)</script> {{ page }} #set $x$ @import";
    let written = hostile.replace('{', "\\{").replace('}', "\\}");
    let course = changed(("", ""), ("Peu.", &format!("Voir {written}")));
    let further = course.further();
    let first = words_in(&course.theme, "en").expect("words");
    let further = [further];
    let all = Inputs::all(&course.edition, &first, &further, &course.theme);
    let products = Products::new(&all[1]).expect("templates");
    let recipe = &all[1].recipes()[0];
    let worked = all[1].worked(recipe).expect("a loaf");
    let page = products.recipe_page(&worked).expect("a page");
    let page = page.iter().find(|file| file.path.ends_with("index.html")).expect("one");
    let html = String::from_utf8(page.bytes(&Nothing).expect("bytes")).expect("text");
    assert!(
        html.contains("&lt;script&gt;alert(document)&lt;/script&gt; {{ page }} #set $x$")
    );
    assert!(!html.contains("<script>alert"));
    assert!(html.contains("<html lang=\"fr\">"));
}

/// What stands in the first language is said to, for whoever has a page read aloud.
#[test]
fn headings_in_the_first_language_say_so() {
    // The times differ: what is translated is not what is written now.
    let course = changed(("", ""), ("pendant 5 minutes", "pendant 6 minutes"));
    let first = words_in(&course.theme, "en").expect("words");
    let further = [course.further()];
    let all = Inputs::all(&course.edition, &first, &further, &course.theme);
    let products = Products::new(&all[1]).expect("templates");
    let worked = all[1].worked(&all[1].recipes()[0]).expect("a loaf");
    let page = products.recipe_page(&worked).expect("a page");
    let page = page.iter().find(|file| file.path.ends_with("index.html")).expect("one");
    let html = String::from_utf8(page.bytes(&Nothing).expect("bytes")).expect("text");
    assert!(html.contains("<h1>Pain</h1>"), "{html}");
    assert!(html.contains(" <span lang=\"en\">Mix</span></h3>"), "{html}");
    assert!(html.contains(" Cuire</h3>"), "{html}");
    let bare = Course::new(RECIPE, None);
    let further = bare.further();
    let sheet = sheet(&further.edition, &further.words, "loaf");
    assert_eq!(sheet.title_in(), Some("en"));
    assert_eq!(sheet.part_in(0), Some("en"));
}

struct Nothing;
impl tourier::product::EditionFiles for Nothing {
    fn file(&self, _: &str) -> Result<Vec<u8>, tourier::site::Lacking> {
        Err(tourier::site::Lacking::NotYet(String::new()))
    }
}

/// Every page that is in both languages leads to the other one, and says its language.
#[test]
fn pages_name_each_other() {
    let course = changed(("", ""), ("", ""));
    let first = words_in(&course.theme, "en").expect("words");
    let further = [course.further()];
    let all = Inputs::all(&course.edition, &first, &further, &course.theme);
    let mut pages: Vec<(String, String)> = Vec::new();
    for inputs in &all {
        let products = Products::new(inputs).expect("templates");
        let worked = inputs.worked(&inputs.recipes()[0]).expect("a loaf");
        let cards = [worked.card.clone()];
        let mut files: Vec<Product> = products.recipe_page(&worked).expect("a page");
        files.extend(products.course_pages().expect("pages"));
        files.extend(products.listing_pages(&cards).expect("pages"));
        for file in files.iter().filter(|file| file.path.ends_with(".html")) {
            let bytes = file.bytes(&Nothing).expect("bytes");
            pages.push((file.path.clone(), String::from_utf8(bytes).expect("text")));
        }
    }
    let paths: BTreeSet<&str> = pages.iter().map(|(path, _)| path.as_str()).collect();
    for path in ["index.html", "recipes/loaf/index.html", "find/index.html"] {
        assert!(paths.contains(path), "{path}");
        assert!(paths.contains(&*format!("fr/{path}")), "{path}");
    }
    for (path, text) in &pages {
        let (own, other, twin) = match path.strip_prefix("fr/") {
            Some(rest) => ("fr", "en", rest.to_owned()),
            None => ("en", "fr", format!("fr/{path}")),
        };
        assert!(text.contains(&format!("<html lang=\"{own}\">")), "{path}");
        let up = "../".repeat(path.matches('/').count());
        let link =
            format!("<a href=\"{up}{twin}\" lang=\"{other}\" hreflang=\"{other}\"");
        assert!(text.contains(&link), "{path}: {link}");
        if !path.ends_with("404.html") {
            let address = twin.strip_suffix("index.html").unwrap_or(&twin);
            let link = format!(
                "<link rel=\"alternate\" hreflang=\"{other}\" href=\"https://bread.example/{address}\">"
            );
            assert!(text.contains(&link), "{path}: {link}");
        }
    }
}

/// Every number of the demonstration course, in every recipe at every batch size, is the same
/// in both languages: the facts to the last digit, and the figures of every label.
#[test]
#[allow(clippy::disallowed_methods, reason = "the course is read")]
fn every_number_of_two_editions_is_the_same() {
    let content = std::path::Path::new("content");
    let (sources, _) = store::load(content).expect("the course");
    let (media, _) = store::media(content).expect("pictures");
    let edition = Edition::new(&sources, media, Vec::new());
    let theme = Theme::built_in();
    let words = words_in(&theme, "en").expect("words");
    let further = edition.further(&theme).expect("words").remove(0);
    let mut compared = 0;
    for (one, other) in
        edition.content.recipes.iter().zip(&further.edition.content.recipes)
    {
        let one = edition.sheets(one, &words).expect("sheets");
        let other = further.edition.sheets(other, &further.words).expect("sheets");
        for (one, other) in one.batches.iter().zip(&other.batches) {
            let value = |sheet: &Sheet| {
                // What has no translation is said of the second edition alone.
                let told = Sheet { untold: None, ..sheet.clone() };
                serde_json::to_value(&told).expect("facts")
            };
            same(&value(&one.sheet), &value(&other.sheet), "", &mut compared);
        }
    }
    assert!(compared > 10_000, "{compared} numbers");
}

/// Fails where two values differ in a number, in figures of a text, or in their shape. Words
/// that a language writes a number in (`two thirds`) are not figures.
fn same(one: &Value, other: &Value, path: &str, compared: &mut usize) {
    match (one, other) {
        (Value::Object(one), Value::Object(other)) => {
            let keys = |of: &serde_json::Map<String, Value>| {
                of.keys().cloned().collect::<Vec<_>>()
            };
            assert_eq!(keys(one), keys(other), "{path}");
            for (key, value) in one {
                let path = format!("{path}/{key}");
                match key.as_str() {
                    // Names may hold figures of their own: `crème épaisse à 36 %`.
                    "ingredient" | "from" | "unknown" | "read_on_pack" => {}
                    // Sentences are built otherwise, and say the same numbers.
                    "prose" | "opening" | "content" => {
                        let said = |value: &Value| {
                            let mut found = BTreeSet::new();
                            all_figures(value, &mut found);
                            found
                        };
                        let (one, other) = (said(value), said(&other[key]));
                        assert_eq!(one, other, "{path}");
                        *compared += one.len();
                    }
                    _ => same(value, &other[key], &path, compared),
                }
            }
        }
        (Value::Array(one), Value::Array(other)) => {
            assert_eq!(one.len(), other.len(), "{path}");
            for (at, (one, other)) in one.iter().zip(other).enumerate() {
                same(one, other, &format!("{path}/{at}"), compared);
            }
        }
        (Value::String(one), Value::String(other)) => {
            let (one_figures, other_figures) = (figures(one), figures(other));
            assert_eq!(one_figures, other_figures, "{path}: {one} / {other}");
            *compared += one_figures.len();
        }
        (one, other) => {
            assert_eq!(one, other, "{path}");
            *compared += 1;
        }
    }
}

/// The figures of every text below a value.
fn all_figures(value: &Value, found: &mut BTreeSet<String>) {
    match value {
        Value::Object(entries) => {
            entries.values().for_each(|value| all_figures(value, found));
        }
        Value::Array(values) => values.iter().for_each(|value| all_figures(value, found)),
        Value::String(text) => found.extend(figures(text)),
        Value::Null | Value::Bool(_) | Value::Number(_) => {}
    }
}

/// The figures of a text in order, decimal marks as points and groups joined.
fn figures(text: &str) -> Vec<String> {
    let text: String = text
        // The name of a cream says what it holds.
        .replace("à 36 %", "")
        .replace(['\u{a0}', '\u{202f}'], " ")
        .chars()
        .map(|sign| if sign == ',' { '.' } else { sign })
        .collect();
    let is_part = |sign: char| sign.is_ascii_digit() || "½⅓⅔¼¾⅛⅜⅝⅞.".contains(sign);
    let mut found: Vec<String> = text
        .split(|sign: char| !is_part(sign))
        .map(|part| part.trim_matches('.').to_owned())
        .filter(|part| !part.is_empty())
        .collect();
    found.sort();
    found
}
