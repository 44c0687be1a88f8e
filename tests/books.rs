//! Six recipes of a public-domain book as they stand there, with what it leaves the choice of as
//! ways and its two heats as phases: Fannie Merritt Farmer, The Boston Cooking-School Cook Book,
//! Boston 1910; each file in `tests/books` names its pages. The book has `hot`, `quick` and
//! `moderate` ovens, no degrees: those are common practice, no source; and so are minutes that it
//! does not print. Grams are worked out from USDA SR28 portions, as in `tests/printed/README.md`.
#![allow(clippy::disallowed_methods, reason = "the recipes are read")]

#[path = "common/english.rs"]
mod english;

use std::fs;

use english::told;

use tourier::edition::Edition;
use tourier::fault::Severity;
use tourier::formula::{Scaling, ways};
use tourier::measure::exact;
use tourier::read::{Source, words_in};
use tourier::sheet::Sheet;
use tourier::theme::Theme;

struct Book {
    edition: Edition,
    name: &'static str,
}

impl Book {
    fn open(name: &'static str) -> Self {
        let path = format!("{}/tests/books/{name}.md", env!("CARGO_MANIFEST_DIR"));
        let text = fs::read_to_string(path).expect("a recipe");
        let file =
            |path: &str, text: &str| Source { path: path.into(), text: text.into() };
        let course = file("course.yaml", "title: c\nsummary: s\nunits: us\n");
        let recipe = file(&format!("recipes/{name}.md"), &text);
        let edition = Edition::new(&[course, recipe], Vec::new(), Vec::new());
        let errors = edition.faults.iter().filter(|it| it.severity == Severity::Error);
        let errors: Vec<_> = errors.map(|it| (it.name, told(it).message)).collect();
        assert!(errors.is_empty(), "{name}: {errors:?}");
        Self { edition, name }
    }

    /// What ways there are.
    fn ways(&self) -> Vec<String> {
        let recipe = self.edition.content.recipe(self.name).expect("it is there");
        ways(recipe, self.edition.book()).into_iter().map(|way| way.name).collect()
    }

    fn sheet(&mut self, with: &[&str]) -> Sheet {
        let name = match with {
            [] => self.name.to_owned(),
            ways => self.edition.in_ways(self.name, ways).expect("it is offered so"),
        };
        let words = words_in(&Theme::built_in(), "en").expect("they read");
        let recipe = self.edition.content.recipe(&name).expect("it is there");
        let one = Scaling::Batches(exact(1, 1));
        self.edition.sheet(recipe, &one, &words).expect("it scales")
    }
}

/// What of it a law makes one declare.
fn declared(sheet: &Sheet, law: &str) -> Vec<String> {
    sheet.allergens.by(law).iter().map(|it| it.name.clone()).collect()
}

/// Within two in a hundred: old cups are not of ours.
fn weighs(sheet: &Sheet, by_hand: f64, what: &str) {
    let off = (sheet.totals.grams - by_hand).abs() / by_hand;
    assert!(off < 0.02, "{what}: {} g, by hand {by_hand} g", sheet.totals.grams);
}

/// Heat in °F and usual minutes of every phase of the bake.
fn bakes(sheet: &Sheet) -> Vec<(i64, u64)> {
    let fahrenheit = |celsius: f64| (celsius * 1.8 + 32.0).round();
    let [bake] = &sheet.bakes[..] else { panic!("{}", sheet.bakes.len()) };
    let phases = bake.phases.iter();
    #[allow(clippy::cast_possible_truncation, reason = "ovens are this cool")]
    phases.map(|it| (fahrenheit(it.oven_c) as i64, it.minutes[0])).collect()
}

/// The heat of an oven whose book names none, and the minutes it prints: 15 + 20, then 15.
const LOAF: [(i64, u64); 2] = [(425, 35), (375, 15)];

/// By hand: water 2.25 × 237 = 533, butter 14.2, lard 12.8, sugar 12.5, salt 9, yeast 4.25, flour
/// 6 × 125 = 750: 1336 g. With drippings 2 × ⅔ × 12.8 = 17.1 in place of 27: 1326 g, without milk.
#[test]
fn water_bread() {
    let mut book = Book::open("water-bread");
    assert_eq!(book.ways(), ["beef drippings"]);
    let sheet = book.sheet(&[]);
    weighs(&sheet, 1336.0, "as printed");
    assert_eq!(declared(&sheet, "us"), ["milk", "wheat"]);
    assert_eq!(bakes(&sheet), LOAF);
    assert_eq!(sheet.proofs[0].phases[0].minutes[0], 600);
    let days: Vec<_> = sheet.time.steps.iter().map(|step| step.day).collect();
    assert_eq!(days, [1, 1, 2, 2, 2].map(Some));
    let dripping = book.sheet(&["beef drippings"]);
    weighs(&dripping, 1326.0, "with drippings");
    assert_eq!(declared(&dripping, "us"), ["wheat"]);
    assert_eq!(bakes(&dripping), LOAF);
}

/// By hand: milk 488, sugar 50, salt 6, yeast 17, water 59, whole wheat flour 4⅔ × 120 = 560:
/// 1180 g. With molasses ⅓ × 337 = 112 in place of 50: 1242 g.
#[test]
fn entire_wheat_bread() {
    let mut book = Book::open("entire-wheat-bread");
    assert_eq!(book.ways(), ["molasses"]);
    let sheet = book.sheet(&[]);
    weighs(&sheet, 1180.0, "as printed");
    weighs(&book.sheet(&["molasses"]), 1242.0, "with molasses");
    assert_eq!(bakes(&sheet), LOAF);
}

/// By hand: milk 244, butter 57, sugar 1.5 × 12.5 = 18.8, salt 3, yeast 17, water 59, white 33,
/// flour 3.75 × 125 = 469; glaze 17 + 7.4: 925 g. Not glazed: 901 g; the white is egg all the same.
#[test]
fn sticks() {
    let mut book = Book::open("sticks");
    assert_eq!(book.ways().len(), 1, "{:?}", book.ways());
    let sheet = book.sheet(&[]);
    weighs(&sheet, 925.0, "glazed");
    assert_eq!(bakes(&sheet), [(425, 5), (325, 15)]);
    let way = book.ways().remove(0);
    let plain = book.sheet(&[&way]);
    weighs(&plain, 901.0, "not glazed");
    assert_eq!(declared(&plain, "us"), declared(&sheet, "us"));
}

/// By hand: milk 244, sugar 50, butter 28.4, salt 3, yeast 8.5, water 59, cinnamon 2, flour 375,
/// egg 50, raisins ¼ × 145 = 36: 856 g; with currants ¼ × 144 = 36 as much.
#[test]
fn hot_cross_buns() {
    let mut book = Book::open("hot-cross-buns");
    let sheet = book.sheet(&[]);
    weighs(&sheet, 856.0, "with raisins");
    assert_eq!(declared(&sheet, "us"), ["milk", "egg", "wheat"]);
    let ways = book.ways();
    let [currants] = &ways[..] else { panic!("{ways:?}") };
    assert!(currants.contains("currants"), "{currants}");
    weighs(&book.sheet(&[currants]), 856.0, "with currants");
    let days: Vec<_> = sheet.time.steps.iter().filter_map(|step| step.day).collect();
    assert_eq!(days, [1, 1, 2, 2]);
}

/// By hand: milk 244, yolks ¼ × 243 = 61, eggs ½ × 243 = 122, butter ⅔ × 227 = 151, sugar 100,
/// yeast 34, extract 2.1, flour 4⅔ × 125 = 583: 1297 g.
#[test]
fn coffee_cakes() {
    let mut book = Book::open("coffee-cakes");
    assert_eq!(book.ways(), ["cardamon"]);
    let sheet = book.sheet(&[]);
    weighs(&sheet, 1297.0, "as printed");
    let phases = &sheet.proofs[0].phases;
    let found: Vec<_> =
        phases.iter().map(|it| (it.minutes[0], it.place.clone())).collect();
    let at = |place: &str| Some(place.to_owned());
    assert_eq!(found, [(360, at("bench")), (600, at("fridge"))]);
    let cardamom = book.sheet(&["cardamon"]);
    assert_eq!(declared(&cardamom, "us"), declared(&sheet, "us"));
}

/// By hand: squash 1.25 × 240 = 300, sugar 50, salt 3, spice 0.65, egg 50, milk ⅞ × 244 = 213.5:
/// 617 g. Richer: squash 240, milk 122, cream 119, yolk 17 in place of 300 and 213.5: 602 g.
#[test]
fn squash_pie() {
    let mut book = Book::open("squash-pie");
    let ways = book.ways();
    for way in ["lemon", "richer", "ginger", "nutmeg"] {
        assert!(ways.iter().any(|it| it == way), "{way}: {ways:?}");
    }
    let sheet = book.sheet(&[]);
    weighs(&sheet, 617.0, "as printed");
    assert_eq!(bakes(&sheet), [(450, 10), (325, 30)]);
    weighs(&book.sheet(&["richer"]), 602.0, "richer");
    for way in ways {
        let other = book.sheet(&[&way]);
        assert_eq!(declared(&other, "us"), declared(&sheet, "us"), "{way}");
        assert_eq!(bakes(&other), bakes(&sheet), "{way}");
    }
}
