//! `tourier draft`: recipes that exist, as pasted texts and as pages with schema.org data, become
//! drafts that proof with cautions only and publish. Sources: `tests/drafts/README.md`;
//! the shapes of pages: schema.org `Recipe`, JSON-LD 1.1.
#![allow(clippy::disallowed_methods, reason = "recipes are read, drafts are written")]

mod common;

use std::fs;
use std::path::{Path, PathBuf};

use common::{folder, tourier};
use tourier::draft::{Draft, NothingFound, draft};
use tourier::edition::Edition;
use tourier::fault::{Fault, Severity};
use tourier::formula::{AllergenSum, allergens, expand, weigh};
use tourier::measure::exact;
use tourier::model::{Ingredient, Step};
use tourier::read::Source;

const COURSE: &str = "title: Drafts\nsummary: Recipes from old books.\n";

/// Every recipe to draft from, by its file name.
fn recipes() -> Vec<(String, String)> {
    let entries = fs::read_dir("tests/drafts").expect("the folder");
    let paths = entries.map(|entry| entry.expect("a file").path());
    let mut paths: Vec<PathBuf> = paths
        .filter(|path| path.extension().is_some_and(|end| end == "txt" || end == "html"))
        .collect();
    paths.sort();
    let read = |path: PathBuf| {
        let text = fs::read_to_string(&path).expect("a text");
        (path.file_name().expect("a name").to_string_lossy().into_owned(), text)
    };
    paths.into_iter().map(read).collect()
}

fn course() -> Vec<Source> {
    vec![Source { path: "course.yaml".into(), text: COURSE.into() }]
}

fn made(name: &str) -> Draft {
    let text = fs::read_to_string(Path::new("tests/drafts").join(name)).expect("a text");
    draft(&text, &course()).expect("a draft")
}

/// A draft read by the program.
fn edition(draft: &Draft) -> Edition {
    let file =
        Source { path: format!("recipes/{}.md", draft.name), text: draft.text.clone() };
    let mut files = course();
    files.push(file);
    Edition::new(&files, Vec::new(), Vec::new())
}

fn errors(edition: &Edition) -> Vec<&Fault> {
    edition.faults.iter().filter(|fault| fault.severity == Severity::Error).collect()
}

fn steps(edition: &Edition) -> Vec<&Step> {
    edition.content.recipes[0].steps().collect()
}

/// What the draft took: ingredient names, section by section.
fn ingredients(edition: &Edition) -> Vec<(String, Vec<String>)> {
    let title = |ingredient: &Ingredient| ingredient.title().to_owned();
    let sections = edition.content.recipes[0].formula.iter();
    sections
        .map(|section| {
            let names = section.lines.iter().map(|line| title(&line.ingredient.value));
            (section.name.value.clone(), names.collect())
        })
        .collect()
}

#[test]
fn drafts_proof_with_cautions_only() {
    let all = recipes();
    assert!(all.len() >= 10);
    for (name, text) in all {
        let draft = draft(&text, &course()).expect("a draft");
        let edition = edition(&draft);
        assert!(
            errors(&edition).is_empty(),
            "{name}: {:?}\n{}",
            errors(&edition),
            draft.text
        );
        let settle =
            edition.faults.iter().filter(|fault| fault.name == "to-settle").count();
        assert_eq!(settle, draft.doubts.len(), "{name}");
    }
}

#[test]
fn times_and_oven_stand_in_tickets() {
    let draft = made("yeast-rolls.html");
    let edition = edition(&draft);
    let steps = steps(&edition);
    let last = steps.last().expect("a step");
    let bake = &last.bake.as_ref().expect("it is baked").value;
    // 400 °F: NIST SP 811 B.8.
    assert_eq!(
        bake.oven,
        tourier::measure::Temperature::fahrenheit(&tourier::measure::exact(400, 1))
    );
    let waits = steps.iter().filter(|step| step.wait.is_some()).count();
    assert_eq!(waits, 3, "{}", draft.text);
    assert!(draft.text.contains("makes: '50 rolls'"), "{}", draft.text);
    assert!(
        draft.text.contains("{400 °F}")
            && draft.text.contains("bake: 400 °F, 18 min to 20 min"),
        "{}",
        draft.text
    );
}

#[test]
fn sections_and_fans_are_found() {
    let draft = made("hot-cross-buns.html");
    let edition = edition(&draft);
    let names: Vec<String> =
        ingredients(&edition).into_iter().map(|(name, _)| name).collect();
    assert_eq!(names, ["dough", "crosses"]);
    assert!(
        draft.text.contains("bake: 220 °C, 15 min to 20 min\nfan: 200 °C"),
        "{}",
        draft.text
    );
    assert!(draft.text.contains("uses: crosses"), "{}", draft.text);
    assert!(draft.text.contains("Bake at {220 °C} for"), "{}", draft.text);
}

/// What is not sure is said: once in the draft, once to its author.
#[test]
fn nothing_is_guessed_silently() {
    let doubt = |draft: &Draft, words: &str| {
        assert!(
            draft.doubts.iter().any(|doubt| doubt.contains(words)),
            "{words}: {:#?}",
            draft.doubts
        );
    };
    let cake = made("plum-cake.txt");
    doubt(&cake, "carbonate of ammonia");
    doubt(&cake, "no oven temperature is told");
    assert!(cake.text.contains("- 'carbonate of ammonia, as needed'"), "{}", cake.text);
    doubt(&made("parker-house-rolls.txt"), "what it makes");
    doubt(&made("parker-house-rolls.txt"), "`Flour` stands without a weight");
    doubt(&made("dried-egg-cake.html"), "Ministry of Food");
    let cake = made("molasses-cake.html");
    doubt(&cake, "`cookTime`");
    assert!(cake.text.contains("bake: 350 °F, 30 min"), "{}", cake.text);
}

/// No mark of a stranger's text becomes one of ours: no HTML, link, ticket, brace or key.
#[test]
fn hostile_marks_stay_text() {
    let draft = made("cream-puffs.html");
    let edition = edition(&draft);
    assert!(errors(&edition).is_empty(), "{:?}\n{}", errors(&edition), draft.text);
    let recipe = &edition.content.recipes[0];
    assert_eq!(recipe.title.value, "Cream puffs alert(1) {butter}");
    assert_eq!(recipe.steps().count(), 3, "{}", draft.text);
    assert!(
        !draft.text.contains("\nevil:") && !draft.text.contains("\nuses: nothing"),
        "{}",
        draft.text
    );
    assert!(
        draft.text.contains("\\<img") && draft.text.contains("\\[click\\]"),
        "{}",
        draft.text
    );
}

#[test]
fn what_is_no_recipe_is_refused_in_words() {
    let why = |text: &str| draft(text, &course()).expect_err("no recipe");
    let page = why("<html><body>Nothing</body></html>");
    assert_eq!(page, NothingFound::NotInPage);
    assert_eq!(why("{\"@type\": \"Person\"}"), NothingFound::NotInData);
    let poem = why("A poem\n\nabout bread and its crust.");
    assert_eq!(poem, NothingFound::NoIngredients);
}

/// The command writes beside the course, over nothing, and the whole course publishes.
#[test]
fn drafts_are_written_and_published() {
    let here = folder("draft");
    let content = here.join("content");
    fs::create_dir_all(content.join("recipes")).expect("a folder");
    fs::write(content.join("course.yaml"), COURSE).expect("written");
    let draft = |name: &str, more: &[&str]| {
        let file = here.join(name).to_string_lossy().into_owned();
        tourier(&content, &[&["draft", file.as_str()], more].concat())
    };
    for (name, text) in recipes() {
        fs::write(here.join(&name), text).expect("written");
        let answer = draft(&name, &[]);
        assert_eq!(answer.code, 0, "{name}: {}", answer.err);
        assert!(answer.out.contains("a draft stands in "), "{}", answer.out);
    }
    let again = draft("plum-cake.txt", &[]);
    assert_eq!(again.code, 2, "{}", again.out);
    assert!(again.err.contains("nothing is written over"), "{}", again.err);
    let shown = draft("plum-cake.txt", &["--to", "-"]);
    assert!(shown.out.starts_with("---\ntitle: "), "{}", shown.out);
    fs::write(here.join("latin.txt"), b"Caf\xe9").expect("written");
    let latin = draft("latin.txt", &[]);
    assert_eq!(latin.code, 2, "{}", latin.err);
    assert!(latin.err.contains("UTF-8"), "{}", latin.err);
    assert_eq!(draft("not-there.txt", &[]).code, 2);

    let proof = tourier(&content, &["proof"]);
    assert_eq!(proof.code, 0, "{}", proof.err);
    let site = here.join("site").to_string_lossy().into_owned();
    let published = tourier(&content, &["publish", "--to", &site]);
    assert_eq!(published.code, 0, "{}", published.err);
    assert!(here.join("site/recipes/hot-cross-buns/index.html").is_file());
}

/// A line without an honest weight stays, so that its allergens are declared, or are said not to
/// be known.
#[test]
fn what_has_no_weight_is_declared_all_the_same() {
    for (name, allergen) in
        [("dried-egg-cake.html", "egg"), ("parker-house-rolls.txt", "wheat")]
    {
        let edition = edition(&made(name));
        let sum = declared(&edition);
        assert!(
            sum.by("us").iter().any(|found| found.name == allergen),
            "{name}: {sum:?}"
        );
    }
    let text = "Buns\n\n100 g flour\n1 cup fat\n2 cups mystery crumbs\n\nMix it all.";
    let draft = draft(text, &course()).expect("a draft");
    let unknown = declared(&edition(&draft)).unknown;
    assert_eq!(unknown, ["ingredient to settle"], "{}", draft.text);
}

fn declared(edition: &Edition) -> AllergenSum {
    let formula = weigh(&edition.content.recipes[0], edition.book());
    allergens(&expand(&formula, &exact(1, 1)))
}

/// What is to settle is said in the language of the course, and the draft is read as any.
#[test]
fn doubts_are_in_the_language_of_the_course() {
    let course = "title: T\nsummary: S\nlanguage: fr\n";
    let course = [Source { path: "course.yaml".into(), text: course.into() }];
    let text = "Buns\n\nMakes 12\n\n500 g flour\n2 eggs\n\nMix. Bake in a moderate oven for half an hour.";
    let draft = draft(text, &course).expect("a draft");
    assert!(draft.text.contains("# Réglez chacun de ces points"), "{}", draft.text);
    let all = draft.doubts.join("\n");
    for told in ["`summary` n’est pas dit", "aucune température de four n’est dite"]
    {
        assert!(all.contains(told), "{all}");
    }
    for english in ["is told", "stands for it", "of what?"] {
        assert!(!all.contains(english), "{all}");
    }
}
